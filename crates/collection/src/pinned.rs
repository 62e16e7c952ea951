//! What it takes to fix questions and to change them: the edits that put a question, and all
//! above it, where the key has them now.
//!
//! From a key as it stands to edits. A question that is not about a column of the table (a
//! ratio that the table made by itself, a question that was sorted by hand) is fixed by its
//! words and by how the kinds lie now. Edits are tried on the one key that they change.

use std::collections::BTreeMap;

use spinney_check::Says;
use spinney_model::{
    Answer, Ask, AskOf, Asked, Couplet, Fork, KeyEdit, Quantity, Scale, Side, StateIx, TaxonIx,
    Value, Wanted, WhyNot,
};
use spinney_voice::wording;

use crate::Drawn;
use crate::keys::{self, KeyFrom};

/// Why a number cannot be asked for.
#[derive(Debug, PartialEq, Eq)]
pub enum NoThreshold {
    /// It is no number.
    NoNumber,
    /// It is no whole number, and things are counted.
    NoCount,
    /// Nothing is asked there by now, or for no number.
    Gone,
    /// The question is about no column of the table.
    NotOfTable,
    /// It lies inside the ranges of these kinds.
    Inside(Vec<TaxonIx>),
    /// The builder would not ask it there.
    Refused(WhyNot),
}

/// A kind with what was measured of it.
pub struct Measured {
    /// The kind.
    pub taxon: TaxonIx,
    /// Where it goes from the question.
    pub side: Side,
    /// From the least to the most; None: nobody measured it.
    pub range: Option<(Quantity, Quantity)>,
}

/// A kept question that the finished key does not ask where it was wanted.
pub struct NotAsked {
    /// Where.
    pub at: Fork,
    /// Its words.
    pub words: String,
    /// Why not.
    pub why: WhyNot,
}

