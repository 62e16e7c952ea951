//! A kind's name in a question: that asks for knowing, not for looking.

use std::collections::BTreeMap;

use spinney_model::{Code, Finding, Matrix, Scale};

use super::Text;
use crate::phrase::{self, Words};
use crate::seen::Seen;
use crate::tree::To;

/// The names of all kinds by their first word, with the kind's pupil name.
pub(super) struct Names<'m> {
    by_first: BTreeMap<String, Vec<(Vec<String>, &'m str)>>,
}

impl<'m> Names<'m> {
    /// All names of all kinds, in one and in several: "oak", "oaks".
    pub(super) fn of(matrix: &'m Matrix) -> Self {
        let mut by_first: BTreeMap<String, Vec<_>> = BTreeMap::new();
        for taxon in matrix.taxa() {
            let others = taxon.other_names.iter().map(|other| &other.name);
            let all = std::iter::once(&taxon.name).chain(others).chain(&taxon.scientific_name);
            for name in all {
                let one = Words::of(name).list;
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

    /// The first kind that a text names.
    fn find(&self, words: &Words) -> Option<&'m str> {
        (0..words.list.len())
            .find_map(|at| {
                let known = self.by_first.get(&words.list[at])?;
                known.iter().find(|(phrase, _)| words.list[at..].starts_with(phrase))
            })
            .map(|(_, name)| *name)
    }
}

/// A question or lead that names a kind. The last question of a way may ("Is it an oak?"),
/// if it is linked to something one can look at.
pub(super) fn name_in_question(
    seen: &Seen<'_>,
    text: &Text<'_>,
    known: &Names<'_>,
) -> Option<Finding> {
    let index = text.index;
    let last = seen.tree.to[index] == [To::End, To::End];
    if last && text.question.is_some() {
        return None;
    }
    let words = without_states(seen, text);
    let name = known.find(&words)?;
    Some(text.finding(
        Code::NameInQuestion,
        format!(
            "{} names {name}: only somebody who knows {name} already can answer.",
            text.called()
        ),
        format!("Ask for something one can see on {name}."),
    ))
}

/// A state that has the name of a kind ("like a box") is no name of that kind.
fn without_states(seen: &Seen<'_>, text: &Text<'_>) -> Words {
    let Some(question) = text.question else { return text.words.clone() };
    let words = phrase::simple(seen.matrix, question.character, &text.words);
    let Scale::Words { states } = &seen.matrix.character(question.character).scale else {
        return words;
    };
    states.iter().fold(words, |words, state| words.without(&Words::of(state).list))
}
