//! What could not be done: a sentence, a remedy, an exit code.

use std::fmt::Display;
use std::path::Path;
use std::process::ExitCode;

use crate::terminal;

/// Something failed, or something must be mended.
pub(crate) const FAILED: u8 = 1;
/// The command was used wrongly (as clap says it).
pub(crate) const USED_WRONGLY: u8 = 2;
/// The program itself is at fault (`EX_SOFTWARE` of BSD's sysexits).
pub(crate) const BUG: u8 = 70;

/// What could not be done.
#[derive(Debug)]
pub(crate) struct Failure {
    code: u8,
    sentence: String,
    remedy: String,
}

impl Failure {
    /// Something failed.
    pub(crate) fn new(sentence: impl Display, remedy: impl Display) -> Self {
        Self { code: FAILED, sentence: sentence.to_string(), remedy: remedy.to_string() }
    }

    /// The command was used wrongly.
    pub(crate) fn usage(sentence: impl Display, remedy: impl Display) -> Self {
        Self { code: USED_WRONGLY, ..Self::new(sentence, remedy) }
    }

    /// A file could not be read. That it is not there is a wrong use, the rest a failure.
    pub(crate) fn reading(path: &Path, error: &std::io::Error) -> Self {
        let sentence = format!("{} could not be read: {}.", path.display(), plain(error));
        match error.kind() {
            std::io::ErrorKind::NotFound => Self::usage(sentence, "Look at the name."),
            _ => Self::new(sentence, "Look whether you may open it, and whether it is a file."),
        }
    }

    /// A file could not be written.
    pub(crate) fn writing(path: &Path, error: &std::io::Error) -> Self {
        Self::new(
            format!("{} could not be written: {}.", path.display(), plain(error)),
            "Name another place with --out. Nothing that was there before was changed.",
        )
    }

    /// A collection could not be opened or kept.
    pub(crate) fn kept(error: spinney_store::StoreError) -> Self {
        Self::new(&error, error.remedy())
    }

    /// Says it on stderr.
    pub(crate) fn tell(&self) -> ExitCode {
        terminal::complain(&format!("spinney: {}\n  {}\n", self.sentence, self.remedy));
        ExitCode::from(self.code)
    }
}

/// What the system says, without its number: `no such file or directory`.
fn plain(error: &std::io::Error) -> String {
    let said = error.to_string();
    let said = said.split(" (os error").next().unwrap_or_default();
    let mut letters = said.chars();
    letters.next().map_or(String::new(), |first| first.to_lowercase().chain(letters).collect())
}
