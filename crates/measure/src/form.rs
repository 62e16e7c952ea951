//! What the outline of a leaf says besides lengths: leaflets, lobes, teeth.
//!
//! From the line around a blade, its base and its midrib line, and the pixels of the whole leaf, to
//! what can be counted. What the picture is too coarse for is not guessed.

use spinney_model::{EdgeKind, EdgeUnseen, LeafForm, VeinsUnseen};

use crate::axis::Axis;
use crate::base_sides;
use crate::edge::{Margin, edge};
use crate::ends::{Doubt, ends};
use crate::leaflets::leaflets;
use crate::lobes::{self, Blade};
use crate::pieces::Piece;
use crate::plus_minus::NO_BASE;
use crate::polygon::Point;
use crate::stalk::Cut;
use crate::turns::Turns;

/// What stands out less than so many pixels is no more than the steps between them.
const LEAST: f64 = 1.5;

/// What the form of a leaf is told from.
pub(crate) struct Seen<'a> {
    /// Around the leaf with its stalk.
    pub(crate) outline: &'a [Point],
    /// Around the blade, from its base to its base.
    pub(crate) blade: &'a [Point],
    pub(crate) base: Point,
    pub(crate) axis: &'a Axis,
    /// How long a pixel is.
    pub(crate) mm: Option<f64>,
    /// Whether it is a rubbing: crayon is as coarse as a tooth, and a gap in it looks like a sinus.
    pub(crate) rubbed: bool,
}

impl Seen<'_> {
    /// The form of a leaf. Without a stalk nobody knows how thin a rachis would be, and leaflets are
    /// not looked for.
    pub(crate) fn form(&self, piece: &Piece, cut: Option<&Cut>) -> LeafForm {
        if self.rubbed {
            return LeafForm {
                leaflets: None,
                lobes: None,
                edge: Err(EdgeUnseen::Rubbed),
                ends: None,
                veins: Err(VeinsUnseen::NotLookedFor),
            };
        }
        let mut turns = Turns::of(self.blade, LEAST);
        let all = turns.sinuses.clone();
        let leaflets = cut.and_then(|cut| leaflets(piece, cut));
        let lobes = match &leaflets {
            Some(leaflets) => {
                turns.keep_deepest(leaflets.middles.len() - 1);
                None
            }
            None => {
                let (base, axis) = (self.base, self.axis);
                let blade = Blade { base, midrib: &axis.midrib, length: axis.length };
                Some(lobes::lobes(&mut turns, &blade))
            }
        };
        let margin = Margin {
            line: self.blade,
            all: &all,
            lobes: &turns.sinuses,
            tips: &turns.tips(),
            tip: self.axis.midrib.last().copied().unwrap_or(self.base),
            length: self.axis.length,
            leaflets: leaflets.is_some(),
        };
        let unlobed = lobes.as_ref().is_some_and(|lobes| lobes.sinuses.is_none());
        let veins = Err(VeinsUnseen::NotLookedFor);
        let edge = edge(&margin, self.mm);
        let mut form = LeafForm { leaflets, lobes, edge, ends: None, veins };
        // A tip that somebody said beside the base leaves no blade of which anything could be told.
        if unlobed && self.axis.length > LEAST {
            // What is too small to be seen may be there all the same.
            let even = form.edge.as_ref().is_ok_and(|edge| edge.kind == EdgeKind::Entire);
            let base = match cut {
                Some(cut) if form.is_even() => cut.unsure,
                Some(cut) => cut.parting,
                None => NO_BASE * self.axis.length,
            };
            let doubt = Doubt { base, tip: self.axis.unseen, even };
            let lower = cut.and_then(|cut| base_sides::lower(self.outline, cut, self.axis));
            form.ends = Some(ends(self.axis, doubt, lower));
        }
        form
    }
}
