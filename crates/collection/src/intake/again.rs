//! Rows that are leaves come in again: which of them are here already, and what they say more.
//!
//! From a row to the leaf that it is. Where a row may be another leaf it comes in as one: a leaf
//! too many can be seen and taken out, one that was written over can not.

use std::collections::{BTreeMap, BTreeSet};

use spinney_model::{CharacterId, KindId, SpecimenEdit, SpecimenField, SpecimenId};

use crate::laid::folded;
use crate::{Collection, Specimen};

/// A row that is a leaf.
pub(super) struct Leaf {
    pub(super) kind: KindId,
    /// What is written of it, as far as it is.
    pub(super) fields: BTreeMap<SpecimenField, String>,
    pub(super) measured: BTreeMap<CharacterId, String>,
}

impl Leaf {
    pub(super) fn fields(
        source: &str,
        find: &spinney_model::Specimen,
    ) -> BTreeMap<SpecimenField, String> {
        let called = [&find.find, &find.picture].map(String::as_str);
        let called: Vec<&str> = called.into_iter().filter(|text| !text.is_empty()).collect();
        let fields = [
            (SpecimenField::Source, source),
            (SpecimenField::Called, &called.join(", ")),
            (SpecimenField::WhichPlant, &find.plant),
            (SpecimenField::Where, &find.place),
            (SpecimenField::When, &find.when),
            (SpecimenField::Part, &find.part),
        ];
        let said = fields.into_iter().filter(|(_, text)| !text.is_empty());
        said.map(|(field, text)| (field, text.to_owned())).collect()
    }

    fn field(&self, field: SpecimenField) -> &str {
        self.fields.get(&field).map_or("", String::as_str)
    }

    /// The edits by which it comes in.
    pub(super) fn as_new(&self) -> Vec<SpecimenEdit> {
        let fields = self.fields.iter();
        let fields = fields.map(|(field, text)| SpecimenEdit::Describe(*field, text.clone()));
        let measured = self.measured.iter().map(|(at, text)| measure(*at, text));
        std::iter::once(SpecimenEdit::Add(self.kind)).chain(fields).chain(measured).collect()
    }

    /// The edits by which a leaf that is here gets what the row says of it. What is written of
    /// it here already, and its kind, somebody may have mended since.
    pub(super) fn more_than(&self, known: &Specimen) -> Vec<SpecimenEdit> {
        let fields = self.fields.iter().filter(|(field, _)| known.field(**field).is_empty());
        let fields = fields.map(|(field, text)| SpecimenEdit::Describe(*field, text.clone()));
        let text = |at: &CharacterId| known.measured.get(at).map(|one| &one.text);
        let measured = self.measured.iter().filter(|(at, new)| text(at) != Some(new));
        fields.chain(measured.map(|(at, text)| measure(*at, text))).collect()
    }

    fn says_the_same(&self, known: &Specimen) -> bool {
        let texts = known.measured.iter().map(|(at, one)| (at, &one.text));
        self.kind == known.kind && self.fields == known.fields && self.measured.iter().eq(texts)
    }

    /// Whether it is this leaf, which has the same name or number by the same source.
    fn is(&self, known: &Specimen) -> bool {
        let says = |field| (self.field(field), known.field(field));
        let differ = |field| {
            let (mine, known) = says(field);
            !mine.is_empty() && !known.is_empty() && folded(mine) != folded(known)
        };
        let places = [SpecimenField::WhichPlant, SpecimenField::Where, SpecimenField::When];
        let elsewhere = places.into_iter().any(differ);
        let (plant, known_plant) = says(SpecimenField::WhichPlant);
        let plants = !plant.is_empty() && !known_plant.is_empty();
        let both = self.measured.iter().filter_map(|(at, text)| {
            Some((
                text.contains(|sign: char| sign.is_ascii_digit()),
                known.measured.get(at)?.text == *text,
            ))
        });
        let both: Vec<(bool, bool)> = both.collect();
        let count = |one: (bool, bool)| both.iter().filter(|other| **other == one).count();
        let (same, other) = (count((true, true)), count((true, false)));
        match self.kind == known.kind {
            // Somebody moved it, or wrote something else of it.
            false => other == 0 && same > usize::from(elsewhere),
            true if elsewhere => other == 0 && same > 1,
            true if plants => true,
            true if same + other > 0 => same >= other.max(1),
            // Words alone, or nothing yet.
            true => {
                let nothing = known.measured.is_empty() || self.measured.is_empty();
                both.iter().all(|(_, same)| *same) && (nothing || !both.is_empty())
            }
        }
    }
}

fn measure(character: CharacterId, text: &str) -> SpecimenEdit {
    SpecimenEdit::Measure { character, text: text.to_owned(), plus_minus: String::new() }
}

/// Of each row the leaf that it is; None: it is a new one.
pub(super) fn known<'c>(
    collection: &'c Collection,
    rows: &[Leaf],
) -> Vec<Option<(SpecimenId, &'c Specimen)>> {
    let mut named = BTreeMap::<(&str, &str), Vec<(SpecimenId, &Specimen)>>::new();
    for (id, one) in &collection.specimens {
        let name = (one.field(SpecimenField::Source), one.field(SpecimenField::Called));
        named.entry(name).or_default().push((*id, one));
    }
    let mut known = vec![None; rows.len()];
    let mut taken = BTreeSet::new();
    let sure: [fn(&Leaf, &Specimen) -> bool; 3] =
        [Leaf::says_the_same, |row, known| row.kind == known.kind && row.is(known), Leaf::is];
    for (nth, is) in sure.into_iter().enumerate() {
        for (row, place) in rows.iter().zip(&mut known).filter(|(_, place)| place.is_none()) {
            let called = row.field(SpecimenField::Called);
            // Without a name it is known only by all that is said of it.
            if nth > 0 && called.is_empty() {
                continue;
            }
            let alike = named.get(&(row.field(SpecimenField::Source), called));
            let mut alike = alike.into_iter().flatten();
            *place = alike.find(|(id, one)| !taken.contains(id) && is(row, one)).copied();
            taken.extend(place.map(|(id, _)| id));
        }
    }
    known
}
