//! Laws of the journal, on journals drawn at random: undo leads back to nothing, what is done
//! again is as it was, and whatever was typed, nothing breaks.

use std::collections::BTreeSet;

use spinney_exchange::journal;
use spinney_model::{
    AboutField, AskOf, AskedOf, CharacterEdit, CharacterField, CharacterId, Done, Edit, Entry,
    Fork, Judged, KeptDrawing, KeptStroke, KeyEdit, KeyId, KindEdit, KindField, KindId,
    Quantity, Side, SpecimenEdit, SpecimenField, SpecimenId, Weight, WishField,
};

use super::{BETWEEN, History};
use crate::Collection;
use crate::laid::{Laid, folded};
use crate::layer::Layer;

/// Dice that fall the same way every time.
pub struct Dice(u64);

impl Dice {
    pub(crate) fn new(seed: u64) -> Self {
        Self(seed.wrapping_mul(0x9E37_79B9_7F4A_7C15) | 1)
    }

    /// A number below `end`.
    pub fn below(&mut self, end: usize) -> usize {
        self.0 ^= self.0 << 13;
        self.0 ^= self.0 >> 7;
        self.0 ^= self.0 << 17;
        (self.0 >> 33) as usize % end
    }

    pub(crate) fn of<'a, T: ?Sized>(&mut self, all: &[&'a T]) -> &'a T {
        all[self.below(all.len())]
    }
}

const WORDS: [&str; 12] = [
    "",
    "oak",
    "OAK",
    "lobed",
    "lobed or entire",
    "30-60",
    "?",
    "n/a",
    "9; 9",
    "x\u{202e}",
    "12 mm",
    "🌿",
];

fn kind(dice: &mut Dice) -> KindId {
    KindId(dice.below(6) as u32)
}

fn character(dice: &mut Dice) -> CharacterId {
    CharacterId(dice.below(5) as u32)
}

fn key(dice: &mut Dice) -> KeyId {
    KeyId(dice.below(4) as u32)
}

fn fork(dice: &mut Dice) -> Fork {
    Fork((0..dice.below(4)).map(|_| dice.below(2) == 0).collect())
}

fn text(dice: &mut Dice) -> String {
    dice.of(&WORDS).to_owned()
}

fn ask(dice: &mut Dice) -> Option<AskOf> {
    let number = Quantity::from_thousandths(dice.below(90_000) as i64 - 9_000);
    let yes = match dice.below(4) {
        0 => return None,
        1 => AskedOf::AtLeast(number),
        2 => AskedOf::Below(number),
        _ => AskedOf::States((0..dice.below(3)).map(|_| text(dice)).collect()),
    };
    Some(AskOf { character: character(dice), yes })
}

fn edit_of_kinds(dice: &mut Dice) -> Edit {
    let fields =
        [&KindField::Name, &KindField::Caution, &KindField::HowOften, &KindField::OtherNames];
    let picture = ["aa", "bb", "cc"][dice.below(3)].to_owned();
    match dice.below(10) {
        9 => Edit::Kind(kind(dice), KindEdit::Draw(drawing(dice))),
        0..3 => Edit::Kind(kind(dice), KindEdit::Add(text(dice))),
        3 | 4 => Edit::Kind(kind(dice), KindEdit::Describe(*dice.of(&fields), text(dice))),
        5 => Edit::Kind(kind(dice), KindEdit::Remove),
        6 => Edit::Kind(kind(dice), KindEdit::Merge(kind(dice))),
        7 => Edit::Kind(kind(dice), KindEdit::AddPicture(picture)),
        _ => Edit::Kind(kind(dice), KindEdit::RemovePicture(picture)),
    }
}

fn drawing(dice: &mut Dice) -> Option<KeptDrawing> {
    let points = vec![(0, 0), (dice.below(3) as i32, -5)];
    let strokes = vec![KeptStroke { weight: Weight::Outline, points }];
    (dice.below(2) == 0).then_some(KeptDrawing { frame: [0, 0, 9, 9], strokes })
}

