//! The key as a tree of numbers: from the printed numbers to who leads where.
//!
//! Numbers may be missing, repeated or lead in a circle; the tree holds the key as it can be
//! followed, and remembers what could not. It looks at no kind and no character.

use std::collections::btree_map::Entry;
use std::collections::{BTreeMap, BTreeSet};

use spinney_model::{Answer, Couplet, Destination, End, Key};

/// Where an answer leads, with numbers resolved to places in the list of couplets.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(crate) enum To {
    /// On to another couplet.
    Couplet(usize),
    /// Back to a couplet one has come through: a loop.
    Back(usize),
    /// To an end that names at least one kind of the matrix.
    End,
    /// To an end whose names are all strange to the matrix; the reader has said so.
    Strange,
    /// To a number that stands nowhere.
    Nowhere(u32),
    /// Nothing is written.
    Nothing,
}

impl To {
    /// Whether somebody who goes there is lost by the tree itself, whatever the table says.
    pub(crate) fn is_hole(self) -> bool {
        matches!(self, Self::Back(_) | Self::Nowhere(_) | Self::Nothing)
    }
}

/// The two answers in the order of [`Tree::to`].
pub(crate) const ANSWERS: [Answer; 2] = [Answer::Yes, Answer::No];

/// A key whose numbers have been looked up.
pub(crate) struct Tree<'k> {
    /// The key itself.
    pub(crate) key: &'k Key,
    /// Where yes and no lead from each couplet.
    pub(crate) to: Vec<[To; 2]>,
    /// The couplets that can be got to, every one after all that lead to it.
    pub(crate) order: Vec<usize>,
    /// The place of each couplet in `order`; None: nobody can get to it.
    pub(crate) rank: Vec<Option<usize>>,
    /// The couplets that lead to each couplet, without loops and without the unreachable.
    pub(crate) parents: Vec<Vec<usize>>,
    /// Missing numbers that are probably the second bearer of a repeated number.
    pub(crate) probably: BTreeMap<u32, usize>,
    /// Second and further bearers of a number.
    pub(crate) repeated: Vec<usize>,
}

impl<'k> Tree<'k> {
    /// Looks all numbers up. `taxa` is the number of kinds in the matrix.
    pub(crate) fn new(key: &'k Key, taxa: usize) -> Self {
        let (first, repeated) = bearers(key);
        let probably = probable_bearers(key, &first, &repeated);
        let resolve = |destination: &Destination| match destination {
            Destination::Couplet(number) => first
                .get(number)
                .or_else(|| probably.get(number))
                .map_or(To::Nowhere(*number), |&index| To::Couplet(index)),
            Destination::End(end) if end.taxa.iter().any(|taxon| taxon.0 < taxa) => To::End,
            Destination::End(end) if !end.unrecognised.is_empty() => To::Strange,
            Destination::End(_) | Destination::Missing => To::Nothing,
        };
        let to = key.couplets.iter().map(|c| [resolve(&c.yes), resolve(&c.no)]).collect();
        let none = vec![None; key.couplets.len()];
        let parents = vec![Vec::new(); key.couplets.len()];
        let mut tree =
            Self { key, to, order: Vec::new(), rank: none, parents, probably, repeated };
        tree.put_in_order();
        tree
    }

