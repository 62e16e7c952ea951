//! Pairs of kinds that a group told apart by heaps, whatever the table says of them.
//!
//! From the keys of a collection to pairs, each with the key and the question. A pair counts
//! where one kind lies on yes and the other on no; a card in the middle, or on both heaps, tells
//! nobody apart. The table is not changed by it: a question in a group's own words has no column.

use std::collections::BTreeMap;

use spinney_model::{KeyId, KindId, Side};

use crate::Collection;
use crate::laid::Laid;
use crate::layer::Layer;

/// Who told a pair apart, and by which question.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct ToldApart {
    /// The key in whose heaps they are apart.
    pub key: KeyId,
    /// The question that tells them apart.
    pub words: String,
}

/// Whether, and by whom, each of these pairs was told apart by heaps: the first key that does it,
/// and its first question.
pub fn by_heaps(
    collection: &Collection,
    laid: &Laid,
    pairs: &[[KindId; 2]],
) -> BTreeMap<[KindId; 2], ToldApart> {
    let mut told = BTreeMap::new();
    if pairs.is_empty() {
        return told;
    }
    for (key, drawn) in collection.keys.iter().filter(|(_, key)| !key.questions.is_empty()) {
        let Some(layer) = Layer::of(collection, laid, drawn) else { continue };
        for (at, heap) in &layer.forks {
            let Some(question) = drawn.questions.get(at) else { continue };
            let side = |kind: &KindId| heap.sides.get(kind).and_then(|placed| placed.side);
            for pair in pairs {
                let [one, other] = pair.each_ref().map(side);
                let apart = matches!(
                    (one, other),
                    (Some(Side::Yes), Some(Side::No)) | (Some(Side::No), Some(Side::Yes))
                );
                if apart {
                    let words = question.words.clone();
                    told.entry(*pair).or_insert(ToldApart { key: *key, words });
                }
            }
        }
    }
    told
}
