//! Writes the phone pages of the outings with the walks that the second opinion finds, for
//! `tests/outside/phone_page.mjs` to click through in a browser.
//!
//! What the page must do is taken from `check`, not from the page or the search: every way of
//! every kind; and for every question on such a way "can't tell", answered on from there by
//! every pair of a way that says yes and a way that says no.

use std::collections::BTreeMap;
use std::fs;
use std::path::{Path, PathBuf};

use spinney_check::{Report, Settings, check};
use spinney_exchange::table::{self, Source, Sources};
use spinney_model::{Answer, Destination, Key, Matrix, SecondLooks, Walk, Wishes};
use spinney_press::{Booklet, Drawn, Letters, Sizes, Stamp, page};
use spinney_voice::{Tongue, wording};

const OUTINGS: [(&str, &str); 4] = [
    ("hedge_walk", "table.csv"),
    ("hedge_walk", "table_with_spine.csv"),
    ("pond_tray", "table.csv"),
    ("pasta_shapes", "table.csv"),
];

#[test]
fn pages_and_their_walks_are_written_for_the_browser() {
    let folder = PathBuf::from(env!("CARGO_TARGET_TMPDIR")).join("phone");
    fs::create_dir_all(&folder).expect("the folder can be made");
    for (outing, name) in OUTINGS {
        let matrix = read(outing, name);
        let (key, looks, opinion) = best(&matrix);
        let html = page::html(&Booklet {
            matrix: &matrix,
            key: &key,
            walks: &opinion.walks,
            left_together: &opinion.left_together,
            second_looks: &looks,
            stamp: Stamp::None,
            date: Some("3 October 2026"),
            pictures: &BTreeMap::new(),
            drawn: Drawn {
                kinds: &spinney_draw::of_kinds(&matrix),
                leaves: &[],
                word: spinney_draw::of_word,
                state: spinney_draw::of_state,
                sizes: spinney_draw::sizes,
            },
            letters: Letters::Usual,
            sizes: Sizes::USUAL,
            tongue: Tongue::of_terminal(),
        });
        let walks = walks(&matrix, &key, &opinion.walks);
        let kinds = matrix.taxa().len();
        assert!(walks.len() > 2 * kinds, "{outing}: every kind, and every doubt");
        let stem = format!("{outing}-{}", name.trim_end_matches(".csv"));
        fs::write(folder.join(format!("{stem}.html")), html).expect("the page can be written");
        let list = format!("[\n{}\n]\n", walks.join(",\n"));
        fs::write(folder.join(format!("{stem}.walks.json")), list).expect("the walks too");
    }
}

fn read(outing: &str, name: &str) -> Matrix {
    let folder = Path::new(env!("CARGO_MANIFEST_DIR")).join("scenarios").join(outing);
    let source = |name: &str| Source {
        name: name.to_owned(),
        bytes: fs::read(folder.join(name)).expect("the outing has this file"),
    };
    let sources = Sources {
        table: source(name),
        characters: Some(source(&name.replace("table", "characters"))),
        kinds: Some(source("kinds.csv")),
        about: Some(source("about.csv")),
    };
    table::read(&sources, &table::Settings::default()).expect("the table can be read").matrix
}

fn best(matrix: &Matrix) -> (Key, SecondLooks, Report) {
    let mut search = spinney_build::Search::new(matrix, &Wishes::default());
    search.step(spinney_build::Budget::default().heaps);
    let mut built = search.finish();
    let looks = search.second_looks(&built.key);
    wording::put_words(Tongue::of_terminal(), &mut built.key, matrix);
    let opinion = check(matrix, &built.key, Some(&built.claim), &Settings::default());
    assert!(opinion.works(), "the best key works");
    (built.key, looks, opinion)
}

/// The walks as lines of JSON.
fn walks(matrix: &Matrix, key: &Key, ways: &[Walk]) -> Vec<String> {
    let mut lines = std::collections::BTreeSet::new();
    for way in ways {
        lines.insert(line(&answers(&way.steps), &[end(matrix, key, way)]));
        for doubt in 0..way.steps.len() {
            let with = |answer: Answer| -> Vec<&Walk> {
                let before = &way.steps[..doubt];
                let there = ways.iter().filter(|other| {
                    other.steps.starts_with(before)
                        && other.steps.get(doubt).is_some_and(|step| step.answer == answer)
                });
                there.collect()
            };
            let (yes_ways, no_ways) = (with(Answer::Yes), with(Answer::No));
            assert!(!yes_ways.is_empty() && !no_ways.is_empty(), "both answers lead to kinds");
            for yes in &yes_ways {
                for no in &no_ways {
                    let mut said = answers(&way.steps[..doubt]);
                    said.push("cant_tell");
                    said.extend(answers(&yes.steps[doubt + 1..]));
                    said.extend(answers(&no.steps[doubt + 1..]));
                    let mut ends = vec![end(matrix, key, yes), end(matrix, key, no)];
                    ends.dedup();
                    lines.insert(line(&said, &ends));
                }
            }
        }
    }
    lines.into_iter().collect()
}

fn answers(steps: &[spinney_model::Step]) -> Vec<&'static str> {
    let said = |answer| if answer == Answer::Yes { "yes" } else { "no" };
    steps.iter().map(|step| said(step.answer)).collect()
}

/// What is written at the end of a way.
fn end(matrix: &Matrix, key: &Key, way: &Walk) -> String {
    let last = way.steps.last().expect("there is a question");
    let couplet = key.couplets.iter().find(|couplet| couplet.number == last.couplet);
    let couplet = couplet.expect("a way goes through couplets of the key");
    let to = if last.answer == Answer::Yes { &couplet.yes } else { &couplet.no };
    let Destination::End(end) = to else { panic!("a way ends at an end") };
    assert!(end.taxa.contains(&way.taxon), "the kind of the way is named at its end");
    let names: Vec<&str> =
        end.taxa.iter().map(|taxon| matrix.taxon(*taxon).name.as_str()).collect();
    names.join(" or ")
}

fn line(answers: &[&str], ends: &[String]) -> String {
    format!("{{\"taxon\": null, \"answers\": {answers:?}, \"ends\": {ends:?}}}")
}
