//! One column: from what was typed in its cells to a character with its scale and values.
//!
//! Words, else counts, else a measure; what the sheet `characters` says comes first. Cells
//! that do not fit their column are told and read as unknown.

use std::mem::discriminant;

use spinney_model::{
    Cell, CellAt, CellTrouble, CellTyped, Character, OfCell, OfColumn, Place, Quantity, ReadAs,
    Scale, SheetError, Unit, Value, WrittenIn,
};

use super::cell_text::{Part, Typed, What, understand};
use super::characters_sheet::Values;
use super::heading::Heading;
use super::number::{Amount, quantity};
use super::phrase::fold;
use super::{caps, grid::Grid, ratios, report::Report};

mod numbers;
mod remarks;
mod slips;
mod words;

/// Where the kinds stand.
pub(super) struct Kinds<'g> {
    pub(super) grid: &'g Grid,
    /// The row and the name of each kind.
    pub(super) rows: Vec<(u32, String)>,
    /// Whether a dash says that there is no such thing, as where we measured.
    pub(super) dash_is_none: bool,
}

/// A column with what was typed.
pub(super) struct Column<'c> {
    pub(super) heading: &'c Heading<'c>,
    pub(super) kinds: &'c Kinds<'c>,
    pub(super) typed: Vec<Typed>,
}

/// Reads a column; None if it is left out, which is told.
pub(super) fn read(
    heading: &Heading<'_>,
    kinds: &Kinds<'_>,
    usual_gap: Quantity,
    report: &mut Report,
) -> Option<(Character, Vec<Cell>)> {
    if remarks::are(heading, kinds) {
        remarks::tell(heading, report);
        return None;
    }
    let mut column = Column::of(heading, kinds, report);
    column.take_number_words(report);
    let (scale, cells) = match column.values() {
        Values::Words => {
            column.take_numbered_names(report);
            words::read(&column, report)?
        }
        Values::Counts if numbers::too_many(&column) => {
            numbers::told_too_many(&column, report);
            numbers::measure(&column, usual_gap, report)
        }
        Values::Counts => (Scale::Counts, numbers::counts(&column, report)),
        Values::Measure => numbers::measure(&column, usual_gap, report),
    };
    Some((character(&column, scale, report), cells))
}

fn character(column: &Column<'_>, scale: Scale, report: &mut Report) -> Character {
    let heading = column.heading;
    let mut character = Character::named(heading.name.clone(), scale);
    if matches!(character.scale, Scale::Measure { unit: Unit::Millimetres, .. }) {
        character.written_in =
            unit_of(column).filter(|written| *written != WrittenIn::Millimetres);
    }
    let by_touch = heading.described.and_then(|described| described.by_touch);
    if by_touch.is_none() && heading.is_touch() {
        let touch = OfColumn::Touch { about: heading.name.clone() };
        report.one(super::of_character(&heading.name), touch);
    }
    character.by_touch = by_touch.unwrap_or(heading.is_touch());
    if let Some(described) = heading.described {
        character.question.clone_from(&described.question);
        character.second_question.clone_from(&described.second_question);
        character.second_states.clone_from(&described.second_states);
        character.seen_on.clone_from(&described.seen_on);
        character.difficulty = described.difficulty;
        character.read_right = described.read_right.usual;
        character.read_right_of =
            described.read_right.of_kinds(&heading.name, &column.kinds.rows, report);
        character.seasons.clone_from(&described.seasons);
        character.instrument = described.instrument.unwrap_or(character.instrument);
        character.terms.clone_from(&described.terms);
        character.ordered = described.in_order && in_order(heading, &character.scale, report);
    }
    character
}

/// Whether states can stand in an order; where nobody listed them, in which is told.
fn in_order(heading: &Heading<'_>, scale: &Scale, report: &mut Report) -> bool {
    let Scale::Words { states } = scale else { return false };
    if heading.described.is_some_and(|row| row.states.is_empty()) && states.len() > 2 {
        let (about, states) = (heading.name.clone(), states.clone());
        report.one(super::of_character(&heading.name), OfColumn::InOrder { about, states });
    }
    true
}

impl<'c> Column<'c> {
    fn of(heading: &'c Heading<'c>, kinds: &'c Kinds<'c>, report: &mut Report) -> Self {
        let folded = fold(&heading.name);
        let declared: Vec<String> = heading
            .described
            .map(|described| described.states.iter().map(|state| fold(state)).collect())
            .unwrap_or_default();
        let mut column = Self { heading, kinds, typed: Vec::with_capacity(kinds.rows.len()) };
        let mut known = std::collections::BTreeMap::new();
        for at in 0..kinds.rows.len() {
            let text = column.text(at);
            // Few texts stand in many cells, so each is understood once.
            if let Some(error) = slips::error_of_a_spreadsheet(text) {
                column.error(at, error, report);
                column.typed.push(Typed::unknown());
                continue;
            }
            let typed = known.entry(text).or_insert_with(|| {
                if !declared.is_empty() && declared.contains(&fold(text)) {
                    Ok(Typed::word(text))
                } else {
                    understand(text, &folded)
                }
            });
            let typed = typed.clone();
            let typed = typed.unwrap_or_else(|trouble| {
                column.odd(at, trouble, report);
                Typed::unknown()
            });
            let mut typed = typed;
            if typed.what == What::Dash && kinds.dash_is_none {
                typed.what = What::NotApplicable;
            }
            if typed.what == What::Dash {
                column.doubtful(at, ReadAs::Unknown, report);
            }
            let listed = typed.listed;
            column.typed.push(typed);
            if listed {
                column.listed(at, report);
            }
        }
        column
    }

