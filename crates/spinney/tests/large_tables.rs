//! Tables of hundreds of kinds from file to key and back, and what the second opinion says of
//! numbers that do not fit. The tables are invented (`docs/flora.md`).

use std::fs;
use std::path::{Path, PathBuf};
use std::process::{Command, Output};

use spinney_build::{Budget, Built, Search, build};
use spinney_check::{Settings, check};
use spinney_exchange::{json, table};
use spinney_fixtures::flora::Flora;
use spinney_fixtures::seeded;
use spinney_model::{Claim, Code, Goal, Matrix, Share, Stopped, Wishes};

/// What the second opinion says of a claim, as far as it contradicts it.
fn contradictions(matrix: &Matrix, built: &Built, claim: &Claim) -> Vec<Code> {
    let report = check(matrix, &built.key, Some(claim), &Settings::default());
    let wrong = [Code::CostWrong, Code::BoundWrong, Code::GoalWrong, Code::WishBroken];
    report.findings.iter().map(|f| f.code).filter(|code| wrong.contains(code)).collect()
}

fn drawn() -> (Matrix, Built) {
    let matrix = Flora::of(110, 100).draw(1);
    let built = build(&matrix, &Wishes::default(), Budget { heaps: 1_000 });
    (matrix, built)
}

/// The exact effort has hundreds of digits. What is claimed of it is found again to the last
/// of them, and the least step to either side is not.
#[test]
fn a_claim_about_long_numbers_is_confirmed_and_every_other_is_not() {
    let (matrix, built) = drawn();
    let claim = &built.claim;
    assert_eq!(claim.stopped, Some(Stopped::Overflow), "the numbers do not fit");
    assert!(claim.lower_bound > Share::from_integer(0));
    assert!(claim.lower_bound <= claim.total);
    assert_eq!(contradictions(&matrix, &built, claim), []);
    let units = Share::new(1, 1 << 60);
    for total in [claim.total - units, claim.total + units, claim.total / 2] {
        let wrong = Claim { total, ..claim.clone() };
        assert_eq!(contradictions(&matrix, &built, &wrong), [Code::CostWrong], "{total}");
    }
    let wrong = Claim { mean_questions: claim.mean_questions - units, ..claim.clone() };
    assert_eq!(contradictions(&matrix, &built, &wrong), [Code::CostWrong]);
    for lower_bound in [claim.total + units, claim.total * 2] {
        let wrong = Claim { lower_bound, ..claim.clone() };
        assert_eq!(contradictions(&matrix, &built, &wrong), [Code::BoundWrong]);
    }
}

/// Other goals and prices, where effort does not fit.
#[test]
fn what_a_key_reaches_is_confirmed_where_numbers_are_long() {
    let matrix = Flora::of(60, 60).draw(2);
    let wishes = Wishes { goals: vec![Goal::FewestRulers], ..Wishes::default() };
    let mut search = Search::new(&matrix, &wishes);
    search.step(20);
    let built = search.finish();
    assert_eq!(built.claim.stopped, Some(Stopped::Overflow));
    assert_eq!(contradictions(&matrix, &built, &built.claim), []);
    for price in &built.claim.prices {
        assert!(!price.exact, "a difference of such numbers is never exact");
    }
    for reached in 0..built.claim.reached.len() {
        let mut wrong = built.claim.clone();
        wrong.reached[reached].value += Share::new(1, 1 << 60);
        assert_eq!(contradictions(&matrix, &built, &wrong), [Code::GoalWrong]);
    }
    let best = search.best_keys(2, Budget { heaps: 20 });
    assert!(!best.sure && best.as_good.is_none());
}

/// A small part of the memory ends the search early, with the reason, at the same place every
/// time; the key is whole and the bound holds.
#[test]
fn the_search_stops_where_its_memory_ends() {
    let matrix = seeded::skewed(4, 60, 24, 10, 5);
    let within = |mebibytes: u64| {
        let mut search = Search::within(&matrix, &Wishes::default(), mebibytes);
        search.step(15_000);
        search.finish()
    };
    let (little, much) = (within(2), within(512));
    assert_eq!(little.claim.stopped, Some(Stopped::Memory));
    assert!(little.claim.heaps < much.claim.heaps);
    assert!(little.claim.lower_bound <= much.claim.total);
    assert!(much.claim.lower_bound <= little.claim.total);
    assert_eq!(contradictions(&matrix, &little, &little.claim), []);
    assert_eq!(within(2), little);
    let least = within(1);
    assert_eq!(contradictions(&matrix, &least, &least.claim), []);
}

fn desk(name: &str) -> PathBuf {
    let folder = PathBuf::from(env!("CARGO_TARGET_TMPDIR")).join("large_tables").join(name);
    fs::create_dir_all(&folder).expect("the folder can be made");
    folder
}

fn spinney(folder: &Path, args: &[&str]) -> Output {
    let mut run = Command::new(env!("CARGO_BIN_EXE_spinney"));
    run.args(args).current_dir(folder).output().expect("spinney ends")
}

/// 300 kinds with 100 characters, from four CSV files to a key, to JSON, and back through the
/// second opinion.
#[test]
fn three_hundred_kinds_from_file_to_key_and_back() {
    let matrix = Flora::of(300, 100).draw(1);
    let folder = desk("flora");
    let sheets = table::write(&matrix);
    for (name, text) in [
        ("table.csv", &sheets.table),
        ("characters.csv", &sheets.characters),
        ("kinds.csv", &sheets.kinds),
        ("about.csv", &sheets.about),
    ] {
        fs::write(folder.join(name), text).expect("a table can be written");
    }
    let asked = ["--budget", "2000", "--memory", "256", "--format", "json"];
    let output = spinney(&folder, &[&["key", "."], &asked[..]].concat());
    let complained = String::from_utf8_lossy(&output.stderr);
    assert_eq!(complained, "", "nobody watches, so nothing is said on the way");
    let text = String::from_utf8(output.stdout).expect("it speaks UTF-8");
    let (claim, _) = json::read_claim(&text, &matrix).expect("its JSON is read");
    let claim = claim.expect("something is claimed");
    assert_eq!(claim.stopped, Some(Stopped::Overflow));
    assert!(claim.lower_bound * Share::new(21, 20) >= claim.total, "within a twentieth");
    fs::write(folder.join("key.json"), &text).expect("a key can be written");
    let output = spinney(&folder, &["check", ".", "--key", "key.json", "--format", "json"]);
    let text = String::from_utf8(output.stdout).expect("it speaks UTF-8");
    assert!(text.contains("\"key\""), "{text}");
    for code in ["cost-wrong", "bound-wrong", "goal-wrong", "wish-broken", "never-comes-out"] {
        assert!(!text.contains(code), "{code}");
    }
}
