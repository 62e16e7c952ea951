//! What is said of a column of a table that was read.

use spinney_model::{Called, NotCounts, OfColumn, WhyNoCondition, WhyNoRatio};

use super::Told;
use super::places::{besides, bracketed, place, subject};
use crate::Tongue;

pub(super) fn told(t: Tongue, fact: &OfColumn) -> Told {
    match fact {
        OfColumn::HeadingTwice { heading, called, at } => t.told(
            "finding-column-twice",
            &[("heading", heading), ("called", called), ("cell", &place(t, at))],
        ),
        OfColumn::NoHeading { called, at } => {
            let says = match at.called {
                Called::Address => t.with(
                    "finding-column-nameless",
                    &[("cell", &subject(t, at)), ("called", called)],
                ),
                _ => t.with("finding-column-nameless-somewhere", &[("called", called)]),
            };
            (says, t.say("finding-column-nameless-remedy"))
        }
        OfColumn::Touch { about } => t.told("finding-column-touch", &[("about", about)]),
        OfColumn::InOrder { about, states } => t.told(
            "finding-column-in-order",
            &[("about", about), ("states", &states.join(", "))],
        ),
        OfColumn::MarginOtherUnit { about } => {
            t.told("finding-column-margin", &[("about", about)])
        }
        OfColumn::NumberedNames { about } => {
            t.told("finding-column-numbered", &[("about", about)])
        }
        OfColumn::NumberWords { about, text, at } => t.told(
            "finding-column-number-words",
            &[("about", about), ("text", text), ("at", &bracketed(t, at))],
        ),
        OfColumn::TooManyCounts { about, most } => {
            t.told("finding-column-too-many-counts", &[("about", about), ("most", most)])
        }
        OfColumn::UnitOfOthers { about, unit, at } => {
            let (cell, unit) = (subject(t, at), unit.sign());
            of_unit(t, "finding-column-unit-of-others", about, (&cell, unit))
        }
        OfColumn::UnitAssumed { about, unit, at } => {
            let (cell, unit) = (place(t, at), unit.sign());
            of_unit(t, "finding-column-unit-assumed", about, (&cell, unit))
        }
        OfColumn::NoUnit { about, because } => t.told(
            "finding-column-no-unit",
            &[("about", about), ("because", &no_counts(t, because))],
        ),
        OfColumn::Remarks { about } => t.told("finding-column-remarks", &[("about", about)]),
        OfColumn::Notes { about, most } => {
            t.told("finding-column-notes", &[("about", about), ("most", most)])
        }
        OfColumn::StatesNotOnce { about, most } => {
            t.told("finding-column-states", &[("about", about), ("most", most)])
        }
        OfColumn::NoRatio { about, why, at } => t.told(
            "finding-column-no-ratio",
            &[("about", about), ("at", &bracketed(t, at)), ("why", &no_ratio(t, why))],
        ),
        OfColumn::NoCondition { about, why, at } => t.told(
            "finding-column-no-condition",
            &[("about", about), ("at", &bracketed(t, at)), ("why", &no_condition(t, why))],
        ),
        OfColumn::DoesNotApply { about, above, cells } => {
            let says = t.count_with(
                "finding-column-does-not-apply",
                *cells,
                &[("about", about), ("above", above)],
            );
            (says, t.say("finding-column-does-not-apply-remedy"))
        }
        OfColumn::NoRoom { about } => t.told("finding-column-no-room", &[("about", about)]),
        OfColumn::ReadRight { about, name, twice, at } => {
            let message = match twice {
                true => "finding-column-read-right-twice",
                false => "finding-column-read-right-strange",
            };
            t.told(message, &[("about", about), ("name", name), ("at", &bracketed(t, at))])
        }
    }
}

/// A cell, and the unit in which it is read.
fn of_unit(t: Tongue, message: &str, about: &str, (cell, unit): (&str, &str)) -> Told {
    let says = t.with(message, &[("cell", &cell), ("about", &about), ("unit", &unit)]);
    (says, t.say("finding-column-unit-remedy"))
}

/// Why a column of numbers holds no counts.
fn no_counts(t: Tongue, because: &NotCounts) -> String {
    match because {
        NotCounts::Cell { text, kind, at } => t.with(
            "finding-column-because-cell",
            &[("text", text), ("kind", kind), ("at", &besides(t, at))],
        ),
        NotCounts::MoreThan(most) => t.with("finding-column-because-many", &[("most", most)]),
    }
}

/// Why a ratio cannot be worked out.
fn no_ratio(t: Tongue, why: &WhyNoRatio) -> String {
    match why {
        WhyNoRatio::NoColumn(name) => {
            t.with("finding-column-ratio-no-column", &[("name", name)])
        }
        WhyNoRatio::NotTwo(text) => t.with("finding-column-ratio-not-two", &[("text", text)]),
        WhyNoRatio::OfARatio => t.say("finding-column-ratio-of-a-ratio"),
        WhyNoRatio::NotMeasured(name) => {
            t.with("finding-column-ratio-not-measured", &[("name", name)])
        }
        WhyNoRatio::OverItself => t.say("finding-column-ratio-itself"),
        WhyNoRatio::DifferentUnits => t.say("finding-column-ratio-units"),
    }
}

/// What a condition does that cannot be used: a sentence without its subject.
fn no_condition(t: Tongue, why: &WhyNoCondition) -> String {
    let of = |message: &str, name: &String| t.with(message, &[("name", name)]);
    match why {
        WhyNoCondition::NoColumn(name) => of("finding-column-condition-no-column", name),
        WhyNoCondition::HoldsNumbers(name) => of("finding-column-condition-numbers", name),
        WhyNoCondition::NoState { state, of: name } => {
            t.with("finding-column-condition-no-state", &[("state", state), ("name", name)])
        }
        WhyNoCondition::NoStates(name) => of("finding-column-condition-no-states", name),
        WhyNoCondition::Itself => t.say("finding-column-condition-itself"),
    }
}
