//! The words of each form of the journal are frozen: a word that is not in its list is new, and
//! new words need a new form, or older programs would call them damage.

use std::collections::{BTreeMap, BTreeSet};

use serde::de::DeserializeOwned;
use serde_json::{Value, json};

use crate::journal::line::{Change, Line, Meaning};
use crate::journal::{LineError, VERSION, read, read_up_to, since, words, write};

/// The words of each form, from the first: once a form is out, its list never changes again.
const FROZEN: [&str; VERSION as usize] = [
    include_str!("words_1.txt"),
    include_str!("words_2.txt"),
    include_str!("words_3.txt"),
    include_str!("words_4.txt"),
    include_str!("words_5.txt"),
    include_str!("words_6.txt"),
];

/// What a type of ours takes for this: its variants, or the fields of one of them, as the
/// reader itself tells somebody who writes `?`.
fn taken<T: DeserializeOwned>(odd: Value) -> Vec<String> {
    let Err(error) = serde_json::from_value::<T>(odd) else { panic!("`?` is no word of ours") };
    let error = error.to_string();
    let (_, told) = error
        .split_once("`?`, expected ")
        .unwrap_or_else(|| panic!("it tells no words: {error}"));
    told.split('`').skip(1).step_by(2).map(str::to_owned).collect()
}

/// A change, said with one word more than its fields where one of them chooses among words.
struct Said {
    /// `describe_kind kind what text`, and `what: caution`.
    words: Vec<String>,
    change: Value,
}

/// What may stand in a field, each with the word that it chooses.
fn values(change: &str, field: &str) -> Vec<(Option<String>, Value)> {
    let chosen = |words: &[&str]| {
        words.iter().map(|word| (Some((*word).to_owned()), json!(word))).collect::<Vec<_>>()
    };
    let plain = |value: Value| vec![(None, value)];
    match (change, field) {
        (_, "kind" | "kept" | "gone" | "character" | "key" | "specimen") => plain(json!(1)),
        (
            _,
            "name" | "text" | "source" | "from" | "to" | "words" | "picture" | "plus_minus",
        ) => plain(json!("1")),
        (_, "drawing") => plain(json!("0 0 9 9|outline 1 1 2 2")),
        (_, "at") => plain(json!("yn")),
        ("describe_kind", "what") => chosen(words::KIND_FIELDS),
        ("describe_character", "what") => chosen(words::CHARACTER_FIELDS),
        ("describe_scene", "what") => chosen(words::ABOUT_FIELDS),
        ("wish", "what") => {
            chosen(&[words::WISH_FIELDS, &[words::NEVER, words::KINDS]].concat())
        }
        ("describe_specimen", "what") => chosen(words::SPECIMEN_FIELDS),
        ("judge_specimen", "judged") => [chosen(words::JUDGED), plain(Value::Null)].concat(),
        ("sort", "side") => [chosen(words::SIDES), plain(Value::Null)].concat(),
        ("ask", "ask") => {
            let meanings = taken::<Meaning>(json!({"?": {}})).into_iter().map(|meaning| {
                let fields = taken::<Meaning>(json!({ meaning.clone(): {"?": 0} }));
                let of = fields.iter().map(|field| match field.as_str() {
                    "character" | "thousandths" => (field.clone(), json!(1)),
                    "states" => (field.clone(), json!(["lobed"])),
                    new => panic!("say here what stands in {new}"),
                });
                let of: serde_json::Map<_, _> = of.collect();
                (Some(format!("{meaning} {}", fields.join(" "))), json!({ meaning: of }))
            });
            meanings.chain(plain(Value::Null)).collect()
        }
        new => panic!("say here what stands in {new:?}"),
    }
}

