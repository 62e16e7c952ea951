//! Where kinds come out: from the walks to kinds in the wrong place and ends nobody reaches.
//!
//! A form is reported where it leaves the side on which its name stands, once a couplet, with
//! all kinds that do so there. What an unlinked question could still put right is left alone.

use std::collections::{BTreeMap, BTreeSet};

use spinney_model::{
    Answer, Astray, CellOf, Finding, FormAstray, NameAtEnd, OfEnds, Place, TaxonIx,
};

use crate::names;
use crate::reach;
use crate::tree::{ANSWERS, To};
use crate::values::Taken;
use crate::walked_key::WalkedKey;
use crate::walks::{Cause, Stray};

/// Wrong places, varying characters used as fixed, and ends nobody reaches.
pub(crate) fn findings(seen: &WalkedKey<'_>) -> Vec<Finding> {
    let mut by_couplet: BTreeMap<usize, Vec<(Answer, TaxonIx, &Stray)>> = BTreeMap::new();
    for (&(couplet, answer, taxon), stray) in astray(seen) {
        by_couplet.entry(couplet).or_default().push((answer, taxon, stray));
    }
    let mut found = Vec::new();
    for (couplet, strays) in by_couplet {
        let of = |cause: Cause| {
            let strays = strays.iter().filter(move |(_, _, stray)| stray.cause == cause);
            strays.copied().collect::<Vec<_>>()
        };
        found.extend(wrong_place(seen, couplet, &of(Cause::Sole)));
        found.extend(varies(seen, couplet, &of(Cause::Form)));
    }
    if seen.finished() {
        found.extend(ends_unreached(seen));
    }
    found
}

/// The strays that are to be reported: of kinds that are named somewhere, and that no answer
/// to an unlinked question could still bring home.
pub(crate) fn astray<'a>(
    seen: &WalkedKey<'a>,
) -> impl Iterator<Item = (&'a (usize, Answer, TaxonIx), &'a Stray)> {
    let forgotten = reach::forgotten(seen);
    let walked = seen.walked;
    walked.strays.iter().filter(move |((_, _, taxon), stray)| {
        let cut_off = seen.named.nowhere(*taxon) && seen.named.beyond_reach[taxon.0];
        let may_be_home = stray.doubtful && walked.arrived.contains_key(taxon);
        !(cut_off || may_be_home || forgotten.contains(taxon))
    })
}

/// The names at each end where it comes out.
fn reads(seen: &WalkedKey<'_>, stray: &Stray) -> Vec<Vec<NameAtEnd>> {
    let ends = stray.ends.iter();
    let ends: BTreeSet<Vec<NameAtEnd>> =
        ends.map(|place| names::at_end(seen.matrix, seen.tree, *place)).collect();
    ends.into_iter().collect()
}

fn wrong_place(
    seen: &WalkedKey<'_>,
    couplet: usize,
    strays: &[(Answer, TaxonIx, &Stray)],
) -> Option<Finding> {
    strays.first()?;
    let question = seen.tree.number(couplet);
    let astray = |(answer, taxon, stray): &(Answer, TaxonIx, &Stray)| Astray {
        kind: seen.matrix.taxon(*taxon).name.clone(),
        answer: *answer,
        reads: reads(seen, stray),
    };
    let fact = OfEnds::WrongPlace {
        question,
        about: seen.questions[couplet].map(|asked| seen.about(&asked)).unwrap_or_default(),
        astray: strays.iter().map(astray).collect(),
    };
    Some(Finding::of(Place::Couplet(question), fact))
}

fn varies(
    seen: &WalkedKey<'_>,
    couplet: usize,
    strays: &[(Answer, TaxonIx, &Stray)],
) -> Option<Finding> {
    let asked = seen.questions[couplet]?;
    let (answer, ..) = strays.first()?;
    let question = seen.tree.number(couplet);
    let form = |(_, taxon, stray): &(Answer, TaxonIx, &Stray)| FormAstray {
        kind: seen.matrix.taxon(*taxon).name.clone(),
        form: names::form(seen.matrix, asked.character, &stray.form),
        reads: reads(seen, stray),
    };
    let fact = OfEnds::VariesUsedAsFixed {
        question,
        about: seen.about(&asked),
        answer: *answer,
        forms: strays.iter().map(form).collect(),
    };
    Some(Finding::of(Place::Couplet(question), fact))
}

/// Ends whose kinds all come out elsewhere, at a couplet that others do get to.
fn ends_unreached(seen: &WalkedKey<'_>) -> Vec<Finding> {
    let blamed: BTreeSet<TaxonIx> =
        seen.walked.strays.keys().map(|(_, _, taxon)| *taxon).collect();
    let mut found = Vec::new();
    for &couplet in &seen.tree.order {
        let visits = &seen.walked.visits[couplet];
        if visits.is_empty() || seen.questions[couplet].is_none() {
            continue;
        }
        for answer in ANSWERS {
            let came = seen.walked.ends.get(&(couplet, answer));
            let same = seen.tree.same_both_ways(couplet);
            if same || seen.tree.to(couplet, answer) != To::End {
                continue;
            }
            let end = seen.tree.end(couplet, answer).expect("an end was found there");
            let only = match came {
                None => None,
                Some(came) => match only_for_want_of_a_look(seen, (couplet, answer), came) {
                    Some(why) if came.iter().all(|(taxon, _)| !end.taxa.contains(taxon)) => {
                        Some(why)
                    }
                    _ => continue,
                },
            };
            let second = |taxon: &TaxonIx| {
                let here = (couplet, answer);
                seen.second.iter().any(|place| (place.taxon, place.end) == (*taxon, here))
            };
            if end.taxa.iter().all(second) {
                continue;
            }
            if end
                .taxa
                .iter()
                .any(|taxon| blamed.contains(taxon) || seen.walked.unfinished.contains(taxon))
            {
                continue;
            }
            let (end, only_one) = (seen.step((couplet, answer)), visits.len() == 1);
            let names = names::at_end(seen.matrix, seen.tree, (couplet, answer));
            let fact = match only {
                Some((kinds, cells)) => OfEnds::EndOnlyGuessed { end, names, kinds, cells },
                None => OfEnds::EndUnreached { end, names, only_one },
            };
            found.push(Finding::of(Place::Couplet(end.couplet), fact));
        }
    }
    found
}

/// Who comes to an end, and the cells that are blank, where everybody who comes there left the
/// side with the right name only because nobody has looked.
fn only_for_want_of_a_look(
    seen: &WalkedKey<'_>,
    end: (usize, Answer),
    came: &[(TaxonIx, Taken)],
) -> Option<(Vec<String>, Vec<CellOf>)> {
    let mut cells = BTreeSet::new();
    for (taxon, _) in came {
        let strays = seen.walked.strays.iter();
        let mut here = strays
            .filter(|((.., who), stray)| who == taxon && stray.ends.contains(&end))
            .peekable();
        here.peek()?;
        for ((couplet, ..), stray) in here {
            let question =
                seen.questions[*couplet].filter(|_| stray.cause == Cause::Unrecorded)?;
            cells.insert(CellOf::of(seen.matrix, question.character, *taxon));
        }
    }
    let who = names::kinds(seen.matrix, came.iter().map(|(taxon, _)| *taxon));
    Some((who, cells.into_iter().collect()))
}
