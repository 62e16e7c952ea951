//! What the script of the page says, handed to it by the page.
//!
//! From a language to a part of the page that nobody sees: one line for each sentence, under
//! the name by which the script asks for it. Where the script fills something in, the line has
//! the name of the gap between braces. So the script, and its SHA-256 in the lock, is the same
//! in all languages.

use maud::{Markup, html};
use spinney_voice::Tongue;

/// The sentences of the script.
pub(super) fn words(t: Tongue) -> Markup {
    let suppose =
        t.with("phone-suppose", &[("question", &"{question}"), ("answer", &"{answer}")]);
    let counted = |message| t.with(message, &[("count", &"{count}")]);
    let lines = [
        ("cannot-tell", t.say("phone-cannot-tell")),
        ("suppose", suppose),
        ("back-here", t.say("phone-back-here")),
        ("fork", t.say("phone-fork")),
        ("fork-suppose", t.say("phone-fork-suppose")),
        ("one-of", counted("phone-one-of")),
        ("2", t.say("phone-two")),
        ("3", t.say("phone-three")),
        ("4", t.say("phone-four")),
        ("which-sentence", t.say("phone-which-sentence")),
        ("which-one", t.say("phone-which-one")),
        ("no-sentence-fits", t.say("phone-no-sentence-fits")),
        ("none-fits", t.say("phone-none-fits")),
        ("it-fits", t.with("phone-it-fits", &[("name", &"{name}")])),
        ("circle", t.say("phone-circle")),
        ("circle-why", t.say("phone-circle-why")),
        ("only-one", t.say("phone-only-one")),
        ("one-of-many", counted("phone-one-of-many")),
        ("at-end", t.say("phone-at-end")),
        ("both-done", t.say("phone-both-done")),
        ("read-aloud", t.say("phone-read-aloud")),
        ("stop-reading", t.say("phone-stop-reading")),
    ];
    html! {
        div #said hidden {
            @for (name, line) in lines { span data-said=(name) { (line) } }
        }
    }
}
