//! What is missing where a kind goes both ways at a question, and the way to say it.
//!
//! From a question and a kind to an address: the card in the heaps, where people drew the
//! question themselves, or else the cell of the table. Where people said different things
//! nobody has to look again: somebody has to decide, and that is done in the cell.

use spinney_model::{CharacterId, Fork, KeyId, KindId};

use spinney_collection::keys::Made;
use spinney_collection::keys::letters;
use spinney_collection::laid::Laid;
use spinney_collection::{Agreed, Collection};

/// What is missing of a kind at a question.
pub(crate) struct Missing {
    /// Whether people said different things; otherwise nobody has said anything.
    pub(crate) differ: bool,
    /// Where a person says it.
    pub(crate) address: String,
}

/// A key and what it was made from.
#[derive(Clone, Copy)]
pub(crate) struct From<'a> {
    pub(crate) collection: &'a Collection,
    pub(crate) laid: &'a Laid,
    pub(crate) made: &'a Made,
    pub(crate) key: KeyId,
}

impl Missing {
    pub(crate) fn of(from: From<'_>, number: u32, kind: KindId) -> Self {
        let column = column(from, number);
        let agreed = column.map(|at| from.laid.said.agreed(kind, at));
        let differ = matches!(agreed, Some(Agreed::Contradicted));
        let address = match (column, lies_at(from, number, kind)) {
            (Some(at), card) if differ || card.is_none() => {
                let (kind, at) = (kind.0, at.0);
                format!("/table?kind={kind}&character={at}#c-{kind}-{at}")
            }
            (_, Some(at)) => {
                format!("/heaps?key={}&at={}#card-{}", from.key.0, letters(&at), kind.0)
            }
            (_, None) => format!("/finds/{}", kind.0),
        };
        Self { differ, address }
    }
}

/// The character that a question asks the table for, or is linked to.
fn column(from: From<'_>, number: u32) -> Option<CharacterId> {
    let Made { key, layer, places, .. } = from.made;
    let ask = key.couplets.iter().find(|couplet| couplet.number == number)?.ask.as_ref()?;
    if ask.character.0 < layer.sorted_from {
        return from.laid.characters.get(ask.character.0).copied().flatten();
    }
    let question = from.collection.keys.get(&from.key)?.questions.get(places.get(&number)?)?;
    let linked = question.ask.as_ref().map(|of| of.character);
    linked.filter(|at| from.laid.character(*at).is_some())
}

/// The heap where the kind's card waits: at the question, if people drew it, or above, where it
/// was left on the way there.
fn lies_at(from: From<'_>, number: u32, kind: KindId) -> Option<Fork> {
    let drawn = from.collection.keys.get(&from.key)?;
    let place = from.made.places.get(&number)?;
    let forks = &from.made.layer.forks;
    let asked = forks.get(place)?.ask.as_ref()?;
    let couplet = from.made.key.couplets.iter().find(|couplet| couplet.number == number)?;
    if couplet.ask.as_ref() != Some(asked) {
        return None;
    }
    let above = (0..=place.0.len()).rev().map(|length| Fork(place.0[..length].to_vec()));
    above.into_iter().find(|at| {
        drawn.questions.contains_key(at)
            && forks.get(at).is_some_and(|heap| heap.kinds.contains(&kind))
    })
}
