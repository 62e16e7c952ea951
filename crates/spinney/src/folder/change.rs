//! A finished set of files takes its place in a folder, or nothing changes.
//!
//! From a side folder to the folder itself. Where the folder holds nothing but what goes, the
//! two change places in one step. Otherwise what goes is moved aside and what comes is moved in,
//! which needs no room on the disk; if that fails half-way, all of it is moved back. At no moment
//! does the folder hold files of both sets.

use std::collections::BTreeSet;
use std::fs;
use std::io;
use std::path::{Path, PathBuf};

use tempfile::TempDir;

use super::ours;
use crate::failure::Failure;
use crate::files::sync;

/// A set that is about to change places.
pub(super) struct Changing<'a> {
    pub(super) folder: &'a Path,
    /// Where the new set is.
    pub(super) side: TempDir,
    /// The names of the new set; the list of what is ours is the last.
    pub(super) comes: &'a [String],
    /// Names of the old set that the new one does not have.
    pub(super) goes: &'a [String],
    /// The list of what is ours while they change places: both sets.
    pub(super) during: String,
}

impl Changing<'_> {
    /// The folder was not there: the side folder becomes it.
    pub(super) fn arrive(self) -> Result<(), Failure> {
        let failed = |error: io::Error| Failure::writing(self.folder, &error);
        let parent = crate::files::folder_of(self.folder);
        fs::create_dir_all(parent).map_err(failed)?;
        sync(self.side.path());
        fs::rename(self.side.path(), self.folder).map_err(failed)?;
        let _ = self.side.keep();
        sync(parent);
        Ok(())
    }

    /// The folder was there.
    pub(super) fn change(self) -> Result<(), Failure> {
        if self.exchange(swap)? { Ok(()) } else { self.one_by_one() }
    }

    /// In one step. False: it cannot be done here, and nothing was done.
    ///
    /// It cannot where something else is in the folder, where a program works in it (a terminal
    /// would be left in a folder that is gone), where the new folder would be another person's or
    /// open to others than before, and where the system cannot do it.
    ///
    /// **Errors**: the new set could not be put back for the other way. The old one is untouched.
    pub(super) fn exchange(
        &self,
        swap: impl Fn(&Path, &Path) -> bool,
    ) -> Result<bool, Failure> {
        let Ok(folder) = fs::canonicalize(self.folder) else { return Ok(false) };
        let (Ok(here), Some(parent)) = (std::env::current_dir(), folder.parent()) else {
            return Ok(false);
        };
        if here.starts_with(&folder) || !self.holds_nothing_else(&folder) {
            return Ok(false);
        }
        let Ok(rights) = fs::metadata(&folder).map(|folder| folder.permissions()) else {
            return Ok(false);
        };
        crate::files::sweep(parent);
        let (prefix, ending) = crate::files::name_of_part("visit".as_ref());
        let mut builder = tempfile::Builder::new();
        builder.prefix(&prefix).suffix(ending);
        // A place beside the folder; another disk or a folder without rights ends it here.
        let Ok(beside) = builder.tempdir_in(parent) else { return Ok(false) };
        let new = beside.path().join("new");
        if fs::rename(self.side.path(), &new).is_err() {
            return Ok(false);
        }
        sync(&new);
        let changed = alike(&new, &folder)
            && fs::set_permissions(&new, rights).is_ok()
            && swap(&new, &folder);
        if changed {
            sync(parent);
            // What was put there in this very moment is not thrown away with the old set.
            for entry in fs::read_dir(&new).into_iter().flatten().flatten() {
                let name = entry.file_name();
                if !name.to_str().is_some_and(|name| self.known().contains(name)) {
                    let _ = fs::rename(entry.path(), folder.join(name));
                }
            }
        } else {
            // Back to where it was, for the other way.
            fs::rename(&new, self.side.path())
                .map_err(|error| Failure::writing(self.folder, &error))?;
        }
        Ok(changed)
    }

    /// Whether all that is in the folder is replaced or goes.
    fn holds_nothing_else(&self, folder: &Path) -> bool {
        let known = self.known();
        let side = self.side.path().file_name();
        let Ok(entries) = fs::read_dir(folder) else { return false };
        entries.into_iter().all(|entry| {
            entry.is_ok_and(|entry| {
                let name = entry.file_name();
                Some(name.as_os_str()) == side
                    || name.to_str().is_some_and(|name| known.contains(name))
            })
        })
    }

    /// The names that are replaced or go.
    fn known(&self) -> BTreeSet<&str> {
        self.comes.iter().chain(self.goes).map(String::as_str).collect()
    }

    /// What goes is moved aside, what comes is moved in; back again if something fails.
    fn one_by_one(self) -> Result<(), Failure> {
        let failed = |error: io::Error| Failure::writing(self.folder, &error);
        let aside = tempfile::Builder::new().prefix("before").tempdir_in(self.side.path());
        let aside = aside.map_err(failed)?;
        let during = self.side.path().join("during");
        fs::write(&during, self.during.as_bytes()).map_err(failed)?;
        let list = self.folder.join(ours::NAME);
        let old_list = aside.path().join(ours::NAME);
        let had_list = fs::symlink_metadata(&list).is_ok();
        if had_list {
            fs::copy(&list, &old_list).map_err(failed)?;
        }
        // If it is cut off from here on, all of it is still known to be ours.
        fs::rename(&during, &list).map_err(failed)?;
        let mut done: Vec<(PathBuf, PathBuf)> = Vec::new();
        let mut moving = |from: PathBuf, to: PathBuf| -> io::Result<()> {
            fs::rename(&from, &to)?;
            done.push((from, to));
            Ok(())
        };
        let moved = (|| -> io::Result<()> {
            let sheets = self.comes.iter().filter(|name| *name != ours::NAME);
            for name in sheets.clone().chain(self.goes) {
                let there = self.folder.join(name);
                if fs::symlink_metadata(&there).is_ok() {
                    moving(there, aside.path().join(name))?;
                }
            }
            for name in sheets {
                moving(self.side.path().join(name), self.folder.join(name))?;
            }
            fs::rename(self.side.path().join(ours::NAME), &list)
        })();
        let Err(error) = moved else {
            sync(self.folder);
            return Ok(());
        };
        let mut all_back = true;
        for (from, to) in done.into_iter().rev() {
            all_back &= fs::rename(to, from).is_ok();
        }
        all_back &= match had_list {
            true => fs::rename(&old_list, &list).is_ok(),
            false => fs::remove_file(&list).is_ok(),
        };
        if all_back {
            return Err(failed(error));
        }
        // Nothing is thrown away that could not be put back.
        let _ = aside.keep();
        let kept = self.side.keep();
        Err(Failure::half_written(self.folder, &kept, &error))
    }
}

