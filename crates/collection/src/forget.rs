//! Removing for good: a journal without a kind, a picture, or words.
//!
//! From the lines of a journal to the lines that it would have had if something had never been
//! there: in lines that hold, lines that were undone, and named versions alike. Undo keeps
//! everything, so this is the only way that something goes. It keeps no file.

use std::collections::{BTreeMap, BTreeSet};

use spinney_model::{AskedOf, Done, Edit, Entry, KindField, KindId, WishField};

use crate::layer::numbers;

/// What stands where words were struck out.
const STRUCK: &str = "…";

/// What goes.
#[derive(Clone, Debug, Default)]
pub struct Going {
    /// Kinds, with all that was ever said of them.
    pub kinds: BTreeSet<KindId>,
    /// Pictures, by the SHA-256 of their bytes.
    pub pictures: BTreeSet<String>,
    /// Words to strike out wherever else somebody typed them.
    pub words: BTreeSet<String>,
}

/// The lines of a journal without what goes.
///
/// **Guarantees**: what is not named in `going` stands as before, undone lines can still come
/// back, and versions hold what they held. A line that says nothing any more goes as well,
/// with its undoing, unless it is the reason that older lines cannot come back.
pub fn without(entries: &[Entry], going: &Going) -> Vec<Entry> {
    left(entries, going).into_iter().map(|(_, entry)| entry).collect()
}

/// The lines that are left, each with its place before.
fn left(entries: &[Entry], going: &Going) -> Vec<(usize, Entry)> {
    let (mut holding, mut undone) = (Vec::new(), Vec::new());
    let mut out = Vec::new();
    for (at, entry) in entries.iter().enumerate() {
        let done = match &entry.done {
            Done::Edits(edits) => {
                let rest: Vec<Edit> =
                    edits.iter().filter_map(|edit| kept(edit, going)).collect();
                let stands = !rest.is_empty()
                    || edits.is_empty()
                    || undone.iter().any(|(_, stands)| *stands);
                holding.push((at, stands));
                undone.clear();
                stands.then_some(Done::Edits(rest))
            }
            Done::Undo => moved(&mut holding, &mut undone).then_some(Done::Undo),
            Done::Redo => moved(&mut undone, &mut holding).then_some(Done::Redo),
            Done::HoldFirst(lines) => Some(hold_first(*lines, &mut holding, &mut undone)),
            // Names of states keep their numbers: none of their lines goes.
            Done::Version(name) => Some(Done::Version(struck(name, going))),
            Done::Unname(version) => Some(Done::Unname(*version)),
        };
        out.extend(done.map(|done| (at, Entry { at: entry.at, done })));
    }
    out
}

/// Moves the last line from one pile to the other; whether that line stands.
fn moved(from: &mut Vec<(usize, bool)>, to: &mut Vec<(usize, bool)>) -> bool {
    let Some(last) = from.pop() else { return false };
    to.push(last);
    last.1
}

/// As the history does; counted without the lines that went.
fn hold_first(
    lines: u64,
    holding: &mut Vec<(usize, bool)>,
    undone: &mut Vec<(usize, bool)>,
) -> Done {
    holding.extend(undone.drain(..).rev());
    let lines = usize::try_from(lines).unwrap_or(usize::MAX).min(holding.len());
    *undone = holding.split_off(lines);
    undone.reverse();
    Done::HoldFirst(holding.iter().filter(|(_, stands)| *stands).count() as u64)
}

/// An edit without what goes; None: nothing is left of it.
fn kept(edit: &Edit, going: &Going) -> Option<Edit> {
    let gone = |kind: &KindId| going.kinds.contains(kind);
    match edit {
        Edit::AddKind(kind, _)
        | Edit::DescribeKind(kind, ..)
        | Edit::RemoveKind(kind)
        | Edit::SetCell { kind, .. }
        | Edit::Sort { kind, .. }
        | Edit::CallKind { kind, .. }
            if gone(kind) =>
        {
            None
        }
        Edit::MergeKinds(one, other) if gone(one) || gone(other) => None,
        Edit::AddPicture(kind, picture) | Edit::RemovePicture(kind, picture)
            if gone(kind) || going.pictures.contains(picture) =>
        {
            None
        }
        Edit::Wish(key, WishField::Kinds, text) => {
            let text = kinds_left(text, going);
            Some(Edit::Wish(*key, WishField::Kinds, text))
        }
        // The name of a kind that stays is its own, though another's word stands in it.
        Edit::AddKind(..) | Edit::DescribeKind(_, KindField::Name, _) => Some(edit.clone()),
        _ => {
            let mut edit = edit.clone();
            texts(&mut edit).into_iter().for_each(|text| *text = struck(text, going));
            Some(edit)
        }
    }
}

/// The numbers of the kinds that stay. 0 is nobody's number: a key for nobody, where an empty
/// text would mean a key for all.
fn kinds_left(text: &str, going: &Going) -> String {
    let all = numbers(text);
    let left = all.iter().filter(|kind| !going.kinds.contains(&KindId(**kind)));
    let left: Vec<String> = left.map(u32::to_string).collect();
    match left.len() {
        same if same == all.len() => text.to_owned(),
        0 => "0".to_owned(),
        _ => left.join(" "),
    }
}

