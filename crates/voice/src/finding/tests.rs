//! Every finding in every language, word for word in `tests/said.txt`: whoever words one anew
//! changes it there, and nobody else's test.

use spinney_model::{Finding, Place};

use super::finding;
use crate::tongue::tests::{asked_for, messages_of_findings};
use crate::{LANGUAGES, Tongue};

mod samples;

fn tongue(tag: &str) -> Tongue {
    Tongue::for_person(&[tag.to_owned()])
}

/// What is said of each sample: its code, then a sentence and a remedy in each language.
fn said() -> String {
    let mut said = String::new();
    for fact in samples::all() {
        let finding_of = Finding::of(Place::Key, fact);
        said.push_str(&format!("{}\n", finding_of.code.text()));
        for (tag, _) in LANGUAGES {
            let (sentence, remedy) = finding(&finding_of, tongue(tag));
            assert!(!sentence.is_empty() && !remedy.is_empty(), "{finding_of:?}");
            said.push_str(&format!("  {sentence}\n  {remedy}\n"));
        }
    }
    said
}

#[test]
fn every_finding_is_said_as_it_is_written_down() {
    let (said, written) = (said(), include_str!("tests/said.txt"));
    for (at, (is, was)) in said.lines().zip(written.lines()).enumerate() {
        assert_eq!(is, was, "line {}", at + 1);
    }
    assert_eq!(said.lines().count(), written.lines().count());
}

#[test]
fn no_message_of_findings_is_there_for_nothing() {
    let asked = asked_for(|| drop((said(), super::coverage(tongue("en"), 7, 9))));
    let left: Vec<String> =
        messages_of_findings().into_iter().filter(|name| !asked.contains(name)).collect();
    assert!(left.is_empty(), "no sample says {left:?}");
}
