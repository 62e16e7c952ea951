//! Newcomers of an invented hedge walk: few questions change, and the kept edits make the very
//! key that was shown.

use spinney_exchange::table::{self, Source, TypedSheets};
use spinney_model::{
    AskOf, AskedOf, CharacterId, Edit, Fork, KeyEdit, KeyId, KindEdit, KindId, Side, WishField,
};

use spinney_voice::Tongue;

use super::{Difference, Newcomer, slot_in};
use crate::Collection;
use crate::intake;
use crate::keys::{Made, make};
use crate::laid::Laid;

const ENGLISH: Tongue = Tongue::of_terminal();

fn sheets(names: &[&str]) -> TypedSheets {
    let folder = concat!(env!("CARGO_MANIFEST_DIR"), "/../spinney/scenarios/hedge_walk/");
    let read = |name: &&str| {
        let bytes = std::fs::read(format!("{folder}{name}.csv")).expect("the demo has it");
        Source { name: (*name).to_owned(), bytes }
    };
    let sources: Vec<Source> = names.iter().map(read).collect();
    table::typed_sheets(&sources).expect("it can be read")
}

fn apply(collection: &mut Collection, edits: &[Edit]) {
    edits.iter().for_each(|edit| collection.apply(edit));
}

/// The hedge walk with a key that the machine finished.
fn hedge() -> Collection {
    let mut collection = Collection::default();
    let sheets = sheets(&["table", "characters", "kinds", "about"]);
    let edits = intake::take_in(&collection, &sheets, "").expect("it fits").edits;
    apply(&mut collection, &edits);
    let key = KeyId(1);
    let finish = Edit::Key(key, KeyEdit::Wish(WishField::Finish, "yes".into()));
    apply(&mut collection, &[Edit::Key(key, KeyEdit::Start("Ours".into())), finish]);
    collection
}

fn made(collection: &Collection) -> Made {
    let laid = Laid::of(collection).expect("there are kinds");
    make(collection, &laid, &collection.keys[&KeyId(1)]).expect("there is a key")
}

/// The strangers of the hedge walk, each with its cells.
fn strangers(collection: &Collection) -> Vec<Newcomer> {
    let rows = sheets(&["strangers"]).rows;
    let characters: Vec<CharacterId> = collection.characters.keys().copied().collect();
    let row = |(name, texts): &(String, Vec<String>)| Newcomer {
        name: name.clone(),
        cells: characters.iter().zip(texts).map(|(c, t)| (None, *c, t.clone())).collect(),
        ..Newcomer::default()
    };
    rows.iter().map(row).collect()
}

/// Every kind comes out, alone, and the key is the one that was shown.
fn assert_right(after: &Collection, slotted: &super::Slotted) {
    let change = slotted.change.as_ref().expect("the key is whole");
    let now = made(after);
    assert!(change.exact && super::same(&now.key, &change.revision.key));
    let lost: Vec<_> = now.opinion.walks.iter().filter(|walk| !walk.arrived).collect();
    assert!(lost.is_empty(), "{lost:?}");
    assert!(now.layer.kinds.contains(&slotted.kind));
}

#[test]
fn a_stranger_gets_a_place_with_few_questions_changed() {
    let collection = hedge();
    let before = made(&collection);
    for stranger in strangers(&collection) {
        let slotted =
            slot_in(ENGLISH, &collection, KeyId(1), &before, &stranger).expect("a place");
        let mut after = collection.clone();
        apply(&mut after, &slotted.edits);
        assert_right(&after, &slotted);
        let change = slotted.change.expect("the key is whole");
        let parts = &change.revision.parts;
        assert_eq!(change.revision.changes, 1, "{}: {parts:?}", stranger.name);
        match stranger.name.as_str() {
            // Its blade is as long as hazel's and as blackthorn's, so what parted those two
            // parts them no more.
            "elm" => {
                assert_eq!((parts.struck.len(), parts.added.len()), (1, 0));
                assert_eq!(change.alike, [KindId(1), KindId(3)]);
            }
            _ => {
                assert_eq!((parts.struck.len(), parts.added.len()), (0, 1));
                assert_eq!(parts.kept.len(), before.key.couplets.len());
                assert!(change.alike.is_empty());
            }
        }
    }
}

