//! What can be done to a leaf that is kept: it is judged, moved to another kind, described, what was
//! measured on it is put right, it is taken out. Each is a fact of its own, and can be undone.

use std::fmt::Display;

use spinney_collection::rows;
use spinney_model::{
    CharacterId, Edit, Judged, KindId, SpecimenEdit, SpecimenField, SpecimenId,
};

use crate::asked::Deed;
use crate::forms::{At, Fact, Form};
use crate::pages::finds::deeds::{LONGEST_NAME, gone as no_kind};
use crate::reply::Refused;

/// Where the leaves are.
pub(super) const PATH: &str = "/leaves";

/// What somebody says who looked at a measurement again.
pub(super) const RIGHT: &str = "right";
pub(super) const WRONG: &str = "wrong";
pub(super) const AGAIN: &str = "again";

/// What can be written of a leaf: the field, its name in the form and its label.
pub(super) const FIELDS: [(SpecimenField, &str, &str); 4] = [
    (SpecimenField::WhichPlant, "plant", "scan-plant"),
    (SpecimenField::Part, "part", "scan-part"),
    (SpecimenField::Where, "where", "finds-where"),
    (SpecimenField::When, "when", "finds-when"),
];

/// A leaf, and what is said of it.
pub(super) struct Of<T> {
    leaf: SpecimenId,
    said: T,
}

fn leaf(at: &At<'_>) -> Result<SpecimenId, Refused> {
    let id = SpecimenId(at.asked.id("leaf"));
    match at.collection().specimens.contains_key(&id) {
        true => Ok(id),
        false => Err(at.asked.refused("leaves-gone")),
    }
}

/// All that was known of the leaf.
fn as_shown<T>(of: &Of<T>) -> Vec<Fact<'_>> {
    let id = of.leaf;
    let shows = move |state: crate::worked::State<'_>| {
        format!("{:?}", state.collection.specimens.get(&id))
    };
    vec![Fact::new(shows, |at| at.asked.refused("leaves-moved"))]
}

fn edits(at: &At<'_>, leaf: SpecimenId, edits: Vec<SpecimenEdit>, to: &str) -> Deed {
    let edits = edits.into_iter().map(|edit| Edit::Specimen(leaf, edit));
    Deed::edits(edits, at.asked.back(to))
}

/// A measurement that is far from the others is right, or wrong, or counts again.
pub(super) static JUDGE: Form<Of<(CharacterId, Option<Judged>)>> = Form {
    path: "/do/judge-leaf",
    read: |at| {
        let judged = match at.asked.request.field("says") {
            RIGHT => Some(Judged::Right),
            WRONG => Some(Judged::Wrong),
            _ => None,
        };
        let (leaf, character) = (leaf(at)?, CharacterId(at.asked.id("character")));
        match at.collection().specimens[&leaf].measured.contains_key(&character) {
            true => Ok(Of { leaf, said: (character, judged) }),
            false => Err(at.asked.refused("leaves-moved")),
        }
    },
    rests_on: as_shown,
    act: |Of { leaf, said: (character, judged) }, at| {
        Ok(edits(at, leaf, vec![SpecimenEdit::Judge { character, judged }], PATH))
    },
};

/// It is of another kind.
pub(super) static OF_KIND: Form<Of<KindId>> = Form {
    path: "/do/leaf-of-kind",
    read: |at| {
        let kind = KindId(at.asked.id("kind"));
        match at.collection().kinds.contains_key(&kind) {
            true => Ok(Of { leaf: leaf(at)?, said: kind }),
            false => Err(no_kind(at.asked)),
        }
    },
    rests_on: as_shown,
    act: |of, at| Ok(edits(at, of.leaf, vec![SpecimenEdit::OfKind(of.said)], PATH)),
};

/// Something is written down of it.
pub(super) static DESCRIBE: Form<Of<Vec<(SpecimenField, String)>>> = Form {
    path: "/do/describe-leaf",
    read: |at| {
        let sent = FIELDS.into_iter().filter(|(_, name, _)| at.asked.sent(name));
        let texts =
            sent.map(|(field, name, _)| Ok((field, at.asked.typed(name, LONGEST_NAME)?)));
        Ok(Of { leaf: leaf(at)?, said: texts.collect::<Result<_, Refused>>()? })
    },
    rests_on: as_shown,
    act: |of, at| {
        let known = &at.collection().specimens[&of.leaf];
        let new = of.said.into_iter().filter(|(field, text)| known.field(*field) != text);
        let new = new.map(|(field, text)| SpecimenEdit::Describe(field, text));
        Ok(edits(at, of.leaf, new.collect(), PATH))
    },
};

/// What was measured on it is put right; what is left blank was not measured.
pub(super) static PUT_RIGHT: Form<Of<Vec<(CharacterId, String)>>> = Form {
    path: "/do/measure-leaf",
    read: |at| {
        let leaf = leaf(at)?;
        let all = at.collection().characters.keys().copied();
        let sent = all.filter(|id| at.asked.sent(&measured_field(*id)));
        let texts = sent.map(|id| Ok((id, at.asked.typed(&measured_field(id), LONGEST_NAME)?)));
        Ok(Of { leaf, said: texts.collect::<Result<_, Refused>>()? })
    },
    rests_on: as_shown,
    act: |of, at| {
        let collection = at.collection();
        let known = &collection.specimens[&of.leaf].measured;
        let mut new = Vec::new();
        for (character, text) in of.said {
            if known.get(&character).map_or("", |one| one.text.as_str()) == text {
                continue;
            }
            let of = (of.leaf, character);
            if !text.is_empty() && !rows::can_be_measured(collection, of, &text) {
                let name = collection.character_name(character);
                let texts: [(&str, &dyn Display); 2] = [("text", &text), ("name", &name)];
                return Err(Refused::with(at.asked.tongue, "leaves-not-read", &texts));
            }
            new.push(SpecimenEdit::Measure { character, text, plus_minus: String::new() });
        }
        Ok(edits(at, of.leaf, new, PATH))
    },
};

/// The name of the field in which a measurement is put right.
pub(super) fn measured_field(character: CharacterId) -> String {
    format!("measured-{}", character.0)
}

/// It leaves the collection.
pub(super) static TAKE_OUT: Form<Of<()>> = Form {
    path: "/do/take-out-leaf",
    read: |at| Ok(Of { leaf: leaf(at)?, said: () }),
    rests_on: as_shown,
    act: |of, at| Ok(edits(at, of.leaf, vec![SpecimenEdit::Remove], PATH)),
};
