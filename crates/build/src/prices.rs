//! What each wish costs, and what a key reaches of each goal.
//!
//! The price of a wish is the effort of the best key under all wishes less that of the best key
//! without this one. So each price is another search; where there is but one wish, it is the
//! search without any.

use std::collections::BTreeSet;

use spinney_model::{
    Claim, Destination, Goal, KeptPrice, Key, Matrix, Price, Reached, Refusal, Share, TaxonIx,
    Wanted, Wish, Wishes,
};

use crate::goals::{self, Sum};
use crate::goals_in_order::GoalsInOrder;
use crate::in_full::{self, InFull};
use crate::read_off::ReadOff;

/// The searches with fewer wishes.
pub(crate) struct Prices {
    /// The search without any wish of a person's; None: nothing was wished.
    free: Option<GoalsInOrder>,
    /// The search without this wish; None: the same as `free`.
    without: Vec<(Wish, Option<GoalsInOrder>)>,
}

impl Prices {
    pub(crate) fn of(matrix: &Matrix, in_order: &GoalsInOrder, wished: &Wishes) -> Self {
        let allowed = in_order.wishes.allow_touch;
        let list = list(in_order);
        // That nobody is sent to touch what may hurt is nobody's wish, and still has its price.
        let by_people = list.iter().filter(|wish| allowed || **wish != Wish::Touch).count();
        let without = list
            .into_iter()
            .map(|wish| {
                let alone = by_people == 1 && (allowed || wish != Wish::Touch);
                let fewer = without(&in_order.wishes, &wish);
                (wish, (!alone).then(|| GoalsInOrder::new(matrix, &fewer)))
            })
            .collect();
        let wishes = by_people > 0 || *wished != Wishes::default();
        Self { free: wishes.then(|| GoalsInOrder::new(matrix, &Wishes::default())), without }
    }

    pub(crate) fn searches(&mut self) -> impl Iterator<Item = &mut GoalsInOrder> {
        let without = self.without.iter_mut().filter_map(|(_, in_order)| in_order.as_mut());
        self.free.iter_mut().chain(without)
    }

    /// Steps each search; whether all are sure, and whether those that are not are full.
    pub(crate) fn step(&mut self, heaps: u64) -> (bool, bool) {
        let (mut sure, mut full) = (true, true);
        for in_order in self.searches() {
            let done = in_order.step(heaps);
            sure &= done;
            full &= done || in_order.solver.full();
        }
        (sure, full)
    }

    pub(crate) fn work(&self) -> u64 {
        let without = self.without.iter().filter_map(|(_, in_order)| in_order.as_ref());
        self.free.iter().chain(without).map(|in_order| in_order.solver.work).sum()
    }

    /// Puts the prices into a claim about a key.
    pub(crate) fn put_into(
        &mut self,
        mut claim: Claim,
        key: &Key,
        refused: &[Refusal],
    ) -> Claim {
        let free = self.free.as_mut().map(Without::best_of);
        let ask = |refusal: &Refusal| match &refusal.wanted {
            Wanted::Ask(ask) => Some(ask.clone()),
            _ => None,
        };
        claim.kept = free.as_ref().map(|free| KeptPrice {
            without_wishes: free.effort,
            without_wishes_optimal: free.sure,
            refused: refused.iter().filter_map(ask).collect(),
        });
        let together = pairs(key);
        for (wish, in_order) in &mut self.without {
            let other = in_order.as_mut().map(Without::best_of);
            let Some(other) = other.as_ref().or(free.as_ref()) else { continue };
            claim.prices.push(Price {
                wish: wish.clone(),
                extra: in_full::difference(claim.total, other.effort),
                exact: other.sure && claim.optimal(),
                together: together.difference(&other.together).copied().collect(),
            });
        }
        claim
    }
}

/// The best key of a search with fewer wishes.
struct Without {
    effort: Share,
    sure: bool,
    together: BTreeSet<(TaxonIx, TaxonIx)>,
}

