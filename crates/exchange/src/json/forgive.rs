//! Forgiving keys as JSON: what `spinney forgive` writes.
//!
//! From the words of the model to pretty-printed JSON with fields in a fixed order, described
//! in `docs/forgive.schema.json`. The keys in it are read back like any other; the rest is not.

use serde::Serialize;
use serde_json::Number;
use spinney_model::{Answer, BothWays, Finding, Forgiving, ForgivingKeys, Matrix};

#[cfg(test)]
use super::described;
use super::number::{exact, of_share};
use super::{Say, shape, write};

/// What `spinney forgive` writes with --format json. One key for each number of second places;
/// a second place is one kind that is looked for on the wrong side of one question as well
/// (docs/KEY.md 18). Shares are those of all finds, each kind counting as often as it is met.
#[derive(Serialize)]
#[cfg_attr(test, derive(schemars::JsonSchema))]
pub(super) struct Shape {
    /// How many heaps were taken apart.
    heaps: u64,
    /// The key with the most right ends that has at most 0, 1, 2, ... second places.
    keys: Vec<KeyShape>,
    /// What was found in reading the table.
    findings: Vec<shape::Finding>,
}

/// The key with the most right ends that has at most so many second places.
#[derive(Serialize)]
#[cfg_attr(test, derive(schemars::JsonSchema))]
#[cfg_attr(test, schemars(rename = "ForgivingKey"))]
struct KeyShape {
    /// How many second places the key may have.
    second_places: u32,
    /// The share of finds that comes out right.
    #[cfg_attr(test, schemars(range(min = 0, max = 1)))]
    right: Number,
    #[cfg_attr(test, schemars(with = "described::Exact"))]
    right_exact: String,
    /// No key with so many second places brings out more.
    #[cfg_attr(test, schemars(range(min = 0, max = 1)))]
    at_most: Number,
    #[cfg_attr(test, schemars(with = "described::Exact"))]
    at_most_exact: String,
    /// Whether the key is proved best: whether right is at_most.
    proved: bool,
    /// Why the search ended before it was sure; left out where it was.
    #[serde(skip_serializing_if = "Option::is_none")]
    #[cfg_attr(test, schemars(with = "Option<described::Stopped>"))]
    stopped: Option<&'static str>,
    /// The second places, in the order of the key.
    both_ways: Vec<PlaceShape>,
    /// The key. A kind with a second place stands at two ends or more.
    #[cfg_attr(test, schemars(with = "shape::Key"))]
    key: Option<shape::Key>,
}

/// A second place.
#[derive(Serialize)]
#[cfg_attr(test, derive(schemars::JsonSchema))]
#[cfg_attr(test, schemars(rename = "SecondPlace"))]
struct PlaceShape {
    /// The number of the question.
    #[cfg_attr(test, schemars(range(min = 1)))]
    couplet: u32,
    /// The kind.
    taxon: String,
    /// The wrong answer, after which the kind has its second place.
    #[cfg_attr(test, schemars(with = "described::YesOrNo"))]
    after: &'static str,
    /// The share of all finds that comes out right only because of it.
    #[cfg_attr(test, schemars(range(min = 0, max = 1)))]
    saves: Number,
    #[cfg_attr(test, schemars(with = "described::Exact"))]
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
