//! Last season's key for this season's table as JSON: what `spinney revise` writes.
//!
//! From the words of the model to pretty-printed JSON with fields in a fixed order, described
//! in `docs/revise.schema.json`. The key in it is read back like any other; the rest is not.

use serde::Serialize;
use serde_json::Number;
use spinney_model::{Finding, Matrix, Revision, Share};

use super::number::{exact, of_share};
use super::{Say, shape, write};

/// What a run has to say of a revised key.
#[derive(Clone, Copy, Debug)]
pub struct Revised<'a> {
    /// The table.
    pub matrix: &'a Matrix,
    /// The new key and what changed.
    pub revision: &'a Revision,
    /// What was found in the table and the new key.
    pub findings: &'a [Finding],
    /// What was found in reading the old key.
    pub old_findings: &'a [Finding],
}

#[derive(Serialize)]
struct Shape {
    key: Option<shape::Key>,
    changes: u32,
    mean_steps: Number,
    mean_steps_exact: String,
    mean_questions: Number,
    longest: u32,
    best_mean_steps: Number,
    best_mean_steps_exact: String,
    loss: Number,
    proved: bool,
    #[serde(skip_serializing_if = "Option::is_none")]
    stopped: Option<&'static str>,
    heaps: u64,
    impossible_below: u32,
    curve: Vec<PointShape>,
    kept: Vec<MovedShape>,
    rewritten: Vec<MovedShape>,
    added: Vec<u32>,
    struck: Vec<u32>,
    arrived: Vec<String>,
    gone: Vec<String>,
    findings: Vec<shape::Finding>,
    old_findings: Vec<shape::Finding>,
}

#[derive(Serialize)]
struct PointShape {
    changes: u32,
    mean_steps: Number,
    mean_steps_exact: String,
    proved: bool,
}

#[derive(Serialize)]
struct MovedShape {
    was: u32,
    now: u32,
}

/// A revised key as JSON, with a line end behind it. Steps are those of one find.
pub fn revised(revised: &Revised<'_>, say: Say) -> String {
    let said = |one| write::finding(one, say);
    let Revised { matrix, revision, findings, old_findings } = *revised;
    let all: Share = matrix.taxa().iter().map(|taxon| taxon.weight).sum();
    let each = |effort: Share| if all > Share::from_integer(0) { effort / all } else { effort };
    let moved = |pairs: &[(u32, u32)]| {
        pairs.iter().map(|(was, now)| MovedShape { was: *was, now: *now }).collect()
    };
    let curve = revision.curve.iter().map(|point| PointShape {
        changes: point.changes,
        mean_steps: of_share(each(point.effort)),
        mean_steps_exact: exact(each(point.effort)),
        proved: point.proved,
    });
    super::printed(&Shape {
        key: write::key_alone(&revision.key, matrix).key,
        changes: revision.changes,
        mean_steps: of_share(each(revision.effort)),
        mean_steps_exact: exact(each(revision.effort)),
        mean_questions: of_share(revision.mean_questions),
        longest: revision.longest,
        best_mean_steps: of_share(each(revision.best)),
        best_mean_steps_exact: exact(each(revision.best)),
        loss: of_share(revision.loss),
        proved: revision.stopped.is_none(),
        stopped: write::stopped(revision.stopped),
        heaps: revision.heaps,
        impossible_below: revision.fewest,
        curve: curve.collect(),
        kept: moved(&revision.parts.kept),
        rewritten: moved(&revision.parts.rewritten),
        added: revision.parts.added.clone(),
        struck: revision.parts.struck.clone(),
        arrived: revision.arrived.iter().map(|at| matrix.taxon(*at).name.clone()).collect(),
        gone: revision.gone.clone(),
        findings: findings.iter().map(said).collect(),
        old_findings: old_findings.iter().map(said).collect(),
    })
}

#[cfg(test)]
mod tests;
