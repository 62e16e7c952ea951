//! The proof that a claim carries, followed line by line: `docs/KEY.md` 20.
//!
//! Every question that may be asked of a heap is listed here anew; what a line says must hold
//! for all of them. One look at every line: nothing is searched, and nothing is taken on trust.
//! From a certificate to what it proves, or to the first thing in it that is not so.

use spinney_model::{Certificate, CharacterIx, Claim, Goal, Kept, Share, TaxonIx, Wishes};

use super::{aims, reached};
use crate::bits::Bits;
use crate::question::Question;
use crate::walked_key::WalkedKey;

use board::Board;
use heap::{Heap, Splits, each, meet};
use lines::{Lines, Query, Read};
use seen::Sight;
use sum::Sum;

mod board;
mod heap;
mod lines;
mod seen;
mod sum;

/// What became of a certificate.
pub(super) enum Followed {
    /// No key takes less than this: a number for each goal, in their order.
    Proves(Vec<Share>),
    /// Something in it is not so.
    Fails(Fault),
    /// Wishes or numbers of which no certificate speaks.
    CannotSay,
}

/// What is not so in a certificate.
pub(super) enum Fault {
    /// A line speaks of kinds or values that the table does not have, or of no such number.
    NoSuchHeap,
    /// A question may take less than a line says of its heap.
    TakesLess { kinds: Vec<TaxonIx>, character: CharacterIx },
    /// Nothing can be asked of the heap of a line.
    AnEnd { kinds: Vec<TaxonIx> },
}

/// Whether certificates speak of such wishes.
fn speaks_of(claim: &Claim) -> bool {
    let adds_up = |goal: &Goal| {
        matches!(goal, Goal::LeastEffort | Goal::MostRightEnds | Goal::FewestRulers)
    };
    claim.wishes.early.is_empty() && reached::goals(&claim.wishes).iter().all(adds_up)
}

/// Follows the certificate of a claim; None: it carries none.
pub(super) fn follow(seen: &WalkedKey<'_>, claim: &Claim) -> Option<(Followed, usize)> {
    let certificate = claim.certificate.as_ref()?;
    let lines = certificate.lines.len();
    if !speaks_of(claim) {
        return Some((Followed::CannotSay, lines));
    }
    let goals = reached::goals(&claim.wishes);
    // No path has more questions than there are kinds: every question leaves one behind. None
    // counts more for one find than this (a misreading, in millionths; or the dearest question).
    let dearest = if goals.contains(&Goal::MostRightEnds) { 5_000_000 } else { 6 };
    let longest = (seen.matrix.taxa().len() + depth(&claim.wishes.kept)) as i128;
    let Some(board) = Board::of(seen.values, seen.left_out, dearest * longest) else {
        return Some((Followed::CannotSay, lines));
    };
    let followed = match goals[..] {
        [one] => Proof::follow(board, [one], certificate, &claim.wishes),
        [one, two] => Proof::follow(board, [one, two], certificate, &claim.wishes),
        [one, two, three] => {
            Proof::follow(board, [one, two, three], certificate, &claim.wishes)
        }
        _ => Followed::CannotSay,
    };
    Some((followed, lines))
}

/// The most questions that a person keeps one after the other.
fn depth(kept: &[Kept]) -> usize {
    let mut deep = vec![0; kept.len()];
    // Those after a question stand behind it.
    for (at, kept) in kept.iter().enumerate().rev() {
        let after = [kept.yes, kept.no].into_iter().flatten().map(|after| deep[after]);
        deep[at] = 1 + after.max().unwrap_or(0);
    }
    deep.first().copied().unwrap_or(0)
}

/// A proof under so many goals.
struct Proof<'a, const N: usize> {
    board: Board<'a>,
    goals: [Goal; N],
    lines: Lines<N>,
    /// What a question about each character counts for one find, where that is the same for
    /// every kind.
    each: Vec<Sum<N>>,
    /// The questions, by the least that they count for any one kind.
    by_price: Vec<(Sum<N>, usize)>,
    /// Of each of these, kinds that may go to yes, and kinds that may go to no.
    may: Vec<u64>,
    heap: Heap,
    splits: Splits,
    /// The splits that may be asked for.
    asks: Vec<usize>,
    /// The line that is looked at.
    line: Read<N>,
    /// A heap that lines may be about.
    query: Query,
    /// Kinds with a caution.
    may_hurt: Vec<u64>,
    sight: Sight,
}

