//! The tests of the tree: which mutants each reaches, and whether one notices a mutant.

use std::collections::{BTreeMap, BTreeSet};
use std::fs;
use std::io::{BufRead, BufReader};
use std::os::unix::process::CommandExt;
use std::path::{Path, PathBuf};
use std::process::{Command, Stdio};
use std::sync::mpsc;
use std::time::{Duration, Instant, UNIX_EPOCH};

/// A test that takes less is run together with others of its program.
const QUICK: Duration = Duration::from_millis(400);
/// So long, besides eight times what it took, a test may take with a mutant.
const GRACE: Duration = Duration::from_secs(15);
/// A test that takes longer is left out.
const LONGEST: Duration = Duration::from_secs(90);
/// So much memory, in kibibytes, a test may hold with a mutant that never stops asking for more.
const MEMORY: &str = "8388608";

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
    /// A mutant is tried with the quickest of the tests that reach it, which together take so
    /// long without it.
    enough: Duration,
}

impl Trial {
    /// Builds the tests and runs each once; not those of programs that are the same as last time.
    pub fn prepare(tree: &Path, work: &Path, enough: Duration) -> Self {
        let mut known = Known::read(&work.join("tests.tsv"));
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
                let of = format!("{}\t{name}", stamp(&program));
                if !known.tests.contains_key(&of) {
                    let _ = fs::remove_file(&reached);
                    let begun = Instant::now();
                    let mut run = limited(&program);
                    run.env("SPINNEY_REACHED", &reached);
                    let failed = failed(run, &folder, &[name], LONGEST);
                    let took = begun.elapsed();
                    let text = fs::read_to_string(&reached).unwrap_or_default();
                    let reaches = text.lines().filter_map(|line| line.parse().ok()).collect();
                    known.add(of.clone(), (failed.is_none(), took, reaches));
                }
                let (passed, took, reaches) = known.tests[&of].clone();
                if !passed {
                    println!(
                        "left out, since it fails without a mutant or takes too long: {name}"
                    );
                    continue;
                }
                let (program, folder) = (program.clone(), folder.clone());
                tests.push(Test { program, folder, name: name.to_owned(), took, reaches });
            }
        }
        let all: Duration = tests.iter().map(|test| test.took).sum();
        println!("{} tests, {all:.0?} one after the other", tests.len());
        Self { tests, enough }
    }

    /// The test that notices a mutant of a file, or `missed`, or `not reached`.
    pub fn of(&self, mutant: usize, file: &Path) -> String {
        let here: Vec<&Test> =
            self.tests.iter().filter(|test| test.reaches.contains(&mutant)).collect();
        if here.is_empty() {
            return "not reached".to_owned();
        }
        let mut quick: BTreeMap<&Path, Vec<&Test>> = BTreeMap::new();
        for test in here.iter().filter(|test| test.took < QUICK) {
            quick.entry(&test.program).or_default().push(test);
        }
        let mut runs: Vec<Vec<&Test>> = quick.into_values().collect();
        runs.extend(here.iter().filter(|test| test.took >= QUICK).map(|test| vec![*test]));
        // The quick ones of its own crate first.
        runs.sort_by_cached_key(|tests| {
            let together: Duration = tests.iter().map(|test| test.took).sum();
            let crate_ = tests[0].folder.file_name();
            let own = file.iter().nth(1) == crate_;
            (tests[0].took >= QUICK, !own, together)
        });
        let mut all = Duration::ZERO;
        for tests in runs {
            all += tests.iter().map(|test| test.took).sum::<Duration>();
            if all > self.enough {
                break;
            }
            let mut run = limited(&tests[0].program);
            run.env("SPINNEY_MUTANT", mutant.to_string());
            let names: Vec<&str> = tests.iter().map(|test| test.name.as_str()).collect();
            let took: Duration = tests.iter().map(|test| test.took).sum();
            if let Some(by) = failed(run, &tests[0].folder, &names, took * 8 + GRACE) {
                return by;
            }
        }
        "missed".to_owned()
    }
}

