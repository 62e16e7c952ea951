//! What a group calls its finds: the names that stand at the ends of its key on paper.
//!
//! From a form to the group's own names, which stand on its sheets and walks with ours beside
//! them. A name that sounds like another find, or that another find has in this key already, is
//! asked back before anything is matched: "holly" may be the holly, or what they call something
//! spiky.

use maud::{Markup, html};
use meant::{MEANT, MOST_ASKED_BACK, NAMES, Where, address, in_address, lie_apart};
use spinney_collection::Collection;
use spinney_collection::keys::letters;
use spinney_collection::kinds::sounding_like;
use spinney_collection::laid::{Laid, folded};
use spinney_collection::layer::Layer;
use spinney_model::{Fork, KeyId, KindField, KindId};

use crate::asked::Asked;
use crate::desk::Desk;
use crate::forms::hidden;
use crate::pages::finds::deeds::LONGEST_NAME;
use crate::pages::heaps::card::answer_tab;
use crate::pages::heaps::place::{on_the_way, way};

pub(super) mod meant;

/// What the parts of this section look at.
struct Ends<'a> {
    asked: &'a Asked<'a>,
    collection: &'a Collection,
    key: KeyId,
    layer: &'a Layer,
    laid: &'a Laid,
}

/// The names that there are, fields for more, and what has to be asked back.
pub(super) fn section(
    desk: &Desk,
    asked: &Asked<'_>,
    key: KeyId,
    layer: &Layer,
    laid: &Laid,
) -> Markup {
    let t = asked.tongue;
    let collection = &desk.history.now;
    let names = Ends { asked, collection, key, layer, laid };
    if collection.keys[&key].questions.is_empty() {
        return html! {};
    }
    let open = asked_back(asked);
    html! {
        section.own-names {
            h2 #own-names { (t.say("copy-names")) }
            @for (at, (place, name)) in open.iter().enumerate() {
                @let others = open.iter().enumerate().filter(|(other, _)| *other != at);
                @let others: Vec<String> = others.map(|(_, (place, name))| in_address(place, name)).collect();
                @match place {
                    Where::At(kind) => (ask_back(&names, *kind, name, &others)),
                    Where::Nobody(end) => (who_is_it(&names, end, name, &others)),
                }
            }
            p.quiet { (t.say("copy-names-why")) }
            form method="post" action=(NAMES.path) {
                (hidden(&[("key", &key.0)]))
                (fields(&names))
                button #keep-names { (t.say("copy-names-keep")) }
            }
        }
    }
}

/// A field for every kind at its end, and for every end where nobody comes out.
fn fields(names: &Ends<'_>) -> Markup {
    let t = names.asked.tongue;
    let drawn = &names.collection.keys[&names.key];
    let ends = || names.layer.forks.iter().filter(|(_, heap)| heap.ask.is_none());
    // A kind that varies comes out at several ends, and has one name.
    let kinds: std::collections::BTreeSet<KindId> =
        ends().flat_map(|(_, heap)| heap.kinds.iter().copied()).collect();
    let nobody = ends().filter(|(_, heap)| heap.kinds.is_empty());
    html! {
        @for kind in kinds {
            @let id = format!("name-{}", kind.0);
            @let called = drawn.called.get(&kind).map_or("", String::as_str);
            div.field {
                label for=(id) dir="auto" { (t.with("copy-name-of", &[("kind", &names.collection.name(kind))])) }
                input id=(id) name=(id) value=(called) maxlength=(LONGEST_NAME) dir="auto" autocomplete="off";
            }
        }
        @for (at, _) in nobody {
            @let id = format!("end-{}", letters(at));
            div.field {
                label for=(id) dir="auto" {
                    (t.say("copy-name-nobody")) " "
                    @for (words, yes) in on_the_way(drawn, at) { (words) " " (answer_tab(t, yes)) " " }
                }
                input id=(id) name=(id) maxlength=(LONGEST_NAME) dir="auto" autocomplete="off";
            }
        }
    }
}

/// A button that decides what a name means.
fn button(
    names: &Ends<'_>,
    fields: &[(&str, String)],
    others: &[String],
    words: &str,
) -> Markup {
    let id: Vec<&str> = fields.iter().map(|(_, text)| text.as_str()).collect();
    html! {
        form method="post" action=(MEANT.path) {
            @for (field, text) in fields { input type="hidden" name=(field) value=(text); }
            (hidden(&[("key", &names.key.0), ("back", &address(names.key, others))]))
            button id={"means-" (folded(&id.join("-")).replace(' ', "-"))} { span dir="auto" { (words) } }
        }
    }
}

