//! What wishes cost and what goals reach, in a teacher's words.

use spinney_model::{
    Claim, Finding, Goal, Matrix, OfUnmet, Place, Price, Reached, Share, TaxonIx, Wish, Wishes,
};
use spinney_voice::Tongue;

use super::{counted, push};
use crate::command::wishes::early_in_words;

fn all(matrix: &Matrix) -> Share {
    matrix.taxa().iter().map(|taxon| taxon.weight).sum()
}

/// What the key reaches of each goal that was asked for.
pub(super) fn reached(claim: &Claim, matrix: &Matrix) -> String {
    let mut text = String::new();
    for reached in &claim.reached {
        if let Some(sentence) = goal(reached, matrix, claim.optimal()) {
            push(&mut text, format_args!("{sentence}"));
        }
    }
    for (early, within) in claim.wishes.early.iter().zip(&claim.within) {
        let questions = counted(Share::from_integer((*within).into()), 0, "question");
        let wish = early_in_words(matrix, *early);
        push(&mut text, format_args!("{}: after {questions} at most.", capital(&wish)));
    }
    text
}

fn goal(reached: &Reached, matrix: &Matrix, sure: bool) -> Option<String> {
    let value = reached.value;
    let zero = Share::from_integer(0);
    let best = if sure { "" } else { ", as far as was looked" };
    Some(match reached.goal {
        Goal::LeastEffort | Goal::ShortestLongestPath => return None,
        Goal::MostRightEnds => {
            let mean = *value.numer() as f64
                / *value.denom() as f64
                / 1e6
                / (*all(matrix).numer() as f64 / *all(matrix).denom() as f64);
            format!(
                "About {:.0} finds of 100 come out right, if each column is read right as often \
                 as the table says (95, 90 or 80 of 100 for an easy, fair or hard one where it \
                 does not){best}.",
                100.0 * (-mean).exp(),
            )
        }
        Goal::EvenTeaching => {
            let most = counted(value, 0, "new word");
            let met = super::each(reached.then.unwrap_or(zero), all(matrix));
            let met = counted(met, 1, "new word");
            format!("At most {most} on any question, and {met} per find in all{best}.")
        }
        Goal::FewestWords => {
            format!("The whole key uses {}{best}.", counted(value, 0, "different word"))
        }
        Goal::FewestRulers if value == zero => "Nobody needs a ruler.".to_owned(),
        Goal::FewestRulers => {
            let each = counted(super::each(value, all(matrix)), 2, "time");
            format!("A ruler is needed {each} per find{best}.")
        }
    })
}

/// What each wish costs, and all of them together.
pub(super) fn prices(claim: &Claim, matrix: &Matrix, refused: usize) -> String {
    let mut text = String::new();
    let (touch, wished): (Vec<&Price>, Vec<&Price>) =
        claim.prices.iter().partition(|price| price.wish == Wish::Touch);
    for price in &touch {
        if let Some(sentence) = self::touch(price, claim, matrix) {
            push(&mut text, format_args!("{sentence}"));
        }
    }
    let Some(kept) = &claim.kept else { return text };
    for price in &wished {
        push(&mut text, format_args!("{}", one(price, claim, matrix)));
    }
    if wished.len() > 1 || !wished.is_empty() && claim.wishes.allow_touch {
        let extra = super::less(claim.total, kept.without_wishes);
        let extra = super::each(extra, all(matrix));
        let exact = kept.without_wishes_optimal && claim.optimal();
        push(
            &mut text,
            format_args!("All your wishes together: this key {}.", costs(extra, exact)),
        );
    }
    if claim.prices.is_empty() && refused == 0 {
        push(&mut text, format_args!("Your wishes cost nothing."));
    }
    text
}

fn one(price: &Price, claim: &Claim, matrix: &Matrix) -> String {
    let extra = super::each(price.extra, all(matrix));
    let wish = in_words(&price.wish, &claim.wishes, matrix);
    let mut sentence = format!("{wish} {}", costs(extra, price.exact));
    if !price.together.is_empty() {
        let pairs =
            spinney_voice::all_pairs(Tongue::of_terminal(), &named(matrix, &price.together));
        sentence.push_str(&format!(", and leaves together: {pairs}"));
    }
    sentence.push('.');
    sentence
}

