//! From which form of the journal each word is known.
//!
//! From a line, or an edit, to the oldest form that can say it. A program that reads only older
//! forms must say that a line is newer, and not that it is damaged; so a new word gets a new
//! form. Every word is named here: one that is not does not compile.

#![deny(clippy::wildcard_enum_match_arm)]

use spinney_model::{
    AboutField, CharacterEdit, CharacterField, Done, Edit, KeyEdit, KindEdit, KindField,
    SpecimenEdit, WishField,
};

/// The oldest form of a line that can say this.
pub(super) fn of_line(done: &Done) -> u32 {
    match done {
        Done::Edits(edits) => edits.iter().map(since).max().unwrap_or(1),
        Done::Unname(_) => 2,
        Done::Undo | Done::Redo | Done::HoldFirst(_) | Done::Version(_) => 1,
    }
}

/// From which form of the journal an edit is known.
pub fn since(edit: &Edit) -> u32 {
    match edit {
        Edit::Kind(_, edit) => of_kind(edit),
        Edit::Character(_, edit) => of_character(edit),
        Edit::Cell { .. } => 1,
        Edit::Specimen(_, edit) => of_specimen(edit),
        Edit::Scene(field, _) => of_scene(*field),
        Edit::Key(_, edit) => of_key(edit),
        Edit::BackTo(_) => 1,
    }
}

fn of_kind(edit: &KindEdit) -> u32 {
    match edit {
        KindEdit::Describe(field, _) => match field {
            KindField::SecondName => 5,
            KindField::Name
            | KindField::ScientificName
            | KindField::OtherNames
            | KindField::HowOften
            | KindField::Caution
            | KindField::ConfirmBy
            | KindField::HowSure
            | KindField::Where
            | KindField::When
            | KindField::WhichPlant => 1,
        },
        KindEdit::Draw(_) => 6,
        KindEdit::Add(_)
        | KindEdit::Remove
        | KindEdit::Merge(_)
        | KindEdit::AddPicture(_)
        | KindEdit::RemovePicture(_) => 1,
    }
}

fn of_character(edit: &CharacterEdit) -> u32 {
    match edit {
        CharacterEdit::Describe(field, _) => match field {
            CharacterField::SecondQuestion | CharacterField::SecondStates => 5,
            CharacterField::Values => 3,
            CharacterField::Name
            | CharacterField::Question
            | CharacterField::States
            | CharacterField::Unit
            | CharacterField::Gap
            | CharacterField::SeenOn
            | CharacterField::Season
            | CharacterField::Difficulty
            | CharacterField::ReadRight
            | CharacterField::ByTouch
            | CharacterField::AppliesWhen
            | CharacterField::Instrument
            | CharacterField::InOrder
            | CharacterField::WordsToKnow
            | CharacterField::RatioOf => 1,
        },
        CharacterEdit::Add(_) | CharacterEdit::Remove | CharacterEdit::RenameState { .. } => 1,
    }
}

fn of_specimen(edit: &SpecimenEdit) -> u32 {
    match edit {
        SpecimenEdit::Add(_)
        | SpecimenEdit::OfKind(_)
        | SpecimenEdit::Describe(..)
        | SpecimenEdit::Picture(_)
        | SpecimenEdit::Measure { .. }
        | SpecimenEdit::Judge { .. }
        | SpecimenEdit::Remove => 6,
    }
}

fn of_scene(field: AboutField) -> u32 {
    match field {
        AboutField::SecondLanguage | AboutField::SecondQuestions => 5,
        AboutField::Children | AboutField::Groups => 4,
        AboutField::BeforeYouGo => 3,
        AboutField::Title
        | AboutField::Place
        | AboutField::Season
        | AboutField::Part
        | AboutField::Caution => 1,
    }
}

fn of_key(edit: &KeyEdit) -> u32 {
    match edit {
        KeyEdit::Wish(wish, _) => match wish {
            WishField::Touch | WishField::Tried => 3,
            WishField::Group | WishField::Hand | WishField::Season | WishField::Finish => 1,
        },
        KeyEdit::Call { .. } => 2,
        KeyEdit::ForKinds(_)
        | KeyEdit::Never(_)
        | KeyEdit::Start(_)
        | KeyEdit::Rename(_)
        | KeyEdit::Remove
        | KeyEdit::Ask { .. }
        | KeyEdit::Reword { .. }
        | KeyEdit::TakeOut(_)
        | KeyEdit::Sort { .. } => 1,
    }
}
