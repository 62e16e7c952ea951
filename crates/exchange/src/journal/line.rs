//! A line of the journal as JSON has it, and the way to and from an entry.

#![deny(clippy::wildcard_enum_match_arm)]

use serde::{Deserialize, Serialize};
use spinney_model::{
    AskOf, AskedOf, CharacterEdit, CharacterId, Done, Edit, Entry, Fork, KeyEdit, KeyId,
    KindEdit, KindId, Quantity, SpecimenEdit, SpecimenId,
};

use super::{since, words};
use crate::drawn;

/// What every line has, whatever its version.
#[derive(Deserialize)]
pub(super) struct Versioned {
    pub(super) v: u32,
}

#[derive(Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub(super) struct Line {
    pub(super) v: u32,
    at: i64,
    #[serde(skip_serializing_if = "Option::is_none")]
    edits: Option<Vec<Change>>,
    #[serde(skip_serializing_if = "Option::is_none")]
    version: Option<String>,
    #[serde(skip_serializing_if = "Option::is_none")]
    unname: Option<u64>,
    #[serde(default, skip_serializing_if = "is_false")]
    undo: bool,
    #[serde(default, skip_serializing_if = "is_false")]
    redo: bool,
    #[serde(skip_serializing_if = "Option::is_none")]
    hold_first: Option<u64>,
}

fn is_false(flag: &bool) -> bool {
    !flag
}

#[derive(Serialize, Deserialize)]
#[serde(rename_all = "snake_case", deny_unknown_fields)]
pub(super) enum Change {
    AddKind { kind: u32, name: String },
    DescribeKind { kind: u32, what: String, text: String },
    RemoveKind { kind: u32 },
    MergeKinds { kept: u32, gone: u32 },
    AddPicture { kind: u32, picture: String },
    RemovePicture { kind: u32, picture: String },
    AddCharacter { character: u32, name: String },
    DescribeCharacter { character: u32, what: String, text: String },
    RemoveCharacter { character: u32 },
    SetCell { kind: u32, character: u32, source: String, text: String },
    RenameState { character: u32, from: String, to: String },
    DescribeScene { what: String, text: String },
    StartKey { key: u32, name: String },
    RenameKey { key: u32, name: String },
    RemoveKey { key: u32 },
    Wish { key: u32, what: String, text: String },
    Ask { key: u32, at: String, words: String, ask: Option<Meaning> },
    Reword { key: u32, at: String, words: String },
    TakeOut { key: u32, at: String },
    Sort { key: u32, at: String, kind: u32, side: Option<String> },
    CallKind { key: u32, kind: u32, name: String },
    BackTo { name: String },
    DrawKind { kind: u32, drawing: String },
    AddSpecimen { specimen: u32, kind: u32 },
    SpecimenOfKind { specimen: u32, kind: u32 },
    DescribeSpecimen { specimen: u32, what: String, text: String },
    SpecimenPicture { specimen: u32, picture: String },
    MeasureSpecimen { specimen: u32, character: u32, text: String, plus_minus: String },
    JudgeSpecimen { specimen: u32, character: u32, judged: Option<String> },
    RemoveSpecimen { specimen: u32 },
}

#[derive(Serialize, Deserialize)]
#[serde(rename_all = "snake_case", deny_unknown_fields)]
pub(super) enum Meaning {
    States { character: u32, states: Vec<String> },
    AtLeast { character: u32, thousandths: i64 },
    Below { character: u32, thousandths: i64 },
}

impl Line {
    pub(super) fn of(entry: &Entry) -> Self {
        let empty = Self {
            v: since::of_line(&entry.done),
            at: entry.at,
            edits: None,
            version: None,
            unname: None,
            undo: false,
            redo: false,
            hold_first: None,
        };
        match &entry.done {
            Done::Edits(edits) => {
                Self { edits: Some(edits.iter().map(change).collect()), ..empty }
            }
            Done::Undo => Self { undo: true, ..empty },
            Done::Redo => Self { redo: true, ..empty },
            Done::HoldFirst(lines) => Self { hold_first: Some(*lines), ..empty },
            Done::Version(name) => Self { version: Some(name.clone()), ..empty },
            Done::Unname(version) => Self { unname: Some(*version), ..empty },
        }
    }

