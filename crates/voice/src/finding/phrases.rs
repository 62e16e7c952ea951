//! Lists, names, lengths and forms within a sentence: from typed data to phrases.

use spinney_model::{
    Answer, CellOf, CellsOf, Form, NameAtEnd, RangeOf, Share, Step, WhatIsAsked, Written,
    WrittenIn,
};

use crate::Tongue;

/// More names than this in one sentence are counted instead.
const MOST_NAMES: usize = 8;

/// "hazel, lime and plane".
pub fn all(t: Tongue, words: &[String]) -> String {
    listed(t, words, "list-and", "list-and-more")
}

/// "hazel, lime or plane".
pub fn any(t: Tongue, words: &[String]) -> String {
    listed(t, words, "list-or", "list-or-more")
}

fn listed(t: Tongue, words: &[String], last: &str, more: &str) -> String {
    match words {
        [] => String::new(),
        [one] => one.clone(),
        _ if words.len() > MOST_NAMES => {
            let named = words[..MOST_NAMES].join(", ");
            t.count_with(more, words.len() - MOST_NAMES, &[("before", &named)])
        }
        [most @ .., end] => t.with(last, &[("before", &most.join(", ")), ("last", end)]),
    }
}

/// "questions 3 and 4", without the word.
pub(super) fn numbers(numbers: &[u32]) -> Vec<String> {
    numbers.iter().map(u32::to_string).collect()
}

/// The same sentence beginning with a capital letter.
pub(super) fn capital(sentence: &str) -> String {
    let mut letters = sentence.chars();
    letters
        .next()
        .map_or_else(String::new, |first| first.to_uppercase().chain(letters).collect())
}

/// Whether a column was made from a question that people asked in their own words.
pub(super) fn is_a_question(about: &str) -> bool {
    about.ends_with('?')
}

/// A column as it is called in a sentence: its name, or its question between quotation marks.
pub(super) fn about(t: Tongue, name: &str) -> String {
    match is_a_question(name) {
        true => t.with("finding-quoted", &[("text", &name)]),
        false => name.to_owned(),
    }
}

/// What a question does: `asks for edge`, `asks “Is it round?”`.
pub(super) fn asks(t: Tongue, name: &str) -> String {
    match is_a_question(name) {
        true => t.with("finding-asks", &[("about", &name)]),
        false => t.with("finding-asks-for", &[("about", &name)]),
    }
}

/// The word of an answer.
pub(super) fn answer(t: Tongue, answer: Answer) -> String {
    match answer {
        Answer::Yes => t.say("answer-yes"),
        Answer::No => t.say("answer-no"),
    }
}

/// "question 3, yes,".
pub(super) fn step(t: Tongue, step: Step) -> String {
    let answer = answer(t, step.answer);
    t.with("finding-step", &[("question", &step.couplet), ("answer", &answer)])
}

/// A number with its unit: `22.5 mm`.
pub(super) fn figure(t: Tongue, figure: Written) -> String {
    let number = figure.number();
    let one = number == "1";
    let unit = match figure.written_in {
        Some(WrittenIn::Inches) if one => t.say("finding-inch"),
        Some(WrittenIn::Inches) => t.say("finding-inches"),
        Some(WrittenIn::Feet) if one => t.say("finding-foot"),
        Some(WrittenIn::Feet) => t.say("finding-feet"),
        Some(unit) => unit.sign().to_owned(),
        None => String::new(),
    };
    let number = t.decimal(&number);
    match unit.as_str() {
        "" | "°" => format!("{number}{unit}"),
        _ => format!("{number} {unit}"),
    }
}

/// A range with its unit: "30 to 35 mm"; "35 mm" where it is one number.
pub(super) fn range(t: Tongue, range: &RangeOf) -> String {
    let high = figure(t, range.high);
    if range.low == range.high {
        return high;
    }
    let low = t.decimal(&range.low.number());
    t.with("finding-range", &[("low", &low), ("high", &high)])
}

/// The names at one end: "lime or “hazle”".
pub(super) fn at_end(t: Tongue, names: &[NameAtEnd]) -> String {
    let names = names.iter().map(|name| match name {
        NameAtEnd::Kind(name) => name.clone(),
        NameAtEnd::Strange(name) => t.with("finding-quoted", &[("text", name)]),
    });
    any(t, &names.collect::<Vec<_>>())
}

/// The names at several ends.
pub(super) fn at_ends(t: Tongue, ends: &[Vec<NameAtEnd>]) -> String {
    any(t, &ends.iter().map(|names| at_end(t, names)).collect::<Vec<_>>())
}

/// "edge of holly".
pub(super) fn cell(t: Tongue, cell: &CellOf) -> String {
    t.with("finding-cell", &[("about", &about(t, &cell.about)), ("kind", &cell.kind)])
}

/// "edge of holly and lime".
pub(super) fn cells(t: Tongue, cells: &CellsOf) -> String {
    let kinds = all(t, &cells.kinds);
    t.with("finding-cell", &[("about", &about(t, &cells.about)), ("kind", &kinds)])
}

/// "toothed or smooth", "40 mm or more".
pub(super) fn form(t: Tongue, form: &Form) -> String {
    match form {
        Form::States(states) => any(t, states),
        Form::Below(at) => t.with("finding-below", &[("figure", &figure(t, *at))]),
        Form::AtLeast(at) => t.with("finding-at-least", &[("figure", &figure(t, *at))]),
        Form::Exactly(at) => figure(t, *at),
        Form::Between(from, below) => {
            let (from, below) = (figure(t, *from), figure(t, *below));
            t.with("finding-between", &[("from", &from), ("below", &below)])
        }
        Form::Nothing => t.say("finding-nothing-it-can-have"),
    }
}

/// What a question asks for: "edge (toothed or spiny)", "stalk (22.5 mm or more)".
pub(super) fn asked(t: Tongue, asked: &WhatIsAsked) -> String {
    match asked {
        WhatIsAsked::NotOfTable => t.say("finding-not-of-table"),
        WhatIsAsked::Of { about: name, form: what } => {
            let (name, what) = (about(t, name), form(t, what));
            t.with("finding-asked-about", &[("about", &name), ("form", &what)])
        }
    }
}

/// 1 where a share is one, for the choice of words; more where it is anything else.
pub(super) fn plural(share: Share) -> usize {
    if share == Share::from_integer(1) { 1 } else { 2 }
}
