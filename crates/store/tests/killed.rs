//! Killed at random moments, a collection opens and has every line that was acknowledged.
//!
//! The long run, after `cargo build -p spinney-store --examples` (asked for this test alone,
//! cargo does not build the program that writes):
//! `MOMENTS=1000 cargo test -p spinney-store --test killed -- --nocapture`.

use std::io::{BufRead, BufReader, Read};
use std::path::{Path, PathBuf};
use std::process::{Command, Stdio};
use std::time::Duration;

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

#[test]
fn no_acknowledged_line_is_lost() {
    let moments = std::env::var("MOMENTS").ok().and_then(|n| n.parse().ok()).unwrap_or(30);
    let path = folder("killed").join("walk.spinney");
    drop(Store::create(&path).expect("a new file"));
    let mut random = fastrand::Rng::with_seed(7);
    let (mut in_the_middle, mut kept) = (0, 0);
    for _ in 0..moments {
        let mut child = Command::new(writer())
            .arg(&path)
            .stdout(Stdio::piped())
            .spawn()
            .expect("cargo builds the examples with the tests");
        // Counted from what the writer says, not from its start: a busy machine starts slowly.
        let mut out = BufReader::new(child.stdout.take().expect("it is piped"));
        let mut told = String::new();
        for _ in 0..random.usize(1..6) {
            out.read_line(&mut told).expect("it says text");
        }
        std::thread::sleep(Duration::from_micros(random.u64(0..20_000)));
        child.kill().expect("it runs until it is killed");
        out.read_to_string(&mut told).expect("it says text");
        child.wait().expect("it is dead");
        let last = told.lines().rev().find_map(|line| line.strip_prefix("kept ")?.parse().ok());
        let acknowledged: u64 = last.unwrap_or(kept);
        in_the_middle += u64::from(told.lines().last().is_some_and(|l| l.starts_with("begin")));
        let store = Store::open(&path).expect("it opens after a kill");
        let rows = store.rows(0).expect("it can be read");
        kept = rows.len() as u64;
        assert!(kept >= acknowledged, "{acknowledged} were acknowledged, {kept} are there");
        let whole = rows
            .iter()
            .all(|row| row.bytes.starts_with(format!("line {} x", row.number).as_bytes()));
        assert!(whole, "a line is half there");
    }
    println!("{moments} kills, {in_the_middle} in the middle of an append, {kept} lines kept");
    assert!(kept > moments, "the writer hardly wrote");
    assert!(in_the_middle * 10 >= moments * 3, "too few kills hit an append");
}
