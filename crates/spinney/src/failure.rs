//! What could not be done: a sentence, a remedy, an exit code.
//!
//! The one place where what the system says of a file becomes a sentence. Its own words and
//! numbers reach nobody.

use std::fmt::{self, Display};
use std::io::{Error, ErrorKind};
use std::path::Path;
use std::process::ExitCode;

use spinney_model::{BundleError, FileTrouble, Instead, LineError, TableError};
use spinney_store::{Fault, StoreError};
use spinney_voice::Tongue;

use crate::{named, terminal};

/// Something failed, or something must be mended.
pub(crate) const FAILED: u8 = 1;
/// The command was used wrongly.
pub(crate) const USED_WRONGLY: u8 = 2;
/// The program itself is at fault (`EX_SOFTWARE` of BSD's sysexits).
pub(crate) const BUG: u8 = 70;

/// What could not be done. It is said when it is known in which language.
pub(crate) struct Failure {
    code: u8,
    say: Box<dyn Fn(Tongue) -> (String, String) + Send>,
}

impl Failure {
    /// Something failed.
    pub(crate) fn new(sentence: impl Display, remedy: impl Display) -> Self {
        let (sentence, remedy) = (sentence.to_string(), remedy.to_string());
        Self::saying(move |_| (sentence.clone(), remedy.clone()))
    }

    /// Something failed: how it is said.
    pub(crate) fn saying(say: impl Fn(Tongue) -> (String, String) + Send + 'static) -> Self {
        Self { code: FAILED, say: Box::new(say) }
    }

    /// The command was used wrongly.
    pub(crate) fn usage(sentence: impl Display, remedy: impl Display) -> Self {
        Self { code: USED_WRONGLY, ..Self::new(sentence, remedy) }
    }

    /// A file could not be read. That it is not there, or a folder, is a wrong use; the rest is
    /// a failure.
    pub(crate) fn reading(path: &Path, error: &Error) -> Self {
        match error.kind() {
            ErrorKind::NotFound => named::not_there(path),
            _ if path.is_dir() => named::a_folder(path),
            ErrorKind::NotADirectory => named::not_there(path),
            _ => Self::new(
                format!("{} could not be read: {}.", path.display(), plain(error)),
                "Look whether you may open it, and whether its disk is still there.",
            ),
        }
    }

    /// A file could not be written. That its folder is not there is a wrong use.
    pub(crate) fn writing(path: &Path, error: &Error) -> Self {
        if error.kind() == ErrorKind::NotFound
            && let Some(folder) = named::missing_folder(path)
        {
            return named::no_folder(folder);
        }
        Self::new(
            format!("{} could not be written: {}.", path.display(), plain(error)),
            "Look whether there is room and whether you may write there, or name another \
             place. What was there before is still there.",
        )
    }

    /// What would be written over is what the command was given to read.
    pub(crate) fn own_input(path: &Path) -> Self {
        Self::usage(
            format!("This would write over {}, which it was made from.", path.display()),
            "Name another place to write to. Nothing was changed.",
        )
    }

    /// Two things would be written to one place.
    pub(crate) fn written_twice(path: &Path) -> Self {
        Self::usage(
            format!("Two different things would be written to {}.", path.display()),
            "Name another place for one of them. Nothing was changed.",
        )
    }

    /// Something stands there already.
    pub(crate) fn already_there(path: &Path) -> Self {
        Self::new(
            format!(
                "{} is there already. Spinney did not write it, or somebody changed it.",
                path.display()
            ),
            "Name another place, or add --force to write over it. Nothing was changed.",
        )
    }

    /// No file, so that nothing can be written over it.
    pub(crate) fn not_a_file(path: &Path) -> Self {
        Self::usage(
            format!("{} is there already, and it is not a file.", path.display()),
            "Name another place. Nothing was changed.",
        )
    }

    /// No folder to write into.
    pub(crate) fn not_a_folder(path: &Path) -> Self {
        Self::usage(
            format!("{} is there already, and it is not a folder.", path.display()),
            "Name another folder. Nothing was changed.",
        )
    }

    /// A set of files could neither be put in its place nor taken back.
    pub(crate) fn half_written(folder: &Path, kept: &Path, error: &Error) -> Self {
        Self::new(
            format!(
                "Only some of the files could be put into {}: {}.",
                folder.display(),
                plain(error)
            ),
            format!(
                "The files that were there before are in {}. Copy them from there.",
                kept.display()
            ),
        )
    }

    /// A collection could not be opened or kept.
    pub(crate) fn kept(error: StoreError) -> Self {
        match &error {
            StoreError::Missing { path } => named::missing_folder(path)
                .map_or_else(|| named::not_there(path), named::no_folder),
            StoreError::NotACollection { path } if path.is_dir() => {
                named::no_collection_but_a_folder(path)
            }
            StoreError::NotACollection { path } => named::no_collection(path)
                .unwrap_or_else(|| Self::saying(move |t| of_store(t, &error))),
            _ => Self::saying(move |t| of_store(t, &error)),
        }
    }

