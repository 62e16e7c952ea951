//! The margin of the key: what to mend in the key as a whole, kept questions that cannot be asked
//! where they were wanted, and kinds of which nobody has said what the key asks, or about which
//! people do not agree, each said once.
//!
//! The second opinion says it question by question; a group that left one card in the middle
//! would read the same of it at every question that follows.

use std::collections::BTreeSet;

use maud::{Markup, html};
use spinney_collection::guesses::Unsaid;
use spinney_collection::keys::letters;
use spinney_model::{Finding, Fork, Place, Severity, TaxonIx, Wanted, WhyNot};

use super::keyed::{Keyed, Missing};
use crate::forms::hidden;
use crate::pages::frame;
use crate::pages::heaps::deeds::TAKE_OUT;

pub(super) fn margin(key: &Keyed<'_>) -> Markup {
    let t = key.t;
    let numbers: BTreeSet<u32> = key.made.key.couplets.iter().map(|c| c.number).collect();
    let of_question =
        |found: &&Finding| matches!(found.place, Place::Couplet(n) if numbers.contains(&n));
    let (at, others): (Vec<&Finding>, Vec<&Finding>) =
        key.made.findings().iter().filter(|f| !key.said_of_a_kind(f)).partition(of_question);
    let others: Vec<Finding> = others.into_iter().cloned().collect();
    let left = not_asked(key);
    let unanswered = slips(key);
    let loud = |found: &&&Finding| found.severity != Severity::GoodToKnow;
    let places: BTreeSet<u32> = at
        .iter()
        .filter(loud)
        .filter_map(|found| match found.place {
            Place::Couplet(number) => Some(number),
            _ => None,
        })
        .collect();
    let together = key.together();
    let quiet = unanswered.is_none()
        && together.none()
        && places.is_empty()
        && left.is_empty()
        && others.iter().all(|found| found.severity == Severity::GoodToKnow);
    html! {
        h2 { (t.say("key-mend")) }
        @if quiet { p.quiet { (t.say("key-nothing-to-mend")) } }
        (together.slip())
        @if !places.is_empty() {
            p {
                (t.say("key-mend-at"))
                @for number in &places { " " a href={"#q" (number)} { (number) } }
            }
        }
        @if let Some(slips) = &unanswered { (slips) }
        @for (place, words, why) in &left { (wanted(key, place, words, why)) }
        (frame::findings(t, &others))
    }
}

/// Kept questions that the finished key does not ask where they were wanted.
fn not_asked(key: &Keyed<'_>) -> Vec<(Fork, String, String)> {
    if !key.drawn().finished() {
        return Vec::new();
    }
    let wanted =
        key.made.layer.forks.iter().filter_map(|(at, heap)| Some((at, heap.ask.as_ref()?)));
    let left = wanted.filter(|(at, ask)| {
        key.made.couplet(at).is_none_or(|couplet| couplet.ask.as_ref() != Some(*ask))
    });
    left.filter_map(|(at, ask)| {
        let of_ask =
            |refusal: &&spinney_model::Refusal| refusal.wanted == Wanted::Ask(ask.clone());
        let refusal = key.made.refused.iter().find(of_ask);
        let why = refusal.map_or(WhyNot::AfterRefused, |refusal| refusal.why);
        let words = key.drawn().questions.get(at)?.words.clone();
        Some((at.clone(), words, key.why_not(why)))
    })
    .collect()
}

fn wanted(key: &Keyed<'_>, at: &Fork, words: &str, why: &str) -> Markup {
    let t = key.t;
    html! {
        div.finding.look {
            p.severity { (t.say("severity-look")) }
            p dir="auto" { (t.with("key-not-asked", &[("words", &words)])) }
            p.remedy { (why) }
            form method="post" action=(TAKE_OUT.path) {
                (hidden(&[("key", &key.id.0), ("at", &letters(at)), ("back", &key.address(None))]))
                button id={"let-go-" (letters(at))} { (t.say("key-let-go")) }
            }
        }
    }
}

/// So many kinds are seen at once; the others are folded.
const SEEN_FIRST: usize = 6;

/// One slip for every kind; None: everything was said of everybody.
pub(super) fn slips(key: &Keyed<'_>) -> Option<Markup> {
    // Only where the second opinion found something to say.
    let said = key.made.findings().iter().any(|found| key.said_of_a_kind(found));
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

fn slip(key: &Keyed<'_>, taxon: TaxonIx, open: &Unsaid) -> Markup {
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
