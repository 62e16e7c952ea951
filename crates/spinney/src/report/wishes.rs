//! What wishes cost and what goals reach, in a teacher's words.

use std::fmt::Display;

use spinney_model::{
    Claim, Finding, Goal, Matrix, OfUnmet, Place, Price, Reached, Share, TaxonIx, Wish, Wishes,
};
use spinney_voice::Tongue;

use super::{counted, push, questions};
use crate::command::wishes::early_in_words;

fn all(matrix: &Matrix) -> Share {
    matrix.taxa().iter().map(|taxon| taxon.weight).sum()
}

/// What the key reaches of each goal that was asked for.
pub(super) fn reached(t: Tongue, claim: &Claim, matrix: &Matrix) -> String {
    let mut text = String::new();
    for reached in &claim.reached {
        if let Some(sentence) = goal(t, reached, matrix, claim.optimal()) {
            push(&mut text, &sentence);
        }
    }
    for (early, within) in claim.wishes.early.iter().zip(&claim.within) {
        let wish = capital(&early_in_words(t, matrix, *early));
        push(&mut text, &t.count_with("report-within", *within as usize, &[("wish", &wish)]));
    }
    text
}

fn goal(t: Tongue, reached: &Reached, matrix: &Matrix, sure: bool) -> Option<String> {
    let value = reached.value;
    let zero = Share::from_integer(0);
    let sure = if sure { String::new() } else { t.say("report-as-far") };
    let new_words =
        |number: Share, decimals| counted(t, "report-new-words", number, decimals, &[]);
    let sure: (&str, &dyn Display) = ("sure", &sure);
    Some(match reached.goal {
        Goal::LeastEffort | Goal::ShortestLongestPath => return None,
        Goal::MostRightEnds => {
            let mean = *value.numer() as f64
                / *value.denom() as f64
                / 1e6
                / (*all(matrix).numer() as f64 / *all(matrix).denom() as f64);
            let finds = format!("{:.0}", 100.0 * (-mean).exp());
            t.with("report-right", &[("finds", &finds), sure])
        }
        Goal::EvenTeaching => {
            let met = super::each(reached.then.unwrap_or(zero), all(matrix));
            let (most, met) = (new_words(value, 0), new_words(met, 1));
            t.with("report-even", &[("most", &most), ("met", &met), sure])
        }
        Goal::FewestWords => counted(t, "report-words", value, 0, &[sure]),
        Goal::FewestRulers if value == zero => t.say("report-no-ruler"),
        Goal::FewestRulers => {
            counted(t, "report-ruler", super::each(value, all(matrix)), 2, &[sure])
        }
    })
}

/// What each wish costs, and all of them together.
pub(super) fn prices(t: Tongue, claim: &Claim, matrix: &Matrix, refused: usize) -> String {
    let mut text = String::new();
    let (touch, wished): (Vec<&Price>, Vec<&Price>) =
        claim.prices.iter().partition(|price| price.wish == Wish::Touch);
    for price in &touch {
        if let Some(sentence) = self::touch(t, price, claim, matrix) {
            push(&mut text, &sentence);
        }
    }
    let Some(kept) = &claim.kept else { return text };
    for price in &wished {
        push(&mut text, &one(t, price, claim, matrix));
    }
    if wished.len() > 1 || !wished.is_empty() && claim.wishes.allow_touch {
        let extra = super::less(claim.total, kept.without_wishes);
        let extra = super::each(extra, all(matrix));
        let exact = kept.without_wishes_optimal && claim.optimal();
        let costs = costs(t, extra, exact);
        push(&mut text, &t.with("report-price-all", &[("costs", &costs)]));
    }
    if claim.prices.is_empty() && refused == 0 {
        push(&mut text, &t.say("report-price-none"));
    }
    text
}

fn one(t: Tongue, price: &Price, claim: &Claim, matrix: &Matrix) -> String {
    let extra = super::each(price.extra, all(matrix));
    let wish = in_words(t, &price.wish, &claim.wishes, matrix);
    let costs = costs(t, extra, price.exact);
    if price.together.is_empty() {
        return t.with("report-price", &[("wish", &wish), ("costs", &costs)]);
    }
    let pairs = spinney_voice::all_pairs(t, &named(matrix, &price.together));
    let texts: [(&str, &dyn Display); 3] =
        [("wish", &wish), ("costs", &costs), ("pairs", &pairs)];
    t.with("report-price-together", &texts)
}

/// What it costs that nobody is sent to touch what may hurt, or what is saved where it is
/// allowed; and where touch had to be asked for all the same. None: it changes nothing.
fn touch(t: Tongue, price: &Price, claim: &Claim, matrix: &Matrix) -> Option<String> {
    let zero = Share::from_integer(0);
    let extra = super::each(price.extra, all(matrix));
    let costs = costs(t, extra, price.exact);
    let touching = touching(t, claim);
    if claim.wishes.allow_touch {
        let message = match touching.is_some() {
            true => "report-touch-allowed",
            false => "report-touch-allowed-nobody",
        };
        let allowed = t.with(message, &[("costs", &costs)]);
        return Some(
            [Some(allowed), touching].into_iter().flatten().collect::<Vec<_>>().join(" "),
        );
    }
    let spared = (extra != zero).then(|| t.with("report-touch-spared", &[("costs", &costs)]));
    let why = touching.is_some().then(|| {
        t.say(match claim.wishes.kept.is_empty() {
            false => "report-nothing-else-or-kept",
            true => "report-nothing-else",
        })
    });
    let said: Vec<String> = [spared, touching, why].into_iter().flatten().collect();
    (!said.is_empty()).then(|| said.join(" "))
}

