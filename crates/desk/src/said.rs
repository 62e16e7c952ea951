//! What was done, in a person's words.
//!
//! From a line of the journal, and the collection it was done to, to a sentence.

use spinney_model::{
    CharacterField, CharacterId, Done, Edit, KeyId, KindField, KindId, Side, WishField,
};

use spinney_collection::Collection;
use spinney_voice::Tongue;

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
    let kinds = |edit: &Edit| matches!(edit, Edit::AddKind(..));
    let added = usize::from(kinds(first)) + rest.iter().filter(|edit| kinds(edit)).count();
    if added > 1 {
        return t.count("said-kinds", added);
    }
    let keys = [first].into_iter().chain(rest);
    let keys = keys.filter(|edit| matches!(edit, Edit::StartKey(..))).count();
    if keys > 1 {
        return t.count("said-keys", keys);
    }
    let sentence = one(t, before, first);
    t.count_with("said-and-more", rest.len(), &[("first", &sentence)])
}

fn one(t: Tongue, before: &Collection, edit: &Edit) -> String {
    let kind = |id: &KindId| before.name(*id);
    match edit {
        Edit::AddKind(id, name) if name.is_empty() => {
            t.with("said-add-nameless", &[("kind", &kind(id))])
        }
        Edit::AddKind(_, name) => t.with("said-add-kind", &[("kind", name)]),
        Edit::DescribeKind(id, KindField::Name, text) => {
            t.with("said-name-kind", &[("kind", &kind(id)), ("name", text)])
        }
        Edit::DescribeKind(id, _, text) => {
            t.with("said-describe", &[("what", &kind(id)), ("text", text)])
        }
        Edit::RemoveKind(id) => t.with("said-remove-kind", &[("kind", &kind(id))]),
        Edit::MergeKinds(kept, gone) => {
            t.with("said-merge", &[("kept", &kind(kept)), ("gone", &kind(gone))])
        }
        Edit::AddPicture(id, _) => t.with("said-picture", &[("kind", &kind(id))]),
        Edit::RemovePicture(id, _) => t.with("said-picture-away", &[("kind", &kind(id))]),
        _ => of_table(t, before, edit),
    }
}

fn of_table(t: Tongue, before: &Collection, edit: &Edit) -> String {
    match edit {
        Edit::AddCharacter(_, name) => t.with("said-add-character", &[("name", name)]),
        Edit::DescribeCharacter(id, CharacterField::Name, text) => {
            let old = before.character_name(*id);
            t.with("said-name-character", &[("old", &old), ("name", text)])
        }
        Edit::DescribeCharacter(id, _, text) => {
            let what = before.character_name(*id);
            t.with("said-describe", &[("what", &what), ("text", text)])
        }
        Edit::RemoveCharacter(id) => {
            t.with("said-remove-character", &[("name", &before.character_name(*id))])
        }
        Edit::SetCell { kind, character, source, text } => {
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
        Edit::RenameState { from, to, .. } => {
            t.with("said-rename-state", &[("from", from), ("to", to)])
        }
        Edit::DescribeScene(_, text) => t.with("said-scene", &[("text", text)]),
        _ => of_key(t, before, edit),
    }
}

fn of_key(t: Tongue, before: &Collection, edit: &Edit) -> String {
    let named = |id: &KeyId| before.keys.get(id).map_or(String::new(), |key| key.name.clone());
    match edit {
        Edit::StartKey(_, name) => t.with("said-start-key", &[("name", name)]),
        Edit::RenameKey(id, name) => {
            t.with("said-rename-key", &[("old", &named(id)), ("name", name)])
        }
        Edit::RemoveKey(id) => t.with("said-remove-key", &[("name", &named(id))]),
        Edit::Wish(id, field, text) => wish(t, before, &named(id), *field, text),
        Edit::Ask { key, words, .. } => {
            t.with("said-ask", &[("name", &named(key)), ("words", words)])
        }
        Edit::Reword { key, words, .. } => {
            t.with("said-reword", &[("name", &named(key)), ("words", words)])
        }
        Edit::TakeOut(id, at) => {
            let words = before.keys.get(id).and_then(|key| key.questions.get(at));
            let words = words.map_or(String::new(), |question| question.words.clone());
            t.with("said-take-out", &[("name", &named(id)), ("words", &words)])
        }
        Edit::Sort { kind, side, .. } => {
            let message = match side {
                Some(Side::Yes) => "said-sort-yes",
                Some(Side::No) => "said-sort-no",
                Some(Side::Both) => "said-sort-both",
                None => "said-sort-back",
            };
            t.with(message, &[("kind", &before.name(*kind))])
        }
        Edit::CallKind { key, kind, name } => {
            let who = before.keys.get(key).map_or(String::new(), |drawn| drawn.who(*key));
            let texts: [(&str, &dyn std::fmt::Display); 3] =
                [("who", &who), ("kind", &before.name(*kind)), ("name", name)];
            t.with(if name.is_empty() { "said-call-away" } else { "said-call" }, &texts)
        }
        Edit::BackTo(name) => t.with("said-back-to", &[("name", name)]),
        _ => t.say("said-nothing"),
    }
}

/// What a key is for, in words: numbers of kinds and columns are their names here.
fn wish(t: Tongue, before: &Collection, name: &str, field: WishField, text: &str) -> String {
    let message = match (field, text) {
        (WishField::Finish, "") => return t.with("said-unfinish", &[("name", &name)]),
        (WishField::Finish, _) => return t.with("said-finish", &[("name", &name)]),
        (WishField::Tried, "") => return t.with("said-not-tried", &[("name", &name)]),
        (WishField::Tried, _) => return t.with("said-tried", &[("name", &name)]),
        (WishField::Touch, "") => return t.with("said-no-touch", &[("name", &name)]),
        (WishField::Touch, _) => return t.with("said-touch", &[("name", &name)]),
        (WishField::Kinds, "") => return t.with("said-all-kinds", &[("name", &name)]),
        (_, "") => return t.with("said-wish-away", &[("name", &name)]),
        (WishField::Group, _) => "said-wish-group",
        (WishField::Never, _) => "said-wish-never",
        (WishField::Kinds | WishField::Hand | WishField::Season, _) => "said-wish",
    };
    let numbers = spinney_collection::layer::numbers(text).into_iter();
    let text: Vec<String> = match field {
        WishField::Kinds => numbers.map(|id| before.name(KindId(id))).collect(),
        WishField::Never => {
            let name = |id| before.character_name(CharacterId(id)).to_owned();
            numbers.map(name).collect()
        }
        WishField::Group
        | WishField::Hand
        | WishField::Season
        | WishField::Touch
        | WishField::Finish
        | WishField::Tried => vec![text.to_owned()],
    };
    t.with(message, &[("name", &name), ("text", &text.join(", "))])
}
