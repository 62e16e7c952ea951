//! The search under one set of wishes: limits first, then the best key within them.
//!
//! Goals that add up are one number (`goals`), and the least of it is found by `exact`. A goal
//! that does not add up is a limit: the longest path, or the most new words on a question. It is
//! tightened as far as the goals before it still reach what they reach without it; then it
//! stands, and the search goes on within it. (The fewest different words: see `vocabulary`.
//! Keys with equally few words may use different ones, so what comes after them is settled for
//! every set of words that may be best.)
//! What must be over early is settled before everything else, one wish after the other.
//!
//! From a matrix and wishes to a key, in steps that a host counts out.

use std::collections::BTreeSet;

use spinney_model::{Ask, CharacterIx, Goal, Key, Matrix, Refusal, Wanted, WhyNot, Wishes};

use crate::cost::Effort;
use crate::exact::{NEVER, Solver};
use crate::goals;
use crate::heap::Heap;
use crate::in_full::InFull;
use crate::kept_questions;
use crate::limits::{MOST_EARLY, MOST_STEPS};
use crate::possible::Possible;
use crate::read_off::ReadOff;
use crate::state_space::{Plan, StateSpace};
use crate::vocabulary::{A_BRANCH, Before, Vocabulary};

/// A search under one set of wishes.
pub(crate) struct GoalsInOrder {
    pub(crate) solver: Solver,
    pub(crate) plan: Plan,
    /// What can be fulfilled of the wishes.
    pub(crate) wishes: Wishes,
    pub(crate) refused: Vec<Refusal>,
    /// Questions until each early wish is over.
    pub(crate) within: Vec<u32>,
    /// Whether a smaller number was ruled out for each.
    within_sure: bool,
    pub(crate) longest: Option<u32>,
    /// How many of the goals are settled.
    settled: usize,
    /// Below this the goals before the one at hand reach what they can.
    threshold: Option<Effort>,
    vocabulary: Option<Vocabulary>,
}

impl GoalsInOrder {
    /// Makes a table ready. Wishes that cannot be fulfilled are put aside.
    pub(crate) fn new(matrix: &Matrix, wishes: &Wishes) -> Self {
        Self::with(matrix, wishes, false)
    }

    /// The same; `round`: with rounded flows even where exact ones would fit.
    pub(crate) fn with(matrix: &Matrix, wishes: &Wishes, round: bool) -> Self {
        let mut refused = Vec::new();
        let left_out = left_out(matrix, wishes);
        let mut wishes = wishes.clone();
        wishes.order.retain(|at| {
            let gone = left_out.contains(at);
            if gone {
                refused.push(refusal(Wanted::Order(*at), WhyNot::LeftOut));
            }
            !gone
        });
        for early in wishes.early.drain(wishes.early.len().min(MOST_EARLY)..) {
            refused.push(refusal(Wanted::Early(early), WhyNot::TooLarge));
        }
        let fitting = kept_questions::asks(&wishes)
            .into_iter()
            .filter(|ask| kept_questions::fits(matrix, ask));
        let mut plan = Plan {
            kept: fitting.collect(),
            left_out,
            order: wishes.order.clone(),
            allow_touch: wishes.allow_touch,
            early: Vec::new(),
            goals: wishes.goals.clone(),
            without: BTreeSet::new(),
            round,
        };
        let first = plan.clone();
        let space = StateSpace::lay(matrix, &plan);
        wishes.early.retain(|early| {
            let rivals = !space.rivals(*early).is_empty();
            if !rivals {
                refused.push(refusal(Wanted::Early(*early), WhyNot::NeverParted));
            }
            rivals
        });
        for goal in &space.too_large {
            refused.push(refusal(Wanted::Goal(*goal), WhyNot::TooLarge));
        }
        wishes.goals.retain(|goal| !space.too_large.contains(goal));
        plan.early = wishes.early.clone();
        plan.goals = wishes.goals.clone();
        let (kept, more) = kept_questions::prune(&space, &wishes);
        wishes.kept = kept;
        refused.extend(more);
        plan.kept = kept_questions::asks(&wishes);
        let but_early = Plan { early: Vec::new(), ..plan.clone() };
        let space = if but_early == first {
            let mut space = space;
            space.layout.make_room_for_early(&plan.early);
            space
        } else {
            StateSpace::lay(matrix, &plan)
        };
        let mut in_order = Self {
            solver: Solver::new(space),
            plan,
            wishes,
            refused,
            within: Vec::new(),
            within_sure: true,
            longest: None,
            settled: 0,
            threshold: None,
            vocabulary: None,
        };
        in_order.settle_early();
        in_order
    }

