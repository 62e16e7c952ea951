//! How far a measure may be off: half of its 95 % interval.
//!
//! From a measure and how its leaf was seen to its ±, in pixels. Its parts do not depend on each other,
//! so their squares add up: where an edge lies between two pixels; a share of the value (what is taken for
//! the midrib); how gradually the blade begins and ends, which says how far its two ends may be off; and
//! what teeth, waves and lobes add; what may lie beyond a seam where leaves were cut apart. Each number of scans is the one by which 95 of 100 drawn leaves lie inside with
//! the least width (the interval score of Gneiting and Raftery, *Strictly proper scoring rules*, 2007), set by
//! `crates/measure/benches/drawn_leaves.rs`; `docs/measurements.md` has how far it holds on others. They
//! say nothing of a scanner that is wrong itself, nor of a leaf that was folded.

use crate::seam::Hidden;
use spinney_model::{Measurand, MeasuredLeaf, PictureScale};

/// Where an edge lies, in pixels: along a blade, across it, along a stalk.
const LENGTH: f64 = 1.2;
const WIDTH: f64 = 1.0;
const STALK: f64 = 1.4;
/// The midrib line may lie askew: shares of the length, of the width of a plain blade and of one
/// with waves or lobes.
const ASKEW: f64 = 0.0033;
const ASKEW_ACROSS: f64 = 0.003;
const ASKEW_UNEVEN: f64 = 0.006;
/// The tips of teeth on both sides are blunt by a pixel.
const TEETH_ACROSS: f64 = 1.2;
/// Pixels along the outline whose area may lie on the other side of it.
const AREA: f64 = 0.15;
/// Around a blade; and by what a tooth comes out shorter.
const AROUND: f64 = 5.5;
const TOOTH: f64 = 2.4;
/// Of how far the end of the blade was looked for, and of what is too thin at its tip to be seen: along
/// the blade, along the stalk, around the blade.
const UNSURE: [f64; 3] = [0.95, 0.71, 1.1];
const UNSEEN: [f64; 2] = [0.8, 3.1];
/// Where the blade reaches behind its base, the stalk's end is looked for in a notch that blur fills.
const NOTCH: f64 = 2.7;
/// Without a stalk, or with leaflets, nobody sees where the blade begins: a share of its length (a guess;
/// no drawn leaf has judged it).
pub(crate) const NO_BASE: f64 = 0.015;
/// Of a hull, which is as well known as the area, and hardly differs from it.
const SOLIDITY: f64 = 0.012;
/// What a photograph adds that was laid flat by a scale card, as a share of a length; twice for an area
/// (`tests/outside/leaves.py`).
const FLAT: f64 = 0.007;

/// Length and width are askew together.
pub(crate) const TOGETHER: f64 = 1.15;

/// How a leaf was seen.
#[derive(Clone, Copy)]
pub(crate) struct Seen {
    /// How far the place may be off where blade and stalk meet.
    pub(crate) unsure: f64,
    /// How much of the tip is too thin to be seen.
    pub(crate) unseen: f64,
    /// How many teeth its edge has.
    pub(crate) teeth: usize,
    /// Whether its edge has waves or lobes.
    pub(crate) uneven: bool,
    /// Whether the blade reaches behind its base.
    pub(crate) notch: bool,
    /// Whether somebody sees where the blade begins.
    pub(crate) based: bool,
    /// How long its outline is.
    pub(crate) around: f64,
    /// How large its blade is.
    pub(crate) size: f64,
    /// What may lie beyond a seam.
    pub(crate) hidden: Hidden,
    /// How wide a grain of crayon is, where it is a rubbing.
    pub(crate) crayon: Option<f64>,
}