#[test]
fn without_a_difference_two_stay_together_and_with_a_new_one_they_part() {
    let collection = hedge();
    let before = made(&collection);
    // Like hazel, the first kind, in everything.
    let like_hazel = |character: &CharacterId| {
        let text = collection.cells.said(KindId(1), *character, "");
        (None, *character, text.to_owned())
    };
    let mut newcomer = Newcomer {
        name: "filbert".into(),
        cells: collection.characters.keys().map(like_hazel).collect(),
        ..Newcomer::default()
    };
    let slotted = slot_in(ENGLISH, &collection, KeyId(1), &before, &newcomer).expect("a place");
    let change = slotted.change.expect("the key is whole");
    assert_eq!((change.alike, change.revision.changes), (vec![KindId(1)], 0));
    newcomer.difference = Some(Difference {
        name: "husk of the nut".into(),
        ours: "long".into(),
        theirs: vec![(KindId(1), "short".into())],
    });
    let slotted = slot_in(ENGLISH, &collection, KeyId(1), &before, &newcomer).expect("a place");
    let mut after = collection.clone();
    apply(&mut after, &slotted.edits);
    assert_right(&after, &slotted);
    let change = slotted.change.expect("the key is whole");
    assert!(change.alike.is_empty());
    assert_eq!(change.revision.changes, 1, "{:?}", change.revision.parts);
}

#[test]
fn a_key_for_some_kinds_takes_the_newcomer_in() {
    let mut collection = hedge();
    let kinds = Edit::Key(KeyId(1), KeyEdit::ForKinds(Some([1, 2, 3, 5].map(KindId).to_vec())));
    apply(&mut collection, &[kinds]);
    let before = made(&collection);
    for stranger in strangers(&collection) {
        let slotted =
            slot_in(ENGLISH, &collection, KeyId(1), &before, &stranger).expect("a place");
        let mut after = collection.clone();
        apply(&mut after, &slotted.edits);
        assert_right(&after, &slotted);
        assert_eq!(made(&after).layer.kinds.len(), 5);
    }
}

/// Four kinds that a group sorted by hand, in words that the table does not know.
fn sorted_by_hand() -> Collection {
    let mut collection = Collection::default();
    let names = ["oak", "hazel", "holly", "ivy"];
    for (at, name) in names.iter().enumerate() {
        collection.apply(&Edit::Kind(KindId(at as u32 + 1), KindEdit::Add((*name).into())));
    }
    let key = KeyId(1);
    let question = |at: &[bool], words: &str, yes: &[u32], no: &[u32]| {
        let at = Fork(at.to_vec());
        let mut edits = vec![Edit::Key(
            key,
            KeyEdit::Ask { at: at.clone(), words: words.into(), ask: None },
        )];
        for (kinds, side) in [(yes, Side::Yes), (no, Side::No)] {
            for kind in kinds {
                let (at, kind, side) = (at.clone(), KindId(*kind), Some(side));
                edits.push(Edit::Key(key, KeyEdit::Sort { at, kind, side }));
            }
        }
        edits
    };
    let edits = [
        vec![Edit::Key(key, KeyEdit::Start("Blue".into()))],
        question(&[], "Does it shine?", &[3, 4], &[1, 2]),
        question(&[true], "Does it prick?", &[3], &[4]),
        question(&[false], "Has it bays?", &[1], &[2]),
    ]
    .concat();
    apply(&mut collection, &edits);
    collection
}

