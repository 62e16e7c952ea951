//! The rules of `ARCHITECTURE.md` and `CONTRIBUTING.md` as tests: edges between crates, the top
//! of every file, names, findings.

use std::collections::{BTreeMap, BTreeSet};
use std::fs;
use std::path::{Path, PathBuf};

fn root() -> PathBuf {
    Path::new(env!("CARGO_MANIFEST_DIR")).ancestors().nth(2).expect("two up").to_owned()
}

fn rust_files() -> Vec<PathBuf> {
    let mut files = Vec::new();
    let mut open = vec![root().join("crates")];
    while let Some(folder) = open.pop() {
        for entry in fs::read_dir(folder).expect("a folder can be read") {
            let path = entry.expect("an entry can be read").path();
            if path.is_dir() {
                open.push(path);
            } else if path.extension().is_some_and(|ending| ending == "rs") {
                files.push(path);
            }
        }
    }
    files.sort();
    assert!(files.len() > 50, "the search for files has lost its way");
    files
}

/// Which of our crates each crate may depend on; dev-dependencies may add `fixtures`.
fn allowed() -> BTreeMap<&'static str, Vec<&'static str>> {
    BTreeMap::from([
        ("model", vec![]),
        ("build", vec!["model"]),
        ("check", vec!["model"]),
        ("exchange", vec!["model"]),
        ("voice", vec!["model"]),
        ("press", vec!["model", "voice"]),
        ("draw", vec!["model"]),
        ("measure", vec!["model"]),
        ("fixtures", vec!["model"]),
        ("store", vec![]),
        ("collection", vec!["model", "voice", "build", "check", "exchange"]),
        (
            "desk",
            vec![
                "model",
                "voice",
                "build",
                "check",
                "exchange",
                "press",
                "draw",
                "measure",
                "collection",
            ],
        ),
        ("pocket", vec!["model", "voice", "exchange", "desk"]),
        (
            "spinney",
            vec![
                "model",
                "voice",
                "build",
                "check",
                "exchange",
                "press",
                "draw",
                "measure",
                "store",
                "collection",
                "desk",
            ],
        ),
    ])
}

#[test]
fn crates_depend_only_on_whom_the_house_allows() {
    let allowed = allowed();
    let mut met = 0;
    for entry in fs::read_dir(root().join("crates")).expect("there are crates") {
        let folder = entry.expect("an entry can be read").path();
        let name =
            folder.file_name().and_then(|name| name.to_str()).expect("a name").to_owned();
        let may = allowed.get(name.as_str()).unwrap_or_else(|| panic!("who is {name}?"));
        let manifest = fs::read_to_string(folder.join("Cargo.toml")).expect("a manifest");
        let mut section = "";
        for line in manifest.lines() {
            if line.starts_with('[') {
                section = line;
            }
            let Some(edge) = line.strip_prefix("spinney-") else { continue };
            let edge = edge.split(['.', ' ', '=']).next().expect("a name");
            met += 1;
            let fine = match section {
                "[dependencies]" => may.contains(&edge),
                "[dev-dependencies]" => edge == "fixtures",
                _ => false,
            };
            assert!(fine, "{name} must not depend on {edge} under {section}");
        }
    }
    assert!(met > 5, "the manifests were not read");
}

#[test]
fn every_file_says_at_its_top_what_it_is() {
    let files = rust_files();
    // A walk that finds nothing would find nothing wrong.
    assert!(files.len() > 300, "only {} files were found", files.len());
    for path in files {
        let text = fs::read_to_string(&path).expect("a file of ours is text");
        assert!(text.starts_with("//! "), "{} does not say what it is", path.display());
    }
}

#[test]
fn no_file_is_called_after_nothing() {
    let empty = ["utils", "helpers", "common", "misc", "types", "manager", "core", "mod"];
    let files = rust_files();
    assert!(files.iter().any(|path| path.ends_with("exchange/src/table.rs")), "{files:?}");
    for path in files {
        let stem = path.file_stem().and_then(|stem| stem.to_str()).unwrap_or_default();
        assert!(!empty.contains(&stem), "{} needs a name of the trade", path.display());
    }
}

