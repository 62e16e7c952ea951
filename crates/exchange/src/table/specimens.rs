//! A table in which each row is a find, a leaf for instance: its rows become the kinds that they
//! are of.
//!
//! From a sheet with a kind on several lines to a table of kinds and to the finds themselves, for
//! whoever wants to know how they spread. Measures become ranges, words and counts become shares,
//! each with on how many finds of how many plants it was seen. A cell is understood as in any
//! other table. No find is left out because it is unlike the others.

use std::borrow::Cow;
use std::collections::{BTreeMap, BTreeSet};

use spinney_model::{
    Cell, Character, Matrix, Measurand, OfCell, OfSheet, Place, Quantity, Seen, Share,
    Specimen, Specimens, Taxon, TaxonIx, Value,
};

use super::answers::is_unknown;
use super::assemble::{self, Columns, FITS, Rows, Sheets};
use super::column::Kinds;
use super::columns::{FINDS, OfFind};
use super::grid::{Grid, Headed};
use super::no_table::KINDS;
use super::phrase::fold;
use super::report::Report;
use super::{
    TableError, caps, characters_sheet, heading, last_rows, of_character, ratios, spoilt,
};
use crate::measured::words;

/// What stands before the name of a measure, in a column with how far it may be off.
const PLUS_MINUS: char = '±';

/// The other columns of measured leaves that say how they were measured.
const OF_MEASURING: [&str; 3] = ["dpi", "scale", "notes"];

/// What a scan shows of a leaf and nobody sees outdoors, with eyes and a ruler.
const NOT_OUTDOORS: [Measurand; 4] =
    [Measurand::BladeArea, Measurand::Perimeter, Measurand::Solidity, Measurand::Roundness];

/// What the other columns of measured leaves hold, where their headings do not say it.
const MEASURED: [[&str; 3]; 13] = [
    ["length to width", "measure", "ratio"],
    ["stalk to blade", "measure", "ratio"],
    ["leaflets", "counts", ""],
    ["lobes", "counts", ""],
    ["deepest sinus", "measure", "ratio"],
    ["teeth left", "counts", ""],
    ["teeth right", "counts", ""],
    ["teeth in a cm", "measure", "none"],
    ["widest at", "measure", "ratio"],
    ["one side further down by", "measure", "ratio"],
    ["wider side of base", "measure", "ratio"],
    ["side veins left", "counts", ""],
    ["side veins right", "counts", ""],
];

/// The finds of a sheet.
pub(super) struct Finds<'s> {
    /// A row a find.
    pub(super) table: Rows<'s>,
    /// A row a kind, at the first of its finds.
    kinds: Kinds<'s>,
    /// What is written of each find.
    written: Vec<Specimen>,
    /// The column with the names.
    pub(super) names: u32,
}

/// What finds come to.
pub(super) struct Summary<'f> {
    /// A row a kind.
    pub(super) kinds: Matrix,
    /// A row a find.
    pub(super) specimens: Specimens,
    /// The column of each character.
    pub(super) headings: Vec<&'f heading::Heading<'f>>,
}

/// Describes the columns of measured leaves that the sheet `characters` does not describe.
pub(super) fn describe_measured(sheets: &mut Sheets) {
    let Some(headed) = sheets.table.below_heading(&mut Report::default()) else { return };
    let headings: Vec<String> = headed.headings.iter().map(|(_, text)| fold(text)).collect();
    if !headings.iter().any(|heading| heading.starts_with(PLUS_MINUS)) {
        return;
    }
    let known = |name: &str| sheets.characters.iter().any(|row| fold(&row.name) == name);
    let new = MEASURED
        .iter()
        .filter(|[name, ..]| headings.iter().any(|heading| heading == name) && !known(name));
    let heading = ["character", "values", "unit"];
    let rows = std::iter::once(&heading).chain(new).map(|row| row.map(Cow::Borrowed).to_vec());
    let mut report = Report::default();
    let grid = Grid::typed("characters", &rows.collect::<Vec<_>>(), &mut report);
    sheets.characters.extend(characters_sheet::read(&grid, &mut report));
}

