//! What a large heap takes at the very least, by looking ahead where the bound is weakest.
//!
//! The least steps of a side are Huffman's over the groups that must be parted, times the
//! cheapest question that is left. Huffman supposes that questions halve every heap and that no
//! kind goes both ways. Looked at one question ahead, the bound knows what the best question
//! really does to this heap: it counts a kind that goes both ways on both sides, with its two
//! shares. So the bound of a heap is the least, over all questions that may be asked, of
//! flow × cost + the bounds of the two sides, and each side may be looked at in the same way.
//!
//! **Order.** Only the question with the least bound can raise the bound of the whole, so that
//! one is followed down to a side that was not looked at yet (the one with more flow for each
//! time it was visited), and bounds are brought up again. At any time the bound of the whole
//! holds. Heaps that are reached by the same answers in another order are the same heap.
//!
//! **Source**: best-first search of AND/OR graphs (Martelli and Montanari 1973; Nilsson's AO*).

use std::sync::Arc;

use rustc_hash::FxHashMap;

use crate::bound::Splits;
use crate::large::first::{Grower, Grown};
use crate::large::heap::{Flows, LargeHeap};
use crate::state_space::StateSpace;

/// A question that may be asked of a large heap, with the bounds of its sides.
#[derive(Clone, Copy)]
pub(crate) struct Choice {
    /// Its place in the large heap.
    pub(crate) at: u32,
    pub(crate) question: u32,
    pub(crate) own: u64,
    pub(crate) yes: u64,
    pub(crate) no: u64,
}

impl Choice {
    pub(crate) fn bound(&self) -> u64 {
        self.own + self.yes + self.no
    }
}

/// Every question that may be asked of a large heap.
pub(crate) fn choices(large: &LargeHeap, splits: &mut Splits) -> Vec<Choice> {
    let flow = large.flow();
    let cheapest = large.asks.iter().map(|asked| asked.cost).min().unwrap_or(1);
    let split_off = large.split_off();
    let mut least = |flows: Flows| least_steps(flows, split_off, splits) * cheapest;
    let admitted = (0..large.asks.len()).filter(|at| large.admits(*at));
    admitted
        .map(|at| {
            let (yes, no) = large.sides(at);
            Choice {
                at: at as u32,
                question: large.asks[at].question,
                own: flow * large.asks[at].cost,
                yes: least(yes),
                no: least(no),
            }
        })
        .collect()
}

/// The least steps to groups with these flows: Huffman's, or those of a comb where no question
/// splits many off (see `bound`; of a group that goes both ways the nearest end is counted).
fn least_steps(flows: Flows, split_off: usize, splits: &mut Splits) -> u64 {
    let n: usize = flows.iter().map(|(_, count)| *count as usize).sum();
    let least = flows.first().map_or(0, |(flow, _)| *flow);
    let comb = if n >= 4 && 2 * split_off < n { splits.least_steps(n, split_off) } else { 0 };
    huffman(flows).max(least * comb as u64)
}

/// The least sum of flow × depth over all binary trees with so many of each flow, given in
/// rising order: all pairs of the least flow are joined at once.
pub(crate) fn huffman(mut flows: Flows) -> u64 {
    let mut sum = 0;
    let mut at = 0;
    while at < flows.len() {
        let (flow, count) = flows[at];
        let pairs = count / 2;
        if pairs > 0 {
            sum += 2 * flow * u64::from(pairs);
            put(&mut flows, at + 1, 2 * flow, pairs);
        }
        if count % 2 == 0 {
            at += 1;
            continue;
        }
        let Some(next) = flows.get_mut(at + 1) else { break };
        let joined = flow + next.0;
        sum += joined;
        next.1 -= 1;
        let emptied = next.1 == 0;
        put(&mut flows, at + 1, joined, 1);
        at += if emptied { 2 } else { 1 };
    }
    sum
}

/// Adds to the flows from a place on.
fn put(flows: &mut Flows, from: usize, flow: u64, count: u32) {
    let mut at = from;
    while flows.get(at).is_some_and(|level| level.0 < flow) {
        at += 1;
    }
    match flows.get_mut(at) {
        Some(level) if level.0 == flow => level.1 += count,
        _ => flows.insert(at, (flow, count)),
    }
}

