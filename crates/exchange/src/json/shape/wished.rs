//! The shape of wishes, of what they cost, and of those that could not be fulfilled.

use serde::{Deserialize, Serialize};
use serde_json::Number;

use super::Ask;

#[derive(Default, Serialize, Deserialize)]
pub(in crate::json) struct Wishes {
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub(in crate::json) kept: Vec<Kept>,
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub(in crate::json) hand: Option<String>,
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub(in crate::json) season: Option<String>,
    #[serde(default, skip_serializing_if = "std::ops::Not::not")]
    pub(in crate::json) allow_touch: bool,
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub(in crate::json) never: Vec<String>,
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub(in crate::json) order: Vec<String>,
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub(in crate::json) early: Vec<Early>,
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub(in crate::json) goals: Vec<String>,
}

/// A question to keep; those after it stand further down in the same list.
#[derive(Serialize, Deserialize)]
pub(in crate::json) struct Kept {
    pub(in crate::json) ask: Ask,
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub(in crate::json) yes: Option<usize>,
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub(in crate::json) no: Option<usize>,
}

#[derive(Serialize, Deserialize)]
pub(in crate::json) struct Early {
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub(in crate::json) part: Option<(String, String)>,
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub(in crate::json) leave: Option<String>,
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub(in crate::json) within: Option<u32>,
}

#[derive(Serialize, Deserialize)]
pub(in crate::json) struct Reached {
    pub(in crate::json) goal: String,
    pub(in crate::json) value: Number,
    #[serde(default)]
    pub(in crate::json) value_exact: Option<String>,
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub(in crate::json) then: Option<Number>,
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub(in crate::json) then_exact: Option<String>,
}

#[derive(Serialize, Deserialize)]
pub(in crate::json) struct Price {
    /// In words.
    pub(in crate::json) wish: String,
    /// `kept`, `hand`, `never`, `touch`, `order`, `early` or `goals`.
    pub(in crate::json) about: String,
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub(in crate::json) character: Option<String>,
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub(in crate::json) early: Option<Early>,
    pub(in crate::json) extra: Number,
    #[serde(default)]
    pub(in crate::json) extra_exact: Option<String>,
    pub(in crate::json) exact: bool,
    #[serde(default)]
    pub(in crate::json) together: Vec<(String, String)>,
}

#[derive(Serialize, Deserialize)]
pub(in crate::json) struct Refused {
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub(in crate::json) ask: Option<Ask>,
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub(in crate::json) order: Option<String>,
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub(in crate::json) early: Option<Early>,
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub(in crate::json) goal: Option<String>,
    pub(in crate::json) why: String,
    /// The kind that stands in the way.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub(in crate::json) kind: Option<String>,
}
