//! Words that each child takes differently: one place decides, wherever a question was asked.
//!
//! From the words of a question to the first of them that says too little: a judgement (`nice`),
//! a size without a measure (`big`, `many`), a comparison with other finds or with somebody's
//! finger, or a word that commits to nothing (`usually`). What compares two parts of the same
//! find is no such thing, and neither is a name of several words in the table ("thin card").

use spinney_model::{Character, Finding, OfWords, Scale};

use super::Text;
use crate::phrase::{self, Words};
use crate::walked_key::WalkedKey;

/// Sizes and shades without a measure (T3).
const SIZES: [&str; 32] = [
    "big", "small", "large", "little", "tiny", "huge", "long", "short", "wide", "narrow",
    "broad", "thick", "thin", "tall", "high", "low", "deep", "shallow", "dark", "light",
    "pale", "bright", "heavy", "many", "lots", "several", "few", "loads", "stout", "slender",
    "old", "young",
];

/// The same as comparatives.
const COMPARATIVES: [&str; 26] = [
    "bigger",
    "smaller",
    "larger",
    "longer",
    "shorter",
    "wider",
    "narrower",
    "broader",
    "thicker",
    "thinner",
    "taller",
    "higher",
    "lower",
    "deeper",
    "shallower",
    "darker",
    "lighter",
    "paler",
    "brighter",
    "heavier",
    "shinier",
    "rougher",
    "smoother",
    "older",
    "younger",
    "rounder",
];

/// The same as superlatives: among which finds?
const SUPERLATIVES: [&str; 22] = [
    "biggest",
    "smallest",
    "largest",
    "longest",
    "shortest",
    "widest",
    "narrowest",
    "thickest",
    "thinnest",
    "tallest",
    "highest",
    "lowest",
    "deepest",
    "darkest",
    "lightest",
    "palest",
    "heaviest",
    "shiniest",
    "roughest",
    "oldest",
    "most",
    "fewest",
];

/// Matters of taste, and of what one is used to (T3).
const JUDGEMENTS: [&str; 36] = [
    "nice",
    "pretty",
    "beautiful",
    "lovely",
    "cute",
    "funny",
    "strange",
    "weird",
    "odd",
    "unusual",
    "interesting",
    "boring",
    "ugly",
    "cool",
    "bad",
    "good",
    "horrible",
    "yucky",
    "special",
    "normal",
    "ordinary",
    "typical",
    "common",
    "rare",
    "favourite",
    "favorite",
    "best",
    "worst",
    "great",
    "amazing",
    "scary",
    "smelly",
    "messy",
    "perfect",
    "attractive",
    "dangerous",
];

/// Words that commit to nothing (T4).
const HEDGES: [&str; 34] = [
    "usually",
    "mostly",
    "often",
    "sometimes",
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
    "commonly",
    "frequently",
    "probably",
    "slightly",
    "really",
    "very",
    "pretty",
    "mainly",
    "largely",
    "possibly",
    "relatively",
    "ish",
    "kinda",
];

/// The same in several words.
const PHRASES: [&[&str]; 6] = [
    &["more", "or", "less"],
    &["a", "bit"],
    &["a", "little"],
    &["sort", "of"],
    &["kind", "of"],
    &["now", "and", "then"],
];

/// Finds that others do not have before them.
const OTHERS: [&str; 10] =
    ["other", "others", "last", "first", "rest", "most", "ones", "mine", "ours", "yours"];

/// What a word trips people up with.
enum Vague {
    /// Nothing measures it.
    Bare(String),
    /// It compares with other finds, or with what differs from child to child.
    Compared(String),
    /// It commits to nothing, or is a matter of taste.
    Word(String),
}

/// What is vague about a question or lead, if anything.
pub(super) fn vague(seen: &WalkedKey<'_>, text: &Text<'_>) -> Option<Finding> {
    let character = text.question.map(|question| seen.matrix.character(question.character));
    let words = without_names(character, &text.words);
    Some(text.finding(match look(&words, character)? {
        Vague::Bare(word) => OfWords::Bare { word },
        Vague::Compared(word) => OfWords::Compared { word },
        Vague::Word(word) => OfWords::Vague { word },
    }))
}

/// The word of a question on which people will not agree, if there is one; names of the table
/// are not known here.
pub(crate) fn word(question: &str) -> Option<String> {
    Some(match look(&Words::of(question), None)? {
        Vague::Bare(word) | Vague::Compared(word) | Vague::Word(word) => word,
    })
}

fn look(words: &Words, character: Option<&Character>) -> Option<Vague> {
    let list: Vec<&str> = words.list.iter().map(String::as_str).collect();
    taste(&list)
        .map(Vague::Word)
        .or_else(|| other_finds(&list).map(Vague::Compared))
        .or_else(|| bare(&list, character).map(Vague::Bare))
}

