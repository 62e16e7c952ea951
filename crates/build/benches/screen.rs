//! What a screen waits for while a hand moves: a table of one evening, all at once.
//!
//! `cargo bench -p spinney-build --bench screen`. 12 kinds × 15 characters with three varying
//! kinds and two measures (`fixtures::seeded::evening`), seeds 1 to 25; each time is the median
//! of eleven runs of: the best key with its proof, every alternative at every question, and the
//! price of two wishes; and, apart, of counting the keys that are as good. One core; from the
//! matrix on.

use std::time::{Duration, Instant};

use spinney_build::{Budget, Search};
use spinney_fixtures::seeded;
use spinney_model::{Early, Goal, Matrix, SeenOn, TaxonIx, Wishes};

const RUNS: usize = 11;

fn main() {
    let seeds = 1..=25_u64;
    let tables: Vec<Matrix> = seeds.map(seeded::evening).collect();
    println!("| what | median | worst of 25 tables | not proved |");
    println!("| --- | --- | --- | --- |");
    row("the best key and its proof", &tables, |matrix| {
        let mut search = Search::new(matrix, &Wishes::default());
        search.step(Budget::default().heaps);
        search.finish().claim.optimal()
    });
    row("with every alternative at every question", &tables, |matrix| {
        all(&mut Search::new(matrix, &Wishes::default()))
    });
    row("the same under two wishes, with the price of each", &tables, |matrix| {
        let early = vec![Early::Part(TaxonIx(0), TaxonIx(1))];
        let wishes = Wishes { early, hand: Some(SeenOn::Leaf), ..Wishes::default() };
        all(&mut Search::new(matrix, &wishes))
    });
    row("the same with no ruler first, then no long way", &tables, |matrix| {
        let goals = vec![Goal::FewestRulers, Goal::ShortestLongestPath];
        all(&mut Search::new(matrix, &Wishes { goals, ..Wishes::default() }))
    });
    row("the number of keys as good alone", &tables, |matrix| {
        let mut search = Search::new(matrix, &Wishes::default());
        search.best_keys(0, Budget::default()).sure
    });
}

/// Key, proof, prices and alternatives; whether all is proved.
fn all(search: &mut Search) -> bool {
    search.step(Budget::default().heaps);
    let built = search.finish();
    let reasons = search.explain(&built.key, Budget::default());
    let alternatives = reasons.iter().flat_map(|reasons| &reasons.alternatives);
    built.claim.optimal()
        && built.claim.prices.iter().all(|price| price.exact)
        && alternatives.into_iter().all(|alternative| alternative.exact)
}

fn row(what: &str, tables: &[Matrix], work: impl Fn(&Matrix) -> bool) {
    let mut times: Vec<Duration> = Vec::new();
    let mut not_proved = 0;
    for matrix in tables {
        let mut runs = Vec::new();
        for run in 0..RUNS {
            let start = Instant::now();
            let proved = work(matrix);
            runs.push(start.elapsed());
            not_proved += usize::from(run == 0 && !proved);
        }
        runs.sort_unstable();
        times.push(runs[RUNS / 2]);
    }
    times.sort_unstable();
    let ms = |time: Duration| time.as_secs_f64() * 1e3;
    let (median, worst) = (ms(times[times.len() / 2]), ms(times[times.len() - 1]));
    println!("| {what} | {median:.2} ms | {worst:.2} ms | {not_proved} |");
}
