//! What is removed for good was never there; all else is as it was, back and forth.

use std::collections::BTreeSet;

use spinney_exchange::journal;
use spinney_model::{
    AskOf, AskedOf, CharacterEdit, CharacterId, Done, Edit, Entry, Fork, KeyEdit, KeyId,
    KindEdit, KindField, KindId, SpecimenEdit, SpecimenField, SpecimenId,
};

use super::{Going, kinds_left, names, pictures, strike, with_merged, without};
use crate::Collection;
use crate::history::History;
use crate::history::tests::any_journal;

fn of(entries: &[Entry]) -> History {
    let mut history = History::default();
    entries.iter().cloned().for_each(|entry| history.add(entry));
    history
}

/// A kind with all it was ever laid together with, in either direction.
fn together(entries: &[Entry], kind: KindId) -> BTreeSet<KindId> {
    let all = super::kinds(entries).into_iter().chain((0..8).map(KindId));
    let all: BTreeSet<KindId> = all.collect();
    let mut group = BTreeSet::from([kind]);
    loop {
        let before = group.len();
        for other in &all {
            let with = with_merged(entries, *other);
            if !with.is_disjoint(&group) {
                group.extend(with);
            }
        }
        if group.len() == before {
            return group;
        }
    }
}

/// A collection that never had these kinds.
fn never_had(mut collection: Collection, going: &Going) -> Collection {
    going.kinds.iter().for_each(|kind| collection.apply(&Edit::Kind(*kind, KindEdit::Remove)));
    for kind in collection.kinds.values_mut() {
        kind.pictures.retain(|picture| !going.pictures.contains(picture));
    }
    for specimen in collection.specimens.values_mut() {
        if going.pictures.contains(&specimen.picture) {
            specimen.picture.clear();
        }
    }
    for key in collection.keys.values_mut() {
        key.kinds = kinds_left(key.kinds.as_deref(), going);
    }
    collection
}

/// The same but for the numbers that were given.
fn assert_same(one: &Collection, other: &Collection, place: &str) {
    assert_eq!(one.kinds, other.kinds, "{place}");
    assert_eq!(one.characters, other.characters, "{place}");
    assert_eq!(one.cells, other.cells, "{place}");
    assert_eq!(one.specimens, other.specimens, "{place}");
    assert_eq!(one.about, other.about, "{place}");
    assert_eq!(one.keys, other.keys, "{place}");
}

#[test]
fn all_else_is_as_it_was_now_and_undone_and_done_again() {
    let mut shorter = 0;
    for seed in 0..150 {
        let entries = any_journal(seed, 60);
        let kinds = together(&entries, KindId(1 + seed as u32 % 5));
        let pictures = ["aa".to_owned()].into_iter().take(seed as usize % 2).collect();
        let going = Going { kinds, pictures, words: BTreeSet::new() };
        let left = without(&entries, &going);
        shorter += usize::from(left.len() < entries.len());
        let (mut before, mut after) = (of(&entries), of(&left));
        assert_same(&never_had(before.now.clone(), &going), &after.now, &format!("{seed}"));
        let numbers = |of: &History| of.versions().map(|(at, _)| at).collect::<Vec<_>>();
        assert_eq!(numbers(&before), numbers(&after));
        for version in numbers(&before) {
            let then = before.version(version).expect("it was named");
            let now = after.version(version).expect("it is still named");
            assert_same(&never_had(then, &going), &now, &format!("{seed}, version {version}"));
        }
        // Undo and redo line by line: lines that went are stepped over.
        let standing: BTreeSet<usize> =
            super::left(&entries, &going).into_iter().map(|(at, _)| at).collect();
        for done in [Done::Redo, Done::Undo, Done::Redo] {
            for _ in 0..entries.len() {
                let undoes = done == Done::Undo;
                let line = if undoes { before.holding.last() } else { before.undone.last() };
                if line.is_some_and(|line| standing.contains(line)) {
                    after.add(Entry { at: 0, done: done.clone() });
                }
                before.add(Entry { at: 0, done: done.clone() });
                let expected = never_had(before.now.clone(), &going);
                assert_same(&expected, &after.now, &format!("{seed}, {done:?}"));
            }
        }
    }
    assert!(shorter > 20, "no line ever went: the journals have become too dull");
}

