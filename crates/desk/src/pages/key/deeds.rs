//! What a hand does to a key and its questions.

use spinney_check::Says;
use spinney_collection::keys;
use spinney_collection::laid::quantity;
use spinney_model::{
    Ask, AskOf, Asked, Edit, Fork, KeyEdit, KeyId, Quantity, Scale, Value, WhyNot, WishField,
};

use super::keyed::{Keyed, asks_above, asks_all, asks_at};
use super::pinned;
use crate::asked::Deed;
use crate::asking::of_form;
use crate::forms::{At, Fact, Form, nothing};
use crate::pages::finds::fields::LONGEST_NAME;
use crate::pages::heaps::deeds::{named, words};
use crate::pages::heaps::place::{self, Place, asked_now, gone};
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

/// Other words for the same question.
pub(super) static REWORD: Form<To<Reword>> = to_question("/do/key-reword");
/// Yes and no change sides, and so do the heaps.
pub(super) static SWAP: Form<To<Swap>> = to_question("/do/key-swap");
/// The question and all above it stay.
pub(super) static KEEP: Form<To<Keep>> = to_question("/do/key-keep");
/// Another question in its place.
pub(super) static REPLACE: Form<To<Replace>> = to_question("/do/key-replace");
/// The same question with another number.
pub(super) static THRESHOLD: Form<To<Threshold>> = to_question("/do/key-threshold");

/// What is done to a question of a key, whoever asks it.
pub(super) trait ToQuestion: Sized {
    /// What the fields say besides which question it is.
    ///
    /// **Errors**: as of a [`Form`].
    fn read(at: &At<'_>) -> Result<Self, Refused>;

    /// What the deed comes to.
    ///
    /// **Errors**: it cannot be done to this question.
    fn edits(self, key: &Keyed<'_>, fork: &Fork, at: &At<'_>) -> Result<Vec<Edit>, Refused>;
}

/// A deed to a question.
pub(super) struct To<D> {
    place: Place,
    /// What the page showed of the way there and of the question, where the form says so.
    way: Option<String>,
    asks: Option<String>,
    deed: D,
}

/// The form of such a deed. It rests on what the key asks on the way there, and there.
const fn to_question<D: ToQuestion>(path: &'static str) -> Form<To<D>> {
    Form {
        path,
        read: |at| {
            let field = |name| at.asked.request.fields(name).next().map(str::to_owned);
            let (way, asks) = (field("way"), field("asks"));
            let deed = D::read(at)?;
            let form = To { place: Place::read(at)?, way, asks, deed };
            question(at, &form.place).map(|_| form)
        },
        rests_on: |To { place: Place { key, at: fork }, way, asks, .. }| {
            let above = Fact::new(
                |state| state.made(*key).map_or(String::new(), |made| asks_above(&made, fork)),
                |at| at.asked.refused("key-way-moved"),
            );
            let here = Fact::new(
                |state| state.made(*key).map_or(String::new(), |made| asks_at(&made, fork)),
                |at| {
                    let made = at.desk.made(at.asked.tongue, *key);
                    let couplet = made.as_ref().and_then(|made| made.couplet(fork));
                    let words = couplet.map_or("", |couplet| couplet.wording.first());
                    asked_now(at.asked, words)
                },
            );
            vec![above.carried(way.as_deref()), here.carried(asks.as_deref())]
        },
        act: |To { place, deed, .. }, at| {
            let key = question(at, &place)?;
            let edits = deed.edits(&key, &place.at, at)?;
            Ok(Deed::edits(edits, at.asked.back(&key.address(None))))
        },
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

/// Other words for the same question.
pub(super) struct Reword(String);

impl ToQuestion for Reword {
    fn read(at: &At<'_>) -> Result<Self, Refused> {
        words(at.asked).map(Self)
    }

    fn edits(self, key: &Keyed<'_>, fork: &Fork, _: &At<'_>) -> Result<Vec<Edit>, Refused> {
        let mut edits = pinned::pin(key, fork);
        edits.push(Edit::Key(key.id, KeyEdit::Reword { at: fork.clone(), words: self.0 }));
        Ok(edits)
    }
}

/// Yes and no change sides, and so do the heaps.
pub(super) struct Swap(String);

impl ToQuestion for Swap {
    fn read(at: &At<'_>) -> Result<Self, Refused> {
        words(at.asked).map(Self)
    }

    fn edits(self, key: &Keyed<'_>, fork: &Fork, _: &At<'_>) -> Result<Vec<Edit>, Refused> {
        let ask = key.made.couplet(fork).and_then(|couplet| couplet.ask.as_ref());
        let meant = key.drawn().questions.get(fork).map(|question| question.ask.is_some());
        // What a person sorted without a meaning has none afterwards either.
        let ask = ask.filter(|_| meant != Some(false));
        let ask = ask.and_then(|ask| pinned::of_the_table(key, &pinned::opposite(key, ask)));
        let ask = ask.or_else(|| {
            let linked = key.drawn().questions.get(fork)?.ask.as_ref()?;
            key.laid.ask_of(&pinned::opposite(key, &key.laid.ask(linked)?))
        });
        Ok(pinned::asked_anew(key, fork, &self.0, ask, true))
    }
}

/// The question and all above it stay.
pub(super) struct Keep;

impl ToQuestion for Keep {
    fn read(_: &At<'_>) -> Result<Self, Refused> {
        Ok(Self)
    }

    fn edits(self, key: &Keyed<'_>, fork: &Fork, _: &At<'_>) -> Result<Vec<Edit>, Refused> {
        Ok(pinned::pin(key, fork))
    }
}

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
            |state| state.made(*key).map_or(String::new(), |made| asks_all(&made)),
            |at| at.asked.refused("key-moved"),
        );
        vec![shows.carried(asks.as_deref())]
    },
    act: |(key, _), at| {
        let key = keyed(at, key)?;
        Ok(Deed::edits(pinned::pin_all(&key), at.asked.back(&key.address(None))))
    },
};

