//! The proof, written down: which heaps take how much at least, so that nobody has to search.
//!
//! From a search that is proved to the lines of `docs/KEY.md` 20. Down from the heaps that are
//! left open, largest first: where the bounds that everybody can work out do not show that a
//! question takes as much as the line says, one of its two heaps gets a line (or both do). Then
//! up again: every line says what follows from those below it. At last, down once more: lines
//! that nothing rests on are struck out, so that every one that is left is needed.

use std::cmp::Reverse;
use std::collections::BTreeSet;

use num_integer::Integer;
use rustc_hash::FxHashMap;
use spinney_model::{Ask, Certificate, CharacterIx, Goal, Line, Quantity, Remaining, StateIx};
use spinney_model::{Remains as Remnant, TaxonIx, Value};

use crate::candidates::Candidates;
use crate::cost::Effort;
use crate::exact::{NEVER, Solver};
use crate::goals::Part;
use crate::goals_in_order::GoalsInOrder;
use crate::heap::{Heap, Remains};
use crate::kept_questions;
use crate::split::{self, Column};
use crate::state_space::StateSpace;

/// A proof of more lines is not carried.
const MOST_LINES: usize = 50_000;

/// Heaps that may be taken apart to write a proof down, and how many more for each that the
/// search took: what looking ahead proved of a large heap is to be said heap by heap.
const BESIDE: (u64, u64) = (5_000, 10);

/// The proof that a search has come to; None: it is not carried.
pub(crate) fn of(in_order: &mut GoalsInOrder) -> Option<Certificate> {
    let goals = &in_order.solver.space.goals.order;
    let adds_up = |goal: &Goal| {
        matches!(goal, Goal::LeastEffort | Goal::MostRightEnds | Goal::FewestRulers)
    };
    let carried = in_order.solver.space.denominator.exact
        && in_order.wishes.early.is_empty()
        && goals.iter().all(adds_up);
    if !carried {
        return None;
    }
    let root = in_order.root();
    let open = kept_questions::open_heaps(&in_order.solver.space, &root, &in_order.wishes.kept);
    let heaps = BESIDE.0 + BESIDE.1 * in_order.solver.work;
    let lines = in_order.solver.beside(heaps, |solver| Lines::down_from(solver, &open))?;
    let needed = lines.needed();
    let names = Names::of(&in_order.solver.space, &in_order.plan.kept);
    let lines = lines.worked.iter().zip(needed).filter(|(_, needed)| *needed);
    Some(names.written(&root, lines.map(|(line, _)| line)))
}

/// A heap that has a line.
struct Worked {
    heap: Heap,
    /// What follows from the lines below.
    bound: Effort,
    /// Questions that could take less than the best key of the heap, as far as one sees without
    /// lines.
    asks: Vec<HeapQuestion>,
    /// The heap was left open by the kept questions: the claim itself rests on it.
    open: bool,
}

/// One question of a heap: what it takes, and its two heaps.
struct HeapQuestion {
    own: Effort,
    /// What it and the heap's own bound show without its two heaps.
    at_once: Effort,
    sides: [Side; 2],
}

/// A heap that a question makes, and what everybody can see it takes at least.
struct Side {
    heap: Heap,
    seen: Effort,
    /// The place of its line.
    line: Option<usize>,
}

/// The lines, each heap before those that it is made into.
struct Lines {
    worked: Vec<Worked>,
}

/// Heaps that are to get a line, and what it must say at least.
#[derive(Default)]
struct Needs {
    least: FxHashMap<Heap, Effort>,
    /// The largest first.
    open: BTreeSet<(Reverse<usize>, Heap)>,
}

impl Needs {
    fn raise(&mut self, solver: &Solver, heap: &Heap, least: Effort) {
        let said = self.least.entry(heap.clone()).or_insert(0);
        *said = least.max(*said);
        self.open.insert((Reverse(solver.space.layout.size(heap)), heap.clone()));
    }

    fn of(&self, heap: &Heap) -> Effort {
        self.least.get(heap).copied().unwrap_or(0)
    }
}

impl Lines {
    /// None: too many, or there is no room to look that far.
    fn down_from(solver: &mut Solver, open: &[Heap]) -> Option<Self> {
        let mut needs = Needs::default();
        for heap in open {
            let (lower, upper) = solver.known(heap);
            if upper != Some(lower) {
                return None;
            }
            if lower > 0 {
                needs.raise(solver, heap, lower);
            }
        }
        let mut worked = Vec::new();
        while let Some((_, heap)) = needs.open.pop_first() {
            if worked.len() == MOST_LINES {
                return None;
            }
            let (asks, bound) = ask_all(solver, &heap, &mut needs)?;
            let open = open.contains(&heap);
            worked.push(Worked { heap, bound, asks, open });
        }
        let mut lines = Self { worked };
        lines.up_again();
        Some(lines)
    }

