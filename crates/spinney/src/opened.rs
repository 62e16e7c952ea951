//! Reads what a person points at: a table with its sheets, its pictures, a collection, a key.

use std::collections::BTreeMap;
use std::io::Read;
use std::path::{Component, Path, PathBuf};

use spinney_exchange::table::{
    self, Instead, Settings, Source, Sources, TableError, what_it_is,
};
use spinney_model::{
    Code, Drawing, Finding, Matrix, OfPicture, Place, Specimens, WhyNoPicture, limits,
};
use spinney_press::Picture;
use spinney_press::picture::{self, NoPicture};
use spinney_press::sheet::picture::LONGEST_SIDE;

use crate::failure::{self, Failure};
use crate::words::Words;
use crate::{args, files, named};

mod of_collection;

/// A table as it was read.
pub(crate) struct Opened {
    pub(crate) matrix: Matrix,
    /// A row a leaf, where the table has that.
    pub(crate) specimens: Option<Specimens>,
    pub(crate) findings: Vec<Finding>,
    pub(crate) pictures: BTreeMap<String, Picture>,
    /// The drawing of each kind that somebody chose for it; empty: of none.
    pub(crate) chosen: Vec<Option<Drawing>>,
}

/// Refuses a command line on which stdin is a table's sheet and something else as well.
pub(crate) fn stdin_once(args: &args::Table) -> Result<(), Failure> {
    let sheets = [Some(&args.table), args.characters.as_ref(), args.kinds.as_ref()];
    let all = sheets.into_iter().chain([args.about.as_ref()]).flatten();
    if all.filter(|path| path.as_path() == Path::new("-")).count() == 0 {
        return Ok(());
    }
    Err(Failure::usage("failure-stdin-once", []))
}

/// Reads a table, its sheets and its pictures.
pub(crate) fn open(args: &args::Table) -> Result<Opened, Failure> {
    let (table, beside) = if args.table.is_dir() {
        let table = args.table.join("table.csv");
        if !table.is_file() {
            return Err(named::folder_without_a_table(&args.table));
        }
        (table, Some(args.table.clone()))
    } else {
        (args.table.clone(), None)
    };
    if args.table == Path::new("-") {
        let sheets = args::Table { table: PathBuf::new(), ..args.clone() };
        stdin_once(&sheets)?;
    }
    if of_collection::is_one(&table) {
        return of_collection::open(&table, args);
    }
    let sheet = |given: &Option<PathBuf>, name: &str| -> Result<Option<Source>, Failure> {
        let found = beside.as_ref().map(|folder| folder.join(name)).filter(|p| p.exists());
        given.as_ref().or(found.as_ref()).map(|path| source(path)).transpose()
    };
    let sources = Sources {
        table: source(&table)?,
        characters: sheet(&args.characters, "characters.csv")?,
        kinds: sheet(&args.kinds, "kinds.csv")?,
        about: sheet(&args.about, "about.csv")?,
    };
    let read = table::read(&sources, &args.settings())
        .map_err(|error| no_table(&table, &sources.table, error))?;
    let mut findings = read.findings;
    let folder = table.parent().map(Path::to_path_buf).unwrap_or_default();
    let pictures = pictures(&read.matrix, &folder, &mut findings);
    let (matrix, specimens) = (read.matrix, read.specimens);
    Ok(Opened { matrix, specimens, findings, pictures, chosen: Vec::new() })
}

/// The same for a key: there must be several kinds, and something that tells them apart.
pub(crate) fn open_for_a_key(args: &args::Table) -> Result<Opened, Failure> {
    let opened = open(args)?;
    let matrix = &opened.matrix;
    if let [only] = matrix.taxa() {
        return Err(Failure::new("failure-one-kind", [("kind", only.name.clone().into())]));
    }
    // Where columns were left out, a finding says why.
    let left_out = |finding: &Finding| {
        matches!(finding.code, Code::LeftOut | Code::TooLarge)
            && matches!(finding.place, Place::Character(_))
    };
    if matrix.characters().is_empty() && !opened.findings.iter().any(left_out) {
        return Err(Failure::new("failure-no-column", [("file", (&*args.table).into())]));
    }
    Ok(opened)
}

/// Why a file is no table, with what to type instead.
fn no_table(path: &Path, given: &Source, error: TableError) -> Failure {
    let file = || ("file", path.into());
    let remedy = match &error {
        TableError::NoKinds { .. }
            if what_it_is(&given.name, &given.bytes) == Some(Instead::Empty) =>
        {
            return empty(path);
        }
        TableError::NotATable { what: Instead::Database, .. }
            if spinney_store::is_collection(&given.bytes) =>
        {
            return Failure::new("failure-collection-no-table", [file()]);
        }
        TableError::NotATable { what: Instead::KeyInWords, .. } => {
            Words::new("failure-table-before-key", [file()])
        }
        TableError::NotATable { what: Instead::PackedCollection, .. } => named::unpack_it(path),
        TableError::OtherPart { is, .. } => {
            Words::new("failure-give-with", [("option", (*is).into())])
        }
        _ => return Failure::of_table(error),
    };
    Failure::saying(move |t| (spinney_voice::table_error(t, &error).0, remedy.said(t)))
}

fn empty(path: &Path) -> Failure {
    if path == Path::new("-") {
        return Failure::new("failure-nothing-came", []);
    }
    Failure::new("failure-empty", [("file", path.into())])
}

