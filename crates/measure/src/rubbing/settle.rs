//! Where a rubbed leaf ends.
//!
//! From tones and a piece that is about the leaf to the line around it: the one that costs least, where a
//! place inside costs as much as it is paler than midway between leaf and ground around it, and the
//! line less where the tone falls steeply. It may close over gaps of the edge. That is a convex
//! problem, and its answer is between places, not along them.
//!
//! **Source**: Bresson and others, *Fast global minimization of the active contour/snake model*, 2007; the
//! means around each place: Lankton and Tannenbaum, *Localizing region-based active contours*, 2008;
//! solved as by Chambolle and Pock, *A first-order primal-dual algorithm for convex problems*, 2011. All
//! from memory.

use super::candidates::contrast;
use super::gaps;
use super::tone::{Plane, Tone};
use crate::ground::{Contrast, WHOLE};
use crate::outline;
use crate::pieces::{Piece, Run, pieces};
use crate::polygon::Point;

/// Room around the pieces, in mm, and of the longest of them.
const ROOM: f64 = 9.0;
const STALK: f64 = 0.6;
/// Over how far leaf and ground have their means, in mm: wider than a band of strokes, narrower
/// than a page.
const AROUND: f64 = 7.0;
/// What a place costs at most, of what a line costs that is as long as a place.
const PLACE: f32 = 0.22;
/// A fall of the tone by so much in a mm halves what a line costs there.
const FALL: f64 = 0.5;
/// And never to less than this.
const CHEAPEST: f32 = 0.06;
/// How often the means are taken anew, and how often the line is moved by each.
const ROUNDS: usize = 3;
const STEPS: usize = 90;

/// The lines around leaves, in places, each beside what it was begun from; None: nothing is left of the
/// piece.
pub(super) fn outlines(tone: &Tone, begun: &[Piece]) -> Vec<Option<Vec<Point>>> {
    let longest = begun.iter().flat_map(|piece| [piece.across, piece.down]);
    let longest = longest.map(|(first, last)| f64::from(last - first)).fold(0.0, f64::max);
    // A stalk may begin where its blade was found alone.
    let room = (ROOM * tone.per_mm + STALK * longest) as usize;
    let span = |of: fn(&Piece) -> (u32, u32), count: usize| {
        let first = begun.iter().map(|piece| of(piece).0).min().unwrap_or(0) as usize;
        let last = begun.iter().map(|piece| of(piece).1).max().unwrap_or(0) as usize;
        (first.saturating_sub(room), (last + 1 + room).min(count))
    };
    let across = span(|piece| piece.across, tone.plane.width);
    let down = span(|piece| piece.down, tone.plane.height);
    let plane = tone.plane.part(across, down);
    let corner = (across.0, down.0);
    let mut leaf = filled(begun, corner, (plane.width, plane.height));
    let fine = plane.smooth(0.3 * tone.per_mm);
    let cheap = cheap(&plane.smooth(0.2 * tone.per_mm), tone.per_mm);
    for _ in 0..ROUNDS {
        let costs = costs(&fine, &leaf, AROUND * tone.per_mm);
        settled(&mut leaf, &costs, &cheap);
    }
    let leaf = contrast(&leaf.smooth(1.0));
    let whole = ((0, leaf.width as u32 - 1), (0, leaf.height as u32 - 1));
    let level = (WHOLE / 2.0) as u16;
    let all = pieces(&leaf, whole.0, whole.1, level);
    let each = begun.iter().map(|before| {
        let shares = |piece: &&Piece| shared(piece, before, corner);
        let piece = all.iter().max_by_key(shares).filter(|piece| shares(piece) > 0)?;
        let joined = gaps::closed(&leaf, &all, piece, tone.per_mm);
        let line = outline::outline(&joined, &longer(&joined, piece, level)?, level);
        let corner = [corner.0, corner.1].map(|at| at as f64);
        Some(line.into_iter().map(|[x, y]| [x + corner[0], y + corner[1]]).collect())
    });
    each.collect()
}

/// A piece of a plane in which more may hang together.
fn longer(leaf: &Contrast, piece: &Piece, level: u16) -> Option<Piece> {
    let whole = ((0, leaf.width as u32 - 1), (0, leaf.height as u32 - 1));
    let run = piece.runs.first()?;
    pieces(leaf, whole.0, whole.1, level).into_iter().find(|other| other.has(run.first, run.y))
}

/// How much of a piece of the page there is in one of its part with such a corner.
fn shared(piece: &Piece, before: &Piece, corner: (usize, usize)) -> usize {
    let has = |x: u32, y: u32| piece.has(x - corner.0 as u32, y - corner.1 as u32);
    let of = |run: &Run| (run.first..=run.last).step_by(3).filter(|x| has(*x, run.y)).count();
    before.runs.iter().map(of).sum()
}