/// Which questions are answered by touch while it may hurt; None: none.
fn touching(t: Tongue, claim: &Claim) -> Option<String> {
    let numbers: Vec<String> = claim.touching.iter().map(u32::to_string).collect();
    let questions = spinney_voice::all(t, &numbers);
    let texts: [(&str, &dyn Display); 1] = [("questions", &questions)];
    (!numbers.is_empty()).then(|| t.count_with("report-touching", numbers.len(), &texts))
}

/// `costs 0.3 questions per find`
fn costs(t: Tongue, extra: Share, exact: bool) -> String {
    let zero = Share::from_integer(0);
    let size = if extra < zero { -extra } else { extra };
    let message = match (extra > zero, extra < zero, exact) {
        (true, _, true) => "report-costs",
        (true, _, false) => "report-costs-about",
        (_, true, true) => "report-saves",
        (_, true, false) => "report-saves-about",
        (false, false, true) => return t.say("report-costs-nothing"),
        (false, false, false) => return t.say("report-costs-about-nothing"),
    };
    t.with(message, &[("questions", &questions(t, size, 2))])
}

fn in_words(t: Tongue, wish: &Wish, wishes: &Wishes, matrix: &Matrix) -> String {
    match wish {
        Wish::Kept => t.say("report-wish-kept"),
        Wish::Hand => t.with("report-wish-hand", &[("hand", &hand(t, wishes))]),
        Wish::Never(at) => {
            t.with("report-wish-never", &[("column", &matrix.character(*at).name)])
        }
        Wish::Touch if wishes.allow_touch => t.say("report-wish-touch-allowed"),
        Wish::Touch => t.say("report-wish-touch"),
        Wish::Order => t.say("report-wish-order"),
        Wish::Early(early) => {
            t.with("report-wish-early", &[("wish", &early_in_words(t, matrix, *early))])
        }
        Wish::Goals => t.say("report-wish-goals"),
    }
}

/// `one leaf in autumn`
fn hand(t: Tongue, wishes: &Wishes) -> String {
    let form = wishes.hand.map(|hand| spinney_voice::hand(t, hand));
    let season = wishes.season.map(|season| spinney_voice::season(t, season));
    match (form, season) {
        (Some(form), Some(season)) => {
            t.with("report-hand-in-season", &[("hand", &form), ("season", &season)])
        }
        (Some(form), None) => form,
        (None, Some(season)) => t.with("report-season", &[("season", &season)]),
        (None, None) => t.say("report-the-find"),
    }
}

fn named(matrix: &Matrix, pairs: &[(TaxonIx, TaxonIx)]) -> Vec<[String; 2]> {
    let name = |at: &TaxonIx| matrix.taxon(*at).name.clone();
    pairs.iter().map(|(one, other)| [name(one), name(other)]).collect()
}

/// What is not asked because it is not seen, or must not be; and what nobody placed.
pub(crate) fn not_asked(t: Tongue, matrix: &Matrix, wishes: &Wishes) -> String {
    let mut text = String::new();
    if wishes.hand.is_none() && wishes.season.is_none() {
        return text;
    }
    let (hand, season) = (wishes.hand, wishes.season);
    let seen = Wishes { hand, season, ..Wishes::default() };
    let left_out = spinney_check::left_out(matrix, &seen);
    let (mut unseen, mut unsaid) = (Vec::new(), Vec::new());
    for at in matrix.character_indices() {
        let character = matrix.character(at);
        let (on, when) = (&character.seen_on, &character.seasons);
        if left_out.contains(&at) {
            unseen.push(character.name.as_str());
        } else if (wishes.hand.is_some() && on.is_empty())
            || (wishes.season.is_some() && when.is_empty() && wishes.hand.is_none())
        {
            unsaid.push(character.name.as_str());
        }
    }
    let hand = self::hand(t, wishes);
    if unseen.is_empty() {
        push(&mut text, &t.with("report-all-columns", &[("hand", &hand)]));
    } else {
        let columns = unseen.join(", ");
        push(&mut text, &t.with("report-not-seen", &[("hand", &hand), ("columns", &columns)]));
    }
    if !unsaid.is_empty() {
        push(&mut text, &t.with("report-not-said", &[("columns", &unsaid.join(", "))]));
    }
    text
}

/// Pairs that stay together because of what must not or cannot be asked.
pub(crate) fn left_together(claim: &Claim, matrix: &Matrix) -> Option<Finding> {
    let mut together: Vec<(TaxonIx, TaxonIx)> =
        claim.prices.iter().flat_map(|price| price.together.iter().copied()).collect();
    together.sort_unstable();
    together.dedup();
    if together.is_empty() {
        return None;
    }
    let fact = OfUnmet::LeftTogether { pairs: named(matrix, &together) };
    Some(Finding::of(Place::Table, fact))
}

fn capital(text: &str) -> String {
    let mut letters = text.chars();
    letters.next().map_or(String::new(), |first| first.to_uppercase().chain(letters).collect())
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn prices_are_said_with_their_sign() {
        let (third, nothing) = (Share::new(1, 3), Share::from_integer(0));
        let english = Tongue::of_terminal();
        assert_eq!(costs(english, third, true), "costs 0.33 questions per find");
        assert_eq!(costs(english, -third, false), "saves about 0.33 questions per find");
        assert_eq!(costs(english, nothing, true), "costs nothing");
        let german = Tongue::for_person(&["de".to_owned()]);
        assert_eq!(costs(german, -third, true), "spart 0,33 Fragen je Fund");
        assert_eq!(costs(german, Share::from_integer(1), true), "kostet 1 Frage je Fund");
    }
}
