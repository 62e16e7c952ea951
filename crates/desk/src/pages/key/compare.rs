//! Two keys side by side: their numbers, then their questions.

use std::sync::Arc;

use maud::{Markup, html};
use spinney_model::KeyId;

use super::best::Numbers;
use super::{Ending, Together, names};
use crate::Desk;
use crate::amounts::one_decimal;
use crate::pages::Shown;
use crate::pages::frame::{self, Parts, Screen};
use crate::pages::heaps::answer_tab;
use crate::routes::Asked;
use spinney_collection::Collection;
use spinney_collection::keys::Made;
use spinney_voice::Tongue;

struct Side {
    id: KeyId,
    name: String,
    made: Option<Arc<Made>>,
}

pub(super) fn show(desk: &mut Desk, asked: &Asked<'_>) -> Shown {
    let t = asked.tongue;
    let known: Vec<KeyId> = desk.history.now.keys.keys().copied().collect();
    let wanted = |name: &str, otherwise: usize| {
        let id = asked.request.asked(name).parse().ok().map(KeyId);
        id.filter(|id| known.contains(id)).or_else(|| known.get(otherwise).copied())
    };
    let (Some(one), Some(other)) = (wanted("one", 0), wanted("other", 1)) else {
        let work = html! {
            h1 { (t.say("key-compare")) }
            p.empty { (t.say("key-compare-too-few")) }
            p { a.main href="/key" { (t.say("nav-key")) } }
        };
        return frame::shown(desk, asked, &Parts::new(Screen::Key, t.say("key-compare"), work));
    };
    let sides = [one, other].map(|id| Side {
        id,
        name: desk.history.now.keys[&id].name.clone(),
        made: desk.worked.made(&desk.history.now, id),
    });
    let collection = &desk.history.now;
    let work = html! {
        h1 { (t.say("key-compare")) }
        (which(t, collection, one, other))
        (table(t, collection, &sides))
        div.side-by-side {
            @for side in &sides {
                section {
                    h2 dir="auto" { (side.name) }
                    p { a href={"/key?key=" (side.id.0)} { (t.say("key-open")) span.unseen { ": " (side.name) } } }
                    @if let Some(made) = &side.made { (questions(t, collection, side.id, made)) }
                }
            }
        }
    };
    frame::shown(desk, asked, &Parts::new(Screen::Key, t.say("key-compare"), work))
}

fn which(t: Tongue, collection: &Collection, one: KeyId, other: KeyId) -> Markup {
    html! {
        form.which method="get" action="/key/compare" {
            @for (name, chosen, label) in [("one", one, "key-one"), ("other", other, "key-other")] {
                div {
                    label for={"compare-" (name)} { (t.say(label)) }
                    select name=(name) id={"compare-" (name)} {
                        @for (id, key) in &collection.keys {
                            option value=(id.0) selected[*id == chosen] { (key.name) }
                        }
                    }
                }
            }
            button #compare { (t.say("key-compare-button")) }
        }
    }
}

/// What a row of the comparison says of a key.
type Told = fn(&Together<'_>, &Numbers) -> Option<String>;

/// First whether a key works, whoever made it, then what it takes: a key with few questions that
/// leaves kinds together is not the shorter one.
fn table(t: Tongue, collection: &Collection, sides: &[Side; 2]) -> Markup {
    let told = sides.each_ref().map(|side| {
        let made = side.made.as_deref()?;
        Some((Together { t, collection, key: side.id, made }, Numbers::of(made)))
    });
    let rows: [(&str, Told); 6] = [
        ("key-row-works", |of, _| Some(works(of))),
        ("key-row-together", |of, _| {
            Some(if of.none() { of.t.say("key-none-together") } else { of.names() })
        }),
        ("key-row-mend", |_, n| Some(n.to_mend.to_string())),
        ("key-row-mean", |of, n| Some(of.t.decimal(&one_decimal(n.mean?)))),
        ("key-row-longest", |_, n| n.longest.map(|longest| longest.to_string())),
        ("key-row-questions", |_, n| Some(n.questions.to_string())),
    ];
    html! {
        table.compared {
            thead {
                tr {
                    td {}
                    @for side in sides { th scope="col" dir="auto" { (side.name) } }
                }
            }
            tbody {
                @for (label, value) in rows {
                    tr {
                        th scope="row" { (t.say(label)) }
                        @for told in &told {
                            td dir="auto" {
                                (told.as_ref().and_then(|(of, n)| value(of, n)).unwrap_or_else(|| t.say("key-cannot-say")))
                            }
                        }
                    }
                }
            }
        }
    }
}

/// Whether every kind comes out at its name.
fn works(of: &Together<'_>) -> String {
    let opinion = &of.made.opinion;
    of.t.say(match (opinion.works(), opinion.says_mend_this()) {
        _ if of.made.key.couplets.is_empty() => "key-works-not-begun",
        (true, _) if of.none() => "key-works",
        (true, _) => "key-works-together",
        (false, true) => "key-works-not-yet",
        (false, false) => "key-works-in-part",
    })
}

fn questions(t: Tongue, collection: &Collection, id: KeyId, made: &Made) -> Markup {
    html! {
        @if made.key.couplets.is_empty() { p.quiet { (t.say("key-no-question")) } }
        ol.short {
            @for couplet in &made.key.couplets {
                li value=(couplet.number) {
                    span dir="auto" { (couplet.wording.first()) }
                    ul {
                        @for (yes, to) in [(true, &couplet.yes), (false, &couplet.no)] {
                            li {
                                (answer_tab(t, yes)) " "
                                @match Ending::of(made, to) {
                                    Ending::On(number) => (t.with("key-go-to", &[("number", &number)])),
                                    Ending::Out(kinds, strange) => strong dir="auto" {
                                        (names(collection, id, &kinds, strange).join(", "))
                                    },
                                    Ending::Nothing => (t.say("key-nobody")),
                                }
                            }
                        }
                    }
                }
            }
        }
    }
}
