//! Where two keys ask the same words and sort a kind differently.
//!
//! From the keys of a collection to what their people may want to look at together. Where both
//! cards say something of the same states of the table, and people do not agree in that cell or
//! somebody has decided, they are left out: it is said of the cell. It decides nothing.

use std::collections::BTreeMap;

use spinney_model::{AskOf, AskedOf, Fork, KeyId, KindId, Side};

use super::{Agreed, Collection, Question};
use crate::laid::{Laid, folded};

/// A kind that two keys sort differently though they ask the same.
pub struct Unlike {
    /// Which kind.
    pub kind: KindId,
    /// The question, as the first of them asks it.
    pub words: String,
    /// Where its card is in each key.
    pub cards: Vec<Card>,
}

/// Where a card lies in a key.
pub struct Card {
    /// In which key.
    pub key: KeyId,
    /// At which question.
    pub at: Fork,
    /// The group; where a group has several keys, with the key's name.
    pub who: String,
    /// On which side.
    pub side: Side,
}

/// All such kinds, in their order. `laid`: the table, if it can be read.
pub fn unlike(collection: &Collection, laid: Option<&Laid>) -> Vec<Unlike> {
    // Of a column that is not there any more, or that the kind does not have, no cell says it.
    let speaks = |card: &Card, kind, of: &AskOf| {
        let puts = laid.map_or(&[][..], |laid| laid.sorted.puts(kind, of.character));
        puts.iter().any(|put| put.key == card.key)
    };
    // Two keys of one group are one voice, and what a group typed itself counts before its
    // cards: then the cell may come to one thing though the cards differ.
    let told = |kind, of: &AskOf| {
        let decided = !collection.cells.said(kind, of.character, "").is_empty();
        let agreed = laid.map(|laid| laid.said.agreed(kind, of.character));
        decided || matches!(agreed, Some(Agreed::Contradicted))
    };
    let mut alike = BTreeMap::<(KindId, String), (&str, Vec<(Card, Option<&AskOf>)>)>::new();
    for (&key, drawn) in &collection.keys {
        for (at, question) in &drawn.questions {
            for (&kind, &side) in question.sorted.iter().filter(|(k, _)| drawn.lies_at(at, **k))
            {
                let card = Card { key, at: at.clone(), who: drawn.who(key), side };
                let same = alike.entry((kind, folded(&question.words)));
                let (_, cards) = same.or_insert_with(|| (question.words.as_str(), Vec::new()));
                cards.push((card, of_states(question)));
            }
        }
    }
    let unlike = alike.into_iter().filter_map(|((kind, _), (words, cards))| {
        let differ = pairs(&cards).any(|((one, of), (other, of_other))| {
            let said_of_cell = of == of_other
                && of.is_some_and(|of| {
                    speaks(one, kind, of) && speaks(other, kind, of) && told(kind, of)
                });
            one.key != other.key && one.side != other.side && !said_of_cell
        });
        let cards = cards.into_iter().map(|(card, _)| card).collect();
        differ.then(|| Unlike {
            kind,
            words: words.to_owned(),
            cards: named(collection, cards),
        })
    });
    unlike.collect()
}

/// The states that a question asks for, if it is linked to the table.
fn of_states(question: &Question) -> Option<&AskOf> {
    question.ask.as_ref().filter(|of| matches!(of.yes, AskedOf::States(_)))
}

fn pairs<T>(all: &[T]) -> impl Iterator<Item = (&T, &T)> {
    all.iter().enumerate().flat_map(|(at, one)| all[at + 1..].iter().map(move |o| (one, o)))
}

/// Two keys of one group are told apart by their own names.
fn named(collection: &Collection, mut cards: Vec<Card>) -> Vec<Card> {
    let groups: Vec<(KeyId, String)> =
        cards.iter().map(|card| (card.key, folded(&card.who))).collect();
    for card in &mut cards {
        let group = folded(&card.who);
        let name = &collection.keys[&card.key].name;
        if groups.iter().any(|(key, who)| *key != card.key && *who == group)
            && folded(name) != group
        {
            card.who = format!("{} · {name}", card.who);
        }
    }
    cards
}
