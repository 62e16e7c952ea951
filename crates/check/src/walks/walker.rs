//! One kind on its way: from the first couplet to every end its forms come to.

use std::collections::btree_map::Entry;
use std::collections::{BTreeMap, BTreeSet};

use spinney_model::{Answer, CharacterIx, Share, Step, TaxonIx, Value, Walk};

use super::live::Live;
use super::{Cause, Effort, Named, Stray, Visit, Walked};
use crate::amount::Amount;
use crate::claim::steps;
use crate::question::Question;
use crate::tree::{ANSWERS, To, Tree};
use crate::values::{Has, Left, Taken, Values};

/// How many different forms of one kind are followed.
const MOST_FORMS: usize = 5_000;

/// A form of a kind on its way.
pub(super) struct Form {
    taken: Taken,
    flow: Option<Amount>,
    /// Where it left the side on which its name stands; several places where forms met.
    strays: BTreeSet<(usize, Answer)>,
    doubtful: bool,
    /// The place in the trail of the step that led here.
    trail: Option<usize>,
}

/// The forms of one kind that are still under way, by the order of their couplets, so that
/// forms that meet are added up before they are walked on.
pub(super) type UnderWay = BTreeMap<(usize, Taken), Form>;

/// One kind on its way through the key.
pub(super) struct Walker<'a, 'm, 'k> {
    pub(super) values: &'a Values<'m>,
    pub(super) tree: &'a Tree<'k>,
    pub(super) named: &'a Named,
    pub(super) questions: &'a [Option<Question>],
    pub(super) live: &'a Live,
    /// Numbers of couplets that cost nothing.
    pub(super) walked: &'a mut Walked,
    pub(super) taxon: TaxonIx,
    /// Every step made, with the step before it.
    pub(super) trail: Vec<(Step, Option<usize>)>,
    /// Where ways ended: the last step, and whether at an end that names the kind.
    pub(super) came_out: Vec<(usize, bool)>,
    pub(super) under_way: UnderWay,
    /// The effort of this kind: its fractions stay short until all kinds are added up.
    pub(super) effort: Option<Effort>,
}

