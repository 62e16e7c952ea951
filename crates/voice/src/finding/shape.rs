//! What is said of the shape of a key: what may hurt, what tires, and what is good.

use spinney_model::OfShape;

use super::Told;
use super::phrases::{about, all};
use crate::Tongue;

pub(super) fn told(t: Tongue, fact: &OfShape) -> Told {
    match fact {
        OfShape::TouchCaution { question, kinds, otherwise } => {
            let (says, remedy) = t.told_of(
                "finding-touch",
                kinds.len(),
                &[("question", question), ("kinds", &all(t, kinds))],
            );
            let first = |name: &String| {
                t.with("finding-touch-otherwise", &[("about", &about(t, name))])
            };
            (says, otherwise.as_ref().map_or(remedy, first))
        }
        OfShape::Comb { question, in_a_row } => {
            t.told("finding-comb", &[("question", question), ("count", in_a_row)])
        }
        OfShape::LongPath { longest, kinds, even } => t.told(
            "finding-long-path",
            &[("longest", longest), ("kinds", kinds), ("even", even)],
        ),
        OfShape::GoodQuestion { question, kinds } => {
            t.told("finding-good-question", &[("question", question), ("kinds", kinds)])
        }
    }
}
