//! What can be wrong with a cell, and what to type instead.
//!
//! From the trouble to the words of a finding: a sentence without its subject, and a remedy.

use std::borrow::Cow;

/// Why a cell could not be understood; a sentence without its subject, and a remedy.
#[derive(Clone, Debug, PartialEq, Eq)]
pub(in crate::table) struct Trouble {
    pub(in crate::table) what: &'static str,
    pub(in crate::table) remedy: Cow<'static, str>,
}

impl Trouble {
    pub(in crate::table) const fn new(what: &'static str, remedy: &'static str) -> Self {
        Self { what, remedy: Cow::Borrowed(remedy) }
    }
}

pub(super) const MIXED: Trouble = Trouble::new(
    "mixes words and numbers",
    "Type words or numbers, `lobed or entire`, or counts of each, `lobed 8, entire 2`.",
);
pub(super) const HALF_COUNTED: Trouble = Trouble::new(
    "has a count for some of its words and none for others",
    "Give every word its count, `lobed 8, entire 2`, or none, `lobed or entire`.",
);
pub(super) const SHARES: Trouble = Trouble::new(
    "has shares that do not add up to the whole",
    "Let the shares add up to 100 %, or type how many of each you saw.",
);
pub(super) const NO_COUNT: Trouble = Trouble::new(
    "counts none, or more than can be counted",
    "Leave out what nobody saw; type the count in digits.",
);
pub(super) const NOT_A_NUMBER: Trouble = Trouble::new(
    "is neither a number nor a range",
    "Type `40 mm`, `4 cm` or a range, `30-60`; what is not certain is a wider range.",
);
/// `800-200`, `7-5`, with the person's own numbers the other way round.
pub(in crate::table) fn backwards(text: &str) -> Trouble {
    let what = "begins with the larger number";
    let digit = |sign: char| sign.is_ascii_digit();
    let number = |sign: char| digit(sign) || matches!(sign, '.' | ',');
    let turned = || {
        let end = text.find(|sign| !number(sign))?;
        let (high, rest) = text.split_at(end);
        let (between, low) = rest.split_at(rest.find(digit)?);
        let end = low.find(|sign| !number(sign)).unwrap_or(low.len());
        let (low, unit) = low.split_at(end);
        // With a unit each, the numbers alone cannot change places.
        let plain = matches!(between.trim(), "to") || !between.contains(char::is_alphabetic);
        plain.then(|| format!("{low}{between}{high}{unit}"))
    };
    let remedy = match turned() {
        Some(turned) => format!(
            "Type `{turned}` if that is meant. If not, look whether a digit is missing or one \
             too many."
        ),
        None => {
            "Type the smaller number first, and look whether a digit is missing.".to_owned()
        }
    };
    Trouble { what, remedy: Cow::Owned(remedy) }
}

pub(super) const ONE_END: Trouble = Trouble::new(
    "says only where the range begins or ends",
    "Type both ends of what was seen, such as `5-9` or `15-20 mm`.",
);
pub(in crate::table) const OUT_OF: Trouble = Trouble::new(
    "says how many of how many, but not what the others were",
    "Type how many of each were seen, such as `lobed 3, entire 7` or `yes 3, no 7`.",
);

/// `1,200 mm`, with what the person may have meant.
pub(super) fn ambiguous(item: &str) -> Trouble {
    let what = "may mean a thousand or a decimal";
    let bytes = item.as_bytes();
    let thousands: String = item.split(',').collect();
    let remedy = match item.split_once(',') {
        Some((before, after)) if bytes.iter().filter(|byte| **byte == b',').count() == 1 => {
            let end = after.find(|sign: char| !sign.is_ascii_digit()).unwrap_or(after.len());
            let (decimals, rest) = after.split_at(end);
            let decimals = decimals.trim_end_matches('0');
            let point = if decimals.is_empty() { "" } else { "." };
            format!("Type `{thousands}`, or `{before}{point}{decimals}{rest}`.")
        }
        _ => format!("Type `{thousands}` if that is meant, or decimals with a point."),
    };
    Trouble { what, remedy: Cow::Owned(remedy) }
}
