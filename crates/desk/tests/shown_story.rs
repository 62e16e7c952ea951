//! What a screen says is so, and where it says that something is to be done there is a way.

#[path = "at_the_desk/person.rs"]
mod at_the_desk;

use at_the_desk::AtTheDesk;
use spinney_model::{AskOf, AskedOf, CharacterId, Edit, Fork, KeyId, KindId, Side, WishField};

const EDGE: CharacterId = CharacterId(1);
const HOLLY: KindId = KindId(2);

fn says(source: &str, text: &str) -> Edit {
    let (source, text) = (source.to_owned(), text.to_owned());
    Edit::SetCell { kind: HOLLY, character: EDGE, source, text }
}

fn copy(group: &mut AtTheDesk, at: &str, words: &str, sides: &[(&str, &str)]) -> String {
    let form = [("key", "1"), ("at", at), ("words", words)];
    group.post("/do/copy", &[&form, sides].concat())
}

/// Yew is smooth, oak is lobed; of holly the table itself says nothing.
fn edges() -> AtTheDesk {
    let mut class = AtTheDesk::empty();
    class.paste(
        "kind,edge,stalk\nyew,smooth,long\nholly,,long\noak,lobed,long\nash,toothed,short\n",
    );
    class
}

#[test]
fn where_people_do_not_agree_the_key_says_so_and_leads_there() {
    let mut class = edges();
    class.post("/do/start-heaps", &[("name", "Machine"), ("then", "")]);
    class.post("/do/key-finish", &[("key", "1"), ("finish", "yes"), ("back", "/key?key=1")]);
    let cell = "href=\"/table?kind=2&amp;character=1#c-2-1\"";
    let page = class.get("/key?key=1");
    assert!(page.contains("Nobody has said of holly what"), "{page}");
    assert!(page.contains(cell), "it leads to what nobody has said: {page}");
    class.does(vec![says("Foxes", "toothed"), says("Owls", "smooth")]);
    let page = class.get("/key?key=1");
    assert!(page.contains("People do not agree about holly"), "{page}");
    assert!(!page.contains("Nobody has said of holly"), "two groups have said something");
    assert!(page.contains(cell), "{page}");
    let mut walks = vec![String::new()];
    let mut ends = Vec::new();
    while let Some(walk) = walks.pop() {
        let page = class.get(&format!("/try?key=1&at={walk}"));
        match page.contains("id=\"again\"") {
            true => ends.push(page),
            false => walks.extend(["y", "n"].map(|answer| format!("{walk}{answer}"))),
        }
        assert!(walk.len() < 9, "the walk does not end");
    }
    let guess = "holly is a guess here: people do not agree";
    let guesses: Vec<_> = ends.iter().filter(|page| page.contains("is a guess here")).collect();
    assert!(guesses.len() > 1 && guesses.iter().all(|page| page.contains(guess)));
    assert!(guesses.iter().all(|page| page.contains(cell)));
}

#[test]
fn who_was_not_put_anywhere_is_put_there_from_the_key() {
    let mut group = edges();
    group.does(vec![says("", "spiny")]);
    group.post("/do/start-heaps", &[("name", "Group Green")]);
    let sides = [("kind-1", "yes"), ("kind-2", "nowhere"), ("kind-3", "no"), ("kind-4", "no")];
    copy(&mut group, "", "Is it a needle?", &sides);
    let finish = [("key", "1"), ("finish", "yes"), ("back", "/key?key=1")];
    group.post("/do/key-finish", &finish);
    let called = Edit::CallKind { key: KeyId(1), kind: HOLLY, name: "spiky one".to_owned() };
    group.does(vec![called]);
    let page = group.get("/key?key=1");
    assert!(page.contains("Nobody has said of spiky one (holly) what"), "{page}");
    assert!(page.contains("href=\"/heaps?key=1&amp;at=#card-2\""), "{page}");
    assert!(page.contains("spiky one (holly) only as a guess"), "{page}");
}

#[test]
fn two_keys_of_one_group_that_put_a_find_differently_are_told() {
    let mut class = edges();
    for (number, side) in [(1, Side::Yes), (2, Side::No)] {
        let (key, at) = (KeyId(number), Fork::default());
        let ask = AskOf { character: EDGE, yes: AskedOf::States(vec!["toothed".to_owned()]) };
        let words = "Is the edge toothed?".to_owned();
        class.does(vec![
            Edit::StartKey(key, format!("key {number}")),
            Edit::Wish(key, WishField::Group, "Foxes".to_owned()),
            Edit::Ask { key, at: at.clone(), words, ask: Some(ask) },
            Edit::Sort { key, at, kind: HOLLY, side: Some(side) },
        ]);
    }
    let page = class.get("/finds");
    let told = page.contains("id=\"unlike\"") || page.contains("id=\"disagree\"");
    assert!(told, "nobody says that the two keys differ: {page}");
    class.does(vec![says("", "toothed")]);
    let page = class.get("/finds");
    assert!(!page.contains("id=\"unlike\""), "somebody decided: {page}");
}

#[test]
fn a_group_that_typed_one_thing_and_sorted_another_is_told_of_its_other_key() {
    let mut class = edges();
    for (number, side) in [(1, Side::Yes), (2, Side::No)] {
        let (key, at) = (KeyId(number), Fork::default());
        let ask = AskOf { character: EDGE, yes: AskedOf::States(vec!["toothed".to_owned()]) };
        let words = "Is the edge toothed?".to_owned();
        class.does(vec![
            Edit::StartKey(key, format!("key {number}")),
            Edit::Wish(key, WishField::Group, format!("Group {number}")),
            Edit::Ask { key, at: at.clone(), words, ask: Some(ask) },
            Edit::Sort { key, at, kind: HOLLY, side: Some(side) },
        ]);
    }
    assert!(!class.get("/finds").contains("id=\"unlike\""), "the cell says it");
    // What a group typed counts before its card, so the cell is no contradiction any more.
    class.does(vec![says("Group 1", "smooth")]);
    assert!(class.get("/finds").contains("id=\"unlike\""));
}
