//! What was measured of the leaves in a picture: data that `measure` yields, `exchange` writes
//! and `voice` says.
//!
//! Every number carries its unit, how it was taken and its ±; what could not be seen says so
//! and is never a zero. Lengths in outlines and places are pixels of the upright picture: to
//! the right, and down as on paper, the middle of the first pixel at (0, 0).

mod form;
mod mend;

pub use form::{
    Arrangement, BaseForm, BaseSides, Edge, EdgeKind, EdgeUnseen, Ends, LeafForm, Leaflets,
    Lobes, OneSide, Sinuses, TeethPerCm, TipForm, VeinPairs, Veins, VeinsUnseen, WhichSide,
    WithPlusMinus,
};
pub use mend::{CannotMend, Mend, NoMend};

/// What is measured of a leaf. The definitions are those of Ellis et al., *Manual of Leaf
/// Architecture*, 2009, in the words of `docs/measure.md`.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum Measurand {
    /// The blade along its midrib, from where the stalk joins it to the tip.
    BladeLength,
    /// The blade across, at right angles to its midrib.
    BladeWidth,
    /// The stalk along its curve, from its end to the blade.
    StalkLength,
    /// What the outline of the blade encloses, without the stalk.
    BladeArea,
    /// The length of the blade's outline.
    Perimeter,
    /// Blade length over blade width.
    LengthToWidth,
    /// Stalk length over blade length.
    StalkToBlade,
    /// Blade area over the area of its convex hull.
    Solidity,
    /// 4π area over perimeter squared: a circle has 1.
    Roundness,
}

impl Measurand {
    /// All of them, in the order in which they are shown.
    pub const ALL: [Self; 9] = [
        Self::BladeLength,
        Self::BladeWidth,
        Self::StalkLength,
        Self::BladeArea,
        Self::Perimeter,
        Self::LengthToWidth,
        Self::StalkToBlade,
        Self::Solidity,
        Self::Roundness,
    ];

    /// What its numbers are in.
    pub fn unit(self) -> MeasuredIn {
        match self {
            Self::BladeLength | Self::BladeWidth | Self::StalkLength | Self::Perimeter => {
                MeasuredIn::Millimetres
            }
            Self::BladeArea => MeasuredIn::SquareMillimetres,
            Self::LengthToWidth | Self::StalkToBlade | Self::Solidity | Self::Roundness => {
                MeasuredIn::Ratio
            }
        }
    }

    /// How it is taken.
    pub fn how(self) -> How {
        match self {
            Self::BladeLength => How::AlongMidrib,
            Self::BladeWidth => How::AcrossMidrib,
            Self::StalkLength => How::AlongStalk,
            Self::BladeArea | Self::Solidity => How::InsideOutline,
            Self::Perimeter | Self::Roundness => How::AlongOutline,
            Self::LengthToWidth | Self::StalkToBlade => How::OneOverOther,
        }
    }
}

/// What a measure is in.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum MeasuredIn {
    /// mm.
    Millimetres,
    /// mm².
    SquareMillimetres,
    /// One over another: no unit.
    Ratio,
}

impl MeasuredIn {
    /// The sign behind a number; a ratio has none.
    pub fn sign(self) -> &'static str {
        match self {
            Self::Millimetres => "mm",
            Self::SquareMillimetres => "mm²",
            Self::Ratio => "",
        }
    }
}

/// How a measure was taken.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum How {
    /// Along the line midway between both sides of the blade, from base to tip.
    AlongMidrib,
    /// At right angles to that line, from the outermost place of one side to that of the other.
    AcrossMidrib,
    /// Along the middle of the stalk.
    AlongStalk,
    /// What the outline encloses.
    InsideOutline,
    /// Along the outline.
    AlongOutline,
    /// One measure over another.
    OneOverOther,
}

/// One measure: it never leaves without its ±.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Measure {
    /// What was measured.
    pub what: Measurand,
    /// How much, in the unit of [`Measurand::unit`].
    pub value: f64,
    /// Half of the 95 % interval, in the same unit.
    pub plus_minus: f64,
}

/// Why a measure is not there.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum NotMeasured {
    /// Nobody knows how large a pixel is.
    NoScale,
    /// No stalk was seen.
    NoStalk,
}

