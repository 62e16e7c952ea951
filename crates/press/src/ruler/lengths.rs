//! The lengths that a key asks for: each once, with the numbers of its questions.
//!
//! From a booklet to lengths in mm, the shortest first. A question that nobody has linked to a
//! column asks for no length that we know of; ratios, weights and angles are no lengths.

use std::collections::BTreeMap;

use spinney_model::{Asked, Quantity, Scale, Unit};

use crate::{Booklet, said};

/// A length that the key asks for.
#[derive(Clone, Debug, PartialEq)]
pub(super) struct Length {
    /// In mm.
    pub(super) mm: f64,
    /// As the question says it: `10 cm`.
    pub(super) amount: String,
    /// The numbers of the questions that ask for it, rising.
    pub(super) numbers: Vec<u32>,
    /// Of what, as the columns are called: `blade length`.
    pub(super) of: Vec<String>,
}

/// All of them, each as its question says it.
pub(super) fn asked(booklet: &Booklet) -> Vec<Length> {
    let mut lengths: BTreeMap<Quantity, Length> = BTreeMap::new();
    for (at, couplet) in booklet.key.couplets.iter().enumerate() {
        let Some(ask) = said::ask(booklet, at) else { continue };
        let character = booklet.matrix.character(ask.character);
        let millimetres =
            matches!(character.scale, Scale::Measure { unit: Unit::Millimetres, .. });
        let quantity = match ask.yes {
            Asked::AtLeast(quantity) | Asked::Below(quantity) if millimetres => quantity,
            Asked::AtLeast(_) | Asked::Below(_) | Asked::States(_) => continue,
        };
        if quantity <= Quantity::ZERO {
            continue;
        }
        let length = lengths.entry(quantity).or_insert_with(|| Length {
            mm: quantity.as_f64(),
            amount: booklet.tongue.decimal(&character.amount(quantity)),
            numbers: Vec::new(),
            of: Vec::new(),
        });
        length.numbers.push(couplet.number);
        if !length.of.contains(&character.name) {
            length.of.push(character.name.clone());
        }
    }
    for length in lengths.values_mut() {
        length.numbers.sort_unstable();
    }
    lengths.into_values().collect()
}
