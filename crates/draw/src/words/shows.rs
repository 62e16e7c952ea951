//! What there is to show of the words: one table, each with its caption and its lines.
//!
//! From a thing to be shown to its drawing. Which word shows it, `words` knows.

use spinney_model::{Drawing, Figure, Stroke};

use super::fruit::Cut;
use super::leaves::{self, HAND_LOBED, LOBED, PLAIN, coarse, edged, leaf, one, tipped};
use super::pond::{Leg, Long, Of};
use super::shell::OfShell;
use super::twig::Lesson;
use super::wood::Bare;
use super::{flower, fruit, pond, shell, skin, twig, wood};
use crate::blade::{Blade, Edge, Shape, Tip};
use crate::leaf::{Form, LENGTH, Part, TIP};

/// The box of every word, in millimetres.
const BOX: [f64; 4] = [-24.0, -50.0, 48.0, 64.0];

macro_rules! shows {
    ($($(#[$doc:meta])* $name:ident = $caption:literal: $lines:expr,)*) => {
        /// What a drawing shows.
        #[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
        pub enum Shows {
            $($(#[$doc])* $name),*
        }

        impl Shows {
            /// All of them.
            pub const ALL: &[Self] = &[$(Self::$name),*];

            /// The name of its caption among the messages of the screens.
            pub fn caption(self) -> &'static str {
                match self { $(Self::$name => $caption),* }
            }

            fn strokes(self) -> Vec<Stroke> {
                match self { $(Self::$name => $lines),* }
            }
        }
    };
}

shows! {
    /// A blade whose edge is a plain line.
    Smooth = "smooth": one(PLAIN),
    /// A blade without lobes.
    Unlobed = "unlobed": one(PLAIN),
    /// Widest below the middle.
    Egg = "egg": one(PLAIN),
    /// Widest in the middle.
    Oval = "oval": one(Blade { shape: Shape::Oval, ..PLAIN }),
    /// Widest above the middle.
    Upper = "upper": one(Blade { shape: Shape::Upper, ..PLAIN }),
    /// With a notch at the stalk.
    Heart = "heart": one(Blade { shape: Shape::Heart, ..PLAIN }),
    /// With small points.
    Toothed = "toothed": one(edged(Edge::Toothed)),
    /// The same, fewer and larger.
    ToothedLarge = "toothed-large": one(coarse(Edge::Toothed)),
    /// With small teeth on large ones.
    DoubleToothed = "double": one(coarse(Edge::DoubleToothed)),
    /// With soft bends.
    Wavy = "wavy": one(edged(Edge::Wavy)),
    /// With hard points.
    Spiny = "spiny": one(edged(Edge::Spiny)),
    /// With lobes in two rows.
    Lobed = "lobed": one(LOBED),
    /// With lobes from one point.
    HandLobed = "hand-lobed": one(HAND_LOBED),
    /// One lobe.
    Lobe = "lobe": leaves::stretch(LOBED, 1, false),
    /// One tooth.
    Tooth = "tooth": leaves::stretch(edged(Edge::Toothed), 3, false),
    /// Between two lobes.
    Gap = "gap": leaves::stretch(LOBED, 1, true),
    /// A twig with needles.
    Needles = "needles": twig::needles(),
    /// The tip comes to a point.
    PointedTip = "pointed-tip": one(tipped(Tip::Pointed)),
    /// The tip is round.
    RoundTip = "round-tip": one(tipped(Tip::Rounded)),
    /// One half starts lower.
    Lopsided = "lopsided": leaves::lopsided(),
    /// Both halves start together.
    Even = "even": one(PLAIN),
    /// Leaflets in two rows.
    Feather = "feather": leaf(Form::Feather(7), |_| false),
    /// Leaflets from one point.
    Hand = "hand": leaf(Form::Hand(5), |_| false),
    /// Everything from the bud on.
    OneLeaf = "one-leaf": twig::lesson(Lesson::Leaf),
    /// A part of it, without a bud.
    OneLeaflet = "one-leaflet": twig::lesson(Lesson::Leaflet),
    /// In the angle above the stalk.
    Bud = "bud": twig::lesson(Lesson::Bud),
    /// A swelling beside it.
    Gall = "gall": twig::lesson(Lesson::Gall),
    /// Two leaves at one height.
    Opposite = "opposite": twig::leaves(twig::OPPOSITE),
    /// One leaf at each height.
    Alternate = "alternate": twig::leaves(twig::ALTERNATE),
    /// Leaflets in pairs on leaves that are not.
    PairedLeaflets = "paired-leaflets": twig::paired_leaflets(),
    /// Three leaves at one height.
    Whorl = "whorl": twig::leaves(twig::WHORL),
    /// The flat part.
    BladePart = "blade": leaves::hatched(),
    /// The stalk of a leaf, on its twig.
    StalkPart = "stalk": twig::stalk_or_twig(true),
    /// The twig that carries it.
    TwigPart = "twig": twig::stalk_or_twig(false),
    /// The rim of the blade.
    EdgePart = "edge": leaf(Form::OnePiece, |part| part == Part::Edge),
    /// The vein down the middle.
    MidribPart = "midrib": leaf(Form::OnePiece, |part| part == Part::Midrib),
    /// The veins at its sides.
    VeinsPart = "veins": leaf(Form::OnePiece, |part| part == Part::Veins),
    /// Two of them.
    VeinPair = "vein-pair": leaves::vein_pair(),
    /// The far end.
    TipPart = "tip": leaves::ringed(TIP),
    /// The end at the stalk.
    BasePart = "base": leaves::ringed(TIP - LENGTH),
    /// Widest in the middle, as wide as long.
    RoundBlade = "round-blade": one(Blade { shape: Shape::Round, ..PLAIN }),
    /// Several times as long as wide.
    Lance = "lance": one(Blade { shape: Shape::Narrow, ..PLAIN }),
    /// The base runs straight to the stalk.
    WedgeBase = "wedge-base": leaves::wedge(),
    /// The same blade with a base that is round.
    RoundBase = "round-base": one(tipped(Tip::Pointed)),
    /// The tip is cut in.
    NotchedTip = "notched-tip": one(tipped(Tip::Notched)),
    /// Side veins in two rows.
    VeinsFeather = "veins-feather": leaves::veins_of_feather(),
    /// Veins from one point.
    VeinsHand = "veins-hand": leaves::veins_of_hand(),
    /// The leaflet at the end.
    EndLeaflet = "end-leaflet": leaves::leaflets(&[6]),
    /// Two at one height.
    LeafletPair = "leaflet-pair": leaves::leaflets(&[2, 3]),
    /// One of them.
    LeafletOfPair = "leaflet-part": leaves::leaflets(&[3]),
    /// Pairs alone.
    NoEndLeaflet = "no-end-leaflet": leaf(Form::Feather(6), |_| false),
    /// Veins that stand out.
    Underside = "underside": leaves::underside(),
    /// Veins that do not.
    UpperSide = "upper-side": one(PLAIN),
    /// Hairs all over.
    Hairy = "hairy": skin::hairs(true),
    /// Hairs along the edge alone.
    Fringe = "fringe": skin::hairs(false),
    /// A blade without hairs.
    Bald = "bald": one(PLAIN),
    /// A stiff hair on each tooth.
    Bristles = "bristles": skin::bristles(),
    /// A raised line.
    Ribbed = "ribbed": skin::piece(true),
    /// Lines of colour alone.
    Striped = "striped": skin::piece(false),
    /// Plates that lie on each other.
    Scales = "scales": twig::scales(),
    /// Needles that come out of one place.
    Bunch = "bunch": twig::bunches(),
    /// The bud at the very tip.
    EndBud = "end-bud": wood::bare(Bare::EndBud),
    /// The buds along a twig.
    SideBuds = "side-buds": wood::bare(Bare::SideBuds),
    /// Where a leaf was.
    LeafScar = "leaf-scar": wood::bare(Bare::Scars),
    /// What grew this year.
    Shoot = "shoot": wood::bare(Bare::Shoot),
    /// What grew before.
    OlderTwig = "older-twig": wood::bare(Bare::Older),
    /// Two buds at one height.
    BudsOpposite = "buds-opposite": wood::buds(true),
    /// One bud at each height.
    BudsAlternate = "buds-alternate": wood::buds(false),
    /// A hard twig that pricks.
    Thorn = "thorn": wood::sharp(true),
    /// A point on the skin.
    Prickle = "prickle": wood::sharp(false),
    /// At the foot of a leaf stalk.
    Stipules = "stipules": twig::stipules(true),
    /// A leaflet of the same leaf.
    NoStipule = "leaflet-part": twig::stipules(false),
    /// A knob below the blade.
    Glands = "glands": twig::glands(true),
    /// A bud of the same twig.
    NoGland = "bud-part": twig::glands(false),
    /// A thread that curls.
    Tendril = "tendril": twig::tendril(true),
    /// A leaf stalk beside it.
    NoTendril = "stalk-part": twig::tendril(false),
    /// What carries the leaves.
    Stem = "stem": flower::stem(true),
    /// What carries one leaf.
    OneStalk = "one-stalk": flower::stem(false),
    /// A ring of leaves at the ground.
    Rosette = "rosette": flower::rosette(true),
    /// A ring of leaves on the stem.
    RingOnStem = "ring-on-stem": flower::rosette(false),
    /// The thick stem of a tree.
    Trunk = "trunk": wood::tree(true),
    /// Its thinnest branches.
    Twigs = "twigs": wood::tree(false),
    /// The skin of a trunk.
    Bark = "bark": wood::log(true),
    /// What is inside.
    Wood = "wood": wood::log(false),
    /// The whole leaf of a fern.
    Frond = "frond": flower::frond(true),
    /// A part of it.
    FrondPiece = "frond-piece": flower::frond(false),
    /// The coloured parts of a flower.
    Petals = "petals": flower::flower(true),
    /// Those under them.
    Sepals = "sepals": flower::flower(false),
    /// Soft all through.
    Berry = "berry": fruit::cut(Cut::Berry),
    /// With a hard shell.
    Nut = "nut": fruit::cut(Cut::Nut),
    /// With hairs and seeds in a hollow.
    Hip = "hip": fruit::cut(Cut::Hip),
    /// All of a fruit.
    Fruit = "fruit": fruit::cut(Cut::All),
    /// What is in it.
    Seeds = "seeds": fruit::cut(Cut::Seeds),
    /// Seeds in a row.
    Pod = "pod": fruit::pod(),
    /// A fruit with a thin flap.
    WingedFruit = "winged-fruit": fruit::winged(),
    /// Woody scales.
    Cone = "cone": fruit::cone(),
    /// Tiny flowers that hang.
    Catkin = "catkin": fruit::catkin(),
    /// The hind part.
    Abdomen = "abdomen": pond::insect(Of::Abdomen),
    /// The part with the legs.
    MiddlePart = "middle-part": pond::insect(Of::Middle),
    /// Thin stalks on the head.
    Feelers = "feelers": pond::insect(Of::Feelers),
    /// What it walks with.
    Legs = "legs": pond::insect(Of::Legs),
    /// Two of them.
    PairOfLegs = "pair-of-legs": pond::insect(Of::Pair),
    /// One of them.
    OneLeg = "one-leg": pond::insect(Of::Leg),
    /// The front end.
    Head = "head": pond::insect(Of::Head),
    /// Behind all legs.
    Tails = "tails": pond::insect(Of::Tails),
    /// One ring of the body.
    Segment = "segment": pond::insect(Of::Segment),
    /// At the sides of the body.
    Gills = "gills": pond::insect(Of::Gills),
    /// Legs beside gills.
    GillLegs = "gill-legs": pond::insect(Of::LegsOfGilled),
    /// Flat on the back.
    InsectWings = "insect-wings": pond::insect(Of::Wings),
    /// The same without them.
    Wingless = "wingless": pond::insect(Of::Nothing),
    /// A long nose.
    Snout = "snout": pond::insect(Of::Snout),
    /// The same without it.
    NoSnout = "no-snout": pond::insect(Of::NoSnout),
    /// Young, with a head and legs.
    Larva = "larva": pond::long_body(Long::Larva),
    /// Without both.
    Worm = "worm": pond::long_body(Long::Worm),
    /// With a pad at each end.
    Suckers = "suckers": pond::long_body(Long::Suckers),
    /// The same without pads.
    NoSuckers = "no-suckers": pond::long_body(Long::NoSuckers),
    /// With stiff hairs.
    BristlyWorm = "bristly": pond::long_body(Long::Bristles),
    /// The hooked end of a leg.
    Claws = "claws": pond::leg(Leg::Claws),
    /// A leg without it.
    NoClaws = "no-claws": pond::leg(Leg::Plain),
    /// In pieces that bend.
    Jointed = "jointed": pond::leg(Leg::Joints),
    /// Soft all along.
    Unjointed = "unjointed": pond::leg(Leg::Soft),
    /// Hairs along a leg.
    FringedLeg = "fringed-leg": pond::leg(Leg::Fringe),
    /// A leg without hairs.
    PlainLeg = "plain-leg": pond::leg(Leg::Plain),
    /// Thin flaps for swimming.
    Fins = "fins": pond::tadpole(true),
    /// What it walks with.
    TadpoleLegs = "hind-legs": pond::tadpole(false),
    /// A house that grew.
    Shell = "shell": shell::pointed(OfShell::Nothing),
    /// A house that was built.
    Case = "case": shell::case(),
    /// Where the animal comes out.
    ShellMouth = "shell-mouth": shell::pointed(OfShell::Mouth),
    /// The same, wound the other way.
    LeftMouth = "shell-left-mouth": shell::wound_to_the_left(),
    /// One turn.
    ShellWhorl = "shell-whorl": shell::pointed(OfShell::Whorl),
    /// A shell with a point.
    PointedShell = "pointed-shell": shell::pointed(OfShell::Nothing),
    /// A shell without one.
    FlatShell = "flat-shell": shell::flat(),
    /// Rolled up.
    Coiled = "coiled": shell::rope(true),
    /// Not rolled up.
    Uncoiled = "uncoiled": shell::rope(false),
    /// A line that winds outwards.
    Spiral = "spiral": shell::spiral(true),
    /// Lines that close.
    Rings = "rings": shell::spiral(false),
}

impl Shows {
    /// Its lines, with its caption.
    pub(super) fn figure(self) -> Figure {
        Figure { caption: self.caption(), drawing: self.drawing() }
    }

    /// Its lines.
    pub fn drawing(self) -> Drawing {
        Drawing { frame: BOX, strokes: self.strokes() }
    }
}
