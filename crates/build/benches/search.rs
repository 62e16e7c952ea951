//! Time, heaps and memory of the search on seeded tables, as the rows of
//! `docs/measurements.md`.
//!
//! `cargo bench -p spinney-build`. Medians of five seeds; one core; the time is that of making
//! the table ready, searching, and reading the key off. Peak memory is the kernel's high-water
//! mark of one process per row (`VmHWM`), so each row runs in a process of its own.

use std::process::Command;
use std::time::Instant;

use spinney_build::{Budget, build};
use spinney_fixtures::seeded;
use spinney_model::{Matrix, Wishes};

const SEEDS: [u64; 5] = [1, 2, 3, 4, 5];
const SIZES: [(usize, usize); 6] = [(10, 10), (20, 24), (20, 30), (40, 30), (60, 24), (12, 15)];

fn main() {
    let row: Vec<String> = std::env::args().skip_while(|arg| arg != "--row").skip(1).collect();
    if let [name, kinds, characters, varying, unknown] = row.as_slice() {
        let number = |text: &str| text.parse().expect("a number");
        measure(name, number(kinds), number(characters), number(varying), number(unknown));
        return;
    }
    println!(
        "| table | states | varying / unknown | median | worst | heaps | proved | bound | peak |"
    );
    println!("| --- | --- | --- | --- | --- | --- | --- | --- | --- |");
    let me = std::env::current_exe().expect("this program has a path");
    for name in ["two", "two and three", "two, one in five"] {
        for (kinds, characters) in SIZES {
            for (varying, unknown) in [(0, 0), (10, 5)] {
                let numbers = [kinds, characters, varying, unknown].map(|n| n.to_string());
                let mut run = Command::new(&me);
                run.args(["--row", name]).args(numbers);
                assert!(run.status().expect("it starts").success());
            }
        }
    }
}

fn measure(name: &str, kinds: usize, characters: usize, varying: usize, unknown: usize) {
    let make = match name {
        "two" => seeded::binary,
        "two and three" => seeded::plain,
        _ => seeded::skewed,
    };
    let mut times = Vec::new();
    let (mut heaps, mut proved, mut gap) = (Vec::new(), 0, 0.0_f64);
    for seed in SEEDS {
        let matrix: Matrix = make(seed, kinds, characters, varying as u8, unknown as u8);
        let start = Instant::now();
        let built = build(&matrix, &Wishes::default(), Budget::default());
        times.push(start.elapsed());
        let claim = built.claim;
        heaps.push(claim.heaps);
        proved += usize::from(claim.optimal());
        let ratio = claim.total / claim.lower_bound;
        gap = gap.max(*ratio.numer() as f64 / *ratio.denom() as f64 - 1.0);
    }
    times.sort();
    heaps.sort_unstable();
    println!(
        "| {kinds} × {characters} | {name} | {varying} % / {unknown} % | {:.2} ms | {:.2} ms | {} | {proved} of {} | {:.2} % | {} MiB |",
        times[2].as_secs_f64() * 1e3,
        times[4].as_secs_f64() * 1e3,
        heaps[2],
        SEEDS.len(),
        gap * 100.0,
        peak_mib(),
    );
}

/// The most memory this process ever had, in MiB, as Linux counts it; 0 elsewhere.
fn peak_mib() -> u64 {
    let status = std::fs::read_to_string("/proc/self/status").unwrap_or_default();
    let line = status.lines().find(|line| line.starts_with("VmHWM"));
    line.and_then(|line| line.split_whitespace().nth(1)?.parse::<u64>().ok())
        .map_or(0, |kib| kib / 1024)
}