    /// Finds how early each early wish can be over, the first of them first.
    fn settle_early(&mut self) {
        let space = &self.solver.space;
        let root = space.root();
        for _ in &self.wishes.early {
            let mut steps = 0;
            loop {
                let mut within = self.within.clone();
                within.push(steps);
                let limited = space.layout.limited(&root, None, &within);
                let mut possible = Possible::default();
                let wanted = &self.wishes.kept;
                let open = kept_questions::open_heaps(space, &limited, wanted);
                let kept = !kept_questions::break_limits(space, &limited, wanted)
                    && open.iter().all(|heap| possible.heap(space, heap));
                self.within_sure &= kept || !possible.cut_short;
                // No question is asked twice on a path.
                let most = (space.questions.len() as u32).min(MOST_STEPS);
                if kept || steps >= most {
                    self.within = within;
                    break;
                }
                steps += 1;
            }
        }
    }

    /// All kinds, with the limits that stand.
    pub(crate) fn root(&self) -> Heap {
        self.limited(self.longest)
    }

    fn limited(&self, longest: Option<u32>) -> Heap {
        let space = &self.solver.space;
        space.layout.limited(&space.root(), longest, &self.within)
    }

    fn open(&self, root: &Heap) -> Vec<Heap> {
        kept_questions::open_heaps(&self.solver.space, root, &self.wishes.kept)
    }

    /// What is known of the best key under a root: at least, and at most.
    pub(crate) fn known(&self, root: &Heap) -> (Effort, Option<Effort>) {
        let (lower, upper) = kept_questions::known(&self.solver, root, &self.wishes.kept);
        (lower, upper.filter(|upper| *upper < NEVER))
    }

    /// Takes at most so many more heaps apart; whether everything is proved.
    pub(crate) fn step(&mut self, heaps: u64) -> bool {
        self.solver.set_limit(heaps);
        self.advance() && self.within_sure
    }

    fn advance(&mut self) -> bool {
        loop {
            let Some(some_key) = self.settle() else { return false };
            if self.vocabulary.as_ref().is_none_or(Vocabulary::done) {
                return true;
            }
            self.try_next_words(some_key);
        }
    }

    /// Settles one goal after the other and closes the root; whether there is a key. None: the
    /// limit was reached.
    fn settle(&mut self) -> Option<bool> {
        while let Some(goal) = self.solver.space.goals.order.get(self.settled).copied() {
            let settled = match goal {
                Goal::ShortestLongestPath => self.shorten(goal),
                Goal::EvenTeaching => self.even_out(goal),
                Goal::FewestWords if !self.has_key_with_words(goal)? => return Some(false),
                Goal::FewestWords
                | Goal::LeastEffort
                | Goal::MostRightEnds
                | Goal::FewestRulers => true,
            };
            if !settled {
                return None;
            }
            self.settled += 1;
            self.threshold = None;
        }
        let root = self.root();
        self.closed(&root, NEVER).then_some(true)
    }

    /// Goes on until the best key under a root is known, or known to reach `goal`.
    fn closed(&mut self, root: &Heap, goal: Effort) -> bool {
        let open = self.open(root);
        // With several open heaps each may leave the others room: all are closed wholly.
        let goal = if self.wishes.kept.is_empty() { goal } else { NEVER };
        self.solver.close(&open, goal)
    }