fn edit_of_specimens(dice: &mut Dice) -> Edit {
    let id = 1 + dice.below(6) as u32;
    let fields = [&SpecimenField::Source, &SpecimenField::WhichPlant, &SpecimenField::Part];
    let edit = match dice.below(9) {
        0..3 => SpecimenEdit::Add(kind(dice)),
        8 => SpecimenEdit::OfKind(kind(dice)),
        3 => SpecimenEdit::Describe(*dice.of(&fields), text(dice)),
        4 => SpecimenEdit::Picture(["aa", "bb", ""][dice.below(3)].to_owned()),
        5 | 6 if dice.below(2) == 0 => {
            let judged = [None, Some(Judged::Right), Some(Judged::Wrong)][dice.below(3)];
            SpecimenEdit::Judge { character: character(dice), judged }
        }
        5 | 6 => SpecimenEdit::Measure {
            character: character(dice),
            text: text(dice),
            plus_minus: ["", "0.4"][dice.below(2)].to_owned(),
        },
        _ => SpecimenEdit::Remove,
    };
    Edit::Specimen(SpecimenId(id), edit)
}

fn edit_of_table(dice: &mut Dice) -> Edit {
    let fields = [
        &CharacterField::Name,
        &CharacterField::States,
        &CharacterField::Unit,
        &CharacterField::AppliesWhen,
        &CharacterField::RatioOf,
    ];
    let source = ["", "Blue", "Red"][dice.below(3)].to_owned();
    match dice.below(9) {
        0 | 1 => Edit::Character(character(dice), CharacterEdit::Add(text(dice))),
        2 => Edit::Character(
            character(dice),
            CharacterEdit::Describe(*dice.of(&fields), text(dice)),
        ),
        3 => Edit::Character(character(dice), CharacterEdit::Remove),
        4 => Edit::Character(
            character(dice),
            CharacterEdit::RenameState { from: text(dice), to: text(dice) },
        ),
        5 if dice.below(2) == 0 => Edit::BackTo(text(dice)),
        5 => Edit::Scene(AboutField::Title, text(dice)),
        _ => Edit::Cell {
            kind: kind(dice),
            character: character(dice),
            source,
            text: text(dice),
        },
    }
}

fn any_wish(dice: &mut Dice) -> KeyEdit {
    let numbers = [&[][..], &[1], &[1, 2, 4]][dice.below(3)].iter().copied();
    match dice.below(4) {
        0 if dice.below(3) == 0 => KeyEdit::ForKinds(None),
        0 => KeyEdit::ForKinds(Some(numbers.map(KindId).collect())),
        1 => KeyEdit::Never(numbers.map(CharacterId).collect()),
        _ => {
            let wish = *dice.of(&[&WishField::Finish, &WishField::Hand]);
            KeyEdit::Wish(wish, ["", "yes"][dice.below(2)].into())
        }
    }
}

fn edit_of_key(dice: &mut Dice) -> Edit {
    match dice.below(10) {
        0 | 1 => Edit::Key(key(dice), KeyEdit::Start(text(dice))),
        2 => Edit::Key(key(dice), KeyEdit::Rename(text(dice))),
        3 => Edit::Key(key(dice), any_wish(dice)),
        4 => Edit::Key(key(dice), KeyEdit::TakeOut(fork(dice))),
        5 => Edit::Key(key(dice), KeyEdit::Reword { at: fork(dice), words: text(dice) }),
        6 if dice.below(3) == 0 => Edit::Key(key(dice), KeyEdit::Remove),
        6 | 7 => {
            let side = [None, Some(Side::Yes), Some(Side::No), Some(Side::Both)][dice.below(4)];
            Edit::Key(key(dice), KeyEdit::Sort { at: fork(dice), kind: kind(dice), side })
        }
        8 => Edit::Key(key(dice), KeyEdit::Call { kind: kind(dice), name: text(dice) }),
        _ => Edit::Key(
            key(dice),
            KeyEdit::Ask { at: fork(dice), words: text(dice), ask: ask(dice) },
        ),
    }
}

