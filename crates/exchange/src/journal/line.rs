//! A line of the journal as JSON has it, and the way to and from an entry.

use serde::{Deserialize, Serialize};
use spinney_model::{
    AboutField, AskOf, AskedOf, CharacterField, CharacterId, Done, Edit, Entry, Fork, KeyId,
    KindId, Quantity, WishField,
};

use super::words;

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
enum Change {
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
}

#[derive(Serialize, Deserialize)]
#[serde(rename_all = "snake_case", deny_unknown_fields)]
enum Meaning {
    States { character: u32, states: Vec<String> },
    AtLeast { character: u32, thousandths: i64 },
    Below { character: u32, thousandths: i64 },
}

impl Line {
    pub(super) fn of(entry: &Entry) -> Self {
        // A program that reads only older forms must say that this is newer, and not that it is
        // damaged.
        let v = form(&entry.done);
        let empty = Self {
            v,
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

/// The oldest form of a line that can say this.
fn form(done: &Done) -> u32 {
    match done {
        Done::Edits(edits) => edits.iter().map(form_of_edit).max().unwrap_or(1),
        Done::Unname(_) => 2,
        Done::Undo | Done::Redo | Done::HoldFirst(_) | Done::Version(_) => 1,
    }
}

fn form_of_edit(edit: &Edit) -> u32 {
    match edit {
        Edit::DescribeScene(AboutField::BeforeYouGo, _) => 3,
        Edit::DescribeCharacter(_, CharacterField::Values, _) => 3,
        Edit::Wish(_, WishField::Tried | WishField::Touch, _) => 3,
        Edit::CallKind { .. } => 2,
        _ => 1,
    }
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
        Edit::AddKind(KindId(kind), name) => Change::AddKind { kind, name },
        Edit::DescribeKind(KindId(kind), what, text) => {
            Change::DescribeKind { kind, what: words::of_kind_field(what).to_owned(), text }
        }
        Edit::RemoveKind(KindId(kind)) => Change::RemoveKind { kind },
        Edit::MergeKinds(KindId(kept), KindId(gone)) => Change::MergeKinds { kept, gone },
        Edit::AddPicture(KindId(kind), picture) => Change::AddPicture { kind, picture },
        Edit::RemovePicture(KindId(kind), picture) => Change::RemovePicture { kind, picture },
        Edit::AddCharacter(CharacterId(character), name) => {
            Change::AddCharacter { character, name }
        }
        Edit::DescribeCharacter(CharacterId(character), what, text) => {
            let what = words::of_character_field(what).to_owned();
            Change::DescribeCharacter { character, what, text }
        }
        Edit::RemoveCharacter(CharacterId(character)) => Change::RemoveCharacter { character },
        Edit::SetCell { kind, character, source, text } => {
            Change::SetCell { kind: kind.0, character: character.0, source, text }
        }
        Edit::RenameState { character, from, to } => {
            Change::RenameState { character: character.0, from, to }
        }
        Edit::DescribeScene(what, text) => {
            Change::DescribeScene { what: words::of_about_field(what).to_owned(), text }
        }
        Edit::StartKey(KeyId(key), name) => Change::StartKey { key, name },
        Edit::RenameKey(KeyId(key), name) => Change::RenameKey { key, name },
        Edit::RemoveKey(KeyId(key)) => Change::RemoveKey { key },
        Edit::Wish(KeyId(key), what, text) => {
            Change::Wish { key, what: words::of_wish_field(what).to_owned(), text }
        }
        Edit::Ask { key, at, words, ask } => {
            Change::Ask { key: key.0, at: way(&at), words, ask: ask.as_ref().map(meaning) }
        }
        Edit::Reword { key, at, words } => Change::Reword { key: key.0, at: way(&at), words },
        Edit::TakeOut(KeyId(key), at) => Change::TakeOut { key, at: way(&at) },
        Edit::Sort { key, at, kind, side } => Change::Sort {
            key: key.0,
            at: way(&at),
            kind: kind.0,
            side: side.map(|side| words::of_side(side).to_owned()),
        },
        Edit::CallKind { key: KeyId(key), kind: KindId(kind), name } => {
            Change::CallKind { key, kind, name }
        }
        Edit::BackTo(name) => Change::BackTo { name },
    }
}

fn edit(change: Change) -> Option<Edit> {
    Some(match change {
        Change::AddKind { kind, name } => Edit::AddKind(KindId(kind), name),
        Change::DescribeKind { kind, what, text } => {
            Edit::DescribeKind(KindId(kind), words::kind_field(&what)?, text)
        }
        Change::RemoveKind { kind } => Edit::RemoveKind(KindId(kind)),
        Change::MergeKinds { kept, gone } => Edit::MergeKinds(KindId(kept), KindId(gone)),
        Change::AddPicture { kind, picture } => Edit::AddPicture(KindId(kind), picture),
        Change::RemovePicture { kind, picture } => Edit::RemovePicture(KindId(kind), picture),
        Change::AddCharacter { character, name } => {
            Edit::AddCharacter(CharacterId(character), name)
        }
        Change::DescribeCharacter { character, what, text } => {
            let what = words::character_field(&what)?;
            Edit::DescribeCharacter(CharacterId(character), what, text)
        }
        Change::RemoveCharacter { character } => Edit::RemoveCharacter(CharacterId(character)),
        Change::SetCell { kind, character, source, text } => Edit::SetCell {
            kind: KindId(kind),
            character: CharacterId(character),
            source,
            text,
        },
        Change::RenameState { character, from, to } => {
            Edit::RenameState { character: CharacterId(character), from, to }
        }
        Change::DescribeScene { what, text } => {
            Edit::DescribeScene(words::about_field(&what)?, text)
        }
        Change::StartKey { key, name } => Edit::StartKey(KeyId(key), name),
        Change::RenameKey { key, name } => Edit::RenameKey(KeyId(key), name),
        Change::RemoveKey { key } => Edit::RemoveKey(KeyId(key)),
        Change::Wish { key, what, text } => {
            Edit::Wish(KeyId(key), words::wish_field(&what)?, text)
        }
        Change::Ask { key, at, words, ask: means } => {
            Edit::Ask { key: KeyId(key), at: fork(&at)?, words, ask: means.map(ask) }
        }
        Change::Reword { key, at, words } => {
            Edit::Reword { key: KeyId(key), at: fork(&at)?, words }
        }
        Change::TakeOut { key, at } => Edit::TakeOut(KeyId(key), fork(&at)?),
        Change::Sort { key, at, kind, side } => Edit::Sort {
            key: KeyId(key),
            at: fork(&at)?,
            kind: KindId(kind),
            side: match side {
                Some(word) => Some(words::side(&word)?),
                None => None,
            },
        },
        Change::CallKind { key, kind, name } => {
            Edit::CallKind { key: KeyId(key), kind: KindId(kind), name }
        }
        Change::BackTo { name } => Edit::BackTo(name),
    })
}
