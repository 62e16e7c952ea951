//! What it takes to fix questions: the edits that put a question, and all above it, where the
//! key has them now.
//!
//! From a key as it stands to edits. A question that is not about a column of the table (a
//! ratio that the table made by itself, a question that was sorted by hand) is fixed by its
//! words and by how the kinds lie now.

use std::collections::BTreeMap;

use spinney_model::{
    Answer, Ask, AskOf, Asked, Couplet, Edit, Fork, KeyEdit, Quantity, Scale, Side, StateIx,
    TaxonIx,
};
use spinney_voice::wording;

use super::keyed::Keyed;

/// A question in words that outlast the table; None: it is not about a column of its own.
pub(super) fn of_the_table(key: &Keyed<'_>, ask: &Ask) -> Option<AskOf> {
    (ask.character.0 < key.made.layer.sorted_from).then(|| key.laid.ask_of(ask)).flatten()
}

/// Where each kind that comes to a question goes from there.
pub(super) fn sides(key: &Keyed<'_>, number: u32) -> BTreeMap<TaxonIx, Side> {
    let mut sides = BTreeMap::new();
    for walk in &key.made.opinion.walks {
        for step in walk.steps.iter().filter(|step| step.couplet == number) {
            let side = match step.answer {
                Answer::Yes => Side::Yes,
                Answer::No => Side::No,
            };
            let known = sides.entry(walk.taxon).or_insert(side);
            if *known != side {
                *known = Side::Both;
            }
        }
    }
    sides
}

/// Fixes a question and all above it that are not fixed yet.
pub(super) fn pin(key: &Keyed<'_>, at: &Fork) -> Vec<Edit> {
    let above = (0..=at.0.len()).map(|length| Fork(at.0[..length].to_vec()));
    above.flat_map(|place| pin_one(key, &place)).collect()
}

/// Fixes every question of the key that is not fixed yet, those above first.
pub(super) fn pin_all(key: &Keyed<'_>) -> Vec<Edit> {
    let mut places: Vec<&Fork> = key.made.places.values().collect();
    places.sort_by_key(|place| (place.0.len(), *place));
    places.into_iter().flat_map(|place| pin_one(key, place)).collect()
}

/// Fixes all above a question.
pub(super) fn pin_above(key: &Keyed<'_>, at: &Fork) -> Vec<Edit> {
    match at.0.split_last() {
        Some((_, above)) => pin(key, &Fork(above.to_vec())),
        None => Vec::new(),
    }
}

/// What a question asks, with the number that its words say.
pub(super) fn said(key: &Keyed<'_>, couplet: &Couplet) -> Option<Ask> {
    let couplets = &key.made.key.couplets;
    let at = couplets.iter().position(|other| other.number == couplet.number)?;
    wording::said(&key.made.layer.matrix, &key.made.key, at)
}

fn pin_one(key: &Keyed<'_>, at: &Fork) -> Vec<Edit> {
    if key.drawn().questions.contains_key(at) {
        return Vec::new();
    }
    let Some(couplet) = key.made.couplet(at) else { return Vec::new() };
    // The number that was said is what is kept, so that the words stay true.
    let ask = said(key, couplet).and_then(|ask| of_the_table(key, &ask));
    let by_hand = ask.is_none();
    let words = couplet.wording.first().to_owned();
    let mut edits = vec![Edit::Key(key.id, KeyEdit::Ask { at: at.clone(), words, ask })];
    if by_hand {
        edits.extend(sides(key, couplet.number).into_iter().map(|(taxon, side)| {
            Edit::Key(
                key.id,
                KeyEdit::Sort {
                    at: at.clone(),
                    kind: key.made.layer.kinds[taxon.0],
                    side: Some(side),
                },
            )
        }));
    }
    edits
}

