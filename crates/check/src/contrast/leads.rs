//! What a lead says about one character: from its words to states or to a span of numbers.

use spinney_model::{Character, Scale, WrittenIn};

use crate::phrase::{self, Words};

/// What a lead says.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) enum Said {
    /// One of these states, as bits.
    States(u64),
    /// A number from the first to the second, both included, in thousandths.
    Numbers((i64, i64)),
}

const MORE: [&str; 10] =
    ["more", "longer", "over", "above", "larger", "bigger", "wider", "higher", "taller", "up"];
const LESS: [&str; 9] =
    ["less", "fewer", "shorter", "under", "below", "smaller", "narrower", "lower", "most"];

impl Said {
    /// Reads a lead; None where it names neither a state nor a number.
    pub(super) fn of(words: &Words, character: &Character) -> Option<Self> {
        match &character.scale {
            Scale::Words { states } => {
                let named = phrase::states(states, words);
                let denied = phrase::denied(states, words);
                // "No" is a state there and a negative elsewhere: too easily misread.
                let yes_or_no = states.iter().any(|state| state == "no");
                if named == 0 || yes_or_no || (denied != 0 && denied != named) {
                    return None;
                }
                let all = if states.len() >= 64 { u64::MAX } else { (1 << states.len()) - 1 };
                Some(Self::States(if denied == named { all & !named } else { named }))
            }
            Scale::Counts => span(words, 1000, 1000).map(Self::Numbers),
            Scale::Measure { unit, .. } => {
                let mut written = words.list.iter().filter_map(|word| {
                    let bare = word.trim_start_matches(|l: char| l.is_ascii_digit());
                    let row = WrittenIn::spelt(bare)?.row();
                    (row.kept_as == *unit).then_some(row.thousandths)
                });
                let one = written.next_back().unwrap_or(1000);
                span(words, one, 1).map(Self::Numbers)
            }
        }
    }
}

/// The span that words describe: "2-5", "5 or more", "less than 5". `one` is one unit and
/// `step` the least difference, both in thousandths.
fn span(words: &Words, one: i64, step: i64) -> Option<(i64, i64)> {
    let numbers = words.numbers(one);
    let has = |wanted: &[&str]| words.list.iter().any(|word| wanted.contains(&word.as_str()));
    let than = has(&["than", "over", "above", "under", "below"]);
    match numbers[..] {
        [at] if has(&["least"]) => Some((at, i64::MAX)),
        [at] if has(&["up"]) && has(&["to"]) || has(&["most"]) => Some((i64::MIN, at)),
        [at] if has(&MORE) => Some((if than { at + step } else { at }, i64::MAX)),
        [at] if has(&LESS) => Some((i64::MIN, if than { at - step } else { at })),
        [at] => Some((at, at)),
        [from, to] if from <= to => Some((from, to)),
        _ => None,
    }
}

/// Whether part of a range lies in neither span.
pub(super) fn leaves_out(yes: (i64, i64), no: (i64, i64), (low, high): (i64, i64)) -> bool {
    let (first, second) = if yes.0 <= no.0 { (yes, no) } else { (no, yes) };
    let between = (first.1.saturating_add(1), second.0.saturating_sub(1));
    low < first.0
        || high > first.1.max(second.1)
        || (between.0 <= between.1 && between.0 <= high && low <= between.1)
}