impl<'a, const N: usize> Proof<'a, N> {
    fn follow(
        board: Board<'a>,
        goals: [Goal; N],
        certificate: &Certificate,
        wishes: &Wishes,
    ) -> Followed {
        let Some(lines) = Lines::read(&board, certificate) else {
            return Followed::Fails(Fault::NoSuchHeap);
        };
        let mut may_hurt = Bits::none(board.flows.len());
        let taxa = board.values.matrix.taxa().iter().enumerate();
        taxa.filter(|(_, taxon)| taxon.caution.is_some()).for_each(|(at, _)| may_hurt.add(at));
        let mut proof = Self {
            each: Vec::new(),
            by_price: Vec::new(),
            may: Vec::new(),
            heap: Heap::whole(&board),
            splits: Splits::default(),
            asks: Vec::new(),
            line: Read { kinds: Vec::new(), taken: Vec::new(), says: Sum::default() },
            query: Query::default(),
            may_hurt: may_hurt.words().to_vec(),
            sight: Sight::of(&board),
            board,
            goals,
            lines,
        };
        proof.price();
        for line in 0..proof.lines.len() {
            if let Err(fault) = proof.holds(line, wishes) {
                return Followed::Fails(fault);
            }
        }
        let mut all = Query::default();
        all.kinds = Heap::whole(&proof.board).kinds;
        let Some(sum) = proof.on_top(all, &wishes.kept) else {
            return Followed::CannotSay;
        };
        let whole = proof.board.whole;
        Followed::Proves(sum.0.into_iter().map(|part| Share::new(part, whole)).collect())
    }

    /// What questions count.
    fn price(&mut self) {
        let matrix = self.board.values.matrix;
        let counts = |at: CharacterIx, taxon: Option<TaxonIx>| {
            let character = matrix.character(at);
            Sum(self.goals.map(|goal| match (goal, taxon) {
                (Goal::FewestRulers, _) => aims::ruler(character).into(),
                (Goal::MostRightEnds, None) => 0,
                (Goal::MostRightEnds, Some(taxon)) => aims::misreading(character, taxon),
                _ => aims::steps(character),
            }))
        };
        self.each = matrix.character_indices().map(|at| counts(at, None)).collect();
        let least = |at: CharacterIx| {
            let of_kind = matrix.taxon_indices().map(|taxon| counts(at, Some(taxon)));
            of_kind.min().unwrap_or_default()
        };
        let least: Vec<Sum<N>> = matrix.character_indices().map(least).collect();
        let questions = self.board.questions.iter().enumerate();
        self.by_price = questions.map(|(at, put)| (least[put.character.0], at)).collect();
        self.by_price.sort_unstable();
        for (_, at) in &self.by_price {
            let sides = self.board.questions[*at].may.iter();
            self.may.extend(sides.flat_map(|side| side.words()));
        }
    }

    /// The least that any question which can split these kinds counts for any one kind.
    fn cheapest(&self, kinds: &[u64]) -> Sum<N> {
        let words = kinds.len();
        let may = self.may.chunks_exact(2 * words);
        let mut all = self.by_price.iter().zip(may);
        let splits = |may: &[u64]| meet(&may[..words], kinds) && meet(&may[words..], kinds);
        all.find(|(_, may)| splits(may)).map(|((price, _), _)| *price).unwrap_or_default()
    }

    /// What a question about a character counts at the heap.
    fn own(&self, at: CharacterIx, flow: i128) -> Sum<N> {
        let mut own = self.each[at.0].times(flow);
        if let Some(place) = self.goals.iter().position(|goal| *goal == Goal::MostRightEnds) {
            let character = self.board.values.matrix.character(at);
            let misread = |kind: usize| {
                self.heap.flows[kind] * aims::misreading(character, TaxonIx(kind))
            };
            own.0[place] = each(&self.heap.kinds).map(misread).sum();
        }
        own
    }

    /// Lists the questions that are admissible at the heap.
    fn list(&mut self) {
        self.splits.clear(self.heap.kinds.len());
        let questions = &self.board.questions;
        for (at, put) in questions.iter().enumerate() {
            if !self.splits.put(&self.heap, put, at) {
                continue;
            }
            let last = self.splits.all.len() - 1;
            // Thresholds next to each other often do the same.
            let again = last.checked_sub(1).is_some_and(|before| {
                let question = self.splits.all[before].question as usize;
                questions[question].character == put.character
                    && self.splits.alike(before, last)
            });
            if again || !self.splits.parts_a_pair(last) {
                self.splits.drop_last();
            }
        }
    }

    fn character(&self, split: usize) -> CharacterIx {
        self.board.questions[self.splits.all[split].question as usize].character
    }

    /// Whether nobody is to be sent to touch here, if something else separates.
    fn careful(&self, wishes: &Wishes) -> bool {
        !wishes.allow_touch && meet(&self.may_hurt, &self.heap.kinds)
    }

    /// Of what is admissible, what may be asked.
    fn choose(&mut self, wishes: &Wishes) {
        let matrix = self.board.values.matrix;
        let mut asks = std::mem::take(&mut self.asks);
        asks.clear();
        asks.extend(0..self.splits.all.len());
        let touch = |split: &usize| matrix.character(self.character(*split)).by_touch;
        if self.careful(wishes) && !asks.iter().all(touch) {
            asks.retain(|split| !touch(split));
        }
        let about = |at: &&CharacterIx| asks.iter().any(|split| self.character(*split) == **at);
        if let Some(first) = wishes.order.iter().find(about) {
            asks.retain(|split| self.character(*split) == *first);
        }
        self.asks = asks;
    }

