//! `spinney explain`: why each question is asked where it is, and what others would cost.

use std::cmp::Ordering;
use std::fmt::{Display, Write};

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

pub(crate) fn run(t: Tongue, args: &Explain) -> Result<bool, Failure> {
    let opened = opened::open_for_a_key(&args.table)?;
    command::enough_room(&opened.matrix, args.wishes.limits().1)?;
    let matrix = &opened.matrix;
    let mut findings = opened.findings;
    let (wishes, more) = command::wishes::read(t, &args.wishes, matrix)?;
    findings.extend(more);
    let (mut search, built) =
        command::find(t, matrix, &wishes, args.wishes.limits(), &mut findings);
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
    let ink = Ink::terminal(t);
    let left = &opinion.left_together;
    let mut text = report::claim(t, &built.claim, matrix, left, built.refused.len());
    text.push_str(&as_good(t, &best));
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
fn as_good(t: Tongue, best: &BestKeys) -> String {
    let mut text = String::new();
    let Some(as_good) = best.as_good else { return text };
    let line = match (as_good.nestings, as_good.keys) {
        (_, 1) => t.say("explain-only"),
        (1, keys) => t.with("explain-other-questions", &[("keys", &keys)]),
        (nestings, keys) if nestings == keys => {
            t.with("explain-other-heaps", &[("keys", &keys)])
        }
        (nestings, keys) => {
            t.with("explain-some-other-heaps", &[("keys", &keys), ("others", &nestings)])
        }
    };
    report::push_wrapped(&mut text, "  ", &line);
    text
}

/// The next best keys, each as a list of questions.
fn next_best(ink: &Ink, matrix: &Matrix, best: &BestKeys) -> String {
    let t = ink.t();
    let mut text = String::new();
    let all: Share = matrix.taxa().iter().map(|taxon| taxon.weight).sum();
    for (place, (key, effort)) in best.keys.iter().enumerate().skip(1) {
        let mut key = key.clone();
        wording::put_words(t, &mut key, matrix);
        let more = report::less(*effort, best.keys[0].1);
        let place = place + 1;
        let title = if more == Share::from_integer(0) {
            t.with("explain-next-as-good", &[("place", &place)])
        } else {
            let questions = report::questions(t, report::each(more, all), 2);
            t.with("explain-next", &[("place", &place), ("questions", &questions)])
        };
        let key = key_text::write_in(t.tag(), &key, matrix);
        let _ = write!(text, "\n{}\n{key}", ink.bold(&title));
    }
    if !best.sure && !best.keys.is_empty() {
        let _ = writeln!(text, "\n{}", t.say("explain-not-to-the-end"));
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
    let t = ink.t();
    let reason = &as_said(matrix, key, reason);
    let title = format!("{}. {}", reason.couplet, command::words(&couplet.wording));
    let mut text = format!("{}\n", ink.bold(&title));
    let mut say = |sentence: &str| report::push_wrapped(&mut text, INDENT, sentence);
    let heaps = heaps(t, reason.heaps);
    say(&t.count_with("explain-here", reason.kinds, &[("heaps", &heaps)]));
    say(&because(t, matrix, couplet.kept, reason));
    if let Some(barred) = &reason.not_by_touch {
        say(&not_by_touch(t, matrix, barred));
    }
    if !reason.also.is_empty() {
        let also = reason.also.iter().map(|(ask, opposite)| {
            let question = wording::question(t, matrix, ask);
            match opposite {
                true => t.with("explain-opposite", &[("question", &question)]),
                false => question,
            }
        });
        let also = also.collect::<Vec<_>>().join("; ");
        say(&t.with("explain-also", &[("questions", &also)]));
    }
    if most > 0 && !reason.alternatives.is_empty() {
        say(&t.say("explain-instead"));
        for alternative in reason.alternatives.iter().take(most) {
            say(&format!("- {}", alternative_in_words(t, matrix, alternative)));
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
        say(&t.with("explain-blocked", &[("list", &blocked.join(", "))]));
    }
    text
}

const INDENT: &str = "   ";

/// `3 say yes, 1 says no, 1 goes both ways`
fn heaps(t: Tongue, (yes, no, both): (usize, usize, usize)) -> String {
    let mut said = vec![t.count("heaps-say-yes", yes), t.count("heaps-say-no", no)];
    if both > 0 {
        said.push(t.count("explain-both-ways", both));
    }
    said.join(", ")
}

/// Why this question and no other.
fn because(t: Tongue, matrix: &Matrix, kept: bool, reason: &Reasons) -> String {
    let zero = Share::from_integer(0);
    let Some(next) = reason.alternatives.first() else {
        return t.say("explain-nothing-else");
    };
    if kept {
        let dear = next.extra < zero;
        return t.say(if dear { "explain-wanted-dear" } else { "explain-wanted" });
    }
    if next.extra == zero && next.exact {
        return t.say("explain-first-in-table");
    }
    let uneven = |(yes, no, _): (usize, usize, usize)| yes.abs_diff(no);
    let more_even = reason
        .alternatives
        .iter()
        .filter(|other| uneven(other.heaps) < uneven(reason.heaps))
        .min_by_key(|other| uneven(other.heaps));
    match more_even {
        None => t.say("explain-even"),
        Some(other) => {
            let question = wording::question(t, matrix, &other.ask);
            t.with("explain-uneven", &[("question", &question)])
        }
    }
}

/// What would take less, and whom it would hurt.
fn not_by_touch(t: Tongue, matrix: &Matrix, barred: &NotByTouch) -> String {
    let all: Share = matrix.taxa().iter().map(|taxon| taxon.weight).sum();
    let saved = report::questions(t, report::each(-barred.instead.extra, all), 2);
    let question = wording::question(t, matrix, &barred.instead.ask);
    const MOST: usize = 3;
    let mut names: Vec<String> =
        barred.kinds.iter().take(MOST).map(|taxon| matrix.taxon(*taxon).name.clone()).collect();
    match barred.kinds.len().saturating_sub(MOST) {
        0 => {}
        more => names.push(t.count("explain-more-kinds", more)),
    }
    let kinds = spinney_voice::any(t, &names);
    let texts: [(&str, &dyn Display); 3] =
        [("question", &question), ("questions", &saved), ("kinds", &kinds)];
    t.with("explain-not-by-touch", &texts)
}

fn alternative_in_words(t: Tongue, matrix: &Matrix, other: &Alternative) -> String {
    let zero = Share::from_integer(0);
    let question = wording::question(t, matrix, &other.ask);
    let all: Share = matrix.taxa().iter().map(|taxon| taxon.weight).sum();
    let size = if other.extra < zero { -other.extra } else { other.extra };
    let questions = report::questions(t, report::each(size, all), 2);
    let message = match (other.extra.cmp(&zero), other.exact) {
        (Ordering::Equal, true) => None,
        (Ordering::Less, true) => Some("explain-saves"),
        (Ordering::Greater, true) => Some("explain-costs"),
        (Ordering::Greater, false) => Some("explain-costs-at-least"),
        (_, false) => Some("explain-may-save"),
    };
    let costs = match message {
        None => t.say("explain-costs-same"),
        Some(message) => t.with(message, &[("questions", &questions)]),
    };
    let heaps = heaps(t, other.heaps);
    let texts: [(&str, &dyn Display); 3] =
        [("question", &question), ("costs", &costs), ("heaps", &heaps)];
    t.with("explain-other", &texts)
}
