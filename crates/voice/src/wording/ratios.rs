//! Questions about one length over another: `Is the stalk longer than half the blade?`
//!
//! From a ratio of two columns and a threshold to a comparison that needs no ruler. A threshold
//! of 0.513 is put into words as half where half parts the kinds of the table just as well,
//! the safety gap kept; what is asked stays 0.513. It does not choose the threshold.

use spinney_model::{Ask, Asked, CharacterIx, Matrix, Quantity, Scale, Value};

use super::grammar::{Noun, noun_of, the};
use super::heading::{clean, whole_name, without_unit};
use super::numbers::{Dimension, LENGTH, dimension};

/// Numbers that have a name, the plainest first: over, under, `half`, `twice as long as`.
const PLAIN: [(i64, i64, &str); 11] = [
    (1, 1, ""),
    (1, 2, "half"),
    (2, 1, "twice"),
    (1, 3, "a third"),
    (1, 4, "a quarter"),
    (3, 4, "three quarters"),
    (2, 3, "two thirds"),
    (3, 2, "one and a half times"),
    (3, 1, "three times"),
    (4, 1, "four times"),
    (5, 1, "five times"),
];

/// What is compared with what, and by how much.
struct Compared {
    subject: String,
    plural: bool,
    own: &'static Dimension,
    /// What it is compared with, as a thing: `the blade`, `its length`, `the width of the lobe`.
    thing: String,
    /// The same at the end of `as long as`: `the blade`, `it is long`, `the lobe is wide`.
    clause: String,
    portion: Portion,
}

/// A ratio that can be said.
pub(super) struct Portion {
    /// So many over so many, where that has a name of its own; None: the number is said.
    pub(super) named: Option<(i64, i64)>,
    pub(super) number: Quantity,
    /// `half`, `twice`, `0.4 times`; empty: as much.
    words: String,
    /// Whether it is a plain part of one: `half the blade`.
    part: bool,
    /// Whether some kind has exactly that much.
    pub(super) touched: bool,
}

/// A whole question, without its question mark; None: the ask is about no ratio of two columns.
pub(super) fn question(matrix: &Matrix, ask: &Ask) -> Option<String> {
    let compared = Compared::of(matrix, ask)?;
    let be = if compared.plural { "Are" } else { "Is" };
    Some(format!("{be} {} {}", compared.subject, compared.words(&ask.yes)))
}

/// What yes means: `longer than half the blade`.
pub(super) fn yes_means(matrix: &Matrix, ask: &Ask) -> Option<String> {
    Some(Compared::of(matrix, ask)?.words(&ask.yes))
}

/// A person's own wording with the ratio in its place: `Is the stalk longer than {} the blade?`,
/// `Is the stalk {} as long as the blade?`, `Is the stalk {}?` None: not about a ratio, or the
/// wording cannot say it.
pub(super) fn in_template(template: &str, matrix: &Matrix, ask: &Ask) -> Option<String> {
    let compared = Compared::of(matrix, ask)?;
    let Portion { words, part, touched, .. } = &compared.portion;
    if template.contains("{} as ") {
        let times = if words.is_empty() { "once" } else { words };
        let more = match ask.yes {
            Asked::Below(_) => "less than",
            _ if *touched => "at least",
            _ => "more than",
        };
        return Some(template.replace("{}", &format!("{more} {times}")));
    }
    if template.contains("than {}") {
        if *touched || !matches!(ask.yes, Asked::AtLeast(_)) {
            return None;
        }
        let ends = template.split("{}").nth(1).is_some_and(|rest| rest.trim() == "?");
        let wanted = match (words.as_str(), part) {
            ("", _) if ends => compared.thing.clone(),
            ("", _) => return Some(template.replace("than {} ", "than ")),
            _ if ends && *part => compared.portion_of_thing(),
            ("half", _) => words.clone(),
            (_, true) => format!("{words} of"),
            _ if ends => format!("{words} {}", compared.thing),
            _ => words.clone(),
        };
        return Some(template.replace("{}", &wanted));
    }
    template.contains("{}").then(|| template.replace("{}", &compared.words(&ask.yes)))
}

