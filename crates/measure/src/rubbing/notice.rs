//! Whether a picture looks like a rubbing, though nobody said so.
//!
//! From contrasts to yes or no. What is dark in a rubbing is grains, in a scan it is leaves. Where a
//! picture is one of fine things, places that end in a dark line are looked for, as in a rubbing.

use super::candidates;
use super::tone::Tone;
use crate::ground::{Contrast, WHOLE};
use crate::picture::Picture;
use crate::pieces::Piece;

/// Dark places of a rubbing are so long in the mean at most, along rows and columns, in mm.
const GRAIN: f64 = 5.0;
/// Where nobody knows how large a dot is, of the longer side of the picture.
const OF_SIDE: f64 = 1.0 / 50.0;
/// A leaf is at least so large, in mm², and so much of it is dark at most: of a scanned one all is.
const LEAF: f64 = 300.0;
const DARK: f64 = 0.66;
/// In each row of it more grains begin than this, in the mean.
const GRAINS: f64 = 3.0;

/// Along so many lines, about, each way it is looked how long what is dark is.
const LINES: usize = 400;

pub(crate) fn looks_like_one(picture: &Picture, contrast: &Contrast, level: u16) -> bool {
    let side = contrast.width.max(contrast.height) as f64;
    let grain = picture.scale.mm().map_or(OF_SIDE * side, |mm| GRAIN / mm);
    if long_in_the_mean(contrast, level) > grain {
        return false;
    }
    let tone = Tone::of(picture);
    let least = LEAF * tone.per_mm * tone.per_mm;
    let dark = f64::from(level) / WHOLE;
    let mottled = |piece: &Piece| {
        let (mut pixels, mut begun) = (0, 0);
        for run in &piece.runs {
            let row = run.y as usize * tone.plane.width;
            let row = &tone.plane.values[row + run.first as usize..=row + run.last as usize];
            let is_dark = |tone: &f32| f64::from(*tone) >= dark;
            pixels += row.iter().filter(|tone| is_dark(tone)).count();
            begun += row.windows(2).filter(|two| !is_dark(&two[0]) && is_dark(&two[1])).count();
        }
        let dark = pixels as f64 / piece.pixels as f64;
        dark < DARK && begun as f64 > GRAINS * piece.runs.len() as f64
    };
    let found = candidates::found(&tone);
    found.iter().any(|piece| piece.pixels as f64 >= least && mottled(piece))
}

/// How long what is dark is along rows and columns, each pixel counting the run that it is in.
fn long_in_the_mean(contrast: &Contrast, level: u16) -> f64 {
    let Contrast { width, height, values } = contrast;
    let along = |lines: usize, length: usize, step: usize, across: usize| {
        let (mut squares, mut all) = (0.0, 0.0);
        // Some of the lines say it as well as all.
        for line in (0..lines).step_by((lines / LINES).max(1)) {
            let mut run = 0.0;
            for at in 0..=length {
                if at < length && values[line * across + at * step] >= level {
                    run += 1.0;
                } else {
                    squares += run * run;
                    all += run;
                    run = 0.0;
                }
            }
        }
        if all > 0.0 { squares / all } else { f64::MAX }
    };
    along(*height, *width, 1, *width).max(along(*width, *height, *width, 1))
}
