//! What a remedy offers is done, word for word, in each language: then nothing is asked any more.

#![allow(clippy::unwrap_used, reason = "a test says with a panic what is wrong")]

use spinney_exchange::key_text;
use spinney_exchange::link::Links;
use spinney_exchange::table::{Settings, Source, Sources, read};
use spinney_model::{Code, Destination, End, Matrix, TaxonIx};
use spinney_voice::{LANGUAGES, Tongue, finding};

/// Invented.
fn hedge() -> Matrix {
    let text = "kind,edge\nhazel,toothed\nwych elm,toothed\nivy,smooth\n";
    let table = Source { name: "hedge.csv".to_owned(), bytes: text.into() };
    read(&Sources { table, ..Sources::default() }, &Settings::default()).unwrap().matrix
}

/// The line for the links file stands at the end of the remedy.
fn line_of(remedy: &str) -> &str {
    &remedy[remedy.rfind("name ").unwrap()..]
}

#[test]
fn the_line_offered_for_a_name_that_is_not_sure_is_read() {
    let matrix = hedge();
    for written in ["hazle", "Hasel", "wych-elms", "hazel tree", "a “hazle”"] {
        let key = format!("1. Is the edge smooth? Yes → ivy, No → {written}\n");
        let asked = key_text::read(&key, &matrix, &Links::default());
        let codes: Vec<Code> = asked.findings.iter().map(|finding| finding.code).collect();
        assert_eq!(codes, [Code::NameNotSure], "{written}");
        let meant = if written.starts_with("wych") { TaxonIx(1) } else { TaxonIx(0) };
        for (tag, _) in LANGUAGES {
            let (_, remedy) =
                finding(&asked.findings[0], Tongue::for_person(&[tag.to_owned()]));
            let (links, findings) = Links::read(line_of(&remedy), &matrix);
            assert_eq!(findings, [], "{remedy}");
            let read = key_text::read(&key, &matrix, &links);
            assert_eq!(read.findings, [], "{remedy}");
            let end = Destination::End(End::of([meant]));
            assert_eq!(read.key.couplets[0].no, end, "{remedy}");
        }
    }
}
