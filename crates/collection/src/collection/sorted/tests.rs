//! What a side says, and when a hand says nothing.

use spinney_model::{
    AskOf, AskedOf, CharacterEdit, CharacterField, CharacterId, Edit, Fork, KeyEdit, KeyId,
    KindEdit, KindId, Side, Value, WishField,
};

use super::says;
use crate::laid::Laid;
use crate::{Agreed, Collection, Saying};

const EDGE: CharacterId = CharacterId(1);
const HAZEL: KindId = KindId(1);
const OAK: KindId = KindId(2);
const ASH: KindId = KindId(3);

fn cell(kind: KindId, character: CharacterId, source: &str, text: &str) -> Edit {
    let (source, text) = (source.to_owned(), text.to_owned());
    Edit::Cell { kind, character, source, text }
}

/// Hazel is toothed, oak smooth; of ash nobody has said anything.
fn table() -> Collection {
    let mut collection = Collection::default();
    for edit in [
        Edit::Kind(HAZEL, KindEdit::Add("hazel".to_owned())),
        Edit::Kind(OAK, KindEdit::Add("oak".to_owned())),
        Edit::Kind(ASH, KindEdit::Add("ash".to_owned())),
        Edit::Character(EDGE, CharacterEdit::Add("edge".to_owned())),
        cell(HAZEL, EDGE, "", "toothed"),
        cell(OAK, EDGE, "", "smooth"),
    ] {
        collection.apply(&edit);
    }
    collection
}

fn ask(key: KeyId, at: &Fork, state: &str) -> Edit {
    let yes = AskedOf::States(vec![state.to_owned()]);
    let ask = Some(AskOf { character: EDGE, yes });
    Edit::Key(key, KeyEdit::Ask { at: at.clone(), words: format!("Is it {state}?"), ask })
}

/// A group begins a key with a question about the edge.
fn group(collection: &mut Collection, key: u32, name: &str, state: &str) -> KeyId {
    let key = KeyId(key);
    collection.apply(&Edit::Key(key, KeyEdit::Start(format!("key {}", key.0))));
    collection.apply(&Edit::Key(key, KeyEdit::Wish(WishField::Group, name.to_owned())));
    collection.apply(&ask(key, &Fork::default(), state));
    key
}

fn sort(collection: &mut Collection, key: KeyId, at: &Fork, kind: KindId, side: Side) {
    let at = at.clone();
    collection.apply(&Edit::Key(key, KeyEdit::Sort { at, kind, side: Some(side) }));
}

fn said(collection: &Collection, kind: KindId) -> Vec<(String, String)> {
    let laid = Laid::of(collection).expect("there are kinds");
    let said = laid.said.sources(kind, EDGE).into_iter();
    said.map(|(who, saying)| (who.to_owned(), saying.text().unwrap_or("open").to_owned()))
        .collect()
}

#[test]
fn a_side_says_one_thing_or_only_what_it_is_not() {
    let states = ["toothed", "smooth", "jagged, like a saw"].map(str::to_owned);
    let yes = |of: &[&str]| of.iter().map(|state| (*state).to_owned()).collect::<Vec<_>>();
    let text = |text: &str| Saying::Text(text.to_owned());
    for (asked, side, states, wanted) in [
        (&["toothed"][..], Side::Yes, &states[..2], text("toothed")),
        (&["toothed"], Side::No, &states[..2], text("smooth")),
        (&["toothed"], Side::Both, &states[..2], text("toothed or smooth")),
        (&["toothed"], Side::Yes, &states, text("toothed")),
        (&["toothed"], Side::No, &states, Saying::NoneOf(yes(&["toothed"]))),
        (&["toothed"], Side::Both, &states, Saying::Varies(yes(&["toothed"]))),
        (
            &["toothed", "smooth"],
            Side::Yes,
            &states,
            Saying::OneOf(yes(&["toothed", "smooth"])),
        ),
        (&["toothed", "smooth"], Side::No, &states, text("\"jagged, like a saw\"")),
    ] {
        assert_eq!(says(&yes(asked), side, states), wanted, "{asked:?} {side:?}");
    }
}

#[test]
fn a_hand_fills_a_blank_cell_and_never_a_decided_one() {
    let mut collection = table();
    let fern = group(&mut collection, 1, "Fern", "toothed");
    sort(&mut collection, fern, &Fork::default(), ASH, Side::Yes);
    sort(&mut collection, fern, &Fork::default(), OAK, Side::Yes);
    let laid = Laid::of(&collection).expect("there are kinds");
    assert_eq!(laid.said.agreed(ASH, EDGE), Agreed::Text("toothed"));
    assert_eq!(laid.said.agreed(OAK, EDGE), Agreed::Text("smooth"), "the table decides");
    assert_eq!(collection.cells.sources(ASH, EDGE), [], "nothing is written down twice");
}

#[test]
fn a_hand_that_sent_the_kind_elsewhere_says_nothing_further_down() {
    let mut collection = table();
    let fern = group(&mut collection, 1, "Fern", "smooth");
    let below = Fork(vec![true]);
    collection.apply(&ask(fern, &below, "toothed"));
    sort(&mut collection, fern, &below, ASH, Side::No);
    assert_eq!(said(&collection, ASH), [("Fern".to_owned(), "smooth".to_owned())]);
    sort(&mut collection, fern, &Fork::default(), ASH, Side::No);
    assert_eq!(said(&collection, ASH), [("Fern".to_owned(), "toothed".to_owned())]);
    let others = Edit::Key(fern, KeyEdit::ForKinds(Some(vec![KindId(1), KindId(2)])));
    collection.apply(&others);
    assert_eq!(said(&collection, ASH), [], "the key is not for it");
}

