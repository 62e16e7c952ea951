//! A key that a group drew on paper, taken over question by question.
//!
//! The two-minute road: type a question, tap which kinds say yes, go on. The table fills in
//! what it knows, and a person confirms it, since the group's word may mean something else.
//! At the end the cards walk the group's own questions, and whoever was lost stands there.

mod answer;
mod names;

use maud::{Markup, html};
use names::meant;
use spinney_collection::keys::letters;
use spinney_collection::laid::Laid;
use spinney_collection::layer::Layer;
use spinney_collection::offers::{readings, table_side};
use spinney_model::{AskOf, Edit, Fork, KeyEdit, KeyId, KindId, Side};
use spinney_voice::Tongue;

use crate::asked::{Asked, Deed, Route, Shown, get};
use crate::desk::Desk;
use crate::forms::{Form, hidden, post};
use crate::pages::finds::kind::face;
use crate::pages::frame::{self, Parts, Screen};
use crate::pages::heaps::card::answer_tab;
use crate::pages::heaps::deeds::{self, start_form};
use crate::pages::heaps::place::{self, Place};

pub(crate) const ROUTES: &[Route] = &[
    get("/copy", show),
    get("/copy/new", begin),
    post(&TAKE),
    post(&meant::NAMES),
    post(&meant::MEANT),
];

/// What the page looks at.
struct Copy<'a> {
    t: Tongue,
    desk: &'a Desk,
    key: KeyId,
    laid: &'a Laid,
    layer: &'a Layer,
    at: Fork,
}

fn show(desk: &Desk, asked: &Asked<'_>) -> Shown {
    let t = asked.tongue;
    let key = frame::key_asked(desk, asked);
    let laid = desk.laid();
    let (Some(key), Some(laid)) = (key, laid) else { return begin(desk, asked) };
    let drawn = &desk.history.now.keys[&key];
    let Some(layer) = Layer::of(&desk.history.now, &laid, drawn) else {
        return Shown::Nothing;
    };
    let next = layer.together().into_iter().next().map(|(at, _)| at);
    let wanted = asked.request.asked("at");
    let at = match (wanted, next) {
        ("", Some(next)) if asked.request.query.iter().all(|(name, _)| name != "at") => next,
        ("", None) => return answer::show(desk, asked, key, &layer, &laid),
        ("end", _) => return answer::show(desk, asked, key, &layer, &laid),
        (wanted, _) => place::way(wanted),
    };
    if layer.forks.get(&at).is_none_or(|heap| heap.ask.is_some()) {
        return answer::show(desk, asked, key, &layer, &laid);
    }
    let copy = Copy { t, desk, key, laid: &laid, layer: &layer, at };
    let words = asked.request.asked("words").trim();
    let work = html! {
        h1 { (t.say("copy-title")) " · " span dir="auto" { (drawn.name) } }
        @if words.is_empty() { (frame::key_picker(t, &desk.history.now, Some(key), "/copy")) }
        (trail(&copy))
        @if words.is_empty() { (ask(&copy)) } @else {
            @let readings = readings(t, &laid, words);
            (who(&copy, words, readings.first()))
        }
    };
    let parts = Parts {
        margin: Some(margin(&copy)),
        ..Parts::new(Screen::Heaps, t.say("copy-title"), work)
    };
    frame::shown(desk, asked, &parts)
}

/// Whose key stands on the paper: it becomes a key of its own.
fn begin(desk: &Desk, asked: &Asked<'_>) -> Shown {
    let t = asked.tongue;
    let work = html! {
        h1 { (t.say("copy-title")) }
        @if desk.history.now.kinds.is_empty() {
            p.empty { (t.say("copy-no-finds")) }
            p { a.main href="/finds" { (t.say("nav-finds")) } }
        } @else {
            p.empty { (t.say("copy-why")) }
            (start_form(t, true))
        }
    };
    frame::shown(desk, asked, &Parts::new(Screen::Heaps, t.say("copy-title"), work))
}

fn trail(copy: &Copy<'_>) -> Markup {
    let t = copy.t;
    let drawn = &copy.desk.history.now.keys[&copy.key];
    html! {
        nav.trail aria-label=(t.say("heaps-path")) {
            ol {
                @for length in 0..copy.at.0.len() {
                    @let place = Fork(copy.at.0[..length].to_vec());
                    li {
                        span dir="auto" { (drawn.questions.get(&place).map_or("", |q| &q.words)) }
                        " " (answer_tab(t, copy.at.0[length]))
                    }
                }
                li aria-current="step" {
                    (t.count("heaps-here", copy.layer.forks[&copy.at].kinds.len()))
                }
            }
        }
    }
}

/// First the words that stand on the paper.
fn ask(copy: &Copy<'_>) -> Markup {
    let t = copy.t;
    html! {
        form method="get" action="/copy" {
            input type="hidden" name="key" value=(copy.key.0);
            input type="hidden" name="at" value=(letters(&copy.at));
            label for="words" { (t.say("copy-words")) }
            input #words name="words" maxlength="300" required autofocus;
            button.main { (t.say("copy-next")) }
        }
    }
}

