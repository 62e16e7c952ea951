//! How often each thing in a cell was seen: `lobed 8, entire 2`, `lobed 80 %`, `yes 3 of 10`.
//!
//! From an item to the thing and its count, and from counts to exact shares.

use std::collections::BTreeSet;

use num_traits::Zero;
use spinney_model::{CellTrouble, Share, WrittenIn};

use super::{HEDGES, begins_like_a_number};
use crate::table::number::{NoAmount, amount};
use crate::table::phrase::{quoted, unquote};

/// So many of so many, of which at least one was looked at.
#[derive(Clone, Debug, PartialEq, Eq)]
pub(in crate::table) struct OutOf {
    /// What was seen so often; None: nobody said.
    pub(in crate::table) word: Option<String>,
    pub(in crate::table) part: u32,
    pub(in crate::table) whole: u32,
}

/// `yes 3 of 10`, `3 of 10 yes`, `3 out of 10`.
pub(super) fn out_of(text: &str) -> Option<Result<OutOf, CellTrouble>> {
    let words: Vec<&str> = text.split_whitespace().collect();
    let is = |at: usize, word: &str| words[at].eq_ignore_ascii_case(word);
    let of = (0..words.len()).find(|at| is(*at, "of"))?;
    let out = of > 0 && is(of - 1, "out");
    let (before, whole) = (if out { of - 1 } else { of }, *words.get(of + 1)?);
    let part = *words.get(before.checked_sub(1)?)?;
    let number = |text: &str| text.trim_end_matches(['.', ':']).parse::<u32>().ok();
    let (part, whole) = (number(part)?, number(whole)?);
    let (front, behind) = (words[..before - 1].join(" "), words[of + 2..].join(" "));
    let word = match (front.trim_end_matches([':', ',']), behind.as_str()) {
        ("", "") => None,
        (word, "") | ("", word) => Some(unquote(word)),
        _ => return None,
    };
    if whole == 0 || part > whole {
        return Some(Err(CellTrouble::NoCount));
    }
    Some(Ok(OutOf { word, part, whole }))
}

/// Words that stand beside numbers and are not counted: `between 5 and 7`, `from 3 to 4`.
const BETWEEN: [&str; 13] =
    ["and", "to", "or", "of", "by", "x", "from", "between", "until", "in", "on", "at", "than"];

/// `yes 9 no 1`, `9 yes 1 no`: words that differ, each with its count, and nothing between them.
pub(super) fn counts_in_a_row(text: &str) -> Option<Vec<&str>> {
    let words: Vec<&str> = text.split_whitespace().collect();
    let counts = |word: &str| word.parse::<u32>().is_ok();
    let counted = |word: &str| {
        let letters = word.chars().count() > 1 && word.chars().all(char::is_alphabetic);
        let small = word.to_lowercase();
        letters
            && !BETWEEN.contains(&small.as_str())
            && !HEDGES.iter().any(|hedge| hedge.split(' ').any(|part| part == small))
            && WrittenIn::spelt(&small).is_none()
    };
    let number_first = usize::from(!counts(words.first()?));
    let in_turn = words.iter().enumerate().all(|(at, word)| match (at + number_first) % 2 {
        0 => counts(word),
        _ => counted(word),
    });
    if words.len() < 4 || !words.len().is_multiple_of(2) || !in_turn {
        return None;
    }
    let named: BTreeSet<String> =
        words.iter().filter(|word| !counts(word)).map(|word| word.to_lowercase()).collect();
    let start = |word: &str| word.as_ptr() as usize - text.as_ptr() as usize;
    let pairs = words.chunks(2).map(|pair| {
        let end = start(pair[1]) + pair[1].len();
        &text[start(pair[0])..end]
    });
    (2 * named.len() == words.len()).then(|| pairs.collect())
}

/// How often an item was seen.
#[derive(Clone, Copy)]
pub(super) enum Count {
    Seen(u32),
    Share(Share),
}

