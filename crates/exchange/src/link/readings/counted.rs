//! Readings of counts and measures: thresholds, and whether there is any at all.
//!
//! From the number a sentence asks about to a threshold of one character, or to the doubt that
//! keeps it from being one.

use std::collections::BTreeSet;

use spinney_model::{Ask, Asked, CharacterIx, Quantity, Scale, StateIx, Value};

use super::super::numbers;
use super::super::numbers_asked::Bound;
use super::{Doubt, NAME, Reading, SYNONYM, Sentence};

impl Sentence<'_> {
    /// The threshold a sentence sets for a count or measure.
    pub(super) fn threshold(&mut self, character: CharacterIx) -> Option<Asked> {
        let asks = self.asks?;
        let name = &self.matrix.character(character).name;
        let (number, whole) = match &self.matrix.character(character).scale {
            Scale::Counts => {
                let whole = asks.unit.is_none() && asks.number.thousandths() % 1000 == 0;
                (whole.then_some(asks.number)?, true)
            }
            Scale::Measure { unit, .. } => match asks.unit {
                Some((said, factor)) if said == *unit => {
                    (numbers::scaled(asks.number, factor)?, false)
                }
                None if unit.sign().is_empty() => (asks.number, false),
                None => (asks.number, false),
                Some(_) => return None,
            },
            Scale::Words { .. } => return None,
        };
        let next = Quantity::from_thousandths(number.thousandths().saturating_add(if whole {
            1000
        } else {
            0
        }));
        match asks.bound {
            Bound::Above => Some(Asked::AtLeast(next)),
            Bound::AtLeast => Some(Asked::AtLeast(number)),
            Bound::Under => Some(Asked::Below(number)),
            Bound::AtMost => Some(Asked::Below(next)),
            Bound::Exactly if whole => self.outermost(character, number, next, name),
            Bound::Exactly => {
                self.doubts.insert((character, Doubt::Exactly(name.clone())));
                None
            }
            Bound::Span => {
                self.doubts.insert((character, Doubt::Span(name.clone())));
                None
            }
            Bound::Several => {
                self.doubts.insert((character, Doubt::Several));
                None
            }
        }
    }

    /// Whether a number stands without a unit that the character has.
    pub(super) fn without_unit(&self, character: CharacterIx) -> bool {
        let unit = self.asks.is_some_and(|asks| asks.unit.is_some());
        match &self.matrix.character(character).scale {
            Scale::Measure { unit: own, .. } => !unit && !own.sign().is_empty(),
            Scale::Words { .. } | Scale::Counts => false,
        }
    }

    /// "Has it 3 leaflets?" is a threshold if 3 is the fewest or most that stands in the table.
    fn outermost(
        &mut self,
        character: CharacterIx,
        number: Quantity,
        next: Quantity,
        name: &str,
    ) -> Option<Asked> {
        let counts = self.counts(character);
        let asked = number.thousandths() / 1000;
        if counts.len() > 1 && counts.first() == Some(&asked) {
            return Some(Asked::Below(next));
        }
        if counts.len() > 1 && counts.last() == Some(&asked) {
            return Some(Asked::AtLeast(number));
        }
        self.doubts.insert((character, Doubt::Exactly(name.to_owned())));
        None
    }

    /// "Is it longer than 5 cm?" may mean this, but nothing names the part.
    pub(super) fn bare_number(&mut self, character: CharacterIx, name: i32) -> Option<Reading> {
        let spare = self.doubts.clone();
        let yes = self.threshold(character);
        // What stands in the way of a character nobody named stands in nobody's way.
        self.doubts = spare;
        let points = name + SYNONYM - 2 - self.unexplained(character);
        let fits = self.asks?.unit.is_some();
        yes.filter(|_| fits).map(|yes| Reading {
            ask: Ask { character, yes },
            points: points.min(9),
            understood: false,
        })
    }

    /// "Has it got legs?" is one or more where some kinds have 0, and "has it a tail?" all but
    /// `none`; only where the sentence says nothing else.
    pub(super) fn any_at_all(&self, found: &[Reading]) -> Vec<Reading> {
        let mut readings = Vec::new();
        for character in self.matrix.character_indices() {
            let direct = found.iter().any(|reading| reading.ask.character == character);
            let Some(denied) = self.wholly(character).filter(|_| !direct) else { continue };
            if self.asks.is_some() || self.unexplained(character) > 0 {
                continue;
            }
            let yes = match &self.matrix.character(character).scale {
                Scale::Words { states } => {
                    let is_none = |state: &String| {
                        matches!(state.to_lowercase().as_str(), "none" | "absent" | "no")
                    };
                    let Some(none) = states.iter().position(is_none) else { continue };
                    let any = (0..states.len()).filter(|ix| (*ix == none) == denied);
                    Asked::States(any.map(StateIx).collect())
                }
                Scale::Counts if self.counts(character).first() == Some(&0) => {
                    let one = Quantity::from_whole(1);
                    if denied { Asked::Below(one) } else { Asked::AtLeast(one) }
                }
                Scale::Counts | Scale::Measure { .. } => continue,
            };
            let ask = Ask { character, yes };
            let understood = self.understood(character);
            readings.push(Reading { ask, points: SYNONYM + NAME / 2, understood });
        }
        readings
    }

    /// The whole numbers that stand in a column.
    fn counts(&self, character: CharacterIx) -> BTreeSet<i64> {
        let cells = self.matrix.taxon_indices().map(|taxon| self.matrix.cell(taxon, character));
        let shares = cells.filter_map(|cell| match &cell.value {
            Value::Counts(shares) => Some(shares),
            _ => None,
        });
        shares.flatten().map(|(count, _)| i64::from(*count)).collect()
    }
}
