//! The screens is killed at any moment, and nothing that it acknowledged is lost.

use std::path::Path;
use std::sync::atomic::{AtomicBool, Ordering};
use std::sync::mpsc;
use std::time::{Duration, Instant};

use fastrand::Rng;
use spinney_store::Store;

use super::browser::{Screens, signal};

/// What a kill found.
pub(crate) struct Fallen {
    /// Edits that were acknowledged in this life.
    pub(crate) acknowledged: usize,
    /// A request was under way.
    pub(crate) in_a_request: bool,
}

/// Opens a file, makes edits without a pause, kills the screens at a random moment, and looks
/// into the file. `round` marks the names of this life.
pub(crate) fn one_life(file: &Path, round: usize, rng: &mut Rng) -> Fallen {
    let screens = Screens::open(Some(file));
    let process = screens.process.id();
    let (enough, part) = (rng.usize(0..6), rng.f64() * 2.0);
    let asking = AtomicBool::new(false);
    let (kept, acknowledged) = mpsc::channel();
    let (names, in_a_request) = std::thread::scope(|scope| {
        let (screens, asking) = (&screens, &asking);
        let editor = scope.spawn(move || {
            let mut names = Vec::new();
            for number in 0.. {
                let name = format!("life {round} find {number}");
                let begun = Instant::now();
                asking.store(true, Ordering::SeqCst);
                let answer = screens.try_post("/do/add-kinds", &[("names", &name)]);
                asking.store(false, Ordering::SeqCst);
                match answer {
                    Ok(answer) if answer.status == 303 => names.push(name),
                    Ok(answer) => panic!("{}: {}", answer.status, answer.text()),
                    Err(_) => break,
                }
                // Nobody listens any more once the kill is near.
                let _ = kept.send(begun.elapsed());
            }
            names
        });
        // The kill comes after some edits, somewhere in the time that two more would take.
        let last = acknowledged.iter().take(enough).last().unwrap_or(Duration::from_millis(5));
        std::thread::sleep(last.mul_f64(part));
        let in_a_request = asking.load(Ordering::SeqCst);
        signal("KILL", process);
        (editor.join().expect("the editor ends"), in_a_request)
    });
    drop(screens);
    let store = Store::open(file).expect("the file opens");
    let rows = store.rows(0).expect("its lines are whole");
    let journal: Vec<u8> = rows.into_iter().flat_map(|row| row.bytes).collect();
    let journal = String::from_utf8(journal).expect("lines are text");
    for name in &names {
        assert!(journal.contains(&format!("\"{name}\"")), "{name} was acknowledged and lost");
    }
    Fallen { acknowledged: names.len(), in_a_request }
}

#[test]
fn nothing_acknowledged_is_lost_by_a_kill() {
    let file = super::browser::fresh("killed").join("walk.spinney");
    let mut rng = Rng::with_seed(4);
    let lives: Vec<Fallen> = (0..30).map(|round| one_life(&file, round, &mut rng)).collect();
    let acknowledged: usize = lives.iter().map(|life| life.acknowledged).sum();
    let in_a_request = lives.iter().filter(|life| life.in_a_request).count();
    assert!(acknowledged > 30, "only {acknowledged} edits in 30 lives");
    assert!(in_a_request >= 9, "only {in_a_request} of 30 in the middle of a request");
}
