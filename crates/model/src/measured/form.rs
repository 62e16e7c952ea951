//! What the outline of a leaf says besides lengths: its lobes.
//!
//! Counts and kinds, with the places in the picture that they were counted at, so that a person
//! can count again. What cannot be seen says so and is never a zero. `docs/measure.md` has the
//! definitions.

/// What the outline of a leaf says besides lengths.
#[derive(Clone, Debug, PartialEq)]
pub struct LeafForm {
    /// The lobes of the blade.
    pub lobes: Lobes,
}

/// The lobes of a blade. A blade without any is one lobe.
#[derive(Clone, Debug, PartialEq)]
pub struct Lobes {
    /// The tip of each, from one side of the base around to the other.
    pub tips: Vec<[f64; 2]>,
    /// How the sinuses between them are; none: it is not lobed.
    pub sinuses: Option<Sinuses>,
}

impl Lobes {
    /// How many there are; 1: it is not lobed.
    pub fn count(&self) -> usize {
        self.tips.len()
    }
}

/// The sinuses between lobes.
#[derive(Clone, Debug, PartialEq)]
pub struct Sinuses {
    /// How far the deepest reaches in, as a share of the way to the midrib or the centre.
    pub depth: f64,
    /// Half of the 95 % interval of that.
    pub plus_minus: f64,
    /// Like a feather or like a hand; none: the outline alone does not say.
    pub arrangement: Option<Arrangement>,
    /// The innermost place of each.
    pub places: Vec<[f64; 2]>,
}

/// How parts are arranged.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum Arrangement {
    /// Along the midrib (pinnate).
    Feather,
    /// Around one point (palmate).
    Hand,
}
