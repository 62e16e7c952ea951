//! Makes one line wrong and sees whether a test notices: many mutants, one build.
//!
//! ```text
//! cargo run --release --manifest-path bench/mutants/Cargo.toml -- [SEED] [COUNT]
//! ```
//! From a seed to `target/mutants/result.tsv`: a line a mutant, with the test that caught it, or
//! `missed`, or `not reached`. The tree is copied; a sample of all places where a line can be made
//! wrong gets a switch; what does not compile is taken out; each test is run once to see which
//! mutants it reaches and how long it takes; then each mutant is switched on and the tests that
//! reach it are run, the quickest first, until one fails or does not end.
//!
//! A mutant that nobody can see the effect of (a bound that is only less tight, an order that
//! does not show) counts as missed here; whoever reads the list says which they are.

mod sites;
mod trying;

use std::collections::{BTreeMap, BTreeSet};
use std::path::{Path, PathBuf};
use std::process::Command;
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
    let root =
        Path::new(env!("CARGO_MANIFEST_DIR")).join("../..").canonicalize().expect("here");
    let work = root.join("target/mutants");
    let tree = work.join("tree");
    copy(&root, &tree);
    add_switch(&tree);

    let mut mutants = chosen(&tree, seed, (count as f64 * SPARE) as usize);
    println!("{} mutants chosen with seed {seed}", mutants.len());
    let originals: BTreeMap<PathBuf, String> = mutants
        .values()
        .map(|mutant| (mutant.file.clone(), read(&tree.join(&mutant.file))))
        .collect();
    loop {
        write_switched(&tree, &originals, &mutants);
        let wrong = uncompilable(&tree, &work);
        if wrong.is_empty() {
            break;
        }
        println!("{} do not compile and are taken out", wrong.len());
        mutants.retain(|number, _| !wrong.contains(number));
    }
    let spare: Vec<usize> = mutants.keys().skip(count).copied().collect();
    mutants.retain(|number, _| !spare.contains(number));
    println!("{} mutants are tried", mutants.len());

    let trial = Trial::prepare(&tree, &work);
    let mut lines = vec!["mutant\tplace\tchange\tresult".to_owned()];
    let mut sums: BTreeMap<&str, usize> = BTreeMap::new();
    for (number, Mutant { file, site, .. }) in &mutants {
        let result = trial.of(*number);
        let sort = match result.as_str() {
            "missed" | "not reached" => result.clone(),
            _ => "caught".to_owned(),
        };
        let sort = ["missed", "not reached", "caught"].into_iter().find(|word| *word == sort);
        *sums.entry(sort.expect("one of three")).or_default() += 1;
        let place = format!("{}:{}", file.display(), site.line);
        println!("{number}\t{place}\t{}\t{result}", site.change);
        lines.push(format!("{number}\t{place}\t{}\t{result}", site.change));
        fs::write(work.join("result.tsv"), lines.join("\n") + "\n").expect("written");
    }
    println!("{sums:?} of {}; {}", mutants.len(), work.join("result.tsv").display());
}

fn read(path: &Path) -> String {
    fs::read_to_string(path).unwrap_or_else(|error| panic!("{}: {error}", path.display()))
}

/// The files that git knows, as they stand now.
fn copy(root: &Path, tree: &Path) {
    let _ = fs::remove_dir_all(tree);
    let listed = Command::new("git").args(["ls-files", "-z"]).current_dir(root).output();
    let listed =
        String::from_utf8(listed.expect("git is here").stdout).expect("names are text");
    for name in listed.split('\0').filter(|name| !name.is_empty()) {
        let to = tree.join(name);
        fs::create_dir_all(to.parent().expect("inside the tree")).expect("made");
        if let Err(error) = fs::copy(root.join(name), &to) {
            println!("left out: {name}: {error}");
        }
    }
}

/// The crate with the switch, and every crate's dependency on it.
fn add_switch(tree: &Path) {
    let at = tree.join("mutant_switch");
    fs::create_dir_all(at.join("src")).expect("made");
    let manifest =
        "[package]\nname = \"spinney-switch\"\nversion = \"0.1.0\"\nedition = \"2024\"\n";
    fs::write(at.join("Cargo.toml"), manifest).expect("written");
    fs::write(at.join("src/lib.rs"), include_str!("switch.rs")).expect("written");
    for crate_ in folders(&tree.join("crates")) {
        let path = crate_.join("Cargo.toml");
        let dependency = "spinney-switch = { path = \"../../mutant_switch\" }";
        let mut text = read(&path);
        match text.contains("\n[dependencies]\n") {
            true => {
                text = text.replacen(
                    "\n[dependencies]\n",
                    &format!("\n[dependencies]\n{dependency}\n"),
                    1,
                );
            }
            false => text += &format!("\n[dependencies]\n{dependency}\n"),
        }
        fs::write(path, text).expect("written");
    }
    let path = tree.join("Cargo.toml");
    let text = read(&path).replace("[\"crates/*\"]", "[\"crates/*\", \"mutant_switch\"]");
    // Warnings of code that nobody will read.
    let text = text.replace("= \"warn\"", "= \"allow\"").replace("= \"deny\"", "= \"allow\"");
    fs::write(path, text).expect("written");
}

fn folders(at: &Path) -> Vec<PathBuf> {
    let entries = fs::read_dir(at).expect("a folder").map(|entry| entry.expect("read").path());
    let mut folders: Vec<PathBuf> = entries.filter(|path| path.is_dir()).collect();
    folders.sort();
    folders
}

/// The sources of the crates, tests and what only tests use apart.
fn sources(at: &Path, into: &mut Vec<PathBuf>) {
    let mut entries: Vec<PathBuf> =
        fs::read_dir(at).expect("a folder").map(|entry| entry.expect("read").path()).collect();
    entries.sort();
    for path in entries {
        let name = path.file_name().and_then(|name| name.to_str()).unwrap_or("").to_owned();
        if path.is_dir() && name != "tests" {
            sources(&path, into);
        } else if name.ends_with(".rs") && name != "tests.rs" && name != "schema.rs" {
            into.push(path);
        }
    }
}

fn chosen(tree: &Path, seed: u64, count: usize) -> BTreeMap<usize, Mutant> {
    let mut all = Vec::new();
    for crate_ in folders(&tree.join("crates")) {
        if crate_.ends_with("fixtures") {
            continue;
        }
        let mut files = Vec::new();
        sources(&crate_.join("src"), &mut files);
        for file in files {
            let parsed = syn::parse_file(&read(&file)).expect("the tree compiles");
            let name = file.strip_prefix(tree).expect("inside").to_owned();
            for (place, site) in sites::sites(&parsed).into_iter().enumerate() {
                all.push(Mutant { file: name.clone(), place, site });
            }
        }
    }
    println!("{} places where a line can be made wrong", all.len());
    fastrand::Rng::with_seed(seed).shuffle(&mut all);
    all.into_iter().take(count).enumerate().collect()
}

fn write_switched(
    tree: &Path,
    originals: &BTreeMap<PathBuf, String>,
    mutants: &BTreeMap<usize, Mutant>,
) {
    for (file, text) in originals {
        let here = mutants.iter().filter(|(_, mutant)| mutant.file == *file);
        let here: BTreeMap<usize, usize> =
            here.map(|(number, mutant)| (mutant.place, *number)).collect();
        let parsed = syn::parse_file(text).expect("it was parsed before");
        let switched = prettyplease::unparse(&sites::switched(&parsed, &here));
        let path = tree.join(file);
        if fs::read_to_string(&path).ok().as_deref() != Some(&switched) {
            fs::write(path, switched).expect("written");
        }
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
