//! Which sheet is which: the table, and those that describe its characters, kinds and scene.
//!
//! From the files a person gave to the four sheets. In a workbook the sheets `characters`,
//! `kinds` and `about` are found by name and the first other one is the table.

use spinney_model::{OfSheet, Place};

use super::assemble::Sheets;
use super::columns::{CHARACTERS, KINDS};
use super::grid::Grid;
use super::phrase::fold;
use super::source::{Form, form};
use super::workbook::Workbook;
use super::{
    Row, Source, Sources, TableError, TypedTable, about_sheet, characters_sheet, kinds_sheet,
};
use super::{no_table, report::Report, separated};

/// What a sheet is for.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
enum Part {
    Characters,
    Kinds,
    About,
    HowTo,
}

/// The name of the sheet with advice that the template has.
pub(crate) const HOW_TO: &str = "how to fill this in";

/// So many further sheets are looked at for the table, where the first sheet has one column.
const SHEETS_LOOKED_AT: usize = 5;

impl Part {
    /// Its usual name.
    fn name(self) -> &'static str {
        match self {
            Self::Characters => "characters",
            Self::Kinds => "kinds",
            Self::About => "about",
            Self::HowTo => HOW_TO,
        }
    }
}

/// Reads all sheets.
pub(super) fn read(sources: &Sources, report: &mut Report) -> Result<Sheets, TableError> {
    let mut found = match form(&sources.table)? {
        Form::Text(text) => {
            let table = separated::read(&sources.table.name, &text, report);
            if let Some(what) = no_table::by_its_cells(&table) {
                return Err(TableError::NotATable { name: table.name, what });
            }
            Found { table, characters: None, kinds: None, about: None }
        }
        Form::Workbook => {
            let given = [
                (Part::Characters, sources.characters.is_some()),
                (Part::Kinds, sources.kinds.is_some()),
                (Part::About, sources.about.is_some()),
            ];
            let given = given.into_iter().filter(|(_, given)| *given).map(|(part, _)| part);
            in_workbook(&sources.table, &given.collect::<Vec<_>>(), report)?
        }
    };
    let extra = [
        (&sources.characters, &mut found.characters, Part::Characters),
        (&sources.kinds, &mut found.kinds, Part::Kinds),
        (&sources.about, &mut found.about, Part::About),
    ];
    for (source, place, part) in extra {
        if let Some(source) = source {
            let sheet = alone(source, part, report)?;
            if let Some(is) = another(&sheet, part) {
                let (name, is, wanted) = (source.name.clone(), is.name(), part.name());
                return Err(TableError::OtherPart { name, is, wanted });
            }
            *place = Some(sheet);
        }
    }
    Ok(described(found, report))
}

