//! Every error is said, in each language, and not alike.

use std::collections::BTreeSet;

use spinney_model::{Finding, OfTable, Place};

use super::*;
use crate::LANGUAGES;

const ALL: [Instead; 20] = [
    Instead::Empty,
    Instead::Pdf,
    Instead::Picture,
    Instead::Photograph,
    Instead::TextDocument,
    Instead::WordDocument,
    Instead::LibreOffice,
    Instead::Numbers,
    Instead::GoogleSheet,
    Instead::ExcelLock,
    Instead::Database,
    Instead::PackedCollection,
    Instead::Spreadsheet,
    Instead::Zip,
    Instead::NotText,
    Instead::WebPage,
    Instead::Json,
    Instead::KeyInWords,
    Instead::Writing,
    Instead::LinedUp,
];

fn errors() -> Vec<TableError> {
    let name = || "finds.xls".to_owned();
    let what = Finding::of(Place::Couplet(3), OfTable::TooManyKinds);
    let mut all = vec![
        TableError::OldFormat { name: name(), format: OldFormat::Office },
        TableError::OldFormat { name: name(), format: OldFormat::OpenDocument },
        TableError::Protected { name: name() },
        TableError::TooLarge { name: name() },
        TableError::OtherSheet { name: name(), other: "table".to_owned() },
        TableError::OtherPart { name: name(), is: "kinds", wanted: "about" },
        TableError::Broken { name: name() },
        TableError::NoKinds { name: name() },
        TableError::DoesNotFit { what: Box::new(what) },
    ];
    all.extend(ALL.map(|what| TableError::NotATable { name: name(), what }));
    all
}

#[test]
fn every_error_of_a_table_has_words_of_its_own_in_each_language() {
    let mut sentences = BTreeSet::new();
    for error in errors() {
        for (tag, _) in LANGUAGES {
            let (sentence, remedy) = table_error(Tongue::for_person(&[tag.to_owned()]), &error);
            assert!(
                sentence.ends_with('.') && remedy.ends_with(['.', '$']),
                "{sentence} {remedy}"
            );
            assert!(sentences.insert(sentence), "{tag}: {error:?}");
        }
    }
}

#[test]
fn what_is_said_of_a_wrong_file_can_be_followed() {
    let pdf = TableError::NotATable { name: "a.pdf".to_owned(), what: Instead::Pdf };
    let (sentence, _) = table_error(Tongue::of_terminal(), &pdf);
    assert_eq!(sentence, "a.pdf does not look like a table: it is a PDF.");
    let german = Tongue::for_person(&["de".to_owned()]);
    let (sentence, remedy) = table_error(german, &pdf);
    assert_eq!(sentence, "a.pdf sieht nicht wie eine Tabelle aus: Es ist ein PDF.");
    assert!(remedy.contains("je Zeile eine Art"), "{remedy}");
    for what in [Instead::Writing, Instead::WebPage] {
        let error = TableError::NotATable { name: "letter".to_owned(), what };
        let (_, remedy) = table_error(Tongue::of_terminal(), &error);
        assert!(remedy.contains("one kind a row"), "{remedy}");
    }
}
