//! Cells that were typed: from a form to the edits of the cells that were changed in it.
//!
//! A cell whose text is still what stood there when the page was made is not written. Where
//! another window wrote in the meantime, nothing is overwritten: what was typed goes back to
//! the page with it, and the person decides there. What a button decides is the text that it
//! showed, and only as long as nobody has said anything else of the cell since.

use std::collections::BTreeMap;

use spinney_model::{CharacterId, Edit, KindId};

use super::{LONGEST_TEXT, decide, sheet};
use crate::Desk;
use crate::pages::stood;
use crate::routes::{Asked, Deed, Refused};
use spinney_collection::laid;
use spinney_collection::{Agreed, Cells, Collection, Sayings};

/// So many texts that clash go back to the page; more do not fit into an address.
const MOST_CLASHES: usize = 12;

type Place = (KindId, CharacterId);

/// Writes the cells that were changed, and what was decided.
pub(super) fn cells(desk: &mut Desk, asked: &Asked<'_>) -> Result<Deed, Refused> {
    let laid = desk.worked.laid(&desk.history.now);
    let collection = &desk.history.now;
    let said = laid::said(collection, laid.as_deref());
    let who: String = asked.request.field("as").chars().take(super::LONGEST_NAME).collect();
    let typed = with_mark(asked, "c-");
    let bases = with_mark(asked, "b-");
    let (decided, word) = decided(asked.request.field("decide"));
    let mut edits = Vec::new();
    let mut clashes = Vec::new();
    for (&at, &text) in &typed {
        if !known(collection, at) || decided == Some(at) {
            continue;
        }
        let text = text.trim();
        let base = bases.get(&at).map_or("", |base| base.trim());
        let now = sheet::shown(&said, &who, at.0, at.1).trim();
        if text == base || text == now {
            continue;
        }
        if text.chars().count() > LONGEST_TEXT {
            return Err(too_long(asked));
        }
        if now == base {
            edits.push(written(&collection.cells, &said, &who, at, text));
        } else {
            clashes.push((at, text));
        }
    }
    if let Some(at) = decided.filter(|at| known(collection, *at)) {
        let mine = typed.get(&at).map_or("", |text| text.trim());
        if mine.chars().count() > LONGEST_TEXT {
            return Err(too_long(asked));
        }
        if word != "leave" && moved(asked, &said, at, word) {
            return Err(stood::cell_moved(asked, collection, &said, at));
        }
        edits.extend(decision(&collection.cells, &said, &who, at, word, mine));
    }
    if clashes.len() > MOST_CLASHES {
        let t = asked.tongue;
        return Err(Refused {
            sentence: t.count("table-many-clashes", clashes.len()),
            remedy: t.say("table-many-clashes-remedy"),
        });
    }
    let mut to = address(&asked.back("/table"), &clashes);
    if let (Some((kind, character)), true) = (decided, clashes.is_empty()) {
        // The button is gone; the hand goes on at its cell.
        to = format!("{}#i-{}-{}", to.split('#').next().unwrap_or(""), kind.0, character.0);
    }
    Ok(Deed::edits(edits, to))
}

fn known(collection: &Collection, (kind, character): Place) -> bool {
    collection.kinds.contains_key(&kind) && collection.characters.contains_key(&character)
}

/// What is to be written so that the cell counts as this text.
fn written(typed: &Cells, said: &Sayings, who: &str, at: Place, text: &str) -> Edit {
    let (kind, character) = at;
    let by_itself = typed.said(kind, character, who);
    // Emptied, though groups have said something, or how this one sorted does: nobody loses a
    // word, but it is open again.
    let still_said = match who {
        "" => said.agreed(kind, character) != Agreed::Blank,
        _ => !said.said(kind, character, who).is_empty(),
    };
    let open = text.is_empty() && by_itself.is_empty() && still_said;
    let text = if open { "?" } else { text };
    Edit::Cell { kind, character, source: who.to_owned(), text: text.to_owned() }
}

/// What a button under a cell decides.
fn decision(
    typed: &Cells,
    said: &Sayings,
    who: &str,
    at: Place,
    word: &str,
    mine: &str,
) -> Option<Edit> {
    let (kind, character) = at;
    let text = match word {
        "leave" => return None,
        "mine" => return Some(written(typed, said, who, at, mine)),
        "look" => "?".to_owned(),
        word => offered(said, at, word.strip_prefix(decide::TAKE)?)?,
    };
    Some(Edit::Cell { kind, character, source: String::new(), text })
}

/// The text that a button wants to take, if it is one that the page would offer now.
fn offered(said: &Sayings, at: Place, wanted: &str) -> Option<String> {
    let texts = said.choices(at.0, at.1);
    let both = decide::both(&texts);
    let mut offered = texts.into_iter().map(str::to_owned).chain(both);
    // On its way through a page a text may lose how its lines were broken.
    offered.find(|text| text.split_whitespace().eq(wanted.split_whitespace()))
}

/// Whether something else is said of the cell than when the button was shown.
fn moved(asked: &Asked<'_>, said: &Sayings, at: Place, word: &str) -> bool {
    let name = decide::stood_field(at);
    let gone = |wanted| offered(said, at, wanted).is_none();
    !stood::still(&asked.request.form, &name, &stood::cell(said, at))
        || word.strip_prefix(decide::TAKE).is_some_and(gone)
}

/// `3-7-look`: the cell, and what was decided.
fn decided(text: &str) -> (Option<Place>, &str) {
    let end = text.match_indices('-').nth(1).map_or(text.len(), |(end, _)| end);
    let (at, word) = text.split_at(end);
    (place(at), word.strip_prefix('-').unwrap_or_default())
}

fn place(text: &str) -> Option<Place> {
    let (kind, character) = text.split_once('-')?;
    Some((KindId(kind.parse().ok()?), CharacterId(character.parse().ok()?)))
}

/// The fields of the form whose names begin so, by their cell.
fn with_mark<'r>(asked: &Asked<'r>, mark: &str) -> BTreeMap<Place, &'r str> {
    let fields = asked.request.form.iter();
    let marked = fields
        .filter_map(|(name, text)| Some((place(name.strip_prefix(mark)?)?, text.as_str())));
    marked.collect()
}

fn too_long(asked: &Asked<'_>) -> Refused {
    let t = asked.tongue;
    Refused {
        sentence: t.count("table-too-long", LONGEST_TEXT),
        remedy: t.say("table-too-long-remedy"),
    }
}

/// The page again, with what clashes; the first of it in view.
fn address(back: &str, clashes: &[(Place, &str)]) -> String {
    let Some(((kind, character), _)) = clashes.first() else { return back.to_owned() };
    let back = back.split('#').next().unwrap_or(back);
    let mut query = form_urlencoded::Serializer::new(String::new());
    for ((kind, character), text) in clashes {
        query.append_pair("mine", &format!("{}-{}-{text}", kind.0, character.0));
    }
    let mark = if back.contains('?') { '&' } else { '?' };
    format!("{back}{mark}{}#c-{}-{}", query.finish(), kind.0, character.0)
}
