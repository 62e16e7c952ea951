//! No command writes over what it reads: by its path, by a link, with and without `--force`.

use std::collections::{BTreeMap, BTreeSet};
use std::fs;
use std::path::{Path, PathBuf};

#[path = "program/run.rs"]
mod run;

use run::spinney;

const TABLE: &str = "kind,edge,lobes\nhazel,toothed,unlobed\nyew,smooth,unlobed\n\
                     hawthorn,toothed,lobed\n";
const KEY: &str = "1. Is the edge toothed? Yes -> 2, No -> yew\n\
                   2. Is the lobes lobed? Yes -> hawthorn, No -> hazel\n";

/// One way to write over an input.
struct Case {
    /// What is typed, apart from `--force`.
    typed: &'static [&'static str],
    /// What is read, as it is called on the disk.
    input: &'static str,
    /// Where it would be written over. The same as the input: there is nothing to link.
    output: &'static str,
    /// Whether the command knows `--force`.
    force: bool,
}

const fn case(
    typed: &'static [&'static str],
    input: &'static str,
    output: &'static str,
    force: bool,
) -> Case {
    Case { typed, input, output, force }
}

/// Every command that reads and writes, each with every place that it writes to.
const CASES: &[Case] = &[
    case(&["table", ".", "--out", "."], "table.csv", "table.csv", true),
    case(&["table", "finds.csv", "--out", "visit"], "finds.csv", "visit/table.csv", true),
    case(&["table", "finds.csv", "--out", "visit"], "finds.csv", "visit/about.csv", true),
    case(
        &["table", "finds.csv", "--kinds", "kinds.csv", "--out", "visit"],
        "kinds.csv",
        "visit/kinds.csv",
        true,
    ),
    case(&["key", "finds.csv", "--out", "visit"], "finds.csv", "visit/key.txt", true),
    case(&["key", "finds.csv", "--out", "visit"], "finds.csv", "visit/today.pdf", true),
    case(&["key", "finds.csv", "--out", "visit"], "finds.csv", "visit/findings.txt", true),
    case(
        &["key", "finds.csv", "--out", "visit"],
        "finds.csv",
        "visit/made-by-spinney.txt",
        true,
    ),
    case(&["check", "finds.csv", "--key", "key.txt", "--out", "."], "key.txt", "key.txt", true),
    case(
        &["check", "finds.csv", "--key", "ours.txt", "--out", "visit"],
        "ours.txt",
        "visit/opinion.txt",
        true,
    ),
    case(
        &["check", "finds.csv", "--key", "ours.txt", "--write-links", "ours.txt"],
        "ours.txt",
        "ours.txt",
        true,
    ),
    case(
        &["check", "finds.csv", "--key", "ours.txt", "--write-links", "to.txt"],
        "finds.csv",
        "to.txt",
        true,
    ),
    case(
        &[
            "check",
            "finds.csv",
            "--key",
            "ours.txt",
            "--links",
            "links.txt",
            "--write-links",
            "to.txt",
        ],
        "links.txt",
        "to.txt",
        true,
    ),
    case(&["measure", "leaves.csv", "--out", "."], "leaves.csv", "leaves.csv", true),
    case(
        &["measure", "leaves.csv", "--out", "visit"],
        "leaves.csv",
        "visit/leaves-leaf-01.png",
        true,
    ),
    case(
        &["revise", "finds.csv", "--old", "key.txt", "--out", "."],
        "key.txt",
        "key.txt",
        true,
    ),
    case(
        &["revise", "finds.csv", "--old", "ours.txt", "--out", "visit"],
        "ours.txt",
        "visit/changes.txt",
        true,
    ),
    case(&["pack", "walk.spinney", "walk.spinney"], "walk.spinney", "walk.spinney", true),
    case(&["pack", "walk.spinney", "walk.zip"], "walk.spinney", "walk.zip", true),
    case(&["unpack", "packed.zip", "packed.zip"], "packed.zip", "packed.zip", false),
    case(&["unpack", "packed.zip", "new.spinney"], "packed.zip", "new.spinney", false),
    case(&["rescue", "walk.spinney", "walk.spinney"], "walk.spinney", "walk.spinney", false),
    case(&["rescue", "packed.zip", "new.spinney"], "packed.zip", "new.spinney", false),
];

