//! The key: its questions, what they cost, what to mend.

use super::Route;

pub(super) const ROUTES: &[Route] = &[];
