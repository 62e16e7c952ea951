//! Questions about states in words: `Is the leaf edge toothed or spiny?`
//!
//! From a character's name and the states on the yes side to a sentence. It does not choose
//! which side is "yes".

use std::collections::BTreeSet;

use spinney_model::{Character, Scale, StateIx};

use super::grammar::{Noun, article, is_adjective, lower_first, noun_of, singular};

/// The names of some states, in the order of the character.
pub(super) fn names<'a>(character: &'a Character, asked: &BTreeSet<StateIx>) -> Vec<&'a str> {
    let all = all(character);
    asked.iter().filter_map(|state| all.get(state.0)).map(|name| name.trim()).collect()
}

/// The names of the other states, in the order of the character.
pub(super) fn others<'a>(character: &'a Character, asked: &BTreeSet<StateIx>) -> Vec<&'a str> {
    let rest = (0..all(character).len()).map(StateIx).filter(|state| !asked.contains(state));
    names(character, &rest.collect())
}

/// Whether the states are just yes and no.
pub(super) fn is_yes_no(character: &Character) -> bool {
    let mut states: Vec<_> = all(character).iter().map(|s| s.trim().to_lowercase()).collect();
    states.sort();
    states == ["no", "yes"]
}

/// Several states as one phrase: `toothed, spiny or lobed`.
pub(super) fn joined(names: &[&str]) -> String {
    match names {
        [] => String::new(),
        [one] => (*one).to_string(),
        [most @ .., last] => format!("{} or {last}", most.join(", ")),
    }
}

fn all(character: &Character) -> &[String] {
    match &character.scale {
        Scale::Words { states } => states,
        Scale::Counts | Scale::Measure { .. } => &[],
    }
}

/// A question whether a yes/no character is there: `Is there a spine at the tip?`
pub(super) fn yes_no_question(name: &str, asks_for_yes: bool) -> String {
    let name = lower_first(name.trim());
    let (first, rest) = name.split_once(' ').unwrap_or((&name, ""));
    let no = if asks_for_yes { "" } else { "no " };
    let not = if asks_for_yes { "" } else { "not " };
    match first {
        _ if name.ends_with('?') && asks_for_yes => name,
        "has" | "have" | "with" if !rest.is_empty() => {
            if asks_for_yes {
                format!("Does it have {rest}")
            } else {
                format!("Is it without {rest}")
            }
        }
        "is" | "can" if !rest.is_empty() => format!("{first} it {not}{rest}"),
        "are" if !rest.is_empty() => format!("Are they {not}{rest}"),
        "does" if !rest.is_empty() => format!("Does it {not}{rest}"),
        "without" => format!("Is it {not}{name}"),
        _ if is_adjective(first) && rest.is_empty() => format!("Is it {not}{name}"),
        // `leaves opposite`, `hairs white`: some things, and how they are.
        _ if noun_of(first) == Noun::Plural && is_adjective(rest) => {
            format!("Are the {first} {not}{rest}")
        }
        _ => match noun_of(&name) {
            Noun::Plural => format!("Are there {no}{name}"),
            Noun::Uncounted => format!("Is there {no}{name}"),
            Noun::Singular if asks_for_yes => format!("Is there {}{name}", article(&name)),
            Noun::Singular => format!("Is there {no}{name}"),
        },
    }
}

/// A question whether one of some states is there: `Is the leaf edge toothed?`
///
/// `the` is the character's name as the sentence's subject: `the leaf edge`.
pub(super) fn states_question(name: &str, the: &str, states: &[&str]) -> String {
    let lower = lower_first(name.trim());
    let wanted = joined(states);
    let plural = noun_of(&lower) == Noun::Plural;
    let be = if plural { "Are" } else { "Is" };
    let every = |test: &dyn Fn(&str) -> bool| states.iter().all(|state| test(state));
    if every(&|state| state.eq_ignore_ascii_case("present")) {
        return yes_no_question(name, true);
    }
    if every(&|state| ["absent", "none"].contains(&state.to_lowercase().as_str())) {
        return yes_no_question(name, false);
    }
    if plural && every(&|state| state.starts_with(|c: char| c.is_ascii_digit())) {
        return format!("Does it have {wanted} {lower}");
    }
    if let Some(sense @ ("feel" | "smell" | "taste")) = lower.split(' ').next()
        && !lower.contains(" of ")
    {
        return format!("Does it {sense} {wanted}");
    }
    if every(&|state| state.starts_with("with ")) {
        let have: Vec<_> = states.iter().map(|state| &state["with ".len()..]).collect();
        let does = if plural { "Do" } else { "Does" };
        return format!("{does} {the} have {}", joined(&have));
    }
    if every(&|state| is_made_from(state, &lower)) {
        return format!("Is it {wanted}");
    }
    if states.len() > 3 {
        return format!("{be} {the} one of these: {wanted}");
    }
    format!("{be} {the} {wanted}")
}

/// Whether a state is the name turned into an adjective: `lobed` and `unlobed` of `lobes`.
fn is_made_from(state: &str, name: &str) -> bool {
    let stem = singular(name);
    let stem = stem.trim_end_matches(['e', 'y']);
    let state = state.strip_prefix("un").unwrap_or(state);
    stem.len() >= 3 && !name.contains(' ') && !state.contains(' ') && state.starts_with(stem)
}
