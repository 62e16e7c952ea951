//! Mends of leaves in words, and why one cannot be done.

use spinney_model::limits::MENDS;
use spinney_model::{CannotMend, Mend, NoMend};

use crate::Tongue;

/// What a person said of a leaf: `leaf 3 is no leaf`.
pub fn mend(t: Tongue, mend: &Mend) -> String {
    match mend {
        Mend::NoLeaf { leaf } => t.with("mend-no-leaf", &[("leaf", leaf)]),
        Mend::ALeaf { .. } => t.say("mend-a-leaf"),
        Mend::Two { leaf, .. } => t.with("mend-two", &[("leaf", leaf)]),
        Mend::PartOf { part, leaf } => {
            t.with("mend-part-of", &[("part", part), ("leaf", leaf)])
        }
        Mend::Base { leaf, .. } => t.with("mend-base", &[("leaf", leaf)]),
        Mend::Length { mm, .. } => {
            t.with("mend-length", &[("mm", &t.decimal(&mm.to_string()))])
        }
        Mend::Tip { leaf, .. } => t.with("mend-tip", &[("leaf", leaf)]),
    }
}

/// Why a mend cannot be done: a sentence, and a remedy.
pub fn cannot_mend(t: Tongue, why: CannotMend) -> (String, String) {
    match why {
        CannotMend::NoSuchLeaf { leaf } => t.told("mend-no-such-leaf", &[("leaf", &leaf)]),
        CannotMend::NothingThere => t.told("mend-nothing-there", &[]),
        CannotMend::NotWhole => t.told("mend-not-whole", &[]),
        CannotMend::NoLength => t.told("mend-no-length", &[]),
        CannotMend::NotAcross { leaf } => t.told("mend-not-across", &[("leaf", &leaf)]),
        CannotMend::PartOfItself { leaf } => t.told("mend-part-of-itself", &[("leaf", &leaf)]),
        CannotMend::TooMany => t.told("mend-many", &[("count", &MENDS)]),
        CannotMend::FarOff { leaf } => t.told("mend-far-off", &[("leaf", &leaf)]),
    }
}

/// Why a line of a file of mends cannot be done: a sentence, and a remedy.
pub fn no_mend(t: Tongue, file: &str, no: &NoMend) -> (String, String) {
    let all: [(&str, &dyn std::fmt::Display); 3] =
        [("file", &file), ("line", &no.line), ("text", &no.text)];
    match no.why {
        None => t.told("mend-line", &all),
        Some(why) => {
            let (sentence, remedy) = cannot_mend(t, why);
            (format!("{} {sentence}", t.with("mend-in-line", &all)), remedy)
        }
    }
}
