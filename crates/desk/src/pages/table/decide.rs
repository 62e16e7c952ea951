//! Deciding where people do not agree: one of what they say, both, or "look again".

use spinney_exchange::table;

use crate::collection::denied;

/// What people say, each text once, in the order in which they are named. What is only denied
/// cannot be chosen.
pub(super) fn texts(said: &[(&str, &str)]) -> Vec<String> {
    let mut texts: Vec<String> = Vec::new();
    for (_, text) in said.iter().filter(|(_, text)| denied(text).is_none()) {
        if !texts.iter().any(|known| crate::laid::folded(known) == crate::laid::folded(text)) {
            texts.push((*text).to_owned());
        }
    }
    texts
}

/// The text for "it varies": everything that anybody saw. None: one of them is no alternative,
/// such as `?` or `n/a`.
pub(super) fn both(texts: &[String]) -> Option<String> {
    table::either(&texts.iter().map(String::as_str).collect::<Vec<_>>())
}