/// Whether a new folder can stand for an old one once it has its mode: the same owner and group,
/// and nothing else said of either (lists of who may do what are such).
pub(super) fn alike(new: &Path, old: &Path) -> bool {
    #[cfg(any(target_os = "linux", target_os = "macos"))]
    {
        use std::os::unix::fs::MetadataExt;
        let hands = |path: &Path| fs::metadata(path).map(|it| (it.uid(), it.gid())).ok();
        // The names of what else is said; a disk that knows of no such things says nothing.
        let said = |path: &Path| {
            let mut names = [0_u8; 4096];
            let length = rustix::fs::listxattr(path, &mut names[..]);
            length.map(|length| names[..length].to_vec()).or_else(|error| match error {
                rustix::io::Errno::NOTSUP => Ok(Vec::new()),
                error => Err(error),
            })
        };
        let rights = |names: &[u8]| names.windows(3).any(|part| part == b"acl");
        hands(new).is_some_and(|new| Some(new) == hands(old))
            && said(new).is_ok_and(|new| !rights(&new) && Ok(new) == said(old))
    }
    #[cfg(not(any(target_os = "linux", target_os = "macos")))]
    {
        let _ = (new, old);
        false
    }
}

/// Two folders change names in one step (`renameat2` of Linux, `renameatx_np` of a Mac).
fn swap(new: &Path, old: &Path) -> bool {
    #[cfg(any(target_os = "linux", target_os = "macos"))]
    {
        use rustix::fs::{CWD, RenameFlags, renameat_with};
        renameat_with(CWD, new, CWD, old, RenameFlags::EXCHANGE).is_ok()
    }
    #[cfg(not(any(target_os = "linux", target_os = "macos")))]
    {
        let _ = (new, old);
        false
    }
}
