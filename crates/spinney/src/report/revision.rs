//! A revised key in a teacher's words: what stayed, what changed, and the price of changing less.

use std::fmt::Write;

use spinney_model::{Key, Matrix, Revision, Share, Stopped, Wording};

use super::{Ink, counted, decimal, push};

/// What stayed, what changed, and what other numbers of changes would cost.
pub(crate) fn revision(ink: &Ink, matrix: &Matrix, old: &Key, revision: &Revision) -> String {
    let mut text = format!("{}\n", ink.bold("What changed"));
    push(&mut text, format_args!("{}", in_short(matrix, revision)));
    push(&mut text, format_args!("{}", proof(revision)));
    kinds(&mut text, matrix, revision);
    questions(&mut text, old, revision);
    let title = ink.bold("What changing less or more would cost");
    let _ = write!(text, "\n{title}\n{}", curve(matrix, revision));
    text
}

fn each(matrix: &Matrix, effort: Share) -> Share {
    let all: Share = matrix.taxa().iter().map(|taxon| taxon.weight).sum();
    if all > Share::from_integer(0) { effort / all } else { effort }
}

fn in_short(matrix: &Matrix, revision: &Revision) -> String {
    let mean = counted(revision.mean_questions, 1, "question");
    let changes = match revision.changes {
        0 => "Last season's key still works and stays as it is".to_owned(),
        1 => "Last season's key with one question changed".to_owned(),
        n => format!("Last season's key with {n} questions changed"),
    };
    let more = each(matrix, revision.effort - revision.best);
    let against = if more <= Share::from_integer(0) {
        "no key from this table takes less".to_owned()
    } else {
        format!("the best key from this table saves {} per find", counted(more, 2, "question"))
    };
    let against = match revision.stopped {
        None => against,
        Some(_) => format!("as far as was looked, {against}"),
    };
    format!("{changes}: about {mean} per find, at most {}; {against}.", revision.longest)
}

fn proof(revision: &Revision) -> String {
    let loss = counted(revision.loss, 2, "question");
    match revision.stopped {
        None if revision.changes == 0 => String::new(),
        None => format!(
            "Proved: every key with fewer changes takes more than {loss} per find beyond the best."
        ),
        Some(Stopped::Budget) => format!(
            "Not proved: the search stopped after {} heaps; fewer changes may do. A larger \
             --budget goes on.",
            revision.heaps,
        ),
        Some(Stopped::Memory) => format!(
            "Not proved: after {} heaps nothing more could be remembered; fewer changes may do.",
            revision.heaps,
        ),
        Some(Stopped::Overflow) => "Not proved: the counts in this table need larger numbers \
             than exact arithmetic has here. Write rounder counts, or fill in unknown cells."
            .to_owned(),
    }
}

fn kinds(text: &mut String, matrix: &Matrix, revision: &Revision) {
    let arrived: Vec<&str> =
        revision.arrived.iter().map(|at| matrix.taxon(*at).name.as_str()).collect();
    if !arrived.is_empty() {
        push(text, format_args!("New in the table: {}.", arrived.join(", ")));
    }
    if !revision.gone.is_empty() {
        let gone = revision.gone.join(", ");
        push(text, format_args!("No longer in the table, or spelt otherwise: {gone}."));
    }
}

fn questions(text: &mut String, old: &Key, revision: &Revision) {
    let parts = &revision.parts;
    if !parts.kept.is_empty() {
        let kept: Vec<String> = parts.kept.iter().map(|pair| moved(*pair)).collect();
        push(text, format_args!("Kept as they were: {}.", kept.join(", ")));
    }
    for (was, now) in &parts.rewritten {
        let (before, after) = (words(old, *was), words(&revision.key, *now));
        let line =
            format!("Asked otherwise: {}. {after} Before: {before}", moved((*was, *now)));
        push(text, format_args!("{line}"));
    }
    for now in &parts.added {
        push(text, format_args!("New: {now}. {}", words(&revision.key, *now)));
    }
    for was in &parts.struck {
        push(text, format_args!("Struck out: {was} of the old key. {}", words(old, *was)));
    }
}

/// `5`, or `5 (was 4)`
fn moved((was, now): (u32, u32)) -> String {
    if was == now { now.to_string() } else { format!("{now} (was {was})") }
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
fn curve(matrix: &Matrix, revision: &Revision) -> String {
    let mut text = String::new();
    let mut line = |changes: &str, what: &str| {
        let _ = writeln!(text, "  {changes:>9}   {what}");
    };
    line("questions", "questions per find (a hard question counts for two or three)");
    line("changed", "");
    if let Some(most) = revision.fewest.checked_sub(1) {
        let changes = if most == 0 { "0".to_owned() } else { format!("0 to {most}") };
        line(
            &changes,
            "not possible: no key that tells these kinds apart is so like the old one",
        );
    }
    for point in &revision.curve {
        let steps = decimal(each(matrix, point.effort), 2);
        let mut what = steps;
        if point.changes == revision.changes {
            what.push_str("   this key");
        }
        if point.effort == revision.best {
            what.push_str(if revision.stopped.is_none() {
                "   as good as the best key"
            } else {
                "   the best key that was found"
            });
        }
        if !point.proved {
            what.push_str("   (not proved: less may do)");
        }
        line(&point.changes.to_string(), &what);
    }
    let fewer = revision.curve.iter().filter(|point| point.changes < revision.changes);
    if let Some(point) = fewer.max_by_key(|point| point.changes) {
        // A hundredth too much rather than too little: what is allowed must suffice.
        let loss = each(matrix, point.effort - revision.best) * Share::from_integer(100);
        let loss = decimal(loss.ceil() / Share::from_integer(100), 2);
        let _ = writeln!(
            text,
            "  For fewer changes allow more: --loss {loss} gives the key with {}.",
            point.changes
        );
    }
    text
}
