//! Puts a matrix together from its sheets.
//!
//! From the sheet of the table and those beside it to kinds, characters and cells. Every row
//! and column that can be read is read; what is left out is told.

use std::cmp::Reverse;
use std::collections::{BTreeMap, BTreeSet};

use spinney_model::{
    Cell, Character, KindAt, Matrix, OfCell, OfColumn, OfSheet, Place, Quantity, RowOf, Scene,
    Taxon, Value,
};

use super::cell_text::says_unknown;
use super::characters_sheet::Described;
use super::column::{self, Kinds};
use super::grid::{Grid, Headed};
use super::heading::{self, Heading};
use super::phrase::fold;
use super::{
    TableError, caps, governors, kinds_sheet, last_rows, layout, of_character, ratios,
};
use super::{report::Report, spoilt};

/// The sheets of one table, each read as far as it can be without the others.
pub(super) struct Sheets {
    pub(super) table: Grid,
    pub(super) characters: Vec<Described>,
    pub(super) kinds: kinds_sheet::Kinds,
    pub(super) scene: Scene,
}

/// Puts the matrix together.
pub(super) fn assemble(
    sheets: &Sheets,
    usual_gap: Quantity,
    report: &mut Report,
) -> Result<Matrix, TableError> {
    let no_kinds = || TableError::NoKinds { name: sheets.table.name.clone() };
    let table = Rows::of(sheets, report).filter(|table| !table.kinds.rows.is_empty());
    let table = table.ok_or_else(no_kinds)?;
    not_in_the_table(sheets, &table.headings, &table.kinds, report);
    Ok(matrix(sheets, &table, usual_gap, report))
}

/// The sheet of the table with its headings and kinds found.
pub(super) struct Rows<'s> {
    pub(super) headings: Vec<Heading<'s>>,
    pub(super) kinds: Kinds<'s>,
}

/// What the columns hold, as far as they are used.
pub(super) struct Columns<'h> {
    pub(super) characters: Vec<Character>,
    /// The cells, column after column.
    pub(super) cells: Vec<Vec<Cell>>,
    pub(super) headings: Vec<&'h Heading<'h>>,
}

impl<'s> Rows<'s> {
    /// None: nothing stands in it.
    pub(super) fn of(sheets: &'s Sheets, report: &mut Report) -> Option<Self> {
        let grid = &sheets.table;
        let headed = grid.below_heading(report)?;
        let names = layout::names_column(grid, &headed)?;
        layout::tell(grid, &headed, names, report);
        spoilt::tell(grid, report);
        let columns = grid.columns().into_iter().filter(|column| *column > names).collect();
        let mut headings =
            heading::read(grid, headed.row, &columns, &sheets.characters, report);
        headings.extend(ratios::beside(&sheets.characters, &headings));
        let kinds = kinds(grid, &headed, names, headings.len(), report);
        Some(Self { headings, kinds })
    }
}

/// The matrix of a table that has kinds.
pub(super) fn matrix(
    sheets: &Sheets,
    table: &Rows<'_>,
    usual_gap: Quantity,
    report: &mut Report,
) -> Matrix {
    let Columns { characters, cells, headings } = columns(table, usual_gap, report);
    unknowns(&characters, &cells, &table.kinds, &headings, report);
    let taxa = taxa(sheets, &table.kinds);
    let rows = turned(cells, table.kinds.rows.len());
    Matrix::new(sheets.scene.clone(), taxa, characters, rows).expect(FITS)
}

/// What the reader sees to.
pub(super) const FITS: &str = "the reader makes only cells that fit their columns";

/// Reads the columns of a table, a cell a row.
pub(super) fn columns<'t>(
    table: &'t Rows<'t>,
    usual_gap: Quantity,
    report: &mut Report,
) -> Columns<'t> {
    let Rows { headings, kinds } = table;
    let (mut characters, mut cells, mut used) = (Vec::new(), Vec::new(), Vec::new());
    let mut shares = caps::MOST_SHARES;
    for heading in headings {
        let Some((character, column)) = column::read(heading, kinds, usual_gap, report) else {
            continue;
        };
        match shares.checked_sub(column.iter().map(shares_of).sum()) {
            Some(left) => shares = left,
            None => {
                too_many_shares(&heading.name, report);
                continue;
            }
        }
        characters.push(character);
        cells.push(column);
        used.push(heading);
    }
    ratios::link(&mut characters, &mut cells, &mut used, report);
    governors::link(&mut characters, &used, report);
    ratios::take_governors(&mut characters);
    governors::settle(&characters, &mut cells, kinds, &used, report);
    ratios::fill(&characters, &mut cells, &kinds.rows, report);
    Columns { characters, cells, headings: used }
}

