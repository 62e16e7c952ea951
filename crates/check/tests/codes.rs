//! Every code of the model has somebody who tests that it appears: this crate by its mutants
//! (`mutants.rs`), or the crate of those who give it.

use std::collections::BTreeSet;
use std::fs;
use std::path::Path;

use spinney_check::CODES;
use spinney_model::Code;

/// What only the readers of tables and keys say.
const OF_EXCHANGE: &[Code] = &[
    Code::CellNotUnderstood,
    Code::CellNotPlain,
    Code::KindTwice,
    Code::HeadingTwice,
    Code::LeftOut,
    Code::StatesAlike,
    Code::Assumed,
    Code::SheetDisagrees,
    Code::GovernedButPresent,
    Code::LineNotUnderstood,
    Code::LeadTooMany,
    Code::NameNotSure,
    Code::NameUnknown,
    Code::NotLinked,
    Code::LinkNotSure,
    Code::LinksNotUnderstood,
];

/// What only the command line says, of wishes that `build` refused.
const OF_SPINNEY: &[Code] = &[Code::KeptRefused, Code::WishRefused, Code::LeftTogether];

#[test]
fn every_code_is_tested_by_somebody_and_by_one_only() {
    let all: Vec<Code> = [CODES, OF_EXCHANGE, OF_SPINNEY].concat();
    let different: BTreeSet<Code> = all.iter().copied().collect();
    assert_eq!(all.len(), different.len(), "a code is listed twice");
    let missing: Vec<&Code> =
        Code::ALL.iter().filter(|code| !different.contains(code)).collect();
    assert!(missing.is_empty(), "nobody tests {missing:?}");
    assert_eq!(all.len(), Code::ALL.len());
}

#[test]
fn the_tests_of_exchange_name_every_code_of_its_own() {
    let mut tests = String::new();
    gather(&Path::new(env!("CARGO_MANIFEST_DIR")).join("../exchange"), false, &mut tests);
    let named = |code: &Code| {
        let name = format!("Code::{code:?}");
        tests.match_indices(&name).any(|(at, _)| {
            !tests[at + name.len()..].starts_with(|next: char| next.is_alphanumeric())
        })
    };
    let unnamed: Vec<&Code> = OF_EXCHANGE.iter().filter(|code| !named(code)).collect();
    assert!(unnamed.is_empty(), "no test of exchange names {unnamed:?}");
}

/// The text of all tests below a folder.
fn gather(folder: &Path, of_tests: bool, text: &mut String) {
    for entry in fs::read_dir(folder).unwrap_or_else(|fault| panic!("{folder:?}: {fault}")) {
        let path = entry.unwrap_or_else(|fault| panic!("{folder:?}: {fault}")).path();
        let of_tests = of_tests || path.file_stem().is_some_and(|name| name == "tests");
        if path.is_dir() {
            gather(&path, of_tests, text);
        } else if of_tests && path.extension().is_some_and(|ending| ending == "rs") {
            text.push_str(&fs::read_to_string(&path).unwrap_or_default());
        }
    }
}
