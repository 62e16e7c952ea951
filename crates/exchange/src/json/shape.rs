//! The shape of our JSON: private types from which `docs/key.schema.json` is made.
//!
//! Only these know the field names. They hold text and numbers, never the words of the model;
//! `write` and `read` convert by hand, so that a renamed field in the model changes no file.

use serde::{Deserialize, Serialize};
use serde_json::Number;

#[cfg(test)]
use super::described;

mod wished;

pub(super) use wished::{Early, Kept, Price, Reached, Refused, Wishes};

/// What `spinney key`, `check` and `explain` write with --format json. Names of kinds,
/// characters and states are those of the table. Every cost is a JSON number (the nearest float
/// where it is no finite decimal); the program also writes it as an exact fraction, in the
/// field that ends in _exact. Those fields may be left out; one that is there must agree with
/// its number. In place of the whole, a key alone, an object with couplets, is read too.
#[derive(Serialize, Deserialize)]
#[cfg_attr(test, derive(schemars::JsonSchema))]
pub(super) struct Report {
    /// The key; null where none could be read or built.
    pub(super) key: Option<Key>,
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub(super) cost: Option<Cost>,
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub(super) proof: Option<Proof>,
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub(super) kept_price: Option<KeptPrice>,
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub(super) wishes: Option<Wishes>,
    /// What the key reaches of every aim that was asked for, in their order.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub(super) reached: Vec<Reached>,
    /// What each wish costs alone: the key under all wishes less the best one without this
    /// wish.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub(super) prices: Vec<Price>,
    /// Wishes that could not be fulfilled, and why; the key does without them.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub(super) refused: Vec<Refused>,
    /// The numbers of the questions answered by touch at which a kind with a caution is
    /// possible.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub(super) touching: Vec<u32>,
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub(super) links: Option<Checked>,
    #[serde(default)]
    pub(super) findings: Vec<Finding>,
    /// Why each question is asked where it is; only where somebody wants it explained.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub(super) reasons: Vec<Reasons>,
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub(super) best_keys: Option<BestKeys>,
}

/// The best keys that differ in their nested heaps, the best first.
#[derive(Serialize, Deserialize)]
#[cfg_attr(test, derive(schemars::JsonSchema))]
pub(super) struct BestKeys {
    pub(super) keys: Vec<OneOfTheBest>,
    /// Whether no other key stands between these.
    pub(super) sure: bool,
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub(super) as_good: Option<AsGood>,
}

#[derive(Serialize, Deserialize)]
#[cfg_attr(test, derive(schemars::JsonSchema))]
pub(super) struct OneOfTheBest {
    pub(super) key: Key,
    pub(super) effort_total: Number,
    #[serde(default, skip_serializing_if = "Option::is_none")]
    #[cfg_attr(test, schemars(with = "Option<described::Exact>"))]
    pub(super) effort_total_exact: Option<String>,
}

/// How many keys are as good as the best, as whole numbers in text, since they may be larger
/// than a JSON number holds exactly; absent: not counted to the end.
#[derive(Serialize, Deserialize)]
#[cfg_attr(test, derive(schemars::JsonSchema))]
pub(super) struct AsGood {
    /// Two questions that part a heap alike make two keys.
    #[cfg_attr(test, schemars(regex(pattern = "^[0-9]+$")))]
    pub(super) keys: String,
    /// Keys that differ in their nested heaps.
    #[cfg_attr(test, schemars(regex(pattern = "^[0-9]+$")))]
    pub(super) nestings: String,
}

// What a newer program adds here may change what the key means.
/// A key.
#[derive(Serialize, Deserialize)]
#[cfg_attr(test, derive(schemars::JsonSchema))]
#[serde(deny_unknown_fields)]
pub(super) struct Key {
    /// In the order in which they are printed; one begins at the first.
    pub(super) couplets: Vec<Couplet>,
}

/// What may stand instead of a report: a key by itself.
#[derive(Deserialize)]
pub(super) struct BareKey {
    pub(super) couplets: Option<Vec<Couplet>>,
}

/// A question with its two ways on.
#[derive(Serialize, Deserialize)]
#[cfg_attr(test, derive(schemars::JsonSchema))]
#[serde(deny_unknown_fields)]
pub(super) struct Couplet {
    /// The number of the couplet as it stands on paper.
    pub(super) number: u32,
    /// The back number: where one came from.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub(super) back: Option<u32>,
    /// The question, or the first of two leads; empty: not worded yet.
    pub(super) question: String,
    /// Both leads, the yes side first, where the couplet is no question.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub(super) leads: Option<(String, String)>,
    /// What a yes means in the table; null: not linked.
    #[serde(default)]
    pub(super) ask: Option<Ask>,
    /// Where yes leads; null: nothing is written there.
    #[serde(default)]
    pub(super) yes: Option<Destination>,
    /// Where no leads; null: nothing is written there.
    #[serde(default)]
    pub(super) no: Option<Destination>,
    /// Whether a person fixed the question before the key was built.
    #[serde(default, skip_serializing_if = "std::ops::Not::not")]
    pub(super) kept: bool,
}

