//! One run of the program, as from a terminal: a folder, words, and what comes from stdin.

use std::io::Write;
use std::path::Path;
use std::process::{Command, Output, Stdio};

/// Runs `spinney` and waits for its end.
pub(crate) fn spinney(folder: &Path, args: &[&str], stdin: &str) -> Output {
    let mut run = Command::new(env!("CARGO_BIN_EXE_spinney"))
        .args(args)
        .current_dir(folder)
        .stdin(Stdio::piped())
        .stdout(Stdio::piped())
        .stderr(Stdio::piped())
        .spawn()
        .expect("spinney starts");
    let mut input = run.stdin.take().expect("stdin is piped");
    // The program may have answered before it has read all of it.
    let _ = input.write_all(stdin.as_bytes());
    drop(input);
    run.wait_with_output().expect("spinney ends")
}
