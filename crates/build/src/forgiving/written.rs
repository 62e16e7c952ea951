//! The key that a search found, numbered, with its second places and what each of them saves.
//!
//! What comes out right is added up again from the key itself, kind by kind.

use std::collections::BTreeMap;

use num_traits::Zero;
use spinney_model::{
    Answer, BothWays, Couplet, Destination, End, Key, Share, TaxonIx, Wording,
};

use super::node::{Node, Part};
use super::search::{Choice, Level, SecondPlaces};
use crate::candidates::Candidate;
use crate::read_off;

/// Lays the key of a node out. What comes out right is counted in the numbers of that node.
pub(super) fn write(
    search: &mut SecondPlaces,
    root: &Node,
    level: Level,
) -> (Key, Vec<BothWays>, Share) {
    let total: Share = Share::from_integer(root.masses.iter().sum());
    let mut writing = Writing { search, total, key: Key::default(), both_ways: Vec::new() };
    let (_, right) = writing.lay(root, Share::from_integer(1), level, None);
    let Writing { key, mut both_ways, .. } = writing;
    both_ways.sort_by_key(|place| (place.couplet, place.taxon));
    (key, both_ways, right.values().sum())
}

struct Writing<'a> {
    search: &'a mut SecondPlaces,
    /// All finds.
    total: Share,
    key: Key,
    both_ways: Vec<BothWays>,
}

/// What comes out right of every kind.
type Right = BTreeMap<usize, Share>;

impl Writing<'_> {
    /// Lays a node out of which one unit counts `scale`.
    fn lay(
        &mut self,
        node: &Node,
        scale: Share,
        level: Level,
        back: Option<u32>,
    ) -> (Destination, Right) {
        let Some((question, sent, levels)) = self.choice(node, level) else {
            let kinds = self.search.table.kinds(node);
            let right = kinds.iter().zip(&node.masses);
            let right = right.map(|(kind, mass)| (*kind, scale * *mass)).collect();
            let end = End::of(kinds.into_iter().map(TaxonIx));
            return (Destination::End(end), right);
        };
        let table = &self.search.table;
        let puts = table.put_all(node, true);
        let put = puts.into_iter().find(|put| put.question == question);
        let put = put.expect("a question that was chosen can be put");
        let parts = table.part(node, &put, &sent).expect("these numbers did fit in the search");
        let (yes, no) = put.heaps.clone();
        let chosen =
            Candidate { question, yes, no, own: 0, yes_lower: 0, no_lower: 0, guess: 0 };
        let ask = read_off::worded(&table.solver, &node.heap, &chosen);
        let at = self.key.couplets.len();
        let number = at as u32 + 1;
        self.key.couplets.push(Couplet {
            number,
            back,
            wording: Wording::Question(String::new()),
            ask: Some(ask),
            yes: Destination::Missing,
            no: Destination::Missing,
            kept: false,
            line: None,
        });
        let [Part { node: yes, factor: in_yes }, Part { node: no, factor: in_no }] = &parts;
        let (to, mut right) = self.lay(yes, scale * in_yes, levels.0, Some(number));
        self.key.couplets[at].yes = to;
        let (to, more) = self.lay(no, scale * in_no, levels.1, Some(number));
        self.key.couplets[at].no = to;
        for kind in &sent {
            let (after, side) = if put.sides.yes.has(*kind) {
                (Answer::No, &more)
            } else {
                (Answer::Yes, &right)
            };
            let saves = side.get(kind).copied().unwrap_or_else(Share::zero) / self.total;
            let taxon = TaxonIx(*kind);
            self.both_ways.push(BothWays { couplet: number, taxon, after, saves });
        }
        for (kind, share) in more {
            *right.entry(kind).or_insert_with(Share::zero) += share;
        }
        (Destination::Couplet(number), right)
    }

    /// The question that is asked of a node, who is sent both ways, and the levels of the sides.
    fn choice(
        &mut self,
        node: &Node,
        level: Level,
    ) -> Option<(usize, Vec<usize>, (Level, Level))> {
        let known = self.search.solve(node, level, None)?;
        match known.best?.1 {
            Choice::End => None,
            Choice::Plainly => self.choice(node, 0),
            Choice::Ask { question, sent, levels } => {
                Some((question, sent.into_iter().map(usize::from).collect(), levels))
            }
        }
    }
}