/// What a question asks for in the table.
#[derive(Serialize, Deserialize)]
#[cfg_attr(test, derive(schemars::JsonSchema))]
#[serde(deny_unknown_fields)]
#[cfg_attr(test, schemars(extend("oneOf" = [
    {"required": ["states"]},
    {"required": ["at_least"]},
    {"required": ["below"]}
])))]
pub(super) struct Ask {
    pub(super) character: String,
    /// It has one of these states.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    #[cfg_attr(test, schemars(length(min = 1), extend("uniqueItems" = true)))]
    pub(super) states: Option<Vec<String>>,
    /// It is this much or more. Counts: a whole number and no unit.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub(super) at_least: Option<Number>,
    /// It is less than this; only in a person's key.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub(super) below: Option<Number>,
    /// The unit of a measure; empty where nobody said.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    #[cfg_attr(test, schemars(with = "Option<described::Unit>"))]
    pub(super) unit: Option<String>,
}

/// Where an answer leads.
#[derive(Serialize, Deserialize)]
#[cfg_attr(test, derive(schemars::JsonSchema))]
#[serde(deny_unknown_fields)]
#[cfg_attr(test, schemars(extend(
    "oneOf" = [{"required": ["couplet"]}, {"required": ["taxa"]}],
    "dependentRequired" = {"unrecognised": ["taxa"]}
)))]
pub(super) struct Destination {
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub(super) couplet: Option<u32>,
    /// The kinds named at this end, in the order of the table.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub(super) taxa: Option<Vec<String>>,
    /// Names that stand there and are none of the table's, as written.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    #[cfg_attr(test, schemars(length(min = 1)))]
    pub(super) unrecognised: Vec<String>,
}

/// What the key costs.
#[derive(Serialize, Deserialize)]
#[cfg_attr(test, derive(schemars::JsonSchema))]
pub(super) struct Cost {
    /// Steps, over all kinds by their weights: V of docs/KEY.md for the whole table.
    pub(super) effort_total: Number,
    #[serde(default, skip_serializing_if = "Option::is_none")]
    #[cfg_attr(test, schemars(with = "Option<described::Exact>"))]
    pub(super) effort_total_exact: Option<String>,
    /// Questions a find takes on average, whatever they cost.
    pub(super) mean_questions: Number,
    #[serde(default, skip_serializing_if = "Option::is_none")]
    #[cfg_attr(test, schemars(with = "Option<described::Exact>"))]
    pub(super) mean_questions_exact: Option<String>,
    /// The most questions on any path.
    pub(super) longest: u32,
}

/// What is proved of the key.
#[derive(Serialize, Deserialize)]
#[cfg_attr(test, derive(schemars::JsonSchema))]
pub(super) struct Proof {
    /// Whether no key takes less effort.
    pub(super) optimal: bool,
    /// No key takes less than this.
    pub(super) lower_bound: Number,
    #[serde(default, skip_serializing_if = "Option::is_none")]
    #[cfg_attr(test, schemars(with = "Option<described::Exact>"))]
    pub(super) lower_bound_exact: Option<String>,
    /// Why the search ended before it was sure.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    #[cfg_attr(test, schemars(with = "Option<described::Stopped>"))]
    pub(super) stopped: Option<String>,
    /// How many heaps were looked at.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub(super) heaps: Option<u64>,
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub(super) certificate: Option<Certificate>,
}

/// The proof, to be followed without a search; docs/KEY.md 20 says when a line holds. Left out
/// where none is carried.
#[derive(Serialize, Deserialize)]
#[cfg_attr(test, derive(schemars::JsonSchema))]
pub(super) struct Certificate {
    /// The number of this form of a proof. A proof without one is of the first form, which is
    /// still read: kinds and remains of a line as ranges of places, numbers as fractions.
    #[serde(default)]
    #[cfg_attr(test, schemars(extend("enum" = [super::certificate::FORM])))]
    pub(super) form: u32,
    /// The kinds of the table. Below, a kind is its place in this list, counted from 0.
    #[serde(default)]
    pub(super) kinds: Vec<String>,
    /// So many parts make 1: the numbers of lines are parts.
    #[serde(default)]
    #[cfg_attr(test, schemars(regex(pattern = "^[1-9][0-9]*$")))]
    pub(super) parts: String,
    /// What remains of cells from which answers have taken something. In lines, it is its place
    /// in this list, counted from 0.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub(super) remains: Vec<Remains>,
    /// One heap each.
    pub(super) lines: Vec<Line>,
}

