//! What a leaf says besides lengths: leaflets, lobes, the edge and its teeth, side veins.
//!
//! Counts and kinds, with the places in the picture that they were counted at, so that a person
//! can count again. What cannot be seen says so and is never a zero. `docs/measure.md` has the
//! definitions.

/// What a leaf says besides lengths.
#[derive(Clone, Debug, PartialEq)]
pub struct LeafForm {
    /// Its leaflets; none: the blade is in one piece.
    pub leaflets: Option<Leaflets>,
    /// The lobes of the blade; none: it is made of leaflets.
    pub lobes: Option<Lobes>,
    /// The edge of the blade, or of its leaflets.
    pub edge: Result<Edge, EdgeUnseen>,
    /// How the blade begins and ends; none: it is lobed, or made of leaflets.
    pub ends: Option<Ends>,
    /// Its side veins.
    pub veins: Result<Veins, VeinsUnseen>,
}

impl LeafForm {
    /// How many teeth its edge has, as far as they can be seen; waves are none.
    pub fn teeth(&self) -> usize {
        let edge = self.edge.as_ref().ok().filter(|edge| edge.kind != EdgeKind::Wavy);
        edge.map_or(0, |edge| edge.teeth.iter().map(Vec::len).sum())
    }

    /// Whether its edge has neither teeth nor waves, as far as they can be seen.
    pub fn is_even(&self) -> bool {
        self.edge.as_ref().map_or(true, |edge| edge.kind == EdgeKind::Entire)
    }

    /// Whether its edge has waves, or it has lobes.
    pub fn is_uneven(&self) -> bool {
        self.lobes.as_ref().is_some_and(|lobes| lobes.count() > 1)
            || self.edge.as_ref().is_ok_and(|edge| edge.kind == EdgeKind::Wavy)
    }
}

/// A number with half of its 95 % interval.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct WithPlusMinus {
    /// How much.
    pub value: f64,
    /// Half of the 95 % interval, in the same unit.
    pub plus_minus: f64,
}

/// How a blade begins and ends.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Ends {
    /// How far up it is widest: 0 at the base, 1 at the tip.
    pub widest: WithPlusMinus,
    /// How its base is.
    pub base: BaseForm,
    /// Between the base and the margin a quarter of the way up, on both sides; in degrees. None: it is heart-shaped.
    pub base_angle: Option<WithPlusMinus>,
    /// How its tip is.
    pub tip: TipForm,
    /// Between the tip and the margin three quarters of the way up; in degrees. None: it is notched.
    pub tip_angle: Option<WithPlusMinus>,
    /// How the two sides of its base stand to each other.
    pub sides: BaseSides,
}

/// How the two sides of a base stand to each other, left and right seen with the tip of the leaf up.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct BaseSides {
    /// How much further down one side reaches than the other, as a share of the blade's length. None:
    /// there is no stalk from which both sides could be seen to begin.
    pub lower: Option<OneSide>,
    /// Whether a side goes on down behind where it leaves the stalk: then `lower` tells how low it hangs,
    /// and not where it starts.
    pub behind: bool,
    /// What the wider side has of the width in the lowest part, from the main vein on. None: the main
    /// vein is not seen.
    pub wider: Option<OneSide>,
}

/// How much more of something one side has.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct OneSide {
    /// How much, of the side that has more.
    pub value: WithPlusMinus,
    /// Which side has clearly more. None: its ± does not let that be told.
    pub which: Option<WhichSide>,
}

/// Which of two sides has more.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum WhichSide {
    /// Neither: both are about alike.
    Neither,
    /// The left one.
    Left,
    /// The right one.
    Right,
}

impl WhichSide {
    /// All of them.
    pub const ALL: [Self; 3] = [Self::Neither, Self::Left, Self::Right];
}

/// How a base is.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum BaseForm {
    /// Reaches behind where the stalk joins it.
    HeartShaped,
    /// As if cut off straight.
    CutOff,
    /// Bulging, or at more than a right angle.
    Rounded,
    /// With straight sides.
    WedgeShaped,
    /// With hollow sides, running down the stalk.
    DrawnIn,
}

