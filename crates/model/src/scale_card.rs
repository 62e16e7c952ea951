//! The scale card: a sheet of ours on which leaves are photographed.
//!
//! Eight rings at known places, each with a dot in its middle. The press prints them, and `measure`
//! finds them again in a photograph: from where they are it follows how the paper was tilted, and how
//! large a millimetre is. Any four corners could be those of any paper, also in a mirror: the small dots of
//! the upper side tell where it is, and which paper it is.

/// Outer and inner radius of a ring, in mm.
pub const RING: (f64, f64) = (6.0, 4.4);
/// Radius of a large dot, in mm.
pub const LARGE_DOT: f64 = 3.0;
/// Radius of a small dot, in mm.
pub const SMALL_DOT: f64 = 1.4;
/// So many rings tell which paper it is. The middle one of them may be covered where all others are seen.
pub const TELLING: usize = 3;
/// From the middle of a ring inwards nothing is measured so far, in mm.
pub const CLEAR: f64 = RING.0 + 2.0;

/// A scale card, by the paper that it is printed on.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum ScaleCard {
    /// A4.
    A4,
    /// US Letter.
    Letter,
}

/// A strip to lie in or beside a tray: rings in one line. Which dots are small tells where it begins, and
/// that it is no side of a card.
pub const STRIP: [RingMark; 6] = [
    RingMark { at: [0.0, 0.0], small: true },
    RingMark { at: [36.0, 0.0], small: true },
    RingMark { at: [72.0, 0.0], small: false },
    RingMark { at: [108.0, 0.0], small: true },
    RingMark { at: [144.0, 0.0], small: false },
    RingMark { at: [180.0, 0.0], small: false },
];
/// How long and wide the strip is, in mm.
pub const STRIP_SIZE: [f64; 2] = [200.0, 30.0];
/// Where the middle of its first ring lies, in mm from its left and upper edge.
pub const STRIP_FIRST: [f64; 2] = [10.0, 10.0];

/// A ring with its dot.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct RingMark {
    /// Its middle, in mm to the right of that of the first and down from it.
    pub at: [f64; 2],
    /// Whether its dot is a small one.
    pub small: bool,
}

impl ScaleCard {
    /// Each of them.
    pub const ALL: [Self; 2] = [Self::A4, Self::Letter];

    /// From the middles of the rings on the left to those on the right, and from the upper to
    /// the lower ones, in mm.
    pub fn size(self) -> [f64; 2] {
        match self {
            Self::A4 => [174.0, 186.0],
            Self::Letter => [178.0, 166.0],
        }
    }

    /// The rings, clockwise from the corner above on the left: corners and middles of the sides.
    /// The first [`TELLING`] are those of the upper side: small, small and large on A4, all
    /// small on Letter.
    pub fn marks(self) -> [RingMark; 8] {
        let [w, h] = self.size();
        let small = match self {
            Self::A4 => 2,
            Self::Letter => 3,
        };
        let around = [
            [0.0, 0.0],
            [w / 2.0, 0.0],
            [w, 0.0],
            [w, h / 2.0],
            [w, h],
            [w / 2.0, h],
            [0.0, h],
            [0.0, h / 2.0],
        ];
        std::array::from_fn(|at| RingMark { at: around[at], small: at < small })
    }
}
