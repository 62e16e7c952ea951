//! `spinney pack` and `spinney unpack`: a collection as one zip, and back.
//!
//! Whatever a bundle brings, its pictures are kept as pixels alone, like those that are added
//! at the desk.

use std::fs::File;
use std::io::Read;

use spinney_desk::Desk;
use spinney_exchange::bundle::{Bundle, BundleError};
use spinney_model::limits::{BUNDLE_BYTES, BUNDLE_UNPACKED};
use spinney_store::Store;

use crate::args::{Pack, Unpack};
use crate::failure::Failure;
use crate::{folder, terminal};

pub(crate) fn pack(args: &Pack) -> Result<bool, Failure> {
    let out = args.out.display();
    if args.out.exists() && !args.force {
        return Err(Failure::new(
            format!("There is a file {out} already."),
            "Name another one, or add --force to write over it.",
        ));
    }
    let store = Store::open(&args.file).map_err(Failure::kept)?;
    let mut bundle = Bundle::default();
    bundle.lines.extend(store.rows(0).map_err(Failure::kept)?.into_iter().map(|row| row.bytes));
    let mut held = 0;
    for hash in store.pictures().map_err(Failure::kept)? {
        if let Some(bytes) = store.picture(hash).map_err(Failure::kept)? {
            held += bytes.len() as u64;
            bundle.pictures.insert(hash.to_string(), bytes);
        }
        if held > BUNDLE_UNPACKED {
            let error = BundleError::TooLarge;
            return Err(Failure::new(error, error.remedy()));
        }
    }
    let packed = bundle.pack().map_err(|error| Failure::new(error, error.remedy()))?;
    folder::write_whole(&args.out, &packed)?;
    say(bundle.lines.len(), bundle.pictures.len(), &format!("packed into {out}"))
}

pub(crate) fn unpack(args: &Unpack) -> Result<bool, Failure> {
    let failed = |error: std::io::Error| Failure::reading(&args.packed, &error);
    let mut bytes = Vec::new();
    let file = File::open(&args.packed).map_err(failed)?;
    file.take(BUNDLE_BYTES as u64 + 1).read_to_end(&mut bytes).map_err(failed)?;
    if bytes.len() > BUNDLE_BYTES {
        let error = BundleError::TooLarge;
        return Err(Failure::new(error, error.remedy()));
    }
    let bundle = Bundle::unpack(&bytes).map_err(|error| Failure::new(error, error.remedy()))?;
    drop(bytes);
    // A line that the desk cannot read must not become a collection that cannot be opened.
    let kept = Desk::unpacked(bundle.lines, bundle.pictures)
        .map_err(|error| Failure::new(error, error.remedy()))?;
    let mut store = Store::create(&args.file).map_err(Failure::kept)?;
    if let Err(error) = store.append(0, &kept.lines, &kept.pictures) {
        drop(store);
        // Half a collection would look like a whole one.
        let _ = std::fs::remove_file(&args.file);
        return Err(Failure::kept(error));
    }
    say(
        kept.lines.len(),
        kept.pictures.len(),
        &format!("unpacked into {}", args.file.display()),
    )?;
    if kept.lost > 0 {
        terminal::print(&format!(
            "Pictures that could not be read and were left out: {}.\n",
            kept.lost
        ))?;
    }
    Ok(true)
}

fn say(lines: usize, pictures: usize, what: &str) -> Result<bool, Failure> {
    terminal::print(&format!(
        "Lines of the journal: {lines}; pictures: {pictures}; {what}.\n"
    ))?;
    Ok(true)
}
