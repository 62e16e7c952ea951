//! The command line of what is printed: on what, how large, for how many.

use std::path::PathBuf;

use clap::{Args, ValueEnum};

use spinney_model::Matrix;
use spinney_press::sheets::Printing;
use spinney_press::{LeafLength, Sizes};

use super::{Unfit, date};

/// What to print, and where.
#[derive(Args, Debug)]
pub(crate) struct Sheets {
    /// Write the key, its sheets (PDF), its phone page (HTML) and its JSON into this folder.
    #[arg(long, value_name = "FOLDER")]
    pub(crate) out: Option<PathBuf>,
    /// The paper of the sheets.
    #[arg(long, value_enum, default_value = "a4")]
    pub(crate) paper: Paper,
    /// What the sheets are printed with.
    #[arg(long, value_enum, default_value = "colour")]
    pub(crate) ink: Inks,
    /// In which letters: large print (18 pt and more) is made of everything for today, the key on
    /// few pages, the key, the chart, the words, the cards and the try-out sheets. The others
    /// stay as they are, and the program says which.
    #[arg(long, value_enum, default_value = "usual")]
    pub(crate) letters: Letters,
    /// How long a leaf each place of the album and of the chart for the wall has room for, such
    /// as "12 cm" or 120 (mm). Without it the lengths in the table say how large each place is.
    #[arg(long, value_name = "LENGTH", value_parser = leaf_length, allow_negative_numbers = true)]
    pub(crate) leaf_room: Option<LeafLength>,
    /// How large the chart for the wall is, once its sheets are glued together and cut out.
    #[arg(long, value_enum, default_value = "needed")]
    pub(crate) wall: Wall,
    #[command(flatten)]
    pub(crate) come_along: ComeAlong,
    /// The date at the foot of the sheets, such as "3 October 2026"; today if not given.
    #[arg(long, value_name = "DATE", value_parser = date::read)]
    pub(crate) date: Option<String>,
    /// People who did not know the answers tried this key, and it worked: print it without
    /// "trying-out copy". A broken key stays a draft.
    #[arg(long)]
    pub(crate) tried: bool,
    /// Write over files that Spinney did not write, or that were changed since. Never over what
    /// the command reads.
    #[arg(long)]
    pub(crate) force: bool,
}

impl Sheets {
    /// How they are printed, for the press.
    pub(crate) fn printing(&self) -> Printing {
        let (inks, letters) = (self.ink.for_press(), self.letters.for_press());
        let sizes = Sizes { places: self.leaf_room, wall: self.wall.for_press() };
        Printing { paper: self.paper.size(), inks, letters, sizes }
    }
}

#[derive(Clone, Copy, Debug, PartialEq, Eq, ValueEnum)]
pub(crate) enum Paper {
    A4,
    Letter,
}

impl Paper {
    /// The same paper for the press.
    pub(crate) fn size(self) -> spinney_press::Paper {
        match self {
            Self::A4 => spinney_press::Paper::A4,
            Self::Letter => spinney_press::Paper::Letter,
        }
    }
}

#[derive(Clone, Copy, Debug, PartialEq, Eq, ValueEnum)]
pub(crate) enum Inks {
    /// As it is drawn.
    Colour,
    /// Black and grey, without grounds: it saves ink.
    Black,
}

impl Inks {
    /// The same for the press.
    pub(crate) fn for_press(self) -> spinney_press::sheet::ink::Inks {
        match self {
            Self::Colour => spinney_press::sheet::ink::Inks::Colour,
            Self::Black => spinney_press::sheet::ink::Inks::Black,
        }
    }
}

#[derive(Clone, Copy, Debug, PartialEq, Eq, ValueEnum)]
pub(crate) enum Letters {
    /// As they are drawn: 14 pt, and 12 where room is short.
    Usual,
    /// Large print: 18 pt and more.
    Large,
}

impl Letters {
    /// The same for the press.
    pub(crate) fn for_press(self) -> spinney_press::Letters {
        match self {
            Self::Usual => spinney_press::Letters::Usual,
            Self::Large => spinney_press::Letters::Large,
        }
    }
}

#[derive(Clone, Copy, Debug, PartialEq, Eq, ValueEnum)]
pub(crate) enum Wall {
    /// As large as its places make it.
    Needed,
    /// Exactly A2.
    A2,
    /// Exactly A1.
    A1,
}

impl Wall {
    /// The same for the press.
    pub(crate) fn for_press(self) -> spinney_press::Wall {
        match self {
            Self::Needed => spinney_press::Wall::AsNeeded,
            Self::A2 => spinney_press::Wall::A2,
            Self::A1 => spinney_press::Wall::A1,
        }
    }
}

/// How long a leaf has room.
fn leaf_length(text: &str) -> Result<LeafLength, Unfit> {
    LeafLength::read(text).ok_or_else(|| {
        let [least, most] = [LeafLength::LEAST, LeafLength::MOST].map(|mm| mm.to_string());
        Unfit::new(
            "usage-places",
            "usage-places-remedy",
            [("text", text.into()), ("least", least.into()), ("most", most.into())],
        )
    })
}

/// Who comes along, for the number of copies.
#[derive(Args, Clone, Copy, Debug)]
pub(crate) struct ComeAlong {
    /// How many children come along; the first page of today.pdf says how many copies that
    /// takes. A row `children` of the sheet `about` says the same.
    #[arg(long, value_name = "N", value_parser = how_many)]
    pub(crate) children: Option<u16>,
    /// In how many groups they go (or a row `groups` of the sheet `about`).
    #[arg(long, value_name = "N", value_parser = how_many)]
    pub(crate) groups: Option<u16>,
}

impl ComeAlong {
    /// The table with who comes along, as far as the command line says so.
    pub(crate) fn counted(self, matrix: Matrix) -> Matrix {
        let mut scene = matrix.scene().clone();
        scene.children = self.children.or(scene.children);
        scene.groups = self.groups.or(scene.groups);
        matrix.with_scene(scene)
    }
}

/// A number of children or of groups.
fn how_many(text: &str) -> Result<u16, Unfit> {
    spinney_exchange::table::how_many(text).ok_or_else(|| {
        let most = spinney_model::limits::CHILDREN;
        Unfit::new(
            "usage-how-many",
            "usage-how-many-remedy",
            [("text", text.into()), ("most", most.to_string().into())],
        )
    })
}
