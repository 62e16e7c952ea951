//! The proof, once more and plainly: the best that any key of a small table can reach.
//!
//! Every question of every node is tried (sections 2 to 7 of `docs/KEY.md`), and what is best
//! below a node is remembered. There is no bound and no order of promise, so that nothing but
//! the definition decides; in return it ends with tables of some dozen kinds. Work is counted
//! in nodes, never in seconds. From a table and wishes to the best numbers; it makes no key.

use std::collections::{BTreeMap, BTreeSet};
use std::rc::Rc;

use spinney_model::{CharacterIx, Claim, Early, Kept, Share};

use crate::question::Question;
use crate::values::Values;
use crate::walked_key::WalkedKey;

pub(super) mod asks;
mod front;
mod node;

pub(super) use front::Part;

use front::{Front, Measure, Measures};
use node::{Node, Split};

/// How often a kind is asked a question, or two measures are put together, for every node that
/// may be looked at: what bounds the time where nodes are large.
const WORK_A_NODE: usize = 200;

/// More kinds than this are no small table: the number of nodes doubles with a kind.
const MOST_KINDS: usize = 40;

/// What a replay came to.
pub(super) struct Replayed {
    /// How many nodes were looked at.
    pub(super) nodes: usize,
    /// The best numbers in the order of [`Replayed::parts`]; None: not looked at to the end.
    pub(super) best: Option<Vec<Share>>,
    /// What the numbers stand for.
    pub(super) parts: Vec<Part>,
}

/// Looks for the best that a key can reach under the wishes of a claim.
pub(super) fn replay(seen: &WalkedKey<'_>, claim: &Claim) -> Replayed {
    let parts = front::parts(&claim.wishes);
    let nothing = |parts| Replayed { nodes: 0, best: None, parts };
    if seen.matrix.taxa().len() > MOST_KINDS {
        return nothing(parts);
    }
    let Some((root, whole)) = Node::root(seen.values) else { return nothing(parts) };
    let mut replay = Replay {
        values: seen.values,
        left_out: seen.left_out,
        order: &claim.wishes.order,
        allow_touch: claim.wishes.allow_touch,
        measures: Measures::of(seen.matrix, &parts),
        memo: BTreeMap::new(),
        most_nodes: seen.settings.replay_nodes,
        work: 0,
    };
    let front = replay.with_kept(root, &claim.wishes.kept);
    let best = front.and_then(|front| front.best()).map(|best| {
        let numbers = parts.iter().zip(best);
        numbers.map(|(part, number)| part.share(number, whole)).collect()
    });
    Replayed { nodes: replay.memo.len(), best, parts }
}

struct Replay<'a> {
    values: &'a Values<'a>,
    left_out: &'a BTreeSet<CharacterIx>,
    order: &'a [CharacterIx],
    allow_touch: bool,
    measures: Measures<'a>,
    /// What is best below a node, by the node and the words that were met before it.
    memo: BTreeMap<(Node, u128), Rc<Front>>,
    most_nodes: usize,
    work: usize,
}

impl Replay<'_> {
    /// The best below a node at which questions are to be kept; None: too much to look at, or one
    /// of them cannot be asked.
    fn with_kept(&mut self, root: Node, kept: &[Kept]) -> Option<Rc<Front>> {
        if kept.is_empty() {
            return self.best(&root, 0);
        }
        // Those after a question stand behind it: forwards to the heaps, backwards to what is
        // best.
        let mut heaps: Vec<Option<(Node, u128)>> = vec![None; kept.len()];
        heaps[0] = Some((root, 0));
        let mut asked = Vec::with_capacity(kept.len());
        for (at, wanted) in kept.iter().enumerate() {
            let (node, met) = heaps[at].take()?;
            let question = Question::asks(self.values.matrix, &wanted.ask)?;
            let split = node.ask(self.values, &question, None)?;
            let (own, met) = self.measures.own(&node, &question, met)?;
            let mut behind = [None, None];
            let sides = [(split.yes, wanted.yes), (split.no, wanted.no)];
            for (best, (side, after)) in behind.iter_mut().zip(sides) {
                match after {
                    Some(after) => heaps[after] = Some((side, met)),
                    None => *best = Some(self.best(&side, met)?),
                }
            }
            asked.push((own, behind));
        }
        let mut fronts: Vec<Option<Rc<Front>>> = vec![None; kept.len()];
        for (at, (own, [yes, no])) in asked.into_iter().enumerate().rev() {
            let yes = yes.or_else(|| fronts[kept[at].yes?].take())?;
            let no = no.or_else(|| fronts[kept[at].no?].take())?;
            let mut front = Front::default();
            front.add_all(&self.measures, &own, &yes, &no)?;
            fronts[at] = Some(Rc::new(front));
        }
        fronts.swap_remove(0)
    }

    fn best(&mut self, node: &Node, met: u128) -> Option<Rc<Front>> {
        let name = (node.clone(), met);
        if let Some(known) = self.memo.get(&name) {
            return Some(Rc::clone(known));
        }
        if self.memo.len() >= self.most_nodes {
            return None;
        }
        let asks = self.admissible(node)?;
        let mut front = Front::default();
        if asks.is_empty() {
            front.add(&self.measures, Measure::end(&self.measures));
        }
        for (question, split) in asks {
            let (own, met) = self.measures.own(node, &question, met)?;
            let yes = self.best(&split.yes, met)?;
            let no = self.best(&split.no, met)?;
            self.spend(yes.len() * no.len())?;
            front.add_all(&self.measures, &own, &yes, &no)?;
        }
        let front = Rc::new(front);
        self.memo.insert(name, Rc::clone(&front));
        Some(front)
    }

    /// None: there is no work left.
    fn spend(&mut self, work: usize) -> Option<()> {
        self.work += work;
        (self.work <= self.most_nodes.saturating_mul(WORK_A_NODE)).then_some(())
    }

    /// Every question that the wishes allow here (sections 3 to 5); none: an end. Nobody is
    /// sent to touch what may hurt while something else separates; the first character of the
    /// order that can be asked about is.
    fn admissible(&mut self, node: &Node) -> Option<Vec<(Question, Split)>> {
        let mut found = Vec::new();
        if node.kinds().len() < 2 {
            return Some(found);
        }
        for character in self.values.matrix.character_indices() {
            if self.left_out.contains(&character) {
                continue;
            }
            let gap = asks::gap(self.values.matrix.character(character));
            for question in asks::of(self.values, node, character) {
                self.spend(node.kinds().len())?;
                let split = node.ask(self.values, &question, Some(gap));
                found.extend(split.filter(|split| split.parts).map(|split| (question, split)));
            }
        }
        let matrix = self.values.matrix;
        let touch = |at: CharacterIx| matrix.character(at).by_touch;
        let may_hurt = |kind: &node::Kind| matrix.taxon(kind.taxon).caution.is_some();
        let otherwise = found.iter().any(|(question, _)| !touch(question.character));
        if !self.allow_touch && otherwise && node.kinds().iter().any(may_hurt) {
            found.retain(|(question, _)| !touch(question.character));
        }
        let first = self
            .order
            .iter()
            .find(|at| found.iter().any(|(question, _)| question.character == **at));
        if let Some(first) = first {
            found.retain(|(question, _)| question.character == *first);
        }
        Some(found)
    }
}

/// Whether an early wish is over at a node.
fn is_over(node: &Node, early: Early) -> bool {
    match early {
        Early::Part(one, other) => !node.has(one) || !node.has(other),
        Early::Leave(taxon) => !node.has(taxon),
    }
}
