//! Tables of kinds × characters, in and out: CSV, TSV and XLSX to a matrix, a matrix to CSV.
//!
//! From the bytes of files to a [`Matrix`] and findings about everything that was odd. The
//! first column holds the kinds' names, the first row the characters' headings. Further
//! sheets or files describe the characters, the kinds and the scene. It opens no files and
//! never follows what a spreadsheet points to.
//!
//! Sources: RFC 4180 for separated values, ISO/IEC 29500-1 for XLSX.

use std::borrow::Cow;

use spinney_model::{
    AboutField, Cell, CharacterField, Finding, KindField, Matrix, Place, Quantity, Scale,
    Specimens,
};
pub use spinney_model::{Instead, OldFormat, TableError};

mod about_sheet;
mod answers;
mod assemble;
mod caps;
mod cell_text;
mod characters_sheet;
mod column;
mod columns;
mod governors;
mod grid;
mod heading;
mod instead;
mod kinds_sheet;
mod last_rows;
mod layout;
mod no_table;
mod number;
mod phrase;
mod places;
mod ratios;
mod read_right;
mod report;
mod retyped;
mod second_sheet;
mod separated;
mod sheets;
mod source;
mod specimens;
mod spoilt;
mod typed_sheets;
mod unit_of_column;
mod workbook;
mod write;

pub use about_sheet::how_many;
pub use columns::Input;
pub use instead::what_it_is;
pub use places::Places;
pub use retyped::{as_typed, either, renamed, renamed_in_second, second_question};
pub use typed_sheets::{Leaves, TypedColumn, TypedKind, TypedSheets};
pub use unit_of_column::{Units, fits_any_unit, measured_in, name_and_unit, units};

pub(crate) use columns::{ABOUT, CHARACTERS, KINDS};
pub(crate) use sheets::HOW_TO;

/// On how many things a cell was seen, where it says so: `52-61 (3 seen)`.
pub fn seen_on(text: &str) -> Option<u32> {
    cell_text::seen(text.trim()).1.map(|seen| seen.on)
}

/// A file.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct Source {
    /// What it is called in findings: `hedge.csv`.
    pub name: String,
    /// Its content.
    pub bytes: Vec<u8>,
}

/// The files of one table.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct Sources {
    /// The table; an XLSX may hold the others as sheets.
    pub table: Source,
    /// The questions, states, units of the characters.
    pub characters: Option<Source>,
    /// Other names, how often a kind is met, cautions.
    pub kinds: Option<Source>,
    /// Title, place, season.
    pub about: Option<Source>,
}

/// A table that was typed in cell by cell, and its sheets: nothing of it has to be guessed.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct TypedTable<'t> {
    /// The table, its headings first.
    pub table: Vec<Row<'t>>,
    /// What is said of its characters; may be empty.
    pub characters: Vec<Row<'t>>,
    /// What is said of its kinds; may be empty.
    pub kinds: Vec<Row<'t>>,
    /// Title, place, season; may be empty.
    pub about: Vec<Row<'t>>,
}

/// The cells of a row from left to right, blank ones among them.
pub type Row<'t> = Vec<Cow<'t, str>>;

/// The most characters of a table; columns beyond them are not read.
pub const MOST_CHARACTERS: usize = caps::MOST_CHARACTERS;

/// What a person may choose about reading.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub struct Settings {
    /// The safety gap of measures without one of their own, in the unit of the measure; None:
    /// 5 (millimetres, degrees or grams). A measure without a unit has none, 0; a ratio has a
    /// tenth whatever is said here.
    pub gap: Option<Quantity>,
    /// What a row of the table is.
    pub rows: RowsAre,
}

/// What a row of a table is.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub enum RowsAre {
    /// A kind.
    #[default]
    Kinds,
    /// A find, a leaf for instance: a kind may be on any number of rows.
    Finds,
}

/// What could be read.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct TableRead {
    /// The matrix, a row a kind.
    pub matrix: Matrix,
    /// The finds that it comes from, where each has a row of the table.
    pub specimens: Option<Specimens>,
    /// Everything there is to say about it, in the order of reading.
    pub findings: Vec<Finding>,
    /// The names of rows and columns, to say a cell in words.
    pub places: Places,
}

/// A matrix as four sheets of separated values.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Sheets {
    /// Kinds × characters.
    pub table: String,
    /// How to ask about each character.
    pub characters: String,
    /// Names, frequencies and cautions of each kind.
    pub kinds: String,
    /// Title, place, season.
    pub about: String,
}

