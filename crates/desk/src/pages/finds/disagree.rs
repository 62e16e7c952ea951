//! Where people say different things of one kind: each side by side, and a person decides.
//!
//! What two groups' tables say, what their sorting says of the table, and where two groups
//! asked the same words and sorted a kind differently: there only they can tell what they
//! meant.

use std::collections::BTreeSet;

use maud::{Markup, html};
use spinney_model::{CharacterId, Edit, KindId, Side};

use super::LONGEST_TEXT;
use super::deeds::{self, typed};
use crate::Desk;
use crate::pages::{saying, stood};
use crate::routes::{Asked, Deed, Refused};
use spinney_collection::keys::letters;
use spinney_collection::laid::{self, Laid};
use spinney_collection::{Collection, Saying, Unlike, unlike};
use spinney_voice::Tongue;

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
                    form.decision id=(id) method="post" action="/do/decide" {
                        h3 dir="auto" { (collection.name(*kind)) ": " (collection.character_name(*at)) }
                        input type="hidden" name="kind" value=(kind.0);
                        input type="hidden" name="character" value=(at.0);
                        (stood::field(stood::STOOD, &stood::cell(&said, (*kind, *at))))
                        ul {
                            @for (place, (source, saying)) in said.sources(*kind, *at).into_iter().enumerate() {
                                li {
                                    @let by_heaps = collection.cells.said(*kind, *at, source).is_empty();
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
    let text = saying::words(t, saying);
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
pub(super) fn decide(desk: &mut Desk, asked: &Asked<'_>) -> Result<Deed, Refused> {
    let t = asked.tongue;
    let kind = KindId(asked.request.field("kind").parse().unwrap_or(0));
    let character = CharacterId(asked.request.field("character").parse().unwrap_or(0));
    let collection = &desk.history.now;
    if !collection.kinds.contains_key(&kind) || !collection.characters.contains_key(&character)
    {
        return Err(deeds::gone(asked));
    }
    let other = typed(asked, "other", LONGEST_TEXT)?;
    let text = if other.is_empty() { typed(asked, "text", LONGEST_TEXT)? } else { other };
    if text.is_empty() {
        return Err(Refused {
            sentence: t.say("finds-nothing-decided"),
            remedy: t.say("finds-nothing-decided-remedy"),
        });
    }
    let laid = desk.worked.laid(&desk.history.now);
    let said = laid::said(&desk.history.now, laid.as_deref());
    if !stood::cell_still(asked, &said, (kind, character)) {
        return Err(stood::cell_moved(asked, &desk.history.now, &said, (kind, character)));
    }
    let edits = vec![Edit::Cell { kind, character, source: String::new(), text }];
    Ok(Deed::edits(edits, asked.back("/finds")))
}
