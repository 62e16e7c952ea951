//! Reads what a person points at: a table with its sheets, its pictures, a key.

use std::collections::BTreeMap;
use std::io::Read;
use std::path::{Component, Path, PathBuf};

use spinney_exchange::table::{self, Settings, Source, Sources};
use spinney_model::{Code, Finding, Matrix, Place};
use spinney_press::Picture;

use crate::failure::Failure;
use crate::{args, files};

/// The most that is read of one file, in bytes: the reader of tables takes less.
const LARGEST_FILE: u64 = 32 << 20;
/// The most that is read of one picture, in bytes: a photograph of a telephone takes ten.
const LARGEST_PICTURE: u64 = 32 << 20;

/// A table as it was read.
pub(crate) struct Collection {
    pub(crate) matrix: Matrix,
    pub(crate) findings: Vec<Finding>,
    pub(crate) pictures: BTreeMap<String, Picture>,
}

/// Refuses a command line on which stdin is a table's sheet and something else as well.
pub(crate) fn stdin_once(args: &args::Table) -> Result<(), Failure> {
    let sheets = [Some(&args.table), args.characters.as_ref(), args.kinds.as_ref()];
    let all = sheets.into_iter().chain([args.about.as_ref()]).flatten();
    if all.filter(|path| path.as_path() == Path::new("-")).count() == 0 {
        return Ok(());
    }
    Err(Failure::usage(
        "Only one of the files can be read from stdin (`-`).",
        "Name a file for the others.",
    ))
}

/// Reads a table, its sheets and its pictures.
pub(crate) fn open(args: &args::Table) -> Result<Collection, Failure> {
    let (table, beside) = if args.table.is_dir() {
        (args.table.join("table.csv"), Some(args.table.clone()))
    } else {
        (args.table.clone(), None)
    };
    if args.table == Path::new("-") {
        let sheets = args::Table { table: PathBuf::new(), ..args.clone() };
        stdin_once(&sheets)?;
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
    let read = table::read(&sources, &Settings { gap: Some(args.gap) })
        .map_err(|error| Failure::new(&error, error.remedy()))?;
    let mut findings = read.findings;
    let folder = table.parent().map(Path::to_path_buf).unwrap_or_default();
    let pictures = pictures(&read.matrix, &folder, &mut findings);
    Ok(Collection { matrix: read.matrix, findings, pictures })
}

/// Reads a text, such as a key, in whatever encoding it was saved; `-` is stdin.
pub(crate) fn text(path: &Path) -> Result<String, Failure> {
    Ok(table::decode(&source(path)?.bytes))
}

fn source(path: &Path) -> Result<Source, Failure> {
    if path == Path::new("-") {
        let bytes = read_at_most(std::io::stdin().lock(), LARGEST_FILE, path)?;
        return Ok(Source { name: "stdin".to_owned(), bytes });
    }
    let file = files::open(path).map_err(|error| Failure::reading(path, &error))?;
    let bytes = read_at_most(file, LARGEST_FILE, path)?;
    let name = path.file_name().unwrap_or(path.as_os_str()).to_string_lossy().into_owned();
    Ok(Source { name, bytes })
}

fn read_at_most(from: impl Read, most: u64, path: &Path) -> Result<Vec<u8>, Failure> {
    let mut bytes = Vec::new();
    from.take(most + 1)
        .read_to_end(&mut bytes)
        .map_err(|error| Failure::reading(path, &error))?;
    if bytes.len() as u64 > most {
        return Err(Failure::new(
            format!("{} is larger than {} MiB.", path.display(), most >> 20),
            "Leave out what is no part of the table, and save it again.",
        ));
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
    for taxon in matrix.taxa() {
        let Some(name) = &taxon.picture else { continue };
        match picture(folder, name) {
            Ok(picture) => {
                pictures.insert(name.clone(), picture);
            }
            Err(why) => findings.push(Finding::new(
                Code::LeftOut,
                Place::Taxon(taxon.name.clone()),
                format!("The picture {name} of {} was left out: {why}.", taxon.name),
                "Put a PNG or JPEG file of that name beside the table. Without it there is \
                 an empty box.",
            )),
        }
    }
    pictures
}

fn picture(folder: &Path, name: &str) -> Result<Picture, String> {
    let inside = Path::new(name).components().all(|part| matches!(part, Component::Normal(_)));
    if !inside {
        return Err("it is not beside the table".to_owned());
    }
    let path = folder.join(name);
    let file = files::open(&path).map_err(|error| error.to_string())?;
    let bytes = read_at_most(file, LARGEST_PICTURE, &path)
        .map_err(|_| format!("it is larger than {} MiB", LARGEST_PICTURE >> 20))?;
    match bytes.as_slice() {
        [0x89, b'P', b'N', b'G', ..] => Ok(Picture::Png(bytes)),
        [0xff, 0xd8, 0xff, ..] => Ok(Picture::Jpeg(bytes)),
        _ => Err("it is neither PNG nor JPEG".to_owned()),
    }
}
