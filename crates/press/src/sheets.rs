//! The sheets that there are: one table. The command line writes its files by it, and the screens
//! offer by it what can be printed. Everything for today has its own list of parts (`today`).
//!
//! Each says whom it is for ([`Copies`]): `crate::copies` works out how often it is printed.

use crate::copies::{Copies, For};
use crate::sheet::Sheet;
use crate::sheet::ink::{Inks, Letters};
use crate::{
    Booklet, Paper, Sizes, album, cards_to_sort, chart, floor, hole_cards, indented, key_pages,
    lessons, measuring, pocket, rubbing, ruler, scale_card, scale_strip, short_key,
    strips_of_looks, today, trail, try_out, visit, word_cards, words_to_look_at,
};

/// What a sheet is for; those of one use stand together in the table.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum Use {
    /// All that most want.
    Today,
    /// The key itself.
    Key,
    /// Its words.
    Words,
    /// To sort by hand, and to try the key out.
    Sorting,
    /// To measure and to collect.
    Measuring,
    /// For a wall, a floor, a path.
    Large,
    /// The key in other forms.
    OtherForms,
    /// Before, beside and after the walk.
    Around,
}

/// A sheet that can be printed.
pub struct SheetKind {
    /// What it is for.
    pub used: Use,
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
    /// Why there is no large print of it: the name of a message. None: there is.
    pub not_large: Option<&'static str>,
    /// Why it cannot be printed of this key on this paper: the name of a message that has a
    /// remedy. None: it can.
    pub refused: fn(&Booklet<'_>, Paper) -> Option<&'static str>,
}

/// What somebody wishes of the printing.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Printing {
    /// On which paper.
    pub paper: Paper,
    /// With which inks.
    pub inks: Inks,
    /// In which letters, as far as a sheet has them.
    pub letters: Letters,
    /// How large places for leaves and the chart for the wall are.
    pub sizes: Sizes,
}

impl Printing {
    /// On A4, in colour and in usual letters.
    pub const USUAL: Self = Self {
        paper: Paper::A4,
        inks: Inks::Colour,
        letters: Letters::Usual,
        sizes: Sizes::USUAL,
    };
}

impl SheetKind {
    /// Its boxes in mm, as somebody wishes it. A sheet without large print stays as it is.
    pub fn printed(&self, booklet: &Booklet<'_>, wished: Printing) -> Sheet {
        (self.set)(&self.wished(booklet, wished), wished.paper).with(wished.inks)
    }

    /// Why it cannot be printed as somebody wishes it: the name of a message that has a remedy.
    /// None: it can.
    pub fn not_printed(&self, booklet: &Booklet<'_>, wished: Printing) -> Option<&'static str> {
        (self.refused)(&self.wished(booklet, wished), wished.paper)
    }

    fn wished<'b>(&self, booklet: &Booklet<'b>, wished: Printing) -> Booklet<'b> {
        let letters = match self.not_large {
            None => wished.letters,
            Some(_) => Letters::Usual,
        };
        Booklet { letters, sizes: wished.sizes, ..booklet.clone() }
    }

    const fn of(
        used: Use,
        name: &'static str,
        set: fn(&Booklet<'_>, Paper) -> Sheet,
        copies: Option<Copies>,
    ) -> Self {
        Self {
            used,
            name,
            set,
            copies,
            has_something: |_| true,
            large_too: false,
            not_large: None,
            refused: |_, _| None,
        }
    }
}

