//! The fewest different words that a whole key can do with.
//!
//! Words do not add up along paths: a word that two branches need counts once. So word sets are
//! searched: the best key without some words names a set that it uses; one after the other of
//! these is banned, those before it being needed from then on. A branch ends where all words
//! used are needed, where too many are needed, or where no key is left.

use std::collections::BTreeSet;

use crate::cost::Effort;
use crate::course::Course;
use crate::goals;

/// What looking at one word set counts for, in heaps: laying the table out again for it.
const A_BRANCH: u64 = 20;

/// A search for the fewest words under way.
pub(crate) struct Vocabulary {
    open: Vec<Branch>,
    best: Option<Best>,
}

#[derive(Clone, Default)]
struct Branch {
    without: BTreeSet<String>,
    needed: BTreeSet<String>,
}

struct Best {
    words: usize,
    packed: Effort,
    without: BTreeSet<String>,
}

impl Default for Vocabulary {
    fn default() -> Self {
        Self { open: vec![Branch::default()], best: None }
    }
}

impl Vocabulary {
    /// Goes on as long as the limit of the course allows; whether all is settled. Keys must
    /// stay below `threshold`.
    pub(crate) fn search(&mut self, course: &mut Course, threshold: Effort) -> bool {
        while let Some(branch) = self.open.last().cloned() {
            let best = self.best.as_ref().map(|best| (best.words, best.packed));
            if best.is_some_and(|(words, _)| branch.needed.len() > words) {
                self.open.pop();
                continue;
            }
            if course.solver.spent() {
                return false;
            }
            course.use_without(&branch.without);
            course.solver.charge(A_BRANCH);
            if !course.close_root(threshold) {
                return false;
            }
            self.open.pop();
            let root = course.root();
            let Some(packed) = course.known(&root).1.filter(|packed| *packed < threshold)
            else {
                continue;
            };
            if best.is_some_and(|best| (branch.needed.len(), packed) >= best) {
                continue;
            }
            let used = used(course);
            if best.is_none_or(|best| (used.len(), packed) < best) {
                let without = branch.without.clone();
                self.best = Some(Best { words: used.len(), packed, without });
            }
            self.open.extend(branches(&branch, &used));
        }
        true
    }

    /// The words that the best key does without.
    pub(crate) fn without(&self) -> Option<BTreeSet<String>> {
        self.best.as_ref().map(|best| best.without.clone())
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

/// The words of the best key found.
fn used(course: &mut Course) -> BTreeSet<String> {
    let root = course.root();
    let placed = course.place(&root);
    let matrix = &course.solver.ground.matrix;
    let asks = placed.key.couplets.iter().filter_map(|couplet| couplet.ask.as_ref());
    asks.flat_map(|ask| goals::words(matrix.character(ask.character), &ask.yes)).collect()
}
