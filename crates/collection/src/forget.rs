//! Removing for good: a journal without a kind, a picture, or words.
//!
//! From the lines of a journal to the lines that it would have had if something had never been
//! there: in lines that hold, lines that were undone, and named versions alike. Undo keeps
//! everything, so this is the only way that something goes. It keeps no file.

#![deny(clippy::wildcard_enum_match_arm)]

use std::collections::{BTreeMap, BTreeSet};

use spinney_model::{
    AskOf, AskedOf, CharacterEdit, Done, Edit, Entry, KeyEdit, KindEdit, KindField, KindId,
    SpecimenEdit, SpecimenId, WishField,
};

use crate::Collection;
use crate::history::History;

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
    let of = specimens(entries);
    let (mut holding, mut undone) = (Vec::new(), Vec::new());
    let mut out = Vec::new();
    for (at, entry) in entries.iter().enumerate() {
        let done = match &entry.done {
            Done::Edits(edits) => {
                let rest: Vec<Edit> =
                    edits.iter().filter_map(|edit| kept(edit, going, &of)).collect();
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

impl Going {
    /// A kind that stays; None: it goes.
    fn kind(&self, kind: KindId) -> Option<KindId> {
        (!self.kinds.contains(&kind)).then_some(kind)
    }

    /// A picture that stays; None: it goes.
    fn picture(&self, picture: &str) -> Option<String> {
        (!self.pictures.contains(picture)).then(|| picture.to_owned())
    }

    /// A text without the words that go.
    fn left_of(&self, text: &str) -> String {
        struck(text, self)
    }
}

/// An edit without what goes; None: nothing is left of it. Each is put together again from all
/// that it holds, so that no text of a new one can be overlooked.
fn kept(edit: &Edit, going: &Going, of: &InTheEnd) -> Option<Edit> {
    Some(match edit {
        Edit::Specimen(id, edit) => {
            Edit::Specimen(*id, kept_of_specimen(*id, edit, going, of)?)
        }
        Edit::Kind(kind, edit) => Edit::Kind(going.kind(*kind)?, kept_of_kind(edit, going)?),
        Edit::Character(character, edit) => {
            Edit::Character(*character, kept_of_character(edit, going))
        }
        Edit::Cell { kind, character, source, text } => Edit::Cell {
            kind: going.kind(*kind)?,
            character: *character,
            source: going.left_of(source),
            text: going.left_of(text),
        },
        Edit::Scene(field, text) => Edit::Scene(*field, going.left_of(text)),
        Edit::Key(key, edit) => Edit::Key(*key, kept_of_key(edit, going)?),
        Edit::BackTo(name) => Edit::BackTo(going.left_of(name)),
    })
}

fn kept_of_kind(edit: &KindEdit, going: &Going) -> Option<KindEdit> {
    Some(match edit {
        // The name of a kind that stays is its own, though another's word stands in it.
        KindEdit::Add(name) => KindEdit::Add(name.clone()),
        KindEdit::Describe(KindField::Name, name) => {
            KindEdit::Describe(KindField::Name, name.clone())
        }
        KindEdit::Describe(field, text) => KindEdit::Describe(*field, going.left_of(text)),
        KindEdit::Remove => KindEdit::Remove,
        KindEdit::Merge(other) => KindEdit::Merge(going.kind(*other)?),
        KindEdit::AddPicture(picture) => KindEdit::AddPicture(going.picture(picture)?),
        KindEdit::RemovePicture(picture) => KindEdit::RemovePicture(going.picture(picture)?),
        KindEdit::Draw(drawing) => KindEdit::Draw(drawing.clone()),
    })
}

/// Which kind each specimen is.
type OfSpecimens = BTreeMap<SpecimenId, KindId>;
/// Which kind each specimen is in the end; all that it ever was, where nobody can see it again.
type InTheEnd = BTreeMap<SpecimenId, BTreeSet<KindId>>;

/// Of each specimen the kind that it is now; of one that is not there now, the last that it was
/// in lines that hold, else in lines that can come back, else in a named version.
fn specimens(entries: &[Entry]) -> InTheEnd {
    let said = edits(entries).filter_map(|edit| match edit {
        Edit::Specimen(id, edit) => Some((*id, of_kind(edit)?)),
        Edit::Kind(..)
        | Edit::Character(..)
        | Edit::Cell { .. }
        | Edit::Scene(..)
        | Edit::Key(..)
        | Edit::BackTo(_) => None,
    });
    let mut all = InTheEnd::new();
    said.for_each(|(id, kind)| _ = all.entry(id).or_default().insert(kind));
    let mut history = History::default();
    if !all.is_empty() {
        history.add_all(entries.iter().cloned());
    }
    let mut of = kinds_of(&history.now);
    let missing = |of: &OfSpecimens| all.keys().any(|id| !of.contains_key(id));
    if missing(&of) {
        let mut state = Collection::default();
        let again = history.undone.iter().rev();
        for lines in [history.holding.iter().collect::<Vec<_>>(), again.collect()] {
            let lines = lines.into_iter().map(|line| &entries[*line]);
            add(&mut of, gone_from(&mut state, lines));
            add(&mut of, kinds_of(&state));
        }
    }
    for (version, _) in history.versions().rev() {
        if !missing(&of) {
            break;
        }
        add(&mut of, history.version(version).as_ref().map(kinds_of).unwrap_or_default());
    }
    all.extend(of.into_iter().map(|(id, kind)| (id, BTreeSet::from([kind]))));
    all
}

fn kinds_of(state: &Collection) -> OfSpecimens {
    state.specimens.iter().map(|(id, one)| (*id, one.kind)).collect()
}

/// What is known goes before what is added.
fn add(of: &mut OfSpecimens, more: OfSpecimens) {
    for (id, kind) in more {
        of.entry(id).or_insert(kind);
    }
}

/// The kinds of the specimens that leave a state while these lines are done, as they leave it.
fn gone_from<'e>(
    state: &mut Collection,
    lines: impl Iterator<Item = &'e Entry>,
) -> OfSpecimens {
    let mut gone = OfSpecimens::new();
    for edit in lines.flat_map(|entry| edits(std::slice::from_ref(entry))) {
        match edit {
            Edit::Specimen(id, SpecimenEdit::Remove) => {
                gone.extend(state.specimens.get(id).map(|one| (*id, one.kind)));
            }
            Edit::Kind(kind, KindEdit::Remove) => {
                gone.extend(kinds_of(state).into_iter().filter(|(_, of)| of == kind));
            }
            Edit::Kind(..)
            | Edit::Specimen(..)
            | Edit::Character(..)
            | Edit::Cell { .. }
            | Edit::Scene(..)
            | Edit::Key(..)
            | Edit::BackTo(_) => {}
        }
        state.apply(edit);
    }
    gone
}

/// The kind that an edit says a specimen is of.
fn of_kind(edit: &SpecimenEdit) -> Option<KindId> {
    match edit {
        SpecimenEdit::Add(kind) | SpecimenEdit::OfKind(kind) => Some(*kind),
        SpecimenEdit::Describe(..)
        | SpecimenEdit::Picture(_)
        | SpecimenEdit::Measure { .. }
        | SpecimenEdit::Judge { .. }
        | SpecimenEdit::Remove => None,
    }
}

/// How many single specimens go.
pub fn specimens_going(entries: &[Entry], going: &Going) -> usize {
    specimens(entries).values().filter(|of| !of.is_disjoint(&going.kinds)).count()
}

/// A specimen goes with the kind that it is in the end; that it was once taken for one that goes
/// is not said any more.
fn kept_of_specimen(
    id: SpecimenId,
    edit: &SpecimenEdit,
    going: &Going,
    of: &InTheEnd,
) -> Option<SpecimenEdit> {
    let kinds = of.get(&id)?;
    let now = *kinds.first().filter(|_| kinds.is_disjoint(&going.kinds))?;
    Some(match edit {
        SpecimenEdit::Add(kind) => SpecimenEdit::Add(going.kind(*kind).unwrap_or(now)),
        SpecimenEdit::OfKind(kind) => SpecimenEdit::OfKind(going.kind(*kind)?),
        SpecimenEdit::Describe(field, text) => {
            SpecimenEdit::Describe(*field, going.left_of(text))
        }
        SpecimenEdit::Picture(picture) => {
            SpecimenEdit::Picture(going.picture(picture).unwrap_or_default())
        }
        SpecimenEdit::Measure { character, text, plus_minus } => SpecimenEdit::Measure {
            character: *character,
            text: going.left_of(text),
            plus_minus: going.left_of(plus_minus),
        },
        SpecimenEdit::Judge { character, judged } => {
            SpecimenEdit::Judge { character: *character, judged: *judged }
        }
        SpecimenEdit::Remove => SpecimenEdit::Remove,
    })
}

fn kept_of_character(edit: &CharacterEdit, going: &Going) -> CharacterEdit {
    match edit {
        CharacterEdit::Add(name) => CharacterEdit::Add(going.left_of(name)),
        CharacterEdit::Describe(field, text) => {
            CharacterEdit::Describe(*field, going.left_of(text))
        }
        CharacterEdit::Remove => CharacterEdit::Remove,
        CharacterEdit::RenameState { from, to } => {
            CharacterEdit::RenameState { from: going.left_of(from), to: going.left_of(to) }
        }
    }
}

fn kept_of_key(edit: &KeyEdit, going: &Going) -> Option<KeyEdit> {
    Some(match edit {
        KeyEdit::Start(name) => KeyEdit::Start(going.left_of(name)),
        KeyEdit::Rename(name) => KeyEdit::Rename(going.left_of(name)),
        KeyEdit::Remove => KeyEdit::Remove,
        KeyEdit::Wish(wish, text) => {
            let text = match wish {
                WishField::Group => going.left_of(text),
                // Words of ours.
                WishField::Hand
                | WishField::Season
                | WishField::Touch
                | WishField::Finish
                | WishField::Tried => text.clone(),
            };
            KeyEdit::Wish(*wish, text)
        }
        KeyEdit::ForKinds(kinds) => KeyEdit::ForKinds(kinds_left(kinds.as_deref(), going)),
        KeyEdit::Never(characters) => KeyEdit::Never(characters.clone()),
        KeyEdit::Ask { at, words, ask } => KeyEdit::Ask {
            at: at.clone(),
            words: going.left_of(words),
            ask: ask.as_ref().map(|ask| kept_of_ask(ask, going)),
        },
        KeyEdit::Reword { at, words } => {
            KeyEdit::Reword { at: at.clone(), words: going.left_of(words) }
        }
        KeyEdit::TakeOut(at) => KeyEdit::TakeOut(at.clone()),
        KeyEdit::Sort { at, kind, side } => {
            KeyEdit::Sort { at: at.clone(), kind: going.kind(*kind)?, side: *side }
        }
        KeyEdit::Call { kind, name } => {
            KeyEdit::Call { kind: going.kind(*kind)?, name: going.left_of(name) }
        }
    })
}

fn kept_of_ask(ask: &AskOf, going: &Going) -> AskOf {
    let yes = match &ask.yes {
        AskedOf::States(states) => {
            AskedOf::States(states.iter().map(|state| going.left_of(state)).collect())
        }
        AskedOf::AtLeast(least) => AskedOf::AtLeast(*least),
        AskedOf::Below(least) => AskedOf::Below(*least),
    };
    AskOf { character: ask.character, yes }
}

/// The kinds that stay. A key whose kinds all go is for nobody, and not for all.
fn kinds_left(kinds: Option<&[KindId]>, going: &Going) -> Option<Vec<KindId>> {
    Some(kinds?.iter().filter_map(|kind| going.kind(*kind)).collect())
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
        let merged = edits_of_kinds(entries).filter_map(|(kept, edit)| match edit {
            KindEdit::Merge(gone) if kinds.contains(&kept) => Some(*gone),
            KindEdit::Merge(_)
            | KindEdit::Add(_)
            | KindEdit::Describe(..)
            | KindEdit::Remove
            | KindEdit::AddPicture(_)
            | KindEdit::RemovePicture(_)
            | KindEdit::Draw(_) => None,
        });
        let before = kinds.len();
        let merged: Vec<KindId> = merged.collect();
        kinds.extend(merged);
        if kinds.len() == before {
            return kinds;
        }
    }
}

/// A kind, all that turned out to be the same, and the pictures of nobody else.
pub fn going_with(history: &History, kind: KindId) -> Going {
    let holding = history.holding.iter().map(|line| history.entries[*line].clone());
    let kinds = with_merged(&holding.collect::<Vec<Entry>>(), kind);
    let pictures = pictures(&history.entries).into_iter();
    let pictures = pictures.filter(|(_, of)| of.is_subset(&kinds)).map(|(hash, _)| hash);
    Going { pictures: pictures.collect(), kinds, words: BTreeSet::new() }
}

/// Every kind that ever was there.
pub fn kinds(entries: &[Entry]) -> BTreeSet<KindId> {
    edits_of_kinds(entries)
        .filter_map(|(kind, edit)| match edit {
            KindEdit::Add(_) => Some(kind),
            KindEdit::Describe(..)
            | KindEdit::Remove
            | KindEdit::Merge(_)
            | KindEdit::AddPicture(_)
            | KindEdit::RemovePicture(_)
            | KindEdit::Draw(_) => None,
        })
        .collect()
}

/// All names that these kinds ever had, those of groups among them.
pub fn names(entries: &[Entry], kinds: &BTreeSet<KindId>) -> BTreeSet<String> {
    edits(entries)
        .filter_map(named)
        .filter(|(kind, name)| kinds.contains(kind) && !name.is_empty())
        .map(|(_, name)| name.to_owned())
        .collect()
}

/// The kind that an edit gives a name, and the name; None: it names no kind.
fn named(edit: &Edit) -> Option<(KindId, &str)> {
    match edit {
        Edit::Kind(kind, edit) => match edit {
            KindEdit::Add(name) | KindEdit::Describe(KindField::Name, name) => {
                Some((*kind, name))
            }
            KindEdit::Describe(..)
            | KindEdit::Remove
            | KindEdit::Merge(_)
            | KindEdit::AddPicture(_)
            | KindEdit::RemovePicture(_)
            | KindEdit::Draw(_) => None,
        },
        Edit::Key(_, edit) => match edit {
            KeyEdit::Call { kind, name } => Some((*kind, name)),
            KeyEdit::Start(_)
            | KeyEdit::Rename(_)
            | KeyEdit::Remove
            | KeyEdit::Wish(..)
            | KeyEdit::ForKinds(_)
            | KeyEdit::Never(_)
            | KeyEdit::Ask { .. }
            | KeyEdit::Reword { .. }
            | KeyEdit::TakeOut(_)
            | KeyEdit::Sort { .. } => None,
        },
        Edit::Character(..)
        | Edit::Cell { .. }
        | Edit::Specimen(..)
        | Edit::Scene(..)
        | Edit::BackTo(_) => None,
    }
}

/// The lines in which somebody typed one of these words.
pub fn mentions<'e>(
    entries: &'e [Entry],
    words: &BTreeSet<String>,
) -> impl Iterator<Item = &'e Entry> {
    let going = Going { words: words.clone(), ..Going::default() };
    let of = specimens(entries);
    entries.iter().filter(move |entry| match &entry.done {
        Done::Edits(edits) => {
            edits.iter().any(|edit| kept(edit, &going, &of).as_ref() != Some(edit))
        }
        Done::Version(name) => struck(name, &going) != *name,
        Done::Undo | Done::Redo | Done::HoldFirst(_) | Done::Unname(_) => false,
    })
}

