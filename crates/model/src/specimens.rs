//! Specimens: finds with a row each, as somebody measured them one by one, before they become
//! the cells of their kinds.
//!
//! From a table in which a row is a find to what statistics rest on. What the kinds of it come to
//! stands in a [`Matrix`] of its own.

use std::collections::BTreeSet;

use crate::{CellAt, Matrix, TaxonIx};

/// Finds with a row each.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Specimens {
    /// A row a find, called as its kind; the characters are those of the table of kinds.
    pub finds: Matrix,
    /// What is written of each find beside what was seen on it, in the same order.
    pub written: Vec<Specimen>,
}

/// What is written of one find.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Specimen {
    /// What kind it is, in the table of kinds.
    pub kind: TaxonIx,
    /// Where its kind is written.
    pub at: CellAt,
    /// What the find is called; empty: nobody said.
    pub find: String,
    /// In which picture it is; empty: nobody said.
    pub picture: String,
    /// Which plant it is of; empty: nobody said.
    pub plant: String,
    /// Where it was found; empty: nobody said.
    pub place: String,
    /// When it was found; empty: nobody said.
    pub when: String,
    /// Which part of the plant it is, such as a shade leaf; empty: nobody said.
    pub part: String,
}

impl Specimen {
    /// Its part as it is compared with others.
    pub fn part_folded(&self) -> String {
        folded(&self.part)
    }

    /// Of how many plants finds are; None: that is not written of each. One name at two places are
    /// two plants.
    pub fn plants<'f>(finds: impl IntoIterator<Item = &'f Self>) -> Option<usize> {
        let plant = |find: &Self| {
            let both = [&find.place, &find.plant].map(|text| folded(text));
            (!both[1].is_empty()).then_some(both)
        };
        let plants: Option<BTreeSet<_>> = finds.into_iter().map(plant).collect();
        plants.map(|plants| plants.len())
    }
}

/// A name without capitals, and with single spaces.
fn folded(name: &str) -> String {
    name.split_whitespace().collect::<Vec<_>>().join(" ").to_lowercase()
}

#[cfg(test)]
mod tests {
    //! Plants are told apart by their names and places.

    use super::*;

    fn find(place: &str, plant: &str) -> Specimen {
        let [find, picture, when, part] = [""; 4].map(str::to_owned);
        let at = CellAt { sheet: "table".into(), row: 1, column: 0 };
        let (place, plant) = (place.to_owned(), plant.to_owned());
        Specimen { kind: TaxonIx(0), at, find, picture, plant, place, when, part }
    }

    #[test]
    fn one_name_at_two_places_are_two_plants_however_it_is_typed() {
        let hedge = [find("hedge", "big oak"), find("Hedge ", "Big  oak")];
        assert_eq!(Specimen::plants(&hedge), Some(1));
        assert_eq!(Specimen::plants(&[find("hedge", "oak"), find("pond", "oak")]), Some(2));
        assert_eq!(Specimen::plants(&[find("hedge", "oak"), find("hedge", " ")]), None);
    }
}
