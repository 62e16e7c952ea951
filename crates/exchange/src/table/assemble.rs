//! Puts a matrix together from its sheets.
//!
//! From the sheet of the table and those beside it to kinds, characters and cells. Every row
//! and column that can be read is read; what is left out is told.

use std::collections::{BTreeMap, BTreeSet};

use spinney_model::{Cell, Character, Code, Matrix, Place, Quantity, Scene, Taxon, Value};

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
    unknowns(&characters, &cells, kinds, &used, report);
    let taxa = taxa(sheets, kinds);
    let rows = turned(cells, kinds.rows.len());
    Matrix::new(sheets.scene.clone(), taxa, characters, rows)
        .expect("the reader makes only cells that fit their columns")
}

fn shares_of(cell: &Cell) -> usize {
    match &cell.value {
        Value::States(shares) => shares.len(),
        Value::Counts(shares) => shares.len(),
        _ => 1,
    }
}

fn too_many_shares(name: &str, report: &mut Report) {
    report.one(
        Code::TooLarge,
        of_character(name),
        format!("“{name}” does not fit any more and was left out."),
        "Split the table into several, or type fewer alternatives into a cell.",
    );
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
    let count = last_rows::without(grid, &headed.rows, column, report);
    for row in headed.rows.iter().take(count).copied() {
        let name = grid.get(row, column);
        if name.is_empty() {
            nameless(grid, row, column, report);
            continue;
        }
        if rows.len() >= most {
            report.one(
                Code::TooLarge,
                grid.place(row, column),
                format!(
                    "The table has more than {most} kinds; {name} and all below are left out."
                ),
                "Split the table into several, for instance by family.",
            );
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
            twice(grid, (other, row), column, (name, &given), report);
        }
        first.insert(fold(&given), row);
        rows.push((row, given));
    }
    Kinds { grid, rows }
}

fn nameless(grid: &Grid, row: u32, column: u32, report: &mut Report) {
    report.add(
        Code::LeftOut,
        "no name",
        grid.place(row, column),
        || {
            let cell = grid.cell(row, column);
            format!("Row {} has no name ({cell}) and was left out.", row.saturating_add(1))
        },
        "Type the kind's name. If cells are merged there, unmerge them and fill each row.",
    );
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
                .then(|| format!("`{one} or {two}`"))
        });
    let one_row = match differ {
        Some(both) => {
            format!("Delete one row, or make them one: {both}. Two kinds need two names.")
        }
        None => "Delete one row. Two kinds need two names.".to_owned(),
    };
    report.add(
        Code::KindTwice,
        "kind",
        grid.place(rows.1, column),
        || {
            let [first, second] = [rows.0, rows.1].map(|row| grid.cell(row, column));
            let one = grid.get(rows.0, column);
            format!(
                "“{one}” ({first}) and “{}” ({second}) are written almost alike. Are they one kind or two? \
                 They are read as two, and the second is called “{}” here.",
                names.0, names.1
            )
        },
        &one_row,
    );
}

/// Tells rows of the second sheets that name nothing in the table.
fn not_in_the_table(
    sheets: &Sheets,
    headings: &[Heading<'_>],
    kinds: &Kinds<'_>,
    report: &mut Report,
) {
    let columns: BTreeSet<String> =
        headings.iter().map(|heading| fold(&heading.name)).collect();
    let names: BTreeSet<String> = kinds.rows.iter().map(|(_, name)| fold(name)).collect();
    let characters = sheets.characters.iter().map(|row| ("character", &row.name, &row.place));
    let rows = sheets.kinds.rows.iter().map(|row| ("kind", &row.taxon.name, &row.place));
    let mut seen = BTreeSet::new();
    for (what, name, place) in characters.chain(rows) {
        let known = if what == "kind" { &names } else { &columns };
        if !known.contains(&fold(name)) {
            report.add(
                Code::SheetDisagrees,
                what,
                place.clone(),
                || format!("The {what} “{name}” ({place}) is not in the table."),
                "Spell it as in the table, or delete the row.",
            );
        } else if !seen.insert((what, fold(name))) {
            report.add(
                Code::SheetDisagrees,
                &format!("second {what}"),
                place.clone(),
                || {
                    format!(
                        "The {what} “{name}” has a second row in {place}; the first counts."
                    )
                },
                "Keep one of the rows.",
            );
        }
    }
}

fn taxa(sheets: &Sheets, kinds: &Kinds<'_>) -> Vec<Taxon> {
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

/// One finding a character names the kinds of which nobody knows. A cell that could not be
/// understood, and a lone dash, have been told by themselves and are not told again.
fn unknowns(
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
        let name = |at: &usize| {
            let (row, name) = &kinds.rows[*at];
            format!("{name} ({})", kinds.grid.cell(*row, heading.column))
        };
        let named: Vec<String> = unknown.iter().take(5).map(name).collect();
        let more = match unknown.len().saturating_sub(named.len()) {
            0 => String::new(),
            more => format!(" and {more} more"),
        };
        let place = match unknown.len() {
            1 => kinds.grid.place(kinds.rows[*first].0, heading.column),
            _ => Place::Character(character.name.clone()),
        };
        if column::a_blank_may_mean_no(heading, kinds, &unknown) {
            report.one(
                Code::Unknown,
                place,
                format!(
                    "Under “{}” there is nothing but ticks, crosses or yes, and blanks for {}{more}. \
                     A blank counts as: nobody has looked.",
                    character.name,
                    named.join(", ")
                ),
                "Does a blank mean no? If so, type no there, and yes in the others.",
            );
            continue;
        }
        report.one(
            Code::Unknown,
            place,
            format!("Nobody has recorded “{}” of {}{more}.", character.name, named.join(", ")),
            "Look at one and fill the cell, or type `n/a` if it has no such thing.",
        );
    }
}

/// Columns to rows.
fn turned(columns: Vec<Vec<Cell>>, kinds: usize) -> Vec<Vec<Cell>> {
    let mut rows: Vec<Vec<Cell>> =
        (0..kinds).map(|_| Vec::with_capacity(columns.len())).collect();
    for column in columns {
        for (row, cell) in rows.iter_mut().zip(column) {
            row.push(cell);
        }
    }
    rows
}
