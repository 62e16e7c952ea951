//! A newcomer: a find that the key does not know yet.

use super::Route;

pub(super) const ROUTES: &[Route] = &[];
