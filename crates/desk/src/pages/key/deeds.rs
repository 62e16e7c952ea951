//! What a hand does to a key and its questions.

use spinney_check::Says;
use spinney_model::{
    Ask, Asked, Edit, Fork, KeyEdit, KeyId, Quantity, Scale, Value, WhyNot, WishField,
};

use super::{Keyed, asked_token, pinned};
use crate::Desk;
use crate::asking::of_form;
use crate::pages::finds::LONGEST_NAME;
use crate::pages::frame;
use crate::pages::heaps::deeds::{LONGEST_QUESTION, gone, place, text};
use crate::pages::stood;
use crate::routes::{Asked as Form, Deed, Refused};
use spinney_collection::keys;
use spinney_collection::laid::quantity;

/// A key begins, finished by the machine or empty.
pub(super) fn start(desk: &mut Desk, asked: &Form<'_>) -> Result<Deed, Refused> {
    let t = asked.tongue;
    let key = desk.history.now.next_key();
    let name = match text(asked, "name", LONGEST_NAME) {
        name if name.is_empty() => t.with("heaps-unnamed", &[("number", &key.0)]),
        name => name,
    };
    let group = text(asked, "group", LONGEST_NAME);
    let mut edits = vec![Edit::Key(key, KeyEdit::Start(name))];
    if !group.is_empty() {
        edits.push(Edit::Key(key, KeyEdit::Wish(WishField::Group, group)));
    }
    let finished = asked.request.field("how") == "finish";
    if finished {
        edits.push(Edit::Key(key, KeyEdit::Wish(WishField::Finish, "yes".to_owned())));
    }
    let to = if finished { "/key?key=" } else { "/heaps?key=" };
    Ok(Deed::edits(edits, format!("{to}{}", key.0)))
}

/// The key is put away; what was done can bring it back.
pub(super) fn remove(desk: &mut Desk, asked: &Form<'_>) -> Result<Deed, Refused> {
    let (key, _) = place(desk, asked)?;
    Ok(Deed::edits(vec![Edit::Key(key, KeyEdit::Remove)], "/key"))
}

/// The key of a form and the place of one of its questions.
fn question(desk: &mut Desk, asked: &Form<'_>) -> Result<(Keyed, Fork), Refused> {
    let (id, at) = place(desk, asked)?;
    let key = keyed(desk, asked, id)?;
    if key.made.couplet(&at).is_none() {
        return Err(gone(asked));
    }
    Ok((key, at))
}

fn keyed(desk: &mut Desk, asked: &Form<'_>, id: KeyId) -> Result<Keyed, Refused> {
    let laid = desk.worked.laid(&desk.history.now).ok_or_else(|| gone(asked))?;
    let made = desk.worked.made(&desk.history.now, id).ok_or_else(|| gone(asked))?;
    let collection = desk.history.now.clone();
    let t = asked.tongue;
    Ok(Keyed { t, id, collection, laid, made, explained: None, open: None, as_tree: false })
}

fn words(asked: &Form<'_>) -> Result<String, Refused> {
    let t = asked.tongue;
    match text(asked, "words", LONGEST_QUESTION) {
        words if words.is_empty() => Err(Refused {
            sentence: t.say("heaps-no-words"),
            remedy: t.say("heaps-no-words-remedy"),
        }),
        words => Ok(words),
    }
}

fn deed(key: &Keyed, asked: &Form<'_>, edits: Vec<Edit>) -> Deed {
    Deed::edits(edits, asked.back(&key.address(None)))
}

/// Other words for the same question.
pub(super) fn reword(desk: &mut Desk, asked: &Form<'_>) -> Result<Deed, Refused> {
    let words = words(asked)?;
    let (key, at) = question(desk, asked)?;
    let mut edits = pinned::pin(&key, &at);
    edits.push(Edit::Key(key.id, KeyEdit::Reword { at, words }));
    Ok(deed(&key, asked, edits))
}

/// Yes and no change sides, and so do the heaps.
pub(super) fn swap(desk: &mut Desk, asked: &Form<'_>) -> Result<Deed, Refused> {
    let words = words(asked)?;
    let (key, at) = question(desk, asked)?;
    let ask = key.made.couplet(&at).and_then(|couplet| couplet.ask.as_ref());
    let meant = key.drawn().questions.get(&at).map(|question| question.ask.is_some());
    // What a person sorted without a meaning has none afterwards either.
    let ask = ask.filter(|_| meant != Some(false));
    let ask = ask.and_then(|ask| pinned::of_the_table(&key, &pinned::opposite(&key, ask)));
    let ask = ask.or_else(|| {
        let linked = key.drawn().questions.get(&at)?.ask.as_ref()?;
        key.laid.ask_of(&pinned::opposite(&key, &key.laid.ask(linked)?))
    });
    let edits = pinned::asked_anew(&key, &at, &words, ask, true);
    Ok(deed(&key, asked, edits))
}

/// The question and all above it stay.
pub(super) fn keep(desk: &mut Desk, asked: &Form<'_>) -> Result<Deed, Refused> {
    let (key, at) = question(desk, asked)?;
    let edits = pinned::pin(&key, &at);
    Ok(deed(&key, asked, edits))
}

