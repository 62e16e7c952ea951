//! What every sheet says of the visit: title, place, season, part, what everybody must know; and
//! what the adults see to before they go.

use maud::{Markup, html};
use spinney_collection::Collection;
use spinney_model::{AboutField, Edit};
use spinney_voice::Tongue;

use super::fields::{LONGEST_TEXT, SCENE_FIELDS};
use crate::asked::Deed;
use crate::forms::{Fact, Form, hidden};

/// What the adults see to before they go may be so long, in letters.
const LONGEST_LIST: usize = 4000;

/// Where and when, the caution, and the form to change them.
pub(super) fn head(t: Tongue, collection: &Collection) -> Markup {
    let said = [AboutField::Place, AboutField::Season, AboutField::Part];
    let said: Vec<&str> = said
        .into_iter()
        .map(|field| collection.about_field(field))
        .filter(|text| !text.is_empty())
        .collect();
    let caution = collection.about_field(AboutField::Caution);
    html! {
        div.scene {
            @if !said.is_empty() { p dir="auto" { (said.join(" · ")) } }
            @if !caution.is_empty() { p.caution dir="auto" { strong { (t.say("caution")) " " } (caution) } }
            details #scene {
                summary #scene-open { (t.say("finds-scene")) }
                form method="post" action=(DESCRIBE.path) {
                    (hidden(&[]))
                    @for (field, name, label, example) in SCENE_FIELDS {
                        label for={"scene-" (name)} { (t.say(label)) }
                        input id={"scene-" (name)} name=(name) maxlength=(LONGEST_TEXT) dir="auto"
                            placeholder=(t.say(example)) value=(collection.about_field(field));
                    }
                    @let before = collection.about_field(AboutField::BeforeYouGo);
                    label for="scene-before" { (t.say("finds-before")) }
                    textarea id="scene-before" name="before" rows="5" maxlength=(LONGEST_LIST) dir="auto"
                        placeholder=(t.say("finds-before-example")) { "\n" (before) }
                    button #scene-keep { (t.say("finds-keep")) }
                }
            }
        }
    }
}

/// Something about the visit is written down.
pub(super) static DESCRIBE: Form<Vec<(AboutField, String)>> = Form {
    path: "/do/describe-scene",
    read: |at| {
        let sent = SCENE_FIELDS.into_iter().filter(|(_, name, ..)| at.asked.sent(name));
        let texts =
            sent.map(|(field, name, ..)| Ok((field, at.asked.typed(name, LONGEST_TEXT)?)));
        let mut texts = texts.collect::<Result<Vec<_>, _>>()?;
        if at.asked.sent("before") {
            let before = lines(at.asked.request.field("before"));
            if before.chars().count() > LONGEST_LIST {
                return Err(at.asked.too_long(&before, LONGEST_LIST));
            }
            texts.push((AboutField::BeforeYouGo, before));
        }
        Ok(texts)
    },
    rests_on: |texts| texts.iter().map(text).collect(),
    act: |texts, at| {
        let changed = texts.into_iter().filter(|typed| at.changes(&text(typed)));
        let edits = changed.map(|(field, text)| Edit::Scene(field, text));
        Ok(Deed::edits(edits, at.asked.back("/finds")))
    },
};

fn text((field, text): &(AboutField, String)) -> Fact<'static> {
    let field = *field;
    Fact::typed(move |of: &Collection| of.about_field(field).to_owned(), text)
}

/// The lines that say something.
fn lines(text: &str) -> String {
    let lines = text.lines().map(|line| line.split_whitespace().collect::<Vec<_>>().join(" "));
    lines.filter(|line| !line.is_empty()).collect::<Vec<_>>().join("\n")
}
