//! Kinds of which nobody has said what the key asks, each said once.
//!
//! From the ways of the kinds to a slip for each, with all its questions. The second opinion
//! says it question by question; a group that left one card in the middle would read the same
//! of it at every question that follows.

use maud::{Markup, html};
use spinney_model::{Code, Finding, TaxonIx};

use super::Keyed;
use crate::guesses::Unsaid;

/// So many kinds are seen at once; the others are folded.
const SEEN_FIRST: usize = 6;

/// Whether a finding is said here, kind by kind, and not at its question.
pub(super) fn said_here(found: &Finding) -> bool {
    found.code == Code::NobodyRecorded
}

/// One slip for every kind; None: everything was said of everybody.
pub(super) fn slips(key: &Keyed) -> Option<Markup> {
    // Only where the second opinion found something to say.
    let said = key.made.findings().iter().any(said_here);
    let all: Vec<_> = key.made.guesses.of_kinds.iter().filter(|_| said).collect();
    let (first, rest) = all.split_at(all.len().min(SEEN_FIRST));
    let slips = html! {
        @for (taxon, open) in first { (slip(key, **taxon, open)) }
        @if !rest.is_empty() {
            details {
                summary { (key.t.count("key-unanswered-more", rest.len())) }
                @for (taxon, open) in rest { (slip(key, **taxon, open)) }
            }
        }
    };
    (!all.is_empty()).then_some(slips)
}

fn slip(key: &Keyed, taxon: TaxonIx, open: &Unsaid) -> Markup {
    let t = key.t;
    let name = key.collection.name(key.made.layer.kinds[taxon.0]);
    let sentence = t.count_with("key-unanswered", open.questions.len(), &[("kind", &name)]);
    html! {
        div.finding.look {
            p.severity { (t.say("severity-look")) }
            p dir="auto" {
                (sentence)
                @for number in &open.questions { " " a href={"#q" (number)} { (number) } }
            }
            @if open.lost { p dir="auto" { (t.with("key-unanswered-lost", &[("kind", &name)])) } }
            p.remedy dir="auto" { (t.with("key-unanswered-remedy", &[("kind", &name)])) }
        }
    }
}