impl Compared {
    fn of(matrix: &Matrix, ask: &Ask) -> Option<Self> {
        let (one, other) = matrix.character(ask.character).ratio_of?;
        let (Asked::AtLeast(at) | Asked::Below(at)) = ask.yes else { return None };
        let named = |at: CharacterIx| {
            let name = clean(&matrix.character(at).name);
            let name = without_unit(&name);
            let (dimension, part) = dimension(name).unwrap_or((&LENGTH, name.to_owned()));
            (dimension, whole_name(matrix, &part))
        };
        let ((own, part), (with, whole)) = (named(one), named(other));
        let plural = !part.is_empty() && noun_of(&part) == Noun::Plural;
        let subject = if part.is_empty() { "it".to_owned() } else { the(&part) };
        let are = |plural: bool| if plural { "are" } else { "is" };
        let noun = with.noun;
        let (thing, clause) = if whole == part {
            let (its, it) = if plural { ("their", "they") } else { ("its", "it") };
            (format!("{its} {noun}"), format!("{it} {} {}", are(plural), with.plain))
        } else if with.noun == own.noun {
            (the(&whole), the(&whole))
        } else {
            let whole = if whole.is_empty() { "whole thing".to_owned() } else { whole };
            let are = are(noun_of(&whole) == Noun::Plural);
            let whole = the(&whole);
            (format!("the {noun} of {whole}"), format!("{whole} {are} {}", with.plain))
        };
        let portion = portion(matrix, ask.character, at);
        Some(Self { subject, plural, own, thing, clause, portion })
    }

    fn words(&self, asked: &Asked) -> String {
        let Portion { words, part, touched, .. } = &self.portion;
        let Dimension { more, less, plain, .. } = self.own;
        let clause = &self.clause;
        if *touched && matches!(asked, Asked::AtLeast(_)) {
            let space = if words.is_empty() { "" } else { " " };
            return format!("{words}{space}as {plain} as {clause} or {more}");
        }
        let (than, times) = match asked {
            Asked::Below(_) => (less, "less"),
            _ => (more, "more"),
        };
        match (words.is_empty(), part) {
            (true, _) => format!("{than} than {clause}"),
            (false, true) => format!("{than} than {}", self.portion_of_thing()),
            (false, false) => format!("{times} than {words} as {plain} as {clause}"),
        }
    }

    fn portion_of_thing(&self) -> String {
        let of = if self.portion.words == "half" { "" } else { "of " };
        format!("{} {of}{}", self.portion.words, self.thing)
    }
}

/// The plainest number that can stand for a threshold: one with a name, else with the fewest
/// decimals, and at last the threshold itself.
pub(super) fn portion(matrix: &Matrix, character: CharacterIx, at: Quantity) -> Portion {
    let plain = PLAIN
        .into_iter()
        .find(|(over, under, _)| stands_for(matrix, character, at, (*over * 1000, *under)));
    if let Some((over, under, words)) = plain {
        let touched = is_touched(matrix, character, at, (over * 1000, under));
        let words = words.to_owned();
        let (named, part) = (Some((over, under)), over < under);
        return Portion { named, number: at, words, part, touched };
    }
    let rounded = |to: i64| (at.thousandths() + to / 2).div_euclid(to) * to;
    let number = [100, 10]
        .map(rounded)
        .into_iter()
        .find(|number| stands_for(matrix, character, at, (*number, 1)))
        .unwrap_or(at.thousandths());
    let said = Quantity::from_thousandths(number);
    Portion {
        named: None,
        number: said,
        words: format!("{said} times"),
        part: false,
        touched: is_touched(matrix, character, at, (number, 1)),
    }
}

/// The ranges of a column that a threshold does not cut.
fn ranges(
    matrix: &Matrix,
    character: CharacterIx,
    at: Quantity,
) -> impl Iterator<Item = (i64, i64)> {
    matrix.taxon_indices().filter_map(move |taxon| match matrix.cell(taxon, character).value {
        Value::Range { low, high } if at <= low || high < at => {
            Some((low.thousandths(), high.thousandths()))
        }
        _ => None,
    })
}

/// Whether so many thousandths over a whole number part the kinds of the table as a threshold
/// does, no nearer to any of them than the safety gap or the threshold itself.
fn stands_for(
    matrix: &Matrix,
    character: CharacterIx,
    at: Quantity,
    (over, under): (i64, i64),
) -> bool {
    let gap = match matrix.character(character).scale {
        Scale::Measure { gap, .. } => gap.thousandths(),
        Scale::Counts | Scale::Words { .. } => 0,
    };
    let (at, over, under) = (at.thousandths(), i128::from(over), i128::from(under));
    ranges(matrix, character, Quantity::from_thousandths(at)).all(|(low, high)| {
        let (room, kept) = if at <= low {
            (i128::from(low) * under - over, low - at)
        } else {
            (over - i128::from(high) * under, at - high)
        };
        let least = i128::from(gap.min(kept)) * under;
        // The upper side has the number itself, the lower one has not.
        room >= least && (at <= low || room > 0)
    })
}

/// Whether a kind on the upper side begins exactly there, so that "longer than" is not so.
fn is_touched(
    matrix: &Matrix,
    character: CharacterIx,
    at: Quantity,
    (over, under): (i64, i64),
) -> bool {
    ranges(matrix, character, at).any(|(low, _)| {
        at.thousandths() <= low && i128::from(low) * i128::from(under) == over.into()
    })
}
