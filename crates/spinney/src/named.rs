//! A file that a person named, and why it cannot be taken: it is not there, it is a folder, it
//! is something else.
//!
//! From a name as it was typed to a sentence and a remedy, with the name that was probably
//! meant. It looks at names in the folder and at the beginning of a file, and opens nothing.

use std::io::Read;
use std::path::{Path, PathBuf};

use spinney_exchange::table::{Instead, what_it_is};

use crate::failure::{self, Failure};
use crate::near::nearest;

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
        return Failure::usage(
            format!("There is no folder {}, and so no file {typed}.", folder.display()),
            "Look at the name of the folder.",
        );
    }
    let folder = folder_of(path);
    let here = if folder == Path::new("") { " here" } else { "" };
    let sentence = format!("There is no file {typed}{here}.");
    let name = path.file_name().unwrap_or_default().to_string_lossy();
    let names = names_in(&folder);
    let same = names.iter().find(|other| other.to_lowercase() == name.to_lowercase());
    if let Some(same) = same {
        let letters =
            if *same == same.to_lowercase() { "small letters" } else { "these capitals" };
        let meant = folder.join(same);
        let remedy = format!("Do you mean {}, in {letters}?", meant.display());
        return Failure::usage(sentence, remedy);
    }
    match meant(&name, &names) {
        Some(near) => {
            let meant = folder.join(near);
            Failure::usage(sentence, format!("Do you mean {}?", meant.display()))
        }
        None => {
            Failure::usage(sentence, "Look at the name, or drag the file into this window.")
        }
    }
}

/// What the signs of a name say about it, whatever is in the folder.
fn by_its_signs(typed: &str) -> Option<Failure> {
    let start = typed.to_lowercase();
    if ["http://", "https://", "www."].iter().any(|sign| start.starts_with(sign)) {
        return Some(Failure::usage(
            format!("{typed} is on the internet, and Spinney fetches nothing from there."),
            "Download the file first, and give its name.",
        ));
    }
    if start.starts_with("file:") {
        let bare = typed["file:".len()..].trim_start_matches("//");
        let name = percent_encoding::percent_decode_str(bare).decode_utf8_lossy();
        return Some(Failure::usage(
            format!("{typed} is the address of a file in a browser."),
            format!("Type the name of the file without file://, so: {name}"),
        ));
    }
    let bare = typed.trim_matches(['“', '”', '„', '‘', '’', '«', '»']);
    if bare != typed {
        return Some(Failure::usage(
            format!("There is no file {typed}: the quotation marks around the name are curly."),
            format!("Type straight quotation marks, or none: {bare}"),
        ));
    }
    if typed.trim() != typed {
        let bare = typed.trim();
        let place = if typed.starts_with(bare) { "after" } else { "before" };
        return Some(Failure::usage(
            format!("There is no file of that name: there is a space {place} {bare}."),
            "Type the name without the space.",
        ));
    }
    if typed == "~" || typed.starts_with("~/") {
        return Some(Failure::usage(
            format!(
                "There is no file {typed}: ~ means your own folder only without quotation marks."
            ),
            "Type it without quotation marks, or write the whole name.",
        ));
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
        [] => "Give the name of a file.".to_owned(),
        [one] => format!("Give the file in it: {}", one.display()),
        [first, ..] => format!("Give one of the files in it, such as {}.", first.display()),
    };
    Failure::usage(format!("{} is a folder.", path.display()), remedy)
}

/// A folder where a collection is wanted.
pub(crate) fn no_collection_but_a_folder(path: &Path) -> Failure {
    let remedy = match fitting(path, &["spinney"]).first() {
        Some(file) => format!("Give the file of the collection: {}", file.display()),
        None => {
            let such = path.join("class4.spinney");
            format!("Give the file of a collection, such as {}.", such.display())
        }
    };
    Failure::usage(format!("{} is a folder.", path.display()), remedy)
}

/// A folder that was given as a table, and holds no `table.csv`.
pub(crate) fn folder_without_a_table(path: &Path) -> Failure {
    let remedy = match fitting(path, &TABLES).as_slice() {
        [] => {
            let such = path.join("finds.csv");
            format!("Give the file of the table, such as {}.", such.display())
        }
        [one] => format!("There is {}: give that.", one.display()),
        some => {
            let shown: Vec<String> =
                some.iter().take(3).map(|path| path.display().to_string()).collect();
            format!("Give the file of the table: {}.", shown.join(" or "))
        }
    };
    let sentence = format!("{} is a folder, and there is no table.csv in it.", path.display());
    Failure::usage(sentence, remedy)
}

/// There is no such folder to put something in.
pub(crate) fn no_folder(folder: &Path) -> Failure {
    Failure::usage(
        format!("There is no folder {}.", folder.display()),
        "Make it first, or choose another place.",
    )
}

/// The folder of a file, if it is not there.
pub(crate) fn missing_folder(path: &Path) -> Option<&Path> {
    let folder = path.parent().filter(|folder| *folder != Path::new(""))?;
    (!folder.exists()).then_some(folder)
}

/// What a file is that was given as a collection, where more can be said than that it is none.
pub(crate) fn no_collection(path: &Path) -> Option<Failure> {
    let shown = path.display();
    let name = path.file_name()?.to_string_lossy();
    let is = what_it_is(&name, &beginning(path)?)?;
    Some(match is {
        Instead::Empty => Failure::new(
            format!("{shown} is empty: there is no collection in it."),
            "Perhaps a copy went wrong. Look for another copy.",
        ),
        Instead::PackedCollection => {
            Failure::new(format!("{shown} is a packed collection."), unpack_it(path))
        }
        // Other databases, and texts, in which nobody sees what they are not.
        Instead::Database => return None,
        is => {
            let remedy = "Give the file of a collection; a table is taken in on the page “Our \
                          finds”.";
            Failure::new(
                format!(
                    "{shown} is {}, and no collection of Spinney's.",
                    failure::what_it_is(is)
                ),
                remedy,
            )
        }
    })
}

/// What to type so that a packed collection can be opened.
pub(crate) fn unpack_it(path: &Path) -> String {
    let into = path.with_extension("spinney");
    format!("Unpack it first: spinney unpack {} {}", path.display(), into.display())
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
