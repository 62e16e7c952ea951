//! What becomes of a proposal: a key for each group, and the sheets that its set needs.

use std::collections::BTreeMap;

use spinney_collection::layer::{Layer, numbers};
use spinney_model::{Edit, Key, KeyEdit, KeyId, KindId, SecondLooks, WishField};
use spinney_press::{Booklet, Drawn, Paper, Stamp, try_out};

use crate::asked::{Asked, Deed, Shown};
use crate::desk::Desk;
use crate::forms::{Form, nothing};
use crate::pages::finds::deeds::LONGEST_NAME;
use crate::reply::Page;

/// Each set begins a key of its own: the name of each group, and the kinds of its set.
pub(super) static SHARE_OUT: Form<Vec<(String, Vec<KindId>)>> = Form {
    path: "/do/share-out",
    read: |at| {
        let mut sets = Vec::new();
        for number in 1..=MOST_GROUPS {
            let kinds = numbers(at.asked.request.field(&format!("set-{number}"))).into_iter();
            let there =
                kinds.map(KindId).filter(|kind| at.collection().kinds.contains_key(kind));
            let there: Vec<KindId> = there.take(*SIZES.end()).collect();
            if there.len() < 2 {
                continue;
            }
            let name = match at.asked.typed(&format!("name-{number}"), LONGEST_NAME)? {
                name if name.is_empty() => {
                    at.asked.tongue.with("share-group", &[("number", &number)])
                }
                name => name,
            };
            sets.push((name, there));
        }
        if sets.is_empty() { Err(at.asked.refused("share-nothing")) } else { Ok(sets) }
    },
    rests_on: nothing,
    act: |sets, at| {
        let keys = (at.collection().next_key().0..).map(KeyId);
        let edits = keys.zip(sets).flat_map(|(key, (name, kinds))| {
            let start = KeyEdit::Start(name.clone());
            let edits =
                [start, KeyEdit::Wish(WishField::Group, name), KeyEdit::ForKinds(Some(kinds))];
            edits.map(|edit| Edit::Key(key, edit))
        });
        Ok(Deed::edits(edits, "/share-out#begun"))
    },
};

/// The sheets for a set: numbers to lay beside the finds, and an empty key to write.
pub(super) fn sheets(desk: &Desk, asked: &Asked<'_>) -> Shown {
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
        tongue: t,
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

/// The most groups at once.
pub(crate) const MOST_GROUPS: usize = 12;
/// Kinds a group: so few make no key, so many fill no lesson.
pub(crate) const SIZES: std::ops::RangeInclusive<usize> = 4..=10;