/// Reads a table.
///
/// **Guarantees**: same bytes, same matrix and findings; at most 512 MiB of memory whatever
/// the bytes. **Errors**: only where nothing useful can be saved.
pub fn read(sources: &Sources, settings: &Settings) -> Result<TableRead, TableError> {
    let mut report = report::Report::default();
    let mut sheets = sheets::read(sources, &mut report)?;
    if settings.rows == RowsAre::Finds {
        specimens::describe_measured(&mut sheets);
    }
    put_together(&sheets, settings, report)
}

/// Reads a table that was typed in, cell by cell: what [`read`] reads of its four sheets as
/// files called `table`, `characters`, `kinds` and `about`.
///
/// **Errors**: as [`read`], where no row names a kind.
pub fn read_typed(
    typed: &TypedTable<'_>,
    settings: &Settings,
) -> Result<TableRead, TableError> {
    let mut report = report::Report::default();
    let sheets = sheets::typed_in(typed, &mut report);
    put_together(&sheets, settings, report)
}

fn put_together(
    sheets: &assemble::Sheets,
    settings: &Settings,
    mut report: report::Report,
) -> Result<TableRead, TableError> {
    let usual_gap = settings.gap.unwrap_or(spinney_model::USUAL_GAP);
    let (matrix, specimens, names) = match settings.rows {
        RowsAre::Kinds => (assemble::assemble(sheets, usual_gap, &mut report)?, None, None),
        RowsAre::Finds => {
            let finds = specimens::find(sheets, &mut report)?;
            let summary = finds.summary(sheets, usual_gap, &mut report);
            (summary.kinds, Some(summary.specimens), Some(finds.names))
        }
    };
    let findings = report.finish();
    Ok(TableRead { matrix, specimens, findings, places: Places::of(&sheets.table, names) })
}

/// Writes a matrix; reading the four sheets together gives an equal one.
pub fn write(matrix: &Matrix) -> Sheets {
    write::write(matrix)
}

/// A sheet of typed cells, row after row, as bytes that [`read`] reads cell by cell as typed.
pub fn typed(name: &str, rows: Vec<Vec<String>>) -> Source {
    Source { name: name.to_owned(), bytes: write::separated(rows).into_bytes() }
}

/// Reads files as they were typed, in any order, each called as the sheet that it is
/// (`kinds.csv`, `about`); the first that is called nothing else is the table, and there may be
/// none.
///
/// **Errors**: as [`read`], and where something of it would be left out because it is over a
/// limit.
pub fn typed_sheets(sources: &[Source]) -> Result<TypedSheets, TableError> {
    typed_sheets_of(sources, RowsAre::Kinds)
}

/// The same where it is known what a row of the table is: of finds, the texts are what the finds
/// of each kind come to.
///
/// **Errors**: as [`typed_sheets()`].
pub fn typed_sheets_of(sources: &[Source], rows: RowsAre) -> Result<TypedSheets, TableError> {
    typed_sheets::read(sources, rows)
}

/// The fields of a character with the usual heading of each, in the order of the sheet.
pub fn character_headings() -> impl Iterator<Item = (CharacterField, &'static str)> {
    CHARACTERS.iter().map(|column| (column.field, column.headings[0]))
}

/// How a field of a character is filled in.
pub fn input(field: CharacterField) -> Input {
    CHARACTERS[columns::place_of(field)].input
}

/// The fields of a kind with the usual heading of each, in the order of the sheet.
pub fn kind_headings() -> impl Iterator<Item = (KindField, &'static str)> {
    KINDS.iter().filter_map(|column| Some((column.field?, column.headings[0])))
}

/// The fields of the scene with the usual word for each, in the order of the sheet.
pub fn about_headings() -> impl Iterator<Item = (AboutField, &'static str)> {
    ABOUT.iter().filter_map(|row| Some((row.field?, row.headings[0])))
}

/// Bytes as text: by their byte order mark (UTF-8 or UTF-16), else as UTF-8, else as
/// Windows-1252, in which every byte means something.
pub fn decode(bytes: &[u8]) -> String {
    source::decode(bytes).into_owned()
}

/// Whether a column of this name says which find a row is (its number, its plant), and not how it
/// is, where rows are finds.
pub fn is_of_finds(name: &str) -> bool {
    let name = phrase::fold(name);
    columns::FINDS.iter().any(|(_, known)| known.contains(&name.as_str()))
}

/// A cell as a person would type it in a column.
pub fn cell_text(cell: &Cell, scale: &Scale) -> String {
    write::cell_text(cell, scale)
}

/// A character as the place of a finding.
fn of_character(name: &str) -> Place {
    Place::Character(name.to_owned())
}
