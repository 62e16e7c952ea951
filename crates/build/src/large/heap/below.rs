//! The large heap that an answer leaves, made from the large heap above it.

use rustc_hash::FxHashMap;
use spinney_model::CharacterIx;

use super::{Both, LargeHeap, LargeQuestion, SHARE, has_bit, set_bit, within};
use crate::cost::Effort;
use crate::heap::Remains;
use crate::state_space::{Question, StateSpace};

/// Where the kinds of the large heap above stand here.
struct Moved {
    /// By their place above: their place here, or [`GONE`].
    place: Vec<u32>,
    /// By their place here: their place above.
    from: Vec<u32>,
}

const GONE: u32 = u32::MAX;

/// Cells that the answer cut, by their slot, with what is left of them.
type Cut = FxHashMap<u32, Remains>;

/// Questions that do the same for good: what they do, and the place of the cheapest.
type Same = FxHashMap<(Option<CharacterIx>, Vec<u64>), usize>;

impl LargeHeap {
    /// The heap that an answer leaves.
    pub(crate) fn side(&self, space: &StateSpace, at: usize, yes: bool) -> Self {
        let asked = &self.asks[at];
        let base = 3 * self.words * at + if yes { self.words } else { 0 };
        let gone = &self.bits[base..base + self.words];
        let mut both = asked.both.iter().peekable();
        let mut moved = Moved { place: vec![GONE; self.kinds.len()], from: Vec::new() };
        let (mut kinds, mut flows) = (Vec::new(), Vec::new());
        for kind in 0..self.kinds.len() as u32 {
            let mut flow = self.flows[kind as usize];
            if let Some(both) = both.next_if(|both| both.kind == kind) {
                let share = u64::from(if yes { both.yes } else { both.no });
                flow = (flow * share) >> SHARE;
            } else if has_bit(gone, kind) {
                continue;
            }
            moved.place[kind as usize] = kinds.len() as u32;
            moved.from.push(kind);
            kinds.push(self.kinds[kind as usize]);
            flows.push(flow);
        }
        let grouped =
            self.grouped.iter().map(|(kind, group)| (moved.place[*kind as usize], *group));
        let words = kinds.len().div_ceil(64).max(1);
        let mut side = Self {
            grouped: grouped.filter(|(kind, _)| *kind != GONE).collect(),
            kinds,
            flows,
            words,
            bits: Vec::with_capacity(3 * words * self.asks.len()),
            asks: Vec::with_capacity(self.asks.len()),
            left: Vec::new(),
            levels: Vec::new(),
        };
        let cut = side.take_left(self, space, asked, yes, &moved);
        let mut same = Same::default();
        for (other, bits) in self.asks.iter().zip(self.bits.chunks_exact(3 * self.words)) {
            if other.question != asked.question {
                side.take(self, space, (other, bits), &moved, &cut, &mut same);
            }
        }
        side.put_in_order();
        // Far fewer questions are left than above.
        side.bits.shrink_to_fit();
        side.asks.shrink_to_fit();
        side
    }

    /// Takes over what is left of cells, cut where the question cut them; the cut ones.
    fn take_left(
        &mut self,
        above: &Self,
        space: &StateSpace,
        asked: &LargeQuestion,
        yes: bool,
        moved: &Moved,
    ) -> Cut {
        let varying = &space.questions[asked.question as usize].varying;
        let mut cut = Cut::default();
        for (slot, kind, remains) in &above.left {
            let here = moved.place[*kind as usize];
            if here == GONE {
                continue;
            }
            let mut remains = *remains;
            let of_matrix = above.kinds[*kind as usize] as usize;
            if let Ok(at) = varying.binary_search_by_key(&of_matrix, |varying| varying.kind)
                && varying[at].slot == *slot as usize
            {
                let (kept, rest) = remains.cut(varying[at].yes);
                remains = if yes { kept } else { rest };
                cut.insert(*slot, remains);
            }
            self.left.push((*slot, here, remains));
        }
        cut
    }

