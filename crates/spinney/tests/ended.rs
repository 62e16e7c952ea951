//! Ctrl-C, and a machine that is shut down, while files are written: nothing half-made is left.

use std::fs;
use std::os::unix::process::ExitStatusExt;
use std::path::{Path, PathBuf};
use std::process::Command;

const TABLE: &str = "kind,edge,lobes\nhazel,toothed,unlobed\nyew,smooth,unlobed\n";

fn fresh(name: &str) -> PathBuf {
    let folder = Path::new(env!("CARGO_TARGET_TMPDIR")).join("ended").join(name);
    let _ = fs::remove_dir_all(&folder);
    fs::create_dir_all(&folder).expect("a folder for a test");
    fs::write(folder.join("finds.csv"), TABLE).expect("written");
    folder
}

fn names(folder: &Path) -> Vec<String> {
    let entries = fs::read_dir(folder).expect("a folder");
    let name = |entry: std::io::Result<fs::DirEntry>| entry.expect("an entry").file_name();
    let mut names: Vec<String> =
        entries.map(|entry| name(entry).into_string().expect("text")).collect();
    names.sort();
    names
}

/// Makes a key; at the `when`th file that reaches the disk a signal comes (by strace).
#[test]
fn a_key_that_is_ended_half_way_leaves_nothing_or_all_of_it() {
    let whole = {
        let folder = fresh("whole");
        let made = spinney(&folder).status().expect("it runs");
        assert!(made.success());
        names(&folder.join("visit"))
    };
    assert!(whole.len() > 5, "{whole:?}");
    let mut ended = 0;
    for signal in ["INT", "TERM"] {
        for when in [1, 3, 6] {
            let folder = fresh(&format!("{signal}-{when}"));
            let typed = spinney(&folder);
            let mut traced = Command::new("strace");
            // `-D`: the program itself is our child.
            traced.args(["-D", "-f", "-qq", "-o", "/dev/null", "-e", "trace=fsync", "-e"]);
            traced.arg(format!("inject=fsync:signal={signal}:when={when}"));
            traced.arg(typed.get_program()).args(typed.get_args()).current_dir(&folder);
            let status = traced.status().expect("it runs");
            ended += usize::from(status.signal().is_some());
            match names(&folder).as_slice() {
                [finds] => assert_eq!(finds, "finds.csv"),
                // It was faster than the signal.
                [_, visit] => assert_eq!(names(&folder.join(visit)), whole),
                more => panic!("{signal} {when}: {more:?}"),
            }
        }
    }
    assert!(ended > 0, "no run was ended");
}

fn spinney(folder: &Path) -> Command {
    let mut command = Command::new(env!("CARGO_BIN_EXE_spinney"));
    command.args(["key", "finds.csv", "--out", "visit"]).current_dir(folder);
    command
}
