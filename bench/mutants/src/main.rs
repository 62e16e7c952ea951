//! Makes one line wrong and sees whether a test notices: many mutants, one build.
//!
//! ```text
//! cargo run --release --manifest-path bench/mutants/Cargo.toml -- SEED COUNT first|again SECONDS
//! ```
//! From a seed to `target/mutants/result.tsv`: a line a mutant, with the test that caught it,
//! or `missed`, or `not reached`. The tree is copied; a sample of all places where a line can be
//! made wrong gets a switch; what does not compile is taken out; each test is run once to see
//! which mutants it reaches and how long it takes; then each mutant is switched on and the tests
//! that reach it are run, those of its own crate first, then the quickest, until one fails or
//! does not end. `again`, after the same seed and count and with the same sources: only those
//! that no test caught yet, with the tests as they are now. SECONDS: so long the tests that are
//! run for one mutant may take together (without it: 90).
//!
//! A mutant that nobody can see the effect of (a bound that is only less tight, an order that
//! does not show) counts as missed here; whoever reads the list says which they are.

mod sites;
mod trying;

use std::collections::{BTreeMap, BTreeSet};
use std::path::{Path, PathBuf};
use std::process::Command;
use std::time::Duration;
use std::{env, fs};

use sites::Site;
use trying::Trial;

/// So many are chosen for each one that is wanted: some do not compile.
const SPARE: f64 = 1.6;

/// One mutant: where, and what.
pub struct Mutant {
    file: PathBuf,
    /// Its place among the sites of its file.
    place: usize,
    site: Site,
}

fn main() {
    let mut words = env::args().skip(1);
    let seed: u64 = words.next().map_or(1, |seed| seed.parse().expect("the seed is a number"));
    let count: usize = words.next().map_or(300, |count| count.parse().expect("a number"));
    let again = words.next().is_some_and(|word| word == "again");
    let enough = words.next().map_or(90, |seconds| seconds.parse().expect("a number"));
    let root =
        Path::new(env!("CARGO_MANIFEST_DIR")).join("../..").canonicalize().expect("here");
    let work = root.join("target/mutants");
    let tree = work.join("tree");
    if !again {
        let _ = fs::remove_dir_all(&tree);
    }
    let mut files = copied(&root);
    add_switch(&mut files);

    let mut mutants = chosen(&files, seed, (count as f64 * SPARE) as usize);
    println!("{} mutants chosen with seed {seed}", mutants.len());
    let results = work.join("result.tsv");
    let before = if again { read_results(&results) } else { BTreeMap::new() };
    let originals: Files = mutants
        .values()
        .map(|mutant| (mutant.file.clone(), files[&mutant.file].clone()))
        .collect();
    let taken_out = work.join("taken_out.txt");
    if again {
        let known = read(&taken_out);
        let known: BTreeSet<usize> =
            known.lines().filter_map(|number| number.parse().ok()).collect();
        mutants.retain(|number, _| !known.contains(number));
    } else {
        let _ = fs::remove_file(&results);
    }
    let mut all_wrong = String::new();
    loop {
        write_switched(&mut files, &originals, &mutants);
        put(&tree, &files, &root);
        if again {
            break;
        }
        let wrong = uncompilable(&tree, &work);
        if wrong.is_empty() {
            break;
        }
        println!("{} do not compile and are taken out: {wrong:?}", wrong.len());
        mutants.retain(|number, _| !wrong.contains(number));
        all_wrong.extend(wrong.iter().map(|number| format!("{number}\n")));
    }
    if !again {
        fs::write(taken_out, all_wrong).expect("written");
    }
    let spare: Vec<usize> = mutants.keys().skip(count).copied().collect();
    mutants.retain(|number, _| !spare.contains(number));
    println!("{} mutants are tried", mutants.len());

    let trial = Trial::prepare(&tree, &work, Duration::from_secs(enough));
    let mut found = before.clone();
    for (number, Mutant { file, site, .. }) in &mutants {
        if before.get(number).is_some_and(|result| !is_open(result)) {
            continue;
        }
        let result = trial.of(*number, file);
        println!("{number}\t{}:{}\t{}\t{result}", file.display(), site.line, site.change);
        found.insert(*number, result);
        let mut lines = "mutant\tplace\tchange\tresult\n".to_owned();
        for (number, result) in &found {
            let Mutant { file, site, .. } = &mutants[number];
            let place = format!("{}:{}", file.display(), site.line);
            lines += &format!("{number}\t{place}\t{}\t{result}\n", site.change);
        }
        fs::write(&results, lines).expect("written");
    }
    let open = |word: &str| found.values().filter(|result| *result == word).count();
    let (missed, unreached) = (open("missed"), open("not reached"));
    let caught = found.len() - missed - unreached;
    println!(
        "{caught} caught, {missed} missed, {unreached} not reached: {}",
        results.display()
    );
}

