//! Cells that were typed: from a form to the edits of the cells that were changed in it.
//!
//! A cell whose text is still what stood there when the page was made is not written. Where
//! another window wrote in the meantime, nothing is overwritten: what was typed goes back to
//! the page with it, and the person decides there. What a button decides is the text that it
//! showed, and only as long as nobody has said anything else of the cell since.

use std::collections::BTreeMap;

use maud::Markup;
use spinney_collection::laid;
use spinney_model::{CharacterId, Edit, KindId};

use super::fields::{LONGEST_NAME, LONGEST_TEXT};
use crate::asked::{Asked, Deed, Doing};
use crate::desk::Desk;
use crate::forms::{At, Fact, Form, head_as};
use crate::pages::cell;
use crate::reply::Refused;
use crate::worked::State;

/// The button that takes a text sends it behind this.
pub(super) const TAKE: &str = "take-";

/// So many texts that clash go back to the page; more do not fit into an address.
const MOST_CLASHES: usize = 12;

type Place = (KindId, CharacterId);

/// Cells that were typed over, and what a button decides. Where somebody wrote into a cell that
/// was typed over, both texts go back to the page.
pub(super) static CELLS: Form<Cells> = Form {
    path: "/do/cells",
    read: Cells::read,
    rests_on: |cells| {
        let decided = cells.decided.iter().filter(|(_, word)| word != "leave");
        decided.map(|(at, _)| cell::fact(*at)).collect()
    },
    act: Cells::act,
};

/// The same form; where a button decides of a cell, that cell says how far its page saw.
pub(super) struct OfCells;

impl Doing for OfCells {
    fn answer(&self, desk: &Desk, asked: &Asked<'_>) -> Result<Deed, Refused> {
        let (at, _) = decided(asked.request.field("decide"));
        let own = at.map(|(kind, character)| format!("head-{}-{}", kind.0, character.0));
        let own = own.filter(|name| asked.sent(name));
        CELLS.answered_from(desk, asked, own.as_deref().unwrap_or("head"))
    }
}

/// What was typed, and what is decided.
pub(super) struct Cells {
    /// Who writes; empty: the table itself.
    who: String,
    typed: BTreeMap<Place, Typed>,
    /// A cell, and what is decided of it.
    decided: Option<(Place, String)>,
}

/// A text that was typed into a cell, and what stood there.
#[derive(Clone, Default)]
struct Typed {
    text: String,
    base: String,
}

impl Cells {
    /// What stood in a cell when somebody typed there. It travels with each cell, since a script
    /// brings those up to date at which no hand is.
    fn stood(&self, at: Place) -> Fact<'_> {
        let shows = Fact::new(
            move |state| shown_now(state, &self.who, at),
            move |now| cell::moved(now, at),
        );
        shows.carried(self.typed.get(&at).map(|typed| typed.base.as_str()))
    }

    /// The cells of which the text is another one than what stood there and than what stands
    /// there now, but for the one that is decided.
    fn changed(&self, state: State<'_>) -> impl Iterator<Item = (Place, &Typed)> {
        let decided = self.decided.as_ref().map(|(at, _)| *at);
        let typed = self.typed.iter().map(|(at, typed)| (*at, typed));
        typed.filter(move |(at, typed)| {
            let now = || shown_now(state, &self.who, *at);
            decided != Some(*at) && typed.text != typed.base && typed.text != now()
        })
    }
}

/// The hidden field of a cell that can be decided: a script may have brought it up to date, and
/// not the others.
pub(super) fn seen((kind, character): Place) -> Markup {
    head_as(&format!("head-{}-{}", kind.0, character.0))
}

fn shown_now(state: State<'_>, who: &str, (kind, character): Place) -> String {
    let laid = state.laid();
    let said = laid::said(state.collection, laid.as_deref());
    said.shown(who, kind, character).trim().to_owned()
}

impl Cells {
    fn read(at: &At<'_>) -> Result<Self, Refused> {
        let asked = at.asked;
        let bases = with_mark(asked, "b-");
        let typed =
            with_mark(asked, "c-").into_iter().filter(|(at_cell, _)| known(at, *at_cell));
        let typed = typed.map(|(at, text)| {
            let base = bases.get(&at).map_or("", |base| base.trim());
            (at, Typed { text: text.trim().to_owned(), base: base.to_owned() })
        });
        let (cell, word) = decided(asked.request.field("decide"));
        let who = asked.request.field("as").chars().take(LONGEST_NAME).collect();
        let decided = cell.filter(|cell| known(at, *cell)).map(|cell| (cell, word.to_owned()));
        let cells = Self { who, typed: typed.collect(), decided };
        let mine = cells.decided.iter().filter_map(|(at, _)| cells.typed.get(at));
        let mut written = cells.changed(at.desk.now()).map(|(_, typed)| typed).chain(mine);
        let long = written.any(|typed| typed.text.chars().count() > LONGEST_TEXT);
        drop(written);
        if long {
            Err(Refused::count(asked.tongue, "table-too-long", LONGEST_TEXT))
        } else {
            Ok(cells)
        }
    }

    fn act(self, at: &At<'_>) -> Result<Deed, Refused> {
        let (t, collection) = (at.asked.tongue, at.collection());
        let laid = at.desk.laid();
        let said = laid::said(collection, laid.as_deref());
        let (mut edits, mut clashes) = (Vec::new(), Vec::new());
        for (cell, typed) in self.changed(at.desk.now()) {
            match at.still(&self.stood(cell)) {
                true => {
                    edits.push(said.written(&collection.cells, &self.who, cell, &typed.text))
                }
                false => clashes.push((cell, typed.text.as_str())),
            }
        }
        if let Some((cell, word)) = &self.decided {
            let mine = self.typed.get(cell).map_or("", |typed| &typed.text);
            let taken = word.strip_prefix(TAKE);
            if taken.is_some_and(|wanted| said.offered(cell.0, cell.1, wanted).is_none()) {
                return Err(cell::moved(at, *cell));
            }
            let (kind, character) = *cell;
            let text = match word.as_str() {
                "leave" => None,
                "mine" => {
                    edits.push(said.written(&collection.cells, &self.who, *cell, mine));
                    None
                }
                "look" => Some("?".to_owned()),
                _ => taken.and_then(|wanted| said.offered(kind, character, wanted)),
            };
            let source = String::new();
            edits.extend(text.map(|text| Edit::Cell { kind, character, source, text }));
        }
        if clashes.len() > MOST_CLASHES {
            return Err(Refused::count(t, "table-many-clashes", clashes.len()));
        }
        let mut to = address(&at.asked.back("/table"), &clashes);
        let (decided, _) = decided(at.asked.request.field("decide"));
        if let (Some((kind, character)), true) = (decided, clashes.is_empty()) {
            // The button is gone; the hand goes on at its cell.
            let page = to.split('#').next().unwrap_or("");
            to = format!("{page}#i-{}-{}", kind.0, character.0);
        }
        Ok(Deed::edits(edits, to))
    }
}

fn known(at: &At<'_>, (kind, character): Place) -> bool {
    let collection = at.collection();
    collection.kinds.contains_key(&kind) && collection.characters.contains_key(&character)
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
