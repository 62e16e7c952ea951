//! The key as a pupil walks it.

use super::Route;

pub(super) const ROUTES: &[Route] = &[];
