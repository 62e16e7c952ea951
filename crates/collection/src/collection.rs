//! A collection as it stands: what all edits so far add up to.
//!
//! From edits, one after another, to kinds, characters, cells, keys. What was typed is kept as
//! typed; [`crate::laid`] reads it as a table. An edit that names something that is not there
//! any more, because another window took it away, changes nothing.

#![deny(clippy::wildcard_enum_match_arm)]

use std::collections::BTreeMap;

use spinney_exchange::table;
use spinney_model::{
    AboutField, AskOf, AskedOf, CharacterEdit, CharacterField, CharacterId, Edit, Fork,
    KeptDrawing, KeyEdit, KeyId, KindEdit, KindField, KindId, Side, SpecimenId, WishField,
};

use crate::laid::folded;

mod cells;
mod constraint;
mod edit_script;
mod sayings;
mod sorted;
mod specimen;
mod unlike;

pub use cells::Cells;
pub use edit_script::edit_script;
pub use sayings::{Agreed, Saying, Sayings};
pub use sorted::{Put, Sorted};
pub use specimen::{Measurement, Specimen};
pub use unlike::{Card, Unlike, unlike};

/// A collection as it stands.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct Collection {
    /// What was found, in the order in which it came.
    pub kinds: BTreeMap<KindId, Kind>,
    /// What to look at, with what was typed of each.
    pub characters: BTreeMap<CharacterId, BTreeMap<CharacterField, String>>,
    /// What was typed of each kind, by whom.
    pub cells: Cells,
    /// Single specimens, such as leaves that were measured one by one.
    pub specimens: BTreeMap<SpecimenId, Specimen>,
    /// What was typed of the visit.
    pub about: BTreeMap<AboutField, String>,
    /// The keys that were begun.
    pub keys: BTreeMap<KeyId, Drawn>,
    /// The largest numbers ever given, so that none is given again.
    last: (u32, u32, u32, u32),
}

/// A kind of find.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct Kind {
    /// What was typed of it: name, caution and so on.
    pub fields: BTreeMap<KindField, String>,
    /// SHA-256 of each picture, in hexadecimal digits.
    pub pictures: Vec<String>,
    /// Its drawing, where somebody chose one.
    pub drawing: Option<KeptDrawing>,
}

/// A key as people made it: the questions they fixed, each at its place.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct Drawn {
    /// What its group calls it.
    pub name: String,
    /// What it is made for.
    pub wishes: BTreeMap<WishField, String>,
    /// The kinds it is for, in the order in which they were chosen; None: all.
    pub kinds: Option<Vec<KindId>>,
    /// Characters that it must not ask about.
    pub never: Vec<CharacterId>,
    /// The questions that people fixed, each at its place.
    pub questions: BTreeMap<Fork, Question>,
    /// What its group calls kinds, where that is a name of their own.
    pub called: BTreeMap<KindId, String>,
}

/// A question that somebody fixed.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct Question {
    /// The question as people say it.
    pub words: String,
    /// What it means in the table; None: nobody has linked it.
    pub ask: Option<AskOf>,
    /// Where kinds were put by hand.
    pub sorted: BTreeMap<KindId, Side>,
}

impl Kind {
    /// What was typed; empty: nothing.
    pub fn field(&self, field: KindField) -> &str {
        self.fields.get(&field).map_or("", String::as_str)
    }
}

impl Drawn {
    /// What is wished; empty: nothing.
    pub fn wish(&self, wish: WishField) -> &str {
        self.wishes.get(&wish).map_or("", String::as_str)
    }

    /// Whether it is for a kind.
    pub fn is_for(&self, kind: KindId) -> bool {
        self.kinds.as_ref().is_none_or(|kinds| kinds.contains(&kind))
    }

    /// Whether the machine is to find the rest.
    pub fn finished(&self) -> bool {
        !self.wish(WishField::Finish).is_empty()
    }

    /// One edit more, of a key that is there; `there` says which kinds are.
    pub fn apply(&mut self, edit: &KeyEdit, there: impl Fn(KindId) -> bool) {
        match edit {
            // These make and unmake keys.
            KeyEdit::Start(_) | KeyEdit::Remove => {}
            KeyEdit::Rename(name) => self.name.clone_from(name),
            KeyEdit::Wish(wish, text) => write(&mut self.wishes, *wish, text),
            KeyEdit::ForKinds(kinds) => self.kinds.clone_from(kinds),
            KeyEdit::Never(characters) => self.never.clone_from(characters),
            KeyEdit::Ask { at, words, ask } => self.ask(at, words, ask.as_ref()),
            KeyEdit::Reword { at, words } => {
                if let Some(question) = self.questions.get_mut(at) {
                    question.words.clone_from(words);
                }
            }
            KeyEdit::TakeOut(at) => self.take_out(at),
            KeyEdit::Sort { at, kind, side } => {
                if let Some(question) = self.questions.get_mut(at).filter(|_| there(*kind)) {
                    match side {
                        Some(side) => question.sorted.insert(*kind, *side),
                        None => question.sorted.remove(kind),
                    };
                }
            }
            KeyEdit::Call { kind, name } => {
                if there(*kind) {
                    write(&mut self.called, *kind, name);
                }
            }
        }
    }