    /// Every line says what follows from those below.
    fn up_again(&mut self) {
        let places: FxHashMap<Heap, usize> =
            self.worked.iter().enumerate().map(|(at, line)| (line.heap.clone(), at)).collect();
        for at in (0..self.worked.len()).rev() {
            let (above, below) = self.worked.split_at_mut(at + 1);
            let line = &mut above[at];
            for ask in &mut line.asks {
                let mut whole = ask.own;
                for side in &mut ask.sides {
                    side.line = places.get(&side.heap).copied();
                    let said = side.line.map_or(0, |place| below[place - at - 1].bound);
                    whole += side.seen.max(said);
                }
                line.bound = line.bound.min(whole.max(ask.at_once));
            }
        }
    }

    /// Which lines something rests on.
    fn needed(&self) -> Vec<bool> {
        let mut leaning: Vec<Vec<(usize, &HeapQuestion)>> = vec![Vec::new(); self.worked.len()];
        for (at, line) in self.worked.iter().enumerate() {
            for ask in &line.asks {
                for place in ask.sides.iter().filter_map(|side| side.line) {
                    leaning[place].push((at, ask));
                }
            }
        }
        let mut needed = vec![true; self.worked.len()];
        for at in 0..self.worked.len() {
            let rests = |(above, ask): &(usize, &HeapQuestion)| {
                let says = |side: &Side| {
                    let line = side.line.filter(|place| *place != at && needed[*place]);
                    line.map_or(0, |place| self.worked[place].bound).max(side.seen)
                };
                let without = ask.own + ask.sides.iter().map(says).sum::<Effort>();
                needed[*above] && without.max(ask.at_once) < self.worked[*above].bound
            };
            let rests = self.worked[at].open || leaning[at].iter().any(rests);
            needed[at] = rests;
        }
        needed
    }
}

/// Looks at every question of a heap, and gives lines to heaps below where it needs them; the
/// questions that lines may say something about, and the least that the others take.
fn ask_all(
    solver: &mut Solver,
    heap: &Heap,
    needs: &mut Needs,
) -> Option<(Vec<HeapQuestion>, Effort)> {
    let need = needs.of(heap);
    let best = solver.known(heap).1.unwrap_or(NEVER);
    let offered = solver.candidates_plainly(heap, best);
    let Candidates { list: candidates, end, left_out, after_any, too_dear } = offered;
    if end || left_out < NEVER || solver.spent() {
        return None;
    }
    let (mut asks, mut others) = (Vec::new(), too_dear);
    for candidate in candidates {
        let (own, at_once) = (candidate.own, candidate.own + after_any);
        let whole = candidate.bound().max(at_once);
        if whole >= best {
            others = others.min(whole);
            continue;
        }
        let side = |heap, seen| Side { heap, seen, line: None };
        let sides =
            [side(candidate.yes, candidate.yes_lower), side(candidate.no, candidate.no_lower)];
        if whole < need {
            give_lines(solver, need - own, &sides, needs)?;
        }
        asks.push(HeapQuestion { own, at_once, sides });
    }
    Some((asks, others))
}

/// Gives two heaps lines by which they take so much together.
fn give_lines(
    solver: &mut Solver,
    want: Effort,
    [yes, no]: &[Side; 2],
    needs: &mut Needs,
) -> Option<()> {
    let said = [yes, no].map(|side| side.seen.max(needs.of(&side.heap)));
    if said[0] + said[1] >= want {
        return Some(());
    }
    let known =
        |solver: &Solver, at: usize, side: &Side| said[at].max(solver.known(&side.heap).0);
    let (mut sure_yes, mut sure_no) = (known(solver, 0, yes), known(solver, 1, no));
    if sure_yes + sure_no < want {
        sure_yes = sure_yes.max(solver.refine(&yes.heap, sure_yes, want - sure_no).lower);
    }
    if sure_yes + sure_no < want {
        sure_no = sure_no.max(solver.refine(&no.heap, sure_no, want - sure_yes).lower);
    }
    let by_yes = (sure_yes + said[1] >= want).then(|| want - said[1]);
    let by_no = (said[0] + sure_no >= want).then(|| want - said[0]);
    let size = |side: &Side| solver.space.layout.size(&side.heap);
    // One that has a line anyway, or else the smaller one.
    let first = |side: &Side| (needs.of(&side.heap) == 0, size(side));
    match (by_yes, by_no) {
        (Some(least), None) => needs.raise(solver, &yes.heap, least),
        (None, Some(least)) => needs.raise(solver, &no.heap, least),
        (Some(of_yes), Some(of_no)) => {
            let (side, least) =
                if first(yes) <= first(no) { (yes, of_yes) } else { (no, of_no) };
            needs.raise(solver, &side.heap, least);
        }
        (None, None) if sure_yes + sure_no >= want => {
            needs.raise(solver, &yes.heap, sure_yes);
            needs.raise(solver, &no.heap, want - sure_yes);
        }
        (None, None) => return None,
    }
    Some(())
}

