//! The second road: kinds expanded into forms and walked one by one; random tables and keys.
//!
//! Section 9 of `docs/KEY.md`. A form is one value in each character that applies. The forms
//! here are rows of plain values; nothing is shared with the crate but the model.

#![allow(dead_code, reason = "each test file uses a part")]
#![allow(clippy::unwrap_used, reason = "a test may stop at what is not so")]

use std::collections::{BTreeMap, BTreeSet};

use fastrand::Rng;
use spinney_model::*;

mod random;

use random::couplet;
pub(crate) use random::{random_key, random_matrix};

/// One form of a kind: its value in every character (None: not there), and its share.
#[derive(Clone, Debug)]
pub(crate) struct Form {
    pub(crate) taxon: usize,
    values: Vec<Option<Shown>>,
    share: Share,
}

/// One value.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(crate) enum Shown {
    State(usize),
    Number(i64),
    /// A range that is never cut.
    Range(i64, i64),
}

impl Shown {
    /// Whether a question is answered yes; None where it lies on both sides.
    fn says(self, asked: &Asked) -> Option<bool> {
        match (self, asked) {
            (Self::State(state), Asked::States(yes)) => Some(yes.contains(&StateIx(state))),
            (Self::Number(n), Asked::AtLeast(at)) => Some(n >= at.thousandths()),
            (Self::Number(n), Asked::Below(at)) => Some(n < at.thousandths()),
            (Self::Range(low, high), Asked::AtLeast(at) | Asked::Below(at)) => {
                let at = at.thousandths();
                let upper = if low >= at {
                    true
                } else if high < at {
                    false
                } else {
                    return None;
                };
                Some(upper == matches!(asked, Asked::AtLeast(_)))
            }
            _ => panic!("a question of another scale"),
        }
    }
}

/// Whether a kind can have a character in any form.
fn can_have(matrix: &Matrix, taxon: usize, character: usize) -> bool {
    let cell = |c: usize| &matrix.cell(TaxonIx(taxon), CharacterIx(c)).value;
    if *cell(character) == Value::DoesNotApply {
        return false;
    }
    let Some(governor) = &matrix.characters()[character].governor else { return true };
    let governing = governor.character.0;
    can_have(matrix, taxon, governing)
        && match cell(governing) {
            Value::States(shares) => shares.iter().any(|(s, _)| governor.states.contains(s)),
            Value::Unknown => true,
            _ => false,
        }
}

/// Thresholds in the middle between any two ranges of a column that are far enough apart.
fn midpoints(matrix: &Matrix, character: usize) -> BTreeSet<i64> {
    let Scale::Measure { gap, .. } = matrix.characters()[character].scale else {
        return BTreeSet::new();
    };
    let ranges: Vec<(i64, i64)> = (0..matrix.taxa().len())
        .filter(|taxon| can_have(matrix, *taxon, character))
        .filter_map(|taxon| match matrix.cell(TaxonIx(taxon), CharacterIx(character)).value {
            Value::Range { low, high } => Some((low.thousandths(), high.thousandths())),
            _ => None,
        })
        .collect();
    let mut found = BTreeSet::new();
    for (_, high) in &ranges {
        for (low, _) in &ranges {
            if low > high && low - high >= 2 * gap.thousandths() {
                found.insert((high + low + 1).div_euclid(2));
            }
        }
    }
    found
}

/// Every value of a cell with its share. `cuts` are thresholds asked for in the key.
fn shown(matrix: &Matrix, taxon: usize, c: usize, cuts: &BTreeSet<i64>) -> Vec<(Shown, Share)> {
    let character = &matrix.characters()[c];
    let equal = |values: Vec<Shown>| {
        let part = Share::new(1, values.len() as i128);
        values.into_iter().map(|value| (value, part)).collect::<Vec<_>>()
    };
    let between = |cuts: &BTreeSet<i64>| {
        std::iter::once(i64::MIN).chain(cuts.iter().copied()).map(Shown::Number).collect()
    };
    match (&matrix.cell(TaxonIx(taxon), CharacterIx(c)).value, &character.scale) {
        (Value::States(shares), _) => {
            shares.iter().map(|(state, share)| (Shown::State(state.0), *share)).collect()
        }
        (Value::Counts(shares), _) => shares
            .iter()
            .map(|(n, share)| (Shown::Number(i64::from(*n) * 1000), *share))
            .collect(),
        (Value::Range { low, high }, _) => {
            let one = Share::from_integer(1);
            vec![(Shown::Range(low.thousandths(), high.thousandths()), one)]
        }
        (Value::Unknown, Scale::Words { states }) => {
            equal((0..states.len()).map(Shown::State).collect())
        }
        (Value::Unknown, Scale::Counts) => {
            let wholes: BTreeSet<i64> = (0..matrix.taxa().len())
                .filter(|other| can_have(matrix, *other, c))
                .flat_map(|other| match &matrix.cell(TaxonIx(other), CharacterIx(c)).value {
                    Value::Counts(shares) => {
                        shares.iter().map(|(n, _)| i64::from(*n) * 1000).collect()
                    }
                    _ => Vec::new(),
                })
                .collect();
            if wholes.is_empty() {
                equal(between(cuts))
            } else {
                equal(wholes.into_iter().map(Shown::Number).collect())
            }
        }
        (Value::Unknown, Scale::Measure { .. }) => {
            equal(between(&midpoints(matrix, c).union(cuts).copied().collect()))
        }
        (Value::DoesNotApply, _) => Vec::new(),
    }
}

