//! The wording: what a couplet asks, put into words that a nine-year-old can answer.
//!
//! From a matrix and what a couplet asks of it to one plain sentence. A person's own wording
//! of a character is used wherever it can be; otherwise the sentence is written from the
//! character's name and states by the rules for good keys in `docs/TRADE.md` (T1 positive,
//! T3 no bare comparative, T10 one idea, T11 a real yes or no, T13 the unit always said).
//! It judges no wording (that is the second opinion's work) and escapes nothing: the text is
//! plain. The rules of grammar are common practice, without a source.

mod grammar;
mod many_ways;
mod numbers;
mod ratios;
mod states;

use spinney_model::{Ask, Asked, CharacterIx, Couplet, Key, Matrix, Scale, Wording};

pub use many_ways::many_ways;

pub(crate) use grammar::speaks_of_leaves;
use grammar::{capital, from_name};

/// Fills every wording of a key that is still empty and that is linked to a character.
///
/// **Guarantees**: words that stand there already are kept to the letter.
pub fn put_words(key: &mut Key, matrix: &Matrix) {
    for couplet in &mut key.couplets {
        let Couplet { wording, ask: Some(ask), .. } = couplet else {
            continue;
        };
        match wording {
            Wording::Question(text) if text.trim().is_empty() => *text = question(matrix, ask),
            Wording::Question(_) => {}
            Wording::Leads { yes, no } => {
                let (first, second) = leads(matrix, ask);
                for (lead, words) in [(yes, first), (no, second)] {
                    if lead.trim().is_empty() {
                        *lead = words;
                    }
                }
            }
        }
    }
}

/// The question that a couplet asks: `Is the leaf edge toothed?`
///
/// **Guarantees**: ends in a question mark; without a person's own wording it starts with Is,
/// Are, Does or Can. **Panics** if the ask is of another matrix.
pub fn question(matrix: &Matrix, ask: &Ask) -> String {
    let character = matrix.character(ask.character);
    let own = character.question.as_deref().map(str::trim).filter(|text| !text.is_empty());
    let sentence = own
        .and_then(|template| from_template(template, matrix, ask))
        .unwrap_or_else(|| from_name(matrix, ask));
    let sentence = capital(sentence.trim().trim_end_matches(['?', '.', ' ']));
    format!("{sentence}?")
}

/// What "yes" means, short, for lists and explanations: `leaf edge: toothed`.
pub fn phrase(matrix: &Matrix, ask: &Ask) -> String {
    let character = matrix.character(ask.character);
    format!("{}: {}", character.name.trim(), yes_means(matrix, ask))
}

/// Whether the wording of a character's questions is a person's own.
pub fn is_own(matrix: &Matrix, character: CharacterIx) -> bool {
    let own = matrix.character(character).question.as_deref();
    own.is_some_and(|text| !text.trim().is_empty())
}

/// Two contrasting leads, part first, then state: `Leaf edge: toothed`, `Leaf edge: smooth`.
fn leads(matrix: &Matrix, ask: &Ask) -> (String, String) {
    let character = matrix.character(ask.character);
    let name = capital(character.name.trim());
    let yes = yes_means(matrix, ask);
    let opposite = |yes| yes_means(matrix, &Ask { character: ask.character, yes });
    let no = match &ask.yes {
        Asked::States(asked) => states::joined(&states::others(character, asked)),
        Asked::AtLeast(least) => opposite(Asked::Below(*least)),
        Asked::Below(limit) => opposite(Asked::AtLeast(*limit)),
    };
    (format!("{name}: {yes}"), format!("{name}: {no}"))
}

/// The yes side in words: `toothed or spiny`, `22.5 mm or more`.
fn yes_means(matrix: &Matrix, ask: &Ask) -> String {
    if let Some(compared) = ratios::yes_means(matrix, ask) {
        return compared;
    }
    let character = matrix.character(ask.character);
    match &ask.yes {
        Asked::States(asked) => states::joined(&states::names(character, asked)),
        Asked::AtLeast(least) => numbers::or_more(character, *least),
        Asked::Below(limit) => numbers::less_than(character, *limit),
    }
}

/// A person's own wording with the states or the threshold in it; None where it cannot ask
/// for them.
fn from_template(template: &str, matrix: &Matrix, ask: &Ask) -> Option<String> {
    let character = matrix.character(ask.character);
    if character.ratio_of.is_some() {
        return ratios::in_template(template, matrix, ask);
    }
    let asked = &ask.yes;
    let yes_no = states::is_yes_no(character);
    let wanted = match asked {
        Asked::States(asked) => states::joined(&states::names(character, asked)),
        Asked::AtLeast(least) => numbers::threshold(character, template, *least),
        Asked::Below(limit) => numbers::less_than(character, *limit),
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
mod tests;
