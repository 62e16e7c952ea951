//! The newcomer's card beside the card of the kind that it came out at: what differs?

use std::collections::BTreeSet;

use maud::{Markup, html};
use spinney_collection::keys::KeyFrom;
use spinney_collection::laid::Laid;
use spinney_collection::walking::Walking;
use spinney_collection::{Agreed, Kind};
use spinney_exchange::table;
use spinney_model::{CharacterId, KindId, Scale};
use spinney_voice::Tongue;

use crate::asked::{Asked, Shown};
use crate::desk::Desk;
use crate::forms::hidden;
use crate::pages::cell;
use crate::pages::finds::deeds::LONGEST_NAME;
use crate::pages::finds::kind::{drawn_line, of_kind};
use crate::pages::frame::{self, Parts, Screen};
use crate::pages::newcomer::walk::{self, Fields};
use crate::pages::table::fields::LONGEST_TEXT;

/// So many cards are laid beside the newcomer's; a table top holds no more.
pub(super) const MOST_CARDS: usize = 3;

/// What the parts of this page look at.
struct View<'a> {
    t: Tongue,
    desk: &'a Desk,
    key: KeyFrom<'a>,
    laid: &'a Laid,
    walking: &'a Walking<'a>,
    /// The kinds that lie where it came out.
    beside: Vec<KindId>,
    fields: Fields<'a>,
    name: String,
}

impl View<'_> {
    fn kind_name(&self, kind: KindId) -> String {
        self.desk.history.now.name_in(self.key.id, kind)
    }
}