/// Every text of an edit that a person may have typed.
fn texts(edit: &mut Edit) -> Vec<&mut String> {
    match edit {
        Edit::AddKind(_, text)
        | Edit::DescribeKind(_, _, text)
        | Edit::AddCharacter(_, text)
        | Edit::DescribeCharacter(_, _, text)
        | Edit::DescribeScene(_, text)
        | Edit::StartKey(_, text)
        | Edit::RenameKey(_, text)
        | Edit::BackTo(text)
        | Edit::Wish(_, WishField::Group, text)
        | Edit::CallKind { name: text, .. }
        | Edit::Reword { words: text, .. } => vec![text],
        Edit::SetCell { source, text, .. } => vec![source, text],
        Edit::RenameState { from, to, .. } => vec![from, to],
        Edit::Ask { words, ask, .. } => {
            let states = ask.iter_mut().flat_map(|ask| match &mut ask.yes {
                AskedOf::States(states) => states.iter_mut().collect(),
                AskedOf::AtLeast(_) | AskedOf::Below(_) => Vec::new(),
            });
            std::iter::once(words).chain(states).collect()
        }
        _ => Vec::new(),
    }
}

/// A text with the words struck out, large letters or small.
fn struck(text: &str, going: &Going) -> String {
    going.words.iter().fold(text.to_owned(), |text, word| strike(&text, word))
}

fn strike(text: &str, word: &str) -> String {
    let small = |sign: char| sign.to_lowercase().collect::<String>();
    let word: Vec<String> = word.chars().map(small).collect();
    let signs: Vec<char> = text.chars().collect();
    let mut out = String::new();
    let mut at = 0;
    while at < signs.len() {
        let rest = signs[at..].iter().map(|sign| small(*sign));
        let here = !word.is_empty()
            && signs.len() - at >= word.len()
            && rest.zip(&word).all(|(one, other)| one == *other)
            && !signs[..at].last().is_some_and(|before| before.is_alphanumeric());
        match here.then(|| word_end(&signs, at + word.len())).flatten() {
            Some(end) => {
                out.push_str(STRUCK);
                at = end;
            }
            None => {
                out.push(signs[at]);
                at += 1;
            }
        }
    }
    out
}

/// Where a word ends that may stand for several; None: it goes on as another word. "Elder" says
/// nothing of the guelder rose, nor of what is elderly.
fn word_end(signs: &[char], at: usize) -> Option<usize> {
    let ends = |at: usize| signs.get(at).is_none_or(|sign| !sign.is_alphanumeric());
    let more: [&[char]; 3] = [&[], &['s'], &['e', 's']];
    let more =
        more.into_iter().find(|more| signs[at..].starts_with(more) && ends(at + more.len()));
    more.map(|more| at + more.len())
}

/// A kind with all that turned out to be the same, in lines that hold.
pub fn with_merged(entries: &[Entry], kind: KindId) -> BTreeSet<KindId> {
    let mut kinds = BTreeSet::from([kind]);
    loop {
        let merged = edits(entries).filter_map(|edit| match edit {
            Edit::MergeKinds(kept, gone) if kinds.contains(kept) => Some(*gone),
            _ => None,
        });
        let before = kinds.len();
        let merged: Vec<KindId> = merged.collect();
        kinds.extend(merged);
        if kinds.len() == before {
            return kinds;
        }
    }
}

/// Every kind that ever was there.
pub fn kinds(entries: &[Entry]) -> BTreeSet<KindId> {
    let kind = |edit: &Edit| match edit {
        Edit::AddKind(kind, _) => Some(*kind),
        _ => None,
    };
    edits(entries).filter_map(kind).collect()
}

/// All names that these kinds ever had, those of groups among them.
pub fn names(entries: &[Entry], kinds: &BTreeSet<KindId>) -> BTreeSet<String> {
    let name = |edit: &Edit| match edit {
        Edit::AddKind(kind, name)
        | Edit::DescribeKind(kind, KindField::Name, name)
        | Edit::CallKind { kind, name, .. }
            if kinds.contains(kind) && !name.is_empty() =>
        {
            Some(name.clone())
        }
        _ => None,
    };
    edits(entries).filter_map(name).collect()
}

/// The lines in which somebody typed one of these words.
pub fn mentions<'e>(
    entries: &'e [Entry],
    words: &BTreeSet<String>,
) -> impl Iterator<Item = &'e Entry> {
    let going = Going { words: words.clone(), ..Going::default() };
    entries.iter().filter(move |entry| match &entry.done {
        Done::Edits(edits) => {
            edits.iter().any(|edit| kept(edit, &going).as_ref() != Some(edit))
        }
        Done::Version(name) => struck(name, &going) != *name,
        Done::Undo | Done::Redo | Done::HoldFirst(_) | Done::Unname(_) => false,
    })
}

/// Every picture of a journal, with the kinds it was ever of.
pub fn pictures(entries: &[Entry]) -> BTreeMap<String, BTreeSet<KindId>> {
    let mut pictures: BTreeMap<String, BTreeSet<KindId>> = BTreeMap::new();
    for edit in edits(entries) {
        if let Edit::AddPicture(kind, picture) = edit {
            pictures.entry(picture.clone()).or_default().insert(*kind);
        }
    }
    pictures
}

fn edits(entries: &[Entry]) -> impl Iterator<Item = &Edit> {
    entries.iter().flat_map(|entry| match &entry.done {
        Done::Edits(edits) => edits.as_slice(),
        Done::Undo | Done::Redo | Done::HoldFirst(_) | Done::Version(_) | Done::Unname(_) => {
            &[]
        }
    })
}

#[cfg(test)]
mod tests;
