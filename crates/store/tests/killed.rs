//! Killed at every kind of moment, a collection opens and has every line that was acknowledged.
//!
//! The kill comes at a system call that the test names: the n-th write, sync, cut or removal of a
//! file, by strace's injection. So each kill falls into an append, and every run kills at the same
//! places.
//!
//! The long run, after `cargo build -p spinney-store --examples` (asked for this test alone,
//! cargo does not build the program that writes):
//! `MOMENTS=1000 cargo test -p spinney-store --test killed -- --nocapture`.

use std::path::{Path, PathBuf};
use std::process::Command;

use spinney_store::Store;

fn folder(name: &str) -> PathBuf {
    let folder = Path::new(env!("CARGO_TARGET_TMPDIR")).join(name);
    let _ = std::fs::remove_dir_all(&folder);
    std::fs::create_dir_all(&folder).expect("a folder for the test");
    folder
}

/// The program that writes, built beside this test.
fn writer() -> PathBuf {
    let test = std::env::current_exe().expect("this test is a program");
    let build = test.ancestors().nth(2).expect("target/<profile>/deps");
    build.join("examples").join("writes_until_killed")
}

/// What an append asks of the system, one after the other.
const CALLS: &str = "pwrite64,fdatasync,fsync,ftruncate,unlink";

#[test]
fn no_acknowledged_line_is_lost() {
    let moments = std::env::var("MOMENTS").ok().and_then(|n| n.parse().ok()).unwrap_or(40);
    let path = folder("killed").join("walk.spinney");
    drop(Store::create(&path).expect("a new file"));
    let mut kept = 0;
    for moment in 0..moments {
        // Every moment of the first lines, in an order that mixes early and late ones.
        let when = 1 + moment * 37 % 89;
        let out = Command::new("strace")
            .args(["-f", "-qq", "-o", "/dev/null", "-e", &format!("trace={CALLS}")])
            .args(["-e", &format!("inject={CALLS}:signal=KILL:when={when}")])
            .arg(writer())
            .arg(&path)
            .output()
            .expect("strace is installed, and cargo builds the examples with the tests");
        assert!(!out.status.success(), "it runs until it is killed");
        let told = String::from_utf8(out.stdout).expect("it says text");
        let last = told.lines().rev().find_map(|line| line.strip_prefix("kept ")?.parse().ok());
        let acknowledged: u64 = last.unwrap_or(kept);
        let wanted = acknowledged + 1;
        let begun = format!("begin {wanted}");
        assert_eq!(told.lines().last(), Some(begun.as_str()), "it fell in an append");
        let store = Store::open(&path).expect("it opens after a kill");
        let rows = store.rows(0).expect("it can be read");
        kept = rows.len() as u64;
        assert!(
            (acknowledged..=wanted).contains(&kept),
            "{acknowledged} were acknowledged, {kept} are there"
        );
        let whole = rows
            .iter()
            .all(|row| row.bytes.starts_with(format!("line {} x", row.number).as_bytes()));
        assert!(whole, "a line is half there");
    }
    println!("{moments} kills in an append, {kept} lines kept");
    assert!(kept > moments, "the writer hardly wrote");
}
