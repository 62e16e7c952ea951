//! Lists, numbers and forms as a teacher would say them: from indices to phrases.

use spinney_model::{
    Answer, Ask, Asked, Character, CharacterIx, End, Matrix, Quantity, Scale, TaxonIx, Unit,
    Value,
};

use crate::tree::Tree;
use crate::values::{Left, Taken};

/// More names than this in one sentence are counted instead.
const MOST_NAMES: usize = 8;

/// "hazel, lime and plane".
pub(crate) fn all(words: &[String]) -> String {
    listed(words, "and")
}

/// "hazel, lime or plane".
pub(crate) fn any(words: &[String]) -> String {
    listed(words, "or")
}

/// The names of kinds, with "and".
pub(crate) fn kinds(matrix: &Matrix, taxa: impl IntoIterator<Item = TaxonIx>) -> String {
    all(&names(matrix, taxa))
}

/// The names of kinds.
pub(crate) fn names(matrix: &Matrix, taxa: impl IntoIterator<Item = TaxonIx>) -> Vec<String> {
    taxa.into_iter().map(|taxon| matrix.taxon(taxon).name.clone()).collect()
}

/// The same sentence beginning with a capital letter.
pub(crate) fn capital(sentence: &str) -> String {
    let mut letters = sentence.chars();
    letters
        .next()
        .map_or_else(String::new, |first| first.to_uppercase().chain(letters).collect())
}

/// A character as it is called in a sentence: its name, or its question between quotation marks
/// where it was made from one that people asked in their own words.
pub(crate) fn called(name: &str) -> String {
    if name.ends_with('?') { format!("“{name}”") } else { name.to_owned() }
}

/// What a question does: `asks for edge`, `asks “Is it round?”`.
pub(crate) fn asks_for(name: &str) -> String {
    match name.ends_with('?') {
        true => format!("asks “{name}”"),
        false => format!("asks for {name}"),
    }
}

/// Lengths below so many margins are small beside the margin.
const SMALL: i64 = 10;
/// In thousandths of a millimetre: who measures with a ruler is not surer than that.
const LEAST_MARGIN: i64 = 2_000;

/// A remedy, and after it the setting of the safety margin, where these lengths are small beside
/// it.
pub(crate) fn with_margin<'v>(
    character: &Character,
    lengths: impl IntoIterator<Item = &'v Value>,
    remedy: &str,
) -> String {
    let Scale::Measure { gap, unit: Unit::Millimetres } = character.scale else {
        return remedy.to_owned();
    };
    let longest = lengths.into_iter().filter_map(|value| match value {
        Value::Range { high, .. } => Some(high.thousandths()),
        _ => None,
    });
    let margin = gap.thousandths();
    let small = longest.max().is_some_and(|longest| longest < SMALL.saturating_mul(margin));
    if margin <= LEAST_MARGIN || !small {
        return remedy.to_owned();
    }
    format!(
        "{remedy} Or make the safety margin of {} smaller, if you measure that closely: at the \
         column on the screens, or with --gap 2 at the terminal.",
        called(&character.name)
    )
}

/// One word for one, another for several: `number(2, "has", "have")`.
pub(crate) fn number<'a>(count: usize, one: &'a str, several: &'a str) -> &'a str {
    if count == 1 { one } else { several }
}

/// What stands at the end an answer leads to.
pub(crate) fn at_end(
    matrix: &Matrix,
    tree: &Tree<'_>,
    (couplet, answer): (usize, Answer),
) -> String {
    tree.end(couplet, answer).map_or_else(String::new, |end| end_names(matrix, end))
}

fn end_names(matrix: &Matrix, end: &End) -> String {
    let known = end.taxa.iter().filter(|taxon| taxon.0 < matrix.taxa().len());
    let strange = end.unrecognised.iter().map(|name| format!("“{name}”"));
    let names: Vec<String> =
        known.map(|taxon| matrix.taxon(*taxon).name.clone()).chain(strange).collect();
    any(&names)
}

/// What is left of one character: "toothed or smooth", "40 mm or more"; empty: everything.
pub(crate) fn form(matrix: &Matrix, character: CharacterIx, taken: &Taken) -> String {
    let Some((_, left)) = taken.iter().find(|(c, _)| *c == character) else {
        return String::new();
    };
    let character = matrix.character(character);
    match (left, &character.scale) {
        (Left::States(bits), Scale::Words { states }) => any(&states
            .iter()
            .enumerate()
            .filter(|(state, _)| bits >> state & 1 == 1)
            .map(|(_, name)| name.clone())
            .collect::<Vec<_>>()),
        (Left::Span(from, below), _) => match (*from, *below) {
            (i64::MIN, below) => format!("less than {}", amount(character, below)),
            (from, i64::MAX) => format!("{} or more", amount(character, from)),
            (from, below) if character.scale == Scale::Counts && below - from == 1000 => {
                amount(character, from)
            }
            (from, below) => {
                format!(
                    "{} or more and less than {}",
                    amount(character, from),
                    amount(character, below)
                )
            }
        },
        _ => String::new(),
    }
}

/// What a question asks for: "edge (toothed or spiny)", "stalk (22.5 mm or more)".
pub(crate) fn asked(matrix: &Matrix, ask: &Ask) -> String {
    let Some(character) = matrix.characters().get(ask.character.0) else {
        return "something that the table does not have".to_owned();
    };
    let what = match (&ask.yes, &character.scale) {
        (Asked::States(asked), Scale::Words { states }) => {
            let named = asked.iter().filter_map(|state| states.get(state.0));
            any(&named.cloned().collect::<Vec<_>>())
        }
        (Asked::AtLeast(at), _) => format!("{} or more", amount(character, at.thousandths())),
        (Asked::Below(at), _) => format!("less than {}", amount(character, at.thousandths())),
        (Asked::States(_), _) => "nothing that it can have".to_owned(),
    };
    format!("{} ({what})", called(&character.name))
}

/// A number with its unit, as its column writes it.
pub(crate) fn amount(character: &Character, thousandths: i64) -> String {
    character.amount(Quantity::from_thousandths(thousandths))
}

/// A range with its unit: "30 to 35 mm"; "35 mm" where it is one number.
pub(crate) fn range(character: &Character, low: Quantity, high: Quantity) -> String {
    let high_end = amount(character, high.thousandths());
    if low == high { high_end } else { format!("{} to {high_end}", character.number(low)) }
}

fn listed(words: &[String], last: &str) -> String {
    match words {
        [] => String::new(),
        [one] => one.clone(),
        _ if words.len() > MOST_NAMES => {
            let rest = words.len() - MOST_NAMES;
            format!("{} {last} {rest} more", words[..MOST_NAMES].join(", "))
        }
        [most @ .., end] => format!("{} {last} {end}", most.join(", ")),
    }
}
