//! What can be printed, with a preview.

use super::Route;

pub(super) const ROUTES: &[Route] = &[];
