//! The page `docs/words.md`: every word of the list, what is drawn of it, and who defines it so.
//!
//! It is made from the list and from what `draw` draws, and fails where a word is missing from the
//! page, or has neither a drawing nor a reason why there is none. `WRITE_WORDS=1 cargo test
//! --workspace --test words_table` writes it anew.

#![allow(clippy::unwrap_used, reason = "these are tests, their helpers too")]

use std::fmt::Write as _;
use std::path::Path;

use spinney_model::{DrawnWord, Figure};
use spinney_voice::{Tongue, glossary};

/// Why nothing is drawn of a word.
const NOT_DRAWN: &[(&str, &str)] = &[
    ("sap", "a liquid has no shape of its own, and a drop of it looks like a drop of water"),
    ("shiny", "a flash of light is no line; drawn, it would be taken for a hole or a spot"),
];

const HEAD: &str = "# The words of the list\n\n\
Every word that Spinney can explain, with what is drawn of it, what it is drawn beside, and where\n\
its definition comes from. The drawings are made by `crates/draw` from parameters, after no plant or\n\
animal in particular. The plain words are ours; a source is named where it draws the line that they\n\
draw. What says *from memory* was not looked up. This page is made by a test\n\
(`crates/spinney/tests/words_table.rs`), which fails where a word is missing.\n\n";

fn captions(t: Tongue, figures: &[Figure]) -> String {
    let said = figures.iter().map(|figure| t.say(&format!("words-draw-{}", figure.caption)));
    said.collect::<Vec<_>>().join("; ")
}

/// What is drawn of a word, and beside what.
fn drawn(t: Tongue, id: &str) -> (String, String) {
    let [leaves, others] = [true, false].map(|leaves| spinney_draw::of_word(id, leaves));
    let said = |word: &DrawnWord| (captions(t, &word.own), captions(t, &word.other));
    match (&leaves, &others) {
        (None, None) => {
            let why = NOT_DRAWN.iter().find(|(word, _)| *word == id);
            let (_, why) = why.unwrap_or_else(|| panic!("{id} has neither drawing nor reason"));
            (format!("none: {why}"), String::new())
        }
        (Some(one), None) => {
            let (own, other) = said(one);
            (format!("{own} (of leaves)"), other)
        }
        (None, Some(one)) => {
            let (own, other) = said(one);
            (format!("{own} (of animals and shells)"), other)
        }
        (Some(one), Some(other)) if one == other => said(one),
        (Some(one), Some(other)) => {
            let (one, other) = (said(one), said(other));
            (format!("{}; of others: {}", one.0, other.0), format!("{}; {}", one.1, other.1))
        }
    }
}

#[test]
fn every_word_stands_in_the_table_with_its_drawing_and_its_source() {
    let (english, german) =
        (Tongue::for_person(&["en".to_owned()]), Tongue::for_person(&["de".to_owned()]));
    let words = glossary::all(english);
    let (mut page, mut many) = (HEAD.to_owned(), 0);
    page += "| word | in German | drawn | beside | source of the definition |\n\
             | --- | --- | --- | --- | --- |\n";
    for word in &words {
        let other = glossary::entry(german, word.id).expect("it is in both languages");
        let (own, beside) = drawn(english, word.id);
        many += usize::from(!own.starts_with("none"));
        writeln!(
            page,
            "| {} | {} | {own} | {beside} | {} |",
            word.word, other.word, word.source
        )
        .unwrap();
    }
    let all = words.len();
    writeln!(page, "\n{many} of {all} words are drawn.").unwrap();
    for (word, _) in NOT_DRAWN {
        assert!(words.iter().any(|entry| entry.id == *word), "{word} is in the list");
        assert_eq!(spinney_draw::of_word(word, true), None, "{word} is drawn after all");
    }
    let file = Path::new(env!("CARGO_MANIFEST_DIR")).join("../../docs/words.md");
    if std::env::var_os("WRITE_WORDS").is_some() {
        std::fs::write(&file, &page).unwrap();
    }
    let written = std::fs::read_to_string(&file).unwrap_or_default();
    assert_eq!(written, page, "docs/words.md is not up to date: WRITE_WORDS=1");
}