/// The sheets of a table that was typed in.
pub(super) fn typed_in(typed: &TypedTable<'_>, report: &mut Report) -> Sheets {
    let mut sheet = |name: &str, rows: &[Row<'_>]| Grid::typed(name, rows, report);
    let found = Found {
        table: sheet("table", &typed.table),
        characters: Some(sheet(Part::Characters.name(), &typed.characters)),
        kinds: Some(sheet(Part::Kinds.name(), &typed.kinds)),
        about: Some(sheet(Part::About.name(), &typed.about)),
    };
    described(found, report)
}

/// The table with what the sheets beside it say.
fn described(found: Found, report: &mut Report) -> Sheets {
    let Found { table, characters, kinds, about } = found;
    Sheets {
        characters: characters_sheet::read(&characters.unwrap_or_default(), report),
        kinds: kinds_sheet::read(&kinds.unwrap_or_default(), report),
        scene: about_sheet::read(&about.unwrap_or_default(), report),
        table,
    }
}

/// Reads files in any order, each called as the sheet that it is: `kinds.csv` has the kinds. The
/// first that is called nothing else is the table. None: a sheet that nobody gave.
pub(super) fn in_any_order(
    sources: &[Source],
    report: &mut Report,
) -> Result<(Sheets, bool), TableError> {
    let stem = |name: &str| {
        let name = name.rsplit(['/', '\\']).next().unwrap_or_default();
        name.rsplit_once('.').map_or(name, |(stem, _)| stem).to_owned()
    };
    let mut given = Sources::default();
    let mut table = None;
    for source in sources {
        let place = match part_of(&stem(&source.name)) {
            Some(Part::Characters) => &mut given.characters,
            Some(Part::Kinds) => &mut given.kinds,
            Some(Part::About) => &mut given.about,
            Some(Part::HowTo) => continue,
            None => &mut table,
        };
        match place {
            None => *place = Some(source.clone()),
            Some(first) => {
                let (file, read) = (source.name.clone(), first.name.clone());
                report.one(Place::Table, OfSheet::FileNotRead { file, read });
            }
        }
    }
    let is_there = table.is_some();
    given.table = table.unwrap_or_default();
    Ok((read(&given, report)?, is_there))
}

struct Found {
    table: Grid,
    characters: Option<Grid>,
    kinds: Option<Grid>,
    about: Option<Grid>,
}

fn part_of(name: &str) -> Option<Part> {
    Some(match fold(name).as_str() {
        "characters" | "character" => Part::Characters,
        "kinds" | "kind" => Part::Kinds,
        "about" => Part::About,
        HOW_TO => Part::HowTo,
        _ => return None,
    })
}

fn in_workbook(
    source: &Source,
    given: &[Part],
    report: &mut Report,
) -> Result<Found, TableError> {
    let mut workbook = Workbook::open(&source.name, &source.bytes)?;
    let mut found =
        Found { table: Grid::named(&source.name), characters: None, kinds: None, about: None };
    let mut left_out = Vec::new();
    for (at, name) in workbook.names().iter().enumerate() {
        let part = part_of(name);
        let place = match part {
            Some(part) if given.contains(&part) => continue,
            Some(Part::HowTo) => continue,
            Some(Part::Characters) => &mut found.characters,
            Some(Part::Kinds) => &mut found.kinds,
            Some(Part::About) => &mut found.about,
            None if found.table.is_empty() => {
                found.table = workbook.sheet(at, report)?;
                continue;
            }
            None => {
                left_out.push((at, name.clone()));
                continue;
            }
        };
        if place.is_none() {
            *place = Some(workbook.sheet(at, report)?);
        }
    }
    let one_column = |grid: &Grid| grid.rows().all(|(_, cells)| cells.len() < 2);
    if one_column(&found.table) && !found.table.is_empty() {
        // What is told of a sheet that is only looked at is not told.
        for (at, _) in left_out.iter().take(SHEETS_LOOKED_AT) {
            let other = workbook.sheet(*at, &mut Report::default())?;
            if other.rows().filter(|(_, cells)| cells.len() > 1).count() > 1 {
                let name = found.table.name;
                return Err(TableError::OtherSheet { name, other: other.name });
            }
        }
    }
    if !left_out.is_empty() {
        let others = left_out.into_iter().map(|(_, name)| name).collect();
        let read = found.table.name.clone();
        report.one(Place::Table, OfSheet::SheetsNotRead { read, others });
    }
    Ok(found)
}

/// The sheet that a file is by its headings, where it was given for another one.
fn another(sheet: &Grid, wanted: Part) -> Option<Part> {
    let headings: Vec<String> = sheet
        .rows()
        .next()
        .map(|(_, cells)| cells.iter().map(|(_, text)| fold(text)).collect())
        .unwrap_or_default();
    let of = |part: Part| {
        let known: Vec<&[&str]> = match part {
            Part::Characters => CHARACTERS.iter().map(|column| column.headings).collect(),
            Part::Kinds => KINDS.iter().map(|column| column.headings).collect(),
            _ => Vec::new(),
        };
        let known = |heading: &&String| known.iter().any(|one| one.contains(&heading.as_str()));
        headings.iter().filter(known).count()
    };
    // One heading, such as “name”, several sheets may have.
    let mut others = [Part::Characters, Part::Kinds].into_iter().filter(|part| *part != wanted);
    others.find(|part| of(*part) > 2 && of(*part) > 2 * of(wanted))
}

/// A file that holds one of the sheets beside the table.
fn alone(source: &Source, part: Part, report: &mut Report) -> Result<Grid, TableError> {
    match form(source)? {
        Form::Text(text) => Ok(separated::read(&source.name, &text, report)),
        Form::Workbook => {
            let mut workbook = Workbook::open(&source.name, &source.bytes)?;
            let names = workbook.names();
            let wanted = names.iter().position(|name| part_of(name) == Some(part));
            match wanted.or((!names.is_empty()).then_some(0)) {
                Some(at) => workbook.sheet(at, report),
                None => Ok(Grid::named(&source.name)),
            }
        }
    }
}