fn shares_of(cell: &Cell) -> usize {
    match &cell.value {
        Value::States(shares) => shares.len(),
        Value::Counts(shares) => shares.len(),
        _ => 1,
    }
}

fn too_many_shares(name: &str, report: &mut Report) {
    report.one(of_character(name), OfColumn::NoRoom { about: name.to_owned() });
}

/// The rows of the kinds, each with a name of its own.
fn kinds<'g>(
    grid: &'g Grid,
    headed: &Headed<'_>,
    column: u32,
    headings: usize,
    report: &mut Report,
) -> Kinds<'g> {
    let most = caps::MOST_KINDS.min(caps::MOST_CELLS / headings.max(1));
    let (mut first, mut counts) = (BTreeMap::new(), BTreeMap::new());
    let mut rows: Vec<(u32, String)> = Vec::new();
    let mut again = Vec::new();
    let count = last_rows::without(grid, &headed.rows, column, report);
    for row in headed.rows.iter().take(count).copied() {
        let name = grid.get(row, column);
        if name.is_empty() {
            nameless(grid, row, column, report);
            continue;
        }
        if rows.len() >= most {
            let too_many = OfSheet::TooManyKinds { most, kind: name.to_owned() };
            report.one(grid.place(row, column), too_many);
            break;
        }
        let mut given = name.to_owned();
        if let Some(other) = first.get(&fold(name)).copied() {
            // Counting on from the last of this name: twenty thousand of one name are quick.
            let count = counts.entry(fold(name)).or_insert(1_usize);
            while first.contains_key(&fold(&given)) {
                *count += 1;
                given = format!("{name} ({count})");
            }
            again.push(((other, row), name, given.clone()));
        }
        first.insert(fold(&given), row);
        rows.push((row, given));
    }
    told_again(grid, column, again, report);
    Kinds { grid, rows, dash_is_none: false }
}

/// One row of a name too many is a slip; from two on, rows are finds, more likely.
fn told_again(
    grid: &Grid,
    column: u32,
    again: Vec<((u32, u32), &str, String)>,
    report: &mut Report,
) {
    if let [(rows, name, given)] = again.as_slice() {
        twice(grid, *rows, column, (name, given), report);
        return;
    }
    let mut rows_of = BTreeMap::<u32, usize>::new();
    for ((first, _), _, _) in &again {
        *rows_of.entry(*first).or_insert(1) += 1;
    }
    let kinds = rows_of.len();
    let most = rows_of.into_iter().max_by_key(|(first, rows)| (*rows, Reverse(*first)));
    let Some((first, rows)) = most else { return };
    let called = again.iter().find(|((one, _), _, _)| *one == first);
    let several = OfSheet::KindsOnSeveralRows {
        kinds,
        kind: grid.get(first, column).to_owned(),
        rows,
        first: grid.at(first, column).into(),
        called: called.map(|(_, _, called)| called.clone()).unwrap_or_default(),
    };
    report.one(Place::Table, several);
}

fn nameless(grid: &Grid, row: u32, column: u32, report: &mut Report) {
    let at = grid.at(row, column).into();
    report.add("no name", grid.place(row, column), OfSheet::Nameless { at });
}

/// So many columns are looked at for a word in which two rows of one name differ.
const LOOKED_AT: u32 = 30;

fn twice(grid: &Grid, rows: (u32, u32), column: u32, names: (&str, &str), report: &mut Report) {
    // Their own words, where they differ in some.
    let differ =
        (column.saturating_add(1)..=column.saturating_add(LOOKED_AT)).find_map(|other| {
            let (one, two) = (grid.get(rows.0, other).trim(), grid.get(rows.1, other).trim());
            let word = |text: &str| {
                text.chars().all(|sign| sign.is_alphabetic() || " -".contains(sign))
                    && text.chars().any(char::is_alphabetic)
            };
            (word(one) && word(two) && fold(one) != fold(two))
                .then(|| [one, two].map(str::to_owned))
        });
    let twice = OfSheet::KindTwice {
        names: [grid.get(rows.0, column), names.0].map(str::to_owned),
        called: names.1.to_owned(),
        differ,
        first: grid.at(rows.0, column).into(),
        second: grid.at(rows.1, column).into(),
    };
    report.add("kind", grid.place(rows.1, column), twice);
}

