//! `spinney explain`: why each question is asked where it is, and what others would cost.

use std::fmt::Write;

use spinney_build::Budget;
use spinney_exchange::json;
use spinney_model::{Alternative, Destination, Key, Matrix, Reasons, Share};
use spinney_press::wording;

use crate::args::{Explain, Format};
use crate::command::key::{add_new, fine};
use crate::failure::Failure;
use crate::report::{self, Ink};
use crate::{collection, command, terminal};

pub(crate) fn run(args: &Explain) -> Result<bool, Failure> {
    let opened = collection::open(&args.table)?;
    let matrix = &opened.matrix;
    let mut findings = opened.findings;
    let (wishes, more) = command::wishes(&args.wishes, matrix)?;
    findings.extend(more);
    let (mut search, built) = command::find(matrix, &wishes, args.wishes.budget, &mut findings);
    let budget = Budget { heaps: args.wishes.budget };
    let mut reasons = search.explain(&built.key, budget);
    for reason in &mut reasons {
        reason.alternatives.truncate(args.alternatives);
    }
    let settings = command::settings(&args.answer, false);
    let opinion = spinney_check::check(matrix, &built.key, Some(&built.claim), &settings);
    add_new(&mut findings, &opinion.findings);
    if args.answer.format == Format::Json {
        terminal::print(&json::report(&json::Report {
            matrix,
            key: Some(&built.key),
            claim: Some(&built.claim),
            findings: &findings,
            questions_checked: Some((opinion.checked, opinion.questions)),
            reasons: &reasons,
        }))?;
        return Ok(fine(&findings));
    }
    let ink = Ink { colour: terminal::colour() };
    let mut text = report::claim(&built.claim, matrix);
    for reason in &reasons {
        text.push('\n');
        text.push_str(&reason_in_words(&ink, matrix, &built.key, reason));
    }
    terminal::print(&text)?;
    Ok(fine(&findings))
}

/// One question with its reasons.
pub(crate) fn reason_in_words(
    ink: &Ink,
    matrix: &Matrix,
    key: &Key,
    reason: &Reasons,
) -> String {
    let couplet = key.couplets.iter().find(|couplet| couplet.number == reason.couplet);
    let Some(couplet) = couplet else { return String::new() };
    let title = format!("{}. {}", reason.couplet, command::words(&couplet.wording));
    let (yes, no, both) = reason.heaps;
    let mut text = format!("{}\n", ink.bold(&title));
    let shared = if both == 0 { String::new() } else { format!(", {both} go both ways") };
    let _ = writeln!(
        text,
        "   {} kinds are left here: {yes} say yes, {no} say no{shared}.",
        reason.kinds
    );
    let last = [&couplet.yes, &couplet.no].iter().all(|d| matches!(d, Destination::End(_)));
    if couplet.kept {
        text.push_str("   You wanted this question here.\n");
    }
    if reason.alternatives.is_empty() {
        text.push_str("   Nothing else can be asked here of all of them.\n");
    } else if last {
        text.push_str("   It would do as well to ask:\n");
    } else {
        text.push_str("   Instead, with the rest of the key as good as can be:\n");
    }
    for Alternative { ask, extra, exact } in &reason.alternatives {
        let question = wording::question(matrix, ask);
        let zero = Share::from_integer(0);
        let steps = report::decimal(if *extra < zero { -*extra } else { *extra }, 2);
        let all: Share = matrix.taxa().iter().map(|taxon| taxon.weight).sum();
        let about = if *exact { "" } else { "at least " };
        let cost = match extra.cmp(&zero) {
            std::cmp::Ordering::Equal if *exact => "costs the same".to_owned(),
            std::cmp::Ordering::Less => format!("saves {steps} steps"),
            _ => format!("costs {about}{steps} steps more"),
        };
        let all = report::decimal(all, 2);
        let _ = writeln!(text, "   - {question}  {cost} over all {all} finds");
    }
    text
}
