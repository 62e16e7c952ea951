//! A thousand kills in the middle of edits: `cargo bench -p spinney --bench killed`.
//!
//! From a seed to figures; it ends with a panic at the first acknowledged edit that is lost or
//! at the first file that does not open. `-- 200` kills two hundred times.

#[path = "../tests/screens/browser.rs"]
mod browser;
#[path = "../tests/screens/killed.rs"]
mod killed;

use std::time::Instant;

fn main() {
    let lives = std::env::args().find_map(|arg| arg.parse().ok()).unwrap_or(1_000);
    let folder = browser::fresh("killed-often");
    let mut rng = fastrand::Rng::with_seed(25);
    let (mut acknowledged, mut in_a_request) = (0, 0);
    let begun = Instant::now();
    for life in 0..lives {
        // A new file now and then: a young file is written in other places than a grown one.
        let file = folder.join(format!("walk-{}.spinney", life / 100));
        let fallen = killed::one_life(&file, life, &mut rng);
        acknowledged += fallen.acknowledged;
        in_a_request += usize::from(fallen.in_a_request);
    }
    println!(
        "{lives} kills in {:.0} s: {acknowledged} acknowledged edits, none lost; every file \
         opened; {in_a_request} kills ({:.0} %) in the middle of a request",
        begun.elapsed().as_secs_f64(),
        in_a_request as f64 * 100.0 / lives as f64,
    );
}
