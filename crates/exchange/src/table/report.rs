//! Gathers what there is to say about a table, so that a hundred alike are said once.
//!
//! From single remarks to the list of findings. The first five of a group stand for
//! themselves, the rest are counted in one line.

use std::collections::BTreeMap;

use spinney_model::{Code, Fact, Finding, LastAt, MoreLike, Place};

/// How many findings of one group are told one by one.
const TOLD_ONE_BY_ONE: usize = 5;

/// The remarks so far, in the order in which the first of each group was made.
#[derive(Debug, Default)]
pub(super) struct Report {
    groups: Vec<Group>,
    by_name: BTreeMap<(Code, String), usize>,
}

#[derive(Debug, Default)]
struct Group {
    told: Vec<Finding>,
    more: usize,
    last: Option<Place>,
}

impl Report {
    /// Adds a remark; those with the same code and group are alike.
    pub(super) fn add(&mut self, group: &str, place: Place, fact: impl Into<Fact>) {
        let fact = fact.into();
        let groups = &mut self.groups;
        let at = *self.by_name.entry((fact.code(), group.to_owned())).or_insert_with(|| {
            groups.push(Group::default());
            groups.len() - 1
        });
        let group = &mut groups[at];
        if group.told.len() < TOLD_ONE_BY_ONE {
            group.told.push(Finding::of(place, fact));
        } else {
            group.more += 1;
            group.last = Some(place);
        }
    }

    /// Adds a remark that has no others like it.
    pub(super) fn one(&mut self, place: Place, fact: impl Into<Fact>) {
        let fact = fact.into();
        let group = format!("{place}\n{fact:?}");
        self.add(&group, place, fact);
    }

    /// Every finding, groups together.
    pub(super) fn finish(self) -> Vec<Finding> {
        let mut findings = Vec::new();
        for Group { told, more, last } in self.groups {
            let like = told.last().map(|told| (told.place.clone(), told.fact.clone()));
            findings.extend(told);
            let Some(((place, like), last)) = like.zip(last) else { continue };
            let place = match (place, &last) {
                (Place::Cell(_), Place::Cell(cell)) => Place::Cell(cell.clone()),
                _ => Place::Table,
            };
            let last = match last {
                Place::Cell(cell) => LastAt::Cell(cell.into()),
                other => LastAt::Named(other.to_string()),
            };
            let like = Box::new(like);
            findings.push(Finding::of(place, Fact::More(MoreLike { more, last, like })));
        }
        findings
    }
}
