//! Where a table is weak as JSON: what `spinney weak` writes.
//!
//! From the words of the model to pretty-printed JSON with fields in a fixed order, described
//! in `docs/weak.schema.json`. Names of kinds and characters refer to the table. Nothing of it
//! is read back.

use std::collections::BTreeSet;

use serde::Serialize;
use spinney_model::{
    Alike, CharacterIx, Fewest, Finding, Fragile, Hope, Look, Matrix, TaxonIx, Weak,
};

#[cfg(test)]
use super::described;
use super::{Say, shape, write};

/// What `spinney weak` writes with --format json. Names of kinds (taxa) and characters are
/// those of the table. A character parts two kinds where a question about it has the one wholly
/// on yes and the other wholly on no, and neither is in its way (docs/KEY.md 3 to 5). Where a
/// kind varies in what a character depends on, the character parts it only together with that
/// other one.
#[derive(Serialize)]
#[cfg_attr(test, derive(schemars::JsonSchema))]
pub(super) struct Shape {
    kinds: usize,
    characters: usize,
    /// How many pairs of kinds were compared; null: there were too many, and nothing below says
    /// anything.
    pairs: Option<usize>,
    /// How many pairs are parted by no character, by one, by two, and so on.
    distances: Vec<usize>,
    /// Pairs that no character parts, in the order of the table.
    alike: Vec<AlikeShape>,
    /// Pairs that a single character parts, in the order of the table.
    fragile: Vec<FragileShape>,
    /// The fewest characters that part every pair that all of them part.
    once: Option<FewestShape>,
    /// The fewest characters that part every pair twice, and the fragile ones once.
    twice: Option<FewestShape>,
    /// Blank cells that could part or secure a pair, the most useful first; as many as asked
    /// for.
    next: Vec<LookShape>,
    /// How many blank cells could part or secure a pair, those in next included.
    useful_blanks: usize,
    /// What was found in reading the table.
    findings: Vec<shape::Finding>,
}

/// A pair that no character parts.
#[derive(Serialize)]
#[cfg_attr(test, derive(schemars::JsonSchema))]
#[cfg_attr(test, schemars(rename = "Alike"))]
struct AlikeShape {
    taxa: [String; 2],
    /// What might part them: one blank cell of theirs filled in; several of their blank cells,
    /// all filled in; or nothing that the table asks about.
    #[cfg_attr(test, schemars(with = "described::Hope"))]
    hope: &'static str,
}

/// A pair that a single character parts.
#[derive(Serialize)]
#[cfg_attr(test, derive(schemars::JsonSchema))]
#[cfg_attr(test, schemars(rename = "Fragile"))]
struct FragileShape {
    taxa: [String; 2],
    character: String,
}

/// The fewest characters that part all pairs.
#[derive(Serialize)]
#[cfg_attr(test, derive(schemars::JsonSchema))]
#[cfg_attr(test, schemars(rename = "Fewest"))]
struct FewestShape {
    /// Whether no smaller set does it: whether at_least is best.
    proved: bool,
    /// No set with fewer characters does it.
    at_least: usize,
    /// How many characters the smallest set has that was found.
    best: usize,
    /// The smallest sets that were found, in the order of the table; at most 20.
    #[cfg_attr(test, schemars(length(min = 1)))]
    sets: Vec<Vec<String>>,
    /// Whether these are all sets of that size.
    all: bool,
    /// Characters that are in every set that does it, small or large.
    indispensable: Vec<String>,
}

/// A blank cell that could part or secure a pair.
#[derive(Serialize)]
#[cfg_attr(test, derive(schemars::JsonSchema))]
#[cfg_attr(test, schemars(rename = "Look"))]
struct LookShape {
    taxon: String,
    character: String,
    /// Kinds alike to it that some value in this cell would part from it.
    parts: Vec<String>,
    /// Kinds alike to it that could be parted from it if other blank cells of the two are
    /// filled in as well; no single one does it.
    with_others: Vec<String>,
    /// Kinds parted from it by one character, to which some value in this cell would give
    /// another difference.
    secures: Vec<String>,
}

/// Where a table is weak, with what was found in reading it, as JSON with a line end behind it.
pub fn weak(matrix: &Matrix, weak: &Weak, findings: &[Finding], say: Say) -> String {
    let compared = |fewest| weak.pairs.map(|_| self::fewest(matrix, fewest));
    let shape = Shape {
        kinds: matrix.taxa().len(),
        characters: matrix.characters().len(),
        pairs: weak.pairs,
        distances: weak.distances.clone(),
        alike: weak.alike.iter().map(|pair| alike(matrix, pair)).collect(),
        fragile: weak.fragile.iter().map(|pair| fragile(matrix, pair)).collect(),
        once: compared(&weak.once),
        twice: compared(&weak.twice),
        next: weak.next.iter().map(|look| self::look(matrix, look)).collect(),
        useful_blanks: weak.useful_blanks,
        findings: findings.iter().map(|one| write::finding(one, say)).collect(),
    };
    super::printed(&shape)
}

fn alike(matrix: &Matrix, pair: &Alike) -> AlikeShape {
    AlikeShape { taxa: pair.taxa.map(|taxon| taxon_name(matrix, taxon)), hope: word(pair.hope) }
}

/// The word of what might part two kinds.
pub(super) fn word(hope: Hope) -> &'static str {
    match hope {
        Hope::OneBlank => "one blank",
        Hope::SeveralBlanks => "several blanks",
        Hope::NewDifference => "new difference",
    }
}

fn fragile(matrix: &Matrix, pair: &Fragile) -> FragileShape {
    FragileShape {
        taxa: pair.taxa.map(|taxon| taxon_name(matrix, taxon)),
        character: matrix.character(pair.character).name.clone(),
    }
}

fn fewest(matrix: &Matrix, fewest: &Fewest) -> FewestShape {
    let names = |set: &BTreeSet<CharacterIx>| -> Vec<String> {
        set.iter().map(|at| matrix.character(*at).name.clone()).collect()
    };
    FewestShape {
        proved: fewest.proved(),
        at_least: fewest.at_least,
        best: fewest.best,
        sets: fewest.sets.iter().map(names).collect(),
        all: fewest.all,
        indispensable: names(&fewest.indispensable),
    }
}

fn look(matrix: &Matrix, look: &Look) -> LookShape {
    let names = |taxa: &[TaxonIx]| taxa.iter().map(|t| taxon_name(matrix, *t)).collect();
    LookShape {
        taxon: taxon_name(matrix, look.taxon),
        character: matrix.character(look.character).name.clone(),
        parts: names(&look.parts),
        with_others: names(&look.with_others),
        secures: names(&look.secures),
    }
}

fn taxon_name(matrix: &Matrix, taxon: TaxonIx) -> String {
    matrix.taxon(taxon).name.clone()
}

#[cfg(test)]
mod tests;
