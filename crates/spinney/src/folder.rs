//! Writes everything for one visit into a folder: key, sheets, phone page.

use std::path::{Path, PathBuf};

use spinney_exchange::{json, key_text};
use spinney_press::{Booklet, Paper, PressError};

use crate::args;
use crate::failure::Failure;

/// A folder that is being filled.
pub(crate) struct Folder {
    path: PathBuf,
    /// The names of the files written, in order.
    pub(crate) written: Vec<String>,
}

impl Folder {
    /// Makes the folder if it is not there.
    pub(crate) fn make(path: &Path) -> Result<Self, Failure> {
        std::fs::create_dir_all(path).map_err(|error| Failure::making(path, &error))?;
        Ok(Self { path: path.to_owned(), written: Vec::new() })
    }

    /// Writes one file whole: first beside its place, then moved there, so that a full disk
    /// leaves the older file as it was.
    pub(crate) fn write(&mut self, name: &str, bytes: &[u8]) -> Result<(), Failure> {
        let path = self.path.join(name);
        write_whole(&path, bytes)?;
        self.written.push(name.to_owned());
        Ok(())
    }

    /// Writes the key in words and as JSON, the sheets and the phone page.
    pub(crate) fn fill(
        &mut self,
        booklet: &Booklet<'_>,
        report: &json::Report<'_>,
        paper: args::Paper,
    ) -> Result<(), Failure> {
        let size = match paper {
            args::Paper::A4 => Paper::A4,
            args::Paper::Letter => Paper::Letter,
        };
        self.write("key.txt", key_text::write(booklet.key, booklet.matrix).as_bytes())?;
        self.write("key.json", json::report(report).as_bytes())?;
        self.write("phone.html", spinney_press::page::html(booklet).as_bytes())?;
        self.write("key-pages.pdf", &pressed(spinney_press::key_pages::pdf(booklet, size))?)?;
        self.write("chart.pdf", &pressed(spinney_press::chart::pdf(booklet, size))?)?;
        if paper == args::Paper::A4 {
            self.write(
                "chart-a3.pdf",
                &pressed(spinney_press::chart::pdf(booklet, Paper::A3))?,
            )?;
        }
        self.write("try-out.pdf", &pressed(spinney_press::try_out::pdf(booklet, size))?)?;
        self.write("today.pdf", &pressed(spinney_press::today::pdf(booklet, size))?)
    }
}

/// Writes a file whole or not at all.
pub(crate) fn write_whole(path: &Path, bytes: &[u8]) -> Result<(), Failure> {
    let mut beside = path.as_os_str().to_owned();
    beside.push(".part");
    let beside = PathBuf::from(beside);
    let failed = |error: std::io::Error| {
        // If even this fails there is nothing more to do; the first error is what counts.
        let _ = std::fs::remove_file(&beside);
        Failure::writing(path, &error)
    };
    std::fs::write(&beside, bytes).map_err(failed)?;
    std::fs::rename(&beside, path).map_err(failed)
}

fn pressed(sheet: Result<Vec<u8>, PressError>) -> Result<Vec<u8>, Failure> {
    sheet.map_err(|error| Failure::new(&error, error.remedy()))
}

/// The date at the foot of a sheet: as given, or today in words.
pub(crate) fn date(given: Option<&str>) -> String {
    given.map_or_else(
        || jiff::Zoned::now().strftime("%-d %B %Y").to_string(),
        |given| given.trim().to_owned(),
    )
}