/// `2f|2 7|31`: kinds as bits of a number to the base 16, the first kind the lowest; what
/// remains; and at least how much. Read without being kept as text: there may be thousands.
pub(super) enum Line {
    /// What it says.
    Says { kinds: Vec<usize>, remains: Vec<usize>, at_least: Vec<i128> },
    /// It is none of ours.
    Unread(String),
}

/// What remains of a cell from which answers have taken something.
#[derive(Serialize, Deserialize)]
#[cfg_attr(test, derive(schemars::JsonSchema))]
pub(super) struct Remains {
    pub(super) kind: usize,
    pub(super) character: String,
    /// One of these states.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    #[cfg_attr(test, schemars(length(min = 1)))]
    pub(super) states: Option<Vec<String>>,
    /// Numbers from this one on.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub(super) at_least: Option<Number>,
    /// Numbers below this one.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub(super) below: Option<Number>,
}

/// What all wishes together cost: effort_total less without_wishes.
#[derive(Serialize, Deserialize)]
#[cfg_attr(test, derive(schemars::JsonSchema))]
pub(super) struct KeptPrice {
    /// effort_total of the best key of the same table without any wish of a person's: touch is
    /// not allowed there.
    pub(super) without_wishes: Number,
    #[serde(default, skip_serializing_if = "Option::is_none")]
    #[cfg_attr(test, schemars(with = "Option<described::Exact>"))]
    pub(super) without_wishes_exact: Option<String>,
    /// Whether that key is proved best; otherwise it is the best one found.
    pub(super) without_wishes_optimal: bool,
    #[serde(default)]
    pub(super) refused: Vec<Ask>,
}

/// How many questions were checked against the table, of how many.
#[derive(Serialize, Deserialize)]
#[cfg_attr(test, derive(schemars::JsonSchema))]
pub(super) struct Checked {
    pub(super) checked: usize,
    pub(super) of: usize,
}

/// Something that was found.
#[derive(Serialize, Deserialize)]
#[cfg_attr(test, derive(schemars::JsonSchema))]
pub(super) struct Finding {
    /// A heading of docs/findings.md.
    #[cfg_attr(test, schemars(with = "described::Code"))]
    pub(super) code: String,
    /// How much it matters.
    #[cfg_attr(test, schemars(with = "described::Weight"))]
    pub(super) severity: String,
    pub(super) place: String,
    pub(super) sentence: String,
    pub(super) remedy: String,
}

/// Why a question is asked where it is.
#[derive(Serialize, Deserialize)]
#[cfg_attr(test, derive(schemars::JsonSchema))]
pub(super) struct Reasons {
    pub(super) couplet: u32,
    pub(super) kinds: usize,
    pub(super) heaps: Heaps,
    /// Questions about other characters that part the very same kinds.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub(super) also: Vec<Also>,
    /// Every other question that could stand here, the cheapest first.
    pub(super) alternatives: Vec<Alternative>,
    /// Characters that cannot be asked about here.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub(super) blocked: Vec<Blocked>,
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub(super) not_by_touch: Option<NotByTouch>,
}

/// What would take less here, but sends people to touch what may hurt, and the kinds with a
/// caution that are possible.
#[derive(Serialize, Deserialize)]
#[cfg_attr(test, derive(schemars::JsonSchema))]
pub(super) struct NotByTouch {
    pub(super) instead: Alternative,
    pub(super) kinds: Vec<String>,
}

/// A question about another character that parts the very same kinds: the second look.
#[derive(Serialize, Deserialize)]
#[cfg_attr(test, derive(schemars::JsonSchema))]
pub(super) struct Also {
    pub(super) ask: Ask,
    /// Whether its yes is the no of the couplet.
    pub(super) opposite: bool,
}

/// A character that cannot be asked about, with a kind that stands in the way.
#[derive(Serialize, Deserialize)]
#[cfg_attr(test, derive(schemars::JsonSchema))]
pub(super) struct Blocked {
    pub(super) character: String,
    pub(super) kind: String,
}

/// How many kinds go only to yes, only to no, and to both.
#[derive(Serialize, Deserialize)]
#[cfg_attr(test, derive(schemars::JsonSchema))]
pub(super) struct Heaps {
    pub(super) yes: usize,
    pub(super) no: usize,
    pub(super) both: usize,
}

/// Another question that could stand here.
#[derive(Serialize, Deserialize)]
#[cfg_attr(test, derive(schemars::JsonSchema))]
pub(super) struct Alternative {
    pub(super) ask: Ask,
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub(super) heaps: Option<Heaps>,
    /// More effort of the whole key.
    pub(super) extra: Number,
    #[serde(default, skip_serializing_if = "Option::is_none")]
    #[cfg_attr(test, schemars(with = "Option<described::Exact>"))]
    pub(super) extra_exact: Option<String>,
    /// False: at least that much more.
    pub(super) exact: bool,
}
