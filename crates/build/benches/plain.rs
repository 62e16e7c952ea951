//! The search against a plain recursion over sets of kinds: states and time.
//!
//! `cargo bench -p spinney-build --bench plain`. For tables of two states without varying or
//! unknown cells `docs/KEY.md` comes down to V(S) = min over questions of steps · |S| + V(yes) +
//! V(no) over sets of kinds. The plain recursion tries every question at every set, remembers each set
//! once, and has no bound and no order. Printed are its sets of two or more kinds, the heaps
//! that `build` takes apart, and the median time of both over the tables drawn; both must name
//! the same effort where `build` proves its own.

use std::time::{Duration, Instant};

use rustc_hash::FxHashMap;
use spinney_build::{Budget, build};
use spinney_fixtures::seeded;
use spinney_model::{Claim, Difficulty, Matrix, Scene, Share, StateIx, Value, Wishes};

const SEEDS: [u64; 5] = [1, 2, 3, 4, 5];
const SIZES: [(usize, usize); 5] = [(12, 15), (16, 16), (20, 24), (20, 30), (40, 30)];
/// Sets after which the plain recursion is given up: about 2 GiB.
const MOST_SETS: usize = 50_000_000;

fn main() {
    println!(
        "| table | states | plain: sets | plain: time | heaps | time | proved | heaps / sets | plain / ours |"
    );
    println!("| --- | --- | --- | --- | --- | --- | --- | --- | --- |");
    let sorts: [(&str, Draw); 3] = [
        ("two", |seed, kinds, at| seeded::binary(seed, kinds, at, 0, 0)),
        ("two, one in five", |seed, kinds, at| seeded::skewed(seed, kinds, at, 0, 0)),
        ("two, of 1 to 3 steps", |seed, kinds, at| {
            stepped(seed, &seeded::binary(seed, kinds, at, 0, 0))
        }),
    ];
    for (name, draw) in sorts {
        for (kinds, characters) in SIZES {
            row(name, draw, kinds, characters);
        }
    }
}

type Draw = fn(u64, usize, usize) -> Matrix;

fn row(name: &str, draw: Draw, kinds: usize, characters: usize) {
    let (mut sets, mut heaps, mut plain_times, mut times) = (vec![], vec![], vec![], vec![]);
    let mut proved = 0;
    for seed in SEEDS {
        let matrix = draw(seed, kinds, characters);
        let start = Instant::now();
        let mut plain = Plain { questions: questions(&matrix), least: FxHashMap::default() };
        let least = plain.least((1 << kinds) - 1);
        plain_times.push(start.elapsed());
        sets.push(plain.least.len() as f64);
        let (claim, time) = ours(&matrix);
        times.push(time);
        heaps.push(claim.heaps as f64);
        proved += usize::from(claim.optimal());
        if let (Some(least), true) = (least, claim.optimal()) {
            assert_eq!(Share::from_integer(least.into()), claim.total, "{name}, {seed}");
        }
    }
    let given_up =
        if sets.iter().any(|sets| *sets >= MOST_SETS as f64) { " or more" } else { "" };
    let [sets, heaps] = [sets, heaps].map(|mut all| {
        all.sort_by(f64::total_cmp);
        all[all.len() / 2]
    });
    let [plain_time, time] = [plain_times, times].map(|mut all| {
        all.sort();
        all[all.len() / 2].as_secs_f64() * 1e3
    });
    println!(
        "| {kinds} × {characters} | {name} | {sets}{given_up} | {plain_time:.2} ms | {heaps} | \
         {time:.2} ms | {proved} of {} | {:.3} % | {:.1} |",
        SEEDS.len(),
        heaps / sets * 100.0,
        plain_time / time,
    );
}

/// What is claimed, and the median time of five runs, nothing kept from one to the next.
fn ours(matrix: &Matrix) -> (Claim, Duration) {
    let run = || {
        let start = Instant::now();
        let claim = build(matrix, &Wishes::default(), Budget::default()).claim;
        (claim, start.elapsed())
    };
    let mut runs: Vec<(Claim, Duration)> = (0..5).map(|_| run()).collect();
    runs.sort_by_key(|(_, time)| *time);
    runs.swap_remove(2)
}

/// The same table with questions of 1 to 3 steps, drawn.
fn stepped(seed: u64, matrix: &Matrix) -> Matrix {
    let mut rng = fastrand::Rng::with_seed(seed);
    let hard = [Difficulty::Easy, Difficulty::Fair, Difficulty::Hard];
    let mut characters = matrix.characters().to_vec();
    characters.iter_mut().for_each(|character| character.difficulty = hard[rng.usize(..3)]);
    let row =
        |taxon| matrix.character_indices().map(|at| matrix.cell(taxon, at).clone()).collect();
    let rows = matrix.taxon_indices().map(row).collect();
    Matrix::new(Scene::default(), matrix.taxa().to_vec(), characters, rows)
        .expect("the same cells")
}

/// For every character the kinds that have its second state, and the steps of asking.
fn questions(matrix: &Matrix) -> Vec<(u64, u32)> {
    let second = |taxon, at| match &matrix.cell(taxon, at).value {
        Value::States(shares) => shares[0].0 == StateIx(1),
        other => panic!("a cell of one state, not {other:?}"),
    };
    let question = |at| {
        let kinds = matrix.taxon_indices().filter(|taxon| second(*taxon, at));
        let steps = match matrix.character(at).difficulty {
            Difficulty::Easy => 1,
            Difficulty::Fair => 2,
            Difficulty::Hard => 3,
        };
        (kinds.map(|taxon| 1 << taxon.0).sum(), steps)
    };
    matrix.character_indices().map(question).collect()
}

/// The plain recursion: a set of kinds is the bits of a word.
struct Plain {
    questions: Vec<(u64, u32)>,
    least: FxHashMap<u64, u32>,
}

impl Plain {
    /// V of a set; None if there were too many.
    fn least(&mut self, set: u64) -> Option<u32> {
        if set.count_ones() < 2 {
            return Some(0);
        }
        if let Some(least) = self.least.get(&set) {
            return Some(*least);
        }
        if self.least.len() >= MOST_SETS {
            return None;
        }
        let mut best = None;
        for at in 0..self.questions.len() {
            let (question, steps) = self.questions[at];
            let (yes, no) = (set & question, set & !question);
            if yes != 0 && no != 0 {
                let whole = steps * set.count_ones() + self.least(yes)? + self.least(no)?;
                best = Some(best.map_or(whole, |best: u32| best.min(whole)));
            }
        }
        let least = best.unwrap_or(0);
        self.least.insert(set, least);
        Some(least)
    }
}
