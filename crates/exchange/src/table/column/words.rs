//! A column of words: its states and which of them each kind has.
//!
//! States are the declared ones first, then in the order in which they are met. Words that
//! look like one another are told and never merged.

use std::collections::BTreeMap;

use spinney_model::{
    Cell, CellTrouble, OfCell, OfColumn, Place, ReadAs, Scale, Seen, Share, StateIx, Value,
};

use super::{Column, slips, too_many};
use crate::table::answers::{is_no, is_yes};
use crate::table::cell_text::{OutOf, Part, What};
use crate::table::phrase::fold;
use crate::table::{caps, of_character, report::Report};

/// How alike two words are, from 0 to 1, before one may be a slip of the other. By the
/// Jaro–Winkler measure (Winkler 1990) `tooted` and `toothed` have 0.96, `rough` and `round`
/// 0.81, `simple` and `single` 0.82.
const ALIKE: f64 = 0.93;

/// The shortest word that is compared; `red` and `rod` are words of their own.
const SHORTEST_COMPARED: usize = 5;

/// Reads the states and the cells; None if it is a column of notes.
pub(super) fn read(column: &Column<'_>, report: &mut Report) -> Option<(Scale, Vec<Cell>)> {
    let mut states = States::declared(column, report);
    let mut cells = Vec::with_capacity(column.typed.len());
    for (at, typed) in column.typed.iter().enumerate() {
        let mut odd = |trouble| {
            column.odd(at, trouble, report);
            Value::Unknown
        };
        let value = match &typed.what {
            What::Words(parts) if states.yes_no && !parts.iter().all(says_yes_or_no) => {
                odd(CellTrouble::NeitherYesNorNo)
            }
            What::OutOf(seen) => match states.yes_no.then(|| both(seen)).flatten() {
                Some(parts) => Value::States(states.shares(column, at, &parts, report)),
                None => odd(CellTrouble::OutOf),
            },
            What::Words(parts) => Value::States(states.shares(column, at, parts, report)),
            What::Numbers(_) => odd(CellTrouble::ANumber),
            _ => column.fixed(at).expect("what is no word and no number is fixed"),
        };
        if states.declared == 0 && !states.yes_no && says_yes(&typed.what) {
            column.doubtful(at, ReadAs::State, report);
        }
        if states.declared == 0 && matches!(typed.what, What::Words(_)) {
            odd_word(column, at, report);
        }
        if too_many(states.names.len()) {
            notes(column, report);
            return None;
        }
        let seen = match &typed.what {
            What::OutOf(out_of) if value != Value::Unknown => Some(Seen::on(out_of.whole)),
            _ => typed.seen,
        };
        cells.push(Cell { value, seen });
    }
    alike(column, &states, report);
    Some((Scale::Words { states: states.names }, cells))
}

/// Tells a word that can hardly be something to see.
fn odd_word(column: &Column<'_>, at: usize, report: &mut Report) {
    let text = column.text(at);
    if slips::nobody_looked(text) {
        column.doubtful(at, ReadAs::SomethingToSee, report);
    } else if slips::is_wingdings(text) {
        column.doubtful(at, ReadAs::Word, report);
    }
}

/// Whether all that stands in a column is yes, a tick or a cross, so that a blank may mean no.
pub(super) fn a_blank_may_mean_no(column: &Column<'_>) -> bool {
    let texts = (0..column.typed.len()).map(|at| column.text(at));
    let mut filled = texts.filter(|text| !text.is_empty()).peekable();
    filled.peek().is_some() && filled.all(|text| is_yes(text) || slips::is_mark(text))
}

struct States {
    names: Vec<String>,
    places: BTreeMap<String, usize>,
    declared: usize,
    yes_no: bool,
}

impl States {
    fn declared(column: &Column<'_>, report: &mut Report) -> Self {
        let none = Self {
            names: Vec::new(),
            places: BTreeMap::new(),
            declared: 0,
            yes_no: yes_and_no(column),
        };
        let Some(described) = column.heading.described.filter(|row| !row.states.is_empty())
        else {
            return if none.yes_no {
                none.with(["yes".to_owned(), "no".to_owned()])
            } else {
                none
            };
        };
        let in_english = |word: &String| match none.yes_no {
            true if is_yes(word) => "yes".to_owned(),
            true => "no".to_owned(),
            false => word.clone(),
        };
        let declared: Vec<String> =
            described.states.iter().take(caps::MOST_STATES).map(in_english).collect();
        let mut states = none.with(declared);
        states.declared = states.names.len();
        if states.declared < described.states.len() {
            let (about, most) = (described.name.clone(), caps::MOST_STATES);
            let place = Place::Cell(described.place.clone());
            report.one(place, OfColumn::StatesNotOnce { about, most });
        }
        states
    }

    fn with(mut self, names: impl IntoIterator<Item = String>) -> Self {
        for name in names {
            self.place(&name);
        }
        self
    }

    /// Where a state is; a new one comes last.
    fn place(&mut self, name: &str) -> usize {
        let mut folded = fold(name);
        if self.yes_no {
            folded = match folded.as_str() {
                text if is_yes(text) => "yes".to_owned(),
                text if is_no(text) => "no".to_owned(),
                _ => folded,
            };
        }
        if let Some(place) = self.places.get(&folded) {
            return *place;
        }
        self.places.insert(folded, self.names.len());
        self.names.push(name.to_owned());
        self.names.len() - 1
    }

