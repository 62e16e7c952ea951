//! Slotting in: first what would change in the key, in words, then it is kept, then the way on
//! which the newcomer comes out now. What is kept is what was shown, or nothing.

use std::sync::Arc;

use maud::{Markup, html};
use spinney_collection::keys::{KeyFrom, token};
use spinney_collection::laid::Laid;
use spinney_collection::slot_in::{Change, Slotted, slot_in};
use spinney_model::{Answer, Edit, KeyId, KindEdit, KindId, Share};
use spinney_voice::Tongue;
use spinney_voice::amounts::one_decimal;

use crate::asked::{Asked, Deed, Shown};
use crate::desk::Desk;
use crate::forms::{At, Fact, Form};
use crate::pages::finds::deeds::{MOST_PICTURES, gone, pictures_of};
use crate::pages::finds::kind::of_kind;
use crate::pages::frame::{self, Parts, Screen};
use crate::pages::heaps::card::answer_tab;
use crate::pages::newcomer::beside::{MOST_CARDS, faces};
use crate::pages::newcomer::seen::{self, Clash};
use crate::pages::newcomer::walk::{self, Fields, key};
use crate::pictures;
use crate::reply::Refused;

/// The hidden field with what the page said that would change.
const CHANGE: &str = "change";

/// A newcomer with its place, or what a person has to decide before it gets one.
enum Found {
    Place(KeyId, Box<Slotted>, Vec<KindId>),
    Clashes(Arc<Laid>, Vec<Clash>),
}

/// The newcomer of these fields with its place.
fn found(at: &At<'_>, fields: &Fields<'_>) -> Result<Found, Refused> {
    let (desk, asked) = (at.desk, at.asked);
    let (id, made) = key(desk, asked, fields.get("key")).ok_or_else(|| gone(asked))?;
    let laid = desk.laid().ok_or_else(|| gone(asked))?;
    let from =
        KeyFrom { t: asked.tongue, collection: at.collection(), laid: &laid, made: &made, id };
    let (newcomer, clashes) = seen::newcomer(at, from, fields)?;
    if !clashes.is_empty() {
        return Ok(Found::Clashes(laid, clashes));
    }
    let slotted = slot_in(asked.tongue, &desk.history.now, id, &made, &newcomer);
    let slotted = slotted.ok_or_else(|| gone(asked))?;
    Ok(Found::Place(id, Box::new(slotted), newcomer.beside))
}

/// What would change; before that, what a person has to decide.
pub(super) fn preview(desk: &Desk, asked: &Asked<'_>) -> Shown {
    let t = asked.tongue;
    let fields = Fields::of(asked.request);
    let found = At::sent(desk, asked, "head").and_then(|at| found(&at, &fields));
    let found = match found {
        Ok(found) => found,
        Err(refused) => return Shown::Page(frame::refused(desk, asked, &refused)),
    };
    let name = match fields.get("name") {
        "" => t.say("newcomer-nameless"),
        name => name.to_owned(),
    };
    let work = html! {
        h1 dir="auto" { (t.with("newcomer-slot-title", &[("kind", &name)])) }
        @match &found {
            Found::Clashes(laid, clashes) => (decide(desk, t, laid, &fields, clashes)),
            Found::Place(id, slotted, beside) => {
                (would_change(desk, t, *id, slotted, beside))
                (keep_form(t, &fields, &shown(desk, *id, slotted, beside)))
            }
        }
        form method="post" action="/newcomer" {
            (fields.again(seen::is_answer))
            button.quiet #newcomer-again { (t.say("newcomer-again")) }
        }
    };
    frame::shown(desk, asked, &Parts::new(Screen::Finds, t.say("newcomer-title"), work))
}

/// Something else stands in the table: first a person decides.
fn decide(
    desk: &Desk,
    t: Tongue,
    laid: &Laid,
    fields: &Fields<'_>,
    clashes: &[Clash],
) -> Markup {
    let collection = &desk.history.now;
    html! {
        div.finding.look {
            p { (t.count("newcomer-clashes", clashes.len())) }
            p.remedy { (t.say("newcomer-clashes-remedy")) }
        }
        form method="post" action="/newcomer/slot" {
            (fields.again(|name| clashes.iter().any(|clash| clash.field() == name)))
            @for clash in clashes { (seen::question(t, collection, laid, clash)) }
            button.main #newcomer-slot { (t.say("newcomer-slot")) }
        }
    }
}

