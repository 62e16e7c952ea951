//! What a key with several ways takes, against questions of yes and no, in a teacher's words.

use std::collections::BTreeSet;

use spinney_build::{Budget, Built, build};
use spinney_model::{Destination, Goal, Key, ManyWays, Matrix, Stopped, TaxonIx, Wishes};

use super::{Ink, decimal, not_asked, part, push_wrapped, shown};

const INDENT: &str = "  ";

/// How many looks a find takes, whether that is the least, and what yes and no alone would take.
pub(crate) fn many_ways(
    ink: &Ink,
    matrix: &Matrix,
    wishes: &Wishes,
    found: &ManyWays,
) -> String {
    let mut text = format!("{}\n", ink.bold("What it takes"));
    if found.key.couplets.is_empty() {
        push_wrapped(&mut text, INDENT, nothing_asked(found));
        return text;
    }
    text.push_str(&not_asked(matrix, wishes));
    push_wrapped(&mut text, INDENT, &takes(found));
    push_wrapped(&mut text, INDENT, &against(matrix, wishes, found));
    text
}

/// How many questions a find takes, and whether that is the least.
fn takes(found: &ManyWays) -> String {
    let mean = decimal(found.mean_questions, 2);
    let question = if mean == "1" { "question" } else { "questions" };
    let proof = match found.stopped {
        None => "no key of this kind takes less effort".to_owned(),
        Some(_) => {
            let over = part(found.total - found.lower_bound, found.lower_bound) * 100.0;
            format!(
                "the search stopped after {} heaps, and a better key could save {} % of its \
                 effort at the very most",
                found.heaps,
                shown(100.0 * over / (100.0 + over), 1)
            )
        }
    };
    format!("A find takes {mean} {question} on average and {} at most; {proof}.", found.longest)
}

/// The same with yes and no alone.
fn against(matrix: &Matrix, wishes: &Wishes, found: &ManyWays) -> String {
    let plain = Wishes { goals: vec![Goal::LeastEffort], ..wishes.clone() };
    let Built { key, claim, .. } = build(matrix, &plain, Budget::default());
    if together(&key) != together(&found.key) {
        return "With yes and no alone other kinds are left together, so the two keys cannot be \
                compared."
            .to_owned();
    }
    let best = if claim.optimal() { "the best key" } else { "the best key that was found" };
    let saves = if found.total < claim.total {
        "Questions of several ways save steps and cost attention: they are for grown-ups, and no \
         sheet for pupils has them."
    } else {
        "Questions of several ways save nothing here."
    };
    format!(
        "With yes and no alone {best} takes {} on average and {} at most. {saves}",
        decimal(claim.mean_questions, 2),
        claim.longest
    )
}

/// The kinds that stay together at some end.
fn together(key: &Key) -> BTreeSet<Vec<TaxonIx>> {
    let to = key.couplets.iter().flat_map(|couplet| [&couplet.yes, &couplet.no]);
    let ends = to.filter_map(|to| match to {
        Destination::End(end) if end.taxa.len() > 1 => Some(end.taxa.clone()),
        _ => None,
    });
    ends.collect()
}

fn nothing_asked(found: &ManyWays) -> &'static str {
    match found.stopped {
        Some(Stopped::Overflow) => {
            "No key: exact numbers for this table grow too large. Write rounder counts, or fill \
             in unknown cells."
        }
        _ => "Nothing in this table tells any of these kinds apart.",
    }
}
