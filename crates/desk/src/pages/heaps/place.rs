//! A place of a key and the question there: as forms and addresses name them, with what people
//! ask there, and as a table top, with what all parts of the screen look at.
//!
//! From a way through a key, or what a question means, to hidden fields and addresses and back.
//! What does not fit is nobody's question.

use maud::{Markup, html};
use spinney_collection::keys::letters;
use spinney_collection::laid::Laid;
use spinney_collection::layer::{Heap, Layer};
use spinney_collection::{Collection, Drawn};
use spinney_model::{AskOf, AskedOf, CharacterId, Fork, KeyId, KindId, Quantity, limits};
use spinney_voice::Tongue;

use crate::asked::Asked;
use crate::desk::Desk;
use crate::forms::{At, Fact, hidden};
use crate::reply::Refused;
use crate::request::Request;

/// A place of a key that is there.
#[derive(Clone)]
pub(crate) struct Place {
    pub(crate) key: KeyId,
    pub(crate) at: Fork,
}

impl Place {
    /// Which key and where, as the form says; refused where another window took the key away.
    pub(crate) fn read(at: &At<'_>) -> Result<Self, Refused> {
        Ok(Self { key: key(at)?, at: way(at.asked.request.field("at")) })
    }

    /// What people ask at the place and on the way there: a card sorted for one question says
    /// nothing of another.
    pub(crate) fn asks(&self) -> Vec<Fact<'_>> {
        let above = Fact::new(
            |state| {
                let words = (0..self.at.0.len()).map(|length| {
                    words(state.collection, self.key, &Fork(self.at.0[..length].to_vec()))
                });
                words.collect::<Vec<_>>().join("\n")
            },
            |at| at.asked.refused("heaps-way-moved"),
        );
        let here = Fact::new(
            |state| words(state.collection, self.key, &self.at).to_owned(),
            |at| asked_now(at.asked, words(at.collection(), self.key, &self.at)),
        );
        vec![above, here]
    }
}

/// Something else is asked by now.
pub(crate) fn asked_now(asked: &Asked<'_>, now: &str) -> Refused {
    if now.is_empty() {
        return asked.refused("heaps-moved-away");
    }
    Refused::with(asked.tongue, "heaps-moved", &[("words", &now)])
}

/// The words of a question that people asked; empty: nothing is asked there.
fn words<'c>(collection: &'c Collection, key: KeyId, at: &Fork) -> &'c str {
    let question = collection.keys.get(&key).and_then(|drawn| drawn.questions.get(at));
    question.map_or("", |question| question.words.as_str())
}

/// The key of a form.
pub(crate) fn key(at: &At<'_>) -> Result<KeyId, Refused> {
    let key = KeyId(at.asked.id("key"));
    if at.collection().keys.contains_key(&key) { Ok(key) } else { Err(gone(at.asked)) }
}

/// The kind of a form.
pub(crate) fn kind(at: &At<'_>) -> Result<KindId, Refused> {
    let kind = KindId(at.asked.id("kind"));
    if at.collection().kinds.contains_key(&kind) { Ok(kind) } else { Err(gone(at.asked)) }
}

/// What the form is about is not there any more.
pub(crate) fn gone(asked: &Asked<'_>) -> Refused {
    asked.refused("heaps-gone")
}

/// The questions on the way to a place, each with its answer.
pub(crate) fn on_the_way<'d>(drawn: &'d Drawn, at: &Fork) -> Vec<(&'d str, bool)> {
    let step = |length: usize| {
        let question = drawn.questions.get(&Fork(at.0[..length].to_vec()));
        (question.map_or("", |question| question.words.as_str()), at.0[length])
    };
    (0..at.0.len()).map(step).collect()
}

/// Everything that the parts of this screen look at.
pub(super) struct Top<'a> {
    pub(super) t: Tongue,
    pub(super) desk: &'a Desk,
    pub(super) key: KeyId,
    pub(super) drawn: &'a Drawn,
    pub(super) laid: &'a Laid,
    pub(super) layer: &'a Layer,
    pub(super) at: Fork,
    pub(super) back: String,
}

impl Top<'_> {
    /// The words of the question here; empty: nothing is asked yet.
    pub(super) fn words(&self) -> &str {
        self.drawn.questions.get(&self.at).map_or("", |question| question.words.as_str())
    }

    pub(super) fn heap(&self) -> &Heap {
        self.layer.forks.get(&self.at).expect("the fork was found before")
    }

    /// The address of a fork of this key.
    pub(super) fn address(&self, at: &Fork) -> String {
        format!("/heaps?key={}&at={}", self.key.0, letters(at))
    }

    /// The hidden fields of a form about this place.
    pub(super) fn place_fields(&self) -> Markup {
        hidden(&[("key", &self.key.0), ("at", &letters(&self.at)), ("back", &self.back)])
    }

    /// The hidden fields of a form about a card at this place.
    pub(super) fn card_fields(&self, kind: KindId) -> Markup {
        html! { input type="hidden" name="kind" value=(kind.0); (self.place_fields()) }
    }
}

/// The fields that say what a question means.
pub(crate) fn fields(ask: &AskOf) -> Markup {
    html! {
        input type="hidden" name="character" value=(ask.character.0);
        @match &ask.yes {
            AskedOf::States(states) => @for state in states {
                input type="hidden" name="state" value=(state);
            },
            AskedOf::AtLeast(least) => input type="hidden" name="at-least" value=(least.thousandths());,
            AskedOf::Below(least) => input type="hidden" name="below" value=(least.thousandths());,
        }
    }
}

/// What the fields of a form say that a question means; None: nothing.
pub(crate) fn of_form(request: &Request) -> Option<AskOf> {
    let character = CharacterId(request.field("character").parse().ok()?);
    let number = |name| request.field(name).parse().ok().map(Quantity::from_thousandths);
    let states: Vec<String> = request.fields("state").map(str::to_owned).collect();
    let yes = match (number("at-least"), number("below")) {
        (Some(least), _) => AskedOf::AtLeast(least),
        (None, Some(least)) => AskedOf::Below(least),
        (None, None) if !states.is_empty() => AskedOf::States(states),
        (None, None) => return None,
    };
    Some(AskOf { character, yes })
}

/// A way from letters; what is no way leads to the beginning. At most so many questions deep
/// as a collection has kinds.
pub(crate) fn way(letters: &str) -> Fork {
    let answer = |letter| match letter {
        'y' => Some(true),
        'n' => Some(false),
        _ => None,
    };
    let way = letters.chars().take(limits::SCREENS_KINDS).map(answer);
    Fork(way.collect::<Option<_>>().unwrap_or_default())
}