    /// None: it does not say what it does, or says two things, or uses a word nobody knows.
    pub(super) fn entry(self) -> Option<Entry> {
        let said =
            (self.edits, self.version, self.unname, self.hold_first, self.undo, self.redo);
        let done = match said {
            (Some(edits), None, None, None, false, false) => {
                Done::Edits(edits.into_iter().map(edit).collect::<Option<_>>()?)
            }
            (None, Some(name), None, None, false, false) => Done::Version(name),
            (None, None, Some(version), None, false, false) => Done::Unname(version),
            (None, None, None, Some(lines), false, false) => Done::HoldFirst(lines),
            (None, None, None, None, true, false) => Done::Undo,
            (None, None, None, None, false, true) => Done::Redo,
            _ => return None,
        };
        Some(Entry { at: self.at, done })
    }
}

/// No kind has this number: alone it stands for a key for nobody.
const NOBODY: u32 = 0;

/// Numbers with spaces between.
fn numbers(numbers: impl Iterator<Item = u32>) -> String {
    numbers.map(|number| number.to_string()).collect::<Vec<_>>().join(" ")
}

fn wish(key: u32, what: &str, text: String) -> Option<Edit> {
    let numbers = || text.split_whitespace().filter_map(|word| word.parse::<u32>().ok());
    let edit = match what {
        words::KINDS => KeyEdit::ForKinds(
            numbers()
                .next()
                .map(|_| numbers().filter(|number| *number != NOBODY).map(KindId).collect()),
        ),
        words::NEVER => KeyEdit::Never(numbers().map(CharacterId).collect()),
        what => KeyEdit::Wish(words::wish_field(what)?, text),
    };
    Some(Edit::Key(KeyId(key), edit))
}

/// A way as letters: `yn` is yes, then no.
fn way(at: &Fork) -> String {
    at.0.iter().map(|yes| if *yes { 'y' } else { 'n' }).collect()
}

fn fork(way: &str) -> Option<Fork> {
    let answer = |letter| match letter {
        'y' => Some(true),
        'n' => Some(false),
        _ => None,
    };
    way.chars().map(answer).collect::<Option<_>>().map(Fork)
}

fn meaning(ask: &AskOf) -> Meaning {
    let character = ask.character.0;
    match &ask.yes {
        AskedOf::States(states) => Meaning::States { character, states: states.clone() },
        AskedOf::AtLeast(least) => {
            Meaning::AtLeast { character, thousandths: least.thousandths() }
        }
        AskedOf::Below(least) => Meaning::Below { character, thousandths: least.thousandths() },
    }
}

fn ask(meaning: Meaning) -> AskOf {
    let quantity = Quantity::from_thousandths;
    let (character, yes) = match meaning {
        Meaning::States { character, states } => (character, AskedOf::States(states)),
        Meaning::AtLeast { character, thousandths } => {
            (character, AskedOf::AtLeast(quantity(thousandths)))
        }
        Meaning::Below { character, thousandths } => {
            (character, AskedOf::Below(quantity(thousandths)))
        }
    };
    AskOf { character: CharacterId(character), yes }
}

fn change(edit: &Edit) -> Change {
    match edit.clone() {
        Edit::Kind(KindId(kind), edit) => change_of_kind(kind, edit),
        Edit::Character(CharacterId(character), edit) => change_of_character(character, edit),
        Edit::Cell { kind, character, source, text } => {
            Change::SetCell { kind: kind.0, character: character.0, source, text }
        }
        Edit::Specimen(SpecimenId(specimen), edit) => change_of_specimen(specimen, edit),
        Edit::Scene(what, text) => {
            Change::DescribeScene { what: words::of_about_field(what).to_owned(), text }
        }
        Edit::Key(KeyId(key), edit) => change_of_key(key, edit),
        Edit::BackTo(name) => Change::BackTo { name },
    }
}

