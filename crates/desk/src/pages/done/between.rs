//! What changed in a key between two named states, or since one, in words.

use maud::{Markup, html};
use spinney_model::KeyId;

use crate::asked::Asked;
use crate::asked::Shown;
use crate::desk::Desk;
use crate::pages::frame::{self, Parts, Screen};
use crate::worked::{State, Worked};
use spinney_collection::Collection;
use spinney_collection::compare::{Changes, Side, changes};
use spinney_collection::keys::KeyFrom;
use spinney_voice::Tongue;
use spinney_voice::amounts::one_decimal;

pub(super) fn show(desk: &Desk, asked: &Asked<'_>) -> Shown {
    let t = asked.tongue;
    let from: Option<usize> = asked.request.asked("from").parse().ok();
    let to: Option<usize> = asked.request.asked("to").parse().ok();
    let Some(from) = from.filter(|n| desk.history.named(*n).is_some()) else {
        return Shown::Nothing;
    };
    let to = to.filter(|n| desk.history.named(*n).is_some());
    let old = desk.history.version(from).expect("the number was looked at");
    let later = to.and_then(|n| desk.history.version(n));
    let keys = all_keys(t, &old, later.as_ref().unwrap_or(&desk.history.now));
    let wanted = asked.request.asked("key").parse().ok().map(KeyId);
    let chosen = wanted.filter(|id| keys.iter().any(|(known, _)| known == id));
    let chosen = chosen.or_else(|| keys.first().map(|(id, _)| *id));
    let told = chosen.map(|key| {
        let fresh = |collection| side(t, State { collection, worked: &Worked::default() }, key);
        let before = fresh(&old);
        let after = later.as_ref().map_or_else(|| side(t, desk.now(), key), fresh);
        told(t, &before, &after)
    });
    let work = html! {
        h1 { (t.say("done-between")) }
        (choices(t, desk, from, to, &keys, chosen))
        @match told {
            Some(told) => (told),
            None => p.empty { (t.say("done-no-key")) },
        }
        p { a href="/done" { (t.say("nav-done")) } }
    };
    let parts = Parts::new(Screen::Done, t.say("done-between"), work);
    frame::shown(desk, asked, &parts)
}

/// A key in a state.
fn side(t: Tongue, state: State<'_>, id: KeyId) -> Side {
    state.spoken(t, id).zip(state.laid()).map_or_else(Side::default, |(made, laid)| {
        Side::of(KeyFrom { t, collection: state.collection, laid: &laid, made: &made, id })
    })
}

/// The keys of either state, by the name they have last.
fn all_keys(t: Tongue, old: &Collection, new: &Collection) -> Vec<(KeyId, String)> {
    let mut keys: std::collections::BTreeMap<KeyId, String> =
        old.keys.keys().map(|id| (*id, key_name(t, old, *id))).collect();
    keys.extend(new.keys.keys().map(|id| (*id, key_name(t, new, *id))));
    keys.into_iter().collect()
}

/// What a key is called; one without a name goes by its number.
pub(super) fn key_name(t: Tongue, collection: &Collection, id: KeyId) -> String {
    match collection.keys.get(&id).map_or("", |key| key.name.as_str()) {
        "" => t.with("heaps-unnamed", &[("number", &id.0)]),
        name => name.to_owned(),
    }
}

fn choices(
    t: Tongue,
    desk: &Desk,
    from: usize,
    to: Option<usize>,
    keys: &[(KeyId, String)],
    chosen: Option<KeyId>,
) -> Markup {
    let versions = || desk.history.versions();
    html! {
        form.between method="get" action="/done/between" {
            div { label for="from" { (t.say("done-from")) }
            select #from name="from" {
                @for (n, version) in versions() {
                    option value=(n) selected[n == from] { (version.name) }
                }
            } }
            div { label for="to" { (t.say("done-to")) }
            select #to name="to" {
                option value="" selected[to.is_none()] { (t.say("done-now")) }
                @for (n, version) in versions() {
                    option value=(n) selected[Some(n) == to] { (version.name) }
                }
            } }
            @if keys.len() > 1 {
                div { label for="key" { (t.say("done-which-key")) }
                select #key name="key" {
                    @for (id, name) in keys {
                        option value=(id.0) selected[Some(*id) == chosen] { (name) }
                    }
                } }
            }
            button #compare { (t.say("done-compare")) }
        }
    }
}

fn told(t: Tongue, before: &Side, after: &Side) -> Markup {
    let changes = changes(before, after);
    let effort = before.mean_questions.zip(after.mean_questions);
    html! {
        @if changes.none() {
            p { (t.say("done-no-change")) }
        } @else {
            (questions(t, &changes))
            (kinds(t, &changes))
        }
        @if changes.kept > 0 { p.quiet { (t.count("done-kept", changes.kept)) } }
        @if let Some((old, new)) = effort {
            @let [old, new] = [old, new].map(|mean| t.decimal(&one_decimal(mean)));
            p { (t.with("done-effort", &[("old", &old), ("new", &new)])) }
        }
    }
}

fn questions(t: Tongue, changes: &Changes) -> Markup {
    html! {
        @if let Some((old, new)) = &changes.begins {
            p dir="auto" { (t.with("done-begins", &[("old", old), ("new", new)])) }
        }
        (texts(&t.say("done-questions-gone"), &changes.gone))
        (texts(&t.say("done-questions-new"), &changes.new))
        (texts(&t.say("done-questions-fewer"), &changes.fewer))
        (texts(&t.say("done-questions-more"), &changes.more))
        (pairs(t, &t.say("done-questions-reworded"), &changes.reworded))
    }
}

fn kinds(t: Tongue, changes: &Changes) -> Markup {
    html! {
        (texts(&t.say("done-kinds-gone"), &changes.kinds_gone))
        (texts(&t.say("done-kinds-new"), &changes.kinds_new))
        (pairs(t, &t.say("done-kinds-renamed"), &changes.kinds_renamed))
    }
}

fn texts(heading: &str, texts: &[String]) -> Markup {
    html! {
        @if !texts.is_empty() {
            h2 { (heading) }
            ul { @for text in texts { li dir="auto" { (text) } } }
        }
    }
}

fn pairs(t: Tongue, heading: &str, pairs: &[(String, String)]) -> Markup {
    html! {
        @if !pairs.is_empty() {
            h2 { (heading) }
            ul {
                @for (old, new) in pairs {
                    li dir="auto" { (t.with("done-from-to", &[("old", old), ("new", new)])) }
                }
            }
        }
    }
}
