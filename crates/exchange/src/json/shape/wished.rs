//! The shape of wishes, of what they cost, and of those that could not be fulfilled.

use serde::{Deserialize, Serialize};
use serde_json::Number;

use super::Ask;
#[cfg(test)]
use super::described;

/// The wishes that the key fulfils, and under which it is best.
#[derive(Default, Serialize, Deserialize)]
#[cfg_attr(test, derive(schemars::JsonSchema))]
pub(in crate::json) struct Wishes {
    /// Questions to keep, the first one first.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub(in crate::json) kept: Vec<Kept>,
    /// What is in the hand.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    #[cfg_attr(test, schemars(with = "Option<described::Hand>"))]
    pub(in crate::json) hand: Option<String>,
    /// When it is.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    #[cfg_attr(test, schemars(with = "Option<described::When>"))]
    pub(in crate::json) season: Option<String>,
    /// Whether people may be sent to touch while a kind with a caution is possible, although
    /// something else separates.
    #[serde(default, skip_serializing_if = "std::ops::Not::not")]
    pub(in crate::json) allow_touch: bool,
    /// Characters not to be asked about.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub(in crate::json) never: Vec<String>,
    /// Characters to ask about first, in this order.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub(in crate::json) order: Vec<String>,
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub(in crate::json) early: Vec<Early>,
    /// What is best, the first first.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    #[cfg_attr(test, schemars(with = "Vec<described::Aim>"))]
    pub(in crate::json) goals: Vec<String>,
}

/// A question to keep; those after an answer by their place in the list, counted from 0, always
/// further down.
#[derive(Serialize, Deserialize)]
#[cfg_attr(test, derive(schemars::JsonSchema))]
pub(in crate::json) struct Kept {
    pub(in crate::json) ask: Ask,
    #[serde(default, skip_serializing_if = "Option::is_none")]
    #[cfg_attr(test, schemars(range(min = 1)))]
    pub(in crate::json) yes: Option<usize>,
    #[serde(default, skip_serializing_if = "Option::is_none")]
    #[cfg_attr(test, schemars(range(min = 1)))]
    pub(in crate::json) no: Option<usize>,
}

/// What must be over as early as the table allows: a pair of look-alikes is apart, or a kind is
/// out.
#[derive(Serialize, Deserialize)]
#[cfg_attr(test, derive(schemars::JsonSchema))]
#[cfg_attr(test, schemars(extend("oneOf" = [
    {"required": ["part"]},
    {"required": ["leave"]}
])))]
pub(in crate::json) struct Early {
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub(in crate::json) part: Option<(String, String)>,
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub(in crate::json) leave: Option<String>,
    /// Over within so many questions.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub(in crate::json) within: Option<u32>,
}

/// What the key reaches of an aim.
#[derive(Serialize, Deserialize)]
#[cfg_attr(test, derive(schemars::JsonSchema))]
pub(in crate::json) struct Reached {
    /// The aim.
    #[cfg_attr(test, schemars(with = "described::Aim"))]
    pub(in crate::json) goal: String,
    /// Effort as total; questions on the longest path; the sum of weight x -ln(how often read
    /// right), in millionths, each rounded; the most new words on one question; different
    /// words; times a ruler is taken up, by weight.
    pub(in crate::json) value: Number,
    #[serde(default, skip_serializing_if = "Option::is_none")]
    #[cfg_attr(test, schemars(with = "Option<described::Exact>"))]
    pub(in crate::json) value_exact: Option<String>,
    /// Even teaching alone: new words over all finds, by weight.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub(in crate::json) then: Option<Number>,
    #[serde(default, skip_serializing_if = "Option::is_none")]
    #[cfg_attr(test, schemars(with = "Option<described::Exact>"))]
    pub(in crate::json) then_exact: Option<String>,
}

/// What a wish costs alone.
#[derive(Serialize, Deserialize)]
#[cfg_attr(test, derive(schemars::JsonSchema))]
pub(in crate::json) struct Price {
    /// The wish in words.
    pub(in crate::json) wish: String,
    /// Which wish it is.
    #[cfg_attr(test, schemars(with = "described::About"))]
    pub(in crate::json) about: String,
    /// The character never to be asked about.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub(in crate::json) character: Option<String>,
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub(in crate::json) early: Option<Early>,
    /// Effort that the wish costs; below zero where it keeps more kinds together.
    pub(in crate::json) extra: Number,
    #[serde(default, skip_serializing_if = "Option::is_none")]
    #[cfg_attr(test, schemars(with = "Option<described::Exact>"))]
    pub(in crate::json) extra_exact: Option<String>,
    /// Whether both keys are proved best.
    pub(in crate::json) exact: bool,
    /// Pairs that stay together because of it.
    #[serde(default)]
    pub(in crate::json) together: Vec<(String, String)>,
}

/// A wish that could not be fulfilled.
#[derive(Serialize, Deserialize)]
#[cfg_attr(test, derive(schemars::JsonSchema))]
#[cfg_attr(test, schemars(extend("oneOf" = [
    {"required": ["ask"]},
    {"required": ["order"]},
    {"required": ["early"]},
    {"required": ["goal"]}
])))]
pub(in crate::json) struct Refused {
    /// A question at its place.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub(in crate::json) ask: Option<Ask>,
    /// A character among the first.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub(in crate::json) order: Option<String>,
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub(in crate::json) early: Option<Early>,
    /// An aim.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    #[cfg_attr(test, schemars(with = "Option<described::Aim>"))]
    pub(in crate::json) goal: Option<String>,
    /// Why not.
    #[cfg_attr(test, schemars(with = "described::WhyNot"))]
    pub(in crate::json) why: String,
    /// The kind that stands in the way.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub(in crate::json) kind: Option<String>,
}
