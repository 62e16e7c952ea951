//! Lines of a proof as they were written at first: `0-3 5 | 2 7 >= 31/2`.
//!
//! From such text to what it says, all numbers over one denominator. Nothing is written so.

use num_integer::Integer;
use spinney_model::{KeyFileError, Share};

use crate::json::number;
use crate::json::shape::Line;

/// What the lines say, and the denominator of their numbers; None: it is too large.
///
/// **Errors**: a line is none of ours.
pub(super) fn lines(lines: Vec<Line>) -> Result<(Option<i128>, Vec<Line>), KeyFileError> {
    let mut read = Vec::new();
    for line in lines {
        let text = line.to_string();
        read.push(places(&text).ok_or(KeyFileError::Line { line: text })?);
    }
    let all = read.iter().flat_map(|(.., numbers)| numbers);
    let whole = all
        .map(|number| *number.denom())
        .try_fold(1, |all: i128, next| (all / all.gcd(&next)).checked_mul(next));
    let Some(whole) = whole else { return Ok((None, Vec::new())) };
    let over = |share: &Share| share.numer().checked_mul(whole / share.denom());
    let says = |(kinds, remains, numbers): (Vec<usize>, Vec<usize>, Vec<Share>)| {
        let at_least = numbers.iter().map(over).collect::<Option<_>>()?;
        Some(Line::Says { kinds, remains, at_least })
    };
    let lines: Option<Vec<Line>> = read.into_iter().map(says).collect();
    Ok((lines.is_some().then_some(whole), lines.unwrap_or_default()))
}

fn places(text: &str) -> Option<(Vec<usize>, Vec<usize>, Vec<Share>)> {
    let (heap, numbers) = text.split_once(" >= ")?;
    let (kinds, remains) = heap.split_once(" | ").unwrap_or((heap, ""));
    let numbers = numbers.split(", ").map(number::share).collect::<Option<_>>()?;
    Some((out_of_ranges(kinds)?, out_of_ranges(remains)?, numbers))
}

/// Rising places, of which there are never more than this.
const MOST: usize = 1 << 20;

fn out_of_ranges(text: &str) -> Option<Vec<usize>> {
    let mut places: Vec<usize> = Vec::new();
    for word in text.split_whitespace() {
        let (first, last) = word.split_once('-').unwrap_or((word, word));
        let (first, last): (usize, usize) = (first.parse().ok()?, last.parse().ok()?);
        let rises = places.last().is_none_or(|before| *before < first);
        if first > last || last >= MOST || !rises {
            return None;
        }
        places.extend(first..=last);
    }
    Some(places)
}
