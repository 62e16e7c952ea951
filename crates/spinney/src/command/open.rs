//! `spinney open`: the screens in a browser, for this machine alone.

use std::path::Path;
use std::process::{Command, Stdio};

use spinney_desk::{Desk, TooLarge};
use spinney_exchange::journal::LineError;
use spinney_exchange::table;
use spinney_store::{Store, StoreError};

use crate::args::Open;
use crate::failure::Failure;
use crate::rescue::Rescue;
use crate::scenarios::OUTINGS;
use crate::terminal;
use crate::web::Door;
use crate::web::clerk::{self, Sitting};
use crate::web::kept::{Kept, journal_too_large};

pub(crate) fn run(args: &Open) -> Result<bool, Failure> {
    let sitting = match &args.file {
        None => demo()?,
        Some(path) => file(path)?,
    };
    let door = Door::open(args.port)?;
    let address = door.address();
    terminal::print(&format!("Spinney is open at {address}\nPress Ctrl-C to end it.\n"))?;
    if !args.no_browser {
        show(&address);
    }
    door.answer(sitting)?;
    Ok(true)
}

/// A collection from its file; one that is not there is begun.
fn file(path: &Path) -> Result<Sitting, Failure> {
    // An empty file is a beginning that was cut off; also one that is empty only since its
    // opening took back what was begun.
    let empty = || std::fs::metadata(path).is_ok_and(|file| file.is_file() && file.len() == 0);
    let store = match Store::open(path) {
        Err(StoreError::Damaged { .. }) => return damaged(path),
        Err(StoreError::Missing { .. } | StoreError::NotACollection { .. })
            if empty() || !path.exists() =>
        {
            let store = Store::create(path).map_err(Failure::kept)?;
            terminal::print(&format!(
                "{} was not there: it is a new, empty collection.\n",
                path.display()
            ))?;
            store
        }
        opened => opened.map_err(Failure::kept)?,
    };
    // Counted before it is held.
    let too_large = match journal_too_large(&store, 0) {
        Err(StoreError::Damaged { .. }) => return damaged(path),
        counted => counted.map_err(Failure::kept)?,
    };
    if let Some(why) = too_large {
        return Err(refused(path, why));
    }
    let rows = match store.rows(0) {
        Err(StoreError::Damaged { .. }) => return damaged(path),
        rows => rows.map_err(Failure::kept)?,
    };
    let lines: Vec<Vec<u8>> = rows.into_iter().map(|row| row.bytes).collect();
    let sitting = match Sitting::open(Kept::InFile(store), &lines) {
        Err(LineError::NotALine) => return damaged(path),
        sitting => sitting.map_err(Failure::of_line)?,
    };
    // Whatever page is asked for says so, and offers the table and a copy.
    if let Some(why) = sitting.too_large() {
        let (sentence, remedy) = why.in_words();
        terminal::print(&format!("{sentence}\n{remedy}\n"))?;
    }
    Ok(sitting)
}

/// A journal that is more than is held. The file stays as it is.
fn refused(path: &Path, why: TooLarge) -> Failure {
    let (sentence, remedy) = why.in_words();
    let name = path.display();
    Failure::new(format!("{name} is too large for the screens. {sentence}"), remedy)
}

/// What is damaged is said; where something can be saved, a page offers it.
fn damaged(path: &Path) -> Result<Sitting, Failure> {
    let kept = || Failure::kept(StoreError::Damaged { path: path.to_owned() });
    let rescue = Rescue::of(path).ok().filter(|rescue| !rescue.is_empty()).ok_or_else(kept)?;
    terminal::print(&format!(
        "{}\nThe page that opens now saves what can be read into a new file, and so does:\n  \
         spinney rescue {} {}\nThe damaged file is not changed.\n",
        rescue.in_words(),
        path.display(),
        rescue.new_name().display()
    ))?;
    Ok(Sitting::damaged(rescue))
}

/// The invented hedge walk, with a key begun.
fn demo() -> Result<Sitting, Failure> {
    let outing = &OUTINGS[0];
    let sheets = ["table", "characters", "kinds", "about"].map(|name| {
        let name = format!("{name}.csv");
        let bytes = outing.text(&name).as_bytes().to_vec();
        table::Source { name, bytes }
    });
    let at = clerk::now();
    let lines =
        Desk::lines_of_trial(&sheets, "Our key", at).expect("the hedge walk holds kinds");
    terminal::print(
        "This is an invented hedge walk, for a try. It is in memory only and is gone when you \
         end\nSpinney, unless you save a copy on the screens; `spinney open FILE` keeps a collection \
         of your own.\n",
    )?;
    Sitting::open(Kept::in_memory(lines.clone()), &lines).map_err(Failure::of_line)
}

/// Shows the address in the person's browser. Where there is none, the address was printed.
fn show(address: &str) {
    let mut command = if cfg!(target_os = "windows") {
        let mut command = Command::new("cmd");
        command.args(["/C", "start", ""]);
        command
    } else if cfg!(target_os = "macos") {
        Command::new("open")
    } else {
        Command::new("xdg-open")
    };
    command.arg(address).stdin(Stdio::null()).stdout(Stdio::null()).stderr(Stdio::null());
    let _ = command.spawn();
}
