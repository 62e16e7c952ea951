//! Words that each child takes differently: bare comparatives and vague words.

use spinney_model::{Code, Finding, Scale};

use super::Text;
use crate::phrase::{self, Words};
use crate::seen::Seen;

/// Judgements without a measure (T3), with their comparatives.
const COMPARATIVES: [&str; 37] = [
    "big", "bigger", "small", "smaller", "large", "larger", "little", "tiny", "huge", "long",
    "longer", "short", "shorter", "wide", "wider", "narrow", "narrower", "broad", "broader",
    "thick", "thicker", "thin", "thinner", "tall", "taller", "dark", "darker", "light",
    "lighter", "pale", "heavy", "heavier", "many", "few", "hairy", "stout", "slender",
];

/// Words that commit to nothing (T4).
const VAGUE: [&str; 26] = [
    "usually",
    "mostly",
    "often",
    "sometimes",
    "about",
    "tends",
    "tend",
    "generally",
    "normally",
    "rather",
    "fairly",
    "quite",
    "roughly",
    "approximately",
    "typically",
    "rarely",
    "seldom",
    "perhaps",
    "maybe",
    "somewhat",
    "almost",
    "nearly",
    "around",
    "commonly",
    "frequently",
    "probably",
];

/// A comparative that nothing measures.
pub(super) fn bare_comparative(seen: &Seen<'_>, text: &Text<'_>) -> Option<Finding> {
    let words = without_names(seen, text);
    let list = &words.list;
    let at = |place: usize| list.get(place).map_or("", String::as_str);
    // A number or a thing to compare with measures whatever stands beside it.
    let measured = list.iter().any(|word| {
        phrase::is_number(word) && word != "one" || word == "than" || word == "half"
    }) || list.windows(3).any(|three| three[0] == "as" && three[2] == "as");
    if measured {
        return None;
    }
    let bare = list.iter().enumerate().find(|(place, word)| {
        let compared = *place > 0 && matches!(at(place - 1), "as" | "how")
            || (1..=3).any(|back| *place >= back && at(place - back) == "like");
        COMPARATIVES.contains(&word.as_str()) && !compared
    });
    let (_, word) = bare?;
    Some(text.finding(
        Code::BareComparative,
        format!(
            "{} asks for “{word}”, and each child draws that line elsewhere.",
            text.called()
        ),
        "Give a length with its unit, a count, or something to compare it with.",
    ))
}

/// The text without names of characters and states that have several words: "thin card" is a
/// thing to feel, and "long shoot" a name.
fn without_names(seen: &Seen<'_>, text: &Text<'_>) -> Words {
    let Some(question) = text.question else { return text.words.clone() };
    let character = seen.matrix.character(question.character);
    let mut names = vec![character.name.clone()];
    if let Scale::Words { states } = &character.scale {
        names.extend(states.iter().cloned());
    }
    let mut words = text.words.clone();
    for name in names {
        let name = Words::of(&name).list;
        if name.len() > 1 {
            words = words.without(&name);
        }
    }
    words
}

/// A word that commits to nothing.
pub(super) fn vague_word(text: &Text<'_>) -> Option<Finding> {
    let more_or_less = ["more", "or", "less"].map(str::to_owned);
    let word = text
        .words
        .list
        .iter()
        .find(|word| VAGUE.contains(&word.as_str()))
        .map(String::as_str)
        .or_else(|| text.words.find(&more_or_less).map(|_| "more or less"))?;
    Some(text.finding(
        Code::VagueWord,
        format!("{} says “{word}”: what about the others?", text.called()),
        "Say what all of them have, or let the kinds that vary come out on both sides.",
    ))
}