/// Finds the finds; an error where no column or no row says what kind they are.
pub(super) fn find<'s>(
    sheets: &'s Sheets,
    report: &mut Report,
) -> Result<Finds<'s>, TableError> {
    let grid = &sheets.table;
    let none = || TableError::NoKinds { name: grid.name.clone() };
    let headed = grid.below_heading(report).ok_or_else(none)?;
    let layout = Layout::of(grid, &headed)?;
    spoilt::tell(grid, report);
    layout.tell(grid, &headed, report);
    let (kinds, rows, written) = rows(grid, &headed, &layout, report);
    if rows.is_empty() {
        return Err(none());
    }
    let mut headings =
        heading::read(grid, headed.row, &layout.characters, &sheets.characters, report);
    if layout.measured {
        // Teeth in a cm are no length in cm.
        let bare = |name: &str| MEASURED.iter().any(|[of, ..]| fold(name) == *of);
        headings.iter_mut().filter(|at| bare(&at.name)).for_each(|at| at.unit = None);
    }
    headings.extend(ratios::beside(&sheets.characters, &headings));
    let of = |rows| Kinds { grid, rows, dash_is_none: layout.measured };
    let table = Rows { headings, kinds: of(rows) };
    let kinds = of(kinds);
    assemble::not_in_the_table(sheets, &table.headings, &kinds, report);
    Ok(Finds { table, kinds, written, names: layout.kind })
}

impl Finds<'_> {
    /// Sums the finds up.
    pub(super) fn summary(
        &self,
        sheets: &Sheets,
        usual_gap: Quantity,
        report: &mut Report,
    ) -> Summary<'_> {
        let Columns { mut characters, cells, headings } =
            assemble::columns(&self.table, usual_gap, report);
        let taxa = assemble::taxa(sheets, &self.kinds);
        let named = |find: &Specimen| Taxon::named(taxa[find.kind.0].name.clone());
        let finds: Vec<Taxon> = self.written.iter().map(named).collect();
        let scene = &sheets.scene;
        // How often a kind is read right was found by the first row of its name.
        for character in &mut characters {
            let of = std::mem::take(&mut character.read_right_of);
            character.read_right_of =
                of.into_iter().map(|(find, of)| (self.written[find.0].kind, of)).collect();
        }
        let summed: Vec<Vec<Cell>> = cells
            .iter()
            .zip(&characters)
            .map(|(column, character)| self.column(column, character, report))
            .collect();
        assemble::unknowns(&characters, &summed, &self.kinds, &headings, report);
        let rows = assemble::turned(cells, finds.len());
        let finds = Matrix::new(scene.clone(), finds, characters.clone(), rows).expect(FITS);
        let rows = assemble::turned(summed, taxa.len());
        let kinds = Matrix::new(scene.clone(), taxa, characters, rows).expect(FITS);
        let written = self.written.clone();
        Summary { kinds, specimens: Specimens { finds, written }, headings }
    }

    /// A cell for each kind.
    fn column(&self, column: &[Cell], character: &Character, report: &mut Report) -> Vec<Cell> {
        let mut of_kinds = vec![Vec::new(); self.kinds.rows.len()];
        for (find, cell) in self.written.iter().zip(column) {
            of_kinds[find.kind.0].push((find, cell));
        }
        let cells = of_kinds.iter().enumerate().map(|(at, finds)| {
            let (cell, none) = summed(finds);
            if none > 0 && cell.value != Value::DoesNotApply {
                let some_have_none = OfCell::SomeHaveNone {
                    about: character.name.clone(),
                    kind: self.kinds.rows[at].1.clone(),
                    none,
                    finds: none + cell.seen.map_or(0, |seen| seen.on as usize),
                };
                report.add(&character.name, of_character(&character.name), some_have_none);
            }
            cell
        });
        cells.collect()
    }
}

