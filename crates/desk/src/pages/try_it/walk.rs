//! Where somebody is who gave some answers, one of which may be "can't tell".
//!
//! From a key and letters (`y`, `n`, `u`) to the question in hand, the ways still to follow and
//! the ends that were reached. After "can't tell" the way of yes is followed to its end, then
//! the way of no. Every question of a key that is a tree is met once at most.

use std::collections::BTreeSet;

use spinney_model::{Answer, Couplet, Destination, Key, TaxonIx};

/// The answers of an address; at most one for every question.
pub(super) fn letters(text: &str, questions: usize) -> String {
    text.chars().filter(|letter| matches!(letter, 'y' | 'n' | 'u')).take(questions).collect()
}

/// An answer, and where it leads.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(super) struct Way<'k> {
    /// The number of the question, and what was answered.
    pub(super) from: (u32, Answer),
    pub(super) to: &'k Destination,
}

impl<'k> Way<'k> {
    fn of(couplet: &'k Couplet, answer: Answer) -> Self {
        let to = match answer {
            Answer::Yes => &couplet.yes,
            Answer::No => &couplet.no,
        };
        Self { from: (couplet.number, answer), to }
    }
}

/// Where somebody is.
pub(super) struct Walk<'k> {
    key: &'k Key,
    /// Places still to follow, the one in hand last.
    open: Vec<Way<'k>>,
    begin: Option<&'k Couplet>,
    /// The ends that were reached, in order.
    pub(super) reached: Vec<Way<'k>>,
    /// What was answered where.
    pub(super) steps: Vec<(&'k Couplet, char)>,
}

impl<'k> Walk<'k> {
    pub(super) fn of(key: &'k Key, answers: &str) -> Self {
        let begin = key.couplets.first();
        let mut walk =
            Self { key, open: Vec::new(), begin, reached: Vec::new(), steps: Vec::new() };
        for letter in answers.chars() {
            let Some(couplet) = walk.here() else { break };
            walk.steps.push((couplet, letter));
            walk.begin = None;
            walk.open.pop();
            let way = |answer| Way::of(couplet, answer);
            match letter {
                'y' => walk.open.push(way(Answer::Yes)),
                'n' => walk.open.push(way(Answer::No)),
                _ => walk.open.extend([Answer::No, Answer::Yes].map(way)),
            }
            walk.arrive();
        }
        walk
    }

    /// Ends are laid aside until a question comes up.
    fn arrive(&mut self) {
        while let Some(&way) = self.open.last() {
            if self.couplet(way.to).is_some() {
                return;
            }
            self.reached.push(way);
            self.open.pop();
        }
    }

    fn couplet(&self, to: &Destination) -> Option<&'k Couplet> {
        let Destination::Couplet(number) = to else { return None };
        self.key.couplets.iter().find(|couplet| couplet.number == *number)
    }

    /// The question in hand; None: at an end.
    pub(super) fn here(&self) -> Option<&'k Couplet> {
        self.begin.or_else(|| self.couplet(self.open.last()?.to))
    }

    /// The questions at which somebody could not tell on the way here.
    pub(super) fn both_ways(&self) -> Vec<&'k Couplet> {
        let unsure = self.steps.iter().filter(|(_, letter)| *letter == 'u');
        unsure.map(|(couplet, _)| *couplet).collect()
    }

    /// The kinds that may still come out, and those that have.
    pub(super) fn possible(&self) -> BTreeSet<TaxonIx> {
        let ways = self.open.iter().chain(&self.reached);
        let mut open: Vec<&Destination> = ways.map(|way| way.to).collect();
        if let Some(couplet) = self.begin {
            open.extend([&couplet.yes, &couplet.no]);
        }
        let (mut kinds, mut met) = (BTreeSet::new(), BTreeSet::new());
        while let Some(to) = open.pop() {
            if let Destination::End(end) = to {
                kinds.extend(end.taxa.iter().copied());
            } else if let Some(couplet) = self.couplet(to)
                && met.insert(couplet.number)
            {
                open.extend([&couplet.yes, &couplet.no]);
            }
        }
        kinds
    }
}

#[cfg(test)]
mod tests {
    use spinney_model::{Couplet, Destination, End, Key, TaxonIx, Wording};

    use super::{Walk, letters};

    fn end(taxon: usize) -> Destination {
        Destination::End(End::of([TaxonIx(taxon)]))
    }

    fn three() -> Key {
        let couplet = |number, yes, no| Couplet {
            number,
            back: None,
            wording: Wording::Question(format!("Is it {number}?")),
            ask: None,
            yes,
            no,
            kept: false,
            line: None,
        };
        let two = Destination::Couplet(2);
        Key { couplets: vec![couplet(1, two, end(2)), couplet(2, end(0), end(1))] }
    }

    #[test]
    fn who_cannot_tell_follows_yes_to_its_end_and_then_no() {
        let key = three();
        let walk = Walk::of(&key, "u");
        assert_eq!(walk.here().map(|couplet| couplet.number), Some(2));
        assert_eq!(walk.possible().len(), 3);
        let walk = Walk::of(&key, "un");
        assert!(walk.here().is_none());
        assert_eq!(walk.both_ways().len(), 1);
        let reached: Vec<_> = walk.reached.iter().map(|way| way.to).collect();
        assert_eq!(reached, [&end(1), &end(2)]);
        assert_eq!(walk.possible().len(), 2);
    }

    #[test]
    fn an_address_holds_no_more_answers_than_there_are_questions() {
        assert_eq!(letters("yx<nuyyyyyy", 3), "ynu");
        assert!(Walk::of(&three(), "nyy").here().is_none());
    }
}
