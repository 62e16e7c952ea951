//! Separated values: comma, semicolon or tab, as RFC 4180 (2005) describes them.
//!
//! From text to a sheet. Fields are taken one by one, so that a line of a million commas is
//! never held as a million fields. Blank lines keep their row number, so that a cell has the
//! name under which a spreadsheet shows it.

use csv_core::{ReadFieldResult, ReaderBuilder, Terminator};

use spinney_model::OfSheet;

use super::{caps, grid::Grid, report::Report};

/// How many lines are looked at to tell the separator.
const LINES_LOOKED_AT: usize = 30;

/// Reads separated values into a sheet of this name.
pub(super) fn read(name: &str, text: &str, report: &mut Report) -> Grid {
    let (separator, text) = declared(text).unwrap_or_else(|| (separator(text), text));
    let end = if text.contains('\n') { b'\n' } else { b'\r' };
    let mut reader =
        ReaderBuilder::new().delimiter(separator).terminator(Terminator::Any(end)).build();
    let mut grid = Grid::named(name);
    let (mut input, mut row, mut column) = (text.as_bytes(), 0_u32, 0_u32);
    let (mut field, mut piece, mut too_long) = (Vec::new(), [0_u8; 1024], false);
    let mut at_start = true;
    while !grid.is_full() {
        if at_start {
            let blank = input.iter().take_while(|byte| **byte == end).count();
            row = row.saturating_add(u32::try_from(blank).unwrap_or(u32::MAX));
            input = &input[blank..];
            at_start = false;
        }
        let (result, used, written) = reader.read_field(input, &mut piece);
        input = &input[used..];
        too_long |= field.len() + written > caps::LONGEST_TEXT + 4;
        if !too_long {
            field.extend_from_slice(&piece[..written]);
        }
        match result {
            ReadFieldResult::InputEmpty | ReadFieldResult::OutputFull => {}
            ReadFieldResult::End => break,
            ReadFieldResult::Field { record_end } => {
                if too_long {
                    grid.too_long(row, column, report);
                } else {
                    let text = String::from_utf8_lossy(&field);
                    grid.put(row, column, unescape(text.trim()), report);
                }
                (column, at_start) = (column.saturating_add(1), record_end);
                if record_end {
                    (row, column) = (row.saturating_add(1), 0);
                }
                field.clear();
                too_long = false;
            }
        }
    }
    if let Some((row, column)) = unclosed(text, separator, end) {
        let at = grid.at(row, column).into();
        report.one(grid.place(row, column), OfSheet::QuotationNotClosed { at });
    }
    grid
}

/// Where the field begins whose quotation mark is not closed up to the end of the text.
fn unclosed(text: &str, separator: u8, end: u8) -> Option<(u32, u32)> {
    let (mut row, mut column, mut at_start, mut quoted) = (0_u32, 0_u32, true, false);
    let mut bytes = text.bytes().peekable();
    while let Some(byte) = bytes.next() {
        match byte {
            b'"' if quoted && bytes.peek() == Some(&b'"') => _ = bytes.next(),
            b'"' if quoted => quoted = false,
            _ if quoted => continue,
            b'"' if at_start => (quoted, at_start) = (true, false),
            _ if byte == separator => (column, at_start) = (column.saturating_add(1), true),
            _ if byte == end => {
                (row, column, at_start) = (row.saturating_add(1), 0, true);
            }
            _ => at_start = false,
        }
    }
    quoted.then_some((row, column))
}

/// Takes away the apostrophe with which [`super::write()`] keeps a spreadsheet from
/// calculating a text.
fn unescape(text: &str) -> &str {
    match text.strip_prefix('\'') {
        Some(rest) if needs_apostrophe(rest) => rest,
        _ => text,
    }
}

/// Whether a spreadsheet might calculate a text, or take its apostrophe away.
pub(super) fn needs_apostrophe(text: &str) -> bool {
    text.starts_with(['=', '+', '-', '@', '\'', '\t', '\r'])
}

/// A first line `sep=;`, which some spreadsheets write and obey.
fn declared(text: &str) -> Option<(u8, &str)> {
    let (first, rest) = text.split_once('\n')?;
    let sign = first.trim_end().strip_prefix("sep=")?;
    let byte = *sign.as_bytes().first().unwrap_or(&b'\t');
    (sign.len() <= 1 && matches!(byte, b',' | b';' | b'\t' | b'|')).then_some((byte, rest))
}

/// The separator that stands equally often in most of the first lines.
fn separator(text: &str) -> u8 {
    let counts = |sign: u8| {
        let (mut lines, mut count, mut quoted) = (Vec::new(), 0_usize, false);
        let mut blank = true;
        for byte in text.bytes() {
            match byte {
                b'\n' | b'\r' if !quoted => {
                    if !std::mem::replace(&mut blank, true) {
                        lines.push(std::mem::take(&mut count));
                    }
                    if lines.len() >= LINES_LOOKED_AT {
                        return lines;
                    }
                    continue;
                }
                b'"' => quoted = !quoted,
                _ if byte == sign && !quoted => count += 1,
                _ => {}
            }
            blank = false;
        }
        if !blank {
            lines.push(count);
        }
        lines
    };
    let agreeing = |sign: u8| {
        let lines = counts(sign);
        // A sign that most lines do without is part of a text: `x; y` in a list of names.
        if 2 * lines.iter().filter(|count| **count > 0).count() < lines.len() {
            return (0, 0);
        }
        let of = |count: usize| lines.iter().filter(|other| **other == count).count();
        lines.iter().filter(|count| **count > 0).map(|c| (of(*c), *c)).max().unwrap_or((0, 0))
    };
    // The last of equals wins: a table with one column needs no separator and gets a comma.
    b"\t;,".iter().copied().max_by_key(|sign| agreeing(*sign)).unwrap_or(b',')
}
