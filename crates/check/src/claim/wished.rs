//! Whether a key does what was wished of it: from a walked key and wishes to broken ones.
//!
//! Questions to keep stand where they were wanted; nothing is asked that must not be, or that
//! cannot be seen on what is in the hand or in the season; nobody is sent to touch what may
//! hurt while something else separates; characters come in their order wherever they can be
//! asked; and what was to be over early is. `docs/KEY.md` 10.

use std::collections::BTreeSet;

use spinney_model::{
    Answer, CharacterIx, Claim, Early, EarlyOf, Finding, Kept, Matrix, OfWishes, Place,
    TaxonIx, WhyLeftOut, Wishes,
};

use crate::names;
use crate::question::{Question, Yes};
use crate::risk;
use crate::separable::may_ask;
use crate::tree::To;
use crate::walked_key::WalkedKey;

/// Characters of which nothing may be asked under these wishes.
pub(crate) fn left_out(matrix: &Matrix, wishes: &Wishes) -> BTreeSet<CharacterIx> {
    matrix.character_indices().filter(|at| why_not(matrix, wishes, *at).is_some()).collect()
}

/// Every wish that the key breaks.
pub(super) fn findings(seen: &WalkedKey<'_>, claim: &Claim) -> Vec<Finding> {
    let mut found = Vec::new();
    let mut placed = BTreeSet::new();
    let start = if seen.tree.order.is_empty() { To::Nothing } else { To::Couplet(0) };
    let mut open: Vec<_> =
        claim.wishes.kept.first().map(|kept| (None, start, kept)).into_iter().collect();
    while let Some((from, to, kept)) = open.pop() {
        let Some(couplet) = keeps(seen, from, to, kept, &mut placed, &mut found) else {
            continue;
        };
        for (answer, after) in [(couplet.no, kept.no), (couplet.yes, kept.yes)] {
            let to = seen.tree.to(couplet.at, answer);
            open.extend(
                after.map(|after| (Some((couplet.at, answer)), to, &claim.wishes.kept[after])),
            );
        }
    }
    found.extend(not_to_be_asked(seen, claim));
    found.extend(sent_to_touch(seen, claim, &placed));
    found.extend(touching(seen, claim));
    found.extend(out_of_order(seen, claim, &placed));
    for (at, early) in claim.wishes.early.iter().enumerate() {
        found.extend(late(seen, *early, claim.within.get(at).copied()));
    }
    found
}

fn broken(couplet: Option<u32>, fact: OfWishes) -> Finding {
    Finding::of(couplet.map_or(Place::Key, Place::Couplet), fact)
}

/// A couplet that asks a kept question, and which of its answers say yes and no to that.
struct KeptThere {
    at: usize,
    yes: Answer,
    no: Answer,
}

/// Whether a kept question stands where it was wanted. `from` is the answer that leads there;
/// `placed` collects the couplets that do.
fn keeps(
    seen: &WalkedKey<'_>,
    from: Option<(usize, Answer)>,
    to: To,
    kept: &Kept,
    placed: &mut BTreeSet<usize>,
    found: &mut Vec<Finding>,
) -> Option<KeptThere> {
    let wanted = names::asked(seen.matrix, &kept.ask);
    let after = from.map(|place| seen.step(place));
    let To::Couplet(couplet) = to else {
        let at = after.map(|step| step.couplet);
        found.push(broken(at, OfWishes::KeptNotAsked { after, wanted }));
        return None;
    };
    let sides = Question::asks(seen.matrix, &kept.ask)
        .zip(seen.questions[couplet])
        .and_then(|(wanted, here)| same(seen, &wanted, &here));
    let Some(exchanged) = sides else {
        let question = seen.tree.number(couplet);
        let ask = seen.tree.key.couplets[couplet].ask.as_ref();
        let asks = ask.map(|ask| names::asked(seen.matrix, ask));
        let fact = OfWishes::KeptOther { after, wanted, question, asks };
        found.push(broken(Some(question), fact));
        return None;
    };
    placed.insert(couplet);
    let (yes, no) = match exchanged {
        true => (Answer::No, Answer::Yes),
        false => (Answer::Yes, Answer::No),
    };
    Some(KeptThere { at: couplet, yes, no })
}

/// Whether two questions are one; the flag: with yes and no exchanged.
fn same(seen: &WalkedKey<'_>, one: &Question, other: &Question) -> Option<bool> {
    if one.character != other.character {
        return None;
    }
    let all = seen.values.all_states(one.character);
    match (one.yes, other.yes) {
        (a, b) if a == b => Some(false),
        (Yes::States(a), Yes::States(b)) => (a == all & !b).then_some(true),
        (Yes::AtLeast(a), Yes::Below(b)) | (Yes::Below(a), Yes::AtLeast(b)) => {
            (a == b).then_some(true)
        }
        _ => None,
    }
}

/// Why a character is not to be asked about.
fn why_not(matrix: &Matrix, wishes: &Wishes, at: CharacterIx) -> Option<WhyLeftOut> {
    let character = matrix.character(at);
    if wishes.never.contains(&at) {
        return Some(WhyLeftOut::Never);
    }
    let hand = wishes
        .hand
        .filter(|hand| !character.seen_on.is_empty() && !character.seen_on.contains(hand));
    if let Some(hand) = hand {
        return Some(WhyLeftOut::InTheHand(hand));
    }
    let season = wishes
        .season
        .filter(|season| !character.seasons.is_empty() && !character.seasons.contains(season));
    season.map(WhyLeftOut::InSeason)
}