    /// The end an answer leads to, if it leads to one.
    pub(crate) fn end(&self, couplet: usize, answer: Answer) -> Option<&'k End> {
        let couplet = &self.key.couplets[couplet];
        match if answer == Answer::Yes { &couplet.yes } else { &couplet.no } {
            Destination::End(end) => Some(end),
            _ => None,
        }
    }

    /// Where an answer leads.
    pub(crate) fn to(&self, couplet: usize, answer: Answer) -> To {
        self.to[couplet][usize::from(answer == Answer::No)]
    }

    /// Whether both answers lead to one place, and something is written there.
    pub(crate) fn same_both_ways(&self, couplet: usize) -> bool {
        let Couplet { yes, no, .. } = &self.key.couplets[couplet];
        yes == no && self.to[couplet].iter().all(|to| *to != To::Nothing)
    }

    /// The printed number of a couplet.
    pub(crate) fn number(&self, couplet: usize) -> u32 {
        self.key.couplets[couplet].number
    }

    /// The most questions on any path, loops left out.
    pub(crate) fn longest(&self) -> u32 {
        let mut below = vec![0_u32; self.to.len()];
        for &couplet in self.order.iter().rev() {
            let deeper = self.to[couplet].iter().map(|to| match to {
                To::Couplet(next) => below[*next],
                _ => 0,
            });
            below[couplet] = 1 + deeper.max().unwrap_or(0);
        }
        below.first().copied().unwrap_or(0)
    }

    /// Answers that lead back to where one was only if one also turns to the further bearers
    /// of repeated numbers, and to what. A bearer that probably means another number is at
    /// home there, and its loops are among those of the tree.
    pub(crate) fn back_by_repeated_numbers(&self) -> BTreeMap<(usize, Answer), usize> {
        let meant: BTreeSet<usize> = self.probably.values().copied().collect();
        let mut further: BTreeMap<u32, Vec<usize>> = BTreeMap::new();
        for &couplet in self.repeated.iter().filter(|couplet| !meant.contains(couplet)) {
            further.entry(self.number(couplet)).or_default().push(couplet);
        }
        let mut back = BTreeMap::new();
        if further.is_empty() {
            return back;
        }
        let onward = |couplet: usize| -> Vec<(Answer, usize)> {
            let lead = |answer| {
                let To::Couplet(next) = self.to(couplet, answer) else { return Vec::new() };
                let others = further.get(&self.number(next)).into_iter().flatten().copied();
                std::iter::once(next).chain(others).map(|next| (answer, next)).collect()
            };
            ANSWERS.into_iter().flat_map(lead).collect()
        };
        let (mut entered, mut left) = (BTreeSet::from([0]), BTreeSet::new());
        let mut trail = vec![(0, onward(0).into_iter())];
        while let Some((couplet, leads)) = trail.last_mut() {
            let Some((answer, next)) = leads.next() else {
                left.insert(*couplet);
                trail.pop();
                continue;
            };
            if entered.insert(next) {
                trail.push((next, onward(next).into_iter()));
            } else if !left.contains(&next) {
                back.insert((*couplet, answer), next);
            }
        }
        back
    }

    /// Follows the numbers from the start, depth first and without recursion (a key may be
    /// ten thousand couplets deep); a number that leads to a couplet still being followed is
    /// a way back. The couplets in the reverse order of leaving them are in order.
    fn put_in_order(&mut self) {
        if self.to.is_empty() {
            return;
        }
        let mut entered = vec![false; self.to.len()];
        let mut left = vec![false; self.to.len()];
        let mut trail = vec![(0_usize, 0_usize)];
        entered[0] = true;
        while let Some((couplet, side)) = trail.pop() {
            if side == 2 {
                left[couplet] = true;
                self.order.push(couplet);
                continue;
            }
            trail.push((couplet, side + 1));
            let To::Couplet(next) = self.to[couplet][side] else { continue };
            if entered[next] && !left[next] {
                self.to[couplet][side] = To::Back(next);
                continue;
            }
            if self.parents[next].last() != Some(&couplet) {
                self.parents[next].push(couplet);
            }
            if !entered[next] {
                entered[next] = true;
                trail.push((next, 0));
            }
        }
        self.order.reverse();
        for (place, &couplet) in self.order.iter().enumerate() {
            self.rank[couplet] = Some(place);
        }
    }
}

/// The first bearer of each number, and all later ones.
fn bearers(key: &Key) -> (BTreeMap<u32, usize>, Vec<usize>) {
    let (mut first, mut repeated) = (BTreeMap::new(), Vec::new());
    for (index, couplet) in key.couplets.iter().enumerate() {
        match first.entry(couplet.number) {
            Entry::Occupied(_) => repeated.push(index),
            Entry::Vacant(free) => {
                free.insert(index);
            }
        }
    }
    (first, repeated)
}

/// Where as many numbers are missing as are repeated, a slip of the pen is likelier than two
/// faults: the second 3 is the missing 4.
fn probable_bearers(
    key: &Key,
    first: &BTreeMap<u32, usize>,
    repeated: &[usize],
) -> BTreeMap<u32, usize> {
    let asked_for: BTreeSet<u32> = key
        .couplets
        .iter()
        .flat_map(|couplet| [&couplet.yes, &couplet.no])
        .filter_map(|destination| match destination {
            Destination::Couplet(number) if !first.contains_key(number) => Some(*number),
            _ => None,
        })
        .collect();
    if asked_for.len() != repeated.len() {
        return BTreeMap::new();
    }
    asked_for.into_iter().zip(repeated.iter().copied()).collect()
}
