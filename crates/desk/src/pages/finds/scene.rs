//! What every sheet says of the visit: title, place, season, part, what everybody must know; and
//! what the adults see to before they go.

use maud::{Markup, html};
use spinney_model::{AboutField, Edit};

use super::LONGEST_TEXT;
use super::deeds::{too_long, typed};
use crate::Desk;
use crate::routes::{Asked, Deed, Refused};
use spinney_collection::Collection;
use spinney_voice::Tongue;

/// What can be said of the scene: the field, its name in the form, its label and an example.
const FIELDS: [(AboutField, &str, &str, &str); 5] = [
    (AboutField::Title, "title", "finds-title", "finds-title-example"),
    (AboutField::Place, "place", "finds-place", "finds-place-example"),
    (AboutField::Season, "season", "finds-season", "finds-season-example"),
    (AboutField::Part, "part", "finds-part", "finds-part-example"),
    (AboutField::Caution, "caution", "finds-scene-caution", "finds-scene-caution-example"),
];

/// The label of a field.
pub(super) fn label(field: AboutField) -> &'static str {
    FIELDS.iter().find(|(known, ..)| *known == field).map_or("", |(_, _, label, _)| label)
}

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
                form method="post" action="/do/describe-scene" {
                    @for (field, name, label, example) in FIELDS {
                        label for={"scene-" (name)} { (t.say(label)) }
                        input type="hidden" name={"o-" (name)} value=(collection.about_field(field));
                        input id={"scene-" (name)} name=(name) maxlength=(LONGEST_TEXT) dir="auto"
                            placeholder=(t.say(example)) value=(collection.about_field(field));
                    }
                    @let before = collection.about_field(AboutField::BeforeYouGo);
                    label for="scene-before" { (t.say("finds-before")) }
                    input type="hidden" name="o-before" value=(before);
                    textarea id="scene-before" name="before" rows="5" maxlength=(LONGEST_LIST) dir="auto"
                        placeholder=(t.say("finds-before-example")) { "\n" (before) }
                    button #scene-keep { (t.say("finds-keep")) }
                }
            }
        }
    }
}

/// Writes down what changed.
pub(super) fn describe(desk: &mut Desk, asked: &Asked<'_>) -> Result<Deed, Refused> {
    let mut edits = Vec::new();
    for (field, name, ..) in FIELDS {
        let text = typed(asked, name, LONGEST_TEXT)?;
        if text != desk.history.now.about_field(field) && asked.touched(name, &text) {
            edits.push(Edit::Scene(field, text));
        }
    }
    let before = lines(asked.request.field("before"));
    if before.chars().count() > LONGEST_LIST {
        return Err(too_long(asked, &before, LONGEST_LIST));
    }
    if before != desk.history.now.about_field(AboutField::BeforeYouGo)
        && asked.touched("before", &before)
    {
        edits.push(Edit::Scene(AboutField::BeforeYouGo, before));
    }
    Ok(Deed::edits(edits, asked.back("/finds")))
}

/// The lines that say something.
fn lines(text: &str) -> String {
    let lines = text.lines().map(|line| line.split_whitespace().collect::<Vec<_>>().join(" "));
    lines.filter(|line| !line.is_empty()).collect::<Vec<_>>().join("\n")
}