const HASH: &str = "5d41402abc4b2a76b9719d911017c592ae5d41402abc4b2a76b9719d911017c5";

fn line(edits: Vec<Edit>) -> Entry {
    Entry { at: 0, done: Done::Edits(edits) }
}

/// A kind that was named twice, mentioned in many places, undone and laid with another.
fn told_everywhere() -> Vec<Entry> {
    let (one, two, three) = (KindId(1), KindId(2), KindId(3));
    let character = CharacterId(1);
    let ask = AskOf { character, yes: AskedOf::States(vec!["like Quillwort".into()]) };
    vec![
        line(vec![
            Edit::Kind(one, KindEdit::Add("oak".into())),
            Edit::Kind(two, KindEdit::Add("Quillwort".into())),
        ]),
        line(vec![Edit::Kind(three, KindEdit::Add("Merlin's grass".into()))]),
        line(vec![
            Edit::Kind(two, KindEdit::AddPicture(HASH.into())),
            Edit::Kind(one, KindEdit::AddPicture(HASH.into())),
        ]),
        line(vec![Edit::Kind(two, KindEdit::Merge(three))]),
        line(vec![Edit::Kind(
            one,
            KindEdit::Describe(KindField::Caution, "Not a QUILLWORT.".into()),
        )]),
        line(vec![Edit::Character(character, CharacterEdit::Add("quillwort-like".into()))]),
        line(vec![Edit::Cell {
            kind: one,
            character,
            source: "quillwort group".into(),
            text: "like Quillwort".into(),
        }]),
        line(vec![Edit::Character(
            character,
            CharacterEdit::RenameState { from: "Quillwort".into(), to: "x".into() },
        )]),
        line(vec![Edit::Key(KeyId(1), KeyEdit::Start("Quillwort key".into()))]),
        line(vec![Edit::Key(
            KeyId(1),
            KeyEdit::Ask {
                at: Fork::default(),
                words: "Is it a quillwort?".into(),
                ask: Some(ask),
            },
        )]),
        Entry { at: 0, done: Done::Version("with quillworts".into()) },
        Entry { at: 0, done: Done::Undo },
        line(vec![Edit::Kind(two, KindEdit::Describe(KindField::Name, "Isoetes".into()))]),
        Entry { at: 0, done: Done::Undo },
    ]
}

fn bytes(entries: &[Entry]) -> String {
    let lines = entries.iter().map(journal::write);
    lines.map(|line| String::from_utf8(line).expect("text").to_lowercase() + "\n").collect()
}

#[test]
fn no_byte_of_the_name_or_the_picture_is_left() {
    let entries = told_everywhere();
    let kinds = with_merged(&entries, KindId(2));
    assert_eq!(kinds, BTreeSet::from([KindId(2), KindId(3)]));
    let words = names(&entries, &kinds);
    let going = Going { kinds, pictures: BTreeSet::from([HASH.to_owned()]), words };
    let before = bytes(&entries);
    let after = bytes(&without(&entries, &going));
    for word in ["quillwort", "isoetes", "merlin", HASH] {
        assert!(before.contains(word), "{word} was there");
        assert!(!after.contains(word), "{word} is still there");
    }
    assert!(after.contains("oak") && pictures(&without(&entries, &going)).is_empty());
}

#[test]
fn a_picture_goes_and_the_kinds_stay() {
    let entries = told_everywhere();
    let going = Going { pictures: BTreeSet::from([HASH.to_owned()]), ..Going::default() };
    let left = without(&entries, &going);
    assert!(!bytes(&left).contains(HASH));
    assert_eq!(of(&left).now.kinds.len(), of(&entries).now.kinds.len());
}

