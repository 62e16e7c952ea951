//! Files that are not for a printer: the page for a phone, text, JSON, a table.

use spinney_exchange::{json, key_text, table};
use spinney_model::Finding;
use spinney_press::page;
use spinney_voice::Tongue;

use super::booklet::Bound;

/// A file by its name, with its media type.
pub(super) fn file(bound: &Bound, name: &str) -> Option<(&'static str, Vec<u8>)> {
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
