//! What one question counts towards an aim: steps, misreadings, words, rulers.
//!
//! From a character to whole numbers. Which aims a key was made for is not looked at here.

use std::collections::BTreeSet;

use spinney_model::{Character, Difficulty, Instrument, Scale, TaxonIx};

use crate::question::{Question, Yes};

/// What one question about this character takes.
pub(crate) fn steps(character: &Character) -> i128 {
    let instrument = if character.instrument == Instrument::Eyes { 1 } else { 2 };
    instrument
        * match character.difficulty {
            Difficulty::Easy => 1,
            Difficulty::Fair => 2,
            Difficulty::Hard => 3,
        }
}

/// −ln of how often this kind is read right, in millionths, rounded. Where nobody counted or
/// guessed: 95, 90 and 80 of a hundred for an easy, a fair and a hard character.
///
/// Of 1 to 100 in a hundred none has a logarithm within four thousandths of the middle between
/// two millionths, so that every machine rounds alike. Never read right counts as once in a
/// hundred.
pub(super) fn misreading(character: &Character, taxon: TaxonIx) -> i128 {
    let usual = character.read_right.unwrap_or(match character.difficulty {
        Difficulty::Easy => 95,
        Difficulty::Fair => 90,
        Difficulty::Hard => 80,
    });
    let of_kind = character.read_right_of.get(&taxon).copied().unwrap_or(usual);
    let right = f64::from(of_kind.clamp(1, 100)) / 100.0;
    (-right.ln() * 1e6).round() as i128
}

/// Whether answering takes a ruler.
pub(super) fn ruler(character: &Character) -> bool {
    character.instrument == Instrument::Ruler
}

/// The words one must know to answer: those that the table names for the character, else its
/// name and the states that are asked for. `yes` and `no` need no teaching; a word that stands
/// in several columns is taught once.
pub(super) fn words(character: &Character, question: &Question) -> BTreeSet<String> {
    if !character.terms.is_empty() {
        return character.terms.clone();
    }
    let mut words = BTreeSet::from([character.name.clone()]);
    if let (Yes::States(asked), Scale::Words { states }) = (question.yes, &character.scale) {
        let named = states.iter().enumerate().filter(|(at, _)| asked >> at & 1 == 1);
        let taught = named.filter(|(_, state)| *state != "yes" && *state != "no");
        words.extend(taught.map(|(_, state)| state.clone()));
    }
    words
}
