//! Where kinds come out: from the walks to kinds in the wrong place and ends nobody reaches.
//!
//! A form is reported where it leaves the side on which its name stands, once a couplet, with
//! all kinds that do so there. What an unlinked question could still put right is left alone.

use std::collections::{BTreeMap, BTreeSet};

use spinney_model::{Answer, Code, Finding, Place, TaxonIx};

use crate::reach;
use crate::seen::Seen;
use crate::sentence::{self, capital, number};
use crate::tree::{ANSWERS, To, word};
use crate::values::Taken;
use crate::walks::{Cause, Stray};

/// Wrong places, varying characters used as fixed, and ends nobody reaches.
pub(crate) fn findings(seen: &Seen<'_>) -> Vec<Finding> {
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
    seen: &Seen<'a>,
) -> impl Iterator<Item = (&'a (usize, Answer, TaxonIx), &'a Stray)> {
    let forgotten = reach::forgotten(seen);
    let walked = seen.walked;
    walked.strays.iter().filter(move |((_, _, taxon), stray)| {
        let cut_off = seen.named.nowhere(*taxon) && seen.named.beyond_reach[taxon.0];
        let may_be_home = stray.doubtful && walked.arrived.contains_key(taxon);
        !(cut_off || may_be_home || forgotten.contains(taxon))
    })
}

/// "comes out at lime".
fn comes_out(seen: &Seen<'_>, stray: &Stray) -> String {
    let ends: BTreeSet<String> = stray
        .ends
        .iter()
        .map(|place| sentence::at_end(seen.matrix, seen.tree, *place))
        .collect();
    if ends.is_empty() {
        return "never comes out from there".into();
    }
    format!("comes out at {}", sentence::any(&ends.into_iter().collect::<Vec<_>>()))
}

fn wrong_place(
    seen: &Seen<'_>,
    couplet: usize,
    strays: &[(Answer, TaxonIx, &Stray)],
) -> Option<Finding> {
    let (first, ..) = strays.first()?;
    let number = seen.tree.number(couplet);
    let ways: Vec<String> = strays
        .iter()
        .map(|(answer, taxon, stray)| {
            let name = &seen.matrix.taxon(*taxon).name;
            format!("{name} answers {} and {}", word(*answer), comes_out(seen, stray))
        })
        .collect();
    let remedy = if strays.iter().any(|(answer, ..)| answer != first) {
        "Perhaps yes and no have changed places. If not, look at the table again.".to_owned()
    } else {
        let names: Vec<TaxonIx> = strays.iter().map(|(_, taxon, _)| *taxon).collect();
        let about =
            seen.questions[couplet].map_or_else(String::new, |question| seen.about(&question));
        format!(
            "Look at {about} of {} again. If the table is right, write the name after {} as \
             well, with a question before it.",
            sentence::kinds(seen.matrix, names),
            word(*first)
        )
    };
    Some(Finding::new(
        Code::WrongPlace,
        Place::Couplet(number),
        format!("By the table, at question {number} {}.", ways.join("; ")),
        remedy,
    ))
}

fn varies(
    seen: &Seen<'_>,
    couplet: usize,
    strays: &[(Answer, TaxonIx, &Stray)],
) -> Option<Finding> {
    let question = seen.questions[couplet]?;
    let (answer, ..) = strays.first()?;
    let number = seen.tree.number(couplet);
    let ways: Vec<String> = strays
        .iter()
        .map(|(_, taxon, stray)| {
            let form = sentence::form(seen.matrix, question.character, &stray.form);
            let name = &seen.matrix.taxon(*taxon).name;
            let is = if question.at().is_some() { "has" } else { "is" };
            format!("{name} varies, and where it {is} {form} it {}", comes_out(seen, stray))
        })
        .collect();
    let about = seen.about(&question);
    let names = sentence::kinds(seen.matrix, strays.iter().map(|(_, taxon, _)| *taxon));
    Some(Finding::new(
        Code::VariesUsedAsFixed,
        Place::Couplet(number),
        format!("Question {number} takes {about} to be always the same: {}.", ways.join("; ")),
        format!(
            "Let {names} come out after {} as well, or ask here about something else.",
            word(*answer)
        ),
    ))
}

/// Ends whose kinds all come out elsewhere, at a couplet that others do get to.
fn ends_unreached(seen: &Seen<'_>) -> Vec<Finding> {
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
            let at = seen.tree.number(couplet);
            let names = sentence::at_end(seen.matrix, seen.tree, (couplet, answer));
            if let Some((who, cells)) = only {
                found.push(Finding::new(
                    Code::EndUnreached,
                    Place::Couplet(at),
                    format!(
                        "{} never comes out after {} at question {at}, where its name is. \
                         Only {who} can, because nobody has looked at {cells}.",
                        capital(&names),
                        word(answer)
                    ),
                    format!("Write {who} there, or look at {who} and fill in {cells}."),
                ));
                continue;
            }
            found.push(Finding::new(
                Code::EndUnreached,
                Place::Couplet(at),
                format!(
                    "No kind comes out at {} after {} at question {at}: no kind that gets \
                     there answers {1}.",
                    names,
                    word(answer)
                ),
                format!(
                    "Take that end out, or let {names} answer {} here.{}",
                    word(answer),
                    number(visits.len(), " Only one kind gets here at all.", "")
                ),
            ));
        }
    }
    found
}

/// Who comes to an end, and the cells that are blank, where everybody who comes there left the
/// side with the right name only because nobody has looked.
fn only_for_want_of_a_look(
    seen: &Seen<'_>,
    end: (usize, Answer),
    came: &[(TaxonIx, Taken)],
) -> Option<(String, String)> {
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
            let name = &seen.matrix.taxon(*taxon).name;
            cells.insert(format!("{} of {name}", seen.about(&question)));
        }
    }
    let who = sentence::kinds(seen.matrix, came.iter().map(|(taxon, _)| *taxon));
    Some((who, sentence::all(&cells.into_iter().collect::<Vec<_>>())))
}
