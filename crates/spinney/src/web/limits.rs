//! How much is taken from a browser: bytes, fields, time, connections.
//!
//! The desk limits what is typed and how many pixels are unpacked; these limits come before it,
//! so that a page of somebody else, or a broken program, cannot fill the memory.

use std::time::Duration;

/// The most bytes of a form with its files: eight photographs of a good telephone.
pub(crate) const LONGEST_BODY: usize = 32 << 20;
/// The most bytes of a copy of a collection: eight hundred pictures as they are kept.
pub(crate) const LONGEST_COPY: usize = 128 << 20;
/// So many bytes of a form that is too large are let go by before the answer.
pub(crate) const MOST_LET_GO_BY: usize = 1 << 30;
/// The most fields of a form: the cells of a large table, twice.
pub(crate) const MOST_FIELDS: usize = 20_000;
/// The most files of a form.
pub(crate) const MOST_FILES: usize = 200;
/// The longest address, in bytes: what browsers and proxies take as well.
pub(crate) const LONGEST_ADDRESS: usize = 8_000;
/// The most bytes of all headers.
pub(crate) const LONGEST_HEAD: usize = 32 << 10;
/// The most headers.
pub(crate) const MOST_HEADERS: usize = 100;
/// How long somebody is waited for.
#[derive(Clone, Copy, Debug)]
pub(crate) struct Patience {
    /// How long the headers of a request may take, and how long a connection may be idle.
    pub(crate) head: Duration,
    /// How long a form may take.
    pub(crate) body: Duration,
}

/// A telephone at the edge of the school's wireless takes seconds; nobody takes longer.
pub(crate) const PATIENCE: Patience =
    Patience { head: Duration::from_secs(30), body: Duration::from_secs(60) };
/// The most connections: a browser opens six, a class of forty with one each.
pub(crate) const MOST_CONNECTIONS: usize = 256;
/// The most forms that are read at a time: so much memory, times 32 MiB, is the most.
pub(crate) const MOST_BODIES: usize = 4;
/// The most requests that wait for the desk.
pub(crate) const MOST_WAITING: usize = 512;
/// How long to wait when no connection could be taken.
pub(crate) const AFTER_TROUBLE: Duration = Duration::from_millis(50);
/// How often a request is asked again because somebody else kept something meanwhile.
pub(crate) const MOST_TRIES: usize = 20;

/// Heaps that long work takes apart between two looks for somebody who asks: 5 to 20 ms.
pub(crate) const HEAPS_A_STEP: u64 = 600;
