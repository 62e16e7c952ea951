//! The fewest characters that meet every demand: from demands to a proved smallest set.
//!
//! Size after size is refuted, from the smallest that could be on, until sets are found; so
//! that where the steps run out, everything below is proved. A set found step by step (always
//! the character that adds most; then two for one as long as that works) stands in until then.

use std::cmp::Reverse;
use std::collections::BTreeSet;

use spinney_model::{CharacterIx, Fewest};

use super::WeakSettings;
use super::clause::Clause;
use super::demands::{Demands, Tally};
use super::dividing::Dividing;
use super::search::{Ended, Search};
use crate::bits::Bits;

/// The smallest sets of characters that meet all these demands.
pub(super) fn fewest(
    clauses: &[Clause],
    dividing: &Dividing,
    characters: usize,
    settings: &WeakSettings,
) -> Fewest {
    let indispensable = indispensable(clauses, characters);
    let stand_in = step_by_step(clauses, characters, &indispensable);
    let demands = Demands::of(clauses);
    let mut search = Search {
        demands: &demands,
        dividing,
        characters,
        steps: settings.steps,
        enough: settings.sets_listed,
        sets: Vec::new(),
        ended: Ended::Complete,
    };
    let mut at_least = indispensable.count() as usize;
    let ended = loop {
        let ended = search.run(at_least);
        if ended != Ended::Complete || !search.sets.is_empty() {
            break ended;
        }
        at_least += 1;
    };
    if search.sets.is_empty() {
        search.sets.push(stand_in);
    }
    let named = |set: &Bits| -> BTreeSet<CharacterIx> { set.iter().map(CharacterIx).collect() };
    let mut sets: Vec<BTreeSet<CharacterIx>> = search.sets.iter().map(named).collect();
    sets.sort();
    sets.truncate(settings.sets_listed.max(1));
    Fewest {
        at_least,
        best: sets[0].len(),
        sets,
        all: ended == Ended::Complete,
        indispensable: named(&indispensable),
    }
}

/// Characters without which some demand cannot be met.
fn indispensable(clauses: &[Clause], characters: usize) -> Bits {
    let mut found = Bits::none(characters);
    let none = Bits::none(characters);
    for clause in clauses {
        // A demand with more to choose from than that can do without any one.
        if clause.together.is_empty() && clause.alone.count() > clause.wanted {
            continue;
        }
        for character in clause.open(&none, &none).iter() {
            let mut without = none.clone();
            without.add(character);
            if clause.without(&without) < clause.wanted {
                found.add(character);
            }
        }
    }
    found
}

/// A good set, not always a smallest.
fn step_by_step(clauses: &[Clause], characters: usize, indispensable: &Bits) -> Bits {
    let mut chosen = indispensable.clone();
    let none = Bits::none(characters);
    loop {
        let open: Vec<&Clause> = clauses.iter().filter(|clause| !clause.met(&chosen)).collect();
        let Some(first) = open.first() else { break };
        let mut tally = Tally::new(characters);
        open.iter().for_each(|clause| tally.add(clause.alone.words()));
        let gains = tally.counts();
        let best = (0..characters)
            .filter(|character| !chosen.has(*character))
            .max_by_key(|character| (gains[*character], Reverse(*character)));
        match best {
            Some(best) if gains[best] > 0 => chosen.add(best),
            _ => chosen.add_all(&first.open(&chosen, &none)),
        }
    }
    drop_spare(clauses, &mut chosen);
    if clauses.len() > MOST_EXCHANGED {
        return chosen;
    }
    while let Some(better) = two_for_one(clauses, &chosen, indispensable) {
        chosen = better;
        drop_spare(clauses, &mut chosen);
    }
    chosen
}

/// Leaves out what is not needed, the last in the table first.
fn drop_spare(clauses: &[Clause], chosen: &mut Bits) {
    let mut all: Vec<usize> = chosen.iter().collect();
    all.reverse();
    for character in all {
        chosen.remove(character);
        if !clauses.iter().all(|clause| clause.met(chosen)) {
            chosen.add(character);
        }
    }
}

/// With more demands than this, exchanging two for one takes longer than it is worth.
const MOST_EXCHANGED: usize = 200_000;

/// So many characters are tried two by two.
const MOST_TWO_BY_TWO: usize = 24;

/// The same set with one character in place of two, where that meets all demands.
fn two_for_one(clauses: &[Clause], chosen: &Bits, indispensable: &Bits) -> Option<Bits> {
    let spare: Vec<usize> = chosen
        .iter()
        .filter(|character| !indispensable.has(*character))
        .take(MOST_TWO_BY_TWO)
        .collect();
    for (place, one) in spare.iter().enumerate() {
        for other in &spare[place + 1..] {
            let mut fewer = chosen.clone();
            fewer.remove(*one);
            fewer.remove(*other);
            if let Some(character) = completing(clauses, &fewer) {
                fewer.add(character);
                return Some(fewer);
            }
        }
    }
    None
}

/// A character that meets everything that these leave open.
fn completing(clauses: &[Clause], chosen: &Bits) -> Option<usize> {
    let mut can: Option<Bits> = None;
    for clause in clauses.iter().filter(|clause| !clause.met(chosen)) {
        let lacks = clause.wanted - clause.found(chosen);
        let can = can.get_or_insert_with(|| clause.alone.clone());
        // What needs its governors asked first is left to the search.
        can.keep_only(clause.alone.words());
        if lacks > 1 || can.is_empty() {
            return None;
        }
    }
    can.and_then(|can| can.iter().find(|character| !chosen.has(*character)))
}