/// What was found out about tests, by program and name: passed, how long, reached.
struct Known {
    file: PathBuf,
    tests: BTreeMap<String, (bool, Duration, BTreeSet<usize>)>,
}

impl Known {
    fn read(file: &Path) -> Self {
        let mut tests = BTreeMap::new();
        for line in fs::read_to_string(file).unwrap_or_default().lines() {
            let parts: Vec<&str> = line.split('\t').collect();
            let [program, name, passed, took, reaches] = parts[..] else { continue };
            let took = Duration::from_millis(took.parse().unwrap_or(0));
            let reaches = reaches.split(' ').filter_map(|number| number.parse().ok()).collect();
            tests.insert(format!("{program}\t{name}"), (passed == "true", took, reaches));
        }
        Self { file: file.to_owned(), tests }
    }

    fn add(&mut self, of: String, found: (bool, Duration, BTreeSet<usize>)) {
        use std::io::Write;
        let reaches: Vec<String> = found.2.iter().map(usize::to_string).collect();
        let line =
            format!("{of}\t{}\t{}\t{}\n", found.0, found.1.as_millis(), reaches.join(" "));
        let file = fs::OpenOptions::new().append(true).create(true).open(&self.file);
        file.and_then(|mut file| file.write_all(line.as_bytes())).expect("written");
        self.tests.insert(of, found);
    }
}

/// A program and when it was built.
fn stamp(program: &Path) -> String {
    let built = fs::metadata(program).and_then(|known| known.modified()).expect("it was built");
    let built = built.duration_since(UNIX_EPOCH).expect("after 1970");
    format!("{}@{}", program.display(), built.as_nanos())
}

fn limited(program: &Path) -> Command {
    let mut run = Command::new("sh");
    let script = format!("ulimit -v {MEMORY}; exec \"$0\" \"$@\"");
    run.args(["-c", &script]).arg(program);
    run
}

/// The test that fails, or does not end in time; None: all pass. Whatever they started ends with
/// them.
fn failed(mut run: Command, folder: &Path, names: &[&str], time: Duration) -> Option<String> {
    run.args(["--exact", "--test-threads", "1"]).args(names).current_dir(folder);
    run.stdin(Stdio::null()).stdout(Stdio::piped()).stderr(Stdio::null()).process_group(0);
    let mut child = run.spawn().expect("a test program starts");
    let (line, lines) = mpsc::channel();
    let out = child.stdout.take().expect("it was piped");
    std::thread::spawn(move || {
        for text in BufReader::new(out).split(b'\n').map_while(Result::ok) {
            let text = String::from_utf8_lossy(&text).into_owned();
            if line.send(text).is_err() {
                return;
            }
        }
    });
    let begun = Instant::now();
    // With one thread the tests come in the order of their names.
    let mut names = names.to_vec();
    names.sort_unstable();
    let (mut done, mut ended) = (0, false);
    let failed = 'run: loop {
        for text in lines.try_iter() {
            done += usize::from(text.starts_with("test ") && text.ends_with("... ok"));
            if text.starts_with("test ") && text.ends_with("... FAILED") {
                break 'run Some(names.get(done).unwrap_or(&"unknown").to_string());
            }
        }
        let under_way = names.get(done).unwrap_or(&"after all tests");
        match child.try_wait().expect("our own child") {
            Some(status) if status.success() => break None,
            Some(_) if ended => break Some(format!("{under_way} (ended at once)")),
            None if begun.elapsed() > time => break Some(format!("{under_way} (no end)")),
            seen => {
                // What it said last is read before it is judged.
                ended = seen.is_some();
                std::thread::sleep(Duration::from_millis(5));
            }
        }
    };
    let group = format!("-{}", child.id());
    let _ = Command::new("kill").args(["-9", "--", &group]).stderr(Stdio::null()).status();
    let _ = child.wait();
    failed
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