#[test]
fn a_key_sorted_by_hand_keeps_its_words_and_its_cards() {
    let collection = sorted_by_hand();
    let before = made(&collection);
    let sides = vec![(Fork(vec![]), Side::Yes), (Fork(vec![true]), Side::Yes)];
    let newcomer = Newcomer {
        name: "gorse".into(),
        difference: Some(Difference {
            name: "kind of leaf".into(),
            ours: "needle".into(),
            theirs: vec![(KindId(3), "flat".into())],
        }),
        sides,
        ..Newcomer::default()
    };
    let slotted = slot_in(ENGLISH, &collection, KeyId(1), &before, &newcomer).expect("a place");
    let mut after = collection.clone();
    apply(&mut after, &slotted.edits);
    assert_right(&after, &slotted);
    let questions = &after.keys[&KeyId(1)].questions;
    let words = |at: &[bool]| questions[&Fork(at.to_vec())].words.as_str();
    assert_eq!(
        [words(&[]), words(&[true]), words(&[false])],
        ["Does it shine?", "Does it prick?", "Has it bays?"]
    );
    let new = &questions[&Fork(vec![true, true])];
    let yes = |state: &str| AskedOf::States(vec![state.into()]);
    let asked = new.ask.as_ref().map(|ask: &AskOf| &ask.yes);
    assert!(asked == Some(&yes("needle")) || asked == Some(&yes("flat")), "{new:?}");
    assert_eq!(questions[&Fork(vec![])].sorted[&KindId(5)], Side::Yes);
}

#[test]
fn a_key_that_is_not_finished_gets_a_card_in_a_heap() {
    let mut collection = sorted_by_hand();
    collection.apply(&Edit::Key(KeyId(1), KeyEdit::TakeOut(Fork(vec![false]))));
    let before = made(&collection);
    let newcomer = Newcomer {
        name: "elm".into(),
        sides: vec![(Fork(vec![]), Side::No)],
        ..Newcomer::default()
    };
    let slotted = slot_in(ENGLISH, &collection, KeyId(1), &before, &newcomer).expect("a place");
    assert!(slotted.change.is_none());
    apply(&mut collection, &slotted.edits);
    let heap = &made(&collection).layer.forks[&Fork(vec![false])].kinds;
    assert_eq!(heap, &[KindId(1), KindId(2), KindId(5)]);
}

/// How many edits of a slotting fix a question at its place.
fn fixed(slotted: &super::Slotted) -> usize {
    slotted
        .edits
        .iter()
        .filter(|edit| matches!(edit, Edit::Key(_, KeyEdit::Ask { .. })))
        .count()
}

#[test]
fn what_a_key_asks_by_itself_or_asks_already_is_not_fixed_once_more() {
    // The machine finds the key with the newcomer like hazel again: nothing is to be fixed.
    let collection = hedge();
    let before = made(&collection);
    let text = |c: &CharacterId| collection.cells.said(KindId(1), *c, "").to_owned();
    let like_hazel = Newcomer {
        name: "filbert".into(),
        cells: collection.characters.keys().map(|c| (None, *c, text(c))).collect(),
        ..Newcomer::default()
    };
    let slotted =
        slot_in(ENGLISH, &collection, KeyId(1), &before, &like_hazel).expect("a place");
    let mut after = collection.clone();
    apply(&mut after, &slotted.edits);
    assert_right(&after, &slotted);
    assert_eq!(fixed(&slotted), 0, "{:?}", slotted.edits);
    // Three questions were put there by hands: only the new one is put there now.
    let collection = sorted_by_hand();
    let before = made(&collection);
    let gorse = Newcomer {
        name: "gorse".into(),
        difference: Some(Difference {
            name: "kind of leaf".into(),
            ours: "needle".into(),
            theirs: vec![(KindId(3), "flat".into())],
        }),
        sides: vec![(Fork(vec![]), Side::Yes), (Fork(vec![true]), Side::Yes)],
        ..Newcomer::default()
    };
    let slotted = slot_in(ENGLISH, &collection, KeyId(1), &before, &gorse).expect("a place");
    assert_eq!(fixed(&slotted), 1, "{:?}", slotted.edits);
}

