//! What was seen of a newcomer, in the fields of a form and back.
//!
//! The same fields are sent from page to page, so that nothing that was typed is lost on the
//! way. What is said of a kind that is there already goes into blank cells; for any other cell a
//! person is asked (`clash`).

use spinney_collection::Collection;
use spinney_collection::keys::Made;
use spinney_collection::laid::{Laid, folded};
use spinney_collection::slot_in::{Difference, Newcomer};
use spinney_exchange::table;
use spinney_model::limits::SCREENS_COLUMNS;
use spinney_model::{AskedOf, CharacterId, Fork, Key, KeyId, KindId, Scale, Side};

use super::clash::{self, Clash, Look};
use super::fields::Fields;
use super::walk::{self, Walking};
use crate::asked::Asked;
use crate::forms::At;
use crate::pages::finds::deeds::free;
use crate::pages::finds::fields::LONGEST_NAME;
use crate::pages::table::fields::LONGEST_TEXT;
use crate::reply::Refused;

/// The newcomer that the fields tell of, and what a person has to decide first.
pub(super) fn newcomer(
    at: &At<'_>,
    laid: &Laid,
    fields: &Fields<'_>,
    (id, made): (KeyId, &Made),
) -> Result<(Newcomer, Vec<Clash>), Refused> {
    let (asked, collection) = (at.asked, at.collection());
    let name = fields.text(asked, "name", LONGEST_NAME)?;
    if !name.is_empty() {
        free(collection, asked, &name, None)?;
    }
    let walking = walk::follow(&made.key, fields.get("walk"));
    let walked = walk::fact(id, fields);
    at.holds(&walked)?;
    if walking.next.is_some() {
        // A question has come in at its end.
        return Err(walked.moved(at));
    }
    let landed = landed(made, &walking);
    let (mut cells, mut clashes) = (Vec::new(), Vec::new());
    for &character in collection.characters.keys() {
        let ours = fields.text(asked, &format!("c-{}", character.0), LONGEST_TEXT)?;
        if !ours.is_empty() {
            cells.push((None, character, ours));
        }
        for &kind in &landed {
            let field = format!("k-{}-{}", kind.0, character.0);
            let theirs = fields.text(asked, &field, LONGEST_TEXT)?;
            match clash::look(at, laid, fields, id, (kind, character), &theirs) {
                Look::Write => cells.push((Some(kind), character, theirs)),
                Look::Leave => {}
                Look::Ask(clash) => clashes.push(clash),
            }
        }
    }
    let difference = difference(collection, asked, fields, &landed)?;
    let sides = sides(collection, id, made, &walking);
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

/// The kinds at whose ends it came out, each once.
pub(super) fn landed(made: &Made, walking: &Walking<'_>) -> Vec<KindId> {
    let mut kinds: Vec<KindId> = Vec::new();
    for taxon in walking.ends.iter().flat_map(|end| &end.taxa) {
        let kind = made.layer.kinds[taxon.0];
        if !kinds.contains(&kind) {
            kinds.push(kind);
        }
    }
    kinds
}

/// The answers to questions that people sorted by hand: there the newcomer lies so as well.
fn sides(
    collection: &Collection,
    id: KeyId,
    made: &Made,
    walking: &Walking<'_>,
) -> Vec<(Fork, Side)> {
    let drawn = &collection.keys[&id];
    let side = |(number, answer): &(u32, Option<bool>)| {
        let place = made.places.get(number)?;
        let ask = made.layer.forks.get(place)?.ask.as_ref()?;
        let by_hand = ask.character.0 >= made.layer.sorted_from;
        (by_hand && drawn.questions.contains_key(place)).then(|| {
            let side = match answer {
                Some(true) => Side::Yes,
                Some(false) => Side::No,
                None => Side::Both,
            };
            (place.clone(), side)
        })
    };
    walking.asked.iter().filter_map(side).collect()
}

/// What the answers on the way say of a character, as far as they settle it, as it is typed.
pub(super) fn answered(
    laid: &Laid,
    key: &Key,
    made: &Made,
    walking: &Walking<'_>,
    character: CharacterId,
) -> Option<String> {
    let at = laid.character(character)?;
    let Scale::Words { states } = &laid.matrix.character(at).scale else { return None };
    let mut left: Vec<&String> = states.iter().collect();
    for (number, answer) in &walking.asked {
        let couplet = key.couplets.iter().find(|couplet| couplet.number == *number)?;
        let of = couplet.ask.as_ref().filter(|ask| ask.character.0 < made.layer.sorted_from);
        let of = of.and_then(|ask| laid.ask_of(ask)).filter(|of| of.character == character);
        if let (Some(of), Some(yes)) = (of, answer)
            && let AskedOf::States(asked) = of.yes
        {
            left.retain(|state| asked.contains(state) == *yes);
        }
    }
    match left.as_slice() {
        [only] if states.len() > 1 => Some(table::as_typed(only)),
        _ => None,
    }
}
