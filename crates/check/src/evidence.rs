//! A kind that is split off on one leaf's evidence: from counts of what was seen to findings.
//!
//! Rule C3 of `docs/TRADE.md`: in oaks one tree's branches may differ more than trees do ("Where
//! people go wrong").

use spinney_model::{Finding, OfAnswers, Place};

use crate::tree::ANSWERS;
use crate::walked_key::{WalkedKey, taxa};

/// Kinds that stand alone on one side of a question for which one leaf was looked at.
pub(crate) fn findings(seen: &WalkedKey<'_>) -> Vec<Finding> {
    let mut found = Vec::new();
    if !seen.finished() {
        return found;
    }
    for (_, couplet, question, visits) in seen.asked() {
        for side in 0..ANSWERS.len() {
            let there = taxa(visits.iter().copied().filter(|visit| visit.goes[side]));
            let [alone] = there[..] else { continue };
            let others = visits.iter().any(|visit| visit.taxon != alone);
            let seen_on = seen.matrix.cell(alone, question.character).seen;
            if !others || seen_on.is_none_or(|seen| seen.on > 1) {
                continue;
            }
            let fact = OfAnswers::ThinEvidence {
                question: couplet.number,
                about: seen.about(&question),
                kind: seen.matrix.taxon(alone).name.clone(),
            };
            found.push(Finding::of(Place::Couplet(couplet.number), fact));
        }
    }
    found
}
