//! How long a long key takes: 1 MB of questions, of leads and of scribble, read and linked.
//!
//! `cargo run --release -p spinney-exchange --example key_text_time`. The keys are made up
//! from the same lines again and again, so the figures say how the time grows and no more.

use std::fmt::Write as _;
use std::time::Instant;

use spinney_exchange::key_text;
use spinney_exchange::link::{Links, link};
use spinney_exchange::table::{self, Settings, Source, Sources};

macro_rules! shipped {
    ($name:literal) => {
        Source {
            name: $name.to_owned(),
            bytes: include_bytes!(concat!("../../spinney/scenarios/hedge_walk/", $name))
                .to_vec(),
        }
    };
}

type Line = fn(usize) -> String;

const KINDS: [(&str, Line); 8] = [
    ("questions", |n| format!("{n}. Is the edge toothed? Yes -> {}, No -> hazel\n", n + 1)),
    ("leads", |n| {
        format!("{n} Leaf like a feather ... {}\n- Leaf like a hand ... lime\n", n + 1)
    }),
    ("leads that do not link", |n| {
        format!("{n} Leaf odd ... {}\n- Leaf even ... lime\n", n + 1)
    }),
    ("leads from last to first", |n| {
        let back = n.saturating_sub(1);
        format!("{n} Leaf like a feather ... {back}\n- Leaf like a hand ... lime\n")
    }),
    ("names nearly right", |n| format!("{n}. Is it lobed? Yes -> {}, No -> hawthron\n", n + 1)),
    ("scribble", |n| format!("so it goes on and on - and on: yes no {n} maybe\n")),
    ("notes under a key", |n| match n {
        1 => "1. Is it lobed? Yes -> ivy, No -> hazel\n".to_owned(),
        _ => "so\n".to_owned(),
    }),
    ("one line", |n| format!("{n}. Is it lobed? yes no yes - if not, then 7 ")),
];

fn main() {
    let sources = Sources {
        table: shipped!("table.csv"),
        characters: Some(shipped!("characters.csv")),
        kinds: Some(shipped!("kinds.csv")),
        about: Some(shipped!("about.csv")),
    };
    let read = table::read(&sources, &Settings::default());
    let matrix = read.expect("the shipped table is readable").matrix;
    let links = Links::default();
    for (name, line) in KINDS {
        for size in [250_000, 1_000_000] {
            let mut text = String::new();
            let mut number = 1;
            while text.len() < size {
                write!(text, "{}", line(number)).expect("a string takes every text");
                number += 1;
            }
            let start = Instant::now();
            let mut read = key_text::read(&text, &matrix, &links);
            let reading = start.elapsed();
            let report = link(&mut read.key, &matrix, &links);
            let linking = start.elapsed() - reading;
            let start = Instant::now();
            let written = key_text::write(&read.key, &matrix).len();
            println!(
                "{name}, {size} bytes: read {reading:.2?}, link {linking:.2?} ({} of {}), \
                 write {:.2?} ({written} bytes)",
                report.linked,
                report.of,
                start.elapsed()
            );
        }
    }
}
