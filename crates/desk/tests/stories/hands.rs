//! What hands say is heard wherever a cell is shown, decided or written.

use crate::at_the_desk::AtTheDesk;
use spinney_model::{
    AskOf, AskedOf, CharacterEdit, CharacterField, CharacterId, Edit, Fork, KeyEdit, KeyId,
    KindEdit, KindId,
};
use spinney_model::{Side, WishField};

const EDGE: CharacterId = CharacterId(1);
const HAZEL: KindId = KindId(1);
const OAK: KindId = KindId(2);
const ASH: KindId = KindId(3);
const TOP: Fork = Fork(Vec::new());

fn said(kind: u32, source: &str, text: &str) -> Edit {
    let (source, text) = (source.to_owned(), text.to_owned());
    Edit::Cell { kind: KindId(kind), character: EDGE, source, text }
}

/// Hazel is toothed, oak smooth; of ash nobody has said anything. The edge has these states.
fn finds(states: &str) -> AtTheDesk {
    let mut class = AtTheDesk::empty();
    let mut edits: Vec<Edit> = (1..)
        .zip(["hazel", "oak", "ash"])
        .map(|(id, name)| Edit::Kind(KindId(id), KindEdit::Add(name.to_owned())))
        .collect();
    edits.extend([
        Edit::Character(EDGE, CharacterEdit::Add("edge".to_owned())),
        Edit::Character(
            EDGE,
            CharacterEdit::Describe(CharacterField::States, states.to_owned()),
        ),
        said(1, "", "toothed"),
        said(2, "", "smooth"),
    ]);
    class.does(edits);
    class
}

/// A group begins its key with a question for some states of the edge.
fn begins(class: &mut AtTheDesk, key: u32, group: &str, words: &str, states: &[&str]) {
    let states = states.iter().map(|state| (*state).to_owned()).collect();
    let ask = Some(AskOf { character: EDGE, yes: AskedOf::States(states) });
    let key = KeyId(key);
    class.does(vec![
        Edit::Key(key, KeyEdit::Start(format!("{group}’s key"))),
        Edit::Key(key, KeyEdit::Wish(WishField::Group, group.to_owned())),
        Edit::Key(key, KeyEdit::Ask { at: TOP, words: words.to_owned(), ask }),
    ]);
}

fn put(key: u32, at: &Fork, kind: KindId, side: Side) -> Edit {
    Edit::Key(KeyId(key), KeyEdit::Sort { at: at.clone(), kind, side: Some(side) })
}

fn puts(class: &mut AtTheDesk, key: u32, kind: KindId, side: Side) {
    class.does(vec![put(key, &TOP, kind, side)]);
}

#[test]
fn yes_against_no_is_told_though_neither_names_a_state() {
    let mut class = finds("toothed; spiny; smooth; wavy");
    for (key, group) in [(1, "Fern"), (2, "Moss")] {
        begins(&mut class, key, group, "Is the edge rough?", &["toothed", "spiny"]);
    }
    puts(&mut class, 1, ASH, Side::Yes);
    assert!(!class.get("/finds").contains("seen differently"), "one alone contradicts nobody");
    puts(&mut class, 2, ASH, Side::No);
    let page = class.get("/finds");
    assert!(page.contains("One thing that is seen differently"));
    assert!(page.contains("Fern: one or more of: toothed, spiny"), "{page}");
    assert!(page.contains("Moss: none of: toothed, spiny"));
    let page = class.get("/heaps?key=1");
    assert!(page.contains("people do not agree here.") && page.contains("Moss put it"));
    assert!(class.get("/heaps?key=2").contains("Fern put it"));
    assert!(class.get("/table?show=differ").contains("Fern: one or more of: toothed, spiny"));
    assert!(class.get("/finds/3").contains("none of: toothed, spiny"));
    puts(&mut class, 2, ASH, Side::Both);
    assert!(class.get("/finds").contains("Moss: sometimes one or more of: toothed, spiny"));
    class.post("/do/decide", &[("kind", "3"), ("character", "1"), ("other", "wavy")]);
    assert!(!class.get("/finds").contains("seen differently"));
}

