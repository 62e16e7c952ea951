//! Writes every sheet as a file, for eyes: into the tests' own folder of the target.

use std::path::PathBuf;

use spinney_model::Wording;
use spinney_press::{Paper, Stamp, chart, key_pages, today, try_out};

use crate::hedge::hedge_walk;

/// The folder that the sheets are written to.
pub(crate) fn folder() -> PathBuf {
    PathBuf::from(env!("CARGO_TARGET_TMPDIR"))
}

#[test]
fn the_sheets_of_the_walk_are_written_for_eyes() {
    let walked = hedge_walk();
    let booklet = walked.booklet(Stamp::None);
    let draft = walked.booklet(Stamp::Draft);
    let trying = walked.booklet(Stamp::TryingOut);
    let files = [
        ("key.pdf", key_pages::pdf(&booklet, Paper::A4)),
        ("key-letter-draft.pdf", key_pages::pdf(&draft, Paper::Letter)),
        ("chart.pdf", chart::pdf(&booklet, Paper::A4)),
        ("chart-a3.pdf", chart::pdf(&trying, Paper::A3)),
        ("chart-draft.pdf", chart::pdf(&draft, Paper::A4)),
        ("try-out.pdf", try_out::pdf(&booklet, Paper::A4)),
        ("today.pdf", today::pdf(&booklet, Paper::A4)),
    ];
    let mut paired = hedge_walk();
    for couplet in &mut paired.key.couplets {
        let first = couplet.wording.first().trim_end_matches('?').to_owned();
        let second = format!("Not so: {first}");
        couplet.wording = Wording::Leads { yes: first, no: second };
    }
    let leads = paired.booklet(Stamp::TryingOut);
    let more = [
        ("key-leads.pdf", key_pages::pdf(&leads, Paper::A4)),
        ("chart-leads.pdf", chart::pdf(&leads, Paper::A4)),
    ];
    for (name, pdf) in files.into_iter().chain(more) {
        std::fs::write(folder().join(name), pdf.unwrap()).unwrap();
    }
}
