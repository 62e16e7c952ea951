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
use crate::Collection;
use crate::laid::{Laid, folded};

/// What the leaves of a kind look like in one column.
#[derive(Clone, Debug, PartialEq)]
pub struct Looked {
    /// Which question of [`SEEN`].
    pub look: usize,
    /// What the leaves of this picture say.
    pub said: BTreeSet<Look>,
    /// The same as a cell is typed.
    pub now: String,
    /// How many of them say it.
    pub leaves: u32,
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
#[derive(Clone, Copy, Debug)]
pub(super) struct Column {
    /// The question.
    pub(super) of: &'static Starter,
    /// None: it is not in the table yet.
    pub(super) id: Option<CharacterId>,
    /// The language that its name is in.
    pub(super) t: Tongue,
}

/// The columns of [`SEEN`], as they are called in any language; those that are not there in that of
/// the person.
pub(super) fn columns(collection: &Collection, t: Tongue) -> [Column; SEEN.len()] {
    SEEN.map(|id| {
        let of = Starter::named(id).expect("what is seen are questions to begin with");
        let mut tongues = std::iter::once(t).chain(Tongue::all());
        let there = tongues.find_map(|t| {
            let name = folded(&of.name(t));
            let mut all = collection.characters.keys().copied();
            let id = all.find(|id| folded(collection.character_name(*id)) == name)?;
            Some(Column { of, id: Some(id), t })
        });
        there.unwrap_or(Column { of, id: None, t })
    })
}

impl Column {
    /// What a leaf says in it, as a cell is typed; None: nothing.
    pub(super) fn text(&self, look: Look) -> Option<String> {
        look.text(self.of, self.t)
    }

    /// Whether what leaves say can go into it.
    fn takes(&self, collection: &Collection, laid: Option<&Laid>, said: &[Look]) -> bool {
        let Some(id) = self.id else { return true };
        let at = laid.and_then(|laid| laid.character(id));
        let scale = at.zip(laid).map(|(at, laid)| &laid.matrix.character(at).scale);
        let counted = said.iter().any(|look| matches!(look, Look::Count(_)));
        let states = match scale {
            None => return true,
            Some(Scale::Measure { .. }) => return false,
            Some(Scale::Counts) => return counted,
            Some(Scale::Words { states }) if states.is_empty() => return true,
            Some(Scale::Words { states }) => states,
        };
        let known: BTreeSet<String> = states.iter().map(|state| folded(state)).collect();
        let own = self.of.states(self.t);
        let listed = !collection.character_field(id, CharacterField::States).is_empty();
        match listed {
            // Whoever lists states means no others.
            true => said.iter().filter(|look| matches!(look, Look::State(_))).all(|look| {
                self.text(*look).is_some_and(|text| known.contains(&folded(&text)))
            }),
            false => !counted && own.iter().any(|state| known.contains(&folded(state))),
        }
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
        (collection, laid, sayings): (&Collection, Option<&Laid>, &crate::Sayings),
        leaves: &[Option<Named>],
        kind: &OfKind,
        look: usize,
    ) -> Option<Looked> {
        let column = &self.looks[look];
        let said = kind.leaves.iter().filter_map(|at| leaves[*at].as_ref()?.looks[look]);
        let said: Vec<Look> = said.collect();
        let (none, some): (Vec<Look>, Vec<Look>) =
            said.iter().partition(|said| matches!(said, Look::NotThere));
        let told = if some.is_empty() { none } else { some };
        let different: BTreeSet<Look> = told.iter().copied().collect();
        let texts: Vec<String> =
            different.iter().filter_map(|look| column.text(*look)).collect();
        if texts.is_empty() {
            return None;
        }
        let cell = |who: &str| match (kind.id, column.id) {
            (Some(kind), Some(at)) => sayings.said(kind, at, who).to_owned(),
            _ => String::new(),
        };
        Some(Looked {
            look,
            said: different,
            now: texts.join(" or "),
            leaves: u32::try_from(told.len()).unwrap_or(u32::MAX),
            before: cell(&self.source),
            typed: cell(""),
            others: self.others(sayings, kind, column.id),
            fits: column.takes(collection, laid, &said),
        })
    }
}
