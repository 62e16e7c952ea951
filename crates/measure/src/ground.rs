//! The ground that the leaves lie on, and how far each pixel is from it.
//!
//! From pixels to a plane of contrasts: nothing on the ground, and in proportion to how much of a
//! pixel a leaf covers along its edge, so that an edge can be placed between pixels. Light mixes in
//! proportion only before it is encoded (IEC 61966-2-1), so everything is worked out in linear
//! light. Under uneven light the ground is a smooth surface: a polynomial of the third degree in
//! each colour, fitted to what is ground, again and again, from the commonest colour on.

use image::RgbImage;

use crate::equations;
use crate::picture::Picture;

/// A contrast of 1 in the plane.
pub(crate) const WHOLE: f64 = 8192.0;
/// Along how many places a side the ground is looked at.
const PLACES: usize = 150;
/// Every so many pixels the ground is worked out; between them it is a straight line.
const STEP: usize = 16;
/// Colours count twice beside lightness: shadows have none.
const COLOUR: f32 = 2.0;
/// A ground darker than this share of white is taken as this light, so that nothing is divided
/// by nothing.
const DARKEST: f32 = 0.2;
/// Paper is white from so much of its light on: its grain is no crayon.
const PAPER: f32 = 0.82;
/// How many terms the surface has in each round of fitting: a plane, a bowl, the third degree.
const ROUNDS: [usize; 11] = [1, 3, 3, 3, 6, 6, 6, 10, 10, 10, 10];
/// No contrast below this is ever taken for a leaf.
const FAINTEST: f64 = 0.06;
/// Every so many pixels the grain of the ground is looked at.
const GRAIN_STEP: usize = 61;
/// What stands out so many times as much as half of the ground does is more than grain.
const OF_GRAIN: f64 = 3.0;
/// A faint thing is looked for where that is below this share of the level of leaves.
const WELL_BELOW: f64 = 0.8;

/// How far each pixel is from the ground.
pub(crate) struct Contrast {
    pub(crate) width: usize,
    pub(crate) height: usize,
    /// Row by row, in [`WHOLE`]ths.
    pub(crate) values: Vec<u16>,
}

impl Contrast {
    /// The contrast of a pixel; outside of the picture there is none.
    pub(crate) fn at(&self, x: i64, y: i64) -> u16 {
        let inside = |at: i64, most: usize| usize::try_from(at).ok().filter(|at| *at < most);
        match (inside(x, self.width), inside(y, self.height)) {
            (Some(x), Some(y)) => self.values[y * self.width + x],
            _ => 0,
        }
    }
}

/// A byte of sRGB in linear light.
fn linear() -> [f32; 256] {
    std::array::from_fn(|byte| {
        let value = byte as f64 / 255.0;
        let light = match value <= 0.04045 {
            true => value / 12.92,
            false => ((value + 0.055) / 1.055).powf(2.4),
        };
        light as f32
    })
}

/// The contrast of every pixel.
pub(crate) fn contrast(picture: &Picture) -> Contrast {
    contrast_on(&samples(&picture.pixels), picture)
}

/// The contrast of every pixel with the lightest there is within so many pixels: with paper that is
/// drawn on.
pub(crate) fn contrast_on_lightest(picture: &Picture, around: f64) -> Contrast {
    contrast_on(&lightest(&picture.pixels, around), picture)
}

/// Makes a picture one on white paper, which is the lightest there is within so many pixels.
pub(crate) fn on_white(picture: &mut Picture, around: f64) {
    let pixels = &mut picture.pixels;
    let (width, height) = (pixels.width() as usize, pixels.height() as usize);
    let linear = linear();
    let surface = Surface::of(&fitted(&lightest(pixels, around)), width, height, &linear);
    // From light to bytes in steps that are finer than a byte where it is dark.
    let bytes: Vec<u8> = (0..=4096_u32).map(|part| encoded(f64::from(part) / 4096.0)).collect();
    let mut row = vec![[0.0_f32; 3]; surface.across];
    for (y, line) in pixels.chunks_exact_mut(3 * width).enumerate() {
        surface.row(y, &mut row);
        for (x, pixel) in line.chunks_exact_mut(3).enumerate() {
            let (place, part) = (x / STEP, (x % STEP) as f32 / STEP as f32);
            for (c, byte) in pixel.iter_mut().enumerate() {
                let paper = row[place][c] + part * (row[place + 1][c] - row[place][c]);
                let light = linear[usize::from(*byte)] / (PAPER * paper.max(DARKEST));
                *byte = bytes[(light.min(1.0) * 4096.0) as usize];
            }
        }
    }
}

