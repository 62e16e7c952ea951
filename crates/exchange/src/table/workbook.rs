//! An XLSX workbook, as ISO/IEC 29500-1 describes it, cell by cell into sheets.
//!
//! From the bytes of a workbook to the sheets that are asked for, with what is no plain value
//! told. Nothing is allocated because a file *says* that something is large: parts are
//! unpacked as a stream and counted, and one far cell is one cell.
//!
//! The general reader calamine 0.38 is the second road in the tests and not used here: it
//! reserves as many strings as `uniqueCount` claims, which ends the process on a false claim,
//! gives up a sheet at its first odd cell, and its cell names overflow.

use std::collections::BTreeMap;

use quick_xml::XmlVersion;
use quick_xml::events::BytesStart;

use super::{Instead, TableError, caps, grid::Grid, report::Report};

mod parts;
mod sheet;
mod strings;

use parts::{Found, Parts};

/// An opened workbook.
pub(super) struct Workbook<'a> {
    parts: Parts<'a>,
    sheets: Vec<(String, String)>,
    strings: Vec<String>,
    dates: Vec<bool>,
}

impl<'a> Workbook<'a> {
    /// Opens a workbook: its list of sheets, its strings and which styles are dates.
    pub(super) fn open(file: &str, bytes: &'a [u8]) -> Result<Self, TableError> {
        let mut parts = Parts::open(file, bytes)?;
        let main = main_part(&mut parts)?;
        let (folder, name) = main.rsplit_once('/').unwrap_or(("", &main));
        let targets = relations(&mut parts, &join(folder, &format!("_rels/{name}.rels")))?;
        let path_of = |wanted: &str, usual: &str| {
            targets
                .values()
                .find(|(kind, _)| kind.ends_with(wanted))
                .map_or_else(|| join(folder, usual), |(_, target)| join(folder, target))
        };
        let sheets = sheet_list(&mut parts, &main)?
            .into_iter()
            .filter_map(|(name, id)| {
                let (kind, target) = targets.get(&id)?;
                kind.ends_with("/worksheet").then(|| (name, join(folder, target)))
            })
            .collect();
        let strings =
            strings::read(&mut parts, &path_of("/sharedStrings", "sharedStrings.xml"))?;
        let dates = strings::date_styles(&mut parts, &path_of("/styles", "styles.xml"))?;
        Ok(Self { parts, sheets, strings, dates })
    }

    /// The names of the sheets, in the order of their tabs.
    pub(super) fn names(&self) -> Vec<String> {
        self.sheets.iter().map(|(name, _)| name.clone()).collect()
    }

    /// Reads one sheet by its place in [`Self::names`].
    pub(super) fn sheet(&mut self, at: usize, report: &mut Report) -> Result<Grid, TableError> {
        let (name, path) = &self.sheets[at];
        let mut grid = Grid::named(name);
        let file = self.parts.file().to_owned();
        let Some(xml) = self.parts.xml(path)? else { return Ok(grid) };
        let texts = sheet::Texts { strings: &self.strings, dates: &self.dates };
        match sheet::read(xml, &texts, &mut grid, report) {
            Err(damage) if damage == parts::Damage::Spent || grid.is_empty() => {
                Err(damage.of(&file))
            }
            _ => Ok(grid),
        }
    }
}

/// The part that lists the sheets; `xl/workbook.xml` unless the package says otherwise.
fn main_part(parts: &mut Parts<'_>) -> Result<String, TableError> {
    let targets = relations(parts, "_rels/.rels")?;
    let main = targets.values().find(|(kind, _)| kind.ends_with("/officeDocument"));
    Ok(main.map_or_else(|| "xl/workbook.xml".to_owned(), |(_, target)| join("", target)))
}

/// Id → (type, target) of a relations part.
fn relations(
    parts: &mut Parts<'_>,
    path: &str,
) -> Result<BTreeMap<String, (String, String)>, TableError> {
    let mut targets = BTreeMap::new();
    parts.each(path, |found| {
        if let Found::Start(element) = found
            && element.local_name().as_ref() == "Relationship"
        {
            let [id, kind, target] = ["Id", "Type", "Target"]
                .map(|name| attribute(element, name).unwrap_or_default());
            targets.insert(id, (kind, target));
        }
    })?;
    Ok(targets)
}

/// (Name, id) of every sheet of any sort.
fn sheet_list(parts: &mut Parts<'_>, path: &str) -> Result<Vec<(String, String)>, TableError> {
    let mut sheets = Vec::new();
    let there = parts.each(path, |found| {
        if let Found::Start(element) = found
            && element.local_name().as_ref() == "sheet"
            && sheets.len() < caps::MOST_SHEETS
        {
            let name = attribute(element, "name").unwrap_or_default();
            sheets.push((name, attribute(element, "id").unwrap_or_default()));
        }
    })?;
    if there {
        return Ok(sheets);
    }
    Err(TableError::NotATable { name: parts.file().to_owned(), what: Instead::Zip })
}

/// An attribute by its name without prefix.
fn attribute(element: &BytesStart<'_>, name: &str) -> Option<String> {
    let found = element
        .attributes()
        .with_checks(false)
        .flatten()
        .find(|attribute| attribute.key.local_name().as_ref() == name)?;
    let value = found.normalized_value(XmlVersion::Implicit1_0).ok()?;
    (value.len() <= caps::LONGEST_TEXT).then(|| value.into_owned())
}

/// A target in a folder; one that begins with a slash stands from the top.
fn join(folder: &str, target: &str) -> String {
    match target.strip_prefix('/') {
        Some(from_top) => from_top.to_owned(),
        None if folder.is_empty() => target.to_owned(),
        None => format!("{folder}/{target}"),
    }
}