/// A file that comes by stdin is read as much as one that is named.
#[test]
fn a_file_that_comes_by_stdin_is_not_written_over() {
    for (way, typed, input) in [
        ("table", &["table", "-", "--out", ".", "--force"][..], "table.csv"),
        ("key", &["key", "-", "--out", "visit", "--force"], "visit/key.txt"),
        (
            "check",
            &["check", "finds.csv", "--key", "-", "--write-links", "ours.txt", "--force"],
            "ours.txt",
        ),
    ] {
        let desk = desk(&format!("stdin {way}"));
        if way == "key" {
            fs::create_dir(desk.join("visit")).expect("made");
            fs::write(desk.join(input), TABLE).expect("written");
        }
        let before = all(&desk);
        let file = fs::File::open(desk.join(input)).expect("there");
        let mut command = std::process::Command::new(env!("CARGO_BIN_EXE_spinney"));
        let output = command.args(typed).current_dir(&desk).stdin(file).output().expect("runs");
        let said = String::from_utf8_lossy(&output.stderr).into_owned();
        assert_eq!(output.status.code(), Some(2), "{typed:?}: {said}");
        assert!(said.contains("which it was made from"), "{typed:?}: {said}");
        assert!(all(&desk) == before, "{typed:?} changed something");
    }
}

/// Commands that read nothing (`template`, `pocket`, `demo`), or write no file that is named to them.
const NO_CASE: [&str; 8] =
    ["open", "demo", "explain", "weak", "spread", "forgive", "template", "pocket"];

fn desk(name: &str) -> PathBuf {
    let folder = Path::new(env!("CARGO_TARGET_TMPDIR")).join("own_input").join(name);
    let _ = fs::remove_dir_all(&folder);
    fs::create_dir_all(&folder).expect("a folder for one case");
    for (name, text) in [
        ("finds.csv", TABLE),
        ("table.csv", TABLE),
        ("kinds.csv", "kind,caution\nyew,It is poisonous.\n"),
        ("ours.txt", KEY),
        ("key.txt", KEY),
        ("links.txt", ""),
    ] {
        fs::write(folder.join(name), text).expect("written");
    }
    // What a picture is called says nothing of what it is.
    fs::write(folder.join("leaves.csv"), drawn_leaf()).expect("written");
    let store = spinney_store::Store::create(&folder.join("walk.spinney"));
    let line = br#"{"v":1,"at":0,"edits":[{"add_kind":{"kind":1,"name":"yew"}}]}"#.to_vec();
    store.and_then(|mut store| store.append(0, &[line], &[])).expect("a collection");
    let packed = spinney(&folder, &["pack", "walk.spinney", "packed.zip"], "");
    assert!(packed.status.success());
    folder
}

/// A dark ellipse on white paper.
fn drawn_leaf() -> Vec<u8> {
    let leaf = image::RgbImage::from_fn(120, 160, |x, y| {
        let (across, down) = ((f64::from(x) - 60.0) / 30.0, (f64::from(y) - 80.0) / 60.0);
        image::Rgb(if across.hypot(down) < 1.0 { [60, 100, 50] } else { [250; 3] })
    });
    let mut file = std::io::Cursor::new(Vec::new());
    leaf.write_to(&mut file, image::ImageFormat::Png).expect("a picture can be written");
    file.into_inner()
}

/// Everything in a folder: links as where they lead, files as their bytes.
fn all(folder: &Path) -> BTreeMap<PathBuf, Vec<u8>> {
    let mut found = BTreeMap::new();
    let mut open = vec![folder.to_owned()];
    while let Some(folder) = open.pop() {
        for entry in fs::read_dir(folder).expect("it can be read") {
            let path = entry.expect("an entry").path();
            let there = fs::symlink_metadata(&path).expect("it is there");
            let bytes = if there.is_symlink() {
                let to = fs::read_link(&path).expect("it leads somewhere");
                to.into_os_string().into_encoded_bytes()
            } else if there.is_dir() {
                open.push(path.clone());
                Vec::new()
            } else {
                fs::read(&path).expect("it can be read")
            };
            found.insert(path, bytes);
        }
    }
    found
}

