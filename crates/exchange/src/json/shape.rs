//! The shape of our JSON: private types that mirror `docs/key.schema.json` field by field.
//!
//! Only these know the field names. They hold text and numbers, never the words of the model;
//! `write` and `read` convert by hand, so that a renamed field in the model changes no file.

use serde::{Deserialize, Serialize};
use serde_json::Number;

mod wished;

pub(super) use wished::{Early, Kept, Price, Reached, Refused, Wishes};

#[derive(Serialize, Deserialize)]
pub(super) struct Report {
    pub(super) key: Option<Key>,
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub(super) cost: Option<Cost>,
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub(super) proof: Option<Proof>,
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub(super) kept_price: Option<KeptPrice>,
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub(super) wishes: Option<Wishes>,
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub(super) reached: Vec<Reached>,
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub(super) prices: Vec<Price>,
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub(super) refused: Vec<Refused>,
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub(super) touching: Vec<u32>,
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub(super) links: Option<Checked>,
    #[serde(default)]
    pub(super) findings: Vec<Finding>,
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub(super) reasons: Vec<Reasons>,
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub(super) best_keys: Option<BestKeys>,
}

#[derive(Serialize, Deserialize)]
pub(super) struct BestKeys {
    pub(super) keys: Vec<OneOfTheBest>,
    pub(super) sure: bool,
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub(super) as_good: Option<AsGood>,
}

#[derive(Serialize, Deserialize)]
pub(super) struct OneOfTheBest {
    pub(super) key: Key,
    pub(super) effort_total: Number,
    #[serde(default)]
    pub(super) effort_total_exact: Option<String>,
}

/// Whole numbers that may be larger than a JSON number holds exactly.
#[derive(Serialize, Deserialize)]
pub(super) struct AsGood {
    pub(super) keys: String,
    pub(super) nestings: String,
}

// What a newer program adds here may change what the key means.
#[derive(Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub(super) struct Key {
    pub(super) couplets: Vec<Couplet>,
}

/// What may stand instead of a report: a key by itself.
#[derive(Deserialize)]
pub(super) struct BareKey {
    pub(super) couplets: Option<Vec<Couplet>>,
}

#[derive(Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub(super) struct Couplet {
    pub(super) number: u32,
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub(super) back: Option<u32>,
    pub(super) question: String,
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub(super) leads: Option<(String, String)>,
    #[serde(default)]
    pub(super) ask: Option<Ask>,
    #[serde(default)]
    pub(super) yes: Option<Destination>,
    #[serde(default)]
    pub(super) no: Option<Destination>,
    #[serde(default, skip_serializing_if = "std::ops::Not::not")]
    pub(super) kept: bool,
}

#[derive(Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub(super) struct Ask {
    pub(super) character: String,
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub(super) states: Option<Vec<String>>,
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub(super) at_least: Option<Number>,
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub(super) below: Option<Number>,
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub(super) unit: Option<String>,
}

#[derive(Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub(super) struct Destination {
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub(super) couplet: Option<u32>,
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub(super) taxa: Option<Vec<String>>,
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub(super) unrecognised: Vec<String>,
}

#[derive(Serialize, Deserialize)]
pub(super) struct Cost {
    pub(super) effort_total: Number,
    #[serde(default)]
    pub(super) effort_total_exact: Option<String>,
    pub(super) mean_questions: Number,
    #[serde(default)]
    pub(super) mean_questions_exact: Option<String>,
    pub(super) longest: u32,
}

#[derive(Serialize, Deserialize)]
pub(super) struct Proof {
    pub(super) optimal: bool,
    pub(super) lower_bound: Number,
    #[serde(default)]
    pub(super) lower_bound_exact: Option<String>,
    /// `budget` or `overflow`.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub(super) stopped: Option<String>,
    #[serde(default)]
    pub(super) heaps: u64,
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub(super) certificate: Option<Certificate>,
}

#[derive(Serialize, Deserialize)]
pub(super) struct Certificate {
    /// The number of this form; a proof without one is of the first.
    #[serde(default)]
    pub(super) form: u32,
    /// Lines and remains name kinds by their place in this list, from 0.
    #[serde(default)]
    pub(super) kinds: Vec<String>,
    /// So many parts make 1: the numbers of lines are parts.
    #[serde(default)]
    pub(super) parts: String,
    /// Lines name what remains by its place in this list, from 0.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub(super) remains: Vec<Remains>,
    pub(super) lines: Vec<Line>,
}

/// `2f|2 7|31`: kinds as bits of a number to the base 16, the first kind the lowest; what remains;
/// and at least how much. Read without being kept as text: there may be thousands.
pub(super) enum Line {
    /// What it says.
    Says { kinds: Vec<usize>, remains: Vec<usize>, at_least: Vec<i128> },
    /// It is none of ours.
    Unread(String),
}

#[derive(Serialize, Deserialize)]
pub(super) struct Remains {
    pub(super) kind: usize,
    pub(super) character: String,
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub(super) states: Option<Vec<String>>,
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub(super) at_least: Option<Number>,
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub(super) below: Option<Number>,
}

#[derive(Serialize, Deserialize)]
pub(super) struct KeptPrice {
    pub(super) without_wishes: Number,
    #[serde(default)]
    pub(super) without_wishes_exact: Option<String>,
    pub(super) without_wishes_optimal: bool,
    #[serde(default)]
    pub(super) refused: Vec<Ask>,
}

#[derive(Serialize, Deserialize)]
pub(super) struct Checked {
    pub(super) checked: usize,
    pub(super) of: usize,
}

#[derive(Serialize, Deserialize)]
pub(super) struct Finding {
    pub(super) code: String,
    pub(super) severity: String,
    pub(super) place: String,
    pub(super) sentence: String,
    pub(super) remedy: String,
}

#[derive(Serialize, Deserialize)]
pub(super) struct Reasons {
    pub(super) couplet: u32,
    pub(super) kinds: usize,
    pub(super) heaps: Heaps,
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub(super) also: Vec<Also>,
    pub(super) alternatives: Vec<Alternative>,
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub(super) blocked: Vec<Blocked>,
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub(super) not_by_touch: Option<NotByTouch>,
}

/// What would take less, but sends pupils to touch what may hurt.
#[derive(Serialize, Deserialize)]
pub(super) struct NotByTouch {
    pub(super) instead: Alternative,
    pub(super) kinds: Vec<String>,
}

/// The pupil's second look.
#[derive(Serialize, Deserialize)]
pub(super) struct Also {
    pub(super) ask: Ask,
    /// Whether its yes is the no of the couplet.
    pub(super) opposite: bool,
}

#[derive(Serialize, Deserialize)]
pub(super) struct Blocked {
    pub(super) character: String,
    pub(super) kind: String,
}

#[derive(Serialize, Deserialize)]
pub(super) struct Heaps {
    pub(super) yes: usize,
    pub(super) no: usize,
    pub(super) both: usize,
}

#[derive(Serialize, Deserialize)]
pub(super) struct Alternative {
    pub(super) ask: Ask,
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub(super) heaps: Option<Heaps>,
    pub(super) extra: Number,
    #[serde(default)]
    pub(super) extra_exact: Option<String>,
    /// Whether `extra` is known exactly; otherwise it is at least that.
    pub(super) exact: bool,
}
