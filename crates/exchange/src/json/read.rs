//! Our own JSON back to a key or a claim.
//!
//! From text to a key of a given matrix. A name the table does not have is a finding and the
//! rest is read; text that is no such JSON is an error.

use std::collections::{BTreeMap, BTreeSet};

use spinney_model::{
    Ask, Asked, Claim, Couplet, Destination, End, Finding, KeptPrice, Key, KeyFileError,
    Matrix, NotInTable, OfKeyRead, OfLink, Place, Quantity, Scale, Share, StateIx, Stopped,
    TaxonIx, Wording,
};

use super::{certificate, number, shape};
use crate::key_text::cut_to_limit;

mod wished;

use wished::Names;

/// The kinds by name.
type Kinds<'m> = BTreeMap<&'m str, TaxonIx>;

/// Reads a key that [`super::report`] or [`super::key`] wrote, or one that stands alone
/// (`{"couplets": […]}`), with what is claimed of it, if anything is; and what both name that
/// the table does not have.
///
/// **Errors**: the text is not JSON of that shape, or holds no key, or a cost is not a number of
/// ours.
pub fn read(
    text: &str,
    matrix: &Matrix,
) -> Result<(Key, Option<Claim>, Vec<Finding>), KeyFileError> {
    let mut report = parsed::<shape::Report>(text)?;
    let (key, mut findings) = key_of(report.key.take(), text, matrix)?;
    let (claim, more) = claim_of(report, matrix)?;
    findings.extend(more);
    Ok((key, claim, findings))
}

/// Reads the key alone.
///
/// **Errors**: the text is not JSON of that shape, or holds no key.
pub fn read_key(text: &str, matrix: &Matrix) -> Result<(Key, Vec<Finding>), KeyFileError> {
    key_of(parsed::<shape::Report>(text)?.key, text, matrix)
}

/// The key of a report, or a text that is a key by itself.
fn key_of(
    key: Option<shape::Key>,
    text: &str,
    matrix: &Matrix,
) -> Result<(Key, Vec<Finding>), KeyFileError> {
    let key = match key {
        Some(key) => key,
        None => bare(text)?,
    };
    let mut findings = Vec::new();
    // Collected from the last, so that of two kinds with one name the first is meant.
    let kinds: Vec<TaxonIx> = matrix.taxon_indices().collect();
    let kinds = kinds.iter().rev().map(|ix| (matrix.taxon(*ix).name.as_str(), *ix)).collect();
    let couplets = key
        .couplets
        .into_iter()
        .map(|shape| couplet(shape, matrix, &kinds, &mut findings))
        .collect();
    let mut key = Key { couplets };
    findings.extend(cut_to_limit(&mut key));
    Ok((key, findings))
}

/// Reads what was claimed of the key, None if nothing was; and what its wishes name that the
/// table does not have.
///
/// **Errors**: the text is not JSON of our shape, or a cost is not a number of ours.
pub fn read_claim(
    text: &str,
    matrix: &Matrix,
) -> Result<(Option<Claim>, Vec<Finding>), KeyFileError> {
    claim_of(parsed(text)?, matrix)
}

fn claim_of(
    report: shape::Report,
    matrix: &Matrix,
) -> Result<(Option<Claim>, Vec<Finding>), KeyFileError> {
    let (Some(cost), Some(proof)) = (report.cost, report.proof) else {
        return Ok((None, Vec::new()));
    };
    let stopped = match (proof.optimal, proof.stopped.as_deref()) {
        (true, _) => None,
        (false, Some("overflow")) => Some(Stopped::Overflow),
        (false, Some("memory")) => Some(Stopped::Memory),
        (false, _) => Some(Stopped::Budget),
    };
    let kept = report.kept_price.map(|kept| kept_price(kept, matrix)).transpose()?;
    let mut names = Names { matrix, findings: Vec::new() };
    let (wishes, within) = wished::wishes(report.wishes.unwrap_or_default(), &mut names);
    let claim = Claim {
        total: share("effort_total", cost.effort_total_exact, &cost.effort_total)?,
        lower_bound: share("lower_bound", proof.lower_bound_exact, &proof.lower_bound)?,
        mean_questions: share(
            "mean_questions",
            cost.mean_questions_exact,
            &cost.mean_questions,
        )?,
        longest: cost.longest,
        stopped,
        heaps: proof.heaps.unwrap_or_default(),
        kept,
        wishes,
        reached: wished::reached(report.reached, &mut names)?,
        prices: wished::prices(report.prices, &mut names)?,
        within,
        touching: report.touching,
        certificate: None,
    };
    let certificate = proof
        .certificate
        .map(|shape| certificate::read(shape, matrix, &mut names.findings))
        .transpose()?;
    Ok((Some(Claim { certificate, ..claim }), names.findings))
}

fn kept_price(kept: shape::KeptPrice, matrix: &Matrix) -> Result<KeptPrice, KeyFileError> {
    Ok(KeptPrice {
        without_wishes: share(
            "without_wishes",
            kept.without_wishes_exact,
            &kept.without_wishes,
        )?,
        without_wishes_optimal: kept.without_wishes_optimal,
        refused: kept.refused.into_iter().filter_map(|ask| asked(ask, matrix).ok()).collect(),
    })
}

