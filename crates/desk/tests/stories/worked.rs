//! Whatever is done, the pages are those of a desk that has worked out nothing before.

use crate::at_the_desk::AtTheDesk;
use spinney_desk::{Desk, Reply, Request};
use spinney_model::{
    AboutField, AskOf, AskedOf, CharacterField, CharacterId, Edit, Fork, KeyId, KindField,
    KindId, Side, WishField,
};
use spinney_model::{CharacterEdit, KeyEdit, KindEdit};

const PAGES: [&str; 11] = [
    "/finds",
    "/finds/1",
    "/table",
    "/heaps?key=1",
    "/heaps?key=2",
    "/heaps/answers?key=2",
    "/key?key=1&open=",
    "/key?key=2",
    "/try?key=1&at=",
    "/words?key=2",
    "/print?key=1",
];

/// Every screen as this desk shows it, and as one does that has just opened the collection.
fn the_same(class: &mut AtTheDesk, after: &str) {
    let mut fresh = Desk::open(class.lines.iter().map(Vec::as_slice)).expect("our own lines");
    for path in PAGES {
        let request = Request::get(path);
        let [here, there] =
            [&mut class.desk, &mut fresh].map(|desk| match desk.handle(&request) {
                Reply::Page(page) => String::from_utf8(page.body).expect("a page is text"),
                other => panic!("{path}: {other:?}"),
            });
        assert!(here == there, "{path} after {after}: {here}\n\nfreshly opened:\n\n{there}");
    }
}

#[test]
fn no_edit_leaves_anything_that_is_no_longer_so() {
    let mut class = AtTheDesk::with_hedge_walk();
    let text = str::to_owned;
    let at = Fork::default;
    let (ours, theirs) = (KeyId(1), KeyId(2));
    let of = |state: &str| AskOf {
        character: CharacterId(1),
        yes: AskedOf::States(vec![text(state)]),
    };
    let ask = |key, words: &str, ask| {
        Edit::Key(key, KeyEdit::Ask { at: at(), words: text(words), ask })
    };
    let sort =
        |key, kind, side| Edit::Key(key, KeyEdit::Sort { at: at(), kind: KindId(kind), side });
    let state = class.get("/table/1");
    let state = state.split("name=\"from\" value=\"").nth(1).expect("its states");
    let state = state.split('"').next().expect("its end").to_owned();
    let edits = [
        Edit::Key(ours, KeyEdit::Start(text("Ours"))),
        Edit::Key(theirs, KeyEdit::Start(text("Theirs"))),
        Edit::Key(theirs, KeyEdit::Wish(WishField::Finish, text("yes"))),
        ask(ours, "Does it prick?", None),
        sort(ours, 1, Some(Side::Yes)),
        sort(ours, 2, Some(Side::No)),
        ask(ours, "Does it prick?", Some(of(&state))),
        sort(ours, 3, Some(Side::No)),
        sort(ours, 1, Some(Side::Both)),
        Edit::Key(ours, KeyEdit::Rename(text("Foxes"))),
        Edit::Key(ours, KeyEdit::Wish(WishField::Group, text("Owls"))),
        Edit::Key(ours, KeyEdit::Reword { at: at(), words: text("Is it prickly?") }),
        Edit::Key(ours, KeyEdit::ForKinds(Some([1, 2, 3, 4].map(KindId).to_vec()))),
        Edit::Key(ours, KeyEdit::Call { kind: KindId(2), name: text("the soft one") }),
        Edit::Key(theirs, KeyEdit::Wish(WishField::Season, text("winter"))),
        Edit::Key(theirs, KeyEdit::Never(vec![CharacterId(1)])),
        Edit::Key(ours, KeyEdit::TakeOut(at())),
        ask(theirs, "Whose is it?", None),
        sort(theirs, 1, Some(Side::Yes)),
        Edit::Cell {
            kind: KindId(1),
            character: CharacterId(1),
            source: text("Owls"),
            text: text("?"),
        },
        Edit::Character(
            CharacterId(1),
            CharacterEdit::RenameState { from: state, to: text("like a saw") },
        ),
        Edit::Kind(KindId(1), KindEdit::Describe(KindField::Caution, text("thorns"))),
        Edit::Scene(AboutField::Title, text("The pond")),
        Edit::Character(
            CharacterId(1),
            CharacterEdit::Describe(CharacterField::Name, text("the rim")),
        ),
        Edit::Character(CharacterId(90), CharacterEdit::Add(text("smell"))),
        Edit::Character(CharacterId(90), CharacterEdit::Remove),
        Edit::Kind(KindId(90), KindEdit::Add(text("wych elm"))),
        Edit::Kind(KindId(90), KindEdit::AddPicture("ab".repeat(32))),
        Edit::Kind(KindId(90), KindEdit::RemovePicture("ab".repeat(32))),
        Edit::Kind(KindId(2), KindEdit::Merge(KindId(90))),
        Edit::Kind(KindId(3), KindEdit::Remove),
        Edit::Key(ours, KeyEdit::Remove),
    ];
    for edit in edits {
        let after = format!("{edit:?}");
        class.does(vec![edit]);
        the_same(&mut class, &after);
    }
    class.post("/do/version", &[("name", "as it is")]);
    the_same(&mut class, "a name");
    class.undo("/finds");
    the_same(&mut class, "undo");
}