    /// The same words with another meaning are still the same heaps.
    fn ask(&mut self, at: &Fork, words: &str, ask: Option<&AskOf>) {
        if let Some(question) = self.questions.get_mut(at)
            && question.words == words
        {
            question.ask = ask.cloned();
            return;
        }
        self.take_out(at);
        let (words, ask) = (words.to_owned(), ask.cloned());
        self.questions.insert(at.clone(), Question { words, ask, ..Question::default() });
    }

    fn take_out(&mut self, at: &Fork) {
        self.questions.retain(|place, _| !place.0.starts_with(&at.0));
    }
}

impl Collection {
    /// The number of the next kind.
    pub fn next_kind(&self) -> KindId {
        KindId(self.last.0 + 1)
    }

    /// The number of the next character.
    pub fn next_character(&self) -> CharacterId {
        CharacterId(self.last.1 + 1)
    }

    /// The number of the next key.
    pub fn next_key(&self) -> KeyId {
        KeyId(self.last.2 + 1)
    }

    /// The name of a kind; a kind without one goes by a letter.
    pub fn name(&self, kind: KindId) -> String {
        match self.kinds.get(&kind).map(|kind| kind.field(KindField::Name)) {
            Some(name) if !name.is_empty() => name.to_owned(),
            _ => format!("find {}", letter(kind.0)),
        }
    }

    /// What a kind is called in a key: the group's own name, with ours beside it where ours is
    /// another. Two may have one name, so a kind that we have no name for keeps its letter.
    pub fn name_in(&self, key: KeyId, kind: KindId) -> String {
        let called = self.keys.get(&key).and_then(|key| key.called.get(&kind));
        let ours = self.name(kind);
        match called {
            Some(own) if folded(own) == folded(&ours) => own.clone(),
            Some(own) => format!("{own} ({ours})"),
            None => ours,
        }
    }

    /// What was typed of a character; empty: nothing.
    pub fn character_field(&self, id: CharacterId, field: CharacterField) -> &str {
        let fields = self.characters.get(&id);
        fields.and_then(|fields| fields.get(&field)).map_or("", String::as_str)
    }

    /// What a character is called.
    pub fn character_name(&self, id: CharacterId) -> &str {
        self.character_field(id, CharacterField::Name)
    }

    /// What was typed of the visit; empty: nothing.
    pub fn about_field(&self, field: AboutField) -> &str {
        self.about.get(&field).map_or("", String::as_str)
    }

    /// What the second language of the sheets is called; None: there is none.
    pub fn second_language(&self) -> Option<&str> {
        let language = self.about_field(AboutField::SecondLanguage).trim();
        (!language.is_empty()).then_some(language)
    }

    /// One edit more.
    pub fn apply(&mut self, edit: &Edit) {
        match edit {
            Edit::Kind(id, edit) => self.apply_to_kind(*id, edit),
            Edit::Character(id, edit) => self.apply_to_character(*id, edit),
            Edit::Cell { kind, character, source, text } => {
                if self.kinds.contains_key(kind) && self.characters.contains_key(character) {
                    self.cells.set(*kind, *character, source, text);
                }
            }
            Edit::Specimen(id, edit) => self.apply_to_specimen(*id, edit),
            Edit::Scene(field, text) => write(&mut self.about, *field, text),
            Edit::Key(id, edit) => self.apply_to_key(*id, edit),
            Edit::BackTo(_) => {}
        }
    }

    fn apply_to_kind(&mut self, id: KindId, edit: &KindEdit) {
        match edit {
            KindEdit::Add(name) => {
                self.last.0 = self.last.0.max(id.0);
                let mut kind = Kind::default();
                write(&mut kind.fields, KindField::Name, name);
                self.kinds.insert(id, kind);
            }
            KindEdit::Describe(field, text) => {
                if let Some(kind) = self.kinds.get_mut(&id) {
                    write(&mut kind.fields, *field, text);
                }
            }
            KindEdit::Remove => self.remove_kind(id),
            KindEdit::Merge(gone) => self.merge(id, *gone),
            KindEdit::AddPicture(picture) => {
                if let Some(kind) = self.kinds.get_mut(&id)
                    && !kind.pictures.contains(picture)
                {
                    kind.pictures.push(picture.clone());
                }
            }
            KindEdit::RemovePicture(picture) => {
                if let Some(kind) = self.kinds.get_mut(&id) {
                    kind.pictures.retain(|known| known != picture);
                }
            }
            KindEdit::Draw(drawing) => {
                if let Some(kind) = self.kinds.get_mut(&id) {
                    kind.drawing.clone_from(drawing);
                }
            }
        }
    }

