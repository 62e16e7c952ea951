//! Which collections there are in the browser's storage, and how to begin another one.
//!
//! From what the worker has counted to a page. It opens none of them.

use maud::{Markup, html};
use spinney_desk::{Desk, Page, Request};
use spinney_voice::Tongue;

use crate::message::Message;

/// A collection as the list shows it.
struct Listed {
    id: String,
    title: String,
    kinds: usize,
    /// The day on which it was open last, as a person reads it.
    opened: String,
}

/// The list, the ways to begin, and a way to remove one.
pub(crate) fn page(request: &Request, message: &Message) -> Page {
    let t = Tongue::for_person(&request.languages);
    let listed = listed(message);
    let work = html! {
        h1 { (t.say("pocket-title")) }
        (notice(t, message))
        @if message.text("kept") == "memory" {
            div.finding.look { p { (t.say(memory_why(message.text("why")))) } }
        } @else {
            p { (t.say("pocket-kept-here")) }
        }
        @if listed.is_empty() { p.empty { (t.say("pocket-none-yet")) } } @else { (going_on(t, &listed)) }
        (beginning(t))
        @if !listed.is_empty() { (removing(t, &listed)) }
        p.quiet { "Spinney " (env!("CARGO_PKG_VERSION")) }
    };
    Desk::page_of_host(request, &t.say("pocket-title"), work)
}

/// Why nothing is kept in this browser.
fn memory_why(why: &str) -> &'static str {
    match why {
        "held" => "pocket-memory-held",
        "newer" => "pocket-memory-newer",
        _ => "pocket-memory-only",
    }
}

fn listed(message: &Message) -> Vec<Listed> {
    let ids = message.texts("id");
    let all =
        ids.zip(message.texts("title")).zip(message.texts("kinds")).zip(message.texts("day"));
    all.map(|(((id, title), kinds), day)| Listed {
        id: id.to_owned(),
        title: title.to_owned(),
        kinds: kinds.parse().unwrap_or(0),
        opened: day.to_owned(),
    })
    .collect()
}

/// What was done last, or could not be.
fn notice(t: Tongue, message: &Message) -> Markup {
    let title = message.text("of");
    let slip = |sentence: String, remedy: &str| {
        html! {
            div.finding.mend role="alert" {
                p dir="auto" { (sentence) }
                p.remedy { (t.say(remedy)) }
            }
        }
    };
    match message.text("notice") {
        "removed" => html! {
            p role="status" dir="auto" { (t.with("pocket-removed", &[("title", &named(t, title))])) }
        },
        "unsure" => slip(t.say("pocket-unsure"), "pocket-unsure-remedy"),
        "gone" => slip(t.say("pocket-gone"), "pocket-gone-remedy"),
        "unreadable" => slip(
            t.with("pocket-unreadable", &[("title", &named(t, title))]),
            "pocket-unreadable-remedy",
        ),
        _ => html! {},
    }
}

fn named(t: Tongue, title: &str) -> String {
    if title.is_empty() { t.say("untitled") } else { title.to_owned() }
}

fn going_on(t: Tongue, listed: &[Listed]) -> Markup {
    html! {
        h2 { (t.say("pocket-list")) }
        ul.collections {
            @for one in listed {
                li {
                    form method="post" action="/do/go-on" {
                        input type="hidden" name="collection" value=(one.id);
                        button.main id={"open-" (one.id)} dir="auto" { (named(t, &one.title)) }
                    }
                    p.quiet {
                        @if one.kinds == 0 { (t.say("pocket-empty")) }
                        @else { (t.count("pocket-kinds", one.kinds)) }
                        " · " (t.with("pocket-opened", &[("day", &t.day(&one.opened))]))
                    }
                }
            }
        }
    }
}

fn beginning(t: Tongue) -> Markup {
    let way = |what: &str, id: &str| {
        html! {
            li {
                form method="post" action="/do/begin" {
                    input type="hidden" name="what" value=(what);
                    button id=(id) { (t.say(&format!("pocket-begin-{what}"))) }
                }
                p.quiet { (t.say(&format!("pocket-begin-{what}-about"))) }
            }
        }
    };
    html! {
        h2 { (t.say("pocket-begin")) }
        ul.collections {
            (way("empty", "begin-empty"))
            (way("walk", "begin-walk"))
            li {
                form method="post" action="/do/begin" enctype="multipart/form-data" {
                    input type="hidden" name="what" value="copy";
                    label for="copy-file" { (t.say("pocket-file")) }
                    input #copy-file type="file" name="copy" accept=".zip,application/zip" required;
                    button #begin-copy { (t.say("pocket-begin-copy")) }
                }
                p.quiet { (t.say("pocket-begin-copy-about")) }
            }
        }
    }
}

fn removing(t: Tongue, listed: &[Listed]) -> Markup {
    html! {
        details {
            summary { (t.say("pocket-remove")) }
            form #remove-collection method="post" action="/do/remove-collection" {
                label for="remove-which" { (t.say("pocket-remove-which")) }
                select #remove-which name="collection" required {
                    option value="" selected disabled { (t.say("pocket-remove-which")) }
                    @for one in listed {
                        option value=(one.id) {
                            (named(t, &one.title)) " · " (t.count("pocket-kinds", one.kinds)) " · "
                            (t.day(&one.opened))
                        }
                    }
                }
                p.being-sure {
                    input #sure type="checkbox" name="sure" value="yes" required;
                    label for="sure" { (t.say("pocket-remove-sure")) }
                }
                button #remove { (t.say("pocket-remove-do")) }
            }
        }
    }
}
