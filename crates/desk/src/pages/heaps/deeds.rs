//! What a hand does to heaps: begin, ask, sort, take back, let the rest be found.

use maud::{Markup, html};
use spinney_model::{AskOf, CharacterId, Edit, Fork, KeyEdit, KeyId, KindId, Side, WishField};

use super::Top;
use crate::Desk;
use crate::asking::{of_form, way};
use crate::pages::finds::LONGEST_NAME;
use crate::pages::stood;
use crate::routes::{Asked, Deed, Refused};
use spinney_collection::Drawn;
use spinney_collection::laid::{self, Laid};

/// The longest question, in letters.
pub(crate) const LONGEST_QUESTION: usize = 300;
/// The hidden field with what was asked on the way to a place.
const STOOD_WAY: &str = "stood-way";

/// Which key and where, as the form says; refused where another window took it away.
pub(crate) fn place(desk: &Desk, asked: &Asked<'_>) -> Result<(KeyId, Fork), Refused> {
    let key = KeyId(asked.request.field("key").parse().unwrap_or(0));
    match desk.history.now.keys.contains_key(&key) {
        true => Ok((key, way(asked.request.field("at")))),
        false => Err(gone(asked)),
    }
}

/// As [`place`], and refused where another window has asked something else there or on the way
/// there meanwhile: a card sorted for one question says nothing of another.
pub(crate) fn seen_place(desk: &Desk, asked: &Asked<'_>) -> Result<(KeyId, Fork), Refused> {
    let (key, at) = place(desk, asked)?;
    let t = asked.tongue;
    let drawn = &desk.history.now.keys[&key];
    if !stood::still(&asked.request.form, STOOD_WAY, &way_token(drawn, &at)) {
        return Err(Refused {
            sentence: t.say("heaps-way-moved"),
            remedy: t.say("heaps-moved-remedy"),
        });
    }
    let question = drawn.questions.get(&at);
    let now = question.map_or("", |question| question.words.as_str());
    let seen = asked.request.form.iter().find(|(field, _)| field == "seen");
    match seen.is_none_or(|(_, words)| words.split_whitespace().eq(now.split_whitespace())) {
        true => Ok((key, at)),
        false => {
            let now =
                if now.is_empty() { t.say("heaps-nothing-asked") } else { now.to_owned() };
            Err(Refused {
                sentence: t.with("heaps-moved", &[("words", &now)]),
                remedy: t.say("heaps-moved-remedy"),
            })
        }
    }
}

/// The hidden fields that say what is asked at a place and on the way there.
pub(crate) fn seen_fields(drawn: &Drawn, at: &Fork) -> Markup {
    let words = drawn.questions.get(at).map_or("", |question| question.words.as_str());
    html! {
        input type="hidden" name="seen" value=(words);
        (stood::field(STOOD_WAY, &way_token(drawn, at)))
    }
}

/// The token of what people ask on the way to a place.
fn way_token(drawn: &Drawn, at: &Fork) -> String {
    stood::token((0..at.0.len()).map(|length| {
        let question = drawn.questions.get(&Fork(at.0[..length].to_vec()));
        question.map_or("", |question| question.words.as_str())
    }))
}

pub(crate) fn gone(asked: &Asked<'_>) -> Refused {
    let t = asked.tongue;
    Refused { sentence: t.say("heaps-gone"), remedy: t.say("heaps-gone-remedy") }
}

/// A text of a form, cut to so many letters.
pub(crate) fn text(asked: &Asked<'_>, field: &str, longest: usize) -> String {
    let words = asked.request.field(field).split_whitespace().collect::<Vec<_>>().join(" ");
    words.chars().take(longest).collect()
}

