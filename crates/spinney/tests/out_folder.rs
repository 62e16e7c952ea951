//! A folder that is written into: what is a person's stays, and no folder mixes two keys.

use std::collections::BTreeMap;
use std::fs;
use std::path::{Path, PathBuf};
use std::process::{Command, Output};

#[path = "program/run.rs"]
mod run;

use run::spinney;

const FINDS: &str = "kind,edge,lobes\nhazel,toothed,unlobed\nyew,smooth,unlobed\n\
                     hawthorn,toothed,lobed\n";
const OTHERS: &str = "kind,shell,legs\nsnail,yes,none\nslug,no,none\nwoodlouse,no,many\n";

fn desk(name: &str) -> PathBuf {
    let folder = Path::new(env!("CARGO_TARGET_TMPDIR")).join("out_folder").join(name);
    let _ = fs::remove_dir_all(&folder);
    fs::create_dir_all(&folder).expect("a folder for one story");
    fs::write(folder.join("finds.csv"), FINDS).expect("written");
    fs::write(folder.join("others.csv"), OTHERS).expect("written");
    folder
}

fn key(desk: &Path, table: &str, more: &[&str]) -> Output {
    let typed = [&["key", table, "--out", "visit", "--date", "today"], more].concat();
    spinney(desk, &typed, "")
}

fn complained(output: &Output) -> String {
    String::from_utf8_lossy(&output.stderr).into_owned()
}

/// The files of a folder with their bytes. **Panics** if a half-made one was left.
fn files(folder: &Path) -> BTreeMap<String, Vec<u8>> {
    let entries = fs::read_dir(folder).into_iter().flatten();
    let files = entries.map(|entry| {
        let entry = entry.expect("an entry");
        let name = entry.file_name().into_string().expect("a name of ours is text");
        assert!(!name.ends_with(".part"), "{name} was left");
        let bytes = fs::read(entry.path()).unwrap_or_default();
        (name, bytes)
    });
    files.collect()
}

#[test]
fn what_a_person_put_into_the_folder_is_replaced_only_by_force() {
    let desk = desk("theirs");
    let visit = desk.join("visit");
    fs::create_dir(&visit).expect("made");
    fs::write(visit.join("key.txt"), "our own key, drawn by hand").expect("written");
    fs::write(visit.join("notes.txt"), "bring boots").expect("written");
    let before = files(&visit);
    let refused = key(&desk, "finds.csv", &[]);
    assert_eq!(refused.status.code(), Some(1), "{}", complained(&refused));
    assert!(complained(&refused).contains("key.txt is there already"));
    assert!(complained(&refused).contains("Nothing was changed."));
    assert_eq!(files(&visit), before);
    let forced = key(&desk, "finds.csv", &["--force"]);
    assert_eq!(forced.status.code(), Some(0), "{}", complained(&forced));
    assert!(files(&visit)["key.txt"].starts_with(b"1. Is the edge"));
    assert_eq!(files(&visit)["notes.txt"], b"bring boots");
    // From now on it is ours, until somebody changes it.
    assert_eq!(key(&desk, "finds.csv", &[]).status.code(), Some(0));
    fs::write(visit.join("key.txt"), "1. Is it prickly?").expect("written");
    let before = files(&visit);
    let refused = key(&desk, "finds.csv", &[]);
    assert_eq!(refused.status.code(), Some(1), "{}", complained(&refused));
    assert_eq!(files(&visit), before);
    assert_eq!(files(&desk).len(), 3, "nothing was left beside the folder");
}

