//! Long work: going on with a search that a page had no time for.
//!
//! From a key that is not known to be the best to one that is, step by step. The host says how
//! large a step is; what was found takes the place of the key that the pages show.

use spinney_build::{Progress as Searched, Search};
use spinney_model::{KeyId, Share, limits};

use crate::Desk;
use spinney_collection::keys::{self, HEAPS_A_PAGE, Made, NODES_A_PAGE};
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
    layer: Layer,
    search: Search,
}

impl Work {
    /// Begins to look for the best key; None: there is no such key to finish.
    pub(crate) fn begin(desk: &mut Desk, key: KeyId) -> Option<Self> {
        let drawn = desk.history.now.keys.get(&key).filter(|drawn| drawn.finished())?;
        let laid = desk.worked.laid(&desk.history.now)?;
        let layer = Layer::of(&desk.history.now, &laid, drawn)?;
        let room = limits::SCREENS_SEARCH >> 20;
        let search = Search::within(&layer.matrix, &layer.wishes, room);
        Some(Self { key, heaps: 0, known: None, layer, search })
    }

    /// Goes on; whether it is over.
    fn step(&mut self, heaps: u64) -> bool {
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

impl Desk {
    /// Whether there is long work to go on with.
    pub fn at_work(&self) -> bool {
        self.worked.work.is_some()
    }

    /// Goes on with long work by so many heaps (600 take 5 to 20 ms); None: there is none.
    ///
    /// **Guarantees**: no edit, no line to keep. What was found is shown by the next page.
    /// **Cost**: the last step also gets the second opinion on the proof, which may take some
    /// tenths of a second.
    pub fn work_on(&mut self, heaps: u64) -> Option<Progress> {
        let mut work = self.worked.work.take()?;
        let over = work.step(heaps.max(1));
        let progress = Progress { heaps: work.heaps, over };
        if over {
            self.take_over(work, true);
        } else {
            self.worked.work = Some(work);
        }
        Some(progress)
    }

    /// Ends long work at once; the best key so far is kept, and may be looked at for longer.
    pub(crate) fn stop_work(&mut self) {
        if let Some(mut work) = self.worked.work.take() {
            if work.heaps < HEAPS_A_PAGE {
                work.step(HEAPS_A_PAGE);
            }
            self.take_over(work, false);
        }
    }

    fn take_over(&mut self, work: Work, over: bool) {
        let Work { key, layer, mut search, .. } = work;
        let Some(drawn) = self.history.now.keys.get(&key) else { return };
        let all = spinney_check::Settings::default().replay_nodes;
        let nodes = if over { all } else { NODES_A_PAGE };
        let made = keys::found(layer, drawn, &mut search, nodes);
        self.worked.found(key, Made { looked_long: over, ..made });
    }
}
