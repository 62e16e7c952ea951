//! The program is killed at any system call of an edit, and nothing acknowledged is lost.

use std::path::Path;
use std::process::Command;

use spinney_store::Store;

use super::browser::Screens;

/// What keeping an edit asks of the system.
const CALLS: &str = "pwrite64,fdatasync,fsync,ftruncate,unlink";

/// Opens a file and makes edits without a pause; at the `when`th call of [`CALLS`] the program
/// is killed (by strace's injection). Then it looks into the file. `round` marks the names of
/// this life. How many edits were acknowledged in it.
pub(crate) fn one_life(file: &Path, round: usize, when: usize) -> usize {
    let mut command = Command::new("strace");
    // `-D`: the program itself is our child.
    command.args(["-D", "-f", "-qq", "-o", "/dev/null", "-e", &format!("trace={CALLS}")]);
    command.args(["-e", &format!("inject={CALLS}:signal=KILL:when={when}")]);
    command.arg(env!("CARGO_BIN_EXE_spinney")).args(["open", "--no-browser"]).arg(file);
    let screens = Screens::start(command);
    let mut names = Vec::new();
    for number in 0.. {
        let name = format!("life {round} find {number}");
        match screens.try_post("/do/add-kinds", &[("names", &name)]) {
            Ok(answer) if answer.status == 303 => names.push(name),
            Ok(answer) => panic!("{}: {}", answer.status, answer.text()),
            Err(_) => break,
        }
    }
    drop(screens);
    let store = Store::open(file).expect("the file opens");
    let rows = store.rows(0).expect("its lines are whole");
    let journal: Vec<u8> = rows.into_iter().flat_map(|row| row.bytes).collect();
    let journal = String::from_utf8(journal).expect("lines are text");
    for name in &names {
        assert!(journal.contains(&format!("\"{name}\"")), "{name} was acknowledged and lost");
    }
    names.len()
}

#[test]
fn nothing_acknowledged_is_lost_by_a_kill() {
    let file = super::browser::fresh("killed").join("walk.spinney");
    drop(Store::create(&file).expect("a new file"));
    let lives = (0..30).map(|round| one_life(&file, round, 1 + round * 11 % 61));
    let acknowledged: usize = lives.sum();
    assert!(acknowledged > 30, "only {acknowledged} edits in 30 lives");
}
