//! Questions about states in words: `Is the leaf edge toothed or spiny?`
//!
//! From a heading and the states on the yes side to a sentence, or to none where no rule is
//! sure of its grammar: then the plain form is used. It does not choose which side is "yes".

use std::collections::BTreeSet;

use spinney_model::{Character, Scale, StateIx};

use super::grammar::{
    Noun, article, front, is_adjective, is_joint, is_noun, is_plural, is_several, lower,
    noun_of, plural, singular, the, verb,
};
use super::heading::{hangs, reads_well, with_articles};

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

/// A state in small letters; one that no list or ending knows may be a name, `Ann` or `Kew`, and
/// keeps its capitals.
pub(super) fn in_small_letters(state: &str, all: &[String]) -> String {
    let small = lower(state);
    let shouted = state.chars().count() > 1 && !state.chars().any(char::is_lowercase);
    let known = shouted || sort(&small, all) != Sort::Unknown;
    if known { small } else { state.to_string() }
}

/// Several states as one phrase: `toothed, spiny or lobed`.
pub(super) fn joined(names: &[&str]) -> String {
    joined_by("or", names)
}

/// Several states as one phrase, with a language's own word between the last two.
pub(super) fn joined_by(or: &str, names: &[&str]) -> String {
    match names {
        [] => String::new(),
        [one] => (*one).to_string(),
        [most @ .., last] => format!("{} {or} {last}", most.join(", ")),
    }
}

pub(super) fn all(character: &Character) -> &[String] {
    match &character.scale {
        Scale::Words { states } => states,
        Scale::Counts | Scale::Measure { .. } => &[],
    }
}

/// What sort of words a state is.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
enum Sort {
    /// `toothed`, `long and thin`, `cut straight`, `made of leaflets`.
    Describes,
    /// `in pairs`, `by hopping`.
    Place,
    /// `like a saw`.
    Like,
    /// `of garlic`.
    Of,
    /// `one by one`.
    Manner,
    /// `with teeth`.
    With,
    /// `no teeth`, `without teeth`.
    Without,
    /// `a nut`, `the pond`.
    Thing,
    /// `berry`.
    Bare,
    /// `two`, `two pairs`, `many`, `8`.
    Several,
    /// `none`.
    None,
    /// Who knows.
    Unknown,
}

fn sort(state: &str, all: &[String]) -> Sort {
    let words: Vec<&str> = state.split(' ').collect();
    let first = words[0];
    let adverb = |word: &str| word.ends_with("ly") || matches!(word, "very" | "half");
    let describes = |phrase: &str| {
        let words: Vec<&str> = phrase.split(' ').filter(|word| !word.is_empty()).collect();
        let Some((last, before)) = words.split_last() else { return false };
        is_adjective(last) && before.iter().all(|word| adverb(word) || is_adjective(word))
    };
    let participle =
        matches!(first, "cut" | "held" | "split" | "made" | "bent" | "set" | "torn" | "folded")
            || first.ends_with("ed") && is_adjective(first);
    match state {
        "none" | "absent" | "nothing" => return Sort::None,
        "one by one" | "singly" | "alternately" | "in turn" => return Sort::Manner,
        "the same" | "all the same" => return Sort::Describes,
        _ => {}
    }
    match first {
        "with" => Sort::With,
        "without" | "no" if words.len() > 1 => Sort::Without,
        "like" => Sort::Like,
        "of" => Sort::Of,
        "a" | "an" | "the" => Sort::Thing,
        _ if is_joint(first) => Sort::Place,
        "one" => Sort::Several,
        _ if is_several(first) || first.starts_with(|c: char| c.is_ascii_digit()) => {
            Sort::Several
        }
        _ if all.iter().any(|other| other.strip_prefix("no ") == Some(state)) => Sort::Bare,
        _ if participle => Sort::Describes,
        _ if state.split(" and ").all(describes) => Sort::Describes,
        // `straight from the twig`.
        _ if words.len() > 2 && is_adjective(first) && is_joint(words[1]) => Sort::Describes,
        _ if words.len() == 1 && is_noun(state) => Sort::Bare,
        _ => Sort::Unknown,
    }
}

/// Whether "is" may stand before it.
fn is_so(sorts: &[Sort]) -> bool {
    let so = |sort: &Sort| matches!(sort, Sort::Describes | Sort::Place | Sort::Like);
    sorts.iter().all(so)
}

/// `Is the leaf`, `Are the leaves`.
fn be(part: &str) -> String {
    let be = if noun_of(part) == Noun::Plural { "Are" } else { "Is" };
    format!("{be} {}", the(&with_articles(part)))
}