fn change_of_kind(kind: u32, edit: KindEdit) -> Change {
    match edit {
        KindEdit::Add(name) => Change::AddKind { kind, name },
        KindEdit::Describe(what, text) => {
            Change::DescribeKind { kind, what: words::of_kind_field(what).to_owned(), text }
        }
        KindEdit::Remove => Change::RemoveKind { kind },
        KindEdit::Merge(KindId(gone)) => Change::MergeKinds { kept: kind, gone },
        KindEdit::AddPicture(picture) => Change::AddPicture { kind, picture },
        KindEdit::RemovePicture(picture) => Change::RemovePicture { kind, picture },
        KindEdit::Draw(drawing) => {
            let drawing = drawing.as_ref().map_or(String::new(), drawn::write);
            Change::DrawKind { kind, drawing }
        }
    }
}

fn change_of_specimen(specimen: u32, edit: SpecimenEdit) -> Change {
    match edit {
        SpecimenEdit::Add(KindId(kind)) => Change::AddSpecimen { specimen, kind },
        SpecimenEdit::OfKind(KindId(kind)) => Change::SpecimenOfKind { specimen, kind },
        SpecimenEdit::Describe(what, text) => {
            let what = words::of_specimen_field(what).to_owned();
            Change::DescribeSpecimen { specimen, what, text }
        }
        SpecimenEdit::Picture(picture) => Change::SpecimenPicture { specimen, picture },
        SpecimenEdit::Measure { character: CharacterId(character), text, plus_minus } => {
            Change::MeasureSpecimen { specimen, character, text, plus_minus }
        }
        SpecimenEdit::Judge { character: CharacterId(character), judged } => {
            let judged = judged.map(|judged| words::of_judged(judged).to_owned());
            Change::JudgeSpecimen { specimen, character, judged }
        }
        SpecimenEdit::Remove => Change::RemoveSpecimen { specimen },
    }
}

fn change_of_character(character: u32, edit: CharacterEdit) -> Change {
    match edit {
        CharacterEdit::Add(name) => Change::AddCharacter { character, name },
        CharacterEdit::Describe(what, text) => {
            let what = words::of_character_field(what).to_owned();
            Change::DescribeCharacter { character, what, text }
        }
        CharacterEdit::Remove => Change::RemoveCharacter { character },
        CharacterEdit::RenameState { from, to } => Change::RenameState { character, from, to },
    }
}

fn change_of_key(key: u32, edit: KeyEdit) -> Change {
    match edit {
        KeyEdit::Start(name) => Change::StartKey { key, name },
        KeyEdit::Rename(name) => Change::RenameKey { key, name },
        KeyEdit::Remove => Change::RemoveKey { key },
        KeyEdit::Wish(what, text) => {
            Change::Wish { key, what: words::of_wish_field(what).to_owned(), text }
        }
        KeyEdit::ForKinds(kinds) => {
            let text = match kinds.as_deref() {
                None => String::new(),
                // An empty text would be a key for all.
                Some([]) => NOBODY.to_string(),
                Some(kinds) => numbers(kinds.iter().map(|kind| kind.0)),
            };
            Change::Wish { key, what: words::KINDS.to_owned(), text }
        }
        KeyEdit::Never(characters) => {
            let text = numbers(characters.iter().map(|character| character.0));
            Change::Wish { key, what: words::NEVER.to_owned(), text }
        }
        KeyEdit::Ask { at, words, ask } => {
            Change::Ask { key, at: way(&at), words, ask: ask.as_ref().map(meaning) }
        }
        KeyEdit::Reword { at, words } => Change::Reword { key, at: way(&at), words },
        KeyEdit::TakeOut(at) => Change::TakeOut { key, at: way(&at) },
        KeyEdit::Sort { at, kind: KindId(kind), side } => {
            let side = side.map(|side| words::of_side(side).to_owned());
            Change::Sort { key, at: way(&at), kind, side }
        }
        KeyEdit::Call { kind: KindId(kind), name } => Change::CallKind { key, kind, name },
    }
}