#[test]
fn a_key_for_nobody_is_not_a_key_for_all() {
    let going = Going { kinds: BTreeSet::from([KindId(2), KindId(3)]), ..Going::default() };
    let left = |kinds: &[u32]| {
        let kinds: Vec<KindId> = kinds.iter().copied().map(KindId).collect();
        let left = kinds_left(Some(&kinds), &going).expect("it was not for all");
        left.into_iter().map(|kind| kind.0).collect::<Vec<_>>()
    };
    assert_eq!(left(&[3, 1, 2]), [1]);
    assert!(left(&[2, 3]).is_empty());
    assert_eq!(left(&[5, 1]), [5, 1]);
    assert_eq!(kinds_left(None, &going), None);
}

#[test]
fn words_are_struck_whatever_their_letters() {
    assert_eq!(strike("ÉLAN, Élan and elan", "élan"), "…, … and elan");
    assert_eq!(strike("İİ i", "i̇"), "İİ i");
    assert_eq!(strike("", "a"), "");
    assert_eq!(strike("aa, a(aa)", "aa"), "…, a(…)");
    assert_eq!(
        strike("guelder, elder's elders are elderly", "elder"),
        "guelder, …'s … are elderly"
    );
    assert_eq!(strike("abc", ""), "abc");
}

fn leaf(edit: SpecimenEdit) -> Edit {
    Edit::Specimen(SpecimenId(1), edit)
}

#[test]
fn a_leaf_goes_with_its_kind_and_with_its_picture() {
    let (oak, elm) = (KindId(1), KindId(2));
    let edits = vec![
        Edit::Kind(oak, KindEdit::Add("oak".into())),
        Edit::Kind(elm, KindEdit::Add("elm".into())),
        leaf(SpecimenEdit::Add(oak)),
        leaf(SpecimenEdit::Describe(SpecimenField::WhichPlant, "by the oak gate".into())),
        leaf(SpecimenEdit::Picture(HASH.into())),
    ];
    let entries = [Entry { at: 1, done: Done::Edits(edits) }];
    let going = super::going_with(&of(&entries), oak);
    assert_eq!(going.pictures, BTreeSet::from([HASH.to_owned()]));
    let left = of(&without(&entries, &going)).now;
    assert!(left.specimens.is_empty() && left.kinds.len() == 1);
    let kinds = BTreeSet::new();
    let going = Going { pictures: BTreeSet::from([HASH.into()]), kinds, ..Going::default() };
    let left = of(&without(&entries, &going)).now;
    assert_eq!(left.specimens[&SpecimenId(1)].picture, "");
    let words = BTreeSet::from(["oak".to_owned()]);
    let left = of(&without(&entries, &Going { words, ..Going::default() })).now;
    let plant = left.specimens[&SpecimenId(1)].field(SpecimenField::WhichPlant).to_owned();
    assert_eq!(plant, "by the … gate");
}

/// Taken for oak, an elm in the end: nobody wants to lose it, nor to read that it was oak.
#[test]
fn a_leaf_that_was_another_kind_stays_and_does_not_say_so() {
    let (oak, elm) = (KindId(1), KindId(2));
    let line = |edits: &[Edit]| Entry { at: 1, done: Done::Edits(edits.to_vec()) };
    let entries = [
        line(&[Edit::Kind(oak, KindEdit::Add("oak".into())), leaf(SpecimenEdit::Add(oak))]),
        line(&[Edit::Kind(elm, KindEdit::Add("elm".into()))]),
        line(&[leaf(SpecimenEdit::OfKind(elm))]),
        line(&[leaf(SpecimenEdit::OfKind(oak))]),
        Entry { at: 1, done: Done::Undo },
    ];
    let going = super::going_with(&of(&entries), oak);
    let left = without(&entries, &going);
    assert_eq!(of(&left).now.specimens[&SpecimenId(1)].kind, elm);
    let text: Vec<u8> = left.iter().flat_map(journal::write).collect();
    assert!(!String::from_utf8_lossy(&text).contains("\"kind\":1"), "oak is named nowhere");
    let going = super::going_with(&of(&entries), elm);
    assert!(of(&without(&entries, &going)).now.specimens.is_empty());
}