/// Tells rows of the second sheets that name nothing in the table.
pub(super) fn not_in_the_table(
    sheets: &Sheets,
    headings: &[Heading<'_>],
    kinds: &Kinds<'_>,
    report: &mut Report,
) {
    let columns: BTreeSet<String> =
        headings.iter().map(|heading| fold(&heading.name)).collect();
    let names: BTreeSet<String> = kinds.rows.iter().map(|(_, name)| fold(name)).collect();
    let characters =
        sheets.characters.iter().map(|row| (RowOf::Character, &row.name, &row.place));
    let rows = sheets.kinds.rows.iter().map(|row| (RowOf::Kind, &row.taxon.name, &row.place));
    let mut seen = BTreeSet::new();
    for (of, name, place) in characters.chain(rows) {
        let known = if of == RowOf::Kind { &names } else { &columns };
        let (at, name) = (place.clone().into(), name.clone());
        if !known.contains(&fold(&name)) {
            let strange = OfSheet::NotInTable { of, name, at };
            report.add(&format!("{of:?}"), Place::Cell(place.clone()), strange);
        } else if !seen.insert((of == RowOf::Kind, fold(&name))) {
            let second = OfSheet::SecondRow { of, name, at };
            report.add(&format!("second {of:?}"), Place::Cell(place.clone()), second);
        }
    }
}

pub(super) fn taxa(sheets: &Sheets, kinds: &Kinds<'_>) -> Vec<Taxon> {
    let mut rows = BTreeMap::new();
    for row in &sheets.kinds.rows {
        rows.entry(fold(&row.taxon.name)).or_insert(&row.taxon);
    }
    let taxon = |name: &String| match rows.get(&fold(name)) {
        Some(taxon) => Taxon { name: name.clone(), ..(*taxon).clone() },
        None => Taxon { weight: sheets.kinds.usual_weight, ..Taxon::named(name.clone()) },
    };
    kinds.rows.iter().map(|(_, name)| taxon(name)).collect()
}

/// So many kinds of which nobody knows are named, the others counted.
const NAMED: usize = 5;

/// One finding a character names the kinds of which nobody knows. A cell that could not be
/// understood, and a lone dash, have been told by themselves and are not told again.
pub(super) fn unknowns(
    characters: &[Character],
    cells: &[Vec<Cell>],
    kinds: &Kinds<'_>,
    headings: &[&Heading<'_>],
    report: &mut Report,
) {
    for ((character, column), heading) in characters.iter().zip(cells).zip(headings) {
        // Blank lengths are told, not what would be worked out of them.
        if character.ratio_of.is_some() {
            continue;
        }
        let text = |at: usize| kinds.grid.get(kinds.rows[at].0, heading.column);
        let unknown =
            |at: &usize| column[*at].value == Value::Unknown && says_unknown(text(*at));
        let unknown: Vec<usize> = (0..column.len()).filter(unknown).collect();
        let Some(first) = unknown.first() else { continue };
        let kind = |at: &usize| {
            let (row, name) = &kinds.rows[*at];
            let at = kinds.grid.at(*row, heading.column).into();
            KindAt { kind: name.clone(), at }
        };
        let place = match unknown.len() {
            1 => kinds.grid.place(kinds.rows[*first].0, heading.column),
            _ => Place::Character(character.name.clone()),
        };
        let not_recorded = OfCell::NotRecorded {
            about: character.name.clone(),
            kinds: unknown.iter().take(NAMED).map(kind).collect(),
            more: unknown.len().saturating_sub(NAMED),
            beside_marks: column::a_blank_may_mean_no(heading, kinds, &unknown),
        };
        report.one(place, not_recorded);
    }
}

/// Columns to rows.
pub(super) fn turned(columns: Vec<Vec<Cell>>, kinds: usize) -> Vec<Vec<Cell>> {
    let mut rows: Vec<Vec<Cell>> =
        (0..kinds).map(|_| Vec::with_capacity(columns.len())).collect();
    for column in columns {
        for (row, cell) in rows.iter_mut().zip(column) {
            row.push(cell);
        }
    }
    rows
}
