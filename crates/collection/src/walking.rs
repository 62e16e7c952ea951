//! Where somebody is in a key who gave some answers, any of which may be "can't tell".
//!
//! From a key and answers to the question in hand, the ways still to follow and the ends that
//! were reached; and what the answers say of what is in the hand. After "can't tell" the way of
//! yes is followed to its end, then the way of no. Every question of a key that is a tree is met
//! once at most; one that is met again is not asked again.

use std::collections::BTreeSet;

use spinney_exchange::table;
use spinney_model::{
    Answer, AskedOf, CharacterId, Couplet, Destination, End, Fork, Key, KindId, Scale, Side,
    TaxonIx,
};

use crate::keys::{KeyFrom, Made};

/// An answer; None: can't tell.
pub type Given = Option<bool>;

/// The letter of an answer in an address.
pub fn letter(given: Given) -> char {
    match given {
        Some(true) => 'y',
        Some(false) => 'n',
        None => 'u',
    }
}

/// The answer of a letter; None: it is no answer.
pub fn given(letter: char) -> Option<Given> {
    [Some(true), Some(false), None].into_iter().find(|given| self::letter(*given) == letter)
}

/// An answer, and where it leads.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Way<'k> {
    /// The number of the question, and what was answered.
    pub from: (u32, Answer),
    /// Where it leads.
    pub to: &'k Destination,
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

/// A walk under way.
pub struct Walking<'k> {
    key: &'k Key,
    /// Places still to follow, the one in hand last.
    open: Vec<Way<'k>>,
    begin: Option<&'k Couplet>,
    /// The ends that were reached, in order.
    pub reached: Vec<Way<'k>>,
    /// What was answered where.
    pub steps: Vec<(&'k Couplet, Given)>,
}

impl<'k> Walking<'k> {
    /// Follows a key by answers; those after its ends are not heard.
    pub fn of(key: &'k Key, answers: impl IntoIterator<Item = Given>) -> Self {
        let begin = key.couplets.first();
        let (open, reached, steps) = (Vec::new(), Vec::new(), Vec::new());
        let mut walk = Self { key, open, begin, reached, steps };
        for given in answers {
            let Some(couplet) = walk.here() else { break };
            walk.steps.push((couplet, given));
            walk.begin = None;
            walk.open.pop();
            let way = |answer| Way::of(couplet, answer);
            match given {
                Some(true) => walk.open.push(way(Answer::Yes)),
                Some(false) => walk.open.push(way(Answer::No)),
                None => walk.open.extend([Answer::No, Answer::Yes].map(way)),
            }
            walk.arrive();
        }
        walk
    }

