//! What a key is for: its name and group, what is in the hand, the season, whether people may be
//! sent to touch what may hurt, what is never asked.

use maud::{Markup, html};
use spinney_model::{Edit, KeyEdit, Season, SeenOn, WishField};

use super::Keyed;
use crate::Desk;
use crate::pages::finds::LONGEST_NAME;
use crate::pages::heaps::deeds::{place, text};
use crate::routes::{Asked, Deed, Refused};
use spinney_collection::Drawn;
use spinney_collection::layer::numbers;

pub(super) fn form(key: &Keyed) -> Markup {
    let t = key.t;
    let drawn = key.drawn();
    let never = numbers(drawn.wish(WishField::Never));
    let hands: Vec<&str> = SeenOn::ALL.iter().map(|form| form.word()).collect();
    let seasons: Vec<&str> = Season::ALL.iter().map(|season| season.word()).collect();
    html! {
        details.wishes {
            summary #wishes { (t.say("key-for-what")) }
            form method="post" action="/do/key-describe" {
                input type="hidden" name="key" value=(key.id.0);
                input type="hidden" name="back" value=(key.address(None));
                label for="key-name" { (t.say("key-name")) }
                input #key-name name="name" maxlength=(LONGEST_NAME) required dir="auto" value=(drawn.name);
                label for="key-group" { (t.say("key-group")) }
                input #key-group name="group" maxlength=(LONGEST_NAME) dir="auto" value=(drawn.wish(WishField::Group));
                (choice("hand", &t.say("key-hand"), &t.say("key-any-hand"), &hands, drawn.wish(WishField::Hand)))
                (choice("season", &t.say("key-season"), &t.say("key-any-season"), &seasons, drawn.wish(WishField::Season)))
                div.choice {
                    input type="checkbox" name="touch" value="allowed" id="wish-touch" checked[!drawn.wish(WishField::Touch).is_empty()] aria-describedby="wish-touch-more";
                    label for="wish-touch" { (t.say("key-touch")) }
                }
                p.quiet #wish-touch-more { (t.say("key-touch-more")) }
                @if !key.collection.characters.is_empty() {
                    fieldset.never {
                        legend { (t.say("key-never")) }
                        @for id in key.collection.characters.keys() {
                            div.choice {
                                input type="checkbox" name="never" value=(id.0) id={"never-" (id.0)} checked[never.contains(&id.0)];
                                label for={"never-" (id.0)} dir="auto" { (key.collection.character_name(*id)) }
                            }
                        }
                    }
                }
                @for (field, shown) in shown(drawn) {
                    input type="hidden" name={"o-" (field)} value=(shown);
                }
                button #describe { (t.say("key-describe")) }
            }
            form method="post" action="/do/key-remove" {
                input type="hidden" name="key" value=(key.id.0);
                button.quiet #remove-key { (t.say("key-remove")) }
                p.quiet { (t.say("key-remove-more")) }
            }
        }
    }
}

fn choice(name: &str, label: &str, any: &str, words: &[&str], chosen: &str) -> Markup {
    html! {
        label for={"wish-" (name)} { (label) }
        select name=(name) id={"wish-" (name)} {
            option value="" selected[chosen.is_empty()] { (any) }
            @for word in words { option value=(word) selected[*word == chosen] { (word) } }
        }
    }
}

/// What the page shows, by the names of the fields.
fn shown(drawn: &Drawn) -> [(&'static str, &str); 6] {
    [
        ("name", drawn.name.as_str()),
        ("group", drawn.wish(WishField::Group)),
        ("hand", drawn.wish(WishField::Hand)),
        ("season", drawn.wish(WishField::Season)),
        ("touch", drawn.wish(WishField::Touch)),
        ("never", drawn.wish(WishField::Never)),
    ]
}

/// Writes down what changed.
pub(super) fn describe(desk: &mut Desk, asked: &Asked<'_>) -> Result<Deed, Refused> {
    let (key, _) = place(desk, asked)?;
    let collection = &desk.history.now;
    let drawn = &collection.keys[&key];
    let never: Vec<String> = collection
        .characters
        .keys()
        .map(|id| id.0.to_string())
        .filter(|id| asked.request.fields("never").any(|field| field == id))
        .collect();
    let known = |words: &[&str], field: &str| {
        let wanted = asked.request.field(field);
        words
            .iter()
            .find(|word| **word == wanted)
            .map_or(String::new(), |word| (*word).to_owned())
    };
    let wanted = [
        ("group", WishField::Group, text(asked, "group", LONGEST_NAME)),
        ("hand", WishField::Hand, known(&SeenOn::ALL.map(SeenOn::word), "hand")),
        ("season", WishField::Season, known(&Season::ALL.map(Season::word), "season")),
        ("touch", WishField::Touch, known(&["allowed"], "touch")),
        ("never", WishField::Never, never.join(" ")),
    ];
    let mut edits = Vec::new();
    let name = text(asked, "name", LONGEST_NAME);
    if !name.is_empty() && name != drawn.name && asked.touched("name", &name) {
        edits.push(Edit::Key(key, KeyEdit::Rename(name)));
    }
    let changed = wanted
        .into_iter()
        .filter(|(name, field, text)| drawn.wish(*field) != text && asked.touched(name, text));
    edits.extend(changed.map(|(_, field, text)| Edit::Key(key, KeyEdit::Wish(field, text))));
    Ok(Deed::edits(edits, asked.back(&format!("/key?key={}", key.0))))
}