/// Where it came out, and what would change.
fn would_change(
    desk: &Desk,
    t: Tongue,
    id: KeyId,
    slotted: &Slotted,
    beside: &[KindId],
) -> Markup {
    let names: Vec<String> =
        beside.iter().map(|kind| desk.history.now.name_in(id, *kind)).collect();
    html! {
        @if names.is_empty() { p { (t.say("newcomer-comes-out-nowhere")) } }
        @else { p dir="auto" { (t.with("newcomer-comes-out", &[("kinds", &names.join(", "))])) } }
        @match &slotted.change {
            Some(change) => (changed(desk, t, id, change)),
            None => p.empty { (t.say("newcomer-into-heap")) },
        }
        @if let Some(words) = &slotted.asks {
            p dir="auto" { (t.with("newcomer-heap-asks", &[("words", words)])) }
        }
        @if let Some(name) = &slotted.not_asked {
            p.quiet dir="auto" { (t.with("newcomer-not-asked", &[("name", name)])) }
        }
        p.quiet { (t.say("newcomer-not-yet")) }
    }
}

/// The token of what is shown of a change.
fn shown(desk: &Desk, id: KeyId, slotted: &Slotted, beside: &[KindId]) -> String {
    token([would_change(desk, Tongue::of_tokens(), id, slotted, beside).0])
}

/// The button that keeps it, with what was shown.
fn keep_form(t: Tongue, fields: &Fields<'_>, shown: &str) -> Markup {
    html! {
        form method="post" action=(SLOT_IN.path) enctype="multipart/form-data" {
            (fields.again(|name| name == CHANGE))
            input type="hidden" name=(CHANGE) value=(shown);
            label for="newcomer-picture" { (t.say("newcomer-picture")) }
            input #newcomer-picture type="file" name="pictures" accept="image/jpeg,image/png" multiple;
            button.main #newcomer-keep { (t.say("newcomer-keep")) }
        }
    }
}

/// What changes, question by question, and what it costs.
fn changed(desk: &Desk, t: Tongue, id: KeyId, change: &Change) -> Markup {
    let revision = &change.revision;
    let sentences = sentences(t, change);
    let stayed = revision.parts.kept.len();
    let dearer = revision.effort - revision.best;
    let alike: Vec<String> =
        change.alike.iter().map(|kind| desk.history.now.name_in(id, *kind)).collect();
    html! {
        p dir="auto" { (t.with("newcomer-in-key", &[("key", &desk.history.now.keys[&id].name)])) }
        @if !alike.is_empty() {
            div.finding.look {
                p dir="auto" { (t.with("newcomer-alike", &[("kinds", &alike.join(", "))])) }
                p.remedy { (t.say("newcomer-alike-remedy")) }
            }
        }
        ul.changes {
            @if sentences.is_empty() { li { (t.say("newcomer-no-change")) } }
            @for sentence in &sentences { li dir="auto" { (sentence) } }
        }
        @if stayed > 0 { p { (t.count("newcomer-stayed", stayed)) } }
        @if dearer > Share::from_integer(0) {
            // Nothing that costs something reads 0.
            @let dearer = one_decimal(dearer.max(Share::new(1, 10)));
            p.quiet { (t.with("newcomer-dearer", &[("questions", &t.decimal(&dearer))])) }
        }
        @if revision.stopped.is_some() { p.quiet { (t.say("newcomer-stopped")) } }
        @if !change.exact { p.quiet { (t.say("newcomer-inexact")) } }
    }
}

/// Question by question, by the numbers that the key has now and had before.
fn sentences(t: Tongue, change: &Change) -> Vec<String> {
    let parts = &change.revision.parts;
    let now = &change.revision.key;
    let mut sentences = Vec::new();
    for number in &parts.added {
        let words = walk::words(now, *number);
        let after = now.couplets.iter().find(|c| c.number == *number).and_then(|c| c.back);
        sentences.push(match after {
            None => t.with("newcomer-added-first", &[("words", &words)]),
            Some(after) => {
                let before = walk::words(now, after);
                t.with(
                    "newcomer-added",
                    &[("words", &words), ("after", &after), ("before", &before)],
                )
            }
        });
    }
    for (old, new) in &parts.rewritten {
        let (before, words) = (walk::words(&change.before, *old), walk::words(now, *new));
        sentences.push(t.with(
            "newcomer-rewritten",
            &[("number", old), ("before", &before), ("words", &words)],
        ));
    }
    for old in &parts.struck {
        let before = walk::words(&change.before, *old);
        sentences.push(t.with("newcomer-struck", &[("number", old), ("before", &before)]));
    }
    sentences
}