fn not_to_be_asked(seen: &WalkedKey<'_>, claim: &Claim) -> Vec<Finding> {
    let mut found = Vec::new();
    for &couplet in &seen.tree.order {
        let Some(asked) = seen.questions[couplet] else { continue };
        if let Some(why) = why_not(seen.matrix, &claim.wishes, asked.character) {
            let (question, about) = (seen.tree.number(couplet), seen.about(&asked));
            let fact = OfWishes::NotToBeAsked { question, about, why };
            found.push(broken(Some(question), fact));
        }
    }
    found
}

/// Couplets that send people to touch what may hurt although something else separates there.
/// Kept questions stand where they were wanted.
fn sent_to_touch(
    seen: &WalkedKey<'_>,
    claim: &Claim,
    placed: &BTreeSet<usize>,
) -> Vec<Finding> {
    let mut found = Vec::new();
    if claim.wishes.allow_touch {
        return found;
    }
    for &couplet in seen.tree.order.iter().filter(|couplet| !placed.contains(couplet)) {
        let Some(question) = seen.questions[couplet] else { continue };
        let risky = risk::by_touch(seen, couplet, &question);
        let Some((risky, Some(otherwise))) = risky else { continue };
        let question = seen.tree.number(couplet);
        let kinds = names::kinds(seen.matrix, risky);
        let otherwise = names::about(seen.matrix, otherwise);
        let fact = OfWishes::SentToTouch { question, kinds, otherwise };
        found.push(broken(Some(question), fact));
    }
    found
}

/// Whether the claim names every question that is answered by touch while a kind may hurt.
fn touching(seen: &WalkedKey<'_>, claim: &Claim) -> Option<Finding> {
    let mut touching = BTreeSet::new();
    for &couplet in &seen.tree.order {
        let question = seen.questions[couplet];
        let risky = question.and_then(|question| risk::by_touch(seen, couplet, &question));
        touching.extend(risky.map(|_| seen.tree.number(couplet)));
    }
    let said: BTreeSet<u32> = claim.touching.iter().copied().collect();
    let question = *touching.symmetric_difference(&said).next()?;
    let fact = match said.contains(&question) {
        true => OfWishes::TouchNotSo { question },
        false => OfWishes::TouchNotSaid { question },
    };
    Some(broken(Some(question), fact))
}

/// Couplets at which a character that comes earlier in the order could be asked. Kept questions
/// stand where they were wanted, whatever the order.
fn out_of_order(seen: &WalkedKey<'_>, claim: &Claim, placed: &BTreeSet<usize>) -> Vec<Finding> {
    let mut found = Vec::new();
    if claim.wishes.order.is_empty() {
        return found;
    }
    let order = claim.wishes.order.iter().filter(|at| !seen.left_out.contains(at));
    let order: Vec<CharacterIx> = order.copied().collect();
    for &couplet in seen.tree.order.iter().filter(|couplet| !placed.contains(couplet)) {
        let Some(question) = seen.questions[couplet] else { continue };
        let Some(heap) = risk::heap(seen, couplet) else { continue };
        let barred = !claim.wishes.allow_touch && risk::otherwise(seen, &heap).is_some();
        let may = |at: &&CharacterIx| {
            !(barred && seen.matrix.character(**at).by_touch)
                && may_ask(seen.values, &heap, **at)
        };
        let first = order.iter().find(may);
        let Some(first) = first.filter(|first| **first != question.character) else { continue };
        let (number, about) = (seen.tree.number(couplet), seen.about(&question));
        let first = names::about(seen.matrix, *first);
        let fact = OfWishes::OutOfOrder { question: number, about, first };
        found.push(broken(Some(number), fact));
    }
    found
}

/// How many questions are asked at most while the wish is open, and the last of them.
pub(super) fn open_for(seen: &WalkedKey<'_>, early: Early) -> (u32, Option<usize>) {
    let here = |couplet: usize, taxon: TaxonIx| {
        seen.walked.visits[couplet].iter().any(|visit| visit.taxon == taxon)
    };
    let mut asked = vec![0_u32; seen.tree.to.len()];
    let (mut most, mut last) = (0, None);
    for &couplet in &seen.tree.order {
        let open = match early {
            Early::Part(one, other) => here(couplet, one) && here(couplet, other),
            Early::Leave(taxon) => here(couplet, taxon),
        };
        if !open {
            continue;
        }
        let before = seen.tree.parents[couplet].iter().map(|above| asked[*above]).max();
        asked[couplet] = 1 + before.unwrap_or(0);
        if asked[couplet] > most {
            (most, last) = (asked[couplet], Some(couplet));
        }
    }
    (most, last)
}

fn late(seen: &WalkedKey<'_>, early: Early, within: Option<u32>) -> Option<Finding> {
    let (until, last) = open_for(seen, early);
    let at = last.map(|couplet| seen.tree.number(couplet));
    let name = |taxon: TaxonIx| seen.matrix.taxon(taxon).name.clone();
    let wish = match early {
        Early::Part(one, other) => EarlyOf::Apart([one, other].map(name)),
        Early::Leave(taxon) => EarlyOf::Out(name(taxon)),
    };
    let Some(within) = within else {
        return Some(broken(None, OfWishes::EarlyNotSaid { wish }));
    };
    (until > within)
        .then(|| broken(at, OfWishes::Late { wish, within, takes: until, up_to: at }))
}