/// Every change that a line may hold, in every word.
fn changes() -> Vec<Said> {
    let mut all = Vec::new();
    for change in taken::<Change>(json!({"?": {}})) {
        let fields = taken::<Change>(json!({ change.clone(): {"?": 0} }));
        let mut said = vec![(Vec::new(), serde_json::Map::new())];
        for field in &fields {
            let values = values(&change, field);
            let longer = said.iter().flat_map(|(words, so_far)| {
                values.iter().map(move |(word, value)| {
                    let (mut words, mut so_far): (Vec<String>, _) =
                        (words.clone(), so_far.clone());
                    words.extend(word.as_ref().map(|word| format!("{field}: {word}")));
                    so_far.insert(field.clone(), value.clone());
                    (words, so_far)
                })
            });
            said = longer.collect();
        }
        all.extend(said.into_iter().map(|(chosen, fields_said)| {
            let name = format!("{change} {}", fields.join(" "));
            let chosen = chosen.into_iter().map(|word| format!("{change} {word}"));
            Said {
                words: std::iter::once(name).chain(chosen).collect(),
                change: json!({ change.clone(): fields_said }),
            }
        }));
    }
    assert!(all.len() > 60, "only {} changes: some words are not found", all.len());
    all
}

/// Every line that does something, each with the words that are new in it.
fn lines() -> Vec<(Vec<String>, Vec<u8>)> {
    let line = |field: &str, value: Value| {
        json!({ "v": VERSION, "at": 5, field: value }).to_string().into_bytes()
    };
    let fields = taken::<Line>(json!({"?": 0}));
    let mut lines = Vec::new();
    for field in &fields {
        let value = match field.as_str() {
            "v" | "at" => continue,
            "edits" => {
                lines.extend(
                    changes()
                        .into_iter()
                        .map(|said| (said.words, line("edits", json!([said.change])))),
                );
                json!([])
            }
            "undo" | "redo" => json!(true),
            "version" => json!("1"),
            "unname" | "hold_first" => json!(1),
            new => panic!("say here what stands in {new}"),
        };
        lines.push((vec![format!("line {field}")], line(field, value)));
    }
    lines
}

/// The form from which a line is known, by the line that is written of it.
fn form_of(bytes: &[u8]) -> u32 {
    let entry = read(bytes).unwrap_or_else(|why| {
        panic!("{why:?}: {}", String::from_utf8_lossy(bytes));
    });
    crate::journal::since::of_line(&entry.done)
}

#[test]
fn the_words_of_each_form_are_frozen() {
    let mut known = BTreeMap::new();
    for (words, bytes) in lines() {
        for word in words {
            let form: &mut u32 = known.entry(word).or_insert(u32::MAX);
            *form = (*form).min(form_of(&bytes));
        }
    }
    for (form, frozen) in (1..).zip(FROZEN) {
        let of_this = known.iter().filter(|(_, since)| **since == form);
        let now: BTreeSet<&str> = of_this.map(|(word, _)| word.as_str()).collect();
        assert_eq!(
            now,
            frozen.lines().collect(),
            "form {form} has other words than when it was first written: a new word needs a new \
             form (journal::VERSION, journal::since, and a list of its own)"
        );
    }
}

#[test]
fn an_older_program_says_newer_and_never_damaged() {
    let mut met = [0; VERSION as usize];
    for (_, bytes) in lines() {
        let entry = read(&bytes).expect("a line of ours");
        let form = form_of(&bytes);
        met[form as usize - 1] += 1;
        let line = write(&entry);
        for older in 1..=VERSION {
            let read = read_up_to(&line, older);
            match older < form {
                true => assert_eq!(read, Err(LineError::Newer(form))),
                false => assert_eq!(read.as_ref(), Ok(&entry)),
            }
        }
    }
    assert!(met.iter().all(|lines| *lines > 0), "a form without a word of its own: {met:?}");
}

#[test]
fn an_edit_is_known_from_the_form_that_its_line_names() {
    for (_, bytes) in lines() {
        let entry = read(&bytes).expect("a line of ours");
        let spinney_model::Done::Edits(edits) = &entry.done else { continue };
        let of: Value = serde_json::from_slice(&write(&entry)).expect("JSON");
        let known = edits.iter().map(since).max().unwrap_or(1);
        assert_eq!(of["v"], json!(known));
    }
}
