//! What is asked of each drawn leaf, and what counts as right.

use crate::{Drawn, Pair};

/// None: it is not asked of this leaf.
type Right = fn(&Pair) -> Option<bool>;

pub(crate) const QUESTIONS: [(&str, Right); 9] = [
    ("in pairs or in turn is right, or not said", |pair| {
        pair.side_veins().then(|| match pair.seen().and_then(|veins| veins.pairs) {
            None => true,
            said => said == pair.pairs,
        })
    }),
    ("in pairs or in turn, where it is said", |pair| {
        let said = pair.seen()?.pairs?;
        pair.side_veins().then_some(Some(said) == pair.pairs)
    }),
    ("that is said of clear veins, 300 and 600 dpi", |pair| {
        let said = pair.seen().is_some_and(|veins| veins.pairs.is_some());
        (pair.drawn == Drawn::Clear && pair.dpi > 200.0).then_some(said)
    }),
    ("that is said of clear veins, 150 dpi", |pair| {
        let said = pair.seen().is_some_and(|veins| veins.pairs.is_some());
        (pair.drawn == Drawn::Clear && pair.dpi < 200.0).then_some(said)
    }),
    ("that is said of faint veins", |pair| {
        let said = pair.seen().is_some_and(|veins| veins.pairs.is_some());
        (pair.drawn == Drawn::Faint).then_some(said)
    }),
    ("both numbers within 1, where they are said", |pair| {
        let veins = pair.seen().filter(|_| pair.side_veins())?;
        let both = veins.sides.iter().zip(pair.counts);
        Some(both.into_iter().all(|(side, truth)| side.len().abs_diff(truth) <= 1))
    }),
    ("both numbers exact, where they are said", |pair| {
        let veins = pair.seen().filter(|_| pair.side_veins())?;
        let both = veins.sides.iter().zip(pair.counts);
        Some(both.into_iter().all(|(side, truth)| side.len() == truth))
    }),
    ("numbers are said of clear veins", |pair| {
        (pair.drawn == Drawn::Clear).then_some(pair.seen().is_some())
    }),
    ("no side veins told where none are drawn", |pair| {
        (!pair.side_veins()).then_some(pair.seen().is_none())
    }),
];
