//! Named states: naming one, looking at it, going back to it.

use maud::{Markup, html};
use spinney_collection::{Collection, edit_script};
use spinney_model::{AboutField, Done, Edit, KeyId};
use spinney_voice::{Tongue, when as time};

use super::between;
use crate::asked::{Asked, Deed, Shown};
use crate::desk::Desk;
use crate::forms::{At, Fact, Form, hidden, nothing};
use crate::pages::frame::{self, Parts, Screen};
use crate::reply::Refused;
use crate::worked::Worked;

/// The longest name of a version, in letters.
const LONGEST_NAME: usize = 200;
/// The most states that have a name at a time: more is no list to choose from.
pub(super) const MOST_VERSIONS: usize = 200;

/// The named states, the latest on top, and a form to name this one.
pub(super) fn list(desk: &Desk, asked: &Asked<'_>) -> Markup {
    let t = asked.tongue;
    let versions = || desk.history.versions();
    html! {
        h2 { (t.say("done-versions")) }
        @if versions().next().is_none() { p.quiet { (t.say("done-no-versions")) } }
        ul.versions {
            @for (n, version) in versions().rev() {
                li {
                    p.what dir="auto" { strong { (version.name) } }
                    p.quiet { (when(t, version.at, asked.request.at)) }
                    p {
                        a id={"version-" (n)} href={"/done/version/" (n)} { (t.say("done-look-at")) }
                        " · "
                        a id={"since-" (n)} href={"/done/between?from=" (n)} { (t.say("done-since-then")) }
                    }
                }
            }
        }
        @if versions().count() >= MOST_VERSIONS {
            p.quiet { (t.count("done-many-versions", MOST_VERSIONS)) }
        } @else {
            form method="post" action=(NAME.path) {
                (hidden(&[("back", &"/done")]))
                label for="version" { (t.say("done-name-version")) }
                input #version name="name" maxlength=(LONGEST_NAME) required dir="auto" autocomplete="off";
                button #name-version { (t.say("done-keep-version")) }
            }
        }
    }
}

/// When something was done.
pub(super) fn when(t: Tongue, at: i64, now: i64) -> Markup {
    html! {
        time datetime=(time::iso(at)) title=(time::readable(at)) { (time::ago(t, at, now)) }
    }
}

/// A named state as it was: its kinds, its things to look at, its keys.
pub(super) fn show(desk: &Desk, asked: &Asked<'_>) -> Shown {
    let t = asked.tongue;
    let Some(n) = asked.parts[0].parse().ok() else { return Shown::Nothing };
    let Some(state) = desk.history.version(n) else { return Shown::Nothing };
    let version = desk.history.named(n).expect("its state was found");
    let same = edit_script(&desk.history.now, &state).is_empty();
    let work = html! {
        h1 dir="auto" { (version.name) }
        p.quiet { (when(t, version.at, asked.request.at)) }
        @if same {
            p { (t.say("done-same-as-now")) }
        } @else {
            form method="post" action=(GO_BACK.path) {
                (hidden(&[("version", &n)]))
                button.main #back-to { (t.say("done-go-back")) }
            }
            p.quiet { (t.say("done-go-back-help")) }
        }
        p { a href={"/done/between?from=" (n)} { (t.say("done-since-then")) } }
        (contents(t, &state))
        form method="post" action=(UNNAME.path) {
            (hidden(&[("version", &n)]))
            p.quiet #unname-why { (t.say("done-unname-why")) }
            button.quiet #unname aria-describedby="unname-why" { (t.say("done-unname")) }
        }
    };
    let parts = Parts::new(Screen::Done, version.name.clone(), work);
    frame::shown(desk, asked, &parts)
}

fn contents(t: Tongue, state: &Collection) -> Markup {
    let title = state.about_field(AboutField::Title);
    html! {
        @if !title.is_empty() { p dir="auto" { (title) } }
        h2 { (t.count("done-kinds", state.kinds.len())) }
        ul.plain { @for id in state.kinds.keys() { li dir="auto" { (state.name(*id)) } } }
        h2 { (t.count("done-characters", state.characters.len())) }
        ul.plain {
            @for id in state.characters.keys() { li dir="auto" { (state.character_name(*id)) } }
        }
        @for id in state.keys.keys() { (key(t, state, *id)) }
    }
}

/// A key of a named state: its questions, in order.
fn key(t: Tongue, state: &Collection, id: KeyId) -> Markup {
    let made = Worked::default().spoken(state, t, id);
    html! {
        h2 dir="auto" { (t.with("done-key", &[("name", &between::key_name(t, state, id))])) }
        @if let Some(made) = made {
            ol { @for couplet in &made.key.couplets { li dir="auto" { (couplet.wording.first()) } } }
        }
    }
}

/// The state that holds now gets a name.
pub(super) static NAME: Form<String> = Form {
    path: "/do/version",
    read: |at| {
        if at.desk.history.versions().count() >= MOST_VERSIONS {
            return Err(Refused::count(at.asked.tongue, "done-many-versions", MOST_VERSIONS));
        }
        let name = at.asked.request.field("name").chars().take(LONGEST_NAME);
        Ok(name.map(|sign| if sign.is_control() { ' ' } else { sign }).collect())
    },
    rests_on: nothing,
    act: |name: String, at| {
        let done = (!name.trim().is_empty()).then_some(Done::Version(name));
        Ok(Deed::of(done, at.asked.back("/done")))
    },
};

/// The number of a state that has a name.
fn number(at: &At<'_>) -> Result<usize, Refused> {
    let number = at.asked.request.field("version").parse().ok();
    let named = number.filter(|n| at.desk.history.named(*n).is_some());
    named.ok_or_else(|| at.asked.refused("done-no-such-version"))
}

/// Gives up the name of a state. What was done stays in the list.
pub(super) static UNNAME: Form<usize> = Form {
    path: "/do/unname",
    read: number,
    rests_on: nothing,
    act: |number, _| Ok(Deed::of(Some(Done::Unname(number as u64)), "/done")),
};

/// The collection becomes what it was, by edits that can be undone like any others.
pub(super) static GO_BACK: Form<usize> = Form {
    path: "/do/back-to-version",
    read: number,
    rests_on: |_| vec![Fact::all(|at| at.asked.refused("done-moved-on"))],
    act: |number, at| {
        let history = &at.desk.history;
        let version = history.named(number).zip(history.version(number));
        let (version, state) = version.expect("its number was looked at");
        let mut edits = edit_script(at.collection(), &state);
        if !edits.is_empty() {
            edits.insert(0, Edit::BackTo(version.name.clone()));
        }
        Ok(Deed::edits(edits, "/done"))
    },
};