    /// Nothing of a table could be read.
    pub(crate) fn of_table(error: TableError) -> Self {
        Self::saying(move |t| spinney_voice::table_error(t, &error))
    }

    /// A line of a journal could not be read.
    pub(crate) fn of_line(error: LineError) -> Self {
        Self::saying(move |t| spinney_voice::line_error(t, error))
    }

    /// A collection could not be packed or unpacked.
    pub(crate) fn of_bundle(path: &Path, error: BundleError) -> Self {
        let file = path.display().to_string();
        Self::saying(move |t| spinney_voice::bundle_error(t, &file, error))
    }

    /// A collection is damaged: what is, in words.
    pub(crate) fn damaged(rescue: &crate::rescue::Rescue) -> Self {
        Self::new(
            rescue.in_words(),
            format!(
                "Type: spinney rescue {} {}\n  It saves what can be read into a new file. This one was \
                 not changed.",
                rescue.path().display(),
                rescue.new_name().display()
            ),
        )
    }

    /// What failed, and what to do.
    pub(crate) fn said(&self, t: Tongue) -> (String, String) {
        (self.say)(t)
    }

    /// Says it on stderr.
    pub(crate) fn tell(&self, t: Tongue) -> ExitCode {
        let (sentence, remedy) = self.said(t);
        terminal::complain(&format!("spinney: {sentence}\n  {remedy}\n"));
        ExitCode::from(self.code)
    }
}

/// As somebody reads it who looks for a mistake of ours.
impl fmt::Debug for Failure {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.debug_tuple("Failure")
            .field(&self.code)
            .field(&self.said(Tongue::of_terminal()))
            .finish()
    }
}

/// Why a collection could not be opened or kept, in words.
fn of_store(t: Tongue, error: &StoreError) -> (String, String) {
    let of = |message: &str, path: &Path| t.told(message, &[("file", &path.display())]);
    match error {
        StoreError::Missing { path } => of("error-kept-missing", path),
        StoreError::Exists { path } => of("error-kept-exists", path),
        StoreError::NotACollection { path } => of("error-kept-no-collection", path),
        StoreError::Newer { path, .. } => of("error-kept-newer", path),
        StoreError::ReadOnly { path } => of("error-kept-read-only", path),
        StoreError::Locked { path } => of("error-kept-locked", path),
        StoreError::Full { path } => of("error-kept-full", path),
        StoreError::Damaged { path } => of("error-kept-damaged", path),
        StoreError::Moved { .. } => t.told("error-kept-moved", &[]),
        StoreError::Rewritten => t.told("error-kept-rewritten", &[]),
        StoreError::Other { path, why } => {
            let why = spinney_voice::trouble(t, of_fault(*why));
            t.told("error-kept-other", &[("file", &path.display()), ("why", &why)])
        }
    }
}

/// What is wrong with the file of a collection or its disk, as it is said of any file.
pub(crate) fn of_fault(fault: Fault) -> FileTrouble {
    match fault {
        Fault::Place => FileTrouble::BadPlace,
        Fault::Disk => FileTrouble::DiskFailed,
        Fault::DiskWrite => FileTrouble::DiskRefused,
        Fault::NoMemory => FileTrouble::NoMemory,
        Fault::TooLarge => FileTrouble::NotHeld,
    }
}

/// What a file is that was given for another, within a sentence: `a PDF`.
pub(crate) fn what_it_is(is: Instead) -> String {
    spinney_voice::what_it_is(Tongue::of_terminal(), is)
}

/// What the system says, in plain words and without its numbers: `the disk is full`.
pub(crate) fn plain(error: &Error) -> String {
    spinney_voice::trouble(Tongue::of_terminal(), trouble(error))
}

/// What the system says, as far as a person can do something about it.
pub(crate) fn trouble(error: &Error) -> FileTrouble {
    match error.kind() {
        ErrorKind::NotFound => FileTrouble::NotThere,
        ErrorKind::PermissionDenied => FileTrouble::NoRight,
        ErrorKind::AlreadyExists => FileTrouble::IsThere,
        ErrorKind::NotADirectory => FileTrouble::NotAFolder,
        ErrorKind::IsADirectory => FileTrouble::IsAFolder,
        ErrorKind::ReadOnlyFilesystem => FileTrouble::ReadOnly,
        ErrorKind::StorageFull | ErrorKind::QuotaExceeded => FileTrouble::Full,
        ErrorKind::FileTooLarge => FileTrouble::TooLarge,
        ErrorKind::InvalidFilename => FileTrouble::BadName,
        ErrorKind::ResourceBusy | ErrorKind::ExecutableFileBusy | ErrorKind::AddrInUse => {
            FileTrouble::InUse
        }
        ErrorKind::AddrNotAvailable => FileTrouble::NoAddress,
        ErrorKind::TimedOut | ErrorKind::StaleNetworkFileHandle => FileTrouble::NoAnswer,
        ErrorKind::BrokenPipe | ErrorKind::UnexpectedEof => FileTrouble::Closed,
        ErrorKind::OutOfMemory => FileTrouble::NoMemory,
        _ => FileTrouble::Unknown,
    }
}
