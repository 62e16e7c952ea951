//! What a terminal adds: colour, progress, questions. Nothing of it reaches a pipe.

use std::io::{BufRead, IsTerminal, Write};

/// Whether to write in colour: on a terminal, and unless `NO_COLOR` is set (no-color.org).
pub(crate) fn colour() -> bool {
    let wanted = std::env::var_os("NO_COLOR").is_none_or(|value| value.is_empty());
    let able = std::env::var_os("TERM").is_none_or(|term| term != "dumb");
    wanted && able && std::io::stdout().is_terminal()
}

/// A line on stderr that is written over, while a person watches.
pub(crate) struct Progress {
    watched: bool,
    shown: usize,
}

impl Progress {
    pub(crate) fn new() -> Self {
        Self { watched: std::io::stderr().is_terminal(), shown: 0 }
    }

    pub(crate) fn say(&mut self, line: &str) {
        if self.watched {
            let length = line.chars().count();
            let rest = self.shown.saturating_sub(length);
            tell(&format!("\r{line}{}", " ".repeat(rest)));
            self.shown = length;
        }
    }
}

impl Drop for Progress {
    fn drop(&mut self) {
        if self.shown > 0 {
            tell(&format!("\r{}\r", " ".repeat(self.shown)));
        }
    }
}

/// Says something on stderr. Where that cannot be written, the exit code still says it: the
/// macros of the standard library would end the program as a bug.
pub(crate) fn tell(text: &str) {
    let mut stderr = std::io::stderr().lock();
    let _ = stderr.write_all(text.as_bytes()).and_then(|()| stderr.flush());
}

/// Asks a yes/no question if a person sits there; None if not, or if they do not say.
pub(crate) fn ask(question: &str) -> Option<bool> {
    if !std::io::stdin().is_terminal() || !std::io::stderr().is_terminal() {
        return None;
    }
    tell(&format!("{question} [y/n] "));
    let mut answer = String::new();
    std::io::stdin().lock().read_line(&mut answer).ok()?;
    match answer.trim().to_lowercase().as_str() {
        "y" | "yes" => Some(true),
        "n" | "no" => Some(false),
        _ => None,
    }
}

/// Writes to stdout. A reader that has gone away (`| head`) is not a failure.
pub(crate) fn print(text: &str) -> Result<(), crate::failure::Failure> {
    print_bytes(text.as_bytes())
}

/// The same for what is no text.
pub(crate) fn print_bytes(bytes: &[u8]) -> Result<(), crate::failure::Failure> {
    let mut stdout = std::io::stdout().lock();
    // Flushed here: what is left to the end of the program fails without a word.
    match stdout.write_all(bytes).and_then(|()| stdout.flush()) {
        Err(error) if error.kind() != std::io::ErrorKind::BrokenPipe => {
            Err(crate::failure::Failure::new(
                format!("The answer could not be written: {}.", crate::failure::plain(&error)),
                "Look whether the disk is full.",
            ))
        }
        _ => Ok(()),
    }
}