/// What it costs that nobody is sent to touch what may hurt, or what is saved where it is
/// allowed; and where touch had to be asked for all the same. None: it changes nothing.
fn touch(price: &Price, claim: &Claim, matrix: &Matrix) -> Option<String> {
    let zero = Share::from_integer(0);
    let extra = super::each(price.extra, all(matrix));
    if claim.wishes.allow_touch {
        let costs = costs(extra, price.exact);
        return Some(match touching(claim) {
            Some(questions) => format!(
                "Touching is allowed. That {costs}; {questions} while a kind with a caution may be \
                 in the hand."
            ),
            None => {
                format!("Touching is allowed. That {costs}, and nobody touches what may hurt.")
            }
        });
    }
    let spared = (extra != zero).then(|| {
        let costs = costs(extra, price.exact);
        format!("Nobody is sent to touch what may hurt while something else separates. That {costs}.")
    });
    let asked = touching(claim).map(|questions| {
        let why = match claim.wishes.kept.is_empty() {
            false => "Nothing else separates there, or you kept it.",
            true => "Nothing else separates there.",
        };
        format!("{} while a kind with a caution may be in the hand. {why}", capital(&questions))
    });
    let said: Vec<String> = spared.into_iter().chain(asked).collect();
    (!said.is_empty()).then(|| said.join(" "))
}

/// `question 7 is answered by touch`
fn touching(claim: &Claim) -> Option<String> {
    let numbers: Vec<String> = claim.touching.iter().map(u32::to_string).collect();
    match numbers.as_slice() {
        [] => None,
        [one] => Some(format!("question {one} is answered by touch")),
        [before @ .., last] => {
            Some(format!("questions {} and {last} are answered by touch", before.join(", ")))
        }
    }
}

/// `costs 0.3 questions per find`
fn costs(extra: Share, exact: bool) -> String {
    let zero = Share::from_integer(0);
    let about = if exact { "" } else { "about " };
    if extra > zero {
        format!("costs {about}{} per find", counted(extra, 2, "question"))
    } else if extra < zero {
        format!("saves {about}{} per find", counted(-extra, 2, "question"))
    } else {
        format!("costs {about}nothing")
    }
}

fn in_words(wish: &Wish, wishes: &Wishes, matrix: &Matrix) -> String {
    match wish {
        Wish::Kept => "Keeping your questions".to_owned(),
        Wish::Hand => format!("Asking only what {} shows", hand(wishes)),
        Wish::Never(at) => format!("Never asking about {}", matrix.character(*at).name),
        Wish::Touch if wishes.allow_touch => "Letting people touch what may hurt".to_owned(),
        Wish::Touch => "Sending nobody to touch what may hurt".to_owned(),
        Wish::Order => "Asking in your order".to_owned(),
        Wish::Early(early) => format!("That {}", early_in_words(matrix, *early)),
        Wish::Goals => "Putting your other aims first".to_owned(),
    }
}

/// `a leaf in autumn`
pub(crate) fn hand(wishes: &Wishes) -> String {
    let form = wishes.hand.map(|hand| format!("a {}", hand.word()));
    let season = wishes.season.map(|season| season.word());
    match (form, season) {
        (Some(form), Some(season)) => format!("{form} in {season}"),
        (Some(form), None) => form,
        (None, Some(season)) => season.to_owned(),
        (None, None) => "the find".to_owned(),
    }
}

fn named(matrix: &Matrix, pairs: &[(TaxonIx, TaxonIx)]) -> Vec<[String; 2]> {
    let name = |at: &TaxonIx| matrix.taxon(*at).name.clone();
    pairs.iter().map(|(one, other)| [name(one), name(other)]).collect()
}

/// What is not asked because it is not seen, or must not be; and what nobody placed.
pub(crate) fn not_asked(matrix: &Matrix, wishes: &Wishes) -> String {
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
    let hand = self::hand(wishes);
    if unseen.is_empty() {
        push(&mut text, format_args!("All columns can be asked of {hand}."));
    } else {
        push(
            &mut text,
            format_args!("Not asked, as {hand} does not show it: {}.", unseen.join(", ")),
        );
    }
    if !unsaid.is_empty() {
        let list = unsaid.join(", ");
        push(
            &mut text,
            format_args!("Nobody said where this can be seen, so it is asked: {list}."),
        );
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
        let third = Share::new(1, 3);
        assert_eq!(costs(third, true), "costs 0.33 questions per find");
        assert_eq!(costs(-third, false), "saves about 0.33 questions per find");
        assert_eq!(costs(Share::from_integer(0), true), "costs nothing");
    }
}
