//! `spinney explain`: why each question is asked where it is, and what others would cost.

use std::cmp::Ordering;
use std::fmt::Write;

use spinney_build::Budget;
use spinney_exchange::{json, key_text};
use spinney_model::{
    Alternative, Ask, BestKeys, Code, Key, Matrix, NotByTouch, Reasons, Share,
};
use spinney_voice::{Tongue, wording};

use crate::args::{Explain, Format};
use crate::command::key::{add_new, fine};
use crate::failure::Failure;
use crate::report::{self, Ink};
use crate::{command, opened, terminal};

/// The language of the terminal.
const ENGLISH: Tongue = Tongue::of_terminal();

pub(crate) fn run(args: &Explain) -> Result<bool, Failure> {
    let opened = opened::open_for_a_key(&args.table)?;
    command::enough_room(&opened.matrix, args.wishes.limits().1)?;
    let matrix = &opened.matrix;
    let mut findings = opened.findings;
    let (wishes, more) = command::wishes::read(&args.wishes, matrix)?;
    findings.extend(more);
    let (mut search, built) =
        command::find(ENGLISH, matrix, &wishes, args.wishes.limits(), &mut findings);
    let budget = Budget { heaps: args.wishes.budget };
    let mut reasons = search.explain(&built.key, budget);
    let best = search.best_keys(args.keys, budget);
    let settings = command::settings(&args.answer, false);
    let opinion = spinney_check::check(matrix, &built.key, Some(&built.claim), &settings);
    add_new(&mut findings, &opinion.findings);
    if args.answer.format == Format::Json {
        for reason in &mut reasons {
            reason.alternatives.truncate(args.alternatives);
        }
        terminal::print_json(&json::report(
            &json::Report {
                matrix,
                key: Some(&built.key),
                claim: Some(&built.claim),
                effort: None,
                findings: &findings,
                questions_checked: Some((opinion.checked, opinion.questions)),
                reasons: &reasons,
                refused: &built.refused,
                best_keys: Some(&best),
            },
            report::in_english,
        ))?;
        return Ok(fine(&findings));
    }
    let ink = Ink::terminal(ENGLISH);
    let left = &opinion.left_together;
    let mut text = report::claim(&built.claim, matrix, left, built.refused.len());
    text.push_str(&as_good(&best));
    for reason in &reasons {
        text.push('\n');
        text.push_str(&reason_in_words(&ink, matrix, &built.key, reason, args.alternatives));
    }
    text.push_str(&next_best(&ink, matrix, &best));
    if !built.refused.is_empty() {
        let wishes = [Code::KeptRefused, Code::WishRefused];
        let refused = findings.iter().filter(|f| wishes.contains(&f.code));
        text.push('\n');
        text.push_str(&report::findings(&ink, &refused.cloned().collect::<Vec<_>>()));
    }
    terminal::print(&text)?;
    Ok(fine(&findings))
}

/// How many keys are as good as this one.
fn as_good(best: &BestKeys) -> String {
    let mut text = String::new();
    let Some(as_good) = best.as_good else { return text };
    let line = match (as_good.nestings, as_good.keys) {
        (_, 1) => "No other key is as good.".to_owned(),
        (1, keys) => format!(
            "{keys} keys are as good; they make the same heaps, by other questions that \
             tell the same kinds apart."
        ),
        (nestings, keys) if nestings == keys => {
            format!("{keys} keys are as good, each with other heaps.")
        }
        (nestings, keys) => format!(
            "{keys} keys are as good; {nestings} of them make other heaps, the rest ask \
             something else that tells the same kinds apart."
        ),
    };
    report::push_wrapped(&mut text, "  ", &line);
    text
}

/// The next best keys, each as a list of questions.
fn next_best(ink: &Ink, matrix: &Matrix, best: &BestKeys) -> String {
    let mut text = String::new();
    let all: Share = matrix.taxa().iter().map(|taxon| taxon.weight).sum();
    for (place, (key, effort)) in best.keys.iter().enumerate().skip(1) {
        let mut key = key.clone();
        wording::put_words(ENGLISH, &mut key, matrix);
        let more = report::less(*effort, best.keys[0].1);
        let more = if more == Share::from_integer(0) {
            "as good as the best".to_owned()
        } else {
            format!("{} more per find", report::counted(report::each(more, all), 2, "question"))
        };
        let title = format!("Key {} of those that make other heaps: {more}", place + 1);
        let _ = write!(text, "\n{}\n{}", ink.bold(&title), key_text::write(&key, matrix));
    }
    if !best.sure && !best.keys.is_empty() {
        text.push_str("\nNot looked at to the end: there may be others between these.\n");
    }
    text
}

/// The same reasons with the numbers that are said, as in the key's own words.
fn as_said(matrix: &Matrix, key: &Key, reason: &Reasons) -> Reasons {
    let said = |ask: &mut Ask| *ask = wording::said_at(matrix, key, reason.couplet, ask);
    let mut reason = reason.clone();
    reason.also.iter_mut().for_each(|(ask, _)| said(ask));
    reason.alternatives.iter_mut().for_each(|other| said(&mut other.ask));
    reason.not_by_touch.iter_mut().for_each(|barred| said(&mut barred.instead.ask));
    reason
}