/// An edit of any sort, about kinds, characters and keys that may not be there.
pub fn any_edit(dice: &mut Dice) -> Edit {
    match dice.below(4) {
        0 => edit_of_kinds(dice),
        1 => edit_of_table(dice),
        2 => edit_of_specimens(dice),
        _ => edit_of_key(dice),
    }
}

/// A journal with much going back and forth.
pub fn any_journal(seed: u64, lines: usize) -> Vec<Entry> {
    let mut dice = Dice::new(seed);
    (0..lines)
        .map(|at| {
            let done = match dice.below(20) {
                0..4 => Done::Undo,
                4..6 => Done::Redo,
                6 => Done::HoldFirst(dice.below(at + 2) as u64),
                7 if dice.below(4) == 0 => Done::Unname(dice.below(4) as u64),
                7 => Done::Version(text(&mut dice)),
                _ => Done::Edits((0..dice.below(4)).map(|_| any_edit(&mut dice)).collect()),
            };
            Entry { at: at as i64, done }
        })
        .collect()
}

fn of(entries: &[Entry]) -> History {
    let mut history = History::default();
    entries.iter().cloned().for_each(|entry| history.add(entry));
    history
}

/// What a journal adds up to, worked out from its beginning with a pile and nothing else.
fn from_the_beginning(entries: &[Entry]) -> Collection {
    let (mut holding, mut undone): (Vec<&[Edit]>, Vec<&[Edit]>) = (Vec::new(), Vec::new());
    for entry in entries {
        match &entry.done {
            Done::Edits(edits) => {
                holding.push(edits);
                undone.clear();
            }
            Done::Undo => undone.extend(holding.pop()),
            Done::Redo => holding.extend(undone.pop()),
            Done::HoldFirst(lines) => {
                while holding.len() as u64 > *lines {
                    undone.extend(holding.pop());
                }
                while (holding.len() as u64) < *lines && !undone.is_empty() {
                    holding.extend(undone.pop());
                }
            }
            Done::Version(_) | Done::Unname(_) => {}
        }
    }
    let mut collection = Collection::default();
    holding.into_iter().flatten().for_each(|edit| collection.apply(edit));
    collection
}

fn undo() -> Entry {
    Entry { at: 0, done: Done::Undo }
}

fn redo() -> Entry {
    Entry { at: 0, done: Done::Redo }
}

#[test]
fn at_every_moment_the_collection_is_what_its_lines_add_up_to() {
    for seed in 0..60 {
        let entries = any_journal(seed, 80);
        let mut history = History::default();
        for at in 0..entries.len() {
            let foreseen = history.then(&entries[at].done);
            let foreseen = foreseen.unwrap_or_else(|| history.now.clone());
            history.add(entries[at].clone());
            assert_eq!(history.now, from_the_beginning(&entries[..=at]), "{seed}, line {at}");
            assert_eq!(history.now, foreseen, "{seed}, line {at}, before it was there");
        }
    }
}

#[test]
fn everything_undone_is_an_empty_table_top() {
    for seed in 0..60 {
        let mut history = of(&any_journal(seed, 60));
        let full = history.now.clone();
        let lines = history.holding.len();
        (0..lines).for_each(|_| history.add(undo()));
        assert_eq!(history.now, Collection::default(), "{seed}");
        history.add(undo());
        assert_eq!(history.now, Collection::default(), "one undo more is nothing");
        (0..lines).for_each(|_| history.add(redo()));
        assert_eq!(history.now, full, "{seed}: done again");
    }
}

