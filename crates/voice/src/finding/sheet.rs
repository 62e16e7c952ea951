//! What is said of a sheet that was read, of files and sheets that were not, and of the sheets
//! beside the table.

use spinney_model::{FieldIs, NamedCell, OfSheet, RowOf, limits};

use super::Told;
use super::places::{besides, bracketed, place, within};
use crate::Tongue;

pub(super) fn told(t: Tongue, fact: &OfSheet) -> Told {
    match fact {
        OfSheet::FieldOdd { text, is, words, at } => {
            let (what, remedy) = field(t, *is, words);
            let texts: [(&str, &dyn std::fmt::Display); 3] =
                [("text", text), ("in", &within(t, at)), ("what", &what)];
            (t.with("finding-sheet-odd", &texts), remedy)
        }
        OfSheet::RowNotRead { text, sheet, usual } => {
            let (before, last) = listed(usual);
            t.told(
                "finding-sheet-row-not-read",
                &[("text", text), ("sheet", sheet), ("before", &before), ("last", &last)],
            )
        }
        OfSheet::ColumnNotRead { heading, sheet, usual } => t.told(
            "finding-sheet-column-not-read",
            &[("heading", heading), ("sheet", sheet), ("usual", &usual.join(", "))],
        ),
        OfSheet::NotInTable { of, name, at } => {
            let message = match of {
                RowOf::Character => "finding-sheet-no-character",
                RowOf::Kind => "finding-sheet-no-kind-there",
            };
            let says = t.with(message, &[("name", name), ("at", &bracketed(t, at))]);
            (says, t.say("finding-sheet-not-there-remedy"))
        }
        OfSheet::SecondRow { of, name, at } => {
            let message = match of {
                RowOf::Character => "finding-sheet-second-character",
                RowOf::Kind => "finding-sheet-second-kind",
            };
            let says = t.with(message, &[("name", name), ("in", &within(t, at))]);
            (says, t.say("finding-sheet-second-remedy"))
        }
        OfSheet::QuotationNotClosed { at } => {
            of_row(t, "finding-sheet-not-closed", at, &bracketed(t, at))
        }
        OfSheet::Title { title } => t.told("finding-sheet-title", &[("title", title)]),
        OfSheet::CountsRows { heading, kinds } => counts_rows(t, heading, kinds),
        OfSheet::Swapped => t.told("finding-sheet-swapped", &[]),
        OfSheet::NoHeadings { says, at } => t.told(
            "finding-sheet-no-headings",
            &[("row", &at.at.number()), ("says", &says.join(", "))],
        ),
        OfSheet::OftenInWords => t.told("finding-sheet-often", &[]),
        OfSheet::FileNotRead { file, read } => {
            t.told("finding-sheet-file", &[("file", file), ("read", read)])
        }
        OfSheet::SheetsNotRead { read, others } => left(t, read, others),
        OfSheet::NoKind { name, adds_up, at } => {
            let message = match adds_up {
                true => "finding-sheet-adds-up",
                false => "finding-sheet-note",
            };
            let says = t.with(message, &[("row", &at.at.number()), ("name", name)]);
            (says, t.say("finding-sheet-no-kind-remedy"))
        }
        OfSheet::Nameless { at } => of_row(t, "finding-sheet-nameless", at, &besides(t, at)),
        OfSheet::TooManyKinds { most, kind } => {
            let says =
                t.with("finding-sheet-too-many-kinds", &[("most", most), ("kind", kind)]);
            (says, t.say("finding-sheet-split-remedy"))
        }
        OfSheet::TooManyFinds { most, row } => {
            let says = t.with("finding-sheet-too-many-finds", &[("most", most), ("row", row)]);
            (says, t.say("finding-sheet-too-many-finds-remedy"))
        }
        OfSheet::KindTwice { names, called, differ, first, second } => {
            kind_twice(t, names, called, differ.as_ref(), [first, second])
        }
        OfSheet::KindsOnSeveralRows { kinds, kind, rows, first, called } => {
            let first = bracketed(t, first);
            let texts: [(&str, &dyn std::fmt::Display); 4] =
                [("kind", kind), ("rows", rows), ("first", &first), ("called", called)];
            let says = t.count_with("finding-sheet-several-rows", *kinds, &texts);
            (says, t.say("finding-sheet-several-rows-remedy"))
        }
        OfSheet::FindColumns { headings } => {
            let headings = headings.join(", ");
            t.told("finding-sheet-find-columns", &[("headings", &headings)])
        }
        OfSheet::MeasuringColumns { first, columns } => {
            let message = "finding-sheet-measuring-columns";
            let says = t.count_with(message, *columns, &[("first", first)]);
            (says, t.say("finding-sheet-measuring-columns-remedy"))
        }
        OfSheet::OfNoKind { rows, first } => {
            let first = bracketed(t, first);
            let says = t.count_with("finding-sheet-of-no-kind", *rows, &[("first", &first)]);
            (says, t.say("finding-sheet-of-no-kind-remedy"))
        }
        OfSheet::Damaged { at } => t.told("finding-sheet-damaged", &[("cell", &place(t, at))]),
        OfSheet::Full { cells, megabytes, at } => {
            let says = t.with(
                "finding-sheet-full",
                &[("cells", cells), ("megabytes", megabytes), ("cell", &place(t, at))],
            );
            (says, t.say("finding-sheet-split-remedy"))
        }
    }
}