/// What the finds of a kind come to in one character, and how many of them have no such thing.
fn summed(finds: &[(&Specimen, &Cell)]) -> (Cell, usize) {
    let is = |value: &Value, wanted: &Value| value == wanted;
    let none = finds.iter().filter(|(_, cell)| is(&cell.value, &Value::DoesNotApply)).count();
    let said: Vec<&(&Specimen, &Cell)> = finds
        .iter()
        .filter(|(_, cell)| !matches!(cell.value, Value::Unknown | Value::DoesNotApply))
        .collect();
    if said.is_empty() {
        let value = if none > 0 { Value::DoesNotApply } else { Value::Unknown };
        return (Cell::from(value), none);
    }
    let weight = |cell: &Cell| cell.seen.map_or(1, |seen| seen.on.max(1));
    let on = said.iter().fold(0_u32, |sum, (_, cell)| sum.saturating_add(weight(cell)));
    let plants = Specimen::plants(said.iter().map(|(find, _)| *find));
    let plants = plants.and_then(|plants| u32::try_from(plants).ok());
    let (mut ends, mut states, mut counts) = (None, BTreeMap::new(), BTreeMap::new());
    for (_, cell) in said {
        let part = Share::new(weight(cell).into(), on.into());
        match &cell.value {
            Value::Range { low, high } => {
                let (least, most) = ends.unwrap_or((*low, *high));
                ends = Some((least.min(*low), most.max(*high)));
            }
            Value::States(shares) => add(&mut states, shares, part),
            Value::Counts(shares) => add(&mut counts, shares, part),
            Value::Unknown | Value::DoesNotApply => {}
        }
    }
    let value = match ends {
        Some((low, high)) => Value::Range { low, high },
        None if counts.is_empty() => Value::States(states.into_iter().collect()),
        None => Value::Counts(counts.into_iter().collect()),
    };
    (Cell { value, seen: Some(Seen { on, plants }) }, none)
}

fn add<T: Ord + Copy>(all: &mut BTreeMap<T, Share>, shares: &[(T, Share)], part: Share) {
    for (item, share) in shares {
        *all.entry(*item).or_insert_with(|| Share::from_integer(0)) += share * part;
    }
}

/// What each column is for.
struct Layout {
    kind: u32,
    of_finds: Vec<(OfFind, u32)>,
    /// Further columns that say which find a row is, beside those above.
    further: Vec<u32>,
    /// Columns that say how finds were measured.
    measuring: Vec<u32>,
    characters: BTreeSet<u32>,
    /// Whether it is a sheet that we wrote when we measured.
    measured: bool,
}

impl Layout {
    fn of(grid: &Grid, headed: &Headed<'_>) -> Result<Self, TableError> {
        let heading = |column: u32| fold(grid.get(headed.row, column));
        let columns = grid.columns();
        let measured = columns.iter().any(|at| heading(*at).starts_with(PLUS_MINUS));
        let mut layout = Self {
            kind: 0,
            of_finds: Vec::new(),
            further: Vec::new(),
            measuring: Vec::new(),
            characters: BTreeSet::new(),
            measured,
        };
        for column in columns {
            let text = heading(column);
            let known = FINDS.iter().find(|(_, known)| known.contains(&text.as_str()));
            let how = text.starts_with(PLUS_MINUS)
                || OF_MEASURING.contains(&text.as_str())
                || NOT_OUTDOORS.iter().any(|what| text.starts_with(words::measurand(*what)));
            match known {
                Some((of, _)) if layout.column(*of).is_none() => {
                    layout.of_finds.push((*of, column));
                }
                Some(_) => layout.further.push(column),
                None if measured && how => layout.measuring.push(column),
                None => _ = layout.characters.insert(column),
            }
        }
        let kind = layout.best_kind(heading);
        // Where nothing is headed so, the first column has the names, as in any table: `plant` is
        // which plant it is only beside a column with its kind.
        let first = grid.columns().first().copied();
        let first = first.filter(|first| KINDS.contains(&heading(*first).as_str()));
        let first = first.or_else(|| layout.characters.first().copied());
        let first = first.filter(|_| !measured);
        let none = || TableError::NoKindColumn { name: grid.name.clone() };
        layout.kind = kind.or(first).ok_or_else(none)?;
        layout.characters.remove(&layout.kind);
        layout.of_finds.retain(|(of, at)| *of == OfFind::Kind || *at != layout.kind);
        Ok(layout)
    }