impl Seen {
    /// The ± of a length or an area in pixels, or of solidity.
    pub(crate) fn of(&self, what: Measurand, value: f64) -> f64 {
        if let Some(crayon) = self.crayon {
            return of_rubbing(self, what, value, crayon);
        }
        let toothed = if self.teeth > 0 { TEETH_ACROSS } else { 0.0 };
        let askew = if self.uneven { ASKEW_UNEVEN } else { ASKEW_ACROSS };
        let notch = if self.notch { NOTCH } else { 0.0 };
        let no_base = if self.based { 0.0 } else { NO_BASE * value };
        let [unsure, unseen] = [self.unsure, self.unseen];
        let hidden = self.hidden;
        let parts: &[f64] = match what {
            Measurand::BladeLength => &[
                LENGTH,
                ASKEW * value,
                UNSURE[0] * unsure,
                UNSEEN[0] * unseen,
                no_base,
                hidden.along,
            ],
            Measurand::BladeWidth => &[WIDTH, askew * value, toothed, hidden.across],
            Measurand::StalkLength => &[STALK, UNSURE[1] * unsure, notch],
            Measurand::BladeArea => &[AREA * self.around, hidden.area],
            Measurand::Perimeter => &[
                AROUND,
                TOOTH * self.teeth as f64,
                UNSURE[2] * unsure,
                UNSEEN[1] * unseen,
                hidden.around,
            ],
            Measurand::Solidity => &[SOLIDITY, hidden.area / self.size],
            // Worked out of others.
            Measurand::LengthToWidth | Measurand::StalkToBlade | Measurand::Roundness => &[],
        };
        parts.iter().map(|part| part * part).sum::<f64>().sqrt()
    }
}

impl Seen {
    /// The ± of a stalk over a blade: where one is too long because the other begins too late, both count.
    pub(crate) fn of_stalk_to_blade(&self, stalk: f64, blade: f64) -> f64 {
        let sure = Self { unsure: 0.0, ..*self };
        let with = |what, value| (value, sure.of(what, value));
        let rest = of_ratio(
            stalk / blade,
            with(Measurand::StalkLength, stalk),
            with(Measurand::BladeLength, blade),
        );
        let base = self.unsure * (UNSURE[1] / stalk + UNSURE[0] / blade);
        rest.hypot(stalk / blade * base)
    }
}

/// The ± of one measure over another: shares add up as squares.
pub(crate) fn of_ratio(ratio: f64, over: (f64, f64), under: (f64, f64)) -> f64 {
    let share = |(value, plus_minus): (f64, f64)| plus_minus / value;
    ratio * share(over).hypot(share(under))
}

/// By what share a length may be off for the way in which the size of a dot is known.
pub fn unsure(scale: PictureScale) -> f64 {
    match scale {
        PictureScale::OfCard { .. } => FLAT,
        PictureScale::OfStrip { unsure, .. } => unsure,
        PictureScale::Said { .. }
        | PictureScale::OfRuler { .. }
        | PictureScale::OfFile { .. }
        | PictureScale::Unknown(_) => 0.0,
    }
}

/// What the way in which the size of a dot is known adds to the ± of leaves.
pub(crate) fn of_scale(leaves: &mut [MeasuredLeaf], scale: PictureScale) {
    leaves.iter_mut().for_each(|leaf| widened(leaf, unsure(scale)));
}

/// The ± of a leaf whose lengths may be off by such a share.
pub(crate) fn widened(leaf: &mut MeasuredLeaf, of_length: f64) {
    for measure in leaf.measures.iter_mut().flatten() {
        let share = match measure.what {
            Measurand::BladeArea => 2.0 * of_length,
            Measurand::Solidity => 0.0,
            _ => of_length,
        };
        measure.plus_minus = measure.plus_minus.hypot(share * measure.value);
    }
}

/// How many pixels a grain of crayon is wide; without a scale, of a page at 300 dots per inch.
pub(crate) fn of_crayon(mm: Option<f64>) -> f64 {
    CRAYON / mm.unwrap_or(25.4 / 300.0)
}

/// In mm.
const CRAYON: f64 = 0.3;

/// The ± in a rubbing: grains of crayon, and a share of the value. Set by
/// `crates/measure/benches/drawn_rubbings`.
fn of_rubbing(seen: &Seen, what: Measurand, value: f64, crayon: f64) -> f64 {
    let unsure = UNSURE[0] * seen.unsure;
    let parts: [f64; 3] = match what {
        Measurand::BladeLength => [5.0 * crayon, 0.035 * value, unsure],
        Measurand::BladeWidth => [3.2 * crayon, 0.025 * value, 0.0],
        Measurand::StalkLength => [7.0 * crayon, 0.1 * value, unsure],
        Measurand::BladeArea => [0.9 * crayon * seen.around, 0.03 * value, 0.0],
        Measurand::Perimeter => [8.0 * crayon, 0.2 * value, 0.0],
        Measurand::Solidity => [0.0, 0.05 * value, 0.0],
        // Worked out of others.
        Measurand::LengthToWidth | Measurand::StalkToBlade | Measurand::Roundness => [0.0; 3],
    };
    parts.iter().map(|part| part * part).sum::<f64>().sqrt()
}