fn edit(change: Change) -> Option<Edit> {
    Some(match change {
        Change::AddKind { kind, name } => Edit::Kind(KindId(kind), KindEdit::Add(name)),
        Change::DescribeKind { kind, what, text } => {
            Edit::Kind(KindId(kind), KindEdit::Describe(words::kind_field(&what)?, text))
        }
        Change::RemoveKind { kind } => Edit::Kind(KindId(kind), KindEdit::Remove),
        Change::MergeKinds { kept, gone } => {
            Edit::Kind(KindId(kept), KindEdit::Merge(KindId(gone)))
        }
        Change::AddPicture { kind, picture } => {
            Edit::Kind(KindId(kind), KindEdit::AddPicture(picture))
        }
        Change::RemovePicture { kind, picture } => {
            Edit::Kind(KindId(kind), KindEdit::RemovePicture(picture))
        }
        Change::AddCharacter { character, name } => {
            Edit::Character(CharacterId(character), CharacterEdit::Add(name))
        }
        Change::DescribeCharacter { character, what, text } => {
            let what = words::character_field(&what)?;
            Edit::Character(CharacterId(character), CharacterEdit::Describe(what, text))
        }
        Change::RemoveCharacter { character } => {
            Edit::Character(CharacterId(character), CharacterEdit::Remove)
        }
        Change::SetCell { kind, character, source, text } => {
            Edit::Cell { kind: KindId(kind), character: CharacterId(character), source, text }
        }
        Change::RenameState { character, from, to } => {
            Edit::Character(CharacterId(character), CharacterEdit::RenameState { from, to })
        }
        Change::DescribeScene { what, text } => Edit::Scene(words::about_field(&what)?, text),
        Change::StartKey { key, name } => Edit::Key(KeyId(key), KeyEdit::Start(name)),
        Change::RenameKey { key, name } => Edit::Key(KeyId(key), KeyEdit::Rename(name)),
        Change::RemoveKey { key } => Edit::Key(KeyId(key), KeyEdit::Remove),
        Change::Wish { key, what, text } => wish(key, &what, text)?,
        Change::Ask { key, at, words, ask: means } => {
            Edit::Key(KeyId(key), KeyEdit::Ask { at: fork(&at)?, words, ask: means.map(ask) })
        }
        Change::Reword { key, at, words } => {
            Edit::Key(KeyId(key), KeyEdit::Reword { at: fork(&at)?, words })
        }
        Change::TakeOut { key, at } => Edit::Key(KeyId(key), KeyEdit::TakeOut(fork(&at)?)),
        Change::Sort { key, at, kind, side } => Edit::Key(
            KeyId(key),
            KeyEdit::Sort {
                at: fork(&at)?,
                kind: KindId(kind),
                side: match side {
                    Some(word) => Some(words::side(&word)?),
                    None => None,
                },
            },
        ),
        Change::CallKind { key, kind, name } => {
            Edit::Key(KeyId(key), KeyEdit::Call { kind: KindId(kind), name })
        }
        Change::BackTo { name } => Edit::BackTo(name),
        Change::DrawKind { kind, drawing } => {
            let drawing = if drawing.is_empty() { None } else { Some(drawn::read(&drawing)?) };
            Edit::Kind(KindId(kind), KindEdit::Draw(drawing))
        }
        Change::AddSpecimen { specimen, kind } => {
            Edit::Specimen(SpecimenId(specimen), SpecimenEdit::Add(KindId(kind)))
        }
        Change::SpecimenOfKind { specimen, kind } => {
            Edit::Specimen(SpecimenId(specimen), SpecimenEdit::OfKind(KindId(kind)))
        }
        Change::DescribeSpecimen { specimen, what, text } => {
            let what = words::specimen_field(&what)?;
            Edit::Specimen(SpecimenId(specimen), SpecimenEdit::Describe(what, text))
        }
        Change::SpecimenPicture { specimen, picture } => {
            Edit::Specimen(SpecimenId(specimen), SpecimenEdit::Picture(picture))
        }
        Change::MeasureSpecimen { specimen, character, text, plus_minus } => {
            let character = CharacterId(character);
            let measure = SpecimenEdit::Measure { character, text, plus_minus };
            Edit::Specimen(SpecimenId(specimen), measure)
        }
        Change::JudgeSpecimen { specimen, character, judged } => {
            let judged = match judged {
                Some(word) => Some(words::judged(&word)?),
                None => None,
            };
            let judge = SpecimenEdit::Judge { character: CharacterId(character), judged };
            Edit::Specimen(SpecimenId(specimen), judge)
        }
        Change::RemoveSpecimen { specimen } => {
            Edit::Specimen(SpecimenId(specimen), SpecimenEdit::Remove)
        }
    })
}
