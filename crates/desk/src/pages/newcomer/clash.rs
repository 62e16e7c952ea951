//! Where something else is said of a kind already: old and new side by side, and a person
//! decides.
//!
//! From what was typed of a kind that is there, and what the table says of it now, to a cell
//! that is written, one that is left, or a question. Nothing is decided or written over unseen:
//! an answer holds only for what stood there when it was given.

use maud::{Markup, html};
use spinney_model::{CharacterId, KindId};

use super::seen::Fields;
use crate::collection::{Agreed, Collection};
use crate::laid::folded;
use crate::language::Tongue;

/// A cell of which something else is said already.
pub(super) struct Clash {
    at: (KindId, CharacterId),
    typed: String,
}

impl Clash {
    /// The field that answers it.
    pub(super) fn field(&self) -> String {
        field(self.at)
    }
}

/// What becomes of what was typed.
pub(super) enum Look {
    Write,
    Leave,
    Ask(Clash),
}

/// Looks whether what was typed of a kind may be written into the table.
pub(super) fn look(
    collection: &Collection,
    fields: &Fields<'_>,
    at: (KindId, CharacterId),
    typed: &str,
) -> Look {
    if typed.is_empty() {
        return Look::Leave;
    }
    match collection.cells.agreed(at.0, at.1) {
        Agreed::Blank => return Look::Write,
        Agreed::Text(now) if folded(now) == folded(typed) => return Look::Leave,
        Agreed::Text(_) | Agreed::Contradicted(_) => {}
    }
    let name = field(at);
    match fields.get(&name) {
        "" if fields.has(&name) => Look::Leave,
        seen if folded(seen) == folded(&said(collection, at)) => Look::Write,
        _ => Look::Ask(Clash { at, typed: typed.to_owned() }),
    }
}

/// Whether a field answers such a question.
pub(super) fn is_answer(name: &str) -> bool {
    name.starts_with("over-")
}

fn field((kind, character): (KindId, CharacterId)) -> String {
    format!("over-{}-{}", kind.0, character.0)
}

/// Everything that is said of a cell now.
fn said(collection: &Collection, (kind, character): (KindId, CharacterId)) -> String {
    let sources = collection.cells.sources(kind, character);
    let said = sources.iter().map(|(source, text)| format!("{source}: {text}"));
    said.collect::<Vec<_>>().join("; ")
}

/// The questions, each with what stands there and what was typed.
pub(super) fn questions(t: Tongue, collection: &Collection, clashes: &[Clash]) -> Markup {
    html! {
        @for clash in clashes { (question(t, collection, clash)) }
    }
}

fn question(t: Tongue, collection: &Collection, clash: &Clash) -> Markup {
    let (kind, character) = clash.at;
    let name = field(clash.at);
    let (leave, write) = (format!("{name}-leave"), format!("{name}-write"));
    html! {
        fieldset.clash {
            legend dir="auto" { (collection.name(kind)) ": " (collection.character_name(character)) }
            ul {
                @for (source, text) in collection.cells.sources(kind, character) {
                    li dir="auto" { (says(t, source, text)) }
                }
                li dir="auto" { strong { (t.with("newcomer-you-say", &[("text", &clash.typed)])) } }
            }
            p.choice {
                input type="radio" required id=(leave) name=(name) value="";
                label for=(leave) { (t.say("newcomer-leave-it")) }
            }
            p.choice {
                input type="radio" required id=(write) name=(name) value=(said(collection, clash.at));
                label for=(write) dir="auto" { (t.with("newcomer-write-it", &[("text", &clash.typed)])) }
            }
        }
    }
}

/// What one source says; the table itself has no name.
pub(super) fn says(t: Tongue, source: &str, text: &str) -> String {
    match source {
        "" => t.with("newcomer-table-says", &[("text", &text)]),
        source => t.with("finds-says", &[("source", &source), ("text", &text)]),
    }
}