/// Every picture of a journal, with the kinds it was ever of.
pub fn pictures(entries: &[Entry]) -> BTreeMap<String, BTreeSet<KindId>> {
    let mut pictures: BTreeMap<String, BTreeSet<KindId>> = BTreeMap::new();
    for (kind, edit) in edits_of_kinds(entries) {
        match edit {
            KindEdit::AddPicture(picture) => {
                pictures.entry(picture.clone()).or_default().insert(kind);
            }
            KindEdit::RemovePicture(_)
            | KindEdit::Add(_)
            | KindEdit::Describe(..)
            | KindEdit::Remove
            | KindEdit::Merge(_)
            | KindEdit::Draw(_) => {}
        }
    }
    of_specimens(entries, &mut pictures);
    pictures
}

/// The pictures of specimens, each with the kinds that it was ever of.
fn of_specimens(entries: &[Entry], pictures: &mut BTreeMap<String, BTreeSet<KindId>>) {
    let mut kinds = BTreeMap::<SpecimenId, BTreeSet<KindId>>::new();
    let mut shown = BTreeMap::<SpecimenId, BTreeSet<&String>>::new();
    for edit in edits(entries) {
        let Edit::Specimen(id, edit) = edit else { continue };
        kinds.entry(*id).or_default().extend(of_kind(edit));
        if let SpecimenEdit::Picture(picture) = edit
            && !picture.is_empty()
        {
            shown.entry(*id).or_default().insert(picture);
        }
    }
    for (id, pictures_of) in shown {
        for picture in pictures_of {
            let of = pictures.entry(picture.clone()).or_default();
            of.extend(kinds.get(&id).into_iter().flatten());
        }
    }
}

fn edits_of_kinds(entries: &[Entry]) -> impl Iterator<Item = (KindId, &KindEdit)> {
    edits(entries).filter_map(|edit| match edit {
        Edit::Kind(kind, edit) => Some((*kind, edit)),
        Edit::Character(..)
        | Edit::Cell { .. }
        | Edit::Specimen(..)
        | Edit::Scene(..)
        | Edit::Key(..)
        | Edit::BackTo(_) => None,
    })
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
