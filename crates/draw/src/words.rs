//! Drawings of the words: what a word means, and beside it what it is taken for, at the same
//! size and turn.
//!
//! From a word of the list to what is drawn of it. Heavy is the part that is spoken of. A word
//! without a drawing simply has none: what cannot be made true in lines is left out ("sap",
//! "shiny"). Plants and animals are of no kind in particular.

mod flower;
mod fruit;
mod leaves;
mod pond;
mod shell;
mod shows;
mod skin;
mod twig;
mod wood;

#[cfg(test)]
mod tests;

use spinney_model::{DrawnWord, Weight};

pub use shows::Shows;

/// The drawings of a word: all that are said of leaves alone, and, where the text is about
/// leaves, those that are said of shells and tails as well.
pub fn of_word(word: &str, about_leaves: bool) -> Option<DrawnWord> {
    let (own, other) = shown(word, about_leaves)?;
    let drawn = |shows: &[Shows]| shows.iter().map(|shows| shows.figure()).collect();
    Some(DrawnWord { own: drawn(own), other: drawn(other) })
}

/// What a word means, without what it is taken for.
pub(crate) fn own(word: &str, about_leaves: bool) -> &'static [Shows] {
    shown(word, about_leaves).map_or(&[], |(own, _)| own)
}

/// What is spoken of is heavy, all else as usual.
fn spoken_of(heavy: bool, usual: Weight) -> Weight {
    if heavy { Weight::Heavy } else { usual }
}

/// What a word shows, and what it is taken for.
type Shown = (&'static [Shows], &'static [Shows]);

fn shown(word: &str, about_leaves: bool) -> Option<Shown> {
    let own = match about_leaves {
        true => of_leaves(word),
        false => of_animals(word),
    };
    own.or_else(|| always(word))
}

/// Words that mean the same wherever they are said.
fn always(word: &str) -> Option<Shown> {
    use Shows::*;
    Some(match word {
        "lobed" => (&[Lobed, HandLobed], &[Toothed]),
        "lobe" => (&[Lobe], &[Tooth]),
        "unlobed" => (&[Unlobed], &[Lobed]),
        "tooth" => (&[Tooth], &[Lobe]),
        "toothed" => (&[Toothed], &[Lobed]),
        "double-toothed" => (&[DoubleToothed], &[ToothedLarge]),
        "entire" => (&[Smooth], &[Toothed]),
        "heart-shaped" => (&[Heart], &[Egg]),
        "needle" => (&[Needles], &[Spiny]),
        "leaf" => (&[OneLeaf], &[OneLeaflet]),
        "leaflet" => (&[OneLeaflet], &[OneLeaf]),
        "end leaflet" => (&[EndLeaflet], &[NoEndLeaflet]),
        "compound" => (&[Feather, Hand], &[Lobed]),
        "feather" => (&[Feather, Lobed], &[Hand]),
        "hand-shaped" => (&[Hand, HandLobed], &[Feather]),
        "feather-veined" => (&[VeinsFeather], &[VeinsHand]),
        "hand-veined" => (&[VeinsHand], &[VeinsFeather]),
        "opposite" => (&[Opposite, BudsOpposite], &[Alternate, PairedLeaflets]),
        "alternate" => (&[Alternate, BudsAlternate], &[Opposite]),
        "bud" => (&[Bud], &[Gall]),
        "end bud" => (&[EndBud], &[SideBuds]),
        "leaf scar" => (&[LeafScar], &[SideBuds]),
        "blade" => (&[BladePart], &[StalkPart]),
        "leaf stalk" => (&[StalkPart], &[TwigPart]),
        "midrib" => (&[MidribPart], &[VeinsPart]),
        "vein" => (&[VeinsPart], &[MidribPart]),
        "vein pair" => (&[VeinPair], &[]),
        "underside" => (&[Underside], &[UpperSide]),
        "shoot" => (&[Shoot], &[OlderTwig]),
        "thorn" => (&[Thorn], &[Prickle]),
        "prickle" => (&[Prickle], &[Thorn]),
        "stipule" => (&[Stipules], &[NoStipule]),
        "gland" => (&[Glands], &[NoGland]),
        "tendril" => (&[Tendril], &[NoTendril]),
        "stem" => (&[Stem], &[OneStalk]),
        "rosette" => (&[Rosette], &[RingOnStem]),
        "trunk" => (&[Trunk], &[Twigs]),
        "bark" => (&[Bark], &[Wood]),
        "frond" => (&[Frond], &[FrondPiece]),
        "petal" => (&[Petals], &[Sepals]),
        "sepal" => (&[Sepals], &[Petals]),
        "berry" => (&[Berry], &[Nut]),
        "nut" => (&[Nut], &[Berry]),
        "hip" => (&[Hip], &[Berry]),
        "fruit" => (&[Fruit], &[Seeds]),
        "seed" => (&[Seeds], &[Fruit]),
        "pod" => (&[Pod], &[WingedFruit]),
        "cone" => (&[Cone], &[Catkin]),
        "catkin" => (&[Catkin], &[Cone]),
        "scale" => (&[Scales], &[Needles]),
        "rib" => (&[Ribbed], &[Striped]),
        "abdomen" => (&[Abdomen], &[MiddlePart]),
        "antenna" | "feeler" => (&[Feelers], &[Legs]),
        "claw" => (&[Claws], &[NoClaws]),
        "jointed" => (&[Jointed], &[Unjointed]),
        "larva" => (&[Larva], &[Worm]),
        "segment" => (&[Segment], &[Legs]),
        "tail" => (&[Tails], &[Legs]),
        "gill" => (&[Gills], &[GillLegs]),
        "fin" => (&[Fins], &[TadpoleLegs]),
        "sucker" => (&[Suckers], &[NoSuckers]),
        "snout" => (&[Snout], &[NoSnout]),
        "head" => (&[Head], &[Tails]),
        "shell" => (&[Shell], &[Case]),
        "case" => (&[Case], &[Shell]),
        "mouth" => (&[ShellMouth], &[ShellWhorl]),
        "coiled" => (&[Coiled], &[Uncoiled]),
        "spiral" => (&[Spiral], &[Rings]),
        _ => return None,
    })
}

