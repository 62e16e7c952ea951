//! Questions about counts and measures: `Is the leaf stalk 22.5 mm or longer?`
//!
//! From a character's name, its unit and a threshold to a sentence. The unit is always said;
//! a comparative never stands without its measure. It does not choose the threshold.

use spinney_model::{Asked, Character, Quantity, Scale};

use super::grammar::{Noun, lower_first, noun_of, plural, the};

/// What a measure says of a thing, and the words that go with it.
pub(super) struct Dimension {
    pub(super) noun: &'static str,
    pub(super) plain: &'static str,
    pub(super) more: &'static str,
    pub(super) less: &'static str,
}

/// What a measure in millimetres is where nobody says more.
pub(super) const LENGTH: Dimension =
    Dimension { noun: "length", plain: "long", more: "longer", less: "shorter" };

const DIMENSIONS: &[Dimension] = &[
    LENGTH,
    Dimension { noun: "width", plain: "wide", more: "wider", less: "narrower" },
    Dimension { noun: "breadth", plain: "wide", more: "wider", less: "narrower" },
    Dimension { noun: "height", plain: "tall", more: "taller", less: "lower" },
    Dimension { noun: "thickness", plain: "thick", more: "thicker", less: "thinner" },
    Dimension { noun: "depth", plain: "deep", more: "deeper", less: "shallower" },
];

/// A threshold as it stands in a list: `22.5 mm or more`, `5 or more`.
pub(super) fn or_more(character: &Character, least: Quantity) -> String {
    format!("{} or more", character.amount(least))
}

/// The other side of a threshold: `less than 22.5 mm`, `fewer than 5`.
pub(super) fn less_than(character: &Character, least: Quantity) -> String {
    let less = if matches!(character.scale, Scale::Counts) { "fewer" } else { "less" };
    format!("{less} than {}", character.amount(least))
}

/// A threshold as it stands in a person's own wording: `22.5 mm or longer`; but "or more"
/// where the wording says the dimension itself ("Is the length of the stalk {}?").
pub(super) fn threshold(character: &Character, template: &str, least: Quantity) -> String {
    let said = |word: &str| template.to_lowercase().contains(word);
    match dimension(&character.name) {
        Some((dimension, _)) if !said(dimension.noun) => {
            format!("{} or {}", character.amount(least), dimension.more)
        }
        _ => or_more(character, least),
    }
}

/// `Does it have 5 or more leaflets?`
pub(super) fn count_question(character: &Character, amount: &str) -> String {
    format!("Does it have {amount} {}", counted(&character.name))
}

/// What is counted: `leaflets` of `number of leaflets`, `leaflet count` or `leaflets`.
fn counted(name: &str) -> String {
    let name = lower_first(without_brackets(name));
    for before in ["number of ", "no. of ", "count of ", "how many "] {
        if let Some(rest) = name.strip_prefix(before) {
            return plural(rest.trim_start_matches("the "));
        }
    }
    for after in [" number", " count", " (number)"] {
        if let Some(rest) = name.strip_suffix(after) {
            return plural(rest);
        }
    }
    plural(&name)
}

/// `Is the leaf stalk 22.5 mm or longer?`; `whole` turns a part's name into its full name.
pub(super) fn measure_question(
    character: &Character,
    asked: &Asked,
    whole: impl Fn(&str) -> String,
) -> String {
    let name = lower_first(without_brackets(&character.name));
    let (part, more, less) = match dimension(&name) {
        Some((dimension, part)) => (part, dimension.more, dimension.less),
        None => (name, "more", "less"),
    };
    let wanted = match asked {
        Asked::AtLeast(least) => format!("{} or {more}", character.amount(*least)),
        Asked::Below(limit) => format!("{less} than {}", character.amount(*limit)),
        Asked::States(_) => String::new(),
    };
    if part.is_empty() {
        return format!("Is it {wanted}");
    }
    let be = if noun_of(&part) == Noun::Plural { "Are" } else { "Is" };
    format!("{be} {} {wanted}", the(&whole(&part)))
}

/// The dimension that a name ends or begins with, and the rest of the name.
pub(super) fn dimension(name: &str) -> Option<(&'static Dimension, String)> {
    let name = without_brackets(name).to_lowercase();
    DIMENSIONS.iter().find_map(|dimension| {
        let noun = dimension.noun;
        let rest = if name == noun {
            ""
        } else if let Some(part) = name.strip_suffix(noun).and_then(|n| n.strip_suffix(' ')) {
            part
        } else {
            name.strip_prefix(noun)?.strip_prefix(" of ")?
        };
        Some((dimension, rest.trim().to_string()))
    })
}

/// A heading without the unit in brackets at its end: `stalk length (mm)`.
pub(super) fn without_brackets(name: &str) -> &str {
    let name = name.trim();
    match name.rfind(" (") {
        Some(at) if name.ends_with(')') => name[..at].trim_end(),
        _ => name,
    }
}
