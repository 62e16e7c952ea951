//! What an edit does not touch stays as it was worked out.

use std::sync::Arc;

use spinney_exchange::journal;
use spinney_model::KeyEdit;
use spinney_model::{
    AskOf, AskedOf, CharacterId, Done, Edit, Entry, Fork, KeyId, KindId, Side, WishField,
};

use crate::desk::Desk;

fn does(desk: &mut Desk, done: Done) {
    let line = journal::write(&Entry { at: 0, done });
    desk.catch_up([line.as_slice()]).expect("our own line");
}

fn ask(key: u32, ask: Option<AskOf>) -> Edit {
    Edit::Key(
        KeyId(key),
        KeyEdit::Ask { at: Fork::default(), words: "Is it ours?".to_owned(), ask },
    )
}

fn sort(key: u32) -> Edit {
    let side = Some(Side::Yes);
    Edit::Key(KeyId(key), KeyEdit::Sort { at: Fork::default(), kind: KindId(1), side })
}

/// Three kinds, and two keys of them.
fn desk() -> Desk {
    let table = b"kind,edge\nholly,spiny\nyew,smooth\nivy,lobed\n".to_vec();
    let source = spinney_exchange::table::Source { name: "table".to_owned(), bytes: table };
    let lines = Desk::lines_of_table(&[source], 0).expect("it has kinds");
    let mut desk = Desk::open(lines.iter().map(Vec::as_slice)).expect("our own lines");
    let start = |key| Edit::Key(KeyId(key), KeyEdit::Start(format!("Group {key}")));
    does(&mut desk, Done::Edits(vec![start(1), ask(1, None), start(2), ask(2, None)]));
    desk
}

/// Whether the table, the first key and the second one are as they were after something is done.
fn as_they_were(desk: &mut Desk, done: Done) -> [bool; 3] {
    let laid = desk.laid().expect("there are kinds");
    let [one, two] = [1, 2].map(|key| desk.made(KeyId(key)).expect("it has kinds"));
    does(desk, done);
    let same =
        |key, made: &Arc<_>| desk.made(KeyId(key)).is_some_and(|m| Arc::ptr_eq(&m, made));
    let table = Arc::ptr_eq(&desk.laid().expect("there are kinds"), &laid);
    [table, same(1, &one), same(2, &two)]
}

#[test]
fn a_card_in_a_groups_own_words_touches_its_own_key_alone() {
    let mut desk = desk();
    let sorted = Done::Edits(vec![sort(1)]);
    assert_eq!(as_they_were(&mut desk, sorted), [true, false, true]);
    let wish = Edit::Key(KeyId(2), KeyEdit::Wish(WishField::Season, "winter".to_owned()));
    assert_eq!(as_they_were(&mut desk, Done::Edits(vec![wish])), [true, true, false]);
    let both = Done::Edits(vec![sort(1), sort(2)]);
    assert_eq!(as_they_were(&mut desk, both), [false, false, false], "it is one line");
    let version = Done::Version("before lunch".to_owned());
    assert_eq!(as_they_were(&mut desk, version), [true, true, true]);
}

#[test]
fn a_card_that_says_something_of_the_table_touches_everything() {
    let mut desk = desk();
    let yes = AskedOf::States(vec!["spiny".to_owned()]);
    let linked = ask(1, Some(AskOf { character: CharacterId(1), yes }));
    assert_eq!(as_they_were(&mut desk, Done::Edits(vec![linked])), [false; 3]);
    assert_eq!(as_they_were(&mut desk, Done::Edits(vec![sort(1)])), [false; 3]);
    assert_eq!(as_they_were(&mut desk, Done::Undo), [false; 3]);
    let cell = Edit::Cell {
        kind: KindId(1),
        character: CharacterId(1),
        source: String::new(),
        text: "smooth".to_owned(),
    };
    assert_eq!(as_they_were(&mut desk, Done::Edits(vec![cell])), [false; 3]);
}
