//! Where something else is said of a kind already: old and new side by side, and a person
//! decides.
//!
//! From what was typed of a kind that is there, and what the table says of it now, to a cell
//! that is written, one that is left, or a question. Nothing is decided or written over unseen:
//! an answer holds only for what stood there when it was given.

use maud::{Markup, html};
use spinney_collection::laid::Laid;
use spinney_collection::{Agreed, Collection};
use spinney_model::{CharacterId, KeyId, KindId};
use spinney_voice::Tongue;

use super::fields::Fields;
use crate::forms::At;
use crate::pages::cell;

/// The fields that answer such questions begin so.
const OVER: &str = "over-";

/// A cell of which something else is said already.
pub(super) struct Clash {
    /// The key that the newcomer comes into: its screens say its group's names.
    key: KeyId,
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

/// Looks whether what was typed of a kind may be written into the table. Cards on heaps are
/// heard like everything else that is said of it.
pub(super) fn look(
    at: &At<'_>,
    laid: &Laid,
    fields: &Fields<'_>,
    key: KeyId,
    cell: (KindId, CharacterId),
    typed: &str,
) -> Look {
    if typed.is_empty() {
        return Look::Leave;
    }
    let meanings = laid.meanings(at.collection(), cell.1, &[typed]);
    let meaning = meanings.of_text(cell.1, typed);
    match laid.said.agreed(cell.0, cell.1) {
        Agreed::Blank if laid.said.leave_open(cell.0, cell.1, &meaning) => return Look::Write,
        Agreed::Text(now) if meanings.of_text(cell.1, now).same(&meaning) => {
            return Look::Leave;
        }
        Agreed::Blank | Agreed::Text(_) | Agreed::Contradicted => {}
    }
    let name = field(cell);
    match fields.get(&name) {
        "" if fields.has(&name) => Look::Leave,
        "write" if at.still(&cell::fact(cell)) => Look::Write,
        _ => Look::Ask(Clash { key, at: cell, typed: typed.to_owned() }),
    }
}

/// Whether a field answers such a question.
pub(super) fn is_answer(name: &str) -> bool {
    name.starts_with(OVER)
}

fn field((kind, character): (KindId, CharacterId)) -> String {
    format!("{OVER}{}-{}", kind.0, character.0)
}

/// A question, with what stands there and what was typed.
pub(super) fn question(
    t: Tongue,
    collection: &Collection,
    laid: &Laid,
    clash: &Clash,
) -> Markup {
    let (kind, character) = clash.at;
    let name = field(clash.at);
    let (leave, write) = (format!("{name}-leave"), format!("{name}-write"));
    html! {
        fieldset.clash {
            legend dir="auto" { (collection.name_in(clash.key, kind)) ": " (collection.character_name(character)) }
            ul {
                @for (source, saying) in laid.said.sources_and_open(kind, character) {
                    li dir="auto" { (cell::says(t, source, saying)) }
                }
                li dir="auto" { strong { (t.with("newcomer-you-say", &[("text", &clash.typed)])) } }
            }
            p.choice {
                input type="radio" required id=(leave) name=(name) value="";
                label for=(leave) { (t.say("newcomer-leave-it")) }
            }
            p.choice {
                input type="radio" required id=(write) name=(name) value="write";
                label for=(write) dir="auto" { (t.with("newcomer-write-it", &[("text", &clash.typed)])) }
            }
        }
    }
}
