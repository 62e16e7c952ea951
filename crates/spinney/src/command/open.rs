//! `spinney open`: the screens in a browser, for this machine alone.

use std::path::Path;
use std::process::{Command, Stdio};

use spinney_desk::Desk;
use spinney_exchange::journal::LineError;
use spinney_exchange::table;
use spinney_store::{Store, StoreError};
use spinney_voice::Tongue;

use crate::args::Open;
use crate::failure::Failure;
use crate::rescue::Rescue;
use crate::scenarios::OUTINGS;

use crate::web::Door;
use crate::web::clerk::{self, Sitting};
use crate::web::kept::{Kept, journal_too_large};
use crate::{report, terminal};

pub(crate) fn run(t: Tongue, args: &Open) -> Result<bool, Failure> {
    let sitting = match &args.file {
        None => demo(t)?,
        Some(path) => file(t, path)?,
    };
    let door = Door::open(args.port)?;
    let address = door.address();
    let open_at = t.with("run-open-at", &[("address", &address)]);
    terminal::print(&format!("{open_at}\n{}\n", t.say("run-end-it")))?;
    if !args.no_browser {
        show(&address);
    }
    door.answer(sitting)?;
    Ok(true)
}

/// A collection from its file; one that is not there is begun.
fn file(t: Tongue, path: &Path) -> Result<Sitting, Failure> {
    // An empty file is a beginning that was cut off; also one that is empty only since its
    // opening took back what was begun.
    let empty = || std::fs::metadata(path).is_ok_and(|file| file.is_file() && file.len() == 0);
    let store = match Store::open(path) {
        Err(StoreError::Damaged { .. }) => return damaged(t, path),
        Err(StoreError::Missing { .. } | StoreError::NotACollection { .. })
            if empty() || !path.exists() =>
        {
            let store = Store::create(path).map_err(Failure::kept)?;
            let new = t.with("run-new-collection", &[("file", &path.display())]);
            terminal::print(&format!("{new}\n"))?;
            store
        }
        opened => opened.map_err(Failure::kept)?,
    };
    // Counted before it is held.
    let too_large = match journal_too_large(&store, 0) {
        Err(StoreError::Damaged { .. }) => return damaged(t, path),
        counted => counted.map_err(Failure::kept)?,
    };
    if let Some(why) = too_large {
        return Err(Failure::too_large("failure-too-large-for-screens", path, why));
    }
    let rows = match store.rows(0) {
        Err(StoreError::Damaged { .. }) => return damaged(t, path),
        rows => rows.map_err(Failure::kept)?,
    };
    let lines: Vec<Vec<u8>> = rows.into_iter().map(|row| row.bytes).collect();
    let sitting = match Sitting::open(Kept::InFile(store), &lines) {
        Err(LineError::NotALine) => return damaged(t, path),
        sitting => sitting.map_err(Failure::of_line)?,
    };
    // Whatever page is asked for says so, and offers the table and a copy.
    if let Some(why) = sitting.too_large() {
        let (sentence, remedy) = why.in_words(t);
        terminal::print(&format!("{sentence}\n{remedy}\n"))?;
    }
    Ok(sitting)
}

/// What is damaged is said; where something can be saved, a page offers it.
fn damaged(t: Tongue, path: &Path) -> Result<Sitting, Failure> {
    let kept = || Failure::kept(StoreError::Damaged { path: path.to_owned() });
    let rescue = Rescue::of(path).ok().filter(|rescue| !rescue.is_empty()).ok_or_else(kept)?;
    terminal::print(&format!(
        "{}\n{}\n  spinney rescue {} {}\n{}\n",
        rescue.described().said(t),
        t.say("run-damaged-page"),
        path.display(),
        rescue.new_name().display(),
        t.say("run-damaged-same"),
    ))?;
    Ok(Sitting::damaged(rescue))
}

/// The invented hedge walk, with a key begun.
fn demo(t: Tongue) -> Result<Sitting, Failure> {
    let outing = &OUTINGS[0];
    let sheets = ["table", "characters", "kinds", "about"].map(|name| {
        let name = format!("{name}.csv");
        let bytes = outing.text(&name).as_bytes().to_vec();
        table::Source { name, bytes }
    });
    let at = clerk::now();
    let lines =
        Desk::lines_of_trial(&sheets, "Our key", at).expect("the hedge walk holds kinds");
    let mut invented = String::new();
    report::push_wrapped(&mut invented, "", &t.say("run-invented-walk"));
    terminal::print(&invented)?;
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
