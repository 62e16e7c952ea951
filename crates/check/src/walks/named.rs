//! Where a kind's name stands below a couplet: from one kind to the couplets that lead to it.
//!
//! A kind named nowhere may have been meant to stand where a number leads nowhere; then it is
//! looked for there. Nothing is read from the table.

use spinney_model::{Answer, TaxonIx};

use crate::tree::{ANSWERS, To, Tree};

/// The ends at which each kind stands, and the couplets above those of one kind.
pub(crate) struct Named {
    /// For each kind, the reachable ends that name it.
    pub(crate) ends: Vec<Vec<(usize, Answer)>>,
    /// For each kind, whether an end that nobody can get to names it.
    pub(crate) beyond_reach: Vec<bool>,
    /// Couplets with an answer that loses everybody.
    holes: Vec<usize>,
    /// The last kind looked for below whose name stands, for each couplet.
    stamp: Vec<usize>,
    now: usize,
    in_holes: bool,
}

impl Named {
    /// Reads the names at all ends.
    pub(crate) fn new(tree: &Tree<'_>, taxa: usize) -> Self {
        let mut named = Self {
            ends: vec![Vec::new(); taxa],
            beyond_reach: vec![false; taxa],
            holes: Vec::new(),
            stamp: vec![0; tree.to.len()],
            now: 0,
            in_holes: false,
        };
        for couplet in 0..tree.to.len() {
            let reached = tree.rank[couplet].is_some();
            for answer in ANSWERS {
                let to = tree.to(couplet, answer);
                if reached && (to.is_hole() || to == To::Strange) {
                    named.holes.push(couplet);
                }
                for taxon in tree.end(couplet, answer).iter().flat_map(|end| &end.taxa) {
                    if taxon.0 >= taxa {
                        continue;
                    }
                    if reached {
                        named.ends[taxon.0].push((couplet, answer));
                    } else {
                        named.beyond_reach[taxon.0] = true;
                    }
                }
            }
        }
        named
    }

    /// Whether no end that can be got to names the kind.
    pub(crate) fn nowhere(&self, taxon: TaxonIx) -> bool {
        self.ends[taxon.0].is_empty()
    }

    /// Marks the couplets below which the kind's name stands.
    pub(crate) fn look_for(&mut self, taxon: TaxonIx, tree: &Tree<'_>) {
        self.now = taxon.0 + 1;
        self.in_holes = self.nowhere(taxon);
        let mut above: Vec<usize> = if self.in_holes {
            self.holes.clone()
        } else {
            self.ends[taxon.0].iter().map(|(couplet, _)| *couplet).collect()
        };
        while let Some(couplet) = above.pop() {
            if self.stamp[couplet] != self.now {
                self.stamp[couplet] = self.now;
                above.extend(&tree.parents[couplet]);
            }
        }
    }

    /// Whether the name of the kind looked for stands somewhere below this couplet.
    pub(crate) fn below(&self, couplet: usize) -> bool {
        self.stamp[couplet] == self.now
    }

    /// Whether it stands where this answer leads, or below.
    pub(crate) fn beyond(
        &self,
        couplet: usize,
        answer: Answer,
        taxon: TaxonIx,
        tree: &Tree<'_>,
    ) -> bool {
        match tree.to(couplet, answer) {
            To::Couplet(next) => self.below(next),
            To::End => tree.end(couplet, answer).is_some_and(|end| end.taxa.contains(&taxon)),
            To::Strange | To::Back(_) | To::Nowhere(_) | To::Nothing => self.in_holes,
        }
    }
}
