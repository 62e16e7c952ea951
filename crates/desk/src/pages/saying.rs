//! What somebody says of a cell, in words: as it was typed, or what a card leaves open.

use spinney_collection::Saying;
use spinney_voice::Tongue;

pub(super) fn words(t: Tongue, saying: &Saying) -> String {
    let (message, states) = match saying {
        Saying::Text(text) => return text.clone(),
        Saying::OneOf(states) => ("saying-one-of", states),
        Saying::NoneOf(states) => ("saying-none-of", states),
        Saying::Varies(states) => ("saying-varies", states),
    };
    t.count_with(message, states.len(), &[("states", &states.join(", "))])
}
