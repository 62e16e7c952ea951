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
use spinney_model::{LeafForm, LeafLines, MeasuredLeaf, Veins, VeinsUnseen};

use crate::axis::{self, Along};
use crate::base_sides;
use crate::polygon::{Point, between, distance, length};
use main_vein::{LOWER, MainVein};
use sheet::Sheet;
use sides::{Looked, SideVein};

/// The scales at which side veins are looked for, in cells of the sheet.
const SCALES: [f64; 2] = [1.1, 1.9];

/// A main vein that lies far aside is looked for so often.
const AGAIN: usize = 3;
/// Its places usually lie so near its curve, as a share of its length.
const SETTLED: f64 = 0.005;

/// Looks for the veins of a leaf.
pub(crate) fn look(pixels: &RgbImage, leaf: &mut MeasuredLeaf) {
    if !in_one_piece(&leaf.form) {
        return;
    }
    let sheet = Sheet::of(pixels, &leaf.lines);
    let seen = sheet.and_then(|sheet| MainVein::of(&sheet).map(|main| (sheet, main)));
    if let (Some((sheet, main)), true) = (&seen, leaf.form.ends.is_some()) {
        let along = along_main(pixels, &leaf.lines, sheet, main);
        let wider =
            along.and_then(|along| base_sides::wider(&along, length(&leaf.lines.midrib)));
        leaf.form.ends.iter_mut().for_each(|ends| ends.sides.wider = wider);
    }
    let veins = seen.and_then(|(sheet, main)| veins(&sheet, &main));
    leaf.form.veins = veins.ok_or(VeinsUnseen::Faint);
}

/// A blade along its main vein. The vein is looked for near the line midway between both sides, and
/// where it lies far beside that, once more near itself. None: it is not seen there.
fn along_main(
    pixels: &RgbImage,
    lines: &LeafLines,
    sheet: &Sheet,
    main: &MainVein,
) -> Option<Along> {
    let base = *lines.midrib.first()?;
    let seen = |sheet: &Sheet, main: &MainVein| {
        let places = main.places();
        let to = (LOWER * places.len() as f64) as usize;
        let from = places.len() / 20 + 1;
        axis::along(&lines.blade, base, &sheet.back(&places[from..to]))
    };
    let settled = |sheet: &Sheet, main: &MainVein, along: &Along| {
        main.is_within(sheet) && along.off < SETTLED * along.length
    };
    let mut along = seen(sheet, main)?;
    if settled(sheet, main, &along) {
        return Some(along);
    }
    for _ in 0..AGAIN {
        let midrib = carried_on(along.midrib, along.length / LOWER - along.length);
        let beside = LeafLines { midrib, ..lines.clone() };
        let sheet = Sheet::of(pixels, &beside)?;
        let main = MainVein::of(&sheet)?;
        along = seen(&sheet, &main)?;
        if settled(&sheet, &main, &along) {
            return Some(along);
        }
    }
    None
}

/// A line that goes on straight so far beyond its end.
fn carried_on(mut line: Vec<Point>, far: f64) -> Vec<Point> {
    if let [.., before, last] = line[..] {
        line.push(between(before, last, 1.0 + far / distance(before, last).max(1e-9)));
    }
    line
}

fn in_one_piece(form: &LeafForm) -> bool {
    form.lobes.as_ref().is_some_and(|lobes| lobes.sinuses.is_none())
}

fn veins(sheet: &Sheet, main: &MainVein) -> Option<Veins> {
    let looked = SCALES.map(|scale| Looked::of(sheet, main, scale));
    let seen = looked.iter().flat_map(|looked| looked.sides().map(|sides| (looked, sides)));
    let (looked, sides) =
        seen.max_by(|(_, one), (_, other)| one.clear().total_cmp(&other.clear()))?;
    let counted = counted::counted(sheet, &sides)?;
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