/// Takes a count off an item: `lobed 8`, `8 lobed`, `lobed: 8`, `lobed x 8`, `lobed 80 %`.
pub(super) fn counted(item: &str) -> Result<(&str, Option<Count>), CellTrouble> {
    let plain = Ok((item, None));
    if amount(item).is_ok() || quoted(item).is_some() || begins_like_a_number(item) {
        return plain;
    }
    if let Some((thing, count)) = item.rsplit_once([':', '=', '×'])
        && let Some(count) = count_of(count)?
    {
        return Ok((thing.trim(), Some(count)));
    }
    let mut words = item.rsplitn(2, char::is_whitespace);
    let (last, before) = (words.next().unwrap_or(""), words.next().unwrap_or("").trim());
    // `lobed 80 %` has a space before its sign.
    let (last, before) = if last == "%" {
        let cut = before.rfind(char::is_whitespace).map_or(0, |at| at + 1);
        (&item[cut..], before[..cut].trim())
    } else {
        (last, before)
    };
    if !before.is_empty()
        && let Some(count) = count_of(last)?
    {
        let thing = before.strip_suffix(" x").unwrap_or(before).trim_end();
        return Ok((thing, Some(count)));
    }
    if let Some((first, thing)) = item.split_once(char::is_whitespace)
        && first.bytes().all(|byte| byte.is_ascii_digit())
        && thing.trim_start().starts_with(|sign: char| sign.is_alphabetic() || sign == '"')
        && amount(item) == Err(NoAmount::Other)
        && let Some(count) = count_of(first)?
    {
        return Ok((thing.trim(), Some(count)));
    }
    plain
}

/// `8`, `2/3` or `80 %`; None if it is none of these.
fn count_of(text: &str) -> Result<Option<Count>, CellTrouble> {
    let text = text.trim();
    let digits =
        |text: &str| !text.is_empty() && text.bytes().all(|byte| byte.is_ascii_digit());
    if let Some(percent) = text.strip_suffix('%').map(str::trim_end) {
        let Ok(percent) = amount(percent) else { return Ok(None) };
        return Ok(Some(Count::Share(percent.low / Share::from_integer(100))));
    }
    if let Some((part, whole)) = text.split_once('/')
        && digits(part)
        && digits(whole)
    {
        let [part, whole] = [part, whole].map(|text| text.parse::<i64>().unwrap_or(0));
        if part == 0 || whole == 0 {
            return Err(CellTrouble::NoCount);
        }
        return Ok(Some(Count::Share(Share::new(part.into(), whole.into()))));
    }
    if !digits(text) {
        return Ok(None);
    }
    match text.parse::<u32>() {
        Ok(count) if count > 0 => Ok(Some(Count::Seen(count))),
        _ => Err(CellTrouble::NoCount),
    }
}

/// The finest common denominator of shares; nobody counts a million million leaves.
const FINEST_SHARE: i128 = 1_000_000_000_000;

fn gcd(a: i128, b: i128) -> i128 {
    if b == 0 { a } else { gcd(b, a % b) }
}

/// The share of each, and how many were counted together.
pub(super) fn shares(
    counts: &[Option<Count>],
) -> Result<(Vec<Option<Share>>, Option<u32>), CellTrouble> {
    if counts.iter().all(Option::is_none) {
        return Ok((vec![None; counts.len()], None));
    }
    let (mut seen, mut sum, mut known) = (0_u32, Share::zero(), Vec::new());
    let mut common = 1_i128;
    for count in counts {
        match count.ok_or(CellTrouble::HalfCounted)? {
            Count::Seen(count) => {
                seen = seen.checked_add(count).ok_or(CellTrouble::NoCount)?;
                known.push(Share::from_integer(count.into()));
            }
            Count::Share(share) => {
                if share <= Share::zero() || share > Share::from_integer(1) {
                    return Err(CellTrouble::Shares);
                }
                // One modest denominator for all, so that no sum of them can overflow.
                common /= gcd(common, *share.denom());
                common = common.saturating_mul(*share.denom());
                if common > FINEST_SHARE {
                    return Err(CellTrouble::Shares);
                }
                sum += share;
                known.push(share);
            }
        }
    }
    match (seen, sum) {
        (0, sum) if sum == Share::from_integer(1) => {
            Ok((known.into_iter().map(Some).collect(), None))
        }
        (seen, sum) if seen > 0 && sum.is_zero() => {
            let whole = Share::from_integer(seen.into());
            Ok((known.into_iter().map(|count| Some(count / whole)).collect(), Some(seen)))
        }
        _ => Err(CellTrouble::Shares),
    }
}
