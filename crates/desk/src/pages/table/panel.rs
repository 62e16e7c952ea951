//! A character's sheet beside the table: how it is asked, where it is seen, its states.

use maud::{Markup, html};
use spinney_collection::keys::letters;
use spinney_collection::laid::Laid;
use spinney_collection::{Collection, reworded};
use spinney_exchange::table::{self, Input, Units};
use spinney_model::{CharacterField as Field, CharacterId, CharacterIx, Scale, StateIx};
use spinney_voice::{Tongue, wording};

use super::fields::{DESCRIBE, FIELDS, LONGEST_NAME, LONGEST_TEXT, named, wanted};
use super::margin;
use super::rename::{RENAME_STATE, TAKE_OUT};
use super::view::{View, unit};
use crate::forms::hidden;
use crate::pages::frame;

/// So many fields are seen at once; the others are folded.
const SEEN_FIRST: usize = 10;

pub(super) fn panel(
    t: Tongue,
    collection: &Collection,
    view: &View,
    id: CharacterId,
) -> Markup {
    let name = collection.character_name(id);
    let place = view.laid.as_ref().and_then(|laid| Some((laid.as_ref(), laid.character(id)?)));
    let back = view.address();
    let asked = |field: &Field| wanted(collection, id, *field);
    html! {
        section #panel tabindex="-1" aria-labelledby="panel-name" {
            h2 #panel-name dir="auto" { (name) }
            @if let Some((laid, at)) = place {
                (asks(t, laid, at))
                (kept_in(t, laid, at, &unit(collection, view, id)))
            }
            @for finding in margin::of_character(view, name) { (frame::finding_slip(t, finding)) }
            form method="post" action=(at_id(DESCRIBE.path, id)) {
                (hidden(&[("back", &back)]))
                @for (field, mark, label, help) in FIELDS[..SEEN_FIRST].iter().filter(|of| asked(&of.0)) {
                    (one(t, mark, table::input(*field), collection.character_field(id, *field), label, help))
                }
                details {
                    summary #more-fields { (t.say("table-more-fields")) }
                    @for (field, mark, label, help) in &FIELDS[SEEN_FIRST..] {
                        (one(t, mark, table::input(*field), collection.character_field(id, *field), label, help))
                    }
                }
                button.main #keep-character { (t.say("table-keep-character")) }
            }
            @if let Some((laid, at)) = place {
                (states(t, laid, at, id, &back))
                (own_words(t, collection, laid, id))
            }
            form method="post" action=(at_id(TAKE_OUT.path, id)) {
                (hidden(&[("back", &view.with_choices("/table"))]))
                button.quiet #take-out-character { (t.say("table-take-out")) }
            }
            p { a href=(view.with_choices("/table")) { (t.say("table-close-panel")) } }
        }
    }
}

/// Where a form about this character is sent.
fn at_id(path: &str, id: CharacterId) -> String {
    path.replace("{id}", &id.0.to_string())
}

/// The questions about it that a person worded: they do not follow when it is worded anew.
fn own_words(t: Tongue, collection: &Collection, laid: &Laid, id: CharacterId) -> Markup {
    let own = reworded::own_words(t, collection, laid, Some(id));
    html! {
        @if !own.is_empty() {
            p.quiet { (t.say("table-own-words")) }
            ul #own-words {
                @for own in &own {
                    @let key = &collection.keys[&own.key].name;
                    li dir="auto" {
                        a href={"/key?key=" (own.key.0) "&open=" (letters(&own.at))} {
                            (t.with("table-own-words-one", &[("question", &own.words), ("key", key)]))
                        }
                    }
                }
            }
        }
    }
}

/// The question as a pupil would read it.
fn asks(t: Tongue, laid: &Laid, at: CharacterIx) -> Markup {
    let Some(ask) = laid.example(at) else { return html! {} };
    let question = wording::question(t, &laid.matrix, &ask);
    html! { p.asks dir="auto" { (t.with("table-asks", &[("question", &question)])) } }
}

/// Where a column is typed in another unit than questions and sheets have.
fn kept_in(t: Tongue, laid: &Laid, at: CharacterIx, typed: &str) -> Markup {
    let kept = laid.matrix.character(at).sign();
    html! {
        @if !kept.is_empty() && !typed.is_empty() && table::units(kept, typed) == Units::Convert {
            p.quiet #kept-in { (t.with("table-kept-in", &[("typed", &typed), ("kept", &kept)])) }
        }
    }
}

fn one(t: Tongue, mark: &str, input: Input, text: &str, label: &str, help: &str) -> Markup {
    let id = format!("f-{mark}");
    let help_id = (!help.is_empty()).then(|| format!("help-{mark}"));
    let words = match input {
        Input::SomeOf(words) => named(text, words).map(|there| (words, there)),
        Input::Line | Input::OneOf(_) => None,
    };
    if let Some((words, there)) = words {
        return html! {
            fieldset {
                legend { (t.say(label)) }
                input type="hidden" name="boxes" value=(mark);
                @for word in words {
                    label.box for={(id) "-" (word.replace(' ', "-"))} {
                        input id={(id) "-" (word.replace(' ', "-"))} type="checkbox" name=(id) value=(word) checked[there.contains(word)];
                        " " (word_in(t, word))
                    }
                }
            }
        };
    }
    html! {
        label for=(id) { (t.say(label)) }
        @match input {
            Input::OneOf(words) => select id=(id) name=(id) aria-describedby=[help_id.as_deref()] {
                option value="" { (t.say("table-not-said")) }
                @for word in words { option value=(word) selected[*word == text] { (word_in(t, word)) } }
                @if !text.is_empty() && !words.contains(&text) { option selected value=(text) { (text) } }
            },
            _ => input id=(id) name=(id) value=(text) dir="auto" autocomplete="off"
                maxlength=(if mark == "name" { LONGEST_NAME } else { LONGEST_TEXT.max(text.chars().count()) })
                aria-describedby=[help_id.as_deref()];,
        }
        @if let Some(help_id) = &help_id { p.quiet id=(help_id) { (t.say(help)) } }
    }
}

/// Units that are written so in every language.
const UNITS: [&str; 5] = ["mm", "cm", "m", "°", "g"];

/// A word of the sheet in the person's language; what is written stays the sheet's word.
fn word_in(t: Tongue, word: &str) -> String {
    match UNITS.contains(&word) {
        true => word.to_owned(),
        false => t.say(&format!("table-word-{}", word.replace(' ', "-"))),
    }
}

/// The states, how many kinds have each, and a way to write each in another word.
fn states(t: Tongue, laid: &Laid, at: CharacterIx, id: CharacterId, back: &str) -> Markup {
    let Scale::Words { states } = &laid.matrix.character(at).scale else { return html! {} };
    html! {
        @if !states.is_empty() {
            h3 { (t.say("table-states")) }
            p.quiet { (t.say("table-rename-help")) }
            @for (n, state) in states.iter().enumerate() {
                form.rename method="post" action=(at_id(RENAME_STATE.path, id)) {
                    (hidden(&[("from", state), ("back", &back)]))
                    label for={"state-" (n)} dir="auto" {
                        (t.count_with("table-state-of", laid.having(at, StateIx(n)), &[("state", state)]))
                    }
                    span.one-line {
                        input id={"state-" (n)} name="to" value=(state) required maxlength=(LONGEST_NAME) dir="auto" autocomplete="off";
                        button id={"rename-" (n)} { (t.say("table-rename")) }
                    }
                }
            }
        }
    }
}
