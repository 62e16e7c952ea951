//! What a key is for: its name and group, what is in the hand, the season, whether people may be
//! sent to touch what may hurt, what is never asked.

use std::collections::BTreeSet;

use maud::{Markup, html};
use spinney_collection::Collection;
use spinney_model::{CharacterId, Edit, KeyEdit, KeyId, Season, SeenOn, WishField};

use super::deeds::Remove;
use super::keyed::Keyed;
use crate::asked::Deed;
use crate::forms::{At, Fact, Form, hidden};
use crate::pages::finds::fields::LONGEST_NAME;
use crate::pages::heaps::place;
use crate::reply::Refused;

pub(super) fn form(key: &Keyed<'_>) -> Markup {
    let t = key.t;
    let drawn = key.drawn();
    let hands: Vec<&str> = SeenOn::ALL.iter().map(|form| form.word()).collect();
    let seasons: Vec<&str> = Season::ALL.iter().map(|season| season.word()).collect();
    html! {
        details.wishes {
            summary #wishes { (t.say("key-for-what")) }
            form method="post" action=(Describe::PATH) {
                (Describe::fields(key.id, &key.address(None)))
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
            form method="post" action=(Remove::PATH) {
                (Remove::fields(key.id))
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

/// What a key is for.
pub(super) struct Describe {
    key: KeyId,
    name: String,
    wishes: [(WishField, String); 4],
    never: Vec<CharacterId>,
}

impl Describe {
    fn fields(key: KeyId, back: &str) -> Markup {
        hidden(&[("key", &key.0), ("back", &back)])
    }

    /// The name that the page showed; none is no name to write down.
    fn named(&self) -> Option<Fact<'_>> {
        let name = |of: &Collection| {
            of.keys.get(&self.key).map_or(String::new(), |drawn| drawn.name.clone())
        };
        (!self.name.is_empty()).then(|| Fact::typed(name, &self.name))
    }

    fn wish(&self, (field, text): &(WishField, String)) -> Fact<'_> {
        let (key, field) = (self.key, *field);
        let wish = move |of: &Collection| {
            of.keys.get(&key).map_or(String::new(), |drawn| drawn.wish(field).to_owned())
        };
        Fact::typed(wish, text)
    }

    fn never(&self) -> Fact<'_> {
        let shown = |of: &Collection| {
            of.keys.get(&self.key).map_or(String::new(), |drawn| in_a_field(&drawn.never))
        };
        Fact::typed(shown, &in_a_field(&self.never))
    }
}

/// Characters as a field of a form has them: their numbers, in whichever order they were chosen.
fn in_a_field(characters: &[CharacterId]) -> String {
    let numbers: BTreeSet<u32> = characters.iter().map(|id| id.0).collect();
    numbers.iter().map(u32::to_string).collect::<Vec<_>>().join(" ")
}

impl Form for Describe {
    const PATH: &'static str = "/do/key-describe";

    fn read(at: &At<'_>) -> Result<Self, Refused> {
        let (asked, request) = (at.asked, at.asked.request);
        let chosen =
            |id: &CharacterId| request.fields("never").any(|field| field == id.0.to_string());
        let never = at.collection().characters.keys().copied().filter(chosen).collect();
        let known = |words: &[&str], field: &str| {
            let wanted = request.field(field);
            let known = words.iter().find(|word| **word == wanted);
            known.map_or(String::new(), |word| (*word).to_owned())
        };
        let wishes = [
            (WishField::Group, asked.cut("group", LONGEST_NAME)),
            (WishField::Hand, known(&SeenOn::ALL.map(SeenOn::word), "hand")),
            (WishField::Season, known(&Season::ALL.map(Season::word), "season")),
            (WishField::Touch, known(&["allowed"], "touch")),
        ];
        Ok(Self { key: place::key(at)?, name: asked.cut("name", LONGEST_NAME), wishes, never })
    }

    fn reads(&self) -> Vec<Fact<'_>> {
        let wishes = self.wishes.iter().map(|wish| self.wish(wish));
        self.named().into_iter().chain(wishes).chain([self.never()]).collect()
    }

    fn act(self, at: &At<'_>) -> Result<Deed, Refused> {
        let key = self.key;
        let mut edits = Vec::new();
        if self.named().is_some_and(|named| at.changes(&named)) {
            edits.push(Edit::Key(key, KeyEdit::Rename(self.name.clone())));
        }
        let wishes = self.wishes.iter().filter(|wish| at.changes(&self.wish(wish)));
        edits.extend(
            wishes.map(|(field, text)| Edit::Key(key, KeyEdit::Wish(*field, text.clone()))),
        );
        if at.changes(&self.never()) {
            edits.push(Edit::Key(key, KeyEdit::Never(self.never.clone())));
        }
        Ok(Deed::edits(edits, at.asked.back(&format!("/key?key={}", key.0))))
    }
}
