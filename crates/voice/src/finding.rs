//! A finding in words: what is so, and what to do about it, in the language of a person.
//!
//! From typed facts to a sentence and a remedy. One file a family of facts; the messages are in
//! `messages/<language>/findings*.ftl`.

use std::fmt::Display;

use spinney_model::{Fact, Finding, LastAt, MoreLike, Place};

use crate::Tongue;

mod answers;
mod cell;
mod claim;
mod column;
mod ends;
mod key_file;
mod key_read;
mod link;
mod links_file;
pub(crate) mod phrases;
mod picture;
mod places;
mod shape;
mod sheet;
mod table;
mod tree;
mod unmet;
mod wishes;
mod words;

pub use phrases::{all, any};
pub use picture::trouble;
pub use unmet::{all_pairs, early};
pub use wishes::{hand, season};

/// A sentence and what to do about it.
type Told = (String, String);

/// What a finding says: a sentence, and a remedy.
pub fn finding(finding: &Finding, t: Tongue) -> (String, String) {
    told(t, &finding.fact)
}

fn told(t: Tongue, fact: &Fact) -> Told {
    let (sentence, remedy) = match fact {
        Fact::Tree(fact) => tree::told(t, fact),
        Fact::Ends(fact) => ends::told(t, fact),
        Fact::Answers(fact) => answers::told(t, fact),
        Fact::Table(fact) => table::told(t, fact),
        Fact::Claim(fact) => claim::told(t, fact),
        Fact::Wishes(fact) => wishes::told(t, fact),
        Fact::Words(text, fact) => words::told(t, text, fact),
        Fact::Shape(fact) => shape::told(t, fact),
        Fact::KeyRead(fact) => key_read::told(t, fact),
        // A sentence may begin with the name of a file.
        Fact::Cell(fact) => return cell::told(t, fact),
        Fact::Column(fact) => return column::told(t, fact),
        Fact::Sheet(fact) => return sheet::told(t, fact),
        Fact::Link(fact) => link::told(t, fact),
        Fact::Links(fact) => links_file::told(t, fact),
        Fact::KeyFile(fact) => key_file::told(t, fact),
        // One may begin with a name, or with a question.
        Fact::Unmet(fact) => return unmet::told(t, fact),
        Fact::Picture(fact) => picture::told(t, fact),
        Fact::More(fact) => return more(t, fact),
    };
    (phrases::capital(&sentence), remedy)
}

/// "And 95 more like these; the last is table!B101.", with the remedy of those that were told.
fn more(t: Tongue, fact: &MoreLike) -> Told {
    let last = match &fact.last {
        LastAt::Cell(cell) => places::place(t, cell),
        LastAt::Named(name) => name.clone(),
    };
    let says = t.count_with("finding-more-like", fact.more, &[("last", &last)]);
    (says, told(t, &fact.like).1)
}

/// Where a finding is: "question 3", or a name.
pub fn place(place: &Place, t: Tongue) -> String {
    match place {
        Place::Cell(cell) => cell.to_string(),
        Place::Taxon(name) | Place::Character(name) => name.clone(),
        Place::Taxa(names) => names.join(", "),
        Place::Line(line) => t.with("place-line", &[("line", line)]),
        Place::Couplet(number) => t.with("place-question", &[("question", number)]),
        Place::Table => t.say("place-table"),
        Place::Key => t.say("place-key"),
    }
}

/// "7 of 9 questions checked against the table".
pub fn coverage(t: Tongue, checked: usize, questions: usize) -> String {
    t.count_with("finding-coverage", questions, &[("checked", &checked)])
}

impl Tongue {
    /// A sentence and its remedy, with the same texts to fill in.
    pub fn told(self, message: &str, texts: &[(&str, &dyn Display)]) -> (String, String) {
        (self.with(message, texts), self.with(&format!("{message}-remedy"), texts))
    }

    /// The same about so many things.
    fn told_of(self, message: &str, count: usize, texts: &[(&str, &dyn Display)]) -> Told {
        let remedy = format!("{message}-remedy");
        (self.count_with(message, count, texts), self.count_with(&remedy, count, texts))
    }
}

#[cfg(test)]
mod tests;
