//! Deciding where people do not agree: one of what they say, both, or "look again".

use spinney_exchange::table;

/// The text for "it varies": everything that anybody saw. None: one of them is no alternative,
/// such as `?` or `n/a`.
pub(super) fn both(texts: &[&str]) -> Option<String> {
    table::either(texts)
}