/// Words as they are said of leaves.
fn of_leaves(word: &str) -> Option<Shown> {
    use Shows::*;
    Some(match word {
        "gap" => (&[Gap], &[Lobe]),
        "wavy" => (&[Wavy], &[Toothed]),
        "smooth" => (&[Smooth], &[Toothed]),
        "spine" | "spike" => (&[Spiny], &[Toothed]),
        "bristle" => (&[Bristles], &[Spiny]),
        "hair" => (&[Hairy], &[Bald]),
        "fringe" => (&[Fringe], &[Hairy]),
        "oval" => (&[Oval], &[Egg]),
        "egg-shaped" => (&[Egg], &[Oval]),
        "lance-shaped" => (&[Lance], &[Oval]),
        "pointed" => (&[PointedTip], &[RoundTip]),
        "notched" => (&[NotchedTip], &[RoundTip]),
        "wedge-shaped" => (&[WedgeBase], &[RoundBase]),
        "lopsided" => (&[Lopsided], &[Even]),
        "whorl" => (&[Whorl], &[Opposite]),
        "stalk" => (&[StalkPart], &[TwigPart]),
        "twig" => (&[TwigPart], &[StalkPart]),
        "edge" => (&[EdgePart], &[TipPart]),
        "tip" => (&[TipPart], &[BasePart]),
        "base" => (&[BasePart], &[TipPart]),
        "wing" => (&[WingedFruit], &[Pod]),
        "pair" => (&[LeafletPair], &[LeafletOfPair]),
        _ => return None,
    })
}

/// Words as they are said of small animals.
fn of_animals(word: &str) -> Option<Shown> {
    use Shows::*;
    Some(match word {
        "bristle" => (&[BristlyWorm], &[Worm]),
        "fringe" => (&[FringedLeg], &[PlainLeg]),
        "pair" => (&[PairOfLegs], &[OneLeg]),
        "whorl" => (&[ShellWhorl], &[ShellMouth]),
        "wing" => (&[InsectWings, WingedFruit], &[Wingless]),
        _ => return None,
    })
}
