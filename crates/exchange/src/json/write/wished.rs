//! From wishes, prices and refusals to the shape of our JSON.

use spinney_model::{
    Claim, Early, Kept, Matrix, Price, Reached, Refusal, TaxonIx, Wanted, WhyNot, Wish, Wishes,
};

use super::ask;
use crate::json::number::{exact, of_share};
use crate::json::shape;
use crate::json::wish_words::{of_goal, of_why};

/// The wishes of a claim; None: there were none.
pub(super) fn wishes(claim: &Claim, matrix: &Matrix) -> Option<shape::Wishes> {
    let wishes = &claim.wishes;
    if *wishes == Wishes::default() {
        return None;
    }
    let name = |at: &spinney_model::CharacterIx| matrix.character(*at).name.clone();
    let within = claim.within.iter().copied().map(Some).chain(std::iter::repeat(None));
    Some(shape::Wishes {
        kept: wishes.kept.iter().map(|kept| of_kept(kept, matrix)).collect(),
        hand: wishes.hand.map(|hand| hand.word().to_owned()),
        season: wishes.season.map(|season| season.word().to_owned()),
        allow_touch: wishes.allow_touch,
        never: wishes.never.iter().map(name).collect(),
        order: wishes.order.iter().map(name).collect(),
        early: wishes
            .early
            .iter()
            .zip(within)
            .map(|(wish, within)| shape::Early { within, ..early(*wish, matrix) })
            .collect(),
        goals: wishes.goals.iter().map(|goal| of_goal(*goal)).collect(),
    })
}

fn of_kept(kept: &Kept, matrix: &Matrix) -> shape::Kept {
    shape::Kept { ask: ask(&kept.ask, matrix), yes: kept.yes, no: kept.no }
}

fn early(early: Early, matrix: &Matrix) -> shape::Early {
    let name = |taxon: TaxonIx| matrix.taxon(taxon).name.clone();
    let (part, leave) = match early {
        Early::Part(one, other) => (Some((name(one), name(other))), None),
        Early::Leave(taxon) => (None, Some(name(taxon))),
    };
    shape::Early { part, leave, within: None }
}

pub(super) fn reached(reached: &Reached) -> shape::Reached {
    shape::Reached {
        goal: of_goal(reached.goal),
        value: of_share(reached.value),
        value_exact: Some(exact(reached.value)),
        then: reached.then.map(of_share),
        then_exact: reached.then.map(exact),
    }
}

pub(super) fn price(price: &Price, claim: &Claim, matrix: &Matrix) -> shape::Price {
    let name = |taxon: &TaxonIx| matrix.taxon(*taxon).name.clone();
    let character = match price.wish {
        Wish::Never(at) => Some(matrix.character(at).name.clone()),
        _ => None,
    };
    let (wish, about) = match &price.wish {
        Wish::Kept => ("keeping your questions".to_owned(), "kept"),
        Wish::Hand => ("asking only what can be seen then".to_owned(), "hand"),
        Wish::Never(_) => {
            (format!("never asking about {}", character.clone().unwrap_or_default()), "never")
        }
        Wish::Touch if claim.wishes.allow_touch => {
            ("letting people touch what may hurt".to_owned(), "touch")
        }
        Wish::Touch => ("sending nobody to touch what may hurt".to_owned(), "touch"),
        Wish::Order => ("asking in your order".to_owned(), "order"),
        Wish::Early(Early::Part(one, other)) => {
            (format!("{} and {} are told apart early", name(one), name(other)), "early")
        }
        Wish::Early(Early::Leave(taxon)) => {
            (format!("{} comes out first", name(taxon)), "early")
        }
        Wish::Goals => ("putting your other aims first".to_owned(), "goals"),
    };
    shape::Price {
        wish,
        about: about.to_owned(),
        character,
        early: match price.wish {
            Wish::Early(wish) => Some(early(wish, matrix)),
            _ => None,
        },
        extra: of_share(price.extra),
        extra_exact: Some(exact(price.extra)),
        exact: price.exact,
        together: price.together.iter().map(|(a, b)| (name(a), name(b))).collect(),
    }
}

pub(super) fn refused(refusal: &Refusal, matrix: &Matrix) -> shape::Refused {
    let mut shape = shape::Refused {
        ask: None,
        order: None,
        early: None,
        goal: None,
        why: of_why(refusal.why).to_owned(),
        kind: match refusal.why {
            WhyNot::Blocked(taxon) => Some(matrix.taxon(taxon).name.clone()),
            _ => None,
        },
    };
    match &refusal.wanted {
        Wanted::Ask(wanted) => shape.ask = Some(ask(wanted, matrix)),
        Wanted::Order(at) => shape.order = Some(matrix.character(*at).name.clone()),
        Wanted::Early(wanted) => shape.early = Some(early(*wanted, matrix)),
        Wanted::Goal(goal) => shape.goal = Some(of_goal(*goal)),
    }
    shape
}
