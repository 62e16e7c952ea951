//! What the outline of a leaf answers of the good questions to begin with.
//!
//! From the form of a measured leaf to a state of a question's column, a count, or that there is
//! nothing to be asked. What an outline does not tell is left open, never guessed.
//!
//! Source: Ellis et al. 2009, *Manual of Leaf Architecture* (from memory): widest in the middle fifth is
//! elliptic, below it ovate, above it obovate.

use spinney_model::{Arrangement, BaseForm, EdgeKind, Ends, LeafForm, TipForm, WhichSide};

use super::{Holds, STARTERS, Starter};
use crate::Tongue;
use crate::measured::is_clear;

/// The questions that an outline can answer, in the order of their columns; those that it answers of
/// nearly every leaf stand first.
pub const SEEN: [&str; 10] = [
    "leaf-form",
    "leaflets",
    "leaf-lobes",
    "how-lobed",
    "leaf-edge",
    "teeth-sizes",
    "widest-part",
    "leaf-tip",
    "leaf-base",
    "lopsided-base",
];

/// The middle fifth of a blade, from its base on.
const MIDDLE: (f64, f64) = (0.4, 0.6);

/// What a leaf says of a question.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum Look {
    /// One of its states, by its place.
    State(usize),
    /// So many.
    Count(u32),
    /// It cannot be asked of this leaf: it has no leaflets to count.
    NotThere,
}

impl Look {
    /// What it says of one of [`SEEN`]; None: the outline does not tell.
    pub fn of(form: &LeafForm, question: &str) -> Option<Self> {
        let in_pieces = form.leaflets.is_some();
        match question {
            "leaf-form" => Some(Self::State(match &form.leaflets {
                None => 0,
                Some(leaflets) => by_arrangement(leaflets.arrangement, 1, 2),
            })),
            "leaflets" => Some(form.leaflets.as_ref().map_or(Self::NotThere, |leaflets| {
                Self::Count(u32::try_from(leaflets.middles.len()).unwrap_or(u32::MAX))
            })),
            "leaf-lobes" | "how-lobed" | "widest-part" | "leaf-base" | "lopsided-base"
                if in_pieces =>
            {
                Some(Self::NotThere)
            }
            "leaf-lobes" => {
                let sinuses = &form.lobes.as_ref()?.sinuses;
                Some(Self::State(usize::from(sinuses.is_none())))
            }
            "how-lobed" => match &form.lobes.as_ref()?.sinuses {
                None => Some(Self::NotThere),
                Some(sinuses) => {
                    sinuses.arrangement.map(|it| Self::State(by_arrangement(it, 1, 0)))
                }
            },
            "leaf-edge" => Some(Self::State(match form.edge.as_ref().ok()?.kind {
                EdgeKind::Entire => 0,
                EdgeKind::Toothed | EdgeKind::DoubleToothed | EdgeKind::ToothedOrDouble => 1,
                EdgeKind::Wavy => 2,
                EdgeKind::Spiny => 3,
            })),
            "teeth-sizes" => match form.edge.as_ref().ok()?.kind {
                EdgeKind::Entire | EdgeKind::Wavy | EdgeKind::Spiny => Some(Self::NotThere),
                EdgeKind::Toothed => Some(Self::State(0)),
                EdgeKind::DoubleToothed => Some(Self::State(1)),
                EdgeKind::ToothedOrDouble => None,
            },
            "widest-part" => form.ends.as_ref().and_then(widest),
            "leaf-tip" => {
                let ends = form.ends.as_ref().filter(|ends| is_clear(ends.tip_angle))?;
                Some(Self::State(match ends.tip {
                    TipForm::DrawnOut | TipForm::Pointed => 0,
                    TipForm::Rounded => 1,
                    TipForm::Notched => 2,
                }))
            }
            "leaf-base" => {
                match form.ends.as_ref().filter(|it| is_clear(it.base_angle))?.base {
                    BaseForm::HeartShaped => Some(Self::State(0)),
                    BaseForm::Rounded => Some(Self::State(1)),
                    BaseForm::WedgeShaped | BaseForm::DrawnIn => Some(Self::State(2)),
                    // Whoever looks at it may say either.
                    BaseForm::CutOff => None,
                }
            }
            // How low a side hangs behind the stalk is not where it starts.
            "lopsided-base" if form.ends.as_ref()?.sides.behind => None,
            "lopsided-base" => match form.ends.as_ref()?.sides.lower?.which? {
                WhichSide::Left | WhichSide::Right => Some(Self::State(0)),
                WhichSide::Neither => Some(Self::State(1)),
            },
            _ => None,
        }
    }

    /// As it is typed into the column; None: the question has no such answer.
    pub fn text(self, of: &Starter, t: Tongue) -> Option<String> {
        match self {
            Self::State(at) => of.answers(t).into_iter().nth(at),
            Self::Count(count) => (of.holds == Holds::Counts).then(|| count.to_string()),
            Self::NotThere => Some("n/a".to_owned()),
        }
    }
}

/// The question whose column is called so, in any language, if it is one that an outline can answer.
pub fn seen_in(column: &str) -> Option<&'static Starter> {
    let plain = |name: &str| name.trim().to_lowercase();
    let is = |starter: &&Starter| {
        SEEN.contains(&starter.id)
            && Tongue::all().any(|t| plain(&starter.name(t)) == plain(column))
    };
    STARTERS.iter().find(is)
}

fn by_arrangement(arrangement: Arrangement, feather: usize, hand: usize) -> usize {
    match arrangement {
        Arrangement::Feather => feather,
        Arrangement::Hand => hand,
    }
}

/// Where a blade is widest, if all of its ± is in one part.
fn widest(ends: &Ends) -> Option<Look> {
    let part = |at: f64| match at {
        _ if at < MIDDLE.0 => 0,
        _ if at <= MIDDLE.1 => 1,
        _ => 2,
    };
    let (value, half) = (ends.widest.value, ends.widest.plus_minus);
    (part(value - half) == part(value + half)).then(|| Look::State(part(value)))
}

#[cfg(test)]
mod tests;
