//! A thousand kills in the middle of edits: `cargo bench -p spinney --bench killed`.
//!
//! From nothing to figures; it ends with a panic at the first acknowledged edit that is lost or
//! at the first file that does not open. `-- 200` kills two hundred times.

#[path = "../tests/screens/browser.rs"]
mod browser;
#[path = "../tests/screens/killed.rs"]
mod killed;

use std::time::Instant;

fn main() {
    let lives = std::env::args().find_map(|arg| arg.parse().ok()).unwrap_or(1_000);
    let folder = browser::fresh("killed-often");
    let mut acknowledged = 0;
    let begun = Instant::now();
    for life in 0..lives {
        // A new file now and then: a young file is written in other places than a grown one.
        let file = folder.join(format!("walk-{}.spinney", life / 100));
        if life % 100 == 0 {
            drop(spinney_store::Store::create(&file).expect("a new file"));
        }
        acknowledged += killed::one_life(&file, life, 1 + life * 37 % 89);
    }
    println!(
        "{lives} kills in the middle of an edit, in {:.0} s: {acknowledged} acknowledged edits, \
         none lost; every file opened",
        begun.elapsed().as_secs_f64(),
    );
}