#[test]
fn an_older_key_goes_as_a_whole() {
    let desk = desk("older");
    let visit = desk.join("visit");
    assert_eq!(key(&desk, "finds.csv", &[]).status.code(), Some(0));
    let first = files(&visit);
    assert!(first.contains_key("chart-a3.pdf"));
    // Twice: alone in the folder, and beside a file and a folder of somebody else.
    for beside in [false, true] {
        if beside {
            fs::create_dir(visit.join("photographs")).expect("made");
            fs::write(visit.join("photographs").join("a.jpg"), "a").expect("written");
            fs::write(visit.join("notes.txt"), "bring boots").expect("written");
        }
        let output = key(&desk, "others.csv", &["--paper", "letter"]);
        assert_eq!(output.status.code(), Some(0), "{}", complained(&output));
        let mut now = files(&visit);
        assert!(!now.contains_key("chart-a3.pdf"), "it was of the older key");
        if beside {
            assert_eq!(now.remove("notes.txt").as_deref(), Some(&b"bring boots"[..]));
            assert_eq!(
                fs::read(visit.join("photographs").join("a.jpg")).ok(),
                Some(b"a".into())
            );
            now.remove("photographs");
        }
        assert!(now.iter().all(|(name, bytes)| first.get(name) != Some(bytes)), "two keys");
        let output = key(&desk, "finds.csv", &[]);
        assert_eq!(output.status.code(), Some(0), "{}", complained(&output));
        let mut now = files(&visit);
        now.retain(|name, _| !["notes.txt", "photographs"].contains(&name.as_str()));
        assert_eq!(now, first);
    }
    // What another program would read says the same.
    let mut sums = Command::new("sha256sum");
    sums.args(["-c", "--quiet", "made-by-spinney.txt"]);
    let checked = sums.current_dir(&visit).output().expect("coreutils");
    assert!(checked.status.success(), "{}", complained(&checked));
}

/// The folder in which a terminal stands may be thrown away under it.
#[cfg(unix)]
#[test]
fn a_key_is_replaced_from_a_place_that_is_gone() {
    let desk = desk("gone");
    assert_eq!(key(&desk, "finds.csv", &[]).status.code(), Some(0));
    fs::create_dir(desk.join("here")).expect("made");
    let gone = "cd here && rmdir ../here && exec \"$0\" key \"$1\" --out \"$2\" --date today";
    let output = Command::new("sh")
        .args(["-c", gone, env!("CARGO_BIN_EXE_spinney")])
        .args([desk.join("others.csv"), desk.join("visit")])
        .current_dir(&desk)
        .output()
        .expect("a shell starts");
    assert_eq!(output.status.code(), Some(0), "{}", complained(&output));
    let text = String::from_utf8_lossy(&files(&desk.join("visit"))["key.txt"]).into_owned();
    assert!(text.contains("woodlouse") && !text.contains("hawthorn"), "{text}");
}

#[test]
fn what_was_made_of_a_table_stays_beside_a_key_of_it() {
    let desk = desk("made_of");
    let made = spinney(&desk, &["table", "finds.csv", "--out", "visit"], "");
    assert_eq!(made.status.code(), Some(0), "{}", complained(&made));
    let output = spinney(&desk, &["key", "visit", "--out", "visit"], "");
    assert_eq!(output.status.code(), Some(0), "{}", complained(&output));
    let now = files(&desk.join("visit"));
    for name in ["table.csv", "characters.csv", "kinds.csv", "key.txt", "today.pdf"] {
        assert!(now.contains_key(name), "{name} is gone");
    }
}

/// A limit on the size of files stands in for a full disk: writing fails at any place.
fn limited(desk: &Path, kibibytes: usize, typed: &[&str]) -> Output {
    let limit = format!("ulimit -f {kibibytes}; exec \"$0\" \"$@\"");
    Command::new("bash")
        .args(["-c", &limit, env!("CARGO_BIN_EXE_spinney")])
        .args(typed)
        .current_dir(desk)
        .output()
        .expect("bash runs")
}

#[test]
fn a_full_disk_leaves_the_older_key_whole() {
    for beside in [false, true] {
        let desk = desk(if beside { "full_beside" } else { "full" });
        let visit = desk.join("visit");
        assert_eq!(key(&desk, "finds.csv", &[]).status.code(), Some(0));
        if beside {
            fs::write(visit.join("notes.txt"), "bring boots").expect("written");
        }
        let before = files(&visit);
        let largest = before.values().map(Vec::len).max().expect("files") / 1024 + 1;
        let mut failed = 0;
        for limit in (0..largest + 4).step_by(largest / 12) {
            let output = limited(&desk, limit, &["key", "others.csv", "--out", "visit"]);
            let now = files(&visit);
            match output.status.code() {
                Some(1) => {
                    failed += 1;
                    assert_eq!(now, before, "{limit} KiB");
                    assert!(complained(&output).contains("could not be written"));
                    assert!(complained(&output).contains("is still there"));
                }
                Some(0) => assert!(now["key.txt"] != before["key.txt"]),
                other => panic!("{other:?} at {limit} KiB: {}", complained(&output)),
            }
            assert_eq!(files(&desk).len(), 3, "something was left beside the folder");
            if output.status.success() {
                break;
            }
        }
        assert!(failed > 5, "the limit was met {failed} times only");
    }
}

