//! The files of a person: what a run reads it never writes over, and what it writes is whole.
//!
//! From paths to bytes, and from bytes to a file that is there whole or not at all. Everything
//! that a command reads is opened through here, and everything that it writes goes through here
//! or through [`crate::folder`], which asks here: so no command can forget the rule. It does not
//! know what is in a file. `docs/decisions/0012-a-persons-files.md` says why.

mod swept;

use std::collections::BTreeSet;
use std::fs::{self, File};
use std::io::{ErrorKind, StdinLock, Write};
use std::path::{Path, PathBuf};
use std::sync::atomic::{AtomicBool, Ordering};
use std::sync::{Mutex, MutexGuard, PoisonError};

use same_file::{Handle, is_same_file};
use tempfile::{Builder, NamedTempFile};

use crate::failure::Failure;

pub(crate) use swept::{name_of_part, sweep};

/// What this run has read so far. A file is only ever added.
static READ: Mutex<BTreeSet<PathBuf>> = Mutex::new(BTreeSet::new());
/// Whether stdin was read, which can be a file too (`spinney table - < finds.csv`).
static STDIN_READ: AtomicBool = AtomicBool::new(false);

/// Opens a file that a command reads; from now on nothing writes over it.
pub(crate) fn open(path: &Path) -> std::io::Result<File> {
    note(path);
    File::open(path)
}

/// Opens stdin for a command that reads it; where it is a file, nothing writes over that one.
pub(crate) fn stdin() -> StdinLock<'static> {
    STDIN_READ.store(true, Ordering::Relaxed);
    std::io::stdin().lock()
}

/// The same for the file of a collection, and for what is kept beside it while it is written.
pub(crate) fn note_collection(path: &Path) {
    note(path);
    for beside in ["-journal", "-wal", "-shm"] {
        let mut name = path.as_os_str().to_owned();
        name.push(beside);
        note(Path::new(&name));
    }
}

fn note(path: &Path) {
    let path = std::path::absolute(path).unwrap_or_else(|_| path.to_owned());
    READ.lock().unwrap_or_else(PoisonError::into_inner).insert(path);
}

/// Whether this run has read that very file, whatever it is called there.
pub(crate) fn was_read(path: &Path) -> bool {
    let whole = std::path::absolute(path).unwrap_or_else(|_| path.to_owned());
    let read = READ.lock().unwrap_or_else(PoisonError::into_inner);
    read.contains(&whole)
        || read.iter().any(|one| is_same_file(one, path).unwrap_or(false))
        || (STDIN_READ.load(Ordering::Relaxed) && is_stdin(path))
}

fn is_stdin(path: &Path) -> bool {
    let both = Handle::stdin().and_then(|stdin| Ok((stdin, Handle::from_path(path)?)));
    both.is_ok_and(|(stdin, file)| stdin == file)
}

/// Says that this run will write there.
///
/// **Errors**: it said so before of something else.
pub(crate) fn claim(path: &Path) -> Result<(), Failure> {
    static CLAIMED: Mutex<BTreeSet<PathBuf>> = Mutex::new(BTreeSet::new());
    let folder = fs::canonicalize(folder_of(path));
    let whole = match (folder, path.file_name()) {
        (Ok(folder), Some(name)) => folder.join(name),
        _ => std::path::absolute(path).unwrap_or_else(|_| path.to_owned()),
    };
    let mut claimed = CLAIMED.lock().unwrap_or_else(PoisonError::into_inner);
    if claimed.insert(whole) { Ok(()) } else { Err(Failure::written_twice(path)) }
}

/// What may stand where something is to be written.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(crate) enum Over {
    /// Nothing.
    Nothing,
    /// A file: the person said so.
    AFile,
}

impl Over {
    /// What `--force` says.
    pub(crate) fn forced(force: bool) -> Self {
        if force { Self::AFile } else { Self::Nothing }
    }
}

/// Looks whether a file may be written there.
///
/// **Errors**: it is what this run reads, with or without `--force`; something is there already.
pub(crate) fn may_be_written(path: &Path, over: Over) -> Result<(), Failure> {
    if was_read(path) {
        return Err(Failure::own_input(path));
    }
    match fs::symlink_metadata(path) {
        Err(_) => Ok(()),
        Ok(there) if !there.is_file() && !there.is_symlink() => Err(Failure::not_a_file(path)),
        Ok(_) if over == Over::Nothing => Err(Failure::already_there(path)),
        Ok(_) => Ok(()),
    }
}

/// Writes a file whole or not at all: first beside its place under a name that nobody has, then
/// moved there. A link that stands in its place is replaced, and never followed.
pub(crate) fn write_whole(path: &Path, bytes: &[u8], over: Over) -> Result<(), Failure> {
    may_be_written(path, over)?;
    let failed = |error: std::io::Error| Failure::writing(path, &error);
    let mut part = part_of(path).map_err(failed)?;
    part.write_all(bytes).map_err(failed)?;
    put_in_place(part, path, over)
}

