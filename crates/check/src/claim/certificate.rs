//! The proof that a claim carries, followed line by line: `docs/KEY.md` 20.
//!
//! Every question that may be asked of a heap is listed here anew; what a line says must hold
//! for all of them. One look at every line: nothing is searched, and nothing is taken on trust.
//! From a certificate to what it proves, or to the first thing in it that is not so.

use std::collections::HashMap;

use spinney_model::{CharacterIx, Claim, Goal, Kept, Line, Share, TaxonIx, Wishes};

use super::{aims, reached};
use crate::bits::Bits;
use crate::question::Question;
use crate::seen::Seen;

use board::{Board, Put, Word};
use seen::{Parted, Shapes};

mod board;
mod seen;

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
pub(super) fn follow(seen: &Seen<'_>, claim: &Claim) -> Option<(Followed, usize)> {
    let certificate = claim.certificate.as_ref()?;
    let lines = certificate.lines.len();
    if !speaks_of(claim) {
        return Some((Followed::CannotSay, lines));
    }
    let goals = reached::goals(&claim.wishes);
    // No path has more questions than there are kinds: every question leaves one behind. None
    // counts more for one find than this (a misreading, in millionths; or the dearest question).
    let dearest = if goals.contains(&Goal::MostRightEnds) { 5_000_000 } else { 6 };
    let kept = claim.wishes.kept.as_deref();
    let longest = (seen.matrix.taxa().len() + depth(kept)) as i128;
    let Some(board) = Board::of(seen.values, seen.left_out, dearest * longest) else {
        return Some((Followed::CannotSay, lines));
    };
    let mut proof = Proof { board, goals, lines: HashMap::new(), shapes: Shapes::default() };
    let followed = match proof.all(&certificate.lines, &claim.wishes) {
        Err(fault) => Followed::Fails(fault),
        Ok(()) => match proof.on_top(proof.root(), kept) {
            None => Followed::CannotSay,
            Some(sum) => {
                let whole = proof.board.whole;
                let share = |at| Share::new(sum.0[at], whole);
                Followed::Proves((0..proof.goals.len()).map(share).collect())
            }
        },
    };
    Some((followed, lines))
}

/// The most questions that a person keeps one after the other.
fn depth(kept: Option<&Kept>) -> usize {
    kept.map_or(0, |kept| 1 + depth(kept.yes.as_deref()).max(depth(kept.no.as_deref())))
}

/// A number for each goal that adds up, compared from the first on.
#[derive(Clone, Copy, Default, PartialEq, Eq, PartialOrd, Ord)]
struct Sum([i128; 3]);

impl Sum {
    fn plus(mut self, other: Self) -> Self {
        self.0.iter_mut().zip(other.0).for_each(|(sum, more)| *sum += more);
        self
    }

    fn times(mut self, flow: i128) -> Self {
        self.0.iter_mut().for_each(|part| *part *= flow);
        self
    }
}

/// A heap by its name: the kinds, and what is left of the cells from which something was taken.
#[derive(Clone, PartialEq, Eq, Hash)]
struct Name {
    kinds: Bits,
    taken: Vec<(usize, Word)>,
}

/// A heap spread out: what is left of every cell, and the flow of every kind.
struct Heap {
    name: Name,
    left: Vec<Word>,
    flows: Vec<i128>,
}

/// What a question makes of a heap.
struct Split {
    sides: [Bits; 2],
    /// Cells that are torn: what is left on either side.
    cuts: Vec<(usize, [Word; 2])>,
}

impl Split {
    /// The kinds that go to one side alone.
    fn only(&self) -> [Bits; 2] {
        let [yes, no] = &self.sides;
        [yes.but(no), no.but(yes)]
    }
}

struct Proof<'a> {
    board: Board<'a>,
    goals: Vec<Goal>,
    lines: HashMap<Name, Sum>,
    shapes: Shapes,
}

