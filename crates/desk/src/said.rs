//! What was done, in a person's words.
//!
//! From a line of the journal, and the collection it was done to, to a sentence.

#![deny(clippy::wildcard_enum_match_arm)]

use std::collections::{BTreeMap, BTreeSet};

use spinney_collection::Collection;
use spinney_model::{
    CharacterEdit, CharacterField, CharacterId, Done, Edit, Judged, KeyEdit, KeyId, KindEdit,
    KindField, KindId, Side, SpecimenEdit, SpecimenId, WishField,
};
use spinney_voice::Tongue;

use crate::asked::Asked;
use crate::desk::Desk;
use crate::pages::cell::measured_sources;

/// What a line did, in a sentence.
pub(crate) fn done(t: Tongue, before: &Collection, done: &Done) -> String {
    match done {
        Done::Undo => t.say("said-undo"),
        Done::Redo => t.say("said-redo"),
        Done::HoldFirst(_) => t.say("said-hold"),
        Done::Version(name) => t.with("said-version", &[("name", name)]),
        Done::Unname(_) => t.say("said-unname"),
        Done::Edits(edits) => match edits.as_slice() {
            [] => t.say("said-nothing"),
            [edit] => one(t, before, edit),
            [first, rest @ ..] => many(t, before, first, rest),
        },
    }
}

fn many(t: Tongue, before: &Collection, first: &Edit, rest: &[Edit]) -> String {
    if let Edit::BackTo(_) = first {
        return one(t, before, first);
    }
    if let Edit::Specimen(id, SpecimenEdit::Measure { .. }) = first {
        let of_it = |edit: &Edit| matches!(edit, Edit::Specimen(of, SpecimenEdit::Measure { .. }) if of == id);
        if rest.iter().all(of_it) {
            return t.count_with(
                "said-and-more",
                rest.len(),
                &[("first", &one(t, before, first))],
            );
        }
    }
    if let Some((said, kinds)) = leaves(t, before, first, rest) {
        return t.with(said, &[("kinds", &spinney_voice::all(t, &kinds))]);
    }
    let kinds = |edit: &Edit| matches!(edit, Edit::Kind(_, KindEdit::Add(..)));
    let added = usize::from(kinds(first)) + rest.iter().filter(|edit| kinds(edit)).count();
    if added > 1 {
        return t.count("said-kinds", added);
    }
    let keys = [first].into_iter().chain(rest);
    let keys = keys.filter(|edit| matches!(edit, Edit::Key(_, KeyEdit::Start(..)))).count();
    if keys > 1 {
        return t.count("said-keys", keys);
    }
    let sentence = one(t, before, first);
    t.count_with("said-and-more", rest.len(), &[("first", &sentence)])
}

/// How leaves came in, and the kinds of which they are; None: none did.
fn leaves(
    t: Tongue,
    before: &Collection,
    first: &Edit,
    rest: &[Edit],
) -> Option<(&'static str, Vec<String>)> {
    let sources = measured_sources(t);
    let mut names = BTreeMap::new();
    let (mut kinds, mut new, mut more) = (BTreeSet::new(), BTreeSet::new(), BTreeSet::new());
    // A row of a table has neither a picture nor a ±.
    let mut by_scan = false;
    for edit in std::iter::once(first).chain(rest) {
        match edit {
            Edit::Kind(id, KindEdit::Add(name)) => {
                names.insert(*id, name.clone());
            }
            Edit::Cell { kind, source, .. } if sources.contains(source) => {
                by_scan = true;
                kinds.insert(*kind);
            }
            Edit::Specimen(id, edit) => match edit {
                SpecimenEdit::Add(kind) => {
                    new.insert(*id);
                    kinds.insert(*kind);
                }
                SpecimenEdit::Picture(_) => by_scan = true,
                SpecimenEdit::Measure { plus_minus, .. } => {
                    by_scan |= !plus_minus.is_empty();
                    more.insert(*id);
                }
                SpecimenEdit::OfKind(_)
                | SpecimenEdit::Describe(..)
                | SpecimenEdit::Judge { .. }
                | SpecimenEdit::Remove => {}
            },
            Edit::Kind(..)
            | Edit::Character(..)
            | Edit::Cell { .. }
            | Edit::Scene(..)
            | Edit::Key(..)
            | Edit::BackTo(_) => {}
        }
    }
    let known = more.difference(&new).filter_map(|id| before.specimens.get(id));
    kinds.extend(known.map(|one| one.kind));
    let name = |id: KindId| names.get(&id).cloned().unwrap_or_else(|| before.name(id));
    let kinds: Vec<String> = kinds.into_iter().map(name).collect();
    let said = match (by_scan, new.is_empty()) {
        (true, _) => "said-measured",
        (false, false) => "said-leaves",
        (false, true) => "said-leaves-more",
    };
    (!kinds.is_empty()).then_some((said, kinds))
}