impl Walker<'_, '_, '_> {
    pub(super) fn walk_all(&mut self, mut budget: usize) -> usize {
        let weight = self.values.matrix.taxon(self.taxon).weight;
        let start = Form {
            taken: Taken::new(),
            flow: Some(Amount::Short(weight)),
            strays: BTreeSet::new(),
            doubtful: false,
            trail: None,
        };
        self.under_way.insert((0, Taken::new()), start);
        let mut forms = 0;
        while let Some(((rank, _), form)) = self.under_way.pop_first() {
            if budget == 0 || forms == MOST_FORMS.max(self.tree.order.len()) {
                self.walked.unfinished.insert(self.taxon);
                self.effort = None;
                break;
            }
            budget -= 1;
            forms += 1;
            self.stand_before(self.tree.order[rank], form);
        }
        budget
    }

    /// One form answers one couplet.
    fn stand_before(&mut self, couplet: usize, form: Form) {
        let stray = !self.named.below(couplet);
        let asked = self.questions[couplet];
        let has = asked.map_or(Has::Yes, |asked| {
            self.values.has(self.taxon, asked.character, &form.taken)
        });
        let (sides, guessed) = match asked {
            Some(asked) if has != Has::No => {
                (self.values.sides(self.taxon, &asked, &form.taken).map(Side::of), false)
            }
            _ => (self.benefit_of_the_doubt(couplet), true),
        };
        let goes = sides.map(|side| side != Side::Nobody);
        // Section 7 has no effort for what section 4 forbids.
        let allowed = has == Has::Yes
            && asked.is_some_and(|asked| {
                goes != [true, true] || !self.values.is_range(self.taxon, asked.character)
            });
        let flow = form.flow.clone().filter(|_| allowed);
        self.add_effort(couplet, flow.as_ref());
        for (side, answer) in sides.into_iter().zip(ANSWERS) {
            let doubtful = form.doubtful || (guessed && goes == [true, true]);
            let next = match (side, asked) {
                (Side::Nobody, _) => continue,
                (Side::Keeps(kept), Some(asked)) if goes == [true, true] => {
                    self.narrowed(&form, asked.character, kept, doubtful)
                }
                _ => Form {
                    taken: form.taken.clone(),
                    flow: form.flow.clone().filter(|_| !guessed || goes != [true, true]),
                    strays: form.strays.clone(),
                    doubtful,
                    trail: form.trail,
                },
            };
            self.answer(couplet, answer, next, stray, &form.taken, goes);
        }
        self.walked.visits[couplet].push(Visit {
            taxon: self.taxon,
            goes,
            has,
            taken: form.taken,
            stray,
            flow,
        });
    }

    /// The form that is left after an answer that took something.
    fn narrowed(
        &self,
        form: &Form,
        character: CharacterIx,
        kept: Left,
        doubtful: bool,
    ) -> Form {
        let before = form.taken.iter().find(|(c, _)| *c == character).map(|(_, left)| *left);
        let before = match before {
            None => Some(Share::from_integer(1)),
            Some(left) => self.values.share(self.taxon, character, left),
        };
        let after = self.values.share(self.taxon, character, kept);
        let flow = match (&form.flow, before, after) {
            (Some(flow), Some(before), Some(after)) => Some(flow.narrowed(before, after)),
            _ => None,
        };
        let mut taken: Taken =
            form.taken.iter().filter(|(c, _)| *c != character).copied().collect();
        taken.push((character, kept));
        taken.sort_unstable();
        Form { taken, flow, strays: form.strays.clone(), doubtful, trail: form.trail }
    }

    /// Where a kind goes that the table cannot send: to where its name stands, else anywhere.
    fn benefit_of_the_doubt(&self, couplet: usize) -> [Side; 2] {
        let stands = ANSWERS.map(|answer| self.belongs(couplet, answer));
        if stands == [false, false] { [true, true] } else { stands }
            .map(|goes| if goes { Side::Guess } else { Side::Nobody })
    }

    fn belongs(&self, couplet: usize, answer: Answer) -> bool {
        self.named.beyond(couplet, answer, self.taxon, self.tree)
    }

    /// One form has answered, and goes on, comes out, or is lost.
    fn answer(
        &mut self,
        couplet: usize,
        answer: Answer,
        mut form: Form,
        stray: bool,
        before: &Taken,
        goes: [bool; 2],
    ) {
        let to = self.tree.to(couplet, answer);
        if !stray && !to.is_hole() && !self.belongs(couplet, answer) {
            self.goes_astray(couplet, answer, &form, before, goes);
            form.strays.insert((couplet, answer));
        }
        let step = Step { couplet: self.tree.number(couplet), answer };
        self.trail.push((step, form.trail));
        form.trail = Some(self.trail.len() - 1);
        if let To::Couplet(next) = to {
            self.go_on(next, form);
        } else {
            self.stop(couplet, answer, form);
        }
    }

    fn goes_astray(
        &mut self,
        couplet: usize,
        answer: Answer,
        form: &Form,
        before: &Taken,
        goes: [bool; 2],
    ) {
        let cause = match self.questions[couplet] {
            None => Cause::Sole,
            Some(asked) => match self.values.value(self.taxon, asked.character) {
                Value::Unknown => Cause::Unrecorded,
                // A range that an earlier threshold cut goes one way here only because of it.
                Value::Range { .. }
                    if goes == [true, true]
                        || self
                            .values
                            .sides(self.taxon, &asked, &Taken::new())
                            .iter()
                            .all(Option::is_some) =>
                {
                    Cause::Inside
                }
                _ if goes == [true, true] => Cause::Form,
                _ => Cause::Sole,
            },
        };
        let form_seen = if form.taken.is_empty() { before } else { &form.taken };
        let new = Stray {
            cause,
            doubtful: form.doubtful,
            form: form_seen.clone(),
            ends: BTreeSet::new(),
        };
        let place = (couplet, answer, self.taxon);
        let stray = self.walked.strays.entry(place).or_insert(new);
        stray.cause = stray.cause.min(cause);
        stray.doubtful &= form.doubtful;
    }

    fn go_on(&mut self, next: usize, form: Form) {
        let Some(rank) = self.tree.rank[next] else { return };
        let asked_later = self.live.of_couplet(next, &form.taken);
        match self.under_way.entry((rank, asked_later)) {
            Entry::Vacant(place) => {
                place.insert(form);
            }
            Entry::Occupied(mut place) => {
                let met = place.get_mut();
                met.flow = match (&met.flow, &form.flow) {
                    (Some(a), Some(b)) => Some(a.plus(b)),
                    _ => None,
                };
                met.doubtful &= form.doubtful;
                met.strays.extend(form.strays);
                met.taken = together(&met.taken, &form.taken);
            }
        }
    }

    fn stop(&mut self, couplet: usize, answer: Answer, form: Form) {
        let place = (couplet, answer);
        let to = self.tree.to(couplet, answer);
        let arrived = to == To::End && self.belongs(couplet, answer);
        self.came_out.push((self.trail.len() - 1, arrived));
        if arrived {
            let sure = self.walked.arrived.entry(self.taxon).or_insert(false);
            *sure |= !form.doubtful;
        }
        match to {
            To::End | To::Strange => {
                for (q, a) in form.strays {
                    if let Some(stray) = self.walked.strays.get_mut(&(q, a, self.taxon)) {
                        stray.ends.insert(place);
                    }
                }
                let end = self.walked.ends.entry(place).or_default();
                // One kind after the other is walked, so that it can only be the last.
                match end.last_mut().filter(|(taxon, _)| *taxon == self.taxon) {
                    Some((_, taken)) => *taken = together(taken, &form.taken),
                    None => end.push((self.taxon, form.taken)),
                }
            }
            _ => {
                self.walked.fallen.entry(place).or_default().insert(self.taxon);
            }
        }
    }

    fn add_effort(&mut self, couplet: usize, flow: Option<&Amount>) {
        let asked = self.questions[couplet].map(|asked| asked.character);
        let cost = asked.map_or(1, |at| steps(self.values.matrix.character(at)));
        let before = self.effort.take();
        self.effort = before.zip(flow).map(|(effort, flow)| Effort {
            total: effort.total.plus(&flow.times(Share::from_integer(cost))),
            steps: effort.steps.plus(flow),
        });
    }

    /// Writes the ways down, from the start to where they ended.
    pub(super) fn write_down(&mut self, mut steps_left: usize) -> usize {
        let mut walks = Vec::new();
        for &(last, arrived) in &self.came_out {
            let mut steps = Vec::new();
            let mut at = Some(last);
            while let Some(index) = at {
                if steps.len() >= steps_left {
                    self.walked.walks_left_out = true;
                    return 0;
                }
                steps.push(self.trail[index].0);
                at = self.trail[index].1;
            }
            steps_left -= steps.len();
            steps.reverse();
            walks.push(Walk { taxon: self.taxon, steps, arrived });
        }
        walks.sort_by(|a, b| a.steps.cmp(&b.steps));
        self.walked.walks.extend(walks);
        steps_left
    }
}

/// What a kind does at one side of a couplet.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
enum Side {
    /// It does not go there.
    Nobody,
    /// It goes there, and the table does not say why.
    Guess,
    /// It goes there with these values.
    Keeps(Left),
}

impl Side {
    fn of(left: Option<Left>) -> Self {
        left.map_or(Self::Nobody, Self::Keeps)
    }
}

/// What two forms that met have left together: never less than either, so that whatever is
/// said of both holds for each.
fn together(one: &Taken, other: &Taken) -> Taken {
    let join = |(c, left): &(CharacterIx, Left)| {
        let met = other.iter().find(|(o, _)| o == c)?.1;
        Some((
            *c,
            match (*left, met) {
                (Left::States(a), Left::States(b)) => Left::States(a | b),
                (Left::Span(a, b), Left::Span(c, d)) => Left::Span(a.min(c), b.max(d)),
                (left, _) => left,
            },
        ))
    };
    one.iter().filter_map(join).collect()
}
