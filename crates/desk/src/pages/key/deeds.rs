//! What a hand does to a key and its questions.

use maud::Markup;
use spinney_check::Says;
use spinney_collection::keys::{self, Made};
use spinney_collection::laid::quantity;
use spinney_model::{
    Ask, AskOf, Asked, Edit, Fork, KeyEdit, KeyId, Quantity, Scale, Value, WhyNot, WishField,
};

use super::keyed::{Keyed, asks_above, asks_all, asks_at};
use super::pinned;
use crate::asked::Deed;
use crate::asking::of_form;
use crate::forms::{At, Fact, Form, hidden};
use crate::pages::finds::fields::LONGEST_NAME;
use crate::pages::heaps::deeds::{named, words};
use crate::pages::heaps::place::{self, Place, asked_now, gone};
use crate::reply::Refused;

/// A key begins, finished by the machine or empty.
pub(super) struct Begin {
    name: String,
    group: String,
    finished: bool,
}

impl Form for Begin {
    const PATH: &'static str = "/do/key-start";

    fn read(at: &At<'_>) -> Result<Self, Refused> {
        Ok(Self {
            name: at.asked.cut("name", LONGEST_NAME),
            group: at.asked.cut("group", LONGEST_NAME),
            finished: at.asked.request.field("how") == "finish",
        })
    }

    fn reads(&self) -> Vec<Fact<'_>> {
        Vec::new()
    }

    fn act(self, at: &At<'_>) -> Result<Deed, Refused> {
        let key = at.collection().next_key();
        let mut edits = vec![Edit::Key(key, KeyEdit::Start(named(at.asked, self.name, key)))];
        if !self.group.is_empty() {
            edits.push(Edit::Key(key, KeyEdit::Wish(WishField::Group, self.group)));
        }
        if self.finished {
            edits.push(Edit::Key(key, KeyEdit::Wish(WishField::Finish, "yes".to_owned())));
        }
        let to = if self.finished { "/key?key=" } else { "/heaps?key=" };
        Ok(Deed::edits(edits, format!("{to}{}", key.0)))
    }
}

/// The key is taken out; what was done can bring it back.
pub(super) struct Remove(KeyId);

impl Remove {
    pub(super) fn fields(key: KeyId) -> Markup {
        hidden(&[("key", &key.0)])
    }
}

impl Form for Remove {
    const PATH: &'static str = "/do/key-remove";

    fn read(at: &At<'_>) -> Result<Self, Refused> {
        place::key(at).map(Self)
    }

    fn reads(&self) -> Vec<Fact<'_>> {
        vec![Fact::name(|of| {
            of.keys.get(&self.0).map_or(String::new(), |key| key.name.clone())
        })]
    }

    fn act(self, _: &At<'_>) -> Result<Deed, Refused> {
        Ok(Deed::edits(vec![Edit::Key(self.0, KeyEdit::Remove)], "/key"))
    }
}

/// What is done to a question of a key, whoever asks it.
pub(super) trait ToQuestion: Sized {
    /// Where it is sent.
    const PATH: &'static str;

    /// What the fields say besides which question it is.
    ///
    /// **Errors**: as of a [`Form`].
    fn read(at: &At<'_>) -> Result<Self, Refused>;

    /// What the deed comes to.
    ///
    /// **Errors**: it cannot be done to this question.
    fn edits(self, key: &Keyed<'_>, fork: &Fork, at: &At<'_>) -> Result<Vec<Edit>, Refused>;
}

/// The form of such a deed.
pub(super) struct To<D> {
    place: Place,
    /// What the page showed of the way there and of the question, where the form says so.
    way: Option<String>,
    asks: Option<String>,
    deed: D,
}

impl<D: ToQuestion> Form for To<D> {
    const PATH: &'static str = D::PATH;

    fn read(at: &At<'_>) -> Result<Self, Refused> {
        let deed = D::read(at)?;
        let field = |name| at.asked.request.fields(name).next().map(str::to_owned);
        let form =
            Self { place: Place::read(at)?, way: field("way"), asks: field("asks"), deed };
        question(at, &form.place).map(|_| form)
    }