#[test]
fn undo_goes_back_past_a_remembered_state() {
    let line = |number: usize| {
        let edit = Edit::Scene(AboutField::Title, format!("title {number}"));
        Entry { at: 0, done: Done::Edits(vec![edit]) }
    };
    let mut history = of(&(0..BETWEEN + 30).map(line).collect::<Vec<_>>());
    for back in 1..60 {
        let foreseen = history.then(&Done::Undo);
        history.add(undo());
        assert_eq!(Some(&history.now), foreseen.as_ref(), "before it was there");
        let title = format!("title {}", BETWEEN + 29 - back);
        assert_eq!(history.now.about_field(AboutField::Title), title);
    }
    (0..59).for_each(|_| history.add(redo()));
    let title = format!("title {}", BETWEEN + 29);
    assert_eq!(history.now.about_field(AboutField::Title), title);
}

#[test]
fn a_version_is_what_stood_when_it_was_named() {
    let (mut kept, mut gone) = (0, 0);
    for seed in 0..90 {
        let entries = any_journal(seed, 60);
        let history = of(&entries);
        let named = entries.iter().enumerate();
        let named = named.filter(|(_, entry)| matches!(entry.done, Done::Version(_)));
        for (version, (line, _)) in named.enumerate() {
            let unnamed =
                |entry: &Entry| matches!(entry.done, Done::Unname(n) if n == version as u64);
            let then = match entries[line..].iter().any(unnamed) {
                true => None,
                false => Some(from_the_beginning(&entries[..line])),
            };
            assert_eq!(history.version(version), then, "{seed}, line {line}");
            assert_eq!(history.named(version).is_some(), then.is_some(), "{seed}");
            (kept, gone) =
                (kept + usize::from(then.is_some()), gone + usize::from(then.is_none()));
        }
    }
    assert!(kept > 20 && gone > 5, "{kept} {gone}: the journals have become too dull");
}

#[test]
fn a_name_is_as_cheap_after_many_lines_as_after_one() {
    let line = |number: usize| {
        let edit = Edit::Scene(AboutField::Title, format!("title {number}"));
        Entry { at: 0, done: Done::Edits(vec![edit]) }
    };
    let name = || Entry { at: 0, done: Done::Version("a name".to_owned()) };
    let mut history = History::default();
    history.add_all((0..20_000).map(line));
    history.add_all((0..200).map(|_| name()));
    assert_eq!(history.versions().count(), 200);
    // All that a name holds on to: two words of text and time, and one line.
    assert!(size_of::<super::Version>() <= 64, "{}", size_of::<super::Version>());
    let state = history.version(199).expect("it was named");
    assert_eq!(state.about_field(AboutField::Title), "title 19999");
}

#[test]
fn whatever_was_typed_can_be_laid_out_and_made_into_keys() {
    let mut keys = 0;
    for seed in 0..120 {
        let collection = of(&any_journal(seed, 70)).now;
        let Some(laid) = Laid::of(&collection) else { continue };
        for (kind, taxon) in laid.kinds.iter().zip(laid.matrix.taxa()) {
            let name = collection.name(*kind);
            assert!(
                folded(&taxon.name).starts_with(&folded(&name)),
                "{seed}: another's row {} {}",
                name,
                taxon.name
            );
        }
        let names: BTreeSet<String> =
            collection.kinds.keys().map(|kind| folded(&collection.name(*kind))).collect();
        assert!(laid.kinds.len() >= names.len(), "{seed}: nobody is lost");
        for drawn in collection.keys.values() {
            keys += usize::from(Layer::of(&collection, &laid, drawn).is_some());
            crate::keys::make(&collection, &laid, drawn);
        }
    }
    assert!(keys > 50, "only {keys} keys were made: the journals have become too dull");
}

#[test]
fn a_line_of_the_journal_reads_as_it_was_written() {
    for entry in any_journal(7, 400) {
        assert_eq!(journal::read(&journal::write(&entry)), Ok(entry));
    }
}
