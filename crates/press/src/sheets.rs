//! The sheets that there are: one table. The command line writes its files by it, and the screens
//! offer by it what can be printed. Everything for today has its own list of parts (`today`).
//!
//! Each says whom it is for ([`Copies`]): `crate::copies` works out how often it is printed.

use crate::copies::{Copies, For};
use crate::sheet::Sheet;
use crate::{Booklet, Paper, chart, key_pages, today, try_out, words_to_look_at};

/// A sheet that can be printed.
pub struct SheetKind {
    /// In file names and addresses: `key-pages`.
    pub name: &'static str,
    /// Its boxes in mm.
    pub set: fn(&Booklet<'_>, Paper) -> Sheet,
    /// Whom it is for; None: its parts are for several, and say so themselves.
    pub copies: Option<Copies>,
    /// Whether there is anything to print.
    pub has_something: fn(&Booklet<'_>) -> bool,
    /// Whether a wall wants it on A3 as well.
    pub large_too: bool,
}

impl SheetKind {
    const fn of(
        name: &'static str,
        set: fn(&Booklet<'_>, Paper) -> Sheet,
        copies: Option<Copies>,
    ) -> Self {
        Self { name, set, copies, has_something: |_| true, large_too: false }
    }
}

/// Everything for today comes first: most want no more.
pub const SHEETS: [SheetKind; 5] = [
    SheetKind::of("today", today::sheet, None),
    SheetKind::of("key-pages", key_pages::sheet, Some(Copies::whole(For::EachGroup))),
    SheetKind {
        large_too: true,
        ..SheetKind::of("chart", chart::sheet, Some(Copies::whole(For::Wall)))
    },
    SheetKind {
        has_something: words_to_look_at::has_something,
        ..SheetKind::of("words", words_to_look_at::sheet, Some(Copies::whole(For::Wall)))
    },
    SheetKind::of("try-out", try_out::sheet, None),
];
