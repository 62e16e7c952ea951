//! What is said of a table without a key.

use spinney_model::{CellOf, InTheWay, OfTable, RangeOf};

use super::Told;
use super::answers::with_margin;
use super::phrases::{about, all, capital, cell, cells, figure, range};
use crate::Tongue;

pub(super) fn told(t: Tongue, fact: &OfTable) -> Told {
    match fact {
        OfTable::NotSeparable { kinds } => {
            t.told("finding-not-separable", &[("kinds", &all(t, kinds))])
        }
        OfTable::Blocked { kinds, because, fill_in } => {
            let because: Vec<String> = because.iter().map(|one| in_the_way(t, one)).collect();
            let because = clauses(t, because);
            let texts: [(&str, &dyn std::fmt::Display); 2] =
                [("kinds", &capital(&all(t, kinds))), ("because", &because)];
            let (says, remedy) = t.told("finding-blocked", &texts);
            let fill = |of| t.with("finding-blocked-fill-in", &[("cells", &cells(t, of))]);
            (says, fill_in.as_ref().map_or(remedy, fill))
        }
        OfTable::FragilePair { kinds, about: name, hard, close } => {
            let message = match (hard, close) {
                (true, true) => "finding-fragile-hard-and-close",
                (true, false) => "finding-fragile-hard",
                (false, _) => "finding-fragile-close",
            };
            let texts: [(&str, &dyn std::fmt::Display); 2] =
                [("kinds", &all(t, kinds)), ("about", &about(t, name))];
            (t.with(message, &texts), t.say("finding-fragile-remedy"))
        }
        OfTable::GapTooNarrow { ranges, about: name, margin, smaller_may_do, open } => {
            let each: Vec<String> = ranges.iter().map(|of| measured(t, of)).collect();
            let says = t.with(
                "finding-too-narrow",
                &[
                    ("about", name),
                    ("one", &ranges[0].kind),
                    ("other", &ranges[1].kind),
                    ("ranges", &each.join(", ")),
                    ("margin", &figure(t, *margin)),
                ],
            );
            (says, with_margin(t, look_for(t, open), name, *smaller_may_do))
        }
        OfTable::MoreTooNarrow { pairs } => t.told_of("finding-more-too-narrow", *pairs, &[]),
        OfTable::Unknown { cells: count, columns, more_columns } => {
            let mut listed =
                columns.iter().map(|of| cells(t, of)).collect::<Vec<_>>().join("; ");
            if *more_columns > 0 {
                listed.push_str(&t.count("finding-unknown-more", *more_columns));
            }
            t.told_of("finding-unknown", *count, &[("cells", &listed)])
        }
        OfTable::TooManyGroups => {
            (t.say("finding-too-many-groups"), t.say("finding-too-many-remedy"))
        }
        OfTable::TooManyKinds => {
            (t.say("finding-too-many-kinds"), t.say("finding-too-many-remedy"))
        }
    }
}

/// "stalk, which tells elm and lime apart, cannot be asked of holly, which has none".
fn in_the_way(t: Tongue, one: &InTheWay) -> String {
    let of = |message: &str, kinds: &[String]| {
        let named = || t.count_with(message, kinds.len(), &[("kinds", &all(t, kinds))]);
        (!kinds.is_empty()).then(named)
    };
    let whom = [
        of("finding-blocked-without", &one.without),
        of("finding-blocked-perhaps", &one.perhaps),
        of("finding-blocked-between", &one.between),
    ];
    let whom = clauses(t, whom.into_iter().flatten().collect());
    let them = match &one.separates {
        Some(kinds) => all(t, kinds),
        None => t.say("finding-blocked-them"),
    };
    t.with(
        "finding-blocked-because",
        &[("about", &about(t, &one.about)), ("them", &them), ("whom", &whom)],
    )
}

/// Clauses one after the other, with ", and" between.
fn clauses(t: Tongue, clauses: Vec<String>) -> String {
    let next = |before: String, next: String| {
        t.with("finding-clauses", &[("before", &before), ("next", &next)])
    };
    clauses.into_iter().reduce(next).unwrap_or_default()
}

/// "hazel 30 to 35 mm".
fn measured(t: Tongue, of: &RangeOf) -> String {
    format!("{} {}", of.kind, range(t, of))
}

/// What to look at next: first what nobody has recorded, then things a table often lacks.
fn look_for(t: Tongue, open: &[CellOf]) -> String {
    let cells: Vec<String> = open.iter().map(|one| cell(t, one)).collect();
    match cells.as_slice() {
        [] => t.say("finding-too-narrow-remedy"),
        cells => t.with("finding-too-narrow-open", &[("cells", &all(t, cells))]),
    }
}
