//! The sheets that there are: one table, from which the command line writes its files, the screens
//! offer what can be printed, and the documents name it.

use crate::sheet::Sheet;
use crate::{Booklet, Paper, chart, key_pages, today, try_out, words_to_look_at};

/// A sheet that can be printed.
pub struct SheetForm {
    /// In file names and addresses: `key-pages`.
    pub name: &'static str,
    /// Its boxes in mm.
    pub set: fn(&Booklet<'_>, Paper) -> Sheet,
    /// Whether there is anything to print.
    pub has_something: fn(&Booklet<'_>) -> bool,
    /// Whether a wall wants it on A3 as well.
    pub large_too: bool,
}

impl SheetForm {
    const fn of(name: &'static str, set: fn(&Booklet<'_>, Paper) -> Sheet) -> Self {
        Self { name, set, has_something: |_| true, large_too: false }
    }
}

/// Everything for today comes first: most want no more.
pub const SHEETS: [SheetForm; 5] = [
    SheetForm::of("today", today::sheet),
    SheetForm::of("key-pages", key_pages::sheet),
    SheetForm { large_too: true, ..SheetForm::of("chart", chart::sheet) },
    SheetForm {
        has_something: words_to_look_at::has_something,
        ..SheetForm::of("words", words_to_look_at::sheet)
    },
    SheetForm::of("try-out", try_out::sheet),
];