/// What is to be said of one leaf.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum LeafNote {
    /// No stalk was seen: which end is the base is a guess.
    BaseGuessed,
    /// It has holes, or light places that look like the ground; they count as blade.
    Holes,
    /// Its edge cannot be told sharply from the ground.
    FaintEdge,
    /// It has two stalks: two leaves that touch, or a tip like a stalk.
    TwoStalks,
    /// It touched another leaf, and was cut from it.
    CutApart,
    /// A person said where it begins or ends, or what belongs to it.
    Mended,
    /// It is a rubbing: left and right are those of the side that was rubbed.
    Rubbed,
}

/// What in a picture is no leaf to be measured, and how often.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum LeftOut {
    /// Goes over the edge of the picture.
    CutOff,
    /// Lies over a scale strip.
    OnStrip,
    /// Straight on four sides: a label, tape or card.
    Label,
    /// Too small for a leaf: dust, writing.
    Speck,
    /// Hardly stands out from the ground: a pale leaf, a shadow, a stain.
    Faint,
}

impl LeftOut {
    /// All of them, in the order in which they are told.
    pub const ALL: [Self; 5] =
        [Self::CutOff, Self::OnStrip, Self::Label, Self::Faint, Self::Speck];

    /// Whether all of the thing is seen, so that a person can take it for a leaf.
    pub const fn is_whole(self) -> bool {
        match self {
            Self::CutOff | Self::OnStrip => false,
            Self::Label | Self::Speck | Self::Faint => true,
        }
    }
}

/// Where the size of a pixel comes from.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum PictureScale {
    /// The person said so.
    Said {
        /// Dots per inch.
        dpi: f64,
    },
    /// By a ruler in the picture, of which a person named two marks.
    OfRuler {
        /// Dots per inch.
        dpi: f64,
    },
    /// The file says so.
    OfFile {
        /// Dots per inch.
        dpi: f64,
        /// What makes it doubtful, if anything does.
        doubt: Option<Doubt>,
    },
    /// A scale card of ours is in the photograph, which was laid flat by it.
    OfCard {
        /// Dots per inch of what was laid flat.
        dpi: f64,
        /// How far from where they should be its rings are seen, in mm: the root of the mean
        /// square.
        off: f64,
    },
    /// A scale strip of ours is in the photograph, which was left as it is.
    OfStrip {
        /// Dots per inch beside the strip.
        dpi: f64,
        /// How far from where they should be its rings are seen, in mm: the root of the mean
        /// square.
        off: f64,
        /// By what share a length may be off, since a line of rings tells little of how the photograph was
        /// tilted.
        unsure: f64,
    },
    /// Nobody says so, or it cannot be: shape and ratios only.
    Unknown(NoScale),
}

impl PictureScale {
    /// The same where each two by two pixels became one.
    #[must_use]
    pub fn halved(self) -> Self {
        self.times(0.5)
    }

    /// The same before each two by two pixels became one.
    #[must_use]
    pub fn doubled(self) -> Self {
        self.times(2.0)
    }

    fn times(self, by: f64) -> Self {
        match self {
            Self::Said { dpi } => Self::Said { dpi: by * dpi },
            Self::OfRuler { dpi } => Self::OfRuler { dpi: by * dpi },
            Self::OfFile { dpi, doubt } => Self::OfFile { dpi: by * dpi, doubt },
            Self::OfCard { dpi, off } => Self::OfCard { dpi: by * dpi, off },
            Self::OfStrip { dpi, off, unsure } => Self::OfStrip { dpi: by * dpi, off, unsure },
            Self::Unknown(why) => Self::Unknown(why),
        }
    }

    /// Whether its pixels are too large for teeth to be seen: those of a mm have six and fewer.
    pub fn is_coarse(self) -> bool {
        self.mm().is_some_and(|mm| 25.4 / mm < 150.0)
    }

    /// How many mm a pixel is long, where that is known.
    pub fn mm(self) -> Option<f64> {
        match self {
            Self::Said { dpi }
            | Self::OfRuler { dpi }
            | Self::OfFile { dpi, .. }
            | Self::OfCard { dpi, .. }
            | Self::OfStrip { dpi, .. } => Some(25.4 / dpi),
            Self::Unknown(_) => None,
        }
    }
}

/// What makes the dpi of a file doubtful.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Doubt {
    /// 72 and 96 are what programs write where nobody measured.
    Usual,
}

