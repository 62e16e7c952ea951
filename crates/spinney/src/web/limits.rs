//! How much is taken from a browser: what the table of limits says, and how long one waits.
//!
//! The desk limits what is typed and how many pixels are unpacked; these limits come before it,
//! so that a page of somebody else, or a broken program, cannot fill the memory.

use std::time::Duration;

pub(crate) use spinney_model::limits::{
    ADDRESS_BYTES as LONGEST_ADDRESS, COPY_BYTES as LONGEST_COPY, FORM_BYTES as LONGEST_BODY,
    FORM_FIELDS as MOST_FIELDS, FORM_FILES as MOST_FILES, FORM_LET_GO_BY as MOST_LET_GO_BY,
    HEAD_BYTES as LONGEST_HEAD, HEADERS as MOST_HEADERS, LONG_WAITING as MOST_LONG_WAITING,
    SMALL_FORM, TURNED_AWAY as MOST_TURNED_AWAY, WAITING as MOST_WAITING,
};
use spinney_model::limits::{
    ANSWER_RATE, ANSWER_SECONDS, CONNECTIONS, COPY_BYTES, FORM_SECONDS, HEAD_SECONDS,
    SCREENS_ROOM,
};

/// How long somebody is waited for.
#[derive(Clone, Copy, Debug)]
pub(crate) struct Patience {
    /// How long the headers of a request may take, and how long a connection may be idle.
    pub(crate) head: Duration,
    /// How long a form may take.
    pub(crate) body: Duration,
    /// How long a browser may take nothing of its answer, or next to nothing.
    pub(crate) answer: Duration,
    /// Bytes a second of a large answer that a browser takes at least.
    pub(crate) least_a_second: usize,
    /// How long somebody who is turned away is listened to, so that the answer arrives.
    pub(crate) turned_away: Duration,
}

/// What a host takes from all browsers together.
#[derive(Clone, Copy, Debug)]
pub(crate) struct Bounds {
    pub(crate) patience: Patience,
    /// Bytes of all forms that arrive or wait, of what copies hold, and of all large answers on
    /// their way.
    pub(crate) room: usize,
    /// Connections at a time.
    pub(crate) connections: usize,
}

pub(crate) const BOUNDS: Bounds = Bounds {
    patience: Patience {
        head: Duration::from_secs(HEAD_SECONDS),
        body: Duration::from_secs(FORM_SECONDS),
        answer: Duration::from_secs(ANSWER_SECONDS),
        least_a_second: ANSWER_RATE,
        turned_away: Duration::from_secs(2),
    },
    room: SCREENS_ROOM,
    connections: CONNECTIONS,
};
/// Bytes of pictures that one page shows at most.
pub(crate) const MOST_PICTURES: u64 = COPY_BYTES as u64;
/// How long to wait when no connection could be taken.
pub(crate) const AFTER_TROUBLE: Duration = Duration::from_millis(50);
/// How long answers that are ready may take to leave when Spinney ends; together with the next
/// well under the second that a person waits before pressing Ctrl-C again.
pub(crate) const LAST_ANSWERS: Duration = Duration::from_millis(300);
/// How long the clerk has then to put everything away.
pub(crate) const LAST_WORK: Duration = Duration::from_millis(300);
/// How often what takes long is asked again beside the clerk, before the clerk does it.
pub(crate) const MOST_TRIES_BESIDE: usize = 3;
/// How often a request is asked again because somebody else kept something meanwhile.
pub(crate) const MOST_TRIES: usize = 20;

/// Heaps that long work takes apart between two looks for somebody who asks: 5 to 20 ms.
pub(crate) const HEAPS_A_STEP: u64 = 600;
