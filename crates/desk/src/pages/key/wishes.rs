//! What a key is for: its name and group, what is in the hand, the season, whether people may be
//! sent to touch what may hurt, what is never asked.

use maud::{Markup, html};
use spinney_model::{CharacterId, Edit, KeyEdit, Season, SeenOn, WishField};

use super::Keyed;
use crate::Desk;
use crate::pages::finds::LONGEST_NAME;
use crate::pages::heaps::deeds::{place, text};
use crate::routes::{Asked, Deed, Refused};
use spinney_collection::Drawn;

pub(super) fn form(key: &Keyed) -> Markup {
    let t = key.t;
    let drawn = key.drawn();
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
                                input type="checkbox" name="never" value=(id.0) id={"never-" (id.0)} checked[drawn.never.contains(id)];
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
fn shown(drawn: &Drawn) -> [(&'static str, String); 6] {
    [
        ("name", drawn.name.clone()),
        ("group", drawn.wish(WishField::Group).to_owned()),
        ("hand", drawn.wish(WishField::Hand).to_owned()),
        ("season", drawn.wish(WishField::Season).to_owned()),
        ("touch", drawn.wish(WishField::Touch).to_owned()),
        ("never", in_a_field(&drawn.never)),
    ]
}

/// Characters as a field of a form has them: their numbers.
fn in_a_field(characters: &[CharacterId]) -> String {
    characters.iter().map(|id| id.0.to_string()).collect::<Vec<_>>().join(" ")
}

/// Writes down what changed.
pub(super) fn describe(desk: &mut Desk, asked: &Asked<'_>) -> Result<Deed, Refused> {
    let (key, _) = place(desk, asked)?;
    let collection = &desk.history.now;
    let drawn = &collection.keys[&key];
    let chosen =
        |id: &CharacterId| asked.request.fields("never").any(|field| field == id.0.to_string());
    let never: Vec<CharacterId> =
        collection.characters.keys().copied().filter(chosen).collect();
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
    if drawn.never != never && asked.touched("never", &in_a_field(&never)) {
        edits.push(Edit::Key(key, KeyEdit::Never(never)));
    }
    Ok(Deed::edits(edits, asked.back(&format!("/key?key={}", key.0))))
}
