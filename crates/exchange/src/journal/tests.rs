//! Every kind of edit goes to a line and comes back; lines that are none are refused.

use spinney_model::{
    AboutField, AskOf, AskedOf, CharacterEdit, CharacterField, CharacterId, Done, Edit, Entry,
    Fork, Judged, KeptDrawing, KeptStroke, KeyEdit, KeyId, KindEdit, KindField, KindId,
    Quantity, Side, SpecimenEdit, SpecimenField, SpecimenId, Weight, WishField,
};

use super::{LineError, read, write};

mod frozen;

/// One of each.
fn edits() -> Vec<Edit> {
    let (kind, other, character, key) = (KindId(7), KindId(8), CharacterId(3), KeyId(2));
    let at = Fork(vec![true, false]);
    let ask = |yes| {
        Edit::Key(
            key,
            KeyEdit::Ask {
                at: at.clone(),
                words: "Is the “edge” toothed?\n<b>".to_owned(),
                ask: Some(AskOf { character, yes }),
            },
        )
    };
    let text = || "lobed or entire".to_owned();
    vec![
        Edit::Kind(kind, KindEdit::Add(text())),
        Edit::Kind(kind, KindEdit::Describe(KindField::Caution, text())),
        Edit::Kind(kind, KindEdit::Remove),
        Edit::Kind(kind, KindEdit::Merge(other)),
        Edit::Kind(kind, KindEdit::AddPicture("ab".repeat(32))),
        Edit::Kind(kind, KindEdit::RemovePicture("ab".repeat(32))),
        Edit::Character(character, CharacterEdit::Add(text())),
        Edit::Character(
            character,
            CharacterEdit::Describe(CharacterField::AppliesWhen, text()),
        ),
        Edit::Character(
            character,
            CharacterEdit::Describe(CharacterField::Values, "words".to_owned()),
        ),
        Edit::Character(character, CharacterEdit::Remove),
        Edit::Cell { kind, character, source: "group Blue".to_owned(), text: text() },
        Edit::Character(
            character,
            CharacterEdit::RenameState { from: text(), to: String::new() },
        ),
        Edit::Scene(AboutField::Part, text()),
        Edit::Scene(AboutField::BeforeYouGo, text()),
        Edit::Scene(AboutField::Children, text()),
        Edit::Scene(AboutField::Groups, text()),
        Edit::Scene(AboutField::SecondLanguage, text()),
        Edit::Scene(AboutField::SecondQuestions, text()),
        Edit::Kind(kind, KindEdit::Describe(KindField::SecondName, text())),
        Edit::Character(
            character,
            CharacterEdit::Describe(CharacterField::SecondStates, text()),
        ),
        Edit::Key(key, KeyEdit::Start(text())),
        Edit::Key(key, KeyEdit::Rename(text())),
        Edit::Key(key, KeyEdit::Remove),
        Edit::Key(key, KeyEdit::Wish(WishField::Hand, text())),
        Edit::Key(key, KeyEdit::Wish(WishField::Touch, "allowed".to_owned())),
        Edit::Key(key, KeyEdit::Wish(WishField::Tried, "0123456789abcdef".to_owned())),
        ask(AskedOf::States(vec![text(), String::new()])),
        ask(AskedOf::AtLeast(Quantity::from_thousandths(1500))),
        ask(AskedOf::Below(Quantity::from_thousandths(-1))),
        Edit::Key(key, KeyEdit::Ask { at: Fork::default(), words: text(), ask: None }),
        Edit::Key(key, KeyEdit::Reword { at: at.clone(), words: text() }),
        Edit::Key(key, KeyEdit::TakeOut(at.clone())),
        Edit::Key(key, KeyEdit::Sort { at: at.clone(), kind, side: Some(Side::Both) }),
        Edit::Key(key, KeyEdit::Sort { at, kind, side: None }),
        Edit::Key(key, KeyEdit::Call { kind, name: "the “spiky” one".to_owned() }),
        Edit::BackTo(text()),
        Edit::Kind(kind, KindEdit::Draw(Some(drawing()))),
        Edit::Kind(kind, KindEdit::Draw(None)),
    ]
    .into_iter()
    .chain(of_a_specimen().map(|edit| Edit::Specimen(SpecimenId(4), edit)))
    .collect()
}

fn drawing() -> KeptDrawing {
    let points = vec![(0, 0), (-150, -7000), (25, 3)];
    let strokes = vec![KeptStroke { weight: Weight::Outline, points }];
    KeptDrawing { frame: [-300, -7200, 600, 7500], strokes }
}