    /// Ends are laid aside until a question comes up.
    fn arrive(&mut self) {
        while let Some(&way) = self.open.last() {
            let next = self.couplet(way.to);
            let met = |couplet: &Couplet| {
                self.steps.iter().any(|(known, _)| known.number == couplet.number)
            };
            if next.is_some_and(|couplet| !met(couplet)) {
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
    pub fn here(&self) -> Option<&'k Couplet> {
        self.begin.or_else(|| self.couplet(self.open.last()?.to))
    }

    /// The questions at which somebody could not tell on the way here.
    pub fn both_ways(&self) -> Vec<&'k Couplet> {
        let unsure = self.steps.iter().filter(|(_, given)| given.is_none());
        unsure.map(|(couplet, _)| *couplet).collect()
    }

    /// The kinds that may still come out, and those that have.
    pub fn possible(&self) -> BTreeSet<TaxonIx> {
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

    /// The kinds at whose ends it came out, each once, in the order of the ways.
    pub fn came_out(&self, made: &Made) -> Vec<KindId> {
        let mut kinds: Vec<KindId> = Vec::new();
        let ends = self.reached.iter().filter_map(|way| match way.to {
            Destination::End(End { taxa, .. }) => Some(taxa),
            Destination::Couplet(_) | Destination::Missing => None,
        });
        for taxon in ends.flatten() {
            let kind = made.layer.kinds[taxon.0];
            if !kinds.contains(&kind) {
                kinds.push(kind);
            }
        }
        kinds
    }

    /// The answers to questions that people sorted by hand: there what is in the hand lies so as
    /// well.
    pub fn sides(&self, key: KeyFrom<'_>) -> Vec<(Fork, Side)> {
        let layer = &key.made.layer;
        let side = |(couplet, given): &(&Couplet, Given)| {
            let place = key.made.places.get(&couplet.number)?;
            let ask = layer.forks.get(place)?.ask.as_ref()?;
            let by_hand = ask.character.0 >= layer.sorted_from;
            let side = match given {
                Some(true) => Side::Yes,
                Some(false) => Side::No,
                None => Side::Both,
            };
            let drawn = key.drawn().questions.contains_key(place);
            (by_hand && drawn).then(|| (place.clone(), side))
        };
        self.steps.iter().filter_map(side).collect()
    }

    /// What the answers say of a character, as far as they settle it, as it is typed.
    pub fn settled(&self, key: KeyFrom<'_>, character: CharacterId) -> Option<String> {
        let at = key.laid.character(character)?;
        let Scale::Words { states } = &key.laid.matrix.character(at).scale else { return None };
        let mut left: Vec<&String> = states.iter().collect();
        for (couplet, given) in &self.steps {
            let of = couplet.ask.as_ref().and_then(|ask| key.of_the_table(ask));
            if let (Some(of), Some(yes)) = (of.filter(|of| of.character == character), given)
                && let AskedOf::States(asked) = of.yes
            {
                left.retain(|state| asked.contains(state) == *yes);
            }
        }
        match left.as_slice() {
            [only] if states.len() > 1 => Some(table::as_typed(only)),
            _ => None,
        }
    }

    /// The questions about a count or a measure that were answered, in their words: a threshold
    /// is no number yet, so that the table learns nothing from it by itself.
    pub fn numbers(&self, key: KeyFrom<'_>, character: CharacterId) -> Vec<(&'k str, bool)> {
        let at = key.laid.character(character);
        let scale = at.map(|at| &key.laid.matrix.character(at).scale);
        if scale.is_none_or(|scale| matches!(scale, Scale::Words { .. })) {
            return Vec::new();
        }
        let said = self.steps.iter().filter_map(|(couplet, given)| {
            let of = key.laid.ask_of(couplet.ask.as_ref()?)?;
            (of.character == character).then_some((couplet.wording.first(), (*given)?))
        });
        said.collect()
    }
}

#[cfg(test)]
mod tests {
    use spinney_model::{Couplet, Destination, End, Key, TaxonIx, Wording};

    use super::{Walking, given};

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

    fn walk<'k>(key: &'k Key, letters: &str) -> Walking<'k> {
        Walking::of(key, letters.chars().filter_map(given))
    }

    #[test]
    fn who_cannot_tell_follows_yes_to_its_end_and_then_no() {
        let key = three();
        let first = walk(&key, "u");
        assert_eq!(first.here().map(|couplet| couplet.number), Some(2));
        assert_eq!(first.possible().len(), 3);
        let second = walk(&key, "un");
        assert!(second.here().is_none());
        assert_eq!(second.both_ways().len(), 1);
        let reached: Vec<_> = second.reached.iter().map(|way| way.to).collect();
        assert_eq!(reached, [&end(1), &end(2)]);
        assert_eq!(second.possible().len(), 2);
    }

    #[test]
    fn answers_after_the_end_are_not_heard() {
        let key = three();
        assert!(walk(&key, "nyy").here().is_none());
        assert_eq!(walk(&key, "nyy").steps.len(), 1);
    }

    #[test]
    fn a_key_that_turns_back_asks_nothing_twice() {
        let mut key = three();
        key.couplets[1].yes = Destination::Couplet(1);
        let round = walk(&key, "yy");
        assert!(round.here().is_none());
        assert_eq!(round.steps.len(), 2);
    }
}
