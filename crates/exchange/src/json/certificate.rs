//! The proof that a claim carries, as JSON: small, since it may have thousands of lines.
//!
//! From a certificate to lists of names and lines that point into them, and back. A
//! name that the table does not have is a finding, and the lines that need it are left out:
//! the proof cannot be followed then.

use std::collections::BTreeSet;

use spinney_model::{
    Certificate, CharacterIx, Finding, KeyFileError, Line, Matrix, OfKeyFile, Place, Remaining,
    Remains, Scale, StateIx, TaxonIx,
};

use super::{number, shape};

mod first_form;
mod line;

/// The form that is written here.
pub(super) const FORM: u32 = 2;

pub(super) fn write(certificate: &Certificate, matrix: &Matrix) -> shape::Certificate {
    let line = |line: &Line| shape::Line::Says {
        kinds: line.kinds.iter().map(|taxon| taxon.0).collect(),
        remains: line.remains.clone(),
        at_least: line.at_least.clone(),
    };
    shape::Certificate {
        form: FORM,
        kinds: matrix.taxa().iter().map(|taxon| taxon.name.clone()).collect(),
        parts: certificate.whole.to_string(),
        remains: certificate.remains.iter().map(|one| remains(one, matrix)).collect(),
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

/// The proof in terms of a table.
///
/// **Errors**: a line is none of ours.
pub(super) fn read(
    shape: shape::Certificate,
    matrix: &Matrix,
    findings: &mut Vec<Finding>,
) -> Result<Certificate, KeyFileError> {
    let (parts, lines) = match shape.form {
        FORM => (shape.parts.parse().ok(), shape.lines),
        0 | 1 => first_form::lines(shape.lines)?,
        form => return Err(KeyFileError::Form { form }),
    };
    let whole = parts.filter(|parts| *parts > 0_i128);
    let whole = whole.ok_or(KeyFileError::Cost { field: "parts" })?;
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
    let strange = missing.into_iter().map(|name| OfKeyFile::Proof { name });
    findings.extend(strange.map(|fact| Finding::of(Place::Key, fact)));
    // Most of the time all names are found, each at its place.
    let mut here = Vec::new();
    let places: Vec<Option<usize>> = remains
        .into_iter()
        .map(|one| {
            here.push(one?);
            Some(here.len() - 1)
        })
        .collect();
    let mut read = Vec::with_capacity(lines.len());
    for line in lines {
        let (of, left, at_least) = match line {
            shape::Line::Says { kinds, remains, at_least } => (kinds, remains, at_least),
            shape::Line::Unread(line) => return Err(KeyFileError::Line { line }),
        };
        if of.last().is_some_and(|last| *last >= kinds.len())
            || left.last().is_some_and(|last| *last >= places.len())
        {
            let line = shape::Line::Says { kinds: of, remains: left, at_least }.to_string();
            return Err(KeyFileError::Line { line });
        }
        let named: Option<Vec<TaxonIx>> = of.iter().map(|place| kinds[*place]).collect();
        let left: Option<Vec<usize>> = left.iter().map(|place| places[*place]).collect();
        if let (Some(mut kinds), Some(remains)) = (named, left) {
            kinds.sort_unstable();
            read.push(Line { kinds, remains, at_least });
        }
    }
    Ok(Certificate { whole, remains: here, lines: read })
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
