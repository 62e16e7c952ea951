//! A collection that comes from elsewhere: its pictures are written anew, like any that are
//! added here, and its journal names them as they are then.
//!
//! From the lines and pictures of a bundle to those that are kept. Whoever packed it may have
//! used another program, so that a picture can still tell where and when it was taken.

use std::collections::BTreeMap;

use spinney_exchange::bundle::Bundle;
use spinney_exchange::journal::{self, LineError};
use spinney_model::{Done, Edit, Entry, KindEdit, SpecimenEdit};

use spinney_collection::forget;

use crate::pictures;

/// A collection as it is kept.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct Unpacked {
    /// The lines of its journal. Where no picture is named, they are as they came.
    pub lines: Vec<Vec<u8>>,
    /// Its pictures: pixels and nothing else. One that no line names is none of the collection.
    pub pictures: Vec<Vec<u8>>,
    /// How many pictures could not be read and were left out.
    pub lost: usize,
}

/// Writes the pictures anew.
///
/// **Errors**: a line that is newer than this program, or damaged.
pub(crate) fn unpacked(
    lines: Vec<Vec<u8>>,
    mut given: BTreeMap<String, Vec<u8>>,
) -> Result<Unpacked, LineError> {
    let entries = lines.iter().map(|line| journal::read(line));
    let entries: Vec<Entry> = entries.collect::<Result<_, _>>()?;
    let (mut anew, mut kept) = (BTreeMap::new(), BTreeMap::new());
    let mut lost = 0;
    for hash in forget::pictures(&entries).into_keys() {
        // One after another goes, so that they are not held twice.
        let Some(bytes) = given.remove(&hash) else { continue };
        match pictures::written_anew(&bytes) {
            Ok(picture) => {
                let name = pictures::name(&picture);
                kept.insert(name.clone(), picture);
                anew.insert(hash, name);
            }
            Err(_) => lost += 1,
        }
    }
    let lines = lines.into_iter().zip(entries);
    let lines = lines.map(|(line, entry)| match renamed(entry, &anew) {
        Some(entry) => journal::write(&entry),
        None => line,
    });
    Ok(Unpacked { lines: lines.collect(), pictures: kept.into_values().collect(), lost })
}

/// A collection as it is handed on. Where all its pictures are pixels and nothing else, it is
/// as it is kept; where another program has put in one that tells more, as one that comes from
/// there.
///
/// **Errors**: a line that is newer than this program, or damaged.
pub(crate) fn handed_on(bundle: Bundle) -> Result<(Bundle, usize), LineError> {
    if bundle.pictures.values().all(|picture| spinney_press::picture::is_bare(picture)) {
        return Ok((bundle, 0));
    }
    let Unpacked { lines, pictures, lost } = unpacked(bundle.lines, bundle.pictures)?;
    let pictures = pictures.into_iter().map(|picture| (pictures::name(&picture), picture));
    Ok((Bundle { lines, pictures: pictures.collect() }, lost))
}

/// The entry with the new names of its pictures; None: it names none that has another.
fn renamed(mut entry: Entry, anew: &BTreeMap<String, String>) -> Option<Entry> {
    let Done::Edits(edits) = &mut entry.done else { return None };
    let mut changed = false;
    for edit in edits {
        if let Edit::Kind(_, KindEdit::AddPicture(hash))
        | Edit::Kind(_, KindEdit::RemovePicture(hash))
        | Edit::Specimen(_, SpecimenEdit::Picture(hash)) = edit
            && let Some(name) = anew.get(hash).filter(|name| *name != hash)
        {
            hash.clone_from(name);
            changed = true;
        }
    }
    changed.then_some(entry)
}

#[cfg(test)]
mod tests;
