//! Fixing the questions of a revised key at their places, where they would not stay there by
//! themselves.
//!
//! From a key over the table of its layer to edits. A question that was sorted by hand takes
//! its sorting along to a new place.

use std::collections::BTreeMap;

use spinney_model::{
    AskOf, Asked, CharacterIx, Couplet, Destination, Edit, Fork, Key, KeyEdit, KeyId, KindId,
    Side, StateIx,
};

use crate::keys::make;
use crate::laid::Laid;
use crate::layer::Layer;
use crate::{Collection, Drawn, Question};

/// The edits that make a key of the collection this very key; they are applied to it.
pub(super) fn pins(
    collection: &mut Collection,
    id: KeyId,
    laid: &Laid,
    layer: &Layer,
    wanted: &Key,
) -> Vec<Edit> {
    let drawn = collection.keys[&id].clone();
    let by_itself = || make(collection, laid, &drawn).map(|made| made.key);
    if drawn.finished() && by_itself().is_some_and(|key| super::same(&key, wanted)) {
        return Vec::new();
    }
    let sorted = sorted(layer, &drawn);
    let mut pinning =
        Pinning { collection, id, laid, layer, wanted, sorted, edits: Vec::new() };
    if let Some(first) = wanted.couplets.first() {
        pinning.pin(first, Fork::default());
    }
    pinning.edits
}

/// The questions that were sorted by hand, each by its column in the layer.
fn sorted(layer: &Layer, drawn: &Drawn) -> BTreeMap<CharacterIx, Question> {
    let by_hand = layer.forks.iter().filter_map(|(at, heap)| {
        let character = heap.ask.as_ref()?.character;
        let question = drawn.questions.get(at)?;
        (character.0 >= layer.sorted_from).then(|| (character, question.clone()))
    });
    by_hand.collect()
}

struct Pinning<'a> {
    collection: &'a mut Collection,
    id: KeyId,
    laid: &'a Laid,
    layer: &'a Layer,
    wanted: &'a Key,
    sorted: BTreeMap<CharacterIx, Question>,
    edits: Vec<Edit>,
}

/// A question with what it means, and how kinds lie at it by hand.
struct Pin {
    words: String,
    ask: Option<AskOf>,
    sorted: BTreeMap<KindId, Side>,
    /// Whether its yes is the other's no.
    turned: bool,
}

impl Pinning<'_> {
    /// Fixes a question and all below it. What has no words that outlast the table, and all
    /// below, is left to be found again.
    fn pin(&mut self, couplet: &Couplet, at: Fork) {
        let Some(pin) = self.meaning(couplet) else { return };
        let there = self.collection.keys[&self.id].questions.get(&at);
        let stands = there.is_some_and(|there| {
            (&there.words, &there.ask, &there.sorted) == (&pin.words, &pin.ask, &pin.sorted)
        });
        if !stands {
            let (key, words, ask) = (self.id, pin.words.clone(), pin.ask.clone());
            self.edit(Edit::Key(key, KeyEdit::Ask { at: at.clone(), words, ask }));
            for (kind, side) in pin.sorted {
                let (at, side) = (at.clone(), Some(side));
                self.edit(Edit::Key(key, KeyEdit::Sort { at, kind, side }));
            }
        }
        let (yes, no) = match pin.turned {
            true => (&couplet.no, &couplet.yes),
            false => (&couplet.yes, &couplet.no),
        };
        for (answer, to) in [(true, yes), (false, no)] {
            let next = at.after(answer);
            let Destination::Couplet(number) = to else {
                self.end(next);
                continue;
            };
            let wanted = self.wanted;
            if let Some(couplet) = wanted.couplets.iter().find(|c| c.number == *number) {
                self.pin(couplet, next);
            }
        }
    }

    /// Where the key ends now, nothing is asked any more.
    fn end(&mut self, at: Fork) {
        if self.collection.keys[&self.id].questions.contains_key(&at) {
            self.edit(Edit::Key(self.id, KeyEdit::TakeOut(at)));
        }
    }

    fn edit(&mut self, edit: Edit) {
        self.collection.apply(&edit);
        self.edits.push(edit);
    }

    fn meaning(&self, couplet: &Couplet) -> Option<Pin> {
        let ask = couplet.ask.as_ref()?;
        if ask.character.0 >= self.layer.sorted_from {
            let question = self.sorted.get(&ask.character)?.clone();
            let turned = match &ask.yes {
                Asked::States(states) => !states.contains(&StateIx(0)),
                Asked::AtLeast(_) | Asked::Below(_) => false,
            };
            let Question { words, ask, sorted } = question;
            return Some(Pin { words, ask, sorted, turned });
        }
        Some(Pin {
            words: couplet.wording.first().to_owned(),
            ask: Some(self.laid.ask_of(ask)?),
            sorted: BTreeMap::new(),
            turned: false,
        })
    }
}
