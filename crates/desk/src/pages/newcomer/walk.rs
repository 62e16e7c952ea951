//! Walking a key with something unknown in the hand: yes, no, or "can't tell".
//!
//! From a key and the answers so far to the next question, or to everywhere it comes out. With
//! "can't tell" both ways are gone, the yes first. The answers hold only for the questions that
//! they were given to: where another window has changed one of them, the walk begins anew.

use maud::{Markup, html};
use spinney_collection::keys::{self, Made};
use spinney_model::{Destination, End, Key, KeyId};
use spinney_voice::Tongue;

use super::fields::Fields;
use crate::asked::{Asked, Shown};
use crate::desk::Desk;
use crate::forms::Fact;
use crate::pages::frame::{self, Parts, Screen};
use crate::pages::heaps::card::answer_tab;

/// A walk under way.
pub(super) struct Walking<'k> {
    /// Questions by number, with the answers; None: can't tell.
    pub(super) asked: Vec<Answered>,
    /// What is asked next; None: it came out.
    pub(super) next: Option<u32>,
    /// Where it came out.
    pub(super) ends: Vec<&'k End>,
}

/// Follows a key by answers: `y`, `n`, and `u` for can't tell. What is no answer ends them.
pub(super) fn follow<'k>(key: &'k Key, answers: &str) -> Walking<'k> {
    let mut walking = Walking { asked: Vec::new(), next: None, ends: Vec::new() };
    let mut answers = answers.chars();
    let mut open = Vec::new();
    let mut next = key.couplets.first();
    loop {
        if let Some(couplet) = next.take() {
            let answer = match answers.next() {
                Some('y') => Some(true),
                Some('n') => Some(false),
                Some('u') => None,
                _ => {
                    walking.next = Some(couplet.number);
                    return walking;
                }
            };
            walking.asked.push((couplet.number, answer));
            if answer != Some(true) {
                open.push(&couplet.no);
            }
            if answer != Some(false) {
                open.push(&couplet.yes);
            }
        }
        match open.pop() {
            None => return walking,
            Some(Destination::End(end)) => walking.ends.push(end),
            Some(Destination::Missing) => {}
            Some(Destination::Couplet(number)) => {
                let seen = walking.asked.iter().any(|(asked, _)| asked == number);
                next = key.couplets.iter().find(|c| c.number == *number && !seen);
            }
        }
    }
}

/// What carries the questions that were answered.
const WALKED: &str = "walked";

/// A question by its number, with its answer; None: can't tell.
type Answered = (u32, Option<bool>);

/// The token of the questions that were answered, in their order.
fn token(made: &Made, way: &[Answered]) -> String {
    keys::token(way.iter().map(|(number, _)| made.compared(*number)))
}

/// The hidden fields of a walk that came out.
pub(super) fn fields(made: &Made, walking: &Walking<'_>) -> Markup {
    html! {
        input type="hidden" name="walk" value=(letters(&walking.asked));
        input type="hidden" name=(WALKED) value=(token(made, &walking.asked));
    }
}

/// What the key asks on the way that was answered. A key that a long search found is in no
/// journal, so it travels with the answers.
pub(super) fn fact<'f>(id: KeyId, fields: &'f Fields<'_>) -> Fact<'f> {
    let walk = fields.get("walk");
    let shows = Fact::new(
        move |state| {
            let made = state.made(id);
            made.map_or(String::new(), |made| token(&made, &follow(&made.key, walk).asked))
        },
        |at| at.asked.refused("newcomer-walk-moved"),
    );
    shows.carried(fields.has(WALKED).then(|| fields.get(WALKED)))
}

/// The address of a walk with these answers.
pub(super) fn address(asked: &Asked<'_>, id: KeyId, made: &Made, way: &[Answered]) -> String {
    let mut query = form_urlencoded::Serializer::new(String::new());
    query.append_pair("key", &id.0.to_string());
    query.append_pair("name", Fields::of(asked.request).get("name"));
    query.append_pair("walk", &letters(way));
    if !way.is_empty() {
        query.append_pair(WALKED, &token(made, way));
    }
    format!("/newcomer?{}", query.finish())
}

/// The answers of a walk as letters.
fn letters(way: &[Answered]) -> String {
    let letter = |(_, answer): &Answered| match answer {
        Some(true) => 'y',
        Some(false) => 'n',
        None => 'u',
    };
    way.iter().map(letter).collect()
}

/// The words of a question of the key.
pub(super) fn words(key: &Key, number: u32) -> &str {
    let couplet = key.couplets.iter().find(|couplet| couplet.number == number);
    couplet.map_or("", |couplet| couplet.wording.first())
}

/// One question, large, with its three answers.
pub(super) fn ask(
    desk: &Desk,
    asked: &Asked<'_>,
    id: KeyId,
    made: &Made,
    walking: &Walking<'_>,
    number: u32,
) -> Option<Shown> {
    let t = asked.tongue;
    let to = |answer: Option<bool>| {
        let way = [&walking.asked[..], &[(number, answer)]].concat();
        address(asked, id, made, &way)
    };
    let work = html! {
        (trail(t, &made.key, walking))
        div.asking {
            p.quiet { (t.count("newcomer-question", number as usize)) }
            h1 dir="auto" { (words(&made.key, number)) }
            p.three-answers {
                a.button.yes #walk-yes href=(to(Some(true))) { (t.say("answer-yes")) }
                a.button.unsure #walk-unsure href=(to(None)) { (t.say("newcomer-cannot-tell")) }
                a.button.no #walk-no href=(to(Some(false))) { (t.say("answer-no")) }
            }
            @if let Some((_, back)) = walking.asked.split_last() {
                p { a #walk-back href=(address(asked, id, made, back)) { (t.say("newcomer-back")) } }
            }
        }
    };
    Some(frame::shown(desk, asked, &Parts::new(Screen::Finds, t.say("newcomer-title"), work)))
}

/// The questions so far, each with its answer.
pub(super) fn trail(t: Tongue, key: &Key, walking: &Walking<'_>) -> Markup {
    html! {
        @if !walking.asked.is_empty() {
            nav.trail aria-label=(t.say("newcomer-trail")) {
                ol {
                    @for (number, answer) in &walking.asked {
                        li {
                            span dir="auto" { (words(key, *number)) } " "
                            @match answer {
                                Some(yes) => (answer_tab(t, *yes)),
                                None => span.tab.unsure { (t.say("newcomer-cannot-tell")) },
                            }
                        }
                    }
                }
            }
        }
    }
}

/// A leaf, a key of three questions, and a way between them that is not there yet.
pub(super) fn leaf_and_question() -> Markup {
    html! {
        svg.laying viewBox="0 0 300 170" aria-hidden="true" focusable="false" {
            path d="M60 148 C24 124 20 84 60 44 C100 84 96 124 60 148 M60 160 L60 56" {}
            path.fine d="M60 132 L40 116 M60 132 L80 116 M60 110 L36 92 M60 110 L84 92 M60 88 L44 74 M60 88 L76 74" {}
            path d="M210 22 L210 40 M210 40 L166 66 M166 66 L146 94 M166 66 L186 94" {}
            path stroke-dasharray="7 7" d="M210 40 L254 66 M254 66 L234 94 M254 66 L274 94" {}
            path d="M136 94 h20 v22 h-20 z M176 94 h20 v22 h-20 z M224 94 h20 v22 h-20 z" {}
            path.fine stroke-dasharray="3 6" d="M264 94 h20 v22 h-20 z M104 128 C160 168 240 162 272 122" {}
        }
    }
}
