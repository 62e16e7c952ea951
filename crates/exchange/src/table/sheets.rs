//! Which sheet is which: the table, and those that describe its characters, kinds and scene.
//!
//! From the files a person gave to the four sheets. In a workbook the sheets `characters`,
//! `kinds` and `about` are found by name and the first other one is the table.

use spinney_model::{Code, Place};

use super::assemble::Sheets;
use super::grid::Grid;
use super::phrase::fold;
use super::source::{Form, form};
use super::workbook::Workbook;
use super::{Source, Sources, TableError, about_sheet, characters_sheet, kinds_sheet};
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
            *place = Some(alone(source, part, report)?);
        }
    }
    let empty = Grid::default();
    let or_empty = |grid: &Option<Grid>| grid.clone().unwrap_or_else(|| empty.clone());
    Ok(Sheets {
        characters: characters_sheet::read(&or_empty(&found.characters), report),
        kinds: kinds_sheet::read(&or_empty(&found.kinds), report),
        scene: about_sheet::read(&or_empty(&found.about), report),
        table: found.table,
    })
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
                let first = first.name.clone();
                report.one(
                    Code::LeftOut,
                    Place::Table,
                    format!("“{}” is not read: “{first}” is.", source.name),
                    "Take in one table after the other. Files beside a table are called \
                     characters, kinds and about.",
                );
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
                left_out.push(name.clone());
                continue;
            }
        };
        if place.is_none() {
            *place = Some(workbook.sheet(at, report)?);
        }
    }
    if !left_out.is_empty() {
        let named = left_out.iter().take(5).cloned().collect::<Vec<_>>().join("”, “");
        report.one(
            Code::LeftOut,
            Place::Table,
            format!(
                "“{}” is read as the table; {} further sheets are not, such as “{named}”.",
                found.table.name,
                left_out.len()
            ),
            "Put the sheet with the table first. Sheets beside it are called characters, \
             kinds and about.",
        );
    }
    Ok(found)
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
