//! Where people say different things of one kind: each side by side, and a person decides; and
//! two finds with one name, `Ivy` and `ivy (2)`: are they the same?
//!
//! What two groups' tables say, what their sorting says of the table, and where two groups
//! asked the same words and sorted a kind differently: there only they can tell what they
//! meant. A table that names a kind in two rows gives two finds, so that neither row writes
//! over the other.

use std::collections::BTreeSet;

use maud::{Markup, html};
use spinney_collection::keys::letters;
use spinney_collection::laid::{self, Laid};
use spinney_collection::{Collection, Saying, Unlike, kinds, unlike};
use spinney_model::{CharacterId, Edit, KindId, Side};
use spinney_voice::Tongue;

use crate::asked::Deed;
use crate::forms::{Form, hidden};
use crate::pages::cell;
use crate::pages::finds::deeds::{LONGEST_TEXT, MERGE, gone};

/// So many are shown; the others are counted.
const SHOWN: usize = 12;

/// Every cell whose sources do not agree.
pub(super) fn list(t: Tongue, collection: &Collection, laid: Option<&Laid>) -> Markup {
    let said = laid::said(collection, laid);
    let all: Vec<_> = said.contradictions().collect();
    html! {
        (groups(t, collection, laid))
        @if !all.is_empty() {
            section.disagree {
                h2 #disagree { (t.count("finds-disagree", all.len())) }
                p.quiet { (t.say("finds-disagree-why")) }
                @for (kind, at) in all.iter().take(SHOWN) {
                    @let id = format!("decide-{}-{}", kind.0, at.0);
                    form.decision id=(id) method="post" action=(DECIDE.path) {
                        h3 dir="auto" { (collection.name(*kind)) ": " (collection.character_name(*at)) }
                        (hidden(&[("kind", &kind.0), ("character", &at.0)]))
                        ul {
                            @for (place, (source, saying)) in said.sources(*kind, *at).into_iter().enumerate() {
                                li {
                                    @let by_heaps = !collection.says_itself(*kind, *at, source);
                                    (says(t, source, saying, by_heaps)) " "
                                    @if let Some(text) = saying.text() {
                                        button id={(id) "-" (place)} name="text" value=(text) {
                                            (t.with("finds-right", &[("text", &text)]))
                                        }
                                    }
                                }
                            }
                        }
                        label for={(id) "-other"} { (t.say("finds-otherwise")) }
                        input id={(id) "-other"} name="other" maxlength=(LONGEST_TEXT);
                        button id={(id) "-write"} { (t.say("finds-write")) }
                    }
                }
                @if all.len() > SHOWN { p { (t.count("finds-disagree-more", all.len() - SHOWN)) } }
            }
        }
    }
}

/// What somebody says, and whether only their heaps say it.
fn says(t: Tongue, source: &str, saying: &Saying, by_heaps: bool) -> Markup {
    let text = cell::words(t, saying);
    html! {
        span dir="auto" { (t.with("finds-says", &[("source", &source), ("text", &text)])) }
        @if by_heaps { " " span.quiet { (t.say("table-by-heaps")) } }
    }
}

/// Where groups sorted the same words differently: nobody decides it for them.
fn groups(t: Tongue, collection: &Collection, laid: Option<&Laid>) -> Markup {
    let all = unlike(collection, laid);
    let finds: BTreeSet<KindId> = all.iter().map(|one| one.kind).collect();
    html! {
        @if !all.is_empty() {
            section.disagree {
                h2 #unlike { (t.count("finds-unlike", finds.len())) }
                p.quiet { (t.say("finds-unlike-why")) }
                @for Unlike { kind, words, cards } in all.iter().take(SHOWN) {
                    h3 dir="auto" { (collection.name(*kind)) ": " (words) }
                    ul {
                        @for card in cards {
                            @let side = match card.side {
                                Side::Yes => t.say("answer-yes"),
                                Side::No => t.say("answer-no"),
                                Side::Both => t.say("answer-varies"),
                            };
                            li {
                                a dir="auto" href={"/heaps?key=" (card.key.0) "&at=" (letters(&card.at)) "#card-" (kind.0)} {
                                    (t.with("finds-unlike-put", &[("who", &card.who), ("side", &side)]))
                                }
                            }
                        }
                    }
                }
                @if all.len() > SHOWN { p { (t.count("finds-disagree-more", all.len() - SHOWN)) } }
            }
        }
    }
}

/// What a person decided goes into the table itself; what the groups said stays with them. It
/// holds for what the page showed of the cell.
pub(super) static DECIDE: Form<((KindId, CharacterId), String)> = Form {
    path: "/do/decide",
    read: |at| {
        let (asked, of) = (at.asked, at.collection());
        let (kind, character) = (KindId(asked.id("kind")), CharacterId(asked.id("character")));
        if !(of.kinds.contains_key(&kind) && of.characters.contains_key(&character)) {
            return Err(gone(asked));
        }
        let other = asked.typed("other", LONGEST_TEXT)?;
        let text = if other.is_empty() { asked.typed("text", LONGEST_TEXT)? } else { other };
        if text.is_empty() {
            return Err(asked.refused("finds-nothing-decided"));
        }
        Ok(((kind, character), text))
    },
    rests_on: |(cell, _)| vec![cell::fact(*cell)],
    act: |((kind, character), text), at| {
        let edit = Edit::Cell { kind, character, source: String::new(), text };
        Ok(Deed::edits([edit], at.asked.back("/finds")))
    },
};

/// A question for every find whose name only adds a number to another's.
pub(super) fn one_name(t: Tongue, collection: &Collection) -> Markup {
    html! {
        @for (first, second) in &kinds::numbered(collection) {
            @let names = as_typed(collection.name(*first), collection.name(*second));
            form.finding.look.one-name id={"one-name-" (second.0)} method="post" action=(MERGE.path) {
                p dir="auto" { (t.with("finds-one-name", &[("first", &names[0]), ("second", &names[1])])) }
                (hidden(&[("kind", &second.0), ("with", &first.0)]))
                p.buttons {
                    button id={"same-" (second.0)} { (t.say("finds-one-name-same")) }
                    a.button id={"two-" (second.0)} href={"/finds/" (second.0) "#name"} { (t.say("finds-one-name-two")) }
                }
                p.quiet { (t.say("finds-merge-why")) }
            }
        }
    }
}

/// Both names as they were typed, without the number that only keeps them apart, where that
/// leaves two.
fn as_typed(first: String, second: String) -> [String; 2] {
    match second.rsplit_once(" (") {
        Some((bare, _)) if bare != first => [first, bare.to_owned()],
        _ => [first, second],
    }
}
