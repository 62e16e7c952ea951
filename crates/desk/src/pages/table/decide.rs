//! Deciding where people do not agree: one of what they say, both, or "look again".

use spinney_exchange::table;

use crate::collection::Saying;

/// What people say, each text once, in the order in which they are named. Who leaves open what
/// it is cannot be chosen.
pub(super) fn texts(said: &[(&str, &Saying)]) -> Vec<String> {
    let mut texts: Vec<String> = Vec::new();
    for text in said.iter().filter_map(|(_, saying)| saying.text()) {
        if !texts.iter().any(|known| crate::laid::folded(known) == crate::laid::folded(text)) {
            texts.push(text.to_owned());
        }
    }
    texts
}

/// The text for "it varies": everything that anybody saw. None: one of them is no alternative,
/// such as `?` or `n/a`.
pub(super) fn both(texts: &[String]) -> Option<String> {
    table::either(&texts.iter().map(String::as_str).collect::<Vec<_>>())
}