/// Linear light as a byte of sRGB.
fn encoded(light: f64) -> u8 {
    let value = match light <= 0.003_130_8 {
        true => 12.92 * light,
        false => 1.055 * light.powf(1.0 / 2.4) - 0.055,
    };
    (255.0 * value).round() as u8
}

/// Samples, each with the lightest colour that is near.
fn lightest(pixels: &RgbImage, around: f64) -> Vec<Sample> {
    let all = samples(pixels);
    let longer = f64::from(pixels.width().max(pixels.height()));
    let reach = (around / (longer / PLACES as f64).max(1.0)).ceil() as usize;
    let row = all.iter().take_while(|sample| sample.at.1 == all[0].at.1).count().max(1);
    let rows = all.len() / row;
    let light = |at: &usize| all[*at].colour.iter().sum::<f64>();
    let best = |near: &mut dyn Iterator<Item = usize>| {
        near.max_by(|one, other| light(one).total_cmp(&light(other)))
    };
    let near = |at: usize, count: usize| at.saturating_sub(reach)..(at + reach + 1).min(count);
    // Along rows, then along columns of what was found.
    let along: Vec<usize> = (0..rows * row)
        .map(|at| {
            let mut near = near(at % row, row).map(|x| at / row * row + x);
            best(&mut near).unwrap_or(at)
        })
        .collect();
    let lightest = (0..rows * row).map(|at| {
        let mut near = near(at / row, rows).map(|y| along[y * row + at % row]);
        let from = best(&mut near).unwrap_or(at);
        Sample { at: all[at].at, colour: all[from].colour }
    });
    lightest.collect()
}

fn contrast_on(samples: &[Sample], picture: &Picture) -> Contrast {
    let pixels = &picture.pixels;
    let (width, height) = (pixels.width() as usize, pixels.height() as usize);
    let linear = linear();
    let surface = Surface::of(&fitted(samples), width, height, &linear);
    let mut values = vec![0; width * height];
    let mut row = vec![[0.0_f32; 3]; surface.across];
    let lines = pixels.as_raw().chunks_exact(3 * width.max(1));
    for (y, (bytes, values)) in lines.zip(values.chunks_exact_mut(width.max(1))).enumerate() {
        surface.row(y, &mut row);
        let places = bytes.chunks(3 * STEP).zip(values.chunks_mut(STEP));
        for (place, (bytes, values)) in places.enumerate() {
            let mut light = [[0.0_f32; STEP]; 3];
            for (x, pixel) in bytes.chunks_exact(3).enumerate() {
                (0..3).for_each(|c| light[c][x] = linear[usize::from(pixel[c])]);
            }
            let all = contrasts(&light, [row[place], row[(place + 1).min(surface.across - 1)]]);
            values.copy_from_slice(&all[..values.len()]);
        }
    }
    Contrast { width, height, values }
}

/// The contrasts of pixels beside each other, of which so much light comes in each colour, with the ground
/// from one node to the next. Each colour lies by itself, so that a processor takes several pixels in a step.
fn contrasts(light: &[[f32; STEP]; 3], [from, to]: [[f32; 3]; 2]) -> [u16; STEP] {
    let (mut sums, mut squares) = ([0.0_f32; STEP], [0.0_f32; STEP]);
    for colour in 0..3 {
        let (first, last) = (from[colour], to[colour]);
        let step = (last - first) / STEP as f32;
        // One over the ground is a straight line between two nodes as well: it hardly changes there.
        let over = 1.0 / first.max(DARKEST);
        let over_step = (1.0 / last.max(DARKEST) - over) / STEP as f32;
        for at in 0..STEP {
            let apart = first + at as f32 * step - light[colour][at];
            let apart = apart * (over + at as f32 * over_step);
            sums[at] += apart;
            squares[at] += apart * apart;
        }
    }
    std::array::from_fn(|at| {
        let lightness = sums[at] * sums[at] * (1.0 / 9.0);
        let colour = (squares[at] * (1.0 / 3.0) - lightness).max(0.0);
        let whole = (lightness + COLOUR * colour).sqrt() * WHOLE as f32;
        whole.min(f32::from(u16::MAX)) as i32 as u16
    })
}

