//! What a key is for: its name and group, what is in the hand, the season, whether people may be
//! sent to touch what may hurt, what is never asked.

use std::collections::BTreeSet;

use maud::{Markup, html};
use spinney_collection::{Collection, Drawn};
use spinney_model::{CharacterId, Edit, KeyEdit, KeyId, Season, SeenOn, WishField};

use crate::asked::Deed;
use crate::forms::{Fact, Form, hidden};
use crate::pages::finds::deeds::LONGEST_NAME;
use crate::pages::heaps::place;
use crate::pages::key::deeds::REMOVE;
use crate::pages::key::keyed::Keyed;

pub(super) fn form(key: &Keyed<'_>) -> Markup {
    let t = key.t;
    let drawn = key.drawn();
    let hands: Vec<&str> = SeenOn::ALL.iter().map(|form| form.word()).collect();
    let seasons: Vec<&str> = Season::ALL.iter().map(|season| season.word()).collect();
    html! {
        details.wishes {
            summary #wishes { (t.say("key-for-what")) }
            form method="post" action=(DESCRIBE.path) {
                (hidden(&[("key", &key.id.0), ("back", &key.address(None))]))
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
                button #describe { (t.say("key-describe")) }
            }
            form method="post" action=(REMOVE.path) {
                (hidden(&[("key", &key.id.0)]))
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

/// What a key is for is written down.
pub(super) static DESCRIBE: Form<Described> = Form {
    path: "/do/key-describe",
    read: |at| {
        let (asked, request) = (at.asked, at.asked.request);
        let chosen =
            |id: &CharacterId| request.fields("never").any(|field| field == id.0.to_string());
        let never = at.collection().characters.keys().copied().filter(chosen).collect();
        let known = |words: &[&str], field: &str| {
            let known = words.iter().find(|word| **word == request.field(field));
            known.map_or(String::new(), |word| (*word).to_owned())
        };
        let wishes = [
            (WishField::Group, asked.cut("group", LONGEST_NAME)),
            (WishField::Hand, known(&SeenOn::ALL.map(SeenOn::word), "hand")),
            (WishField::Season, known(&Season::ALL.map(Season::word), "season")),
            (WishField::Touch, known(&["allowed"], "touch")),
        ];
        let name = asked.cut("name", LONGEST_NAME);
        Ok(Described { key: place::key(at)?, name, wishes, never })
    },
    rests_on: |of| {
        let wishes = of.wishes.iter().map(|wish| of.wish(wish));
        of.named().into_iter().chain(wishes).chain([of.never()]).collect()
    },
    act: |of, at| {
        let named = of.named().is_some_and(|named| at.changes(&named));
        let never = at.changes(&of.never());
        let wishes = of.wishes.iter().filter(|wish| at.changes(&of.wish(wish)));
        let wishes = wishes.map(|(field, text)| KeyEdit::Wish(*field, text.clone()));
        let named = named.then(|| KeyEdit::Rename(of.name.clone())).into_iter();
        let never = never.then(|| KeyEdit::Never(of.never.clone()));
        let edits = named.chain(wishes).chain(never).map(|edit| Edit::Key(of.key, edit));
        Ok(Deed::edits(edits, at.asked.back(&format!("/key?key={}", of.key.0))))
    },
};

/// What a key is for.
pub(super) struct Described {
    key: KeyId,
    name: String,
    wishes: [(WishField, String); 4],
    never: Vec<CharacterId>,
}

impl Described {
    /// What the page showed of the key.
    fn shown(&self, of: &Collection, field: impl Fn(&Drawn) -> String) -> String {
        of.keys.get(&self.key).map_or(String::new(), field)
    }

    /// The name that the page showed; none is no name to write down.
    fn named(&self) -> Option<Fact<'_>> {
        let name = |of: &Collection| self.shown(of, |drawn| drawn.name.clone());
        (!self.name.is_empty()).then(|| Fact::typed(name, &self.name))
    }

    fn wish(&self, (field, text): &(WishField, String)) -> Fact<'_> {
        let field = *field;
        Fact::typed(move |of| self.shown(of, |drawn| drawn.wish(field).to_owned()), text)
    }

    fn never(&self) -> Fact<'_> {
        let shown = |of: &Collection| self.shown(of, |drawn| in_a_field(&drawn.never));
        Fact::typed(shown, &in_a_field(&self.never))
    }
}

/// Characters as a field of a form has them: their numbers, in whichever order they were chosen.
fn in_a_field(characters: &[CharacterId]) -> String {
    let numbers: BTreeSet<u32> = characters.iter().map(|id| id.0).collect();
    numbers.iter().map(u32::to_string).collect::<Vec<_>>().join(" ")
}
