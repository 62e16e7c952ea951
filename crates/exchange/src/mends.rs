//! Mends of measured leaves as text: a line a mend, as a person would say it.
//!
//! ```text
//! # What the scan of the second of May has wrong.
//! leaf 3 is no leaf
//! at 812 440 is a leaf
//! leaf 5 is two leaves between 120 40 and 180 300
//! leaf 7 is part of leaf 6
//! leaf 4 begins at 120 340
//! leaf 4 ends at 100 20
//! from 40 60 to 1221 60 is 100 mm
//! ```
//!
//! Places are pixels of the upright picture, to the right and down. Empty lines and lines that begin
//! with `#` say nothing. The words are English in every language: programs read them, and people seldom.

use std::fmt::Write;

use spinney_model::limits::MENDS;
use spinney_model::{CannotMend, Mend, NoMend};

/// The longest that is said back of a line, in characters.
const LONGEST: usize = 80;

/// Mends, each with the number of its line.
///
/// **Errors**: the first line that says none, or one more than are read.
pub fn read(text: &str) -> Result<Vec<(usize, Mend)>, NoMend> {
    let mut mends = Vec::new();
    for (at, line) in text.lines().enumerate() {
        let line = line.trim();
        if line.is_empty() || line.starts_with('#') {
            continue;
        }
        let no = |why| NoMend { line: at + 1, text: line.chars().take(LONGEST).collect(), why };
        let mend = mend(line).ok_or_else(|| no(None))?;
        if mends.len() == MENDS {
            return Err(no(Some(CannotMend::TooMany)));
        }
        mends.push((at + 1, mend));
    }
    Ok(mends)
}

fn mend(line: &str) -> Option<Mend> {
    let words: Vec<String> = line.split_whitespace().map(str::to_lowercase).collect();
    let words: Vec<&str> = words.iter().map(String::as_str).collect();
    let leaf = |word: &str| word.parse::<usize>().ok().filter(|number| *number > 0);
    let place = |x: &str, y: &str| Some([pixel(x)?, pixel(y)?]);
    Some(match words.as_slice() {
        ["leaf", number, "is", "no", "leaf"] => Mend::NoLeaf { leaf: leaf(number)? },
        ["at", x, y, "is", "a", "leaf"] => Mend::ALeaf { at: place(x, y)? },
        ["leaf", number, "is", "two", "leaves", "between", a, b, "and", c, d] => {
            Mend::Two { leaf: leaf(number)?, between: [place(a, b)?, place(c, d)?] }
        }
        ["leaf", part, "is", "part", "of", "leaf", of] => {
            Mend::PartOf { part: leaf(part)?, leaf: leaf(of)? }
        }
        ["leaf", number, "begins", "at", x, y] => {
            Mend::Base { leaf: leaf(number)?, at: place(x, y)? }
        }
        ["from", a, b, "to", c, d, "is", length, "mm"] => {
            let mm: f64 = length.parse().ok().filter(|mm: &f64| mm.is_finite() && *mm > 0.0)?;
            Mend::Length { between: [place(a, b)?, place(c, d)?], mm }
        }
        ["leaf", number, "ends", "at", x, y] => {
            Mend::Tip { leaf: leaf(number)?, at: place(x, y)? }
        }
        _ => return None,
    })
}

fn pixel(word: &str) -> Option<f64> {
    let most = f64::from(spinney_model::limits::SCAN_SIDE);
    word.parse().ok().filter(|at: &f64| at.abs() <= most)
}

/// Mends as text, with a line end behind each.
pub fn write(mends: &[Mend]) -> String {
    let mut text = String::new();
    for mend in mends {
        let _ = writeln!(text, "{}", in_words(mend));
    }
    text
}

/// One of them.
pub fn in_words(mend: &Mend) -> String {
    let place = |[x, y]: [f64; 2]| format!("{} {}", rounded(x), rounded(y));
    match mend {
        Mend::NoLeaf { leaf } => format!("leaf {leaf} is no leaf"),
        Mend::ALeaf { at } => format!("at {} is a leaf", place(*at)),
        Mend::Two { leaf, between: [a, b] } => {
            format!("leaf {leaf} is two leaves between {} and {}", place(*a), place(*b))
        }
        Mend::PartOf { part, leaf } => format!("leaf {part} is part of leaf {leaf}"),
        Mend::Base { leaf, at } => format!("leaf {leaf} begins at {}", place(*at)),
        Mend::Length { between: [a, b], mm } => {
            format!("from {} to {} is {mm} mm", place(*a), place(*b))
        }
        Mend::Tip { leaf, at } => format!("leaf {leaf} ends at {}", place(*at)),
    }
}

/// To a tenth of a pixel.
fn rounded(at: f64) -> f64 {
    (at * 10.0).round() / 10.0
}

#[cfg(test)]
mod tests {
    //! What is written is read as it was.

    use super::*;

    fn all() -> [Mend; 7] {
        [
            Mend::NoLeaf { leaf: 3 },
            Mend::ALeaf { at: [812.0, 440.5] },
            Mend::Two { leaf: 5, between: [[120.0, 40.0], [180.0, 300.0]] },
            Mend::PartOf { part: 7, leaf: 6 },
            Mend::Base { leaf: 4, at: [120.0, 340.0] },
            Mend::Length { between: [[40.0, 60.0], [1221.0, 62.5]], mm: 100.0 },
            Mend::Tip { leaf: 4, at: [100.0, -2.5] },
        ]
    }

    #[test]
    fn what_is_written_is_read_as_it_was() {
        let read = read(&write(&all())).expect("it is in order");
        let mends: Vec<Mend> = read.iter().map(|(_, mend)| *mend).collect();
        assert_eq!(mends, all());
        assert_eq!(read.last().map(|(line, _)| *line), Some(7));
    }

    #[test]
    fn a_line_that_says_no_mend_is_named() {
        let text = "# a scan\n\nLeaf 3 is no leaf\nleaf three is no leaf\n";
        let expected = NoMend { line: 4, text: "leaf three is no leaf".to_owned(), why: None };
        assert_eq!(read(text), Err(expected));
        for line in ["leaf 0 is no leaf", "at 1 nan is a leaf", "at 1 1e9 is a leaf", "leaf 3"]
        {
            assert_eq!(read(line).map_err(|no| no.line), Err(1), "{line}");
        }
        let many = "leaf 1 is no leaf\n".repeat(MENDS + 1);
        let told = read(&many).map_err(|no| (no.line, no.why));
        assert_eq!(told, Err((MENDS + 1, Some(CannotMend::TooMany))));
    }
}
