//! How large a place must be, for a leaf to be stuck into it.
//!
//! From the largest leaf of a kind, as the table has measured it, to a place in mm with air around
//! it, or from the length that a person wishes for all of them. Where nobody measured the width of a blade, four fifths of its length are allowed: few
//! kinds are broader (common practice, without a source).

use std::collections::BTreeMap;

use spinney_model::{LeafSize, TaxonIx};

use crate::setting::Setting;

/// Width of a blade in parts of its length, where nobody measured it.
const BROAD: f64 = 0.8;
/// Air around a leaf, on both sides together, in mm.
const AIR: f64 = 8.0;
/// The least side of a place, in mm: something smaller is found again in it, and named.
const LEAST: f64 = 40.0;

/// How much of a leaf must have room.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(crate) enum Whole {
    /// The blade and the stalk.
    Leaf,
    /// The blade; the stalk is cut off or bent.
    Blade,
    /// At most so many mm of the blade.
    AtMost(f64),
}

/// The places of the kinds whose leaves were measured, width and height; of all kinds, where
/// somebody wished how long a leaf has room.
pub(crate) fn of_kinds(setting: &Setting, whole: Whole) -> BTreeMap<TaxonIx, (f64, f64)> {
    let kinds = setting.booklet.matrix.taxon_indices();
    kinds.filter_map(|kind| Some((kind, place(leaf(setting, kind)?, whole)))).collect()
}

/// The leaf that is to have room in the place of a kind.
pub(crate) fn leaf(setting: &Setting, kind: TaxonIx) -> Option<LeafSize> {
    match setting.booklet.sizes.places {
        Some(wished) => {
            let blade = f64::from(wished.mm());
            Some(LeafSize { blade, width: None, stalk: None })
        }
        None => setting.leaves().get(kind.0).copied().flatten(),
    }
}

/// The kinds whose largest measured blade is longer or broader than its place, whatever was wished: the
/// places by kind, with air, upright or on their side.
pub(crate) fn too_large<'p>(
    setting: &Setting,
    places: impl IntoIterator<Item = (TaxonIx, &'p (f64, f64))>,
) -> Vec<TaxonIx> {
    let longer = |kind: TaxonIx, place: (f64, f64)| {
        let measured = setting.leaves().get(kind.0).copied().flatten()?;
        let (w, h) = bare(measured);
        let over = |one: f64, other: f64| one + AIR > other + 0.01;
        Some(over(w.max(h), place.0.max(place.1)) || over(w.min(h), place.0.min(place.1)))
    };
    let places = places.into_iter();
    let places = places.filter(|(kind, place)| longer(*kind, **place) == Some(true));
    places.map(|(kind, _)| kind).collect()
}

/// Whose leaves these are, and what to stick there; None: all have room.
pub(crate) fn told_too_large(setting: &Setting, kinds: &[TaxonIx]) -> Option<String> {
    let names: Vec<_> = kinds.iter().map(|kind| setting.name(*kind)).collect();
    let words = || setting.t().with("sheet-leaf-too-large", &[("kinds", &names.join(", "))]);
    (!kinds.is_empty()).then(words)
}

/// The blade alone, without air, width and height.
pub(crate) fn bare(size: LeafSize) -> (f64, f64) {
    (size.width.unwrap_or(size.blade * BROAD), size.blade)
}

/// The place for a leaf.
pub(crate) fn place(size: LeafSize, whole: Whole) -> (f64, f64) {
    let (width, _) = bare(size);
    let stalk = size.stalk.unwrap_or(0.0);
    let (w, h) = match whole {
        Whole::Leaf => (width, size.blade + stalk),
        Whole::Blade => (width, size.blade),
        Whole::AtMost(most) => (width.min(most), size.blade.min(most)),
    };
    ((w + AIR).max(LEAST), (h + AIR).max(LEAST))
}
