//! The words of a table, ready to be met by the words of a question.
//!
//! From a matrix to each character's name, wording and states as words, and to which keys
//! belong to which characters. Nothing here looks at a question.

use std::collections::{BTreeMap, BTreeSet};

use spinney_model::{CharacterIx, Matrix, Scale, StateIx};

use super::words::{Lexicon, Role, Word, plain};

/// Words of a name that say only what sort of thing it is.
const DIMENSIONS: [&str; 5] = ["length", "width", "height", "weight", "thickness"];

/// One character in words.
pub(super) struct Column {
    /// The words of the name that say something.
    pub(super) name: Vec<Word>,
    /// For each state its words.
    pub(super) states: Vec<Vec<Word>>,
    /// For each state all its words as plain stems, small ones too.
    pub(super) spelt: Vec<Vec<String>>,
    /// Every key of the name and wording, without the states.
    about: BTreeSet<String>,
    /// Every key of name, wording and states.
    pub(super) keys: BTreeSet<String>,
    /// The states that mean yes and no, where they are just that.
    pub(super) yes_no: Option<(StateIx, StateIx)>,
}

/// A table in words.
pub(super) struct Vocabulary {
    pub(super) lexicon: Lexicon,
    pub(super) columns: Vec<Column>,
    /// Which characters know a key by name or state.
    pub(super) homes: BTreeMap<String, BTreeSet<CharacterIx>>,
    /// The states' own words, of all characters.
    pub(super) states: BTreeSet<String>,
    /// Words that most questions hold, and those of the title: they tell nothing apart.
    pub(super) common: BTreeSet<String>,
}

impl Vocabulary {
    pub(super) fn of(matrix: &Matrix) -> Self {
        let lexicon = Lexicon::new();
        let columns: Vec<Column> = matrix
            .characters()
            .iter()
            .map(|character| {
                let states = match &character.scale {
                    Scale::Words { states } => states.as_slice(),
                    Scale::Counts | Scale::Measure { .. } => &[],
                };
                Column::of(&lexicon, &character.name, states, character.question.as_deref())
            })
            .collect();
        let mut homes: BTreeMap<String, BTreeSet<CharacterIx>> = BTreeMap::new();
        for (ix, column) in columns.iter().enumerate() {
            for word in column.name.iter().chain(column.states.iter().flatten()) {
                for (key, _) in &word.keys {
                    homes.entry(key.clone()).or_default().insert(CharacterIx(ix));
                }
            }
        }
        let words = columns.iter().flat_map(|column| column.states.iter().flatten());
        let states = words.filter_map(|word| word.keys.first()).map(|k| k.0.clone()).collect();
        let common = common(matrix, &lexicon);
        Self { states, lexicon, columns, homes, common }
    }

    /// Whether a character's own name, wording or states know a word, or the names of those
    /// that it governs or that govern it. What those can be is another question.
    pub(super) fn explains(
        &self,
        matrix: &Matrix,
        character: CharacterIx,
        word: &Word,
    ) -> bool {
        let knows =
            |keys: &BTreeSet<String>| word.keys.iter().any(|(key, _)| keys.contains(key));
        if knows(&self.columns[character.0].keys) {
            return true;
        }
        let mut family = matrix
            .character_indices()
            .filter(|other| {
                governs(matrix, character, *other) || governs(matrix, *other, character)
            })
            .map(|ix| &self.columns[ix.0]);
        family.any(|column| knows(&column.about) && !column.state_knows(word))
    }
}

/// Whether one character says when the other applies.
pub(super) fn governs(matrix: &Matrix, above: CharacterIx, below: CharacterIx) -> bool {
    let governor = matrix.character(below).governor.as_ref();
    governor.is_some_and(|governor| governor.character == above)
}

impl Column {
    fn of(lexicon: &Lexicon, name: &str, states: &[String], question: Option<&str>) -> Self {
        let states_words: Vec<Vec<Word>> =
            states.iter().map(|state| telling(lexicon.words(state))).collect();
        let name = telling(lexicon.words(name));
        let wording = lexicon.words(&question.unwrap_or_default().replace("{}", " "));
        let keys_of = |word: &Word| -> Vec<String> {
            word.keys.iter().map(|(key, _)| key.clone()).collect()
        };
        let about: BTreeSet<String> = name.iter().chain(&wording).flat_map(keys_of).collect();
        let mut keys = about.clone();
        keys.extend(states_words.iter().flatten().flat_map(keys_of));
        let stems = |state: &String| {
            plain(&lexicon.words(state)).into_iter().map(|(stem, _)| stem).collect()
        };
        let spelt = states.iter().map(stems).collect();
        Self { name, states: states_words, spelt, about, keys, yes_no: yes_no(states) }
    }

    /// Whether a word stands in one of the states.
    pub(super) fn state_knows(&self, word: &Word) -> bool {
        self.states.iter().flatten().any(|state| word.meets(state).is_some())
    }

    /// Whether a word of the name is only `length`, `width` and the like.
    pub(super) fn is_dimension(word: &Word) -> bool {
        word.keys.iter().any(|(key, _)| DIMENSIONS.contains(&key.as_str()))
    }
}

/// The words that say something; all of them if none does.
fn telling(words: Vec<Word>) -> Vec<Word> {
    let says = |word: &Word| matches!(word.role, Role::Content | Role::Number(_));
    let mark = |word: &Word| matches!(word.role, Role::Mark(_));
    let any = words.iter().any(says);
    words.into_iter().filter(|word| if any { says(word) } else { !mark(word) }).collect()
}

fn yes_no(states: &[String]) -> Option<(StateIx, StateIx)> {
    let is = |at: usize, words: [&str; 2]| {
        states
            .get(at)
            .is_some_and(|state| words.contains(&state.trim().to_lowercase().as_str()))
    };
    let (yes, no) = (["yes", "present"], ["no", "absent"]);
    match states.len() {
        2 if is(0, yes) && is(1, no) => Some((StateIx(0), StateIx(1))),
        2 if is(1, yes) && is(0, no) => Some((StateIx(1), StateIx(0))),
        _ => None,
    }
}

/// Keys that stand in the title or in more than half of at least three wordings.
fn common(matrix: &Matrix, lexicon: &Lexicon) -> BTreeSet<String> {
    let own_keys = |text: &str| -> BTreeSet<String> {
        let words = lexicon.words(text);
        words.into_iter().filter_map(|word| word.keys.into_iter().next()).map(|k| k.0).collect()
    };
    let wordings: Vec<BTreeSet<String>> = matrix
        .characters()
        .iter()
        .filter_map(|character| character.question.as_deref())
        .map(own_keys)
        .collect();
    let mut times: BTreeMap<&String, usize> = BTreeMap::new();
    for key in wordings.iter().flatten() {
        *times.entry(key).or_default() += 1;
    }
    let mut common: BTreeSet<String> = times
        .into_iter()
        .filter(|(_, times)| wordings.len() >= 3 && times * 2 > wordings.len())
        .map(|(key, _)| key.clone())
        .collect();
    let scene = matrix.scene();
    for text in scene.title.iter().chain(&scene.part) {
        common.extend(own_keys(text));
    }
    common
}
