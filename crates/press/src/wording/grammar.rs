//! The little English that the questions need: number, article, subject, first letters.
//!
//! From a heading as somebody typed it to the parts of a sentence. It knows a handful of
//! irregular words and no dictionary; common practice, without a source.

use spinney_model::{Ask, Asked, Matrix, Scale};

use super::{numbers, ratios, states};

/// A sentence from the character's name, without its question mark.
pub(super) fn from_name(matrix: &Matrix, ask: &Ask) -> String {
    if let Some(sentence) = ratios::question(matrix, ask) {
        return sentence;
    }
    let character = matrix.character(ask.character);
    let whole = |part: &str| whole_name(matrix, part);
    match &ask.yes {
        Asked::States(asked) if states::is_yes_no(character) => {
            let yes = states::names(character, asked);
            let asks_for_yes = yes.iter().any(|name| name.eq_ignore_ascii_case("yes"));
            states::yes_no_question(&character.name, asks_for_yes)
        }
        Asked::States(asked) => {
            let name = whole(&lower_first(character.name.trim()));
            states::states_question(&name, &the(&name), &states::names(character, asked))
        }
        Asked::AtLeast(amount) | Asked::Below(amount) => match character.scale {
            Scale::Measure { .. } => numbers::measure_question(character, &ask.yes, whole),
            Scale::Counts | Scale::Words { .. } => {
                let wanted = match ask.yes {
                    Asked::Below(_) => numbers::less_than(character, *amount),
                    _ => numbers::or_more(character, *amount),
                };
                numbers::count_question(character, &wanted)
            }
        },
    }
}

/// A part's full name: in a table about leaves `edge` is the leaf edge, and the place on the
/// twig is said of the leaves themselves.
pub(super) fn whole_name(matrix: &Matrix, part: &str) -> String {
    if !speaks_of_leaves(matrix) {
        return part.to_string();
    }
    match part {
        "edge" | "margin" | "stalk" | "blade" => format!("leaf {part}"),
        "place on the twig"
        | "arrangement"
        | "arrangement on the twig"
        | "leaf arrangement" => "leaves".to_string(),
        _ => part.to_string(),
    }
}

/// Whether a table is about leaves: its headings, the part in the hand or the title say so.
pub(crate) fn speaks_of_leaves(matrix: &Matrix) -> bool {
    let scene = matrix.scene();
    let headings = matrix.characters().iter().map(|character| character.name.as_str());
    let texts = headings.chain(scene.part.as_deref()).chain(scene.title.as_deref());
    texts.flat_map(|text| text.split(|c: char| !c.is_alphabetic())).any(|word| {
        let word = word.to_lowercase();
        ["leaf", "leaves", "leaflet", "leaflets", "petiole", "twig"].contains(&word.as_str())
    })
}

/// How a noun is counted.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) enum Noun {
    /// One: `spine`.
    Singular,
    /// Several: `spines`.
    Plural,
    /// Not counted: `sap`.
    Uncounted,
}

/// How the first noun of a name is counted: that of `hairs on the vein` is `hairs`.
pub(super) fn noun_of(name: &str) -> Noun {
    const JOINTS: &[&str] = &[
        "of", "at", "on", "in", "under", "with", "along", "near", "between", "above", "below",
        "from", "that", "when", "where", "for",
    ];
    let before = name.split_whitespace().take_while(|word| !JOINTS.contains(word));
    let words: Vec<_> = before.collect();
    let numeral = words.first().is_some_and(|word| is_numeral(word));
    let noun = words.last().copied().unwrap_or(name).to_lowercase();
    if is_plural(&noun) || numeral {
        Noun::Plural
    } else if UNCOUNTED.contains(&noun.as_str()) {
        Noun::Uncounted
    } else {
        Noun::Singular
    }
}

const UNCOUNTED: &[&str] = &[
    "bark", "colour", "down", "dust", "felt", "fluff", "foam", "fur", "gum", "hair", "latex",
    "milk", "moss", "resin", "sap", "scent", "slime", "smell", "wax", "wool", "water",
];

fn is_numeral(word: &str) -> bool {
    ["two", "three", "four", "five", "six", "seven", "eight", "nine", "ten", "many", "several"]
        .contains(&word)
        || word.parse::<u32>().is_ok_and(|number| number != 1)
}

