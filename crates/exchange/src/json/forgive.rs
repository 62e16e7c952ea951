//! Forgiving keys as JSON: what `spinney forgive` writes.
//!
//! From the words of the model to pretty-printed JSON with fields in a fixed order, described
//! in `docs/forgive.schema.json`. The keys in it are read back like any other; the rest is not.

use serde::Serialize;
use serde_json::Number;
use spinney_model::{Answer, BothWays, Finding, Forgiving, ForgivingKeys, Matrix};

use super::number::{exact, of_share};
use super::{Say, shape, write};

#[derive(Serialize)]
struct Shape {
    heaps: u64,
    keys: Vec<KeyShape>,
    findings: Vec<shape::Finding>,
}

#[derive(Serialize)]
struct KeyShape {
    /// So many second places it may have.
    second_places: u32,
    right: Number,
    right_exact: String,
    at_most: Number,
    at_most_exact: String,
    proved: bool,
    #[serde(skip_serializing_if = "Option::is_none")]
    stopped: Option<&'static str>,
    both_ways: Vec<PlaceShape>,
    key: Option<shape::Key>,
}

#[derive(Serialize)]
struct PlaceShape {
    couplet: u32,
    taxon: String,
    /// `yes` or `no`.
    after: &'static str,
    saves: Number,
    saves_exact: String,
}

/// Forgiving keys with what was found in the table, as JSON with a line end behind it.
pub fn forgiving(
    matrix: &Matrix,
    forgiving: &ForgivingKeys,
    findings: &[Finding],
    say: Say,
) -> String {
    super::printed(&Shape {
        heaps: forgiving.heaps,
        keys: forgiving.keys.iter().map(|one| key(matrix, one)).collect(),
        findings: findings.iter().map(|one| write::finding(one, say)).collect(),
    })
}

fn key(matrix: &Matrix, one: &Forgiving) -> KeyShape {
    KeyShape {
        second_places: one.budget,
        right: of_share(one.right),
        right_exact: exact(one.right),
        at_most: of_share(one.at_most),
        at_most_exact: exact(one.at_most),
        proved: one.stopped.is_none(),
        stopped: write::stopped(one.stopped),
        both_ways: one.both_ways.iter().map(|place| self::place(matrix, place)).collect(),
        key: write::key_alone(&one.key, matrix).key,
    }
}

fn place(matrix: &Matrix, place: &BothWays) -> PlaceShape {
    PlaceShape {
        couplet: place.couplet,
        taxon: matrix.taxon(place.taxon).name.clone(),
        after: match place.after {
            Answer::Yes => "yes",
            Answer::No => "no",
        },
        saves: of_share(place.saves),
        saves_exact: exact(place.saves),
    }
}

#[cfg(test)]
mod tests;
