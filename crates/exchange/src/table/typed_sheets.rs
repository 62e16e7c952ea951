//! Sheets as they were typed, with their headings recognised: what comes into a collection that
//! keeps texts and not values.
//!
//! From files to the texts of every kind under every heading, by the same reader that makes the
//! matrix, and with the same findings. What a text means is for whoever asks later.

use spinney_model::{
    AboutField, CharacterField, Code, Finding, KindField, Matrix, Scale, Scene, Specimens,
    Unit, Value,
};

use super::assemble::Sheets;
use super::heading::{BESIDE, Heading};
use super::phrase::fold;
use super::places::Places;
use super::{
    ABOUT, RowsAre, Source, TableError, assemble, report::Report, sheets, specimens, write,
};
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
    /// The leaves that its rows were, where each has one, and what they come to.
    pub leaves: Option<Leaves>,
    /// Everything there is to say of it, in the order of reading.
    pub findings: Vec<Finding>,
    /// The names of rows and columns, to say a cell in words.
    pub places: Places,
}

/// The leaves of a table, and what their kinds come to.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Leaves {
    /// A row a kind.
    pub kinds: Matrix,
    /// A row a leaf.
    pub specimens: Specimens,
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
pub(super) fn read(sources: &[Source], rows: RowsAre) -> Result<TypedSheets, TableError> {
    let mut report = Report::default();
    let (mut sheets, has_table) = sheets::in_any_order(sources, &mut report)?;
    if rows == RowsAre::Finds {
        specimens::describe_measured(&mut sheets);
    }
    let mut typed = TypedSheets {
        characters: sheets
            .characters
            .iter()
            .map(|row| (row.name.clone(), row.typed.clone()))
            .collect(),
        kinds: sheets.kinds.rows.iter().map(kind).collect(),
        about: about(&sheets.scene),
        places: Places::of(&sheets.table, None),
        ..TypedSheets::default()
    };
    match rows {
        RowsAre::Kinds if has_table => of_kinds(&sheets, &mut typed, &mut report)?,
        RowsAre::Finds if has_table => of_finds(&sheets, &mut typed, &mut report)?,
        RowsAre::Kinds | RowsAre::Finds => {}
    }
    typed.findings = report.finish();
    // Nobody would see that something of it is not there.
    match typed.findings.iter().find(|finding| finding.code == Code::TooLarge) {
        Some(over) => Err(TableError::DoesNotFit { what: Box::new(over.clone()) }),
        None => Ok(typed),
    }
}

/// The texts of a table with a row a kind, as they are typed.
fn of_kinds(
    sheets: &Sheets,
    typed: &mut TypedSheets,
    report: &mut Report,
) -> Result<(), TableError> {
    if let Some(table) = &assemble::Rows::of(sheets, report) {
        let grid = &sheets.table;
        let typed_in = |column: u32, row: u32| grid.get(row, column).to_owned();
        let columns: Vec<_> =
            table.headings.iter().filter(|heading| heading.column != BESIDE).collect();
        typed.columns = columns.iter().map(|heading| column(heading)).collect();
        let cells = |row: u32| columns.iter().map(|at| typed_in(at.column, row)).collect();
        typed.rows =
            table.kinds.rows.iter().map(|(row, name)| (name.clone(), cells(*row))).collect();
        if typed.rows.is_empty() && typed.characters.is_empty() && typed.kinds.is_empty() {
            return Err(TableError::NoKinds { name: grid.name.clone() });
        }
        if !typed.rows.is_empty() {
            // What cells mean is told as it is of any table.
            assemble::matrix(sheets, table, USUAL_GAP, report);
        }
    }
    Ok(())
}

/// The texts of what finds come to, a row a kind.
fn of_finds(
    sheets: &Sheets,
    typed: &mut TypedSheets,
    report: &mut Report,
) -> Result<(), TableError> {
    let finds = specimens::find(sheets, report)?;
    let summary = finds.summary(sheets, USUAL_GAP, report);
    let matrix = &summary.kinds;
    typed.places = Places::of(&sheets.table, Some(finds.names));
    typed.columns = summary.headings.iter().map(|heading| column(heading)).collect();
    typed.rows = matrix
        .taxon_indices()
        .map(|taxon| {
            let cells = matrix.character_indices().map(|at| {
                let (cell, character) = (matrix.cell(taxon, at), matrix.character(at));
                match cell.value {
                    // Nobody has looked: a blank says as much.
                    Value::Unknown => String::new(),
                    _ => write::cell_text(cell, &character.scale),
                }
            });
            (matrix.taxon(taxon).name.clone(), cells.collect())
        })
        .collect();
    for character in matrix.characters() {
        let bare = matches!(character.scale, Scale::Measure { unit: Unit::Unstated, .. });
        let said = |(name, _): &&mut (String, _)| fold(name) == fold(&character.name);
        // Ranges of whole numbers would be counts to whoever reads them again.
        let measure = (CharacterField::Values, "measure".to_owned());
        match typed.characters.iter_mut().find(said) {
            _ if !bare => {}
            Some((_, fields)) if fields.iter().any(|(of, _)| *of == measure.0) => {}
            Some((_, fields)) => fields.push(measure),
            None => typed.characters.push((character.name.clone(), vec![measure])),
        }
    }
    typed.leaves = Some(Leaves { kinds: summary.kinds, specimens: summary.specimens });
    Ok(())
}

fn column(heading: &Heading<'_>) -> TypedColumn {
    TypedColumn {
        name: heading.name.clone(),
        heading: heading.typed.clone(),
        unit: heading.unit.map(spinney_model::WrittenIn::sign),
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