fn one(t: Tongue, before: &Collection, edit: &Edit) -> String {
    match edit {
        Edit::Kind(id, edit) => of_kind(t, before, *id, edit),
        Edit::Character(id, edit) => of_character(t, before.character_name(*id), edit),
        Edit::Cell { kind, character, source, text } => {
            let (kind, at) = (before.name(*kind), before.character_name(*character));
            let texts: [(&str, &dyn std::fmt::Display); 4] =
                [("kind", &kind), ("character", &at), ("text", text), ("source", source)];
            let message = match (text.is_empty(), source.is_empty()) {
                (true, _) => "said-clear-cell",
                (false, true) => "said-cell",
                (false, false) => "said-cell-by",
            };
            t.with(message, &texts)
        }
        Edit::Specimen(id, edit) => of_specimen(t, before, *id, edit),
        Edit::Scene(_, text) => t.with("said-scene", &[("text", text)]),
        Edit::Key(id, edit) => of_key(t, before, *id, edit),
        Edit::BackTo(name) => t.with("said-back-to", &[("name", name)]),
    }
}

fn of_kind(t: Tongue, before: &Collection, id: KindId, edit: &KindEdit) -> String {
    let kind = before.name(id);
    match edit {
        KindEdit::Add(name) if name.is_empty() => {
            t.with("said-add-nameless", &[("kind", &kind)])
        }
        KindEdit::Add(name) => t.with("said-add-kind", &[("kind", name)]),
        KindEdit::Describe(KindField::Name, text) => {
            t.with("said-name-kind", &[("kind", &kind), ("name", text)])
        }
        KindEdit::Describe(_, text) => {
            t.with("said-describe", &[("what", &kind), ("text", text)])
        }
        KindEdit::Remove => t.with("said-remove-kind", &[("kind", &kind)]),
        KindEdit::Merge(gone) => {
            t.with("said-merge", &[("kept", &kind), ("gone", &before.name(*gone))])
        }
        KindEdit::AddPicture(_) => t.with("said-picture", &[("kind", &kind)]),
        KindEdit::RemovePicture(_) => t.with("said-picture-away", &[("kind", &kind)]),
        KindEdit::Draw(Some(_)) => t.with("said-draw", &[("kind", &kind)]),
        KindEdit::Draw(None) => t.with("said-draw-away", &[("kind", &kind)]),
    }
}

fn of_specimen(t: Tongue, before: &Collection, id: SpecimenId, edit: &SpecimenEdit) -> String {
    let of = |kind: KindId| before.name(kind);
    let known = before.specimens.get(&id);
    let (number, kind) = (id.0, known.map_or(String::new(), |one| of(one.kind)));
    let with =
        |message: &str, kind: &str| t.with(message, &[("number", &number), ("kind", &kind)]);
    match edit {
        SpecimenEdit::Add(kind) => with("said-leaf", &of(*kind)),
        SpecimenEdit::OfKind(kind) => with("said-leaf-of-kind", &of(*kind)),
        SpecimenEdit::Describe(..) | SpecimenEdit::Picture(_) => {
            with("said-leaf-described", &kind)
        }
        SpecimenEdit::Measure { character, text, .. } => {
            let name = before.character_name(*character);
            let texts: [(&str, &dyn std::fmt::Display); 4] =
                [("number", &number), ("kind", &kind), ("character", &name), ("text", text)];
            let cleared = text.is_empty();
            t.with(if cleared { "said-leaf-cleared" } else { "said-leaf-measured" }, &texts)
        }
        SpecimenEdit::Judge { judged, .. } => {
            let message = match judged {
                Some(Judged::Right) => "said-leaf-right",
                Some(Judged::Wrong) => "said-leaf-wrong",
                None => "said-leaf-open",
            };
            with(message, &kind)
        }
        SpecimenEdit::Remove => with("said-leaf-away", &kind),
    }
}

fn of_character(t: Tongue, old: &str, edit: &CharacterEdit) -> String {
    match edit {
        CharacterEdit::Add(name) => t.with("said-add-character", &[("name", name)]),
        CharacterEdit::Describe(CharacterField::Name, text) => {
            t.with("said-name-character", &[("old", &old), ("name", text)])
        }
        CharacterEdit::Describe(_, text) => {
            t.with("said-describe", &[("what", &old), ("text", text)])
        }
        CharacterEdit::Remove => t.with("said-remove-character", &[("name", &old)]),
        CharacterEdit::RenameState { from, to } => {
            t.with("said-rename-state", &[("from", from), ("to", to)])
        }
    }
}

