//! Writes everything for one visit into a folder: key, sheets, phone page.
//!
//! From bytes to files that change places at once. They are written into a fresh folder beside
//! their place first, so that whatever stops it, the folder holds one key and not two. What
//! stands in the folder and is not ours ([`ours`]) stays; `crate::files` says what a run may
//! write at all.

mod change;
mod ours;

use std::fs;
use std::io::Write;
use std::path::{Path, PathBuf};

use spinney_exchange::{json, key_text};
use spinney_press::sheets::{Printing, SHEETS, SheetKind};
use spinney_press::{Booklet, Letters, Paper, PressError, pdf};
use tempfile::TempDir;

use crate::args;
use crate::failure::Failure;
use crate::files::{self, Over};
use crate::report;
use ours::{Ours, hash_of};

/// What is written of every key besides the sheets.
const TEXTS: [&str; 3] = ["key.txt", "key.json", "phone.html"];
/// What a command says of a key beside them.
const SAID: [&str; 4] = ["findings.txt", "opinion.txt", "changes.txt", "why.txt"];

/// A folder that is being filled. Dropped before [`Folder::finish`], it leaves nothing behind.
pub(crate) struct Folder {
    path: PathBuf,
    /// Whether it was there before.
    there: bool,
    over: Over,
    /// Where everything is written first.
    side: TempDir,
    /// What we made of what stands in the folder.
    before: Ours,
    now: Ours,
    /// Whether a key is in it: then what we wrote of an older key goes.
    of_a_key: bool,
    /// The names of the files written, in order.
    written: Vec<String>,
}

impl Folder {
    /// Begins to fill a folder.
    pub(crate) fn make(path: &Path, over: Over) -> Result<Self, Failure> {
        let failed = |error: std::io::Error| Failure::writing(path, &error);
        let there = match fs::metadata(path) {
            Ok(found) if found.is_dir() => true,
            Ok(_) => return Err(Failure::not_a_folder(path)),
            Err(_) => false,
        };
        // On the same disk as its place, so that it can be moved there.
        let near = if there { path } else { nearest(path) };
        files::sweep(near);
        let name = path.file_name().unwrap_or("visit".as_ref());
        let (prefix, ending) = files::name_of_part(name);
        let mut builder = tempfile::Builder::new();
        builder.prefix(&prefix).suffix(ending);
        #[cfg(unix)]
        {
            use std::os::unix::fs::PermissionsExt;
            builder.permissions(fs::Permissions::from_mode(0o777));
        }
        let side = files::half_made(|| builder.tempdir_in(near)).map_err(failed)?;
        Ok(Self {
            path: path.to_owned(),
            there,
            over,
            side,
            before: Ours::of(path),
            now: Ours::default(),
            of_a_key: false,
            written: Vec::new(),
        })
    }

    /// Writes one file; it is in the folder once everything is.
    pub(crate) fn write(&mut self, name: &str, bytes: &[u8]) -> Result<(), Failure> {
        may_be_written(&self.path, name, &self.before, self.over)?;
        self.write_aside(name, bytes)?;
        self.now.add(name, hash_of(bytes));
        self.written.push(name.to_owned());
        Ok(())
    }

    fn write_aside(&self, name: &str, bytes: &[u8]) -> Result<(), Failure> {
        let path = self.side.path().join(name);
        let written = fs::File::create_new(path)
            .and_then(|mut file| file.write_all(bytes).and_then(|()| file.sync_all()));
        written.map_err(|error| Failure::writing(&self.path.join(name), &error))
    }

    /// Writes the key in words and as JSON, the sheets and the phone page. Returns what is to be
    /// said of the sheets: those that cannot be printed of this key, and why.
    pub(crate) fn fill(
        &mut self,
        booklet: &Booklet<'_>,
        report: &json::Report<'_>,
        wished: Printing,
    ) -> Result<String, Failure> {
        let size = wished.paper;
        self.of_a_key = true;
        self.write(
            "key.txt",
            key_text::write_in(booklet.tongue.tag(), booklet.key, booklet.matrix).as_bytes(),
        )?;
        self.write("key.json", json::report(report, crate::report::in_english).as_bytes())?;
        self.write("phone.html", spinney_press::page::html(booklet).as_bytes())?;
        let (mut said, mut as_usual) = (String::new(), Vec::new());
        for sheet in &SHEETS {
            if !(sheet.has_something)(booklet) {
                continue;
            }
            if let Some(why) = sheet.not_printed(booklet, wished) {
                said.push_str(&report::not_written(booklet.tongue, &plain(sheet), why));
                continue;
            }
            let on = |paper| {
                pressed(pdf::write(&sheet.printed(booklet, Printing { paper, ..wished })))
            };
            self.write(&plain(sheet), &on(size)?)?;
            if sheet.not_large.is_some() {
                as_usual.push(plain(sheet));
            }
            if sheet.large_too && size == Paper::A4 {
                self.write(&on_a3(sheet), &on(Paper::A3)?)?;
            }
        }
        if wished.letters == Letters::Large {
            said.push_str(&report::not_large(booklet.tongue, &as_usual));
        }
        Ok(said)
    }

