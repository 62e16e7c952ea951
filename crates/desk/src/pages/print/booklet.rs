//! A key bound for the press, with its pictures.
//!
//! From a key of the collection to a booklet. Pictures that the request does not bring are asked
//! for; one that the host says it has lost leaves its box empty.

use std::collections::{BTreeMap, BTreeSet};
use std::sync::Arc;

use spinney_collection::keys::Made;
use spinney_collection::laid::chosen_of;
use spinney_model::{Drawing, KeyId, Matrix, Standing};
use spinney_press::{Booklet, Drawn, Letters, Picture, Sizes, Stamp};
use spinney_voice::Tongue;

use crate::asked::Asked;
use crate::desk::Desk;
use crate::pages::saved::file_name;

/// A key bound for the press.
pub(super) struct Bound {
    /// With our names, for files that other programs read.
    pub(super) matrix: Matrix,
    /// With the group's own names beside ours, for people.
    named: Matrix,
    pub(super) made: Arc<Made>,
    pub(super) pictures: BTreeMap<String, Picture>,
    drawings: Vec<Option<Drawing>>,
    leaves: Vec<Option<Drawing>>,
    pub(super) standing: Standing,
    today: String,
    name: String,
    tongue: Tongue,
}

impl Bound {
    /// None: nothing to print. **Errors**: the pictures that are needed first.
    pub(super) fn of(
        desk: &Desk,
        asked: &Asked<'_>,
        key: KeyId,
    ) -> Result<Option<Self>, BTreeSet<String>> {
        let Some(made) = desk.made(asked.tongue, key) else { return Ok(None) };
        let given = &asked.request.pictures;
        let wanted = made.layer.matrix.taxa().iter().filter_map(|taxon| taxon.picture.as_ref());
        let wanted: BTreeSet<&String> = wanted.collect();
        let missing = wanted.iter().filter(|hash| !given.contains_key(**hash));
        let missing: BTreeSet<String> = missing.map(|hash| (*hash).clone()).collect();
        if !missing.is_empty() {
            return Err(missing);
        }
        let pictures = wanted.into_iter().filter_map(|hash| {
            let bytes = given.get(hash)?.as_ref()?;
            Some((hash.clone(), opened(bytes)?))
        });
        let pictures: BTreeMap<String, Picture> = pictures.collect();
        let keys = &desk.history.now.keys;
        let drawn = &keys[&key];
        let own_title = keys.len() > 1 || !drawn.finished();
        let matrix = match own_title {
            true => made.layer.titled(&drawn.name),
            false => made.layer.matrix.clone(),
        };
        let named =
            made.layer.called(matrix.clone(), |kind| desk.history.now.name_in(key, kind));
        let name = file_name(&drawn.name, "key");
        let standing = made.standing(drawn);
        let today = asked.request.today.clone();
        let drawings = spinney_draw::of_kinds(&matrix);
        let leaves = chosen_of(&desk.history.now, &made.layer.kinds);
        let tongue = asked.tongue;
        Ok(Some(Self {
            matrix,
            named,
            pictures,
            drawings,
            leaves,
            made,
            standing,
            today,
            name,
            tongue,
        }))
    }

    pub(super) fn booklet(&self) -> Booklet<'_> {
        Booklet {
            matrix: &self.named,
            key: &self.made.key,
            walks: &self.made.opinion.walks,
            left_together: &self.made.opinion.left_together,
            stamp: self.stamp(),
            date: (!self.today.is_empty()).then_some(self.today.as_str()),
            pictures: &self.pictures,
            second_looks: &self.made.looks,
            drawn: Drawn {
                kinds: &self.drawings,
                leaves: &self.leaves,
                word: spinney_draw::of_word,
                state: spinney_draw::of_state,
                sizes: spinney_draw::sizes,
            },
            letters: Letters::Usual,
            sizes: Sizes::USUAL,
            tongue: self.tongue,
        }
    }

    /// Whether there is no question yet, though there are kinds to part.
    pub(super) fn nothing_asked(&self) -> bool {
        self.made.key.couplets.is_empty() && self.matrix.taxa().len() > 1
    }

    /// What the sheets say of the key's standing.
    pub(super) fn stamp(&self) -> Stamp {
        Stamp::of(self.standing)
    }

    pub(super) fn draft(&self) -> bool {
        self.stamp() == Stamp::Draft
    }

    /// The name of the key, fit for a file on any machine.
    pub(super) fn file_name(&self) -> &str {
        &self.name
    }
}

fn opened(bytes: &[u8]) -> Option<Picture> {
    match bytes {
        [0x89, b'P', b'N', b'G', ..] => Some(Picture::Png(bytes.to_vec())),
        [0xFF, 0xD8, ..] => Some(Picture::Jpeg(bytes.to_vec())),
        _ => None,
    }
}
