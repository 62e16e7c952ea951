//! What a hand does to heaps: ask, sort, take back, let the rest be found; and how a key begins.

use maud::{Markup, html};
use spinney_collection::{Drawn, laid};
use spinney_model::{AskOf, CharacterId, Edit, KeyEdit, KeyId, KindId, Side, WishField};
use spinney_voice::Tongue;

use crate::asked::{Asked, Deed};
use crate::forms::{At, Fact, Form, hidden, nothing};
use crate::pages::cell;
use crate::pages::finds::deeds::LONGEST_NAME;
use crate::pages::heaps::place::{Place, gone, key, kind, of_form};
use crate::pages::table::fields::LONGEST_TEXT;
use crate::reply::Refused;
use crate::worked::State;

/// The longest question, in letters.
pub(crate) const LONGEST_QUESTION: usize = 300;

/// A question is asked of a heap, in these words, with what it means in the table.
pub(super) static ASK_HERE: Form<(Place, String, Option<AskOf>)> = Form {
    path: "/do/ask",
    read: |at| Ok((Place::read(at)?, words(at.asked)?, meant(at)?)),
    rests_on: |(place, ..)| place.asks(),
    act: |(Place { key, at: fork }, words, ask), at| {
        let ask = Edit::Key(key, KeyEdit::Ask { at: fork, words, ask });
        Ok(Deed::edits([ask], at.asked.back("/heaps")))
    },
};

/// The words of a question, as a form says them.
pub(crate) fn words(asked: &Asked<'_>) -> Result<String, Refused> {
    match asked.cut("words", LONGEST_QUESTION) {
        words if words.is_empty() => Err(asked.refused("heaps-no-words")),
        words => Ok(words),
    }
}

/// What the form says that the question means in the table; None: it says nothing of that.
pub(crate) fn meant(at: &At<'_>) -> Result<Option<AskOf>, Refused> {
    let request = at.asked.request;
    if !["character", "state", "at-least", "below"].iter().any(|name| at.asked.sent(name)) {
        return Ok(None);
    }
    let laid = at.desk.laid();
    let may_be = |of: &AskOf| laid.is_some_and(|laid| laid.may_be_asked(of).is_some());
    let of = of_form(request).filter(may_be);
    let refused = || at.asked.refused("heaps-not-of-table");
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
pub(super) static SORT: Form<(Place, KindId, Option<Side>)> = Form {
    path: "/do/sort",
    read: |at| {
        let side = match at.asked.request.field("side") {
            MIDDLE => None,
            word => Some(side(word).ok_or_else(|| gone(at.asked))?),
        };
        Ok((Place::read(at)?, kind(at)?, side))
    },
    rests_on: |(place, ..)| place.asks(),
    act: |(Place { key, at: fork }, kind, side), at| {
        let sort = Edit::Key(key, KeyEdit::Sort { at: fork, kind, side });
        Ok(Deed::edits([sort], at.asked.back("/heaps")))
    },
};

/// The table says what the hand says: a person decided, so it goes into the table itself, as
/// long as both still say what the card showed.
pub(super) static TABLE_AS_SORTED: Form<Sorted> = Form {
    path: "/do/table-as-sorted",
    read: |at| Ok(Sorted { place: Place::read(at)?, kind: kind(at)? }),
    rests_on: |of| of.place.asks().into_iter().chain([of.both_say()]).collect(),
    act: |of, at| {
        let now = at.desk.now();
        let (Some(text), Some(character)) = (of.writes(now), of.column(now)) else {
            return Err(at.asked.refused("heaps-cannot-write"));
        };
        let Sorted { place: Place { key, at: fork }, kind } = of;
        let write = Edit::Cell { kind, character, source: String::new(), text };
        let take_back = Edit::Key(key, KeyEdit::Sort { at: fork, kind, side: None });
        Ok(Deed::edits([write, take_back], at.asked.back("/heaps")))
    },
};

/// A card that a hand put somewhere.
pub(super) struct Sorted {
    place: Place,
    kind: KindId,
}

impl Sorted {
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

    /// What the table says there, and the hand.
    fn both_say(&self) -> Fact<'_> {
        Fact::new(
            |state| {
                let said = self.column(state).map(|at| cell::all(state, (self.kind, at)));
                format!("{said:?} {:?}", self.writes(state))
            },
            |at| match self.column(at.desk.now()) {
                Some(column) => cell::moved(at, (self.kind, column)),
                None => gone(at.asked),
            },
        )
    }
}

