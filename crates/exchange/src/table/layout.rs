//! How a table is laid out, where that is not as it should be: no row of headings, rows and
//! columns swapped, a column that counts the rows.
//!
//! From a sheet with its headings found to what is told. Only what can hardly be meant is told:
//! a table that is fine must not be accused.

use std::collections::BTreeSet;

use spinney_model::{OfSheet, Place};

use super::answers::{is_no, is_yes};
use super::cell_text::understood_in_every_column;
use super::grid::{Grid, Headed};
use super::no_table::KINDS;
use super::number::amount;
use super::phrase::fold;
use super::report::Report;

/// What people write above a column that counts the rows.
const COUNTS: [&str; 12] =
    ["no", "nr", "no.", "nr.", "#", "№", "number", "id", "row", "n", "num", "lfd. nr."];

/// So many kinds and columns are needed before words can show that they are swapped.
const ENOUGH: usize = 3;

/// The column with the names of the kinds: the first, or the second where the first counts
/// rows.
pub(super) fn names_column(grid: &Grid, headed: &Headed<'_>) -> Option<u32> {
    let columns: Vec<u32> = grid.columns().into_iter().take(2).collect();
    let (first, second) = match columns.as_slice() {
        [first, second] => (*first, *second),
        _ => return columns.first().copied(),
    };
    let heading = |column| fold(grid.get(headed.row, column));
    let named = |column: u32, of: &[&str]| of.contains(&heading(column).as_str());
    let filled = headed.rows.iter().filter(|row| !grid.get(**row, second).is_empty());
    let marked = named(first, &COUNTS) || heading(first).is_empty() && named(second, &KINDS);
    let meant = marked && !named(first, &KINDS) && headed.rows.len() > 1;
    let counts = meant
        && filled.zip(1_usize..).all(|(row, count)| grid.get(*row, first) == count.to_string());
    Some(if counts && names_only(grid, headed, second) { second } else { first })
}

/// Whether every text of a column is there once, and is no number.
fn names_only(grid: &Grid, headed: &Headed<'_>, column: u32) -> bool {
    let mut seen = BTreeSet::new();
    let texts = headed.rows.iter().map(|row| grid.get(*row, column));
    texts
        .filter(|text| !text.is_empty())
        .all(|text| amount(text).is_err() && seen.insert(fold(text)))
}

/// Tells what of the layout can hardly be meant.
pub(super) fn tell(grid: &Grid, headed: &Headed<'_>, names: u32, report: &mut Report) {
    let first = grid.columns().first().copied();
    if let Some(counts) = first.filter(|first| *first != names) {
        let [heading, kinds] =
            [counts, names].map(|column| grid.get(headed.row, column).to_owned());
        report.one(grid.place(headed.row, counts), OfSheet::CountsRows { heading, kinds });
    }
    let columns: Vec<u32> = grid.columns().into_iter().filter(|at| *at > names).collect();
    if headings_say_kind(grid, headed, names) {
        return;
    }
    if swapped(grid, headed, &columns) {
        report.one(Place::Table, OfSheet::Swapped);
    } else if headless(grid, headed, &columns) {
        let says = headed.headings.iter().take(3).map(|(_, text)| text.clone()).collect();
        let at = grid.at(headed.row, names).into();
        report.one(grid.place(headed.row, names), OfSheet::NoHeadings { says, at });
    }
}

fn headings_say_kind(grid: &Grid, headed: &Headed<'_>, names: u32) -> bool {
    let heading = fold(grid.get(headed.row, names));
    heading.is_empty() || KINDS.contains(&heading.as_str())
}

/// Whether every heading is what cells below it say, or is measured. One word may be heading
/// and state at once (“lobed”), two hardly.
fn headless(grid: &Grid, headed: &Headed<'_>, columns: &[u32]) -> bool {
    let measured = |text: &str| amount(text).is_ok_and(|amount| amount.unit.is_some());
    let below = |column: u32, text: &str| {
        headed.rows.iter().any(|row| fold(grid.get(*row, column)) == fold(text))
    };
    let (mut words, mut lengths) = (0, 0);
    for column in columns {
        let text = grid.get(headed.row, *column);
        if measured(text) {
            lengths += 1;
        } else if below(*column, text) && !text.is_empty() {
            words += 1;
        } else {
            return false;
        }
    }
    words > 1 || lengths > 0
}

/// What a cell holds, as far as it can show which way round a table is.
#[derive(Clone, Debug, PartialEq, Eq)]
enum Holds {
    Number,
    Word(String),
}

fn holds(text: &str) -> Option<Holds> {
    if understood_in_every_column(text) || is_yes(text) || is_no(text) {
        return None;
    }
    Some(if amount(text).is_ok() { Holds::Number } else { Holds::Word(fold(text)) })
}

/// Whether what is alike is in the rows and not in the columns. Where there are numbers, they
/// fill whole rows and no column; else words are said again in their row, and nowhere else.
fn swapped(grid: &Grid, headed: &Headed<'_>, columns: &[u32]) -> bool {
    if headed.rows.len() < 2 || columns.len() < ENOUGH {
        return false;
    }
    let row = |row: &u32| -> Vec<Holds> {
        columns.iter().filter_map(|column| holds(grid.get(*row, *column))).collect()
    };
    let rows: Vec<Vec<Holds>> = headed.rows.iter().map(row).collect();
    let numbers = |cells: &[Holds]| cells.iter().filter(|cell| **cell == Holds::Number).count();
    let whole = |cells: &[Holds]| {
        cells.len() > 1 && (numbers(cells) == 0 || numbers(cells) == cells.len())
    };
    let rows_of_numbers = rows.iter().filter(|cells| numbers(cells) > 0).count();
    if rows_of_numbers > 0 {
        let mixed = |column: &u32| {
            let cells = headed.rows.iter().filter_map(|row| holds(grid.get(*row, *column)));
            !whole(&cells.collect::<Vec<_>>())
        };
        return rows_of_numbers < rows.len()
            && rows.iter().all(|cells| whole(cells))
            && columns.iter().all(mixed);
    }
    if rows.len() < ENOUGH {
        return false;
    }
    let mut met = BTreeSet::new();
    rows.iter().all(|cells| {
        let words: BTreeSet<&String> = cells
            .iter()
            .filter_map(|cell| match cell {
                Holds::Word(word) => Some(word),
                Holds::Number => None,
            })
            .collect();
        let again = words.len() > 1 && words.len() < cells.len();
        again && words.into_iter().all(|word| met.insert(word.clone()))
    })
}
