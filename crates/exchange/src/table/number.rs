//! Numbers and units as people type them: `4 cm`, `3,5`, `30–60 mm`, `1 to 2 in`, `8±1 mm`.
//!
//! From text to exact numbers; nothing passes through a float. Which units
//! there are and how they are spelt stands in `spinney_model::UNITS`.

use num_traits::ToPrimitive;
use spinney_model::{Quantity, Share, WrittenIn};

/// A number or a range, in the unit in which it was typed.
#[derive(Clone, Debug, PartialEq, Eq)]
pub(super) struct Amount {
    pub(super) low: Share,
    pub(super) high: Share,
    pub(super) unit: Option<WrittenIn>,
    /// Whether the larger number stood first.
    pub(super) backwards: bool,
}

/// Why a text that begins like a number is none.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) enum NoAmount {
    /// It does not begin with a digit.
    NotANumber,
    /// `1,500` may be one and a half or fifteen hundred.
    Ambiguous,
    /// Something stands behind or before the number.
    Other,
    /// So large that nothing is.
    TooLarge,
}

/// The largest number that is read: a thousand kilometres in millimetres.
const LARGEST: i128 = 1_000_000_000;

/// Reads a number or a range, whole.
pub(super) fn amount(text: &str) -> Result<Amount, NoAmount> {
    let text = text.trim();
    let (first, rest) = number(text)?;
    let (first_unit, rest) = unit(rest);
    let rest = rest.trim_start();
    if rest.is_empty() {
        let unit = first_unit;
        return Ok(Amount { low: first, high: first, unit, backwards: false });
    }
    let (give_or_take, rest) = match after_plus_minus(rest) {
        Some(rest) => (true, rest),
        None => (false, after_dash(rest).ok_or(NoAmount::Other)?),
    };
    let (second, rest) = number(rest.trim_start()).map_err(|why| match why {
        NoAmount::NotANumber => NoAmount::Other,
        why => why,
    })?;
    let (second_unit, rest) = unit(rest);
    if !rest.trim().is_empty() {
        return Err(NoAmount::Other);
    }
    // `3-5 cm`: the unit at the end holds for both; `3 cm - 45 mm` has one each.
    let (low, high, unit) = match (first_unit, second_unit) {
        (Some(a), Some(b)) if a != b => {
            if a.row().kept_as != b.row().kept_as {
                return Err(NoAmount::Other);
            }
            (first, second * factor(b) / factor(a), Some(a))
        }
        (a, b) => (first, second, a.or(b)),
    };
    if give_or_take {
        return around(low, high, unit);
    }
    let backwards = low > high;
    let (low, high) = if backwards { (high, low) } else { (low, high) };
    Ok(Amount { low, high, unit, backwards })
}

/// `8 ± 1`: from 7 to 9. Nothing is smaller than nothing, so the range begins at 0 at least.
fn around(
    middle: Share,
    more_or_less: Share,
    unit: Option<WrittenIn>,
) -> Result<Amount, NoAmount> {
    let none = Share::from_integer(0);
    if middle < none || more_or_less < none {
        return Err(NoAmount::Other);
    }
    let low = (middle - more_or_less).max(none);
    Ok(Amount { low, high: middle + more_or_less, unit, backwards: false })
}

/// The numbers that children write out.
const IN_WORDS: [&str; 12] = [
    "one", "two", "three", "four", "five", "six", "seven", "eight", "nine", "ten", "eleven",
    "twelve",
];

impl Amount {
    /// `five`, or `five to seven`.
    pub(super) fn in_words(text: &str) -> Option<Self> {
        let number = |word: &str| {
            let at = IN_WORDS.iter().position(|known| word.eq_ignore_ascii_case(known))?;
            Some(Share::from_integer(i128::try_from(at).ok()? + 1))
        };
        let text = text.trim();
        let (low, high) = match text.split_once(" to ").or_else(|| text.split_once('-')) {
            Some((low, high)) => (number(low.trim())?, number(high.trim())?),
            None => (number(text)?, number(text)?),
        };
        let backwards = low > high;
        Some(Self { low: low.min(high), high: low.max(high), unit: None, backwards })
    }

    /// Both ends as whole numbers from 0, if they are.
    pub(super) fn whole(&self) -> Option<(u32, u32)> {
        let end = |end: Share| {
            if end.is_integer() { end.to_integer().to_u32() } else { None }
        };
        Some((end(self.low)?, end(self.high)?))
    }

