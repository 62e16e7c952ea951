//! A measured leaf as lines: its outline with its edge, the main vein, side veins that were seen, the stalk.
//!
//! From what was measured, in pixels, to a drawing in millimetres at its true size, upright. What was
//! not seen is not drawn: no scale, no drawing; no side veins, none drawn; of lobes like a hand and of
//! leaflets no midrib, since their veins are not looked for.
//!
//! What is finer than a pen is smoothed, and teeth stay sharp: from where a line turns sharply it is
//! not smoothed beyond. Points that a line does not need are left out where it is written.

use spinney_model::{Arrangement, Drawing, LeafForm, LeafLines, Stroke, Weight};

/// What is finer than this is pixels and noise, in mm; in pixels, where they are larger.
const FINE: f64 = 0.16;
const PIXELS: f64 = 1.6;
/// A corner turns by so much (the cosine) within so many mm before and behind.
const CORNER: f64 = 0.45;
const NEAR: f64 = 0.55;
/// Paper around the leaf, in mm.
const ROOM: f64 = 1.5;
/// A stalk wider than this is drawn with the heavier pen, in mm.
const THICK: f64 = 1.3;
/// From so much of its length on a midrib is drawn with the lightest pen.
const TAPERS: f64 = 0.62;

/// A point in mm: to the right, and down.
type Point = (f64, f64);

/// A leaf as it was measured; `mm`: how long a pixel is. None: nobody knows, or it has no outline.
///
/// **Guarantees**: upright, in its true size; no point that is not a number.
pub fn of_measured(lines: &LeafLines, form: &LeafForm, mm: Option<f64>) -> Option<Drawing> {
    let laid = Laid::of(lines, mm?)?;
    let mut strokes = side_veins(&laid, form);
    strokes.extend(midrib(&laid, lines, form));
    strokes.extend(outline(&laid, lines));
    strokes.extend(stalk(&laid, lines));
    strokes.retain(|stroke| stroke.points.len() > 1);
    strokes.sort_by_key(|stroke| stroke.weight);
    let points = || strokes.iter().flat_map(|stroke| &stroke.points);
    if points().count() < 3 || points().any(|(x, y)| !x.is_finite() || !y.is_finite()) {
        return None;
    }
    let span = |of: fn(&Point) -> f64| {
        points()
            .map(of)
            .fold((f64::MAX, f64::MIN), |(low, high), at| (low.min(at), high.max(at)))
    };
    let ((left, right), (top, bottom)) = (span(|point| point.0), span(|point| point.1));
    let frame = [left - ROOM, top - ROOM, right - left + 2.0 * ROOM, bottom - top + 2.0 * ROOM];
    Some(Drawing { frame, strokes })
}

/// Where a leaf stands upright: the base of its blade at (0, 0).
struct Laid {
    base: [f64; 2],
    cos: f64,
    sin: f64,
    mm: f64,
    /// How much is smoothed, in mm.
    fine: f64,
}

impl Laid {
    fn of(lines: &LeafLines, mm: f64) -> Option<Self> {
        let (base, tip) = (*lines.midrib.first()?, *lines.midrib.last()?);
        let (x, y) = (tip[0] - base[0], tip[1] - base[1]);
        let long = (x * x + y * y).sqrt();
        let fine = FINE.max(PIXELS * mm);
        (long > 0.0 && mm > 0.0).then_some(Self {
            base,
            cos: -y / long,
            sin: -x / long,
            mm,
            fine,
        })
    }

    fn place(&self, [x, y]: [f64; 2]) -> Point {
        let (x, y) = ((x - self.base[0]) * self.mm, (y - self.base[1]) * self.mm);
        (x * self.cos - y * self.sin, x * self.sin + y * self.cos)
    }

    fn places(&self, line: &[[f64; 2]]) -> Vec<Point> {
        line.iter().map(|point| self.place(*point)).collect()
    }

    /// A clean open line.
    fn clean(&self, line: &[Point]) -> Vec<Point> {
        smooth(line, self.fine)
    }
}

/// Around the blade; where a stalk joins it the line is open.
fn outline(laid: &Laid, lines: &LeafLines) -> Vec<Stroke> {
    let blade = laid.places(&lines.blade);
    if blade.len() < 3 {
        return Vec::new();
    }
    let nearest = |to: Point| {
        (0..blade.len())
            .min_by(|a, b| distance(blade[*a], to).total_cmp(&distance(blade[*b], to)))
    };
    let ends = lines.cut.map(|cut| cut.map(|end| nearest(laid.place(end))));
    let line: Vec<Point> = match ends {
        Some([Some(one), Some(other)]) if one != other => {
            let (from, to) = (one.min(other), one.max(other));
            // The long way round: the short one is the cut.
            match to - from > blade.len() / 2 {
                true => blade[from..=to].to_vec(),
                false => [&blade[to..], &blade[..=from]].concat(),
            }
        }
        // It begins and ends at the base.
        _ => [&blade[..], &blade[..1]].concat(),
    };
    let mut points = laid.clean(&line);
    if lines.cut.is_some() {
        // The pen goes on into the stalk.
        points.insert(0, (0.0, 0.0));
        points.push((0.0, 0.0));
    }
    vec![Stroke { weight: Weight::Outline, points }]
}

