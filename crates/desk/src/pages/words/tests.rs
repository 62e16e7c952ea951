//! Only the words of the key, and drawings that differ in the word alone.

use spinney_model::{Done, Edit, Entry, Fork, KeyId};

use super::drawing::{self, Look, Shows};
use crate::{Desk, Page, Reply, Request};

fn page(desk: &mut Desk, address: &str) -> String {
    match desk.handle(&Request::get(address)) {
        Reply::Page(Page { status: 200, body, .. }) => String::from_utf8(body).expect("text"),
        other => panic!("{address}: {other:?}"),
    }
}

#[test]
fn only_the_words_of_the_chosen_key_are_there() {
    let rows = ["kind|edge", "hazel|toothed", "oak|smooth"];
    let rows = rows.map(|row| row.split('|').map(str::to_owned).collect()).to_vec();
    let lines = Desk::lines_of_table(&[spinney_exchange::table::typed("table", rows)], 0)
        .expect("it has kinds");
    let mut desk = Desk::open(lines.iter().map(Vec::as_slice)).expect("our own lines");
    assert!(page(&mut desk, "/words").contains("Begin a key first."));
    let ask = |key, words: &str| {
        vec![
            Edit::StartKey(KeyId(key), format!("<key {key}>")),
            Edit::Ask {
                key: KeyId(key),
                at: Fork::default(),
                words: words.to_owned(),
                ask: None,
            },
        ]
    };
    for edits in [ask(1, "Is the leaf lobed & <b>big</b>?"), ask(2, "Are the leaves opposite?")]
    {
        let line = spinney_exchange::journal::write(&Entry { at: 0, done: Done::Edits(edits) });
        desk.catch_up([line.as_slice()]).expect("our own line is read");
    }
    let first = page(&mut desk, "/words?key=1");
    assert!(first.contains("id=\"word-lobed\"") && !first.contains("id=\"word-opposite\""));
    assert!(first.contains("toothed: teeth are small and many."), "its look-alike");
    assert!(first.contains("Question 1: Is the leaf lobed &amp; &lt;b&gt;big&lt;/b&gt;?"));
    assert!(first.contains("&lt;key 1&gt;") && first.contains("<svg class=\"leaf\""));
    let second = page(&mut desk, "/words?key=2");
    assert!(second.contains("id=\"word-opposite\"") && !second.contains("id=\"word-lobed\""));
}

#[test]
fn two_drawings_stand_side_by_side_at_the_same_size() {
    let tongue = crate::language::Tongue::for_person(&[]);
    let entries = spinney_press::glossary::words_in([
        "lobed unlobed toothed double-toothed entire spine leaflet feather opposite alternate \
         whorl blade stalk edge midrib vein tip base heart-shaped oval needle hand-shaped",
    ]);
    let mut drawn = 0;
    for entry in entries {
        let Some([one, other]) = drawing::of_word(entry.word) else { continue };
        assert_ne!(one, other, "{}", entry.word);
        let text = drawing::pair(tongue, [one, other]).into_string();
        assert_eq!(text.matches("viewBox=\"-24 -50 48 64\"").count(), 2);
        drawn += 1;
    }
    assert!(drawn >= 20, "{drawn} words have a drawing");
    assert_eq!(drawing::of_word("catkin"), None);
}

#[test]
fn every_line_stays_within_its_drawing() {
    let tongue = crate::language::Tongue::for_person(&[]);
    use Shows::{Alternate, Feather, Hand, Leaf, NoStalk, Opposite, Whorl};
    for shows in [
        Feather,
        Hand,
        Opposite,
        Alternate,
        Whorl,
        NoStalk,
        Leaf(Look::Lobed),
        Leaf(Look::Heart),
    ] {
        let text = drawing::pair(tongue, [shows, Leaf(Look::Spiny)]).into_string();
        let points = crate::drawing::pen::points_of(&text);
        assert!(points.len() > 20, "{shows:?}");
        for (x, y) in points {
            let inside = (-24.0..=24.0).contains(&x) && (-50.0..=14.0).contains(&y);
            assert!(inside, "{shows:?} {x} {y}");
        }
    }
}