#[test]
fn no_command_writes_over_its_own_input() {
    /// Makes the output another name of the input.
    type Linked = fn(&Path, &Path);
    let ways: [(&str, Linked); 3] = [
        ("path", |_, _| ()),
        ("hard link", |input, output| fs::hard_link(input, output).expect("linked")),
        ("link", |input, output| {
            std::os::unix::fs::symlink(input, output).expect("linked");
        }),
    ];
    let mut tried = 0;
    for (at, case) in CASES.iter().enumerate() {
        for (way, link) in &ways {
            // By its path where input and output are called the same, by links otherwise.
            if (*way == "path") != (case.input == case.output) {
                continue;
            }
            let desk = desk(&format!("{at} {way}"));
            if case.output.starts_with("visit/") {
                fs::create_dir(desk.join("visit")).expect("made");
            }
            link(&desk.join(case.input), &desk.join(case.output));
            let before = all(&desk);
            let forced: &[&str] = if case.force { &["--force"] } else { &[] };
            for more in [&[][..], forced] {
                let typed = [case.typed, more].concat();
                let output = spinney(&desk, &typed, "");
                let said = String::from_utf8_lossy(&output.stderr).into_owned();
                assert_eq!(output.status.code(), Some(2), "{typed:?} by {way}: {said}");
                let sentence = said.contains("which it was made from")
                    && said.contains("Nothing was changed.");
                assert!(sentence, "{typed:?} by {way}: {said}");
                assert!(all(&desk) == before, "{typed:?} by {way} changed something");
                tried += 1;
            }
        }
    }
    assert!(tried > 60, "only {tried} tries");
}

/// A command that is new has to say here what it writes.
#[test]
fn every_command_is_in_the_table() {
    let desk = desk("help");
    let help = spinney(&desk, &["--help"], "");
    let help = String::from_utf8(help.stdout).expect("text");
    let verbs: BTreeSet<&str> = help
        .split("Commands:")
        .nth(1)
        .expect("the help lists the commands")
        .lines()
        .skip(1)
        .take_while(|line| line.starts_with("  "))
        .filter_map(|line| line.strip_prefix("  ")?.split(' ').next())
        .filter(|verb| !verb.is_empty() && *verb != "help")
        .collect();
    assert!(verbs.len() > 10, "{verbs:?}");
    let in_table: BTreeSet<&str> = CASES.iter().map(|case| case.typed[0]).collect();
    let no_case: BTreeSet<&str> = NO_CASE.into_iter().collect();
    let known: BTreeSet<&str> = in_table.union(&no_case).copied().collect();
    assert_eq!(verbs, known);
    for verb in NO_CASE {
        let help = spinney(&desk, &[verb, "--help"], "");
        let help = String::from_utf8(help.stdout).expect("text");
        let writes = help.contains("--out ") || help.contains("--write");
        assert_eq!(writes, verb == "demo", "{verb} writes: {help}");
    }
}

#[test]
fn two_things_are_not_written_to_one_place() {
    let desk = desk("twice");
    let typed = ["check", "finds.csv", "--key", "ours.txt", "--out", "visit", "--write-links"];
    for place in ["visit/key.txt", "./visit/../visit/key.txt"] {
        fs::create_dir_all(desk.join("visit")).expect("made");
        let before = all(&desk);
        let output = spinney(&desk, &[&typed[..], &[place, "--force"]].concat(), "");
        let said = String::from_utf8_lossy(&output.stderr).into_owned();
        assert_eq!(output.status.code(), Some(2), "{said}");
        assert!(said.contains("Two different things"), "{said}");
        assert!(all(&desk) == before);
    }
}
