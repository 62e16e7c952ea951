//! A key with several ways as JSON: what `spinney ways` writes.
//!
//! From the words of the model to pretty-printed JSON with fields in a fixed order, described
//! in `docs/ways.schema.json`. The key in it is read back like any other, as questions of yes
//! and no; `same_look` says which of them belong together.

use serde::Serialize;
use serde_json::Number;
use spinney_model::{Finding, ManyWays, Matrix};

use super::number::{exact, of_share};
use super::{shape, write};

#[derive(Serialize)]
struct Shape {
    effort_total: Number,
    effort_total_exact: String,
    lower_bound: Number,
    lower_bound_exact: String,
    proved: bool,
    #[serde(skip_serializing_if = "Option::is_none")]
    stopped: Option<&'static str>,
    heaps: u64,
    mean_questions: Number,
    longest: u32,
    same_look: Vec<u32>,
    key: Option<shape::Key>,
    findings: Vec<shape::Finding>,
}

/// A key with several ways and what was found in table and key, as JSON with a line end behind
/// it.
pub fn many_ways(matrix: &Matrix, found: &ManyWays, findings: &[Finding]) -> String {
    super::printed(&Shape {
        effort_total: of_share(found.total),
        effort_total_exact: exact(found.total),
        lower_bound: of_share(found.lower_bound),
        lower_bound_exact: exact(found.lower_bound),
        proved: found.stopped.is_none(),
        stopped: write::stopped(found.stopped),
        heaps: found.heaps,
        mean_questions: of_share(found.mean_questions),
        longest: found.longest,
        same_look: found.same_look.iter().copied().collect(),
        key: write::key_alone(&found.key, matrix).key,
        findings: findings.iter().map(write::finding).collect(),
    })
}

#[cfg(test)]
mod tests;