/// A sentence about a row, with where it is.
fn of_row(t: Tongue, message: &str, cell: &NamedCell, at: &str) -> Told {
    t.told(message, &[("row", &cell.at.number()), ("at", &at)])
}

fn counts_rows(t: Tongue, heading: &str, kinds: &str) -> Told {
    let says = match heading {
        "" => t.with("finding-sheet-counts-rows", &[("kinds", &kinds)]),
        _ => t.with(
            "finding-sheet-counts-rows-headed",
            &[("heading", &heading), ("kinds", &kinds)],
        ),
    };
    (says, t.say("finding-sheet-counts-rows-remedy"))
}

/// The sheets that were not read.
fn left(t: Tongue, read: &str, others: &[String]) -> Told {
    let says = match others {
        [] => String::new(),
        [first] => t.with("finding-sheet-left-one", &[("read", &read), ("first", first)]),
        [first, second] => t.with(
            "finding-sheet-left-two",
            &[("read", &read), ("first", first), ("second", second)],
        ),
        [first, more @ ..] => t.with(
            "finding-sheet-left-more",
            &[("read", &read), ("first", first), ("more", &more.len())],
        ),
    };
    (says, t.say("finding-sheet-left-remedy"))
}

fn kind_twice(
    t: Tongue,
    [one, other]: &[String; 2],
    called: &str,
    differ: Option<&[String; 2]>,
    cells: [&NamedCell; 2],
) -> Told {
    let [first, second] = cells.map(|cell| bracketed(t, cell));
    let says = t.with(
        "finding-sheet-kind-twice",
        &[
            ("one", one),
            ("other", other),
            ("called", &called),
            ("first", &first),
            ("second", &second),
        ],
    );
    let remedy = match differ {
        Some([this, that]) => {
            t.with("finding-sheet-kind-twice-differ", &[("this", this), ("that", that)])
        }
        None => t.say("finding-sheet-kind-twice-remedy"),
    };
    (says, remedy)
}

/// What a cell of a sheet beside the table should have said, and what to type there.
fn field(t: Tongue, is: FieldIs, words: &[&str]) -> Told {
    let one_of = || {
        let (before, last) = listed(words);
        t.with("finding-sheet-one-of-remedy", &[("before", &before), ("last", &last)])
    };
    let some_of = || t.with("finding-sheet-some-of-remedy", &[("words", &words.join(", "))]);
    match is {
        FieldIs::Values => (t.say("finding-sheet-values"), one_of()),
        FieldIs::Unit => (t.say("finding-sheet-unit"), one_of()),
        FieldIs::UnitOfRatio => t.told("finding-sheet-unit-of-ratio", &[]),
        FieldIs::Margin => t.told("finding-sheet-margin", &[]),
        FieldIs::SeenOn => (t.say("finding-sheet-seen-on"), some_of()),
        FieldIs::Difficulty => (t.say("finding-sheet-difficulty"), one_of()),
        FieldIs::PerCent => t.told("finding-sheet-per-cent", &[]),
        FieldIs::ByTouch => {
            (t.say("finding-sheet-yes-or-no"), t.say("finding-sheet-by-touch-remedy"))
        }
        FieldIs::InOrder => {
            (t.say("finding-sheet-yes-or-no"), t.say("finding-sheet-in-order-remedy"))
        }
        FieldIs::Season => (t.say("finding-sheet-season"), some_of()),
        FieldIs::Instrument => (t.say("finding-sheet-instrument"), one_of()),
        FieldIs::Condition => t.told("finding-sheet-condition", &[]),
        FieldIs::TimesMet => t.told("finding-sheet-times-met", &[]),
        FieldIs::HowMany => {
            let most = limits::CHILDREN;
            let remedy = t.with("finding-sheet-how-many-remedy", &[("most", &most)]);
            (t.say("finding-sheet-how-many"), remedy)
        }
    }
}

/// All words but the last, and the last.
fn listed(words: &[&str]) -> (String, String) {
    let (last, before) = words.split_last().unwrap_or((&"", &[]));
    (before.join(", "), (*last).to_owned())
}
