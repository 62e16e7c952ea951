//! Sharing kinds out among groups: sets in which the table parts every pair.
//!
//! From how far apart any two kinds are to a set for each group, one group after the other.
//! A set is grown kind by kind. The kind taken next is the one that lies in the fewest sets so
//! far; of those, the one that is parted from somebody in the set by the fewest characters, so
//! that look-alikes come together; then the one with the smaller sum of distances; then the
//! first in the table. Where nobody can join, the last choice is taken back and the next is
//! tried, so a set is found wherever there is one (a complete search for a clique, depth
//! first; the first descent is the greedy answer), unless the steps run out. At the end, kinds
//! that lie in no set are taken in by exchange for kinds that lie in several. To share out anew
//! is to begin with another kind.

use spinney_check::Apart;
use spinney_model::TaxonIx;

/// Choices that are tried for one set of one size, so that a page with twelve groups ends.
const MOST_STEPS: u32 = 20_000;

/// A group's set.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Set {
    /// In the order of the table.
    pub taxa: Vec<TaxonIx>,
    /// Why it is smaller than wanted; None: it is not.
    pub short: Option<Short>,
}

/// Why a set is smaller than wanted.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Short {
    /// The table does not part so many kinds from each other.
    NotParted,
    /// None was found in so many steps; there may be one.
    NotFound,
}

/// Ways to share out that are looked for, so that a page ends; a class asks for two or three.
const MOST_WAYS: usize = 12;

/// The sets of the first proposal, of the second, and so on; after the last that there is, the
/// first comes again.
pub fn share_anew(apart: &Apart, groups: usize, size: usize, time: usize) -> Vec<Set> {
    let mut ways: Vec<Vec<Set>> = Vec::new();
    let same = |one: &Vec<Set>, other: &Vec<Set>| {
        one.iter().all(|set| other.contains(set)) && other.iter().all(|set| one.contains(set))
    };
    for from in 0..apart.kinds().clamp(1, MOST_WAYS) {
        let way = share(apart, groups, size, from);
        if !ways.iter().any(|known| same(known, &way)) {
            ways.push(way);
        }
        if ways.len() > time {
            break;
        }
    }
    ways.swap_remove(time % ways.len())
}

/// A set for each group; `from` is the place of the kind that a set begins with, among those
/// that lie in the fewest sets.
pub fn share(apart: &Apart, groups: usize, size: usize, from: usize) -> Vec<Set> {
    let mut used = vec![0; apart.kinds()];
    let mut sets = Vec::new();
    for _ in 0..groups {
        let set = set(apart, &used, size, from);
        set.taxa.iter().for_each(|taxon| used[taxon.0] += 1);
        sets.push(set);
    }
    take_in(apart, &mut sets, &mut used);
    sets
}

/// Brings kinds that lie in no set into one, each in place of a kind that lies in several, or
/// of one that takes such a place in another set. Whom no single such exchange helps stays out.
fn take_in(apart: &Apart, sets: &mut [Set], used: &mut [usize]) {
    for out in (0..apart.kinds()).map(TaxonIx) {
        if used[out.0] > 0 {
            continue;
        }
        let Some(exchanges) = exchange(apart, sets, used, out) else { continue };
        for (set, leaves, comes) in exchanges {
            let taxa = &mut sets[set].taxa;
            taxa.retain(|taxon| *taxon != leaves);
            taxa.push(comes);
            taxa.sort();
            used[leaves.0] -= 1;
            used[comes.0] += 1;
        }
    }
}

/// In a set, one leaves and one comes.
type Exchange = (usize, TaxonIx, TaxonIx);

fn exchange(
    apart: &Apart,
    sets: &[Set],
    used: &[usize],
    out: TaxonIx,
) -> Option<Vec<Exchange>> {
    let fits = |set: usize, leaves: TaxonIx, comes: TaxonIx| {
        let stay = sets[set].taxa.iter().filter(|taxon| **taxon != leaves);
        stay.copied().all(|taxon| taxon != comes && apart.by(taxon, comes) > 0)
    };
    let places: Vec<(usize, TaxonIx)> = sets
        .iter()
        .enumerate()
        .flat_map(|(at, set)| set.taxa.iter().map(move |taxon| (at, *taxon)))
        .collect();
    let open = || places.iter().filter(|(_, taxon)| used[taxon.0] > 1);
    if let Some(&(set, leaves)) = open().find(|(set, leaves)| fits(*set, *leaves, out)) {
        return Some(vec![(set, leaves, out)]);
    }
    places.iter().filter(|(set, leaves)| fits(*set, *leaves, out)).find_map(|&(set, moves)| {
        let there =
            |(other, leaves): &&(usize, TaxonIx)| *other != set && fits(*other, *leaves, moves);
        let &(other, leaves) = open().find(there)?;
        Some(vec![(set, moves, out), (other, leaves, moves)])
    })
}

