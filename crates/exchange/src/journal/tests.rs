//! Every kind of edit goes to a line and comes back; lines that are none are refused.

use spinney_model::{
    AboutField, AskOf, AskedOf, CharacterField, CharacterId, Done, Edit, Entry, Fork, KeyId,
    KindField, KindId, Quantity, Side, WishField,
};

use super::{LineError, read, write};

/// One of each.
fn edits() -> Vec<Edit> {
    let (kind, other, character, key) = (KindId(7), KindId(8), CharacterId(3), KeyId(2));
    let at = Fork(vec![true, false]);
    let ask = |yes| Edit::Ask {
        key,
        at: at.clone(),
        words: "Is the “edge” toothed?\n<b>".to_owned(),
        ask: Some(AskOf { character, yes }),
    };
    let text = || "lobed or entire".to_owned();
    vec![
        Edit::AddKind(kind, text()),
        Edit::DescribeKind(kind, KindField::Caution, text()),
        Edit::RemoveKind(kind),
        Edit::MergeKinds(kind, other),
        Edit::AddPicture(kind, "ab".repeat(32)),
        Edit::RemovePicture(kind, "ab".repeat(32)),
        Edit::AddCharacter(character, text()),
        Edit::DescribeCharacter(character, CharacterField::AppliesWhen, text()),
        Edit::DescribeCharacter(character, CharacterField::Values, "words".to_owned()),
        Edit::RemoveCharacter(character),
        Edit::SetCell { kind, character, source: "group Blue".to_owned(), text: text() },
        Edit::RenameState { character, from: text(), to: String::new() },
        Edit::DescribeScene(AboutField::Part, text()),
        Edit::DescribeScene(AboutField::BeforeYouGo, text()),
        Edit::StartKey(key, text()),
        Edit::RenameKey(key, text()),
        Edit::RemoveKey(key),
        Edit::Wish(key, WishField::Hand, text()),
        Edit::Wish(key, WishField::Touch, "allowed".to_owned()),
        Edit::Wish(key, WishField::Tried, "0123456789abcdef".to_owned()),
        ask(AskedOf::States(vec![text(), String::new()])),
        ask(AskedOf::AtLeast(Quantity::from_thousandths(1500))),
        ask(AskedOf::Below(Quantity::from_thousandths(-1))),
        Edit::Ask { key, at: Fork::default(), words: text(), ask: None },
        Edit::Reword { key, at: at.clone(), words: text() },
        Edit::TakeOut(key, at.clone()),
        Edit::Sort { key, at: at.clone(), kind, side: Some(Side::Both) },
        Edit::Sort { key, at, kind, side: None },
        Edit::CallKind { key, kind, name: "the “spiky” one".to_owned() },
        Edit::BackTo(text()),
    ]
}

#[test]
fn every_edit_comes_back_from_its_line() {
    let done = edits().into_iter().map(|edit| Done::Edits(vec![edit])).chain([
        Done::Edits(edits()),
        Done::Undo,
        Done::Redo,
        Done::HoldFirst(12),
        Done::Version("tried with class 4, 12 October".to_owned()),
        Done::Unname(3),
    ]);
    for done in done {
        let entry = Entry { at: 1_760_000_000_123, done };
        let line = write(&entry);
        assert!(!line.contains(&b'\n'), "an entry is one line");
        assert_eq!(read(&line), Ok(entry));
    }
}

#[test]
fn a_line_stays_as_it_was_first_written() {
    let entry = Entry {
        at: 5,
        done: Done::Edits(vec![
            Edit::AddKind(KindId(1), "hazel".to_owned()),
            Edit::Sort {
                key: KeyId(1),
                at: Fork(vec![true, false]),
                kind: KindId(1),
                side: Some(Side::No),
            },
        ]),
    };
    let line = r#"{"v":1,"at":5,"edits":[{"add_kind":{"kind":1,"name":"hazel"}},{"sort":{"key":1,"at":"yn","kind":1,"side":"no"}}]}"#;
    assert_eq!(String::from_utf8(write(&entry)).expect("JSON is UTF-8"), line);
    assert_eq!(read(line.as_bytes()), Ok(entry));
}

/// Lines as the first form had them, one of each: never to be changed.
const FIRST_FORM: &str = include_str!("tests/form_1.jsonl");

