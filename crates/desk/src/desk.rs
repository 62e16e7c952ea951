//! One collection on the desk: what its journal says, what was worked out of it so far, and the
//! long work that somebody waits for.
//!
//! This is what every handler sees. It is changed by the lines that the host has kept, and by
//! nothing else; long work goes on in it without changing the collection: from a key that is not
//! known to be the best to one that is, step by step. The host says how large a step is.

use std::sync::Arc;

use spinney_build::{Progress as Searched, Search};
use spinney_collection::Collection;
use spinney_collection::history::History;
use spinney_collection::keys::{self, HEAPS_A_PAGE, Made, NODES_A_PAGE};
use spinney_collection::laid::Laid;
use spinney_collection::layer::Layer;
use spinney_collection::touched::Touched;
use spinney_exchange::journal::{self, LineError};
use spinney_model::{KeyId, Share, limits};
use spinney_voice::Tongue;

use crate::size::TooLarge;
use crate::worked::{State, Worked};

/// One collection on the desk.
#[derive(Default)]
pub struct Desk {
    /// Shared with snapshots.
    pub(crate) history: Arc<History>,
    pub(crate) worked: Worked,
    /// Long work that somebody started.
    pub(crate) work: Option<Work>,
    /// The bytes of all lines.
    pub(crate) bytes: usize,
    /// What of it is too large for the screens.
    pub(crate) too_large: Option<TooLarge>,
}

impl Desk {
    /// Takes in lines that the host has kept, its own or another program's.
    pub fn catch_up<'l>(
        &mut self,
        lines: impl IntoIterator<Item = &'l [u8]>,
    ) -> Result<(), LineError> {
        let mut bytes = self.bytes;
        let entries = lines.into_iter().map(|line| {
            bytes += line.len();
            journal::read(line)
        });
        let entries = entries.collect::<Result<Vec<_>, _>>()?;
        if !entries.is_empty() {
            let touched = Touched::by(&self.history.now, &entries);
            self.worked.drop(touched);
            self.work = self.work.take().filter(|work| !touched.touches(work.key));
            Arc::make_mut(&mut self.history).add_all(entries);
            self.bytes = bytes;
            self.too_large = TooLarge::of(&self.history.now);
        }
        Ok(())
    }

    /// How many lines of the journal it has seen.
    pub fn head(&self) -> u64 {
        self.history.entries.len() as u64
    }

    /// How far a page that is shown now has seen, as its forms say it: the number of the last
    /// line and its time. In a journal from which something was removed for good, or in another
    /// collection, the line of that number is another one.
    pub fn mark(&self) -> String {
        let last = self.history.entries.last().map_or(0, |entry| entry.at);
        format!("{}-{last}", self.history.entries.len())
    }

    /// The collection as it stands.
    pub(crate) fn now(&self) -> State<'_> {
        State { collection: &self.history.now, worked: &self.worked }
    }

    /// The collection as a table; None: no kind yet.
    pub(crate) fn laid(&self) -> Option<Arc<Laid>> {
        self.now().laid()
    }

    /// A key with all that is known of it, as a person reads it; None: there is no such key, or it
    /// has no kinds.
    pub(crate) fn made(&self, t: Tongue, id: KeyId) -> Option<Arc<Made>> {
        self.now().spoken(t, id)
    }

    /// The key as if the machine had finished it, with what every other question would cost.
    pub(crate) fn explained(&self, id: KeyId) -> Option<Arc<Made>> {
        self.worked.explained(&self.history.now, id)
    }

    /// Whether there is long work to go on with.
    pub fn at_work(&self) -> bool {
        self.work.is_some()
    }

    /// Begins to look for the best key, where there is such a key to finish.
    pub(crate) fn begin_work(&mut self, key: KeyId) {
        let laid = self.laid();
        self.work = laid.and_then(|laid| Work::begin(&self.history.now, &laid, key));
    }

    /// Goes on with long work by so many heaps (600 take 5 to 20 ms); None: there is none.
    ///
    /// **Guarantees**: no edit, no line to keep. What was found is shown by the next page.
    /// **Cost**: the last step also gets the second opinion on the proof, which may take some
    /// tenths of a second.
    pub fn work_on(&mut self, heaps: u64) -> Option<Progress> {
        let mut work = self.work.take()?;
        let over = work.step(heaps.max(1));
        let progress = Progress { heaps: work.heaps, over };
        if over {
            self.take_over(work, true);
        } else {
            self.work = Some(work);
        }
        Some(progress)
    }

    /// Ends long work at once; the best key so far is kept, and may be looked at for longer.
    pub(crate) fn stop_work(&mut self) {
        if let Some(mut work) = self.work.take() {
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
