//! How a key stands: who asked its questions, whether it holds, whether anybody has tried it.

use crate::{Claim, Key};

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

impl AskedBy {
    /// The one rule for every screen and command: people asked where the search claims nothing of
    /// the key, or where one of its questions is kept for them.
    pub fn of(key: &Key, claim: Option<&Claim>) -> Self {
        let kept = key.couplets.iter().any(|couplet| couplet.kept);
        if claim.is_none() || kept { Self::People } else { Self::Search }
    }
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

#[cfg(test)]
mod tests {
    use super::*;
    use crate::{Couplet, Destination, Share, Wishes, Wording};

    #[test]
    fn people_asked_where_nothing_is_claimed_or_a_question_is_kept_for_them() {
        let zero = Share::from_integer(0);
        let claim = Claim {
            total: zero,
            lower_bound: zero,
            mean_questions: zero,
            longest: 1,
            stopped: None,
            heaps: 1,
            kept: None,
            wishes: Wishes::default(),
            reached: Vec::new(),
            prices: Vec::new(),
            within: Vec::new(),
            touching: Vec::new(),
            certificate: None,
        };
        let key = |kept: &[bool]| Key {
            couplets: (1..)
                .zip(kept)
                .map(|(number, kept)| Couplet {
                    number,
                    back: None,
                    wording: Wording::Question(String::new()),
                    ask: None,
                    yes: Destination::Missing,
                    no: Destination::Missing,
                    kept: *kept,
                    line: None,
                })
                .collect(),
        };
        assert_eq!(AskedBy::of(&key(&[false, false]), Some(&claim)), AskedBy::Search);
        assert_eq!(AskedBy::of(&key(&[false, true]), Some(&claim)), AskedBy::People);
        assert_eq!(AskedBy::of(&key(&[false, false]), None), AskedBy::People);
    }
}
