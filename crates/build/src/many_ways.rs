//! Keys in which a question may have three or four ways (`docs/KEY.md` 19).
//!
//! From a matrix to the key of least effort, as questions of yes and no with a note which of
//! them are answered in one look. `look` lists the looks that a heap allows, `search` finds the
//! best, here it is laid out. A setting for grown-ups; the key for pupils is [`crate::build`]'s.

mod look;
mod search;

use std::collections::{BTreeMap, BTreeSet};

use spinney_model::{
    Couplet, Destination, End, Key, ManyWays, Matrix, Share, Stopped, Wishes, Wording,
};

use crate::cost::Effort;
use crate::course::left_out;
use crate::ground::{Ground, Plan};
use crate::heap::Heap;
use crate::{Budget, Built, settle};
use look::Chain;
use search::Search;

/// The most ways that a question may have.
pub const MOST_WAYS: usize = 4;

/// The key of least effort in which a question may have up to `most` ways (2 to 4).
///
/// Of the wishes only what is in the hand, the season, touch and what must never be asked are
/// regarded.
///
/// **Guarantees**: the same key on every machine; with `most` = 2 the effort of
/// [`build`](crate::build)'s. **Cost**: `budget` heaps, then one key straight down and, where
/// nothing is proved, as much again for yes and no alone, which is the least that is given; what is
/// not proved has a bound. Where exact numbers do not fit there is no key, and it says so.
pub fn many_ways(matrix: &Matrix, wishes: &Wishes, most: usize, budget: Budget) -> ManyWays {
    let plan = Plan {
        left_out: left_out(matrix, wishes),
        allow_touch: wishes.allow_touch,
        ..Plan::default()
    };
    let ground = Ground::lay(matrix, &plan);
    let root = ground.root();
    if !ground.scale.exact {
        return nothing(Stopped::Overflow);
    }
    let mut search = Search::new(ground, most.clamp(2, MOST_WAYS), budget.heaps);
    let known = search.whole(&root);
    let mut laid = Laid { search: &search, key: Key::default(), same_look: BTreeSet::new() };
    let (_, walked) = laid.heap(&root, None);
    let (key, same_look) = looks_first(laid.key, &laid.same_look);
    let ground = &search.ground;
    let share = |packed: Effort| ground.scale.share(ground.goals.effort(packed));
    let found = ManyWays {
        key,
        same_look,
        total: share(known.upper),
        lower_bound: share(known.lower),
        mean_questions: ground.scale.mean(walked.steps, ground.total_flow()),
        longest: walked.longest,
        stopped: (!known.done).then_some(Stopped::Budget),
        heaps: search.opened,
    };
    if known.done { found } else { or_yes_and_no(found, matrix, wishes, budget) }
}

/// A search that was stopped may have found less than that of questions of yes and no.
fn or_yes_and_no(
    found: ManyWays,
    matrix: &Matrix,
    wishes: &Wishes,
    budget: Budget,
) -> ManyWays {
    let Wishes { hand, season, allow_touch, never, .. } = wishes.clone();
    let plain = Wishes { hand, season, allow_touch, never, ..Wishes::default() };
    let Built { key, claim, .. } = crate::build(matrix, &plain, budget);
    if claim.total >= found.total {
        return found;
    }
    ManyWays {
        key,
        same_look: BTreeSet::new(),
        total: claim.total,
        mean_questions: claim.mean_questions,
        longest: claim.longest,
        ..found
    }
}

/// The key with its looks numbered from 1, and the questions that belong to a look behind them:
/// what is said of a look then has the number that is printed before it.
fn looks_first(mut key: Key, same_look: &BTreeSet<u32>) -> (Key, BTreeSet<u32>) {
    let (others, looks): (Vec<u32>, Vec<u32>) = key
        .couplets
        .iter()
        .map(|couplet| couplet.number)
        .partition(|number| same_look.contains(number));
    let new: BTreeMap<u32, u32> = looks.into_iter().chain(others).zip(1..).collect();
    for couplet in &mut key.couplets {
        couplet.number = new[&couplet.number];
        couplet.back = couplet.back.map(|back| new[&back]);
        for to in [&mut couplet.yes, &mut couplet.no] {
            if let Destination::Couplet(number) = to {
                *number = new[number];
            }
        }
    }
    key.couplets.sort_by_key(|couplet| couplet.number);
    (key, same_look.iter().map(|number| new[number]).collect())
}

fn nothing(why: Stopped) -> ManyWays {
    let none = Share::from_integer(0);
    ManyWays {
        key: Key::default(),
        same_look: BTreeSet::new(),
        total: none,
        lower_bound: none,
        mean_questions: none,
        longest: 0,
        stopped: Some(why),
        heaps: 0,
    }
}

/// A key while it is laid out.
struct Laid<'s> {
    search: &'s Search,
    key: Key,
    same_look: BTreeSet<u32>,
}

/// Looks on the ways of a heap.
#[derive(Clone, Copy, Default)]
struct Walked {
    /// Walked by all flow.
    steps: Effort,
    longest: u32,
}

impl Laid<'_> {
    fn heap(&mut self, heap: &Heap, back: Option<u32>) -> (Destination, Walked) {
        let ground = &self.search.ground;
        let Some(look) = self.search.choice(heap) else {
            return (Destination::End(End::of(ground.taxa(heap))), Walked::default());
        };
        let flow = ground.flow(heap);
        let mut walked = Walked::default();
        let at = self.key.couplets.len();
        let to = self.chain(&look.chain, &look.ways, back, true, &mut walked);
        if let (Chain::Cut { question, .. }, [yes, no]) = (&look.chain, look.ways.as_slice()) {
            // As in a key of yes and no alone.
            let ask = settle::midway(ground, heap, *question, (yes, no));
            self.key.couplets[at].ask = Some(ask);
        }
        (to, Walked { steps: walked.steps + flow, longest: walked.longest + 1 })
    }

    /// The questions of one look, and all below them.
    fn chain(
        &mut self,
        chain: &Chain,
        ways: &[Heap],
        back: Option<u32>,
        first: bool,
        walked: &mut Walked,
    ) -> Destination {
        let (question, yes, no) = match chain {
            Chain::Way(way) => {
                let (to, below) = self.heap(&ways[*way], back);
                walked.steps += below.steps;
                walked.longest = walked.longest.max(below.longest);
                return to;
            }
            Chain::Cut { question, yes, no } => (*question, yes, no),
        };
        let at = self.key.couplets.len();
        let number = at as u32 + 1;
        if !first {
            self.same_look.insert(number);
        }
        self.key.couplets.push(Couplet {
            number,
            back,
            wording: Wording::Question(String::new()),
            ask: Some(self.search.ground.questions[question].ask.clone()),
            yes: Destination::Missing,
            no: Destination::Missing,
            kept: false,
            line: None,
        });
        let yes = self.chain(yes, ways, Some(number), false, walked);
        let no = self.chain(no, ways, Some(number), false, walked);
        if let (Destination::End(one), Destination::End(other)) = (&yes, &no)
            && one == other
        {
            // Two values of one kind: nobody need tell them apart.
            self.key.couplets.pop();
            self.same_look.remove(&number);
            return yes;
        }
        (self.key.couplets[at].yes, self.key.couplets[at].no) = (yes, no);
        Destination::Couplet(number)
    }
}
