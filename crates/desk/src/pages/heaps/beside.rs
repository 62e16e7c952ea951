//! The margin of the heaps: who is not placed yet, who still lies together, how to finish; and
//! the answers that are still needed, one by one.

use maud::{Markup, html};
use spinney_collection::keys::{Made, letters};
use spinney_collection::layer::Layer;
use spinney_exchange::table;
use spinney_model::{Fork, KindId, Scale};

use super::deeds::{ANSWER, FINISH, finish_fields};
use super::place::Top;
use crate::asked::{Asked, Shown};
use crate::desk::Desk;
use crate::forms::hidden;
use crate::pages::frame::{self, Parts, Screen};
use crate::pages::key::keyed::Together;

/// So many blank cells are asked for at most.
const MOST_ANSWERS: usize = 20;

/// The margin. `made`: the key as it was finished, where somebody wished for that.
pub(super) fn margin(top: &Top<'_>, made: Option<&Made>) -> Markup {
    let t = top.t;
    let (stranded, together) = (top.layer.stranded(), top.layer.together());
    let name = |kind: &KindId| top.desk.history.now.name_in(top.key, *kind);
    let answers = top.layer.answers_needed(top.laid, MOST_ANSWERS).len();
    html! {
        h2 { (t.say("beside-not-placed")) }
        @if top.drawn.questions.is_empty() { p.quiet { (t.say("beside-nothing-sorted")) } }
        @else if stranded.is_empty() { p.quiet { (t.say("beside-all-placed")) } }
        ul.waiting {
            @for (at, kind) in &stranded {
                li { a href=(top.address(at)) dir="auto" { (name(kind)) } }
            }
        }
        h2 { (t.say("beside-together")) }
        @if let Some(made) = made {
            @let together = Together { t, collection: &top.desk.history.now, key: top.key, made };
            @if together.none() { p.quiet { (t.say("beside-finished")) } }
            (together.slip())
        } @else {
            @if together.is_empty() && stranded.is_empty() { p.quiet { (t.say("beside-none-together")) } }
            @else if together.is_empty() { p.quiet { (t.say("beside-first-place")) } }
            ul {
                @for (at, kinds) in &together {
                    li {
                        a href=(top.address(at)) dir="auto" {
                            (kinds.iter().map(name).collect::<Vec<_>>().join(", "))
                        }
                    }
                }
            }
        }
        h2 { (t.say("beside-finish")) }
        form method="post" action=(FINISH.path) {
            (finish_fields(top.key, top.drawn, &format!("/key?key={}", top.key.0)))
            button.main #finish {
                (t.say(if top.drawn.finished() { "beside-unfinish" } else { "beside-finish-button" }))
            }
        }
        @if answers > 0 {
            p { a href={"/heaps/answers?key=" (top.key.0)} { (t.count("beside-answers", answers)) } }
        }
    }
}

/// The answers that are still needed, one question a page.
pub(super) fn answers(desk: &Desk, asked: &Asked<'_>) -> Shown {
    let t = asked.tongue;
    let Some(key) = frame::key_asked(desk, asked) else { return Shown::Nothing };
    let Some(laid) = desk.laid() else { return Shown::Nothing };
    let drawn = &desk.history.now.keys[&key];
    let Some(layer) = Layer::of(&desk.history.now, &laid, drawn) else { return Shown::Nothing };
    let looks = layer.answers_needed(&laid, MOST_ANSWERS);
    let passed: usize = asked.request.asked("passed").parse().unwrap_or(0);
    let heaps = format!("/heaps?key={}&at={}", key.0, letters(&Fork::default()));
    let work = html! {
        h1 { (t.count("answers-title", looks.len())) }
        @match looks.get(passed.min(looks.len().saturating_sub(1))) {
            None => {
                p.empty { (t.say("answers-none")) }
                p { a.main href=(heaps) { (t.say("answers-back")) } }
            }
            Some(look) => {
                @let kind = layer.kinds[look.taxon.0];
                @let character = layer.matrix.character(look.character);
                @let others: Vec<String> = look.parts.iter().chain(&look.with_others)
                    .map(|taxon| desk.history.now.name_in(key, layer.kinds[taxon.0])).collect();
                h2 dir="auto" {
                    (t.with("answers-look", &[("kind", &desk.history.now.name_in(key, kind)), ("character", &character.name)]))
                }
                p.quiet dir="auto" { (t.with("answers-why", &[("kinds", &others.join(", "))])) }
                form method="post" action=(ANSWER.path) {
                    @let at = laid.characters[look.character.0].map_or(0, |at| at.0);
                    @let back = format!("/heaps/answers?key={}&passed={passed}", key.0);
                    (hidden(&[("key", &key.0), ("kind", &kind.0), ("character", &at), ("back", &back)]))
                    @if let Scale::Words { states } = &character.scale {
                        @for (at, state) in states.iter().enumerate() {
                            button name="text" value=(table::as_typed(state)) id={"state-" (at)} { span dir="auto" { (state) } } " "
                        }
                        button name="text" value="n/a" #state-none { (t.say("answers-has-none")) }
                    } @else {
                        label for="text" { (t.say("answers-number")) }
                        input #text name="text" maxlength="120" required;
                        button.main { (t.say("answers-write")) }
                    }
                }
                p {
                    a href={"/heaps/answers?key=" (key.0) "&passed=" (passed + 1)} { (t.say("answers-later")) }
                    " · " a href=(heaps) { (t.say("answers-back")) }
                }
            }
        }
    };
    frame::shown(desk, asked, &Parts::new(Screen::Heaps, t.say("nav-heaps"), work))
}
