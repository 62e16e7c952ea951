//! Which cells come to one thing, and which people have to look at again.

use spinney_model::{
    AskOf, AskedOf, CharacterEdit, CharacterField, CharacterId, Edit, Fork, KeyEdit, KeyId,
    KindEdit, KindId, Side, WishField,
};

use super::Agreed;
use crate::Collection;
use crate::laid::Laid;

const ASH: KindId = KindId(1);
const AT: CharacterId = CharacterId(1);

fn say(source: &str, text: &str) -> Edit {
    let (source, text) = (source.to_owned(), text.to_owned());
    Edit::Cell { kind: ASH, character: AT, source, text }
}

/// One column, `edge` of four states or a length in mm, and oak and hazel beside the ash.
fn column(of: &str) -> Collection {
    let mut collection = Collection::default();
    let (field, text) = match of {
        "mm" => (CharacterField::Unit, "mm"),
        states => (CharacterField::States, states),
    };
    let known = |kind, text: &str| Edit::Cell {
        kind: KindId(kind),
        character: AT,
        source: String::new(),
        text: text.to_owned(),
    };
    for edit in [
        Edit::Kind(ASH, KindEdit::Add("ash".to_owned())),
        Edit::Kind(KindId(2), KindEdit::Add("oak".to_owned())),
        Edit::Character(AT, CharacterEdit::Add("edge".to_owned())),
        Edit::Character(AT, CharacterEdit::Describe(field, text.to_owned())),
        known(2, if of == "mm" { "30-60" } else { "smooth" }),
    ] {
        collection.apply(&edit);
    }
    collection
}

/// A group asks for some states and puts the ash on a side.
fn puts(collection: &mut Collection, number: u32, yes: &[&str], side: Side) {
    let key = KeyId(number);
    let states = yes.iter().map(|state| (*state).to_owned()).collect();
    let ask = Some(AskOf { character: AT, yes: AskedOf::States(states) });
    let (at, words) = (Fork::default(), format!("Is it {}?", yes.join(" or ")));
    for edit in [
        Edit::Key(key, KeyEdit::Start(format!("key {number}"))),
        Edit::Key(key, KeyEdit::Wish(WishField::Group, format!("Group {number}"))),
        Edit::Key(key, KeyEdit::Ask { at: at.clone(), words, ask }),
        Edit::Key(key, KeyEdit::Sort { at, kind: ASH, side: Some(side) }),
    ] {
        collection.apply(&edit);
    }
}

fn agreed(collection: &Collection) -> String {
    let laid = Laid::of(collection).expect("there are kinds");
    match laid.said.agreed(ASH, AT) {
        Agreed::Blank => "blank".to_owned(),
        Agreed::Text(text) => text.to_owned(),
        Agreed::Contradicted => {
            let said = laid.said.sources(ASH, AT);
            said.iter().map(|(who, _)| *who).collect::<Vec<_>>().join(" against ")
        }
    }
}

const EDGE: &str = "toothed; spiny; smooth; wavy";

#[test]
fn two_cards_that_cannot_both_be_right_contradict_each_other() {
    let rough = ["toothed", "spiny"];
    for (one, other, expected) in [
        ((&rough[..], Side::Yes), (&rough[..], Side::No), "Group 1 against Group 2"),
        ((&rough, Side::Both), (&rough, Side::No), "Group 1 against Group 2"),
        ((&rough, Side::Both), (&["toothed"], Side::No), "blank"),
        ((&["toothed"], Side::Both), (&["toothed"], Side::No), "Group 1 against Group 2"),
        ((&["toothed"], Side::Both), (&rough, Side::Yes), "blank"),
        ((&["toothed"], Side::Yes), (&rough, Side::Yes), "toothed"),
        ((&["toothed"], Side::Yes), (&rough, Side::No), "Group 1 against Group 2"),
        ((&["toothed"], Side::Yes), (&rough, Side::Both), "Group 1 against Group 2"),
        ((&rough, Side::Yes), (&["spiny", "wavy"], Side::Yes), "blank"),
        ((&rough, Side::Yes), (&["smooth", "wavy"], Side::Yes), "Group 1 against Group 2"),
        ((&rough, Side::No), (&["wavy"], Side::No), "blank"),
        ((&rough, Side::No), (&["smooth", "wavy"], Side::No), "Group 1 against Group 2"),
    ] {
        let mut collection = column(EDGE);
        puts(&mut collection, 1, one.0, one.1);
        puts(&mut collection, 2, other.0, other.1);
        assert_eq!(agreed(&collection), expected, "{one:?} {other:?}");
    }
}

#[test]
fn three_may_contradict_each_other_though_no_two_of_them_do() {
    let mut collection = column(EDGE);
    puts(&mut collection, 1, &["toothed", "spiny"], Side::Yes);
    puts(&mut collection, 2, &["spiny", "smooth"], Side::Yes);
    assert_eq!(agreed(&collection), "blank");
    puts(&mut collection, 3, &["toothed", "smooth"], Side::Yes);
    assert_eq!(agreed(&collection), "Group 1 against Group 2 against Group 3");
    collection.apply(&say("", "spiny"));
    assert_eq!(agreed(&collection), "spiny", "somebody decided");
}

