//! One leaf: its picture, what was measured on it, and what can become of it.

use maud::{Markup, html};
use spinney_collection::{Collection, Measurement, Specimen};
use spinney_model::{CharacterId, Judged, SpecimenId};
use spinney_voice::Tongue;

use crate::asked::{Asked, Shown};
use crate::desk::Desk;
use crate::forms::hidden;
use crate::pages::finds::deeds::LONGEST_NAME;
use crate::pages::frame::{self, Parts, Screen};
use crate::pages::leaves::deeds::{self, PATH};
use crate::pages::leaves::leaf::{again, of_kind, picture};

pub(super) fn show(desk: &Desk, asked: &Asked<'_>) -> Shown {
    let t = asked.tongue;
    let id = SpecimenId(asked.number(0));
    let collection = &desk.history.now;
    let Some(specimen) = collection.specimens.get(&id) else { return Shown::Nothing };
    let title = t.with("measure-leaf", &[("number", &id.0)]);
    let own = &format!("{PATH}/{}", id.0);
    let kind = specimen.kind;
    let leaf = OnPage { t, collection, id, specimen, own };
    let work = html! {
        p { a href=(PATH) { (t.say("leaves-back")) } }
        h1 dir="auto" { (title) " · " a href={"/finds/" (kind.0)} { (collection.name(kind)) } }
        div.one-leaf {
            (picture(t, collection, id))
            div {
                (leaf.measured())
                (leaf.put_right())
            }
        }
        (leaf.described())
        @if specimen.measured.values().any(|one| !one.counts()) { h2 { (t.say("leaves-what")) } }
        (of_kind(t, collection, id, &id.0.to_string(), own))
        form.judging method="post" action=(deeds::TAKE_OUT.path) {
            (hidden(&[("leaf", &id.0)]))
            button #leaf-away { (t.say("leaves-take-out")) }
        }
    };
    frame::shown(desk, asked, &Parts::new(Screen::Finds, title, work))
}

/// A leaf with what its page needs to know of it.
#[derive(Clone, Copy)]
struct OnPage<'p> {
    t: Tongue,
    collection: &'p Collection,
    id: SpecimenId,
    specimen: &'p Specimen,
    /// Where the page is.
    own: &'p str,
}

impl OnPage<'_> {
    fn measured(self) -> Markup {
        let Self { t, collection, id, specimen, own } = self;
        html! {
            @if specimen.measured.is_empty() { p.quiet { (t.say("leaves-nothing-measured")) } }
            dl.row {
                @for (at, one) in &specimen.measured {
                    dt dir="auto" { (collection.character_name(*at)) }
                    dd dir="auto" {
                        (t.decimal(&amount(one)))
                        @match one.judged {
                            Some(Judged::Wrong) => { " – " (t.say("leaves-is-wrong")) (again(t, id, *at, own)) }
                            Some(Judged::Right) => { " – " (t.say("leaves-is-right")) }
                            None => {}
                        }
                    }
                }
            }
        }
    }

    /// A field for each column that leaves say something in, for whoever sees that it is wrong, or missing.
    fn put_right(self) -> Markup {
        let Self { t, collection, id, specimen, own } = self;
        let of_any = |at: &CharacterId| {
            collection.specimens.values().any(|one| one.measured.contains_key(at))
        };
        let columns: Vec<CharacterId> =
            collection.characters.keys().copied().filter(of_any).collect();
        if columns.is_empty() {
            return html! {};
        }
        let text =
            |at: &CharacterId| specimen.measured.get(at).map_or("", |one| one.text.as_str());
        html! {
            details #put-right {
                summary { (t.say("leaves-put-right")) }
                p.quiet { (t.say("leaves-put-right-why")) }
                form.about method="post" action=(deeds::PUT_RIGHT.path) {
                    (hidden(&[("leaf", &id.0), ("back", &own)]))
                    @for at in &columns {
                        @let field = deeds::measured_field(*at);
                        div.field {
                            label for=(field) dir="auto" { (collection.character_name(*at)) }
                            input id=(field) name=(field) value=(text(at)) dir="auto" maxlength=(LONGEST_NAME);
                        }
                    }
                    button.main #measured-keep { (t.say("finds-keep")) }
                }
            }
        }
    }

    fn described(self) -> Markup {
        let Self { t, id, specimen, own, .. } = self;
        html! {
            form.about method="post" action=(deeds::DESCRIBE.path) {
                (hidden(&[("leaf", &id.0), ("back", &own)]))
                @for (field, name, label) in deeds::FIELDS {
                    div.field {
                        label for={"leaf-" (name)} { (t.say(label)) }
                        input id={"leaf-" (name)} name=(name) value=(specimen.field(field)) dir="auto"
                            maxlength=(LONGEST_NAME);
                    }
                }
                button.main #leaf-keep { (t.say("finds-keep")) }
            }
        }
    }
}

/// `52.4 ± 0.4 mm`
fn amount(one: &Measurement) -> String {
    match one.text.rsplit_once(' ') {
        Some((number, unit)) if !one.plus_minus.is_empty() => {
            format!("{number} ± {} {unit}", one.plus_minus)
        }
        _ => one.text.clone(),
    }
}