/// All forms of all kinds.
pub(crate) fn forms(matrix: &Matrix, key: &Key) -> Vec<Form> {
    let mut cuts = vec![BTreeSet::new(); matrix.characters().len()];
    for ask in key.couplets.iter().filter_map(|couplet| couplet.ask.as_ref()) {
        if let Asked::AtLeast(at) | Asked::Below(at) = ask.yes {
            cuts[ask.character.0].insert(at.thousandths());
        }
    }
    let mut all = Vec::new();
    for taxon in 0..matrix.taxa().len() {
        let share = matrix.taxa()[taxon].weight;
        let mut growing = vec![Form { taxon, values: Vec::new(), share }];
        // Governors stand before what they govern in these tables.
        for (c, character) in matrix.characters().iter().enumerate() {
            let mut grown = Vec::new();
            for form in growing {
                let there = can_have(matrix, taxon, c)
                    && character.governor.as_ref().is_none_or(|governor| {
                        matches!(form.values[governor.character.0],
                            Some(Shown::State(s)) if governor.states.contains(&StateIx(s)))
                    });
                let values = if there {
                    shown(matrix, taxon, c, &cuts[c])
                        .into_iter()
                        .map(|(value, share)| (Some(value), share))
                        .collect()
                } else {
                    vec![(None, Share::from_integer(1))]
                };
                for (value, share) in values {
                    let mut next = form.clone();
                    next.values.push(value);
                    next.share *= share;
                    grown.push(next);
                }
            }
            growing = grown;
        }
        all.extend(growing);
    }
    all
}

fn cost(matrix: &Matrix, ask: &Ask) -> Share {
    let character = matrix.character(ask.character);
    let base = match character.difficulty {
        Difficulty::Easy => 1,
        Difficulty::Fair => 2,
        Difficulty::Hard => 3,
    };
    let twice = character.instrument != Instrument::Eyes;
    Share::from_integer(if twice { base + base } else { base })
}

/// One way of one form.
pub(crate) struct Road {
    pub(crate) steps: Vec<Step>,
    pub(crate) end: End,
    pub(crate) cost: Share,
    /// Whether a threshold cut a range on the way.
    pub(crate) cut: bool,
}

/// Every way of one form; a range that a threshold cuts goes both ways, as far as what was
/// said of it before lets it. None: it is asked for what it does not have, or the numbers
/// lead it nowhere or in a circle.
pub(crate) fn roads(matrix: &Matrix, key: &Key, form: &Form) -> Option<Vec<Road>> {
    let mut roads = Vec::new();
    let start = (1_u32, form.clone(), Vec::new(), Share::from_integer(0), false);
    let mut open = vec![start];
    while let Some((number, form, steps, spent, cut)) = open.pop() {
        if steps.len() > key.couplets.len() {
            return None;
        }
        let couplet = key.couplets.iter().find(|couplet| couplet.number == number)?;
        let ask = couplet.ask.as_ref().unwrap();
        let c = ask.character.0;
        let value = form.values[c]?;
        let answers = match (value.says(&ask.yes), value) {
            (Some(yes), _) => vec![(yes, value, cut)],
            (None, Shown::Range(low, high)) => {
                let (Asked::AtLeast(at) | Asked::Below(at)) = ask.yes else { unreachable!() };
                let at = at.thousandths();
                let up = matches!(ask.yes, Asked::AtLeast(_));
                vec![(up, Shown::Range(at, high), true), (!up, Shown::Range(low, at - 1), true)]
            }
            _ => unreachable!("only ranges lie on both sides"),
        };
        for (yes, left, cut) in answers {
            let mut form = form.clone();
            form.values[c] = Some(left);
            let answer = if yes { Answer::Yes } else { Answer::No };
            let mut steps = steps.clone();
            steps.push(Step { couplet: number, answer });
            let spent = spent + cost(matrix, ask);
            match if yes { &couplet.yes } else { &couplet.no } {
                Destination::Couplet(next) => open.push((*next, form, steps, spent, cut)),
                Destination::End(end) => {
                    roads.push(Road { steps, end: end.clone(), cost: spent, cut });
                }
                Destination::Missing => return None,
            }
        }
    }
    Some(roads)
}

/// What the second road says: ways, how they end, and the effort (None: a range was cut).
pub(crate) type Seen =
    (BTreeSet<(usize, Vec<Step>)>, BTreeSet<(usize, Step, bool)>, Option<(Share, Share)>);

