//! Keys as deep as they may be, on no more stack than a page in a browser has: a mebibyte.
//!
//! From a key in words that splits one kind off at a time to its second opinion, its files and
//! its sheets. A walk by recursion would end the process here, in whatever crate it stands.

use std::collections::BTreeMap;
use std::fmt::Write as _;
use std::thread;

use spinney_check::{Report, Settings, check};
use spinney_exchange::key_text;
use spinney_exchange::link::Links;
use spinney_exchange::table::{self, Source, Sources};
use spinney_model::{Code, Key, Matrix};
use spinney_press::{Booklet, Drawn, Letters, Paper, Sizes, Stamp, key_pages, page, today};
use spinney_voice::Tongue;

const PAGE: usize = 1 << 20;

fn on_the_stack_of_a_page<T: Send + 'static>(work: impl FnOnce() -> T + Send + 'static) -> T {
    let thread = thread::Builder::new().stack_size(PAGE).spawn(work);
    thread.expect("a thread starts").join().expect("the work is done")
}

/// Kinds that come out one after the other, as a table and as a key in words.
fn comb(kinds: usize) -> (Matrix, Key) {
    let mut rows = String::from("kind,edge\n");
    let mut text = String::new();
    for kind in 1..=kinds {
        let _ = writeln!(rows, "kind {kind},{}", ["toothed", "smooth"][kind % 2]);
        let no =
            if kind + 1 < kinds { (kind + 1).to_string() } else { format!("kind {kinds}") };
        if kind < kinds {
            let _ =
                writeln!(text, "{kind}. Has it mark {kind}? Yes -> kind {kind}, No -> {no}");
        }
    }
    let source = Source { name: "comb.csv".to_owned(), bytes: rows.into_bytes() };
    let sources = Sources { table: source, characters: None, kinds: None, about: None };
    let matrix = table::read(&sources, &table::Settings::default()).expect("a table").matrix;
    let key = key_text::read(&text, &matrix, &Links::default()).key;
    assert_eq!(key.couplets.len(), kinds - 1);
    (matrix, key)
}

fn booklet<'a>(
    (matrix, key): &'a (Matrix, Key),
    opinion: &'a Report,
    nothing: &'a Nothing,
) -> Booklet<'a> {
    Booklet {
        matrix,
        key,
        walks: &opinion.walks,
        left_together: &opinion.left_together,
        second_looks: &nothing.0,
        stamp: Stamp::None,
        date: None,
        pictures: &nothing.1,
        drawn: Drawn::NOTHING,
        letters: Letters::Usual,
        sizes: Sizes::USUAL,
        tongue: Tongue::of_terminal(),
    }
}

/// No second looks and no pictures.
#[derive(Default)]
struct Nothing(spinney_model::SecondLooks, BTreeMap<String, spinney_press::Picture>);

#[test]
fn a_key_ten_thousand_questions_deep_is_read_checked_and_written_again() {
    let (found, again) = on_the_stack_of_a_page(|| {
        let (matrix, key) = comb(10_001);
        let opinion = check(&matrix, &key, None, &Settings::default());
        let text = key_text::write(&key, &matrix);
        let again = key_text::read(&text, &matrix, &Links::default()).key;
        let same = again.couplets.iter().zip(&key.couplets).all(|(a, b)| {
            (a.number, &a.wording, &a.yes, &a.no) == (b.number, &b.wording, &b.yes, &b.no)
        });
        (opinion.findings, same)
    });
    assert!(again, "what was written is the same key");
    assert!(found.iter().any(|finding| finding.code == Code::LongPath));
}

/// Fewer questions, for the sake of the test's time, on less stack: the same bytes a question.
#[test]
fn a_key_two_thousand_questions_deep_is_printed_on_a_fifth_of_that_stack() {
    let work = || {
        let key = comb(2_001);
        let opinion = check(&key.0, &key.1, None, &Settings::default());
        let nothing = Nothing::default();
        let booklet = booklet(&key, &opinion, &nothing);
        let pages = key_pages::sheet(&booklet, Paper::A4).pages.len();
        let pdf = key_pages::pdf(&booklet, Paper::A4).expect("it can be printed");
        (pages, pdf.len(), today::sheet(&booklet, Paper::A4).pages.len(), page::html(&booklet))
    };
    let thread = thread::Builder::new().stack_size(PAGE / 5).spawn(work);
    let (pages, pdf, today, html) = thread.expect("starts").join().expect("it is printed");
    // Everything for today has the short key, four questions and more to a page.
    assert!(pages > 200 && pdf > 500_000 && today > 200, "{pages} {pdf} {today}");
    assert!(html.contains("id=\"q2000\""));
}
