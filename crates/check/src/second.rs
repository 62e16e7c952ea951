//! Second places: ends that a kind comes to only by a wrong answer, and is named at all the same.
//!
//! From a walked key to the ends at which a kind that comes out elsewhere stands once more, so
//! that it comes out right although somebody misread it (`docs/KEY.md` 18). Nothing in a key
//! declares them: an end to which nobody comes is one if, on the way to it, every answer but one
//! is the kind's own, given what is left of it; or but several, if each wrong one before the last
//! leads to a second place as well.
//! Where ways meet it does not look: there the other way may be meant.

use std::collections::BTreeSet;

use spinney_model::{Answer, Finding, OfEnds, Place, TaxonIx};

use crate::tree::{ANSWERS, To};
use crate::values::{Has, Taken};
use crate::walked_key::WalkedKey;

/// An end at which a kind has a second place.
#[derive(Clone, Debug, PartialEq, Eq)]
pub(crate) struct SecondPlace {
    pub(crate) taxon: TaxonIx,
    /// The wrong answers that lead there, from the start.
    pub(crate) wrong: Vec<(usize, Answer)>,
    /// The end.
    pub(crate) end: (usize, Answer),
    /// The couplets that it answers rightly behind the first wrong answer.
    pub(crate) below: Vec<usize>,
    /// Whether somebody said that it is meant.
    pub(crate) meant: bool,
}

/// All second places of a key, in the order of the kinds.
pub(crate) fn places(seen: &WalkedKey<'_>) -> Vec<SecondPlace> {
    let mut found: Vec<SecondPlace> = Vec::new();
    // Of a kind that comes out under another name more is wrong than that.
    let astray: BTreeSet<TaxonIx> =
        seen.walked.strays.keys().map(|(.., taxon)| *taxon).collect();
    for taxon in seen.matrix.taxon_indices().filter(|taxon| !astray.contains(taxon)) {
        if seen.walked.arrived.get(&taxon) != Some(&true) {
            continue;
        }
        let ends = seen.named.ends[taxon.0].iter();
        let ends = ends.filter(|end| !seen.walked.ends.contains_key(end));
        let mut ways: Vec<SecondPlace> =
            ends.filter_map(|end| wrong_way(seen, taxon, *end)).collect();
        ways.sort_by_key(|place| place.wrong.len());
        for place in ways {
            let before = &place.wrong[..place.wrong.len() - 1];
            let nested =
                || found.iter().any(|known| known.taxon == taxon && known.wrong == before);
            if before.is_empty() || nested() {
                found.push(place);
            }
        }
    }
    found
}

/// The way to an end with the answers that are not the kind's own; None: there are none, or
/// nobody can say.
fn wrong_way(
    seen: &WalkedKey<'_>,
    taxon: TaxonIx,
    end: (usize, Answer),
) -> Option<SecondPlace> {
    let mut taken = Taken::new();
    let (mut wrong, mut below) = (Vec::new(), Vec::new());
    if seen.tree.same_both_ways(end.0) {
        return None;
    }
    for (couplet, answer) in way_to(seen, end)? {
        let asked = seen.questions[couplet]?;
        if seen.values.has(taxon, asked.character, &taken) != Has::Yes {
            return None;
        }
        let sides = seen.values.sides(taxon, &asked, &taken);
        let side = usize::from(answer == Answer::No);
        match sides[side] {
            None => wrong.push((couplet, answer)),
            Some(left) => {
                if !wrong.is_empty() {
                    below.push(couplet);
                }
                if sides[1 - side].is_some() {
                    taken.retain(|(character, _)| *character != asked.character);
                    taken.push((asked.character, left));
                    taken.sort_unstable();
                }
            }
        }
    }
    let said = |(couplet, answer): &(usize, Answer)| {
        let place = (seen.tree.number(*couplet), *answer, taxon);
        seen.settings.second_places.contains(&place)
    };
    let meant = wrong.iter().all(said);
    (!wrong.is_empty()).then_some(SecondPlace { taxon, wrong, end, below, meant })
}

/// Every answer on the way to an end; None: several ways lead there.
fn way_to(seen: &WalkedKey<'_>, end: (usize, Answer)) -> Option<Vec<(usize, Answer)>> {
    let mut way = vec![end];
    let mut couplet = end.0;
    while seen.tree.rank[couplet]? > 0 {
        let [parent] = seen.tree.parents[couplet].as_slice() else { return None };
        let leads = |answer: &Answer| seen.tree.to(*parent, *answer) == To::Couplet(couplet);
        let answers: Vec<Answer> = ANSWERS.into_iter().filter(leads).collect();
        let [answer] = answers.as_slice() else { return None };
        way.push((*parent, *answer));
        couplet = *parent;
    }
    way.reverse();
    Some(way)
}

/// What is said of the second places that nobody has declared.
pub(crate) fn findings(seen: &WalkedKey<'_>) -> Vec<Finding> {
    let open = seen.second.iter().filter(|place| !place.meant);
    open.map(|place| {
        let kind = seen.matrix.taxon(place.taxon).name.clone();
        let (end, wrong) = (seen.step(place.end), seen.step(place.wrong[0]));
        Finding::of(Place::Couplet(end.couplet), OfEnds::SecondPlace { kind, end, wrong })
    })
    .collect()
}
