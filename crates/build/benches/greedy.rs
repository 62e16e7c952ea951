//! What asking greedily loses against the best key, on drawn tables.
//!
//! `cargo bench -p spinney-build --bench greedy`. Two rules that people use. *Even*: the question
//! that halves the heap most evenly (its larger side is smallest; a kind that varies may be on
//! both). *Telling*: the question that tells most a step (the fall of Shannon's entropy of which
//! kind it is, over the steps it takes; the rule of decision trees, Quinlan 1986). Ties go to the
//! question of fewer steps, then to the earlier one. Both ask only what `docs/KEY.md` allows, for
//! as long as anything can be asked. Loss: effort over the least effort, less one; tables that
//! were not proved within the usual budget are left out, and how many were proved is said.

use spinney_build::{Budget, build};
use spinney_fixtures::seeded;
use spinney_model::{Character, Difficulty, Matrix, Scale, Share, Value, Wishes};

const TABLES: u64 = 100;
const SIZES: [(usize, usize); 3] = [(12, 15), (20, 24), (40, 30)];

/// Gains that differ by less are alike.
const NOISE: f64 = 1e-9;

type Draw = fn(u64, usize, usize) -> Matrix;

const HARDEST: &str = "one in five, steps, often, varying, unknown";

const KINDS: [(&str, Draw); 7] = [
    ("two states", |seed, kinds, at| seeded::binary(seed, kinds, at, 0, 0)),
    ("two and three states", |seed, kinds, at| seeded::plain(seed, kinds, at, 0, 0)),
    ("two, one in five", |seed, kinds, at| seeded::skewed(seed, kinds, at, 0, 0)),
    ("two, of 1 to 3 steps", |seed, kinds, at| {
        seeded::priced(seed, &seeded::binary(seed, kinds, at, 0, 0), true, false)
    }),
    ("two, met 1 to 8 times", |seed, kinds, at| {
        seeded::priced(seed, &seeded::binary(seed, kinds, at, 0, 0), false, true)
    }),
    ("two and three, 10 % varying, 5 % unknown", |seed, kinds, at| {
        seeded::plain(seed, kinds, at, 10, 5)
    }),
    (HARDEST, |seed, kinds, at| {
        seeded::priced(seed, &seeded::skewed(seed, kinds, at, 10, 5), true, true)
    }),
];

fn main() {
    println!(
        "| table | states | proved | even: lose | mean | worst | telling: lose | mean | worst |"
    );
    println!("| --- | --- | --- | --- | --- | --- | --- | --- | --- |");
    for (name, draw) in KINDS {
        // The hardest sort is proved on few tables of that size, after minutes each.
        let sizes = if name == HARDEST { &SIZES[..2] } else { &SIZES[..] };
        for &(kinds, characters) in sizes {
            row(name, draw, kinds, characters);
        }
    }
}

fn row(name: &str, draw: Draw, kinds: usize, characters: usize) {
    let mut losses = [Vec::new(), Vec::new()];
    for seed in 1..=TABLES {
        let matrix = draw(seed, kinds, characters);
        let claim = build(&matrix, &Wishes::default(), Budget::default()).claim;
        if !claim.optimal() {
            continue;
        }
        let greedy = Greedy::of(&matrix);
        for (losses, rule) in losses.iter_mut().zip([Rule::Even, Rule::Telling]) {
            let effort = greedy.effort(&greedy.root(), rule);
            assert!(effort >= claim.total, "{name}, {seed}: nothing is below the least effort");
            losses.push(float(effort / claim.total) - 1.0);
        }
    }
    let proved = losses[0].len();
    let cells = losses.map(|losses| {
        let lose = losses.iter().filter(|loss| **loss > 0.0).count();
        let count = losses.len().max(1) as f64;
        let mean = losses.iter().sum::<f64>() / count;
        let worst = losses.iter().copied().fold(0.0, f64::max);
        format!(
            "{:.0} % | {:.1} % | {:.1} %",
            lose as f64 / count * 100.0,
            mean * 100.0,
            worst * 100.0
        )
    });
    let cells = cells.join(" | ");
    println!("| {kinds} × {characters} | {name} | {proved} of {TABLES} | {cells} |");
}

#[derive(Clone, Copy)]
enum Rule {
    Even,
    Telling,
}

/// A node: for every kind present its place, and per character its remaining states as bits.
type Node = Vec<(usize, Vec<u64>)>;

/// A table of words, and every question that may be asked of it.
struct Greedy<'a> {
    matrix: &'a Matrix,
    /// A character, and the states of yes as bits; in the order of ties.
    questions: Vec<(usize, u64)>,
}

