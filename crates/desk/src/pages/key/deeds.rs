//! What a hand does to a key and its questions; and whether people who did not know the answers
//! have tried it.

use maud::{Markup, html};
use spinney_collection::Drawn;
use spinney_collection::keys::Made;
use spinney_collection::pinned::NoThreshold;
use spinney_model::{
    AskOf, CharacterIx, Edit, Fork, Holds, KeyEdit, KeyId, TaxonIx, Value, WishField,
};
use spinney_press::Stamp;
use spinney_voice::Tongue;

use crate::asked::Deed;
use crate::forms::{At, Fact, Form, hidden, nothing};
use crate::pages::finds::deeds::LONGEST_NAME;
use crate::pages::heaps::deeds::{named, words};
use crate::pages::heaps::place::{self, Place, asked_now, gone, of_form};
use crate::pages::key::keyed::Keyed;
use crate::reply::Refused;

/// A key begins, finished by the machine or empty.
pub(super) static BEGIN: Form<Beginning> = Form {
    path: "/do/key-start",
    read: |at| {
        Ok(Beginning {
            name: at.asked.cut("name", LONGEST_NAME),
            group: at.asked.cut("group", LONGEST_NAME),
            finished: at.asked.request.field("how") == "finish",
        })
    },
    rests_on: nothing,
    act: |Beginning { name, group, finished }, at| {
        let key = at.collection().next_key();
        let mut edits = vec![KeyEdit::Start(named(at.asked, name, key))];
        if !group.is_empty() {
            edits.push(KeyEdit::Wish(WishField::Group, group));
        }
        if finished {
            edits.push(KeyEdit::Wish(WishField::Finish, "yes".to_owned()));
        }
        let to = if finished { "/key?key=" } else { "/heaps?key=" };
        let edits = edits.into_iter().map(|edit| Edit::Key(key, edit));
        Ok(Deed::edits(edits, format!("{to}{}", key.0)))
    },
};

/// A key that begins.
pub(super) struct Beginning {
    name: String,
    group: String,
    finished: bool,
}

/// The key is taken out; what was done can bring it back.
pub(super) static REMOVE: Form<KeyId> = Form {
    path: "/do/key-remove",
    read: place::key,
    rests_on: |key| {
        vec![Fact::name(|of| of.keys.get(key).map_or(String::new(), |key| key.name.clone()))]
    },
    act: |key, _| Ok(Deed::edits([Edit::Key(key, KeyEdit::Remove)], "/key")),
};

/// A deed to a question of a key, whoever asks it.
pub(super) struct To<D> {
    place: Place,
    /// What the page showed of the way there and of the question, where the form says so.
    way: Option<String>,
    asks: Option<String>,
    deed: D,
}

impl<D> To<D> {
    /// What the fields say of the question, and besides.
    fn read(at: &At<'_>, deed: D) -> Result<Self, Refused> {
        let field = |name| at.asked.request.fields(name).next().map(str::to_owned);
        let (way, asks) = (field("way"), field("asks"));
        let form = Self { place: Place::read(at)?, way, asks, deed };
        question(at, &form.place).map(|_| form)
    }

    /// It rests on what the key asks on the way there, and there.
    fn asks(&self) -> Vec<Fact<'_>> {
        let Place { key, at: fork } = &self.place;
        let above = Fact::new(
            |state| state.made(*key).map_or(String::new(), |made| made.asks_above(fork)),
            |at| at.asked.refused("key-way-moved"),
        );
        let here = Fact::new(
            |state| state.made(*key).map_or(String::new(), |made| made.asks_at(fork)),
            |at| {
                let made = at.desk.made(at.asked.tongue, *key);
                let couplet = made.as_ref().and_then(|made| made.couplet(fork));
                asked_now(at.asked, couplet.map_or("", |couplet| couplet.wording.first()))
            },
        );
        vec![above.carried(self.way.as_deref()), here.carried(self.asks.as_deref())]
    }

    /// Does it by these edits.
    fn does(
        self,
        at: &At<'_>,
        edits: impl FnOnce(&Keyed<'_>, &Fork, D) -> Result<Vec<KeyEdit>, Refused>,
    ) -> Result<Deed, Refused> {
        let key = question(at, &self.place)?;
        let edits = edits(&key, &self.place.at, self.deed)?;
        Ok(deed(&key, at, edits))
    }
}

