//! What a hand does to heaps: ask, sort, take back, let the rest be found; and how a key begins.

use maud::{Markup, html};
use spinney_collection::{Drawn, laid};
use spinney_model::{AskOf, CharacterId, Edit, KeyEdit, KeyId, KindId, Side, WishField};
use spinney_voice::Tongue;

use super::place::{Place, gone, key, kind};
use crate::asked::{Asked, Deed};
use crate::asking::of_form;
use crate::forms::{At, Fact, Form, hidden};
use crate::pages::cell;
use crate::pages::finds::fields::LONGEST_NAME;
use crate::pages::table::fields::LONGEST_TEXT;
use crate::reply::Refused;
use crate::worked::State;

/// The longest question, in letters.
pub(crate) const LONGEST_QUESTION: usize = 300;

/// A question is asked of a heap.
pub(super) struct AskHere {
    place: Place,
    words: String,
    ask: Option<AskOf>,
}

impl Form for AskHere {
    const PATH: &'static str = "/do/ask";

    fn read(at: &At<'_>) -> Result<Self, Refused> {
        let place = Place::read(at)?;
        Ok(Self { place, words: words(at.asked)?, ask: meant(at)? })
    }

    fn reads(&self) -> Vec<Fact<'_>> {
        self.place.asks()
    }

    fn act(self, at: &At<'_>) -> Result<Deed, Refused> {
        let Self { place: Place { key, at: fork }, words, ask } = self;
        let ask = Edit::Key(key, KeyEdit::Ask { at: fork, words, ask });
        Ok(Deed::edits(vec![ask], at.asked.back("/heaps")))
    }
}

/// The words of a question, as a form says them.
pub(crate) fn words(asked: &Asked<'_>) -> Result<String, Refused> {
    match asked.cut("words", LONGEST_QUESTION) {
        words if words.is_empty() => {
            Err(asked.refused("heaps-no-words", "heaps-no-words-remedy"))
        }
        words => Ok(words),
    }
}

/// What the form says that the question means in the table; None: it says nothing of that.
pub(crate) fn meant(at: &At<'_>) -> Result<Option<AskOf>, Refused> {
    let request = at.asked.request;
    let says = |name| request.fields(name).next().is_some();
    if !["character", "state", "at-least", "below"].into_iter().any(says) {
        return Ok(None);
    }
    let laid = at.desk.laid();
    let may_be = |of: &AskOf| laid.is_some_and(|laid| laid.may_be_asked(of).is_some());
    let of = of_form(request).filter(may_be);
    let refused = || at.asked.refused("heaps-not-of-table", "heaps-not-of-table-remedy");
    of.map(Some).ok_or_else(refused)
}

/// The sides that a form can say.
pub(crate) fn side(word: &str) -> Option<Side> {
    match word {
        "yes" => Some(Side::Yes),
        "no" => Some(Side::No),
        "both" => Some(Side::Both),
        _ => None,
    }
}

/// What a form calls the middle, between the heaps: there the table speaks for a card.
pub(super) const MIDDLE: &str = "middle";

/// A card is put on a heap, or back into the middle.
pub(super) struct Sort {
    place: Place,
    kind: KindId,
    side: Option<Side>,
}

impl Form for Sort {
    const PATH: &'static str = "/do/sort";

    fn read(at: &At<'_>) -> Result<Self, Refused> {
        let side = match at.asked.request.field("side") {
            MIDDLE => None,
            word => Some(side(word).ok_or_else(|| gone(at.asked))?),
        };
        Ok(Self { place: Place::read(at)?, kind: kind(at)?, side })
    }

    fn reads(&self) -> Vec<Fact<'_>> {
        self.place.asks()
    }

    fn act(self, at: &At<'_>) -> Result<Deed, Refused> {
        let Self { place: Place { key, at: fork }, kind, side } = self;
        Ok(Deed::edits(
            vec![Edit::Key(key, KeyEdit::Sort { at: fork, kind, side })],
            at.asked.back("/heaps"),
        ))
    }
}

