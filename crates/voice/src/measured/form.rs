//! What the outline of a leaf says besides lengths, in words.
//!
//! From its form to phrases, in the words that the glossary explains.

use spinney_model::{Arrangement, LeafForm, Lobes};

use super::rounded;
use crate::Tongue;

/// What is to be said of a leaf's form: `7 lobes, like a feather`, `deepest gap 52 ± 6 % of the
/// way in`.
pub fn form(t: Tongue, form: &LeafForm) -> Vec<String> {
    lobes(t, &form.lobes)
}

fn lobes(t: Tongue, lobes: &Lobes) -> Vec<String> {
    let Some(sinuses) = &lobes.sinuses else { return vec![t.say("measure-unlobed")] };
    let count = t.count("measure-lobes", lobes.count());
    let half = 100.0 * sinuses.plus_minus;
    let [depth, half] = [100.0 * sinuses.depth, half].map(|it| t.decimal(&rounded(it, half)));
    vec![
        arranged(t, sinuses.arrangement, &count),
        t.with("measure-deepest-gap", &[("depth", &depth), ("half", &half)]),
    ]
}

fn arranged(t: Tongue, arrangement: Option<Arrangement>, what: &str) -> String {
    match arrangement {
        None => what.to_owned(),
        Some(Arrangement::Feather) => t.with("measure-like-a-feather", &[("what", &what)]),
        Some(Arrangement::Hand) => t.with("measure-like-a-hand", &[("what", &what)]),
    }
}