pub(super) fn start(desk: &mut Desk, asked: &Asked<'_>) -> Result<Deed, Refused> {
    let t = asked.tongue;
    let key = desk.history.now.next_key();
    let name = match text(asked, "name", LONGEST_NAME) {
        name if name.is_empty() => t.with("heaps-unnamed", &[("number", &key.0)]),
        name => name,
    };
    let to = match asked.request.field("then") {
        "copy" => format!("/copy?key={}", key.0),
        _ => format!("/heaps?key={}", key.0),
    };
    Ok(Deed::edits(vec![Edit::Key(key, KeyEdit::Start(name))], to))
}

pub(super) fn ask(desk: &mut Desk, asked: &Asked<'_>) -> Result<Deed, Refused> {
    let t = asked.tongue;
    let (key, at) = seen_place(desk, asked)?;
    let words = text(asked, "words", LONGEST_QUESTION);
    if words.is_empty() {
        return Err(Refused {
            sentence: t.say("heaps-no-words"),
            remedy: t.say("heaps-no-words-remedy"),
        });
    }
    let ask = Edit::Key(key, KeyEdit::Ask { at, words, ask: meant(desk, asked)? });
    Ok(Deed::edits(vec![ask], asked.back("/heaps")))
}

/// What the form says that the question means in the table; None: it says nothing of that.
pub(crate) fn meant(desk: &mut Desk, asked: &Asked<'_>) -> Result<Option<AskOf>, Refused> {
    let says = |name| asked.request.fields(name).next().is_some();
    if !["character", "state", "at-least", "below"].into_iter().any(says) {
        return Ok(None);
    }
    let laid = desk.worked.laid(&desk.history.now);
    let may_be = |of: &AskOf| laid.is_some_and(|laid| laid.may_be_asked(of).is_some());
    let of = of_form(asked.request).filter(may_be);
    let t = asked.tongue;
    of.map(Some).ok_or_else(|| Refused {
        sentence: t.say("heaps-not-of-table"),
        remedy: t.say("heaps-not-of-table-remedy"),
    })
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

pub(super) fn sort(desk: &mut Desk, asked: &Asked<'_>) -> Result<Deed, Refused> {
    let (key, at) = seen_place(desk, asked)?;
    let kind = kind(desk, asked)?;
    let side = side(asked.request.field("side"));
    let edits = vec![Edit::Key(key, KeyEdit::Sort { at, kind, side })];
    Ok(Deed::edits(edits, asked.back("/heaps")))
}

fn kind(desk: &Desk, asked: &Asked<'_>) -> Result<KindId, Refused> {
    let kind = KindId(asked.request.field("kind").parse().unwrap_or(0));
    let known = desk.history.now.kinds.contains_key(&kind);
    if known { Ok(kind) } else { Err(gone(asked)) }
}

/// The card goes where the table says.
pub(super) fn sort_as_table(desk: &mut Desk, asked: &Asked<'_>) -> Result<Deed, Refused> {
    let (key, at) = seen_place(desk, asked)?;
    let kind = kind(desk, asked)?;
    let edits = vec![Edit::Key(key, KeyEdit::Sort { at, kind, side: None })];
    Ok(Deed::edits(edits, asked.back("/heaps")))
}

/// The hidden field with what is said of a card's cell, and what its heap would write there.
pub(super) fn weighed_field(top: &Top<'_>, kind: KindId) -> Markup {
    let question = top.drawn.questions.get(&top.at);
    let weighed = question.and_then(|question| question.ask.as_ref()).map(|ask| {
        let place = (top.key, &top.at);
        weighed(top.laid, place, (kind, ask.character))
    });
    html! { @if let Some(weighed) = weighed { (stood::field(stood::STOOD, &weighed)) } }
}

fn weighed(laid: &Laid, (key, at): (KeyId, &Fork), cell: (KindId, CharacterId)) -> String {
    let writes = laid.sorted.text(key, at, cell.0).unwrap_or_default();
    stood::token([stood::cell(&laid.said, cell).as_str(), writes])
}

/// The table says what the hand says: a person decided, so it goes into the table itself, as
/// long as both still say what the card showed.
pub(super) fn table_as_sorted(desk: &mut Desk, asked: &Asked<'_>) -> Result<Deed, Refused> {
    let t = asked.tongue;
    let (key, at) = seen_place(desk, asked)?;
    let kind = kind(desk, asked)?;
    let laid = desk.worked.laid(&desk.history.now);
    let question = desk.history.now.keys[&key].questions.get(&at);
    let ask = question.and_then(|question| question.ask.as_ref());
    let text = laid.as_ref().and_then(|laid| laid.sorted.text(key, &at, kind));
    let (Some(laid), Some(text), Some(ask)) = (&laid, text, ask) else {
        return Err(Refused {
            sentence: t.say("heaps-cannot-write"),
            remedy: t.say("heaps-cannot-write-remedy"),
        });
    };
    let character = ask.character;
    let weighed = weighed(laid, (key, &at), (kind, character));
    if !stood::still(&asked.request.form, stood::STOOD, &weighed) {
        let collection = &desk.history.now;
        return Err(stood::cell_moved(asked, collection, &laid.said, (kind, character)));
    }
    let text = text.to_owned();
    let edits = vec![
        Edit::Cell { kind, character, source: String::new(), text },
        Edit::Key(key, KeyEdit::Sort { at, kind, side: None }),
    ];
    Ok(Deed::edits(edits, asked.back("/heaps")))
}

pub(super) fn take_out(desk: &mut Desk, asked: &Asked<'_>) -> Result<Deed, Refused> {
    let (key, at) = seen_place(desk, asked)?;
    Ok(Deed::edits(vec![Edit::Key(key, KeyEdit::TakeOut(at))], asked.back("/heaps")))
}

/// The rest is found by the machine, or is left to the people again. The form says which, so
/// that two windows that want the same do not take it back from each other.
pub(crate) fn finish(desk: &mut Desk, asked: &Asked<'_>) -> Result<Deed, Refused> {
    let (key, _) = place(desk, asked)?;
    let finished = desk.history.now.keys[&key].finished();
    let wanted = match asked.request.fields("finish").next() {
        Some("yes") => true,
        Some("") => false,
        _ => return Err(gone(asked)),
    };
    let mut edits = Vec::new();
    if wanted != finished {
        let wish = if wanted { "yes" } else { "" };
        edits.push(Edit::Key(key, KeyEdit::Wish(WishField::Finish, wish.to_owned())));
    }
    Ok(Deed::edits(edits, asked.back(&format!("/key?key={}", key.0))))
}

/// The hidden field by which a button wants the other of finished and not finished.
pub(crate) fn finish_field(drawn: &Drawn) -> Markup {
    let wanted = if drawn.finished() { "" } else { "yes" };
    html! { input type="hidden" name="finish" value=(wanted); }
}

/// An answer that was still needed: a cell of the table, said by the key's group. Not where
/// somebody has answered meanwhile; the same again is nothing new.
pub(super) fn answer(desk: &mut Desk, asked: &Asked<'_>) -> Result<Deed, Refused> {
    let (key, _) = place(desk, asked)?;
    let kind = kind(desk, asked)?;
    let character = CharacterId(asked.request.field("character").parse().unwrap_or(0));
    if !desk.history.now.characters.contains_key(&character) {
        return Err(gone(asked));
    }
    let source = desk.history.now.keys[&key].who(key);
    let text = text(asked, "text", LONGEST_QUESTION);
    let laid = desk.worked.laid(&desk.history.now);
    let said = laid::said(&desk.history.now, laid.as_deref());
    let mut edits = Vec::new();
    if text.is_empty() || said.said(kind, character, &source) != text {
        if !stood::cell_still(asked, &said, (kind, character)) {
            return Err(stood::cell_moved(asked, &desk.history.now, &said, (kind, character)));
        }
        edits.push(Edit::Cell { kind, character, source, text });
    }
    Ok(Deed::edits(edits, asked.back(&format!("/heaps/answers?key={}", key.0))))
}
