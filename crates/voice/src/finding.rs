//! A finding in words: what is so, and what to do about it, in the language of a person.
//!
//! From typed facts to a sentence and a remedy. One file a family of facts; the messages are in
//! `messages/<language>/findings*.ftl`. What `link` and the reader of `key.json` say
//! is still text, in English, and is handed on as it is.

use std::fmt::Display;

use spinney_model::{Fact, Finding, LastAt, MoreLike};

use crate::Tongue;

mod answers;
mod cell;
mod claim;
mod column;
mod ends;
mod key_read;
pub(crate) mod phrases;
mod places;
mod shape;
mod sheet;
mod table;
mod tree;
mod wishes;
mod words;

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
        Fact::More(fact) => return more(t, fact),
        Fact::Text(text) => return (text.sentence.clone(), text.remedy.clone()),
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

/// In which language a finding is said: what is still text is English for everybody.
pub fn language(finding: &Finding, t: Tongue) -> &'static str {
    if finding.text().is_some() { "en" } else { t.tag() }
}

/// "7 of 9 questions checked against the table".
pub fn coverage(t: Tongue, checked: usize, questions: usize) -> String {
    t.count_with("finding-coverage", questions, &[("checked", &checked)])
}

impl Tongue {
    /// A sentence and its remedy, with the same texts to fill in.
    fn told(self, message: &str, texts: &[(&str, &dyn Display)]) -> Told {
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