    /// Takes over a question, if it can still part anything and no other does the same.
    fn take(
        &mut self,
        above: &Self,
        space: &StateSpace,
        (asked, bits): (&LargeQuestion, &[u64]),
        moved: &Moved,
        cut: &Cut,
        same: &mut Same,
    ) {
        let words = self.words;
        let start = self.bits.len();
        self.bits.resize(start + 3 * words, 0);
        let here = &mut self.bits[start..];
        for (set, old) in bits.chunks_exact(above.words).enumerate() {
            gather(&mut here[set * words..(set + 1) * words], old, &moved.from);
        }
        let question = &space.questions[asked.question as usize];
        let mut both: Vec<Both> = Vec::new();
        for one in &asked.both {
            let kind = moved.place[one.kind as usize];
            if kind == GONE {
                continue;
            }
            match shares_now(space, question, above.kinds[one.kind as usize], cut) {
                None => both.push(Both { kind, ..*one }),
                Some((_, 0)) => set_bit(&mut here[..words], kind),
                Some((0, _)) => set_bit(&mut here[words..2 * words], kind),
                Some(shares) => both.push(Both::of(kind, shares)),
            }
        }
        if !cut.is_empty() {
            self.settle_governed(question, cut, start + 2 * words);
        }
        if !self.can_part(start, both.len())
            || self.stands_already(start, question, asked, &both, same)
        {
            self.bits.truncate(start);
            return;
        }
        self.asks.push(LargeQuestion { both, ..*asked });
    }

    /// Kinds whose governors the cut cells settle are no longer in the way, whose set of kinds
    /// starts at `way`.
    fn settle_governed(&mut self, question: &Question, cut: &Cut, way: usize) {
        for governed in &question.governed {
            let settles = |(slot, _): &(usize, u64)| cut.contains_key(&(*slot as u32));
            if !governed.within.iter().any(settles) || question.never.has(governed.kind) {
                continue;
            }
            let Ok(at) = self.kinds.binary_search(&(governed.kind as u32)) else { continue };
            let settled = governed.within.iter().all(|(slot, right)| {
                let at = self.left.binary_search_by_key(&(*slot as u32), |left| left.0);
                at.is_ok_and(|at| within(self.left[at].2, *right))
            });
            if settled {
                self.bits[way + at / 64] &= !(1 << (at % 64));
            }
        }
    }

    /// Whether both sides of the question that is being taken over can hold a kind, here or
    /// below.
    fn can_part(&self, start: usize, both: usize) -> bool {
        let count = |set: usize| {
            let from = start + set * self.words;
            let words = self.bits[from..from + self.words].iter();
            words.map(|word| word.count_ones() as usize).sum::<usize>()
        };
        count(0) + both > 0 && count(1) + both > 0
    }

    /// Whether another question does the same here and below, at no higher cost; a dearer one
    /// makes room.
    fn stands_already(
        &mut self,
        start: usize,
        question: &Question,
        asked: &LargeQuestion,
        both: &[Both],
        same: &mut Same,
    ) -> bool {
        if !both.is_empty() {
            return false;
        }
        let here = &self.bits[start..];
        let words = self.words;
        // With kinds in its way, only a question about the same character is in the same way
        // of the same kinds for good.
        let does = match here[2 * words..].iter().any(|word| *word != 0) {
            true => (Some(question.ask.character), here.to_vec()),
            false if has_bit(here, 0) => (None, here[..words].to_vec()),
            false => (None, here[words..2 * words].to_vec()),
        };
        let Some(&other) = same.get(&does) else {
            same.insert(does, self.asks.len());
            return false;
        };
        if asked.cost < self.asks[other].cost {
            self.asks[other] = LargeQuestion { both: Vec::new(), ..*asked };
            self.bits.copy_within(start.., 3 * words * other);
        }
        true
    }
}

/// The shares of a kind on both sides of a question, if its cell was cut.
fn shares_now(
    space: &StateSpace,
    question: &Question,
    kind: u32,
    cut: &Cut,
) -> Option<(Effort, Effort)> {
    if cut.is_empty() {
        return None;
    }
    let of_kind = |varying: &crate::state_space::Varying| varying.kind;
    let at = question.varying.binary_search_by_key(&(kind as usize), of_kind).ok()?;
    let varying = &question.varying[at];
    let remains = cut.get(&(varying.slot as u32))?;
    Some(space.layout.shares(varying.slot, *remains, varying.yes))
}

/// The bits of the kinds that stay, side by side.
fn gather(here: &mut [u64], old: &[u64], from: &[u32]) {
    if old.iter().all(|word| *word == 0) {
        return;
    }
    for (word, kinds) in here.iter_mut().zip(from.chunks(64)) {
        let mut bits = 0;
        for (at, kind) in kinds.iter().enumerate() {
            bits |= (old[*kind as usize / 64] >> (kind % 64) & 1) << at;
        }
        *word = bits;
    }
}
