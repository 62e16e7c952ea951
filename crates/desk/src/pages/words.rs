//! The words that a key uses, in plain words.

use super::Route;

pub(super) const ROUTES: &[Route] = &[];
