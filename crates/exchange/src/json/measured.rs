//! What was measured of leaves as JSON: what `spinney measure` writes.
//!
//! From measured pictures to pretty-printed JSON with fields in a fixed order, described in
//! `docs/measure.schema.json`. Nothing of it is read back.

use serde::Serialize;
use spinney_model::{
    LeafLines, LeftOut, Measurand, Measure, MeasuredLeaf, MeasuredPicture, NotMeasured,
};

#[cfg(test)]
use super::described;
use super::leaf_form::{EdgeShape, EndsShape, LeafletsShape, LobesShape, VeinsShape};
use crate::measured::words;
use crate::mends;

/// What `spinney measure` writes with --format json. docs/measure.md says how each measure is
/// defined.
#[derive(Serialize)]
#[cfg_attr(test, derive(schemars::JsonSchema))]
pub(super) struct Shape {
    pictures: Vec<PictureShape>,
}

/// A picture.
#[derive(Serialize)]
#[cfg_attr(test, derive(schemars::JsonSchema))]
#[cfg_attr(test, schemars(rename = "Picture"))]
struct PictureShape {
    /// Its file.
    file: String,
    /// In pixels, upright.
    width: u32,
    /// In pixels, upright.
    height: u32,
    /// Dots per inch; null: not known, and then there are no lengths.
    dpi: Option<f64>,
    /// Where that comes from (said: by the person; ruler: by one in the picture; doubtful: the file says 72 or 96), or why it
    /// is not known.
    #[cfg_attr(test, schemars(with = "described::Scale"))]
    scale: &'static str,
    /// Row by row, in each row from the left.
    leaves: Vec<LeafShape>,
    /// What was not measured.
    left_out: Vec<LeftOutShape>,
    /// What a person said of its leaves, in that order: lines as --mends reads them.
    mends: Vec<String>,
}

/// A leaf.
#[derive(Serialize)]
#[cfg_attr(test, derive(schemars::JsonSchema))]
#[cfg_attr(test, schemars(rename = "Leaf"))]
struct LeafShape {
    /// Counted from 1.
    leaf: usize,
    measures: Vec<MeasureShape>,
    /// Null: the blade is in one piece, or it is a rubbing, of which that is not told.
    leaflets: Option<LeafletsShape>,
    /// Null: it is made of leaflets, or it is a rubbing.
    lobes: Option<LobesShape>,
    edge: EdgeShape,
    /// How the blade begins and ends; null: it is lobed, made of leaflets, or a rubbing.
    ends: Option<EndsShape>,
    veins: VeinsShape,
    #[cfg_attr(test, schemars(with = "Vec<described::LeafNote>"))]
    notes: Vec<&'static str>,
    /// The outline of the blade as elliptic Fourier coefficients a, b, c, d of the first ten harmonics (Kuhl and
    /// Giardina 1982), normalised by the first one: whatever its size, place and turn.
    harmonics: Vec<[f64; 4]>,
    /// Around leaf and stalk, in pixels to the right and down; the middle of the first pixel is
    /// at 0, 0. At most 400 points.
    outline: Vec<[f64; 2]>,
    /// From base to tip, in the same pixels.
    midrib: Vec<[f64; 2]>,
    /// From the end of the stalk to the base; empty: none was seen.
    stalk: Vec<[f64; 2]>,
}

/// A measure, or why it is not there.
#[derive(Serialize)]
#[cfg_attr(test, derive(schemars::JsonSchema))]
#[cfg_attr(test, schemars(rename = "Measure"))]
struct MeasureShape {
    #[cfg_attr(test, schemars(with = "described::Measurand"))]
    what: &'static str,
    /// Null: not measured.
    value: Option<f64>,
    /// Half of the 95 % interval; null: not measured.
    plus_minus: Option<f64>,
    #[cfg_attr(test, schemars(with = "described::MeasuredIn"))]
    unit: &'static str,
    #[cfg_attr(test, schemars(with = "described::How"))]
    how: &'static str,
    /// Why it was not measured.
    #[serde(skip_serializing_if = "Option::is_none")]
    #[cfg_attr(test, schemars(with = "Option<described::NotMeasured>"))]
    not_measured: Option<&'static str>,
}