/// The key of a question; refused where nothing is asked there by now.
fn question<'r>(at: &At<'r>, place: &Place) -> Result<Keyed<'r>, Refused> {
    let key = keyed(at, place.key)?;
    if key.made.couplet(&place.at).is_some() { Ok(key) } else { Err(gone(at.asked)) }
}

fn keyed<'r>(at: &At<'r>, id: KeyId) -> Result<Keyed<'r>, Refused> {
    Keyed::by_id(at.desk, at.asked.tongue, id).ok_or_else(|| gone(at.asked))
}

fn deed(key: &Keyed<'_>, at: &At<'_>, edits: Vec<KeyEdit>) -> Deed {
    let edits = edits.into_iter().map(|edit| Edit::Key(key.id, edit));
    Deed::edits(edits, at.asked.back(&key.address(None)))
}

/// Other words for the same question.
pub(super) static REWORD: Form<To<String>> = Form {
    path: "/do/key-reword",
    read: |at| To::read(at, words(at.asked)?),
    rests_on: To::asks,
    act: |to, at| {
        to.does(at, |key, fork, words| {
            let reword = KeyEdit::Reword { at: fork.clone(), words };
            Ok(key.from().pin(fork).into_iter().chain([reword]).collect())
        })
    },
};

/// Yes and no change sides, and so do the heaps.
pub(super) static SWAP: Form<To<String>> = Form {
    path: "/do/key-swap",
    read: |at| To::read(at, words(at.asked)?),
    rests_on: To::asks,
    act: |to, at| to.does(at, |key, fork, words| Ok(key.from().swap(fork, &words))),
};

/// The question and all above it stay.
pub(super) static KEEP: Form<To<()>> = Form {
    path: "/do/key-keep",
    read: |at| To::read(at, ()),
    rests_on: To::asks,
    act: |to, at| to.does(at, |key, fork, ()| Ok(key.from().pin(fork))),
};

/// Every question stays as it is, whatever is written into the table; as the page showed them,
/// where the form says so.
pub(super) static KEEP_ALL: Form<(KeyId, Option<String>)> = Form {
    path: "/do/key-keep-all",
    read: |at| {
        let asks = at.asked.request.fields("asks").next().map(str::to_owned);
        Ok((place::key(at)?, asks))
    },
    rests_on: |(key, asks)| {
        let shows = Fact::new(
            |state| state.made(*key).map_or(String::new(), |made| made.asks_all()),
            |at| at.asked.refused("key-moved"),
        );
        vec![shows.carried(asks.as_deref())]
    },
    act: |(key, _), at| {
        let key = keyed(at, key)?;
        Ok(deed(&key, at, key.from().pin_all()))
    },
};

/// Another question in its place.
pub(super) static REPLACE: Form<To<(String, AskOf)>> = Form {
    path: "/do/key-replace",
    read: |at| {
        let ask = of_form(at.asked.request).ok_or_else(|| gone(at.asked));
        To::read(at, (words(at.asked)?, ask?))
    },
    rests_on: To::asks,
    act: |to, at| {
        to.does(at, |key, fork, (words, ask)| {
            if key.laid.may_be_asked(&ask).is_none() {
                return Err(gone(at.asked));
            }
            let ask = KeyEdit::Ask { at: fork.clone(), words, ask: Some(ask) };
            Ok(key.from().pin_above(fork).into_iter().chain([ask]).collect())
        })
    },
};