fn is_open(result: &str) -> bool {
    ["missed", "not reached"].contains(&result)
}

/// What an earlier run found, by the number of the mutant.
fn read_results(file: &Path) -> BTreeMap<usize, String> {
    let text = fs::read_to_string(file).unwrap_or_default();
    let rows = text.lines().skip(1).filter_map(|line| {
        let number = line.split('\t').next()?.parse().ok()?;
        Some((number, line.rsplit('\t').next()?.to_owned()))
    });
    rows.collect()
}

fn read(path: &Path) -> String {
    fs::read_to_string(path).unwrap_or_else(|error| panic!("{}: {error}", path.display()))
}

/// A tree of files before it is written: path from the root → what it holds.
type Files = BTreeMap<PathBuf, Vec<u8>>;

/// The files that git knows, as they stand now, and those that are new.
fn copied(root: &Path) -> Files {
    let listed = Command::new("git")
        .args(["ls-files", "-z", "--cached", "--others", "--exclude-standard"])
        .current_dir(root)
        .output();
    let listed =
        String::from_utf8(listed.expect("git is here").stdout).expect("names are text");
    let mut files = Files::new();
    for name in listed.split('\0').filter(|name| !name.is_empty()) {
        match fs::read(root.join(name)) {
            Ok(bytes) => _ = files.insert(PathBuf::from(name), bytes),
            Err(error) => println!("left out: {name}: {error}"),
        }
    }
    files
}

/// Writes what differs, so that only that is compiled again.
fn put(tree: &Path, files: &Files, root: &Path) {
    for (name, bytes) in files {
        let to = tree.join(name);
        if fs::read(&to).ok().as_deref() != Some(bytes) {
            fs::create_dir_all(to.parent().expect("inside the tree")).expect("made");
            fs::write(&to, bytes).expect("written");
            if let Ok(known) = fs::metadata(root.join(name)) {
                fs::set_permissions(&to, known.permissions()).expect("ours");
            }
        }
    }
}

fn text<'f>(files: &'f Files, name: &Path) -> &'f str {
    std::str::from_utf8(&files[name]).expect("it is text")
}

/// The crate with the switch, and every crate's dependency on it.
fn add_switch(files: &mut Files) {
    let manifest =
        "[package]\nname = \"spinney-switch\"\nversion = \"0.1.0\"\nedition = \"2024\"\n";
    files.insert("mutant_switch/Cargo.toml".into(), manifest.into());
    files.insert("mutant_switch/src/lib.rs".into(), include_str!("switch.rs").into());
    for crate_ in crates(files) {
        let path = crate_.join("Cargo.toml");
        let dependency = "spinney-switch = { path = \"../../mutant_switch\" }";
        let text = text(files, &path);
        let text = match text.contains("\n[dependencies]\n") {
            true => {
                let with = format!("\n[dependencies]\n{dependency}\n");
                text.replacen("\n[dependencies]\n", &with, 1)
            }
            false => format!("{text}\n[dependencies]\n{dependency}\n"),
        };
        files.insert(path, text.into());
    }
    let path = PathBuf::from("Cargo.toml");
    let text =
        text(files, &path).replace("[\"crates/*\"]", "[\"crates/*\", \"mutant_switch\"]");
    // Warnings of code that nobody will read.
    let text = text.replace("= \"warn\"", "= \"allow\"").replace("= \"deny\"", "= \"allow\"");
    files.insert(path, text.into());
}

