//! How much crayon there is, place by place.
//!
//! From a picture to a plane of tones, five a millimetre: nothing on bare paper, in proportion to how much of
//! the paper is covered. Paper is what is lightest around each place, as a smooth surface.

use crate::ground::{self, WHOLE};
use crate::picture::Picture;
use crate::polygon::Point;

/// Places in a mm, about: the grain of crayon is a little coarser.
const FINE: f64 = 5.0;

/// More places than these are not looked at, whatever a person says of the size of a dot: five a millimetre are
/// A3.
const MOST: f64 = 4_000_000.0;

/// Numbers in rows.
#[derive(Clone)]
pub(crate) struct Plane {
    pub(crate) width: usize,
    pub(crate) height: usize,
    pub(crate) values: Vec<f32>,
}

/// The tones of a picture.
pub(crate) struct Tone {
    pub(crate) plane: Plane,
    /// So many pixels of the picture are one place, each way.
    pub(crate) step: usize,
    /// Places in a mm; without a scale of a page.
    pub(crate) per_mm: f64,
}

impl Tone {
    pub(crate) fn of(picture: &Picture) -> Self {
        let (width, height) = picture.pixels.dimensions();
        let (width, height) = (width as usize, height as usize);
        let pixels = 1.0 / super::mm(picture);
        let many = (width * height) as f64 / MOST;
        let step = ((pixels / FINE).round() as usize).max(many.sqrt().ceil() as usize);
        let step = step.clamp(1, width.min(height).max(1));
        let contrast = ground::contrast_on_lightest(picture, 3.0 * pixels);
        let plane = Plane::from(width / step, height / step, |x, y| {
            let mut sum = 0_u32;
            for row in y * step..(y + 1) * step {
                let from = row * width + x * step;
                sum += contrast.values[from..from + step]
                    .iter()
                    .map(|value| u32::from(*value))
                    .sum::<u32>();
            }
            sum as f32 / (step * step) as f32 / WHOLE as f32
        });
        Self { plane, step, per_mm: pixels / step as f64 }
    }

    /// A place as a place of the picture.
    pub(crate) fn in_picture(&self, point: Point) -> Point {
        point.map(|at| (at + 0.5) * self.step as f64 - 0.5)
    }

    pub(crate) fn touches_the_edge(&self, line: &[Point]) -> bool {
        let most = [self.plane.width, self.plane.height].map(|side| side as f64 - 1.5);
        line.iter().any(|[x, y]| *x < 0.5 || *y < 0.5 || *x > most[0] || *y > most[1])
    }
}

impl Plane {
    pub(crate) fn from(
        width: usize,
        height: usize,
        value: impl Fn(usize, usize) -> f32,
    ) -> Self {
        let mut values = Vec::with_capacity(width * height);
        for y in 0..height {
            values.extend((0..width).map(|x| value(x, y)));
        }
        Self { width, height, values }
    }

    /// A part of it.
    pub(crate) fn part(
        &self,
        (left, right): (usize, usize),
        (top, bottom): (usize, usize),
    ) -> Self {
        Self::from(right - left, bottom - top, |x, y| {
            self.values[(y + top) * self.width + x + left]
        })
    }

    /// Each value by another one.
    pub(crate) fn with(&self, other: &Self, by: impl Fn(f32, f32) -> f32) -> Self {
        let both = self.values.iter().zip(&other.values);
        Self { values: both.map(|(a, b)| by(*a, *b)).collect(), ..*self }
    }

    /// The value between four places; beyond the plane that at its edge.
    pub(crate) fn at(&self, [x, y]: Point) -> f32 {
        let place = |at: f64, count: usize| {
            let at = at.clamp(0.0, (count - 1) as f64);
            let before = (at as usize).min(count.saturating_sub(2));
            (before, (before + 1).min(count - 1), (at - before as f64) as f32)
        };
        let ((left, right, across), (top, bottom, down)) =
            (place(x, self.width), place(y, self.height));
        let value = |x: usize, y: usize| self.values[y * self.width + x];
        let above = value(left, top) + across * (value(right, top) - value(left, top));
        let below = value(left, bottom) + across * (value(right, bottom) - value(left, bottom));
        above + down * (below - above)
    }

    /// The value below which such a share of all is.
    pub(crate) fn quantile(&self, part: f64) -> f32 {
        let mut all = self.values.clone();
        let at = (all.len().saturating_sub(1) as f64 * part) as usize;
        if all.is_empty() {
            return 0.0;
        }
        *all.select_nth_unstable_by(at, f32::total_cmp).1
    }

    /// Smoothed: three times the mean of a row of neighbours, which is the normal curve nearly.
    ///
    /// **Source**: Wells, *Efficient synthesis of Gaussian filters by cascaded uniform filters*, 1986;
    /// from memory.
    pub(crate) fn smooth(&self, sigma: f64) -> Self {
        // The spread of three rows of 2 n + 1 is n (n + 1).
        let reach = ((sigma * sigma + 0.25).sqrt() - 0.5).round() as usize;
        let mut smooth = self.clone();
        if reach == 0 {
            return smooth;
        }
        for _ in 0..3 {
            smooth.mean(self.width, self.height, 1, self.width, reach);
            smooth.mean(self.height, self.width, self.width, 1, reach);
        }
        smooth
    }

    fn mean(&mut self, length: usize, count: usize, step: usize, across: usize, reach: usize) {
        let mut line = vec![0.0_f32; length];
        for at in 0..count {
            let start = at * across;
            for (place, value) in line.iter_mut().enumerate() {
                *value = self.values[start + place * step];
            }
            let value = |place: isize| line[place.clamp(0, length as isize - 1) as usize];
            let reach = reach as isize;
            let mut sum: f64 = (-reach..=reach).map(|place| f64::from(value(place))).sum();
            for place in 0..length {
                self.values[start + place * step] = (sum / (2 * reach + 1) as f64) as f32;
                let place = place as isize;
                sum += f64::from(value(place + reach + 1)) - f64::from(value(place - reach));
            }
        }
    }
}
