//! Units between two tables: what a heading says, whether it fits a column that is there
//! already, and numbers that take their heading's unit along.
//!
//! From typed text to typed text: what somebody typed stays as typed, with its unit behind it.

use super::cell_text::{seen, understood_in_every_column};
use super::heading::split_unit;
use super::number::amount;
use super::retyped::things;
use spinney_model::WrittenIn;

/// How the unit of a heading stands to the unit of a column.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Units {
    /// They are the same.
    Same,
    /// One can be told from the other: mm and cm.
    Convert,
    /// One says nothing of the other: mm and g, or one is no unit.
    Differ,
}

/// A heading as a name and a unit: `blade length (mm)`, `blade length in mm`. What stands in
/// brackets and is no unit belongs to the name: `edge (upper half)`.
pub fn name_and_unit(heading: &str) -> (String, Option<String>) {
    let heading = heading.trim();
    match split_unit(heading) {
        Some((name, unit)) => (name, Some(unit.sign().to_owned())),
        None => (heading.to_owned(), None),
    }
}

/// Whether numbers of one unit can stand in a column of the other.
pub fn units(one: &str, other: &str) -> Units {
    match (WrittenIn::spelt(one), WrittenIn::spelt(other)) {
        (Some(one), Some(other)) if one == other => Units::Same,
        (Some(one), Some(other)) if one.row().kept_as == other.row().kept_as => Units::Convert,
        _ => Units::Differ,
    }
}

/// A typed cell in which every number without a unit has this one.
pub fn measured_in(text: &str, unit: &str) -> String {
    let (cell, _) = seen(text);
    if understood_in_every_column(cell) {
        return text.to_owned();
    }
    let (mut out, mut written) = (String::new(), 0);
    for thing in things(cell).into_iter().filter(|thing| is_bare(thing)) {
        // A thing is a part of the text, so their addresses tell where it ends.
        let end = thing.as_ptr() as usize - text.as_ptr() as usize + thing.trim_end().len();
        out.push_str(&text[written..end]);
        out.push(' ');
        out.push_str(unit);
        written = end;
    }
    out.push_str(&text[written..]);
    out
}

/// Whether a typed cell means the same in whatever unit its column is measured: every number in
/// it has a unit of its own, or it says `?` or `n/a`.
pub fn fits_any_unit(text: &str) -> bool {
    let (cell, _) = seen(text);
    let has_own = |thing: &str| amount(thing).is_ok_and(|amount| amount.unit.is_some());
    understood_in_every_column(cell) || things(cell).into_iter().all(has_own)
}

fn is_bare(thing: &str) -> bool {
    amount(thing).is_ok_and(|amount| amount.unit.is_none())
}

#[cfg(test)]
mod tests {
    //! Headings and cells as groups type them.

    use super::{Units, fits_any_unit, measured_in, name_and_unit, units};

    #[test]
    fn a_heading_has_a_unit_only_if_it_is_one() {
        for (heading, name, unit) in [
            ("blade length (mm)", "blade length", Some("mm")),
            ("blade length [cm]", "blade length", Some("cm")),
            ("stalk in inches", "stalk", Some("in")),
            ("weight (grams)", "weight", Some("g")),
            ("edge (upper half)", "edge (upper half)", None),
            (" edge ", "edge", None),
            ("(mm)", "(mm)", None),
        ] {
            let expected = (name.to_owned(), unit.map(str::to_owned));
            assert_eq!(name_and_unit(heading), expected, "{heading}");
        }
    }

    #[test]
    fn lengths_can_be_told_from_lengths_and_from_nothing_else() {
        for (one, other, expected) in [
            ("mm", "millimetres", Units::Same),
            ("mm", "cm", Units::Convert),
            ("in", "m", Units::Convert),
            ("g", "kg", Units::Convert),
            ("mm", "g", Units::Differ),
            ("mm", "count", Units::Differ),
            ("", "", Units::Differ),
        ] {
            assert_eq!(units(one, other), expected, "{one} {other}");
        }
    }

    #[test]
    fn numbers_take_their_unit_along_and_keep_one_of_their_own() {
        for (text, expected) in [
            ("3-5", "3-5 cm"),
            ("3,5", "3,5 cm"),
            ("3 or 5", "3 cm or 5 cm"),
            ("3-5 (12 seen)", "3-5 cm (12 seen)"),
            ("30 mm", "30 mm"),
            ("30 mm or 4", "30 mm or 4 cm"),
            ("?", "?"),
            ("n/a", "n/a"),
            ("-", "-"),
            ("long", "long"),
            ("", ""),
        ] {
            assert_eq!(measured_in(text, "cm"), expected, "{text}");
            let fits = text == expected && text != "long";
            assert_eq!(fits_any_unit(text), fits, "{text}");
        }
    }
}
