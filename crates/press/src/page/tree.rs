//! The key as a tree of places: every number resolved, every end once.
//!
//! From a key as it stands on paper, broken or not, to questions and ends that know their
//! ways on and back. A number that leads nowhere becomes an end that says so. It mends
//! nothing and reports nothing.

use std::collections::BTreeSet;

use spinney_model::{Couplet, Destination, End, TaxonIx};

use crate::Booklet;

/// Every place of a key.
pub(super) struct Tree<'a> {
    /// In the order in which they are printed.
    pub(super) questions: Vec<Question<'a>>,
    /// In the order in which the questions first lead to them.
    pub(super) endings: Vec<Ending<'a>>,
}

/// One question with its ways.
pub(super) struct Question<'a> {
    pub(super) couplet: &'a Couplet,
    /// Its name in the page: `q3`.
    pub(super) id: String,
    pub(super) yes: Way,
    pub(super) no: Way,
    /// The questions that lead here.
    pub(super) from: Vec<usize>,
}

/// Where an answer leads.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) enum Way {
    Question(usize),
    Ending(usize),
}

/// Where a walk stops.
#[derive(Debug, PartialEq, Eq)]
pub(super) enum Ending<'a> {
    /// At kinds.
    Kinds(&'a End),
    /// At a number that no question has.
    NoSuchNumber(u32),
    /// Where nobody wrote anything.
    Nothing,
}

impl<'a> Tree<'a> {
    pub(super) fn of(booklet: &Booklet<'a>) -> Self {
        let couplets = &booklet.key.couplets;
        let mut endings = Vec::new();
        let mut questions: Vec<Question> = Vec::new();
        for (ix, couplet) in couplets.iter().enumerate() {
            let again = couplets[..ix].iter().filter(|c| c.number == couplet.number).count();
            let id = match again {
                0 => format!("q{}", couplet.number),
                _ => format!("q{}-{}", couplet.number, again + 1),
            };
            let yes = way(couplets, &couplet.yes, &mut endings);
            let no = way(couplets, &couplet.no, &mut endings);
            questions.push(Question { couplet, id, yes, no, from: Vec::new() });
        }
        for ix in 0..questions.len() {
            for to in [questions[ix].yes, questions[ix].no] {
                if let Way::Question(to) = to
                    && !questions[to].from.contains(&ix)
                {
                    questions[to].from.push(ix);
                }
            }
        }
        Self { questions, endings }
    }

    /// The anchor of a place: `#q3`, `#end-1`.
    pub(super) fn anchor(&self, way: Way) -> String {
        match way {
            Way::Question(ix) => format!("#{}", self.questions[ix].id),
            Way::Ending(ix) => format!("#end-{}", ix + 1),
        }
    }

    /// The kinds that can still come out below a question.
    pub(super) fn kinds_below(&self, question: usize) -> BTreeSet<TaxonIx> {
        let (mut open, mut seen, mut kinds) =
            (vec![question], BTreeSet::new(), BTreeSet::new());
        while let Some(ix) = open.pop() {
            if !seen.insert(ix) {
                continue;
            }
            for to in [self.questions[ix].yes, self.questions[ix].no] {
                match to {
                    Way::Question(next) => open.push(next),
                    Way::Ending(end) => {
                        if let Ending::Kinds(end) = &self.endings[end] {
                            kinds.extend(end.taxa.iter().copied());
                        }
                    }
                }
            }
        }
        kinds
    }

    /// The questions one of whose answers leads to an end.
    pub(super) fn leading_to(&self, ending: usize) -> Vec<usize> {
        let leads = |q: &Question| [q.yes, q.no].contains(&Way::Ending(ending));
        (0..self.questions.len()).filter(|&ix| leads(&self.questions[ix])).collect()
    }
}

fn way<'a>(couplets: &[Couplet], to: &'a Destination, endings: &mut Vec<Ending<'a>>) -> Way {
    let ending = match to {
        Destination::Couplet(number) => {
            match couplets.iter().position(|couplet| couplet.number == *number) {
                Some(ix) => return Way::Question(ix),
                None => Ending::NoSuchNumber(*number),
            }
        }
        Destination::End(end) if end.taxa.is_empty() && end.unrecognised.is_empty() => {
            Ending::Nothing
        }
        Destination::End(end) => Ending::Kinds(end),
        Destination::Missing => Ending::Nothing,
    };
    let known = endings.iter().position(|other| *other == ending);
    Way::Ending(known.unwrap_or_else(|| {
        endings.push(ending);
        endings.len() - 1
    }))
}