/// Why the size of a pixel is not known.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum NoScale {
    /// The file says nothing.
    NotSaid,
    /// A camera took it: its dpi says nothing of how far away the leaf was.
    Camera,
    /// By the file's dpi the picture would be larger than any scanner's glass.
    TooLarge {
        /// Dots per inch, as the file has it.
        dpi: f64,
        /// How long the longer side would be, in mm.
        longer: f64,
    },
    /// Pixels of different width and height.
    NotSquare,
    /// Rings of a scale card or strip are seen, and too few of them, or not as they lie on one.
    Rings,
}

/// One leaf.
#[derive(Clone, Debug, PartialEq)]
pub struct MeasuredLeaf {
    /// Counted as a person reads: row by row, from the left. The first is 1.
    pub number: usize,
    /// What was measured, in the order of [`Measurand::ALL`].
    pub measures: Vec<Result<Measure, (Measurand, NotMeasured)>>,
    /// Its leaflets, lobes and teeth.
    pub form: LeafForm,
    /// What is to be said of it.
    pub notes: Vec<LeafNote>,
    /// The outline of its blade as elliptic Fourier coefficients a, b, c, d of the first harmonics,
    /// normalised by the first one.
    pub harmonics: Vec<[f64; 4]>,
    /// Its lines, in pixels.
    pub lines: LeafLines,
}

impl MeasuredLeaf {
    /// One of its measures.
    pub fn measure(&self, what: Measurand) -> Result<Measure, NotMeasured> {
        let found = self.measures.iter().find_map(|measure| match measure {
            Ok(measure) if measure.what == what => Some(Ok(*measure)),
            Err((of, why)) if *of == what => Some(Err(*why)),
            _ => None,
        });
        found.expect("every measurand is in the list")
    }
}

/// The lines of a leaf, in pixels of the upright picture.
#[derive(Clone, Debug, PartialEq)]
pub struct LeafLines {
    /// Around leaf and stalk, closed.
    pub outline: Vec<[f64; 2]>,
    /// Around the blade alone, closed.
    pub blade: Vec<[f64; 2]>,
    /// From base to tip.
    pub midrib: Vec<[f64; 2]>,
    /// Across the blade, where it is measured.
    pub width: [[f64; 2]; 2],
    /// From the end of the stalk to the base; empty where none was seen.
    pub stalk: Vec<[f64; 2]>,
    /// Where stalk and blade are cut apart.
    pub cut: Option<[[f64; 2]; 2]>,
}

/// What one picture says.
#[derive(Clone, Debug, PartialEq)]
pub struct MeasuredPicture {
    /// Width and height in pixels, upright.
    pub size: (u32, u32),
    /// How large a pixel is.
    pub scale: PictureScale,
    /// Whether a pixel is two by two of the file's.
    pub halved: bool,
    /// Whether it looks like a rubbing, and nobody said that it is one.
    pub like_a_rubbing: bool,
    /// The numbers of leaves that hung together until they were cut apart.
    pub cut_apart: Vec<Vec<usize>>,
    /// Its leaves, in their order.
    pub leaves: Vec<MeasuredLeaf>,
    /// What is no leaf, with how many there are.
    pub left_out: Vec<(LeftOut, usize)>,
    /// The largest things among that: a person may take one for a leaf.
    pub aside: Vec<Aside>,
    /// What a person said of its leaves.
    pub mends: Vec<Mend>,
}

impl MeasuredPicture {
    /// A picture in which nothing was found yet.
    pub fn of(size: (u32, u32)) -> Self {
        Self {
            size,
            scale: PictureScale::Unknown(NoScale::NotSaid),
            halved: false,
            like_a_rubbing: false,
            cut_apart: Vec::new(),
            leaves: Vec::new(),
            left_out: Vec::new(),
            aside: Vec::new(),
            mends: Vec::new(),
        }
    }
}

/// What was left out, and where it lies.
#[derive(Clone, Debug, PartialEq)]
pub struct Aside {
    /// Why it is no leaf.
    pub why: LeftOut,
    /// Around it, closed; in pixels.
    pub outline: Vec<[f64; 2]>,
}

/// Why nothing could be measured in a picture.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum PictureError {
    /// Not a kind of picture that is read here, or damaged.
    NotRead,
    /// More bytes or pixels than are unpacked.
    TooLarge {
        /// So many pixels are.
        most: u64,
    },
    /// Nothing stands out from the ground.
    NothingThere,
}
