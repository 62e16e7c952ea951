//! `spinney pack` and `spinney unpack`: a collection as one zip, and back.
//!
//! Whatever a bundle brings, its pictures are kept as pixels alone, like those that are added
//! at the desk.

use std::io::Read;
use std::path::Path;

use spinney_desk::Desk;
use spinney_exchange::bundle::{Bundle, BundleError, Saved};
use spinney_exchange::journal::LineError;
use spinney_model::limits::{BUNDLE_BYTES, BUNDLE_UNPACKED};
use spinney_store::{Store, StoreError};
use spinney_voice::Tongue;

use crate::args::{Pack, Unpack};
use crate::failure::Failure;
use crate::files::{self, Over};
use crate::rescue::{Rescue, new_collection};
use crate::web::kept::journal_too_large;
use crate::{report, terminal};

pub(crate) fn pack(t: Tongue, args: &Pack) -> Result<bool, Failure> {
    let over = Over::forced(args.force);
    files::note_collection(&args.file);
    files::may_be_written(&args.out, over)?;
    // Everything is read before anything is written: a backup that was good stays as it is.
    let (bundle, lost) = Desk::handed_on(bundle_of(&args.file)?).map_err(Failure::of_line)?;
    let packed = bundle.pack().map_err(|error| Failure::of_bundle(&args.file, error))?;
    files::write_whole(&args.out, &packed, over)?;
    say(t, "run-packed", (bundle.lines.len(), bundle.pictures.len()), &args.out)?;
    say_lost(t, lost)
}

/// A whole collection.
///
/// **Errors**: something of it is damaged, and what; it is larger than any that is packed.
fn bundle_of(path: &Path) -> Result<Bundle, Failure> {
    // None: too large.
    let whole = |path: &Path| -> Result<Option<Bundle>, StoreError> {
        let store = Store::open(path)?;
        // Counted before they are held.
        if journal_too_large(&store, 0)?.is_some() {
            return Ok(None);
        }
        store.check()?;
        let mut bundle = Bundle::default();
        bundle.lines.extend(store.rows(0)?.into_iter().map(|row| row.bytes));
        let mut held = 0;
        for hash in store.pictures()? {
            if let Some(bytes) = store.picture(hash)? {
                held += bytes.len() as u64;
                bundle.pictures.insert(hash.to_string(), bytes);
            }
            if held > BUNDLE_UNPACKED {
                return Ok(None);
            }
        }
        Ok(Some(bundle))
    };
    match whole(path) {
        Ok(None) => Err(Failure::of_bundle(path, BundleError::TooLarge)),
        Ok(Some(bundle)) => match Desk::open(bundle.lines.iter().map(Vec::as_slice)) {
            Ok(_) => Ok(bundle),
            Err(LineError::NotALine) => Err(Failure::damaged(&Rescue::of(path)?)),
            Err(error) => Err(Failure::of_line(error)),
        },
        Err(StoreError::Damaged { .. }) => Err(Failure::damaged(&Rescue::of(path)?)),
        Err(error) => Err(Failure::kept(error)),
    }
}

/// The bytes of a packed collection.
pub(crate) fn read(path: &Path) -> Result<Vec<u8>, Failure> {
    let failed = |error: std::io::Error| Failure::reading(path, &error);
    let mut bytes = Vec::new();
    let file = files::open(path).map_err(failed)?;
    file.take(BUNDLE_BYTES as u64 + 1).read_to_end(&mut bytes).map_err(failed)?;
    match bytes.len() > BUNDLE_BYTES {
        true => Err(Failure::of_bundle(path, BundleError::TooLarge)),
        false => Ok(bytes),
    }
}

pub(crate) fn unpack(t: Tongue, args: &Unpack) -> Result<bool, Failure> {
    let bytes = read(&args.packed)?;
    files::may_be_written(&args.file, Over::Nothing)?;
    let unpacked = Bundle::unpack(&bytes);
    // Also where the zip's own table of contents is damaged, so that it looks like no bundle.
    if let Err(BundleError::Damaged | BundleError::CutOff | BundleError::NotABundle) = unpacked
        && let Some(saved) = Saved::of(&bytes)
    {
        return Err(Failure::damaged(&Rescue::of_bundle(&args.packed, saved)?));
    }
    let bundle = unpacked.map_err(|error| Failure::of_bundle(&args.packed, error))?;
    // A line that the desk cannot read must not become a collection that cannot be opened.
    let kept = match Desk::unpacked(bundle.lines, bundle.pictures) {
        Ok(kept) => kept,
        Err(LineError::NotALine) => return Err(Failure::damaged(&Rescue::of(&args.packed)?)),
        Err(error) => return Err(Failure::of_line(error)),
    };
    let count = kept.pictures.len();
    new_collection(&args.file, &kept.lines, kept.pictures.into_iter().map(Ok))?;
    say(t, "run-unpacked", (kept.lines.len(), count), &args.file)?;
    say_lost(t, kept.lost)
}

fn say_lost(t: Tongue, pictures: usize) -> Result<bool, Failure> {
    if pictures > 0 {
        let lost = t.with("run-pictures-lost", &[("number", &pictures)]);
        terminal::print(&format!("{lost}\n"))?;
    }
    Ok(true)
}

/// `3 steps and 1 picture are packed into class4.zip.`
fn say(t: Tongue, message: &str, held: (usize, usize), file: &Path) -> Result<(), Failure> {
    let said = report::steps_and_pictures(t, message, held, file);
    terminal::print(&format!("{said}\n"))
}
