//! One cell as a person types it: `toothed`, `lobed or entire`, `lobed 8, entire 2`, `3,5 cm`,
//! `30-60`, `?`, `n/a`.
//!
//! From text to what was typed, before anybody knows whether the column holds words or
//! numbers. Unknown and "does not apply" are never the same thing.

use std::borrow::Cow;

use num_traits::Zero;
use spinney_model::Share;

use super::number::{Amount, NoAmount, amount};
use super::phrase::{alternatives, fold, list, quoted, unquote};

/// What was typed into a cell, and on how many things it was seen.
#[derive(Clone, Debug, PartialEq, Eq)]
pub(super) struct Typed {
    pub(super) what: What,
    pub(super) seen: Option<u32>,
    /// A list without numbers, `lobed, entire`: read as `lobed or entire`, and told.
    pub(super) listed: bool,
}

impl Typed {
    /// A cell of which nothing is known.
    pub(super) fn unknown() -> Self {
        Self { what: What::Question, seen: None, listed: false }
    }

    /// A cell that holds one word, whatever it looks like.
    pub(super) fn word(text: &str) -> Self {
        let part = Part { item: unquote(text), share: None };
        Self { what: What::Words(vec![part]), seen: None, listed: false }
    }
}

/// What was typed into a cell.
#[derive(Clone, Debug, PartialEq, Eq)]
pub(super) enum What {
    /// Nothing.
    Empty,
    /// `?`
    Question,
    /// A lone dash: nobody can tell which of the two it means.
    Dash,
    /// `n/a`
    NotApplicable,
    /// Words, with how often each was seen where somebody counted.
    Words(Vec<Part<String>>),
    /// Numbers, in the same way.
    Numbers(Vec<Part<Amount>>),
    /// `yes 3 of 10`, `3 of 10`: what means something only where there are two answers.
    OutOf(OutOf),
}

/// So many of so many, of which at least one was looked at.
#[derive(Clone, Debug, PartialEq, Eq)]
pub(super) struct OutOf {
    /// What was seen so often; None: nobody said.
    pub(super) word: Option<String>,
    pub(super) part: u32,
    pub(super) whole: u32,
}

/// One of the things in a cell.
#[derive(Clone, Debug, PartialEq, Eq)]
pub(super) struct Part<T> {
    pub(super) item: T,
    /// None: as much as the others.
    pub(super) share: Option<Share>,
}

/// Why a cell could not be understood; a sentence without its subject, and a remedy.
#[derive(Clone, Debug, PartialEq, Eq)]
pub(super) struct Trouble {
    pub(super) what: &'static str,
    pub(super) remedy: Cow<'static, str>,
}

impl Trouble {
    pub(super) const fn new(what: &'static str, remedy: &'static str) -> Self {
        Self { what, remedy: Cow::Borrowed(remedy) }
    }
}

const MIXED: Trouble = Trouble::new(
    "mixes words and numbers",
    "Type words or numbers, `lobed or entire`, or counts of each, `lobed 8, entire 2`.",
);
const HALF_COUNTED: Trouble = Trouble::new(
    "has a count for some of its words and none for others",
    "Give every word its count, `lobed 8, entire 2`, or none, `lobed or entire`.",
);
const SHARES: Trouble = Trouble::new(
    "has shares that do not add up to the whole",
    "Let the shares add up to 100 %, or type how many of each you saw.",
);
const NO_COUNT: Trouble = Trouble::new(
    "counts none, or more than can be counted",
    "Leave out what nobody saw; type the count in digits.",
);
const NOT_A_NUMBER: Trouble = Trouble::new(
    "is neither a number nor a range",
    "Type `40 mm`, `4 cm` or a range, `30-60`; what is not certain is a wider range.",
);
const ONE_END: Trouble = Trouble::new(
    "says only where the range begins or ends",
    "Type both ends of what was seen, such as `5-9` or `15-20 mm`.",
);
pub(super) const OUT_OF: Trouble = Trouble::new(
    "says how many of how many, but not what the others were",
    "Type how many of each were seen, such as `lobed 3, entire 7` or `yes 3, no 7`.",
);