/// Files without their tests: the median at most 180 lines, none over 600.
#[test]
fn files_are_one_thing() {
    let mut lengths: Vec<(usize, PathBuf)> = rust_files()
        .into_iter()
        .filter(|path| {
            let inside = |name: &str| path.components().any(|part| part.as_os_str() == name);
            !inside("tests") && !inside("benches") && !path.ends_with("tests.rs")
        })
        .map(|path| {
            let text = fs::read_to_string(&path).expect("a file of ours is text");
            (text.lines().count(), path)
        })
        .collect();
    lengths.sort();
    let (median, _) = lengths[lengths.len() / 2];
    assert!(median <= 180, "the median file has {median} lines");
    let (longest, path) = lengths.last().expect("there are files");
    assert!(*longest <= 600, "{} has {longest} lines: is it one thing?", path.display());
}

#[test]
fn every_finding_has_its_heading() {
    let page = fs::read_to_string(root().join("docs/findings.md")).expect("the page is there");
    let headings: Vec<&str> =
        page.lines().filter_map(|line| line.strip_prefix("### ")).map(str::trim).collect();
    let codes: Vec<&str> = spinney_model::Code::ALL.iter().map(|code| code.text()).collect();
    assert_eq!(headings, codes, "one heading a code, in the order of the code");
}

/// One writer for everything that a terminal gets: `crates/spinney/src/terminal.rs`.
#[test]
fn nothing_writes_to_the_terminal_but_its_one_writer() {
    let writers =
        ["print!(", "println!(", "eprint!(", "eprintln!(", "io::stdout()", "io::stderr()"];
    let mut looked = 0;
    for path in rust_files() {
        let name = path.to_string_lossy().replace('\\', "/");
        let rooms_do_not_write = !name.contains("/crates/spinney/src/");
        if rooms_do_not_write || name.ends_with("/terminal.rs") || name.contains("/tests") {
            continue;
        }
        looked += 1;
        let text = fs::read_to_string(&path).expect("a file of ours is text");
        let code = text.split("#[cfg(test)]").next().unwrap_or_default();
        for writer in writers {
            assert!(!code.contains(writer), "{name}: {writer} must go through the one writer");
        }
    }
    assert!(looked > 40, "{looked} files");
}

/// The rooms that have no sentence: what they find, and why they fail, is data until `voice` says
/// it. `model` has the reasons of its limits, which are for a page of the docs.
const SPEECHLESS: [&str; 11] = [
    "build",
    "check",
    "collection",
    "desk",
    "draw",
    "exchange",
    "measure",
    "pocket",
    "press",
    "store",
    "spinney",
];

/// What is no sentence of a room all the same: the help of the command line, which clap makes of
/// its options.
const NOT_SAID: [&str; 4] = [
    "spinney/src/args.rs",
    "spinney/src/args/measure.rs",
    "spinney/src/args/screens.rs",
    "spinney/src/args/table.rs",
];

/// The texts in code, without its comments: what stands between quotation marks.
fn texts(code: &str) -> Vec<String> {
    let signs: Vec<char> = code.chars().collect();
    let at = |place: usize| signs.get(place).copied().unwrap_or(' ');
    let mut texts = Vec::new();
    let mut place = 0;
    while place < signs.len() {
        match (at(place), at(place + 1)) {
            ('/', '/') => {
                while place < signs.len() && at(place) != '\n' {
                    place += 1;
                }
            }
            // A single sign: its quotation mark begins no text.
            ('\'', '\\') => place += 4,
            ('\'', _) if at(place + 2) == '\'' => place += 3,
            ('r', '#') if at(place + 2) == '"' => {
                let end = (place + 3..signs.len())
                    .find(|end| at(*end) == '"' && at(end + 1) == '#')
                    .unwrap_or(signs.len());
                texts.push(signs[place + 3..end].iter().collect());
                place = end + 2;
            }
            ('"', _) => {
                let mut text = String::new();
                place += 1;
                while place < signs.len() && at(place) != '"' {
                    match (at(place), at(place + 1)) {
                        ('\\', '\n') => {
                            place += 1;
                            while at(place).is_whitespace() && place < signs.len() {
                                place += 1;
                            }
                        }
                        ('\\', sign) => {
                            text.push(if sign == 'n' { '\n' } else { sign });
                            place += 2;
                        }
                        (sign, _) => {
                            text.push(sign);
                            place += 1;
                        }
                    }
                }
                texts.push(text);
                place += 1;
            }
            _ => place += 1,
        }
    }
    texts
}