/// Another question in its place.
pub(super) struct Replace {
    words: String,
    ask: AskOf,
}

impl ToQuestion for Replace {
    fn read(at: &At<'_>) -> Result<Self, Refused> {
        let words = words(at.asked)?;
        let ask = of_form(at.asked.request).ok_or_else(|| gone(at.asked))?;
        Ok(Self { words, ask })
    }

    fn edits(self, key: &Keyed<'_>, fork: &Fork, at: &At<'_>) -> Result<Vec<Edit>, Refused> {
        let Self { words, ask } = self;
        if key.laid.may_be_asked(&ask).is_none() {
            return Err(gone(at.asked));
        }
        let mut edits = pinned::pin_above(key, fork);
        edits.push(Edit::Key(key.id, KeyEdit::Ask { at: fork.clone(), words, ask: Some(ask) }));
        Ok(edits)
    }
}

/// The same question with another number.
pub(super) struct Threshold(String);

impl ToQuestion for Threshold {
    fn read(at: &At<'_>) -> Result<Self, Refused> {
        Ok(Self(at.asked.request.field("number").to_owned()))
    }

    fn edits(self, key: &Keyed<'_>, fork: &Fork, at: &At<'_>) -> Result<Vec<Edit>, Refused> {
        let couplet = key.made.couplet(fork).expect("it was found before");
        let old = couplet.ask.as_ref().ok_or_else(|| gone(at.asked))?;
        let character = key.made.layer.matrix.character(old.character);
        // It is typed as the column is written: 4 in a column of centimetres is 40 mm.
        let kept = |typed: Quantity| {
            let product =
                i128::from(typed.thousandths()) * i128::from(character.one().thousandths());
            let nearest = (product.abs() + 500) / 1000 * product.signum();
            let farthest = if nearest < 0 { i64::MIN } else { i64::MAX };
            Quantity::from_thousandths(i64::try_from(nearest).unwrap_or(farthest))
        };
        let number = quantity(&self.0).map(kept);
        let counts = matches!(character.scale, Scale::Counts);
        let number = number.filter(|number| !counts || number.thousandths() % 1000 == 0);
        let Some(number) = number else {
            let sentence = if counts { "key-no-count" } else { "key-no-number" };
            let remedy = key.t.say("key-no-number-remedy");
            return Err(Refused { sentence: key.t.say(sentence), remedy });
        };
        let yes = match old.yes {
            Asked::AtLeast(_) => Asked::AtLeast(number),
            Asked::Below(_) => Asked::Below(number),
            Asked::States(_) => return Err(gone(at.asked)),
        };
        let new = Ask { character: old.character, yes };
        let Some(of) = pinned::of_the_table(key, &new) else {
            return Err(at.asked.refused("key-not-of-table"));
        };
        inside(key, couplet.number, &new)?;
        let words = pinned::words_with(key, couplet, old, &new);
        let edits = pinned::asked_anew(key, fork, &words, Some(of), false);
        asked_there(key, fork, &new, &edits)?;
        Ok(edits)
    }
}

/// Refused where the number lies inside the range of a kind that comes here.
fn inside(key: &Keyed<'_>, number: u32, ask: &Ask) -> Result<(), Refused> {
    let matrix = &key.made.layer.matrix;
    let says = spinney_check::says(matrix, ask);
    let cut: Vec<String> = pinned::sides(key, number)
        .into_keys()
        .filter_map(|taxon| match matrix.cell(taxon, ask.character).value {
            Value::Range { low, high } if says[taxon.0] == Says::NobodyKnows => {
                let character = matrix.character(ask.character);
                let (low, high) = (character.number(low), character.number(high));
                Some(format!("{} ({low}–{high})", matrix.taxon(taxon).name))
            }
            _ => None,
        })
        .collect();
    if cut.is_empty() {
        return Ok(());
    }
    Err(Refused::with(key.t, "key-inside", &[("kinds", &cut.join(", "))]))
}

/// Refused where the builder would not ask it there.
fn asked_there(key: &Keyed<'_>, at: &Fork, ask: &Ask, edits: &[Edit]) -> Result<(), Refused> {
    let mut after = key.collection.clone();
    edits.iter().for_each(|edit| after.apply(edit));
    let made = keys::make(&after, &key.laid, &after.keys[&key.id]);
    let refused = made.iter().flat_map(|made| &made.refused).find(|refusal| {
        refusal.wanted == spinney_model::Wanted::Ask(ask.clone())
            && refusal.why != WhyNot::AfterRefused
    });
    let there = made.as_ref().and_then(|made| made.couplet(at)).is_some();
    match refused {
        Some(refusal) if !there || key.drawn().finished() => {
            let (sentence, remedy) = (key.why_not(refusal.why), "key-no-number-remedy");
            Err(Refused { sentence, remedy: key.t.say(remedy) })
        }
        _ => Ok(()),
    }
}
