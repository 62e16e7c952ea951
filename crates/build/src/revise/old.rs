//! The old key as a tree of places, each with what it asks in the new table.
//!
//! Where ways meet on paper every way has places of its own; a way that leads in a circle ends
//! where it would begin again. Ends need no account: only questions are compared.

use spinney_model::{Ask, Asked, Destination, Key, Matrix, Scale, Value};

use crate::kept_questions::fits;
use crate::split::{self, Side};
use crate::state_space::{Plan, StateSpace};

/// A place of the old key, or none.
pub(super) type Place = Option<usize>;

/// So many places are compared; what lies below is left out.
const MOST_PLACES: usize = 1000;

/// The old key.
pub(super) struct Old {
    pub(super) places: Vec<OldQuestion>,
    /// Whether there were more places than are compared.
    pub(super) cut_short: bool,
}

/// A question of the old key at its place.
pub(super) struct OldQuestion {
    /// Where in the list of couplets it stands.
    pub(super) couplet: usize,
    /// Its number in the state space; None: it asks nothing of the new table.
    pub(super) question: Option<usize>,
    pub(super) yes: Place,
    pub(super) no: Place,
    /// How many questions there are from here on.
    pub(super) size: u32,
    /// Whether something is asked from here on that the table by itself would not ask, so that
    /// what the table by itself takes is no bound.
    pub(super) foreign: bool,
}

impl Old {
    /// Unfolds an old key over a state space that was laid with its questions.
    pub(super) fn unfold(key: &Key, space: &StateSpace) -> Self {
        let mut old = Self { places: Vec::new(), cut_short: false };
        if !key.couplets.is_empty() {
            old.place(key, 0, space, &mut Vec::new());
        }
        old
    }

    fn place(
        &mut self,
        key: &Key,
        couplet: usize,
        space: &StateSpace,
        above: &mut Vec<usize>,
    ) -> Place {
        if self.places.len() == MOST_PLACES {
            self.cut_short = true;
            return None;
        }
        let at = self.places.len();
        let written = &key.couplets[couplet];
        let question = written.ask.as_ref().and_then(|ask| question(space, ask));
        let foreign = question.is_some_and(|question| is_foreign(space, question));
        let place = OldQuestion { couplet, question, yes: None, no: None, size: 1, foreign };
        self.places.push(place);
        above.push(couplet);
        let mut next = |destination: &Destination| {
            let Destination::Couplet(number) = destination else { return None };
            let next = key.couplets.iter().position(|other| other.number == *number)?;
            if above.contains(&next) { None } else { self.place(key, next, space, above) }
        };
        let (yes, no) = (next(&written.yes), next(&written.no));
        above.pop();
        let foreign = foreign || self.foreign(yes) || self.foreign(no);
        let size = 1 + self.size(yes) + self.size(no);
        self.places[at] = OldQuestion { couplet, question, yes, no, size, foreign };
        Some(at)
    }

    /// Where one begins.
    pub(super) fn start(&self) -> Place {
        (!self.places.is_empty()).then_some(0)
    }

    pub(super) fn size(&self, place: Place) -> u32 {
        place.map_or(0, |place| self.places[place].size)
    }

    pub(super) fn foreign(&self, place: Place) -> bool {
        place.is_some_and(|place| self.places[place].foreign)
    }
}

/// Lays the state space for a table with the old key's questions beside its own.
///
/// A person's own question may come nearer to a range than the gap; an old one may not.
pub(super) fn lay(matrix: &Matrix, key: &Key, mut plan: Plan) -> StateSpace {
    for couplet in &key.couplets {
        if let Some(ask) = &couplet.ask
            && fits(matrix, ask)
            && !plan.left_out.contains(&ask.character)
            && !plan.kept.contains(ask)
        {
            plan.kept.push(ask.clone());
        }
    }
    let mut space = StateSpace::lay(matrix, &plan);
    let candidates = space.candidates;
    for question in &mut space.questions[candidates..] {
        let at = question.ask.character;
        let gap = split::gap(matrix.character(at));
        let Some((threshold, _)) = split::threshold(&question.ask.yes) else { continue };
        for taxon in matrix.taxon_indices() {
            if let Value::Range { low, high } = matrix.cell(taxon, at).value
                && matches!(split::side(low, high, threshold, gap), Side::Blocked)
            {
                question.never.add(taxon.0);
            }
        }
    }
    space
}

/// The number of an old question in the state space.
fn question(space: &StateSpace, ask: &Ask) -> Option<usize> {
    let own = space.questions[space.candidates..].iter();
    own.clone().position(|question| question.ask == *ask).map(|at| space.candidates + at)
}

/// Whether the table by itself asks nothing that does the same wherever this may be asked.
fn is_foreign(space: &StateSpace, question: usize) -> bool {
    let ask = &space.questions[question].ask;
    let candidates = &space.questions[..space.candidates];
    if candidates.iter().any(|other| same(space, &other.ask, ask)) {
        return false;
    }
    match &ask.yes {
        Asked::States(_) => true,
        Asked::AtLeast(_) | Asked::Below(_) => {
            let matrix = &space.matrix;
            let measured =
                matches!(matrix.character(ask.character).scale, Scale::Measure { .. });
            // Between known ranges some candidate lies as well, where all pairs of ranges are
            // looked at; an unknown measure is cut at the very threshold.
            let all_pairs = matrix.taxa().len() <= split::MOST_ENDS;
            let unknown = |taxon| matrix.cell(taxon, ask.character).value == Value::Unknown;
            measured && (!all_pairs || matrix.taxon_indices().any(unknown))
        }
    }
}

/// Whether two asks are one question, whatever is present: the same split, read either way.
fn same(space: &StateSpace, one: &Ask, other: &Ask) -> bool {
    if one.character != other.character {
        return false;
    }
    match (&one.yes, &other.yes) {
        (Asked::States(a), Asked::States(b)) => {
            let Scale::Words { states } = &space.matrix.character(one.character).scale else {
                return false;
            };
            a == b || (a.is_disjoint(b) && a.len() + b.len() == states.len())
        }
        (a, b) => {
            let threshold = |asked| split::threshold(asked).map(|(threshold, _)| threshold);
            threshold(a).is_some() && threshold(a) == threshold(b)
        }
    }
}