impl KeyFrom<'_> {
    /// A question in words that outlast the table; None: it is not about a column of its own.
    pub fn of_the_table(&self, ask: &Ask) -> Option<AskOf> {
        (ask.character.0 < self.made.layer.sorted_from).then(|| self.laid.ask_of(ask)).flatten()
    }

    /// Where each kind that comes to a question goes from there.
    pub fn sides(&self, number: u32) -> BTreeMap<TaxonIx, Side> {
        let mut sides = BTreeMap::new();
        for walk in &self.made.opinion.walks {
            for step in walk.steps.iter().filter(|step| step.couplet == number) {
                let side = match step.answer {
                    Answer::Yes => Side::Yes,
                    Answer::No => Side::No,
                };
                let known = sides.entry(walk.taxon).or_insert(side);
                if *known != side {
                    *known = Side::Both;
                }
            }
        }
        sides
    }

    /// The kinds that come to a question about a number, with what was measured of them: the
    /// smallest first, those that nobody measured last.
    pub fn measured(&self, couplet: &Couplet) -> Vec<Measured> {
        let Some(ask) = &couplet.ask else { return Vec::new() };
        let matrix = &self.made.layer.matrix;
        let measured = |(taxon, side)| {
            let range = match &matrix.cell(taxon, ask.character).value {
                Value::Range { low, high } => Some((*low, *high)),
                Value::Counts(counts) => {
                    let whole = |count: u32| Quantity::from_whole(count.into());
                    counts
                        .first()
                        .zip(counts.last())
                        .map(|(low, high)| (whole(low.0), whole(high.0)))
                }
                Value::Unknown | Value::DoesNotApply | Value::States(_) => None,
            };
            Measured { taxon, side, range }
        };
        let mut all: Vec<Measured> =
            self.sides(couplet.number).into_iter().map(measured).collect();
        all.sort_by_key(|of| (of.range.is_none(), of.range, of.taxon));
        all
    }

    /// Fixes a question and all above it that are not fixed yet.
    pub fn pin(&self, at: &Fork) -> Vec<KeyEdit> {
        let above = (0..=at.0.len()).map(|length| Fork(at.0[..length].to_vec()));
        above.flat_map(|place| self.pin_one(&place)).collect()
    }

    /// Fixes every question of the key that is not fixed yet, those above first.
    pub fn pin_all(&self) -> Vec<KeyEdit> {
        let mut places: Vec<&Fork> = self.made.places.values().collect();
        places.sort_by_key(|place| (place.0.len(), *place));
        places.into_iter().flat_map(|place| self.pin_one(place)).collect()
    }

    /// Fixes all above a question.
    pub fn pin_above(&self, at: &Fork) -> Vec<KeyEdit> {
        match at.0.split_last() {
            Some((_, above)) => self.pin(&Fork(above.to_vec())),
            None => Vec::new(),
        }
    }

    /// Kept questions that the finished key does not ask where they were wanted.
    pub fn not_asked(&self) -> Vec<NotAsked> {
        if !self.drawn().finished() {
            return Vec::new();
        }
        let wanted = self.made.layer.forks.iter();
        let wanted = wanted.filter_map(|(at, heap)| Some((at, heap.ask.as_ref()?)));
        let left = wanted.filter(|(at, ask)| {
            self.made.couplet(at).is_none_or(|couplet| couplet.ask.as_ref() != Some(*ask))
        });
        let left = left.filter_map(|(at, ask)| {
            let mut refused = self.made.refused.iter();
            let refusal = refused.find(|refusal| refusal.wanted == Wanted::Ask(ask.clone()));
            let why = refusal.map_or(WhyNot::AfterRefused, |refusal| refusal.why);
            let words = self.drawn().questions.get(at)?.words.clone();
            Some(NotAsked { at: at.clone(), words, why })
        });
        left.collect()
    }

    /// What a question asks, with the number that its words say.
    pub fn said(&self, couplet: &Couplet) -> Option<Ask> {
        let couplets = &self.made.key.couplets;
        let at = couplets.iter().position(|other| other.number == couplet.number)?;
        wording::said(&self.made.layer.matrix, &self.made.key, at)
    }

    fn pin_one(&self, at: &Fork) -> Vec<KeyEdit> {
        if self.drawn().questions.contains_key(at) {
            return Vec::new();
        }
        let Some(couplet) = self.made.couplet(at) else { return Vec::new() };
        // The number that was said is what is kept, so that the words stay true.
        let ask = self.said(couplet).and_then(|ask| self.of_the_table(&ask));
        let by_hand = ask.is_none();
        let words = couplet.wording.first().to_owned();
        let mut edits = vec![KeyEdit::Ask { at: at.clone(), words, ask }];
        if by_hand {
            let sides = self.sides(couplet.number).into_iter();
            edits.extend(sides.map(|(taxon, side)| {
                let kind = self.made.layer.kinds[taxon.0];
                KeyEdit::Sort { at: at.clone(), kind, side: Some(side) }
            }));
        }
        edits
    }

    /// The key with these edits.
    fn with(&self, edits: &[KeyEdit]) -> Drawn {
        let mut key = self.drawn().clone();
        let there = |kind| self.collection.kinds.contains_key(&kind);
        edits.iter().for_each(|edit| key.apply(edit, there));
        key
    }

    /// Asks something else at a place, without giving up what was fixed and sorted there and
    /// below; with `exchanged`, what lay under yes lies under no from now on.
    pub fn asked_anew(
        &self,
        at: &Fork,
        words: &str,
        ask: Option<AskOf>,
        exchanged: bool,
    ) -> Vec<KeyEdit> {
        let mut edits = self.pin(at);
        let fixed = self.with(&edits);
        edits.push(KeyEdit::TakeOut(at.clone()));
        for (place, question) in &fixed.questions {
            if !place.0.starts_with(&at.0) {
                continue;
            }
            let here = place == at;
            let mut place = place.clone();
            if let (true, Some(answer)) = (exchanged, place.0.get_mut(at.0.len())) {
                *answer = !*answer;
            }
            let (words, ask) = match here {
                true => (words.to_owned(), ask.clone()),
                false => (question.words.clone(), question.ask.clone()),
            };
            edits.push(KeyEdit::Ask { at: place.clone(), words, ask });
            edits.extend(question.sorted.iter().map(|(kind, side)| {
                let side = if here && exchanged { other(*side) } else { *side };
                KeyEdit::Sort { at: place.clone(), kind: *kind, side: Some(side) }
            }));
        }
        edits
    }

    /// Yes and no change sides, and so do the heaps.
    pub fn swap(&self, at: &Fork, words: &str) -> Vec<KeyEdit> {
        let drawn = self.drawn().questions.get(at);
        let ask = self.made.couplet(at).and_then(|couplet| couplet.ask.as_ref());
        // What a person sorted without a meaning has none afterwards either.
        let ask = ask.filter(|_| drawn.is_none_or(|question| question.ask.is_some()));
        let ask = ask.and_then(|ask| self.of_the_table(&self.opposite(ask)));
        let ask = ask.or_else(|| {
            let linked = self.laid.ask(drawn?.ask.as_ref()?)?;
            self.laid.ask_of(&self.opposite(&linked))
        });
        self.asked_anew(at, words, ask, true)
    }

    /// The question whose yes is the other's no.
    fn opposite(&self, ask: &Ask) -> Ask {
        let character = self.made.layer.matrix.character(ask.character);
        let yes = match (&ask.yes, &character.scale) {
            (Asked::States(asked), Scale::Words { states }) => {
                let all = (0..states.len()).map(StateIx);
                Asked::States(all.filter(|state| !asked.contains(state)).collect())
            }
            (Asked::AtLeast(least), _) => Asked::Below(*least),
            (Asked::Below(least), _) => Asked::AtLeast(*least),
            (Asked::States(asked), _) => Asked::States(asked.clone()),
        };
        Ask { character: ask.character, yes }
    }

    /// The words of the opposite question; empty: a person has to find them.
    pub fn opposite_words(&self, couplet: &Couplet) -> String {
        let ask = couplet.ask.as_ref().filter(|ask| self.of_the_table(ask).is_some());
        let words =
            |ask| wording::question(self.t, &self.made.layer.matrix, &self.opposite(ask));
        ask.map_or(String::new(), words)
    }

    /// The same question with another number, as it was typed.
    pub fn moved(&self, at: &Fork, typed: &str) -> Result<Vec<KeyEdit>, NoThreshold> {
        let couplet = self.made.couplet(at).ok_or(NoThreshold::Gone)?;
        let old = couplet.ask.as_ref().ok_or(NoThreshold::Gone)?;
        let character = self.made.layer.matrix.character(old.character);
        let number = crate::laid::quantity(typed).map(|typed| kept(typed, character.one()));
        let counts = matches!(character.scale, Scale::Counts);
        let number = match number {
            Some(number) if !counts || number.thousandths() % 1000 == 0 => number,
            _ if counts => return Err(NoThreshold::NoCount),
            _ => return Err(NoThreshold::NoNumber),
        };
        let yes = match old.yes {
            Asked::AtLeast(_) => Asked::AtLeast(number),
            Asked::Below(_) => Asked::Below(number),
            Asked::States(_) => return Err(NoThreshold::Gone),
        };
        let new = Ask { character: old.character, yes };
        let of = self.of_the_table(&new).ok_or(NoThreshold::NotOfTable)?;
        self.cuts_nobody(couplet.number, &new)?;
        let words = self.words_with(couplet, old, &new);
        let edits = self.asked_anew(at, &words, Some(of), false);
        self.asked_there(at, &new, &edits)?;
        Ok(edits)
    }

    /// Not where the number lies inside the range of a kind that comes here.
    fn cuts_nobody(&self, number: u32, ask: &Ask) -> Result<(), NoThreshold> {
        let matrix = &self.made.layer.matrix;
        let says = spinney_check::says(matrix, ask);
        let cut = |taxon: &TaxonIx| {
            let range = matches!(matrix.cell(*taxon, ask.character).value, Value::Range { .. });
            range && says[taxon.0] == Says::NobodyKnows
        };
        let cut: Vec<TaxonIx> = self.sides(number).into_keys().filter(cut).collect();
        if cut.is_empty() { Ok(()) } else { Err(NoThreshold::Inside(cut)) }
    }

    /// Not where the builder would not ask it there.
    fn asked_there(&self, at: &Fork, ask: &Ask, edits: &[KeyEdit]) -> Result<(), NoThreshold> {
        let made = keys::make(self.collection, self.laid, &self.with(edits));
        let refused = made.iter().flat_map(|made| &made.refused).find(|refusal| {
            refusal.wanted == Wanted::Ask(ask.clone()) && refusal.why != WhyNot::AfterRefused
        });
        let there = made.as_ref().and_then(|made| made.couplet(at)).is_some();
        match refused {
            Some(refusal) if !there || self.drawn().finished() => {
                Err(NoThreshold::Refused(refusal.why))
            }
            _ => Ok(()),
        }
    }

    /// The words of a question whose number was moved: a person's own words stay, with the new
    /// number in them, if the old one stands there; what a table gave in a language is given in
    /// that language again.
    fn words_with(&self, couplet: &Couplet, old: &Ask, new: &Ask) -> String {
        let matrix = &self.made.layer.matrix;
        let words = couplet.wording.first();
        let given = keys::given_in(matrix, old, words);
        let character = matrix.character(old.character);
        // People may have written it as the column is written, or as it is kept.
        let replaced = threshold(old).zip(threshold(new)).and_then(|(was, is)| {
            exchanged_number(words, &character.number(was), &character.number(is))
                .or_else(|| exchanged_number(words, &was.to_string(), &is.to_string()))
        });
        match (given, replaced) {
            (None, Some(words)) => words,
            (given, _) => wording::question(given.unwrap_or(self.t), matrix, new),
        }
    }
}

