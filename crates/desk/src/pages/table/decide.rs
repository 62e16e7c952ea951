//! Deciding where people do not agree: one of what they say, both, or "look again".

use spinney_exchange::table;
use spinney_model::{CharacterId, KindId};

use crate::pages::stood::STOOD;

/// The button that takes a text sends it behind this.
pub(super) const TAKE: &str = "take-";

/// The hidden field with what stood in a cell when its buttons were shown.
pub(super) fn stood_field((kind, character): (KindId, CharacterId)) -> String {
    format!("{STOOD}-{}-{}", kind.0, character.0)
}

/// The text for "it varies": everything that anybody saw. None: one of them is no alternative,
/// such as `?` or `n/a`.
pub(super) fn both(texts: &[&str]) -> Option<String> {
    table::either(texts)
}
