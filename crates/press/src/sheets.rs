//! The sheets that there are: one table. The command line writes its files by it, and the screens
//! offer by it what can be printed. Everything for today has its own list of parts (`today`).

use crate::sheet::Sheet;
use crate::{Booklet, Paper, chart, key_pages, today, try_out, words_to_look_at};

/// A sheet that can be printed.
pub struct SheetKind {
    /// In file names and addresses: `key-pages`.
    pub name: &'static str,
    /// Its boxes in mm.
    pub set: fn(&Booklet<'_>, Paper) -> Sheet,
    /// Whether there is anything to print.
    pub has_something: fn(&Booklet<'_>) -> bool,
    /// Whether a wall wants it on A3 as well.
    pub large_too: bool,
}

impl SheetKind {
    const fn of(name: &'static str, set: fn(&Booklet<'_>, Paper) -> Sheet) -> Self {
        Self { name, set, has_something: |_| true, large_too: false }
    }
}

/// Everything for today comes first: most want no more.
pub const SHEETS: [SheetKind; 5] = [
    SheetKind::of("today", today::sheet),
    SheetKind::of("key-pages", key_pages::sheet),
    SheetKind { large_too: true, ..SheetKind::of("chart", chart::sheet) },
    SheetKind {
        has_something: words_to_look_at::has_something,
        ..SheetKind::of("words", words_to_look_at::sheet)
    },
    SheetKind::of("try-out", try_out::sheet),
];
