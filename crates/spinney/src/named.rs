//! A file that a person named, and why it cannot be taken: it is not there, it is a folder, it
//! is something else.
//!
//! From a name as it was typed to a sentence and a remedy, with the name that was probably
//! meant. It looks at names in the folder and at the beginning of a file, and opens nothing.

use std::io::Read;
use std::path::{Path, PathBuf};

use spinney_exchange::table::{Instead, what_it_is};

use crate::failure::Failure;
use crate::near::nearest;
use crate::words::{Text, Words};

/// So many names of a folder are looked at.
const NAMES: usize = 2_000;
/// The endings of what a person can have meant, the likeliest first.
const ENDINGS: [&str; 6] = ["csv", "xlsx", "tsv", "txt", "spinney", "json"];
/// The endings of tables.
const TABLES: [&str; 3] = ["csv", "xlsx", "tsv"];
/// The endings of what is read beside a collection: tables first, then keys.
const TEXTS: [&str; 5] = ["csv", "xlsx", "tsv", "txt", "json"];

/// There is no file of that name: which was meant?
pub(crate) fn not_there(path: &Path) -> Failure {
    let typed = path.to_string_lossy();
    if let Some(failure) = by_its_signs(&typed) {
        return failure;
    }
    if let Some(folder) = missing_folder(path) {
        let texts = [("folder", folder.into()), ("file", (&*typed).into())];
        return Failure::usage("failure-no-folder-no-file", texts);
    }
    let folder = folder_of(path);
    let here = folder == Path::new("");
    let sentence = if here { "failure-no-file-here" } else { "failure-no-file" };
    let sentence = Words::new(sentence, [("file", (&*typed).into())]);
    let name = path.file_name().unwrap_or_default().to_string_lossy();
    let names = names_in(&folder);
    let same = names.iter().find(|other| other.to_lowercase() == name.to_lowercase());
    let (message, near) = match same {
        Some(same) if *same == same.to_lowercase() => ("failure-mean-small", same.as_str()),
        Some(same) => ("failure-mean-capitals", same.as_str()),
        None => match meant(&name, &names) {
            Some(near) => ("failure-mean", near),
            None => {
                return Failure::of(sentence, Words::of("failure-look-at-name")).wrongly_used();
            }
        },
    };
    let meant = Words::new(message, [("meant", folder.join(near).display().into())]);
    Failure::of(sentence, meant).wrongly_used()
}

/// What the signs of a name say about it, whatever is in the folder.
fn by_its_signs(typed: &str) -> Option<Failure> {
    let start = typed.to_lowercase();
    let file = ("file", typed.into());
    if ["http://", "https://", "www."].iter().any(|sign| start.starts_with(sign)) {
        return Some(Failure::usage("failure-internet", [file]));
    }
    if start.starts_with("file:") {
        let bare = typed["file:".len()..].trim_start_matches("//");
        let name = percent_encoding::percent_decode_str(bare).decode_utf8_lossy();
        let name = ("name", (&*name).into());
        return Some(Failure::usage("failure-file-address", [file, name]));
    }
    let bare = typed.trim_matches(['“', '”', '„', '‘', '’', '«', '»']);
    if bare != typed {
        return Some(Failure::usage("failure-curly", [file, ("name", bare.into())]));
    }
    if typed.trim() != typed {
        let bare = typed.trim();
        let after = typed.starts_with(bare);
        let message = if after { "failure-space-after" } else { "failure-space-before" };
        return Some(Failure::usage(message, [("name", bare.into())]));
    }
    if typed == "~" || typed.starts_with("~/") {
        return Some(Failure::usage("failure-tilde", [file]));
    }
    None
}

/// The name that was probably meant: another ending, or a few letters wrong.
fn meant<'a>(name: &str, names: &'a [String]) -> Option<&'a str> {
    let ending = |ending: &&str| {
        let whole = format!("{}.{ending}", name.to_lowercase());
        names.iter().find(|other| other.to_lowercase() == whole)
    };
    let left_out = ENDINGS.iter().find_map(ending);
    left_out.map(String::as_str).or_else(|| nearest(name, names.iter().map(String::as_str)))
}

/// A folder where a file is wanted.
pub(crate) fn a_folder(path: &Path) -> Failure {
    let remedy = match fitting(path, &TEXTS).as_slice() {
        [] => Words::of("failure-give-a-file"),
        [one] => Words::new("failure-give-the-file", [("file", (&**one).into())]),
        [first, ..] => Words::new("failure-give-one-file", [("file", (&**first).into())]),
    };
    Failure::of(Words::new("failure-a-folder", [("folder", path.into())]), remedy)
        .wrongly_used()
}

