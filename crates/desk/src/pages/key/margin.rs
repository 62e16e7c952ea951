//! The margin of the key: what to mend in the key as a whole, and kept questions that cannot be
//! asked where they were wanted.

use std::collections::BTreeSet;

use maud::{Markup, html};
use spinney_model::{Finding, Fork, Place, Severity, Wanted, WhyNot};

use super::{Keyed, unanswered};
use crate::pages::frame;
use spinney_collection::keys::letters;

pub(super) fn margin(key: &Keyed) -> Markup {
    let t = key.t;
    let numbers: BTreeSet<u32> = key.made.key.couplets.iter().map(|c| c.number).collect();
    let of_question =
        |found: &&Finding| matches!(found.place, Place::Couplet(n) if numbers.contains(&n));
    let (at, others): (Vec<&Finding>, Vec<&Finding>) = key
        .made
        .findings()
        .iter()
        .filter(|f| !unanswered::said_here(key, f))
        .partition(of_question);
    let others: Vec<Finding> = others.into_iter().cloned().collect();
    let left = not_asked(key);
    let unanswered = unanswered::slips(key);
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
fn not_asked(key: &Keyed) -> Vec<(Fork, String, String)> {
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
        Some((at.clone(), words, why_not(key, why)))
    })
    .collect()
}

/// Why a question cannot be asked, in a sentence.
pub(super) fn why_not(key: &Keyed, why: WhyNot) -> String {
    let t = key.t;
    match why {
        WhyNot::Blocked(taxon) => {
            let kind = key.made.layer.kinds.get(taxon.0);
            let name = kind.map(|kind| key.collection.name_in(key.id, *kind));
            t.with("key-why-blocked", &[("kind", &name.unwrap_or_default())])
        }
        WhyNot::AllAlike => t.say("key-why-alike"),
        WhyNot::NoSuchState => t.say("key-why-no-state"),
        WhyNot::AfterRefused => t.say("key-why-after"),
        WhyNot::LeftOut => t.say("key-why-left-out"),
        WhyNot::NeverParted | WhyNot::TooLarge => t.say("key-why-never"),
    }
}

fn wanted(key: &Keyed, at: &Fork, words: &str, why: &str) -> Markup {
    let t = key.t;
    html! {
        div.finding.look {
            p.severity { (t.say("severity-look")) }
            p dir="auto" { (t.with("key-not-asked", &[("words", &words)])) }
            p.remedy { (why) }
            form method="post" action="/do/key-let-go" {
                input type="hidden" name="key" value=(key.id.0);
                input type="hidden" name="at" value=(letters(at));
                input type="hidden" name="back" value=(key.address(None));
                button id={"let-go-" (letters(at))} { (t.say("key-take-out")) }
            }
        }
    }
}
