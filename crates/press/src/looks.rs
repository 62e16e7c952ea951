//! What can be seen of the kinds, look by look: `edge: toothed`, and who has it.
//!
//! From a booklet's table to looks, in the order of its columns. A word is a look; so is a number
//! that was counted; of a measure, what lies on each side of a length that the key asks for. A look
//! that all kinds have, or none, tells nothing and is left out. Nobody is said to lack what nobody
//! has looked for.

use std::collections::{BTreeMap, BTreeSet};

use spinney_model::{Asked, CharacterIx, Matrix, Quantity, Scale, StateIx, TaxonIx, Value};
use spinney_voice::Tongue;

use crate::{Booklet, said};

/// Something to see, and who has it.
#[derive(Clone, Debug, PartialEq)]
pub(crate) struct Look {
    /// `edge: toothed`.
    pub(crate) words: String,
    /// In the order of the table.
    pub(crate) kinds: Vec<Has>,
}

/// Whether a kind has it.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(crate) enum Has {
    /// It has; or some of its leaves do.
    Yes,
    /// Nobody has looked.
    Perhaps,
    /// It has not; or there is no such thing on it.
    No,
}

/// More looks than this are no table to lay out on a desk.
const MOST: usize = 48;
/// More numbers of one column than this are not worth a strip each.
const MOST_COUNTS: usize = 8;

/// The looks of a table.
pub(crate) fn of(booklet: &Booklet) -> Vec<Look> {
    let matrix = booklet.matrix;
    let thresholds = thresholds(booklet);
    let mut looks = Vec::new();
    for at in matrix.character_indices() {
        looks.extend(of_column(booklet.tongue, matrix, at, thresholds.get(&at)));
    }
    looks.retain(|look| {
        let yes = |kind: &Has| *kind == Has::Yes;
        look.kinds.iter().any(yes) && !look.kinds.iter().all(yes)
    });
    looks.truncate(MOST);
    looks
}

/// What the key asks of each measured column.
fn thresholds(booklet: &Booklet) -> BTreeMap<CharacterIx, BTreeSet<Quantity>> {
    let mut thresholds: BTreeMap<_, BTreeSet<Quantity>> = BTreeMap::new();
    for at in 0..booklet.key.couplets.len() {
        let Some(ask) = said::ask(booklet, at) else { continue };
        let measured =
            matches!(booklet.matrix.character(ask.character).scale, Scale::Measure { .. });
        match ask.yes {
            Asked::AtLeast(quantity) | Asked::Below(quantity) if measured => {
                thresholds.entry(ask.character).or_default().insert(quantity);
            }
            Asked::AtLeast(_) | Asked::Below(_) | Asked::States(_) => {}
        }
    }
    thresholds
}

fn of_column(
    t: Tongue,
    matrix: &Matrix,
    at: CharacterIx,
    thresholds: Option<&BTreeSet<Quantity>>,
) -> Vec<Look> {
    let character = matrix.character(at);
    let name = character.name.trim();
    let look = |words: String, has: &dyn Fn(&Value) -> bool| {
        let kinds = matrix.taxon_indices().map(|kind| has_it(matrix, kind, at, has));
        Look { words, kinds: kinds.collect() }
    };
    let said = |state: &str| t.with("sheet-look-is", &[("name", &name), ("state", &state)]);
    match &character.scale {
        Scale::Words { states } => {
            let of = |(state, words): (usize, &String)| {
                look(said(words), &move |value| match value {
                    Value::States(shares) => {
                        shares.iter().any(|(has, _)| *has == StateIx(state))
                    }
                    _ => false,
                })
            };
            states.iter().enumerate().map(of).collect()
        }
        Scale::Counts => {
            let counted: BTreeSet<u32> = matrix
                .taxon_indices()
                .flat_map(|kind| match &matrix.cell(kind, at).value {
                    Value::Counts(shares) => shares.iter().map(|(many, _)| *many).collect(),
                    _ => Vec::new(),
                })
                .collect();
            let of = |many: u32| {
                look(said(&many.to_string()), &move |value| match value {
                    Value::Counts(shares) => shares.iter().any(|(has, _)| *has == many),
                    _ => false,
                })
            };
            counted.into_iter().take(MOST_COUNTS).map(of).collect()
        }
        Scale::Measure { .. } => {
            let of = |asked: &Quantity| {
                let asked = *asked;
                let amount = t.decimal(&character.amount(asked));
                let words = |message| t.with(message, &[("name", &name), ("amount", &amount)]);
                [
                    look(
                        words("sheet-look-less"),
                        &move |value| matches!(value, Value::Range { low, .. } if *low < asked),
                    ),
                    look(
                        words("sheet-look-more"),
                        &move |value| matches!(value, Value::Range { high, .. } if *high >= asked),
                    ),
                ]
            };
            thresholds.into_iter().flatten().flat_map(of).collect()
        }
    }
}

fn has_it(
    matrix: &Matrix,
    kind: TaxonIx,
    at: CharacterIx,
    has: &dyn Fn(&Value) -> bool,
) -> Has {
    match &matrix.cell(kind, at).value {
        Value::Unknown => Has::Perhaps,
        Value::DoesNotApply => Has::No,
        value if has(value) => Has::Yes,
        _ => Has::No,
    }
}