/// `Does the leaf`, `Do the leaves`, `Does it`.
fn does(part: &str) -> String {
    match part {
        "" => "Does it".to_string(),
        _ if noun_of(part) == Noun::Plural => format!("Do {}", the(&with_articles(part))),
        _ => format!("Does {}", the(&with_articles(part))),
    }
}

/// A question whether one of some states is there; None: no rule is sure.
///
/// `name` is the cleaned heading, `states` are those on the yes side, in small letters but for
/// names.
pub(super) fn states_question(name: &str, states: &[&str], all: &[String]) -> Option<String> {
    let sorts: Vec<Sort> = states.iter().map(|state| sort(state, all)).collect();
    let one = *sorts.first()?;
    let same = |wanted: Sort| sorts.iter().all(|sort| *sort == wanted);
    let wanted = if states.len() > 3 {
        format!("one of these: {}", joined(states))
    } else {
        joined(states)
    };
    let so = is_so(&sorts);
    if states.iter().all(|state| matches!(*state, "present" | "absent")) {
        return yes_no_question(name).filter(|_| *states == ["present"]);
    }
    if let Some(asked) = name.strip_prefix("what ").or_else(|| name.strip_prefix("where ")) {
        return of_question(asked, states, &sorts, all);
    }
    if name.contains(" or ") {
        return None;
    }
    if matches!(name, "type" | "kind" | "what it is") {
        let things = things(states);
        return match one {
            Sort::Bare | Sort::Thing if same(one) => Some(format!("Is it {things}")),
            _ if so => Some(format!("Is it {wanted}")),
            _ => None,
        };
    }
    if let Some(part) = of_or_before(name, "type").or_else(|| of_or_before(name, "kind")) {
        return of_part(part, states, &sorts, &wanted);
    }
    for quality in ["colour", "color", "shape", "form", "size", "pattern"] {
        if name == quality {
            return of_quality("", quality, states, &sorts, &wanted);
        }
        if let Some(part) = of_or_before(name, quality) {
            return of_quality(part, quality, states, &sorts, &wanted);
        }
    }
    if let Some(part) = of_or_before(name, "arrangement") {
        let manner = same(Sort::Manner);
        return (so || manner).then(|| format!("{} {wanted}", be(&many(part))));
    }
    if name.starts_with("arrangement") {
        return None;
    }
    for feel in ["feel", "texture"] {
        let part = if name == feel { Some("") } else { of_or_before(name, feel) };
        if let Some(part) = part {
            return so.then(|| format!("{} feel {wanted}", does(part)));
        }
    }
    if name == "smell" {
        return match one {
            Sort::Of if same(Sort::Of) => Some(format!("Does it smell {wanted}")),
            Sort::Describes if so => Some(format!("Is the smell {wanted}")),
            _ => None,
        };
    }
    if let Some(sentence) = of_verb(name, &sorts, &wanted) {
        return sentence;
    }
    if states.iter().all(|state| is_made_from(state, name)) {
        return Some(format!("Is it {wanted}"));
    }
    of_part(name, states, &sorts, &wanted)
}

/// `leaf` of `leaf colour`, `colour of leaf` or `colour of the leaf`.
fn of_or_before<'n>(name: &'n str, quality: &str) -> Option<&'n str> {
    let before = name.strip_suffix(quality).and_then(|part| part.strip_suffix(' '));
    let of = || name.strip_prefix(quality)?.strip_prefix(" of ");
    let part = before.or_else(of)?;
    Some(part.strip_prefix("the ").unwrap_or(part))
}

/// `a berry or an acorn`.
fn things(states: &[&str]) -> String {
    let things: Vec<String> =
        states.iter().map(|state| format!("{}{state}", article(state))).collect();
    joined(&things.iter().map(String::as_str).collect::<Vec<_>>())
}

/// A part's several: `leaves` of `leaf`.
fn many(part: &str) -> String {
    match part.rsplit_once(' ') {
        Some((before, last)) => format!("{before} {}", plural(last)),
        None => plural(part),
    }
}