fn crates(files: &Files) -> Vec<PathBuf> {
    let manifests = files.keys().filter(|name| name.ends_with("Cargo.toml"));
    let folders = manifests.filter_map(|name| name.parent());
    folders.filter(|name| name.parent() == Some("crates".as_ref())).map(PathBuf::from).collect()
}

/// Whether a file is a source of a crate, and no test and nothing that only tests use.
fn is_source(name: &Path) -> bool {
    let mut parts = name.iter().map(|part| part.to_str().unwrap_or(""));
    let (room, crate_, src) = (parts.next(), parts.next(), parts.next());
    let rest: Vec<&str> = parts.collect();
    let tests = ["tests", "tests.rs", "schema.rs"];
    (room, src) == (Some("crates"), Some("src"))
        && crate_ != Some("fixtures")
        && name.extension().is_some_and(|end| end == "rs")
        && !rest.iter().any(|part| tests.contains(part))
}

fn chosen(files: &Files, seed: u64, count: usize) -> BTreeMap<usize, Mutant> {
    let mut all = Vec::new();
    for file in files.keys().filter(|name| is_source(name)) {
        let parsed = syn::parse_file(text(files, file)).expect("the tree compiles");
        for (place, site) in sites::sites(&parsed).into_iter().enumerate() {
            all.push(Mutant { file: file.clone(), place, site });
        }
    }
    println!("{} places where a line can be made wrong", all.len());
    fastrand::Rng::with_seed(seed).shuffle(&mut all);
    all.into_iter().take(count).enumerate().collect()
}

fn write_switched(files: &mut Files, originals: &Files, mutants: &BTreeMap<usize, Mutant>) {
    for file in originals.keys() {
        let here = mutants.iter().filter(|(_, mutant)| mutant.file == *file);
        let here: BTreeMap<usize, usize> =
            here.map(|(number, mutant)| (mutant.place, *number)).collect();
        let parsed = syn::parse_file(text(originals, file)).expect("it was parsed before");
        let switched = prettyplease::unparse(&sites::switched(&parsed, &here));
        files.insert(file.clone(), switched.into());
    }
}

/// The mutants at which the compiler stops.
fn uncompilable(tree: &Path, work: &Path) -> BTreeSet<usize> {
    let checked = Command::new("cargo")
        .args(["check", "--workspace", "--keep-going", "--message-format=json", "--offline"])
        .current_dir(tree)
        .env("CARGO_TARGET_DIR", work.join("build"))
        .output()
        .expect("cargo is here");
    let mut wrong = BTreeSet::new();
    let mut errors = Vec::new();
    for line in String::from_utf8_lossy(&checked.stdout).lines() {
        let Ok(message) = serde_json::from_str::<serde_json::Value>(line) else { continue };
        if message["message"]["level"] != "error" {
            continue;
        }
        errors.push(message["message"]["rendered"].as_str().unwrap_or("").to_owned());
        for span in message["message"]["spans"].as_array().into_iter().flatten() {
            let (Some(file), Some(line)) =
                (span["file_name"].as_str(), span["line_start"].as_u64())
            else {
                continue;
            };
            let path = tree.join(file);
            let Ok(text) = fs::read_to_string(path) else { continue };
            wrong.extend(switch_at(&text, line as usize));
        }
    }
    if !checked.status.success() && wrong.is_empty() {
        panic!("the tree does not compile, and no mutant stands where:\n{}", errors.join("\n"));
    }
    wrong
}

/// The switch that stands on a line, or the last one a few lines before it.
fn switch_at(text: &str, line: usize) -> Option<usize> {
    let lines: Vec<&str> = text.lines().collect();
    let from = line.saturating_sub(9);
    lines[from..line.min(lines.len())].iter().rev().find_map(|text| {
        let after = text.rsplit_once("spinney_switch::on(")?.1;
        after.split(|sign: char| !sign.is_ascii_digit()).next()?.parse().ok()
    })
}
