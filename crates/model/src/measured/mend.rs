//! What a person says of leaves that were found otherwise than they lie there.
//!
//! Mends are facts in the order in which they were said; what was found and they give the leaves anew.
//! Leaves are named by their numbers, places by pixels of the upright picture. A leaf keeps its
//! number; what is new gets the next one that was never used.

/// One mend.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Mend {
    /// It is no leaf.
    NoLeaf {
        /// Its number.
        leaf: usize,
    },
    /// What was left out at a place is a leaf.
    ALeaf {
        /// A place of it.
        at: [f64; 2],
    },
    /// It is two leaves that touch. The larger one keeps the number.
    Two {
        /// Their number.
        leaf: usize,
        /// A line right across, between them.
        between: [[f64; 2]; 2],
    },
    /// It is a part of another one.
    PartOf {
        /// The number of the part, which goes.
        part: usize,
        /// That of the leaf.
        leaf: usize,
    },
    /// Its blade begins at a place.
    Base {
        /// Its number.
        leaf: usize,
        /// Where the stalk joins the blade.
        at: [f64; 2],
    },
    /// Its blade ends at a place.
    Tip {
        /// Its number.
        leaf: usize,
        /// Where.
        at: [f64; 2],
    },
    /// So long is the way between two places: a ruler lies there.
    Length {
        /// Both places.
        between: [[f64; 2]; 2],
        /// How long, in mm.
        mm: f64,
    },
}

impl Mend {
    /// The same in a picture of which each two by two pixels became one.
    #[must_use]
    pub fn halved(self) -> Self {
        // The middle of the first of two pixels is at 0, their common one at 0.5.
        let half = |place: [f64; 2]| place.map(|at| (at - 0.5) / 2.0);
        match self {
            Self::ALeaf { at } => Self::ALeaf { at: half(at) },
            Self::Two { leaf, between } => Self::Two { leaf, between: between.map(half) },
            Self::Base { leaf, at } => Self::Base { leaf, at: half(at) },
            Self::Tip { leaf, at } => Self::Tip { leaf, at: half(at) },
            Self::Length { between, mm } => Self::Length { between: between.map(half), mm },
            Self::NoLeaf { .. } | Self::PartOf { .. } => self,
        }
    }

    /// How long a pixel is by it, in mm; None: it says nothing of that, or nothing that can be.
    pub fn pixel(self) -> Option<f64> {
        let Self::Length { between: [a, b], mm } = self else { return None };
        let way = (a[0] - b[0]).hypot(a[1] - b[1]);
        let pixel = mm / way;
        // What dots per inch can be typed: 10 to 10,000.
        (way >= 10.0 && (0.00254..=2.54).contains(&pixel)).then_some(pixel)
    }
}

/// Why a mend cannot be done.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum CannotMend {
    /// So many are not taken for one picture.
    TooMany,
    /// There is no leaf of this number, or no longer.
    NoSuchLeaf {
        /// The number.
        leaf: usize,
    },
    /// Nothing was left out at this place.
    NothingThere,
    /// What was left out there is seen in part: it goes over the edge of the picture or lies over a scale strip.
    NotWhole,
    /// The line does not go right across the leaf.
    NotAcross {
        /// Its number.
        leaf: usize,
    },
    /// A leaf is no part of itself.
    PartOfItself {
        /// Its number.
        leaf: usize,
    },
    /// The places are too near each other, or the length cannot be.
    NoLength,
    /// The place is far outside of the leaf.
    FarOff {
        /// Its number.
        leaf: usize,
    },
}

/// A line of mends that cannot be done.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct NoMend {
    /// Its number, from 1.
    pub line: usize,
    /// What stands in it.
    pub text: String,
    /// Why; None: it is no mend that is known.
    pub why: Option<CannotMend>,
}
