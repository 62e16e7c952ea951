//! The proof that a claim carries, as JSON: small, since it may have thousands of lines.
//!
//! From a certificate to lists of names and lines of text that point into them, and back. A
//! name that the table does not have is a finding, and the lines that need it are left out:
//! the proof cannot be followed then.

use std::collections::{BTreeMap, BTreeSet};
use std::fmt::Write;

use spinney_model::{
    Certificate, CharacterIx, Code, Finding, Line, Matrix, Place, Remaining, Remains, Scale,
    Share, StateIx, TaxonIx,
};

use super::read::JsonError;
use super::{number, shape};

pub(super) fn write(certificate: &Certificate, matrix: &Matrix) -> shape::Certificate {
    let all = certificate.lines.iter().flat_map(|line| &line.remains);
    let all: BTreeSet<&Remains> = all.collect();
    let places: BTreeMap<&Remains, usize> =
        all.iter().enumerate().map(|(place, remains)| (*remains, place)).collect();
    let line = |line: &Line| {
        let mut text = in_ranges(line.kinds.iter().map(|taxon| taxon.0));
        if !line.remains.is_empty() {
            let remains: BTreeSet<usize> =
                line.remains.iter().map(|remains| places[remains]).collect();
            let _ = write!(text, " | {}", in_ranges(remains.into_iter()));
        }
        let numbers: Vec<String> =
            line.at_least.iter().map(|share| number::exact(*share)).collect();
        let _ = write!(text, " >= {}", numbers.join(", "));
        text
    };
    shape::Certificate {
        kinds: matrix.taxa().iter().map(|taxon| taxon.name.clone()).collect(),
        remains: all.into_iter().map(|one| remains(one, matrix)).collect(),
        lines: certificate.lines.iter().map(line).collect(),
    }
}

fn remains(remains: &Remains, matrix: &Matrix) -> shape::Remains {
    let character = matrix.character(remains.character);
    let mut shape = shape::Remains {
        kind: remains.taxon.0,
        character: character.name.clone(),
        states: None,
        at_least: None,
        below: None,
    };
    match (&remains.values, &character.scale) {
        (Remaining::States(left), Scale::Words { states }) => {
            let names = left.iter().filter_map(|state| states.get(state.0));
            shape.states = Some(names.cloned().collect());
        }
        (Remaining::States(_), _) => {}
        (Remaining::Numbers(from, below), _) => {
            shape.at_least = from.map(number::of_quantity);
            shape.below = below.map(number::of_quantity);
        }
    }
    shape
}

/// `0-3 5`, for rising numbers.
fn in_ranges(numbers: impl Iterator<Item = usize>) -> String {
    let mut ranges: Vec<(usize, usize)> = Vec::new();
    for number in numbers {
        match ranges.last_mut() {
            Some((_, last)) if *last + 1 == number => *last = number,
            _ => ranges.push((number, number)),
        }
    }
    let words: Vec<String> = ranges
        .into_iter()
        .map(|(first, last)| match last - first {
            0 => first.to_string(),
            _ => format!("{first}-{last}"),
        })
        .collect();
    words.join(" ")
}

/// The proof in terms of a table.
///
/// **Errors**: a line is none of ours.
pub(super) fn read(
    shape: shape::Certificate,
    matrix: &Matrix,
    findings: &mut Vec<Finding>,
) -> Result<Certificate, JsonError> {
    let mut missing = BTreeSet::new();
    let kinds: Vec<Option<TaxonIx>> = shape
        .kinds
        .iter()
        .enumerate()
        .map(|(place, name)| {
            let here = matrix.taxa().get(place).filter(|taxon| taxon.name == *name);
            let mut all = matrix.taxon_indices();
            let found = here
                .map(|_| TaxonIx(place))
                .or_else(|| all.find(|ix| matrix.taxon(*ix).name == *name));
            if found.is_none() {
                missing.insert(name.clone());
            }
            found
        })
        .collect();
    let remains: Vec<Option<Remains>> = shape
        .remains
        .iter()
        .map(|one| {
            let read = remaining(one, &kinds, matrix);
            if read.is_none() {
                missing.insert(one.character.clone());
            }
            read
        })
        .collect();
    findings.extend(missing.into_iter().map(|name| {
        Finding::new(
            Code::NameUnknown,
            Place::Key,
            format!(
                "The proof of this key speaks of \"{name}\", which the table does not have in \
                 this way."
            ),
            "Take the table that the key was made from, or build the key again.",
        )
    }));
    let mut lines = Vec::new();
    for text in shape.lines {
        let Some(places) = places(&text, kinds.len(), remains.len()) else {
            return Err(JsonError::Line { line: text });
        };
        let named: Option<BTreeSet<TaxonIx>> =
            places.kinds.iter().map(|place| *kinds.get(*place)?).collect();
        let left: Option<Vec<Remains>> =
            places.remains.iter().map(|place| remains.get(*place)?.clone()).collect();
        if let (Some(kinds), Some(remains)) = (named, left) {
            lines.push(Line { kinds, remains, at_least: places.at_least });
        }
    }
    Ok(Certificate { lines })
}

fn remaining(
    shape: &shape::Remains,
    kinds: &[Option<TaxonIx>],
    matrix: &Matrix,
) -> Option<Remains> {
    let taxon = (*kinds.get(shape.kind)?)?;
    let mut all = matrix.character_indices();
    let character: CharacterIx =
        all.find(|ix| matrix.character(*ix).name == shape.character)?;
    let values = match (&matrix.character(character).scale, &shape.states) {
        (Scale::Words { states }, Some(names)) => {
            let place = |name: &String| states.iter().position(|state| state == name);
            let left: Option<BTreeSet<StateIx>> =
                names.iter().map(|name| place(name).map(StateIx)).collect();
            Remaining::States(left?)
        }
        (Scale::Counts | Scale::Measure { .. }, None) => {
            let end = |number: &Option<serde_json::Number>| match number {
                None => Some(None),
                Some(number) => number::quantity(number).map(Some),
            };
            Remaining::Numbers(end(&shape.at_least)?, end(&shape.below)?)
        }
        _ => return None,
    };
    Some(Remains { taxon, character, values })
}

/// A line whose names are places in lists.
struct Places {
    kinds: Vec<usize>,
    remains: Vec<usize>,
    at_least: Vec<Share>,
}

/// A line of text; there are so many kinds to name, and so much that may remain.
fn places(text: &str, all_kinds: usize, all_remains: usize) -> Option<Places> {
    let (heap, numbers) = text.split_once(" >= ")?;
    let (kinds, remains) = heap.split_once(" | ").unwrap_or((heap, ""));
    Some(Places {
        kinds: out_of_ranges(kinds, all_kinds)?,
        remains: out_of_ranges(remains, all_remains)?,
        at_least: numbers.split(", ").map(number::share).collect::<Option<_>>()?,
    })
}

/// Rising places below `all`.
fn out_of_ranges(text: &str, all: usize) -> Option<Vec<usize>> {
    let mut places: Vec<usize> = Vec::new();
    for word in text.split_whitespace() {
        let (first, last) = word.split_once('-').unwrap_or((word, word));
        let (first, last): (usize, usize) = (first.parse().ok()?, last.parse().ok()?);
        let rises = places.last().is_none_or(|before| *before < first);
        if first > last || last >= all || !rises {
            return None;
        }
        places.extend(first..=last);
    }
    Some(places)
}