#[test]
fn a_sign_that_somebody_types_is_what_they_typed() {
    let mut class = finds("toothed; smooth");
    class.does(vec![said(3, "Moss", "\u{2260} toothed"), said(3, "Reed", "smooth")]);
    let page = class.get("/finds");
    assert!(page.contains("Moss: \u{2260} toothed") && !page.contains("not toothed"), "{page}");
    assert!(page.contains("“\u{2260} toothed” is right"));
    assert!(class.get("/table?as=Moss").contains("name=\"c-3-1\" value=\"\u{2260} toothed\""));
}

#[test]
fn the_same_in_another_order_is_no_disagreement() {
    let mut class = finds("toothed; smooth");
    begins(&mut class, 1, "Fern", "Is it toothed?", &["toothed"]);
    class.does(vec![said(3, "Moss", "smooth or toothed")]);
    puts(&mut class, 1, ASH, Side::Both);
    assert!(!class.get("/finds").contains("seen differently"));
    assert!(class.get("/table").contains("name=\"c-3-1\" value=\"toothed or smooth\""));
}

/// A second question of Fern's key, in its own words, and where the finds lie.
fn fern_goes_on(class: &mut AtTheDesk, yes: bool, lying: &[(bool, KindId, Side)]) {
    let below = Fork(vec![yes]);
    let words = "Is it soft?".to_owned();
    let mut edits =
        vec![Edit::Key(KeyId(1), KeyEdit::Ask { at: below.clone(), words, ask: None })];
    edits.extend(lying.iter().map(|(further, kind, side)| {
        let at = if *further { below.clone() } else { TOP };
        put(1, &at, *kind, *side)
    }));
    class.does(edits);
}

#[test]
fn a_newcomer_does_not_decide_between_two_groups_that_sorted_differently() {
    let mut class = finds("toothed; spiny; smooth");
    begins(&mut class, 1, "Fern", "Is it smooth?", &["smooth"]);
    let lying = [
        (false, ASH, Side::Yes),
        (false, HAZEL, Side::No),
        (false, OAK, Side::No),
        (true, HAZEL, Side::Yes),
        (true, OAK, Side::No),
    ];
    fern_goes_on(&mut class, false, &lying);
    begins(&mut class, 2, "Reed", "Is it toothed?", &["toothed"]);
    puts(&mut class, 2, ASH, Side::Yes);
    let page = class.get("/newcomer?key=1&name=willow&walk=y");
    assert!(page.contains("Fern: smooth") && page.contains("Reed: toothed"), "{page}");
    let form = [("key", "1"), ("walk", "y"), ("name", "willow"), ("k-3-1", "spiny")];
    let page = class.look("/newcomer/slot", &form);
    for said in ["Fern: smooth", "Reed: toothed", "What you typed: spiny"] {
        assert!(page.contains(said), "{said}: {page}");
    }
    class.refused("/do/slot-in", &form);
}

#[test]
fn a_newcomer_does_not_write_over_a_no_that_leaves_several_things_open() {
    let mut class = finds("toothed; spiny; smooth");
    begins(&mut class, 1, "Fern", "Is it toothed?", &["toothed"]);
    let lying = [
        (false, HAZEL, Side::Yes),
        (false, ASH, Side::No),
        (false, OAK, Side::No),
        (true, ASH, Side::Yes),
        (true, OAK, Side::No),
    ];
    fern_goes_on(&mut class, false, &lying);
    let typed = |text| [("key", "1"), ("walk", "ny"), ("name", "willow"), ("k-3-1", text)];
    let page = class.get("/newcomer?key=1&walk=ny");
    assert!(
        page.contains("It comes out at ash<") && page.contains("Fern: not toothed"),
        "{page}"
    );
    let page = class.look("/newcomer/slot", &typed("toothed"));
    assert!(page.contains("Fern: not toothed") && page.contains("What you typed: toothed"));
    let page = class.look("/newcomer/slot", &typed("spiny"));
    assert!(page.contains("/do/slot-in"), "Fern leaves that open");
    class.does(vec![said(3, "Moss", "toothed")]);
    let page = class.get("/newcomer?key=1&name=willow&walk=ny");
    assert!(page.contains("Fern: not toothed") && page.contains("Moss: toothed"), "{page}");
}