/// Then who says yes; the table fills in what it knows.
fn who(copy: &Copy<'_>, words: &str, reading: Option<&(AskOf, String)>) -> Markup {
    let t = copy.t;
    let heap = &copy.layer.forks[&copy.at];
    html! {
        form method="post" action=(TAKE.path) {
            @let back = format!("/copy?key={}", copy.key.0);
            (hidden(&[("key", &copy.key.0), ("at", &letters(&copy.at)), ("words", &words), ("back", &back)]))
            h2 dir="auto" { (words) }
            p { (t.say("copy-who")) }
            @if reading.is_some() { p.quiet { (t.say("copy-filled-in")) } }
            div.who {
                @for kind in &heap.kinds { (one(copy, *kind, reading.map(|(ask, _)| ask))) }
            }
            @if let Some((ask, words)) = reading {
                p.choice {
                    (place::fields(ask))
                    input #means type="checkbox" name="means" value="yes";
                    label for="means" dir="auto" { (t.with("copy-means", &[("words", words)])) }
                }
            }
            button.main { (t.say("copy-take")) }
        }
    }
}

fn one(copy: &Copy<'_>, kind: KindId, reading: Option<&AskOf>) -> Markup {
    let t = copy.t;
    let known = reading.and_then(|of| table_side(copy.laid, of, kind));
    let name = copy.desk.history.now.name_in(copy.key, kind);
    let choices = [
        (Some(Side::Yes), "yes", "answer-yes"),
        (Some(Side::No), "no", "answer-no"),
        (Some(Side::Both), "both", "copy-both"),
        (None, "nowhere", "copy-nowhere"),
    ];
    html! {
        fieldset.kind {
            legend dir="auto" { (name) }
            @if let Some(found) = copy.desk.history.now.kinds.get(&kind) { (face(kind, found, Some(copy.laid))) }
            @for (side, value, word) in choices {
                @let id = format!("{value}-{}", kind.0);
                span.choice {
                    input type="radio" required id=(id) name={"kind-" (kind.0)} value=(value)
                        checked[known.is_some() && known == side];
                    label for=(id) { (t.say(word)) }
                }
            }
        }
    }
}

fn margin(copy: &Copy<'_>) -> Markup {
    let t = copy.t;
    let open = copy.layer.together();
    let name = |kind: &KindId| copy.desk.history.now.name_in(copy.key, *kind);
    html! {
        h2 { (t.say("copy-still-open")) }
        ul {
            @for (at, kinds) in open {
                li {
                    a href={"/copy?key=" (copy.key.0) "&at=" (letters(&at))} dir="auto" {
                        (kinds.iter().map(name).collect::<Vec<_>>().join(", "))
                    }
                }
            }
        }
        p { a.button href={"/copy?key=" (copy.key.0) "&at=end"} { (t.say("copy-no-more")) } }
    }
}

/// A question is taken over, with who says what: where nothing is asked yet, or still what the
/// page showed. The table is asked only for what it has.
static TAKE: Form<Taken> = Form {
    path: "/do/copy",
    read: |at| {
        let (place, words) = (Place::read(at)?, deeds::words(at.asked)?);
        let means = at.asked.request.field("means") == "yes";
        let ask = if means { deeds::meant(at)? } else { None };
        let sides = at.asked.request.form.iter().filter_map(|(field, value)| {
            let kind = field.strip_prefix("kind-")?.parse().ok()?;
            Some((KindId(kind), deeds::side(value)))
        });
        Ok(Taken { place, words, ask, sides: sides.collect() })
    },
    rests_on: |of| of.place.asks(),
    act: |Taken { place: Place { key, at: fork }, words, ask, sides }, at| {
        let confirmed = ask.is_some();
        let mut edits = vec![KeyEdit::Ask { at: fork.clone(), words: words.clone(), ask }];
        let sorted = sides.iter().filter(|(_, side)| side.is_some());
        edits.extend(sorted.map(|(kind, side)| KeyEdit::Sort {
            at: fork.clone(),
            kind: *kind,
            side: *side,
        }));
        // Where the table says the very same of every card, the question is the table's.
        if let Some(laid) = at.desk.laid().filter(|_| !confirmed) {
            let same = |of: &AskOf| {
                sides.iter().all(|(kind, side)| table_side(&laid, of, *kind) == *side)
            };
            let meaning = readings(at.asked.tongue, &laid, &words)
                .into_iter()
                .map(|(of, _)| of)
                .find(same);
            if meaning.is_some() {
                edits.push(KeyEdit::Ask { at: fork, words, ask: meaning });
            }
        }
        let edits = edits.into_iter().map(|edit| Edit::Key(key, edit));
        Ok(Deed::edits(edits, format!("/copy?key={}", key.0)))
    },
};

/// A question as it stands on paper.
struct Taken {
    place: Place,
    words: String,
    /// What it means in the table, where a person confirmed that.
    ask: Option<AskOf>,
    sides: Vec<(KindId, Option<Side>)>,
}
