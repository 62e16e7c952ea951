//! A key with several ways as text: `Leaflets: 3 → bramble; 5 to 8 → 2; 9 or more → rowan`.
//!
//! From questions of yes and no, and which of them are answered in the same look, to numbered
//! looks. States that no kind behind a way has are not named. It chooses no question.

use std::collections::{BTreeMap, BTreeSet};

use spinney_model::{
    Ask, Asked, CharacterIx, Couplet, Destination, Key, Matrix, Quantity, Scale, StateIx,
    TaxonIx, Value,
};

use super::grammar::capital;
use super::states;

/// A way out of a look: what was answered on the way to it, and where it leads.
struct Way<'k> {
    answers: Vec<(&'k Ask, bool)>,
    to: &'k Destination,
}

/// The key as text, a look a block: on one line where it asks for yes or no.
///
/// `same_look`: numbers of couplets that are answered in the same look as the one before them.
/// Looks are numbered anew, from 1.
pub fn many_ways(key: &Key, same_look: &BTreeSet<u32>, matrix: &Matrix) -> String {
    let looks = || key.couplets.iter().filter(|couplet| !same_look.contains(&couplet.number));
    let numbers: BTreeMap<u32, usize> =
        looks().map(|couplet| couplet.number).zip(1..).collect();
    let writing = Writing { key, same_look, matrix, numbers };
    looks().map(|couplet| writing.look(couplet)).collect()
}

struct Writing<'a> {
    key: &'a Key,
    same_look: &'a BTreeSet<u32>,
    matrix: &'a Matrix,
    /// The look that begins with a couplet.
    numbers: BTreeMap<u32, usize>,
}

impl<'a> Writing<'a> {
    fn look(&self, couplet: &'a Couplet) -> String {
        let number = self.numbers[&couplet.number];
        let mut ways = Vec::new();
        self.ways(couplet, &mut Vec::new(), &mut ways);
        let Some(ask) = couplet.ask.as_ref().filter(|_| ways.len() > 2) else {
            let [yes, no] = [&couplet.yes, &couplet.no].map(|to| self.destination(to));
            let question = couplet.wording.first();
            return format!("{number}. {question} Yes → {yes}, No → {no}\n");
        };
        let name = capital(self.matrix.character(ask.character).name.trim());
        let mut lines: Vec<(i64, String)> =
            ways.iter().map(|way| self.way(ask.character, way)).collect();
        lines.sort();
        let lines: String = lines.into_iter().map(|(_, line)| line).collect();
        format!("{number}. {name}:\n{lines}")
    }

    fn ways(
        &self,
        couplet: &'a Couplet,
        answers: &mut Vec<(&'a Ask, bool)>,
        ways: &mut Vec<Way<'a>>,
    ) {
        for (yes, to) in [(true, &couplet.yes), (false, &couplet.no)] {
            answers.extend(couplet.ask.as_ref().map(|ask| (ask, yes)));
            match self.couplet(to).filter(|next| self.same_look.contains(&next.number)) {
                Some(next) => self.ways(next, answers, ways),
                None => ways.push(Way { answers: answers.clone(), to }),
            }
            answers.pop();
        }
    }

    fn couplet(&self, to: &Destination) -> Option<&'a Couplet> {
        let Destination::Couplet(number) = to else { return None };
        self.key.couplets.iter().find(|couplet| couplet.number == *number)
    }

    /// A way as a line, and what it is sorted by.
    fn way(&self, character: CharacterIx, way: &Way<'_>) -> (i64, String) {
        let (order, words) = match &self.matrix.character(character).scale {
            Scale::Words { states } => {
                let left = self.states(character, states.len(), way);
                let names = states::names(self.matrix.character(character), &left);
                (left.first().map_or(0, |state| state.0 as i64), states::joined(&names))
            }
            Scale::Counts | Scale::Measure { .. } => numbers(&way.answers),
        };
        (order, format!("   {words} → {}\n", self.destination(way.to)))
    }

    fn states(&self, at: CharacterIx, all: usize, way: &Way<'_>) -> BTreeSet<StateIx> {
        let within = |state: &StateIx| {
            way.answers.iter().all(|(ask, yes)| match &ask.yes {
                Asked::States(asked) => asked.contains(state) == *yes,
                Asked::AtLeast(_) | Asked::Below(_) => true,
            })
        };
        let left: BTreeSet<StateIx> = (0..all).map(StateIx).filter(within).collect();
        let mut taxa = BTreeSet::new();
        self.below(way.to, &mut taxa);
        let has = |state: &StateIx| {
            taxa.iter().any(|taxon| match &self.matrix.cell(*taxon, at).value {
                Value::States(shares) => shares.iter().any(|(known, _)| known == state),
                _ => false,
            })
        };
        let met: BTreeSet<StateIx> = left.iter().copied().filter(has).collect();
        if met.is_empty() { left } else { met }
    }

    /// All kinds that come out behind a way.
    fn below(&self, to: &Destination, taxa: &mut BTreeSet<TaxonIx>) {
        if let Destination::End(end) = to {
            taxa.extend(&end.taxa);
        }
        if let Some(couplet) = self.couplet(to) {
            self.below(&couplet.yes, taxa);
            self.below(&couplet.no, taxa);
        }
    }

    fn destination(&self, to: &Destination) -> String {
        match to {
            Destination::Couplet(number) => {
                self.numbers.get(number).map_or_else(String::new, usize::to_string)
            }
            Destination::End(end) => {
                let name = |taxon: &TaxonIx| self.matrix.taxon(*taxon).name.as_str();
                states::joined(&end.taxa.iter().map(name).collect::<Vec<_>>())
            }
            Destination::Missing => String::new(),
        }
    }
}

/// Whole numbers: `4 or fewer`, `5`, `6 to 8`, `9 or more`; and the smallest of them.
fn numbers(answers: &[(&Ask, bool)]) -> (i64, String) {
    let whole = |quantity: Quantity| quantity.thousandths().div_euclid(1000);
    let (mut from, mut below): (Option<i64>, Option<i64>) = (None, None);
    for (ask, yes) in answers {
        let (at, more) = match ask.yes {
            Asked::AtLeast(at) => (whole(at), *yes),
            Asked::Below(at) => (whole(at), !yes),
            Asked::States(_) => continue,
        };
        match more {
            true => from = Some(from.map_or(at, |from| from.max(at))),
            false => below = Some(below.map_or(at, |below| below.min(at))),
        }
    }
    let words = match (from, below) {
        (Some(from), Some(below)) if below - from == 1 => from.to_string(),
        (Some(from), Some(below)) => format!("{from} to {}", below - 1),
        (Some(from), None) => format!("{from} or more"),
        (None, Some(1)) => "0".to_owned(),
        (None, Some(below)) => format!("{} or fewer", below - 1),
        (None, None) => "any".to_owned(),
    };
    (from.unwrap_or(i64::MIN), words)
}
