//! A revised key in a teacher's words: what stayed, what changed, and the price of changing less.

use std::fmt::{Display, Write};

use spinney_model::{Key, Matrix, Revision, Share, Stopped, Wording};
use spinney_voice::Tongue;

use super::{Ink, decimal, push, questions};

/// What stayed, what changed, and what other numbers of changes would cost.
pub(crate) fn revision(ink: &Ink, matrix: &Matrix, old: &Key, revision: &Revision) -> String {
    let t = ink.t();
    let mut text = format!("{}\n", ink.bold(&t.say("revise-changed")));
    push(&mut text, &in_short(t, matrix, revision));
    push(&mut text, &proof(t, revision));
    kinds(t, &mut text, matrix, revision);
    of_questions(t, &mut text, old, revision);
    let title = ink.bold(&t.say("revise-price"));
    let _ = write!(text, "\n{title}\n{}", curve(t, matrix, revision));
    text
}

fn each(matrix: &Matrix, effort: Share) -> Share {
    let all: Share = matrix.taxa().iter().map(|taxon| taxon.weight).sum();
    if all > Share::from_integer(0) { effort / all } else { effort }
}

fn in_short(t: Tongue, matrix: &Matrix, revision: &Revision) -> String {
    let mean = questions(t, revision.mean_questions, 1);
    let more = each(matrix, revision.effort - revision.best);
    let against = match (more <= Share::from_integer(0), revision.stopped) {
        (true, None) => t.say("revise-best"),
        (true, Some(_)) => t.say("revise-best-so-far"),
        (false, stopped) => {
            let message =
                if stopped.is_none() { "revise-saves" } else { "revise-saves-so-far" };
            t.with(message, &[("questions", &questions(t, more, 2))])
        }
    };
    let texts: [(&str, &dyn Display); 3] =
        [("questions", &mean), ("longest", &revision.longest), ("against", &against)];
    t.count_with("revise-in-short", revision.changes as usize, &texts)
}

fn proof(t: Tongue, revision: &Revision) -> String {
    let heaps = usize::try_from(revision.heaps).unwrap_or(usize::MAX);
    match revision.stopped {
        None if revision.changes == 0 => String::new(),
        None => t.with("revise-proved", &[("questions", &questions(t, revision.loss, 2))]),
        Some(Stopped::Budget) => t.count("revise-stopped-budget", heaps),
        Some(Stopped::Memory) => t.count("revise-stopped-memory", heaps),
        Some(Stopped::Overflow) => t.say("revise-stopped-overflow"),
    }
}

fn kinds(t: Tongue, text: &mut String, matrix: &Matrix, revision: &Revision) {
    let arrived: Vec<&str> =
        revision.arrived.iter().map(|at| matrix.taxon(*at).name.as_str()).collect();
    if !arrived.is_empty() {
        push(text, &t.with("revise-new-kinds", &[("kinds", &arrived.join(", "))]));
    }
    if !revision.gone.is_empty() {
        push(text, &t.with("revise-gone-kinds", &[("kinds", &revision.gone.join(", "))]));
    }
}

fn of_questions(t: Tongue, text: &mut String, old: &Key, revision: &Revision) {
    let parts = &revision.parts;
    if !parts.kept.is_empty() {
        let kept: Vec<String> = parts.kept.iter().map(|pair| moved(t, *pair)).collect();
        push(text, &t.with("revise-kept", &[("questions", &kept.join(", "))]));
    }
    for (was, now) in &parts.rewritten {
        let (before, after) = (words(old, *was), words(&revision.key, *now));
        let number = moved(t, (*was, *now));
        let texts: [(&str, &dyn Display); 3] =
            [("number", &number), ("after", &after), ("before", &before)];
        push(text, &t.with("revise-asked-otherwise", &texts));
    }
    for now in &parts.added {
        let question = words(&revision.key, *now);
        push(text, &t.with("revise-added", &[("number", now), ("question", &question)]));
    }
    for was in &parts.struck {
        let question = words(old, *was);
        push(text, &t.with("revise-struck", &[("number", was), ("question", &question)]));
    }
}

/// `5`, or `5 (was 4)`
fn moved(t: Tongue, (was, now): (u32, u32)) -> String {
    if was == now {
        return now.to_string();
    }
    t.with("revise-was", &[("now", &now), ("was", &was)])
}

/// The words of a question, or both leads.
fn words(key: &Key, number: u32) -> String {
    let couplet = key.couplets.iter().find(|couplet| couplet.number == number);
    match couplet.map(|couplet| &couplet.wording) {
        Some(Wording::Question(text)) => text.clone(),
        Some(Wording::Leads { yes, no }) => format!("{yes} / {no}"),
        None => String::new(),
    }
}

/// The curve as a small table. A step is an easy question.
fn curve(t: Tongue, matrix: &Matrix, revision: &Revision) -> String {
    let mut text = String::new();
    let mut line = |changes: &str, what: &str| {
        let line = format!("  {changes:>9}   {what}");
        let _ = writeln!(text, "{}", line.trim_end());
    };
    line(&t.say("revise-columns-questions"), &t.say("revise-columns-effort"));
    line(&t.say("revise-columns-changed"), "");
    if let Some(most) = revision.fewest.checked_sub(1) {
        let changes = match most {
            0 => "0".to_owned(),
            _ => t.with("revise-from-none-to", &[("most", &most)]),
        };
        line(&changes, &t.say("revise-not-possible"));
    }
    for point in &revision.curve {
        let mut what = vec![t.decimal(&decimal(each(matrix, point.effort), 2))];
        if point.changes == revision.changes {
            what.push(t.say("revise-this-key"));
        }
        if point.effort == revision.best {
            what.push(t.say(match revision.stopped {
                None => "revise-as-good",
                Some(_) => "revise-best-found",
            }));
        }
        if !point.proved {
            what.push(t.say("revise-not-proved"));
        }
        line(&point.changes.to_string(), &what.join("   "));
    }
    let fewer = revision.curve.iter().filter(|point| point.changes < revision.changes);
    if let Some(point) = fewer.max_by_key(|point| point.changes) {
        // A hundredth too much rather than too little: what is allowed must suffice. It is typed
        // with a point in every language.
        let loss = each(matrix, point.effort - revision.best) * Share::from_integer(100);
        let loss = decimal(loss.ceil() / Share::from_integer(100), 2);
        let texts: [(&str, &dyn Display); 2] = [("loss", &loss), ("changes", &point.changes)];
        let _ = writeln!(text, "  {}", t.with("revise-allow-more", &texts));
    }
    text
}
