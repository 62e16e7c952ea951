//! The words of a table, ready to be met by the words of a question.
//!
//! From a matrix to each character's name, wording and states as words, and to which keys
//! belong to which characters. Nothing here looks at a question.

use std::collections::{BTreeMap, BTreeSet};

use spinney_model::{CharacterIx, Matrix, Scale, StateIx};

use super::parts::{self, Mention};
use super::words::{Lexicon, Role, Word, plain, stem};

/// Words of a name that say only what sort of thing it is.
const DIMENSIONS: [&str; 5] = ["length", "width", "height", "weight", "thickness"];

/// Stems by which a table is about leaves.
const LEAF: [&str; 2] = ["leaf", "leaflet"];

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
    /// The keys of what name and wording speak of, without the places where it is.
    spoken: BTreeSet<String>,
    /// The words of the name that are no place: `arrangement` of "arrangement on the twig".
    head: Vec<Word>,
    /// The parts that a sentence must name for its states to be those of this column: the
    /// `edge`. Where a person's own wording leaves the part out, so may others.
    pub(super) needed: Vec<Word>,
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
    /// The parts that are the thing itself: the shell in a table of shells.
    things: BTreeSet<String>,
    /// Whether the table says what it is about, so that another part is surely another's.
    pub(super) says_of_what: bool,
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
        let (things, says_of_what) = things(matrix, &lexicon);
        Self { states, lexicon, columns, homes, things, says_of_what, common }
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

    /// Whether a character speaks of a part that a sentence names. One that it knows only as the
    /// place of something ("hairs on the legs") is spoken of only beside that something.
    pub(super) fn speaks_of(
        &self,
        matrix: &Matrix,
        character: CharacterIx,
        words: &[Word],
        (at, how): (usize, Mention),
    ) -> bool {
        let (column, word) = (&self.columns[character.0], &words[at]);
        let knows =
            |keys: &BTreeSet<String>| word.keys.iter().any(|(key, _)| keys.contains(key));
        if knows(&self.things) || knows(&column.spoken) || column.state_knows(word) {
            return true;
        }
        if knows(&column.about) {
            let met = |head: &Word| words.iter().any(|word| word.meets(head).is_some());
            return how == Mention::Place || column.head.iter().any(met);
        }
        if let Some((one, other)) = matrix.character(character).ratio_of
            && [one, other].iter().any(|part| knows(&self.columns[part.0].about))
        {
            return true;
        }
        self.explains(matrix, character, word)
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
        let heading = lexicon.words(name);
        let name = telling(heading.clone());
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
        let head = parts::spoken_of(&heading);
        let worded = parts::spoken_of(&wording);
        let spoken = head.iter().chain(&worded).flat_map(keys_of).collect();
        let said = |part: &Word| {
            question.is_none_or(|_| wording.iter().any(|word| word.meets(part).is_some()))
        };
        let needed = head.iter().filter(|word| lexicon.is_part(word) && said(word));
        let needed = needed.cloned().collect();
        let head = telling(head);
        let yes_no = yes_no(states);
        Self { name, states: states_words, spelt, about, spoken, head, needed, keys, yes_no }
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

/// Which states mean yes and no, where there are just these.
pub(super) fn yes_no(states: &[String]) -> Option<(StateIx, StateIx)> {
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

/// The parts that the table is about as a whole, and whether it says at all what it is about.
/// In a table of leaves that is the leaf, even where a twig is held in the hand.
fn things(matrix: &Matrix, lexicon: &Lexicon) -> (BTreeSet<String>, bool) {
    let scene = matrix.scene();
    let names = matrix.characters().iter().map(|character| character.name.as_str());
    let said = scene.part.iter().chain(&scene.title).map(String::as_str);
    let leaves = names.chain(said).any(|text| {
        let words = lexicon.words(text);
        let of_leaf = |key: &String| LEAF.contains(&key.as_str());
        let texts =
            words.iter().flat_map(|word| word.text.split(' ').map(stem).collect::<Vec<_>>());
        let mut texts = texts;
        texts.any(|text| of_leaf(&text))
    });
    if leaves {
        return (BTreeSet::new(), true);
    }
    let words: Vec<Word> =
        scene.part.iter().chain(&scene.title).flat_map(|text| lexicon.words(text)).collect();
    let parts = words.iter().filter(|word| lexicon.is_part(word));
    let things = parts.flat_map(|word| word.keys.iter().map(|(key, _)| key.clone())).collect();
    (things, scene.part.is_some())
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
