//! What can be wrong with a number in a cell, and what may have been meant.
//!
//! From the text to the trouble, with the person's own numbers as they can be typed.

use spinney_model::CellTrouble;

/// `800-200`, `7-5`, with the person's own numbers the other way round.
pub(in crate::table) fn backwards(text: &str) -> CellTrouble {
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
    CellTrouble::Backwards { turned: turned() }
}

/// `1,200 mm`, with what the person may have meant.
pub(super) fn ambiguous(item: &str) -> CellTrouble {
    let commas = item.bytes().filter(|byte| *byte == b',').count();
    let decimals = item.split_once(',').filter(|_| commas == 1).map(|(before, after)| {
        let end = after.find(|sign: char| !sign.is_ascii_digit()).unwrap_or(after.len());
        let (decimals, rest) = after.split_at(end);
        let decimals = decimals.trim_end_matches('0');
        let point = if decimals.is_empty() { "" } else { "." };
        format!("{before}{point}{decimals}{rest}")
    });
    CellTrouble::Ambiguous { thousands: item.split(',').collect(), decimals }
}
