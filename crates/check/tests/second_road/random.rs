//! Random tables and keys for the second road: cells vary, are unknown, are governed.

use std::collections::BTreeSet;

use fastrand::Rng;
use spinney_model::*;

fn random_words(rng: &mut Rng, states: usize) -> Value {
    let chosen: Vec<usize> = (0..states).filter(|_| rng.usize(..5) == 0).collect();
    let chosen = if chosen.is_empty() { vec![rng.usize(..states)] } else { chosen };
    let weights: Vec<i128> = chosen.iter().map(|_| rng.i128(1..4)).collect();
    let all: i128 = weights.iter().sum();
    let shares = chosen.into_iter().zip(weights);
    Value::States(shares.map(|(s, w)| (StateIx(s), Share::new(w, all))).collect())
}

fn random_cell(rng: &mut Rng, scale: &Scale) -> Value {
    if rng.usize(..10) == 0 {
        return Value::Unknown;
    }
    match scale {
        Scale::Words { states } => random_words(rng, states.len()),
        Scale::Counts => {
            let (one, more) = (rng.u32(1..6), rng.u32(1..3));
            let half = Share::new(1, 2);
            if rng.bool() {
                Value::Counts(vec![(one, Share::from_integer(1))])
            } else {
                Value::Counts(vec![(one, half), (one + more, half)])
            }
        }
        Scale::Measure { gap, .. } => {
            let low = rng.i64(0..40);
            let high = low + rng.i64(0..12);
            Value::Range { low: measured(*gap, low), high: measured(*gap, high) }
        }
    }
}

/// Where there is no gap, thousandths: neighbours one thousandth apart have their middle
/// between two numbers.
fn measured(gap: Quantity, number: i64) -> Quantity {
    if gap == Quantity::ZERO {
        Quantity::from_thousandths(number)
    } else {
        Quantity::from_whole(number)
    }
}

pub(crate) fn random_matrix(rng: &mut Rng, governed: bool) -> Matrix {
    let mut characters: Vec<Character> = Vec::new();
    for c in 0..rng.usize(2..6) {
        let scale = match if c == 0 { 0 } else { rng.usize(..4) } {
            0 | 1 => {
                Scale::Words { states: (0..rng.usize(2..5)).map(|s| format!("s{s}")).collect() }
            }
            2 => Scale::Counts,
            _ => Scale::Measure {
                unit: Unit::Millimetres,
                gap: Quantity::from_whole(2 * rng.i64(0..2)),
            },
        };
        let mut character = Character::named(format!("c{c}"), scale);
        character.difficulty =
            [Difficulty::Easy, Difficulty::Fair, Difficulty::Hard][rng.usize(..3)];
        let words = matches!(character.scale, Scale::Words { .. });
        character.ordered = words && rng.usize(..3) == 0;
        if governed && c > 0 && rng.bool() {
            let words: Vec<usize> = (0..c)
                .filter(|c| matches!(characters[*c].scale, Scale::Words { .. }))
                .collect();
            let governing = words[rng.usize(..words.len())];
            let Scale::Words { states } = &characters[governing].scale else { unreachable!() };
            let wrong = rng.usize(..states.len());
            let states =
                (0..states.len()).filter(|state| *state != wrong).map(StateIx).collect();
            character.governor = Some(Governor { character: CharacterIx(governing), states });
        }
        characters.push(character);
    }
    let taxa: Vec<Taxon> = (0..rng.usize(2..8))
        .map(|t| {
            let mut taxon = Taxon::named(format!("kind {t}"));
            taxon.weight = Share::from_integer(rng.i128(1..4));
            taxon
        })
        .collect();
    let rows = taxa
        .iter()
        .map(|_| {
            let mut row: Vec<Cell> =
                characters.iter().map(|c| random_cell(rng, &c.scale).into()).collect();
            if governed && rng.usize(..4) == 0 {
                row[rng.usize(..characters.len())].value = Value::DoesNotApply;
            }
            row
        })
        .collect();
    Matrix::new(Scene::default(), taxa, characters, rows).unwrap()
}

fn random_ask(rng: &mut Rng, matrix: &Matrix) -> Ask {
    let c = rng.usize(..matrix.characters().len());
    let yes = match &matrix.characters()[c].scale {
        Scale::Words { states } => {
            let mut yes: BTreeSet<StateIx> =
                (0..states.len()).filter(|_| rng.bool()).map(StateIx).collect();
            if yes.is_empty() || yes.len() == states.len() {
                yes = [StateIx(rng.usize(..states.len()))].into();
            }
            Asked::States(yes)
        }
        Scale::Counts => Asked::AtLeast(Quantity::from_whole(rng.i64(1..8))),
        Scale::Measure { gap, .. } => Asked::AtLeast(measured(*gap, rng.i64(1..50))),
    };
    let yes = match yes {
        Asked::AtLeast(at) if rng.bool() => Asked::Below(at),
        yes => yes,
    };
    Ask { character: CharacterIx(c), yes }
}

pub(crate) fn couplet(number: u32, ask: Ask, yes: Destination, no: Destination) -> Couplet {
    let wording = Wording::Question(String::new());
    Couplet { number, back: None, wording, ask: Some(ask), yes, no, kept: false, line: None }
}

/// A key of random questions to random ends; a tree, or one whose ways meet.
pub(crate) fn random_key(rng: &mut Rng, matrix: &Matrix, meet: bool) -> Key {
    let size = rng.u32(1..8);
    let mut couplets = Vec::new();
    let mut unused: Vec<u32> = (2..=size).rev().collect();
    for number in 1..=size {
        let ask = random_ask(rng, matrix);
        let mut on = |rng: &mut Rng| {
            if meet && number < size && rng.bool() {
                return Destination::Couplet(rng.u32(number + 1..=size));
            }
            match unused.last() {
                Some(&next) if !meet && next > number && rng.usize(..3) > 0 => {
                    unused.pop();
                    Destination::Couplet(next)
                }
                _ => Destination::End(End::of(
                    (0..matrix.taxa().len()).filter(|_| rng.bool()).map(TaxonIx),
                )),
            }
        };
        let (yes, no) = (on(rng), on(rng));
        couplets.push(couplet(number, ask, fill(yes), fill(no)));
    }
    Key { couplets }
}

fn fill(destination: Destination) -> Destination {
    match destination {
        Destination::End(end) if end.taxa.is_empty() => Destination::End(End::of([TaxonIx(0)])),
        other => other,
    }
}
