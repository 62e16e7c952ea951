//! What is said of a cell of a table that was read.

use std::fmt::Display;

use spinney_model::{CellTrouble, CellTyped, KindAt, OfCell, ReadAs, SheetError};

use super::Told;
use super::places::{besides, bracketed, place, subject, within};
use crate::Tongue;

pub(super) fn told(t: Tongue, fact: &OfCell) -> Told {
    match fact {
        OfCell::Odd { cell, trouble } => {
            let (trouble, remedy) = odd(t, trouble);
            (typed(t, "finding-cell-odd", cell, ("trouble", &trouble)), remedy)
        }
        OfCell::ReadAs { cell, read } => {
            let (read, remedy) = read_as(t, read);
            (typed(t, "finding-cell-read", cell, ("read", &read)), remedy)
        }
        OfCell::Error { cell, error } => {
            let says = typed(t, "finding-cell-error", cell, ("why", &why(t, *error)));
            (says, t.say("finding-cell-error-remedy"))
        }
        OfCell::Undeclared { state, about, at } => t.told(
            "finding-cell-undeclared",
            &[("state", state), ("about", about), ("in", &within(t, at))],
        ),
        OfCell::Alike { states: [one, other], about, at } => {
            let at = at.as_ref().map(|at| bracketed(t, at)).unwrap_or_default();
            t.told(
                "finding-cell-alike",
                &[("one", one), ("other", other), ("about", about), ("at", &at)],
            )
        }
        OfCell::GovernedButPresent { kind, about, above, at } => t.told(
            "finding-cell-governed",
            &[("kind", kind), ("about", about), ("above", above), ("at", &besides(t, at))],
        ),
        OfCell::NoRatio { about, kind, parts: [one, other] } => t.told(
            "finding-cell-no-ratio",
            &[("about", about), ("kind", kind), ("one", one), ("other", other)],
        ),
        OfCell::NotRecorded { about, kinds: named, more, beside_marks } => {
            let message = match beside_marks {
                true => "finding-cell-beside-marks",
                false => "finding-cell-not-recorded",
            };
            t.told(message, &[("about", about), ("kinds", &kinds(t, named, *more))])
        }
        OfCell::SomeHaveNone { about, kind, none, finds } => t.told(
            "finding-cell-some-have-none",
            &[("about", about), ("kind", kind), ("none", none), ("finds", finds)],
        ),
        OfCell::LettersSpoilt { text, right, at } => t.told(
            "finding-cell-spoilt",
            &[("text", text), ("right", right), ("at", &bracketed(t, at))],
        ),
        OfCell::CutAtComma { before, behind, at } => t.told(
            "finding-cell-cut",
            &[("row", &at.at.number()), ("before", before), ("behind", behind)],
        ),
        OfCell::TooFar { most, at } => {
            t.told("finding-cell-far", &[("cell", &place(t, at)), ("most", most)])
        }
        OfCell::TooLong { most, at } => {
            t.told("finding-cell-long", &[("in", &within(t, at)), ("most", most)])
        }
        OfCell::Formula { at } => t.told("finding-cell-formula", &[("cell", &subject(t, at))]),
        OfCell::TextLost { at } => {
            t.told("finding-cell-text-lost", &[("cell", &subject(t, at))])
        }
        OfCell::ShowsError { error, at } => {
            t.told("finding-cell-shows-error", &[("cell", &subject(t, at)), ("error", error)])
        }
        OfCell::MadeADate { at } => {
            t.told("finding-cell-made-a-date", &[("cell", &subject(t, at))])
        }
        OfCell::Merged { text, at, to } => t.told(
            "finding-cell-merged",
            &[("text", text), ("cell", &subject(t, at)), ("to", &place(t, to))],
        ),
    }
}

/// A sentence about what somebody typed, with one more text to fill in.
fn typed(t: Tongue, message: &str, cell: &CellTyped, more: (&str, &dyn Display)) -> String {
    let CellTyped { text, kind, about, at } = cell;
    let at = besides(t, at);
    t.with(message, &[("text", text), ("kind", kind), ("about", about), ("at", &at), more])
}

