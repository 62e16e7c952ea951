//! Times the search on the very tables that general-purpose solvers are timed on (`bench/solvers`).
//!
//! `cargo bench -p spinney-build --bench solvers -- FILE`. From a file of tables of 0 and 1 to one
//! line a table: its name, the least effort, the longest path, heaps taken apart, the median
//! time in microseconds of making the table ready, searching, proving and reading the key off,
//! and whether it was proved. Nothing is kept from one run to the next. The file has, for every
//! table, the lines `table NAME`, `steps` and `weights` with whole numbers, a line `row 0101…`
//! for each kind, and `end`.

use std::time::{Duration, Instant};

use spinney_build::{Budget, build};
use spinney_model::{
    Cell, Character, Difficulty, Matrix, Scale, Scene, Share, StateIx, Taxon, Value, Wishes,
};

/// A table is timed at least so often, and further until half a second is over.
const LEAST_RUNS: usize = 5;
const MOST_RUNS: usize = 101;
const LONG_ENOUGH: Duration = Duration::from_millis(500);

fn main() {
    let named = std::env::args().skip(1).find(|arg| !arg.starts_with("--"));
    let Some(path) = named else {
        eprintln!(
            "Name a file of tables: cargo bench -p spinney-build --bench solvers -- FILE"
        );
        return;
    };
    let text = std::fs::read_to_string(&path).expect("the file of tables is there to read");
    for (name, matrix) in tables(&text) {
        let (total, longest, heaps, proved, median) = timed(&matrix);
        let micros = median.as_secs_f64() * 1e6;
        println!("{name}\t{total}\t{longest}\t{heaps}\t{micros:.1}\t{proved}");
    }
}

fn timed(matrix: &Matrix) -> (Share, u32, u64, bool, Duration) {
    let mut times = Vec::new();
    let start = Instant::now();
    loop {
        let one = Instant::now();
        let claim = build(matrix, &Wishes::default(), Budget::default()).claim;
        times.push(one.elapsed());
        let long = start.elapsed() > LONG_ENOUGH || times.len() == MOST_RUNS;
        if times.len() >= LEAST_RUNS && long {
            times.sort();
            let median = times[times.len() / 2];
            return (claim.total, claim.longest, claim.heaps, claim.optimal(), median);
        }
    }
}

fn tables(text: &str) -> Vec<(String, Matrix)> {
    let mut tables = Vec::new();
    let (mut name, mut steps, mut weights) = (String::new(), Vec::new(), Vec::new());
    let mut rows: Vec<&str> = Vec::new();
    let numbers = |rest: &str| -> Vec<i128> {
        rest.split_whitespace().map(|one| one.parse().expect("a whole number")).collect()
    };
    for line in text.lines() {
        let (what, rest) = line.split_once(' ').unwrap_or((line, ""));
        match what {
            "table" => rest.clone_into(&mut name),
            "steps" => steps = numbers(rest),
            "weights" => weights = numbers(rest),
            "row" => rows.push(rest),
            "end" => tables.push((name.clone(), matrix(&steps, &weights, &rows.split_off(0)))),
            _ => panic!("a line that is none of a table: {line}"),
        }
    }
    tables
}

fn matrix(steps: &[i128], weights: &[i128], rows: &[&str]) -> Matrix {
    let columns = steps.iter().enumerate().map(|(at, steps)| {
        let states = vec!["no".to_owned(), "yes".to_owned()];
        let mut character = Character::named(format!("c{at}"), Scale::Words { states });
        character.difficulty = match steps {
            1 => Difficulty::Easy,
            2 => Difficulty::Fair,
            3 => Difficulty::Hard,
            _ => panic!("a question takes 1, 2 or 3 steps, not {steps}"),
        };
        character
    });
    let taxa = weights.iter().enumerate().map(|(at, weight)| {
        let weight = Share::from_integer(*weight);
        Taxon { weight, ..Taxon::named(format!("k{at}")) }
    });
    let cell = |bit: char| -> Cell {
        let state = StateIx(usize::from(bit == '1'));
        Value::States(vec![(state, Share::from_integer(1))]).into()
    };
    let rows = rows.iter().map(|row| row.chars().map(cell).collect()).collect();
    Matrix::new(Scene::default(), taxa.collect(), columns.collect(), rows)
        .expect("every cell fits its column")
}
