//! What the outline of a leaf says besides lengths.
//!
//! From the line around a blade, its base and its midrib line to lobes. The line is
//! looked at as it was outlined, to half a pixel; what the picture is too coarse for is not guessed.

use spinney_model::LeafForm;

use crate::axis::Axis;
use crate::lobes::{self, Blade};
use crate::polygon::Point;
use crate::turns::Turns;

/// What stands out less than so many pixels is no more than the steps between them.
const LEAST: f64 = 2.0;

/// The form of a blade; its line begins and ends at its base.
pub(crate) fn form(blade: &[Point], base: Point, axis: &Axis) -> LeafForm {
    let mut turns = Turns::of(blade, LEAST);
    let blade = Blade { base, midrib: &axis.midrib, length: axis.length };
    LeafForm { lobes: lobes::lobes(&mut turns, &blade) }
}
