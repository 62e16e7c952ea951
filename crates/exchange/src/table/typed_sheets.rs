//! Sheets as they were typed, with their headings recognised: what comes into a collection that
//! keeps texts and not values.
//!
//! From files to the texts of every kind under every heading, by the same reader that makes the
//! matrix, and with the same findings. What a text means is for whoever asks later.

use spinney_model::{AboutField, CharacterField, Code, Finding, KindField, Scene};

use super::heading::BESIDE;
use super::places::Places;
use super::{ABOUT, Source, TableError, assemble, report::Report, sheets};
use spinney_model::USUAL_GAP;

/// Sheets as they were typed.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct TypedSheets {
    /// The columns of the table, each with a name of its own.
    pub columns: Vec<TypedColumn>,
    /// Its rows: the name of the kind, which is its own, and a text for each column.
    pub rows: Vec<(String, Vec<String>)>,
    /// What the sheet `characters` says: the name of a column, and every field that is filled.
    pub characters: Vec<(String, Vec<(CharacterField, String)>)>,
    /// What the sheet `kinds` says of each kind.
    pub kinds: Vec<TypedKind>,
    /// What the sheet `about` says.
    pub about: Vec<(AboutField, String)>,
    /// Everything there is to say of it, in the order of reading.
    pub findings: Vec<Finding>,
    /// The names of rows and columns, to say a cell in words.
    pub places: Places,
}

/// A column of the table.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct TypedColumn {
    /// The name, as far as it is no unit.
    pub name: String,
    /// The heading as it was typed.
    pub heading: String,
    /// The unit that the heading says: `mm`.
    pub unit: Option<&'static str>,
}

/// What the sheet `kinds` says of a kind.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct TypedKind {
    /// Its name.
    pub name: String,
    /// Every field that is filled.
    pub fields: Vec<(KindField, String)>,
    /// A file with its picture.
    pub picture: Option<String>,
}

/// Reads files in any order, each called as the sheet that it is.
pub(super) fn read(sources: &[Source]) -> Result<TypedSheets, TableError> {
    let mut report = Report::default();
    let (sheets, has_table) = sheets::in_any_order(sources, &mut report)?;
    let table = if has_table { assemble::Rows::of(&sheets, &mut report) } else { None };
    let mut typed = TypedSheets {
        characters: sheets
            .characters
            .iter()
            .map(|row| (row.name.clone(), row.typed.clone()))
            .collect(),
        kinds: sheets.kinds.rows.iter().map(kind).collect(),
        about: about(&sheets.scene),
        places: Places::of(&sheets.table),
        ..TypedSheets::default()
    };
    if let Some(table) = &table {
        let grid = &sheets.table;
        let typed_in = |column: u32, row: u32| grid.get(row, column).to_owned();
        let columns: Vec<_> =
            table.headings.iter().filter(|heading| heading.column != BESIDE).collect();
        typed.columns = columns
            .iter()
            .map(|heading| TypedColumn {
                name: heading.name.clone(),
                heading: heading.typed.clone(),
                unit: heading.unit.map(spinney_model::WrittenIn::sign),
            })
            .collect();
        let cells = |row: u32| columns.iter().map(|at| typed_in(at.column, row)).collect();
        typed.rows =
            table.kinds.rows.iter().map(|(row, name)| (name.clone(), cells(*row))).collect();
        if typed.rows.is_empty() && typed.characters.is_empty() && typed.kinds.is_empty() {
            return Err(TableError::NoKinds { name: grid.name.clone() });
        }
        if !typed.rows.is_empty() {
            // What cells mean is told as it is of any table.
            assemble::matrix(&sheets, table, USUAL_GAP, &mut report);
        }
    }
    typed.findings = report.finish();
    // Nobody would see that something of it is not there.
    match typed.findings.iter().find(|finding| finding.code == Code::TooLarge) {
        Some(over) => Err(TableError::DoesNotFit { what: Box::new(over.clone()) }),
        None => Ok(typed),
    }
}

fn kind(row: &super::kinds_sheet::Described) -> TypedKind {
    let filled = row.typed.iter();
    TypedKind {
        name: row.taxon.name.clone(),
        fields: filled.filter_map(|(field, text)| Some(((*field)?, text.clone()))).collect(),
        picture: row.taxon.picture.clone(),
    }
}

/// What a collection keeps of the scene; of its version it keeps its own.
fn about(scene: &Scene) -> Vec<(AboutField, String)> {
    let said = ABOUT.iter().filter_map(|row| Some((row.field?, (row.write)(scene).join("\n"))));
    said.filter(|(_, text)| !text.is_empty()).collect()
}
