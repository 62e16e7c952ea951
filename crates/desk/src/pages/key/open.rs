//! A question that is open to be changed, in its place.

use maud::{Markup, html};
use spinney_model::Couplet;

use super::{Keyed, alternatives, pinned, ranges};
use crate::pages::heaps::deeds::LONGEST_QUESTION;
use spinney_collection::keys::letters;
use spinney_collection::reworded;

/// Everything that can be done to a question.
pub(super) fn panel(key: &Keyed, couplet: &Couplet) -> Markup {
    let t = key.t;
    let at = key.place(couplet);
    let pinned = key.drawn().questions.contains_key(at);
    html! {
        div.panel {
            form method="post" action="/do/key-reword" {
                (key.where_fields(at))
                label for="words" { (t.say("key-words")) }
                input #words name="words" maxlength=(LONGEST_QUESTION) required dir="auto"
                    value=(couplet.wording.first());
                button #reword { (t.say("key-reword")) }
            }
            (own_words(key, couplet))
            (swap(key, couplet))
            (ranges::ranges(key, couplet))
            @if key.drawn().finished() { (keep(key, couplet, pinned)) }
            (alternatives::alternatives(key, couplet))
            p.change {
                @if pinned {
                    a.button href={"/heaps?key=" (key.id.0) "&at=" (letters(at))} { (t.say("key-see-heaps")) } " "
                }
                a.button #close href={(key.address(None)) "#q" (couplet.number)} { (t.say("key-close")) }
            }
        }
    }
}

/// Why a question keeps its words when the column's change, and the way to the column's.
fn own_words(key: &Keyed, couplet: &Couplet) -> Markup {
    let t = key.t;
    let at = key.place(couplet);
    let own = reworded::own_words(&key.collection, &key.laid, None);
    let own = own.into_iter().find(|own| own.key == key.id && own.at == *at);
    html! {
        @if let Some(own) = own {
            form #own-words method="post" action="/do/key-reword" {
                (key.where_fields(at))
                input type="hidden" name="words" value=(own.of_the_table);
                p.quiet dir="auto" { (t.with("key-own-words", &[("question", &own.of_the_table)])) }
                button #own-words-take { (t.say("key-own-words-take")) }
            }
        }
    }
}

/// The opposite question; a person looks whether the words ask for it.
fn swap(key: &Keyed, couplet: &Couplet) -> Markup {
    let t = key.t;
    let words = pinned::opposite_words(key, couplet);
    html! {
        details {
            summary #swap-open { (t.say("key-swap-title")) }
            form method="post" action="/do/key-swap" {
                (key.where_fields(key.place(couplet)))
                label for="opposite" { (t.say("key-swap-words")) }
                input #opposite name="words" maxlength=(LONGEST_QUESTION) required dir="auto" value=(words);
                button #swap { (t.say("key-swap")) }
            }
        }
    }
}

/// Keep the question whatever else changes, or let it go again.
fn keep(key: &Keyed, couplet: &Couplet, pinned: bool) -> Markup {
    let t = key.t;
    let (action, id, word, why) = match pinned {
        true => ("/do/key-let-go", "let-go", "key-let-go", "key-let-go-why"),
        false => ("/do/key-keep", "keep", "key-keep", "key-keep-why"),
    };
    html! {
        form method="post" action=(action) {
            (key.where_fields(key.place(couplet)))
            button id=(id) aria-describedby="keep-why" { (t.say(word)) }
            p.quiet #keep-why { (t.say(why)) }
        }
    }
}
