//! How long a proof and its second opinion take, as whole processes:
//! `cargo bench -p spinney --bench proofs`.
//!
//! Tables of 40 kinds × 30 characters of all sorts, seeds 1 to 5. From each: `spinney key` into a
//! file, then `spinney check` of that file, as on another machine; wall time, the best of three.
//! A proof that is not confirmed ends it with a panic; a table that is not proved is said.

use std::fs;
use std::path::Path;
use std::process::{Command, Output};
use std::time::{Duration, Instant};

use spinney_exchange::table;
use spinney_fixtures::seeded::{binary, plain, priced, skewed};
use spinney_model::Matrix;

type Draw = fn(u64) -> Matrix;

const SORTS: [(&str, Draw); 11] = [
    ("two states", |seed| binary(seed, 40, 30, 0, 0)),
    ("two and three states", |seed| plain(seed, 40, 30, 0, 0)),
    ("two, one in five", |seed| skewed(seed, 40, 30, 0, 0)),
    ("two, of 1 to 3 steps", |seed| priced(seed, &binary(seed, 40, 30, 0, 0), true, false)),
    ("two, met 1 to 8 times", |seed| priced(seed, &binary(seed, 40, 30, 0, 0), false, true)),
    ("two, varying", |seed| binary(seed, 40, 30, 10, 5)),
    ("two and three, varying", |seed| plain(seed, 40, 30, 10, 5)),
    ("two, one in five, varying", |seed| skewed(seed, 40, 30, 10, 5)),
    ("two, of 1 to 3 steps, varying", |seed| {
        priced(seed, &binary(seed, 40, 30, 10, 5), true, false)
    }),
    ("two, met 1 to 8 times, varying", |seed| {
        priced(seed, &binary(seed, 40, 30, 10, 5), false, true)
    }),
    ("one in five, steps, often, varying", |seed| {
        priced(seed, &skewed(seed, 40, 30, 10, 5), true, true)
    }),
];

fn main() {
    let folder = Path::new(env!("CARGO_TARGET_TMPDIR")).join("proofs");
    println!("| 40 × 30 | `key` | worst | `check` | worst | lines | kB of proof | proved |");
    println!("| --- | --- | --- | --- | --- | --- | --- | --- |");
    for (name, draw) in SORTS {
        let all: Vec<Option<Taken>> = (1..=5).map(|seed| taken(&folder, &draw(seed))).collect();
        let proved: Vec<&Taken> = all.iter().flatten().collect();
        if proved.is_empty() {
            println!("| {name} | | | | | | | 0 of 5 |");
            continue;
        }
        let (key, worst_key) = middle(proved.iter().map(|taken| taken.key));
        let (check, worst_check) = middle(proved.iter().map(|taken| taken.check));
        let (lines, _) = middle(proved.iter().map(|taken| taken.lines));
        let (bytes, _) = middle(proved.iter().map(|taken| taken.bytes));
        println!(
            "| {name} | {:.1} ms | {:.1} ms | {:.1} ms | {:.1} ms | {lines} | {:.1} | {} of 5 |",
            ms(key),
            ms(worst_key),
            ms(check),
            ms(worst_check),
            bytes as f64 / 1000.0,
            proved.len()
        );
    }
}

/// What one table took.
struct Taken {
    key: Duration,
    check: Duration,
    lines: usize,
    bytes: usize,
}

/// None: it was not proved.
fn taken(folder: &Path, matrix: &Matrix) -> Option<Taken> {
    let _ = fs::remove_dir_all(folder);
    fs::create_dir_all(folder).expect("a folder");
    let sheets = table::write(matrix);
    for (name, text) in
        [("table", sheets.table), ("characters", sheets.characters), ("kinds", sheets.kinds)]
    {
        fs::write(folder.join(format!("{name}.csv")), text).expect("written");
    }
    let (key, json) = best(folder, &["key", ".", "--format", "json"]);
    let json = String::from_utf8(json.stdout).expect("text");
    if !json.contains("\"optimal\": true") {
        assert!(json.contains("\"optimal\": false"), "there is a key: {json}");
        return None;
    }
    fs::write(folder.join("key.json"), &json).expect("written");
    let (check, said) = best(folder, &["check", ".", "--key", "key.json"]);
    let said = String::from_utf8_lossy(&said.stdout);
    let said = said.split_whitespace().collect::<Vec<_>>().join(" ");
    assert!(said.contains("went through the proof and agrees"), "{said}");
    let begins = json.find("\"certificate\"").expect("a proof");
    let proof = &json[begins..];
    let ends = proof.find("\n    }").expect("it ends");
    Some(Taken { key, check, lines: proof[..ends].matches('|').count() / 2, bytes: ends })
}

fn best(folder: &Path, args: &[&str]) -> (Duration, Output) {
    let run = |_| {
        let begun = Instant::now();
        let program = env!("CARGO_BIN_EXE_spinney");
        let output = Command::new(program).args(args).current_dir(folder).output();
        (begun.elapsed(), output.expect("it runs"))
    };
    (0..3).map(run).min_by_key(|(time, _)| *time).expect("three runs")
}

/// The median and the greatest.
fn middle<T: Ord + Copy>(of: impl Iterator<Item = T>) -> (T, T) {
    let mut all: Vec<T> = of.collect();
    all.sort_unstable();
    (all[all.len() / 2], all[all.len() - 1])
}

fn ms(time: Duration) -> f64 {
    time.as_secs_f64() * 1000.0
}
