//! How long the heaps take after an edit, and what of it goes into reading the collection.
//!
//! `cargo bench -p spinney-desk --bench after_an_edit`. A table of 20 kinds × 20 characters of
//! two and three states, three kinds varying. First with a key that the machine finishes; then
//! with two groups beside the table that say different things of five columns, and a key in
//! which six kinds were sorted by hand at a question of the table, so that the collection is
//! read more than once. Each time one cell changes, and then: the collection is read; or GET
//! `/heaps` with nothing remembered. What is counted is the time on a processor, as Linux
//! counts it, so that others who are at work on the machine do not count; by the tick, so that
//! only the mean says much.

use std::time::Duration;

use spinney_collection::Collection;
use spinney_collection::laid::Laid;
use spinney_desk::{Desk, Reply, Request};
use spinney_exchange::{journal, table};
use spinney_model::{
    AskOf, AskedOf, CharacterId, Done, Edit, Entry, Fork, KeyEdit, KeyId, KindId, Side,
    WishField,
};

const EDITS: usize = 400;

fn main() {
    println!("| after an edit, of {EDITS} the mean | |");
    println!("| --- | --- |");
    both("a key that is finished", &finished());
    both("two groups and sorting by hand", &sorted());
}

fn both(what: &str, more: &[Edit]) {
    let mut lines = Desk::lines_of_table(&twenty_by_twenty(), 0).expect("it holds kinds");
    lines.push(line(more.to_vec()));
    let (mut collection, mut desk) = (
        Collection::default(),
        Desk::open(lines.iter().map(Vec::as_slice)).expect("our own lines"),
    );
    for line in &lines {
        let Done::Edits(edits) = journal::read(line).expect("our own line").done else {
            continue;
        };
        edits.iter().for_each(|edit| collection.apply(edit));
    }
    let (mut reading, mut page) = (Vec::new(), Vec::new());
    for round in 0..EDITS {
        let edit = Edit::Cell {
            kind: KindId(7),
            character: CharacterId(5),
            source: String::new(),
            text: if round % 2 == 0 { "smooth or toothed" } else { "smooth" }.to_owned(),
        };
        collection.apply(&edit);
        let begun = on_a_processor();
        assert!(Laid::of(&collection).is_some());
        reading.push(on_a_processor() - begun);
        desk.catch_up([line(vec![edit]).as_slice()]).expect("our own line");
        let begun = on_a_processor();
        match desk.handle(&Request::get("/heaps?key=1")) {
            Reply::Page(page) if page.status == 200 => {}
            other => panic!("no page: {other:?}"),
        }
        page.push(on_a_processor() - begun);
    }
    row(&format!("the collection read, {what}"), &reading);
    row(&format!("`/heaps`, {what}"), &page);
}

/// How long this thread has been at work.
fn on_a_processor() -> Duration {
    let counted = std::fs::read_to_string("/proc/thread-self/schedstat").expect("Linux counts");
    let nanoseconds = counted.split_whitespace().next().expect("three numbers");
    Duration::from_nanos(nanoseconds.parse().expect("a number"))
}

fn row(what: &str, times: &[Duration]) {
    println!("| {what} | {:.2?} |", times.iter().sum::<Duration>() / times.len() as u32);
}

fn line(edits: Vec<Edit>) -> Vec<u8> {
    journal::write(&Entry { at: 0, done: Done::Edits(edits) })
}

fn finished() -> Vec<Edit> {
    let key = KeyId(1);
    vec![
        Edit::Key(key, KeyEdit::Start("Our key".to_owned())),
        Edit::Key(key, KeyEdit::Wish(WishField::Finish, "yes".to_owned())),
    ]
}

fn sorted() -> Vec<Edit> {
    let mut edits = Vec::new();
    for kind in 1..=20 {
        for character in 1..=5 {
            for source in ["group Blue", "group Red"] {
                let other = (kind + character) % 3 == 0 && source == "group Red";
                edits.push(Edit::Cell {
                    kind: KindId(kind),
                    character: CharacterId(character),
                    source: source.to_owned(),
                    text: if other { "toothed" } else { "smooth" }.to_owned(),
                });
            }
            let (kind, character) = (KindId(kind), CharacterId(character));
            let (source, text) = (String::new(), String::new());
            edits.push(Edit::Cell { kind, character, source, text });
        }
    }
    let (key, at) = (KeyId(1), Fork::default());
    edits.push(Edit::Key(key, KeyEdit::Start("Blue's key".to_owned())));
    let yes = AskedOf::States(vec!["smooth".to_owned()]);
    let ask = Some(AskOf { character: CharacterId(1), yes });
    let words = "Is it smooth?".to_owned();
    edits.push(Edit::Key(key, KeyEdit::Ask { at: at.clone(), words, ask }));
    for kind in 1..=6 {
        let side = Some(if kind % 2 == 0 { Side::Yes } else { Side::No });
        edits.push(Edit::Key(key, KeyEdit::Sort { at: at.clone(), kind: KindId(kind), side }));
    }
    edits
}

/// A table of 20 kinds and 20 characters, three kinds met in more than one form, as typed.
fn twenty_by_twenty() -> Vec<table::Source> {
    let mut rng = fastrand::Rng::with_seed(20);
    let states = ["smooth", "toothed", "lobed"];
    let headings = (1..=20).map(|number| format!("character {number}"));
    let mut rows = vec![std::iter::once("kind".to_owned()).chain(headings).collect()];
    for kind in 1..=20 {
        let mut row = vec![format!("kind {kind}")];
        for character in 0..20 {
            let known = 2 + usize::from(character % 3 == 0);
            let state = rng.usize(0..known);
            let varies = kind <= 3 && rng.usize(0..4) == 0;
            let other = states[(state + 1) % known];
            row.push(match varies {
                true => format!("{} or {other}", states[state]),
                false => states[state].to_owned(),
            });
        }
        rows.push(row);
    }
    vec![table::typed("table", rows)]
}