/// A number as it is kept that was typed as its column is written, of which one is so much: 4 in
/// a column of centimetres is 40 mm.
fn kept(typed: Quantity, one: Quantity) -> Quantity {
    let product = i128::from(typed.thousandths()) * i128::from(one.thousandths());
    let nearest = (product.abs() + 500) / 1000 * product.signum();
    let farthest = if nearest < 0 { i64::MIN } else { i64::MAX };
    Quantity::from_thousandths(i64::try_from(nearest).unwrap_or(farthest))
}

fn other(side: Side) -> Side {
    match side {
        Side::Yes => Side::No,
        Side::No => Side::Yes,
        Side::Both => Side::Both,
    }
}

/// The number that a question asks for.
pub fn threshold(ask: &Ask) -> Option<Quantity> {
    match ask.yes {
        Asked::AtLeast(at) | Asked::Below(at) => Some(at),
        Asked::States(_) => None,
    }
}

/// A number exchanged where it stands alone.
fn exchanged_number(words: &str, was: &str, is: &str) -> Option<String> {
    let part_of_number = |sign: Option<char>| sign.is_some_and(|sign| sign.is_ascii_digit());
    let (at, _) = words.match_indices(was).find(|(at, _)| {
        let before = words[..*at].trim_end_matches(['.', ',']);
        let after = words[at + was.len()..].trim_start_matches(['.', ',']);
        !part_of_number(before.chars().next_back()) && !part_of_number(after.chars().next())
    })?;
    Some(format!("{}{is}{}", &words[..at], &words[at + was.len()..]))
}

#[cfg(test)]
mod tests {
    use super::exchanged_number;

    #[test]
    fn only_a_whole_number_is_exchanged() {
        let moved = |words| exchanged_number(words, "25", "30");
        assert_eq!(moved("Is it 25 mm or more?").as_deref(), Some("Is it 30 mm or more?"));
        assert_eq!(moved("Is it 125 mm, or 2.25?"), None);
        assert_eq!(moved("Longer than my thumb?"), None);
    }
}
