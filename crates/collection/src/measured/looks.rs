//! How measured leaves look: what their outlines answer of the good questions to begin with, as the
//! columns of a table take it.
//!
//! From what each leaf says to what the leaves of a kind say, and to whether the column that is there
//! speaks the same words. A column whose states have other names is left to people.

use std::collections::BTreeSet;

use spinney_model::{CharacterField, CharacterId, Scale};
use spinney_voice::Tongue;
use spinney_voice::starters::{Look, SEEN, Starter};

use super::{Named, OfKind, Plan};
use crate::laid::{Laid, folded};
use crate::{Collection, Sayings};

/// What the leaves of a kind look like in one column.
#[derive(Clone, Debug, PartialEq)]
pub struct Looked {
    /// Which question of [`SEEN`].
    pub look: usize,
    /// What the leaves of this picture say.
    pub said: BTreeSet<Look>,
    /// The same as it is typed, a text an answer.
    pub now: Vec<String>,
    /// What leaves said that were measured before, as it stands there.
    pub before: String,
    /// What the table itself says, which decides; empty: nothing.
    pub typed: String,
    /// What others say, each with who says it.
    pub others: Vec<(String, String)>,
    /// Whether the column has these words; else nothing is written.
    pub fits: bool,
}

/// The column of a question.
#[derive(Clone, Debug)]
pub(super) struct Column {
    /// The question.
    pub(super) of: &'static Starter,
    /// None: it is not in the table yet.
    pub(super) id: Option<CharacterId>,
    /// The language that its name is in.
    pub(super) t: Tongue,
    /// What it holds.
    holds: Holds,
}

/// What a column holds.
#[derive(Clone, Debug)]
enum Holds {
    /// Nothing yet, or it is not there.
    Nothing,
    /// Lengths.
    Lengths,
    /// Whole numbers.
    Counts,
    /// These states, their names folded; whether somebody listed them.
    States(BTreeSet<String>, bool),
}

/// The columns of [`SEEN`], as they are called in any language, the first of the table; those that are
/// not there in the language of the person.
pub(super) fn columns(
    collection: &Collection,
    laid: Option<&Laid>,
    t: Tongue,
) -> [Column; SEEN.len()] {
    SEEN.map(|id| {
        let of = Starter::named(id).expect("what is seen are questions to begin with");
        let called = |id: CharacterId| {
            let name = folded(collection.character_name(id));
            let t = Tongue::all().find(|t| folded(&of.name(*t)) == name)?;
            Some(Column { of, id: Some(id), t, holds: Holds::of(collection, laid, id) })
        };
        let there = collection.characters.keys().copied().find_map(called);
        there.unwrap_or(Column { of, id: None, t, holds: Holds::Nothing })
    })
}

impl Holds {
    fn of(collection: &Collection, laid: Option<&Laid>, id: CharacterId) -> Self {
        let at = laid.and_then(|laid| laid.character(id));
        match at.zip(laid).map(|(at, laid)| &laid.matrix.character(at).scale) {
            None => Self::Nothing,
            Some(Scale::Measure { .. }) => Self::Lengths,
            Some(Scale::Counts) => Self::Counts,
            Some(Scale::Words { states }) if states.is_empty() => Self::Nothing,
            Some(Scale::Words { states }) => {
                let listed = !collection.character_field(id, CharacterField::States).is_empty();
                Self::States(states.iter().map(|state| folded(state)).collect(), listed)
            }
        }
    }
}

impl Column {
    /// What a leaf says in it, as a cell is typed; None: nothing.
    pub(super) fn text(&self, look: Look) -> Option<String> {
        look.text(self.of, self.t)
    }

    /// Whether what a leaf says can go into it.
    fn takes(&self, look: Look) -> bool {
        let Some(text) = self.text(look) else { return false };
        match (&self.holds, look) {
            (_, Look::NotThere) | (Holds::Nothing, _) => true,
            (Holds::Lengths, _) | (Holds::Counts, Look::State(_)) => false,
            (Holds::Counts, Look::Count(_)) => true,
            // Whoever lists states means no others.
            (Holds::States(known, true), _) => known.contains(&folded(&text)),
            // Where other words are in use, one more would be a second word for one thing.
            (Holds::States(known, false), Look::State(_)) => {
                let own = self.of.answers(self.t);
                let own: BTreeSet<String> = own.iter().map(|state| folded(state)).collect();
                known.is_subset(&own)
            }
            (Holds::States(_, false), Look::Count(_)) => false,
        }
    }