#[test]
fn lines_of_the_first_form_are_read_and_written_as_they_were() {
    let entries: Vec<Entry> = FIRST_FORM
        .lines()
        .map(|line| read(line.as_bytes()).unwrap_or_else(|why| panic!("{why}: {line}")))
        .collect();
    let first = |edit: &Edit| match edit {
        Edit::CallKind { .. }
        | Edit::Wish(_, WishField::Tried | WishField::Touch, _)
        | Edit::DescribeCharacter(_, CharacterField::Values, _) => false,
        Edit::DescribeScene(of, _) => *of != AboutField::BeforeYouGo,
        _ => true,
    };
    let edits = edits().into_iter().filter(first).map(|edit| Done::Edits(vec![edit]));
    let others = [
        Done::Undo,
        Done::Redo,
        Done::HoldFirst(12),
        Done::Version("tried with class 4, 12 October".to_owned()),
    ];
    let done: Vec<Done> = edits.chain(others).collect();
    assert_eq!(entries.iter().map(|entry| &entry.done).collect::<Vec<_>>(), {
        done.iter().collect::<Vec<_>>()
    });
    let again: Vec<String> = entries
        .iter()
        .map(|entry| String::from_utf8(write(entry)).expect("JSON is UTF-8"))
        .collect();
    assert_eq!(again, FIRST_FORM.lines().collect::<Vec<_>>());
}

#[test]
fn what_only_a_later_form_can_say_says_so() {
    let name = "spiky one".to_owned();
    let call = Edit::CallKind { key: KeyId(1), kind: KindId(1), name };
    let lines = [
        (r#"{"v":2,"at":5,"unname":0}"#, Done::Unname(0)),
        (
            r#"{"v":2,"at":5,"edits":[{"call_kind":{"key":1,"kind":1,"name":"spiky one"}}]}"#,
            Done::Edits(vec![call]),
        ),
        (
            r#"{"v":3,"at":5,"edits":[{"describe_scene":{"what":"before you go","text":"Ask."}}]}"#,
            Done::Edits(vec![Edit::DescribeScene(AboutField::BeforeYouGo, "Ask.".to_owned())]),
        ),
        (
            r#"{"v":3,"at":5,"edits":[{"wish":{"key":1,"what":"tried","text":"0a1b"}}]}"#,
            Done::Edits(vec![Edit::Wish(KeyId(1), WishField::Tried, "0a1b".to_owned())]),
        ),
        (
            r#"{"v":3,"at":5,"edits":[{"wish":{"key":1,"what":"touch","text":"allowed"}}]}"#,
            Done::Edits(vec![Edit::Wish(KeyId(1), WishField::Touch, "allowed".to_owned())]),
        ),
        (
            r#"{"v":3,"at":5,"edits":[{"describe_character":{"character":1,"what":"values","text":"counts"}}]}"#,
            Done::Edits(vec![Edit::DescribeCharacter(
                CharacterId(1),
                CharacterField::Values,
                "counts".to_owned(),
            )]),
        ),
    ];
    for (line, done) in lines {
        let entry = Entry { at: 5, done };
        assert_eq!(String::from_utf8(write(&entry)).expect("JSON is UTF-8"), line);
        assert_eq!(read(line.as_bytes()), Ok(entry));
    }
}

#[test]
fn what_is_newer_or_damaged_is_refused() {
    let newer = br#"{"v":4,"at":5,"sketch":{"kind":1}}"#;
    assert_eq!(read(newer), Err(LineError::Newer(4)));
    for line in [
        "",
        "{}",
        r#"{"v":1,"at":5}"#,
        r#"{"v":1,"at":5,"undo":true,"redo":true}"#,
        r#"{"v":1,"at":5,"undo":true,"hold_first":3}"#,
        r#"{"v":1,"at":5,"hold_first":-3}"#,
        r#"{"v":2,"at":5,"unname":-1}"#,
        r#"{"v":2,"at":5,"unname":0,"version":"both"}"#,
        r#"{"v":1,"at":5,"edits":[{"sort":{"key":1,"at":"ux","kind":1,"side":null}}]}"#,
        r#"{"v":1,"at":5,"edits":[{"describe_kind":{"kind":1,"what":"colour","text":""}}]}"#,
    ] {
        assert_eq!(read(line.as_bytes()), Err(LineError::NotALine), "{line}");
    }
}
