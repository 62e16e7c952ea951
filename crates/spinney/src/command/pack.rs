//! `spinney pack` and `spinney unpack`: a collection as one zip, and back.
//!
//! Whatever a bundle brings, its pictures are kept as pixels alone, like those that are added
//! at the desk.

use std::fs::File;
use std::io::Read;

use spinney_desk::Desk;
use spinney_exchange::bundle::Bundle;
use spinney_exchange::journal::{self, LineError};
use spinney_store::Store;

use crate::args::{Pack, Unpack};
use crate::failure::Failure;
use crate::{folder, terminal};

/// The largest zip that is read, in bytes: somewhat more than a bundle may unpack to.
const LARGEST: u64 = 600 << 20;

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
    for hash in store.pictures().map_err(Failure::kept)? {
        if let Some(bytes) = store.picture(hash).map_err(Failure::kept)? {
            bundle.pictures.insert(hash.to_string(), bytes);
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
    file.take(LARGEST).read_to_end(&mut bytes).map_err(failed)?;
    let zip = args.packed.display().to_string();
    let bundle =
        Bundle::unpack(&bytes).map_err(|error| Failure::new(error.of(&zip), error.remedy()))?;
    // A line that the desk cannot read must not become a collection that cannot be opened.
    let kept = Desk::unpacked(&bundle.lines, &bundle.pictures)
        .map_err(|error| unreadable(&zip, &bundle.lines, error))?;
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

/// A packed collection with a line that cannot be read: which.
fn unreadable(zip: &str, lines: &[Vec<u8>], error: LineError) -> Failure {
    let spoilt = lines.iter().position(|line| journal::read(line) == Err(LineError::NotALine));
    match spoilt.filter(|_| error == LineError::NotALine) {
        Some(at) => Failure::new(
            format!("Line {} of the journal in {zip} is damaged.", at + 1),
            "Take another copy of it if there is one, and keep this one to have it looked at.",
        ),
        None => Failure::new(error, error.remedy()),
    }
}

fn say(lines: usize, pictures: usize, what: &str) -> Result<bool, Failure> {
    terminal::print(&format!(
        "Lines of the journal: {lines}; pictures: {pictures}; {what}.\n"
    ))?;
    Ok(true)
}
