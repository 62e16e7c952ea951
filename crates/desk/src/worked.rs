//! What is worked out of a collection: the table, and every key with its second opinion.
//!
//! From a collection to derived values, each worked out once and kept until an edit. Nothing
//! here is a fact: all of it can be thrown away and worked out again.

use std::collections::BTreeMap;
use std::sync::Arc;

use spinney_collection::keys::{self, Made};
use spinney_collection::laid::Laid;
use spinney_collection::{Collection, Drawn};
use spinney_model::{KeyId, WishField};

use crate::pressed::Pressed;
use crate::work::Work;

/// What was worked out since the last edit.
#[derive(Default)]
pub(crate) struct Worked {
    laid: Option<Option<Arc<Laid>>>,
    keys: BTreeMap<KeyId, Option<Arc<Made>>>,
    /// Keys with what every other question would cost.
    explained: BTreeMap<KeyId, Arc<Made>>,
    /// Long work that somebody started.
    pub(crate) work: Option<Work>,
    /// The sheet that was looked at last.
    pub(crate) pressed: Option<Arc<Pressed>>,
}

impl Worked {
    /// Everything has to be worked out again.
    pub(crate) fn forget(&mut self) {
        *self = Self::default();
    }

    /// The same, to be gone on with beside it; nobody works there.
    pub(crate) fn shared(&self) -> Self {
        Self {
            laid: self.laid.clone(),
            keys: self.keys.clone(),
            explained: self.explained.clone(),
            work: None,
            pressed: self.pressed.clone(),
        }
    }

    /// Takes over what was worked out beside it, of the same collection; what is known here
    /// stays: long work may have found a better key meanwhile.
    pub(crate) fn take_over(&mut self, beside: Self) {
        self.laid = self.laid.take().or(beside.laid);
        for (id, made) in beside.keys {
            self.keys.entry(id).or_insert(made);
        }
        for (id, made) in beside.explained {
            self.explained.entry(id).or_insert(made);
        }
        self.pressed = beside.pressed.or(self.pressed.take());
    }

    /// The collection as a table; None: no kind yet.
    pub(crate) fn laid(&mut self, collection: &Collection) -> Option<Arc<Laid>> {
        self.laid.get_or_insert_with(|| Laid::of(collection).map(Arc::new)).clone()
    }

    /// A key with all that is known of it; None: there is no such key, or it has no kinds.
    pub(crate) fn made(&mut self, collection: &Collection, id: KeyId) -> Option<Arc<Made>> {
        if let Some(made) = self.keys.get(&id) {
            return made.clone();
        }
        let drawn = collection.keys.get(&id);
        // Of a key that the machine finishes, the one with more said of it is the same key.
        let known = self.explained.get(&id).filter(|_| drawn.is_some_and(Drawn::finished));
        if let Some(known) = known {
            return Some(Arc::clone(known));
        }
        let laid = self.laid(collection);
        let made = laid.zip(drawn).and_then(|(laid, key)| keys::begin(collection, &laid, key));
        let made = made.map(|(made, _)| Arc::new(made));
        self.keys.insert(id, made.clone());
        made
    }

    /// The key as if the machine had finished it, with what every other question would cost.
    pub(crate) fn explained(
        &mut self,
        collection: &Collection,
        id: KeyId,
    ) -> Option<Arc<Made>> {
        if let Some(known) = self.explained.get(&id) {
            return Some(Arc::clone(known));
        }
        let laid = self.laid(collection)?;
        let mut drawn = collection.keys.get(&id)?.clone();
        drawn.wishes.insert(WishField::Finish, "yes".to_owned());
        let made = Arc::new(keys::make(collection, &laid, &drawn)?);
        self.explained.insert(id, Arc::clone(&made));
        Some(made)
    }

    /// A key that long work has found takes the place of the one that a page had time for.
    pub(crate) fn found(&mut self, id: KeyId, made: Made) {
        self.keys.insert(id, Some(Arc::new(made)));
    }
}
