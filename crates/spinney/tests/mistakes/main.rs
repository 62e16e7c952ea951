//! What people really do at the command line: every mistake of the lists beside this file is
//! made in a fresh folder, and the program has to answer it with what the list wants said.
//!
//! The head of `mistakes.toml` says how an entry is written.

mod entry;
mod made;

use std::collections::BTreeSet;
use std::fmt::Write;
use std::sync::atomic::{AtomicUsize, Ordering};
use std::sync::mpsc;

use entry::Lists;

/// No shorter word says what to do.
const SHORTEST: usize = 5;
/// How many mistakes are made at the same time.
const AT_ONCE: usize = 4;

#[test]
fn every_mistake_is_answered_with_a_sentence_that_helps() {
    let lists = Lists::read();
    let next = AtomicUsize::new(0);
    let (tell, told) = mpsc::channel();
    std::thread::scope(|scope| {
        for _ in 0..AT_ONCE {
            let (tell, next, lists) = (tell.clone(), &next, &lists);
            scope.spawn(move || {
                loop {
                    let at = next.fetch_add(1, Ordering::Relaxed);
                    let Some(mistake) = lists.mistakes.get(at) else { break };
                    tell.send((at, made::wrong_with(mistake, lists)))
                        .expect("somebody listens");
                }
            });
        }
    });
    drop(tell);
    let mut wrong: Vec<(usize, String)> =
        told.into_iter().filter_map(|(at, wrong)| Some((at, wrong?))).collect();
    wrong.sort();
    let mut text = String::new();
    for (at, wrong) in &wrong {
        let mistake = &lists.mistakes[*at];
        let _ = writeln!(text, "\n== {}\n   wanted: {}\n{wrong}", mistake.name, mistake.want);
    }
    assert!(
        wrong.is_empty(),
        "{} of {} mistakes are not answered well.\n{text}",
        wrong.len(),
        lists.mistakes.len()
    );
}

/// A list with which the test above could not fail would prove nothing.
#[test]
fn the_lists_are_as_their_head_says() {
    let lists = Lists::read();
    assert!(lists.mistakes.len() >= 216, "{} mistakes are left", lists.mistakes.len());
    let names: BTreeSet<&str> = lists.mistakes.iter().map(|one| one.name.as_str()).collect();
    assert_eq!(names.len(), lists.mistakes.len(), "two mistakes have one name");
    for mistake in &lists.mistakes {
        let name = &mistake.name;
        assert!(!mistake.says.is_empty(), "{name}: nothing is wanted");
        assert!((0..=2).contains(&mistake.exit), "{name}: the help knows no such exit code");
        let want = entry::plain(&mistake.want);
        for said in &mistake.says {
            assert!(want.contains(&entry::plain(said)), "{name}: “{said}” is not in “want”");
        }
        // What is so comes first, and then what to do: both must really be said.
        if let Some(remedy) = remedy(&want).filter(|_| mistake.exit != 0) {
            let said = mistake.says.iter().map(|said| entry::plain(said));
            let mut of_it = said.filter(|said| said.len() >= SHORTEST && remedy.contains(said));
            assert!(of_it.next().is_some(), "{name}: nothing of “{remedy}” has to be said");
        }
    }
}

/// What follows the first sentence; None: there is only one.
fn remedy(want: &str) -> Option<&str> {
    let (end, _) = want.match_indices(". ").chain(want.match_indices("? ")).min()?;
    let colon = want.find(": ").unwrap_or(end);
    Some(&want[end.min(colon) + 2..])
}