/// `1,200 mm`, with what the person may have meant.
fn ambiguous(item: &str) -> Trouble {
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

/// Understands a cell. `heading` is folded: `5 leaflets` under "number of leaflets" is 5.
pub(super) fn understand(text: &str, heading: &str) -> Result<Typed, Trouble> {
    let (text, seen) = seen(text.trim());
    let of = |what, listed| Ok(Typed { what, seen, listed });
    if let Some(known) = fixed(text) {
        return of(known, false);
    }
    if let Some(out_of) = out_of(text) {
        return of(What::OutOf(out_of?), false);
    }
    let items = list(text);
    let items: Vec<&str> = items.into_iter().filter(|item| !item.is_empty()).collect();
    if items.len() < 2 {
        let items = alternatives(items.first().copied().unwrap_or(""));
        let (what, counted) = parts(&items, heading, items.len() == 1)?;
        return of(what, false).map(|typed| with_seen(typed, counted));
    }
    let (what, counted) = parts(&items, heading, true)?;
    let listed = counted.is_none() && no_shares(&what);
    of(what, listed).map(|typed| with_seen(typed, counted))
}

fn with_seen(typed: Typed, counted: Option<u32>) -> Typed {
    Typed { seen: typed.seen.or(counted), ..typed }
}

fn no_shares(what: &What) -> bool {
    match what {
        What::Words(parts) => parts.iter().all(|part| part.share.is_none()),
        What::Numbers(parts) => parts.iter().all(|part| part.share.is_none()),
        _ => false,
    }
}

/// The cells that mean something in every column.
fn fixed(text: &str) -> Option<What> {
    let folded = fold(text);
    Some(match folded.as_str() {
        "" => What::Empty,
        "?" | "??" | "???" | "unknown" | "not known" => What::Question,
        "n/a" | "na" | "n.a." | "n. a." | "n.a" | "does not apply" | "doesn't apply"
        | "doesn’t apply" | "not applicable" => What::NotApplicable,
        _ if folded.chars().all(|sign| matches!(sign, '-' | '\u{2010}'..='\u{2015}')) => {
            What::Dash
        }
        _ => return None,
    })
}

/// Whether a cell itself says that nobody knows, by `?` or by being empty.
pub(super) fn says_unknown(text: &str) -> bool {
    matches!(fixed(seen(text.trim()).0), Some(What::Empty | What::Question))
}

/// `yes 3 of 10`, `3 of 10 yes`, `3 out of 10`.
fn out_of(text: &str) -> Option<Result<OutOf, Trouble>> {
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
        return Some(Err(NO_COUNT));
    }
    Some(Ok(OutOf { word, part, whole }))
}

/// Takes `(12 seen)` off the end: on how many things it was seen.
fn seen(text: &str) -> (&str, Option<u32>) {
    let inside = || {
        let (before, rest) = text.rsplit_once('(')?;
        let inner = fold(rest.strip_suffix(')')?);
        let digits = inner.strip_suffix(" seen").or_else(|| inner.strip_prefix("n = "));
        let digits = digits.or_else(|| inner.strip_prefix("n="))?;
        Some((before.trim_end(), digits.trim().parse().ok()?))
    };
    match inside() {
        Some((before, seen)) => (before, Some(seen)),
        None => (text, None),
    }
}

/// The parts of a cell: all words or all numbers; and how many were counted in all.
fn parts(
    items: &[&str],
    heading: &str,
    may_count: bool,
) -> Result<(What, Option<u32>), Trouble> {
    let (mut words, mut numbers, mut counts) = (Vec::new(), Vec::new(), Vec::new());
    for item in items {
        let named = if items.len() == 1 { number_of(item, heading) } else { None };
        let (item, count) = match named {
            None if may_count => counted(item)?,
            _ => (*item, None),
        };
        counts.push(count);
        match thing(item, heading)? {
            Thing::Word(word) => words.push(word),
            Thing::Number(number) => numbers.push(number),
        }
    }
    if !words.is_empty() && !numbers.is_empty() {
        return Err(MIXED);
    }
    let (shares, seen) = shares(&counts)?;
    fn zip<T>(items: Vec<T>, shares: &[Option<Share>]) -> Vec<Part<T>> {
        let pairs = items.into_iter().zip(shares);
        pairs.map(|(item, share)| Part { item, share: *share }).collect()
    }
    let what = if numbers.is_empty() {
        What::Words(zip(words, &shares))
    } else {
        What::Numbers(zip(numbers, &shares))
    };
    Ok((what, seen))
}

enum Thing {
    Word(String),
    Number(Amount),
}