/// Whether a text is a sentence for a person: it begins with a capital or a gap, has three words,
/// and ends as sentences do.
fn is_sentence(text: &str) -> bool {
    let text = text.trim();
    let bare = text.trim_end_matches(['"', '”', '’', ')']);
    let words = text.split_whitespace().filter(|word| {
        word.chars().filter(|sign| sign.is_alphabetic()).count() > 1 && !word.contains("::")
    });
    let begins = |sign: char| sign.is_uppercase() || matches!(sign, '{' | '“' | '"');
    words.count() >= 3 && bare.ends_with(['.', '?', '!']) && text.starts_with(begins)
}

#[test]
fn no_room_but_voice_has_a_sentence() {
    let mut for_tests = BTreeSet::new();
    let mut files = Vec::new();
    for path in rust_files() {
        let name = path.to_string_lossy().replace('\\', "/");
        let Some((_, inside)) = name.split_once("/crates/") else { continue };
        let inside = inside.to_owned();
        let room = inside.split('/').next().unwrap_or_default();
        if !SPEECHLESS.contains(&room) || !inside.starts_with(&format!("{room}/src/")) {
            continue;
        }
        let text = fs::read_to_string(&path).expect("a file of ours is text");
        let of = inside.trim_end_matches(".rs").trim_end_matches("/lib");
        let parts = text.split("#[cfg(test)]\n").skip(1);
        let parts = parts.filter_map(|part| part.lines().next()?.split_once("mod "));
        let parts = parts.filter_map(|(_, part)| part.split([';', ' ']).next());
        for_tests.extend(parts.map(|part| format!("{of}/{part}")));
        files.push((inside, text));
    }
    assert!(files.len() > 400, "only {} files", files.len());
    let mut said = Vec::new();
    for (inside, text) in &files {
        let of_a_test = for_tests.iter().any(|test| inside.starts_with(test.as_str()));
        if of_a_test || NOT_SAID.contains(&inside.as_str()) {
            continue;
        }
        let code = text.split("#[cfg(test)]\nmod tests {").next().unwrap_or_default();
        let found = texts(code).into_iter().filter(|text| is_sentence(text));
        said.extend(found.map(|text| format!("{inside}: {text}")));
    }
    assert!(said.is_empty(), "{} sentences:\n{}", said.len(), said.join("\n"));
}

/// A search that finds nothing would prove nothing.
#[test]
fn a_sentence_in_code_would_be_found() {
    let code = r##"let quote = '"'; // "Not this one."
        Err(format!("{file} is \
                     damaged, \"quite\"."))"##;
    assert_eq!(texts(code), ["{file} is damaged, \"quite\"."]);
    assert!(is_sentence("{file} is damaged, quite."));
    assert!(is_sentence("Is it toothed?\n"));
    for text in ["every field has its column", "error-kept-full", "{low} to {high}", "A. B."] {
        assert!(!is_sentence(text), "{text}");
    }
}

/// `docs/limits.md` is the table of limits as a page.
#[test]
fn every_limit_stands_on_its_page() {
    let page = fs::read_to_string(root().join("docs/limits.md")).expect("the page is there");
    let rows: Vec<&str> = page.lines().filter(|line| line.starts_with("| ")).skip(2).collect();
    let limits: Vec<String> =
        spinney_model::limits::ALL.iter().map(spinney_model::limits::Limit::row).collect();
    assert_eq!(rows, limits, "one row a limit, in the order of the table");
    assert!(limits.len() > 30, "{} limits", limits.len());
}