    /// Whether it can be asked here only where another column, which is there already, has the states
    /// that the question hangs on.
    pub(super) fn is_governed_by(&self, other: &Self, t: Tongue) -> bool {
        let Some((governor, of)) = self.of.governing(t) else { return false };
        let Holds::States(known, _) = &other.holds else { return false };
        governor.id == other.of.id
            && folded(&governor.name(t)) == folded(&governor.name(other.t))
            && of.iter().all(|state| known.contains(&folded(state)))
    }
}

impl Looked {
    /// Whether the question can be asked of its leaves at all.
    pub fn is_asked(&self) -> bool {
        self.said.iter().any(|look| *look != Look::NotThere)
    }
}

/// Of one kind alone: what most keys ask of leaves.
const ASKED_OF_ONE: [&str; 4] = ["leaf-form", "leaflets", "leaf-lobes", "leaf-edge"];

impl Plan {
    /// Whether the column of a question is there already, or may be of use: it tells kinds of the picture
    /// apart, or there is only one and most keys ask it.
    pub fn is_wanted(&self, look: usize) -> bool {
        let asked = |kind: &OfKind| {
            let mut looks = kind.looks.iter().filter(|one| one.look == look && one.fits);
            looks.find(|one| one.is_asked()).map(|one| one.said.clone())
        };
        let said: Vec<BTreeSet<Look>> = self.kinds.iter().filter_map(asked).collect();
        let differ =
            |at: usize| said[at + 1..].iter().any(|other| other.is_disjoint(&said[at]));
        self.looks[look].id.is_some()
            || (0..said.len()).any(differ)
            || (self.kinds.len() == 1 && said.len() == 1 && ASKED_OF_ONE.contains(&SEEN[look]))
    }

    /// The questions that any leaf says something of, each with what is said, as cells are typed.
    pub fn looks(&self) -> Vec<(usize, Vec<String>)> {
        let of = |look: usize| {
            let said = self.kinds.iter().flat_map(|kind| &kind.looks);
            let said = said.filter(|one| one.look == look && one.fits && one.is_asked());
            let different: BTreeSet<Look> = said.flat_map(|one| one.said.clone()).collect();
            let texts = different.into_iter().filter_map(|said| self.looks[look].text(said));
            (look, texts.collect::<Vec<_>>())
        };
        (0..SEEN.len()).map(of).filter(|(_, said)| !said.is_empty()).collect()
    }

    /// What its column is called, or would be.
    pub fn name_of(&self, look: usize, t: Tongue) -> String {
        let column = &self.looks[look];
        column.of.name(if column.id.is_some() { column.t } else { t })
    }

    /// What the leaves of a kind say of a question; None: nothing.
    pub(super) fn looked(
        &self,
        sayings: &Sayings,
        leaves: &[Option<Named>],
        kind: &OfKind,
        look: usize,
    ) -> Option<Looked> {
        let column = &self.looks[look];
        let said = kind.leaves.iter().filter_map(|at| leaves[*at].as_ref()?.looks[look]);
        let (none, some): (Vec<Look>, Vec<Look>) =
            said.partition(|said| matches!(said, Look::NotThere));
        let told = if some.is_empty() { none } else { some };
        let said: BTreeSet<Look> =
            told.into_iter().filter(|look| column.text(*look).is_some()).collect();
        if said.is_empty() {
            return None;
        }
        let cell = |who: &str| match (kind.id, column.id) {
            (Some(kind), Some(at)) => sayings.said(kind, at, who).to_owned(),
            _ => String::new(),
        };
        Some(Looked {
            look,
            now: said.iter().filter_map(|look| column.text(*look)).collect(),
            before: cell(&self.source),
            typed: cell(""),
            others: self.others(sayings, kind, column.id),
            fits: said.iter().all(|look| column.takes(*look)),
            said,
        })
    }
}
