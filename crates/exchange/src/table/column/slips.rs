//! What people and spreadsheets put into a cell that is neither a word nor a number: a day, two
//! measurements, the error of a spreadsheet, “don't know”, a tick.
//!
//! From the text of a cell to what to say of it. It reads no value.

use spinney_model::{CellTrouble, SheetError};

use crate::table::number::amount;
use crate::table::phrase::fold;

/// The months, short and whole.
const MONTHS: [(&str, &str); 12] = [
    ("jan", "january"),
    ("feb", "february"),
    ("mar", "march"),
    ("apr", "april"),
    ("may", "may"),
    ("jun", "june"),
    ("jul", "july"),
    ("aug", "august"),
    ("sep", "september"),
    ("oct", "october"),
    ("nov", "november"),
    ("dec", "december"),
];

/// What spreadsheets show where they cannot work a cell out.
const ERRORS: [(&str, SheetError); 7] = [
    ("#REF!", SheetError::LostCell),
    ("#N/A", SheetError::NotFound),
    ("#VALUE!", SheetError::CannotCalculate),
    ("#NAME?", SheetError::UnknownWord),
    ("#DIV/0!", SheetError::DividedByNothing),
    ("#NUM!", SheetError::NoNumber),
    ("#NULL!", SheetError::LostCells),
];

/// What people write where nobody has looked, apart from `?`.
const NOBODY_LOOKED: [&str; 14] = [
    "don't know",
    "don’t know",
    "dont know",
    "do not know",
    "dunno",
    "no idea",
    "not sure",
    "unsure",
    "not seen",
    "not looked",
    "not checked",
    "tbc",
    "tbd",
    "weiß nicht",
];

/// The signs of a tick and of a cross.
const MARKS: [&str; 16] =
    ["✓", "✔", "☑", "✅", "✗", "✘", "☒", "❌", "x", "×", "•", "●", "*", "+", "√", "v"];

/// How ticks and crosses of the picture font Wingdings come out as letters.
const WINGDINGS: [&str; 3] = ["ü", "û", "þ"];

/// What is wrong with a cell, where its text is known to be something else.
pub(super) fn better(text: &str) -> Option<CellTrouble> {
    if let Some((low, high)) = day_and_month(text) {
        return Some(CellTrouble::Date { low, high });
    }
    two_measurements(text).then_some(CellTrouble::TwoMeasurements)
}

/// The day and the month of `05-Mar`, `3 May`, `May 3`, `03/05/2026`, `2026-05-03`, the smaller
/// first; None: no date.
fn day_and_month(text: &str) -> Option<(u32, u32)> {
    let pieces: Vec<&str> = text
        .split(|sign: char| sign.is_whitespace() || matches!(sign, '-' | '/' | '.' | ','))
        .filter(|piece| !piece.is_empty())
        .collect();
    let number = |piece: &str| piece.parse::<u32>().ok();
    let year = |piece: &str| piece.len() == 4 && number(piece).is_some_and(|year| year > 1899);
    let month = |piece: &str| {
        let name = fold(piece);
        let is =
            |(short, whole): &(&str, &str)| name.starts_with(short) && whole.starts_with(&name);
        let at =
            MONTHS.iter().position(|month| is(month) || name == "sept" && month.0 == "sep")?;
        u32::try_from(at + 1).ok()
    };
    let (one, two, named) = match pieces.as_slice() {
        [day, name] | [day, name, _] if month(name).is_some() => {
            (number(day)?, month(name)?, true)
        }
        [name, day] | [name, day, _] if month(name).is_some() => {
            (number(day)?, month(name)?, true)
        }
        [one, two, last] if year(last) => (number(one)?, number(two)?, false),
        [first, one, two] if year(first) => (number(one)?, number(two)?, false),
        _ => return None,
    };
    let may_be =
        if named { (1..=31).contains(&one) } else { one.min(two) <= 12 && one.max(two) <= 31 };
    (may_be && one.min(two) > 0).then(|| (one.min(two), one.max(two)))
}

/// `5 cm x 3 cm`, `5 × 3 cm`, `5 by 3`.
fn two_measurements(text: &str) -> bool {
    let folded = fold(text);
    let parted = ["×", " x ", "*", " by "].iter().find_map(|sign| folded.split_once(sign));
    parted.is_some_and(|(one, two)| amount(one).is_ok() && amount(two).is_ok())
}

/// The error of a spreadsheet that a text is.
pub(super) fn error_of_a_spreadsheet(text: &str) -> Option<SheetError> {
    ERRORS.iter().find(|(shown, _)| *shown == text.to_uppercase()).map(|(_, error)| *error)
}

/// Whether a text says in other words than `?` that nobody knows.
pub(super) fn nobody_looked(text: &str) -> bool {
    NOBODY_LOOKED.contains(&fold(text).trim_end_matches(['.', '?', '!']))
}

/// Whether a text is a tick or a cross.
pub(super) fn is_mark(text: &str) -> bool {
    MARKS.contains(&fold(text).as_str()) || is_wingdings(text)
}

/// Whether a text is a letter as which a tick of Wingdings comes out.
pub(super) fn is_wingdings(text: &str) -> bool {
    WINGDINGS.contains(&text)
}

#[cfg(test)]
mod tests {
    use super::{day_and_month, two_measurements};

    #[test]
    fn dates_are_known_and_ranges_and_words_are_not_taken_for_them() {
        for (text, date) in [
            ("05-Mar", (3, 5)),
            ("3 May", (3, 5)),
            ("May 3", (3, 5)),
            ("03/05/2026", (3, 5)),
            ("2026-05-03", (3, 5)),
            ("12-Sept-26", (9, 12)),
        ] {
            assert_eq!(day_and_month(text), Some(date), "{text}");
        }
        for text in ["3-5", "3/5", "May", "5 mm", "3 to 5", "12 marks", "1.5-2.5", "40/60/80"] {
            assert_eq!(day_and_month(text), None, "{text}");
        }
    }

    #[test]
    fn two_measurements_are_told_from_one() {
        for text in ["5 cm x 3 cm", "5 × 3 cm", "5×3", "50 by 30 mm"] {
            assert!(two_measurements(text), "{text}");
        }
        for text in ["5 cm", "5-7 cm", "x", "by hand", "5 x"] {
            assert!(!two_measurements(text), "{text}");
        }
    }
}
