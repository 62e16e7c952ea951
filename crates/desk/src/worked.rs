//! What is worked out of a collection: the table, and every key with its second opinion.
//!
//! From a collection to derived values, each worked out once and kept until an edit touches what
//! it was worked out of. Nothing here is a fact: all of it can be thrown away and worked out
//! again.

use std::cell::RefCell;
use std::collections::BTreeMap;
use std::sync::Arc;

use spinney_collection::keys::{self, Made};
use spinney_collection::laid::Laid;
use spinney_collection::touched::Touched;
use spinney_collection::{Collection, Drawn};
use spinney_model::{KeyId, WishField};
use spinney_press::sheet::Sheet;
use spinney_voice::Tongue;

/// A collection at one time, with what is worked out of it.
#[derive(Clone, Copy)]
pub(crate) struct State<'s> {
    pub(crate) collection: &'s Collection,
    pub(crate) worked: &'s Worked,
}

impl State<'_> {
    /// The collection as a table; None: no kind yet.
    pub(crate) fn laid(self) -> Option<Arc<Laid>> {
        self.worked.laid(self.collection)
    }

    /// A key with all that is known of it, in the words by which pages are compared; None: there
    /// is no such key, or it has no kinds.
    pub(crate) fn made(self, id: KeyId) -> Option<Arc<Made>> {
        self.worked.made(self.collection, id)
    }

    /// The same as a person reads it.
    pub(crate) fn spoken(self, t: Tongue, id: KeyId) -> Option<Arc<Made>> {
        self.worked.spoken(self.collection, t, id)
    }
}

/// What was worked out so far.
#[derive(Clone, Default)]
pub(crate) struct Worked(RefCell<Memo>);

#[derive(Clone, Default)]
struct Memo {
    laid: Option<Option<Arc<Laid>>>,
    keys: BTreeMap<KeyId, Option<Arc<Made>>>,
    /// The same in other languages than that in which pages are compared.
    spoken: BTreeMap<(KeyId, &'static str), Arc<Made>>,
    /// Keys with what every other question would cost.
    explained: BTreeMap<KeyId, Arc<Made>>,
    /// The sheet that was looked at last, with everything it was made from besides the
    /// collection.
    pressed: Option<(String, Arc<Sheet>)>,
}

impl Worked {
    /// Takes over what was worked out beside it, of the same collection; what is known here
    /// stays: long work may have found a better key.
    pub(crate) fn take_over(&mut self, beside: Self) {
        let (memo, beside) = (self.0.get_mut(), beside.0.into_inner());
        memo.laid = memo.laid.take().or(beside.laid);
        for (id, made) in beside.keys {
            memo.keys.entry(id).or_insert(made);
        }
        for (id, made) in beside.explained {
            memo.explained.entry(id).or_insert(made);
        }
        memo.pressed = beside.pressed.or(memo.pressed.take());
    }

    pub(crate) fn laid(&self, collection: &Collection) -> Option<Arc<Laid>> {
        if let Some(laid) = &self.0.borrow().laid {
            return laid.clone();
        }
        let laid = Laid::of(collection).map(Arc::new);
        self.0.borrow_mut().laid = Some(laid.clone());
        laid
    }

    pub(crate) fn made(&self, collection: &Collection, id: KeyId) -> Option<Arc<Made>> {
        if let Some(made) = self.0.borrow().keys.get(&id) {
            return made.clone();
        }
        let drawn = collection.keys.get(&id);
        // Of a key that the machine finishes, the one with more said of it is the same key.
        let finished = drawn.is_some_and(Drawn::finished);
        if let Some(known) = self.0.borrow().explained.get(&id).filter(|_| finished) {
            return Some(Arc::clone(known));
        }
        let laid = self.laid(collection);
        let made = laid.zip(drawn).and_then(|(laid, key)| keys::begin(collection, &laid, key));
        let made = made.map(|(made, _)| Arc::new(made));
        self.0.borrow_mut().keys.insert(id, made.clone());
        made
    }

    /// A key as a person reads it.
    pub(crate) fn spoken(
        &self,
        collection: &Collection,
        t: Tongue,
        id: KeyId,
    ) -> Option<Arc<Made>> {
        let made = self.made(collection, id)?;
        if t.tag() == Tongue::of_tokens().tag() {
            return Some(made);
        }
        if let Some(known) = self.0.borrow().spoken.get(&(id, t.tag())) {
            return Some(Arc::clone(known));
        }
        let spoken = Arc::new(made.spoken(t));
        self.0.borrow_mut().spoken.insert((id, t.tag()), Arc::clone(&spoken));
        Some(spoken)
    }

    /// The key as if the machine had finished it, with what every other question would cost.
    pub(crate) fn explained(&self, collection: &Collection, id: KeyId) -> Option<Arc<Made>> {
        if let Some(known) = self.0.borrow().explained.get(&id) {
            return Some(Arc::clone(known));
        }
        let laid = self.laid(collection)?;
        let mut drawn = collection.keys.get(&id)?.clone();
        drawn.wishes.insert(WishField::Finish, "yes".to_owned());
        let made = Arc::new(keys::make(collection, &laid, &drawn)?);
        self.0.borrow_mut().explained.insert(id, Arc::clone(&made));
        Some(made)
    }

    /// A key that long work has found takes the place of the one that a page had time for.
    pub(crate) fn found(&mut self, id: KeyId, made: Made) {
        let memo = self.0.get_mut();
        memo.spoken.retain(|(key, _), _| *key != id);
        memo.keys.insert(id, Some(Arc::new(made)));
        memo.pressed = None;
    }

    /// The sheet that is looked at, set once.
    pub(crate) fn pressed(&self, from: String, set: impl FnOnce() -> Sheet) -> Arc<Sheet> {
        if let Some((known, sheet)) = &self.0.borrow().pressed
            && *known == from
        {
            return Arc::clone(sheet);
        }
        let sheet = Arc::new(set());
        self.0.borrow_mut().pressed = Some((from, Arc::clone(&sheet)));
        sheet
    }

    /// The sheet that was looked at last.
    #[cfg(test)]
    pub(crate) fn last_pressed(&self) -> Option<Arc<Sheet>> {
        self.0.borrow().pressed.as_ref().map(|(_, sheet)| Arc::clone(sheet))
    }

    /// Forgets what was worked out of what was touched.
    pub(crate) fn drop(&mut self, touched: Touched) {
        let memo = self.0.get_mut();
        match touched {
            Touched::Nothing => {}
            Touched::Key(id) => {
                memo.keys.remove(&id);
                memo.spoken.retain(|(key, _), _| *key != id);
                memo.explained.remove(&id);
                memo.pressed = None;
            }
            Touched::Everything => *memo = Memo::default(),
        }
    }
}

#[cfg(test)]
mod tests;
