//! Which pictures a person means who names files and folders.

use std::path::{Path, PathBuf};

use crate::failure::Failure;

/// How the files of pictures end that are read.
const ENDINGS: [&str; 7] = ["png", "jpg", "jpeg", "tif", "tiff", "webp", "bmp"];

/// The files that were named, and in place of a folder the pictures that lie in it, by their names.
///
/// **Errors**: a folder cannot be read, or has no picture.
pub(super) fn all(named: &[PathBuf]) -> Result<Vec<PathBuf>, Failure> {
    let mut files = Vec::new();
    for path in named {
        match path.is_dir() {
            true => files.extend(of_folder(path)?),
            false => files.push(path.clone()),
        }
    }
    Ok(files)
}

fn of_folder(folder: &Path) -> Result<Vec<PathBuf>, Failure> {
    let read = folder.read_dir().map_err(|error| Failure::reading(folder, &error))?;
    let mut files = Vec::new();
    for entry in read {
        let path = entry.map_err(|error| Failure::reading(folder, &error))?.path();
        let ending = path.extension().map(|ending| ending.to_string_lossy().to_lowercase());
        // Other systems leave such files beside pictures, with the pictures' endings.
        let hidden = entry_is_hidden(&path);
        let picture = ending.is_some_and(|ending| ENDINGS.contains(&&*ending));
        if picture && !hidden && path.is_file() {
            files.push(path);
        }
    }
    if files.is_empty() {
        return Err(Failure::usage("failure-no-pictures", [("folder", folder.into())]));
    }
    files.sort_by_cached_key(|path| in_order(&path.to_string_lossy()));
    Ok(files)
}

fn entry_is_hidden(path: &Path) -> bool {
    path.file_name().is_some_and(|name| name.to_string_lossy().starts_with('.'))
}

/// A name as people put names in order: `page 9` before `page 10`.
fn in_order(name: &str) -> Vec<(u128, String)> {
    let mut parts = Vec::new();
    let mut rest = name;
    while !rest.is_empty() {
        let words = rest.find(|sign: char| sign.is_ascii_digit()).unwrap_or(rest.len());
        let (text, behind) = rest.split_at(words);
        let digits = behind.find(|sign: char| !sign.is_ascii_digit()).unwrap_or(behind.len());
        let (number, behind) = behind.split_at(digits);
        // Words first, and what has no number behind them before what has one.
        let number = if number.is_empty() { 0 } else { number.parse().unwrap_or(u128::MAX) };
        parts.push((0, text.to_lowercase()));
        parts.push((number, digits.to_string()));
        rest = behind;
    }
    parts
}

#[cfg(test)]
mod tests {
    use super::in_order;

    #[test]
    fn the_ninth_page_lies_before_the_tenth() {
        let mut names =
            ["page 10.png", "Page 9.png", "page 1.png", "hazel.png", "page.png", "2.png"];
        names.sort_by_cached_key(|name| in_order(name));
        let sorted =
            ["2.png", "hazel.png", "page 1.png", "Page 9.png", "page 10.png", "page.png"];
        assert_eq!(names, sorted);
    }
}
