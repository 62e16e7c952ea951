//! How finds spread as JSON: what `spinney spread` writes.
//!
//! From the words of the model to pretty-printed JSON with fields in a fixed order, described in
//! `docs/spread.schema.json`. Nothing of it is read back.

use serde::Serialize;
use serde_json::Number;
use spinney_model::{
    CharacterIx, Cut, Finding, Matrix, Outlier, Specimens, Spread, SpreadOf, TaxonIx, Trust,
};

#[cfg(test)]
use super::described;
use super::{Say, number, shape, write};

/// What `spinney spread` writes with --format json. Names of kinds (taxa) and characters are
/// those of the table; lengths are in millimetres, whatever the table has them in. Only finds
/// with one number count. docs/specimens.md says how each number is worked out.
#[derive(Serialize)]
#[cfg_attr(test, derive(schemars::JsonSchema))]
pub(super) struct Shape {
    /// How many rows with a find there are.
    finds: usize,
    kinds: usize,
    /// Of every kind and every character in numbers: all of its finds, then each part that is
    /// marked.
    spread: Vec<SpreadShape>,
    /// Of every two kinds and every character in numbers the best cut; null: there are too many
    /// kinds to compare.
    cuts: Option<Vec<CutShape>>,
    /// What was found in reading the table.
    findings: Vec<shape::Finding>,
}

/// How one kind spreads in one character.
#[derive(Serialize)]
#[cfg_attr(test, derive(schemars::JsonSchema))]
#[cfg_attr(test, schemars(rename = "Spread"))]
struct SpreadShape {
    taxon: String,
    character: String,
    /// mm, °, g, or nothing.
    unit: &'static str,
    /// The part of the plant; null: all finds of the kind.
    part: Option<String>,
    finds: usize,
    /// Null: that is not written of each find.
    plants: Option<usize>,
    least: Number,
    most: Number,
    mean: f64,
    /// The standard deviation, with n - 1; null: one find has none.
    standard_deviation: Option<f64>,
    /// Finds beyond the fences of Tukey (1977). They count all the same.
    outliers: Vec<OutlierShape>,
}

/// A find far from the others of its kind.
#[derive(Serialize)]
#[cfg_attr(test, derive(schemars::JsonSchema))]
#[cfg_attr(test, schemars(rename = "Outlier"))]
struct OutlierShape {
    value: Number,
    /// The row of the table, counted from 1.
    row: u32,
    /// What the find is called there; empty: nothing.
    find: String,
    picture: String,
    /// Beyond the outer fence, not only beyond the inner one.
    far: bool,
}

/// The best cut between two kinds in one character.
#[derive(Serialize)]
#[cfg_attr(test, derive(schemars::JsonSchema))]
#[cfg_attr(test, schemars(rename = "Cut"))]
struct CutShape {
    /// The kind below and the kind above; the lists of two are in this order.
    taxa: [String; 2],
    character: String,
    /// That much or more is above.
    at: Number,
    finds: [usize; 2],
    /// How many finds are on the wrong side.
    wrong: [usize; 2],
    /// How many come out on the wrong side of a cut that was made without them; null: there are
    /// too many to leave each out, or one kind has a single one.
    wrong_left_out: Option<[usize; 2]>,
    /// The share on the wrong side, every kind counting alike, by leaving each out.
    share_left_out: Option<f64>,
    /// The share of each on the wrong side if both were normal, each with its own standard
    /// deviation.
    normal: [Option<f64>; 2],
    /// The same, every kind counting alike.
    share_normal: Option<f64>,
    /// How far the cut stays from every measurement; null: some are on the wrong side.
    safety_margin: Option<Number>,
    trust: [TrustShape; 2],
}

/// Whether a kind was measured often enough to trust the cut.
#[derive(Serialize)]
#[cfg_attr(test, derive(schemars::JsonSchema))]
#[cfg_attr(test, schemars(rename = "Trust"))]
struct TrustShape {
    #[cfg_attr(test, schemars(with = "described::TrustWord"))]
    says: &'static str,
    /// How many more are needed; null: nobody can say, or they are never enough.
    more: Option<usize>,
}

/// How finds spread, with what was found in reading the table, as JSON with a line end behind it.
pub fn spread(
    matrix: &Matrix,
    specimens: &Specimens,
    spread: &Spread,
    findings: &[Finding],
    say: Say,
) -> String {
    let of = Of { matrix, specimens };
    super::printed(&Shape {
        finds: specimens.written.len(),
        kinds: matrix.taxa().len(),
        spread: spread.of_kinds.iter().map(|one| of.spread(one)).collect(),
        cuts: spread.cuts.as_ref().map(|cuts| cuts.iter().map(|cut| of.cut(cut)).collect()),
        findings: findings.iter().map(|one| write::finding(one, say)).collect(),
    })
}

struct Of<'m> {
    matrix: &'m Matrix,
    specimens: &'m Specimens,
}

impl Of<'_> {
    fn taxon(&self, at: TaxonIx) -> String {
        self.matrix.taxon(at).name.clone()
    }

    fn character(&self, at: CharacterIx) -> String {
        self.matrix.character(at).name.clone()
    }

    fn spread(&self, one: &SpreadOf) -> SpreadShape {
        let unit = match self.matrix.character(one.character).scale {
            spinney_model::Scale::Measure { unit, .. } => unit.sign(),
            _ => "",
        };
        SpreadShape {
            taxon: self.taxon(one.taxon),
            character: self.character(one.character),
            unit,
            part: one.part.clone(),
            finds: one.finds,
            plants: one.plants,
            least: number::of_quantity(one.least),
            most: number::of_quantity(one.most),
            mean: one.mean,
            standard_deviation: one.deviation,
            outliers: one.outliers.iter().map(|one| self.outlier(one)).collect(),
        }
    }

    fn outlier(&self, one: &Outlier) -> OutlierShape {
        let written = &self.specimens.written[one.find];
        OutlierShape {
            value: number::of_quantity(one.value),
            row: written.at.row + 1,
            find: written.find.clone(),
            picture: written.picture.clone(),
            far: one.far,
        }
    }

    fn cut(&self, cut: &Cut) -> CutShape {
        CutShape {
            taxa: cut.taxa.map(|taxon| self.taxon(taxon)),
            character: self.character(cut.character),
            at: number::of_quantity(cut.at),
            finds: cut.finds,
            wrong: cut.wrong,
            wrong_left_out: cut.left_out,
            share_left_out: cut.left_out_share(),
            normal: cut.normal,
            share_normal: cut.normal_share(),
            safety_margin: cut.margin.map(number::of_quantity),
            trust: cut.trust.map(|trust| TrustShape { says: word(trust), more: more(trust) }),
        }
    }
}

/// The word of whether it was measured often enough.
pub(super) fn word(trust: Trust) -> &'static str {
    match trust {
        Trust::Enough => "enough",
        Trust::More(_) => "more",
        Trust::TooMany => "too many",
        Trust::Never => "never",
    }
}

fn more(trust: Trust) -> Option<usize> {
    match trust {
        Trust::Enough => Some(0),
        Trust::More(more) => Some(more),
        Trust::TooMany | Trust::Never => None,
    }
}

#[cfg(test)]
mod tests;
