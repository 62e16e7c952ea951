//! What would make a collection too large for the screens is refused at every door; one that
//! comes too large all the same can be saved and made smaller again, and nothing else.

use crate::at_the_desk::{AtTheDesk, hidden};
use spinney_desk::{Desk, Page, Reply, Request, Upload};
use spinney_exchange::bundle::Bundle;
use spinney_exchange::journal;
use spinney_model::limits::{JOURNAL_LINES, SCREENS_COLUMNS, SCREENS_KINDS, SCREENS_LONG_TEXT};
use spinney_model::{
    AskOf, AskedOf, CharacterEdit, CharacterId, Done, Edit, Entry, Fork, KeyEdit, KeyId,
    KindEdit, KindField, KindId,
};

fn kinds(most: usize) -> Vec<Edit> {
    (1..=most as u32)
        .map(|at| Edit::Kind(KindId(at), KindEdit::Add(format!("kind {at}"))))
        .collect()
}

fn columns(most: usize) -> Vec<Edit> {
    let column =
        |at| Edit::Character(CharacterId(at), CharacterEdit::Add(format!("column {at}")));
    (1..=most as u32).map(column).collect()
}

fn of(edits: Vec<Edit>) -> AtTheDesk {
    let mut class = AtTheDesk::empty();
    class.does(edits);
    class
}

fn thousands(number: usize) -> String {
    number.to_string()
}

/// A form that is refused in the words of this limit.
fn refused(class: &mut AtTheDesk, path: &str, form: &[(&str, &str)], most: usize) {
    let page = class.refused(path, form);
    assert!(page.contains(&thousands(most)), "{path}: {page}");
    assert!(class.desk.too_large().is_none(), "{path}: it was taken all the same");
}

#[test]
fn no_door_takes_a_kind_more_than_the_screens_hold() {
    let mut class = of(kinds(SCREENS_KINDS));
    assert!(class.get("/finds").contains("kind 1"));
    refused(&mut class, "/do/add-kinds", &[("names", "yew")], SCREENS_KINDS);
    let table = "kind,edge\nyew,smooth\nholly,spiny\n";
    refused(&mut class, "/do/take-table", &[("table", table)], SCREENS_KINDS);
    class.refused("/do/lay-over", &[("who", "Red"), ("table", table)]);
    refused(&mut class, "/do/split-kind", &[("kind", "1"), ("name", "yew")], SCREENS_KINDS);
    assert!(class.desk.too_large().is_none());
    // What is there can be described, and what goes makes room.
    class.post("/do/describe-kind", &[("kind", "1"), ("caution", "prickly")]);
    class.post("/do/remove-kind", &[("kind", "2")]);
    class.post("/do/add-kinds", &[("names", "yew")]);
}

#[test]
fn no_door_takes_a_column_more() {
    let edits = [kinds(2), columns(SCREENS_COLUMNS)].concat();
    let mut class = of(edits);
    refused(&mut class, "/do/add-character", &[("name", "edge")], SCREENS_COLUMNS);
    let table = "kind,edge\nkind 1,smooth\nkind 2,spiny\n";
    refused(&mut class, "/do/take-table", &[("table", table)], SCREENS_COLUMNS);
    class.refused("/do/lay-over", &[("who", "Red"), ("table", table)]);
    assert!(class.desk.too_large().is_none());
}

/// A request that is refused, and the page that says so.
fn asked(desk: &mut Desk, request: &Request) -> Page {
    match desk.handle(request) {
        Reply::Page(page) => page,
        other => panic!("no page: {other:?}"),
    }
}

