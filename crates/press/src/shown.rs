//! What the two answers to a question look like: drawings beside "yes" and "no".
//!
//! From a question that is linked to states of the table to the drawings of these states; none
//! where the question is not linked, or where nobody can draw truly what "yes" means. The "no"
//! side is drawn only where every state that it leaves open is.
//!
//! Source: drawings of both answers beside the question are rule P3 of `docs/TRADE.md`.

use std::collections::BTreeSet;

use spinney_model::{Asked, CharacterIx, Couplet, Drawing, Scale, StateIx};
use spinney_voice::glossary;

use crate::Booklet;
use crate::key_pages::answer_words;

/// More drawings than these are looked at by nobody.
const MOST: usize = 2;

/// A drawing, and the state that it shows.
#[derive(Clone, Debug, PartialEq)]
pub(crate) struct Shown {
    /// The state, as the table says it; of a yes the word that was asked for.
    pub(crate) state: String,
    /// Its lines.
    pub(crate) drawing: Drawing,
}

/// The drawings of both answers: yes first.
#[derive(Clone, Debug, Default, PartialEq)]
pub(crate) struct Answers {
    pub(crate) yes: Vec<Shown>,
    pub(crate) no: Vec<Shown>,
}

/// What the answers to a question look like; empty: nobody can draw it truly.
pub(crate) fn answers(booklet: &Booklet, couplet: &Couplet) -> Answers {
    let nothing = Answers::default();
    let Some(ask) = &couplet.ask else { return nothing };
    let Asked::States(yes) = &ask.yes else { return nothing };
    let characters = booklet.matrix.characters();
    let Some(character) = characters.get(ask.character.0) else { return nothing };
    let Scale::Words { states } = &character.scale else { return nothing };
    let no: BTreeSet<StateIx> =
        (0..states.len()).map(StateIx).filter(|state| !yes.contains(state)).collect();
    let side = |of: &BTreeSet<StateIx>| {
        let all = of.iter().map(|state| of_state(booklet, ask.character, states, *state));
        let all: Option<Vec<Vec<Shown>>> = all.collect();
        let all = all.unwrap_or_default().concat();
        if all.len() > MOST { Vec::new() } else { all }
    };
    let (yes, no) = (side(yes), side(&no));
    // What looks the same tells nobody which answer is right.
    let same = yes.iter().any(|one| no.iter().any(|other| one.drawing == other.drawing));
    match (yes.is_empty(), same) {
        (true, _) => nothing,
        (false, true) => Answers { yes, no: Vec::new() },
        (false, false) => Answers { yes, no },
    }
}

/// The drawings of a state; None: it cannot be drawn.
fn of_state(
    booklet: &Booklet,
    at: CharacterIx,
    states: &[String],
    state: StateIx,
) -> Option<Vec<Shown>> {
    let text = states.get(state.0)?;
    let t = booklet.tongue;
    let (yes, word) = word_of_state(booklet, at, text);
    let drawings = (booklet.drawn.state)(booklet.matrix, at, state, word);
    let named = word.filter(|_| yes).and_then(|word| glossary::entry(t, word));
    let heard = named.map_or_else(|| text.clone(), |entry| entry.word);
    let shown = |drawing| Shown { state: heard.clone(), drawing };
    let shown: Vec<Shown> = drawings.into_iter().map(shown).collect();
    (!shown.is_empty()).then_some(shown)
}

/// The word of the list that a state of a column is, if it is one, and whether it is the column's name:
/// of a column that asks whether there is one.
pub(crate) fn word_of_state(
    booklet: &Booklet,
    at: CharacterIx,
    state: &str,
) -> (bool, Option<&'static str>) {
    let yes = ["yes", "ja"].contains(&state.to_lowercase().as_str());
    let said = if yes { booklet.matrix.character(at).name.as_str() } else { state };
    (yes, glossary::whole(booklet.tongue, said))
}

/// What a listener hears of a drawing: the answer that it belongs to, and what it shows.
pub(crate) fn heard(booklet: &Booklet, couplet: &Couplet, yes: bool, shown: &Shown) -> String {
    let (first, second) = answer_words(booklet.tongue, couplet);
    let answer = if yes { first } else { second };
    let parts: [(&str, &dyn std::fmt::Display); 2] =
        [("answer", &answer), ("state", &shown.state)];
    booklet.tongue.with("sheet-shows", &parts)
}
