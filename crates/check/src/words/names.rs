//! A kind's name in a question: that asks for knowing, not for looking.

use std::collections::{BTreeMap, BTreeSet};

use spinney_model::{Finding, Matrix, OfWords, Scale};

use super::Text;
use crate::phrase::{self, Words};
use crate::tree::To;
use crate::walked_key::WalkedKey;

/// The names of all kinds by their first word, with the kind's pupil name.
pub(super) struct Names<'m> {
    by_first: BTreeMap<String, Vec<(Vec<String>, &'m str)>>,
}

impl<'m> Names<'m> {
    /// All names of all kinds, in one and in several: "oak", "oaks".
    pub(super) fn of(matrix: &'m Matrix) -> Self {
        let mut by_first: BTreeMap<String, Vec<_>> = BTreeMap::new();
        let table = words_of_the_table(matrix);
        for taxon in matrix.taxa() {
            let others = taxon.other_names.iter().map(|other| &other.name);
            let all = std::iter::once(&taxon.name).chain(others).chain(&taxon.scientific_name);
            for name in all {
                let one = Words::of(name).list;
                // A kind that is called "1", or by a word of the headings, is named by no word.
                let numbers = one.iter().all(|word| word.parse::<f64>().is_ok());
                if numbers || one.len() == 1 && table.contains(&one[0]) {
                    continue;
                }
                let mut several = one.clone();
                if let Some(last) = several.last_mut() {
                    last.push('s');
                }
                for phrase in [one, several] {
                    if let Some(first) = phrase.first() {
                        let known = by_first.entry(first.clone()).or_default();
                        known.push((phrase, taxon.name.as_str()));
                    }
                }
            }
        }
        Self { by_first }
    }

    /// The first kind that a text names. A name of one word may be a word ("does it fly?"), so
    /// a question must have it where a name stands.
    fn find(&self, words: &Words, is_question: bool) -> Option<&'m str> {
        let names = |phrase: &[String], at: usize| {
            phrase.len() > 1 || !is_question || stands_as_a_name(&words.list, at)
        };
        (0..words.list.len())
            .find_map(|at| {
                let known = self.by_first.get(&words.list[at])?;
                known.iter().find(|(phrase, _)| {
                    words.list[at..].starts_with(phrase) && names(phrase, at)
                })
            })
            .map(|(_, name)| *name)
    }
}

/// Every word of the headings and states.
fn words_of_the_table(matrix: &Matrix) -> BTreeSet<String> {
    let characters = matrix.characters().iter();
    let texts = characters.flat_map(|character| {
        let states: &[String] = match &character.scale {
            Scale::Words { states } => states,
            Scale::Counts | Scale::Measure { .. } => &[],
        };
        std::iter::once(&character.name).chain(states)
    });
    texts.flat_map(|text| Words::of(text).list).collect()
}

/// Whether a word stands where a name does: "is it an oak?", "like holly", "a willow leaf".
fn stands_as_a_name(list: &[String], at: usize) -> bool {
    let word = |at: usize| list.get(at).map_or("", String::as_str);
    let back = |steps: usize| at.checked_sub(steps).map_or("", word);
    let named = ["a", "an", "the", "like", "or", "of", "than", "from", "called", "named"];
    let is_it = matches!(back(1), "it" | "this" | "they" | "these")
        && matches!(back(2), "is" | "are" | "was");
    let thing = ["leaf", "leaves", "tree", "bush", "plant", "twig", "berry", "flower"];
    named.contains(&back(1)) || is_it || thing.contains(&word(at + 1)) || at == 0
}

/// A question or lead that names a kind. The last question of a way may ("Is it an oak?"),
/// if it is linked to something one can look at.
pub(super) fn name_in_question(
    seen: &WalkedKey<'_>,
    text: &Text<'_>,
    known: &Names<'_>,
) -> Option<Finding> {
    let index = text.index;
    let last = seen.tree.to[index] == [To::End, To::End];
    if last && text.question.is_some() {
        return None;
    }
    let words = without_states(seen, text);
    let name = known.find(&words, text.is_question)?;
    Some(text.finding(OfWords::NamesKind { kind: name.to_owned() }))
}

/// A state that has the name of a kind ("like a box") is no name of that kind.
fn without_states(seen: &WalkedKey<'_>, text: &Text<'_>) -> Words {
    let Some(question) = text.question else { return text.words.clone() };
    let words = phrase::simple(seen.matrix, question.character, &text.words);
    let Scale::Words { states } = &seen.matrix.character(question.character).scale else {
        return words;
    };
    states.iter().fold(words, |words, state| words.without(&Words::of(state).list))
}
