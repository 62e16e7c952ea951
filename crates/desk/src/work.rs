//! Long work: going on with a search that a page had no time for.
//!
//! From a key that is not known to be the best to one that is, step by step. The host says how
//! large a step is; what was found takes the place of the key that the pages show.

use spinney_build::{Progress as Searched, Search};
use spinney_model::{KeyId, Share, limits};

use spinney_collection::Collection;
use spinney_collection::laid::Laid;
use spinney_collection::layer::Layer;

/// Heaps after which nobody waits any longer: about a minute.
const MOST_HEAPS: u64 = 2_000_000;

/// How far long work has come.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Progress {
    /// Heaps taken apart so far.
    pub heaps: u64,
    /// Whether it is over: proved, or nothing more can be remembered.
    pub over: bool,
}

/// Work that somebody started.
pub(crate) struct Work {
    pub(crate) key: KeyId,
    pub(crate) heaps: u64,
    /// What the best key so far takes, and what every key takes at least.
    pub(crate) known: Option<(Share, Share)>,
    pub(crate) layer: Layer,
    pub(crate) search: Search,
}

impl Work {
    /// Begins to look for the best key; None: there is no such key to finish.
    pub(crate) fn begin(collection: &Collection, laid: &Laid, key: KeyId) -> Option<Self> {
        let drawn = collection.keys.get(&key).filter(|drawn| drawn.finished())?;
        let layer = Layer::of(collection, laid, drawn)?;
        let room = limits::SCREENS_SEARCH >> 20;
        let search = Search::within(&layer.matrix, &layer.wishes, room);
        Some(Self { key, heaps: 0, known: None, layer, search })
    }

    /// Goes on; whether it is over.
    pub(crate) fn step(&mut self, heaps: u64) -> bool {
        self.heaps = self.heaps.saturating_add(heaps);
        match self.search.step(heaps) {
            Searched::Working { best, lower_bound } => {
                self.known = best.map(|best| (best, lower_bound));
                self.heaps >= MOST_HEAPS
            }
            Searched::MemoryFull | Searched::Done => true,
        }
    }
}