/// Everything for today comes first: most want no more.
pub const SHEETS: [SheetKind; 25] = [
    SheetKind::of(Use::Today, "today", today::sheet, None),
    SheetKind::of(Use::Key, "short-key", short_key::sheet, Some(Copies::whole(For::EachGroup))),
    SheetKind::of(Use::Key, "key-pages", key_pages::sheet, Some(Copies::whole(For::EachGroup))),
    SheetKind {
        not_large: Some("print-not-large-pocket"),
        refused: pocket::refused,
        ..SheetKind::of(Use::Key, "pocket", pocket::sheet, Some(Copies::whole(For::EachChild)))
    },
    SheetKind {
        large_too: true,
        ..SheetKind::of(Use::Key, "chart", chart::sheet, Some(Copies::whole(For::Wall)))
    },
    SheetKind {
        has_something: words_to_look_at::has_something,
        ..SheetKind::of(
            Use::Words,
            "words",
            words_to_look_at::sheet,
            Some(Copies::whole(For::Wall)),
        )
    },
    SheetKind {
        has_something: word_cards::has_something,
        ..SheetKind::of(
            Use::Words,
            "word-cards",
            word_cards::sheet,
            Some(Copies::apart(For::EachGroup)),
        )
    },
    SheetKind::of(Use::Sorting, "try-out", try_out::sheet, None),
    SheetKind {
        has_something: cards_to_sort::has_something,
        ..SheetKind::of(
            Use::Sorting,
            "cards",
            cards_to_sort::sheet,
            Some(Copies::apart(For::EachGroup)),
        )
    },
    SheetKind {
        has_something: cards_to_sort::has_something,
        ..SheetKind::of(
            Use::Sorting,
            "cards-backs",
            cards_to_sort::with_backs,
            Some(Copies::apart(For::EachGroup)),
        )
    },
    SheetKind {
        has_something: cards_to_sort::has_something,
        ..SheetKind::of(Use::Sorting, "cards-numbers", cards_to_sort::with_numbers, None)
    },
    SheetKind {
        not_large: Some("print-not-large-lengths"),
        has_something: ruler::has_something,
        ..SheetKind::of(
            Use::Measuring,
            "ruler",
            ruler::sheet,
            Some(Copies::shared(For::EachGroup)),
        )
    },
    SheetKind {
        not_large: Some("print-not-large-form"),
        has_something: measuring::has_something,
        ..SheetKind::of(
            Use::Measuring,
            "measuring",
            measuring::sheet,
            Some(Copies::whole(For::EachGroup)),
        )
    },
    SheetKind {
        not_large: Some("print-not-large-lengths"),
        has_something: scale_card::has_something,
        ..SheetKind::of(
            Use::Measuring,
            "scale-card",
            scale_card::sheet,
            Some(Copies::whole(For::Once)),
        )
    },
    SheetKind {
        not_large: Some("print-not-large-lengths"),
        has_something: scale_strip::has_something,
        ..SheetKind::of(
            Use::Measuring,
            "scale-strip",
            scale_strip::sheet,
            Some(Copies::whole(For::Once)),
        )
    },
    SheetKind {
        not_large: Some("print-not-large-lengths"),
        has_something: rubbing::has_something,
        ..SheetKind::of(
            Use::Measuring,
            "rubbing",
            rubbing::sheet,
            Some(Copies::whole(For::EachChild)),
        )
    },
    SheetKind {
        not_large: Some("print-not-large-lengths"),
        has_something: album::has_something,
        ..SheetKind::of(
            Use::Measuring,
            "album",
            album::sheet,
            Some(Copies::whole(For::EachGroup)),
        )
    },
    SheetKind {
        not_large: Some("print-not-large-lengths"),
        has_something: chart::wall::has_something,
        refused: chart::wall::refused,
        ..SheetKind::of(Use::Large, "wall", chart::wall::sheet, Some(Copies::whole(For::Wall)))
    },
    SheetKind {
        not_large: Some("print-not-large-already"),
        has_something: floor::has_something,
        ..SheetKind::of(Use::Large, "floor", floor::sheet, Some(Copies::whole(For::Wall)))
    },
    SheetKind {
        not_large: Some("print-not-large-already"),
        has_something: trail::has_something,
        ..SheetKind::of(Use::Large, "trail", trail::sheet, Some(Copies::whole(For::Once)))
    },
    SheetKind {
        not_large: Some("print-not-large-form"),
        has_something: indented::has_something,
        ..SheetKind::of(
            Use::OtherForms,
            "indented",
            indented::sheet,
            Some(Copies::whole(For::EachGroup)),
        )
    },
    SheetKind {
        not_large: Some("print-not-large-form"),
        has_something: strips_of_looks::has_something,
        ..SheetKind::of(
            Use::OtherForms,
            "looks",
            strips_of_looks::sheet,
            Some(Copies::apart(For::EachGroup)),
        )
    },
    SheetKind {
        not_large: Some("print-not-large-form"),
        has_something: hole_cards::has_something,
        ..SheetKind::of(
            Use::OtherForms,
            "holes",
            hole_cards::sheet,
            Some(Copies::apart(For::EachGroup)),
        )
    },
    SheetKind {
        not_large: Some("print-not-large-adults"),
        ..SheetKind::of(Use::Around, "visit", visit::sheet, None)
    },
    SheetKind {
        not_large: Some("print-not-large-form"),
        ..SheetKind::of(Use::Around, "lessons", lessons::sheet, None)
    },
];

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn sheets_of_one_use_stand_together() {
        assert!(SHEETS.iter().map(|sheet| sheet.used).is_sorted());
    }
}
