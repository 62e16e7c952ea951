//! Writes every sheet as a file, for eyes: into the tests' own folder of the target. What a file
//! is, its first page says.

use std::path::PathBuf;

use spinney_model::Wording;
use spinney_press::sheet::ink::Inks;
use spinney_press::sheets::{Printing, SHEETS};
use spinney_press::{
    Booklet, Letters, Paper, Stamp, chart, key_pages, lessons, pdf, short_key, today, try_out,
    visit,
};
use spinney_voice::Tongue;

use crate::hedge::hedge_walk;
use crate::measured;
use crate::words::poppler;

/// The folder that the sheets are written to.
pub(crate) fn folder() -> PathBuf {
    PathBuf::from(env!("CARGO_TARGET_TMPDIR"))
}

/// Every sheet of the table on both papers, in both languages: `look-ruler-a4-en.pdf`.
#[test]
fn every_sheet_is_written_for_eyes() {
    let walked = measured::walk();
    let drawings = measured::drawings();
    for language in ["en", "de"] {
        let tongue = Tongue::for_person(&[language.to_owned()]);
        let booklet = Booklet { tongue, ..measured::booklet(&walked, &drawings) };
        for kind in SHEETS.iter().filter(|kind| (kind.has_something)(&booklet)) {
            for (name, paper) in [("a4", Paper::A4), ("letter", Paper::Letter)] {
                for (size, letters) in [("", Letters::Usual), ("-large", Letters::Large)] {
                    if kind.not_large.is_some() && letters == Letters::Large {
                        continue;
                    }
                    let wished = Printing { paper, letters, ..Printing::USUAL };
                    let sheet = kind.printed(&booklet, wished);
                    let file = format!("look-{}{size}-{name}-{language}.pdf", kind.name);
                    std::fs::write(folder().join(file), pdf::write(&sheet).unwrap()).unwrap();
                }
            }
        }
    }
}

#[test]
fn the_sheets_of_the_walk_are_written_for_eyes() {
    let walked = hedge_walk();
    let booklet = walked.booklet(Stamp::None);
    let draft = walked.booklet(Stamp::Draft);
    let trying = walked.booklet(Stamp::TryingOut);
    let files = [
        ("key.pdf", "Key", key_pages::pdf(&booklet, Paper::A4)),
        ("key-letter-draft.pdf", "Key", key_pages::pdf(&draft, Paper::Letter)),
        ("chart.pdf", "Chart", chart::pdf(&booklet, Paper::A4)),
        ("chart-a3.pdf", "Chart", chart::pdf(&trying, Paper::A3)),
        ("chart-draft.pdf", "Chart", chart::pdf(&draft, Paper::A4)),
        ("try-out.pdf", "Number labels", try_out::pdf(&booklet, Paper::A4)),
        ("today.pdf", "Today", today::pdf(&booklet, Paper::A4)),
        ("short-key.pdf", "Key", pdf::write(&short_key::sheet(&booklet, Paper::A4))),
        ("visit.pdf", "The visit", pdf::write(&visit::sheet(&booklet, Paper::A4))),
        ("lessons.pdf", "Warm-up", pdf::write(&lessons::sheet(&booklet, Paper::A4))),
        (
            "lessons-letter.pdf",
            "Warm-up",
            pdf::write(&lessons::sheet(&booklet, Paper::Letter).with(Inks::Black)),
        ),
    ];
    let mut paired = hedge_walk();
    for couplet in &mut paired.key.couplets {
        let first = couplet.wording.first().trim_end_matches('?').to_owned();
        let second = format!("Not so: {first}");
        couplet.wording = Wording::Leads { yes: first, no: second };
    }
    let leads = paired.booklet(Stamp::TryingOut);
    let more = [
        ("key-leads.pdf", "Key", key_pages::pdf(&leads, Paper::A4)),
        ("chart-leads.pdf", "Chart", chart::pdf(&leads, Paper::A4)),
    ];
    for (name, heading, pdf) in files.into_iter().chain(more) {
        let words = poppler("pdftotext", &["-l", "1"], name, &pdf.unwrap());
        let first = words.lines().take(3).find(|line| line.starts_with(heading));
        assert!(first.is_some(), "{name} begins: {words}");
    }
}
