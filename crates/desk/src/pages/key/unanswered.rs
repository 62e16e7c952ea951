//! Kinds of which nobody has said what the key asks, each said once.
//!
//! From the ways of the kinds to a slip for each, with all its questions. The second opinion
//! says it question by question; a group that left one card in the middle would read the same
//! of it at every question that follows.

use std::collections::{BTreeMap, BTreeSet};

use maud::{Markup, html};
use spinney_model::{Code, Finding, TaxonIx};

use super::Keyed;

/// So many kinds are seen at once; the others are folded.
const SEEN_FIRST: usize = 6;

/// What nobody has said of a kind.
#[derive(Default)]
struct Open {
    /// The numbers of the questions.
    questions: BTreeSet<u32>,
    /// Whether it is lost on some of its ways.
    lost: bool,
}

/// Whether a finding is said here, kind by kind, and not at its question.
pub(super) fn said_here(found: &Finding) -> bool {
    found.code == Code::NobodyRecorded
}

/// One slip for every kind; None: everything was said of everybody.
pub(super) fn slips(key: &Keyed) -> Option<Markup> {
    let open = open(key);
    let all: Vec<_> = open.iter().collect();
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

/// Only where the second opinion found something to say.
fn open(key: &Keyed) -> BTreeMap<TaxonIx, Open> {
    let mut open: BTreeMap<TaxonIx, Open> = BTreeMap::new();
    if !key.made.findings().iter().any(said_here) {
        return open;
    }
    for walk in &key.made.opinion.walks {
        let numbers = walk.steps.iter().map(|step| step.couplet);
        let unsaid: Vec<u32> =
            numbers.filter(|number| key.made.nobody_knows(*number, walk.taxon)).collect();
        if !unsaid.is_empty() {
            let known = open.entry(walk.taxon).or_default();
            known.questions.extend(unsaid);
            known.lost |= !walk.arrived;
        }
    }
    open
}

fn slip(key: &Keyed, taxon: TaxonIx, open: &Open) -> Markup {
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
