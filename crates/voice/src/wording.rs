//! The wording: what a couplet asks, put into words that a nine-year-old can answer.
//!
//! From a matrix and what a couplet asks of it to one plain sentence. A person's own wording
//! of a character is used wherever it can be; otherwise the sentence is written from the
//! character's name and states by the rules for good keys in `docs/TRADE.md` (T1 positive,
//! T3 no bare comparative, T10 one idea, T11 a real yes or no, T13 the unit always said).
//! It judges no wording (that is the second opinion's work) and escapes nothing: the text is
//! plain. The rules of grammar are common practice, without a source.

mod german;
mod grammar;
mod heading;
mod language;
mod numbers;
mod ratios;
mod rounded;
mod states;

use spinney_model::{
    Ask, Asked, Character, CharacterIx, Key, LeftTogether, Matrix, Scale, TaxonIx, Wording,
};

use crate::Tongue;
use crate::finding::phrases;
use grammar::{capital, lower};
pub use heading::about_leaves;
pub use heading::speaks_of_leaves;
use heading::{clean, whole_name, without_remark, without_unit};
use language::Language;

/// So many sets of kinds that are left together are named.
const MOST_TOGETHER: usize = 8;

/// Fills every wording of a key that is still empty and that is linked to a character, in the
/// language of whoever reads it.
///
/// **Guarantees**: words that stand there already are kept to the letter.
pub fn put_words(t: Tongue, key: &mut Key, matrix: &Matrix) {
    for at in 0..key.couplets.len() {
        let Some(ask) = &said(matrix, key, at) else { continue };
        match &mut key.couplets[at].wording {
            Wording::Question(text) if text.trim().is_empty() => {
                *text = question(t, matrix, ask)
            }
            Wording::Question(_) => {}
            Wording::Leads { yes, no } => {
                let (first, second) = leads(t, matrix, ask);
                for (lead, words) in [(yes, first), (no, second)] {
                    if lead.trim().is_empty() {
                        *lead = words;
                    }
                }
            }
        }
    }
}

/// What a couplet asks, with the number that is said for its threshold: the roundest that lies
/// between the same ranges of the kinds that come out below it, and keeps the gap
/// (`docs/KEY.md` 3). A question that a person kept has the person's number. None: nobody has
/// linked it yet.
pub fn said(matrix: &Matrix, key: &Key, at: usize) -> Option<Ask> {
    rounded::said(matrix, key, at)
}

/// The same of another question that could be asked where the couplet of this number is.
pub fn said_at(matrix: &Matrix, key: &Key, number: u32, ask: &Ask) -> Ask {
    rounded::said_at(matrix, key, number, ask)
}

/// The question that a couplet asks: `Is the leaf edge toothed?`
///
/// **Guarantees**: ends in a question mark; without a person's own wording it is a sentence
/// whose grammar a rule is sure of, or the plain form: `Twig end: is it one bud?` Whoever reads
/// German is asked in German, whatever the table is in. Whoever reads English is asked of a table
/// in another language in the plain form, in its own words: `Blattrand: gezähnt?`
/// **Panics** if the ask is of another matrix.
pub fn question(t: Tongue, matrix: &Matrix, ask: &Ask) -> String {
    let character = matrix.character(ask.character);
    let own = character.question.as_deref().map(str::trim).filter(|text| !text.is_empty());
    let sentence = own
        .and_then(|template| from_template(template, matrix, ask))
        .unwrap_or_else(|| from_name(t, matrix, ask));
    // French has a space before its marks.
    let space = if sentence.ends_with(' ') { " " } else { "" };
    let sentence = capital(sentence.trim().trim_end_matches(['?', '.', ' ']));
    format!("{sentence}{space}?")
}

