//! Forgiving keys in a teacher's words: how many finds come out right, and what each second place
//! saves.

use std::fmt::{Display, Write};

use spinney_model::{
    Answer, BothWays, Forgiving, ForgivingKeys, Key, Matrix, Share, Stopped, Wishes,
};
use spinney_voice::Tongue;

use super::{Ink, counted, decimal, not_asked, push};

/// What the last key's second places are, and what every number of them brings.
pub(crate) fn forgiving(
    ink: &Ink,
    matrix: &Matrix,
    wishes: &Wishes,
    forgiving: &ForgivingKeys,
) -> String {
    let Some(last) = forgiving.keys.last() else { return String::new() };
    let t = ink.t();
    let mut text = format!("{}\n", ink.bold(&t.say("forgive-places")));
    text.push_str(&not_asked(t, matrix, wishes));
    if last.key.couplets.is_empty() {
        push(&mut text, &t.say(nothing_asked(last)));
        return text;
    }
    if last.both_ways.is_empty() {
        let none = if last.budget == 0 { "forgive-none-wanted" } else { "forgive-none-saves" };
        push(&mut text, &t.say(none));
    } else {
        for place in &last.both_ways {
            push(&mut text, &in_words(t, matrix, &last.key, place));
        }
        push(&mut text, &t.say("forgive-meant"));
    }
    let _ = write!(text, "\n{}\n", ink.bold(&t.say("forgive-right")));
    let mut before: Option<&Forgiving> = None;
    for one in &forgiving.keys {
        push(&mut text, &line(t, matrix, one, before));
        before = Some(one);
    }
    text.push('\n');
    push(&mut text, &t.say("forgive-how-counted"));
    if forgiving.keys.last().is_some_and(|last| !last.both_ways.is_empty()) {
        push(&mut text, &t.say("forgive-no-sum"));
    }
    if forgiving.keys.iter().any(|one| one.stopped == Some(Stopped::Budget)) {
        push(&mut text, &t.say("forgive-at-most"));
    }
    if forgiving.keys.iter().any(|one| one.stopped == Some(Stopped::Overflow)) {
        push(&mut text, &t.say("forgive-too-fine"));
    }
    text
}

fn nothing_asked(last: &Forgiving) -> &'static str {
    match last.stopped {
        Some(Stopped::Overflow) => "forgive-no-key",
        _ => "report-nothing-tells-apart",
    }
}

/// `A second place for lime after “no” at question 3 (Is the edge toothed?) saves 2 finds of 100.`
fn in_words(t: Tongue, matrix: &Matrix, key: &Key, place: &BothWays) -> String {
    let answer = answer(t, place);
    let question = question(key, place);
    let texts: [(&str, &dyn Display); 4] = [
        ("kind", &matrix.taxon(place.taxon).name),
        ("answer", &answer),
        ("couplet", &place.couplet),
        ("question", &question),
    ];
    counted(t, "forgive-place", place.saves * 100, 1, &texts)
}

/// `With one second place: 69 of 100, 2.2 more: lime after “no” at “Is the edge toothed?”.`
fn line(t: Tongue, matrix: &Matrix, one: &Forgiving, before: Option<&Forgiving>) -> String {
    let of_100 = |share: Share| t.decimal(&decimal(share * 100, 1));
    let most = match one.stopped {
        Some(_) => t.with("forgive-most", &[("most", &of_100(one.at_most))]),
        None => String::new(),
    };
    let more = match before {
        Some(before) if one.right > before.right => {
            t.with("forgive-more", &[("more", &of_100(one.right - before.right))])
        }
        Some(_) => t.say("forgive-no-more"),
        None => String::new(),
    };
    let places: Vec<String> =
        one.both_ways.iter().map(|place| short(t, matrix, one, place)).collect();
    let (right, places) = (of_100(one.right), places.join("; "));
    let texts: [(&str, &dyn Display); 4] =
        [("right", &right), ("most", &most), ("more", &more), ("places", &places)];
    match places.is_empty() {
        true => t.count_with("forgive-with", one.budget as usize, &texts[..3]),
        false => t.count_with("forgive-with-places", one.budget as usize, &texts),
    }
}

fn short(t: Tongue, matrix: &Matrix, one: &Forgiving, place: &BothWays) -> String {
    let (answer, question) = (answer(t, place), question(&one.key, place));
    let kind = &matrix.taxon(place.taxon).name;
    let texts: [(&str, &dyn Display); 3] =
        [("kind", kind), ("answer", &answer), ("question", &question)];
    t.with("forgive-short", &texts)
}

fn answer(t: Tongue, place: &BothWays) -> String {
    t.say(match place.after {
        Answer::Yes => "answer-yes",
        Answer::No => "answer-no",
    })
}

fn question<'k>(key: &'k Key, place: &BothWays) -> &'k str {
    let couplet = key.couplets.iter().find(|couplet| couplet.number == place.couplet);
    couplet.map_or("", |couplet| couplet.wording.first())
}