    /// What stands in the cell of a kind.
    pub(super) fn text(&self, at: usize) -> &'c str {
        self.kinds.grid.get(self.kinds.rows[at].0, self.heading.column)
    }

    /// The cell of a kind.
    pub(super) fn place(&self, at: usize) -> CellAt {
        self.kinds.grid.at(self.kinds.rows[at].0, self.heading.column)
    }

    /// What was typed into the cell of a kind, for a finding.
    fn cell(&self, at: usize) -> CellTyped {
        CellTyped {
            text: self.text(at).to_owned(),
            kind: self.kinds.rows[at].1.clone(),
            about: self.heading.name.clone(),
            at: self.place(at).into(),
        }
    }

    /// Tells a cell that could not be understood.
    pub(super) fn odd(&self, at: usize, trouble: CellTrouble, report: &mut Report) {
        let trouble = slips::better(self.text(at)).unwrap_or(trouble);
        let group = format!("{:?} {}", discriminant(&trouble), self.heading.name);
        let odd = OfCell::Odd { cell: self.cell(at), trouble };
        report.add(&group, Place::Cell(self.place(at)), odd);
    }

    /// Tells a cell that was read, though perhaps not as it was meant.
    pub(super) fn doubtful(&self, at: usize, read: ReadAs, report: &mut Report) {
        let group = format!("{:?} {}", discriminant(&read), self.heading.name);
        let doubtful = OfCell::ReadAs { cell: self.cell(at), read };
        report.add(&group, Place::Cell(self.place(at)), doubtful);
    }

    fn listed(&self, at: usize, report: &mut Report) {
        let words = match &self.typed[at].what {
            What::Words(parts) => parts.iter().map(|part| part.item.clone()).collect(),
            _ => Vec::new(),
        };
        self.doubtful(at, ReadAs::Each { words }, report);
    }

    /// `#REF!`: what a spreadsheet shows is not what anybody saw.
    fn error(&self, at: usize, error: SheetError, report: &mut Report) {
        let shown = OfCell::Error { cell: self.cell(at), error };
        let group = format!("error {}", self.heading.name);
        report.add(&group, Place::Cell(self.place(at)), shown);
    }

    /// What the column holds: as the second sheet says, else what most of its cells are.
    fn values(&self) -> Values {
        if let Some(described) = self.heading.described {
            if let Some(values) = described.values {
                return values;
            }
            if !described.states.is_empty() {
                return Values::Words;
            }
        }
        if self.heading.unit.is_some() {
            return Values::Measure;
        }
        let is = |wanted: fn(&What) -> bool| {
            self.typed.iter().filter(|typed| wanted(&typed.what)).count()
        };
        let words = is(|what| matches!(what, What::Words(_)));
        let numbers = is(|what| matches!(what, What::Numbers(_)));
        match (words, numbers) {
            (0, 0) if self.heading.is_length() => Values::Measure,
            (0, 0) => Values::Words,
            (words, numbers) if words >= numbers => Values::Words,
            _ if numbers::are_counts(self) => Values::Counts,
            _ => Values::Measure,
        }
    }

    /// `group 1`, `group 2`: names that end in a number, not words that were counted.
    fn take_numbered_names(&mut self, report: &mut Report) {
        let mut seen = std::collections::BTreeMap::<String, u32>::new();
        let mut alike = false;
        for typed in &self.typed {
            let (What::Words(parts), Some(count)) =
                (&typed.what, typed.seen.map(|seen| seen.on))
            else {
                continue;
            };
            let [part] = parts.as_slice() else { return };
            alike |= *seen.entry(fold(&part.item)).or_insert(count) != count;
        }
        if !alike || self.heading.described.is_some_and(|row| !row.states.is_empty()) {
            return;
        }
        for at in 0..self.typed.len() {
            let ends_in_digit = self.text(at).ends_with(|sign: char| sign.is_ascii_digit());
            if self.typed[at].seen.is_some() && ends_in_digit {
                self.typed[at] = Typed::word(self.text(at));
            }
        }
        let numbered = OfColumn::NumberedNames { about: self.heading.name.clone() };
        report.one(super::of_character(&self.heading.name), numbered);
    }

    /// `five` in a column of counts is 5.
    fn take_number_words(&mut self, report: &mut Report) {
        let described = self.heading.described;
        let declared = described.and_then(|row| row.values);
        let words_wanted = described.is_some_and(|row| !row.states.is_empty());
        let counts = declared == Some(Values::Counts);
        let other = declared.is_some() || self.heading.unit.is_some();
        if words_wanted || !counts && (other || self.heading.is_length()) {
            return;
        }
        let written: Vec<_> =
            self.typed.iter().map(|typed| number_words(&typed.what)).collect();
        let is = |wanted: fn(&What) -> bool| {
            self.typed.iter().filter(|typed| wanted(&typed.what)).count()
        };
        let (words, digits) = (
            is(|what| matches!(what, What::Words(_))),
            is(|what| matches!(what, What::Numbers(_))),
        );
        let spelt = written.iter().flatten().count();
        // `one` and `many` are words; beside digits, or alone, `one` is a number.
        let wordy = if digits == 0 { words > spelt } else { words - spelt >= digits + spelt };
        if spelt == 0 || !counts && wordy {
            return;
        }
        let first = written.iter().position(Option::is_some).expect("at least one is spelt");
        for (typed, numbers) in self.typed.iter_mut().zip(written) {
            if let Some(numbers) = numbers {
                typed.what = What::Numbers(numbers);
            }
        }
        if digits == 0 && !counts {
            let words = OfColumn::NumberWords {
                about: self.heading.name.clone(),
                text: self.text(first).to_owned(),
                at: self.place(first).into(),
            };
            report.one(super::of_character(&self.heading.name), words);
        }
    }

    /// Every amount in the column.
    pub(super) fn amounts(&self) -> impl Iterator<Item = (usize, &Amount)> {
        self.typed.iter().enumerate().flat_map(|(at, typed)| {
            let parts = match &typed.what {
                What::Numbers(parts) => parts.as_slice(),
                _ => &[],
            };
            parts.iter().map(move |part| (at, &part.item))
        })
    }

    /// The cells that mean the same in every column.
    pub(super) fn fixed(&self, at: usize) -> Option<Value> {
        match self.typed[at].what {
            What::Empty | What::Question | What::Dash => Some(Value::Unknown),
            What::NotApplicable => Some(Value::DoesNotApply),
            What::Words(_) | What::Numbers(_) | What::OutOf(_) => None,
        }
    }
}

