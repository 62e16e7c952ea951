//! Two heaps: the kinds on a table top, sorted by hand.

use super::Route;

pub(super) const ROUTES: &[Route] = &[];
