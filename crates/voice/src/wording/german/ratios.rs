//! German questions about one length over another: `Ist der Stiel mehr als halb so lang wie die
//! Spreite?`
//!
//! Which number is said, `wording::ratios` decides. Where the nouns of both columns are not known
//! the headings are compared as they stand, without an article:
//! `Spreitenlänge: mehr als halb so groß wie Stiellänge?`

use spinney_model::{Ask, Asked, CharacterIx, Matrix};

use super::super::grammar::capital;
use super::super::heading::{clean_as_written, without_unit};
use super::super::ratios::{Portion, portion};
use super::grammar::{Head, nominative};
use super::{Dimension, Sentence, dimension};

/// Numbers that have a name, over and under.
const NAMES: [((i64, i64), &str); 11] = [
    ((1, 1), ""),
    ((1, 2), "halb"),
    ((2, 1), "doppelt"),
    ((1, 3), "ein Drittel"),
    ((1, 4), "ein Viertel"),
    ((3, 4), "drei Viertel"),
    ((2, 3), "zwei Drittel"),
    ((3, 2), "anderthalbmal"),
    ((3, 1), "dreimal"),
    ((4, 1), "viermal"),
    ((5, 1), "fünfmal"),
];

/// What is said of two columns that nobody can name.
const SIZE: Dimension =
    Dimension { noun: "größe", plain: "groß", more: "größer", less: "kleiner" };

/// Two columns that are compared.
struct Compared {
    subject: Subject,
    own: &'static Dimension,
    /// What is behind `so lang wie` and `länger als`, and whether it is a clause with a verb.
    thing: (String, bool),
    portion: Portion,
}

enum Subject {
    /// `der Stiel`.
    Thing(Head),
    /// The whole thing.
    It,
    /// A heading.
    Heading(String),
}

/// The whole question; None: the ask is about no ratio of two columns.
pub(super) fn sentence(matrix: &Matrix, ask: &Ask) -> Option<Sentence> {
    let compared = Compared::of(matrix, ask)?;
    let how = compared.words(&ask.yes);
    match &compared.subject {
        Subject::Thing(thing) => thing.is(how),
        Subject::It => Some(super::it_is(how)),
        Subject::Heading(name) => Some(Sentence::Plain(format!("{}: {how}", capital(name)))),
    }
}

/// What yes means: `mehr als halb so lang wie die Spreite`.
pub(in super::super) fn yes_means(matrix: &Matrix, ask: &Ask) -> Option<String> {
    Some(Compared::of(matrix, ask)?.words(&ask.yes))
}

impl Compared {
    fn of(matrix: &Matrix, ask: &Ask) -> Option<Self> {
        let (one, other) = matrix.character(ask.character).ratio_of?;
        let (Asked::AtLeast(at) | Asked::Below(at)) = ask.yes else { return None };
        let portion = portion(matrix, ask.character, at);
        let name = |at: CharacterIx| {
            let name = clean_as_written(&matrix.character(at).name);
            without_unit(&name).to_owned()
        };
        let (one, other) = (name(one), name(other));
        let known = dimension(&one).zip(dimension(&other));
        let (subject, own, thing) = known
            .and_then(|(one, other)| named(one, other))
            .unwrap_or((Subject::Heading(one), &SIZE, (other, false)));
        Some(Self { subject, own, thing, portion })
    }

    fn words(&self, asked: &Asked) -> String {
        let Dimension { plain, more, less, .. } = self.own;
        let (thing, is_clause) = &self.thing;
        let clause = if *is_clause { "," } else { "" };
        let named = |of: (i64, i64)| NAMES.iter().find(|(known, _)| *known == of);
        let times = match self.portion.named.and_then(named) {
            Some((_, name)) => (*name).to_owned(),
            None => format!("{}-mal", self.portion.number.to_string().replace('.', ",")),
        };
        let at_least = matches!(asked, Asked::AtLeast(_));
        let space = if times.is_empty() { "" } else { " " };
        match (at_least, times.is_empty()) {
            (true, _) if self.portion.touched => {
                format!("{times}{space}so {plain}{clause} wie {thing}{clause} oder {more}")
            }
            (true, true) => format!("{more}{clause} als {thing}"),
            (false, true) => format!("{less}{clause} als {thing}"),
            (true, false) => format!("mehr als {times} so {plain}{clause} wie {thing}"),
            (false, false) => format!("weniger als {times} so {plain}{clause} wie {thing}"),
        }
    }
}

type Measured = (&'static Dimension, Option<Head>);

/// Both columns by their nouns; None: a noun is not sure, or there is no short way to say it.
fn named(
    (own, part): Measured,
    (with, whole): Measured,
) -> Option<(Subject, &'static Dimension, (String, bool))> {
    let subject = |part: Option<Head>| part.map_or(Subject::It, Subject::Thing);
    if let Some(part) = &part {
        nominative(part)?;
    }
    if part == whole {
        return Some((subject(part), own, (with.plain.to_owned(), false)));
    }
    let whole = whole?;
    let (thing, are) = (nominative(&whole)?, if whole.several() { "sind" } else { "ist" });
    let thing = match own.noun == with.noun {
        true => (thing, false),
        false => (format!("{thing} {} {are}", with.plain), true),
    };
    Some((subject(part), own, thing))
}