fn is_plural(noun: &str) -> bool {
    match noun {
        "teeth" | "feet" | "antennae" | "larvae" | "fungi" | "people" | "fronds" => true,
        "lens" | "species" | "gas" | "canvas" | "series" => false,
        _ => noun.ends_with('s') && !["ss", "us", "is"].iter().any(|end| noun.ends_with(end)),
    }
}

/// The plural of what is counted: `leaflets` of `leaflet`, `pairs of legs` of `pair of legs`.
pub(super) fn plural(name: &str) -> String {
    if noun_of(name) == Noun::Plural {
        return name.to_string();
    }
    let (noun, rest) = match name.find(" of ").or_else(|| name.find(" on ")) {
        Some(at) => name.split_at(at),
        None => (name, ""),
    };
    let many = match noun {
        "tooth" => "teeth".to_string(),
        "leaf" => "leaves".to_string(),
        "foot" => "feet".to_string(),
        "antenna" => "antennae".to_string(),
        _ if noun.ends_with(" leaf") => format!("{}eaves", &noun[..noun.len() - 3]),
        _ if noun.ends_with("ch") || noun.ends_with("sh") || noun.ends_with('x') => {
            format!("{noun}es")
        }
        _ => format!("{noun}s"),
    };
    format!("{many}{rest}")
}

/// One of several: `lobe` of `lobes`. A name in the singular stays as it is.
pub(super) fn singular(noun: &str) -> String {
    match noun {
        "teeth" => "tooth".to_string(),
        "leaves" => "leaf".to_string(),
        _ if is_plural(noun) => noun[..noun.len() - 1].to_string(),
        _ => noun.to_string(),
    }
}

/// Whether a heading of one word describes rather than names: `hairy`, `toothed`.
pub(super) fn is_adjective(word: &str) -> bool {
    const ENDS: &[&str] = &["ed", "y", "ous", "ish", "like", "less", "shaped", "al", "ate"];
    const NOUNS: &[&str] = &["body", "berry", "belly", "petal", "seed", "bud", "reed", "plate"];
    const OTHERS: &[&str] = &[
        "evergreen",
        "opposite",
        "compound",
        "smooth",
        "round",
        "flat",
        "soft",
        "hard",
        "stiff",
        "straight",
        "hollow",
        "rough",
        "green",
        "red",
        "white",
        "yellow",
        "brown",
        "alive",
        "winged",
        "edible",
        "simple",
        "open",
    ];
    !NOUNS.contains(&word)
        && (OTHERS.contains(&word)
            || ENDS.iter().any(|end| word.len() > end.len() + 2 && word.ends_with(end)))
}

/// The indefinite article with its space; none before another article.
pub(super) fn article(name: &str) -> &'static str {
    let first = name.split(' ').next().unwrap_or_default();
    if ["a", "an", "the", "one", "any", "some", "only"].contains(&first) {
        return "";
    }
    match name.chars().next() {
        Some('a' | 'e' | 'i' | 'o') => "an ",
        Some('u') if !name.starts_with("uni") => "an ",
        _ => "a ",
    }
}

/// A name as the subject of a sentence: `the leaf edge`.
pub(super) fn the(name: &str) -> String {
    let first = name.split(' ').next().unwrap_or_default();
    if ["the", "its", "their", "each", "every", "a", "an", "both"].contains(&first) {
        return name.to_string();
    }
    format!("the {name}")
}

/// The text with a capital first letter.
pub(super) fn capital(text: &str) -> String {
    let mut letters = text.chars();
    match letters.next() {
        Some(first) => first.to_uppercase().chain(letters).collect(),
        None => String::new(),
    }
}

/// The text with a small first letter, unless it begins with an abbreviation: `DNA`.
pub(super) fn lower_first(text: &str) -> String {
    let mut letters = text.chars();
    match (letters.next(), letters.clone().next()) {
        (Some(_), Some(second)) if second.is_uppercase() => text.to_string(),
        (Some(first), _) => first.to_lowercase().chain(letters).collect(),
        (None, _) => String::new(),
    }
}