/// From the base to the tip: along the main vein, where it was seen. It becomes finer.
fn midrib(laid: &Laid, lines: &LeafLines, form: &LeafForm) -> Vec<Stroke> {
    let sinuses = form.lobes.as_ref().map(|lobes| lobes.sinuses.as_ref());
    let drawn = match sinuses {
        None => false,
        Some(None) => true,
        Some(Some(sinuses)) => sinuses.arrangement == Some(Arrangement::Feather),
    };
    let (Some(base), Some(tip), true) = (lines.midrib.first(), lines.midrib.last(), drawn)
    else {
        return Vec::new();
    };
    let line = match &form.veins {
        Ok(veins) => {
            let long = distance(laid.place(*base), laid.place(*tip));
            let within = |point: &&[f64; 2]| {
                let (_, up) = laid.place(**point);
                (0.04 * long..0.97 * long).contains(&-up)
            };
            let inner: Vec<[f64; 2]> = veins.main.iter().filter(within).copied().collect();
            [&[*base], &inner[..], &[*tip]].concat()
        }
        Err(_) => lines.midrib.clone(),
    };
    let line = smooth(&laid.places(&line), 1.2);
    let from = (TAPERS * line.len() as f64) as usize;
    let stroke = |weight, points: &[Point]| Stroke { weight, points: points.to_vec() };
    vec![
        stroke(Weight::Midrib, &line[..(from + 1).min(line.len())]),
        stroke(Weight::Fine, &line[from.min(line.len())..]),
    ]
}

/// From the midrib outwards, each as a plain curve.
fn side_veins(laid: &Laid, form: &LeafForm) -> Vec<Stroke> {
    let Ok(veins) = &form.veins else { return Vec::new() };
    let main = laid.places(&veins.main);
    let vein = |line: &Vec<[f64; 2]>| {
        let mut points = curve(&laid.places(line));
        if let Some(foot) = points.first_mut() {
            *foot = nearest_on(&main, *foot);
        }
        Stroke { weight: Weight::Fine, points }
    };
    veins.sides.iter().flatten().map(vein).collect()
}

/// Along the stalk, from its end to the blade.
fn stalk(laid: &Laid, lines: &LeafLines) -> Option<Stroke> {
    let [one, other] = lines.cut?.map(|end| laid.place(end));
    let weight = if distance(one, other) > THICK { Weight::Twig } else { Weight::Outline };
    let points = laid.places(&lines.stalk);
    Some(Stroke { weight, points: smooth(&points, 3.0 * laid.fine) })
}

/// The cubic curve through the ends of a line that is nearest to its points, by how far along they
/// are (least squares; Schneider, *An algorithm for automatically fitting digitized curves*, 1990, of
/// one piece and without his second look at where the points lie).
fn curve(line: &[Point]) -> Vec<Point> {
    const STEPS: usize = 12;
    let far = lengths(line);
    let (Some(first), Some(last), Some(long)) = (line.first(), line.last(), far.last()) else {
        return Vec::new();
    };
    if line.len() < 4 || *long <= 0.0 {
        return line.to_vec();
    }
    // What the two handles have to be for each coordinate: two equations.
    let (mut aa, mut ab, mut bb) = (0.0, 0.0, 0.0);
    let mut right = [[0.0; 2]; 2];
    for (point, far) in line.iter().zip(&far) {
        let t = far / long;
        let [start, a, b, end] = bernstein(t);
        (aa, ab, bb) = (aa + a * a, ab + a * b, bb + b * b);
        let off = [
            point.0 - start * first.0 - end * last.0,
            point.1 - start * first.1 - end * last.1,
        ];
        for (side, off) in off.into_iter().enumerate() {
            right[side][0] += a * off;
            right[side][1] += b * off;
        }
    }
    let whole = aa * bb - ab * ab;
    if whole.abs() < 1e-9 {
        return line.to_vec();
    }
    let handles = right.map(|[a, b]| [(a * bb - b * ab) / whole, (b * aa - a * ab) / whole]);
    let at = |step: usize| {
        let [start, a, b, end] = bernstein(step as f64 / STEPS as f64);
        (
            start * first.0 + a * handles[0][0] + b * handles[0][1] + end * last.0,
            start * first.1 + a * handles[1][0] + b * handles[1][1] + end * last.1,
        )
    };
    (0..=STEPS).map(at).collect()
}