/// The same question with another number.
pub(super) static THRESHOLD: Form<To<String>> = Form {
    path: "/do/key-threshold",
    read: |at| To::read(at, at.asked.request.field("number").to_owned()),
    rests_on: To::asks,
    act: |to, at| {
        to.does(at, |key, fork, number| {
            let edits = key.from().moved(fork, &number);
            edits.map_err(|why| no_threshold(key, fork, why).unwrap_or_else(|| gone(at.asked)))
        })
    },
};

/// Why a number cannot be asked for, in words; None: the question is not there any more.
fn no_threshold(key: &Keyed<'_>, at: &Fork, why: NoThreshold) -> Option<Refused> {
    let t = key.t;
    let sentence = match why {
        NoThreshold::Gone => return None,
        NoThreshold::NotOfTable => return Some(Refused::say(t, "key-not-of-table")),
        NoThreshold::Inside(kinds) => {
            let column = key.made.couplet(at)?.ask.as_ref()?.character;
            let kinds: Vec<String> =
                kinds.into_iter().map(|taxon| with_range(key, taxon, column)).collect();
            return Some(Refused::with(t, "key-inside", &[("kinds", &kinds.join(", "))]));
        }
        NoThreshold::NoNumber => t.say("key-no-number"),
        NoThreshold::NoCount => t.say("key-no-count"),
        NoThreshold::Refused(why) => key.why_not(why),
    };
    Some(Refused { sentence, remedy: t.say("key-no-number-remedy") })
}

/// A kind with its range in a column: `lime (3–5)`.
fn with_range(key: &Keyed<'_>, taxon: TaxonIx, column: CharacterIx) -> String {
    let matrix = &key.made.layer.matrix;
    let name = &matrix.taxon(taxon).name;
    match matrix.cell(taxon, column).value {
        Value::Range { low, high } => {
            let column = matrix.character(column);
            format!("{name} ({}–{})", column.number(low), column.number(high))
        }
        _ => name.clone(),
    }
}

/// Whether the key is a trying-out copy, and the button by which people say that they tried it.
pub(crate) fn trying_out(
    t: Tongue,
    id: KeyId,
    made: &Made,
    drawn: &Drawn,
    back: &str,
) -> Markup {
    let standing = made.standing(drawn);
    let (told, button, wanted) = match (Stamp::of(standing), standing.tried) {
        _ if made.key.couplets.is_empty() => return html! {},
        (Stamp::Draft, _) | (Stamp::None, false) => return html! {},
        (Stamp::TryingOut, _) if standing.holds == Holds::ToMend => {
            return html! { p.quiet.trying-out { (t.say("tried-mend-first")) } };
        }
        (Stamp::TryingOut, _) => ("tried-not-yet", "tried-it", made.token()),
        (Stamp::None, true) => ("tried-already", "tried-not-after-all", String::new()),
    };
    html! {
        form.trying-out method="post" action=(TRIED.path) {
            (hidden(&[("key", &id.0), ("tried", &wanted), ("back", &back)]))
            p.quiet { (t.say(told)) }
            button #tried { (t.say(button)) }
        }
    }
}

/// People who did not know the answers tried the key as the page showed it, by its token, and it
/// worked; or, without one, they have not after all.
pub(crate) static TRIED: Form<(KeyId, String)> = Form {
    path: "/do/key-tried",
    read: |at| Ok((place::key(at)?, at.asked.request.field("tried").to_owned())),
    rests_on: |(key, tried)| {
        let shows = Fact::new(
            |state| state.made(*key).map_or(String::new(), |made| made.token()),
            |at| at.asked.refused("tried-moved"),
        );
        if tried.is_empty() { vec![] } else { vec![shows.carried(Some(tried))] }
    },
    act: |(key, tried), at| {
        let other = at.collection().keys[&key].wish(WishField::Tried) != tried;
        let edit = other.then_some(Edit::Key(key, KeyEdit::Wish(WishField::Tried, tried)));
        Ok(Deed::edits(edit, at.asked.back(&format!("/key?key={}", key.0))))
    },
};
