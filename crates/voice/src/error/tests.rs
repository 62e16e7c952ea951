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
        TableError::NoKindColumn { name: name() },
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

/// Every other error, as it is said of one file.
fn others(t: Tongue) -> Vec<(String, String)> {
    let text = || "31".to_owned();
    let of_keys = [
        KeyFileError::NotOurs { line: 7, column: 31 },
        KeyFileError::CutOff { line: 31 },
        KeyFileError::Unknown { field: text() },
        KeyFileError::NoKey,
        KeyFileError::Disagree { field: "lower_bound", number: "7".to_owned(), exact: text() },
        KeyFileError::Line { line: text() },
        KeyFileError::Form { form: 31 },
        KeyFileError::Cost { field: "lower_bound" },
    ];
    let of_bundles = [
        BundleError::NotABundle,
        BundleError::TooLarge,
        BundleError::CutOff,
        BundleError::Damaged,
    ];
    let of_lines = [LineError::Newer(31), LineError::NotALine];
    let of_templates = [TemplateError::Date(text()), TemplateError::Writer(text())];
    let keys = of_keys.iter().map(|error| key_file_error(t, "key.json", error));
    keys.chain(of_bundles.map(|error| bundle_error(t, "class4.zip", error)))
        .chain(of_lines.map(|error| line_error(t, error)))
        .chain(of_templates.iter().map(|error| template_error(t, error)))
        .collect()
}

#[test]
fn every_error_of_a_key_a_journal_a_bundle_and_a_template_has_words_of_its_own() {
    let mut sentences = BTreeSet::new();
    let mut remedies = [BTreeSet::new(), BTreeSet::new()];
    for (at, (tag, _)) in LANGUAGES.iter().enumerate() {
        let said = others(Tongue::for_person(&[(*tag).to_owned()]));
        assert_eq!(said.len(), 16);
        for (sentence, remedy) in said {
            assert!(sentence.ends_with('.') && !remedy.is_empty(), "{sentence} {remedy}");
            assert!(sentences.insert(sentence.clone()), "{tag}: {sentence}");
            remedies[at].insert(remedy);
        }
    }
    assert!(remedies[0].is_disjoint(&remedies[1]), "a remedy is in both languages alike");
    let english = others(Tongue::of_terminal());
    assert_eq!(
        english[4].0,
        "key.json says 7 as lower_bound, but 31 as lower_bound_exact; nobody can tell which is meant."
    );
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
