//! A leaf as it stands on both pages: its picture, its number with what is written of it, and the
//! buttons for what somebody says of it.

use maud::{Markup, html};
use spinney_collection::{Collection, Specimen};
use spinney_model::{CharacterId, SpecimenField, SpecimenId};
use spinney_voice::Tongue;

use crate::forms::hidden;
use crate::pages::leaves::deeds::{self, PATH};

/// The picture of a leaf, where it has one.
pub(super) fn picture(t: Tongue, collection: &Collection, id: SpecimenId) -> Markup {
    let hash = collection.specimens.get(&id).map_or("", |one| one.picture.as_str());
    html! {
        @if !hash.is_empty() {
            img src={"/picture/" (hash)} alt=(t.with("measure-leaf", &[("number", &id.0)])) loading="lazy";
        } @else { span.no-picture {} }
    }
}

/// A leaf by its number, with a way to its page and what is written of it.
pub(super) fn called(t: Tongue, collection: &Collection, id: SpecimenId) -> Markup {
    let Some(specimen) = collection.specimens.get(&id) else { return html! {} };
    let written = written(specimen);
    html! {
        a href={(PATH) "/" (id.0)} { (t.with("measure-leaf", &[("number", &id.0)])) }
        @if !written.is_empty() { " (" (written) ")" }
    }
}

fn written(specimen: &Specimen) -> String {
    let fields = [
        SpecimenField::WhichPlant,
        SpecimenField::Part,
        SpecimenField::Where,
        SpecimenField::When,
        SpecimenField::Called,
    ];
    let said = fields.into_iter().map(|field| specimen.field(field));
    said.filter(|text| !text.is_empty()).collect::<Vec<_>>().join(" · ")
}

/// What somebody says who has looked at it again.
pub(super) fn judging(
    t: Tongue,
    collection: &Collection,
    id: SpecimenId,
    at: CharacterId,
) -> Markup {
    let mark = format!("{}-{}", id.0, at.0);
    html! {
        form.judging method="post" action=(deeds::JUDGE.path) {
            (hidden(&[("leaf", &id.0), ("character", &at.0), ("back", &PATH)]))
            button id={"right-" (mark)} name="says" value=(deeds::RIGHT) { (t.say("leaves-right")) }
            button id={"wrong-" (mark)} name="says" value=(deeds::WRONG) { (t.say("leaves-wrong")) }
        }
        (of_kind(t, collection, id, &mark, PATH))
    }
}

/// It is of another kind.
pub(super) fn of_kind(
    t: Tongue,
    collection: &Collection,
    id: SpecimenId,
    mark: &str,
    back: &str,
) -> Markup {
    let now = collection.specimens.get(&id).map(|one| one.kind);
    let others = collection.kinds.keys().filter(|kind| Some(**kind) != now);
    html! {
        @if collection.kinds.len() > 1 {
            form.judging method="post" action=(deeds::OF_KIND.path) {
                (hidden(&[("leaf", &id.0), ("back", &back)]))
                label for={"kind-" (mark)} { (t.say("leaves-other-kind")) }
                select id={"kind-" (mark)} name="kind" {
                    @for kind in others { option value=(kind.0) { (collection.name(*kind)) } }
                }
                button id={"move-" (mark)} { (t.say("leaves-other-kind-do")) }
            }
        }
    }
}

/// It counts again.
pub(super) fn again(t: Tongue, id: SpecimenId, at: CharacterId, back: &str) -> Markup {
    html! {
        form.judging method="post" action=(deeds::JUDGE.path) {
            (hidden(&[("leaf", &id.0), ("character", &at.0), ("back", &back)]))
            button id={"again-" (id.0) "-" (at.0)} name="says" value=(deeds::AGAIN) { (t.say("leaves-again")) }
        }
    }
}