impl Proof<'_> {
    /// Looks at every line once.
    fn all(&mut self, lines: &[Line], wishes: &Wishes) -> Result<(), Fault> {
        let read = lines.iter().map(|line| self.read(line).ok_or(Fault::NoSuchHeap));
        let read: Vec<(Name, Sum)> = read.collect::<Result<_, _>>()?;
        for (name, sum) in &read {
            let said = self.lines.entry(name.clone()).or_default();
            *said = (*said).max(*sum);
        }
        let cheapest = self.cheapest();
        for (name, sum) in read {
            let heap = self.spread(name);
            self.holds(&heap, sum, wishes, cheapest)?;
        }
        Ok(())
    }

    /// A line as the table has it; None: the table has no such kinds or values.
    fn read(&self, line: &Line) -> Option<(Name, Sum)> {
        let kinds = self.board.flows.len();
        let mut name = Name { kinds: Bits::none(kinds), taken: Vec::new() };
        for taxon in &line.kinds {
            if taxon.0 >= kinds {
                return None;
            }
            name.kinds.add(taxon.0);
        }
        for remains in &line.remains {
            let (taxon, character) = (remains.taxon, remains.character);
            let (cell, word) = self.board.named(taxon, character, &remains.values)?;
            if !line.kinds.contains(&taxon) {
                return None;
            }
            name.taken.push((cell, word));
        }
        name.taken.sort_unstable();
        let twice = name.taken.windows(2).any(|pair| pair[0].0 == pair[1].0);
        name.taken.retain(|(cell, word)| *word != self.board.cells[*cell].full);
        let mut sum = Sum::default();
        for (part, said) in sum.0.iter_mut().zip(&line.at_least) {
            *part = self.in_parts(*said)?;
        }
        let fits = !twice && line.at_least.len() == self.goals.len();
        fits.then_some((name, sum))
    }

    /// A number in parts of the common denominator; None: it is no sum of flows, or more than
    /// any key takes.
    fn in_parts(&self, said: Share) -> Option<i128> {
        let (whole, denominator) = (self.board.whole, *said.denom());
        let parts =
            (whole % denominator == 0).then(|| said.numer().checked_mul(whole / denominator));
        parts.flatten().filter(|parts| (0..i128::MAX / 8).contains(parts))
    }

    /// All kinds, nothing taken.
    fn root(&self) -> Heap {
        let kinds = Bits::all(self.board.flows.len());
        self.spread(Name { kinds, taken: Vec::new() })
    }

    fn spread(&self, name: Name) -> Heap {
        let mut left: Vec<Word> = self.board.cells.iter().map(|cell| cell.full).collect();
        let mut flows = self.board.flows.clone();
        for &(place, word) in &name.taken {
            let cell = &self.board.cells[place];
            left[place] = word;
            // Whole multiples: every flow has the denominators of all its cells in it.
            flows[cell.taxon] = flows[cell.taxon] / cell.denominator() * cell.numerator(word);
        }
        Heap { name, left, flows }
    }

    /// Puts a question to a heap; None: it is blocked, or all answer it alike.
    fn ask(&self, heap: &Heap, put: &Put) -> Option<Split> {
        let here = &heap.name.kinds;
        if put.never.common(here) > 0 {
            return None;
        }
        let settled = |&(kind, cell, right): &(usize, usize, u64)| {
            !here.has(kind) || heap.left[cell] & !right == 0
        };
        if !put.governed.iter().all(settled) {
            return None;
        }
        let mut sides = [put.yes.and(here), put.no.and(here)];
        let mut cuts = Vec::new();
        for &(kind, cell, taking) in put.varying.iter().filter(|(kind, ..)| here.has(*kind)) {
            let cut = taking.cut(heap.left[cell]);
            for (side, word) in sides.iter_mut().zip(cut) {
                if word != 0 {
                    side.add(kind);
                }
            }
            if cut[0] != 0 && cut[1] != 0 {
                cuts.push((cell, cut));
            }
        }
        let both = sides.iter().all(|side| !side.is_empty());
        both.then_some(Split { sides, cuts })
    }

    /// What a question counts at a heap.
    fn own(&self, heap: &Heap, at: CharacterIx) -> Sum {
        let kinds = || heap.name.kinds.iter();
        let all: i128 = kinds().map(|kind| heap.flows[kind]).sum();
        let character = self.board.values.matrix.character(at);
        let mut own = Sum::default();
        for (part, goal) in own.0.iter_mut().zip(&self.goals) {
            *part = match goal {
                Goal::FewestRulers => all * i128::from(aims::ruler(character)),
                Goal::MostRightEnds => kinds()
                    .map(|kind| heap.flows[kind] * aims::misreading(character, TaxonIx(kind)))
                    .sum(),
                _ => all * aims::steps(character),
            };
        }
        own
    }

    /// The least that any question counts for any one kind.
    fn cheapest(&self) -> Sum {
        let matrix = self.board.values.matrix;
        let counts = |at: CharacterIx| {
            let character = matrix.character(at);
            matrix.taxon_indices().map(move |taxon| (character, taxon))
        };
        let mut characters: Vec<CharacterIx> =
            self.board.questions.iter().map(|put| put.character).collect();
        characters.dedup();
        let sums = characters.into_iter().flat_map(counts).map(|(character, taxon)| {
            let mut sum = Sum::default();
            for (part, goal) in sum.0.iter_mut().zip(&self.goals) {
                *part = match goal {
                    Goal::FewestRulers => aims::ruler(character).into(),
                    Goal::MostRightEnds => aims::misreading(character, taxon),
                    _ => aims::steps(character),
                };
            }
            sum
        });
        sums.min().unwrap_or_default()
    }

    /// Whether what a line says of a heap holds for every question that may be asked there.
    fn holds(
        &mut self,
        heap: &Heap,
        said: Sum,
        wishes: &Wishes,
        cheapest: Sum,
    ) -> Result<(), Fault> {
        if said == Sum::default() {
            return Ok(());
        }
        let kinds = || heap.name.kinds.iter().map(TaxonIx).collect();
        let mut parted = Parted::none(heap.flows.len(), self.split_off(heap));
        let mut asks: Vec<(CharacterIx, Split)> = Vec::new();
        for put in &self.board.questions {
            let Some(split) = self.ask(heap, put) else { continue };
            let only = split.only();
            if only.iter().any(Bits::is_empty) {
                continue;
            }
            // Thresholds next to each other often do the same.
            let again = asks.last().is_some_and(|(character, last)| {
                *character == put.character
                    && last.sides == split.sides
                    && last.cuts == split.cuts
            });
            if !again {
                parted.part(&only[0], &only[1]);
                asks.push((put.character, split));
            }
        }
        if asks.is_empty() {
            return Err(Fault::AnEnd { kinds: kinds() });
        }
        let matrix = self.board.values.matrix;
        let touch = |at: &CharacterIx| matrix.character(*at).by_touch;
        let may_hurt = |kind: usize| matrix.taxon(TaxonIx(kind)).caution.is_some();
        if !wishes.allow_touch
            && heap.name.kinds.iter().any(may_hurt)
            && !asks.iter().all(|(character, _)| touch(character))
        {
            asks.retain(|(character, _)| !touch(character));
        }
        let order = &wishes.order;
        let first = order.iter().find(|at| asks.iter().any(|(character, _)| character == *at));
        for (character, split) in asks {
            if first.is_some_and(|first| *first != character) {
                continue;
            }
            let own = self.own(heap, character);
            if own >= said {
                continue;
            }
            let seen = [0, 1].map(|side| {
                cheapest
                    .times(parted.least(&mut self.flows(heap, &split, side), &mut self.shapes))
            });
            if own.plus(seen[0]).plus(seen[1]) >= said {
                continue;
            }
            let [yes, no] = [0, 1].map(|side| {
                let line = self.lines.get(&self.side(heap, &split, side));
                line.copied().unwrap_or_default().max(seen[side])
            });
            if own.plus(yes).plus(no) < said {
                return Err(Fault::TakesLess { kinds: kinds(), character });
            }
        }
        Ok(())
    }

    /// The most kinds that any question splits off at a heap or below it.
    fn split_off(&self, heap: &Heap) -> usize {
        let here = &heap.name.kinds;
        let of = |put: &Put| {
            let varying = put.varying.iter().filter(|(kind, ..)| here.has(*kind)).count();
            put.yes.common(here).min(put.no.common(here)) as usize + varying
        };
        self.board.questions.iter().map(of).max().unwrap_or(0)
    }

    /// The kinds on one side of a question, with their flows there.
    fn flows(&self, heap: &Heap, split: &Split, side: usize) -> Vec<(i128, usize)> {
        let mut flows: Vec<(i128, usize)> =
            split.sides[side].iter().map(|kind| (heap.flows[kind], kind)).collect();
        for (place, cut) in &split.cuts {
            let cell = &self.board.cells[*place];
            let before = cell.numerator(heap.left[*place]);
            let after = cell.numerator(cut[side]);
            let here = flows.iter_mut().find(|(_, kind)| *kind == cell.taxon);
            here.into_iter().for_each(|(flow, _)| *flow = *flow / before * after);
        }
        flows
    }

    /// The name of one of the two heaps that a question makes.
    fn side(&self, heap: &Heap, split: &Split, side: usize) -> Name {
        let kinds = split.sides[side].clone();
        let torn = |place: &usize| split.cuts.iter().any(|(cell, _)| cell == place);
        let stays = |(place, _): &&(usize, Word)| {
            kinds.has(self.board.cells[*place].taxon) && !torn(place)
        };
        let mut taken: Vec<(usize, Word)> =
            heap.name.taken.iter().filter(stays).copied().collect();
        taken.extend(split.cuts.iter().map(|(place, cut)| (*place, cut[side])));
        taken.sort_unstable();
        Name { kinds, taken }
    }

    /// What all that comes below a person's own questions takes, with these; None: one of them
    /// cannot be asked where it was wanted.
    fn on_top(&self, heap: Heap, kept: Option<&Kept>) -> Option<Sum> {
        let Some(kept) = kept else {
            return Some(self.lines.get(&heap.name).copied().unwrap_or_default());
        };
        let question = Question::asks(self.board.values.matrix, &kept.ask)?;
        let split = self.ask(&heap, &self.board.put(&question, 0))?;
        let own = self.own(&heap, question.character);
        let [yes, no] = [0, 1].map(|side| self.spread(self.side(&heap, &split, side)));
        let yes = self.on_top(yes, kept.yes.as_deref())?;
        let no = self.on_top(no, kept.no.as_deref())?;
        Some(own.plus(yes).plus(no))
    }
}
