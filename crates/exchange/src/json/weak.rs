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

use super::{Say, shape, write};

#[derive(Serialize)]
struct Shape {
    kinds: usize,
    characters: usize,
    pairs: Option<usize>,
    distances: Vec<usize>,
    alike: Vec<AlikeShape>,
    fragile: Vec<FragileShape>,
    once: Option<FewestShape>,
    twice: Option<FewestShape>,
    next: Vec<LookShape>,
    useful_blanks: usize,
    findings: Vec<shape::Finding>,
}

#[derive(Serialize)]
struct AlikeShape {
    taxa: [String; 2],
    /// `one blank`, `several blanks` or `new difference`.
    hope: &'static str,
}

#[derive(Serialize)]
struct FragileShape {
    taxa: [String; 2],
    character: String,
}

#[derive(Serialize)]
struct FewestShape {
    proved: bool,
    at_least: usize,
    best: usize,
    sets: Vec<Vec<String>>,
    all: bool,
    indispensable: Vec<String>,
}

#[derive(Serialize)]
struct LookShape {
    taxon: String,
    character: String,
    parts: Vec<String>,
    with_others: Vec<String>,
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
    let hope = match pair.hope {
        Hope::OneBlank => "one blank",
        Hope::SeveralBlanks => "several blanks",
        Hope::NewDifference => "new difference",
    };
    AlikeShape { taxa: pair.taxa.map(|taxon| taxon_name(matrix, taxon)), hope }
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
