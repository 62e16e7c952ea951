//! Whether a key does what was wished of it: from a walked key and wishes to broken ones.
//!
//! Questions to keep stand where they were wanted; nothing is asked that must not be, or that
//! cannot be seen on what is in the hand or in the season; nobody is sent to touch what may hurt
//! while something else separates; characters come in their order wherever they can be asked; and what was to be over early is. `docs/KEY.md` 10.

use std::collections::BTreeSet;

use spinney_model::{
    Answer, CharacterIx, Claim, Code, Early, Finding, Kept, Matrix, Place, TaxonIx, Wishes,
};

use super::reached::questions;
use crate::question::{Question, Yes};
use crate::risk;
use crate::seen::Seen;
use crate::sentence::{asked, called, capital, kinds};
use crate::separable::may_ask;
use crate::tree::{To, word};

/// Characters of which nothing may be asked under these wishes.
pub(crate) fn left_out(matrix: &Matrix, wishes: &Wishes) -> BTreeSet<CharacterIx> {
    matrix.character_indices().filter(|at| why_not(matrix, wishes, *at).is_some()).collect()
}

/// Every wish that the key breaks.
pub(super) fn findings(seen: &Seen<'_>, claim: &Claim) -> Vec<Finding> {
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

fn broken(couplet: Option<u32>, sentence: String, remedy: &str) -> Finding {
    let place = couplet.map_or(Place::Key, Place::Couplet);
    Finding::new(Code::WishBroken, place, sentence, remedy)
}

const BUILD_AGAIN: &str = "Make the key again with this wish, or take the wish back.";

/// A couplet that asks a kept question, and which of its answers say yes and no to that.
struct KeptThere {
    at: usize,
    yes: Answer,
    no: Answer,
}

/// Whether a kept question stands where it was wanted. `from` is the answer that leads there;
/// `placed` collects the couplets that do.
fn keeps(
    seen: &Seen<'_>,
    from: Option<(usize, Answer)>,
    to: To,
    kept: &Kept,
    placed: &mut BTreeSet<usize>,
    found: &mut Vec<Finding>,
) -> Option<KeptThere> {
    let wanted = asked(seen.matrix, &kept.ask);
    let place = from.map_or_else(
        || "The first question".to_owned(),
        |(couplet, answer)| {
            format!("The question after {} at {}", word(answer), seen.tree.number(couplet))
        },
    );
    let To::Couplet(couplet) = to else {
        let at = from.map(|(couplet, _)| seen.tree.number(couplet));
        let says = format!("{place} was to be about {wanted}, but nothing is asked there.");
        found.push(broken(at, says, BUILD_AGAIN));
        return None;
    };
    let number = seen.tree.number(couplet);
    let sides = Question::asks(seen.matrix, &kept.ask)
        .zip(seen.questions[couplet])
        .and_then(|(wanted, here)| same(seen, &wanted, &here));
    let Some(exchanged) = sides else {
        let ask = seen.tree.key.couplets[couplet].ask.as_ref();
        let here = ask.map_or_else(
            || "it is not linked to the table".to_owned(),
            |ask| format!("question {number} is about {}", asked(seen.matrix, ask)),
        );
        let says = format!("{place} was to be about {wanted}, but {here}.");
        found.push(broken(Some(number), says, BUILD_AGAIN));
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
fn same(seen: &Seen<'_>, one: &Question, other: &Question) -> Option<bool> {
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

/// Why a character is not to be asked about: "which was never to be asked about".
fn why_not(matrix: &Matrix, wishes: &Wishes, at: CharacterIx) -> Option<String> {
    let character = matrix.character(at);
    if wishes.never.contains(&at) {
        return Some("which was never to be asked about".to_owned());
    }
    let hand = wishes
        .hand
        .filter(|hand| !character.seen_on.is_empty() && !character.seen_on.contains(hand));
    if let Some(hand) = hand {
        return Some(format!("which cannot be seen on what is in the hand ({})", hand.word()));
    }
    let season = wishes
        .season
        .filter(|season| !character.seasons.is_empty() && !character.seasons.contains(season));
    season.map(|season| format!("which cannot be seen in {}", season.word()))
}

fn not_to_be_asked(seen: &Seen<'_>, claim: &Claim) -> Vec<Finding> {
    let mut found = Vec::new();
    for &couplet in &seen.tree.order {
        let Some(question) = seen.questions[couplet] else { continue };
        if let Some(why) = why_not(seen.matrix, &claim.wishes, question.character) {
            let number = seen.tree.number(couplet);
            let about = seen.about(&question);
            let says = format!("Question {number} asks about {about}, {why}.");
            found.push(broken(
                Some(number),
                says,
                "Ask about something else there, or take the wish back.",
            ));
        }
    }
    found
}

/// Couplets that send people to touch what may hurt although something else separates there.
/// Kept questions stand where they were wanted.
fn sent_to_touch(seen: &Seen<'_>, claim: &Claim, placed: &BTreeSet<usize>) -> Vec<Finding> {
    let mut found = Vec::new();
    if claim.wishes.allow_touch {
        return found;
    }
    for &couplet in seen.tree.order.iter().filter(|couplet| !placed.contains(couplet)) {
        let Some(question) = seen.questions[couplet] else { continue };
        let risky = risk::by_touch(seen, couplet, &question);
        let Some((risky, Some(otherwise))) = risky else { continue };
        let number = seen.tree.number(couplet);
        let says = format!(
            "Question {number} is answered by touch while {} may be in the hand, but {} can be \
             asked about there.",
            kinds(seen.matrix, risky),
            called(&seen.matrix.character(otherwise).name)
        );
        found.push(broken(Some(number), says, BUILD_AGAIN));
    }
    found
}

/// Whether the claim names every question that is answered by touch while a kind may hurt.
fn touching(seen: &Seen<'_>, claim: &Claim) -> Option<Finding> {
    let mut touching = BTreeSet::new();
    for &couplet in &seen.tree.order {
        let question = seen.questions[couplet];
        let risky = question.and_then(|question| risk::by_touch(seen, couplet, &question));
        touching.extend(risky.map(|_| seen.tree.number(couplet)));
    }
    let said: BTreeSet<u32> = claim.touching.iter().copied().collect();
    let number = *touching.symmetric_difference(&said).next()?;
    let says = if said.contains(&number) {
        format!(
            "Question {number} is said to send people to touch what may hurt, but it does not."
        )
    } else {
        format!("Question {number} sends people to touch what may hurt, and that is not said.")
    };
    Some(broken(Some(number), says, super::REMEDY))
}

/// Couplets at which a character that comes earlier in the order could be asked. Kept questions
/// stand where they were wanted, whatever the order.
fn out_of_order(seen: &Seen<'_>, claim: &Claim, placed: &BTreeSet<usize>) -> Vec<Finding> {
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
        let number = seen.tree.number(couplet);
        let says = format!(
            "Question {number} asks about {}, but {} was to come first and can be asked there.",
            seen.about(&question),
            called(&seen.matrix.character(*first).name)
        );
        found.push(broken(Some(number), says, BUILD_AGAIN));
    }
    found
}

/// How many questions are asked at most while the wish is open, and the last of them.
pub(super) fn open_for(seen: &Seen<'_>, early: Early) -> (u32, Option<usize>) {
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

fn late(seen: &Seen<'_>, early: Early, within: Option<u32>) -> Option<Finding> {
    let (until, last) = open_for(seen, early);
    let at = last.map(|couplet| seen.tree.number(couplet));
    let wish = match early {
        Early::Part(one, other) => {
            format!("{} were to be apart", capital(&kinds(seen.matrix, [one, other])))
        }
        Early::Leave(taxon) => {
            format!("{} was to be out", capital(&seen.matrix.taxon(taxon).name))
        }
    };
    let Some(within) = within else {
        let says = format!("{wish} early, but it is not said within how many questions.");
        return Some(broken(None, says, BUILD_AGAIN));
    };
    (until > within).then(|| {
        let up_to = at.map_or_else(String::new, |number| format!(", up to question {number}"));
        let says = format!("{wish} within {}, but it takes {until}{up_to}.", questions(within));
        broken(at, says, BUILD_AGAIN)
    })
}