/// What was not measured, and how many there are.
#[derive(Serialize)]
#[cfg_attr(test, derive(schemars::JsonSchema))]
#[cfg_attr(test, schemars(rename = "LeftOut"))]
struct LeftOutShape {
    #[cfg_attr(test, schemars(with = "described::LeftOut"))]
    what: &'static str,
    count: usize,
}

/// The most points of an outline that are written.
const POINTS: usize = 400;

/// Measured pictures, each with the name of its file, as JSON with a line end behind it.
pub fn measured(pictures: &[(String, MeasuredPicture)]) -> String {
    super::printed(&Shape { pictures: pictures.iter().map(picture).collect() })
}

/// Takes what is not written out of the lines of a leaf: what follows is written as before.
pub fn thin(lines: &mut LeafLines) {
    let step = step(&lines.outline);
    lines.outline = lines.outline.iter().copied().step_by(step).collect();
    lines.blade = Vec::new();
}

/// Every how manyeth point of an outline is written.
fn step(outline: &[[f64; 2]]) -> usize {
    outline.len().div_ceil(POINTS).max(1)
}

fn picture((file, picture): &(String, MeasuredPicture)) -> PictureShape {
    let left_out = |(what, count): &(LeftOut, usize)| LeftOutShape {
        what: words::left_out(*what),
        count: *count,
    };
    PictureShape {
        file: file.clone(),
        width: picture.size.0,
        height: picture.size.1,
        dpi: picture.scale.mm().map(|mm| rounded(25.4 / mm)),
        scale: words::scale(picture.scale),
        leaves: picture.leaves.iter().map(leaf).collect(),
        left_out: picture.left_out.iter().map(left_out).collect(),
        mends: picture.mends.iter().map(mends::in_words).collect(),
    }
}

fn leaf(leaf: &MeasuredLeaf) -> LeafShape {
    let step = step(&leaf.lines.outline);
    LeafShape {
        leaf: leaf.number,
        measures: leaf.measures.iter().map(measure).collect(),
        leaflets: leaf.form.leaflets.as_ref().map(LeafletsShape::of),
        lobes: leaf.form.lobes.as_ref().map(LobesShape::of),
        edge: EdgeShape::of(&leaf.form.edge),
        ends: leaf.form.ends.as_ref().map(EndsShape::of),
        veins: VeinsShape::of(&leaf.form.veins),
        notes: leaf.notes.iter().map(|note| words::note(*note)).collect(),
        harmonics: leaf.harmonics.iter().map(|harmonic| harmonic.map(finely)).collect(),
        outline: points(&leaf.lines.outline, step),
        midrib: points(&leaf.lines.midrib, 1),
        stalk: points(&leaf.lines.stalk, 1),
    }
}

fn measure(measure: &Result<Measure, (Measurand, NotMeasured)>) -> MeasureShape {
    let (what, found, why) = match measure {
        Ok(measure) => (measure.what, Some(measure), None),
        Err((what, why)) => (*what, None, Some(*why)),
    };
    MeasureShape {
        what: words::measurand(what),
        value: found.map(|measure| finely(measure.value)),
        plus_minus: found.map(|measure| finely(measure.plus_minus)),
        unit: what.unit().sign(),
        how: words::how(what.how()),
        not_measured: why.map(words::not_measured),
    }
}

/// Every so many points of a line.
pub(super) fn points(line: &[[f64; 2]], step: usize) -> Vec<[f64; 2]> {
    line.iter().step_by(step).map(|point| point.map(rounded)).collect()
}

/// To a hundredth of a pixel.
fn rounded(value: f64) -> f64 {
    (value * 100.0).round() / 100.0
}

/// Finer than any ±.
pub(super) fn finely(value: f64) -> f64 {
    (value * 1e6).round() / 1e6
}
