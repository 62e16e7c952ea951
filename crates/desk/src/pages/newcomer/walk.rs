//! Walking a key with something unknown in the hand: yes, no, or "can't tell"; and what was typed
//! of it, sent from page to page so that nothing of it is lost on the way.
//!
//! From a key and the answers so far to the next question. The answers hold only for the
//! questions that they were given to: where another window has changed one of them, the walk
//! begins anew.

use std::sync::Arc;

use maud::{Markup, PreEscaped, html};
use spinney_collection::keys::{Made, token};
use spinney_collection::walking::{Given, Walking, given, letter};
use spinney_model::{Couplet, Key, KeyId};
use spinney_voice::Tongue;

use crate::asked::{Asked, Shown};
use crate::desk::Desk;
use crate::forms::{Fact, hidden};
use crate::pages::frame::{self, Parts, Screen};
use crate::pages::heaps::card::answer_tab;
use crate::reply::Refused;
use crate::request::{Method, Request};

/// Follows a key by answers. What is no answer ends them.
pub(super) fn follow<'k>(key: &'k Key, answers: &str) -> Walking<'k> {
    Walking::of(key, answers.chars().map_while(given))
}

/// What carries the questions that were answered.
const WALKED: &str = "walked";

/// A question with its answer.
type Answered<'k> = (&'k Couplet, Given);

/// The token of the questions that were answered, in their order.
fn walked(made: &Made, way: &[Answered<'_>]) -> String {
    token(way.iter().map(|(couplet, _)| made.compared(couplet.number)))
}

/// The hidden fields of a walk that came out.
pub(super) fn fields(made: &Made, walking: &Walking<'_>) -> Markup {
    html! {
        input type="hidden" name="walk" value=(letters(&walking.steps));
        input type="hidden" name=(WALKED) value=(walked(made, &walking.steps));
    }
}

/// What the key asks on the way that was answered. A key that a long search found is in no
/// journal, so it travels with the answers.
pub(super) fn fact<'f>(id: KeyId, fields: &'f Fields<'_>) -> Fact<'f> {
    let walk = fields.get("walk");
    let shows = Fact::new(
        move |state| {
            let made = state.made(id);
            made.map_or(String::new(), |made| walked(&made, &follow(&made.key, walk).steps))
        },
        |at| at.asked.refused("newcomer-walk-moved"),
    );
    shows.carried(fields.has(WALKED).then(|| fields.get(WALKED)))
}

/// The address of a walk with these answers.
pub(super) fn address(
    asked: &Asked<'_>,
    (id, made): (KeyId, &Made),
    way: &[Answered<'_>],
) -> String {
    let mut query = form_urlencoded::Serializer::new(String::new());
    query.append_pair("key", &id.0.to_string());
    query.append_pair("name", Fields::of(asked.request).get("name"));
    query.append_pair("walk", &letters(way));
    if !way.is_empty() {
        query.append_pair(WALKED, &walked(made, way));
    }
    format!("/newcomer?{}", query.finish())
}

/// The answers of a walk as letters.
fn letters(way: &[Answered<'_>]) -> String {
    way.iter().map(|(_, given)| letter(*given)).collect()
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
    key: (KeyId, &Made),
    walking: &Walking<'_>,
    couplet: &Couplet,
) -> Shown {
    let t = asked.tongue;
    let to =
        |given: Given| address(asked, key, &[&walking.steps[..], &[(couplet, given)]].concat());
    let work = html! {
        (trail(t, walking))
        div.asking {
            p.quiet { (t.count("newcomer-question", couplet.number as usize)) }
            h1 dir="auto" { (couplet.wording.first()) }
            p.three-answers {
                a.button.yes #walk-yes href=(to(Some(true))) { (t.say("answer-yes")) }
                a.button.unsure #walk-unsure href=(to(None)) { (t.say("newcomer-cannot-tell")) }
                a.button.no #walk-no href=(to(Some(false))) { (t.say("answer-no")) }
            }
            @if let Some((_, back)) = walking.steps.split_last() {
                p { a #walk-back href=(address(asked, key, back)) { (t.say("newcomer-back")) } }
            }
        }
    };
    frame::shown(desk, asked, &Parts::new(Screen::Finds, t.say("newcomer-title"), work))
}

/// The questions so far, each with its answer.
pub(super) fn trail(t: Tongue, walking: &Walking<'_>) -> Markup {
    html! {
        @if !walking.steps.is_empty() {
            nav.trail aria-label=(t.say("newcomer-trail")) {
                ol {
                    @for (couplet, given) in &walking.steps {
                        li {
                            span dir="auto" { (couplet.wording.first()) } " "
                            @match given {
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
pub(super) const LEAF_AND_QUESTION: PreEscaped<&str> =
    PreEscaped(include_str!("../../../assets/drawn/newcomer.svg"));

/// The fields of an address or of a form.
pub(super) struct Fields<'f>(&'f [(String, String)]);

impl<'f> Fields<'f> {
    /// The fields of a form; where something is only shown, those of the address.
    pub(super) fn of(request: &'f Request) -> Self {
        match request.method {
            Method::Get => Self(&request.query),
            Method::Post => Self(&request.form),
        }
    }

    pub(super) fn has(&self, name: &str) -> bool {
        self.0.iter().any(|(field, _)| field == name)
    }

    pub(super) fn get(&self, name: &str) -> &str {
        let found = self.0.iter().find(|(field, _)| field == name);
        found.map_or("", |(_, text)| text.trim())
    }

    /// All of them, to be sent again from a page that shows what is so now, but for some that are
    /// asked anew.
    pub(super) fn again(&self, but: impl Fn(&str) -> bool) -> Markup {
        let kept = self.0.iter().filter(|(name, _)| name != "head" && !but(name));
        html! {
            @for (name, text) in kept { input type="hidden" name=(name) value=(text); }
            (hidden(&[]))
        }
    }

    /// A text on one line; refused where it is longer than it may be.
    pub(super) fn text(
        &self,
        asked: &Asked<'_>,
        name: &str,
        longest: usize,
    ) -> Result<String, Refused> {
        let text = self.get(name).split_whitespace().collect::<Vec<_>>().join(" ");
        if text.chars().count() > longest {
            Err(asked.too_long(&text, longest))
        } else {
            Ok(text)
        }
    }
}

/// The key that is asked for, worked out; None: there is none, or nobody is in it.
pub(super) fn key(desk: &Desk, asked: &Asked<'_>, wanted: &str) -> Option<(KeyId, Arc<Made>)> {
    let collection = &desk.history.now;
    let wanted = wanted.parse().ok().map(KeyId);
    let key = wanted.filter(|id| collection.keys.contains_key(id));
    let key = key.or_else(|| frame::key_asked(desk, asked))?;
    Some((key, desk.made(asked.tongue, key)?))
}