fn of_a_specimen() -> [SpecimenEdit; 7] {
    let (kind, character) = (KindId(7), CharacterId(3));
    [
        SpecimenEdit::Add(kind),
        SpecimenEdit::OfKind(kind),
        SpecimenEdit::Describe(SpecimenField::WhichPlant, "by the “gate”".to_owned()),
        SpecimenEdit::Picture("ab".repeat(32)),
        SpecimenEdit::Measure {
            character,
            text: "52.3 mm".to_owned(),
            plus_minus: "0.4".to_owned(),
        },
        SpecimenEdit::Judge { character, judged: Some(Judged::Wrong) },
        SpecimenEdit::Remove,
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
            Edit::Kind(KindId(1), KindEdit::Add("hazel".to_owned())),
            Edit::Key(
                KeyId(1),
                KeyEdit::Sort {
                    at: Fork(vec![true, false]),
                    kind: KindId(1),
                    side: Some(Side::No),
                },
            ),
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
        .map(|line| read(line.as_bytes()).unwrap_or_else(|why| panic!("{why:?}: {line}")))
        .collect();
    let first = |edit: &Edit| super::since(edit) == 1;
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
    let call = Edit::Key(KeyId(1), KeyEdit::Call { kind: KindId(1), name });
    let lines = [
        (r#"{"v":2,"at":5,"unname":0}"#, Done::Unname(0)),
        (
            r#"{"v":2,"at":5,"edits":[{"call_kind":{"key":1,"kind":1,"name":"spiky one"}}]}"#,
            Done::Edits(vec![call]),
        ),
        (
            r#"{"v":3,"at":5,"edits":[{"describe_scene":{"what":"before you go","text":"Ask."}}]}"#,
            Done::Edits(vec![Edit::Scene(AboutField::BeforeYouGo, "Ask.".to_owned())]),
        ),
        (
            r#"{"v":3,"at":5,"edits":[{"wish":{"key":1,"what":"tried","text":"0a1b"}}]}"#,
            Done::Edits(vec![Edit::Key(
                KeyId(1),
                KeyEdit::Wish(WishField::Tried, "0a1b".to_owned()),
            )]),
        ),
        (
            r#"{"v":3,"at":5,"edits":[{"wish":{"key":1,"what":"touch","text":"allowed"}}]}"#,
            Done::Edits(vec![Edit::Key(
                KeyId(1),
                KeyEdit::Wish(WishField::Touch, "allowed".to_owned()),
            )]),
        ),
        (
            r#"{"v":3,"at":5,"edits":[{"describe_character":{"character":1,"what":"values","text":"counts"}}]}"#,
            Done::Edits(vec![Edit::Character(
                CharacterId(1),
                CharacterEdit::Describe(CharacterField::Values, "counts".to_owned()),
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
    let newer = br#"{"v":7,"at":5,"sketch":{"kind":1}}"#;
    assert_eq!(read(newer), Err(LineError::Newer(7)));
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
        r#"{"v":6,"at":5,"edits":[{"draw_kind":{"kind":1,"drawing":"0 0 9 9|thick 1 1"}}]}"#,
    ] {
        assert_eq!(read(line.as_bytes()), Err(LineError::NotALine), "{line}");
    }
}

#[test]
fn a_key_for_nobody_is_not_a_key_for_all() {
    let read_as = |text: &str, edit: KeyEdit| {
        let what = if matches!(edit, KeyEdit::Never(_)) { "never" } else { "kinds" };
        let line = format!(
            r#"{{"v":1,"at":5,"edits":[{{"wish":{{"key":1,"what":"{what}","text":"{text}"}}}}]}}"#
        );
        let done = Done::Edits(vec![Edit::Key(KeyId(1), edit)]);
        let entry = Entry { at: 5, done };
        assert_eq!(read(line.as_bytes()).as_ref(), Ok(&entry), "{text}");
        assert_eq!(String::from_utf8(write(&entry)).expect("JSON is UTF-8"), line);
    };
    let kinds =
        |ids: &[u32]| KeyEdit::ForKinds(Some(ids.iter().copied().map(KindId).collect()));
    read_as("", KeyEdit::ForKinds(None));
    read_as("0", kinds(&[]));
    read_as("5 1", kinds(&[5, 1]));
    read_as("", KeyEdit::Never(Vec::new()));
    read_as("3 12", KeyEdit::Never(vec![CharacterId(3), CharacterId(12)]));
}