/// Asks something else at a place, without giving up what was fixed and sorted there and
/// below; with `exchanged`, what lay under yes lies under no from now on.
pub(super) fn asked_anew(
    key: &Keyed<'_>,
    at: &Fork,
    words: &str,
    ask: Option<AskOf>,
    exchanged: bool,
) -> Vec<Edit> {
    let mut edits = pin(key, at);
    let mut after = key.collection.clone();
    edits.iter().for_each(|edit| after.apply(edit));
    edits.push(Edit::Key(key.id, KeyEdit::TakeOut(at.clone())));
    for (place, question) in &after.keys[&key.id].questions {
        if !place.0.starts_with(&at.0) {
            continue;
        }
        let here = place == at;
        let mut place = place.clone();
        if let (true, Some(answer)) = (exchanged, place.0.get_mut(at.0.len())) {
            *answer = !*answer;
        }
        let (words, ask) = match here {
            true => (words.to_owned(), ask.clone()),
            false => (question.words.clone(), question.ask.clone()),
        };
        edits.push(Edit::Key(key.id, KeyEdit::Ask { at: place.clone(), words, ask }));
        edits.extend(question.sorted.iter().map(|(kind, side)| {
            Edit::Key(
                key.id,
                KeyEdit::Sort {
                    at: place.clone(),
                    kind: *kind,
                    side: Some(if here && exchanged { other(*side) } else { *side }),
                },
            )
        }));
    }
    edits
}

fn other(side: Side) -> Side {
    match side {
        Side::Yes => Side::No,
        Side::No => Side::Yes,
        Side::Both => Side::Both,
    }
}

/// The question whose yes is the other's no.
pub(super) fn opposite(key: &Keyed<'_>, ask: &Ask) -> Ask {
    let character = key.made.layer.matrix.character(ask.character);
    let yes = match (&ask.yes, &character.scale) {
        (Asked::States(asked), Scale::Words { states }) => {
            let all = (0..states.len()).map(StateIx);
            Asked::States(all.filter(|state| !asked.contains(state)).collect())
        }
        (Asked::AtLeast(least), _) => Asked::Below(*least),
        (Asked::Below(least), _) => Asked::AtLeast(*least),
        (Asked::States(asked), _) => Asked::States(asked.clone()),
    };
    Ask { character: ask.character, yes }
}

/// The words of the opposite question; empty: a person has to find them.
pub(super) fn opposite_words(key: &Keyed<'_>, couplet: &Couplet) -> String {
    match &couplet.ask {
        Some(ask) if of_the_table(key, ask).is_some() => {
            wording::question(key.t, &key.made.layer.matrix, &opposite(key, ask))
        }
        _ => String::new(),
    }
}

/// The number that a question asks for.
pub(super) fn threshold(ask: &Ask) -> Option<Quantity> {
    match ask.yes {
        Asked::AtLeast(at) | Asked::Below(at) => Some(at),
        Asked::States(_) => None,
    }
}

/// The words of a question whose number was moved: a person's own words stay, with the new
/// number in them, if the old one stands there.
pub(super) fn words_with(key: &Keyed<'_>, couplet: &Couplet, old: &Ask, new: &Ask) -> String {
    let matrix = &key.made.layer.matrix;
    let words = couplet.wording.first();
    let own = words != wording::question(key.t, matrix, old);
    let character = matrix.character(old.character);
    // People may have written it as the column is written, or as it is kept.
    let replaced = threshold(old).zip(threshold(new)).and_then(|(was, is)| {
        exchanged_number(words, &character.number(was), &character.number(is))
            .or_else(|| exchanged_number(words, &was.to_string(), &is.to_string()))
    });
    match replaced {
        Some(words) if own => words,
        _ => wording::question(key.t, matrix, new),
    }
}

/// A number exchanged where it stands alone.
fn exchanged_number(words: &str, was: &str, is: &str) -> Option<String> {
    let part_of_number = |sign: Option<char>| sign.is_some_and(|sign| sign.is_ascii_digit());
    let (at, _) = words.match_indices(was).find(|(at, _)| {
        let before = words[..*at].trim_end_matches(['.', ',']);
        let after = words[at + was.len()..].trim_start_matches(['.', ',']);
        !part_of_number(before.chars().next_back()) && !part_of_number(after.chars().next())
    })?;
    Some(format!("{}{is}{}", &words[..at], &words[at + was.len()..]))
}

#[cfg(test)]
mod tests {
    use super::exchanged_number;

    #[test]
    fn only_a_whole_number_is_exchanged() {
        let moved = |words| exchanged_number(words, "25", "30");
        assert_eq!(moved("Is it 25 mm or more?").as_deref(), Some("Is it 30 mm or more?"));
        assert_eq!(moved("Is it 125 mm, or 2.25?"), None);
        assert_eq!(moved("Longer than my thumb?"), None);
    }
}