/// A judgement, or a word that commits to nothing.
fn taste(list: &[&str]) -> Option<String> {
    for phrase in PHRASES {
        // "Is it a kind of …?" is no "kind of …".
        let mut places = (0..list.len()).filter(|at| list[*at..].starts_with(phrase));
        let kind =
            |at: usize| phrase[0] == "kind" && at > 0 && matches!(list[at - 1], "a" | "one");
        if places.any(|at| !kind(at)) {
            return Some(phrase.join(" "));
        }
    }
    let at = |place: usize| list.get(place).copied().unwrap_or_default();
    // "Is it about 5 cm long?", but not "hairs all around the edge".
    let number = |place: usize| phrase::is_number(at(place)) || at(place) == "as";
    let found = list.iter().enumerate().find(|(place, word)| {
        JUDGEMENTS.contains(word)
            || HEDGES.contains(word)
            || matches!(**word, "about" | "around") && number(place + 1)
    });
    if let Some((_, word)) = found {
        return Some((*word).to_owned());
    }
    if list.starts_with(&["do", "you"]) || list.starts_with(&["would", "you"]) {
        return Some("you".to_owned());
    }
    // "Is it different?": from what? "Are both sides the same colour?" says it.
    let end: Vec<&str> = list.iter().copied().filter(|word| *word != "the").collect();
    match end.as_slice() {
        ["is" | "does", "it", "look", word @ ("different" | "same")]
        | ["is", "it", word @ ("different" | "same")] => Some((*word).to_owned()),
        _ => None,
    }
}

/// What a find is compared with that is no part of it.
fn other_finds(list: &[&str]) -> Option<String> {
    let at = |place: usize| list.get(place).copied().unwrap_or_default();
    let same = list.windows(3).any(|three| three[..2] == ["the", "same"] && three[2] != "as")
        && list.contains(&"of");
    for (place, word) in list.iter().enumerate() {
        let next = if at(place + 1) == "the" { place + 2 } else { place + 1 };
        let others = OTHERS.contains(&at(next))
            || matches!(at(next + 1), "one" | "ones") && matches!(at(next), "first" | "last");
        let compares = matches!(*word, "than" | "like" | "as");
        if compares && others && !same {
            return Some(list[next..list.len().min(next + 2)].join(" "));
        }
        // "As long as your thumb is wide" is a measure that everybody carries.
        let own = matches!(at(place + 1), "my" | "your" | "our" | "his" | "her");
        let measures = *word == "than"
            || *word == "match"
            || *word == "as" && list[..place].contains(&"as");
        if measures && own && at(place + 2) != "thumb" {
            return Some(list[place + 1..list.len().min(place + 3)].join(" "));
        }
        // "Is it the biggest?", but not "is the longest leaflet at the end?".
        let last = matches!(at(place + 1), "" | "one" | "of" | "on" | "here");
        let whole = place > 0 && at(place - 1) == "the";
        if SUPERLATIVES.contains(word) && whole && (last || at(place.wrapping_sub(2)) == "got")
        {
            return Some(format!("the {word}"));
        }
    }
    None
}

/// A size or comparison that nothing measures.
fn bare(list: &[&str], character: Option<&Character>) -> Option<String> {
    let at = |place: usize| list.get(place).copied().unwrap_or_default();
    // A number or a thing to compare with measures whatever stands beside it.
    let number = list.iter().any(|word| phrase::is_number(word) && *word != "one");
    let thing = list.iter().any(|word| matches!(*word, "than" | "half" | "twice"))
        || list.windows(3).any(|three| three[0] == "as" && three[2] == "as");
    if number || thing {
        return None;
    }
    let found = list.iter().enumerate().find(|(place, word)| {
        let before = place.checked_sub(1).map_or("", at);
        let likened = (1..=3).any(|back| *place >= back && at(place - back) == "like");
        if matches!(before, "as" | "how") || likened {
            return false;
        }
        // "Can you see light through it?"
        let seen = **word == "light" && matches!(before, "see" | "the" | "let" | "lets");
        // "Do the teeth have smaller teeth on them?" compares them with each other.
        let itself = COMPARATIVES.contains(word) && list[..*place].contains(&at(place + 1));
        (SIZES.contains(word) || COMPARATIVES.contains(word)) && !seen && !itself
    });
    let word = found?.1;
    (!measured_by_the_table(word, character)).then(|| (*word).to_owned())
}

/// Whether a column in order says itself with numbers what its states are: `small` is then no
/// comparative of anybody's own.
fn measured_by_the_table(word: &str, character: Option<&Character>) -> bool {
    let Some(Character {
        scale: Scale::Words { states }, ordered: true, name, question, ..
    }) = character
    else {
        return false;
    };
    let a_state =
        states.iter().any(|state| Words::of(state).list.iter().any(|own| own == word));
    let texts = states.iter().chain([name]).chain(question);
    a_state && texts.into_iter().any(|text| text.contains(|c: char| c.is_ascii_digit()))
}

/// The text without names of characters and states that have several words: "thin card" is a
/// thing to feel, and "long shoot" a name. A column that a group's own question made has the
/// whole question for its name, which excuses nothing.
fn without_names(character: Option<&Character>, words: &Words) -> Words {
    let Some(character) = character else { return words.clone() };
    let mut names = vec![character.name.clone()];
    if let Scale::Words { states } = &character.scale {
        names.extend(states.iter().cloned());
    }
    let mut left = words.clone();
    for name in names {
        let name = Words::of(&name).list;
        if name.len() > 1 && name.len() < words.list.len() {
            left = left.without(&name);
        }
    }
    left
}