/// The files of a crate by their module path: `pages::heaps::card`; the crate's own file by none.
fn modules(source: &Path) -> BTreeMap<Vec<String>, String> {
    let of = |path: &PathBuf| {
        let inside = path.strip_prefix(source).ok()?.with_extension("");
        let parts = inside.iter().map(|part| part.to_string_lossy().into_owned());
        let path_of: Vec<String> = parts.filter(|part| part != "lib").collect();
        let text = fs::read_to_string(path).expect("a file of ours is text");
        // What only tests name is no edge between rooms.
        let text = text.split("#[cfg(test)]").next().unwrap_or_default();
        let code = text.lines().filter(|line| !line.trim_start().starts_with("//"));
        (path_of.last()? != "tests").then(|| (path_of, code.collect::<Vec<_>>().join("\n")))
    };
    let mut modules: BTreeMap<_, _> = rust_files().iter().filter_map(of).collect();
    // `lib.rs` has no last part; it is read apart.
    let face = fs::read_to_string(source.join("lib.rs")).expect("a crate has a face");
    modules.insert(Vec::new(), face);
    modules
}

/// The paths that a `use` tree names: `a::{b, c::d}` names `a::b` and `a::c::d`.
fn named(tree: &str) -> Vec<String> {
    let Some((head, inside)) = tree.split_once('{') else {
        return vec![tree.trim().to_owned()];
    };
    let inside = inside.trim_end().trim_end_matches('}');
    let (mut depth, mut parts) = (0, vec![String::new()]);
    for sign in inside.chars() {
        depth += i32::from(sign == '{') - i32::from(sign == '}');
        match sign {
            ',' if depth == 0 => parts.push(String::new()),
            sign => parts.last_mut().expect("there is one").push(sign),
        }
    }
    let parts = parts.iter().filter(|part| !part.trim().is_empty());
    parts.flat_map(|part| named(&format!("{}{}", head.trim(), part.trim()))).collect()
}

/// The files that a file names by `crate::`, `super::` or one of its own parts.
fn edges(modules: &BTreeMap<Vec<String>, String>, from: &[String]) -> Vec<Vec<String>> {
    let text = &modules[from];
    let used = text.split("use ").skip(1).filter_map(|rest| rest.split(';').next());
    let mut paths: Vec<String> =
        used.flat_map(|tree| named(&tree.replace('\n', " "))).collect();
    let whole = |sign: char| !(sign.is_alphanumeric() || sign == '_' || sign == ':');
    paths.extend(
        text.split(whole)
            .filter(|word| word.contains("::") && !word.ends_with(':'))
            .map(str::to_owned),
    );
    let target = |path: &String| {
        let mut parts: Vec<String> = path.split("::").map(str::to_owned).collect();
        let mut place = match parts[0].as_str() {
            "crate" => Vec::new(),
            "super" => from[..from.len().checked_sub(1)?].to_vec(),
            first => {
                let own = [from, &[first.to_owned()]].concat();
                return modules.contains_key(&own).then_some(own);
            }
        };
        place.extend(
            parts.drain(1..).map(|part| part.split('<').next().unwrap_or("").to_owned()),
        );
        (0..=place.len()).rev().map(|n| place[..n].to_vec()).find(|at| modules.contains_key(at))
    };
    paths.iter().filter_map(target).filter(|at| at != from).collect()
}

/// Who reads one file of the screens need not read all of them: a screen's own file knows its
/// parts, and they do not know it.
#[test]
fn no_files_of_the_desk_import_each_other_in_a_circle() {
    let modules = modules(&root().join("crates/desk/src"));
    assert!(modules.len() > 60, "only {} files were found", modules.len());
    let edges: BTreeMap<_, _> = modules.keys().map(|of| (of, edges(&modules, of))).collect();
    assert!(edges.values().map(Vec::len).sum::<usize>() > 300, "the imports were not read");
    // Files that import nothing that is left go first; what cannot go is a circle.
    let mut left: Vec<_> = modules.keys().collect();
    loop {
        let before = left.len();
        let all = left.clone();
        left.retain(|of| edges[of].iter().any(|to| all.contains(&to)));
        if left.is_empty() {
            return;
        }
        assert!(left.len() < before, "these import each other in a circle: {left:?}");
    }
}