    /// The column with the kinds, of all that may be: `kind` before `name` before `species`,
    /// wherever they stand. A `name` beside it is what the find is called.
    fn best_kind(&mut self, heading: impl Fn(u32) -> String) -> Option<u32> {
        let first = self.column(OfFind::Kind)?;
        let names = FINDS.iter().filter(|(of, _)| *of == OfFind::Kind);
        let rank = |column: u32| {
            let heading = heading(column);
            names.clone().flat_map(|(_, known)| *known).position(|known| *known == heading)
        };
        let others = self.further.iter().copied().filter(|column| rank(*column).is_some());
        let mut all: Vec<u32> = std::iter::once(first).chain(others).collect();
        all.sort_by_key(|column| rank(*column));
        let best = all.remove(0);
        self.of_finds.retain(|(of, _)| *of != OfFind::Kind);
        self.of_finds.push((OfFind::Kind, best));
        self.further.retain(|column| *column != best && !all.contains(column));
        for column in all {
            match heading(column) == "name" && self.column(OfFind::Find).is_none() {
                true => self.of_finds.push((OfFind::Find, column)),
                false => self.further.push(column),
            }
        }
        Some(best)
    }

    fn column(&self, of: OfFind) -> Option<u32> {
        self.of_finds.iter().find(|(known, _)| *known == of).map(|(_, column)| *column)
    }

    /// Which columns are not asked about.
    fn tell(&self, grid: &Grid, headed: &Headed<'_>, report: &mut Report) {
        let heading = |column: u32| grid.get(headed.row, column).to_owned();
        let others = self.of_finds.iter().map(|(_, column)| column).chain(&self.further);
        let others: BTreeSet<u32> = others.copied().filter(|at| *at != self.kind).collect();
        let headings: Vec<String> = others.into_iter().map(heading).collect();
        if !headings.is_empty() {
            report.one(Place::Table, OfSheet::FindColumns { headings });
        }
        if let Some(first) = self.measuring.first().map(|column| heading(*column)) {
            let columns = self.measuring.len();
            report.one(Place::Table, OfSheet::MeasuringColumns { first, columns });
        }
    }
}

type NamedRows = Vec<(u32, String)>;

/// The kinds, each at its first find; the finds; and what is written of each.
fn rows(
    grid: &Grid,
    headed: &Headed<'_>,
    layout: &Layout,
    report: &mut Report,
) -> (NamedRows, NamedRows, Vec<Specimen>) {
    let most = caps::MOST_KINDS.min(caps::MOST_CELLS / layout.characters.len().max(1));
    let (mut kinds, mut rows, mut written) = (NamedRows::new(), NamedRows::new(), Vec::new());
    let (mut places, mut nameless) = (BTreeMap::new(), Vec::new());
    let count = last_rows::without(grid, &headed.rows, layout.kind, report);
    for row in headed.rows.iter().take(count).copied() {
        let name = grid.get(row, layout.kind);
        if name.is_empty() || is_unknown(&fold(name)) {
            nameless.push(row);
            continue;
        }
        if rows.len() >= most {
            let too_many = OfSheet::TooManyFinds { most, row: row + 1 };
            report.one(grid.place(row, layout.kind), too_many);
            break;
        }
        let kind = *places.entry(fold(name)).or_insert_with(|| {
            kinds.push((row, name.to_owned()));
            kinds.len() - 1
        });
        rows.push((row, kinds[kind].1.clone()));
        let text = |of: OfFind| match layout.column(of) {
            Some(column) => grid.get(row, column).to_owned(),
            None => String::new(),
        };
        written.push(Specimen {
            kind: TaxonIx(kind),
            at: grid.at(row, layout.kind),
            find: text(OfFind::Find),
            picture: text(OfFind::Picture),
            plant: text(OfFind::WhichPlant),
            place: text(OfFind::Where),
            when: text(OfFind::When),
            part: text(OfFind::Part),
        });
    }
    if let Some(first) = nameless.first() {
        let first = grid.at(*first, layout.kind);
        let rows = nameless.len();
        let of_no_kind = OfSheet::OfNoKind { rows, first: first.clone().into() };
        report.one(Place::Cell(first), of_no_kind);
    }
    (kinds, rows, written)
}

#[cfg(test)]
mod tests;