/// A fresh file beside the place of another one; it is gone when it is dropped.
pub(crate) fn part_of(path: &Path) -> std::io::Result<NamedTempFile> {
    let name = path.file_name().ok_or(ErrorKind::InvalidInput)?;
    let folder = folder_of(path);
    sweep(folder);
    let (prefix, ending) = name_of_part(name);
    let mut builder = Builder::new();
    builder.prefix(&prefix).suffix(ending);
    #[cfg(unix)]
    {
        use std::os::unix::fs::PermissionsExt;
        // As any file that a program makes: what the person's mask leaves of it.
        builder.permissions(fs::Permissions::from_mode(0o666));
    }
    half_made(|| builder.tempfile_in(folder))
}

/// How often a folder is cleared away that is being filled.
const MOST_TRIES: usize = 1000;
/// What this run has begun to make and not put in its place. What is there no more stays in it.
static HALF_MADE: Mutex<BTreeSet<PathBuf>> = Mutex::new(BTreeSet::new());

/// Begins to make a file or folder that is cleared away where a person ends the run.
pub(crate) fn half_made<T: AsRef<Path>>(
    make: impl FnOnce() -> std::io::Result<T>,
) -> std::io::Result<T> {
    let mut all = undisturbed();
    let made = make()?;
    all.insert(std::path::absolute(&made).unwrap_or_else(|_| made.as_ref().to_owned()));
    Ok(made)
}

/// As long as this is held, a run that a person ends waits: files change places.
pub(crate) fn undisturbed() -> MutexGuard<'static, BTreeSet<PathBuf>> {
    HALF_MADE.lock().unwrap_or_else(PoisonError::into_inner)
}

/// Clears away what is half-made. Nothing can be begun as long as the answer is held.
pub(crate) fn clear_away() -> impl Drop {
    let all = undisturbed();
    for path in all.iter() {
        let mut journal = path.as_os_str().to_owned();
        journal.push("-journal");
        // The run may just be putting one more file into a folder; into none that is gone.
        for _ in 0..MOST_TRIES {
            let gone = fs::remove_file(path).or_else(|_| fs::remove_dir_all(path));
            if gone.is_ok() || fs::symlink_metadata(path).is_err() {
                break;
            }
        }
        let _ = fs::remove_file(journal);
    }
    all
}

/// Where a person presses Ctrl-C, or the machine is shut down, nothing half-made is left: first
/// what has begun to change places does so, then the rest is cleared away.
pub(crate) fn clear_away_when_ended() {
    #[cfg(unix)]
    {
        use signal_hook::consts::{SIGINT, SIGTERM};
        let Ok(mut signals) = signal_hook::iterator::Signals::new([SIGINT, SIGTERM]) else {
            return;
        };
        // Where there is no thread for it, a run is ended as any program is.
        let _ = std::thread::Builder::new().name("end".to_owned()).spawn(move || {
            for signal in signals.forever() {
                let _nothing_more = clear_away();
                let _ = signal_hook::low_level::emulate_default_handler(signal);
            }
        });
    }
}

/// Moves a finished file to its place, once it is on the disk; then its name is on the disk too.
pub(crate) fn put_in_place(
    part: NamedTempFile,
    path: &Path,
    over: Over,
) -> Result<(), Failure> {
    let failed = |error: std::io::Error| Failure::writing(path, &error);
    part.as_file().sync_all().map_err(failed)?;
    let moved = match over {
        Over::Nothing => part.persist_noclobber(path),
        Over::AFile => part.persist(path),
    };
    match moved {
        Ok(_) => {
            sync(folder_of(path));
            Ok(())
        }
        // It came there since we looked.
        Err(error) if error.error.kind() == ErrorKind::AlreadyExists => {
            Err(Failure::already_there(path))
        }
        Err(error) => Err(failed(error.error)),
    }
}

/// Where a system limits the size of files, writing past it is an error like a full disk, and
/// not the sudden end of the program (SIGXFSZ of POSIX) with half-made files left behind.
pub(crate) fn bear_a_size_limit() {
    #[cfg(unix)]
    {
        // Nobody asks for the flag: that there is a handler makes `write` say EFBIG.
        let seen = std::sync::Arc::<std::sync::atomic::AtomicBool>::default();
        let _ = signal_hook::flag::register(signal_hook::consts::SIGXFSZ, seen);
    }
}

/// The names in a folder are on the disk. Where a system cannot, nothing is lost but this.
pub(crate) fn sync(folder: &Path) {
    let _ = File::open(folder).and_then(|folder| folder.sync_all());
    #[cfg(test)]
    SYNCED.with_borrow_mut(|synced| synced.push(folder.to_owned()));
}

#[cfg(test)]
thread_local! {
    /// The folders whose names a test has put on the disk.
    pub(crate) static SYNCED: std::cell::RefCell<Vec<PathBuf>> = const {
        std::cell::RefCell::new(Vec::new())
    };
}

/// The folder that a path is in.
pub(crate) fn folder_of(path: &Path) -> &Path {
    match path.parent() {
        Some(parent) if parent != Path::new("") => parent,
        _ => Path::new("."),
    }
}