/// A folder where a collection is wanted.
pub(crate) fn no_collection_but_a_folder(path: &Path) -> Failure {
    let remedy = match fitting(path, &["spinney"]).first() {
        Some(file) => Words::new("failure-give-the-collection", [("file", (&**file).into())]),
        None => {
            let such = path.join("class4.spinney");
            Words::new("failure-give-a-collection", [("file", such.display().into())])
        }
    };
    Failure::of(Words::new("failure-a-folder", [("folder", path.into())]), remedy)
        .wrongly_used()
}

/// A folder that was given as a table, and holds no `table.csv`.
pub(crate) fn folder_without_a_table(path: &Path) -> Failure {
    let remedy = match fitting(path, &TABLES).as_slice() {
        [] => {
            let such = path.join("finds.csv");
            Words::new("failure-give-a-table", [("file", such.display().into())])
        }
        [one] => Words::new("failure-give-that", [("file", (&**one).into())]),
        some => {
            let shown = some.iter().take(3).map(|path| path.display().to_string());
            Words::new("failure-give-one-table", [("files", Text::Any(shown.collect()))])
        }
    };
    let sentence = Words::new("failure-no-table-in-folder", [("folder", path.into())]);
    Failure::of(sentence, remedy).wrongly_used()
}

/// There is no such folder to put something in.
pub(crate) fn no_folder(folder: &Path) -> Failure {
    Failure::usage("failure-no-folder", [("folder", folder.into())])
}

/// The folder of a file, if it is not there.
pub(crate) fn missing_folder(path: &Path) -> Option<&Path> {
    let folder = path.parent().filter(|folder| *folder != Path::new(""))?;
    (!folder.exists()).then_some(folder)
}

/// What a file is that was given as a collection, where more can be said than that it is none.
pub(crate) fn no_collection(path: &Path) -> Option<Failure> {
    let name = path.file_name()?.to_string_lossy();
    let is = what_it_is(&name, &beginning(path)?)?;
    let file = ("file", path.into());
    Some(match is {
        Instead::Empty => Failure::new("failure-empty-collection", [file]),
        Instead::PackedCollection => {
            Failure::of(Words::new("failure-packed", [file]), unpack_it(path))
        }
        // Other databases, and texts, in which nobody sees what they are not.
        Instead::Database => return None,
        is => Failure::new("failure-no-collection", [file, ("what", is.into())]),
    })
}

/// What to type so that a packed collection can be opened.
pub(crate) fn unpack_it(path: &Path) -> Words {
    let into = path.with_extension("spinney");
    Words::new("failure-unpack-it", [("file", path.into()), ("into", into.display().into())])
}

/// As much of a file as says what it is.
fn beginning(path: &Path) -> Option<Vec<u8>> {
    /// The list of what a zip holds is at its end, so all of a small one is read.
    const MOST: u64 = 24 << 20;
    let mut bytes = Vec::new();
    std::fs::File::open(path).ok()?.take(MOST).read_to_end(&mut bytes).ok()?;
    Some(bytes)
}

/// The files in a folder that a person can have meant, the likeliest first.
fn fitting(folder: &Path, endings: &[&str]) -> Vec<PathBuf> {
    let mut names: Vec<(usize, String)> = names_in(folder)
        .into_iter()
        .filter_map(|name| {
            let (_, ending) = name.rsplit_once('.')?;
            let ending = ending.to_lowercase();
            let rank = endings.iter().position(|known| *known == ending)?;
            (!name.starts_with(['.', '~'])).then_some((rank, name))
        })
        .collect();
    names.sort();
    names.into_iter().map(|(_, name)| folder.join(name)).collect()
}

fn folder_of(path: &Path) -> PathBuf {
    path.parent().map(Path::to_path_buf).unwrap_or_default()
}

/// The names in a folder, sorted.
fn names_in(folder: &Path) -> Vec<String> {
    let folder = if folder == Path::new("") { Path::new(".") } else { folder };
    let Ok(entries) = std::fs::read_dir(folder) else { return Vec::new() };
    let names = entries.flatten().take(NAMES);
    let mut names: Vec<String> =
        names.filter_map(|entry| entry.file_name().into_string().ok()).collect();
    names.sort();
    names
}