/// A heap that was thought of.
struct Node {
    lower: u64,
    flow: u64,
    /// The heap above, the question and the answer.
    above: Option<(u32, u32, bool)>,
    /// None: not looked at yet.
    next: Option<Vec<Next>>,
    visits: u32,
    /// No more to be found out below.
    closed: bool,
}

struct Next {
    choice: Choice,
    sides: Option<(u32, u32)>,
    closed: bool,
}

/// The heaps that were thought of.
pub(crate) struct Ahead {
    root: Arc<LargeHeap>,
    nodes: Vec<Node>,
    /// By the answers that lead there.
    by_answers: FxHashMap<Vec<(u32, bool)>, u32>,
    large_heaps: FxHashMap<u32, Arc<LargeHeap>>,
    splits: Splits,
    bytes: usize,
    /// What the thought-of heaps fill, in bytes.
    filled: usize,
    /// What heaps that were thought of may fill, and large heaps that are kept for later.
    room: (u64, u64),
    pub(crate) work: u64,
}

impl Ahead {
    pub(crate) fn new(root: Arc<LargeHeap>, room: (u64, u64)) -> Self {
        let flow = root.flow();
        let all = root.asks.iter().map(|asked| asked.cost).min().unwrap_or(1);
        let lower = huffman(root.all()) * all;
        let first = Node { lower, flow, above: None, next: None, visits: 0, closed: false };
        let by_answers = FxHashMap::from_iter([(Vec::new(), 0)]);
        let (nodes, large_heaps) = (vec![first], FxHashMap::default());
        let splits = Splits::default();
        Self {
            root,
            nodes,
            by_answers,
            large_heaps,
            splits,
            bytes: 0,
            filled: 0,
            room,
            work: 0,
        }
    }

    /// What it fills, in bytes.
    pub(crate) fn bytes(&self) -> u64 {
        (self.bytes + self.filled) as u64
    }

    /// Whether no more heaps may be thought of.
    pub(crate) fn full(&self) -> bool {
        self.filled as u64 >= self.room.0
    }

    /// What the whole takes at least.
    pub(crate) fn lower(&self) -> u64 {
        self.nodes[0].lower
    }

    /// Looks at one more heap; false: there is nothing left to look at, `enough` is reached, or
    /// no more heaps may be thought of.
    pub(crate) fn look(&mut self, space: &StateSpace, enough: u64) -> bool {
        let root = &self.nodes[0];
        if root.closed || root.lower >= enough || self.full() {
            return false;
        }
        let mut way: Vec<(u32, usize)> = Vec::new();
        let mut node = 0;
        loop {
            self.nodes[node as usize].visits += 1;
            if self.nodes[node as usize].next.is_none() {
                self.open(space, node);
                break;
            }
            let Some(at) = self.weakest(node) else { break };
            way.push((node, at));
            let (yes, no) = self.sides(space, node, at);
            let promise = |side: u32| {
                let side = &self.nodes[side as usize];
                (!side.closed, side.flow / u64::from(side.visits + 1))
            };
            node = if promise(yes) >= promise(no) { yes } else { no };
            if self.nodes[node as usize].closed {
                break;
            }
        }
        while let Some((node, at)) = way.pop() {
            self.bring_up(node, at);
            self.weakest(node);
        }
        true
    }

    /// The question with the least bound, bounds brought up to date; the bound of the heap is
    /// raised to it. None: nothing can be asked, or nothing more can be found out.
    fn weakest(&mut self, node: u32) -> Option<usize> {
        loop {
            let here = &self.nodes[node as usize];
            let next = here.next.as_ref()?;
            let least = (0..next.len()).min_by_key(|at| (next[*at].choice.bound(), *at));
            let Some(at) = least else {
                self.nodes[node as usize].closed = true;
                return None;
            };
            let before = next[at].choice.bound();
            self.bring_up(node, at);
            let here = &mut self.nodes[node as usize];
            let next = here.next.as_ref()?;
            if next[at].choice.bound() > before {
                continue;
            }
            here.lower = here.lower.max(before);
            here.closed = next[at].closed;
            return (!here.closed).then_some(at);
        }
    }