/// The numbers of a cell in which every part is a number in words.
fn number_words(what: &What) -> Option<Vec<Part<Amount>>> {
    let What::Words(parts) = what else { return None };
    let number = |part: &Part<String>| {
        Some(Part { item: Amount::in_words(&part.item)?, share: part.share })
    };
    parts.iter().map(number).collect()
}

/// The safety gap of a measure in its unit. Without a unit nobody can tell what the usual one
/// would be: of a hundred metres, 5 mm is nothing.
fn gap(heading: &Heading<'_>, unit: Unit, usual: Quantity, report: &mut Report) -> Quantity {
    let usual = match unit {
        Unit::Unstated => Quantity::ZERO,
        Unit::Ratio => ratios::USUAL_GAP,
        _ => usual,
    };
    let Some(described) = heading.described else { return usual };
    let Some(wanted) = &described.gap else { return usual };
    let typed = wanted.unit.or(described.unit).filter(|typed| typed.row().kept_as == unit);
    if wanted.unit.is_some() && typed.is_none() {
        let other = OfColumn::MarginOtherUnit { about: heading.name.clone() };
        report.one(Place::Cell(described.place.clone()), other);
        return usual;
    }
    quantity(wanted.low, typed)
}

/// Whether a blank in this column may mean no: all else in it is yes, a tick or a cross.
pub(super) fn a_blank_may_mean_no(
    heading: &Heading<'_>,
    kinds: &Kinds<'_>,
    blanks: &[usize],
) -> bool {
    let typed = vec![Typed::unknown(); kinds.rows.len()];
    let column = Column { heading, kinds, typed };
    blanks.iter().all(|at| column.text(*at).is_empty()) && words::a_blank_may_mean_no(&column)
}

/// Makes sure that states stay within what a character may have.
fn too_many(count: usize) -> bool {
    count > caps::MOST_STATES
}

/// The unit in which numbers without one are read: the sheet's, the heading's, or the one
/// that was typed most often.
fn unit_of(column: &Column<'_>) -> Option<WrittenIn> {
    let declared = column.heading.described.and_then(|described| described.unit);
    declared.or(column.heading.unit).or_else(|| {
        let mut counts = std::collections::BTreeMap::<WrittenIn, usize>::new();
        for unit in column.amounts().filter_map(|(_, amount)| amount.unit) {
            *counts.entry(unit).or_default() += 1;
        }
        // Of equally many the finer one, which stands first.
        counts.into_iter().rev().max_by_key(|(_, count)| *count).map(|(unit, _)| unit)
    })
}