/// Killed at one of the moves: at no moment does the folder hold files of two keys, and the next
/// run puts everything right. Beside it lies a file of somebody else, so that the folders cannot
/// change places in one step. First every older file goes, then every new one comes: the first
/// moves, the turn and the last moves are tried one by one, the others by fours.
#[test]
fn a_kill_at_a_move_leaves_files_of_one_key_only() {
    let desk = desk("killed");
    let visit = desk.join("visit");
    let made = |table: &str| {
        assert_eq!(key(&desk, table, &[]).status.code(), Some(0));
        files(&visit)
    };
    let (others, finds) = (made("others.csv"), made("finds.csv"));
    fs::write(visit.join("notes.txt"), "bring boots").expect("written");
    let mut killed = 0;
    let turn = finds.len();
    let tried = |at: &usize| {
        *at <= 3 || at.abs_diff(turn) <= 2 || *at >= 2 * turn - 2 || at.is_multiple_of(4)
    };
    for at in (1..100).filter(tried) {
        let kill = format!("inject=rename:signal=KILL:when={at}");
        let mut command = Command::new("strace");
        command.args(["-f", "-o", "/dev/null", "-e", "trace=rename", "-e", &kill]);
        command.arg(env!("CARGO_BIN_EXE_spinney"));
        command.args(["key", "others.csv", "--out", "visit", "--date", "today"]);
        let ended = command.current_dir(&desk).output().expect("strace runs");
        let entries = fs::read_dir(&visit).expect("read").map(|entry| entry.expect("an entry"));
        let names = entries.filter_map(|entry| entry.file_name().into_string().ok());
        let names: Vec<String> = names.collect();
        let read = |name: &str| fs::read(visit.join(name)).ok();
        let of = |set: &BTreeMap<String, Vec<u8>>| {
            let same = |name: &&String| {
                name.as_str() != "made-by-spinney.txt"
                    && others.get(*name) != finds.get(*name)
                    && set.get(*name).is_some_and(|it| Some(it) == read(name).as_ref())
            };
            names.iter().filter(same).count()
        };
        let (old, new) = (of(&finds), of(&others));
        assert!(old == 0 || new == 0, "{old} files of one key and {new} of another: {names:?}");
        if ended.status.success() {
            break;
        }
        killed += 1;
        // What the killed run left half-made is cleared away by hand here.
        let again = key(&desk, "finds.csv", &[]);
        assert_eq!(again.status.code(), Some(0), "move {at}: {}", complained(&again));
        for name in names.iter().filter(|name| name.ends_with(".part")) {
            fs::remove_dir_all(visit.join(name)).expect("removed");
        }
        let mut now = files(&visit);
        assert_eq!(now.remove("notes.txt").as_deref(), Some(&b"bring boots"[..]));
        assert_eq!(now, finds, "after the kill at move {at}");
    }
    assert!(killed > 15, "only {killed} moves");
}

#[test]
fn a_limit_on_the_size_of_files_is_a_failure_like_others() {
    let desk = desk("limit");
    fs::write(desk.join("ours.txt"), "1. Is the edge toothed? Yes -> hazel, No -> yew\n")
        .expect("written");
    let table = ["key", "finds.csv", "--out", "new/visit"];
    let links = ["check", "finds.csv", "--key", "ours.txt", "--write-links", "links.txt"];
    for typed in [&table[..], &links, &["template", "new.xlsx"], &["demo"]] {
        let output = limited(&desk, 0, typed);
        assert_eq!(output.status.code(), Some(1), "{typed:?}: {}", complained(&output));
        let names: Vec<String> = files(&desk).into_keys().collect();
        assert_eq!(names, ["finds.csv", "others.csv", "ours.txt"], "{typed:?}");
    }
}