/// What heaps are called outside a search.
struct Names<'a> {
    space: &'a StateSpace,
    /// Cells that questions can take something from.
    cells: Vec<Cell>,
    /// By character, where some such cell is of it.
    columns: FxHashMap<CharacterIx, Column>,
}

struct Cell {
    kind: usize,
    character: CharacterIx,
    slot: usize,
}

impl<'a> Names<'a> {
    fn of(space: &'a StateSpace, kept: &[Ask]) -> Self {
        let cells = space.questions.iter().flat_map(|question| {
            let character = question.ask.character;
            question.varying.iter().map(move |cell| (cell.kind, character, cell.slot))
        });
        let cells: BTreeSet<(usize, CharacterIx, usize)> = cells.collect();
        let column = |at: CharacterIx| (at, split::column(&space.matrix, at, kept));
        Self {
            space,
            columns: cells.iter().map(|(_, character, _)| column(*character)).collect(),
            cells: cells
                .into_iter()
                .map(|(kind, character, slot)| Cell { kind, character, slot })
                .collect(),
        }
    }

    /// The lines, with numbers as small as they can be.
    fn written<'w>(
        &self,
        root: &Heap,
        worked: impl Iterator<Item = &'w Worked>,
    ) -> Certificate {
        let mut met: FxHashMap<(usize, Remains), usize> = FxHashMap::default();
        let mut lines: Vec<Line> =
            worked.map(|worked| self.line(root, worked, &mut met)).collect();
        // In the order of the table, and not in that of the lines.
        let mut remains: Vec<(Remnant, usize)> =
            met.into_iter().map(|((cell, left), at)| (self.remnant(cell, left), at)).collect();
        remains.sort_unstable();
        let mut places = vec![0; remains.len()];
        for (place, (_, met)) in remains.iter().enumerate() {
            places[*met] = place;
        }
        let mut whole = self.space.denominator.number;
        let numbers = lines.iter().flat_map(|line| &line.at_least);
        let part = numbers.fold(whole, |part, number| part.gcd(number));
        whole /= part;
        for line in &mut lines {
            line.at_least.iter_mut().for_each(|number| *number /= part);
            line.remains.iter_mut().for_each(|place| *place = places[*place]);
            line.remains.sort_unstable();
        }
        let remains = remains.into_iter().map(|(remnant, _)| remnant).collect();
        Certificate { whole, remains, lines }
    }

    /// A line that names what remains by when it was met first.
    fn line(
        &self,
        root: &Heap,
        line: &Worked,
        met: &mut FxHashMap<(usize, Remains), usize>,
    ) -> Line {
        let layout = &self.space.layout;
        let mut remains = Vec::new();
        for (at, cell) in self.cells.iter().enumerate() {
            let left = layout.left(&line.heap, cell.slot);
            if layout.has(&line.heap, cell.kind) && left != layout.left(root, cell.slot) {
                let next = met.len();
                remains.push(*met.entry((at, left)).or_insert(next));
            }
        }
        let goals = &self.space.goals;
        let number = |part: &Part| goals.part(part.sum, line.bound);
        Line {
            kinds: self.space.taxa(&line.heap).collect(),
            remains,
            at_least: goals.parts.iter().map(number).collect(),
        }
    }

    fn remnant(&self, cell: usize, left: Remains) -> Remnant {
        let cell = &self.cells[cell];
        Remnant {
            taxon: TaxonIx(cell.kind),
            character: cell.character,
            values: self.values(cell, left),
        }
    }

    fn values(&self, cell: &Cell, left: Remains) -> Remaining {
        let column = &self.columns[&cell.character];
        match left {
            Remains::Intervals(from, to) => {
                let cut = |place: u32| column.cuts.get(place as usize).copied();
                Remaining::Numbers(from.checked_sub(1).and_then(cut), cut(to - 1))
            }
            Remains::Values(mask) => {
                let bits = [mask];
                let places = crate::set::bits(&bits);
                let value = &self.space.matrix.cell(TaxonIx(cell.kind), cell.character).value;
                match value {
                    Value::States(shares) => {
                        Remaining::States(places.map(|at| shares[at].0).collect())
                    }
                    Value::Counts(shares) => whole_numbers(places.map(|at| shares[at].0)),
                    _ if column.counts.is_empty() => {
                        Remaining::States(places.map(StateIx).collect())
                    }
                    _ => whole_numbers(places.map(|at| column.counts[at])),
                }
            }
        }
    }
}

/// Counts that stand next to each other in their cell.
fn whole_numbers(counts: impl Iterator<Item = u32>) -> Remaining {
    let ends = counts.fold(None, |ends: Option<(u32, u32)>, count| {
        let (least, most) = ends.unwrap_or((count, count));
        Some((least.min(count), most.max(count)))
    });
    let (least, most) = ends.expect("something is left of every cell of a heap");
    let whole = |count: i64| Some(Quantity::from_whole(count));
    Remaining::Numbers(whole(least.into()), whole(i64::from(most) + 1))
}
