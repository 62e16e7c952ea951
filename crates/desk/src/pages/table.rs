//! The table: kinds by characters, a cell each.

use super::Route;

pub(super) const ROUTES: &[Route] = &[];
