//! What could not be done: a sentence, a remedy, an exit code.
//!
//! The one place where what the system says of a file becomes data of ours; its own words and
//! numbers reach nobody. The sentences are messages of `voice`, in the language of the command.

use std::fmt;
use std::io::{Error, ErrorKind};
use std::path::Path;
use std::process::ExitCode;

use spinney_desk::TooLarge;
use spinney_model::{BundleError, FileTrouble, LineError, TableError};
use spinney_store::{Fault, StoreError};
use spinney_voice::Tongue;

use crate::rescue::Rescue;
use crate::words::{Text, Words};
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
    /// Something failed: a message, beside which there is a remedy, and what is filled in.
    pub(crate) fn new<const N: usize>(
        message: &'static str,
        texts: [(&'static str, Text); N],
    ) -> Self {
        let words = Words::new(message, texts);
        Self::saying(move |t| words.told(t))
    }

    /// The same with a remedy of its own.
    pub(crate) fn of(sentence: Words, remedy: Words) -> Self {
        Self::saying(move |t| (sentence.said(t), remedy.said(t)))
    }

    /// Something failed: how it is said.
    pub(crate) fn saying(say: impl Fn(Tongue) -> (String, String) + Send + 'static) -> Self {
        Self { code: FAILED, say: Box::new(say) }
    }

    /// The command was used wrongly.
    pub(crate) fn usage<const N: usize>(
        message: &'static str,
        texts: [(&'static str, Text); N],
    ) -> Self {
        Self::new(message, texts).wrongly_used()
    }

    /// The same, and it is the command that was used wrongly.
    pub(crate) fn wrongly_used(self) -> Self {
        Self { code: USED_WRONGLY, ..self }
    }

    /// A file could not be read. That it is not there, or a folder, is a wrong use; the rest is
    /// a failure.
    pub(crate) fn reading(path: &Path, error: &Error) -> Self {
        match error.kind() {
            ErrorKind::NotFound => named::not_there(path),
            _ if path.is_dir() => named::a_folder(path),
            ErrorKind::NotADirectory => named::not_there(path),
            _ => Self::new(
                "failure-reading",
                [("file", path.into()), ("why", trouble(error).into())],
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
        Self::new("failure-writing", [("file", path.into()), ("why", trouble(error).into())])
    }

    /// What would be written over is what the command was given to read.
    pub(crate) fn own_input(path: &Path) -> Self {
        Self::usage("failure-own-input", [("file", path.into())])
    }

    /// Two things would be written to one place.
    pub(crate) fn written_twice(path: &Path) -> Self {
        Self::usage("failure-written-twice", [("file", path.into())])
    }

    /// Something stands there already.
    pub(crate) fn already_there(path: &Path) -> Self {
        Self::new("failure-already-there", [("file", path.into())])
    }

    /// No file, so that nothing can be written over it.
    pub(crate) fn not_a_file(path: &Path) -> Self {
        Self::usage("failure-not-a-file", [("file", path.into())])
    }

    /// No folder to write into.
    pub(crate) fn not_a_folder(path: &Path) -> Self {
        Self::usage("failure-not-a-folder", [("folder", path.into())])
    }

    /// A set of files could neither be put in its place nor taken back.
    pub(crate) fn half_written(folder: &Path, kept: &Path, error: &Error) -> Self {
        let why = trouble(error).into();
        let texts = [("folder", folder.into()), ("why", why), ("kept", kept.into())];
        Self::new("failure-half-written", texts)
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

    /// A collection is too large for something: the message, and what of it is.
    pub(crate) fn too_large(message: &'static str, path: &Path, why: TooLarge) -> Self {
        let file = path.display().to_string();
        Self::saying(move |t| {
            let (sentence, remedy) = why.in_words(t);
            (t.with(message, &[("file", &file), ("why", &sentence)]), remedy)
        })
    }

    /// A collection is damaged: what is, in words.
    pub(crate) fn damaged(rescue: &Rescue) -> Self {
        let described = rescue.described();
        let texts = [("file", rescue.path().into()), ("new", (&*rescue.new_name()).into())];
        let typed = Words::new("failure-type-rescue", texts);
        let saves = Words::of("failure-rescue-saves");
        Self::saying(move |t| {
            (described.said(t), format!("{}\n  {}", typed.said(t), saves.said(t)))
        })
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