pub(crate) fn by_forms(matrix: &Matrix, key: &Key) -> Seen {
    let (mut ways, mut ends) = (BTreeSet::new(), BTreeSet::new());
    let mut effort = Some((Share::from_integer(0), Share::from_integer(0)));
    for form in forms(matrix, key) {
        for road in roads(matrix, key, &form).expect("these keys are whole") {
            let arrived = road.end.taxa.contains(&TaxonIx(form.taxon));
            ends.insert((form.taxon, *road.steps.last().unwrap(), arrived));
            effort = effort.filter(|_| !road.cut).map(|(total, steps)| {
                let long = Share::from_integer(road.steps.len() as i128);
                (total + form.share * road.cost, steps + form.share * long)
            });
            ways.insert((form.taxon, road.steps));
        }
    }
    (ways, ends, effort)
}

/// A key that asks only what section 4 allows, laid out over forms. `stopped` collects the
/// answers after which it ends although a question would part two kinds.
pub(crate) struct Layout<'a> {
    pub(crate) matrix: &'a Matrix,
    pub(crate) couplets: Vec<Couplet>,
    pub(crate) stopped: BTreeSet<u32>,
    pub(crate) next: u32,
}

impl Layout<'_> {
    /// Every question of section 3 that nothing in the heap blocks (section 4).
    fn questions(&self, heap: &[Form]) -> Vec<Ask> {
        let mut asks = Vec::new();
        for (c, character) in self.matrix.characters().iter().enumerate() {
            let values: Option<Vec<Shown>> = heap.iter().map(|form| form.values[c]).collect();
            let Some(values) = values else { continue };
            let character_ix = CharacterIx(c);
            match &character.scale {
                Scale::Words { states } => {
                    for bits in 1..(1_u32 << states.len()) - 1 {
                        let has = |state: usize| bits >> state & 1 == 1;
                        let changes =
                            (1..states.len()).filter(|s| has(*s) != has(*s - 1)).count();
                        if character.ordered && changes != 1 {
                            continue;
                        }
                        let yes = (0..states.len()).filter(|s| has(*s)).map(StateIx);
                        let yes = Asked::States(yes.collect());
                        asks.push(Ask { character: character_ix, yes });
                    }
                }
                Scale::Counts => {
                    for n in 1..10 {
                        let yes = Asked::AtLeast(Quantity::from_whole(n));
                        asks.push(Ask { character: character_ix, yes });
                    }
                }
                Scale::Measure { gap, .. } => {
                    let gap = gap.thousandths();
                    for at in midpoints(self.matrix, c) {
                        let clear = values.iter().all(|value| match value {
                            Shown::Range(low, high) => {
                                (*high < at && at - high >= gap)
                                    || (at <= *low && low - at >= gap)
                            }
                            _ => true,
                        });
                        if clear {
                            let yes = Asked::AtLeast(Quantity::from_thousandths(at));
                            asks.push(Ask { character: character_ix, yes });
                        }
                    }
                }
            }
        }
        asks.retain(|ask| self.parts_a_pair(heap, ask));
        asks
    }

    /// Section 5: one kind wholly on yes, another wholly on no.
    fn parts_a_pair(&self, heap: &[Form], ask: &Ask) -> bool {
        let mut says: BTreeMap<usize, BTreeSet<bool>> = BTreeMap::new();
        for form in heap {
            let answer = form.values[ask.character.0].unwrap().says(&ask.yes).unwrap();
            says.entry(form.taxon).or_default().insert(answer);
        }
        [true, false].iter().all(|side| says.values().any(|said| *said == [*side].into()))
    }

    pub(crate) fn lay(&mut self, rng: &mut Rng, heap: Vec<Form>, from: u32) -> Destination {
        let asks = self.questions(&heap);
        let stop = !asks.is_empty() && from > 0 && rng.usize(..10) == 0;
        if asks.is_empty() || stop {
            if stop {
                self.stopped.insert(from);
            }
            let taxa: BTreeSet<TaxonIx> = heap.iter().map(|form| TaxonIx(form.taxon)).collect();
            return Destination::End(End::of(taxa));
        }
        let ask = asks[rng.usize(..asks.len())].clone();
        let number = self.next;
        self.next += 1;
        let (yes, no): (Vec<Form>, Vec<Form>) = heap
            .into_iter()
            .partition(|form| form.values[ask.character.0].unwrap().says(&ask.yes).unwrap());
        let yes = self.lay(rng, yes, number);
        let no = self.lay(rng, no, number);
        self.couplets.push(couplet(number, ask, yes, no));
        Destination::Couplet(number)
    }
}

pub(crate) fn depth(key: &Key, number: u32) -> u32 {
    let couplet = key.couplets.iter().find(|couplet| couplet.number == number).unwrap();
    let below = [&couplet.yes, &couplet.no].map(|to| match to {
        Destination::Couplet(next) => depth(key, *next),
        _ => 0,
    });
    1 + below[0].max(below[1])
}