#[test]
fn a_card_contradicts_what_was_typed_where_it_cannot_be() {
    for (yes, side, typed, expected) in [
        (&["toothed", "spiny"][..], Side::Yes, "Spiny or toothed", "Spiny or toothed"),
        (&["toothed", "spiny"], Side::Yes, "spiny or smooth", "Group 1 against Moss"),
        (&["toothed", "spiny"], Side::No, "spiny 3, smooth 1", "Group 1 against Moss"),
        (&["toothed", "spiny"], Side::Both, "spiny", "Group 1 against Moss"),
        (&["toothed", "spiny"], Side::Both, "wavy or spiny", "wavy or spiny"),
        (&["toothed"], Side::No, "?", "?"),
        (&["toothed"], Side::No, "\u{2260} toothed", "\u{2260} toothed"),
        (&["toothed"], Side::Yes, "\u{2260} toothed", "Group 1 against Moss"),
    ] {
        let mut collection = column(EDGE);
        puts(&mut collection, 1, yes, side);
        collection.apply(&say("Moss", typed));
        assert_eq!(agreed(&collection), expected, "{yes:?} {side:?} {typed}");
    }
}

#[test]
fn texts_are_the_same_if_the_reader_reads_the_same() {
    let saw = "\"jagged, like a saw\"; smooth; wavy";
    for (of, fern, moss, expected) in [
        (EDGE, "smooth or toothed", "toothed or smooth", "smooth or toothed"),
        (EDGE, "smooth or toothed", "toothed, smooth", "smooth or toothed"),
        (EDGE, "smooth or toothed", "toothed", "Fern against Moss"),
        (EDGE, "toothed 8, smooth 2", "smooth 2, toothed 8", "toothed 8, smooth 2"),
        (EDGE, "toothed or smooth", "smooth 2, toothed 8", "smooth 2, toothed 8"),
        (EDGE, "toothed 8, smooth 2", "smooth 8, toothed 2", "Fern against Moss"),
        (EDGE, "toothed (12 seen)", "Toothed", "toothed (12 seen)"),
        (EDGE, "toothed", "n/a", "Fern against Moss"),
        (EDGE, "toothed", "?", "Fern against Moss"),
        (EDGE, "not applicable", "n/a", "not applicable"),
        (saw, "jagged, like a saw", "\"jagged, like a saw\"", "jagged, like a saw"),
        (saw, "smooth, wavy", "\"jagged, like a saw\"", "Fern against Moss"),
        ("mm", "2-4 cm", "20-40", "2-4 cm"),
        ("mm", "2-4 cm", "20 - 40 mm", "2-4 cm"),
        ("mm", "2-4 cm", "2-4", "Fern against Moss"),
        ("mm", "2-4 cm", "20-41", "Fern against Moss"),
    ] {
        let mut collection = column(of);
        collection.apply(&say("Fern", fern));
        collection.apply(&say("Moss", moss));
        assert_eq!(agreed(&collection), expected, "{fern} beside {moss}");
    }
}

#[test]
fn what_is_the_same_is_offered_once() {
    let mut collection = column(EDGE);
    for (who, text) in [
        ("Fern", "smooth or toothed"),
        ("Moss", "toothed, smooth"),
        ("Oak", "wavy"),
        ("Reed", "Toothed or smooth"),
    ] {
        collection.apply(&say(who, text));
    }
    let laid = Laid::of(&collection).expect("there are kinds");
    assert_eq!(laid.said.choices(ASH, AT), ["smooth or toothed", "wavy"]);
    assert_eq!(laid.said.sources(ASH, AT).len(), 4, "all are named");
}

#[test]
fn a_card_that_varies_says_what_others_typed_in_another_order() {
    let mut collection = column("toothed; smooth");
    puts(&mut collection, 1, &["toothed"], Side::Both);
    collection.apply(&say("Moss", "smooth or toothed"));
    assert_eq!(agreed(&collection), "toothed or smooth");
}

#[test]
fn of_three_voices_both_who_counted_are_heard() {
    let voices = [
        ("Adders", "toothed 3, smooth 1"),
        ("Bees", "toothed or smooth"),
        ("Cats", "toothed 1, smooth 3"),
    ];
    // In whichever order they stand, the one who did not count says nothing of its own.
    for names in
        [["Adders", "Bees", "Cats"], ["Bees", "Adders", "Cats"], ["Cats", "Adders", "Bees"]]
    {
        let mut collection = column(EDGE);
        for (name, (_, text)) in names.iter().zip(&voices) {
            collection.apply(&say(name, text));
        }
        let laid = Laid::of(&collection).expect("there are kinds");
        let mut choices = laid.said.choices(ASH, AT);
        choices.sort_unstable();
        assert_eq!(choices, ["toothed 1, smooth 3", "toothed 3, smooth 1"], "{names:?}");
    }
}
