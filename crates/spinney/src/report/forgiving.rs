//! Forgiving keys in a teacher's words: how many finds come out right, and what each second place
//! saves.

use std::fmt::Write;

use spinney_model::{
    Answer, BothWays, Forgiving, ForgivingKeys, Key, Matrix, Share, Stopped, Wishes,
};

use super::{Ink, decimal, not_asked, push_wrapped};

const INDENT: &str = "  ";

/// What the last key's second places are, and what every number of them brings.
pub(crate) fn forgiving(
    ink: &Ink,
    matrix: &Matrix,
    wishes: &Wishes,
    forgiving: &ForgivingKeys,
) -> String {
    let Some(last) = forgiving.keys.last() else { return String::new() };
    let mut text = format!("{}\n", ink.bold("Second places in this key"));
    text.push_str(&not_asked(matrix, wishes));
    if last.key.couplets.is_empty() {
        push_wrapped(&mut text, INDENT, &nothing_asked(last));
        return text;
    }
    if last.both_ways.is_empty() {
        let none =
            if last.budget == 0 { "None were wanted." } else { "None would save a find." };
        push_wrapped(&mut text, INDENT, none);
    } else {
        for place in &last.both_ways {
            push_wrapped(&mut text, INDENT, &in_words(matrix, &last.key, place));
        }
        push_wrapped(
            &mut text,
            INDENT,
            "A kind with a second place comes out at more than one end, and that is meant: whoever \
             misreads the question can still find it.",
        );
    }
    let _ = write!(text, "\n{}\n", ink.bold("How many finds come out right"));
    let mut before: Option<&Forgiving> = None;
    for one in &forgiving.keys {
        push_wrapped(&mut text, INDENT, &line(matrix, one, before));
        before = Some(one);
    }
    let mut text = text + "\n";
    push_wrapped(&mut text, INDENT, HOW_COUNTED);
    if forgiving.keys.last().is_some_and(|last| !last.both_ways.is_empty()) {
        push_wrapped(&mut text, INDENT, NO_SUM);
    }
    if forgiving.keys.iter().any(|one| one.stopped == Some(Stopped::Budget)) {
        push_wrapped(
            &mut text,
            INDENT,
            "Where it says \"at most\", the search was stopped; a larger --budget goes on.",
        );
    }
    if forgiving.keys.iter().any(|one| one.stopped == Some(Stopped::Overflow)) {
        push_wrapped(
            &mut text,
            INDENT,
            "Exact numbers for this table grew too large, and nothing is claimed from there on. \
             Write rounder counts, or fill in unknown cells.",
        );
    }
    text
}

const NO_SUM: &str = "What each place saves is counted in the key as it is. With second places \
    another order of questions is best, so that it does not add up to what the whole key gains.";

const HOW_COUNTED: &str = "Counted so: a pupil reads each question right as often as the table \
    says, one like the other. A wrong answer loses the find, unless the kind is looked for on \
    that side too.";

fn nothing_asked(last: &Forgiving) -> String {
    match last.stopped {
        Some(Stopped::Overflow) => {
            "No key: exact numbers for this table grow too large. Write \
             rounder counts, or fill in unknown cells."
                .to_owned()
        }
        _ => "Nothing in this table tells any of these kinds apart.".to_owned(),
    }
}

/// `Lime also after "no" at question 3 (Is the edge toothed?): saves 2 finds of 100.`
fn in_words(matrix: &Matrix, key: &Key, place: &BothWays) -> String {
    let name = &matrix.taxon(place.taxon).name;
    let answer = match place.after {
        Answer::Yes => "yes",
        Answer::No => "no",
    };
    let couplet = key.couplets.iter().find(|couplet| couplet.number == place.couplet);
    let question = couplet.map_or("", |couplet| couplet.wording.first());
    format!(
        "A second place for {name} after \"{answer}\" at question {} ({question}) saves {} of 100.",
        place.couplet,
        finds(place.saves),
    )
}

/// `With one second place: 69 of 100, 2.2 more: lime after "no" at "Is the edge toothed?".`
fn line(matrix: &Matrix, one: &Forgiving, before: Option<&Forgiving>) -> String {
    let places = match one.budget {
        0 => "With no second place".to_owned(),
        1 => "With one second place".to_owned(),
        n => format!("With {n} second places"),
    };
    let mut text = format!("{places}: {} of 100", of_100(one.right));
    if one.stopped.is_some() {
        let _ = write!(text, " (at most {})", of_100(one.at_most));
    }
    if let Some(before) = before {
        if one.right > before.right {
            let _ = write!(text, ", {} more", of_100(one.right - before.right));
        } else {
            text.push_str(", no more");
        }
    }
    let names: Vec<String> =
        one.both_ways.iter().map(|place| short(matrix, one, place)).collect();
    if !names.is_empty() {
        let _ = write!(text, ": {}", names.join("; "));
    }
    text.push('.');
    text
}

fn short(matrix: &Matrix, one: &Forgiving, place: &BothWays) -> String {
    let answer = if place.after == Answer::Yes { "yes" } else { "no" };
    let couplet = one.key.couplets.iter().find(|couplet| couplet.number == place.couplet);
    let question = couplet.map_or("", |couplet| couplet.wording.first());
    format!("{} after \"{answer}\" at \"{question}\"", matrix.taxon(place.taxon).name)
}

/// `2.2 finds`
fn finds(share: Share) -> String {
    super::counted(share * 100, 1, "find")
}

fn of_100(share: Share) -> String {
    decimal(share * 100, 1)
}