/// What is odd about a cell: a sentence without its subject; and what to type instead.
fn odd(t: Tongue, trouble: &CellTrouble) -> Told {
    let message = match trouble {
        CellTrouble::Mixed => "finding-cell-mixed",
        CellTrouble::HalfCounted => "finding-cell-half-counted",
        CellTrouble::Shares => "finding-cell-shares",
        CellTrouble::NoCount => "finding-cell-no-count",
        CellTrouble::NotANumber => "finding-cell-not-a-number",
        CellTrouble::Backwards { turned: Some(turned) } => {
            let remedy = t.with("finding-cell-backwards-turned", &[("turned", turned)]);
            return (t.say("finding-cell-backwards"), remedy);
        }
        CellTrouble::Backwards { turned: None } => "finding-cell-backwards",
        CellTrouble::OneEnd => "finding-cell-one-end",
        CellTrouble::OutOf => "finding-cell-out-of",
        CellTrouble::Ambiguous { thousands, decimals } => {
            let remedy = match decimals {
                Some(decimals) => t.with(
                    "finding-cell-ambiguous-either",
                    &[("thousands", thousands), ("decimals", decimals)],
                ),
                None => t.with("finding-cell-ambiguous-remedy", &[("thousands", thousands)]),
            };
            return (t.say("finding-cell-ambiguous"), remedy);
        }
        CellTrouble::AWord => "finding-cell-a-word",
        CellTrouble::NotWhole => "finding-cell-not-whole",
        CellTrouble::Wide => "finding-cell-wide",
        CellTrouble::BelowNothing => "finding-cell-below-nothing",
        CellTrouble::OtherUnit => "finding-cell-other-unit",
        CellTrouble::ANumber => "finding-cell-a-number",
        CellTrouble::NeitherYesNorNo => "finding-cell-neither",
        CellTrouble::Date { low, high } => {
            return t.told("finding-cell-date", &[("low", low), ("high", high)]);
        }
        CellTrouble::TwoMeasurements => "finding-cell-two-measurements",
    };
    t.told(message, &[])
}

/// As what a cell is read, and what to type if that is not meant.
fn read_as(t: Tongue, read: &ReadAs) -> Told {
    let message = match read {
        ReadAs::Unknown => "finding-cell-unknown",
        ReadAs::Each { words } if words.is_empty() => "finding-cell-each",
        ReadAs::Each { words } => {
            // As it is typed: the reader knows the word in English.
            let own = words.join(" or ");
            let remedy = t.with("finding-cell-each-own", &[("own", &own)]);
            return (t.say("finding-cell-each"), remedy);
        }
        ReadAs::OneRange => "finding-cell-one-range",
        ReadAs::State => "finding-cell-state",
        ReadAs::SomethingToSee => "finding-cell-to-see",
        ReadAs::Word => "finding-cell-word",
    };
    t.told(message, &[])
}

fn why(t: Tongue, error: SheetError) -> String {
    t.say(match error {
        SheetError::LostCell => "finding-cell-lost-cell",
        SheetError::NotFound => "finding-cell-not-found",
        SheetError::CannotCalculate => "finding-cell-cannot-calculate",
        SheetError::UnknownWord => "finding-cell-unknown-word",
        SheetError::DividedByNothing => "finding-cell-divided",
        SheetError::NoNumber => "finding-cell-no-number",
        SheetError::LostCells => "finding-cell-lost-cells",
    })
}

/// "hazel, lime and 3 more", each with its address.
fn kinds(t: Tongue, kinds: &[KindAt], more: usize) -> String {
    let named = kinds.iter().map(|kind| format!("{}{}", kind.kind, besides(t, &kind.at)));
    let named = named.collect::<Vec<_>>().join(", ");
    match more {
        0 => named,
        more => named + &t.with("finding-cell-and-more", &[("more", &more)]),
    }
}
