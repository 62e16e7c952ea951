//! Last season's key for this season's table as JSON: what `spinney revise` writes.
//!
//! From the words of the model to pretty-printed JSON with fields in a fixed order, described
//! in `docs/revise.schema.json`. The key in it is read back like any other; the rest is not.

use serde::Serialize;
use serde_json::Number;
use spinney_model::{Finding, Matrix, Revision, Share};

#[cfg(test)]
use super::described;
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

/// What `spinney revise` writes with --format json; how changes and steps are counted stands in
/// docs/KEY.md 16. Names of kinds, characters and states are those of the table. Steps are
/// those of one find, on average; numbers of questions are those on paper, of the old key or of
/// the new. `spinney check --key` reads the key in it.
#[derive(Serialize)]
#[cfg_attr(test, derive(schemars::JsonSchema))]
pub(super) struct Shape {
    /// The new key.
    #[cfg_attr(test, schemars(with = "shape::Key"))]
    key: Option<shape::Key>,
    /// How many questions were rewritten, added or struck out.
    changes: u32,
    /// Steps a find takes with the new key.
    #[cfg_attr(test, schemars(range(min = 0)))]
    mean_steps: Number,
    #[cfg_attr(test, schemars(with = "described::Exact"))]
    mean_steps_exact: String,
    /// Questions a find takes on average, whatever they cost.
    #[cfg_attr(test, schemars(range(min = 0)))]
    mean_questions: Number,
    /// The most questions on any path.
    longest: u32,
    /// Steps a find takes with the best key, however much it changes; the best found where the
    /// search stopped.
    #[cfg_attr(test, schemars(range(min = 0)))]
    best_mean_steps: Number,
    #[cfg_attr(test, schemars(with = "described::Exact"))]
    best_mean_steps_exact: String,
    /// Steps a find that the new key may take more than the best.
    #[cfg_attr(test, schemars(range(min = 0)))]
    loss: Number,
    /// Whether no other key within the loss has fewer changes, or as many and fewer steps.
    proved: bool,
    /// Why that is not proved; left out where it is.
    #[serde(skip_serializing_if = "Option::is_none")]
    #[cfg_attr(test, schemars(with = "Option<described::Stopped>"))]
    stopped: Option<&'static str>,
    /// Heaps taken apart.
    heaps: u64,
    /// No key has fewer changes than this.
    impossible_below: u32,
    /// The fewest steps for so many changes: rising changes, falling steps.
    #[cfg_attr(test, schemars(length(min = 1)))]
    curve: Vec<PointShape>,
    /// Old questions that stay as they were.
    kept: Vec<MovedShape>,
    /// Old questions in whose place something else is asked.
    rewritten: Vec<MovedShape>,
    /// New questions, by their new numbers.
    added: Vec<u32>,
    /// Old questions that are struck out, by their old numbers.
    struck: Vec<u32>,
    /// Kinds that the old key does not name.
    arrived: Vec<String>,
    /// Names in the old key that are no kinds of the table.
    gone: Vec<String>,
    /// What was found in the table and in the new key.
    findings: Vec<shape::Finding>,
    /// What was found in reading the old key.
    old_findings: Vec<shape::Finding>,
}

/// The fewest steps for so many changes.
#[derive(Serialize)]
#[cfg_attr(test, derive(schemars::JsonSchema))]
#[cfg_attr(test, schemars(rename = "Point"))]
struct PointShape {
    changes: u32,
    #[cfg_attr(test, schemars(range(min = 0)))]
    mean_steps: Number,
    #[cfg_attr(test, schemars(with = "described::Exact"))]
    mean_steps_exact: String,
    /// Whether no key with so many changes takes less.
    proved: bool,
}

/// The number of a question in the old key and in the new.
#[derive(Serialize)]
#[cfg_attr(test, derive(schemars::JsonSchema))]
#[cfg_attr(test, schemars(rename = "Moved"))]
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