fn of_key(t: Tongue, before: &Collection, id: KeyId, edit: &KeyEdit) -> String {
    let drawn = before.keys.get(&id);
    let named = drawn.map_or("", |key| key.name.as_str());
    match edit {
        KeyEdit::Start(name) => t.with("said-start-key", &[("name", name)]),
        KeyEdit::Rename(name) => t.with("said-rename-key", &[("old", &named), ("name", name)]),
        KeyEdit::Remove => t.with("said-remove-key", &[("name", &named)]),
        KeyEdit::Wish(field, text) => wish(t, named, *field, text),
        KeyEdit::ForKinds(kinds) => for_kinds(t, before, named, kinds.as_deref()),
        KeyEdit::Never(characters) => never(t, before, named, characters),
        KeyEdit::Ask { words, .. } => t.with("said-ask", &[("name", &named), ("words", words)]),
        KeyEdit::Reword { words, .. } => {
            t.with("said-reword", &[("name", &named), ("words", words)])
        }
        KeyEdit::TakeOut(at) => {
            let words = drawn.and_then(|key| key.questions.get(at));
            let words = words.map_or("", |question| question.words.as_str());
            t.with("said-take-out", &[("name", &named), ("words", &words)])
        }
        KeyEdit::Sort { kind, side, .. } => {
            let message = match side {
                Some(Side::Yes) => "said-sort-yes",
                Some(Side::No) => "said-sort-no",
                Some(Side::Both) => "said-sort-both",
                None => "said-sort-back",
            };
            t.with(message, &[("kind", &before.name(*kind))])
        }
        KeyEdit::Call { kind, name } => {
            let who = drawn.map_or(String::new(), |drawn| drawn.who(id));
            let texts: [(&str, &dyn std::fmt::Display); 3] =
                [("who", &who), ("kind", &before.name(*kind)), ("name", name)];
            t.with(if name.is_empty() { "said-call-away" } else { "said-call" }, &texts)
        }
    }
}

/// What a key is for, in words.
fn wish(t: Tongue, name: &str, field: WishField, text: &str) -> String {
    let message = match (field, text) {
        (WishField::Finish, "") => return t.with("said-unfinish", &[("name", &name)]),
        (WishField::Finish, _) => return t.with("said-finish", &[("name", &name)]),
        (WishField::Tried, "") => return t.with("said-not-tried", &[("name", &name)]),
        (WishField::Tried, _) => return t.with("said-tried", &[("name", &name)]),
        (WishField::Touch, "") => return t.with("said-no-touch", &[("name", &name)]),
        (WishField::Touch, _) => return t.with("said-touch", &[("name", &name)]),
        (_, "") => return t.with("said-wish-away", &[("name", &name)]),
        (WishField::Group, _) => "said-wish-group",
        (WishField::Hand | WishField::Season, _) => "said-wish",
    };
    t.with(message, &[("name", &name), ("text", &text)])
}

/// For which kinds a key is.
fn for_kinds(t: Tongue, before: &Collection, name: &str, kinds: Option<&[KindId]>) -> String {
    let Some(kinds) = kinds else { return t.with("said-all-kinds", &[("name", &name)]) };
    let kinds: BTreeSet<KindId> = kinds.iter().copied().collect();
    let names: Vec<String> = kinds.into_iter().map(|kind| before.name(kind)).collect();
    t.with("said-wish", &[("name", &name), ("text", &names.join(", "))])
}

/// What a key never asks about.
fn never(t: Tongue, before: &Collection, name: &str, characters: &[CharacterId]) -> String {
    if characters.is_empty() {
        return t.with("said-wish-away", &[("name", &name)]);
    }
    let characters: BTreeSet<CharacterId> = characters.iter().copied().collect();
    let names: Vec<&str> = characters.into_iter().map(|id| before.character_name(id)).collect();
    t.with("said-wish-never", &[("name", &name), ("text", &names.join(", "))])
}

/// The thing that was done last and holds, in a sentence.
pub(crate) fn last_held(desk: &Desk, t: Tongue) -> Option<String> {
    let history = &desk.history;
    let held = history.holding.len();
    let mut said = None;
    history.told(held.saturating_sub(1), held, |line, before| {
        said = Some(done(t, before, &history.entries[line].done));
    });
    said
}

/// The thing that comes back first, in a sentence.
pub(crate) fn last_undone(desk: &Desk, t: Tongue) -> Option<String> {
    let history = &desk.history;
    let mut said = None;
    history.told_undone(1, |line, before| {
        said = Some(done(t, before, &history.entries[line].done));
    });
    said
}

/// So many milliseconds after something was taken back, a page still says what it was.
const JUST: i64 = 10_000;

/// What the last line of the journal took back or brought back; None: it did something else.
pub(crate) fn just_taken_back(desk: &Desk, asked: &Asked<'_>) -> Option<String> {
    let last = desk.history.entries.last()?;
    // Only on the page that the button leads to, and not in every window from then on.
    if asked.request.at.saturating_sub(last.at) > JUST {
        return None;
    }
    let (message, what) = match last.done {
        Done::Undo => ("done-just-undone", last_undone(desk, asked.tongue)?),
        Done::Redo => ("done-just-redone", last_held(desk, asked.tongue)?),
        Done::Edits(_) | Done::HoldFirst(_) | Done::Version(_) | Done::Unname(_) => {
            return None;
        }
    };
    Some(asked.tongue.with(message, &[("what", &what)]))
}
