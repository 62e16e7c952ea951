//! What is said of a question that is not linked, or not surely.
//!
//! From its readings and doubts to one finding, with the line that settles it in a links file.

use spinney_model::{CharacterIx, Code, Couplet, Finding, Matrix, Place, Scale, Unit};

use super::links_file::{meaning, question_line};
use super::names::Names;
use super::readings::{Doubt, Readings};
use super::vocabulary::yes_no;

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
    let number = couplet.number;
    let reason =
        no_ratio(number, readings, matrix).or_else(|| plain_reason(number, readings, matrix));
    if let Some((sentence, remedy)) = reason {
        return Finding::new(Code::NotLinked, Place::Couplet(number), sentence, remedy);
    }
    let worth: Vec<String> = readings
        .readings
        .iter()
        .filter(|reading| reading.points >= WORTH_ASKING)
        .take(MOST_NAMED)
        .map(|reading| meaning(&reading.ask, matrix))
        .collect();
    if let Some(best) = readings.readings.first()
        && !worth.is_empty()
    {
        let sentence = if readings.doubts.contains(&Doubt::Denied) {
            format!("Question {number} says \"not\" in a way that may mean {}.", worth[0])
        } else {
            format!("Question {number} may ask for {}.", worth.join(", or for "))
        };
        let line = question_line(number, &best.ask, matrix);
        if readings.unitless && has_a_unit(matrix, best.ask.character) {
            let sign = matrix.character(best.ask.character).sign();
            return Finding::new(
                Code::NoUnit,
                Place::Couplet(number),
                format!("The number in question {number} has no unit. {sentence}"),
                format!(
                    "Write {sign}, or what it is measured in, behind the number; or put the line \
                     that is meant into the links file: {line}"
                ),
            );
        }
        return Finding::new(
            Code::LinkNotSure,
            Place::Couplet(number),
            sentence,
            format!("Put the line that is meant into the links file, for instance: {line}"),
        );
    }
    if let [first, second, ..] = readings.at_once.as_slice() {
        let line = question_line(number, first, matrix);
        return Finding::new(
            Code::LinkNotSure,
            Place::Couplet(number),
            format!(
                "Question {number} asks two things at once: {}, and {}.",
                meaning(first, matrix),
                meaning(second, matrix)
            ),
            format!(
                "Ask one of them here and the other in a question of its own. If only one is \
                 meant, put its line into the links file, for instance: {line}"
            ),
        );
    }
    let (sentence, remedy) = nothing(couplet, readings, matrix, names);
    Finding::new(Code::NotLinked, Place::Couplet(number), sentence, remedy)
}

fn has_a_unit(matrix: &Matrix, at: CharacterIx) -> bool {
    let scale = &matrix.character(at).scale;
    matches!(scale, Scale::Measure { unit, .. } if !matches!(unit, Unit::Unstated | Unit::Ratio))
}

/// Two lengths are compared, and the table has no column for it.
fn no_ratio(number: u32, readings: &Readings, matrix: &Matrix) -> Option<(String, String)> {
    let (one, other) = readings.no_ratio?;
    let (one, other) = (&matrix.character(one).name, &matrix.character(other).name);
    Some((
        format!(
            "Question {number} compares {one} with {other}, and the table has no column for that."
        ),
        format!(
            "Add a row to the sheet `characters` whose cell under `ratio of` is `{one} / {other}`; \
             it is then worked out."
        ),
    ))
}