/// A question is taken out, with all below it; what a hand fixed in a key is let go so, too.
pub(crate) static TAKE_OUT: Form<Place> = Form {
    path: "/do/take-out",
    read: Place::read,
    rests_on: Place::asks,
    act: |Place { key, at: fork }, at| {
        let take_out = Edit::Key(key, KeyEdit::TakeOut(fork));
        Ok(Deed::edits([take_out], at.asked.back("/heaps")))
    },
};

/// The rest is found by the machine, or is left to the people again. The form says which, so
/// that two windows that want the same do not take it back from each other.
pub(crate) static FINISH: Form<(KeyId, bool)> = Form {
    path: "/do/finish",
    read: |at| match at.asked.request.fields("finish").next() {
        Some("yes") => Ok((key(at)?, true)),
        Some("") => Ok((key(at)?, false)),
        _ => Err(gone(at.asked)),
    },
    rests_on: nothing,
    act: |(key, finished), at| {
        let wish = if finished { "yes" } else { "" }.to_owned();
        let other = finished != at.collection().keys[&key].finished();
        let wish = other.then_some(Edit::Key(key, KeyEdit::Wish(WishField::Finish, wish)));
        Ok(Deed::edits(wish, at.asked.back(&format!("/key?key={}", key.0))))
    },
};

/// The hidden fields of a button that wants the other of finished and not finished.
pub(crate) fn finish_fields(key: KeyId, drawn: &Drawn, back: &str) -> Markup {
    let wanted = if drawn.finished() { "" } else { "yes" };
    hidden(&[("key", &key.0), ("finish", &wanted), ("back", &back)])
}

/// An answer that was still needed: a cell of the table, said by the key's group. Not where
/// somebody has answered since; the same again is nothing new.
pub(super) static ANSWER: Form<Answer> = Form {
    path: "/do/answer",
    read: |at| {
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
        Ok(Answer { key, cell: (kind, character), source, text, again })
    },
    rests_on: |answer| match answer.again {
        true => Vec::new(),
        false => vec![cell::fact(answer.cell)],
    },
    act: |Answer { key, cell: (kind, character), source, text, again }, at| {
        let edit = (!again).then_some(Edit::Cell { kind, character, source, text });
        let back = format!("/heaps/answers?key={}", key.0);
        Ok(Deed::edits(edit, at.asked.back(&back)))
    },
};

/// What a group says of a cell.
pub(super) struct Answer {
    key: KeyId,
    cell: (KindId, CharacterId),
    source: String,
    text: String,
    /// Whether the group says so already.
    again: bool,
}

/// Whose key is begun; `copied`: it stands on paper already.
pub(crate) fn start_form(t: Tongue, copied: bool) -> Markup {
    let button = if copied { "copy-begin" } else { "heaps-start" };
    html! {
        form method="post" action=(START.path) {
            (hidden(&[("then", &if copied { "copy" } else { "" })]))
            label for="key-name" { (t.say("heaps-whose")) }
            input #key-name name="name" maxlength=(LONGEST_NAME) placeholder=(t.say("heaps-whose-example"));
            button.main { (t.say(button)) }
        }
    }
}

/// A key begins, with this name; whether it stands on paper already.
pub(crate) static START: Form<(String, bool)> = Form {
    path: "/do/start-heaps",
    read: |at| {
        let copied = at.asked.request.field("then") == "copy";
        Ok((at.asked.cut("name", LONGEST_NAME), copied))
    },
    rests_on: nothing,
    act: |(name, copied), at| {
        let key = at.collection().next_key();
        let to = if copied { "copy" } else { "heaps" };
        let start = Edit::Key(key, KeyEdit::Start(named(at.asked, name, key)));
        Ok(Deed::edits([start], format!("/{to}?key={}", key.0)))
    },
};

/// The name of a new key; its number where nobody named it.
pub(crate) fn named(asked: &Asked<'_>, name: String, key: KeyId) -> String {
    if name.is_empty() {
        asked.tongue.with("heaps-unnamed", &[("number", &key.0)])
    } else {
        name
    }
}
