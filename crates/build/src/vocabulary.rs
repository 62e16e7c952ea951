//! The fewest different words that a whole key can do with.
//!
//! Words do not add up along paths: a word that two branches need counts once. So word sets are
//! searched: the best key without some words names a set that it uses; one after the other of
//! these is banned, those before it being needed from then on. A branch ends where all words
//! used are needed, where too many are needed, or where no key is left.
//!
//! What is best without some words is settled by all goals that come after the words
//! (`goals_in_order` does that, branch by branch): keys with equally few words differ in these,
//! and a key that a later goal would prefer may need a word more. Nothing is solved here.

use std::collections::BTreeSet;

use crate::cost::Effort;

/// What looking at one word set counts for, in heaps: laying the table out again for it.
pub(crate) const A_BRANCH: u64 = 20;

/// A search for the fewest words under way.
pub(crate) struct Vocabulary {
    /// The branch that is looked at comes last.
    open: Vec<Branch>,
    best: Option<Best>,
    /// What stands, whatever words are used.
    pub(crate) before: Before,
}

/// What the goals before the words came to.
#[derive(Clone, Copy)]
pub(crate) struct Before {
    /// Below this number those that add up reach all that they can.
    pub(crate) threshold: Effort,
    pub(crate) longest: Option<u32>,
    pub(crate) most_new_words: Option<u32>,
}

#[derive(Clone, Default)]
struct Branch {
    without: BTreeSet<String>,
    needed: BTreeSet<String>,
}

struct Best {
    words: usize,
    reached: Vec<Effort>,
    without: BTreeSet<String>,
}

impl Vocabulary {
    /// Nothing is banned; the words of kept questions are needed in any case.
    pub(crate) fn new(kept: BTreeSet<String>, before: Before) -> Self {
        let open = vec![Branch { without: BTreeSet::new(), needed: kept }];
        Self { open, best: None, before }
    }

    /// Whether every branch was looked at.
    pub(crate) fn done(&self) -> bool {
        self.open.is_empty()
    }

    /// The words to do without: in the branch that is looked at, or, after all of them, in the
    /// best key.
    pub(crate) fn without(&self) -> BTreeSet<String> {
        self.open.last().map_or_else(|| self.best_without(), |branch| branch.without.clone())
    }

    /// The words that the best key so far does without.
    pub(crate) fn best_without(&self) -> BTreeSet<String> {
        self.best.as_ref().map(|best| best.without.clone()).unwrap_or_default()
    }

    /// Closes the branch that was looked at, in which the best key uses these words and reaches
    /// so much of the goals after them; None: there is no key.
    pub(crate) fn close_branch(&mut self, key: Option<(BTreeSet<String>, Vec<Effort>)>) {
        if let Some(branch) = self.open.pop()
            && let Some((used, reached)) = key
        {
            self.look_into(&branch, &used, reached);
        }
        while self.open.last().is_some_and(|branch| self.too_many(branch)) {
            self.open.pop();
        }
    }

    fn too_many(&self, branch: &Branch) -> bool {
        self.best.as_ref().is_some_and(|best| branch.needed.len() > best.words)
    }

    fn look_into(&mut self, branch: &Branch, used: &BTreeSet<String>, reached: Vec<Effort>) {
        let is_best = |words: usize| {
            self.best
                .as_ref()
                .is_none_or(|best| (words, &reached) < (best.words, &best.reached))
        };
        if !is_best(branch.needed.len()) {
            return;
        }
        if is_best(used.len()) {
            let without = branch.without.clone();
            self.best = Some(Best { words: used.len(), reached, without });
        }
        self.open.extend(branches(branch, used));
    }
}

/// One branch for each word that is used and not needed yet, the first to be looked at last in
/// the list.
fn branches(from: &Branch, used: &BTreeSet<String>) -> Vec<Branch> {
    let mut branch = from.clone();
    let mut branches = Vec::new();
    for word in used.difference(&from.needed) {
        let mut without = branch.without.clone();
        without.insert(word.clone());
        branches.push(Branch { without, needed: branch.needed.clone() });
        branch.needed.insert(word.clone());
    }
    branches.reverse();
    branches
}