    fn bring_up(&mut self, node: u32, at: usize) {
        let Some(next) = self.nodes[node as usize].next.as_ref() else { return };
        let Some((yes, no)) = next[at].sides else { return };
        let (yes, no) = (&self.nodes[yes as usize], &self.nodes[no as usize]);
        let (lowers, closed) = ((yes.lower, no.lower), yes.closed && no.closed);
        let Some(next) = self.nodes[node as usize].next.as_mut() else { return };
        let choice = &mut next[at].choice;
        (choice.yes, choice.no) = (choice.yes.max(lowers.0), choice.no.max(lowers.1));
        next[at].closed = closed;
    }

    /// Looks at every question of a heap.
    fn open(&mut self, space: &StateSpace, node: u32) {
        let large = self.large(space, node);
        self.work += large.work();
        let choices = choices(&large, &mut self.splits);
        self.filled += choices.len() * size_of::<Next>();
        let here = &mut self.nodes[node as usize];
        if choices.is_empty() {
            (here.lower, here.closed) = (0, true);
        }
        let next =
            choices.into_iter().map(|choice| Next { choice, sides: None, closed: false });
        here.next = Some(next.collect());
        self.weakest(node);
    }

    fn sides(&mut self, space: &StateSpace, node: u32, at: usize) -> (u32, u32) {
        let Some(next) = &self.nodes[node as usize].next else { return (node, node) };
        if let Some(sides) = next[at].sides {
            return sides;
        }
        let choice = next[at].choice;
        let large = self.large(space, node);
        let make = |ahead: &mut Self, yes: bool| {
            let mut answers = vec![(choice.question, yes)];
            let mut above = ahead.nodes[node as usize].above;
            while let Some((node, question, yes)) = above {
                answers.push((question, yes));
                above = ahead.nodes[node as usize].above;
            }
            answers.sort_unstable();
            let new = ahead.nodes.len() as u32;
            let id = *ahead.by_answers.entry(answers).or_insert(new);
            if id == new {
                // The answers stand in a list of their own, and in the map.
                ahead.filled += size_of::<Node>() + 128;
                let (flow, alone) = large.side_flow(choice.at as usize, yes);
                let lower = if yes { choice.yes } else { choice.no };
                ahead.nodes.push(Node {
                    lower,
                    flow,
                    above: Some((node, choice.question, yes)),
                    next: None,
                    visits: 0,
                    closed: alone,
                });
            }
            id
        };
        let sides = (make(self, true), make(self, false));
        if let Some(next) = self.nodes[node as usize].next.as_mut() {
            next[at].sides = Some(sides);
        }
        sides
    }

    /// The key by the least bounds, grown on where nothing was looked at yet.
    pub(crate) fn key(&mut self, grower: &mut Grower<'_>) -> Grown {
        self.key_of(0, grower)
    }

    fn key_of(&mut self, node: u32, grower: &mut Grower<'_>) -> Grown {
        self.weakest(node);
        let here = &self.nodes[node as usize];
        let Some(next) = &here.next else {
            if here.closed {
                return Grown::end();
            }
            let large = self.large(grower.space, node);
            return grower.grow(&large, 1);
        };
        let Some(next) = next.iter().min_by_key(|next| next.choice.bound()) else {
            return Grown::end();
        };
        let choice = next.choice;
        let sides = match next.sides {
            Some((yes, no)) => (self.key_of(yes, grower), self.key_of(no, grower)),
            None => {
                let large = self.large(grower.space, node);
                let (yes, no) = grower.sides(&large, &choice);
                (grower.grow(&yes, 1), grower.grow(&no, 1))
            }
        };
        Grown::joined(&choice, sides)
    }

    fn large(&mut self, space: &StateSpace, node: u32) -> Arc<LargeHeap> {
        let Some((above, question, yes)) = self.nodes[node as usize].above else {
            return self.root.clone();
        };
        if let Some(large) = self.large_heaps.get(&node) {
            return large.clone();
        }
        let above = self.large(space, above);
        self.work += above.work() / 2;
        let at = above.asks.iter().position(|asked| asked.question == question);
        let at = at.expect("a question that was asked stands in the large it was asked of");
        let large = Arc::new(above.side(space, at, yes));
        if (self.bytes + large.bytes()) as u64 > self.room.1 {
            self.large_heaps.clear();
            self.bytes = 0;
        }
        self.bytes += large.bytes();
        self.large_heaps.insert(node, large.clone());
        large
    }
}