    /// What the key asks on the way there, and there.
    fn reads(&self) -> Vec<Fact<'_>> {
        let Place { key, at: fork } = &self.place;
        let above = Fact::new(
            |state| state.made(*key).map_or(String::new(), |made| asks_above(&made, fork)),
            |at| at.asked.refused("key-way-moved", "key-way-moved-remedy"),
        );
        let here = Fact::new(
            |state| state.made(*key).map_or(String::new(), |made| asks_at(&made, fork)),
            |at| {
                let made = at.desk.made(*key);
                let couplet = made.as_ref().and_then(|made| made.couplet(fork));
                asked_now(at.asked, couplet.map_or("", |couplet| couplet.wording.first()))
            },
        );
        vec![above.carried(self.way.as_deref()), here.carried(self.asks.as_deref())]
    }

    fn act(self, at: &At<'_>) -> Result<Deed, Refused> {
        let key = question(at, &self.place)?;
        let edits = self.deed.edits(&key, &self.place.at, at)?;
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

fn deed(key: &Keyed<'_>, at: &At<'_>, edits: Vec<Edit>) -> Deed {
    Deed::edits(edits, at.asked.back(&key.address(None)))
}

/// Other words for the same question.
pub(super) struct Reword(String);

impl ToQuestion for Reword {
    const PATH: &'static str = "/do/key-reword";

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
    const PATH: &'static str = "/do/key-swap";

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
    const PATH: &'static str = "/do/key-keep";

    fn read(_: &At<'_>) -> Result<Self, Refused> {
        Ok(Self)
    }

    fn edits(self, key: &Keyed<'_>, fork: &Fork, _: &At<'_>) -> Result<Vec<Edit>, Refused> {
        Ok(pinned::pin(key, fork))
    }
}

/// Every question stays as it is, whatever is written into the table.
pub(super) struct KeepAll {
    key: KeyId,
    asks: Option<String>,
}

impl KeepAll {
    pub(super) fn fields(key: KeyId, made: &Made, back: &str) -> Markup {
        hidden(&[("key", &key.0), ("asks", &asks_all(made)), ("back", &back)])
    }
}

impl Form for KeepAll {
    const PATH: &'static str = "/do/key-keep-all";

    fn read(at: &At<'_>) -> Result<Self, Refused> {
        let asks = at.asked.request.fields("asks").next().map(str::to_owned);
        Ok(Self { key: place::key(at)?, asks })
    }

    fn reads(&self) -> Vec<Fact<'_>> {
        let shows = Fact::new(
            |state| state.made(self.key).map_or(String::new(), |made| asks_all(&made)),
            |at| at.asked.refused("key-moved", "key-moved-remedy"),
        );
        vec![shows.carried(self.asks.as_deref())]
    }

    fn act(self, at: &At<'_>) -> Result<Deed, Refused> {
        let key = keyed(at, self.key)?;
        let edits = pinned::pin_all(&key);
        Ok(deed(&key, at, edits))
    }
}

/// Another question in its place.
pub(super) struct Replace {
    words: String,
    ask: AskOf,
}

impl ToQuestion for Replace {
    const PATH: &'static str = "/do/key-replace";

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
    const PATH: &'static str = "/do/key-threshold";

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
            return Err(at.asked.refused(sentence, "key-no-number-remedy"));
        };
        let yes = match old.yes {
            Asked::AtLeast(_) => Asked::AtLeast(number),
            Asked::Below(_) => Asked::Below(number),
            Asked::States(_) => return Err(gone(at.asked)),
        };
        let new = Ask { character: old.character, yes };
        let Some(of) = pinned::of_the_table(key, &new) else {
            return Err(at.asked.refused("key-not-of-table", "key-not-of-table-remedy"));
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
    Err(Refused {
        sentence: key.t.with("key-inside", &[("kinds", &cut.join(", "))]),
        remedy: key.t.say("key-inside-remedy"),
    })
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
        Some(refusal) if !there || key.drawn().finished() => Err(Refused {
            sentence: key.why_not(refusal.why),
            remedy: key.t.say("key-no-number-remedy"),
        }),
        _ => Ok(()),
    }
}
