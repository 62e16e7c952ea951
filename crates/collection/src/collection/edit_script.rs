//! From one state of a collection to another: the edits between them.
//!
//! To go back to a named state is to do these edits; so it can itself be undone, and nothing
//! that was done in between is lost from the journal.

use std::collections::BTreeMap;

use spinney_model::{
    CharacterEdit, CharacterField, Edit, KeyEdit, KeyId, KindEdit, KindField, KindId,
};

use super::{Collection, Drawn, Kind, specimen};

/// The edits that make the second collection out of the first.
pub fn edit_script(from: &Collection, to: &Collection) -> Vec<Edit> {
    let mut edits = Vec::new();
    // Taken apart, so that nothing that a collection will hold is forgotten on the way back.
    let Collection {
        kinds: _,
        characters: _,
        cells: _,
        specimens: _,
        about: _,
        keys: _,
        last: _,
    } = to;
    kinds(from, to, &mut edits);
    characters(from, to, &mut edits);
    cells(from, to, &mut edits);
    specimen::edit_script(from, to, &mut edits);
    for (field, text) in changed(&from.about, &to.about) {
        edits.push(Edit::Scene(field, text));
    }
    keys(from, to, &mut edits);
    edits
}

/// What has to be written so that the first fields become the second.
fn changed<K: Ord + Copy>(
    from: &BTreeMap<K, String>,
    to: &BTreeMap<K, String>,
) -> Vec<(K, String)> {
    let gone = from.keys().filter(|field| !to.contains_key(field));
    let gone = gone.map(|field| (*field, String::new()));
    let new = to.iter().filter(|(field, text)| from.get(field) != Some(text));
    gone.chain(new.map(|(field, text)| (*field, text.clone()))).collect()
}

fn kinds(from: &Collection, to: &Collection, edits: &mut Vec<Edit>) {
    let gone = from.kinds.keys().filter(|id| !to.kinds.contains_key(id));
    edits.extend(gone.map(|id| Edit::Kind(*id, KindEdit::Remove)));
    for (&id, kind) in &to.kinds {
        let old = from.kinds.get(&id).cloned().unwrap_or_else(|| {
            let name = kind.field(KindField::Name).to_owned();
            edits.push(Edit::Kind(id, KindEdit::Add(name.clone())));
            let mut new = Kind::default();
            super::write(&mut new.fields, KindField::Name, &name);
            new
        });
        let Kind { fields, pictures, drawing } = kind;
        for (field, text) in changed(&old.fields, fields) {
            edits.push(Edit::Kind(id, KindEdit::Describe(field, text)));
        }
        if old.pictures != *pictures {
            let away = old
                .pictures
                .into_iter()
                .map(|hash| Edit::Kind(id, KindEdit::RemovePicture(hash)));
            edits.extend(away);
            let there =
                pictures.iter().map(|hash| Edit::Kind(id, KindEdit::AddPicture(hash.clone())));
            edits.extend(there);
        }
        if old.drawing != *drawing {
            edits.push(Edit::Kind(id, KindEdit::Draw(drawing.clone())));
        }
    }
}

fn characters(from: &Collection, to: &Collection, edits: &mut Vec<Edit>) {
    let gone = from.characters.keys().filter(|id| !to.characters.contains_key(id));
    edits.extend(gone.map(|id| Edit::Character(*id, CharacterEdit::Remove)));
    for (&id, fields) in &to.characters {
        let old = from.characters.get(&id).cloned().unwrap_or_else(|| {
            let name = to.character_name(id).to_owned();
            edits.push(Edit::Character(id, CharacterEdit::Add(name.clone())));
            BTreeMap::from([(CharacterField::Name, name)])
        });
        for (field, text) in changed(&old, fields) {
            edits.push(Edit::Character(id, CharacterEdit::Describe(field, text)));
        }
    }
}

fn cells(from: &Collection, to: &Collection, edits: &mut Vec<Edit>) {
    let mut there = from.cells.clone();
    there.keep(|kind, character| {
        to.kinds.contains_key(&kind) && to.characters.contains_key(&character)
    });
    for ((kind, character), source) in there.all().chain(to.cells.all()) {
        let text = to.cells.said(kind, character, source);
        if there.said(kind, character, source) != text {
            let (source, text) = (source.to_owned(), text.to_owned());
            edits.push(Edit::Cell { kind, character, source, text });
        }
    }
}

fn keys(from: &Collection, to: &Collection, edits: &mut Vec<Edit>) {
    let gone = from.keys.keys().filter(|id| !to.keys.contains_key(id));
    edits.extend(gone.map(|id| Edit::Key(*id, KeyEdit::Remove)));
    // The kinds that left took their places at the questions along.
    let stays = |kind: &KindId| to.kinds.contains_key(kind);
    for (&id, key) in &to.keys {
        let old = from.keys.get(&id).cloned().unwrap_or_else(|| {
            edits.push(Edit::Key(id, KeyEdit::Start(key.name.clone())));
            Drawn { name: key.name.clone(), ..Drawn::default() }
        });
        let Drawn { name, wishes, kinds, never, questions: _, called } = key;
        if old.name != *name {
            edits.push(Edit::Key(id, KeyEdit::Rename(name.clone())));
        }
        for (wish, text) in changed(&old.wishes, wishes) {
            edits.push(Edit::Key(id, KeyEdit::Wish(wish, text)));
        }
        if old.kinds != *kinds {
            edits.push(Edit::Key(id, KeyEdit::ForKinds(kinds.clone())));
        }
        if old.never != *never {
            edits.push(Edit::Key(id, KeyEdit::Never(never.clone())));
        }
        let mut before = old.called.clone();
        before.retain(|kind, _| stays(kind));
        for (kind, name) in changed(&before, called) {
            edits.push(Edit::Key(id, KeyEdit::Call { kind, name }));
        }
        questions(id, old, key, stays, edits);
    }
}

fn questions(
    id: KeyId,
    mut old: Drawn,
    key: &Drawn,
    stays: impl Fn(&KindId) -> bool,
    edits: &mut Vec<Edit>,
) {
    for question in old.questions.values_mut() {
        question.sorted.retain(|kind, _| stays(kind));
    }
    // Places are in the order of the alphabet of answers, so a question stands before all that
    // lie below it. What changes is asked anew, which gives up what lies below.
    let extra: Vec<_> =
        old.questions.keys().filter(|at| !key.questions.contains_key(at)).cloned().collect();
    for at in extra {
        if old.questions.contains_key(&at) {
            old.take_out(&at);
            edits.push(Edit::Key(id, KeyEdit::TakeOut(at)));
        }
    }
    for (at, question) in &key.questions {
        if old.questions.get(at) == Some(question) {
            continue;
        }
        // Asking in the same words would keep what was sorted there.
        if old.questions.contains_key(at) {
            old.take_out(at);
            edits.push(Edit::Key(id, KeyEdit::TakeOut(at.clone())));
        }
        edits.push(Edit::Key(
            id,
            KeyEdit::Ask {
                at: at.clone(),
                words: question.words.clone(),
                ask: question.ask.clone(),
            },
        ));
        for (&kind, &side) in &question.sorted {
            edits.push(Edit::Key(id, KeyEdit::Sort { at: at.clone(), kind, side: Some(side) }));
        }
    }
}

#[cfg(test)]
mod tests;
