//! A key that a group drew on paper, taken over question by question.

use super::Route;

pub(super) const ROUTES: &[Route] = &[];