/// One set; where none is so large, the largest there is.
fn set(apart: &Apart, used: &[usize], size: usize, from: usize) -> Set {
    let mut short = None;
    for wanted in (1..=size).rev() {
        let mut growing =
            Growing { apart, used, wanted, from, taxa: Vec::new(), steps: MOST_STEPS };
        let everybody = (0..apart.kinds()).map(TaxonIx).collect();
        if growing.grow(everybody) {
            growing.taxa.sort();
            return Set { taxa: growing.taxa, short };
        }
        let why = if growing.steps == 0 { Short::NotFound } else { Short::NotParted };
        short = match short {
            Some(Short::NotFound) => short,
            _ => Some(why),
        };
    }
    Set { taxa: Vec::new(), short }
}

/// A set under way.
struct Growing<'a> {
    apart: &'a Apart,
    used: &'a [usize],
    wanted: usize,
    /// Where to begin among the kinds that lie in the fewest sets.
    from: usize,
    taxa: Vec<TaxonIx>,
    /// Choices that may still be tried.
    steps: u32,
}

impl Growing<'_> {
    /// Whether it can grow to what is wanted by these, each parted from all that are in it.
    fn grow(&mut self, open: Vec<TaxonIx>) -> bool {
        if self.taxa.len() == self.wanted {
            return true;
        }
        let mut ranked: Vec<_> = open.iter().map(|taxon| self.rank(*taxon, &open)).collect();
        ranked.sort_unstable();
        if self.taxa.is_empty() {
            let fewest = ranked.iter().take_while(|(used, ..)| *used == ranked[0].0).count();
            ranked[..fewest].rotate_left(self.from % fewest.max(1));
        }
        let open: Vec<TaxonIx> = ranked.into_iter().map(|(.., taxon)| taxon).collect();
        for at in 0..open.len() {
            if self.taxa.len() + open.len() - at < self.wanted || self.steps == 0 {
                return false;
            }
            self.steps -= 1;
            let next = open[at];
            let parted = |other: &&TaxonIx| self.apart.by(next, **other) > 0;
            let left = open[at + 1..].iter().filter(parted).copied().collect();
            self.taxa.push(next);
            if self.grow(left) {
                return true;
            }
            self.taxa.pop();
        }
        false
    }

    /// Who is taken first. The first of a set is a kind with a look-alike among the others.
    fn rank(&self, taxon: TaxonIx, open: &[TaxonIx]) -> (usize, usize, usize, TaxonIx) {
        let others = if self.taxa.is_empty() { open } else { &self.taxa[..] };
        let far = others.iter().map(|other| self.apart.by(taxon, *other));
        let far = far.filter(|distance| *distance > 0);
        let nearest = far.clone().min().unwrap_or(usize::MAX);
        (self.used[taxon.0], nearest, far.sum(), taxon)
    }
}

/// The look-alikes of a set: pairs that at most two characters part, the closest first.
pub fn look_alikes(apart: &Apart, set: &Set) -> Vec<(usize, TaxonIx, TaxonIx)> {
    let mut pairs = Vec::new();
    for (at, one) in set.taxa.iter().enumerate() {
        for other in &set.taxa[at + 1..] {
            pairs.push((apart.by(*one, *other), *one, *other));
        }
    }
    pairs.retain(|(distance, ..)| *distance <= 2);
    pairs.sort();
    pairs
}

/// Pairs that the table does not part: they never share a set.
pub fn never_together(apart: &Apart) -> Vec<(TaxonIx, TaxonIx)> {
    let all = (0..apart.kinds()).map(TaxonIx);
    all.flat_map(|one| (one.0 + 1..apart.kinds()).map(move |other| (one, TaxonIx(other))))
        .filter(|(one, other)| apart.by(*one, *other) == 0)
        .collect()
}

#[cfg(test)]
mod tests;
