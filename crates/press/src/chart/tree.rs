//! The key as trees: which branches stand on which page, and where the others go on.
//!
//! From numbered couplets to trees of bounded depth. A couplet is drawn once: a second way to
//! it, and a loop, becomes "go to 4". A couplet that no way leads to becomes a tree of its own.

use std::collections::{BTreeSet, VecDeque};

use spinney_model::{Destination, End, Key};

/// Trees that share a page.
pub(super) type Forest = Vec<Tree>;

/// More questions in a row than any page has room for; also bounds the recursion.
const DEEPEST: usize = 12;

/// A part of the key as a tree; parents stand before their children.
#[derive(Clone, Debug, Default)]
pub(super) struct Tree {
    /// The nodes, the root first.
    pub(super) nodes: Vec<Node>,
}

/// A place in the tree.
#[derive(Clone, Debug)]
pub(super) struct Node {
    /// What stands there.
    pub(super) item: Item,
    /// How many questions lie above it.
    pub(super) depth: usize,
    /// Yes, then no.
    pub(super) children: Option<[usize; 2]>,
    /// Whether a yes leads here; None for a root.
    pub(super) yes: Option<bool>,
}

/// What stands at a place of the tree.
#[derive(Clone, Debug)]
pub(super) enum Item {
    /// A question, by its place in the key.
    Question(usize),
    /// Kinds.
    End(End),
    /// A number that is drawn elsewhere, or that does not exist.
    Elsewhere {
        /// The number.
        number: u32,
        /// Whether a question has it.
        known: bool,
    },
    /// A branch that goes on over the page, by the place of its couplet in the key.
    GoesOn(usize),
    /// Nothing was written there.
    Blank,
}

impl Tree {
    /// The couplet at the root, by its place in the key.
    pub(super) fn root(&self) -> Option<usize> {
        match self.nodes.first()?.item {
            Item::Question(couplet) => Some(couplet),
            _ => None,
        }
    }

    /// The couplets that go on over the page.
    pub(super) fn goes_on(&self) -> impl Iterator<Item = usize> + '_ {
        self.nodes.iter().filter_map(|node| match node.item {
            Item::GoesOn(couplet) => Some(couplet),
            _ => None,
        })
    }

    /// The branch to cut when the tree is too large: the largest of at most half the leaves.
    pub(super) fn worth_cutting(&self) -> Option<usize> {
        let mut leaves = vec![1usize; self.nodes.len()];
        for (at, node) in self.nodes.iter().enumerate().rev() {
            if let Some([yes, no]) = node.children {
                leaves[at] = leaves[yes] + leaves[no];
            }
        }
        let half = leaves.first().copied().unwrap_or(0).div_ceil(2);
        let branches =
            self.nodes.iter().enumerate().skip(1).filter_map(|(at, node)| match node.item {
                Item::Question(couplet) => Some((leaves[at], couplet)),
                _ => None,
            });
        let all: Vec<_> = branches.collect();
        let small = all.iter().filter(|(size, _)| *size <= half).max_by_key(|(size, _)| *size);
        small.or(all.iter().min_by_key(|(size, _)| *size)).map(|(_, couplet)| *couplet)
    }
}

/// Couplets not drawn yet.
pub(super) struct Stock<'a> {
    key: &'a Key,
    drawn: BTreeSet<usize>,
    waiting: VecDeque<usize>,
}

impl<'a> Stock<'a> {
    /// All of a key, to begin with its first couplet.
    pub(super) fn new(key: &'a Key) -> Self {
        Self { key, drawn: BTreeSet::new(), waiting: VecDeque::new() }
    }

    /// Where the next tree begins: a branch that was cut, else a couplet not drawn yet.
    pub(super) fn next_root(&mut self) -> Option<usize> {
        while let Some(couplet) = self.waiting.pop_front() {
            if !self.drawn.contains(&couplet) {
                return Some(couplet);
            }
        }
        (0..self.key.couplets.len()).find(|couplet| !self.drawn.contains(couplet))
    }

    /// Notes what a tree has drawn and where it goes on.
    pub(super) fn take(&mut self, tree: &Tree) {
        for node in &tree.nodes {
            match node.item {
                Item::Question(couplet) => _ = self.drawn.insert(couplet),
                Item::GoesOn(couplet) => self.waiting.push_back(couplet),
                _ => {}
            }
        }
    }

    /// The tree from a couplet down, without the branches that are cut.
    pub(super) fn grow(&self, root: usize, cuts: &[usize]) -> Tree {
        let mut tree = Tree::default();
        let mut met: BTreeSet<usize> =
            self.drawn.iter().chain(&self.waiting).copied().collect();
        met.insert(root);
        self.branch(&mut tree, Item::Question(root), (0, None), cuts, &mut met);
        tree
    }

    fn branch(
        &self,
        tree: &mut Tree,
        item: Item,
        (depth, yes): (usize, Option<bool>),
        cuts: &[usize],
        met: &mut BTreeSet<usize>,
    ) -> usize {
        let at = tree.nodes.len();
        let question = match item {
            Item::Question(couplet) => Some(couplet),
            _ => None,
        };
        tree.nodes.push(Node { item, depth, children: None, yes });
        if let Some(couplet) = question {
            let couplet = &self.key.couplets[couplet];
            let children = [(true, &couplet.yes), (false, &couplet.no)].map(|(yes, to)| {
                let item = self.item(to, depth + 1, cuts, met);
                self.branch(tree, item, (depth + 1, Some(yes)), cuts, met)
            });
            tree.nodes[at].children = Some(children);
        }
        at
    }

    fn item(
        &self,
        to: &Destination,
        depth: usize,
        cuts: &[usize],
        met: &mut BTreeSet<usize>,
    ) -> Item {
        let number = match to {
            Destination::End(end) => return Item::End(end.clone()),
            Destination::Missing => return Item::Blank,
            Destination::Couplet(number) => *number,
        };
        let found = self.key.couplets.iter().position(|couplet| couplet.number == number);
        match found {
            None => Item::Elsewhere { number, known: false },
            Some(couplet) if !met.insert(couplet) => Item::Elsewhere { number, known: true },
            Some(couplet) if cuts.contains(&couplet) || depth >= DEEPEST => {
                Item::GoesOn(couplet)
            }
            Some(couplet) => Item::Question(couplet),
        }
    }
}
