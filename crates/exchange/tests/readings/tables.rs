//! Whole tables as people hand them in: what becomes of headings, rows, columns and sheets.

use spinney_exchange::table::{RowsAre, Settings, Sources, read, write};
use spinney_model::Matrix;

use crate::{approved, said, source};

/// A table of `tables.txt`: the sheets by their names.
fn sources(text: &str) -> Sources {
    let mut sources = Sources::default();
    for part in text.split("\n--- ") {
        let (name, text) = part.split_once('\n').unwrap_or((part, ""));
        let text = text.replace('|', "\t");
        match name.trim() {
            "characters" => sources.characters = Some(source("characters.tsv", &text)),
            "kinds" => sources.kinds = Some(source("kinds.tsv", &text)),
            "about" => sources.about = Some(source("about.tsv", &text)),
            _ => sources.table = source("table.tsv", &text),
        }
    }
    sources
}

/// The four sheets that are written of a table.
fn written(matrix: &Matrix) -> Vec<String> {
    let sheets = write(matrix);
    let sheets = [sheets.table, sheets.characters, sheets.kinds, sheets.about];
    sheets.iter().flat_map(|sheet| sheet.lines().map(|line| format!("< {line}"))).collect()
}

#[test]
fn tables_as_people_hand_them_in() {
    let mut lines = Vec::new();
    for text in include_str!("tables.txt").split("\n=== ").skip(1) {
        lines.extend(text.trim_end().lines().map(|line| format!("> {line}")));
        let rows = match text.starts_with("finds") {
            true => RowsAre::Finds,
            false => RowsAre::Kinds,
        };
        match read(&sources(text), &Settings { rows, ..Settings::default() }) {
            Ok(read) => {
                lines.extend(said::matrix(&read.matrix));
                lines.extend(
                    read.findings.iter().map(|finding| format!("  {}", said::short(finding))),
                );
                if let Some(specimens) = &read.specimens {
                    let said = format!("{specimens:?}");
                    let finds = said::matrix(&specimens.finds);
                    lines.extend(finds.iter().map(|line| format!("  find{line}")));
                    lines.push(format!(
                        "  finds {}",
                        spinney_fixtures::approved::brief(&said, 0)
                    ));
                }
                lines.extend(written(&read.matrix));
            }
            Err(why) => lines.push(format!("  cannot be read: {why:?}")),
        }
        lines.push(String::new());
    }
    approved("tables.txt", &lines);
}
