//! What becomes of a proposal: a key for each group, and the sheets that its set needs.

use std::collections::BTreeMap;

use spinney_model::{Edit, Key, KeyEdit, KeyId, KindId, SecondLooks, WishField};
use spinney_press::{Booklet, Drawn, Paper, Stamp, try_out};

use super::{MOST_GROUPS, SIZES};
use crate::pages::Shown;
use crate::pages::finds::{LONGEST_NAME, typed};
use crate::routes::{Asked, Deed, Refused};
use crate::{Desk, Page};
use spinney_collection::layer::Layer;

/// Each set begins a key of its own.
pub(super) fn start(desk: &mut Desk, asked: &Asked<'_>) -> Result<Deed, Refused> {
    let t = asked.tongue;
    let collection = &desk.history.now;
    let mut next = collection.next_key().0;
    let mut edits = Vec::new();
    for number in 1..=MOST_GROUPS {
        let kinds =
            spinney_collection::layer::numbers(asked.request.field(&format!("set-{number}")));
        let there =
            kinds.into_iter().filter(|kind| collection.kinds.contains_key(&KindId(*kind)));
        let there: Vec<KindId> = there.take(*SIZES.end()).map(KindId).collect();
        if there.len() < 2 {
            continue;
        }
        let name = match typed(asked, &format!("name-{number}"), LONGEST_NAME)? {
            name if name.is_empty() => t.with("share-group", &[("number", &number)]),
            name => name,
        };
        let key = KeyId(next);
        next += 1;
        edits.push(Edit::Key(key, KeyEdit::Start(name.clone())));
        edits.push(Edit::Key(key, KeyEdit::Wish(WishField::Group, name)));
        edits.push(Edit::Key(key, KeyEdit::ForKinds(Some(there))));
    }
    if edits.is_empty() {
        return Err(Refused {
            sentence: t.say("share-nothing"),
            remedy: t.say("share-nothing-remedy"),
        });
    }
    Ok(Deed::edits(edits, "/share-out#begun"))
}

/// The sheets for a set: numbers to lay beside the finds, and an empty key to write.
pub(super) fn sheets(desk: &mut Desk, asked: &Asked<'_>) -> Shown {
    let t = asked.tongue;
    let collection = &desk.history.now;
    let laid = desk.worked.laid(collection);
    let drawn = collection.keys.get(&KeyId(asked.number(0)));
    let Some((drawn, layer)) = drawn
        .zip(laid)
        .and_then(|(drawn, laid)| Some((drawn, Layer::of(collection, &laid, drawn)?)))
    else {
        return Shown::Nothing;
    };
    let mut scene = layer.matrix.scene().clone();
    scene.title = Some(drawn.name.clone());
    let matrix = layer.matrix.with_scene(scene);
    let today = asked.request.today.as_str();
    let booklet = Booklet {
        matrix: &matrix,
        key: &Key::default(),
        walks: &[],
        left_together: &[],
        second_looks: &SecondLooks::default(),
        stamp: Stamp::None,
        date: (!today.is_empty()).then_some(today),
        pictures: &BTreeMap::new(),
        drawn: Drawn::NOTHING,
    };
    match try_out::set_pdf(&booklet, Paper::A4) {
        Ok(bytes) => {
            let name = t.with("share-file", &[("number", &asked.number(0))]);
            let page = Page { file: Some(name), ..Page::of("application/pdf", bytes) };
            Shown::Page(page)
        }
        Err(_) => Shown::Nothing,
    }
}
