//! Large tables as a flora has them: the best key, the bound, and how cost grows.
//!
//! `cargo bench -p spinney-build --bench flora` writes the rows of `docs/flora.md`;
//! `... -- --growth` writes `docs/growth.csv`, from which `docs/growth.py` draws. Processor time
//! of one process per row (`/proc/self/stat`), memory its high-water mark (`VmHWM`); elsewhere
//! than on Linux both are 0.

use std::process::Command;

use spinney_build::{Budget, Built, build};
use spinney_fixtures::flora::Flora;
use spinney_model::{Share, Wishes};

/// Kinds, characters, heaps that may be taken apart.
const ROWS: [(usize, usize, u64); 6] = [
    (60, 24, 60_000),
    (136, 31, 60_000),
    (300, 100, 20_000),
    (300, 100, 200_000),
    (1000, 200, 200_000),
    (1000, 200, 600_000),
];

fn main() {
    let args: Vec<String> = std::env::args().skip(1).collect();
    if let Some(at) = args.iter().position(|arg| arg == "--row") {
        let number = |place: usize| args[at + place].parse().expect("a number");
        return row([1, 2, 3, 4, 5].map(number), args.iter().any(|arg| arg == "--growth"));
    }
    let me = std::env::current_exe().expect("this program has a path");
    let run = |numbers: [u64; 5], growth: bool| {
        let mut run = Command::new(&me);
        run.arg("--row").args(numbers.map(|number| number.to_string()));
        if growth {
            run.arg("--growth");
        }
        assert!(run.status().expect("it starts").success());
    };
    if args.iter().any(|arg| arg == "--growth") {
        println!("kinds,characters,varying,heaps,ms,gap");
        for (kinds, characters, varying) in growth() {
            run([kinds, characters, 1, 20_000, varying], true);
        }
        return;
    }
    println!(
        "| kinds × characters | table | budget | key | bound | gap | mean | time | peak |"
    );
    println!("| --- | --- | --- | --- | --- | --- | --- | --- | --- |");
    for (kinds, characters, heaps) in ROWS {
        for seed in [1, 2, 3] {
            run([kinds as u64, characters as u64, seed, heaps, 10], false);
        }
    }
}

/// One thing grows at a time.
fn growth() -> Vec<(u64, u64, u64)> {
    let kinds = [25, 50, 100, 200, 400].map(|kinds| (kinds, 60, 10));
    let characters = [15, 30, 60, 120, 240].map(|characters| (100, characters, 10));
    let varying = [0, 5, 10, 20, 30].map(|varying| (100, 60, varying));
    [kinds, characters, varying].concat()
}

fn row([kinds, characters, seed, heaps, varying]: [u64; 5], growth: bool) {
    let mut flora = Flora::of(kinds as usize, characters as usize);
    flora.varying = varying as u8;
    let matrix = flora.draw(seed);
    let before = processor_ms();
    let Built { claim, .. } = build(&matrix, &Wishes::default(), Budget { heaps });
    let ms = processor_ms() - before;
    let gap = (number(claim.total) / number(claim.lower_bound) - 1.0) * 100.0;
    if growth {
        println!("{kinds},{characters},{varying},{},{ms},{gap:.2}", claim.heaps);
        return;
    }
    println!(
        "| {kinds} × {characters} | {seed} | {heaps} | {:.1} | {:.1} | {gap:.2} % | {:.2} | {:.2} s | {} MiB |",
        number(claim.total),
        number(claim.lower_bound),
        number(claim.mean_questions),
        ms as f64 / 1e3,
        status("VmHWM") / 1024,
    );
}

fn number(share: Share) -> f64 {
    *share.numer() as f64 / *share.denom() as f64
}

/// Processor time of this process, in the kernel's hundredths of a second.
fn processor_ms() -> u64 {
    let stat = std::fs::read_to_string("/proc/self/stat").unwrap_or_default();
    let fields = stat.rsplit(')').next().unwrap_or_default();
    let user = fields.split_whitespace().nth(11).and_then(|ticks| ticks.parse::<u64>().ok());
    user.unwrap_or(0) * 10
}

fn status(field: &str) -> u64 {
    let status = std::fs::read_to_string("/proc/self/status").unwrap_or_default();
    let line = status.lines().find(|line| line.starts_with(field));
    line.and_then(|line| line.split_whitespace().nth(1)?.parse().ok()).unwrap_or(0)
}
