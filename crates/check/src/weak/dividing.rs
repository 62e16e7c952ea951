//! How few characters can tell so many kinds apart: a bound for the search.
//!
//! Kinds that are all parted from each other (and, for two differences, all by two or more)
//! are put into the groups of each character (`pairs/grouped.rs`). A set of characters that
//! tells all of them apart must give each its own combination of groups; with any one
//! character left out as well, where two differences are wanted (R. C. Singleton, *Maximum
//! distance q-nary codes*, IEEE Trans. Inf. Theory 10, 1964, is the same thought). It bounds;
//! it finds nothing.

use spinney_model::CharacterIx;

use super::Compared;
use crate::bits::Bits;
use crate::pairs::Differences;

/// Some kinds that are all parted from each other, and how each character divides them.
pub(super) struct Dividing {
    kinds: usize,
    /// Character after character: the group of each of these kinds.
    groups: Vec<Vec<u32>>,
    /// Characters with the number of their groups, the most first.
    sizes: Vec<(usize, usize)>,
    wanted: u32,
}

impl Dividing {
    pub(super) fn new(
        differences: &Differences<'_, '_>,
        compared: &Compared,
        wanted: u32,
    ) -> Self {
        let kinds = all_apart(compared, wanted);
        let mut groups = Vec::new();
        let mut sizes = Vec::new();
        for character in 0..compared.characters {
            let all = differences.groups(CharacterIx(character));
            let here: Vec<u32> = kinds.iter().map(|kind| all[*kind]).collect();
            let mut distinct = here.clone();
            distinct.sort_unstable();
            distinct.dedup();
            sizes.push((distinct.len(), character));
            groups.push(here);
        }
        sizes.sort_by_key(|(size, character)| (std::cmp::Reverse(*size), *character));
        Self { kinds: kinds.len(), groups, sizes, wanted }
    }

    /// All of them together: no character has been chosen yet.
    pub(super) fn undivided(&self) -> Vec<u32> {
        vec![0; self.kinds]
    }

    /// The places after one more character was chosen.
    pub(super) fn divided(&self, places: &[u32], character: usize) -> Vec<u32> {
        let mut order: Vec<(u32, u32, usize)> = places
            .iter()
            .zip(&self.groups[character])
            .enumerate()
            .map(|(kind, (place, group))| (*place, *group, kind))
            .collect();
        order.sort_unstable();
        let mut divided = vec![0; places.len()];
        let mut name = 0;
        for (at, (place, group, kind)) in order.iter().enumerate() {
            if at > 0 && (order[at - 1].0, order[at - 1].1) != (*place, *group) {
                name += 1;
            }
            divided[*kind] = name;
        }
        divided
    }

    /// Whether so many more characters, none of these, could divide the largest place.
    pub(super) fn could(&self, places: &[u32], taken: [&Bits; 2], room: usize) -> bool {
        let mut counts = vec![0_usize; places.len()];
        places.iter().for_each(|place| counts[*place as usize] += 1);
        let largest = counts.into_iter().max().unwrap_or(0);
        if largest < 2 {
            return true;
        }
        let spare = self.wanted as usize - 1;
        let free = self.sizes.iter().filter(|(_, c)| taken.iter().all(|bits| !bits.has(*c)));
        let mut combinations = 1_usize;
        for (size, _) in free.take(room).skip(spare) {
            combinations = combinations.saturating_mul(*size);
        }
        room > spare && combinations >= largest
    }
}

/// Kinds all parted from each other by so many characters; those that many are parted from
/// come first.
fn all_apart(compared: &Compared, wanted: u32) -> Vec<usize> {
    let apart = |one: usize, other: usize| compared.apart(one, other) >= wanted;
    let company = |one: usize| {
        (0..compared.kinds).filter(|other| *other != one && !apart(one, *other)).count()
    };
    let mut order: Vec<(usize, usize)> =
        (0..compared.kinds).map(|kind| (company(kind), kind)).collect();
    order.sort_unstable();
    let mut chosen: Vec<usize> = Vec::new();
    for (_, kind) in order {
        if chosen.iter().all(|other| apart(kind, *other)) {
            chosen.push(kind);
        }
    }
    chosen
}
