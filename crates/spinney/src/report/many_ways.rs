//! What a key with several ways takes, against questions of yes and no, in a teacher's words.

use spinney_build::{Budget, build};
use spinney_model::{Goal, ManyWays, Matrix, Stopped, Wishes};

use super::{Ink, decimal, push_wrapped};

const INDENT: &str = "  ";

/// How many looks a find takes, whether that is the least, and what yes and no alone would take.
pub(crate) fn many_ways(
    ink: &Ink,
    matrix: &Matrix,
    wishes: &Wishes,
    found: &ManyWays,
    most: usize,
) -> String {
    let mut text = format!("{}\n", ink.bold("What it takes"));
    if found.key.couplets.is_empty() {
        push_wrapped(&mut text, INDENT, nothing_asked(found));
        return text;
    }
    let looks = |steps| decimal(steps, 2);
    let proof = match found.stopped {
        None => "no key of this kind takes less effort".to_owned(),
        Some(_) => format!(
            "the search stopped after {} heaps; an effort below {} is not possible",
            found.heaps,
            decimal(found.lower_bound, 2)
        ),
    };
    let sentence = format!(
        "A find takes {} questions on average and {} at most, each of up to {most} ways; {proof}.",
        looks(found.mean_steps),
        found.longest
    );
    push_wrapped(&mut text, INDENT, &sentence);
    let plain = Wishes { goals: vec![Goal::LeastEffort], ..wishes.clone() };
    let plain = build(matrix, &plain, Budget::default()).claim;
    let sentence = format!(
        "With yes and no alone it is {} on average and {} at most. Questions of several ways \
         save steps and cost attention: they are for grown-ups, and no sheet for pupils has them.",
        looks(plain.mean_steps),
        plain.longest
    );
    push_wrapped(&mut text, INDENT, &sentence);
    text
}

fn nothing_asked(found: &ManyWays) -> &'static str {
    match found.stopped {
        Some(Stopped::Overflow) => {
            "No key: exact numbers for this table grow too large. Write rounder counts, or fill \
             in unknown cells."
        }
        _ => "Nothing can be asked that parts two of these kinds.",
    }
}
