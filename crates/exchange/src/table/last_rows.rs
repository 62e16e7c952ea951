//! What people write below a table: a total of the others, a note.
//!
//! From the last rows of a sheet to those that are no kinds, which are told and left out.

use spinney_model::OfSheet;

use super::grid::Grid;
use super::no_table::speaks;
use super::phrase::fold;
use super::report::Report;

/// What people call the row that adds the others up. No kind is called so.
const TOTALS: [&str; 14] = [
    "total",
    "totals",
    "grand total",
    "sum",
    "average",
    "mean",
    "summe",
    "gesamt",
    "durchschnitt",
    "somme",
    "moyenne",
    "totaal",
    "totale",
    "suma",
];

/// What a note begins with.
const NOTES: [&str; 7] = ["note", "notes", "nb", "n.b", "source", "remark", "remarks"];

/// So many words and more are no name.
const WORDS_OF_A_NOTE: usize = 6;

/// How many of the rows, counted from the first, may be kinds; the others are told.
pub(super) fn without(grid: &Grid, rows: &[u32], names: u32, report: &mut Report) -> usize {
    let mut count = rows.len();
    while count > 1 {
        let row = rows[count - 1];
        let name = grid.get(row, names);
        let alone =
            grid.rows().find(|(at, _)| *at == row).is_some_and(|(_, row)| row.len() == 1);
        let adds_up = TOTALS.contains(&fold(name).trim_end_matches(':'));
        let is_kind = !adds_up && (!alone || !is_note(name));
        if is_kind {
            break;
        }
        let shown: String = name.chars().take(40).collect();
        let more = if shown.len() < name.len() { "…" } else { "" };
        let name = format!("{shown}{more}");
        let no_kind = OfSheet::NoKind { name, adds_up, at: grid.at(row, names).into() };
        report.one(grid.place(row, names), no_kind);
        count -= 1;
    }
    count
}

fn is_note(name: &str) -> bool {
    let begins = name.split_once(':').is_some_and(|(before, rest)| {
        NOTES.contains(&fold(before).as_str()) && !rest.trim().is_empty()
    });
    let long = name.split_whitespace().count() >= WORDS_OF_A_NOTE;
    begins || name.starts_with('*') || long && (name.ends_with(['.', '!', '?']) || speaks(name))
}