#[test]
fn what_a_kind_does_not_have_is_neither_yes_nor_no() {
    let mut collection = table();
    let shape = CharacterId(2);
    for edit in [
        Edit::Character(shape, CharacterEdit::Add("shape".to_owned())),
        cell(HAZEL, shape, "", "one piece"),
        cell(OAK, shape, "", "one piece"),
        cell(ASH, shape, "", "leaflets"),
        Edit::Character(
            EDGE,
            CharacterEdit::Describe(
                CharacterField::AppliesWhen,
                "shape = one piece".to_owned(),
            ),
        ),
    ] {
        collection.apply(&edit);
    }
    let fern = group(&mut collection, 1, "Fern", "toothed");
    sort(&mut collection, fern, &Fork::default(), ASH, Side::No);
    assert_eq!(said(&collection, ASH), []);
    let laid = Laid::of(&collection).expect("there are kinds");
    let place = laid.taxon(ASH).zip(laid.character(EDGE)).expect("a cell");
    assert_eq!(laid.matrix.cell(place.0, place.1).value, Value::DoesNotApply);
}

#[test]
fn a_group_that_says_two_things_says_each_under_its_question() {
    let mut collection = table();
    let first = group(&mut collection, 1, "Fern", "toothed");
    let second = group(&mut collection, 2, "fern", "smooth");
    sort(&mut collection, first, &Fork::default(), ASH, Side::Yes);
    sort(&mut collection, second, &Fork::default(), ASH, Side::Yes);
    let who: Vec<String> = said(&collection, ASH).into_iter().map(|(who, _)| who).collect();
    assert_eq!(who, ["Fern", "fern"], "each as it was typed");
    collection.apply(&Edit::Key(second, KeyEdit::Wish(WishField::Group, "Fern".to_owned())));
    let who: Vec<String> = said(&collection, ASH).into_iter().map(|(who, _)| who).collect();
    assert_eq!(who, ["Fern", "Fern · Is it smooth?"]);
}

#[test]
fn what_a_group_typed_counts_before_how_it_sorted() {
    let mut collection = table();
    let fern = group(&mut collection, 1, "Fern", "toothed");
    sort(&mut collection, fern, &Fork::default(), ASH, Side::Yes);
    collection.apply(&cell(ASH, EDGE, "FERN", "toothed or smooth"));
    assert_eq!(said(&collection, ASH), [("FERN".to_owned(), "toothed or smooth".to_owned())]);
}

#[test]
fn a_no_among_three_contradicts_whoever_says_that_very_thing() {
    let mut collection = table();
    let states = "toothed, smooth, spiny".to_owned();
    collection
        .apply(&Edit::Character(EDGE, CharacterEdit::Describe(CharacterField::States, states)));
    let fern = group(&mut collection, 1, "Fern", "toothed");
    sort(&mut collection, fern, &Fork::default(), ASH, Side::No);
    let agreed = |collection: &Collection| {
        let laid = Laid::of(collection).expect("there are kinds");
        match laid.said.agreed(ASH, EDGE) {
            Agreed::Blank => "blank".to_owned(),
            Agreed::Text(text) => text.to_owned(),
            Agreed::Contradicted => format!("{:?}", laid.said.sources(ASH, EDGE)),
        }
    };
    assert_eq!(agreed(&collection), "blank", "smooth or spiny is not: it varies");
    collection.apply(&cell(ASH, EDGE, "Moss", "Toothed"));
    let both = r#"[("Fern", NoneOf(["toothed"])), ("Moss", Text("Toothed"))]"#;
    assert_eq!(agreed(&collection), both);
    collection.apply(&cell(ASH, EDGE, "Moss", "spiny"));
    assert_eq!(agreed(&collection), "spiny", "that is not denied");
    collection.apply(&cell(ASH, EDGE, "", "toothed"));
    assert_eq!(agreed(&collection), "toothed", "somebody decided");
}

#[test]
fn a_question_outlasts_the_only_cell_with_its_state() {
    let mut collection = table();
    collection.apply(&cell(HAZEL, EDGE, "", ""));
    collection.apply(&cell(HAZEL, EDGE, "Moss", "toothed"));
    let fern = group(&mut collection, 1, "Fern", "toothed");
    sort(&mut collection, fern, &Fork::default(), HAZEL, Side::No);
    let laid = Laid::of(&collection).expect("there are kinds");
    assert_eq!(laid.said.agreed(HAZEL, EDGE), Agreed::Contradicted);
    let of = collection.keys[&fern].questions[&Fork::default()].ask.clone();
    assert!(laid.ask(&of.expect("it is linked")).is_some());
}

/// Whoever says a third thing under the same words is told from the first two by a number.
#[test]
fn what_one_group_says_in_three_places_has_three_names_in_order() {
    let mut collection = table();
    for (key, side) in [(1, Side::Yes), (2, Side::No), (3, Side::Both)] {
        let key = group(&mut collection, key, "Fern", "toothed");
        sort(&mut collection, key, &Fork::default(), ASH, side);
    }
    let said = said(&collection, ASH);
    let who: Vec<&str> = said.iter().map(|(who, _)| who.as_str()).collect();
    assert_eq!(who, ["Fern", "Fern · Is it toothed?", "Fern · Is it toothed? (2)"]);
}