    /// Puts everything in its place at once. Returns the names of the files, in order.
    pub(crate) fn finish(mut self) -> Result<Vec<String>, Failure> {
        // Again: somebody may have put something there since.
        for name in self.now.names() {
            may_be_written(&self.path, name, &self.before, self.over)?;
        }
        may_be_written(&self.path, ours::NAME, &self.before, self.over)?;
        let goes: Vec<String> = self.before.names().map(str::to_owned).collect();
        let goes: Vec<String> = goes.into_iter().filter(|name| self.goes(name)).collect();
        // What stays of what we made before stays on the list.
        let mut list = self.before.clone();
        goes.iter().for_each(|name| list.remove(name));
        self.now.names().for_each(|name| list.remove(name));
        let list = list.with(&self.now).text();
        self.write_aside(ours::NAME, list.as_bytes())?;
        self.written.push(ours::NAME.to_owned());
        let changing = change::Changing {
            folder: &self.path,
            side: self.side,
            comes: &self.written,
            goes: &goes,
            during: self.before.with(&self.now).text(),
        };
        let mut half_made = files::undisturbed();
        let placed = match self.there {
            false => changing.arrive(),
            true => changing.change(),
        };
        // What could not be put back is kept, whoever ends the run.
        half_made.clear();
        drop(half_made);
        placed?;
        self.written.pop();
        Ok(self.written)
    }

    /// Whether a file that we made before goes now: one of an older key, which nobody changed,
    /// and which is not what this run was made from.
    fn goes(&self, name: &str) -> bool {
        self.of_a_key
            && (of_a_key(Paper::A4).any(|ours| ours == name) || SAID.contains(&name))
            && !self.written.iter().any(|written| written == name)
            && self.before.has(&self.path, name)
            && !files::was_read(&self.path.join(name))
    }
}

/// Looks whether the sheets of a key, and files of these names beside them, may be written,
/// before any work is done.
pub(crate) fn look_first(sheets: &args::Sheets, beside: &[&str]) -> Result<(), Failure> {
    let Some(path) = &sheets.out else { return Ok(()) };
    let names = of_a_key(sheets.paper.size());
    let before = Ours::of(path);
    let over = Over::forced(sheets.force);
    let mut names = names.chain(beside.iter().chain([&ours::NAME]).map(ToString::to_string));
    names.try_for_each(|name| {
        files::claim(&path.join(&name))?;
        may_be_written(path, &name, &before, over)
    })
}

/// The files of a key on such paper.
fn of_a_key(size: Paper) -> impl Iterator<Item = String> {
    let sheets = SHEETS.iter().flat_map(move |sheet| {
        let large = sheet.large_too && size == Paper::A4;
        [Some(plain(sheet)), large.then(|| on_a3(sheet))].into_iter().flatten()
    });
    TEXTS.into_iter().map(str::to_owned).chain(sheets)
}

fn plain(sheet: &SheetKind) -> String {
    format!("{}.pdf", sheet.name)
}

fn on_a3(sheet: &SheetKind) -> String {
    format!("{}-a3.pdf", sheet.name)
}

/// Looks whether a file may be written into a folder: not what this run reads; and not what is
/// no work of ours, unless the person says so.
fn may_be_written(folder: &Path, name: &str, before: &Ours, over: Over) -> Result<(), Failure> {
    let over = if before.has(folder, name) { Over::AFile } else { over };
    files::may_be_written(&folder.join(name), over)
}

/// The nearest folder above that is there.
fn nearest(path: &Path) -> &Path {
    let mut above = path.ancestors().skip(1).filter(|above| *above != Path::new(""));
    above.find(|above| above.is_dir()).unwrap_or(Path::new("."))
}

fn pressed(sheet: Result<Vec<u8>, PressError>) -> Result<Vec<u8>, Failure> {
    sheet.map_err(|error| Failure::saying(move |t| error.told(t)))
}

/// The date at the foot of a sheet: as given, or today in words.
pub(crate) fn date(given: Option<&str>) -> String {
    given.map_or_else(
        || jiff::Zoned::now().strftime("%-d %B %Y").to_string(),
        |given| given.trim().to_owned(),
    )
}

#[cfg(test)]
mod tests;