impl BaseForm {
    /// All of them.
    pub const ALL: [Self; 5] =
        [Self::HeartShaped, Self::CutOff, Self::Rounded, Self::WedgeShaped, Self::DrawnIn];
}

/// How a tip is.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum TipForm {
    /// With hollow sides.
    DrawnOut,
    /// With straight sides.
    Pointed,
    /// Bulging, or at more than a right angle.
    Rounded,
    /// Its sides reach beyond the end of the midrib.
    Notched,
}

impl TipForm {
    /// All of them.
    pub const ALL: [Self; 4] = [Self::DrawnOut, Self::Pointed, Self::Rounded, Self::Notched];
}

/// The leaflets of a leaf.
#[derive(Clone, Debug, PartialEq)]
pub struct Leaflets {
    /// The middle of each, from the base of the leaf on.
    pub middles: Vec<[f64; 2]>,
    /// Like a feather or like a hand.
    pub arrangement: Arrangement,
    /// Whether there is one at the end; none: they are like a hand.
    pub at_end: Option<bool>,
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

/// The edge of a blade, or of its leaflets.
#[derive(Clone, Debug, PartialEq)]
pub struct Edge {
    /// How it is.
    pub kind: EdgeKind,
    /// The tip of each tooth or wave on the left side and on the right, seen with the tip of the leaf
    /// up; of an edge that is double-toothed those of the large ones.
    pub teeth: [Vec<[f64; 2]>; 2],
    /// How many are in a cm; none: there are none, or nobody knows how large a pixel is.
    pub per_cm: Option<TeethPerCm>,
}

/// How an edge is.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum EdgeKind {
    /// Without teeth.
    Entire,
    /// Round both outwards and inwards.
    Wavy,
    /// With teeth of about one size.
    Toothed,
    /// With teeth that have smaller ones on them.
    DoubleToothed,
    /// With teeth; whether they have smaller ones on them cannot be seen.
    ToothedOrDouble,
    /// With teeth that end in a sharp point, hollow on both sides.
    Spiny,
}

impl EdgeKind {
    /// All of them.
    pub const ALL: [Self; 6] = [
        Self::Entire,
        Self::Wavy,
        Self::Toothed,
        Self::DoubleToothed,
        Self::ToothedOrDouble,
        Self::Spiny,
    ];
}

/// How many teeth are in a cm of the edge.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct TeethPerCm {
    /// On the mean.
    pub value: f64,
    /// Half of the 95 % interval of that.
    pub plus_minus: f64,
}

/// Why an edge was not seen.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum EdgeUnseen {
    /// Its teeth, if it has any, are smaller than what the picture shows.
    TooCoarse,
    /// Crayon is as coarse as a tooth.
    Rubbed,
}

/// The veins of a blade.
#[derive(Clone, Debug, PartialEq)]
pub struct Veins {
    /// The main vein, from the base on.
    pub main: Vec<[f64; 2]>,
    /// The side veins on the left and on the right, seen with the tip of the leaf up: each a line from
    /// the main vein outwards, the one nearest to the base first.
    pub sides: [Vec<Vec<[f64; 2]>>; 2],
    /// How those on the left stand to those on the right; none: it is neither clearly.
    pub pairs: Option<VeinPairs>,
}

/// How the side veins of both sides stand to each other.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum VeinPairs {
    /// In pairs, from one place each.
    Opposite,
    /// In turn.
    Alternate,
}

impl VeinPairs {
    /// All of them.
    pub const ALL: [Self; 2] = [Self::Opposite, Self::Alternate];
}

/// Why no side veins are told.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum VeinsUnseen {
    /// There are none that can be told, or the picture is too coarse or too noisy for them.
    Faint,
    /// They are not looked for: it is lobed, or made of leaflets, or was put right by hand.
    NotLookedFor,
}
