//! Leaves as dots on a line: each at its length, equal ones above each other, those far from the
//! others as rings.
//!
//! From numbers to a picture. All kinds of a column have one scale, so that strips below each
//! other can be compared. A listener hears the sentence beside it.

use maud::{Markup, html};
use spinney_collection::rows::Rows;
use spinney_model::SpreadOf;

/// How wide a strip is, in its own units, and how large a dot.
const WIDE: f64 = 420.0;
const DOT: f64 = 6.0;
/// Dots are put above each other in so many places.
const PLACES: f64 = 33.0;
/// More than so many above each other are one column of this height.
const HIGHEST: usize = 6;

/// From the least to the most of a column.
pub(super) struct Scale {
    least: f64,
    span: f64,
}

impl Scale {
    /// None: nothing was measured.
    pub(super) fn of(all: &[&SpreadOf]) -> Option<Self> {
        let least = all.iter().map(|one| one.least.as_f64()).reduce(f64::min)?;
        let most = all.iter().map(|one| one.most.as_f64()).reduce(f64::max)?;
        Some(Self { least, span: (most - least).max(f64::MIN_POSITIVE) })
    }

    pub(super) fn strip(&self, rows: &Rows, one: &SpreadOf) -> Markup {
        let mut there = vec![0_usize; PLACES as usize + 1];
        let mut dots = Vec::new();
        for (find, value) in rows.values(one) {
            let part = ((value.as_f64() - self.least) / self.span).clamp(0.0, 1.0);
            let place = (part * PLACES).round();
            let above = &mut there[place as usize];
            let far = one.outliers.iter().any(|outlier| outlier.find == find);
            dots.push((DOT + 2.0 + place / PLACES * WIDE, (*above).min(HIGHEST - 1), far));
            *above += 1;
        }
        let high = dots.iter().map(|(_, above, _)| above + 1).max().unwrap_or(1) as f64;
        let high = (2.0 * DOT + 2.0) * high + 4.0;
        let wide = WIDE + 2.0 * DOT + 4.0;
        let base = high - 2.0;
        html! {
            svg.strip viewBox={"0 0 " (wide) " " (high)} aria-hidden="true" focusable="false" {
                path d={"M0 " (base) "H" (wide)} {}
                @for (x, above, far) in dots {
                    @let y = base - DOT - 2.0 - above as f64 * (2.0 * DOT + 2.0);
                    circle.far[far] cx=(format!("{x:.1}")) cy=(format!("{y:.1}")) r=(DOT) {}
                }
            }
        }
    }
}
