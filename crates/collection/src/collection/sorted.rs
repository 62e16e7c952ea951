//! What hands say of the table: a card that lies at a question which is linked to it.
//!
//! From how groups sorted, and from the table as it was typed, to what each group says of which
//! cell. These are no facts of their own: the sorting is the fact, and what it says goes when a
//! card is taken back. It lies beside what others say of the cell and never over it. Where a
//! side does not come to one thing (a "no" among three states leaves two), it fills nothing,
//! but says what it leaves open ([`Saying`]).

use std::collections::{BTreeMap, BTreeSet};

use spinney_exchange::table;
use spinney_model::{
    AskOf, AskedOf, CharacterId, Fork, KeyId, KindId, Scale, Side, Value, WishField,
};

use super::constraint::States;
use super::{Collection, Drawn, Question, Saying};
use crate::laid::{Laid, folded};

/// A card on a side of a question that is linked to the table.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Put {
    /// The key whose group put it there.
    pub key: KeyId,
    /// The group.
    pub who: String,
    /// The question's words.
    pub words: String,
    /// Where it was put.
    pub side: Side,
    says: Saying,
    at: Fork,
}

/// All cards that say something of a cell.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct Sorted {
    puts: BTreeMap<(KindId, CharacterId), Vec<Put>>,
    /// The states of the characters of which hands say something.
    known: BTreeMap<CharacterId, States>,
}

impl Sorted {
    /// What hands say beside a table that was laid out as it was typed.
    pub fn of(collection: &Collection, typed: &Laid) -> Self {
        let mut all = Self::default();
        for (&key, drawn) in &collection.keys {
            for (at, question) in &drawn.questions {
                let Some(AskOf { character, yes: AskedOf::States(yes) }) = &question.ask else {
                    continue;
                };
                let Some(states) = states(typed, *character, yes) else { continue };
                let lying = question.sorted.iter();
                let lying = lying.filter(|(kind, _)| {
                    drawn.lies_at(at, **kind) && has_it(typed, **kind, *character)
                });
                for (&kind, &side) in lying {
                    let known = states.iter().map(|state| folded(state));
                    all.known.entry(*character).or_insert_with(|| known.collect());
                    all.puts.entry((kind, *character)).or_default().push(Put {
                        key,
                        who: drawn.who(key),
                        words: question.words.clone(),
                        side,
                        says: says(yes, side, states),
                        at: at.clone(),
                    });
                }
            }
        }
        all
    }

    /// Whether hands say nothing of the table.
    pub fn is_empty(&self) -> bool {
        self.puts.is_empty()
    }

    /// The characters of which hands say something.
    pub fn characters(&self) -> BTreeSet<CharacterId> {
        self.known.keys().copied().collect()
    }

    /// The states of such a character, folded.
    pub(super) fn known(&self, at: CharacterId) -> &States {
        const NONE: &States = &States::new();
        self.known.get(&at).unwrap_or(NONE)
    }

    /// The cards that say something of a cell.
    pub fn puts(&self, kind: KindId, at: CharacterId) -> &[Put] {
        self.puts.get(&(kind, at)).map_or(&[], Vec::as_slice)
    }

    /// What to write into a cell so that it says what a card says; None: that is several
    /// things, between which the table cannot choose for a person.
    pub fn text(&self, key: KeyId, at: &Fork, kind: KindId) -> Option<&str> {
        let mut puts = self.puts.iter().filter(|((of, _), _)| *of == kind).flat_map(|(_, p)| p);
        puts.find(|put| put.key == key && put.at == *at)?.says.text()
    }

    /// Puts what hands say beside what was typed. What a group typed itself counts before how
    /// it sorted.
    pub(super) fn beside(
        &self,
        all: &mut BTreeMap<(KindId, CharacterId), BTreeMap<String, Saying>>,
    ) {
        for (&(kind, at), puts) in &self.puts {
            let voices = all.entry((kind, at)).or_default();
            let typed_by: BTreeSet<String> = voices.keys().map(|who| folded(who)).collect();
            for put in puts.iter().filter(|put| !typed_by.contains(&folded(&put.who))) {
                say(voices, put);
            }
        }
    }
}

impl Drawn {
    /// Whose key it is, for naming who says something; never empty, since that would be the
    /// table itself.
    pub fn who(&self, id: KeyId) -> String {
        let names = [self.wish(WishField::Group), &self.name].map(str::trim);
        let name = names.into_iter().find(|name| !name.is_empty());
        name.map_or_else(|| format!("\u{2116} {}", id.0), str::to_owned)
    }

    /// Whether a kind belongs to this key and no hand sent it another way before this place.
    pub fn lies_at(&self, at: &Fork, kind: KindId) -> bool {
        let elsewhere = |length: usize| {
            let above = self.questions.get(&Fork(at.0[..length].to_vec()));
            match above.and_then(|question| question.sorted.get(&kind)) {
                Some(Side::Yes) => !at.0[length],
                Some(Side::No) => at.0[length],
                Some(Side::Both) | None => false,
            }
        };
        self.is_for(kind) && !(0..at.0.len()).any(elsewhere)
    }

    /// The first question where both kinds lie and hands put them on different sides: as one
    /// kind, one of them would lose its card.
    pub fn parts(&self, one: KindId, other: KindId) -> Option<(&Fork, &Question)> {
        self.questions.iter().find(|(at, question)| {
            let side = |kind| question.sorted.get(&kind).filter(|_| self.lies_at(at, kind));
            matches!((side(one), side(other)), (Some(one), Some(other)) if one != other)
        })
    }
}

/// The states of a character, if it has all that are asked for.
fn states<'l>(typed: &'l Laid, of: CharacterId, yes: &[String]) -> Option<&'l [String]> {
    let Scale::Words { states } = &typed.matrix.character(typed.character(of)?).scale else {
        return None;
    };
    yes.iter().all(|word| states.contains(word)).then_some(states.as_slice())
}

/// Whether a kind has such a thing at all: a leaf in one piece says no to "are the leaflets in
/// pairs?", and nothing of leaflets.
fn has_it(typed: &Laid, kind: KindId, of: CharacterId) -> bool {
    let place = typed.taxon(kind).zip(typed.character(of));
    place.is_some_and(|(kind, at)| typed.matrix.cell(kind, at).value != Value::DoesNotApply)
}

fn says(yes: &[String], side: Side, states: &[String]) -> Saying {
    let (yes, no): (Vec<String>, Vec<String>) =
        states.iter().cloned().partition(|state| yes.contains(state));
    match (side, yes.as_slice(), no.as_slice()) {
        (Side::Yes, [one], _) | (Side::No, _, [one]) => Saying::Text(table::as_typed(one)),
        (Side::Both, [one], [other]) => {
            let both = [one, other].map(|state| table::as_typed(state));
            Saying::Text(both.join(" or "))
        }
        (Side::Yes, ..) => Saying::OneOf(yes),
        (Side::No, ..) => Saying::NoneOf(yes),
        (Side::Both, ..) => Saying::Varies(yes),
    }
}

/// A group that says two things, in two places, says each under the words of its question.
fn say(voices: &mut BTreeMap<String, Saying>, put: &Put) {
    let with_words = format!("{} · {}", put.who, put.words);
    let numbered = (2..).map(|number: u32| format!("{with_words} ({number})"));
    let free = |who: &String| voices.get(who).is_none_or(|said| *said == put.says);
    let mut names = [put.who.clone(), with_words.clone()].into_iter().chain(numbered);
    let who = names.find(free).expect("numbers do not end");
    voices.insert(who, put.says.clone());
}

#[cfg(test)]
mod tests;