pub(super) fn show(
    desk: &Desk,
    asked: &Asked<'_>,
    key: KeyFrom<'_>,
    walking: &Walking<'_>,
) -> Shown {
    let (t, id) = (asked.tongue, key.id);
    let all = walking.came_out(key.made);
    let fields = Fields::of(asked.request);
    let name = match fields.get("name") {
        "" => t.say("newcomer-nameless"),
        name => name.chars().take(LONGEST_NAME).collect(),
    };
    let view = View {
        t,
        desk,
        key,
        laid: key.laid,
        walking,
        beside: all.iter().take(MOST_CARDS).copied().collect(),
        fields,
        name,
    };
    let names: Vec<String> = all.iter().map(|kind| view.kind_name(*kind)).collect();
    let back = walking.steps.split_last().map_or(&[][..], |(_, back)| back);
    let work = html! {
        (walk::trail(t, walking))
        @if names.is_empty() { h1 { (t.say("newcomer-comes-out-nowhere")) } }
        @else { h1 dir="auto" { (t.with("newcomer-comes-out", &[("kinds", &names.join(", "))])) } }
        p { (t.say("newcomer-look")) }
        (cards(&view))
        (drawn_line(t, &desk.history.now, view.beside.iter(), Some(view.laid)))
        form.compare method="post" action="/newcomer/slot" {
            (walk::fields(key.made, walking))
            (hidden(&[("key", &id.0), ("back", &walk::address(asked, (id, key.made), &walking.steps))]))
            (rows(&view))
            (new_difference(&view))
            button.main #newcomer-slot { (t.say("newcomer-slot")) }
        }
        p { a #walk-back href=(walk::address(asked, (id, key.made), back)) { (t.say("newcomer-back")) } }
    };
    frame::shown(desk, asked, &Parts::new(Screen::Finds, t.say("newcomer-title"), work))
}

/// The cards side by side.
fn cards(view: &View<'_>) -> Markup {
    let t = view.t;
    html! {
        ul.cards.two {
            li.card {
                span.name dir="auto" { (view.name) }
                p.why { (t.say("newcomer-is-new")) }
            }
            @for kind in &view.beside {
                @let known = &view.desk.history.now.kinds[kind];
                li.card {
                    (faces(t, known, &view.kind_name(*kind), of_kind(view.laid, *kind)))
                    span.name dir="auto" { (view.kind_name(*kind)) }
                    p { a href={"/finds/" (kind.0)} { (t.with("newcomer-same", &[("kind", &view.kind_name(*kind))])) } }
                }
            }
        }
    }
}

/// All pictures of a kind, so that the thing in the hand can be held beside them; else what the
/// table says of it, drawn.
pub(super) fn faces(t: Tongue, kind: &Kind, name: &str, drawing: Option<Markup>) -> Markup {
    html! {
        @if let (true, Some(drawing)) = (kind.pictures.is_empty(), drawing) { (drawing) }
        @for (at, hash) in kind.pictures.iter().enumerate() {
            img src={"/picture/" (hash)} loading="lazy"
                alt=(t.with("finds-picture-of", &[("kind", &name), ("number", &(at + 1))]));
        }
    }
}

/// Character by character: what was asked on the way first, then what is known of the other.
fn rows(view: &View<'_>) -> Markup {
    let t = view.t;
    let asked = view.walking.steps.iter().filter_map(|(couplet, _)| {
        let at = couplet.ask.as_ref()?.character.0;
        view.laid.characters.get(at).copied().flatten()
    });
    let on_the_way: BTreeSet<CharacterId> = asked.collect();
    let all = view.desk.history.now.characters.keys().copied();
    let (first, others): (Vec<_>, Vec<_>) = all.partition(|at| on_the_way.contains(at));
    html! {
        label for="newcomer-name" { (t.say("newcomer-name")) }
        input #newcomer-name name="name" maxlength=(LONGEST_NAME) dir="auto" value=(view.fields.get("name"));
        @if !first.is_empty() {
            h2 { (t.say("newcomer-on-the-way")) }
            @for at in &first { (row(view, *at)) }
        }
        @if !others.is_empty() {
            h2 { (t.say("newcomer-others")) }
            @for at in &others { (row(view, *at)) }
        }
        p.quiet { (t.say("newcomer-blank")) }
    }
}

fn row(view: &View<'_>, at: CharacterId) -> Markup {
    let t = view.t;
    let collection = &view.desk.history.now;
    let field = format!("c-{}", at.0);
    let typed = view.fields.get(&field);
    let answered = view.walking.settled(view.key, at);
    let text = if typed.is_empty() { answered.unwrap_or_default() } else { typed.to_owned() };
    html! {
        fieldset.pair {
            legend dir="auto" { (collection.character_name(at)) }
            div {
                label for=(field) { (t.with("newcomer-of", &[("kind", &view.name)])) }
                input id=(field) name=(field) value=(text) maxlength=(LONGEST_TEXT) dir="auto"
                    list={"states-" (at.0)};
                (states(view, at))
                @if text.is_empty() {
                    @for (words, yes) in view.walking.numbers(view.key, at) {
                        @let says = if yes { "newcomer-number-yes" } else { "newcomer-number-no" };
                        p.quiet dir="auto" { (t.with(says, &[("words", &words)])) }
                    }
                }
            }
            @for kind in &view.beside {
                div {
                    @match view.laid.said.agreed(*kind, at) {
                        Agreed::Text(text) => {
                            p.of dir="auto" { (t.with("newcomer-of", &[("kind", &view.kind_name(*kind))])) }
                            p.known dir="auto" { (text) }
                        },
                        Agreed::Blank | Agreed::Contradicted => {
                            @let field = format!("k-{}-{}", kind.0, at.0);
                            label for=(field) { (t.with("newcomer-of", &[("kind", &view.kind_name(*kind))])) }
                            input id=(field) name=(field) value=(view.fields.get(&field)) dir="auto"
                                maxlength=(LONGEST_TEXT) list={"states-" (at.0)};
                            @for (source, saying) in view.laid.said.sources_and_open(*kind, at) {
                                p.quiet dir="auto" { (cell::says(t, source, saying)) }
                            }
                        },
                    }
                }
            }
        }
    }
}

/// The words that others have there.
fn states(view: &View<'_>, at: CharacterId) -> Markup {
    let at_matrix = view.laid.character(at);
    let scale = at_matrix.map(|at| &view.laid.matrix.character(at).scale);
    html! {
        datalist id={"states-" (at.0)} {
            @if let Some(Scale::Words { states }) = scale {
                @for state in states { option value=(table::as_typed(state)) {} }
            }
        }
    }
}

/// Something that nobody has looked at yet.
fn new_difference(view: &View<'_>) -> Markup {
    let t = view.t;
    let fields = &view.fields;
    html! {
        fieldset.pair {
            legend { (t.say("newcomer-difference")) }
            div {
                label for="d-name" { (t.say("newcomer-difference-name")) }
                input #d-name name="d-name" maxlength=(LONGEST_NAME) dir="auto" value=(fields.get("d-name"))
                    placeholder=(t.say("newcomer-difference-example"));
            }
            div {
                label for="d-ours" { (t.with("newcomer-of", &[("kind", &view.name)])) }
                input #d-ours name="d-ours" maxlength=(LONGEST_TEXT) dir="auto" value=(fields.get("d-ours"));
            }
            @for kind in &view.beside {
                @let field = format!("d-theirs-{}", kind.0);
                div {
                    label for=(field) { (t.with("newcomer-of", &[("kind", &view.kind_name(*kind))])) }
                    input id=(field) name=(field) maxlength=(LONGEST_TEXT) dir="auto" value=(fields.get(&field));
                }
            }
        }
    }
}
