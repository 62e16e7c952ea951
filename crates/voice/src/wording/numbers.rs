//! Questions about counts and measures: `Is the leaf stalk 22.5 mm or longer?`
//!
//! From a character's name, its unit and a threshold to a sentence. The unit is always said, as
//! children meet it: 5 cm and not 50 mm. A comparative never stands without its measure. It does
//! not choose the threshold.

use spinney_model::{Asked, Character, Quantity, Scale, Unit, WrittenIn};

use super::grammar::{
    Noun, capital, front, is_adjective, is_joint, is_noun, is_plural, noun_of, plural, the,
};
use super::heading::{clean, counted, hangs, reads_well, with_articles, without_unit};
use super::language::Language;

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
pub(super) fn or_more(language: Language, character: &Character, least: Quantity) -> String {
    language.or_more(&amount(language, character, least))
}

/// The other side of a threshold: `less than 22.5 mm`, `fewer than 5`.
pub(super) fn less_than(language: Language, character: &Character, least: Quantity) -> String {
    let count = matches!(character.scale, Scale::Counts);
    language.less_than(&amount(language, character, least), count)
}

/// A threshold as it stands in a person's own wording: `22.5 mm or longer`; but "or more"
/// where the wording says the dimension itself ("Is the length of the stalk {}?").
pub(super) fn threshold(
    language: Language,
    character: &Character,
    template: &str,
    least: Quantity,
) -> String {
    let said = |word: &str| template.to_lowercase().contains(word);
    match dimension(&character.name) {
        Some((dimension, _)) if !said(dimension.noun) && language == Language::English => {
            format!("{} or {}", amount(language, character, least), dimension.more)
        }
        _ => or_more(language, character, least),
    }
}

/// A number with its unit: `5 cm`, `22.5 mm`, `40°`, `5`.
///
/// In columns of millimetres or centimetres, lengths of 1 cm and more in whole or half centimetres
/// are in centimetres, others in millimetres; other columns stay as they are written.
pub(super) fn amount(language: Language, character: &Character, quantity: Quantity) -> String {
    let metric = matches!(character.scale, Scale::Measure { unit: Unit::Millimetres, .. })
        && matches!(
            character.written_in,
            None | Some(WrittenIn::Millimetres | WrittenIn::Centimetres)
        );
    let centimetres = quantity.thousandths() >= 10_000 && quantity.thousandths() % 5_000 == 0;
    let said = match (metric, centimetres) {
        (false, _) => character.amount(quantity),
        (true, true) => format!("{} cm", quantity.written(10_000)),
        (true, false) => format!("{quantity} mm"),
    };
    if language == Language::German {
        let said = said.replace(" inches", " Zoll").replace(" inch", " Zoll");
        return said.replace(" feet", " Fuß").replace(" foot", " Fuß").replace('.', ",");
    }
    let point = matches!(language, Language::English | Language::Welsh | Language::Other);
    if point { said } else { said.replace('.', ",") }
}

/// `Does it have 5 or more leaflets?`, or the plain form where no rule is sure.
pub(super) fn count_question(character: &Character, wanted: &str) -> String {
    let name = clean(&character.name);
    let rest = counted(&name).unwrap_or(&name);
    match things(rest) {
        Some(things) => format!("Does it have {wanted} {things}"),
        None => format!("{}: {wanted}", capital(&name)),
    }
}

/// What is counted, in several: `seeds in the pod`, `pairs of legs`; None: no rule is sure.
fn things(name: &str) -> Option<String> {
    let front = front(name);
    let words: Vec<&str> = front.split(' ').collect();
    let (last, before) = words.split_last()?;
    let plain = name.chars().all(|letter| letter.is_alphabetic() || " -'".contains(letter));
    // `side veins pairs` is no English.
    if !plain
        || !reads_well(name)
        || hangs(name)
        || before.iter().any(|word| is_plural(word) || is_joint(word))
    {
        return None;
    }
    if is_plural(last) {
        return Some(with_articles(name));
    }
    // One word alone is counted in several: `fly`, `flies`.
    let single = before.is_empty() && !matches!(*last, "number" | "count" | "amount" | "");
    single.then(|| with_articles(&format!("{}{}", plural(last), &name[last.len()..])))
}

/// `Is the leaf stalk 4 cm or longer?`, or the plain form where it does not say which way;
/// `whole` turns a part's name into its full name.
pub(super) fn measure_question(
    character: &Character,
    asked: &Asked,
    whole: impl Fn(&str) -> String,
) -> String {
    let name = clean(&character.name);
    let name = without_unit(&name);
    let (at_least, at) = match asked {
        Asked::AtLeast(at) => (true, *at),
        Asked::Below(at) => (false, *at),
        Asked::States(_) => return capital(name),
    };
    let language = Language::English;
    let known = |part: &str| {
        let last = front(part).rsplit(' ').next().unwrap_or_default();
        part.chars().all(|letter| letter.is_alphabetic() || " -'".contains(letter))
            && (part.is_empty() || is_noun(last) || !is_adjective(last))
    };
    let Some((dimension, part)) = dimension(name).filter(|(_, part)| known(part)) else {
        let wanted = if at_least {
            or_more(language, character, at)
        } else {
            less_than(language, character, at)
        };
        return format!("{}: is it {wanted}", capital(name));
    };
    let number = amount(language, character, at);
    let wanted = if at_least {
        format!("{number} or {}", dimension.more)
    } else {
        format!("{} than {number}", dimension.less)
    };
    if part.is_empty() {
        return format!("Is it {wanted}");
    }
    let be = if noun_of(&part) == Noun::Plural { "Are" } else { "Is" };
    format!("{be} {} {wanted}", the(&with_articles(&whole(&part))))
}

/// The dimension that a name ends or begins with, and the rest of the name.
pub(super) fn dimension(name: &str) -> Option<(&'static Dimension, String)> {
    let name = clean(name);
    let name = without_unit(&name);
    DIMENSIONS.iter().find_map(|dimension| {
        let noun = dimension.noun;
        let how = format!("how {}", dimension.plain);
        let rest = if name == noun || name == how || name == format!("{how} is it") {
            ""
        } else if let Some(part) = name.strip_suffix(noun).and_then(|n| n.strip_suffix(' ')) {
            part
        } else if let Some(part) = name.strip_prefix(noun).and_then(|n| n.strip_prefix(" of "))
        {
            part
        } else {
            let asked = name.strip_prefix(how.as_str())?;
            asked.strip_prefix(" is the ").or_else(|| asked.strip_prefix(" are the "))?
        };
        let rest = rest.trim().strip_prefix("the ").unwrap_or(rest.trim());
        Some((dimension, rest.to_string()))
    })
}
