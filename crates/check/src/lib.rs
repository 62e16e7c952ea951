//! The second opinion: will this key work? From a matrix, a key and perhaps a claim to findings.
//!
//! Written from `docs/KEY.md` and the rules of `docs/TRADE.md`, apart from `build`, so that
//! one can contradict the other. Every kind is walked through the key in every form; what goes
//! wrong is said once, where it goes wrong, with a remedy. Nothing here builds or mends a key.

mod amount;
mod apart;
mod applicable;
mod bits;
mod candidate;
mod claim;
mod contrast;
mod evidence;
mod names;
mod pairs;
mod phrase;
mod places;
mod praise;
mod question;
mod reach;
mod report;
mod risk;
mod says;
mod second;
mod separable;
mod settled;
mod spread;
mod threshold;
mod together;
mod tree;
mod unknown;
mod values;
mod walked_key;
mod walks;
mod weak;
mod words;

use spinney_model::{Claim, Code, Finding, Key, Matrix, OfTree, Place};

pub use apart::{Apart, apart};
pub use claim::left_out;
pub use report::{Effort, Proof, Report, Road, Settings};
pub use says::{Says, says};
pub use spread::{best_of_pairs, spread, spread_of_kinds};
pub use weak::{WeakSettings, weak};

use pairs::Pairs;
use question::Question;
use tree::Tree;
use values::Values;
use walked_key::WalkedKey;
use walks::Named;

/// The codes that [`check`] and [`table`] can give.
pub const CODES: &[Code] = &[
    Code::TooLarge,
    Code::Unknown,
    Code::NotSeparable,
    Code::FragilePair,
    Code::GapTooNarrow,
    Code::NumberTwice,
    Code::NumberMissing,
    Code::NumbersSkip,
    Code::NothingWritten,
    Code::Loop,
    Code::Unreachable,
    Code::BackWrong,
    Code::WaysMeet,
    Code::SameBothWays,
    Code::NeverComesOut,
    Code::WrongPlace,
    Code::SecondPlace,
    Code::EndUnreached,
    Code::BothLeads,
    Code::NeitherLead,
    Code::DoesNotHave,
    Code::MayNotHave,
    Code::NobodyRecorded,
    Code::ThresholdInside,
    Code::ThresholdNear,
    Code::VariesUsedAsFixed,
    Code::ThinEvidence,
    Code::PartsNothing,
    Code::CouldBeParted,
    Code::CostWrong,
    Code::BoundWrong,
    Code::GoalWrong,
    Code::WishBroken,
    Code::BareComparative,
    Code::VagueWord,
    Code::NotYesNo,
    Code::Negative,
    Code::NameInQuestion,
    Code::TooManyWords,
    Code::NoUnit,
    Code::TouchCaution,
    Code::Comb,
    Code::LongPath,
    Code::GoodQuestion,
];

/// A second opinion on a key, ours or a person's, and on what is claimed of it.
///
/// **Guarantees**: the same arguments give the same report. A broken key is followed as far as
/// it goes. What the table alone shows is not repeated here; see [`table`].
///
/// **Cost**: one step a kind and question on its way; at most 300,000 of them over all kinds,
/// and what was not followed is said.
pub fn check(matrix: &Matrix, key: &Key, claim: Option<&Claim>, settings: &Settings) -> Report {
    let values = Values::new(matrix, Some(key));
    let tree = Tree::new(key, matrix.taxa().len());
    let mut named = Named::new(&tree, matrix.taxa().len());
    let walked = walks::walk(&values, &tree, &mut named);
    let questions: Vec<Option<Question>> =
        key.couplets.iter().map(|couplet| Question::of(matrix, couplet)).collect();
    let mut left_out = settings.left_out.clone();
    if let Some(claim) = claim {
        left_out.extend(claim::left_out(matrix, &claim.wishes));
    }
    let seen = WalkedKey {
        matrix,
        values: &values,
        tree: &tree,
        named: &named,
        walked: &walked,
        questions: &questions,
        settings,
        left_out: &left_out,
        second: Vec::new(),
    };
    let seen = WalkedKey { second: second::places(&seen), ..seen };
    let mut findings = reach::findings(&seen);
    findings.extend(unfinished(&seen));
    findings.extend(places::findings(&seen));
    findings.extend(second::findings(&seen));
    findings.extend(contrast::findings(&seen));
    findings.extend(applicable::findings(&seen));
    findings.extend(threshold::findings(&seen));
    findings.extend(evidence::findings(&seen));
    findings.extend(separable::of_key(&seen));
    let mut proof = Proof::NothingClaimed;
    if let Some(claim) = claim {
        let (found, came_to) = claim::findings(&seen, claim);
        findings.extend(found);
        proof = came_to;
    }
    findings.extend(risk::findings(&seen));
    findings.extend(words::findings(&seen));
    findings.extend(praise::findings(&seen, &findings));
    findings
        .sort_by(|a, b| (a.severity, &a.place, a.code).cmp(&(b.severity, &b.place, b.code)));
    let checked = tree.order.iter().filter(|couplet| questions[**couplet].is_some()).count();
    let effort = claim::effort(&seen);
    let left_together = together::left(&seen);
    Report {
        left_together,
        findings,
        walks_left_out: walked.walks_left_out || !walked.unfinished.is_empty(),
        checked,
        questions: key.couplets.len(),
        effort,
        unfinished: walked.unfinished,
        walks: walked.walks,
        proof,
    }
}

/// The word of a question on which people will not agree (`nice`, `big`, `usually`), if there
/// is one: the same that [`check`] names, for a question that stands in no key yet.
pub fn vague_word(question: &str) -> Option<String> {
    words::vague::word(question)
}

/// What can be said of a table without a key: what it cannot part, and what hangs on little.
///
/// **Cost**: quadratic in the kinds up to 1,500 of them; beyond, only kinds with equal rows
/// are found, and that is said.
pub fn table(matrix: &Matrix, settings: &Settings) -> Vec<Finding> {
    let values = Values::new(matrix, None);
    let pairs = Pairs::of(&values);
    let mut findings = separable::of_table(&values, &pairs);
    findings.extend(pairs::gap_too_narrow(&values, &pairs));
    findings.extend(pairs::fragile(matrix, &pairs, settings.pairs_named));
    findings.extend(unknown::summary(&values));
    findings
}

/// Kinds that vary in too many ways to be followed to the end of all of them.
fn unfinished(seen: &WalkedKey<'_>) -> Option<Finding> {
    if seen.walked.unfinished.is_empty() {
        return None;
    }
    let kinds = names::kinds(seen.matrix, seen.walked.unfinished.iter().copied());
    Some(Finding::of(Place::Key, OfTree::TooManyWays { kinds }))
}