    /// The number below which the goals before this one reach all that they can; None while
    /// that is not known. [`NEVER`] where there are none that add up.
    fn reach_goals_before(&mut self, goal: Goal) -> Option<Effort> {
        if self.threshold.is_none() {
            self.threshold = match self.solver.space.goals.unit_before(goal) {
                None => Some(NEVER),
                Some(unit) => {
                    let root = self.root();
                    if !self.closed(&root, NEVER) {
                        return None;
                    }
                    let least = self.known(&root).1?;
                    Some((least / unit + 1) * unit)
                }
            };
        }
        self.threshold
    }

    /// Shortens the longest path for as long as the goals before it stay as they are.
    fn shorten(&mut self, goal: Goal) -> bool {
        let Some(threshold) = self.reach_goals_before(goal) else { return false };
        if self.longest.is_none() {
            let root = self.root();
            if !self.closed(&root, NEVER) {
                return false;
            }
            self.longest = Some(self.place(&root).longest);
        }
        while let Some(steps) = self.longest.and_then(|longest| longest.checked_sub(1)) {
            let root = self.limited(Some(steps));
            self.closed(&root, threshold);
            match self.known(&root) {
                (_, Some(upper)) if upper < threshold => self.longest = Some(steps),
                (lower, _) if lower >= threshold => return true,
                _ => return false,
            }
        }
        true
    }

    /// Finds the fewest new words on any one question.
    fn even_out(&mut self, goal: Goal) -> bool {
        let Some(threshold) = self.reach_goals_before(goal) else { return false };
        if self.solver.most_new_words.is_none() {
            self.try_new_words(0);
        }
        loop {
            let root = self.root();
            self.closed(&root, threshold);
            let most = self.solver.most_new_words.unwrap_or(0);
            match self.known(&root) {
                (_, Some(upper)) if upper < threshold => return true,
                // More words than there are help nobody: an early wish is out of reach here.
                _ if most as usize > self.solver.space.words.len() => return true,
                (lower, _) if lower >= threshold => self.try_new_words(most + 1),
                _ => return false,
            }
        }
    }

    /// What was found under another limit holds no longer.
    fn try_new_words(&mut self, most: u32) {
        self.limit_new_words(Some(most));
    }

    fn limit_new_words(&mut self, most: Option<u32>) {
        if self.solver.most_new_words != most {
            self.solver.most_new_words = most;
            self.solver.memo.clear();
        }
    }

    /// Whether the words of the branch that is looked at allow a key at which the goals before
    /// them reach what they can. All that stands from then on is forgotten first.
    fn has_key_with_words(&mut self, goal: Goal) -> Option<bool> {
        if self.vocabulary.is_none() {
            let before = Before {
                threshold: self.reach_goals_before(goal)?,
                longest: self.longest,
                most_new_words: self.solver.most_new_words,
            };
            self.vocabulary = Some(Vocabulary::new(self.kept_words(), before));
        }
        let vocabulary = self.vocabulary.as_ref()?;
        let (before, without) = (vocabulary.before, vocabulary.without());
        self.stand_before_words(before, &without);
        let root = self.root();
        if !self.closed(&root, before.threshold) {
            return None;
        }
        Some(self.known(&root).1.is_some_and(|upper| upper < before.threshold))
    }

    /// Closes a branch of the words, and goes back to where they were to be settled.
    fn try_next_words(&mut self, some_key: bool) {
        let key = some_key.then(|| (self.used_words(), self.reached_after_words()));
        if let Some(vocabulary) = &mut self.vocabulary {
            vocabulary.close_branch(key);
        }
        self.solver.charge(A_BRANCH);
        self.settled = self.place_of_words();
    }

    fn place_of_words(&self) -> usize {
        let order = &self.solver.space.goals.order;
        let place = order.iter().position(|goal| *goal == Goal::FewestWords);
        place.expect("words are searched only where they are a goal")
    }

    /// The limits of the goals before the words, without these words.
    fn stand_before_words(&mut self, before: Before, without: &BTreeSet<String>) {
        self.longest = before.longest;
        self.limit_new_words(before.most_new_words);
        self.use_without(without);
    }