/// Collections that some door let in before there was a limit, or that nobody made by hand.
fn too_large() -> Vec<(&'static str, Vec<Edit>)> {
    let ask = |at: Fork, words: &str| {
        Edit::Key(
            KeyId(1),
            KeyEdit::Ask {
                at,
                words: words.to_owned(),
                ask: Some(AskOf {
                    character: CharacterId(1),
                    yes: AskedOf::States(vec!["lobed".to_owned()]),
                }),
            },
        )
    };
    let deep = |depth: usize| Fork(vec![true; depth]);
    let start = Edit::Key(KeyId(1), KeyEdit::Start("deep".to_owned()));
    let sort = |at: usize| {
        Edit::Key(
            KeyId(1),
            KeyEdit::Sort {
                at: Fork::default(),
                kind: KindId(at as u32),
                side: Some(spinney_model::Side::Yes),
            },
        )
    };
    let sorted = |key: u32| {
        let put = (1..=SCREENS_KINDS).map(sort).map(move |edit| match edit {
            Edit::Key(_, KeyEdit::Sort { at, kind, side, .. }) => {
                Edit::Key(KeyId(key), KeyEdit::Sort { at, kind, side })
            }
            other => other,
        });
        let question = Edit::Key(
            KeyId(key),
            KeyEdit::Ask { at: Fork::default(), words: "Lobed?".to_owned(), ask: None },
        );
        [Edit::Key(KeyId(key), KeyEdit::Start("key".to_owned())), question]
            .into_iter()
            .chain(put)
    };
    let picture = |at: usize| Edit::Kind(KindId(1), KindEdit::AddPicture(format!("{at:064x}")));
    let long = "x".repeat(SCREENS_LONG_TEXT + 1);
    let layer = |source: usize| {
        let cell = move |at: usize| Edit::Cell {
            kind: KindId((at / SCREENS_COLUMNS) as u32 + 1),
            character: CharacterId((at % SCREENS_COLUMNS) as u32 + 1),
            source: format!("group {source}"),
            text: "lobed".to_owned(),
        };
        (0..100 * SCREENS_COLUMNS).map(cell)
    };
    let every = [kinds(100), columns(SCREENS_COLUMNS)].concat();
    // Two hundred ranges in each of ten columns, no two ends alike.
    let measured = (0..2_000).map(|at: u32| Edit::Cell {
        kind: KindId(at / 10 + 1),
        character: CharacterId(at % 10 + 1),
        source: String::new(),
        text: format!("{at}-{} mm", 2 * at + 5_000),
    });
    let lengths = [kinds(SCREENS_KINDS), columns(10)].concat().into_iter().chain(measured);
    vec![
        ("kinds", kinds(SCREENS_KINDS + 1)),
        ("columns", columns(SCREENS_COLUMNS + 1)),
        ("measurements", lengths.collect()),
        (
            "a text",
            [
                kinds(1),
                vec![Edit::Kind(KindId(1), KindEdit::Describe(KindField::Caution, long))],
            ]
            .concat(),
        ),
        ("many groups", every.into_iter().chain((0..9).flat_map(layer)).collect()),
        (
            "keys",
            (1..=101)
                .map(|at| Edit::Key(KeyId(at), KeyEdit::Start("key".to_owned())))
                .collect(),
        ),
        (
            "a deep key",
            [
                kinds(2),
                columns(1),
                vec![start],
                (0..2_500).map(|at| ask(deep(at), "Lobed?")).collect(),
            ]
            .concat(),
        ),
        ("places", kinds(SCREENS_KINDS).into_iter().chain((1..40).flat_map(sorted)).collect()),
        ("pictures", kinds(1).into_iter().chain((0..2_100).map(picture)).collect()),
    ]
}

#[test]
fn a_collection_that_comes_too_large_is_only_saved_or_made_smaller() {
    for (what, edits) in too_large() {
        let mut class = AtTheDesk::empty();
        class.post("/do/add-kinds", &[("names", "yew")]);
        class.does(edits);
        assert!(class.desk.too_large().is_some(), "{what}");
        for path in ["/", "/finds", "/table", "/key", "/heaps", "/try", "/print", "/done"] {
            let page = asked(&mut class.desk, &Request::get(path));
            assert_eq!(page.status, 422, "{what}: {path}");
        }
        let refused = class.refused("/do/add-kinds", &[("names", "holly")]);
        let table = asked(&mut class.desk, &Request::get("/saved/table.csv"));
        assert_eq!((table.status, table.kind), (200, "text/csv; charset=utf-8"), "{what}");
        let saved = class.desk.handle(&Request::get("/saved/copy.zip"));
        let whole = matches!(&saved, Reply::Page(page) if page.status == 200);
        assert!(whole || matches!(saved, Reply::NeedPictures(_)), "{what}: it cannot be saved");
        let undo = hidden(&refused, "/do/undo");
        let undo: Vec<(&str, &str)> = undo.iter().map(|(n, v)| (&**n, &**v)).collect();
        let page = class.send(Request::post("/do/undo", &undo));
        assert_eq!(page.status, 303, "{what}");
        assert!(class.get("/finds").contains("yew"), "{what}");
        // Nor does it come back.
        let head = class.desk.mark();
        class.refused("/do/redo", &[("head", &head)]);
    }
}

#[test]
fn a_copy_that_is_too_large_is_not_opened() {
    for (what, edits) in too_large() {
        let line = journal::write(&Entry { at: 0, done: Done::Edits(edits) });
        let bundle = Bundle { lines: vec![line], pictures: Default::default() };
        let file = Upload {
            field: "copy".to_owned(),
            name: "walk.zip".to_owned(),
            bytes: bundle.pack().expect("a copy"),
        };
        let mut desk = Desk::default();
        let open = Request {
            files: vec![file],
            ..Request::post("/do/open-copy", &[("head", "0-0"), ("sure", "yes")])
        };
        assert_eq!(asked(&mut desk, &open).status, 422, "{what}");
    }
}

#[test]
fn a_journal_takes_no_more_steps_than_can_be_opened_again() {
    let undo = journal::write(&Entry { at: 0, done: Done::Undo });
    let mut class = AtTheDesk::empty();
    let lines = std::iter::repeat_n(undo.as_slice(), JOURNAL_LINES - 1);
    class.desk.catch_up(lines).expect("lines");
    class.post("/do/add-kinds", &[("names", "yew")]);
    refused(&mut class, "/do/add-kinds", &[("names", "holly")], JOURNAL_LINES);
    assert!(class.get("/finds").contains("yew"), "it can still be looked at");
}
