//! Writes pages with the walks that must come true on them, for a real browser to replay.
//!
//! `tests/outside/phone_page.mjs` clicks through what this writes to `CARGO_TARGET_TMPDIR`.
//! What a walk leads to is told here by recursion over the key, a second road beside the
//! script's list of open ways.

#[path = "page_replay/hedge.rs"]
mod hedge;

use std::{fs, path::Path};

use hedge::Hedge;
use spinney_model::{Destination, InSecond, Key, Matrix, Scene, Taxon};
use spinney_press::{Stamp, page};

/// A walk: its answers, and the ends it comes to.
type Walked = (Vec<&'static str>, Vec<String>);

/// Every walk from a place with at most `doubts` times "can't tell".
fn walks(matrix: &Matrix, key: &Key, at: &Destination, doubts: usize) -> Vec<Walked> {
    let couplet = match at {
        Destination::End(end) => {
            let names = end.taxa.iter().map(|&t| matrix.taxon(t).name.clone());
            return vec![(vec![], vec![names.collect::<Vec<_>>().join(" or ")])];
        }
        Destination::Couplet(number) => {
            key.couplets.iter().find(|c| c.number == *number).expect("a whole key")
        }
        Destination::Missing => panic!("a whole key"),
    };
    let mut all = Vec::new();
    for (answer, to) in [("yes", &couplet.yes), ("no", &couplet.no)] {
        for (mut answers, ends) in walks(matrix, key, to, doubts) {
            answers.insert(0, answer);
            all.push((answers, ends));
        }
    }
    if doubts == 0 {
        return all;
    }
    for (yes_answers, yes_ends) in walks(matrix, key, &couplet.yes, doubts - 1) {
        let doubted = yes_answers.iter().filter(|a| **a == "cant_tell").count();
        for (no_answers, no_ends) in walks(matrix, key, &couplet.no, doubts - 1 - doubted) {
            let answers = [&["cant_tell"], &yes_answers[..], &no_answers[..]].concat();
            let mut ends = yes_ends.clone();
            ends.extend(no_ends.into_iter().filter(|end| !yes_ends.contains(end)));
            all.push((answers, ends));
        }
    }
    all
}

fn json(walks: &[Walked]) -> String {
    let list = |texts: &[&str]| format!("{texts:?}");
    let lines: Vec<_> = walks
        .iter()
        .map(|(answers, ends)| {
            let ends: Vec<_> = ends.iter().map(String::as_str).collect();
            let taxon = match ends[..] {
                [one] if !one.contains(" or ") => format!("{one:?}"),
                _ => "null".to_string(),
            };
            format!(
                "{{\"taxon\":{taxon},\"answers\":{},\"ends\":{}}}",
                list(answers),
                list(&ends)
            )
        })
        .collect();
    format!("[{}]\n", lines.join(",\n"))
}

fn write(name: &str, walk: &Hedge, stamp: Stamp, walks: &[Walked]) {
    let folder = Path::new(env!("CARGO_TARGET_TMPDIR")).join("phone_page");
    fs::create_dir_all(&folder).expect("the folder can be written to");
    fs::write(folder.join(format!("{name}.html")), page::html(&walk.booklet(stamp)))
        .expect("the folder can be written to");
    fs::write(folder.join(format!("{name}.walks.json")), json(walks))
        .expect("the folder can be written to");
}

/// The walk in two languages, the second from right to left.
fn in_two_languages() -> Hedge {
    let mut walk = hedge::hedge();
    let taxa =
        walk.matrix.taxa().iter().enumerate().map(|(at, taxon)| Taxon {
            second_name: Some(format!("شجرة {at}")),
            ..taxon.clone()
        });
    let taxa = taxa.collect();
    let questions = walk.key.couplets.iter().map(|couplet| InSecond {
        text: couplet.wording.first().to_string(),
        second: "هل حافة الورقة مسننة؟".to_string(),
    });
    let scene = Scene {
        second_language: Some("العربية".to_string()),
        second_questions: questions.collect(),
        ..walk.matrix.scene().clone()
    };
    let matrix = walk.matrix.clone().with_taxa(taxa).expect("as many kinds");
    walk.matrix = matrix.with_scene(scene);
    walk
}

#[test]
fn pages_are_written_for_the_browser() {
    let walk = hedge::hedge();
    let start = Destination::Couplet(1);
    let mut all = walks(&walk.matrix, &walk.key, &start, 1);
    assert_eq!(all.iter().filter(|(_, ends)| ends.len() == 1).count(), 13 + 1);
    let every_doubt = walks(&walk.matrix, &walk.key, &start, 99);
    let most = every_doubt.into_iter().max_by_key(|(_, ends)| ends.len());
    all.extend(most);
    write("hedge", &walk, Stamp::None, &all);
    write("trying_out", &walk, Stamp::TryingOut, &all[..5]);
    write("two_languages", &in_two_languages(), Stamp::None, &all);
    let shown = hedge::HOSTILE.replace(char::is_control, " ");
    let (one, other) = (format!("a{shown}"), format!("b{shown} or {shown}"));
    let doubted = (vec!["cant_tell"], vec![one.clone(), other.clone()]);
    let ends = [(vec!["yes"], vec![one]), (vec!["no"], vec![other]), doubted];
    write("hostile", &hedge::hostile(), Stamp::None, &ends);
    write("broken", &hedge::broken(), Stamp::Draft, &where_it_stops());
}

/// The walks of the broken key that do not come out at a kind; of a circle, no end at all.
fn where_it_stops() -> Vec<Walked> {
    let stops = |answers: &str, ends: &[&str]| {
        let word = |letter| match letter {
            'y' => "yes",
            'n' => "no",
            _ => "cant_tell",
        };
        (answers.chars().map(word).collect(), ends.iter().map(ToString::to_string).collect())
    };
    let (missing, nothing) = ("question 99, which is missing", "nothing is written here");
    vec![
        stops("yyy", &[missing]),
        stops("yyn", &[nothing]),
        stops("yyc", &[missing, nothing]),
        stops("ynnyn", &[]),
        stops("ynnyc", &["holly"]),
        stops("ynnnn", &["blackthorn"]),
    ]
}