/// A sentence from the character's name, without its question mark.
fn from_name(t: Tongue, matrix: &Matrix, ask: &Ask) -> String {
    let character = matrix.character(ask.character);
    let name = clean(&character.name);
    match spoken(t, matrix) {
        Language::English => {}
        Language::German if t.tag() == "de" => return in_german(t, matrix, ask).question(),
        other => {
            let name = heading::clean_as_written(&character.name);
            let name = if matches!(character.scale, Scale::Measure { .. }) {
                without_unit(&name)
            } else {
                name.as_str()
            };
            let wanted = yes_means(t, matrix, ask);
            let wanted = match wanted.as_str() {
                "yes" | "no" if states::is_yes_no(character) => {
                    other.yes_or_no(wanted == "yes").to_string()
                }
                _ => wanted,
            };
            return other.safe(&capital(name), &wanted);
        }
    }
    if let Some(sentence) = ratios::question(matrix, ask) {
        return sentence;
    }
    match (&ask.yes, &character.scale) {
        (Asked::States(asked), _) => {
            let name = without_remark(&name);
            let all: Vec<String> = states::all(character).iter().map(|s| lower(s)).collect();
            let yes = states::names(character, asked).into_iter();
            let yes: Vec<String> =
                yes.map(|state| states::in_small_letters(state, &all)).collect();
            let yes: Vec<&str> = yes.iter().map(String::as_str).collect();
            if states::is_yes_no(character) {
                let sentence = states::yes_no_question(name).filter(|_| yes == ["yes"]);
                return sentence
                    .unwrap_or_else(|| format!("{}: {}", capital(name), yes.join(" or ")));
            }
            let sentence = states::states_question(&whole_name(matrix, name), &yes, &all);
            sentence.unwrap_or_else(|| states::plain_form(&capital(name), name, &yes, &all))
        }
        (asked, Scale::Measure { .. }) => {
            numbers::measure_question(character, asked, |part| whole_name(matrix, part))
        }
        _ => numbers::count_question(character, &yes_means(t, matrix, ask)),
    }
}

/// The language of the words around names and states: the reader's, or, for readers of English,
/// the table's.
fn spoken(t: Tongue, matrix: &Matrix) -> Language {
    match t.tag() {
        "de" => Language::German,
        _ => language::of(matrix),
    }
}

fn in_german(t: Tongue, matrix: &Matrix, ask: &Ask) -> german::Sentence {
    german::sentence(matrix, ask, &yes_means(t, matrix, ask))
}

/// Which kinds a key does not tell apart: `These are left together: hazel and lime.` None: it
/// tells all of them apart. Of a long list the first are named, and the others counted.
pub fn left_together(
    t: Tongue,
    name: impl Fn(TaxonIx) -> String,
    left: &[LeftTogether],
) -> Option<String> {
    let set = |set: &LeftTogether| {
        let names: Vec<_> = set.taxa.iter().map(|taxon| name(*taxon)).collect();
        phrases::all(t, &names)
    };
    let sets: Vec<String> = left.iter().map(set).collect();
    match sets.len().saturating_sub(MOST_TOGETHER) {
        _ if sets.is_empty() => None,
        0 => Some(t.with("sheet-left-together", &[("sets", &sets.join("; "))])),
        more => {
            let first = sets[..MOST_TOGETHER].join("; ");
            Some(t.count_with("sheet-left-together-more", more, &[("sets", &first)]))
        }
    }
}

/// What "yes" means, short, for lists and explanations: `leaf edge: toothed`.
pub fn phrase(t: Tongue, matrix: &Matrix, ask: &Ask) -> String {
    let character = matrix.character(ask.character);
    format!("{}: {}", character.name.trim(), yes_means(t, matrix, ask))
}

/// The states of a column in words, as a person reads them: what is only yes and no is said in
/// their language, all else as it was typed.
pub fn states(t: Tongue, character: &Character) -> Vec<String> {
    let yes_no = states::is_yes_no(character);
    let said = |state: &String| match state.trim().to_lowercase().as_str() {
        "yes" if yes_no => t.say("answer-yes"),
        "no" if yes_no => t.say("answer-no"),
        _ => state.clone(),
    };
    states::all(character).iter().map(said).collect()
}

/// What a second look is for: `it should not be shiny.` Where the question cannot be turned into
/// that, the question itself with its answer.
///
/// In German only a sentence of our own is turned: `der Blattrand müsste gezähnt sein.`
pub fn second_look(t: Tongue, matrix: &Matrix, ask: &Ask, opposite: bool) -> String {
    let question = question(t, matrix, ask);
    let not = if opposite { "not " } else { "" };
    let turned = match t.tag() {
        "en" => should(matrix, ask, &question)
            .map(|(subject, verb)| format!("{subject} should {not}{verb}.")),
        _ => {
            let ours = in_german(t, matrix, ask);
            let asked = question.trim_end_matches('?') == capital(&ours.question());
            asked.then(|| ours.statement(!opposite)).flatten()
        }
    };
    match turned {
        Some(turned) => turned,
        None if opposite => t.with("sheet-look-no", &[("question", &question)]),
        None => t.with("sheet-look-yes", &[("question", &question)]),
    }
}