impl Without {
    fn best_of(in_order: &mut GoalsInOrder) -> Self {
        in_order.step_back();
        let root = in_order.root();
        let placed = in_order.place(&root);
        let space = &in_order.solver.space;
        let in_full = in_order.in_full(&placed.key);
        Self {
            effort: in_full.map_or_else(
                || space.denominator.share(space.goals.effort(placed.effort)),
                |in_full| in_full.share(Sum::Effort),
            ),
            sure: placed.lower == placed.effort
                && space.denominator.exact
                && in_order.limits_sure(),
            together: pairs(&placed.key),
        }
    }
}

/// Pairs that some end names together.
fn pairs(key: &Key) -> BTreeSet<(TaxonIx, TaxonIx)> {
    let mut pairs = BTreeSet::new();
    for destination in key.couplets.iter().flat_map(|couplet| [&couplet.yes, &couplet.no]) {
        let Destination::End(end) = destination else { continue };
        for (at, one) in end.taxa.iter().enumerate() {
            pairs.extend(end.taxa[at + 1..].iter().map(|other| (*one, *other)));
        }
    }
    pairs
}

/// Every wish that stands alone. That nobody is sent to touch what may hurt, or is allowed to, is
/// one wherever it says something of the table.
fn list(in_order: &GoalsInOrder) -> Vec<Wish> {
    let Wishes { kept, hand, season, allow_touch: _, never, order, early, goals } =
        &in_order.wishes;
    let touch = !in_order.solver.space.at_risk.is_empty();
    let mut list = Vec::new();
    list.extend((!kept.is_empty()).then_some(Wish::Kept));
    list.extend((hand.is_some() || season.is_some()).then_some(Wish::Hand));
    list.extend(never.iter().map(|at| Wish::Never(*at)));
    list.extend(touch.then_some(Wish::Touch));
    list.extend((!order.is_empty()).then_some(Wish::Order));
    list.extend(early.iter().map(|early| Wish::Early(*early)));
    let usual = goals::in_order(goals) == [Goal::LeastEffort];
    list.extend((!usual).then_some(Wish::Goals));
    list
}

fn without(wishes: &Wishes, wish: &Wish) -> Wishes {
    let mut fewer = wishes.clone();
    match wish {
        Wish::Kept => fewer.kept.clear(),
        Wish::Hand => (fewer.hand, fewer.season) = (None, None),
        Wish::Never(at) => {
            fewer.never.remove(at);
        }
        Wish::Touch => fewer.allow_touch = !fewer.allow_touch,
        Wish::Order => fewer.order.clear(),
        Wish::Early(early) => fewer.early.retain(|other| other != early),
        Wish::Goals => fewer.goals.clear(),
    }
    fewer
}

/// What a key reaches of each goal that was asked for.
pub(crate) fn reached(
    in_order: &GoalsInOrder,
    placed: &ReadOff,
    in_full: Option<&InFull>,
) -> Vec<Reached> {
    let space = &in_order.solver.space;
    let part = |sum| match in_full {
        Some(in_full) => in_full.share(sum),
        None => space.denominator.share(space.goals.part(sum, placed.effort)),
    };
    let asks = || placed.key.couplets.iter().filter_map(|couplet| couplet.ask.as_ref());
    let words = || {
        let of = |ask: &spinney_model::Ask| {
            goals::words(space.matrix.character(ask.character), &ask.yes)
        };
        asks().flat_map(of).collect::<BTreeSet<String>>().len() as i128
    };
    let value = |goal: Goal| match goal {
        Goal::LeastEffort => part(Sum::Effort),
        Goal::ShortestLongestPath => Share::from_integer(placed.longest.into()),
        Goal::MostRightEnds => part(Sum::Misread),
        Goal::EvenTeaching => {
            Share::from_integer(in_order.solver.most_new_words.unwrap_or(0).into())
        }
        Goal::FewestWords => Share::from_integer(words()),
        Goal::FewestRulers => part(Sum::Rulers),
    };
    let then = |goal| (goal == Goal::EvenTeaching).then(|| part(Sum::NewWords));
    let wished = !in_order.wishes.goals.is_empty();
    let order = space.goals.order.iter().filter(|_| wished);
    order.map(|goal| Reached { goal: *goal, value: value(*goal), then: then(*goal) }).collect()
}