    fn shares(
        &mut self,
        column: &Column<'_>,
        at: usize,
        parts: &[Part<String>],
        report: &mut Report,
    ) -> Vec<(StateIx, Share)> {
        let mut shares = BTreeMap::<StateIx, Option<Share>>::new();
        for part in parts {
            let known = self.names.len();
            let place = self.place(&part.item);
            if place == known && self.declared > 0 {
                undeclared(column, at, &part.item, report);
            }
            let share = shares.entry(StateIx(place)).or_default();
            *share = match (*share, part.share) {
                (Some(one), Some(other)) => Some(one + other),
                (one, other) => one.or(other),
            };
        }
        let count = i128::try_from(shares.len()).expect("a cell holds few states");
        let equal = Share::new(1, count);
        shares.into_iter().map(|(state, share)| (state, share.unwrap_or(equal))).collect()
    }
}

/// Whether the column asks for yes or no: its declared states do, or else some cell says yes
/// and at least as many cells say yes or no as say anything else.
fn yes_and_no(column: &Column<'_>) -> bool {
    if let Some(described) = column.heading.described.filter(|row| !row.states.is_empty()) {
        // A single letter may be the name of a state.
        let full = |word: &String| word.chars().count() > 1 && (is_yes(word) || is_no(word));
        return described.states.iter().all(full);
    }
    let (mut yes_or_no, mut others, mut some_yes) = (0_usize, 0_usize, false);
    for typed in &column.typed {
        let answers = match &typed.what {
            What::Words(parts) => {
                some_yes |= says_yes(&typed.what);
                parts.iter().all(says_yes_or_no)
            }
            What::OutOf(OutOf { word: Some(word), .. }) => {
                some_yes |= is_yes(word);
                is_yes(word) || is_no(word)
            }
            _ => continue,
        };
        *(if answers { &mut yes_or_no } else { &mut others }) += 1;
    }
    // Where only no is said it may be one of several words: no, few, many.
    yes_or_no > 0 && yes_or_no >= others && (some_yes || others == 0)
}

fn says_yes(what: &What) -> bool {
    matches!(what, What::Words(parts) if parts.iter().any(|part| is_yes(&part.item)))
}

fn says_yes_or_no(part: &Part<String>) -> bool {
    is_yes(&part.item) || is_no(&part.item)
}

/// `yes 3 of 10`: 3 yes and 7 no; the same without the yes. None: of something else.
fn both(seen: &OutOf) -> Option<Vec<Part<String>>> {
    let no = seen.word.as_deref().is_some_and(is_no);
    if !no && !seen.word.as_deref().is_none_or(is_yes) {
        return None;
    }
    let names = if no { ["no", "yes"] } else { ["yes", "no"] };
    let counts = [seen.part, seen.whole - seen.part];
    let parts = names.into_iter().zip(counts).filter(|(_, count)| *count > 0);
    let part = |(name, count): (&str, u32)| Part {
        item: name.to_owned(),
        share: Some(Share::new(count.into(), seen.whole.into())),
    };
    Some(parts.map(part).collect())
}

fn undeclared(column: &Column<'_>, at: usize, word: &str, report: &mut Report) {
    let place = column.place(at);
    let undeclared = OfCell::Undeclared {
        state: word.to_owned(),
        about: column.heading.name.clone(),
        at: place.clone().into(),
    };
    report.add(&format!("state {}", column.heading.name), Place::Cell(place), undeclared);
}

fn notes(column: &Column<'_>, report: &mut Report) {
    let about = column.heading.name.clone();
    report.one(of_character(&about), OfColumn::Notes { about, most: caps::MOST_STATES });
}

/// Words that look like one word spelt twice, told at the cell of the one that is probably the
/// slip: the one that fewer cells have, unless it is declared; of equally many the later.
fn alike(column: &Column<'_>, states: &States, report: &mut Report) {
    let names = &states.names;
    let folded: Vec<String> = names.iter().map(|name| fold(name)).collect();
    let often = |folded: &str| cells_with(column, folded).count();
    for (at, one) in folded.iter().enumerate() {
        for (other, name) in folded[at + 1..].iter().zip(&names[at + 1..]) {
            if !alike_words(one, other) {
                continue;
            }
            let first_slipped = at >= states.declared && often(one) < often(other);
            let (slip, first, name) = match first_slipped {
                true => (one, name, &names[at]),
                false => (other, &names[at], name),
            };
            let place = cells_with(column, slip).next().map(|at| column.place(at));
            let about = &column.heading.name;
            let alike = OfCell::Alike {
                states: [first.clone(), name.clone()],
                about: about.clone(),
                at: place.clone().map(Into::into),
            };
            let place = place.map_or_else(|| of_character(about), Place::Cell);
            report.add(&format!("alike {about}"), place, alike);
        }
    }
}

/// Whether one word may be a slip of the other.
fn alike_words(one: &str, other: &str) -> bool {
    let long = one.chars().count().min(other.chars().count()) >= SHORTEST_COMPARED;
    // `1 pair` and `2 pairs` differ in what counts.
    let digits = |text: &str| text.chars().filter(char::is_ascii_digit).collect::<String>();
    long && digits(one) == digits(other)
        && strsim::damerau_levenshtein(one, other) <= 2
        && strsim::jaro_winkler(one, other) >= ALIKE
}

/// The cells in which a word stands.
fn cells_with<'c>(column: &'c Column<'_>, folded: &'c str) -> impl Iterator<Item = usize> + 'c {
    let has = move |what: &What| match what {
        What::Words(parts) => parts.iter().any(|part| fold(&part.item) == folded),
        _ => false,
    };
    let cells = column.typed.iter().enumerate();
    cells.filter(move |(_, typed)| has(&typed.what)).map(|(at, _)| at)
}