/// The table says what the hand says: a person decided, so it goes into the table itself, as
/// long as both still say what the card showed.
pub(super) struct TableAsSorted {
    place: Place,
    kind: KindId,
}

impl TableAsSorted {
    /// The column that the question asks.
    fn column(&self, state: State<'_>) -> Option<CharacterId> {
        let drawn = state.collection.keys.get(&self.place.key)?;
        Some(drawn.questions.get(&self.place.at)?.ask.as_ref()?.character)
    }

    /// What the hand would write.
    fn writes(&self, state: State<'_>) -> Option<String> {
        let laid = state.laid()?;
        laid.sorted.text(self.place.key, &self.place.at, self.kind).map(str::to_owned)
    }
}

impl Form for TableAsSorted {
    const PATH: &'static str = "/do/table-as-sorted";

    fn read(at: &At<'_>) -> Result<Self, Refused> {
        Ok(Self { place: Place::read(at)?, kind: kind(at)? })
    }

    fn reads(&self) -> Vec<Fact<'_>> {
        let mut facts = self.place.asks();
        facts.push(Fact::new(
            |state| {
                let said = self.column(state).map(|at| cell::all(state, (self.kind, at)));
                format!("{said:?} {:?}", self.writes(state))
            },
            |at| match self.column(at.desk.now()) {
                Some(column) => cell::moved(at, (self.kind, column)),
                None => gone(at.asked),
            },
        ));
        facts
    }

    fn act(self, at: &At<'_>) -> Result<Deed, Refused> {
        let now = at.desk.now();
        let (Some(text), Some(character)) = (self.writes(now), self.column(now)) else {
            return Err(at.asked.refused("heaps-cannot-write", "heaps-cannot-write-remedy"));
        };
        let Self { place: Place { key, at: fork }, kind } = self;
        let edits = vec![
            Edit::Cell { kind, character, source: String::new(), text },
            Edit::Key(key, KeyEdit::Sort { at: fork, kind, side: None }),
        ];
        Ok(Deed::edits(edits, at.asked.back("/heaps")))
    }
}

/// A question is taken out, with all below it; what a hand fixed in a key is let go so, too.
pub(crate) struct TakeOut(Place);

impl Form for TakeOut {
    const PATH: &'static str = "/do/take-out";

    fn read(at: &At<'_>) -> Result<Self, Refused> {
        Place::read(at).map(Self)
    }

    fn reads(&self) -> Vec<Fact<'_>> {
        self.0.asks()
    }

    fn act(self, at: &At<'_>) -> Result<Deed, Refused> {
        let Place { key, at: fork } = self.0;
        Ok(Deed::edits(vec![Edit::Key(key, KeyEdit::TakeOut(fork))], at.asked.back("/heaps")))
    }
}

/// The rest is found by the machine, or is left to the people again. The form says which, so
/// that two windows that want the same do not take it back from each other.
pub(crate) struct Finish {
    key: KeyId,
    finished: bool,
}

impl Finish {
    /// The button wants the other of finished and not finished.
    pub(crate) fn fields(key: KeyId, drawn: &Drawn, back: &str) -> Markup {
        let wanted = if drawn.finished() { "" } else { "yes" };
        hidden(&[("key", &key.0), ("finish", &wanted), ("back", &back)])
    }
}

impl Form for Finish {
    const PATH: &'static str = "/do/finish";

    fn read(at: &At<'_>) -> Result<Self, Refused> {
        let key = key(at)?;
        match at.asked.request.fields("finish").next() {
            Some("yes") => Ok(Self { key, finished: true }),
            Some("") => Ok(Self { key, finished: false }),
            _ => Err(gone(at.asked)),
        }
    }

    fn reads(&self) -> Vec<Fact<'_>> {
        Vec::new()
    }

    fn act(self, at: &At<'_>) -> Result<Deed, Refused> {
        let Self { key, finished } = self;
        let mut edits = Vec::new();
        if finished != at.collection().keys[&key].finished() {
            let wish = if finished { "yes" } else { "" };
            edits.push(Edit::Key(key, KeyEdit::Wish(WishField::Finish, wish.to_owned())));
        }
        Ok(Deed::edits(edits, at.asked.back(&format!("/key?key={}", key.0))))
    }
}

