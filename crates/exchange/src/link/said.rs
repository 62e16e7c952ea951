//! What is so of a question that is not linked, or not surely.
//!
//! From its readings and doubts to one finding, with the line that settles it in a links file.

use spinney_model::{
    CanAsk, CharacterIx, Couplet, Finding, Matrix, OfLink, Place, Scale, Unit,
};

use super::german::as_typed;
use super::links_file::{meaning, question_line};
use super::names::Names;
use super::readings::{Doubt, Readings};
use super::vocabulary::yes_no;
use super::words::tokens;

/// How many readings are named.
const MOST_NAMED: usize = 3;
/// A reading with fewer points is not worth a question.
pub(super) const WORTH_ASKING: i32 = 6;

/// The finding for a couplet that could not be linked by itself.
pub(super) fn finding(
    couplet: &Couplet,
    readings: &Readings,
    matrix: &Matrix,
    names: &Names,
) -> Finding {
    let question = couplet.number;
    let fact = no_ratio(question, readings, matrix)
        .or_else(|| plain_reason(couplet, readings, matrix))
        .or_else(|| may_ask(question, readings, matrix))
        .or_else(|| asks_both(question, readings, matrix))
        .unwrap_or_else(|| nothing(couplet, readings, matrix, names));
    Finding::of(Place::Couplet(question), fact)
}

/// What it may mean.
fn may_ask(question: u32, readings: &Readings, matrix: &Matrix) -> Option<OfLink> {
    let worth = readings.readings.iter().filter(|reading| reading.points >= WORTH_ASKING);
    let meanings: Vec<String> =
        worth.take(MOST_NAMED).map(|reading| meaning(&reading.ask, matrix)).collect();
    let best = readings.readings.first().filter(|_| !meanings.is_empty())?;
    let at = best.ask.character;
    let unit = readings.unitless && has_a_unit(matrix, at);
    Some(OfLink::MayAsk {
        question,
        meanings,
        denied: readings.doubts.contains(&Doubt::Denied),
        unit: unit.then(|| matrix.character(at).sign()),
        line: question_line(question, &best.ask, matrix),
    })
}

/// Two states of two columns.
fn asks_both(question: u32, readings: &Readings, matrix: &Matrix) -> Option<OfLink> {
    let [first, second, ..] = readings.at_once.as_slice() else { return None };
    Some(OfLink::AsksBoth {
        question,
        first: meaning(first, matrix),
        second: meaning(second, matrix),
        line: question_line(question, first, matrix),
    })
}

fn has_a_unit(matrix: &Matrix, at: CharacterIx) -> bool {
    let scale = &matrix.character(at).scale;
    matches!(scale, Scale::Measure { unit, .. } if !matches!(unit, Unit::Unstated | Unit::Ratio))
}

/// Two lengths are compared, and the table has no column for it.
fn no_ratio(question: u32, readings: &Readings, matrix: &Matrix) -> Option<OfLink> {
    let (one, other) = readings.no_ratio?;
    let name = |at| matrix.character(at).name.clone();
    Some(OfLink::NoRatio { question, one: name(one), other: name(other) })
}

/// A reason that is plain whatever the readings are.
fn plain_reason(couplet: &Couplet, readings: &Readings, matrix: &Matrix) -> Option<OfLink> {
    let question = couplet.number;
    let typed = |word: String| as_typed(&tokens(couplet.wording.first()), &word);
    let reason = |doubt: &Doubt| match doubt.clone() {
        Doubt::Part(word) => Some(OfLink::SpeaksOf { question, word: typed(word) }),
        Doubt::Open => Some(OfLink::NotYesOrNo { question }),
        Doubt::Two => Some(OfLink::TwoThings { question }),
        Doubt::Choice => Some(OfLink::TwoChoices { question }),
        Doubt::Span(about) => Some(OfLink::OneOfTwoNumbers { question, about }),
        Doubt::Exactly(about) => Some(OfLink::ExactlyOneNumber { question, about }),
        Doubt::Several => Some(OfLink::SeveralNumbers { question }),
        Doubt::AllStates(character) => {
            let about = matrix.character(character).name.clone();
            Some(OfLink::EveryState { question, about })
        }
        Doubt::Size(word) => {
            let (word, example) = (typed(word), measured_example(matrix));
            Some(OfLink::NoMeasure { question, word, example })
        }
        Doubt::Number | Doubt::Denied => None,
    };
    readings.doubts.iter().find_map(reason)
}

/// A column of this table that is measured, with its unit.
fn measured_example(matrix: &Matrix) -> Option<(String, &'static str)> {
    matrix.characters().iter().find_map(|character| match &character.scale {
        Scale::Measure { unit, .. } => Some((character.name.clone(), unit.sign())),
        Scale::Words { .. } | Scale::Counts => None,
    })
}

/// Nothing of the table is in the words.
fn nothing(couplet: &Couplet, readings: &Readings, matrix: &Matrix, names: &Names) -> OfLink {
    let question = couplet.number;
    let words = couplet.wording.first();
    if words.trim().is_empty() {
        return OfLink::NoWords { question };
    }
    if let Some((name, taxon)) = names.inside(words).first() {
        let (kind, name) = (matrix.taxon(*taxon).name.clone(), name.to_string());
        return OfLink::NamesAKind { question, kind, name };
    }
    if let Some(named) = readings.named {
        let character = matrix.character(named);
        let can = match &character.scale {
            Scale::Words { states } if yes_no(states).is_some() => CanAsk::Whether,
            Scale::Words { states } => CanAsk::States(states.clone()),
            Scale::Counts => CanAsk::Count,
            Scale::Measure { unit, .. } => CanAsk::Measure(unit.sign()),
        };
        return OfLink::NothingThere { question, about: character.name.clone(), can };
    }
    let example = matrix.characters().first().map(|character| character.name.clone());
    OfLink::Nothing { question, example }
}
