//! What was seen of a newcomer, in the fields of a form; and where something else is said of a
//! kind already: old and new side by side, and a person decides.
//!
//! What is said of a kind that is there already goes into blank cells. Of any other cell a person
//! is asked: nothing is decided or written over unseen, and an answer holds only for what stood
//! there when it was given.

use maud::{Markup, html};
use spinney_collection::keys::KeyFrom;
use spinney_collection::laid::{Laid, folded};
use spinney_collection::slot_in::{Difference, Newcomer};
use spinney_collection::{Agreed, Collection};
use spinney_model::limits::SCREENS_COLUMNS;
use spinney_model::{CharacterId, KeyId, KindId};
use spinney_voice::Tongue;

use crate::asked::Asked;
use crate::forms::At;
use crate::pages::cell;
use crate::pages::finds::deeds::{LONGEST_NAME, free};
use crate::pages::newcomer::walk::{self, Fields};
use crate::pages::table::fields::LONGEST_TEXT;
use crate::reply::Refused;

/// The newcomer that the fields tell of, and what a person has to decide first.
pub(super) fn newcomer(
    at: &At<'_>,
    key: KeyFrom<'_>,
    fields: &Fields<'_>,
) -> Result<(Newcomer, Vec<Clash>), Refused> {
    let (asked, collection, id) = (at.asked, at.collection(), key.id);
    let name = fields.text(asked, "name", LONGEST_NAME)?;
    if !name.is_empty() {
        free(collection, asked, &name, None)?;
    }
    let walking = walk::follow(&key.made.key, fields.get("walk"));
    let walked = walk::fact(id, fields);
    at.holds(&walked)?;
    if walking.here().is_some() {
        // A question has come in at its end.
        return Err(walked.moved(at));
    }
    let landed = walking.came_out(key.made);
    let (mut cells, mut clashes) = (Vec::new(), Vec::new());
    for &character in collection.characters.keys() {
        let ours = fields.text(asked, &format!("c-{}", character.0), LONGEST_TEXT)?;
        if !ours.is_empty() {
            cells.push((None, character, ours));
        }
        for &kind in &landed {
            let field = format!("k-{}-{}", kind.0, character.0);
            let theirs = fields.text(asked, &field, LONGEST_TEXT)?;
            match look(at, key.laid, fields, id, (kind, character), &theirs) {
                Look::Write => cells.push((Some(kind), character, theirs)),
                Look::Leave => {}
                Look::Ask(clash) => clashes.push(clash),
            }
        }
    }
    let difference = difference(collection, asked, fields, &landed)?;
    let sides = walking.sides(key);
    Ok((Newcomer { name, cells, difference, sides, beside: landed }, clashes))
}

/// Something new to look at: it has a name, and it is said what the newcomer has there. What the
/// others have may be left open.
fn difference(
    collection: &Collection,
    asked: &Asked<'_>,
    fields: &Fields<'_>,
    landed: &[KindId],
) -> Result<Option<Difference>, Refused> {
    let t = asked.tongue;
    let name = fields.text(asked, "d-name", LONGEST_NAME)?;
    let ours = fields.text(asked, "d-ours", LONGEST_TEXT)?;
    let mut theirs = Vec::new();
    for &kind in landed {
        let text = fields.text(asked, &format!("d-theirs-{}", kind.0), LONGEST_TEXT)?;
        if !text.is_empty() {
            theirs.push((kind, text));
        }
    }
    if name.is_empty() && ours.is_empty() && theirs.is_empty() {
        return Ok(None);
    }
    if name.is_empty() || ours.is_empty() {
        return Err(asked.refused("newcomer-half-difference"));
    }
    if collection.characters.len() >= SCREENS_COLUMNS {
        return Err(Refused::count(t, "table-full", SCREENS_COLUMNS));
    }
    let mut known = collection.characters.keys().map(|id| collection.character_name(*id));
    if known.any(|known| folded(known) == folded(&name)) {
        return Err(Refused::with(t, "newcomer-known-difference", &[("name", &name)]));
    }
    Ok(Some(Difference { name, ours, theirs }))
}

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
enum Look {
    Write,
    Leave,
    Ask(Clash),
}

/// Looks whether what was typed of a kind may be written into the table. Cards on heaps are
/// heard like everything else that is said of it.
fn look(
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
