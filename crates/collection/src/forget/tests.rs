//! What is removed for good was never there; all else is as it was, back and forth.

use std::collections::{BTreeMap, BTreeSet};

use spinney_exchange::journal;
use spinney_model::{
    AboutField, AskOf, AskedOf, CharacterEdit, CharacterId, Done, Edit, Entry, Fork, KeyEdit,
    KeyId, KindEdit, KindField, KindId, SpecimenEdit, SpecimenField, SpecimenId,
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

/// The kind that each leaf was last, as long as anybody can see it: in the lines that hold, in those
/// that can come back, in a named version.
fn last_kinds(entries: &[Entry]) -> BTreeMap<SpecimenId, KindId> {
    let history = of(entries);
    let edits =
        |line: &usize| super::edits(&entries[*line..=*line]).cloned().collect::<Vec<_>>();
    let mut state = Collection::default();
    let mut last = BTreeMap::new();
    let again: Vec<usize> = history.undone.iter().rev().copied().collect();
    for lines in [&history.holding, &again] {
        let mut seen = BTreeMap::new();
        for edit in lines.iter().flat_map(edits) {
            state.apply(&edit);
            seen.extend(state.specimens.iter().map(|(id, one)| (*id, one.kind)));
        }
        seen.into_iter().for_each(|(id, kind)| _ = last.entry(id).or_insert(kind));
    }
    for (version, _) in history.versions().rev() {
        let state = history.version(version).expect("it was named");
        let seen = state.specimens.iter().map(|(id, one)| (*id, one.kind));
        seen.for_each(|(id, kind)| _ = last.entry(id).or_insert(kind));
    }
    last
}

/// What becomes of the leaves of a journal.
struct Leaves {
    /// They go, wherever they were.
    go: BTreeSet<SpecimenId>,
    /// Taken for a kind that goes, and in the end of another: they stay, and are never of one
    /// that goes.
    stay: BTreeSet<SpecimenId>,
}

impl Leaves {
    fn of(entries: &[Entry], going: &Going) -> Self {
        let last = last_kinds(entries);
        let goes =
            |id: &SpecimenId| last.get(id).is_some_and(|kind| going.kinds.contains(kind));
        let said = super::edits(entries).filter_map(|edit| {
            let Edit::Specimen(id, edit) = edit else { return None };
            super::of_kind(edit).filter(|kind| going.kinds.contains(kind)).map(|_| *id)
        });
        let said: BTreeSet<SpecimenId> = said.collect();
        let (go, stay) = said.into_iter().partition(goes);
        Self { go, stay }
    }

    /// Both without the leaves of which more than one thing may rightly stand.
    fn strictly(&self, going: &Going, all: [&mut Collection; 2]) {
        let after = &all[1].specimens;
        let of_gone =
            |id: &SpecimenId| after.get(id).is_some_and(|one| going.kinds.contains(&one.kind));
        assert!(!self.stay.iter().any(of_gone), "a leaf says that it was of a kind that went");
        for one in all {
            one.specimens.retain(|id, _| !self.stay.contains(id));
        }
    }
}

/// A collection that never had these kinds, nor the leaves that are of one of them in the end.
fn never_had(mut collection: Collection, going: &Going, leaves: &Leaves) -> Collection {
    collection.specimens.retain(|id, _| !leaves.go.contains(id));
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
    let (mut shorter, mut went, mut stayed) = (0, 0, 0);
    for seed in 0..150 {
        let entries = any_journal(seed, 60);
        let kinds = together(&entries, KindId(1 + seed as u32 % 5));
        let pictures = ["aa".to_owned()].into_iter().take(seed as usize % 2).collect();
        let going = Going { kinds, pictures, words: BTreeSet::new() };
        let leaves = Leaves::of(&entries, &going);
        (went, stayed) = (went + leaves.go.len(), stayed + leaves.stay.len());
        let left = without(&entries, &going);
        shorter += usize::from(left.len() < entries.len());
        let same = |before: &Collection, after: &Collection, place: &str| {
            let mut before = never_had(before.clone(), &going, &leaves);
            let mut after = after.clone();
            leaves.strictly(&going, [&mut before, &mut after]);
            assert_same(&before, &after, &format!("{seed}, {place}"));
        };
        let (mut before, mut after) = (of(&entries), of(&left));
        same(&before.now, &after.now, "now");
        let numbers = |of: &History| of.versions().map(|(at, _)| at).collect::<Vec<_>>();
        assert_eq!(numbers(&before), numbers(&after));
        for version in numbers(&before) {
            let then = before.version(version).expect("it was named");
            let now = after.version(version).expect("it is still named");
            same(&then, &now, &format!("version {version}"));
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
                same(&before.now, &after.now, &format!("{done:?}"));
            }
        }
    }
    assert!(shorter > 20, "no line ever went: the journals have become too dull");
    assert!(went > 50 && stayed > 20, "{went} {stayed}: the journals have become too dull");
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
        Edit::Character(CharacterId(1), CharacterEdit::Add("length".into())),
        leaf(SpecimenEdit::Measure {
            character: CharacterId(1),
            text: "52 mm".into(),
            plus_minus: "as for oak".into(),
        }),
    ];
    let entries = [Entry { at: 1, done: Done::Edits(edits) }];
    let going = super::going_with(&of(&entries), oak);
    assert_eq!(going.pictures, BTreeSet::from([HASH.to_owned()]));
    assert_eq!(super::specimens_going(&entries, &going), 1);
    let left = of(&without(&entries, &going)).now;
    assert!(left.specimens.is_empty() && left.kinds.len() == 1);
    let kinds = BTreeSet::new();
    let going = Going { pictures: BTreeSet::from([HASH.into()]), kinds, ..Going::default() };
    let left = of(&without(&entries, &going)).now;
    assert_eq!(left.specimens[&SpecimenId(1)].picture, "");
    let words = BTreeSet::from(["oak".to_owned()]);
    let left = of(&without(&entries, &Going { words, ..Going::default() })).now;
    let off = &left.specimens[&SpecimenId(1)].measured[&CharacterId(1)].plus_minus;
    assert_eq!(off, "as for …");
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