fn share(
    field: &'static str,
    exact: Option<String>,
    number: &serde_json::Number,
) -> Result<Share, KeyFileError> {
    let Some(exact) = exact else {
        return number::share_of(number).ok_or(KeyFileError::Cost { field });
    };
    let share = number::share(&exact).ok_or(KeyFileError::Cost { field })?;
    if number::agree(number, share) {
        return Ok(share);
    }
    Err(KeyFileError::Disagree { field, number: number.to_string(), exact })
}

/// A key without a report around it.
fn bare(text: &str) -> Result<shape::Key, KeyFileError> {
    let couplets = parsed::<shape::BareKey>(text)?.couplets.ok_or(KeyFileError::NoKey)?;
    Ok(shape::Key { couplets })
}

fn parsed<T: serde::de::DeserializeOwned>(text: &str) -> Result<T, KeyFileError> {
    let text = text.trim_start_matches('\u{feff}');
    serde_json::from_str(text).map_err(|error| {
        let reason = error.to_string();
        let reason = reason.split(" at line ").next().unwrap_or_default().to_owned();
        if error.is_eof() {
            return KeyFileError::CutOff { line: error.line() };
        }
        if let Some(named) = reason.strip_prefix("unknown field `") {
            let field = named.split('`').next().unwrap_or_default().to_owned();
            return KeyFileError::Unknown { field };
        }
        KeyFileError::NotOurs { line: error.line(), column: error.column() }
    })
}

fn couplet(
    shape: shape::Couplet,
    matrix: &Matrix,
    kinds: &Kinds,
    findings: &mut Vec<Finding>,
) -> Couplet {
    let number = shape.number;
    let ask = shape.ask.and_then(|ask| match asked(ask, matrix) {
        Ok(ask) => Some(ask),
        Err(what) => {
            let fact = OfLink::NotInTable { question: number, what };
            findings.push(Finding::of(Place::Couplet(number), fact));
            None
        }
    });
    Couplet {
        number,
        back: shape.back,
        wording: match shape.leads {
            Some((yes, no)) => Wording::Leads { yes, no },
            None => Wording::Question(shape.question),
        },
        ask,
        yes: destination(shape.yes, number, kinds, findings),
        no: destination(shape.no, number, kinds, findings),
        kept: shape.kept,
        line: None,
    }
}

/// What is asked, in terms of the matrix; an error names what the matrix lacks.
fn asked(ask: shape::Ask, matrix: &Matrix) -> Result<Ask, NotInTable> {
    let mut all = matrix.character_indices();
    let found = all.find(|ix| matrix.character(*ix).name == ask.character);
    let character = found.ok_or_else(|| NotInTable::Named(ask.character.clone()))?;
    let scale = &matrix.character(character).scale;
    let what = || NotInTable::Of(ask.character.clone());
    let yes = match (scale, ask.states, ask.at_least, ask.below) {
        (Scale::Words { states }, Some(names), None, None) => {
            let mut asked = BTreeSet::new();
            for name in names {
                let at = states.iter().position(|state| *state == name);
                asked.insert(StateIx(at.ok_or(NotInTable::Named(name))?));
            }
            if asked.is_empty() || asked.len() == states.len() {
                return Err(what());
            }
            Asked::States(asked)
        }
        (Scale::Counts | Scale::Measure { .. }, None, Some(number), None) => {
            Asked::AtLeast(threshold(&number, scale, ask.unit.as_deref()).ok_or_else(what)?)
        }
        (Scale::Counts | Scale::Measure { .. }, None, None, Some(number)) => {
            Asked::Below(threshold(&number, scale, ask.unit.as_deref()).ok_or_else(what)?)
        }
        _ => return Err(what()),
    };
    Ok(Ask { character, yes })
}

fn threshold(
    number: &serde_json::Number,
    scale: &Scale,
    said: Option<&str>,
) -> Option<Quantity> {
    let quantity = number::quantity(number)?;
    let fits = match scale {
        Scale::Counts => said.is_none() && quantity.thousandths() % 1000 == 0,
        Scale::Measure { unit, .. } => said.is_none_or(|said| said == unit.sign()),
        Scale::Words { .. } => false,
    };
    fits.then_some(quantity)
}

fn destination(
    shape: Option<shape::Destination>,
    number: u32,
    kinds: &Kinds,
    findings: &mut Vec<Finding>,
) -> Destination {
    let Some(shape) = shape else { return Destination::Missing };
    if let Some(couplet) = shape.couplet {
        return Destination::Couplet(couplet);
    }
    let Some(names) = shape.taxa else { return Destination::Missing };
    let mut taxa = BTreeSet::new();
    let mut unrecognised = Vec::new();
    for name in names {
        match kinds.get(name.as_str()) {
            Some(ix) => {
                taxa.insert(*ix);
            }
            None => unrecognised.push(name),
        }
    }
    unrecognised.extend(shape.unrecognised);
    findings.extend(unrecognised.iter().map(|name| {
        let fact = OfKeyRead::NameUnknown { question: number, written: name.clone() };
        Finding::of(Place::Couplet(number), fact)
    }));
    Destination::End(End { taxa: taxa.into_iter().collect(), unrecognised })
}
