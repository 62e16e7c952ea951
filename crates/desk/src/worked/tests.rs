//! What an edit does not touch stays as it was worked out.

use std::sync::Arc;

use spinney_collection::reworded;
use spinney_exchange::journal;
use spinney_model::{
    AskOf, AskedOf, CharacterEdit, CharacterId, Done, Edit, Entry, Fork, KeyEdit, KeyId,
    KindId, Side, WishField,
};
use spinney_voice::Tongue;

use crate::desk::Desk;
use crate::reply::Reply;
use crate::request::Request;

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
    let [one, two] =
        [1, 2].map(|key| desk.made(Tongue::of_tokens(), KeyId(key)).expect("it has kinds"));
    does(desk, done);
    let same = |key, made: &Arc<_>| {
        desk.made(Tongue::of_tokens(), KeyId(key)).is_some_and(|m| Arc::ptr_eq(&m, made))
    };
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

/// A hedge in German, and a key of it that the machine finishes, or that asks for lobes in some
/// words.
fn hedge(asks: Option<&str>) -> Desk {
    let table = "kind,Blattrand\nIlex,stachelig\nEibe,glatt\nEfeu,gelappt\n";
    let source = spinney_exchange::table::Source {
        name: "table".to_owned(),
        bytes: table.as_bytes().to_vec(),
    };
    let lines = Desk::lines_of_table(&[source], 0).expect("it has kinds");
    let mut desk = Desk::open(lines.iter().map(Vec::as_slice)).expect("our own lines");
    let key = |edit| Edit::Key(KeyId(1), edit);
    let mut edits = vec![key(KeyEdit::Start("Hecke".to_owned()))];
    let yes = AskedOf::States(vec!["gelappt".to_owned()]);
    edits.push(match asks {
        Some(words) => key(KeyEdit::Ask {
            at: Fork::default(),
            words: words.to_owned(),
            ask: Some(AskOf { character: CharacterId(1), yes }),
        }),
        None => key(KeyEdit::Wish(WishField::Finish, "yes".to_owned())),
    });
    does(&mut desk, Done::Edits(edits));
    desk
}

fn german() -> Tongue {
    Tongue::for_person(&["de".to_owned()])
}

/// The first question of the key, and its token.
fn first(desk: &Desk, t: Tongue) -> (String, String) {
    let made = desk.made(t, KeyId(1)).expect("it has kinds");
    (made.key.couplets[0].wording.first().to_owned(), made.token())
}

#[test]
fn a_key_is_read_in_each_language_and_compared_in_one() {
    let mut desk = hedge(None);
    let (english, token) = first(&desk, Tongue::of_tokens());
    let (ours, same) = first(&desk, german());
    assert_eq!(
        (english.as_str(), ours.as_str()),
        ("Blattrand: stachelig?", "Ist der Blattrand stachelig?")
    );
    assert_eq!(token, same);
    let request = Request { languages: vec!["de".to_owned()], ..Request::get("/key?key=1") };
    let Reply::Page(page) = desk.handle(&request) else { panic!("it is a page") };
    let page = String::from_utf8(page.body).expect("text");
    assert!(page.contains(&ours) && !page.contains(&english));
    // What an edit touches is said anew.
    let renamed =
        CharacterEdit::RenameState { from: "stachelig".to_owned(), to: "dornig".to_owned() };
    does(&mut desk, Done::Edits(vec![Edit::Character(CharacterId(1), renamed)]));
    assert_eq!(first(&desk, german()).0, "Ist der Blattrand dornig?");
}

#[test]
fn a_question_that_was_kept_in_german_is_the_tables_own() {
    let in_german = hedge(Some("Ist der Blattrand gelappt?"));
    let in_english = hedge(Some("Blattrand: gelappt?"));
    let own = hedge(Some("Hat das Blatt Buchten?"));
    let of = |desk: &Desk| first(desk, german());
    // It stays as it was kept, whoever reads it.
    assert_eq!(first(&in_german, Tongue::of_tokens()).0, "Ist der Blattrand gelappt?");
    assert_eq!(of(&in_english).0, "Blattrand: gelappt?");
    assert_eq!(of(&in_german).1, of(&in_english).1, "it asks the same");
    assert_ne!(of(&own).1, of(&in_english).1);
    let renamed =
        CharacterEdit::RenameState { from: "gelappt".to_owned(), to: "gebuchtet".to_owned() };
    let edits = [Edit::Character(CharacterId(1), renamed)];
    for (desk, words) in [
        (&in_german, Some("Ist der Blattrand gebuchtet?")),
        (&in_english, Some("Blattrand: gebuchtet?")),
        (&own, None),
    ] {
        let follow = reworded::follow(&desk.history.now, &edits);
        let said = follow.iter().find_map(|edit| {
            let Edit::Key(_, KeyEdit::Reword { words, .. }) = edit else { return None };
            Some(words.as_str())
        });
        assert_eq!(said, words);
    }
}