#[test]
fn a_newcomer_that_lies_in_two_heaps_makes_neither_ask() {
    let mut collection = sorted_by_hand();
    for side in [true, false] {
        collection.apply(&Edit::Key(KeyId(1), KeyEdit::TakeOut(Fork(vec![side]))));
    }
    let before = made(&collection);
    let elm = |sides: Vec<(Fork, Side)>| Newcomer {
        name: "elm".into(),
        difference: Some(Difference {
            name: "bark".into(),
            ours: "rough".into(),
            theirs: (1..=4).map(|kind| (KindId(kind), "smooth".to_owned())).collect(),
        }),
        sides,
        ..Newcomer::default()
    };
    let asks = |newcomer: &Newcomer| {
        slot_in(ENGLISH, &collection, KeyId(1), &before, newcomer).expect("a place").asks
    };
    let one = asks(&elm(vec![(Fork(vec![]), Side::No)]));
    assert!(one.is_some_and(|words| words.contains("rough") || words.contains("smooth")));
    assert_eq!(asks(&elm(vec![(Fork(vec![]), Side::Both)])), None);
}

#[test]
fn a_question_that_is_linked_later_keeps_its_heaps_and_another_one_does_not() {
    let mut collection = sorted_by_hand();
    let (key, at) = (KeyId(1), Fork::default());
    let sorted = |collection: &Collection| collection.keys[&key].questions[&at].sorted.len();
    assert_eq!(sorted(&collection), 4);
    let yes = AskedOf::States(vec!["shiny".into()]);
    let ask = |words: &str, ask| {
        Edit::Key(key, KeyEdit::Ask { at: at.clone(), words: words.into(), ask })
    };
    let meant = AskOf { character: CharacterId(1), yes };
    collection.apply(&ask("Does it shine?", Some(meant.clone())));
    assert_eq!(sorted(&collection), 4);
    assert_eq!(collection.keys[&key].questions[&at].ask, Some(meant));
    assert_eq!(collection.keys[&key].questions.len(), 3, "what is asked below stays");
    collection.apply(&ask("Is it dull?", None));
    assert_eq!((sorted(&collection), collection.keys[&key].questions.len()), (0, 1));
}

#[test]
fn what_hands_said_of_the_table_outlasts_its_question() {
    let (key, at, kind, character) = (KeyId(1), Fork::default(), KindId(1), CharacterId(4));
    let mut collection = hedge();
    let yes = AskedOf::States(vec!["toothed".into()]);
    let edits = [
        Edit::Cell { kind, character, source: String::new(), text: String::new() },
        Edit::Key(
            key,
            KeyEdit::Ask {
                at: at.clone(),
                words: "Jagged?".into(),
                ask: Some(AskOf { character, yes }),
            },
        ),
        Edit::Key(key, KeyEdit::Sort { at: at.clone(), kind, side: Some(Side::Yes) }),
    ];
    apply(&mut collection, &edits);
    let before = Laid::of(&collection).expect("there are kinds");
    assert_eq!(super::written_as_sorted(&mut collection, &before), [], "the card still lies");
    collection.apply(&Edit::Key(key, KeyEdit::TakeOut(at)));
    let (source, text) = ("Ours".into(), "toothed".into());
    let written = Edit::Cell { kind, character, source, text };
    assert_eq!(super::written_as_sorted(&mut collection, &before), [written]);
    let after = Laid::of(&collection).expect("there are kinds");
    assert_eq!(after.said, before.said);
}