impl<'a> Greedy<'a> {
    fn of(matrix: &'a Matrix) -> Self {
        let mut questions = Vec::new();
        for (at, character) in matrix.characters().iter().enumerate() {
            // Of two or three states every split has one state alone on one side.
            let states = states(character);
            let sides = if states == 2 { 1 } else { states };
            questions.extend((0..sides).map(|state| (at, 1 << state)));
        }
        Self { matrix, questions }
    }

    fn root(&self) -> Node {
        let remaining = |taxon, at| match &self.matrix.cell(taxon, at).value {
            Value::States(shares) => shares.iter().map(|(state, _)| 1u64 << state.0).sum(),
            Value::Unknown => (1u64 << states(self.matrix.character(at))) - 1,
            other => panic!("a cell of words, not {other:?}"),
        };
        let kinds = self.matrix.taxon_indices();
        kinds
            .map(|taxon| {
                let at = self.matrix.character_indices();
                (taxon.0, at.map(|at| remaining(taxon, at)).collect())
            })
            .collect()
    }

    /// Weight times the shares of what remains: all states of a cell have equal shares here.
    fn flow(&self, (kind, remaining): &(usize, Vec<u64>), root: &Node) -> Share {
        let whole = &root[*kind].1;
        let shares = remaining.iter().zip(whole);
        let left = shares.map(|(left, all)| Share::new(ones(*left), ones(*all)));
        self.matrix.taxa()[*kind].weight * left.product::<Share>()
    }

    fn effort(&self, node: &Node, rule: Rule) -> Share {
        self.below(node, rule, &self.root())
    }

    fn below(&self, node: &Node, rule: Rule, root: &Node) -> Share {
        let mut best: Option<(f64, i128, [Node; 2])> = None;
        for (at, states) in &self.questions {
            let Some(sides) = self.part(node, *at, *states) else { continue };
            let steps = self.steps(*at);
            let good = match rule {
                Rule::Even => -(sides[0].len().max(sides[1].len()) as f64),
                Rule::Telling => self.told(node, &sides, root) / steps as f64,
            };
            let better = best.as_ref().is_none_or(|(old, old_steps, _)| {
                good > old + NOISE || (good > old - NOISE && steps < *old_steps)
            });
            if better {
                best = Some((good, steps, sides));
            }
        }
        let Some((_, steps, [yes, no])) = best else { return Share::from_integer(0) };
        let flow: Share = node.iter().map(|kind| self.flow(kind, root)).sum();
        flow * steps + self.below(&yes, rule, root) + self.below(&no, rule, root)
    }

    /// Both sides of an admissible question.
    fn part(&self, node: &Node, at: usize, states: u64) -> Option<[Node; 2]> {
        let all_yes = |kind: &(usize, Vec<u64>)| kind.1[at] & !states == 0;
        let all_no = |kind: &(usize, Vec<u64>)| kind.1[at] & states == 0;
        if !node.iter().any(all_yes) || !node.iter().any(all_no) {
            return None;
        }
        let side = |mask: u64| -> Node {
            let stays = node.iter().filter(|(_, left)| left[at] & mask != 0);
            let mut stays: Node = stays.cloned().collect();
            stays.iter_mut().for_each(|(_, left)| left[at] &= mask);
            stays
        };
        Some([side(states), side(!states)])
    }

    /// By how many bits the entropy of "which kind is it?" falls, over the flow of the node.
    fn told(&self, node: &Node, sides: &[Node; 2], root: &Node) -> f64 {
        let uncertain = |node: &Node| {
            let flows: Vec<f64> =
                node.iter().map(|kind| float(self.flow(kind, root))).collect();
            let all: f64 = flows.iter().sum();
            flows.iter().map(|flow| flow * (all / flow).log2()).sum::<f64>()
        };
        uncertain(node) - uncertain(&sides[0]) - uncertain(&sides[1])
    }

    fn steps(&self, at: usize) -> i128 {
        match self.matrix.characters()[at].difficulty {
            Difficulty::Easy => 1,
            Difficulty::Fair => 2,
            Difficulty::Hard => 3,
        }
    }
}

fn states(character: &Character) -> usize {
    let Scale::Words { states } = &character.scale else { panic!("a column of words") };
    states.len()
}

fn ones(bits: u64) -> i128 {
    bits.count_ones().into()
}

fn float(share: Share) -> f64 {
    *share.numer() as f64 / *share.denom() as f64
}
