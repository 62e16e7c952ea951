//! A collection as a table: what was typed and sorted at the screens, read at the command line.
//!
//! From the file of a collection to the table that its screens show, with its pictures. It changes
//! nothing in the file; keys that groups drew there stay there.

use std::collections::BTreeMap;
use std::io::Read;
use std::path::Path;

use spinney_collection::history::History;
use spinney_collection::laid::{Laid, chosen_of};
use spinney_collection::rows::Rows;
use spinney_exchange::journal::{self, LineError};
use spinney_model::{Entry, Finding, Matrix, OfPicture, Place, limits};
use spinney_press::Picture;
use spinney_press::picture;
use spinney_press::sheet::picture::LONGEST_SIDE;
use spinney_store::{Store, StoreError};

use super::Opened;
use crate::failure::Failure;
use crate::rescue::Rescue;
use crate::web::kept::journal_too_large;
use crate::{args, files};

/// Whether this is the file of a collection, by how it begins.
pub(super) fn is_one(path: &Path) -> bool {
    if path == Path::new("-") || !path.is_file() {
        return false;
    }
    let mut beginning = Vec::new();
    let read = files::open(path).and_then(|file| file.take(100).read_to_end(&mut beginning));
    read.is_ok() && spinney_store::is_collection(&beginning)
}

/// Reads its table and the pictures of its kinds.
///
/// **Errors**: it is damaged, too large or cannot be read; it has no kinds yet; a sheet was named
/// beside it.
pub(super) fn open(path: &Path, args: &args::Table) -> Result<Opened, Failure> {
    let sheets = [&args.characters, &args.kinds, &args.about];
    if sheets.into_iter().any(Option::is_some) {
        return Err(Failure::usage("failure-sheets-of-collection", []));
    }
    files::note_collection(path);
    let store = Store::open(path).map_err(|error| why_not(path, error))?;
    // Counted before it is held.
    let counted = journal_too_large(&store, 0).map_err(|error| why_not(path, error))?;
    if let Some(why) = counted {
        return Err(Failure::too_large("failure-collection-too-large", path, why));
    }
    let rows = store.check().and_then(|()| store.rows(0));
    let rows = rows.map_err(|error| why_not(path, error))?;
    let entries = rows.iter().map(|row| journal::read(&row.bytes));
    let entries = entries.collect::<Result<Vec<Entry>, _>>().map_err(|error| match error {
        LineError::NotALine => damaged(path),
        newer @ LineError::Newer(_) => Failure::of_line(newer),
    })?;
    let mut history = History::default();
    history.add_all(entries);
    if args.rows == Some(args::Rows::Leaves) {
        return leaves(path, &history);
    }
    let Some(laid) = Laid::read(&history.now, &args.settings()) else {
        return Err(Failure::new("failure-no-kinds-yet", [("file", path.into())]));
    };
    let mut findings = laid.findings;
    let pictures =
        pictures(&laid.matrix, &store, &mut findings).map_err(|error| why_not(path, error))?;
    let chosen = chosen_of(&history.now, &laid.kinds);
    Ok(Opened { matrix: laid.matrix, specimens: None, findings, pictures, chosen })
}

/// The leaves that were taken in one by one, and what they come to.
fn leaves(path: &Path, history: &History) -> Result<Opened, Failure> {
    let Some(Rows { kinds, specimens, .. }) = Rows::of(&history.now) else {
        return Err(Failure::new("failure-leaves-of-collection", [("file", path.into())]));
    };
    let (findings, pictures, chosen) = (Vec::new(), BTreeMap::new(), Vec::new());
    Ok(Opened { matrix: kinds, specimens: Some(specimens), findings, pictures, chosen })
}

fn why_not(path: &Path, error: StoreError) -> Failure {
    match error {
        StoreError::Damaged { .. } => damaged(path),
        error => Failure::kept(error),
    }
}

fn damaged(path: &Path) -> Failure {
    match Rescue::of(path) {
        Ok(rescue) => Failure::damaged(&rescue),
        Err(failure) => failure,
    }
}

/// The first picture of each kind, as paper shows it.
fn pictures(
    matrix: &Matrix,
    store: &Store,
    findings: &mut Vec<Finding>,
) -> Result<BTreeMap<String, Picture>, StoreError> {
    let mut pictures = BTreeMap::new();
    let mut room = limits::PICTURES_OF_A_KEY;
    for taxon in matrix.taxa() {
        let Some(name) = &taxon.picture else { continue };
        let Ok(hash) = name.parse() else { continue };
        if pictures.contains_key(name) || room == 0 {
            continue;
        }
        let kept = store.picture(hash)?;
        match kept.and_then(|bytes| picture::packed_anew(&bytes, LONGEST_SIDE).ok()) {
            Some(picture) => {
                room = room.saturating_sub(picture.bytes().len());
                pictures.insert(name.clone(), picture);
            }
            None => {
                let fact = OfPicture::Damaged { kind: taxon.name.clone() };
                findings.push(Finding::of(Place::Taxon(taxon.name.clone()), fact));
            }
        }
    }
    Ok(pictures)
}