/// A heading that is a question itself: `colour is it`, `does it feel like`.
fn of_question(asked: &str, states: &[&str], sorts: &[Sort], all: &[String]) -> Option<String> {
    if asked == "is it" {
        return states_question("type", states, all);
    }
    if asked == "found" {
        return states_question("found", states, all);
    }
    if let Some(quality) = asked.strip_suffix(" is it") {
        return states_question(quality, states, all);
    }
    if let Some(does) = asked.strip_prefix("does it ") {
        let does = does.strip_suffix(" like").unwrap_or(does);
        let (plain, _) = verb(does)?;
        let wanted = joined(states);
        let fits = match plain {
            "feel" | "look" | "smell" | "taste" => is_so(sorts),
            "eat" => sorts.iter().all(|sort| matches!(sort, Sort::Bare | Sort::Thing)),
            _ => sorts.iter().all(|sort| *sort == Sort::Place),
        };
        return fits.then(|| format!("Does it {plain} {wanted}"));
    }
    let (quality, part) =
        asked.split_once(" is the ").or_else(|| asked.split_once(" are the "))?;
    states_question(&format!("{part} {quality}"), states, all)
}

/// Colour, shape, size of a part, or of the thing itself.
fn of_quality(
    part: &str,
    quality: &str,
    states: &[&str],
    sorts: &[Sort],
    wanted: &str,
) -> Option<String> {
    let shape = matches!(quality, "shape" | "form");
    let shaped = || {
        let all: Vec<String> = states.iter().map(|state| format!("{state}-shaped")).collect();
        joined(&all.iter().map(String::as_str).collect::<Vec<_>>())
    };
    let wanted = if is_so(sorts) {
        wanted.to_string()
    } else if shape && sorts.iter().all(|sort| *sort == Sort::Bare) {
        shaped()
    } else {
        return None;
    };
    if part.is_empty() {
        return Some(format!("Is it {wanted}"));
    }
    if is_adjective(part)
        || matches!(part, "main" | "overall" | "general")
        || quality == "pattern"
    {
        return Some(format!("Is the {part} {quality} {wanted}"));
    }
    Some(format!("{} {wanted}", be(part)))
}

/// The plain form: `Twig end: is it one bud?`, and without "is it" where that does not go before
/// a state: `Moves: swims?`
pub(super) fn plain_form(heading: &str, name: &str, states: &[&str], all: &[String]) -> String {
    let goes = states.iter().all(|state| match sort(state, all) {
        Sort::Describes | Sort::Place | Sort::Like | Sort::Thing => true,
        Sort::Bare => !is_plural(state),
        Sort::Several => state.starts_with("one ") || state.starts_with("1 "),
        Sort::Unknown => !is_plural(state.split(' ').next().unwrap_or_default()),
        Sort::Of | Sort::Manner | Sort::With | Sort::Without | Sort::None => false,
    });
    let several = noun_of(name) == Noun::Plural && !name.contains(" or ");
    let first = name.split(' ').next().unwrap_or_default();
    let asks = matches!(first, "who" | "what" | "which" | "when" | "where" | "how" | "why");
    let is = if goes && !several && !asks { "is it " } else { "" };
    format!("{heading}: {is}{}", joined(states))
}

/// Words that make a sentence with what follows: `leaves arranged`, `twig covered in`.
const PARTICIPLES: [&str; 9] =
    ["arranged", "attached", "spread", "covered", "made", "joined", "fixed", "set", "held"];

/// A heading with a verb in it; None: it has none. Some(None): it has one, and no rule is sure.
#[allow(clippy::option_option, reason = "no verb and no sentence are two things")]
fn of_verb(name: &str, sorts: &[Sort], wanted: &str) -> Option<Option<String>> {
    let words: Vec<&str> = name.split(' ').collect();
    let all = |fits: &dyn Fn(Sort) -> bool| sorts.iter().all(|sort| fits(*sort));
    let noun = |sort: Sort| matches!(sort, Sort::Bare | Sort::Thing | Sort::Describes);
    let unsure = |sort: Sort| sort == Sort::Unknown || noun(sort) || sort == Sort::Several;
    let ends_in_joint = words.last().is_some_and(|last| is_joint(last)) && words.len() > 1;
    let at = words.len() - 1 - usize::from(ends_in_joint);
    let joint =
        if ends_in_joint { format!(" {}", words[words.len() - 1]) } else { String::new() };
    let subject = words[..at].join(" ");
    let subject = subject.strip_prefix("how it").unwrap_or(&subject).to_string();
    let word = words[at];
    if word == "found" && (subject.is_empty() || subject == "where") {
        let fits = if ends_in_joint { all(&unsure) } else { all(&|s| s == Sort::Place) };
        return Some(fits.then(|| format!("Was it found{joint} {wanted}")));
    }
    if PARTICIPLES.contains(&word) && (ends_in_joint || !subject.is_empty()) {
        let fits = if ends_in_joint {
            all(&unsure)
        } else {
            all(&|s| matches!(s, Sort::Place | Sort::Manner | Sort::Like))
        };
        let be = if subject.is_empty() { "Is it".to_string() } else { be(&subject) };
        return Some(fits.then(|| format!("{be} {word}{joint} {wanted}")));
    }
    if matches!(word, "is" | "are") && !ends_in_joint && !subject.is_empty() {
        return Some(is_so(sorts).then(|| format!("{} {wanted}", be(&subject))));
    }
    if joint == " like" && verb(word).is_none() {
        let part = words[..=at].join(" ");
        return Some(all(&noun).then(|| format!("{} like {wanted}", be(&part))));
    }
    let (plain, of_one) = verb(word)?;
    // `flies` may be animals, and `fall` a season.
    let agrees = of_one != (noun_of(&subject) == Noun::Plural) || subject.is_empty() && of_one;
    if !agrees {
        return None;
    }
    let fits = match plain {
        _ if ends_in_joint => all(&unsure),
        "eat" => all(&|s| matches!(s, Sort::Bare | Sort::Thing)),
        "feel" | "look" | "smell" | "taste" => {
            is_so(sorts) && !sorts.contains(&Sort::Place) || all(&|s| s == Sort::Of)
        }
        "grow" | "hang" | "stand" => is_so(sorts) || all(&|s| s == Sort::Manner),
        _ => all(&|s| matches!(s, Sort::Place | Sort::Manner)),
    };
    Some(fits.then(|| format!("{} {plain}{joint} {wanted}", does(&subject))))
}