#[test]
fn half_made_files_have_names_that_nobody_has() {
    let desk = desk("names");
    let precious = desk.join("precious.txt");
    fs::write(&precious, "hours of work").expect("written");
    let linked = ["new.xlsx.part", "links.txt.part", "visit/key.txt.part"];
    fs::create_dir(desk.join("visit")).expect("made");
    for name in linked {
        std::os::unix::fs::symlink(&precious, desk.join(name)).expect("linked");
    }
    fs::write(desk.join("ours.txt"), "1. Is the edge toothed? Yes -> hazel, No -> yew\n")
        .expect("written");
    assert_eq!(spinney(&desk, &["template", "new.xlsx"], "").status.code(), Some(0));
    assert_eq!(key(&desk, "finds.csv", &[]).status.code(), Some(0));
    let links = ["check", "finds.csv", "--key", "ours.txt", "--write-links", "links.txt"];
    spinney(&desk, &links, "");
    assert!(desk.join("links.txt").exists());
    assert_eq!(fs::read(&precious).ok().as_deref(), Some(&b"hours of work"[..]));
    for name in linked {
        let there = fs::symlink_metadata(desk.join(name)).expect("it is there");
        assert!(there.is_symlink(), "{name}");
    }
}

#[test]
fn a_link_in_the_folder_is_replaced_by_force_and_never_followed() {
    let desk = desk("followed");
    fs::create_dir(desk.join("visit")).expect("made");
    fs::write(desk.join("precious.txt"), "hours of work").expect("written");
    std::os::unix::fs::symlink("../precious.txt", desk.join("visit/key.txt")).expect("linked");
    assert_eq!(key(&desk, "finds.csv", &[]).status.code(), Some(1));
    assert_eq!(key(&desk, "finds.csv", &["--force"]).status.code(), Some(0));
    assert_eq!(fs::read(desk.join("precious.txt")).ok(), Some(b"hours of work".into()));
    assert!(fs::symlink_metadata(desk.join("visit/key.txt")).is_ok_and(|it| it.is_file()));
}

/// `/dev/full` of Linux says that it is full whenever something is written.
#[test]
fn a_stderr_that_is_full_is_no_bug() {
    let desk = desk("stderr");
    for (typed, code) in [
        (&["key", "missing.csv"][..], 2),
        (&["unpack", "finds.csv", "new.spinney"], 1),
        (&["key", "finds.csv", "--out", "finds.csv"], 2),
    ] {
        let full = fs::File::options().write(true).open("/dev/full").expect("Linux has it");
        let mut command = Command::new(env!("CARGO_BIN_EXE_spinney"));
        let ended = command.args(typed).current_dir(&desk).stderr(full).output();
        assert_eq!(ended.expect("it runs").status.code(), Some(code), "{typed:?}");
    }
    let full = fs::File::options().write(true).open("/dev/full").expect("Linux has it");
    let mut command = Command::new(env!("CARGO_BIN_EXE_spinney"));
    let ended = command.args(["key", "finds.csv"]).current_dir(&desk).stdout(full).output();
    assert_eq!(ended.expect("it runs").status.code(), Some(1), "the answer was not heard");
}

/// What cannot be had is said, and nothing of it is written.
#[test]
fn large_print_is_written_and_what_has_none_or_no_room_is_said() {
    let desk = desk("large");
    let usual = key(&desk, "finds.csv", &[]);
    assert_eq!(usual.status.code(), Some(0), "{}", complained(&usual));
    let before = files(&desk.join("visit"));
    let large = key(&desk, "finds.csv", &["--letters", "large"]);
    let said = String::from_utf8_lossy(&large.stdout).into_owned();
    let (_, kept) = said.split_once("have no large print and stay as they are:").expect("said");
    let after = files(&desk.join("visit"));
    for (name, bytes) in before.iter().filter(|(name, _)| name.ends_with(".pdf")) {
        let stays = kept.contains(name.as_str());
        assert_eq!(after[name] == *bytes, stays, "{name}: {said}");
    }
    assert!(kept.contains("pocket.pdf") && !kept.contains("key-pages.pdf"), "{said}");
    // One kind a question, so that no booklet of eight pages holds it.
    let mut long = "kind,edge\n".to_owned();
    let names = (1..=40).map(|at| format!("kind {at},state {at} of the edge\n"));
    long.extend(names);
    fs::write(desk.join("long.csv"), long).expect("written");
    let long = spinney(&desk, &["key", "long.csv", "--out", "long"], "");
    let said = String::from_utf8_lossy(&long.stdout).into_owned();
    assert!(said.contains("Not written: pocket.pdf. This key is too long"), "{said}");
    let there = files(&desk.join("long"));
    assert!(there.contains_key("key-pages.pdf") && !there.contains_key("pocket.pdf"));
}

