//! What the outline of a leaf says besides lengths, as JSON: a part of what `measured` writes.

use serde::Serialize;
use spinney_model::Lobes;

#[cfg(test)]
use super::described;
use super::measured::{finely, points};
use crate::measured::words;

/// The lobes of a blade.
#[derive(Serialize)]
#[cfg_attr(test, derive(schemars::JsonSchema))]
#[cfg_attr(test, schemars(rename = "Lobes"))]
pub(super) struct LobesShape {
    /// How many; 1: it is not lobed.
    count: usize,
    /// The tip of each, in pixels, from one side of the base around to the other.
    tips: Vec<[f64; 2]>,
    /// What is between them; null: it is not lobed.
    sinuses: Option<SinusesShape>,
}

/// The sinuses between lobes.
#[derive(Serialize)]
#[cfg_attr(test, derive(schemars::JsonSchema))]
#[cfg_attr(test, schemars(rename = "Sinuses"))]
struct SinusesShape {
    /// How far the deepest reaches in, as a share of the way to the midrib or the centre.
    depth: f64,
    /// Half of the 95 % interval of that.
    plus_minus: f64,
    /// Null: the outline alone does not say.
    #[cfg_attr(test, schemars(with = "Option<described::Arrangement>"))]
    arrangement: Option<&'static str>,
    /// The innermost place of each, in pixels.
    places: Vec<[f64; 2]>,
}

impl LobesShape {
    pub(super) fn of(lobes: &Lobes) -> Self {
        let sinuses = lobes.sinuses.as_ref().map(|sinuses| SinusesShape {
            depth: finely(sinuses.depth),
            plus_minus: finely(sinuses.plus_minus),
            arrangement: sinuses.arrangement.map(words::arrangement),
            places: points(&sinuses.places, 1),
        });
        Self { count: lobes.count(), tips: points(&lobes.tips, 1), sinuses }
    }
}