/// Moved by mistake and moved back, then taken out with its kind or by itself: it is an oak leaf.
#[test]
fn a_leaf_that_was_taken_out_goes_with_the_kind_that_it_was() {
    let (oak, elm) = (KindId(1), KindId(2));
    let undo = || Entry { at: 0, done: Done::Undo };
    let begun = || {
        vec![
            line(vec![
                Edit::Kind(oak, KindEdit::Add("oak".into())),
                Edit::Kind(elm, KindEdit::Add("elm".into())),
            ]),
            line(vec![leaf(SpecimenEdit::Add(oak)), leaf(SpecimenEdit::Picture(HASH.into()))]),
        ]
    };
    let moved = || [line(vec![leaf(SpecimenEdit::OfKind(elm))]), undo()];
    let out = |edit| line(vec![edit]);
    let ways: [&[Entry]; 3] = [
        &[out(Edit::Kind(oak, KindEdit::Remove))],
        &[out(leaf(SpecimenEdit::Remove))],
        // In lines that nobody can bring back, among what was said of it.
        &[undo(), out(Edit::Scene(AboutField::Title, "A walk".into()))],
    ];
    for way in ways {
        let entries = [&begun()[..], &moved(), way].concat();
        let going = super::going_with(&of(&entries), oak);
        let left = without(&entries, &going);
        assert!(bytes(&entries).contains(HASH) && !bytes(&left).contains(HASH));
        assert!(of(&left).now.specimens.is_empty());
        let text = bytes(&left);
        assert!(!text.contains("specimen") && !text.contains("leaf"), "{text}");
    }
}
