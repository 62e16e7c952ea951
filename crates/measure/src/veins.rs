//! The veins of a blade: the main vein, and how many side veins leave it on the left and on the right.
//!
//! From the pixels of a leaf and its lines to traced veins, or to nothing: what cannot be told is not
//! guessed. The blade is laid straight along its midrib line (`sheet`); there veins are ridges or
//! furrows of light (`ridges`). The main vein is the best line from base to tip (`main_vein`). Side
//! veins are looked for with curves that leave it towards the tip; curves that leave it towards the
//! base show what noise and the finer net come to in this very leaf (`sides`). What stands out from
//! that, about evenly from base to tip on both sides, is counted, and how both sides stand to each
//! other is told (`counted`).
//!
//! Blades with lobes, and those made of leaflets, are not looked at.

mod counted;
mod main_vein;
mod ridges;
mod sheet;
mod sides;
mod upright;

use image::RgbImage;
use spinney_model::{LeafForm, MeasuredLeaf, Veins, VeinsUnseen};

use crate::polygon::Point;
use main_vein::MainVein;
use sheet::Sheet;
use sides::{Looked, SideVein};

/// The scales at which side veins are looked for, in cells of the sheet.
const SCALES: [f64; 2] = [1.1, 1.9];

/// Looks for the veins of a leaf.
pub(crate) fn look(pixels: &RgbImage, leaf: &mut MeasuredLeaf) {
    if in_one_piece(&leaf.form) {
        leaf.form.veins = veins(pixels, leaf).ok_or(VeinsUnseen::Faint);
    }
}

fn in_one_piece(form: &LeafForm) -> bool {
    form.lobes.as_ref().is_some_and(|lobes| lobes.sinuses.is_none())
}

fn veins(pixels: &RgbImage, leaf: &MeasuredLeaf) -> Option<Veins> {
    let sheet = Sheet::of(pixels, &leaf.lines)?;
    let main = MainVein::of(&sheet)?;
    let looked = SCALES.map(|scale| Looked::of(&sheet, &main, scale));
    let seen = looked.iter().flat_map(|looked| looked.sides().map(|sides| (looked, sides)));
    let (looked, sides) =
        seen.max_by(|(_, one), (_, other)| one.clear().total_cmp(&other.clear()))?;
    let counted = counted::counted(&sheet, &sides)?;
    let footed = counted.map(|side| -> Vec<SideVein> {
        side.iter().map(|vein| looked.footed(&sides, vein)).collect()
    });
    let pairs = counted::pairs(&footed);
    let lines = footed.map(|side| -> Vec<Vec<Point>> {
        side.iter().map(|vein| sheet.back(&looked.traced(&sides, vein))).collect()
    });
    Some(Veins { main: sheet.back(&main.places()), sides: lines, pairs })
}

#[cfg(test)]
mod tests;