/// Pieces without holes, as a plane.
fn filled(pieces: &[Piece], corner: (usize, usize), (width, height): (usize, usize)) -> Plane {
    let mut plane = Plane::from(width, height, |_, _| 0.0);
    for run in pieces.iter().flat_map(|piece| &piece.runs) {
        let row = (run.y as usize - corner.1) * width;
        let (first, last) = (run.first as usize - corner.0, run.last as usize - corner.0);
        plane.values[row + first..=row + last].fill(1.0);
    }
    // What cannot be reached from outside is inside.
    let mut outside = vec![false; width * height];
    let mut next: Vec<usize> = (0..width).flat_map(|x| [x, (height - 1) * width + x]).collect();
    next.extend((0..height).flat_map(|y| [y * width, y * width + width - 1]));
    while let Some(at) = next.pop() {
        if outside[at] || plane.values[at] > 0.5 {
            continue;
        }
        outside[at] = true;
        let (x, y) = (at % width, at / width);
        next.extend((x > 0).then(|| at - 1));
        next.extend((x + 1 < width).then(|| at + 1));
        next.extend((y > 0).then(|| at - width));
        next.extend((y + 1 < height).then(|| at + width));
    }
    for (value, outside) in plane.values.iter_mut().zip(outside) {
        *value = if outside { 0.0 } else { 1.0 };
    }
    plane
}

/// What a line costs at each place.
fn cheap(plane: &Plane, per_mm: f64) -> Plane {
    let value = |x: usize, y: usize| f64::from(plane.values[y * plane.width + x]);
    Plane::from(plane.width, plane.height, |x, y| {
        let (left, right) = (x.saturating_sub(1), (x + 1).min(plane.width - 1));
        let (top, bottom) = (y.saturating_sub(1), (y + 1).min(plane.height - 1));
        let across = (value(right, y) - value(left, y)) * per_mm / 2.0;
        let down = (value(x, bottom) - value(x, top)) * per_mm / 2.0;
        let fall = across.hypot(down) / FALL;
        ((1.0 / (1.0 + fall * fall)) as f32).max(CHEAPEST)
    })
}

/// What each place costs inside: less than nothing, where it is more like the leaf around it than like the
/// ground.
fn costs(fine: &Plane, leaf: &Plane, around: f64) -> Plane {
    let of_leaf = leaf.smooth(around);
    let sum = fine.with(leaf, |tone, leaf| tone * leaf).smooth(around);
    let all = fine.smooth(around);
    let mean = |sum: f64, share: f64| if share > 0.0 { sum / share } else { 0.0 };
    let total = |plane: &Plane| -> f64 { plane.values.iter().map(|v| f64::from(*v)).sum() };
    let (inside, tones, whole) =
        (total(leaf), total(&fine.with(leaf, |tone, leaf| tone * leaf)), total(fine));
    let usual = [mean(tones, inside), mean(whole - tones, leaf.values.len() as f64 - inside)];
    Plane::from(fine.width, fine.height, |x, y| {
        let at = y * fine.width + x;
        let share = f64::from(of_leaf.values[at]);
        let (leaf, all) = (f64::from(sum.values[at]), f64::from(all.values[at]));
        // Where little of one is near, what is usual counts beside it.
        let near = |sum: f64, share: f64, usual: f64| (sum + 0.05 * usual) / (share + 0.05);
        let (dark, pale) =
            (near(leaf, share, usual[0]), near(all - leaf, 1.0 - share, usual[1]));
        let apart = (dark - pale).max(0.06);
        let midway = f64::midpoint(dark, pale);
        let cost = (midway - f64::from(fine.values[at])) / apart;
        PLACE * (2.0 * cost).clamp(-1.0, 1.0) as f32
    })
}

/// Moves what is leaf to where it costs less.
fn settled(leaf: &mut Plane, costs: &Plane, cheap: &Plane) {
    let width = leaf.width;
    // Below the reciprocal of the root of eight, which the norm of the differences is.
    const STEP: f32 = 0.35;
    let mut ahead = leaf.values.clone();
    // A row and a place more: beyond the edge there is nothing.
    let mut across = vec![0.0_f32; ahead.len() + 1];
    let mut down = vec![0.0_f32; ahead.len() + width];
    for _ in 0..STEPS {
        for (row, start) in (0..ahead.len()).step_by(width).enumerate() {
            let last = row + 1 == leaf.height;
            let now = &ahead[start..start + width];
            let below = if last { now } else { &ahead[start + width..start + 2 * width] };
            let rows = now.iter().zip(now[1..].iter().chain(&now[width - 1..])).zip(below);
            let pulls = across[start + 1..].iter_mut().zip(&mut down[start + width..]);
            for (((at, right), below), ((across, down), most)) in
                rows.zip(pulls.zip(&cheap.values[start..start + width]))
            {
                let pull = [*across + STEP * (right - at), *down + STEP * (below - at)];
                let size = (pull[0] * pull[0] + pull[1] * pull[1]).sqrt();
                let share = if size > *most { most / size } else { 1.0 };
                (*across, *down) = (pull[0] * share, pull[1] * share);
            }
        }
        for (at, (leaf, ahead)) in leaf.values.iter_mut().zip(&mut ahead).enumerate() {
            let spread = across[at + 1] - across[at] + down[at + width] - down[at];
            let before = *leaf;
            *leaf = (before + STEP * (spread - costs.values[at])).clamp(0.0, 1.0);
            *ahead = 2.0 * *leaf - before;
        }
    }
}