/// Headings that name nothing one can be.
const ABSTRACT: &str = "habitat season winter summer autumn spring family use place time month \
    weather damage status group order number position date name notes remarks comment food diet sound taste behaviour \
    location origin period week year age sex role stage";

/// A part, and how it is.
fn of_part(part: &str, states: &[&str], sorts: &[Sort], wanted: &str) -> Option<String> {
    let first = part.split(' ').next().unwrap_or_default();
    let noun = front(part).rsplit(' ').next().unwrap_or_default();
    let known = (is_noun(noun) || is_plural(noun) && !is_adjective(noun))
        && !ABSTRACT.split_whitespace().any(|word| word == noun)
        && noun.chars().all(|letter| letter.is_alphabetic() || letter == '-');
    if is_joint(first) || !known || is_several(first) {
        return None;
    }
    let one = *sorts.first()?;
    if is_so(sorts) {
        return Some(format!("{} {wanted}", be(part)));
    }
    if sorts.iter().any(|sort| *sort != one) {
        return None;
    }
    let without = |start: &str| -> Vec<&str> {
        states.iter().map(|state| state.strip_prefix(start).unwrap_or(state)).collect()
    };
    let plural = is_plural(noun);
    match one {
        Sort::With => Some(format!("{} have {}", does(part), joined(&without("with ")))),
        Sort::Without => {
            let [state] = states else { return None };
            let rest = state.split_once(' ').map_or("", |(_, rest)| rest);
            Some(format!("{} have no {rest}", does(part)))
        }
        Sort::Thing if !plural && states.iter().all(|state| !state.starts_with("the ")) => {
            Some(format!("{} {wanted}", be(part)))
        }
        Sort::Bare if noun == "fruit" => Some(format!("{} {}", be(part), things(states))),
        // Where another state is "no teeth", the edge has them.
        Sort::Bare
            if states.iter().all(|state| is_plural(state) || !is_noun(state)) && !plural =>
        {
            Some(format!("{} have {wanted}", does(part)))
        }
        Sort::Several if plural && states.len() <= 3 => {
            let pairs =
                states.iter().all(|state| state.ends_with("pair") || state.ends_with("pairs"));
            let alone = states.iter().all(|state| !state.contains(' '));
            let one = states == ["one"] || states == ["1"];
            let of = if one { singular_part(part) } else { part.to_string() };
            match (pairs, alone) {
                (true, _) => Some(format!("Does it have {wanted} of {of}")),
                (_, true) => Some(format!("Does it have {wanted} {of}")),
                _ => None,
            }
        }
        Sort::Several if states.iter().all(|state| !state.contains(' ')) && is_noun(noun) => {
            let one = states == ["one"] || states == ["1"];
            let of = if one { part.to_string() } else { many(part) };
            Some(format!("Does it have {wanted} {of}"))
        }
        _ => None,
    }
}

fn singular_part(part: &str) -> String {
    match part.rsplit_once(' ') {
        Some((before, last)) => format!("{before} {}", singular(last)),
        None => singular(part),
    }
}