/// A name at the end of a kind that sounds like another kind.
fn ask_back(names: &Ends<'_>, kind: KindId, name: &str, others: &[String]) -> Markup {
    let t = names.asked.tongue;
    let collection = names.collection;
    let Some(known) = collection.kinds.get(&kind) else { return html! {} };
    let nameless = known.field(KindField::Name).is_empty();
    let mut alike = sounding_like(collection, names.laid, name, Some(kind));
    let called = &collection.keys[&names.key].called;
    let namesakes = called.iter().filter(|(_, own)| folded(own) == folded(name));
    for (other, _) in namesakes.filter(|(other, _)| **other != kind) {
        if !alike.contains(other) {
            alike.push(*other);
        }
    }
    let known_as = |kind: &KindId| collection.name_in(names.key, *kind);
    let list: Vec<String> = alike.iter().map(known_as).collect();
    let now = called.get(&kind).map_or("", String::as_str);
    if alike.is_empty() && now == name {
        return html! {};
    }
    let lies = collection.name(kind);
    let at = names.layer.forks.iter().find(|(_, h)| h.ask.is_none() && h.kinds.contains(&kind));
    let heaps = at.map_or(String::new(), |(at, _)| letters(at));
    let of_kind = |what: &str| {
        vec![("as", what.to_owned()), ("kind", kind.0.to_string()), ("name", name.to_owned())]
    };
    html! {
        div.ask-back {
            @if now != name && (alike.is_empty() || !now.is_empty()) { (called_now(names, kind, name, now)) }
            @if !alike.is_empty() {
                p dir="auto" {
                    strong { (t.with("copy-sounds-like", &[("name", &name), ("kind", &lies), ("known", &list.join(", "))])) }
                }
            }
            @let own = if name.is_empty() { "copy-no-own-name" } else { "copy-own-name" };
            (button(names, &of_kind("own"), others, &t.with(own, &[("name", &name), ("kind", &lies)])))
            @if nameless {
                @for with in &alike {
                    @match collection.keys[&names.key].parts(kind, *with) {
                        None => {
                            @let fields = [of_kind("match"), vec![("with", with.0.to_string())]].concat();
                            (button(names, &fields, others, &t.with("copy-same-find", &[("kind", &known_as(with))])))
                        }
                        Some((at, question)) => p dir="auto" {
                            (lie_apart(t, collection, names.key, (kind, *with), question)) " "
                            a href={"/heaps?key=" (names.key.0) "&at=" (letters(at)) "#card-" (kind.0)} {
                                (t.say("copy-lie-apart-look"))
                            }
                        }
                    }
                }
            }
            p { a href={"/heaps?key=" (names.key.0) "&at=" (heaps)} { (t.say("copy-lies-wrong")) } }
            p { a href=(address(names.key, others)) { (t.say("copy-leave-name")) } }
        }
    }
}

/// What they call a kind by now, where that is not what was typed.
fn called_now(names: &Ends<'_>, kind: KindId, name: &str, now: &str) -> Markup {
    let t = names.asked.tongue;
    let lies = names.collection.name(kind);
    let typed = if name.is_empty() { "copy-called-none-typed" } else { "copy-called-typed" };
    html! {
        p dir="auto" {
            strong {
                @if now.is_empty() { (t.with("copy-called-none-now", &[("kind", &lies)])) }
                @else { (t.with("copy-called-now", &[("kind", &lies), ("now", &now)])) }
                " " (t.with(typed, &[("name", &name)]))
            }
        }
    }
}

/// A name at an end where nobody comes out.
fn who_is_it(names: &Ends<'_>, end: &Fork, name: &str, others: &[String]) -> Markup {
    let t = names.asked.tongue;
    let collection = names.collection;
    let mut finds = sounding_like(collection, names.laid, name, None);
    finds.retain(|kind| names.layer.kinds.contains(kind));
    for (_, kind) in names.layer.stranded() {
        if !finds.contains(&kind) {
            finds.push(kind);
        }
    }
    html! {
        div.ask-back {
            p dir="auto" { strong { (t.with("copy-who-is", &[("name", &name)])) } }
            @for kind in &finds {
                @let fields = [
                    ("as", "place".to_owned()),
                    ("with", kind.0.to_string()),
                    ("at", letters(end)),
                    ("name", name.to_owned()),
                ];
                (button(names, &fields, others, &t.with("copy-it-is", &[("kind", &collection.name_in(names.key, *kind))])))
            }
            @if finds.is_empty() { p { (t.say("copy-nobody-like-it")) " " a href="/finds" { (t.say("nav-finds")) } } }
        }
    }
}

/// Names that a form brought and that have to be asked back: `called=3-holly`, `called=ny-yew`.
fn asked_back(asked: &Asked<'_>) -> Vec<(Where, String)> {
    let called = asked.request.query.iter().filter(|(field, _)| field == "called");
    let called = called.filter_map(|(_, text)| {
        let (place, name) = text.split_once('-')?;
        let name: String = name.chars().take(LONGEST_NAME).collect();
        let place = match place.parse() {
            Ok(kind) => Where::At(KindId(kind)),
            Err(_) => Where::Nobody(way(place)),
        };
        Some((place, name))
    });
    called.take(MOST_ASKED_BACK).collect()
}
