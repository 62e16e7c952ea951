//! What a leaf says besides lengths, as JSON: a part of what `measured` writes.

use serde::Serialize;
use spinney_model::{
    Edge, EdgeUnseen, Ends, Leaflets, Lobes, OneSide, Veins, VeinsUnseen, WithPlusMinus,
};

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

/// The leaflets of a leaf.
#[derive(Serialize)]
#[cfg_attr(test, derive(schemars::JsonSchema))]
#[cfg_attr(test, schemars(rename = "Leaflets"))]
pub(super) struct LeafletsShape {
    /// How many.
    count: usize,
    #[cfg_attr(test, schemars(with = "described::Arrangement"))]
    arrangement: &'static str,
    /// Whether there is one at the end; null: they are like a hand.
    at_end: Option<bool>,
    /// The middle of each, in pixels, from the base of the leaf on.
    middles: Vec<[f64; 2]>,
}

impl LeafletsShape {
    pub(super) fn of(leaflets: &Leaflets) -> Self {
        Self {
            count: leaflets.middles.len(),
            arrangement: words::arrangement(leaflets.arrangement),
            at_end: leaflets.at_end,
            middles: points(&leaflets.middles, 1),
        }
    }
}

/// The edge of a blade, or of its leaflets.
#[derive(Serialize)]
#[cfg_attr(test, derive(schemars::JsonSchema))]
#[cfg_attr(test, schemars(rename = "Edge"))]
pub(super) struct EdgeShape {
    /// How it is; null: it was not seen.
    #[cfg_attr(test, schemars(with = "Option<described::EdgeKind>"))]
    kind: Option<&'static str>,
    /// The tips of teeth or waves on the left, seen with the tip of the leaf up, in pixels; of an edge
    /// that is double-toothed those of the large ones; of leaflets those on the left of each.
    left: Vec<[f64; 2]>,
    /// The same on the right.
    right: Vec<[f64; 2]>,
    /// How many are in a cm; null: there are none, or the scale is not known.
    per_cm: Option<f64>,
    /// Half of the 95 % interval of that.
    plus_minus: Option<f64>,
    /// Why it was not seen.
    #[serde(skip_serializing_if = "Option::is_none")]
    #[cfg_attr(test, schemars(with = "Option<described::EdgeUnseen>"))]
    not_seen: Option<&'static str>,
}

impl EdgeShape {
    pub(super) fn of(edge: &Result<Edge, EdgeUnseen>) -> Self {
        let seen = edge.as_ref().ok();
        let side = |side: usize| seen.map_or(Vec::new(), |edge| points(&edge.teeth[side], 1));
        let per_cm = seen.and_then(|edge| edge.per_cm);
        Self {
            kind: seen.map(|edge| words::edge_kind(edge.kind)),
            left: side(0),
            right: side(1),
            per_cm: per_cm.map(|it| finely(it.value)),
            plus_minus: per_cm.map(|it| finely(it.plus_minus)),
            not_seen: edge.as_ref().err().map(|why| words::edge_unseen(*why)),
        }
    }
}

/// The veins of a blade.
#[derive(Serialize)]
#[cfg_attr(test, derive(schemars::JsonSchema))]
#[cfg_attr(test, schemars(rename = "Veins"))]
pub(super) struct VeinsShape {
    /// The main vein, from the base on, in pixels; empty: no veins are told.
    main: Vec<[f64; 2]>,
    /// The side veins on the left, seen with the tip of the leaf up, the one nearest to the base
    /// first: each from the main vein outwards.
    left: Vec<Vec<[f64; 2]>>,
    /// The same on the right.
    right: Vec<Vec<[f64; 2]>>,
    /// How those on the left stand to those on the right; null: it cannot be told.
    #[cfg_attr(test, schemars(with = "Option<described::VeinPairs>"))]
    pairs: Option<&'static str>,
    /// Why no side veins are told.
    #[serde(skip_serializing_if = "Option::is_none")]
    #[cfg_attr(test, schemars(with = "Option<described::VeinsUnseen>"))]
    not_told: Option<&'static str>,
}

impl VeinsShape {
    pub(super) fn of(veins: &Result<Veins, VeinsUnseen>) -> Self {
        let seen = veins.as_ref().ok();
        let side = |side: usize| {
            let lines = seen.into_iter().flat_map(|veins| &veins.sides[side]);
            lines.map(|line| points(line, 1)).collect()
        };
        Self {
            main: seen.map_or(Vec::new(), |veins| points(&veins.main, 1)),
            left: side(0),
            right: side(1),
            pairs: seen.and_then(|veins| veins.pairs).map(words::vein_pairs),
            not_told: veins.as_ref().err().map(|why| words::veins_unseen(*why)),
        }
    }
}

/// How a blade begins and ends.
#[derive(Serialize)]
#[cfg_attr(test, derive(schemars::JsonSchema))]
#[cfg_attr(test, schemars(rename = "Ends"))]
pub(super) struct EndsShape {
    /// How far up it is widest: 0 at the base, 1 at the tip.
    widest: WithPlusMinusShape,
    #[cfg_attr(test, schemars(with = "described::BaseForm"))]
    base: &'static str,
    /// In degrees; null: it is heart-shaped.
    base_angle: Option<WithPlusMinusShape>,
    #[cfg_attr(test, schemars(with = "described::TipForm"))]
    tip: &'static str,
    /// In degrees; null: it is notched.
    tip_angle: Option<WithPlusMinusShape>,
    /// How much further down one side of the base reaches than the other, as a share of the blade's
    /// length; null: there is no stalk from which both sides could be seen to begin.
    lower: Option<OneSideShape>,
    /// What the wider side has of the width in the lowest part of the blade; null: the main vein is not seen.
    wider: Option<OneSideShape>,
}

/// What one side of a base has more of.
#[derive(Serialize)]
#[cfg_attr(test, derive(schemars::JsonSchema))]
#[cfg_attr(test, schemars(rename = "OneSide"))]
struct OneSideShape {
    value: f64,
    plus_minus: f64,
    /// Which side it is, seen with the tip of the leaf up; null: that cannot be told.
    #[cfg_attr(test, schemars(with = "Option<described::WhichSide>"))]
    which: Option<&'static str>,
}

/// A number with half of its 95 % interval.
#[derive(Serialize)]
#[cfg_attr(test, derive(schemars::JsonSchema))]
#[cfg_attr(test, schemars(rename = "WithPlusMinus"))]
struct WithPlusMinusShape {
    value: f64,
    plus_minus: f64,
}

impl EndsShape {
    pub(super) fn of(ends: &Ends) -> Self {
        let number = |of: WithPlusMinus| WithPlusMinusShape {
            value: finely(of.value),
            plus_minus: finely(of.plus_minus),
        };
        let side = |of: OneSide| OneSideShape {
            value: finely(of.value.value),
            plus_minus: finely(of.value.plus_minus),
            which: of.which.map(words::which_side),
        };
        Self {
            widest: number(ends.widest),
            base: words::base_form(ends.base),
            base_angle: ends.base_angle.map(number),
            tip: words::tip_form(ends.tip),
            tip_angle: ends.tip_angle.map(number),
            lower: ends.sides.lower.map(side),
            wider: ends.sides.wider.map(side),
        }
    }
}