/// Every question stays as it is, whatever is written into the table.
pub(super) fn keep_all(desk: &mut Desk, asked: &Form<'_>) -> Result<Deed, Refused> {
    let (id, _) = place(desk, asked)?;
    let key = keyed(desk, asked, id)?;
    if !stood::still(&asked.request.form, stood::STOOD, &asked_token(&key.made)) {
        let t = asked.tongue;
        return Err(Refused {
            sentence: t.say("key-moved"),
            remedy: t.say("key-moved-remedy"),
        });
    }
    let edits = pinned::pin_all(&key);
    Ok(deed(&key, asked, edits))
}

/// The question, and all below it, may be another.
pub(super) fn let_go(desk: &mut Desk, asked: &Form<'_>) -> Result<Deed, Refused> {
    let (key, at) = place(desk, asked)?;
    let back = asked.back(&format!("/key?key={}", key.0));
    Ok(Deed::edits(vec![Edit::Key(key, KeyEdit::TakeOut(at))], back))
}

/// Another question in its place.
pub(super) fn replace(desk: &mut Desk, asked: &Form<'_>) -> Result<Deed, Refused> {
    let words = words(asked)?;
    let ask = of_form(asked.request).ok_or_else(|| gone(asked))?;
    let (key, at) = question(desk, asked)?;
    if key.laid.may_be_asked(&ask).is_none() {
        return Err(gone(asked));
    }
    let mut edits = pinned::pin_above(&key, &at);
    edits.push(Edit::Key(key.id, KeyEdit::Ask { at, words, ask: Some(ask) }));
    Ok(deed(&key, asked, edits))
}

/// The same question with another number.
pub(super) fn threshold(desk: &mut Desk, asked: &Form<'_>) -> Result<Deed, Refused> {
    let t = asked.tongue;
    let (key, at) = question(desk, asked)?;
    let couplet = key.made.couplet(&at).expect("it was found before");
    let old = couplet.ask.as_ref().ok_or_else(|| gone(asked))?;
    let character = key.made.layer.matrix.character(old.character);
    // It is typed as the column is written: 4 in a column of centimetres is 40 mm.
    let kept = |typed: Quantity| {
        let product =
            i128::from(typed.thousandths()) * i128::from(character.one().thousandths());
        let nearest = (product.abs() + 500) / 1000 * product.signum();
        Quantity::from_thousandths(i64::try_from(nearest).unwrap_or(i64::MAX))
    };
    let number = quantity(asked.request.field("number")).map(kept);
    let counts = matches!(character.scale, Scale::Counts);
    let number = number.filter(|number| !counts || number.thousandths() % 1000 == 0);
    let Some(number) = number else {
        return Err(Refused {
            sentence: t.say(if counts { "key-no-count" } else { "key-no-number" }),
            remedy: t.say("key-no-number-remedy"),
        });
    };
    let yes = match old.yes {
        Asked::AtLeast(_) => Asked::AtLeast(number),
        Asked::Below(_) => Asked::Below(number),
        Asked::States(_) => return Err(gone(asked)),
    };
    let new = Ask { character: old.character, yes };
    let Some(of) = pinned::of_the_table(&key, &new) else {
        return Err(Refused {
            sentence: t.say("key-not-of-table"),
            remedy: t.say("key-not-of-table-remedy"),
        });
    };
    inside(&key, couplet.number, &new)?;
    let words = pinned::words_with(&key, couplet, old, &new);
    let edits = pinned::asked_anew(&key, &at, &words, Some(of), false);
    asked_there(&key, &at, &new, &edits)?;
    Ok(deed(&key, asked, edits))
}

/// Refused where the number lies inside the range of a kind that comes here.
fn inside(key: &Keyed, number: u32, ask: &Ask) -> Result<(), Refused> {
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
fn asked_there(key: &Keyed, at: &Fork, ask: &Ask, edits: &[Edit]) -> Result<(), Refused> {
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
            sentence: super::margin::why_not(key, refusal.why),
            remedy: key.t.say("key-no-number-remedy"),
        }),
        _ => Ok(()),
    }
}

/// People who did not know the answers tried the key as the page showed it, and it worked; or they
/// have not after all.
pub(super) fn tried(desk: &mut Desk, asked: &Form<'_>) -> Result<Deed, Refused> {
    let id = frame::key_of_form(asked);
    let Some(made) = desk.worked.made(&desk.history.now, id) else { return Err(gone(asked)) };
    let token = made.token();
    let back = asked.back(&format!("/key?key={}", id.0));
    let wanted = match asked.request.field("tried") {
        "" => String::new(),
        shown if shown == token => token,
        _ => {
            let t = asked.tongue;
            return Err(Refused {
                sentence: t.say("tried-moved"),
                remedy: t.say("tried-moved-remedy"),
            });
        }
    };
    let now = desk.history.now.keys[&id].wish(WishField::Tried);
    let edits = if now == wanted {
        vec![]
    } else {
        vec![Edit::Key(id, KeyEdit::Wish(WishField::Tried, wanted))]
    };
    Ok(Deed::edits(edits, back))
}
