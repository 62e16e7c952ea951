//! Numbers and units as people write them: `2,5 cm`, `five`, `30 mm`.
//!
//! From words to exact quantities in a character's unit. It does not know what is counted.

use spinney_model::{Quantity, Unit, WrittenIn};

/// The number words of a primary school.
const WORDS: [&str; 21] = [
    "zero",
    "one",
    "two",
    "three",
    "four",
    "five",
    "six",
    "seven",
    "eight",
    "nine",
    "ten",
    "eleven",
    "twelve",
    "thirteen",
    "fourteen",
    "fifteen",
    "sixteen",
    "seventeen",
    "eighteen",
    "nineteen",
    "twenty",
];

/// A decimal number with point or comma and at most three decimals.
pub(super) fn decimal(text: &str) -> Option<Quantity> {
    let (whole, decimals) = text.split_once(['.', ',']).unwrap_or((text, ""));
    let digits = |text: &str| text.bytes().all(|b| b.is_ascii_digit());
    if whole.is_empty() || !digits(whole) || !digits(decimals) || text.ends_with(['.', ',']) {
        return None;
    }
    let decimals = decimals.trim_end_matches('0');
    if whole.len() > 9 || decimals.len() > 3 {
        return None;
    }
    let thousandths = format!("{whole}{decimals:0<3}").parse().ok()?;
    Some(Quantity::from_thousandths(thousandths))
}

/// A number in figures or words. None for `1,000` and `2,500` as well: thousands are written so, and a
/// number with decimals that ends in 0 hardly is, by us never.
pub(super) fn number(word: &str) -> Option<Quantity> {
    let is_either = word.split_once(',').is_some_and(|(whole, behind)| {
        behind.len() == 3
            && behind.ends_with('0')
            && (1..=3).contains(&whole.len())
            && !whole.starts_with('0')
    });
    if is_either {
        return None;
    }
    decimal(word).or_else(|| {
        let whole = WORDS.iter().position(|known| *known == word)?;
        Some(Quantity::from_whole(i64::try_from(whole).ok()?))
    })
}

/// What a unit word measures, and how many thousandths of the kept unit one of it is.
pub(super) fn unit(word: &str) -> Option<(Unit, i64)> {
    let row = WrittenIn::spelt(word)?.row();
    Some((row.kept_as, row.thousandths))
}

/// The same of a word in a sentence, where `in` is no inch: "are there 5 in a row?"
pub(super) fn unit_in_sentence(word: &str) -> Option<(Unit, i64)> {
    unit(word).filter(|_| word != "in")
}

/// A number of some unit in thousandths of the kept unit, to the nearest as in a table.
pub(super) fn scaled(number: Quantity, factor: i64) -> Option<Quantity> {
    let product = i128::from(number.thousandths()) * i128::from(factor);
    let nearest = (product.abs() + 500) / 1_000 * product.signum();
    i64::try_from(nearest).ok().map(Quantity::from_thousandths)
}

/// A number with or without a unit: `22.5 mm`, `5`.
pub(super) fn quantity(text: &str) -> Option<(Quantity, Option<Unit>)> {
    let text = text.trim();
    let digits = text
        .find(|c: char| !(c.is_ascii_digit() || matches!(c, '.' | ',')))
        .unwrap_or(text.len());
    let (figures, behind) = text.split_at(digits);
    if figures.is_empty() {
        let (word, behind) = text.split_once(' ').unwrap_or((text, ""));
        let number = number(&word.to_lowercase())?;
        return with_unit(number, behind);
    }
    with_unit(decimal(figures)?, behind)
}

fn with_unit(number: Quantity, behind: &str) -> Option<(Quantity, Option<Unit>)> {
    let behind = behind.trim().to_lowercase();
    if behind.is_empty() {
        return Some((number, None));
    }
    let (unit, factor) = unit(&behind)?;
    Some((scaled(number, factor)?, Some(unit)))
}
