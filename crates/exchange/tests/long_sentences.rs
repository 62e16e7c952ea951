//! A sentence of a megabyte, or a key of a million lines, is read in the time that it takes to
//! look at its letters once, and what is left out is said.

use std::time::{Duration, Instant};

use spinney_exchange::{key_text, link};
use spinney_fixtures::drawn;
use spinney_model::limits::{KEY_LINES, KEY_QUESTIONS};
use spinney_model::{Code, Fact, Matrix, OfKeyRead};

/// What would take hours if every letter were compared with every other.
const SOON: Duration = Duration::from_secs(30);

fn table() -> Matrix {
    drawn::yes_no(
        "        lobed spiny soft
         hazel   0     0     1
         oak     1     0     1
         holly   0     1     0
         elm     0     0     ?",
    )
}

/// Sentences of a megabyte, each of one thing again and again.
fn sentences() -> impl Iterator<Item = String> {
    let parts = [
        "a",
        "1",
        " ",
        "?",
        "\"",
        "(",
        "->",
        "...",
        "Is it lobed ",
        "1.2",
        "yes no ",
        "or ",
        "'",
        "hazel ",
        "hazel -> ",
        "Yes -> 2, ",
        "oak, ",
        "not ",
        "half a cm ",
        "5 mm or ",
        "é",
        "🌳",
        ". . ",
        "a) b) ",
        "----",
        "1a ",
        "see 2 ",
        "\u{a0}",
        "go to ",
        "= ",
    ];
    parts.into_iter().map(|part| part.repeat((1 << 20) / part.len()))
}

#[test]
fn a_sentence_of_a_megabyte_is_linked_soon() {
    let matrix = table();
    let begun = Instant::now();
    let mut read = 0;
    for sentence in sentences() {
        let question = format!("Is it lobed? {sentence}");
        let proposals = link::proposals(&question, &matrix);
        assert!(proposals.len() < 100, "{}", proposals.len());
        read += 1;
        assert!(begun.elapsed() < SOON, "{read} sentences: {:.20}", sentence);
    }
}

#[test]
fn a_line_of_a_megabyte_is_read_soon_and_what_is_left_out_is_said() {
    let matrix = table();
    let begun = Instant::now();
    for sentence in sentences() {
        let text =
            format!("1. Is it {sentence}? Yes -> oak, No -> 2\n2. {sentence}\n- {sentence}\n");
        let mut read = key_text::read(&text, &matrix, &link::Links::default());
        let said = read.findings.iter().filter(|found| found.code == Code::TooLarge).count();
        assert_eq!(said, 1, "{:.20}", sentence);
        link::link(&mut read.key, &matrix, &link::Links::default());
        assert!(begun.elapsed() < SOON, "{:.20}", sentence);
    }
}

#[test]
fn of_a_key_without_an_end_the_beginning_is_read_and_the_rest_is_said() {
    let matrix = table();
    let line = |n: usize| format!("{n}. Is it {n}? Yes -> oak, No -> {}\n", n + 1);
    let text: String = (1..=2 * KEY_LINES).map(line).collect();
    let read = key_text::read(&text, &matrix, &link::Links::default());
    assert_eq!(read.key.couplets.len(), KEY_QUESTIONS);
    let said = read.findings.iter().filter(|found| found.code == Code::TooLarge);
    let said: Vec<Fact> = said.map(|finding| finding.fact.clone()).collect();
    assert_eq!(
        said,
        [
            OfKeyRead::OnlyFirstLines { read: KEY_LINES }.into(),
            OfKeyRead::OnlyFirstQuestions { read: KEY_QUESTIONS }.into()
        ]
    );
    let short: String = (1..=1_000).map(line).collect();
    let read = key_text::read(&short, &matrix, &link::Links::default());
    assert!(read.findings.iter().all(|found| found.code != Code::TooLarge));
}