    fn apply_to_character(&mut self, id: CharacterId, edit: &CharacterEdit) {
        match edit {
            CharacterEdit::Add(name) => {
                self.last.1 = self.last.1.max(id.0);
                let name = (CharacterField::Name, name.clone());
                self.characters.insert(id, BTreeMap::from([name]));
            }
            CharacterEdit::Describe(field, text) => {
                if let Some(fields) = self.characters.get_mut(&id) {
                    write(fields, *field, text);
                }
            }
            CharacterEdit::Remove => {
                self.characters.remove(&id);
                self.cells.remove_character(id);
                for specimen in self.specimens.values_mut() {
                    specimen.measured.remove(&id);
                }
            }
            CharacterEdit::RenameState { from, to } => self.rename_state(id, from, to),
        }
    }

    fn apply_to_key(&mut self, id: KeyId, edit: &KeyEdit) {
        if let KeyEdit::Start(name) = edit {
            self.last.2 = self.last.2.max(id.0);
            let key = Drawn { name: name.clone(), ..Drawn::default() };
            self.keys.insert(id, key);
            return;
        }
        if matches!(edit, KeyEdit::Remove) {
            self.keys.remove(&id);
        } else if let Some(key) = self.keys.get_mut(&id) {
            let kinds = &self.kinds;
            key.apply(edit, |kind| kinds.contains_key(&kind));
        }
    }

    fn remove_kind(&mut self, id: KindId) {
        self.kinds.remove(&id);
        self.cells.remove_kind(id);
        self.specimens.retain(|_, specimen| specimen.kind != id);
        for key in self.keys.values_mut() {
            key.called.remove(&id);
            for question in key.questions.values_mut() {
                question.sorted.remove(&id);
            }
        }
    }

    fn merge(&mut self, kept: KindId, gone: KindId) {
        if kept == gone || !self.kinds.contains_key(&kept) {
            return;
        }
        let Some(other) = self.kinds.get(&gone).cloned() else { return };
        self.cells.merge(kept, gone);
        for specimen in self.specimens.values_mut().filter(|one| one.kind == gone) {
            specimen.turn_out(kept);
        }
        for key in self.keys.values_mut() {
            if let Some(kinds) = &mut key.kinds {
                *kinds = instead(kinds, gone, kept);
            }
            if let Some(own) = key.called.get(&gone).cloned() {
                key.called.entry(kept).or_insert(own);
            }
            for question in key.questions.values_mut() {
                if let Some(side) = question.sorted.get(&gone).copied() {
                    question.sorted.entry(kept).or_insert(side);
                }
            }
        }
        if let Some(kind) = self.kinds.get_mut(&kept) {
            for (field, text) in other.fields {
                kind.fields.entry(field).or_insert(text);
            }
            for picture in other.pictures {
                if !kind.pictures.contains(&picture) {
                    kind.pictures.push(picture);
                }
            }
            kind.drawing = kind.drawing.take().or(other.drawing);
        }
        self.remove_kind(gone);
    }

    fn rename_state(&mut self, character: CharacterId, from: &str, to: &str) {
        self.cells.rename_state(character, from, to);
        self.rename_state_of_specimens(character, from, to);
        if let Some(states) = self
            .characters
            .get_mut(&character)
            .and_then(|fields| fields.get_mut(&CharacterField::States))
        {
            *states = table::renamed(states, from, to);
        }
        if let Some(second) = self
            .characters
            .get_mut(&character)
            .and_then(|fields| fields.get_mut(&CharacterField::SecondStates))
        {
            *second = table::renamed_in_second(second, from, to);
        }
        let questions = self.keys.values_mut().flat_map(|key| key.questions.values_mut());
        for ask in questions.filter_map(|question| question.ask.as_mut()) {
            if let (true, AskedOf::States(states)) = (ask.character == character, &mut ask.yes)
            {
                states
                    .iter_mut()
                    .filter(|s| s.as_str() == from)
                    .for_each(|s| s.replace_range(.., to));
            }
        }
    }
}

/// Kinds with one of them changed to another; none stands twice.
fn instead(kinds: &[KindId], gone: KindId, kept: KindId) -> Vec<KindId> {
    let mut out = Vec::new();
    for kind in kinds {
        let kind = if *kind == gone { kept } else { *kind };
        if !out.contains(&kind) {
            out.push(kind);
        }
    }
    out
}

/// An empty text takes the entry away.
fn write<K: Ord>(fields: &mut BTreeMap<K, String>, field: K, text: &str) {
    if text.is_empty() {
        fields.remove(&field);
    } else {
        fields.insert(field, text.to_owned());
    }
}

/// 1 is A, 26 is Z, 27 is AA.
fn letter(number: u32) -> String {
    let mut letters = String::new();
    let mut left = number;
    while left > 0 {
        left -= 1;
        letters.insert(0, char::from(b'A' + (left % 26) as u8));
        left /= 26;
    }
    letters
}
