//! Kinds of which nobody has said what the key asks, or about which people do not agree, each
//! said once.
//!
//! From the ways of the kinds to a slip for each, with all its questions and the way to answer. The second opinion
//! says it question by question; a group that left one card in the middle would read the same
//! of it at every question that follows.

use maud::{Markup, html};
use spinney_model::{Code, Finding, Place, TaxonIx};

use super::{Keyed, Missing};
use spinney_collection::guesses::Unsaid;

/// So many kinds are seen at once; the others are folded.
const SEEN_FIRST: usize = 6;

/// Whether a finding is said here, kind by kind, and not by itself: what nobody has said of a
/// kind, and that a kind never comes out which nobody has placed.
pub(super) fn said_here(key: &Keyed, found: &Finding) -> bool {
    let made = &key.made;
    let unplaced = |name: &String| {
        let open = made.guesses.of_kinds.iter().filter(|(_, open)| open.lost);
        open.into_iter().any(|(taxon, _)| made.layer.matrix.taxon(*taxon).name == *name)
    };
    match (found.code, &found.place) {
        (Code::NobodyRecorded, _) => true,
        (Code::NeverComesOut, Place::Taxon(name)) => unplaced(name),
        _ => false,
    }
}

/// One slip for every kind; None: everything was said of everybody.
pub(super) fn slips(key: &Keyed) -> Option<Markup> {
    // Only where the second opinion found something to say.
    let said = key.made.findings().iter().any(|found| said_here(key, found));
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
    let kind = key.made.layer.kinds[taxon.0];
    let name = key.collection.name_in(key.id, kind);
    let missing = open.questions.iter().map(|number| (*number, key.missing(*number, kind)));
    let (differ, unsaid): (Vec<_>, Vec<_>) = missing.partition(|(_, missing)| missing.differ);
    html! {
        div.finding.look {
            p.severity { (t.say("severity-look")) }
            @for (open, words, remedy, way) in [
                (&unsaid, "key-unanswered", "key-unanswered-remedy", "key-say-it"),
                (&differ, "key-not-agreed", "key-not-agreed-remedy", "key-decide-it"),
            ] {
                @if !open.is_empty() {
                    p dir="auto" {
                        (t.count_with(words, open.len(), &[("kind", &name)]))
                        @for (number, _) in open { " " a href={"#q" (number)} { (number) } }
                    }
                    p.remedy dir="auto" {
                        (t.with(remedy, &[("kind", &name)]))
                        @for (number, missing) in once_each(open) {
                            " " a href=(missing.address) { (t.with(way, &[("number", number)])) }
                        }
                    }
                }
            }
            @if open.lost { p dir="auto" { (t.with("key-unanswered-lost", &[("kind", &name)])) } }
        }
    }
}

/// One card that waits on the way is missing at every question below it.
fn once_each(open: &[(u32, Missing)]) -> Vec<&(u32, Missing)> {
    let mut ways = Vec::<&(u32, Missing)>::new();
    for one in open {
        if !ways.iter().any(|(_, known)| known.address == one.1.address) {
            ways.push(one);
        }
    }
    ways
}
