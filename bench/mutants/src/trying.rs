//! The tests of the tree: which mutants each reaches, and whether one notices a mutant.

use std::collections::{BTreeMap, BTreeSet};
use std::fs;
use std::os::unix::process::CommandExt;
use std::path::{Path, PathBuf};
use std::process::{Command, Stdio};
use std::time::{Duration, Instant};

/// A test that takes less is run together with others of its program.
const QUICK: Duration = Duration::from_millis(400);
/// So long, besides six times what it took, a test may take with a mutant.
const GRACE: Duration = Duration::from_secs(15);

struct Test {
    program: PathBuf,
    folder: PathBuf,
    name: String,
    took: Duration,
    reaches: BTreeSet<usize>,
}

/// All tests that pass without a mutant.
pub struct Trial {
    tests: Vec<Test>,
}

impl Trial {
    /// Builds the tests and runs each once.
    pub fn prepare(tree: &Path, work: &Path) -> Self {
        let reached = work.join("reached.txt");
        let mut tests = Vec::new();
        for (program, folder) in programs(tree, work) {
            let list = Command::new(&program)
                .args(["--list", "--format", "terse"])
                .current_dir(&folder)
                .output()
                .expect("a test program lists its tests");
            for line in String::from_utf8_lossy(&list.stdout).lines() {
                let Some(name) = line.strip_suffix(": test") else { continue };
                let _ = fs::remove_file(&reached);
                let begun = Instant::now();
                let mut run = Command::new(&program);
                run.env("SPINNEY_REACHED", &reached);
                let passed = passes(run, &folder, &[name], Duration::from_secs(600));
                let took = begun.elapsed();
                if !passed {
                    println!("left out, since it fails without a mutant: {name}");
                    continue;
                }
                let text = fs::read_to_string(&reached).unwrap_or_default();
                let reaches = text.lines().filter_map(|line| line.parse().ok()).collect();
                tests.push(Test {
                    program: program.clone(),
                    folder: folder.clone(),
                    name: name.to_owned(),
                    took,
                    reaches,
                });
            }
        }
        let all: Duration = tests.iter().map(|test| test.took).sum();
        println!("{} tests, {all:.0?} one after the other", tests.len());
        Self { tests }
    }

    /// The test that notices a mutant, or `missed`, or `not reached`.
    pub fn of(&self, mutant: usize) -> String {
        let mut here: Vec<&Test> =
            self.tests.iter().filter(|test| test.reaches.contains(&mutant)).collect();
        if here.is_empty() {
            return "not reached".to_owned();
        }
        here.sort_by_key(|test| test.took);
        let mut quick: BTreeMap<&Path, Vec<&Test>> = BTreeMap::new();
        for test in here.iter().filter(|test| test.took < QUICK) {
            quick.entry(&test.program).or_default().push(test);
        }
        let mut runs: Vec<Vec<&Test>> = quick.into_values().collect();
        runs.sort_by_key(|tests| tests.iter().map(|test| test.took).sum::<Duration>());
        runs.extend(here.iter().filter(|test| test.took >= QUICK).map(|test| vec![*test]));
        for tests in runs {
            let mut run = Command::new(&tests[0].program);
            run.env("SPINNEY_MUTANT", mutant.to_string());
            let names: Vec<&str> = tests.iter().map(|test| test.name.as_str()).collect();
            let took: Duration = tests.iter().map(|test| test.took).sum();
            if !passes(run, &tests[0].folder, &names, took * 6 + GRACE) {
                return format!("one of {} tests from {}", names.len(), names[0]);
            }
        }
        "missed".to_owned()
    }
}

/// Whether these tests pass in the given time. Whatever they started ends with them.
fn passes(mut run: Command, folder: &Path, names: &[&str], time: Duration) -> bool {
    run.args(["--exact", "--quiet"]).args(names).current_dir(folder);
    run.stdin(Stdio::null()).stdout(Stdio::null()).stderr(Stdio::null()).process_group(0);
    let mut child = run.spawn().expect("a test program starts");
    let begun = Instant::now();
    let passed = loop {
        match child.try_wait().expect("our own child") {
            Some(status) => break status.success(),
            None if begun.elapsed() > time => break false,
            None => std::thread::sleep(Duration::from_millis(5)),
        }
    };
    let group = format!("-{}", child.id());
    let _ = Command::new("kill").args(["-9", "--", &group]).stderr(Stdio::null()).status();
    let _ = child.wait();
    passed
}

/// The test programs of the tree, each with the folder it is run in.
fn programs(tree: &Path, work: &Path) -> Vec<(PathBuf, PathBuf)> {
    let built = Command::new("cargo")
        .args(["test", "--workspace", "--no-run", "--message-format=json", "--offline"])
        .current_dir(tree)
        .env("CARGO_TARGET_DIR", work.join("build"))
        .stderr(Stdio::inherit())
        .output()
        .expect("cargo is here");
    assert!(built.status.success(), "the tests do not compile");
    let mut programs = Vec::new();
    for line in String::from_utf8_lossy(&built.stdout).lines() {
        let Ok(message) = serde_json::from_str::<serde_json::Value>(line) else { continue };
        if message["reason"] != "compiler-artifact" || message["profile"]["test"] != true {
            continue;
        }
        let (Some(program), Some(manifest)) =
            (message["executable"].as_str(), message["manifest_path"].as_str())
        else {
            continue;
        };
        let folder = Path::new(manifest).parent().expect("a manifest lies in a folder");
        programs.push((PathBuf::from(program), folder.to_owned()));
    }
    programs
}
