//! What was acknowledged stays: two windows, two programs, an end and a beginning.

use std::path::Path;
use std::process::Command;

use spinney_store::Store;

use super::browser::{Screens, fresh};

/// Adds so many kinds, each with a name of its own.
fn add(screens: &Screens, who: &str, count: usize) {
    for number in 0..count {
        let name = format!("{who} {number}");
        let answer = screens.post("/do/add-kinds", &[("names", &name)]);
        assert_eq!(answer.status, 303, "{name}: {}", answer.text());
    }
}

fn all_there(finds: &str, who: &[&str], count: usize) {
    for who in who {
        for number in 0..count {
            let name = format!(">{who} {number}<");
            assert_eq!(finds.matches(&name).count(), 1, "{name}");
        }
    }
}

#[test]
fn four_windows_at_once_lose_nothing() {
    let file = fresh("windows").join("walk.spinney");
    let screens = Screens::open(Some(&file));
    std::thread::scope(|scope| {
        for who in ["one", "two", "three", "four"] {
            scope.spawn(|| add(&screens, who, 10));
        }
    });
    all_there(&screens.get("/finds").text(), &["one", "two", "three", "four"], 10);
}

#[test]
fn two_programs_on_one_file_lose_nothing() {
    let file = fresh("programs").join("walk.spinney");
    let one = Screens::open(Some(&file));
    let other = Screens::open(Some(&file));
    std::thread::scope(|scope| {
        for (screens, who) in [(&one, "one"), (&other, "two"), (&one, "three")] {
            scope.spawn(move || add(screens, who, 10));
        }
    });
    for screens in [&one, &other] {
        all_there(&screens.get("/finds").text(), &["one", "two", "three"], 10);
    }
}

#[test]
fn an_end_and_a_beginning_keep_everything() {
    let file = fresh("restart").join("walk.spinney");
    let screens = Screens::open(Some(&file));
    assert!(screens.said.contains("new, empty collection"), "{}", screens.said);
    add(&screens, "one", 3);
    assert_eq!(screens.again("undo"), 303);
    let before = screens.get("/finds").text();
    assert_eq!(screens.interrupt(), Some(0));
    let screens = Screens::open(Some(&file));
    assert_eq!(screens.get("/finds").text(), before);
    assert_eq!(screens.again("redo"), 303);
    all_there(&screens.get("/finds").text(), &["one"], 3);
}

/// A trace of system calls: after the form has come in and before the answer goes out, the
/// file is synced. Source of the order that must hold: SQLite, "Atomic Commit In SQLite".
#[test]
fn the_disk_has_it_before_the_browser_hears_of_it() {
    let folder = fresh("trace");
    let trace = folder.join("trace.txt");
    let mut command = Command::new("strace");
    // `-D`: the screens itself is our child, so that it can be ended as a person does.
    command.args(["-D", "-f", "-y", "-e", "trace=fsync,fdatasync,sendto,write,writev", "-o"]);
    command.arg(&trace).arg(env!("CARGO_BIN_EXE_spinney"));
    command.args(["open", "--no-browser"]).arg(folder.join("walk.spinney"));
    let screens = Screens::start(command);
    add(&screens, "one", 1);
    assert_eq!(screens.interrupt(), Some(0));
    let trace = ended(&trace);
    let answer = trace.lines().position(|line| line.contains("HTTP/1.1 303"));
    let answer = answer.unwrap_or_else(|| panic!("the answer is not in the trace:\n{trace}"));
    let lines: Vec<&str> = trace.lines().take(answer).collect();
    let wrote = |line: &&str| line.contains("add-kinds") || line.contains("walk.spinney");
    assert!(lines.iter().any(wrote), "{trace}");
    let synced = |line: &&str| {
        (line.contains("fsync(") || line.contains("fdatasync("))
            && line.contains("walk.spinney>")
    };
    // Making the file is a sync as well; the line of the kind is a second one.
    let syncs = lines.iter().filter(|line| synced(line)).count();
    assert!(syncs >= 2, "{syncs} syncs before the answer:\n{}", lines.join("\n"));
    let pages = Store::open(&folder.join("walk.spinney")).expect("it opens").head();
    assert_eq!(pages.expect("a head"), 1);
}

/// The trace, once its writer has seen the end of the screens.
fn ended(trace: &Path) -> String {
    for _ in 0..100_000 {
        let text = std::fs::read_to_string(trace).unwrap_or_default();
        if text.contains("+++ exited with 0 +++") {
            return text;
        }
        std::thread::yield_now();
    }
    panic!("the trace does not end");
}

#[test]
fn a_file_held_by_another_program_is_said_to_be_held() {
    let file = fresh("held").join("walk.spinney");
    let screens = Screens::open(Some(&file));
    add(&screens, "one", 1);
    let holder = rusqlite::Connection::open(&file).expect("it opens");
    holder.execute_batch("BEGIN EXCLUSIVE").expect("it is held");
    let answer = screens.post("/do/add-kinds", &[("names", "typed meanwhile")]);
    assert_eq!(answer.status, 503);
    let text = answer.text();
    assert!(text.contains("Another program is using") && text.contains("typed meanwhile"));
    holder.execute_batch("ROLLBACK").expect("it is let go");
    add(&screens, "two", 1);
    let finds = screens.get("/finds").text();
    all_there(&finds, &["one", "two"], 1);
    assert!(!finds.contains("typed meanwhile"));
}

/// Without the right to write: as another user where the tests run as root.
#[test]
fn a_file_that_may_only_be_read_is_shown_and_not_changed() {
    let folder = fresh("read-only");
    let file = folder.join("walk.spinney");
    let screens = Screens::open(Some(&file));
    add(&screens, "one", 1);
    assert_eq!(screens.interrupt(), Some(0));
    let before = std::fs::read(&file).expect("its bytes");
    let allow = |file: u32, of: &Path| {
        use std::os::unix::fs::PermissionsExt;
        std::fs::set_permissions(of, std::fs::Permissions::from_mode(file)).expect("allowed");
    };
    allow(0o444, &file);
    allow(0o555, &folder);
    let mut command = as_nobody();
    command.args(["open", "--no-browser"]).arg(&file);
    let screens = Screens::start(command);
    all_there(&screens.get("/finds").text(), &["one"], 1);
    let answer = screens.post("/do/add-kinds", &[("names", "typed in vain")]);
    assert_eq!(answer.status, 503, "{}", answer.text());
    let text = answer.text();
    assert!(text.contains("may not be written to") && text.contains("typed in vain"));
    all_there(&screens.get("/finds").text(), &["one"], 1);
    drop(screens);
    let mut command = as_nobody();
    command.args(["open", "--no-browser"]).arg(folder.join("other.spinney"));
    let made = command.output().expect("it runs");
    assert_eq!(made.status.code(), Some(1));
    let said = String::from_utf8_lossy(&made.stderr).into_owned();
    assert!(said.contains("may not be written to") && !folder.join("other.spinney").exists());
    allow(0o755, &folder);
    assert_eq!(std::fs::read(&file).expect("its bytes"), before);
}

fn as_nobody() -> Command {
    use std::os::unix::process::CommandExt;
    let root = Command::new("id").arg("-u").output().expect("id runs").stdout == b"0\n";
    let mut command = Command::new(env!("CARGO_BIN_EXE_spinney"));
    if root {
        // The user `nobody` of the Linux Standard Base.
        command.uid(65_534).gid(65_534);
    }
    command
}
