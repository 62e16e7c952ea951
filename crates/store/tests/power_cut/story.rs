//! What is done to two collections, step by step: the same for who writes and for who looks.

use std::collections::BTreeSet;

/// How many steps are done to the new collection, and to one of the first form.
pub(crate) const STEPS: [usize; 2] = [64, 3];

/// What a collection holds.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub(crate) struct State {
    pub(crate) lines: Vec<Vec<u8>>,
    pub(crate) pictures: BTreeSet<Vec<u8>>,
}

/// One step.
pub(crate) enum Step {
    /// Lines and pictures come.
    Append(Vec<Vec<u8>>, Vec<Vec<u8>>),
    /// This is all there is from now on.
    Rewrite(State),
}

/// The step of this number, from 1, on what is there.
pub(crate) fn step(number: usize, before: &State) -> Step {
    if number.is_multiple_of(16) {
        let goes = |line: &Vec<u8>| line.windows(4).any(|part| part == b"goes");
        let mut after = before.clone();
        after.lines.retain(|line| !goes(line));
        after.pictures.pop_first();
        return Step::Rewrite(after);
    }
    let line = |part: usize| {
        let length =
            if (number + part).is_multiple_of(9) { 9_000 } else { 40 + number * 31 % 500 };
        let word = if (number + part).is_multiple_of(4) { "goes" } else { "stays" };
        format!("step {number}.{part} {word} {}", "x".repeat(length)).into_bytes()
    };
    let lines = (0..1 + number % 3).map(line).collect();
    let pictures = match number % 7 {
        3 => vec![vec![number as u8; 6_000 + number * 200]],
        _ => Vec::new(),
    };
    Step::Append(lines, pictures)
}

/// What is there after a step.
pub(crate) fn after(number: usize, before: &State) -> State {
    match step(number, before) {
        Step::Rewrite(after) => after,
        Step::Append(lines, pictures) => {
            let mut after = before.clone();
            after.lines.extend(lines);
            after.pictures.extend(pictures);
            after
        }
    }
}