/// Keeps the decision, all of it as one thing that was done.
pub(super) static SLOT_IN: Form<Decided> = Form {
    path: "/do/slot-in",
    read: |at| {
        let found = found(at, &Fields::of(at.asked.request))?;
        let Found::Place(key, slotted, beside) = found else {
            return Err(at.asked.refused("newcomer-clash-moved"));
        };
        let change = shown(at.desk, key, &slotted, &beside);
        let shown = at.asked.request.field(CHANGE).to_owned();
        Ok(Decided { key, slotted, beside, change, shown })
    },
    rests_on: |of| {
        let change =
            Fact::new(|_| of.change.clone(), |at| at.asked.refused("newcomer-change-moved"));
        vec![change.carried(Some(&of.shown))]
    },
    act: |of, at| {
        let (t, kind) = (at.asked.tongue, of.slotted.kind);
        let pictures = pictures_of(at.asked)?;
        if pictures.len() > MOST_PICTURES {
            let sentence = t.count("finds-many-pictures", MOST_PICTURES);
            return Err(Refused { sentence, remedy: t.say("newcomer-many-pictures-remedy") });
        }
        let name = |bytes: &Vec<u8>| KindEdit::AddPicture(pictures::name(bytes));
        let added = pictures.iter().map(|bytes| Edit::Kind(kind, name(bytes)));
        let mut to = format!("/newcomer/done?key={}&kind={}", of.key.0, kind.0);
        for kind in of.beside.iter().take(MOST_CARDS) {
            to.push_str(&format!("&beside={}", kind.0));
        }
        let deed = Deed::edits(of.slotted.edits.into_iter().chain(added), to);
        Ok(Deed { pictures, ..deed })
    },
};

/// A newcomer with its place.
pub(super) struct Decided {
    key: KeyId,
    slotted: Box<Slotted>,
    beside: Vec<KindId>,
    /// What would change, as a page would show it now; and as the form's page did.
    change: String,
    shown: String,
}

/// Where the newcomer comes out now.
pub(super) fn done(desk: &Desk, asked: &Asked<'_>) -> Shown {
    let t = asked.tongue;
    let kind = KindId(asked.request.asked("kind").parse().unwrap_or(0));
    let found = key(desk, asked, asked.request.asked("key"));
    let (Some((id, made)), true) = (found, desk.history.now.kinds.contains_key(&kind)) else {
        return Shown::Nothing;
    };
    let at = made.layer.kinds.iter().position(|known| *known == kind);
    let ways = made.opinion.walks.iter().filter(|walk| Some(walk.taxon.0) == at);
    let known_as = |kind| desk.history.now.name_in(id, kind);
    let name = known_as(kind);
    let beside = asked.request.query.iter().filter(|(name, _)| name == "beside");
    let beside = beside.filter_map(|(_, number)| number.parse().ok().map(KindId));
    let cards: Vec<KindId> = std::iter::once(kind).chain(beside.take(MOST_CARDS)).collect();
    let laid = desk.laid();
    let drawing = |kind: &KindId| laid.as_ref().and_then(|laid| of_kind(laid, *kind));
    let work = html! {
        h1 dir="auto" { (t.with("newcomer-is-in", &[("kind", &name)])) }
        ul.cards.two {
            @for card in &cards {
                @if let Some(known) = desk.history.now.kinds.get(card) {
                    li.card {
                        (faces(t, known, &known_as(*card), drawing(card)))
                        span.name dir="auto" { (known_as(*card)) }
                    }
                }
            }
        }
        @for way in ways {
            ol.way {
                @for step in &way.steps {
                    li {
                        span dir="auto" { (walk::words(&made.key, step.couplet)) } " "
                        (answer_tab(t, step.answer == Answer::Yes))
                    }
                }
                li { strong dir="auto" { (name) } }
            }
        }
        ul.ways-on {
            li { a href={"/finds/" (kind.0)} { (t.say("newcomer-its-page")) } }
            li { a href={"/key?key=" (id.0)} { (t.say("newcomer-to-key")) } }
            li { a href={"/heaps?key=" (id.0)} { (t.say("newcomer-to-heaps")) } }
            li { a href="/newcomer" { (t.say("newcomer-next")) } }
        }
    };
    frame::shown(desk, asked, &Parts::new(Screen::Finds, t.say("newcomer-title"), work))
}
