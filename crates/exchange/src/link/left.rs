//! What can still come to a couplet: the states that the couplets before it have left.
//!
//! From a key that is linked in part to, for every couplet, the states of each character that
//! have not been parted off on every way there. Two leads need to be opposites only of what is
//! left: where leaves in one piece have gone the other way, "like a feather" and "like a hand"
//! are. It reads the links only, never a cell of the table.

use std::collections::{BTreeMap, BTreeSet};

use spinney_model::{Asked, CharacterIx, Couplet, Destination, Key, Matrix, Scale, StateIx};

/// The states left of each character; all of them where it is not named.
pub(super) type Left = BTreeMap<CharacterIx, BTreeSet<StateIx>>;

/// What is left at each couplet, in the order of the key; nothing where no way leads.
///
/// **Cost**: each couplet is looked at again only when more is left there than was known.
pub(super) fn at_each(key: &Key, matrix: &Matrix) -> Vec<Option<Left>> {
    let mut numbered: BTreeMap<u32, usize> = BTreeMap::new();
    for (ix, couplet) in key.couplets.iter().enumerate() {
        numbered.entry(couplet.number).or_insert(ix);
    }
    let mut left: Vec<Option<Left>> = vec![None; key.couplets.len()];
    let mut waiting = BTreeSet::new();
    if let Some(first) = left.first_mut() {
        *first = Some(Left::new());
        waiting.insert(0);
    }
    while let Some(ix) = waiting.pop_first() {
        let couplet = &key.couplets[ix];
        let here = left[ix].clone().expect("only couplets that were reached wait");
        for (yes, destination) in [(true, &couplet.yes), (false, &couplet.no)] {
            let Destination::Couplet(number) = destination else { continue };
            let Some(to) = numbered.get(number) else { continue };
            if join(&mut left[*to], behind(couplet, yes, &here, matrix)) {
                waiting.insert(*to);
            }
        }
    }
    left
}

/// What is left behind one answer.
fn behind(couplet: &Couplet, yes: bool, here: &Left, matrix: &Matrix) -> Left {
    let mut there = here.clone();
    let Some(ask) = &couplet.ask else { return there };
    let (Asked::States(asked), Scale::Words { states }) =
        (&ask.yes, &matrix.character(ask.character).scale)
    else {
        return there;
    };
    let all = || (0..states.len()).map(StateIx).collect();
    let left = there.entry(ask.character).or_insert_with(all);
    left.retain(|state| asked.contains(state) == yes);
    there
}

/// Adds what comes on a further way; whether that is more than was known.
fn join(known: &mut Option<Left>, further: Left) -> bool {
    let Some(known) = known else {
        *known = Some(further);
        return true;
    };
    let before = known.clone();
    known.retain(|character, _| further.contains_key(character));
    for (character, states) in &mut *known {
        states.extend(&further[character]);
    }
    *known != before
}
