//! A single specimen of a collection, such as one leaf: what it is of, and what was measured on it.
//!
//! From edits to specimens. What the specimens of a kind come to is worked out in [`crate::rows`].

#![deny(clippy::wildcard_enum_match_arm)]

use std::collections::{BTreeMap, BTreeSet};

use spinney_exchange::table;
use spinney_model::{
    CharacterId, Edit, Judged, KindId, SpecimenEdit, SpecimenField, SpecimenId,
};

use super::{Collection, write};

/// A single specimen.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Specimen {
    /// What kind it is.
    pub kind: KindId,
    /// What was typed of it.
    pub fields: BTreeMap<SpecimenField, String>,
    /// SHA-256 of its picture, in hexadecimal digits; empty: it has none.
    pub picture: String,
    /// What was measured, counted or seen on it.
    pub measured: BTreeMap<CharacterId, Measurement>,
}

/// What was measured on a specimen in one character.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct Measurement {
    /// As a cell is typed.
    pub text: String,
    /// How far it may be off; empty: nobody said.
    pub plus_minus: String,
    /// What somebody says who looked at it, because it is far from the others.
    pub judged: Option<Judged>,
}

impl Measurement {
    /// Whether it counts: nobody says that it was measured wrongly.
    pub fn counts(&self) -> bool {
        self.judged != Some(Judged::Wrong)
    }
}

impl Specimen {
    fn of(kind: KindId) -> Self {
        let (fields, measured) = (BTreeMap::new(), BTreeMap::new());
        Self { kind, fields, picture: String::new(), measured }
    }

    /// What was typed; empty: nothing.
    pub fn field(&self, field: SpecimenField) -> &str {
        self.fields.get(&field).map_or("", String::as_str)
    }

    /// It is of this kind. That a number is right was said of it among the leaves of another, so
    /// it is looked at anew; one that was measured wrongly stays so.
    pub(super) fn turn_out(&mut self, kind: KindId) {
        self.kind = kind;
        for one in self.measured.values_mut().filter(|one| one.counts()) {
            one.judged = None;
        }
    }

    fn measure(&mut self, character: CharacterId, text: &str, plus_minus: &str) {
        if text.is_empty() {
            self.measured.remove(&character);
            return;
        }
        let one = self.measured.entry(character).or_default();
        // Another number: whoever looked at the first says nothing of it.
        if one.text != text {
            one.judged = None;
        }
        one.text.replace_range(.., text);
        one.plus_minus.replace_range(.., plus_minus);
    }
}

impl Collection {
    /// The number of the next specimen.
    pub fn next_specimen(&self) -> SpecimenId {
        SpecimenId(self.last.3 + 1)
    }

    pub(super) fn apply_to_specimen(&mut self, id: SpecimenId, edit: &SpecimenEdit) {
        if let SpecimenEdit::Add(kind) = edit {
            self.last.3 = self.last.3.max(id.0);
            // Its kind may come later, where the one that it was first taken for was removed for
            // good.
            self.specimens.insert(id, Specimen::of(*kind));
            return;
        }
        let Some(specimen) = self.specimens.get_mut(&id) else { return };
        match edit {
            SpecimenEdit::Add(_) => {}
            SpecimenEdit::OfKind(kind) => {
                if self.kinds.contains_key(kind) {
                    specimen.turn_out(*kind);
                }
            }
            SpecimenEdit::Describe(field, text) => write(&mut specimen.fields, *field, text),
            SpecimenEdit::Picture(picture) => specimen.picture.clone_from(picture),
            SpecimenEdit::Measure { character, text, plus_minus } => {
                if self.characters.contains_key(character) {
                    specimen.measure(*character, text, plus_minus);
                }
            }
            SpecimenEdit::Judge { character, judged } => {
                if let Some(one) = specimen.measured.get_mut(character) {
                    one.judged = *judged;
                }
            }
            SpecimenEdit::Remove => _ = self.specimens.remove(&id),
        }
    }

    pub(super) fn rename_state_of_specimens(&mut self, at: CharacterId, from: &str, to: &str) {
        for specimen in self.specimens.values_mut() {
            if let Some(one) = specimen.measured.get_mut(&at) {
                one.text = table::renamed(&one.text, from, to);
            }
        }
    }

    /// Whether a source says something of a cell by itself, and not by sorting: it was typed, or
    /// measured on specimens.
    pub fn says_itself(&self, kind: KindId, at: CharacterId, who: &str) -> bool {
        let measured = |one: &Specimen| {
            one.kind == kind
                && one.field(SpecimenField::Source) == who
                && one.measured.contains_key(&at)
        };
        !self.cells.said(kind, at, who).is_empty() || self.specimens.values().any(measured)
    }

    /// Everybody who has a view of their own, in the order of the alphabet.
    pub fn who(&self) -> BTreeSet<&str> {
        let specimens = self.specimens.values().map(|one| one.field(SpecimenField::Source));
        self.cells.who().into_iter().chain(specimens.filter(|who| !who.is_empty())).collect()
    }

    /// How many specimens of a kind were taken in.
    pub fn specimens_of(&self, kind: KindId) -> usize {
        self.specimens.values().filter(|one| one.kind == kind).count()
    }
}

/// The edits that make the second specimens out of the first.
pub(super) fn edit_script(from: &Collection, to: &Collection, edits: &mut Vec<Edit>) {
    let of = |id: &SpecimenId, edit| Edit::Specimen(*id, edit);
    // A kind that leaves takes its specimens along.
    let leaves = |one: &Specimen| {
        from.kinds.contains_key(&one.kind) && !to.kinds.contains_key(&one.kind)
    };
    let differs = |id: &SpecimenId| {
        let (was, is) = (from.specimens.get(id), to.specimens.get(id));
        was != is || was.is_some_and(leaves)
    };
    // What changed is written down anew: kinds and columns that go have taken a part of it along.
    for id in from.specimens.keys().filter(|id| differs(id)) {
        edits.push(of(id, SpecimenEdit::Remove));
    }
    for (id, specimen) in to.specimens.iter().filter(|(id, _)| differs(id)) {
        let Specimen { kind, fields, picture, measured } = specimen;
        edits.push(of(id, SpecimenEdit::Add(*kind)));
        let fields = fields.iter();
        edits.extend(
            fields.map(|(field, text)| of(id, SpecimenEdit::Describe(*field, text.clone()))),
        );
        if !picture.is_empty() {
            edits.push(of(id, SpecimenEdit::Picture(picture.clone())));
        }
        for (&character, Measurement { text, plus_minus, judged }) in measured {
            let (text, plus_minus) = (text.clone(), plus_minus.clone());
            edits.push(of(id, SpecimenEdit::Measure { character, text, plus_minus }));
            if judged.is_some() {
                edits.push(of(id, SpecimenEdit::Judge { character, judged: *judged }));
            }
        }
    }
}