    /// Both ends in the kept unit, a number without unit being in `unless`.
    pub(super) fn quantities(&self, unless: Option<WrittenIn>) -> (Quantity, Quantity) {
        let unit = self.unit.or(unless);
        (quantity(self.low, unit), quantity(self.high, unit))
    }
}

/// How many of the kept unit one of a unit is.
fn factor(unit: WrittenIn) -> Share {
    Share::new(unit.row().thousandths.into(), 1000)
}

/// A number in a typed unit, as it is kept: to the nearest thousandth.
pub(super) fn quantity(number: Share, unit: Option<WrittenIn>) -> Quantity {
    let factor = unit.map_or(Share::from_integer(1), factor);
    let thousandths = (number * factor * Share::from_integer(1000)).round().to_integer();
    Quantity::from_thousandths(i64::try_from(thousandths).unwrap_or(i64::MAX))
}

/// What follows `±`, `+/-` or `+-`.
fn after_plus_minus(text: &str) -> Option<&str> {
    ["±", "+/-", "+-", "+/−"].iter().find_map(|sign| text.strip_prefix(sign))
}

/// What follows a dash of any sort, two or three dots, or `to`.
fn after_dash(text: &str) -> Option<&str> {
    let dash = |sign: char| {
        matches!(sign, '-' | '\u{2010}'..='\u{2015}' | '\u{2212}' | '\u{fe58}' | '\u{ff0d}')
    };
    if let Some(rest) = text.strip_prefix(dash) {
        return Some(rest);
    }
    if let Some(rest) = ["...", "..", "…"].iter().find_map(|dots| text.strip_prefix(dots)) {
        return Some(rest);
    }
    let word = text.get(..2)?;
    let rest = &text[2..];
    let apart = rest.starts_with(|sign: char| !sign.is_alphabetic());
    (word.eq_ignore_ascii_case("to") && apart).then_some(rest)
}

/// A decimal number at the beginning, and the rest.
fn number(text: &str) -> Result<(Share, &str), NoAmount> {
    let unsigned = text.strip_prefix(['-', '\u{2212}']);
    let negative = unsigned.is_some();
    let digits = unsigned.unwrap_or(text);
    let end = digits.find(|sign: char| !sign.is_ascii_digit()).unwrap_or(digits.len());
    if end == 0 {
        return Err(NoAmount::NotANumber);
    }
    let (mut value, mut rest) = (whole(&digits[..end])?, &digits[end..]);
    if let Some(after) = rest.strip_prefix(['.', ',']) {
        let end = after.find(|sign: char| !sign.is_ascii_digit()).unwrap_or(after.len());
        if end > 0 {
            if rest.starts_with(',') && end == 3 && &digits[..1] != "0" {
                return Err(NoAmount::Ambiguous);
            }
            if end > 9 {
                return Err(NoAmount::TooLarge);
            }
            let scale = 10_i128.pow(u32::try_from(end).expect("at most nine digits"));
            value += Share::new(whole(&after[..end])?.to_integer(), scale);
            rest = &after[end..];
        }
    }
    Ok((if negative { -value } else { value }, rest))
}

fn whole(digits: &str) -> Result<Share, NoAmount> {
    let value: i128 = digits.parse().map_err(|_| NoAmount::TooLarge)?;
    if value > LARGEST { Err(NoAmount::TooLarge) } else { Ok(Share::from_integer(value)) }
}

/// A unit at the beginning, and the rest.
fn unit(text: &str) -> (Option<WrittenIn>, &str) {
    let trimmed = text.trim_start();
    let letters = |sign: char| {
        sign.is_alphabetic() || matches!(sign, '°' | 'º' | '″' | '"' | '”' | '\'' | '′')
    };
    let end = trimmed.find(|sign| !letters(sign)).unwrap_or(trimmed.len());
    // The dot of `3 cm. to 5 cm.`, but not the two of `3 cm..5 cm`.
    let dot = trimmed[end..].starts_with('.') && !trimmed[end..].starts_with("..");
    let dotted = if dot { end + 1 } else { end };
    match WrittenIn::spelt(&trimmed[..end]) {
        Some(unit) => (Some(unit), &trimmed[dotted..]),
        None => (None, text),
    }
}