/// A question whether a yes/no character is so; None: no rule is sure.
///
/// There is none for the "no": "Does it have no spine?" is answered either way.
pub(super) fn yes_no_question(name: &str) -> Option<String> {
    let words: Vec<&str> = name.split(' ').collect();
    let (first, rest) = (words[0], words[1..].join(" "));
    let second = words.get(1).copied().unwrap_or_default();
    let asks = matches!(first, "is" | "are" | "does" | "do" | "has" | "have" | "can" | "did");
    let of_it = matches!(second, "it" | "they" | "the" | "its" | "there" | "you" | "one");
    if asks && of_it {
        return Some(name.to_string());
    }
    let has = |thing: &str| {
        let thing = with_articles(thing);
        match noun_of(&thing) {
            Noun::Singular => format!("Does it have {}{thing}", article(&thing)),
            Noun::Plural | Noun::Uncounted => format!("Does it have {thing}"),
        }
    };
    match first {
        "has" | "have" | "with" | "got" if !rest.is_empty() => {
            let thing = rest.strip_prefix("got ").unwrap_or(&rest);
            let thing =
                ["a ", "an "].iter().find_map(|a| thing.strip_prefix(a)).unwrap_or(thing);
            return Some(has(thing));
        }
        "can" if !rest.is_empty() => return Some(format!("Can it {rest}")),
        "is" if !rest.is_empty() => return Some(format!("Is it {rest}")),
        "are" if !rest.is_empty() => return Some(format!("Are they {rest}")),
        "any" => return Some(format!("Does it have {name}")),
        "without" | "no" => return None,
        _ => {}
    }
    if let Some(thing) = name.strip_suffix(" present") {
        return Some(has(thing));
    }
    if is_joint(first) || name.contains(" or ") {
        return None;
    }
    // A verb: `floats`, `seed has a wing`, `leaves fall in autumn`.
    let found = words.iter().enumerate().find_map(|(at, word)| Some((at, verb(word)?)));
    if let Some((at, (plain, of_one))) = found {
        let subject = words[..at].join(" ");
        let behind = words[at + 1..].join(" ");
        let agrees =
            (at > 0 && of_one != (noun_of(&subject) == Noun::Plural)) || (at == 0 && of_one);
        let does = does(&subject);
        let space = if behind.is_empty() { "" } else { " " };
        let noun = at == 0 && matches!(first, "flies" | "looks");
        if agrees && !noun && words[..at].iter().all(|word| !is_joint(word)) {
            return Some(format!("{does} {plain}{space}{behind}"));
        }
    }
    if is_manner(&words) {
        return None;
    }
    let adverb = |word: &str| {
        matches!(word, "underneath" | "below" | "above" | "inside" | "outside" | "all" | "over")
    };
    if is_adjective(first) && words[1..].iter().all(|word| adverb(word)) {
        return Some(format!("Is it {name}"));
    }
    // `underside hairy`, `petals joined`.
    if let Some((last, part)) = words.split_last()
        && !part.is_empty()
        && (is_adjective(last))
        && !is_noun(last)
        && part.last().is_some_and(|noun| is_noun(noun) || is_plural(noun))
        && part.iter().all(|word| !is_joint(word))
    {
        return Some(format!("{} {last}", be(&part.join(" "))));
    }
    let noun = front(name).rsplit(' ').next().unwrap_or_default();
    if !name.chars().all(|letter| letter.is_alphabetic() || " -'".contains(letter)) {
        return None;
    }
    // `lays eggs`, `flies`: perhaps a verb.
    let verb_like = |word: &str| is_plural(word) && !is_noun(word);
    if words.len() > 1 && verb_like(first) && front(name) != first || name == "flies" {
        return None;
    }
    let surely = is_noun(noun) || (is_plural(noun) && verb(noun).is_none());
    (surely && !is_adjective(noun) && reads_well(name) && !hangs(name)).then(|| has(name))
}

/// Whether words say how something lies, and not what there is: `upside down`, `side by side`,
/// `back to front`, `inside out`.
fn is_manner(words: &[&str]) -> bool {
    let turned =
        |pair: &[&str]| matches!(pair[1], "down" | "up" | "out") && !is_adjective(pair[0]);
    let from_to = |word: &&str| matches!(*word, "by" | "to" | "from" | "into" | "after");
    words.windows(2).any(turned) && words.len() == 2 || words.len() == 3 && from_to(&words[1])
}

/// Whether a state is the name turned into an adjective: `lobed` and `unlobed` of `lobes`.
fn is_made_from(state: &str, name: &str) -> bool {
    let stem = singular(name);
    let stem = stem.trim_end_matches(['e', 'y']);
    let state = state.strip_prefix("un").unwrap_or(state);
    stem.len() >= 3
        && !name.contains(' ')
        && !state.contains(' ')
        && state.starts_with(stem)
        && is_adjective(state)
}
