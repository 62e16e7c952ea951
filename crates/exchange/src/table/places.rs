//! Cells in words: where somebody looks at a table on a screen, `table!F11` is "hazel, edge".
//!
//! From the address of a cell in a sentence to its row and column by name. On the command line,
//! where a person has a spreadsheet open, addresses stay.

use std::collections::BTreeMap;

use spinney_model::{Fact, Finding};

use super::grid::Grid;
use super::layout;
use super::report::Report;

/// The names of a table's rows and columns.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct Places {
    sheet: String,
    heading_row: u32,
    /// The column with the names of kinds.
    names: u32,
    rows: BTreeMap<u32, String>,
    columns: BTreeMap<u32, String>,
}

impl Places {
    pub(super) fn of(table: &Grid) -> Self {
        let sheet = table.name.clone();
        let Some(headed) = table.below_heading(&mut Report::default()) else {
            return Self { sheet, ..Self::default() };
        };
        let first = layout::names_column(table, &headed).unwrap_or(0);
        let name = |row: &u32| (*row, table.get(*row, first).to_owned());
        Self {
            sheet,
            heading_row: headed.row,
            names: first,
            rows: headed.rows.iter().map(name).filter(|(_, name)| !name.is_empty()).collect(),
            columns: headed.headings.iter().cloned().collect(),
        }
    }

    /// The finding with every address in its sentence and remedy in words. Its place stays.
    pub fn in_words(&self, finding: &Finding) -> Finding {
        let mut finding = finding.clone();
        if let Fact::Text(text) = &mut finding.fact {
            text.sentence = self.said(&text.sentence);
            text.remedy = self.said(&text.remedy);
        }
        finding
    }

    fn said(&self, text: &str) -> String {
        let mut out = String::with_capacity(text.len());
        let mut rest = text;
        while let Some(mark) = rest.find('!') {
            let (before, after) = (&rest[..mark], &rest[mark + 1..]);
            let address = address(after);
            let sheet = sheet_before(before, &self.sheet);
            match address.zip(sheet) {
                Some(((column, row, length), sheet)) => {
                    let before = &before[..before.len() - sheet.len()];
                    let after = &after[length..];
                    let bracket = before.strip_suffix(" (").zip(after.strip_prefix(')'));
                    match bracket.filter(|_| self.is_said(text, sheet, column, row)) {
                        Some((before, after)) => {
                            out.push_str(before);
                            rest = after;
                        }
                        None => {
                            out.push_str(before);
                            out.push_str(&self.words(sheet, column, row));
                            rest = after;
                        }
                    }
                }
                None => {
                    out.push_str(&rest[..=mark]);
                    rest = after;
                }
            }
        }
        out + rest
    }

    /// Whether a text names the row and the column anyway.
    fn is_said(&self, text: &str, sheet: &str, column: u32, row: u32) -> bool {
        let heading = self.columns.get(&column).map(|heading| match heading.split_once(" (") {
            Some((name, _)) => name,
            None => heading,
        });
        let nameless = || text.contains(&format!("ow {} ", row.saturating_add(1)));
        let said = match self.rows.get(&row).zip(heading) {
            Some((kind, heading)) => text.contains(kind) && text.contains(heading),
            None => nameless(),
        };
        sheet == self.sheet && said
    }

    fn words(&self, sheet: &str, column: u32, row: u32) -> String {
        let number = row.saturating_add(1);
        if sheet != self.sheet {
            return format!("row {number} of the sheet “{sheet}”");
        }
        let heading = self.columns.get(&column);
        match (self.rows.get(&row), heading) {
            _ if row == self.heading_row => match heading {
                Some(heading) => format!("the heading “{heading}”"),
                None => "the headings".to_owned(),
            },
            (Some(kind), Some(heading)) if column != self.names => {
                format!("{kind}, {heading}")
            }
            (Some(kind), _) => kind.clone(),
            (None, Some(heading)) => format!("row {number}, {heading}"),
            (None, None) => format!("row {number}"),
        }
    }
}

/// The name of a sheet right before the mark: the table's own, or a single word.
fn sheet_before<'t>(before: &'t str, table: &str) -> Option<&'t str> {
    if !table.is_empty() && before.ends_with(table) {
        return Some(&before[before.len() - table.len()..]);
    }
    let start = before.rfind(|sign: char| sign.is_whitespace() || "(“‘„\"".contains(sign));
    let start =
        start.map_or(0, |at| at + before[at..].chars().next().map_or(1, char::len_utf8));
    (start < before.len()).then(|| &before[start..])
}

/// Column, row and length of an address such as `F11`, counted from nought.
fn address(text: &str) -> Option<(u32, u32, usize)> {
    let letters = text.bytes().take_while(u8::is_ascii_uppercase).count();
    let digits = text[letters..].bytes().take_while(u8::is_ascii_digit).count();
    let column = text[..letters].bytes().try_fold(0_u32, |sum, letter| {
        sum.checked_mul(26)?.checked_add(u32::from(letter - b'A') + 1)
    })?;
    let row: u32 = text[letters..letters + digits].parse().ok()?;
    Some((column.checked_sub(1)?, row.checked_sub(1)?, letters + digits))
}

#[cfg(test)]
mod tests {
    use spinney_model::{Code, Finding, Place};

    use super::super::{Source, typed_sheets};

    #[test]
    fn a_cell_is_named_by_its_row_and_its_column() {
        let text =
            "Our walk\n\nkind,edge,blade (mm)\nhazel,toothed,60-110\nelm,toothed,a lot\n";
        let source = Source { name: "my table".to_owned(), bytes: text.as_bytes().to_vec() };
        let places = typed_sheets(&[source]).expect("it has kinds").places;
        let said = |sentence: &str| {
            let place = Place::Cell("my table!C5".to_owned());
            places
                .in_words(&Finding::new(Code::CellNotUnderstood, place, sentence, ""))
                .text()
                .expect("it is text")
                .sentence
                .clone()
        };
        assert_eq!(said("“a lot” (my table!C5) is odd."), "“a lot” (elm, blade (mm)) is odd.");
        assert_eq!(said("Look at my table!A4."), "Look at hazel.");
        assert_eq!(said("It is in my table!B3!"), "It is in the heading “edge”!");
        let odd = "“a lot” for elm under “blade” (my table!C5) is no number.";
        assert_eq!(said(odd), "“a lot” for elm under “blade” is no number.");
        let row = "Row 9 has no name (my table!A9) and was left out.";
        assert_eq!(said(row), "Row 9 has no name and was left out.");
        assert_eq!(said("in characters!C4."), "in row 4 of the sheet “characters”.");
        assert_eq!(said("Well! That is C5."), "Well! That is C5.");
        assert_eq!(said("my table!Z99"), "row 99");
    }
}
