//! Where a collection is kept while it is open.
//!
//! From lines and pictures to where they stay: for the demo in memory, and gone afterwards.

use std::collections::BTreeMap;

/// A journal with its pictures.
#[derive(Default)]
pub(crate) struct Collection {
    pub(crate) lines: Vec<Vec<u8>>,
    pub(crate) pictures: BTreeMap<String, Vec<u8>>,
}