    /// What the best key reaches of the goals after the words, number for number.
    fn reached_after_words(&self) -> Vec<Effort> {
        let goals = &self.solver.space.goals;
        let packed = self.known(&self.root()).1.unwrap_or(NEVER);
        let mut reached = Vec::new();
        for goal in &goals.order[self.place_of_words() + 1..] {
            match goal {
                Goal::ShortestLongestPath => reached.extend(self.longest.map(Effort::from)),
                Goal::EvenTeaching => {
                    reached.extend(self.solver.most_new_words.map(Effort::from));
                }
                _ => {}
            }
            reached.extend(goals::sum_of(*goal).map(|sum| goals.part(sum, packed)));
        }
        reached
    }

    /// The words of the best key found.
    fn used_words(&mut self) -> BTreeSet<String> {
        let root = self.root();
        let placed = self.place(&root);
        let asks = placed.key.couplets.iter().filter_map(|couplet| couplet.ask.as_ref());
        asks.flat_map(|ask| self.words(ask)).collect()
    }

    fn kept_words(&self) -> BTreeSet<String> {
        self.plan.kept.iter().flat_map(|ask| self.words(ask)).collect()
    }

    fn words(&self, ask: &Ask) -> BTreeSet<String> {
        goals::words(self.solver.space.matrix.character(ask.character), &ask.yes)
    }

    /// Starts again with these words banned from every question.
    fn use_without(&mut self, without: &BTreeSet<String>) {
        if self.plan.without == *without {
            return;
        }
        self.plan.without.clone_from(without);
        let space = StateSpace::lay(&self.solver.space.matrix, &self.plan);
        self.solver.start_again(space);
    }

    /// Where the search was stopped on the way to a limit, goes back to limits under which there
    /// is a whole key.
    pub(crate) fn step_back(&mut self) {
        let searching = self.vocabulary.as_ref().filter(|vocabulary| !vocabulary.done());
        let words = searching.map(|words| (words.before, words.best_without()));
        let goal = self.solver.space.goals.order.get(self.settled);
        if goal.is_none() && words.is_none() {
            return;
        }
        let even = words.is_none() && goal == Some(&Goal::EvenTeaching);
        if let Some((before, without)) = words {
            self.settled = self.place_of_words();
            self.threshold = None;
            self.stand_before_words(before, &without);
        }
        let root = self.root();
        if self.known(&root).1.is_some() {
            return;
        }
        if even {
            self.limit_new_words(None);
        }
        self.solver.set_limit(GOING_BACK);
        self.closed(&root, NEVER);
    }

    /// The best key known under a root.
    pub(crate) fn place(&mut self, root: &Heap) -> ReadOff {
        kept_questions::place(&mut self.solver, root, &self.wishes.kept)
    }

    /// What a key takes in numbers of any length; None: those of the search are exact.
    pub(crate) fn in_full(&self, key: &Key) -> Option<InFull> {
        let space = &self.solver.space;
        (!space.denominator.exact).then(|| InFull::of(space, &self.root(), key, 1))
    }

    /// Whether every goal is settled and early wishes could not be over earlier.
    pub(crate) fn limits_sure(&self) -> bool {
        self.within_sure
            && self.settled == self.solver.space.goals.order.len()
            && self.vocabulary.as_ref().is_none_or(Vocabulary::done)
    }
}

/// Heaps that may be taken apart to find a key after a search was stopped on the way.
const GOING_BACK: u64 = 5_000;

fn refusal(wanted: Wanted, why: WhyNot) -> Refusal {
    Refusal { wanted, why }
}

/// The characters of which nothing is asked: those that must not be, and those that are known
/// not to be seen on what is in the hand, or not in the season.
pub(crate) fn left_out(matrix: &Matrix, wishes: &Wishes) -> BTreeSet<CharacterIx> {
    let unseen = |at: &CharacterIx| {
        let character = matrix.character(*at);
        let seen_on = &character.seen_on;
        let not_there =
            wishes.hand.is_some_and(|hand| !seen_on.is_empty() && !seen_on.contains(&hand));
        let seasons = &character.seasons;
        let not_then = wishes
            .season
            .is_some_and(|season| !seasons.is_empty() && !seasons.contains(&season));
        not_there || not_then || wishes.never.contains(at)
    };
    matrix.character_indices().filter(unseen).collect()
}
