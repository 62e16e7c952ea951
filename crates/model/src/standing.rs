//! How a key stands: who asked its questions, whether it holds, whether anybody has tried it.

/// How a key stands.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Standing {
    /// Who asked its questions.
    pub asked_by: AskedBy,
    /// Whether it holds.
    pub holds: Holds,
    /// Whether people tried it as it is now.
    pub tried: bool,
}

/// Who asked the questions of a key.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum AskedBy {
    /// The search, all of them.
    Search,
    /// People, at least one of them.
    People,
}

/// Whether a key holds, as far as a second opinion can tell.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Holds {
    /// Every kind comes out where it should, in every form, and every question was checked.
    Whole,
    /// Nothing wrong was found, but not all of it could be checked.
    Unchecked,
    /// Something is to be mended: whoever follows it may come out wrong.
    ToMend,
    /// Somebody who follows it is left without an answer, or a kind never comes out.
    Broken,
}