/// The contrast from which on a pixel is a leaf's, for finding leaves; each is outlined at a level
/// of its own. None: nothing stands out.
///
/// **Source**: Ridler and Calvard, *Picture thresholding using an iterative selection method*,
/// 1978: midway between the mean of what is above it and the mean of what is below.
pub(crate) fn level(contrast: &Contrast) -> Option<u16> {
    const WIDE: usize = 32;
    const ROWS: usize = 1000;
    let mut counts = vec![0_u64; (u16::MAX as usize + 1) / WIDE];
    // Some of the rows say it as well as all.
    let rows = contrast.values.chunks_exact(contrast.width.max(1));
    for value in rows.step_by((contrast.height / ROWS).max(1)).flatten() {
        counts[usize::from(*value) / WIDE] += 1;
    }
    let faintest = (FAINTEST * WHOLE) as usize / WIDE;
    let mean = |from: usize, to: usize| {
        let all: u64 = counts[from..to].iter().sum();
        let sum: f64 = (from..to).map(|bin| (bin as f64 + 0.5) * counts[bin] as f64).sum();
        (all > 0).then(|| sum / all as f64)
    };
    let mut level = faintest;
    for _ in 0..100 {
        let above = mean(level, counts.len())?;
        let below = mean(0, level).unwrap_or(0.0);
        let next = (f64::midpoint(above, below) as usize).max(faintest);
        if next == level {
            break;
        }
        level = next;
    }
    u16::try_from(level * WIDE).ok()
}

/// The contrast from which on something is more than the grain of the ground, where that is well below
/// the one that leaves are found by. None: nothing lies between both.
pub(crate) fn faint_level(contrast: &Contrast, level: u16) -> Option<u16> {
    // Every so many pixels: more than half of a picture is ground.
    let mut grain: Vec<u16> = contrast.values.iter().step_by(GRAIN_STEP).copied().collect();
    let half = (grain.len() / 2).min(grain.len().checked_sub(1)?);
    let grain = *grain.select_nth_unstable(half).1;
    let faint = (f64::from(grain) * OF_GRAIN).max(FAINTEST * WHOLE);
    (faint < WELL_BELOW * f64::from(level)).then_some(faint as u16)
}

/// A surface of the third degree for each colour, over the picture from -1 to 1.
type Terms = [[f64; 10]; 3];

/// Fits the ground.
fn fitted(samples: &[Sample]) -> Terms {
    let usual = commonest(samples);
    let mut terms: Terms = usual.map(|colour| {
        let mut flat = [0.0; 10];
        flat[0] = colour;
        flat
    });
    // How far, in bytes, a colour may be from the ground and count as ground.
    let mut reach = 32.0;
    for count in ROUNDS {
        let apart = |sample: &Sample| {
            let basis = basis(sample.at);
            (0..3)
                .map(|c| (sample.colour[c] - dot(&terms[c], &basis)).abs())
                .fold(0.0, f64::max)
        };
        let mut near: Vec<(f64, &Sample)> =
            samples.iter().map(|sample| (apart(sample), sample)).collect();
        near.retain(|(apart, _)| *apart <= reach);
        if near.len() < 4 * count {
            break;
        }
        for (colour, terms) in terms.iter_mut().enumerate() {
            if let Some(found) = least_squares(count, colour, near.iter().map(|(_, s)| *s)) {
                *terms = found;
            }
        }
        near.sort_by(|a, b| a.0.total_cmp(&b.0));
        // Three times what half of the ground keeps to, within what paper and light do.
        reach = (4.5 * near[near.len() / 2].0).clamp(10.0, 28.0);
    }
    terms
}

struct Sample {
    /// Across and down, from -1 to 1.
    at: (f64, f64),
    /// The mean of a few pixels, in bytes.
    colour: [f64; 3],
}

fn samples(pixels: &RgbImage) -> Vec<Sample> {
    let (width, height) = (pixels.width() as usize, pixels.height() as usize);
    let step = (width.max(height) / PLACES).max(1);
    let side = step.clamp(1, 4);
    let mut samples = Vec::new();
    for y in (0..height.saturating_sub(side - 1)).step_by(step) {
        for x in (0..width.saturating_sub(side - 1)).step_by(step) {
            let mut sum = [0.0; 3];
            for (down, right) in (0..side).flat_map(|d| (0..side).map(move |r| (d, r))) {
                let pixel = pixels.get_pixel((x + right) as u32, (y + down) as u32);
                for (sum, byte) in sum.iter_mut().zip(pixel.0) {
                    *sum += f64::from(byte);
                }
            }
            let area = (side * side) as f64;
            samples.push(Sample {
                at: (place(x, width), place(y, height)),
                colour: sum.map(|sum| sum / area),
            });
        }
    }
    samples
}