/// One question with its reasons; at most `most` other questions.
pub(crate) fn reason_in_words(
    ink: &Ink,
    matrix: &Matrix,
    key: &Key,
    reason: &Reasons,
    most: usize,
) -> String {
    let couplet = key.couplets.iter().find(|couplet| couplet.number == reason.couplet);
    let Some(couplet) = couplet else { return String::new() };
    let reason = &as_said(matrix, key, reason);
    let title = format!("{}. {}", reason.couplet, command::words(&couplet.wording));
    let mut text = format!("{}\n", ink.bold(&title));
    let here = format!("{} kinds are left here: {}.", reason.kinds, heaps(reason.heaps));
    report::push_wrapped(&mut text, INDENT, &here);
    report::push_wrapped(&mut text, INDENT, &because(matrix, couplet.kept, reason));
    if let Some(barred) = &reason.not_by_touch {
        report::push_wrapped(&mut text, INDENT, &not_by_touch(matrix, barred));
    }
    if !reason.also.is_empty() {
        let also: Vec<String> = reason
            .also
            .iter()
            .map(|(ask, opposite)| {
                let question = wording::question(ENGLISH, matrix, ask);
                let answers = if *opposite { " (no where this is yes)" } else { "" };
                format!("{question}{answers}")
            })
            .collect();
        let line =
            format!("A second look that separates them in the same way: {}", also.join("; "));
        report::push_wrapped(&mut text, INDENT, &line);
    }
    if most > 0 && !reason.alternatives.is_empty() {
        text.push_str("   Instead, with the rest of the key as good as can be:\n");
        for alternative in reason.alternatives.iter().take(most) {
            let line = format!("- {}", alternative_in_words(matrix, alternative));
            report::push_wrapped(&mut text, INDENT, &line);
        }
    }
    let blocked: Vec<String> = reason
        .blocked
        .iter()
        .map(|(at, taxon)| {
            format!("{} ({})", matrix.character(*at).name, matrix.taxon(*taxon).name)
        })
        .collect();
    if !blocked.is_empty() {
        let list = blocked.join(", ");
        let line = format!("Cannot be asked yet, because of a kind still here: {list}.");
        report::push_wrapped(&mut text, INDENT, &line);
    }
    text
}

const INDENT: &str = "   ";

/// `3 say yes, 1 says no, 1 goes both ways`
fn heaps((yes, no, both): (usize, usize, usize)) -> String {
    let says = |n: usize| if n == 1 { "says" } else { "say" };
    let mut text = format!("{yes} {} yes, {no} {} no", says(yes), says(no));
    if both > 0 {
        let goes = if both == 1 { "goes" } else { "go" };
        let _ = write!(text, ", {both} {goes} both ways");
    }
    text
}

/// Why this question and no other.
fn because(matrix: &Matrix, kept: bool, reason: &Reasons) -> String {
    let zero = Share::from_integer(0);
    let Some(next) = reason.alternatives.first() else {
        return "Nothing else can be asked of all of them here.".to_owned();
    };
    if kept {
        let saved =
            if next.extra < zero { "another would be cheaper" } else { "none is cheaper" };
        return format!("You wanted this question here; {saved}.");
    }
    if next.extra == zero && next.exact {
        return "Others do as well. This one comes first in the table.".to_owned();
    }
    let uneven = |(yes, no, _): (usize, usize, usize)| yes.abs_diff(no);
    let more_even = reason
        .alternatives
        .iter()
        .filter(|other| uneven(other.heaps) < uneven(reason.heaps))
        .min_by_key(|other| uneven(other.heaps));
    match more_even {
        None => {
            "It divides the heap more evenly than the others, or as evenly and more easily."
                .to_owned()
        }
        Some(other) => format!(
            "\"{}\" would divide the heap more evenly, but the key as a whole would take longer: \
             it is harder to see, or what it leaves is harder to tell apart.",
            wording::question(ENGLISH, matrix, &other.ask)
        ),
    }
}

/// What would take less, and whom it would hurt.
fn not_by_touch(matrix: &Matrix, barred: &NotByTouch) -> String {
    let all: Share = matrix.taxa().iter().map(|taxon| taxon.weight).sum();
    let saved = report::counted(report::each(-barred.instead.extra, all), 2, "question");
    let question = wording::question(ENGLISH, matrix, &barred.instead.ask);
    const MOST: usize = 3;
    let mut names: Vec<String> =
        barred.kinds.iter().take(MOST).map(|taxon| matrix.taxon(*taxon).name.clone()).collect();
    match barred.kinds.len().saturating_sub(MOST) {
        0 => {}
        1 => names.push("one more kind with a caution".to_owned()),
        more => names.push(format!("{more} more kinds with a caution")),
    }
    let names = match names.as_slice() {
        [before @ .., last] if !before.is_empty() => format!("{} or {last}", before.join(", ")),
        _ => names.concat(),
    };
    format!(
        "\"{question}\" That would save {saved} per find, but children would have to touch, and \
         {names} may be in the hand."
    )
}

fn alternative_in_words(matrix: &Matrix, other: &Alternative) -> String {
    let zero = Share::from_integer(0);
    let question = wording::question(ENGLISH, matrix, &other.ask);
    let all: Share = matrix.taxa().iter().map(|taxon| taxon.weight).sum();
    let size = if other.extra < zero { -other.extra } else { other.extra };
    let questions = report::counted(report::each(size, all), 2, "question");
    let cost = match (other.extra.cmp(&zero), other.exact) {
        (Ordering::Equal, true) => "costs the same".to_owned(),
        (Ordering::Less, true) => format!("saves {questions} per find"),
        (Ordering::Greater, true) => format!("costs {questions} more per find"),
        (Ordering::Greater, false) => format!("costs at least {questions} more per find"),
        (_, false) => format!("may save up to {questions} per find; not looked at to the end"),
    };
    format!("{question} – {cost} ({})", heaps(other.heaps))
}
