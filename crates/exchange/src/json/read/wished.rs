//! Wishes, what is reached of them and what they cost, back from our JSON.
//!
//! A name that the table does not have is a finding; the wish it stands in is dropped and the
//! rest is read.

use spinney_model::{
    CharacterIx, Early, Finding, Goal, Kept, Matrix, OfKeyFile, Place, Price, Reached, Season,
    SeenOn, StrangeWish, TaxonIx, Wish, Wishes,
};

use super::{KeyFileError, asked, share};
use crate::json::{shape, wish_words};

/// What names refer to, and the findings on those that refer to nothing.
pub(super) struct Names<'m> {
    pub(super) matrix: &'m Matrix,
    pub(super) findings: Vec<Finding>,
}

impl Names<'_> {
    fn missing(&mut self, name: StrangeWish) {
        self.findings.push(Finding::of(Place::Key, OfKeyFile::Wishes { name }));
    }

    fn character(&mut self, name: &str) -> Option<CharacterIx> {
        let mut all = self.matrix.character_indices();
        let found = all.find(|at| self.matrix.character(*at).name == name);
        if found.is_none() {
            self.missing(StrangeWish::Named(name.to_owned()));
        }
        found
    }

    fn taxon(&mut self, name: &str) -> Option<TaxonIx> {
        let mut all = self.matrix.taxon_indices();
        let found = all.find(|at| self.matrix.taxon(*at).name == name);
        if found.is_none() {
            self.missing(StrangeWish::Named(name.to_owned()));
        }
        found
    }

    fn goal(&mut self, word: &str) -> Option<Goal> {
        let found = wish_words::goal(word);
        if found.is_none() {
            self.missing(StrangeWish::Goal(word.to_owned()));
        }
        found
    }

    fn early(&mut self, early: &shape::Early) -> Option<Early> {
        match (&early.part, &early.leave) {
            (Some((one, other)), None) => {
                Some(Early::Part(self.taxon(one)?, self.taxon(other)?))
            }
            (None, Some(taxon)) => Some(Early::Leave(self.taxon(taxon)?)),
            _ => {
                self.missing(StrangeWish::Early);
                None
            }
        }
    }

    fn pair(&mut self, (one, other): &(String, String)) -> Option<(TaxonIx, TaxonIx)> {
        Some((self.taxon(one)?, self.taxon(other)?))
    }
}

/// The wishes, and within how many questions the early ones are over.
pub(super) fn wishes(shape: shape::Wishes, names: &mut Names<'_>) -> (Wishes, Vec<u32>) {
    let mut wishes = Wishes::default();
    let mut within = Vec::new();
    if let Some(word) = shape.hand {
        wishes.hand = SeenOn::ALL.into_iter().find(|hand| hand.word() == word);
        if wishes.hand.is_none() {
            names.missing(StrangeWish::Hand(word));
        }
    }
    if let Some(word) = shape.season {
        wishes.season = Season::ALL.into_iter().find(|season| season.word() == word);
        if wishes.season.is_none() {
            names.missing(StrangeWish::Season(word));
        }
    }
    wishes.allow_touch = shape.allow_touch;
    wishes.never = shape.never.iter().filter_map(|name| names.character(name)).collect();
    wishes.order = shape.order.iter().filter_map(|name| names.character(name)).collect();
    for early in &shape.early {
        if let Some(wish) = names.early(early) {
            wishes.early.push(wish);
            within.extend(early.within);
        }
    }
    if within.len() < wishes.early.len() {
        // One without a number would be taken for its neighbour's.
        within.clear();
    }
    wishes.goals = shape.goals.iter().filter_map(|word| names.goal(word)).collect();
    wishes.kept = kept(shape.kept, names);
    (wishes, within)
}

/// So many questions may be kept.
const MOST_KEPT: usize = 500;

/// The questions to keep, those that the table has, each once.
fn kept(mut list: Vec<shape::Kept>, names: &mut Names<'_>) -> Vec<Kept> {
    if list.len() > MOST_KEPT {
        list.truncate(MOST_KEPT);
        let fact = OfKeyFile::TooManyKept { most: MOST_KEPT };
        names.findings.push(Finding::of(Place::Key, fact));
    }
    let mut list: Vec<Option<shape::Kept>> = list.into_iter().map(Some).collect();
    let (mut kept, mut open) = (Vec::new(), vec![(0, None)]);
    while let Some((place, after)) = open.pop() {
        let Some(shape) = list.get_mut(place).and_then(Option::take) else { continue };
        let ask = match asked(shape.ask, names.matrix) {
            Ok(ask) => ask,
            Err(what) => {
                names.missing(StrangeWish::Asked(what));
                continue;
            }
        };
        let here = Kept::add(&mut kept, ask, after);
        for (yes, to) in [(false, shape.no), (true, shape.yes)] {
            // What stands before is no beginning of a key, but a way back.
            let to = to.filter(|to| *to > place);
            open.extend(to.map(|to| (to, Some((here, yes)))));
        }
    }
    kept
}

pub(super) fn reached(
    shapes: Vec<shape::Reached>,
    names: &mut Names<'_>,
) -> Result<Vec<Reached>, KeyFileError> {
    let mut all = Vec::new();
    for shape in shapes {
        let value = share("value", shape.value_exact, &shape.value)?;
        let then = shape.then.map(|then| share("then", shape.then_exact, &then)).transpose()?;
        all.extend(names.goal(&shape.goal).map(|goal| Reached { goal, value, then }));
    }
    Ok(all)
}

pub(super) fn prices(
    shapes: Vec<shape::Price>,
    names: &mut Names<'_>,
) -> Result<Vec<Price>, KeyFileError> {
    let mut all = Vec::new();
    for shape in shapes {
        let extra = share("extra", shape.extra_exact.clone(), &shape.extra)?;
        if let Some(wish) = priced(&shape, names) {
            let pairs = shape.together.iter();
            let together = pairs.filter_map(|pair| names.pair(pair)).collect();
            all.push(Price { wish, extra, exact: shape.exact, together });
        }
    }
    Ok(all)
}

fn priced(shape: &shape::Price, names: &mut Names<'_>) -> Option<Wish> {
    match (shape.about.as_str(), &shape.character, &shape.early) {
        ("kept", ..) => Some(Wish::Kept),
        ("hand", ..) => Some(Wish::Hand),
        ("never", Some(name), _) => names.character(name).map(Wish::Never),
        ("touch", ..) => Some(Wish::Touch),
        ("order", ..) => Some(Wish::Order),
        ("early", _, Some(early)) => names.early(early).map(Wish::Early),
        ("goals", ..) => Some(Wish::Goals),
        _ => {
            names.missing(StrangeWish::Priced(shape.wish.clone()));
            None
        }
    }
}
