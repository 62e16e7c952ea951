//! `spinney pack` and `spinney unpack`: a collection as one zip, and back.
//!
//! Whatever a bundle brings, its pictures are kept as pixels alone, like those that are added
//! at the desk.

use std::io::Read;
use std::path::Path;

use spinney_desk::Desk;
use spinney_exchange::bundle::Bundle;
use spinney_exchange::journal::{self, LineError};
use spinney_store::{Store, StoreError};

use crate::args::{Pack, Unpack};
use crate::failure::Failure;
use crate::files::{self, Over};
use crate::terminal;

/// The largest zip that is read, in bytes: somewhat more than a bundle may unpack to.
const LARGEST: u64 = 600 << 20;

pub(crate) fn pack(args: &Pack) -> Result<bool, Failure> {
    let out = args.out.display();
    let over = Over::forced(args.force);
    files::note_collection(&args.file);
    files::may_be_written(&args.out, over)?;
    let store = Store::open(&args.file).map_err(Failure::kept)?;
    let mut bundle = Bundle::default();
    bundle.lines.extend(store.rows(0).map_err(Failure::kept)?.into_iter().map(|row| row.bytes));
    for hash in store.pictures().map_err(Failure::kept)? {
        if let Some(bytes) = store.picture(hash).map_err(Failure::kept)? {
            bundle.pictures.insert(hash.to_string(), bytes);
        }
    }
    let packed = bundle.pack().map_err(|error| Failure::new(error, error.remedy()))?;
    files::write_whole(&args.out, &packed, over)?;
    say(bundle.lines.len(), bundle.pictures.len(), &format!("packed into {out}"))
}

pub(crate) fn unpack(args: &Unpack) -> Result<bool, Failure> {
    let failed = |error: std::io::Error| Failure::reading(&args.packed, &error);
    let mut bytes = Vec::new();
    let file = files::open(&args.packed).map_err(failed)?;
    files::may_be_written(&args.file, Over::Nothing)?;
    file.take(LARGEST).read_to_end(&mut bytes).map_err(failed)?;
    let zip = args.packed.display().to_string();
    let bundle =
        Bundle::unpack(&bytes).map_err(|error| Failure::new(error.of(&zip), error.remedy()))?;
    // A line that the desk cannot read must not become a collection that cannot be opened.
    let kept = Desk::unpacked(&bundle.lines, &bundle.pictures)
        .map_err(|error| unreadable(&zip, &bundle.lines, error))?;
    new_collection(&args.file, &kept.lines, &kept.pictures)?;
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

/// Makes a file of a collection, whole or not at all: beside its place first, since another
/// program may make a file of that name meanwhile, and that one is not ours to take away.
fn new_collection(path: &Path, lines: &[Vec<u8>], pictures: &[Vec<u8>]) -> Result<(), Failure> {
    // An empty file is a collection that is just beginning.
    let part = files::part_of(path).map_err(|error| Failure::writing(path, &error))?;
    let kept = |error: StoreError| Failure::kept(error.of_place(part.path(), path));
    let mut store = Store::create(part.path()).map_err(kept)?;
    store.append(0, lines, pictures).map_err(kept)?;
    drop(store);
    files::put_in_place(part, path, Over::Nothing)
}

fn say(lines: usize, pictures: usize, what: &str) -> Result<bool, Failure> {
    terminal::print(&format!(
        "Lines of the journal: {lines}; pictures: {pictures}; {what}.\n"
    ))?;
    Ok(true)
}