fn bernstein(t: f64) -> [f64; 4] {
    let s = 1.0 - t;
    [s * s * s, 3.0 * s * s * t, 3.0 * s * t * t, t * t * t]
}

/// How far along a line each point is.
fn lengths(line: &[Point]) -> Vec<f64> {
    let mut far = Vec::with_capacity(line.len());
    let mut gone = 0.0;
    for (at, point) in line.iter().enumerate() {
        gone += at.checked_sub(1).map_or(0.0, |before| distance(line[before], *point));
        far.push(gone);
    }
    far
}

/// An open line without what is finer than so many mm: each point the mean of those near it along the
/// line, the nearest most. Corners and ends stay where they are.
fn smooth(line: &[Point], fine: f64) -> Vec<Point> {
    let far = lengths(line);
    let Some(long) = far.last().copied().filter(|_| line.len() > 2) else {
        return line.to_vec();
    };
    // From one corner to the next.
    let corners = corners(line, &far);
    let mut next = 1;
    let mut found = Vec::with_capacity(line.len());
    for (at, point) in line.iter().enumerate() {
        while next + 1 < corners.len() && corners[next] < at {
            next += 1;
        }
        let (from, to) = (corners[next - 1], corners[next]);
        // As far to both sides, so that an end does not draw it inwards.
        let reach = (far[at] - far[from]).min(far[to] - far[at]).min(2.0 * fine).min(long);
        let (mut sum, mut all) = ((0.0, 0.0), 0.0);
        let before = (from..at).rev().take_while(|near| far[at] - far[*near] <= reach);
        let behind = (at + 1..=to).take_while(|near| far[*near] - far[at] <= reach);
        for near in before.chain(behind).chain([at]) {
            // Nearly a normal curve, from products alone: every machine draws the same.
            let off = (far[near] - far[at]) / (2.0 * fine);
            let weight = (1.0 - off * off) * (1.0 - off * off);
            sum = (sum.0 + weight * line[near].0, sum.1 + weight * line[near].1);
            all += weight;
        }
        found.push(if all > 0.0 { (sum.0 / all, sum.1 / all) } else { *point });
    }
    found
}

/// The places where a line turns sharply, and its ends.
fn corners(line: &[Point], far: &[f64]) -> Vec<usize> {
    let last = line.len() - 1;
    let along = |far_along: f64| far.partition_point(|at| *at < far_along).min(last);
    // How straight it goes on: 1 straight, -1 back.
    let straight = |at: usize| {
        let (from, to) = (line[along(far[at] - NEAR)], line[along(far[at] + NEAR)]);
        let here = line[at];
        let ((a, b), (c, d)) =
            ((here.0 - from.0, here.1 - from.1), (to.0 - here.0, to.1 - here.1));
        let long = ((a * a + b * b) * (c * c + d * d)).sqrt();
        if long > 0.0 { (a * c + b * d) / long } else { 1.0 }
    };
    let mut corners = vec![0];
    let mut sharpest: Option<(usize, f64)> = None;
    for at in 1..last {
        let inside = far[at] > NEAR && far[last] - far[at] > NEAR;
        let turn = straight(at);
        if inside && turn < CORNER {
            let sharper = sharpest.is_none_or(|(_, before)| turn < before);
            sharpest = if sharper { Some((at, turn)) } else { sharpest };
        } else {
            corners.extend(sharpest.take().map(|(corner, _)| corner));
        }
    }
    corners.extend(sharpest.map(|(corner, _)| corner));
    corners.push(last);
    corners
}

/// The place of a line that is nearest to a point.
fn nearest_on(line: &[Point], point: Point) -> Point {
    let places = line.windows(2).map(|two| on(point, two[0], two[1]));
    let nearest = places.min_by(|a, b| distance(*a, point).total_cmp(&distance(*b, point)));
    nearest.unwrap_or(point)
}

/// The place between two others that is nearest to a point.
fn on((x, y): Point, (ax, ay): Point, (bx, by): Point) -> Point {
    let (dx, dy) = (bx - ax, by - ay);
    let long = dx * dx + dy * dy;
    let part = if long > 0.0 { ((x - ax) * dx + (y - ay) * dy) / long } else { 0.0 };
    let part = part.clamp(0.0, 1.0);
    (ax + part * dx, ay + part * dy)
}

fn distance((ax, ay): Point, (bx, by): Point) -> f64 {
    let (x, y) = (ax - bx, ay - by);
    (x * x + y * y).sqrt()
}

#[cfg(test)]
mod tests;