/// An answer that was still needed: a cell of the table, said by the key's group. Not where
/// somebody has answered since; the same again is nothing new.
pub(super) struct Answer {
    key: KeyId,
    cell: (KindId, CharacterId),
    text: String,
    /// Whether the group says so already.
    again: bool,
}

impl Answer {
    pub(super) fn fields(
        key: KeyId,
        (kind, character): (KindId, Option<CharacterId>),
        back: &str,
    ) -> Markup {
        let character = character.map_or(0, |at| at.0);
        hidden(&[
            ("key", &key.0),
            ("kind", &kind.0),
            ("character", &character),
            ("back", &back),
        ])
    }
}

impl Form for Answer {
    const PATH: &'static str = "/do/answer";

    fn read(at: &At<'_>) -> Result<Self, Refused> {
        let (key, kind) = (key(at)?, kind(at)?);
        let character = CharacterId(at.asked.id("character"));
        if !at.collection().characters.contains_key(&character) {
            return Err(gone(at.asked));
        }
        let text = at.asked.typed("text", LONGEST_TEXT)?;
        let laid = at.desk.laid();
        let said = laid::said(at.collection(), laid.as_deref());
        let source = at.collection().keys[&key].who(key);
        let again = !text.is_empty() && said.said(kind, character, &source) == text;
        Ok(Self { key, cell: (kind, character), text, again })
    }

    fn reads(&self) -> Vec<Fact<'_>> {
        if self.again { Vec::new() } else { vec![cell::fact(self.cell)] }
    }

    fn act(self, at: &At<'_>) -> Result<Deed, Refused> {
        let Self { key, cell: (kind, character), text, again } = self;
        let source = at.collection().keys[&key].who(key);
        let edits = (!again).then_some(Edit::Cell { kind, character, source, text });
        let back = at.asked.back(&format!("/heaps/answers?key={}", key.0));
        Ok(Deed::edits(edits.into_iter().collect(), back))
    }
}

/// Whose key is begun; `copied`: it stands on paper already.
pub(crate) fn start_form(t: Tongue, copied: bool) -> Markup {
    let button = if copied { "copy-begin" } else { "heaps-start" };
    html! {
        form method="post" action=(Start::PATH) {
            (Start::fields(copied))
            label for="key-name" { (t.say("heaps-whose")) }
            input #key-name name="name" maxlength=(LONGEST_NAME) placeholder=(t.say("heaps-whose-example"));
            button.main { (t.say(button)) }
        }
    }
}

/// A key begins.
pub(crate) struct Start {
    name: String,
    /// Whether it stands on paper already.
    copied: bool,
}

impl Start {
    pub(crate) fn fields(copied: bool) -> Markup {
        hidden(&[("then", &if copied { "copy" } else { "" })])
    }
}

impl Form for Start {
    const PATH: &'static str = "/do/start-heaps";

    fn read(at: &At<'_>) -> Result<Self, Refused> {
        let name = at.asked.cut("name", LONGEST_NAME);
        Ok(Self { name, copied: at.asked.request.field("then") == "copy" })
    }

    fn reads(&self) -> Vec<Fact<'_>> {
        Vec::new()
    }

    fn act(self, at: &At<'_>) -> Result<Deed, Refused> {
        let key = at.collection().next_key();
        let to = if self.copied { "copy" } else { "heaps" };
        let name = named(at.asked, self.name, key);
        Ok(Deed::edits(
            vec![Edit::Key(key, KeyEdit::Start(name))],
            format!("/{to}?key={}", key.0),
        ))
    }
}

/// The name of a new key; its number where nobody named it.
pub(crate) fn named(asked: &Asked<'_>, name: String, key: KeyId) -> String {
    if name.is_empty() {
        asked.tongue.with("heaps-unnamed", &[("number", &key.0)])
    } else {
        name
    }
}