fn thing(item: &str, heading: &str) -> Result<Thing, Trouble> {
    if let Some(word) = quoted(item) {
        return Ok(Thing::Word(word));
    }
    match amount(item) {
        Ok(number) => return Ok(Thing::Number(number)),
        Err(NoAmount::NotANumber) if one_end(item) => return Err(ONE_END),
        Err(NoAmount::NotANumber) if begins_like_a_number(item) => return Err(NOT_A_NUMBER),
        Err(NoAmount::NotANumber) => {}
        Err(NoAmount::Ambiguous) => return Err(ambiguous(item)),
        Err(NoAmount::TooLarge) => return Err(NOT_A_NUMBER),
        Err(NoAmount::Other) => {
            return number_of(item, heading).map(Thing::Number).ok_or(NOT_A_NUMBER);
        }
    }
    Ok(Thing::Word(unquote(item)))
}

/// `5 leaflets` under "number of leaflets" is the number 5, not a leaflet seen five times.
fn number_of(item: &str, heading: &str) -> Option<Amount> {
    let word = item.split_whitespace().next_back().filter(|word| word.len() > 2)?;
    let number = amount(item.strip_suffix(word)?).ok()?;
    heading.contains(&fold(word)).then_some(number)
}

/// Words before a number that make it less than certain: not words that were counted.
const HEDGES: [&str; 14] = [
    "about",
    "ca",
    "circa",
    "approx",
    "approximately",
    "around",
    "over",
    "under",
    "up to",
    "more than",
    "less than",
    "at least",
    "at most",
    "nearly",
];

/// `≥ 5`, `< 2 cm`
fn one_end(item: &str) -> bool {
    item.starts_with(['<', '>', '≤', '≥']) && begins_like_a_number(item)
}

/// `about 5`, `<5`, `~5`
fn begins_like_a_number(item: &str) -> bool {
    let folded = fold(item);
    if let Some((before, number)) = folded.rsplit_once(' ')
        && HEDGES.contains(&before.trim_end_matches('.'))
        && number.starts_with(|sign: char| sign.is_ascii_digit())
    {
        return true;
    }
    let rest = item.trim_start_matches(['<', '>', '~', '≈', '≤', '≥', '±', '+', '=']);
    rest.len() < item.len() && rest.trim_start().starts_with(|sign: char| sign.is_ascii_digit())
}

/// How often an item was seen.
#[derive(Clone, Copy)]
enum Count {
    Seen(u32),
    Share(Share),
}

/// Takes a count off an item: `lobed 8`, `8 lobed`, `lobed: 8`, `lobed x 8`, `lobed 80 %`.
fn counted(item: &str) -> Result<(&str, Option<Count>), Trouble> {
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
fn count_of(text: &str) -> Result<Option<Count>, Trouble> {
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
            return Err(NO_COUNT);
        }
        return Ok(Some(Count::Share(Share::new(part.into(), whole.into()))));
    }
    if !digits(text) {
        return Ok(None);
    }
    match text.parse::<u32>() {
        Ok(count) if count > 0 => Ok(Some(Count::Seen(count))),
        _ => Err(NO_COUNT),
    }
}

/// The finest common denominator of shares; nobody counts a million million leaves.
const FINEST_SHARE: i128 = 1_000_000_000_000;

fn gcd(a: i128, b: i128) -> i128 {
    if b == 0 { a } else { gcd(b, a % b) }
}

/// The share of each, and how many were counted together.
fn shares(counts: &[Option<Count>]) -> Result<(Vec<Option<Share>>, Option<u32>), Trouble> {
    if counts.iter().all(Option::is_none) {
        return Ok((vec![None; counts.len()], None));
    }
    let (mut seen, mut sum, mut known) = (0_u32, Share::zero(), Vec::new());
    let mut common = 1_i128;
    for count in counts {
        match count.ok_or(HALF_COUNTED)? {
            Count::Seen(count) => {
                seen = seen.checked_add(count).ok_or(NO_COUNT)?;
                known.push(Share::from_integer(count.into()));
            }
            Count::Share(share) => {
                if share <= Share::zero() || share > Share::from_integer(1) {
                    return Err(SHARES);
                }
                // One modest denominator for all, so that no sum of them can overflow.
                common /= gcd(common, *share.denom());
                common = common.saturating_mul(*share.denom());
                if common > FINEST_SHARE {
                    return Err(SHARES);
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
        _ => Err(SHARES),
    }
}
