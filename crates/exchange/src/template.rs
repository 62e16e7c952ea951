//! An empty table for somebody who has none: headings, questions, and how to fill it in.
//!
//! From a date and what is to stand in it to the bytes of an XLSX workbook. The words are the
//! caller's, in whatever language; no kind and no value of a kind is among them. Cells are
//! formatted as text, so that `3-5` stays what it is and does not become a date.

use rust_xlsxwriter::{
    DataValidation, DocProperties, ExcelDateTime, Format, FormatAlign, Workbook, Worksheet,
    XlsxError,
};

use spinney_model::{CharacterField, TemplateError};

use crate::table::{self as columns, HOW_TO, Input};

/// What stands in an empty table.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct Content {
    /// What the workbook is called.
    pub title: String,
    /// The characters to begin with, those first that are seen first.
    pub characters: Vec<Begun>,
    /// How it is filled in, row by row: what is typed, and what it means.
    pub advice: Vec<[String; 2]>,
}

/// A character to begin with.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct Begun {
    /// The heading of its column.
    pub name: String,
    /// The other fields of its row on the sheet of characters.
    pub fields: Vec<(CharacterField, String)>,
    /// What a spreadsheet says beside its cells.
    pub hint: String,
}

impl Begun {
    /// What stands in a column of the sheet `characters`; None: that is for people to say.
    fn text(&self, field: CharacterField) -> Option<&str> {
        if field == CharacterField::Name {
            return Some(&self.name);
        }
        let found = self.fields.iter().find(|(of, _)| *of == field);
        found.map(|(_, text)| text.as_str())
    }
}

/// How many rows are made ready for kinds; below them one can go on as well.
const READY_ROWS: u32 = 60;

/// The longest list of words a spreadsheet lets one choose from (ISO/IEC 29500-1, 18.3.1.33).
const LONGEST_CHOICE: usize = 255;

/// Writes the empty workbook. `created` is a date, `2026-10-03`; same date, same bytes.
///
/// **Errors**: a date that is none.
pub fn xlsx(created: &str, content: &Content) -> Result<Vec<u8>, TemplateError> {
    let date = ExcelDateTime::parse_from_str(created)
        .ok()
        .filter(|_| created.len() == 10 && created.is_ascii())
        .ok_or_else(|| TemplateError::Date(created.to_owned()))?;
    workbook(&date, content).map_err(|fault| TemplateError::Writer(fault.to_string()))
}

fn workbook(created: &ExcelDateTime, content: &Content) -> Result<Vec<u8>, XlsxError> {
    let mut workbook = Workbook::new();
    let properties =
        DocProperties::new().set_title(&content.title).set_creation_datetime(created);
    workbook.set_properties(&properties);
    let looks = Looks::new();
    table(workbook.add_worksheet(), &looks, content)?;
    characters(workbook.add_worksheet(), &looks, content)?;
    kinds(workbook.add_worksheet(), &looks)?;
    about(workbook.add_worksheet(), &looks)?;
    advice(workbook.add_worksheet(), &looks, content)?;
    workbook.save_to_buffer()
}

/// Headings and cells.
struct Looks {
    heading: Format,
    text: Format,
    advice: Format,
}

impl Looks {
    fn new() -> Self {
        let text = Format::new().set_num_format("@").set_align(FormatAlign::Top);
        Self {
            heading: text.clone().set_bold().set_text_wrap().set_background_color(0x00E4_EDE1),
            advice: text.clone().set_text_wrap(),
            text: text.set_text_wrap(),
        }
    }
}

/// Writes the headings of a sheet with their widths in letters.
fn headings<'h>(
    sheet: &mut Worksheet,
    looks: &Looks,
    headings: impl Iterator<Item = (&'h str, f64)>,
) -> Result<(), XlsxError> {
    for (column, (heading, width)) in (0_u16..).zip(headings) {
        sheet.set_column_format(column, &looks.text)?;
        sheet.set_column_width(column, width)?;
        sheet.write_string_with_format(0, column, heading, &looks.heading)?;
    }
    sheet.set_freeze_panes(1, 1)?;
    Ok(())
}

