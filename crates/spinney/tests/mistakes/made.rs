//! One mistake made: a fresh folder, what is typed, and what is wrong with the answer.
//!
//! A run that does not end by itself is ended here and counts as wrong.

use std::fmt::Write as _;
use std::fs;
use std::io::{Read, Write as _};
use std::path::{Path, PathBuf};
use std::process::{Command, Stdio};
use std::sync::mpsc;
use std::time::{Duration, Instant};

use super::entry::{Lists, Mistake, plain};

/// How long one run may take.
const LONGEST: Duration = Duration::from_secs(60);
/// So many lines of what was printed are shown.
const SHOWN: usize = 16;

/// What is wrong with the answer to a mistake; None: it is answered well.
pub(crate) fn wrong_with(mistake: &Mistake, lists: &Lists) -> Option<String> {
    let folder = fresh_folder(&mistake.name);
    for (name, bytes) in &mistake.files {
        let path = folder.join(name);
        fs::create_dir_all(path.parent().expect("a folder")).expect("folders can be made");
        fs::write(path, bytes).expect("a file can be written");
    }
    let mut wrong = String::new();
    for run in &mistake.before {
        let (exit, printed) = run_it(&folder, run, "");
        if exit != Some(0) {
            let printed = printed.join("\n");
            let _ = writeln!(wrong, "   ! before that: {run:?} ended with {exit:?}\n{printed}");
        }
    }
    let (exit, printed) = run_it(&folder, &mistake.run, &mistake.stdin);
    if exit != Some(mistake.exit) {
        let _ = writeln!(wrong, "   ! exit {exit:?}, wanted {}", mistake.exit);
    }
    // A program that reads the answer must not take an error for it.
    let [out, err] = printed.each_ref().map(|stream| !stream.trim().is_empty());
    match mistake.exit {
        2 if out => wrong.push_str("   ! a wrong use is told on stdout\n"),
        1 if out && err => wrong.push_str("   ! both streams tell what is wrong\n"),
        _ => {}
    }
    let printed = printed.join("\n");
    let said = plain(&printed);
    for text in mistake.says.iter().filter(|text| !said.contains(&plain(text))) {
        let _ = writeln!(wrong, "   ! not said: {text}");
    }
    for text in mistake.never.iter().chain(&lists.never_anywhere) {
        if said.contains(&plain(text)) {
            let _ = writeln!(wrong, "   ! must not be said: {text}");
        }
    }
    if wrong.is_empty() {
        fs::remove_dir_all(&folder).expect("the folder can be cleared away");
        return None;
    }
    let _ = writeln!(wrong, "   $ spinney {}", mistake.run.join(" "));
    for line in printed.lines().take(SHOWN) {
        let _ = writeln!(wrong, "   | {line}");
    }
    Some(wrong)
}

fn fresh_folder(name: &str) -> PathBuf {
    let called: String = name
        .chars()
        .map(|sign| if sign.is_ascii_alphanumeric() { sign } else { '_' })
        .collect();
    let folder = PathBuf::from(env!("CARGO_TARGET_TMPDIR")).join("mistakes").join(called);
    if folder.exists() {
        fs::remove_dir_all(&folder).expect("an older run can be cleared away");
    }
    fs::create_dir_all(&folder).expect("the folder can be made");
    folder
}

/// Runs the program: how it ended (None: it had to be ended), and what it printed on
/// stdout and on stderr.
fn run_it(folder: &Path, typed: &[String], stdin: &str) -> (Option<i64>, [String; 2]) {
    let mut run = Command::new(env!("CARGO_BIN_EXE_spinney"))
        .args(typed)
        .current_dir(folder)
        .env("HOME", folder)
        .env("LANG", "C.UTF-8")
        .env_remove("RUST_BACKTRACE")
        .stdin(Stdio::piped())
        .stdout(Stdio::piped())
        .stderr(Stdio::piped())
        .spawn()
        .expect("spinney starts");
    let mut input = run.stdin.take().expect("stdin is piped");
    // The program may have answered before it has read all of it.
    let _ = input.write_all(stdin.as_bytes());
    drop(input);
    let (tell, told) = mpsc::channel();
    let out = run.stdout.take().expect("stdout is piped");
    let err = run.stderr.take().expect("stderr is piped");
    // Both pipes end when the program does.
    let read = |at: usize, mut pipe: Box<dyn Read + Send>| {
        let tell = tell.clone();
        std::thread::spawn(move || {
            let mut bytes = Vec::new();
            let _ = pipe.read_to_end(&mut bytes);
            let _ = tell.send((at, bytes));
        })
    };
    let readers = [read(0, Box::new(out)), read(1, Box::new(err))];
    let end = Instant::now() + LONGEST;
    let (mut printed, mut in_time) = ([Vec::new(), Vec::new()], true);
    for _ in 0..printed.len() {
        let left = end.saturating_duration_since(Instant::now());
        match told.recv_timeout(if in_time { left } else { LONGEST }) {
            Ok((at, bytes)) => printed[at] = bytes,
            Err(_) => {
                in_time = false;
                run.kill().expect("our own program can be ended");
                let (at, bytes) = told.recv().expect("a pipe ends with its program");
                printed[at] = bytes;
            }
        }
    }
    let status = run.wait().expect("spinney ends");
    for reader in readers {
        reader.join().expect("a reader ends");
    }
    let printed = printed.map(|bytes| String::from_utf8_lossy(&bytes).into_owned());
    let exit = status.code().filter(|_| in_time).map(i64::from);
    (exit, printed)
}
