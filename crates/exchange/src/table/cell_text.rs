//! One cell as a person types it: `toothed`, `lobed or entire`, `lobed 8, entire 2`, `3,5 cm`,
//! `30-60`, `?`, `n/a`.
//!
//! From text to what was typed, before anybody knows whether the column holds words or
//! numbers. Unknown and "does not apply" are never the same thing.

use spinney_model::{CellTrouble, Seen, Share};

use super::answers::{is_not_applicable, is_unknown};
use super::number::{Amount, NoAmount, amount};
use super::phrase::{alternatives, fold, has_stroke, list, quoted, unquote};
use counted::{counted, counts_in_a_row, out_of, shares};
use trouble::ambiguous;

pub(super) use counted::OutOf;
pub(super) use trouble::backwards;

mod counted;
mod trouble;

/// What was typed into a cell, and on how many things it was seen.
#[derive(Clone, Debug, PartialEq, Eq)]
pub(super) struct Typed {
    pub(super) what: What,
    pub(super) seen: Option<Seen>,
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

/// One of the things in a cell.
#[derive(Clone, Debug, PartialEq, Eq)]
pub(super) struct Part<T> {
    pub(super) item: T,
    /// None: as much as the others.
    pub(super) share: Option<Share>,
}

/// Understands a cell. `heading` is folded: `5 leaflets` under "number of leaflets" is 5.
pub(super) fn understand(text: &str, heading: &str) -> Result<Typed, CellTrouble> {
    let (text, seen) = seen(text.trim());
    let of = |what, listed| Ok(Typed { what, seen, listed });
    if let Some(known) = fixed(text) {
        return of(known, false);
    }
    if let Some(out_of) = out_of(text) {
        return of(What::OutOf(out_of?), false);
    }
    let items = counts_in_a_row(text).unwrap_or_else(|| list(text));
    let items: Vec<&str> = items.into_iter().filter(|item| !item.is_empty()).collect();
    if items.len() < 2 {
        let items = alternatives(items.first().copied().unwrap_or(""));
        let (what, counted) = parts(&items, heading, items.len() == 1)?;
        return of(what, has_stroke(text)).map(|typed| with_seen(typed, counted));
    }
    let (what, counted) = parts(&items, heading, true)?;
    let listed = counted.is_none() && no_shares(&what);
    of(what, listed).map(|typed| with_seen(typed, counted))
}

fn with_seen(typed: Typed, counted: Option<u32>) -> Typed {
    Typed { seen: typed.seen.or(counted.map(Seen::on)), ..typed }
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
        known if is_unknown(known) => What::Question,
        known if is_not_applicable(known) => What::NotApplicable,
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

/// Whether a cell means the same in every column: nothing, `?`, a dash, `n/a`.
pub(super) fn understood_in_every_column(text: &str) -> bool {
    fixed(text).is_some()
}

/// An item without how often it was seen; with what cannot be counted, as it is.
pub(super) fn thing_counted(item: &str) -> &str {
    counted(item).map_or(item, |(thing, _)| thing)
}

/// Takes `(12 seen)` or `(12 seen on 3 plants)` off the end: on how many things it was seen.
pub(super) fn seen(text: &str) -> (&str, Option<Seen>) {
    let inside = || {
        let (before, rest) = text.rsplit_once('(')?;
        let inner = fold(rest.strip_suffix(')')?);
        let (inner, plants) = match inner.split_once(" seen on ") {
            Some((digits, rest)) => {
                let rest = rest.strip_suffix(" plants").or_else(|| rest.strip_suffix(" plant"));
                (format!("{digits} seen"), Some(rest?.trim().parse().ok()?))
            }
            None => (inner, None),
        };
        let digits = inner.strip_suffix(" seen").or_else(|| inner.strip_prefix("n = "));
        let digits = digits.or_else(|| inner.strip_prefix("n="))?;
        Some((before.trim_end(), Seen { on: digits.trim().parse().ok()?, plants }))
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
) -> Result<(What, Option<u32>), CellTrouble> {
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
        return Err(CellTrouble::Mixed);
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

fn thing(item: &str, heading: &str) -> Result<Thing, CellTrouble> {
    if let Some(word) = quoted(item) {
        return Ok(Thing::Word(word));
    }
    match amount(item) {
        Ok(number) => return Ok(Thing::Number(number)),
        Err(NoAmount::NotANumber) if one_end(item) => return Err(CellTrouble::OneEnd),
        Err(NoAmount::NotANumber) if begins_like_a_number(item) => {
            return Err(CellTrouble::NotANumber);
        }
        Err(NoAmount::NotANumber) => {}
        Err(NoAmount::Ambiguous) => return Err(ambiguous(item)),
        Err(NoAmount::TooLarge) => return Err(CellTrouble::NotANumber),
        Err(NoAmount::Other) => {
            return number_of(item, heading).map(Thing::Number).ok_or(CellTrouble::NotANumber);
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