fn table(sheet: &mut Worksheet, looks: &Looks, content: &Content) -> Result<(), XlsxError> {
    sheet.set_name("table")?;
    let characters = content.characters.iter().map(|begun| (begun.name.as_str(), 17.0));
    headings(sheet, looks, std::iter::once(("kind", 20.0)).chain(characters))?;
    for (column, begun) in (1_u16..).zip(&content.characters) {
        sheet.add_data_validation(1, column, READY_ROWS, column, &hint(begun)?)?;
    }
    Ok(())
}

/// What a spreadsheet says beside a cell; it refuses nothing.
fn hint(begun: &Begun) -> Result<DataValidation, XlsxError> {
    let all = begun.text(CharacterField::States).unwrap_or_default();
    let states: Vec<&str> = all.split("; ").filter(|it| !it.is_empty()).collect();
    let validation = if states.is_empty() || all.len() > LONGEST_CHOICE {
        DataValidation::new().allow_any_value()
    } else {
        DataValidation::new().allow_list_strings(&states)?
    };
    validation
        .show_error_message(false)
        .set_input_title(&begun.name)?
        .set_input_message(&begun.hint)
}

fn characters(
    sheet: &mut Worksheet,
    looks: &Looks,
    content: &Content,
) -> Result<(), XlsxError> {
    sheet.set_name("characters")?;
    headings(sheet, looks, columns::CHARACTERS.iter().map(|of| (of.headings[0], of.width)))?;
    for (row, begun) in (1_u32..).zip(&content.characters) {
        for (column, of) in (0_u16..).zip(&columns::CHARACTERS) {
            if let Some(text) = begun.text(of.field) {
                sheet.write_string_with_format(row, column, text, &looks.text)?;
            }
        }
    }
    choices(sheet, columns::CHARACTERS.iter().map(|of| of.input))
}

fn kinds(sheet: &mut Worksheet, looks: &Looks) -> Result<(), XlsxError> {
    sheet.set_name("kinds")?;
    // What belongs to the finds is written at the screens.
    let of_a_key = || columns::KINDS.iter().filter(|of| of.write.is_some());
    headings(sheet, looks, of_a_key().map(|of| (of.headings[0], of.width)))?;
    choices(sheet, of_a_key().map(|of| of.input))
}

/// Lets one choose where one of some words is wanted.
fn choices(
    sheet: &mut Worksheet,
    inputs: impl Iterator<Item = Input>,
) -> Result<(), XlsxError> {
    for (column, input) in (0_u16..).zip(inputs) {
        let Input::OneOf(words) = input else { continue };
        let choice = DataValidation::new().allow_list_strings(words)?;
        let choice = choice.show_error_message(false);
        sheet.add_data_validation(1, column, READY_ROWS, column, &choice)?;
    }
    Ok(())
}

fn about(sheet: &mut Worksheet, looks: &Looks) -> Result<(), XlsxError> {
    sheet.set_name("about")?;
    headings(sheet, looks, [("what", 12.0), ("text", 40.0)].into_iter())?;
    for (row, of) in (1_u32..).zip(&columns::ABOUT) {
        sheet.write_string_with_format(row, 0, of.headings[0], &looks.text)?;
    }
    Ok(())
}

fn advice(sheet: &mut Worksheet, looks: &Looks, content: &Content) -> Result<(), XlsxError> {
    sheet.set_name(HOW_TO)?;
    sheet.set_column_width(0, 30.0)?;
    sheet.set_column_width(1, 70.0)?;
    for (row, [example, meaning]) in (0_u32..).zip(&content.advice) {
        sheet.write_string_with_format(row, 0, example, &looks.advice)?;
        sheet.write_string_with_format(row, 1, meaning, &looks.advice)?;
    }
    Ok(())
}

#[cfg(test)]
mod tests;