/// Reads a key in whatever encoding it was saved; `-` is stdin.
pub(crate) fn key(path: &Path) -> Result<String, Failure> {
    let given = read(path, limits::KEY_BYTES)?;
    let Some(is) = what_it_is(&given.name, &given.bytes).filter(|is| !is.is_text()) else {
        return Ok(table::decode(&given.bytes));
    };
    let remedy = match is {
        Instead::Empty => return Err(empty(path)),
        Instead::WordDocument | Instead::TextDocument => "failure-key-from-document",
        Instead::Pdf => "failure-key-from-pdf",
        Instead::Picture | Instead::Photograph => "failure-key-from-picture",
        _ => "failure-key-from-other",
    };
    let sentence = Words::new("failure-no-key", [("file", path.into()), ("what", is.into())]);
    Err(Failure::of(sentence, Words::of(remedy)))
}

/// Reads a links file; an empty one says nothing.
pub(crate) fn links(path: &Path) -> Result<String, Failure> {
    plain_text(path, "failure-no-links")
}

/// A text, or nothing; `otherwise` says that it is something else.
fn plain_text(path: &Path, otherwise: &'static str) -> Result<String, Failure> {
    let given = read(path, limits::KEY_BYTES)?;
    match what_it_is(&given.name, &given.bytes) {
        Some(is) if !is.is_text() && is != Instead::Empty => {
            Err(Failure::new(otherwise, [("file", path.into()), ("what", is.into())]))
        }
        _ => Ok(table::decode(&given.bytes)),
    }
}

/// Reads a file of mends; an empty one says nothing.
pub(crate) fn mends(path: &Path) -> Result<String, Failure> {
    plain_text(path, "failure-no-mends")
}

/// Whether a text can be read as a table with something to ask.
pub(crate) fn is_a_table(text: &str) -> bool {
    let table = Source { name: String::new(), bytes: text.as_bytes().to_vec() };
    let read = table::read(&Sources { table, ..Sources::default() }, &Settings::default());
    read.is_ok_and(|read| !read.matrix.characters().is_empty())
}

/// The bytes of a scan that a person names.
pub(crate) fn scan_bytes(path: &Path) -> Result<Vec<u8>, Failure> {
    read(path, limits::SCAN_BYTES).map(|source| source.bytes)
}

fn source(path: &Path) -> Result<Source, Failure> {
    read(path, limits::TABLE_BYTES)
}

fn read(path: &Path, most: usize) -> Result<Source, Failure> {
    if path == Path::new("-") {
        let bytes = read_at_most(files::stdin(), most, path)?;
        return Ok(Source { name: "stdin".to_owned(), bytes });
    }
    let file = files::open(path).map_err(|error| Failure::reading(path, &error))?;
    let bytes = read_at_most(file, most, path)?;
    let name = path.file_name().unwrap_or(path.as_os_str()).to_string_lossy().into_owned();
    Ok(Source { name, bytes })
}

fn read_at_most(from: impl Read, most: usize, path: &Path) -> Result<Vec<u8>, Failure> {
    let mut bytes = Vec::new();
    from.take(most as u64 + 1)
        .read_to_end(&mut bytes)
        .map_err(|error| Failure::reading(path, &error))?;
    if bytes.len() > most {
        let texts = [("file", path.into()), ("most", (most >> 20).into())];
        return Err(Failure::new("failure-too-large", texts));
    }
    Ok(bytes)
}

/// The pictures that the kinds name, from beside the table and nowhere else.
fn pictures(
    matrix: &Matrix,
    folder: &Path,
    findings: &mut Vec<Finding>,
) -> BTreeMap<String, Picture> {
    let mut pictures = BTreeMap::new();
    let mut room = limits::PICTURES_OF_A_KEY;
    for taxon in matrix.taxa() {
        let Some(name) = &taxon.picture else { continue };
        if pictures.contains_key(name) {
            continue;
        }
        let found = match room {
            0 => Err(WhyNoPicture::TooManyBytes),
            _ => picture(folder, name),
        };
        match found {
            Ok(picture) => {
                room = room.saturating_sub(picture.bytes().len());
                pictures.insert(name.clone(), picture);
            }
            Err(why) => {
                let (kind, picture) = (taxon.name.clone(), name.clone());
                let fact = OfPicture::LeftOut { kind, picture, why };
                findings.push(Finding::of(Place::Taxon(taxon.name.clone()), fact));
            }
        }
    }
    pictures
}

fn picture(folder: &Path, name: &str) -> Result<Picture, WhyNoPicture> {
    let inside = Path::new(name).components().all(|part| matches!(part, Component::Normal(_)));
    if !inside {
        return Err(WhyNoPicture::Elsewhere);
    }
    let path = folder.join(name);
    let file = files::open(&path).map_err(|error| match error.kind() {
        std::io::ErrorKind::NotFound => WhyNoPicture::NoFile,
        _ => WhyNoPicture::File(failure::trouble(&error)),
    })?;
    let bytes = read_at_most(file, limits::PICTURE_BYTES, &path)
        .map_err(|_| WhyNoPicture::TooLarge(limits::PICTURE_BYTES >> 20))?;
    // Pixels and nothing else, no more of them than paper shows: a hundred photographs fit.
    picture::packed_anew(&bytes, LONGEST_SIDE).map_err(|why| match why {
        NoPicture::NotRead => WhyNoPicture::NotRead,
        NoPicture::TooLarge => WhyNoPicture::TooManyPixels,
    })
}