    /// Whether what a line says of its heap holds for every question that may be asked there.
    fn holds(&mut self, line: usize, wishes: &Wishes) -> Result<(), Fault> {
        self.lines.line(line, &mut self.line);
        let said = self.line.says;
        if said == Sum::default() {
            return Ok(());
        }
        let (lefts, line) = (&self.lines.lefts, &self.line);
        self.heap.becomes(&self.board, lefts, &line.kinds, &line.taken);
        let any = wishes.order.is_empty() && !self.careful(wishes);
        if self.sight.at_once(&self.board, &self.heap) && any {
            return self.holds_question_by_question(said);
        }
        self.list();
        if self.splits.all.is_empty() {
            return Err(self.end());
        }
        self.choose(wishes);
        self.sight.at(&self.heap, &self.splits);
        let (flow, left) = (self.heap.flow(), self.after_any());
        for at in 0..self.asks.len() {
            let split = self.asks[at];
            let own = self.own(self.character(split), flow);
            if own.plus(left) < said && !self.enough(split, own, said) {
                return Err(self.takes_less(split));
            }
        }
        Ok(())
    }

    /// The same where nothing that could be asked has to be known first: who is parted is plain,
    /// and no wish chooses among questions. A question that is dear enough is not put at all.
    fn holds_question_by_question(&mut self, said: Sum<N>) -> Result<(), Fault> {
        let (flow, left) = (self.heap.flow(), self.after_any());
        let mut end = true;
        for at in 0..self.by_price.len() {
            let question = self.by_price[at].1;
            let own = self.own(self.board.questions[question].character, flow);
            if own.plus(left) < said && self.put_alone(question) {
                end = false;
                if !self.enough(0, own, said) {
                    return Err(self.takes_less(0));
                }
            }
        }
        let questions = self.board.questions.len();
        if end && !(0..questions).any(|question| self.put_alone(question)) {
            return Err(self.end());
        }
        Ok(())
    }

    /// Puts one question to the heap; whether it is admissible.
    fn put_alone(&mut self, question: usize) -> bool {
        self.splits.clear(self.heap.kinds.len());
        self.splits.put(&self.heap, &self.board.questions[question], question)
            && self.splits.parts_a_pair(0)
    }

    /// What all kinds take, less one question for those that must be parted: no first question
    /// leaves less to do.
    fn after_any(&mut self) -> Sum<N> {
        let (joined, once) = self.sight.least(&self.heap.kinds, std::iter::empty());
        self.cheapest(&self.heap.kinds).times((joined - once).max(0))
    }

    /// Whether a question and its two heaps take as much as a line says.
    fn enough(&mut self, split: usize, own: Sum<N>, said: Sum<N>) -> bool {
        let mut sum = own;
        let mut sides = [Sum::default(); 2];
        // One kind alone takes nothing, and no line about it says more.
        let several = [0, 1].map(|side| {
            let kinds = self.splits.sides(split)[side];
            kinds.iter().map(|word| word.count_ones()).sum::<u32>() > 1
        });
        for side in [0, 1].into_iter().filter(|side| several[*side]) {
            let kinds = self.splits.sides(split)[side];
            let torn = self.splits.torn(&self.board, &self.heap, split, side);
            let (least, _) = self.sight.least(kinds, torn);
            sides[side] = self.cheapest(kinds).times(least);
            sum = sum.plus(sides[side]);
            if sum >= said {
                return true;
            }
        }
        for side in [0, 1].into_iter().filter(|side| several[*side]) {
            let (board, lefts) = (&self.board, &self.lines.lefts);
            if self.splits.side(board, lefts, &self.heap, (split, side), &mut self.query) {
                sides[side] = sides[side].max(self.lines.about(&mut self.query));
            }
        }
        own.plus(sides[0]).plus(sides[1]) >= said
    }

    fn end(&self) -> Fault {
        Fault::AnEnd { kinds: each(&self.heap.kinds).map(TaxonIx).collect() }
    }

    fn takes_less(&self, split: usize) -> Fault {
        let kinds = each(&self.heap.kinds).map(TaxonIx).collect();
        Fault::TakesLess { kinds, character: self.character(split) }
    }

    /// What all that comes below a person's own questions takes, with these; None: one of them
    /// cannot be asked where it was wanted.
    fn on_top(&mut self, root: Query, kept: &[Kept]) -> Option<Sum<N>> {
        let mut all = Sum::default();
        let mut open = vec![(root, (!kept.is_empty()).then_some(0))];
        while let Some((mut at, wanted)) = open.pop() {
            let Some(wanted) = wanted else {
                all = all.plus(self.lines.about(&mut at));
                continue;
            };
            let Kept { ask, yes, no } = &kept[wanted];
            let question = Question::asks(self.board.values.matrix, ask)?;
            let put = self.board.put(&question, 0);
            self.heap.becomes(&self.board, &self.lines.lefts, &at.kinds, &at.taken);
            self.splits.clear(at.kinds.len());
            if !self.splits.put(&self.heap, &put, 0) {
                return None;
            }
            all = all.plus(self.own(question.character, self.heap.flow()));
            for (side, after) in [yes, no].into_iter().enumerate() {
                let lefts = &mut self.lines.lefts;
                let heap = self.splits.side_of_kept(&self.board, lefts, &self.heap, side);
                open.push((heap, *after));
            }
        }
        Some(all)
    }
}
