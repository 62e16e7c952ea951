//! Gathers what there is to say about a table, so that a hundred alike are said once.
//!
//! From single remarks to the list of findings. The first five of a group stand for
//! themselves, the rest are counted in one line.

use std::collections::BTreeMap;

use spinney_model::{Code, Finding, Place};

/// How many findings of one group are told one by one.
const TOLD_ONE_BY_ONE: usize = 5;

/// The remarks so far, in the order in which the first of each group was made.
#[derive(Debug, Default)]
pub(super) struct Report {
    groups: Vec<Group>,
    by_name: BTreeMap<(Code, String), usize>,
}

#[derive(Debug)]
struct Group {
    told: Vec<Finding>,
    more: usize,
    last: String,
    code: Code,
}

impl Report {
    /// Adds a remark; those with the same code and group are alike.
    pub(super) fn add(
        &mut self,
        code: Code,
        group: &str,
        place: Place,
        sentence: impl FnOnce() -> String,
        remedy: &str,
    ) {
        let at = match self.by_name.get(&(code, group.to_owned())) {
            Some(at) => *at,
            None => {
                self.by_name.insert((code, group.to_owned()), self.groups.len());
                let group = Group { told: Vec::new(), more: 0, last: String::new(), code };
                self.groups.push(group);
                self.groups.len() - 1
            }
        };
        let group = &mut self.groups[at];
        if group.told.len() < TOLD_ONE_BY_ONE {
            group.told.push(Finding::new(code, place, sentence(), remedy));
        } else {
            group.more += 1;
            group.last = place.to_string();
        }
    }

    /// Adds a remark that has no others like it.
    pub(super) fn one(
        &mut self,
        code: Code,
        place: Place,
        sentence: impl Into<String>,
        remedy: &str,
    ) {
        let (sentence, group) = (sentence.into(), place.to_string());
        let group = format!("{group}\n{sentence}");
        self.add(code, &group, place, || sentence, remedy);
    }

    /// Every finding, groups together.
    pub(super) fn finish(self) -> Vec<Finding> {
        let mut findings = Vec::new();
        for group in self.groups {
            let rest = group.told.last().map(|last| {
                let remedy = last.text().map(|text| text.remedy.clone()).unwrap_or_default();
                (remedy, last.place.clone())
            });
            findings.extend(group.told);
            let Some((remedy, place)) = rest.filter(|_| group.more > 0) else { continue };
            let sentence = match group.more {
                1 => format!("One more like these: {}.", group.last),
                more => format!("And {more} more like these; the last is {}.", group.last),
            };
            let place = match place {
                Place::Cell(_) => Place::Cell(group.last),
                _ => Place::Table,
            };
            findings.push(Finding::new(group.code, place, sentence, remedy));
        }
        findings
    }
}