/// A reason that is plain whatever the readings are.
fn plain_reason(number: u32, readings: &Readings, matrix: &Matrix) -> Option<(String, String)> {
    let reason = |doubt: &Doubt| match doubt {
        Doubt::Part(word) => Some((
            format!(
                "Question {number} speaks of \"{word}\", and no column of the table is about that."
            ),
            "Add a column for it, or ask about something that the table has.".to_owned(),
        )),
        Doubt::Open => Some((
            format!("Question {number} cannot be answered with yes or no."),
            "Begin with Is, Are, Does, Do, Has or Have.".to_owned(),
        )),
        Doubt::Two => Some((
            format!("Question {number} asks two things at once."),
            "Ask one of them here, and the other in a question of its own.".to_owned(),
        )),
        Doubt::Choice => Some((
            format!("Question {number} offers two choices, so \"yes\" is not an answer."),
            "Ask about one of them.".to_owned(),
        )),
        Doubt::Span(name) => Some((
            format!(
                "Question {number} asks for one of two numbers of {name}, which is neither \
                 that much or more nor less."
            ),
            format!("Ask for one threshold, in a gap of the table: Is the {name} … or more?"),
        )),
        Doubt::Exactly(name) => Some((
            format!(
                "Question {number} asks for exactly one number of {name}, and the table has \
                 more as well as fewer."
            ),
            "Ask for that number or more, or for fewer.".to_owned(),
        )),
        Doubt::Several => Some((
            format!("Question {number} has several numbers in it."),
            "Ask for one of them at a time.".to_owned(),
        )),
        Doubt::AllStates(character) => {
            let name = &matrix.character(*character).name;
            Some((
                format!(
                    "Question {number} asks for everything that {name} can be, so that every \
                     kind says yes."
                ),
                "Ask for one of the states.".to_owned(),
            ))
        }
        Doubt::Size(word) => Some((
            format!("Question {number} says \"{word}\", which is no measure."),
            format!("Say how much: … {}", measured_example(matrix)),
        )),
        Doubt::Number | Doubt::Denied => None,
    };
    readings.doubts.iter().find_map(reason)
}

/// A threshold of this table's own, as an example.
fn measured_example(matrix: &Matrix) -> String {
    let measure = matrix.characters().iter().find_map(|character| match &character.scale {
        Scale::Measure { unit, .. } => Some((character.name.as_str(), unit.sign())),
        Scale::Words { .. } | Scale::Counts => None,
    });
    match measure {
        Some((name, unit)) => format!("is the {name} 30 {unit} or more?"),
        None => "or ask for something that can be counted or named.".to_owned(),
    }
}

/// Nothing of the table is in the words.
fn nothing(
    couplet: &Couplet,
    readings: &Readings,
    matrix: &Matrix,
    names: &Names,
) -> (String, String) {
    let number = couplet.number;
    let words = couplet.wording.first();
    if words.trim().is_empty() {
        return (
            format!("Question {number} has no words."),
            "Write what is asked there.".to_owned(),
        );
    }
    let kinds = names.inside(words);
    if let Some((name, taxon)) = kinds.first() {
        let kind = &matrix.taxon(*taxon).name;
        return (
            format!(
                "Question {number} asks for {kind} by name (\"{name}\"), so only somebody who \
                 knows it can answer."
            ),
            format!("Ask for something that can be seen on {kind} and not on the others."),
        );
    }
    if let Some(named) = readings.named {
        let character = matrix.character(named);
        let name = &character.name;
        let remedy = match &character.scale {
            Scale::Words { states } if yes_no(states).is_some() => format!(
                "Ask only whether it is so, as the heading says it: {name}? If something else is \
                 meant, add a column for it."
            ),
            Scale::Words { states } => {
                format!("Ask for one of its states: {}.", states.join(", "))
            }
            Scale::Counts => "Ask for a number of them or more.".to_owned(),
            Scale::Measure { unit, .. } => {
                format!("Ask for a number of {} or more.", unit.sign())
            }
        };
        let sentence =
            format!("Question {number} speaks of {name}, but of nothing the table has there.");
        return (sentence, remedy);
    }
    let example = matrix.characters().first().map_or("edge", |c| c.name.as_str());
    (
        format!("Question {number} asks for nothing that the table speaks of."),
        format!(
            "Add a column for it, or put a line into the links file: question {number}: \
             {example} = … (or: question {number}: nothing in the table)"
        ),
    )
}