#[test]
fn what_was_just_found_is_asked_though_an_older_column_would_do() {
    let collection = hedge();
    let before = made(&collection);
    // Like bramble, the last kind, but for the place on the twig.
    let bramble = KindId(12);
    let like_bramble = |character: &CharacterId| {
        let text = match collection.character_name(*character) {
            "place on the twig" => "opposite",
            _ => collection.cells.said(bramble, *character, ""),
        };
        (None, *character, text.to_owned())
    };
    let mut newcomer = Newcomer {
        name: "dewberry".into(),
        cells: collection.characters.keys().map(like_bramble).collect(),
        difference: Some(Difference {
            name: "underside".into(),
            ours: "white".into(),
            theirs: vec![(bramble, "green".into())],
        }),
        ..Newcomer::default()
    };
    let asks = |newcomer: &Newcomer| {
        let slotted =
            slot_in(ENGLISH, &collection, KeyId(1), &before, newcomer).expect("a place");
        let mut after = collection.clone();
        apply(&mut after, &slotted.edits);
        assert_right(&after, &slotted);
        let underside = Laid::of(&after).and_then(|laid| laid.character(CharacterId(10)));
        let underside = underside.expect("it is in the table");
        let asked = made(&after).key.couplets.into_iter().filter_map(|couplet| couplet.ask);
        let asked = asked.filter(|ask| ask.character == underside).count();
        (asked, slotted.not_asked, slotted.change.expect("the key is whole"))
    };
    // Nobody knows beside whom it lies: the table does with what it has, and says so.
    let (asked, not_asked, _) = asks(&newcomer);
    assert_eq!((asked, not_asked.as_deref()), (0, Some("underside")));
    newcomer.beside = vec![bramble];
    let (asked, not_asked, change) = asks(&newcomer);
    assert_eq!((asked, not_asked), (1, None));
    assert!(change.alike.is_empty());
    assert_eq!(change.revision.parts.added.len(), 1, "{:?}", change.revision.parts);
    assert!(change.revision.effort >= change.revision.best, "no key is better than the best");
}

#[test]
fn from_two_that_nobody_tells_apart_the_new_difference_parts_a_third() {
    let collection = hedge();
    let before = made(&collection);
    let (ivy, holly) = (KindId(8), KindId(9));
    // Smooth and with a long stalk, as neither alone is told from by one older column.
    let cells = collection.characters.keys().map(|character| {
        let text = match collection.character_name(*character) {
            "place on the twig" => "opposite",
            _ => collection.cells.said(ivy, *character, ""),
        };
        (None, *character, text.to_owned())
    });
    let newcomer = Newcomer {
        name: "privet".into(),
        cells: cells.collect(),
        difference: Some(Difference {
            name: "berries".into(),
            ours: "none".into(),
            theirs: vec![(ivy, "black".into()), (holly, "red".into())],
        }),
        beside: vec![ivy, holly],
        ..Newcomer::default()
    };
    let slotted = slot_in(ENGLISH, &collection, KeyId(1), &before, &newcomer).expect("a place");
    let mut after = collection.clone();
    apply(&mut after, &slotted.edits);
    assert_right(&after, &slotted);
    assert_eq!(slotted.not_asked, None);
    assert!(slotted.change.expect("the key is whole").alike.is_empty());
}

#[test]
fn a_heap_that_nobody_went_on_with_asks_for_the_new_difference() {
    let mut collection = sorted_by_hand();
    collection.apply(&Edit::Key(KeyId(1), KeyEdit::TakeOut(Fork(vec![false]))));
    let before = made(&collection);
    let newcomer = Newcomer {
        name: "elm".into(),
        sides: vec![(Fork(vec![]), Side::No)],
        difference: Some(Difference {
            name: "foot".into(),
            ours: "lopsided".into(),
            theirs: vec![(KindId(1), "even".into()), (KindId(2), "even".into())],
        }),
        beside: vec![KindId(1), KindId(2)],
        ..Newcomer::default()
    };
    let slotted = slot_in(ENGLISH, &collection, KeyId(1), &before, &newcomer).expect("a place");
    let words = slotted.asks.clone().expect("it is offered there");
    apply(&mut collection, &slotted.edits);
    let question = &collection.keys[&KeyId(1)].questions[&Fork(vec![false])];
    assert_eq!(question.words, words);
    assert!(question.ask.as_ref().is_some_and(|ask| ask.character == CharacterId(1)));
    let layer = made(&collection).layer;
    let lies = |answer| layer.forks[&Fork(vec![false, answer])].kinds.clone();
    let (one, others) = (vec![KindId(5)], vec![KindId(1), KindId(2)]);
    let heaps = [lies(true), lies(false)];
    assert!(heaps == [one.clone(), others.clone()] || heaps == [others, one], "{heaps:?}");
}
