//! The place of a newcomer in a whole key: the fewest changes, or the difference that somebody
//! has just found.
//!
//! From the old key over the table with the newcomer to a new key, and to the edits that keep it.
//! To part the newcomer from the kind beside it by the new difference and by nothing else, the
//! key is sought as if the two were alike in everything else; what is found counts only if it
//! is right for the table as it is.

use spinney_build::{Budget, Revising, revise};
use spinney_model::{
    Cell, CharacterId, CharacterIx, Destination, Edit, End, Key, KeyId, KindId, Matrix,
    Revision, Share, TaxonIx, Wishes,
};
use spinney_voice::{Tongue, wording};

use super::pins;
use crate::Collection;
use crate::keys::{Made, make};
use crate::laid::Laid;
use crate::layer::Layer;

/// As few changes as there can be, whatever they cost: so many steps a find are never lost.
const ANY_LOSS: i128 = 1_000;
/// Heaps that may be taken apart while a person waits: half a second at most.
const HEAPS: u64 = 6_000;

/// A key that gets a newcomer.
pub(super) struct Place<'a> {
    /// The language of new questions.
    pub(super) t: Tongue,
    /// The collection with the newcomer in it.
    pub(super) after: &'a Collection,
    pub(super) key: KeyId,
    pub(super) laid: &'a Laid,
    pub(super) layer: &'a Layer,
    /// The key as it was, asking of this table.
    pub(super) old: &'a Key,
    pub(super) kind: KindId,
}

/// A key in which the newcomer has a place.
pub(super) struct Found {
    pub(super) revision: Revision,
    /// What keeps its questions at their places.
    pub(super) pins: Vec<Edit>,
    /// The key as it then is.
    pub(super) now: Made,
    /// Kinds that come out together with the newcomer.
    pub(super) alike: Vec<KindId>,
}

impl Place<'_> {
    /// The key with the fewest changes, sought in this matrix.
    pub(super) fn found(&self, matrix: &Matrix) -> Option<Found> {
        let wishes = Wishes { kept: Vec::new(), ..self.layer.wishes.clone() };
        let settings =
            Revising { loss: Share::from_integer(ANY_LOSS), budget: Budget { heaps: HEAPS } };
        let mut revision = revise(matrix, self.old, &wishes, settings).revision;
        wording::put_words(self.t, &mut revision.key, &self.layer.matrix);
        let mut pinned = self.after.clone();
        let mut pins = pins::pins(&mut pinned, self.key, self.laid, self.layer, &revision.key);
        pins.extend(super::written_as_sorted(&mut pinned, self.laid));
        let now = make(&pinned, self.laid, &pinned.keys[&self.key])?;
        let alike = super::alike(&now, self.kind);
        Some(Found { revision, pins, now, alike })
    }

    /// The key in which the new difference parts the newcomer from those beside it; None: they
    /// lie at several ends, or nobody does.
    pub(super) fn by_difference(&self, new: CharacterId, beside: &[KindId]) -> Option<Found> {
        let taxon = |kind: &KindId| {
            self.layer.kinds.iter().position(|known| known == kind).map(TaxonIx)
        };
        let theirs = beside.iter().map(taxon).collect::<Option<Vec<TaxonIx>>>()?;
        let (ours, first) = (taxon(&self.kind)?, *theirs.first()?);
        let new = self.laid.character(new)?;
        let mut to = self.old.couplets.iter().flat_map(|couplet| [&couplet.yes, &couplet.no]);
        let together = |end: &End| theirs.iter().all(|taxon| end.taxa.contains(taxon));
        to.any(|to| matches!(to, Destination::End(end) if together(end)))
            .then(|| self.found(&alike_but_for(&self.layer.matrix, ours, first, new)))?
    }
}

/// The matrix in which one kind is as another in everything but one character.
fn alike_but_for(matrix: &Matrix, one: TaxonIx, as_other: TaxonIx, but: CharacterIx) -> Matrix {
    let cell = |taxon, at| match taxon == one && at != but {
        true => matrix.cell(as_other, at).clone(),
        false => matrix.cell(taxon, at).clone(),
    };
    let row = |taxon| matrix.character_indices().map(|at| cell(taxon, at)).collect();
    let rows: Vec<Vec<Cell>> = matrix.taxon_indices().map(row).collect();
    let (taxa, characters) = (matrix.taxa().to_vec(), matrix.characters().to_vec());
    Matrix::new(matrix.scene().clone(), taxa, characters, rows)
        .expect("cells of one kind fit another")
}

impl Found {
    /// Whether the key asks for a character.
    pub(super) fn asks_for(&self, laid: &Laid, character: CharacterId) -> bool {
        let Some(at) = laid.character(character) else { return false };
        self.now.key.couplets.iter().any(|c| c.ask.as_ref().is_some_and(|a| a.character == at))
    }

    /// Whether it is the very key that was sought, every kind comes out of it, and the newcomer
    /// alone.
    pub(super) fn right(&self) -> bool {
        self.alike.is_empty()
            && super::same(&self.now.key, &self.revision.key)
            && self.now.opinion.walks.iter().all(|walk| walk.arrived)
    }

    /// Its effort as the second opinion adds it up, against the best of the table as it is.
    pub(super) fn measured_by(mut self, ordinary: &Self) -> Self {
        if let Some(effort) = self.now.opinion.effort {
            self.revision.effort = effort.total.max(ordinary.revision.best);
        }
        self.revision.best = ordinary.revision.best;
        self
    }
}
