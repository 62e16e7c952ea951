//! Where something else is said of a kind already: old and new side by side, and a person
//! decides.
//!
//! From what was typed of a kind that is there, and what the table says of it now, to a cell
//! that is written, one that is left, or a question. Nothing is decided or written over unseen:
//! an answer holds only for what stood there when it was given.

use maud::{Markup, html};
use spinney_model::{CharacterId, KeyId, KindId};

use super::seen::Fields;
use crate::pages::{saying, stood};
use spinney_collection::laid::Laid;
use spinney_collection::{Agreed, Collection, Saying};
use spinney_voice::Tongue;

/// The fields that answer such questions begin so.
const OVER: &str = "stood-over-";

/// What is looked at.
#[derive(Clone, Copy)]
pub(super) struct Table<'a> {
    pub(super) t: Tongue,
    pub(super) collection: &'a Collection,
    pub(super) laid: &'a Laid,
}

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
    table: Table<'_>,
    fields: &Fields<'_>,
    key: KeyId,
    at: (KindId, CharacterId),
    typed: &str,
) -> Look {
    if typed.is_empty() {
        return Look::Leave;
    }
    let laid = table.laid;
    let meanings = laid.meanings(table.collection, at.1, &[typed]);
    let meaning = meanings.of_text(at.1, typed);
    match laid.said.agreed(at.0, at.1) {
        Agreed::Blank if laid.said.leave_open(at.0, at.1, &meaning) => return Look::Write,
        Agreed::Text(now) if meanings.of_text(at.1, now).same(&meaning) => return Look::Leave,
        Agreed::Blank | Agreed::Text(_) | Agreed::Contradicted => {}
    }
    let name = field(at);
    match fields.get(&name) {
        "" if fields.has(&name) => Look::Leave,
        seen if seen == stood::cell(&laid.said, at) => Look::Write,
        _ => Look::Ask(Clash { key, at, typed: typed.to_owned() }),
    }
}

/// Whether a field answers such a question.
pub(super) fn is_answer(name: &str) -> bool {
    name.starts_with(OVER)
}

fn field((kind, character): (KindId, CharacterId)) -> String {
    format!("{OVER}{}-{}", kind.0, character.0)
}

/// The questions, each with what stands there and what was typed.
pub(super) fn questions(table: Table<'_>, clashes: &[Clash]) -> Markup {
    html! {
        @for clash in clashes { (question(table, clash)) }
    }
}

fn question(table: Table<'_>, clash: &Clash) -> Markup {
    let Table { t, collection, laid } = table;
    let (kind, character) = clash.at;
    let name = field(clash.at);
    let (leave, write) = (format!("{name}-leave"), format!("{name}-write"));
    html! {
        fieldset.clash {
            legend dir="auto" { (collection.name_in(clash.key, kind)) ": " (collection.character_name(character)) }
            ul {
                @for (source, saying) in laid.said.sources_and_open(kind, character) {
                    li dir="auto" { (says(t, source, saying)) }
                }
                li dir="auto" { strong { (t.with("newcomer-you-say", &[("text", &clash.typed)])) } }
            }
            p.choice {
                input type="radio" required id=(leave) name=(name) value="";
                label for=(leave) { (t.say("newcomer-leave-it")) }
            }
            p.choice {
                input type="radio" required id=(write) name=(name) value=(stood::cell(&laid.said, clash.at));
                label for=(write) dir="auto" { (t.with("newcomer-write-it", &[("text", &clash.typed)])) }
            }
        }
    }
}

/// What one source says; the table itself has no name.
pub(super) fn says(t: Tongue, source: &str, saying: &Saying) -> String {
    let text = saying::words(t, saying);
    match source {
        "" => t.with("newcomer-table-says", &[("text", &text)]),
        source => t.with("finds-says", &[("source", &source), ("text", &text)]),
    }
}