/// A question taken apart for a statement: `the leaf edge` and `be toothed`. None: it is of no
/// form that can be turned.
fn should(matrix: &Matrix, ask: &Ask, question: &str) -> Option<(String, String)> {
    let text = question.strip_suffix('?')?;
    let (verb, rest) = text.split_once(' ')?;
    if text.contains(':') {
        return None;
    }
    let it = rest.strip_prefix("it ").map(|rest| ("it".to_string(), rest));
    match (verb, it) {
        ("Is", Some((it, rest))) => Some((it, format!("be {rest}"))),
        ("Does", Some((it, rest))) => Some((it, rest.to_string())),
        ("Is" | "Are", None) => {
            let wanted = yes_means(Tongue::of_terminal(), matrix, ask);
            // "2 cm or more" is worded as "2 cm or longer".
            let amount = wanted.strip_suffix(" or more").unwrap_or(&wanted);
            let at = rest.find(wanted.as_str()).or_else(|| rest.find(amount));
            let at = at.filter(|at| *at > 0)?;
            let subject = rest[..at].trim();
            let known = subject.starts_with("the ") || subject.starts_with("its ");
            known.then(|| (subject.to_string(), format!("be {}", &rest[at..])))
        }
        _ => None,
    }
}

/// Whether the states of a character are just yes and no.
pub(crate) fn is_yes_no(character: &Character) -> bool {
    states::is_yes_no(character)
}

/// Whether the wording of a character's questions is a person's own.
pub fn is_own(matrix: &Matrix, character: CharacterIx) -> bool {
    let own = matrix.character(character).question.as_deref();
    own.is_some_and(|text| !text.trim().is_empty())
}

/// Two contrasting leads, part first, then state: `Leaf edge: toothed`, `Leaf edge: smooth`.
fn leads(t: Tongue, matrix: &Matrix, ask: &Ask) -> (String, String) {
    let character = matrix.character(ask.character);
    let name = capital(character.name.trim());
    let yes = yes_means(t, matrix, ask);
    let opposite = |yes| yes_means(t, matrix, &Ask { character: ask.character, yes });
    let no = match &ask.yes {
        Asked::States(asked) => {
            let or = spoken(t, matrix).or();
            states::joined_by(or, &states::others(character, asked))
        }
        Asked::AtLeast(least) => opposite(Asked::Below(*least)),
        Asked::Below(limit) => opposite(Asked::AtLeast(*limit)),
    };
    (format!("{name}: {yes}"), format!("{name}: {no}"))
}

/// The yes side in words: `toothed or spiny`, `22.5 mm or more`.
fn yes_means(t: Tongue, matrix: &Matrix, ask: &Ask) -> String {
    let compared = match t.tag() {
        "de" => german::compared(matrix, ask),
        _ => ratios::yes_means(matrix, ask),
    };
    if let Some(compared) = compared {
        return compared;
    }
    let character = matrix.character(ask.character);
    let language = spoken(t, matrix);
    match &ask.yes {
        Asked::States(asked) => {
            let named = states::names(character, asked).into_iter();
            let yes_no = t.tag() == "de" && states::is_yes_no(character);
            let said = |state| if yes_no { language.yes_or_no(state == "yes") } else { state };
            states::joined_by(language.or(), &named.map(said).collect::<Vec<_>>())
        }
        Asked::AtLeast(least) => numbers::or_more(language, character, *least),
        Asked::Below(limit) => numbers::less_than(language, character, *limit),
    }
}

/// A person's own wording with the states or the threshold in it; None where it cannot ask
/// for them. What is filled in is in the language of the table, as the wording is.
fn from_template(template: &str, matrix: &Matrix, ask: &Ask) -> Option<String> {
    let character = matrix.character(ask.character);
    if character.ratio_of.is_some() {
        return ratios::in_template(template, matrix, ask);
    }
    let asked = &ask.yes;
    let language = language::of(matrix);
    let yes_no = states::is_yes_no(character);
    let wanted = match asked {
        Asked::States(asked) => {
            states::joined_by(language.or(), &states::names(character, asked))
        }
        Asked::AtLeast(least) => numbers::threshold(language, character, template, *least),
        Asked::Below(limit) => numbers::less_than(language, character, *limit),
    };
    if template.contains("{}") {
        return (!yes_no).then(|| template.replace("{}", &wanted));
    }
    if yes_no {
        return wanted.eq_ignore_ascii_case("yes").then(|| template.to_string());
    }
    // Without a gap it still serves where it happens to ask for just this.
    let says_it = template.to_lowercase().contains(&wanted.to_lowercase());
    (says_it && !matches!(character.scale, Scale::Measure { .. })).then(|| template.to_string())
}

#[cfg(test)]
mod as_typed;
#[cfg(test)]
pub(crate) mod tests;
