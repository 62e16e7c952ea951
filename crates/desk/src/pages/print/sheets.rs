//! The sheets and files that there are, in the order in which one wants them: for a printer,
//! for a phone, as text, JSON and a table.

use spinney_exchange::{json, key_text, table};
use spinney_model::Finding;
use spinney_press::sheets::{SHEETS, SheetKind};
use spinney_press::{Paper, page};
use spinney_voice::Tongue;

use super::booklet::Bound;

/// Files that are not for a printer, each with the message of what it is.
pub(super) const FILES: [(&str, &str); 4] = [
    ("phone.html", "print-phone"),
    ("key.txt", "print-text"),
    ("key.json", "print-json"),
    ("table.csv", "print-csv"),
];

/// The papers.
pub(super) const PAPERS: [(&str, Paper); 3] =
    [("a4", Paper::A4), ("letter", Paper::Letter), ("a3", Paper::A3)];

/// The messages of a sheet's name, and of what it is for.
pub(super) fn messages(sheet: &SheetKind) -> (String, String) {
    (format!("print-{}", sheet.name), format!("print-{}-about", sheet.name))
}

/// The sheet of a name; the first where there is no such sheet.
pub(super) fn sheet_asked(name: &str) -> &'static SheetKind {
    SHEETS.iter().find(|sheet| sheet.name == name).unwrap_or(&SHEETS[0])
}

/// The paper of a name; A4 where there is no such paper.
pub(super) fn paper_asked(name: &str) -> (&'static str, Paper) {
    PAPERS.into_iter().find(|(known, _)| *known == name).unwrap_or(PAPERS[0])
}

/// A file by its name, with its media type.
pub(super) fn as_file(bound: &Bound, name: &str) -> Option<(&'static str, Vec<u8>)> {
    let (made, matrix) = (&bound.made, &bound.matrix);
    let (kind, text) = match name {
        "phone.html" => ("text/html; charset=utf-8", page::html(&bound.booklet())),
        "key.txt" => ("text/plain; charset=utf-8", key_text::write(&made.key, matrix)),
        "key.json" => ("application/json", as_json(bound)),
        "table.csv" => ("text/csv; charset=utf-8", table::write(matrix).table),
        _ => return None,
    };
    Some((kind, text.into_bytes()))
}

fn as_json(bound: &Bound) -> String {
    let (made, matrix) = (&bound.made, &bound.matrix);
    let effort = made.opinion.effort.map(|effort| json::Effort {
        total: effort.total,
        mean_questions: effort.mean_questions,
        longest: effort.longest,
    });
    json::report(
        &json::Report {
            key: Some(&made.key),
            claim: made.claim.as_ref(),
            effort: if made.claim.is_some() { None } else { effort },
            findings: made.findings(),
            questions_checked: Some((made.opinion.checked, made.opinion.questions)),
            refused: &made.refused,
            ..json::Report::of(matrix)
        },
        in_english,
    )
}

/// Files that programs read are in English, whatever the screens speak.
fn in_english(finding: &Finding) -> (String, String) {
    spinney_voice::finding(finding, Tongue::of_terminal())
}