/// Sizes are wished like letters; a length that there cannot be is refused with a remedy, and a
/// chart without room is not written.
#[test]
fn places_and_the_chart_for_the_wall_are_as_large_as_somebody_wishes() {
    let desk = desk("sizes");
    let walk = Path::new(env!("CARGO_MANIFEST_DIR")).join("scenarios/hedge_walk");
    let walk = walk.to_string_lossy().into_owned();
    let made = |more: &[&str]| key(&desk, &walk, more);
    assert_eq!(made(&[]).status.code(), Some(0));
    let before = files(&desk.join("visit"));
    let wished = made(&["--leaf-room", "9 cm", "--wall", "a2"]);
    assert_eq!(wished.status.code(), Some(0), "{}", complained(&wished));
    let after = files(&desk.join("visit"));
    let pdfs = before.iter().filter(|(name, _)| name.ends_with(".pdf"));
    let changed: Vec<&String> =
        pdfs.filter(|(name, bytes)| after[*name] != **bytes).map(|(name, _)| name).collect();
    assert_eq!(changed, ["album.pdf", "wall.pdf"]);
    for typed in ["12", "30 cm", "long", "-5"] {
        let refused = made(&["--leaf-room", typed]);
        assert_eq!(refused.status.code(), Some(2), "{typed}");
        let said = complained(&refused);
        assert!(said.contains(&format!("“{typed}” is not the length of a leaf.")), "{said}");
        assert!(said.contains("from 20 to 200 mm, such as: --leaf-room \"12 cm\""), "{said}");
    }
    assert_eq!(made(&["--wall", "a0"]).status.code(), Some(2));
    // Thirty-two ends beside each other have room on no A2.
    let mut wide = "kind,edge,tip,base,hair,scent\n".to_owned();
    for kind in 0..32 {
        let bits =
            (0..5).map(|at| if kind >> at & 1 == 1 { ",like this" } else { ",like that" });
        wide += &format!("kind {kind}{}\n", bits.collect::<String>());
    }
    fs::write(desk.join("wide.csv"), wide).expect("written");
    let wide = spinney(&desk, &["key", "wide.csv", "--out", "wide", "--wall", "a2"], "");
    let said = String::from_utf8_lossy(&wide.stdout).into_owned();
    assert!(said.contains("Not written: wall.pdf. This key has no room on a chart"), "{said}");
}

/// What twelve kinds are printed from goes by e-mail and onto an old stick: all sheets together
/// take 1.5 MB.
#[test]
fn all_sheets_of_twelve_kinds_are_small() {
    let desk = desk("small");
    let walk = Path::new(env!("CARGO_MANIFEST_DIR")).join("scenarios/hedge_walk");
    let walk = walk.to_string_lossy();
    let typed = ["key", &*walk, "--out", "visit", "--date", "today"];
    let made = spinney(&desk, &typed, "");
    assert_eq!(made.status.code(), Some(0), "{}", complained(&made));
    let files = files(&desk.join("visit"));
    let sheets = files.iter().filter(|(name, _)| name.ends_with(".pdf"));
    let (mut all, mut many) = (0, 0);
    for (name, bytes) in sheets {
        assert!(bytes.len() < 300_000, "{name}: {} bytes", bytes.len());
        (all, many) = (all + bytes.len(), many + 1);
    }
    assert!(many >= 24 && all <= 1_500_000, "{many} sheets, {all} bytes");
}