/// A pixel's place in the picture, from -1 to 1.
fn place(at: usize, of: usize) -> f64 {
    (at as f64 + 0.5) / of as f64 * 2.0 - 1.0
}

/// The commonest colour; what lies along the edges of the picture counts four times, since
/// leaves lie in the middle.
fn commonest(samples: &[Sample]) -> [f64; 3] {
    const BINS: usize = 16;
    let bin = |sample: &Sample| {
        sample.colour.iter().fold(0, |bin, c| bin * BINS + (*c as usize * BINS / 256))
    };
    let weight = |sample: &Sample| {
        if sample.at.0.abs().max(sample.at.1.abs()) > 0.9 { 4.0 } else { 1.0 }
    };
    let mut counts = vec![0.0_f64; BINS * BINS * BINS];
    for sample in samples {
        counts[bin(sample)] += weight(sample);
    }
    let most = (0..counts.len()).max_by(|a, b| counts[*a].total_cmp(&counts[*b])).unwrap_or(0);
    let inside = samples.iter().filter(|sample| bin(sample) == most);
    let mut sum = [0.0; 4];
    for sample in inside {
        for (sum, colour) in sum.iter_mut().zip(sample.colour) {
            *sum += colour;
        }
        sum[3] += 1.0;
    }
    [sum[0], sum[1], sum[2]].map(|colour| colour / f64::max(sum[3], 1.0))
}

fn basis((x, y): (f64, f64)) -> [f64; 10] {
    [1.0, x, y, x * x, x * y, y * y, x * x * x, x * x * y, x * y * y, y * y * y]
}

fn dot(terms: &[f64; 10], basis: &[f64; 10]) -> f64 {
    terms.iter().zip(basis).map(|(term, value)| term * value).sum()
}

/// The surface of so many terms that is nearest to the samples.
fn least_squares<'s>(
    count: usize,
    colour: usize,
    samples: impl Iterator<Item = &'s Sample>,
) -> Option<[f64; 10]> {
    let mut rows = vec![vec![0.0; count + 1]; count];
    for sample in samples {
        let basis = basis(sample.at);
        for (row, down) in rows.iter_mut().zip(basis) {
            for (value, across) in row[..count].iter_mut().zip(basis) {
                *value += down * across;
            }
            row[count] += down * sample.colour[colour];
        }
    }
    let mut found = [0.0; 10];
    found[..count].copy_from_slice(&equations::solved(&mut rows)?);
    Some(found)
}

/// The ground in linear light at every [`STEP`]th pixel.
struct Surface {
    across: usize,
    nodes: Vec<[f32; 3]>,
}

impl Surface {
    fn of(terms: &Terms, width: usize, height: usize, linear: &[f32; 256]) -> Self {
        let nodes = |length: usize| length / STEP + 2;
        let light = |byte: f64| {
            let byte = byte.clamp(0.0, 255.0);
            let below = (byte as usize).min(254);
            let part = (byte - below as f64) as f32;
            linear[below] + part * (linear[below + 1] - linear[below])
        };
        let mut all = Vec::with_capacity(nodes(width) * nodes(height));
        for down in 0..nodes(height) {
            for across in 0..nodes(width) {
                let at = (place(across * STEP, width), place(down * STEP, height));
                let basis = basis(at);
                all.push([0, 1, 2].map(|colour| light(dot(&terms[colour], &basis))));
            }
        }
        Self { across: nodes(width), nodes: all }
    }

    /// The nodes of a row, between those above and below it.
    fn row(&self, y: usize, row: &mut [[f32; 3]]) {
        let part = (y % STEP) as f32 / STEP as f32;
        let above = &self.nodes[y / STEP * self.across..];
        let below = &above[self.across..];
        for ((node, above), below) in row.iter_mut().zip(above).zip(below) {
            *node = std::array::from_fn(|c| above[c] + part * (below[c] - above[c]));
        }
    }
}
