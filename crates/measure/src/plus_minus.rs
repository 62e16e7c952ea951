//! How far a measure may be off: half of its 95 % interval.
//!
//! From a measure and the size of a pixel to its ±. Two parts that do not depend on each other: one
//! in pixels (where an edge lies between two) and one in proportion (what is taken for the
//! end of a midrib, for the beginning of a blade). The numbers were set on drawn leaves by
//! `crates/measure/benches/drawn_leaves.rs` and judged on others; `docs/measurements.md` has both. They
//! say nothing of a scanner that is wrong itself, nor of a leaf that was folded.

use spinney_model::Measurand;

/// The two parts of a measurand's ±: pixels, and a share of its value.
fn parts(what: Measurand) -> (f64, f64) {
    match what {
        Measurand::BladeLength => (2.0, 0.018),
        Measurand::BladeWidth => (1.5, 0.012),
        Measurand::StalkLength => (4.0, 0.03),
        // Of an area: pixels along its outline.
        Measurand::BladeArea => (0.15, 0.012),
        Measurand::Perimeter => (4.0, 0.05),
        Measurand::LengthToWidth | Measurand::StalkToBlade => (0.0, 0.0),
        Measurand::Solidity => (0.0, 0.012),
        Measurand::Roundness => (0.0, 0.1),
    }
}

/// The ± of a length or an area in pixels, or of a shape. `around` is the length of the outline, for
/// areas.
pub(crate) fn of(what: Measurand, value: f64, around: f64) -> f64 {
    let (pixels, share) = parts(what);
    let pixels = match what {
        Measurand::BladeArea => pixels * around,
        _ => pixels,
    };
    pixels.hypot(share * value)
}

/// What it adds to the ± of a length that nobody sees where the blade begins: a share of how far it was
/// looked for.
pub(crate) fn of_base(unsure: f64) -> f64 {
    UNSURE * unsure
}

/// See [`of_base`].
const UNSURE: f64 = 0.8;

/// The ± of one measure over another: shares add up as squares.
pub(crate) fn of_ratio(ratio: f64, over: (f64, f64), under: (f64, f64)) -> f64 {
    let share = |(value, plus_minus): (f64, f64)| plus_minus / value;
    ratio * share(over).hypot(share(under))
}
