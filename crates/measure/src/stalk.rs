//! The stalk, cut from the blade.
//!
//! From an outline to a stalk along its curve, and to the blade that is left. A stalk is a part of
//! the outline where both sides run beside each other, near and as far apart all along; a tip or
//! a tooth becomes wider from its point on. It is followed from its end, both sides at a time,
//! until they part: there the blade begins. Its last bit is found by carrying on the line in which
//! they part back to the width of the stalk, since blades run down their stalks.

use crate::polygon::{Point, area, between, distance, length};

/// Places around an outline where a stalk may end.
const PLACES: usize = 720;
/// How wide a stalk may be, of the square root of the leaf's area.
const WIDEST: f64 = 0.09;
/// So far apart both sides of the narrowest blade come, of the same root.
const FAR: f64 = 0.3;
/// A stalk is longer than so many times its width.
const LONGER: f64 = 1.6;
/// Its first quarter is at least so wide, of what its last is: tips and teeth taper.
const EVEN: f64 = 0.6;
/// And at most so wide, where its end is not blunt but the tip of a leaflet.
const SWOLLEN: f64 = 2.2;
/// Of several parts that may be stalks none is so many times as wide as the narrowest.
const WIDER: f64 = 1.5;
/// A second stalk that is so long, of the longest, is said.
const ALSO: f64 = 0.4;
/// Where both sides are so many times as far apart as along the stalk, they have parted; the
/// other numbers are where they are looked at again.
const PARTED: [f64; 3] = [1.35, 2.4, 4.0];
/// Blades that run down their stalks part with some power of the way: the least for which that is sure, and the
/// gentlest that is looked for.
const GENTLE: f64 = 1.2;
const GENTLEST: f64 = 2.2;
/// Sides part gently where they run so many times as far along as apart; and what of that stretch is unsure.
const ALONGSIDE: f64 = 1.2;
const PARTING: f64 = 0.5;
/// No base is looked for farther down, in widths of the stalk.
const FARTHEST: f64 = 16.0;

/// A leaf, cut apart.
pub(crate) struct Cut {
    /// From the end of the stalk to the base of the blade.
    pub(crate) stalk: Vec<Point>,
    /// How long the stalk is along its curve.
    pub(crate) length: f64,
    /// How wide it is, in the middle.
    pub(crate) width: f64,
    /// How far the line was carried on in which both sides part: so unsure is where it ends.
    pub(crate) unsure: f64,
    /// The same where the edge has teeth or waves: they hide where sides part that part gently.
    pub(crate) parting: f64,
    /// Where it is cut: a point of the outline on each side.
    pub(crate) sides: [Point; 2],
    /// The outline of the blade, closed.
    pub(crate) blade: Vec<Point>,
    /// Whether there are others nearly as long.
    pub(crate) several: bool,
}

impl Cut {
    /// Where the blade begins.
    pub(crate) fn base(&self) -> Point {
        self.stalk[self.stalk.len() - 1]
    }
}

/// Cuts a leaf apart; None: it has no stalk that can be seen. The outline's points are evenly
/// spaced, about a pixel apart.
pub(crate) fn cut(outline: &[Point]) -> Option<Cut> {
    let size = area(outline).sqrt();
    let all = ends(outline, size).into_iter();
    let cuts: Vec<Cut> = all.filter_map(|end| followed(outline, end, size)).collect();
    let narrowest = cuts.iter().map(|cut| cut.width).fold(f64::MAX, f64::min);
    // The leaflets of a large leaf may be as narrow as a thick stalk, but not as its own.
    let cuts = cuts.into_iter().filter(|cut| cut.width <= WIDER * narrowest);
    let (mut longest, mut second): (Option<Cut>, f64) = (None, 0.0);
    for cut in cuts {
        let before = longest.as_ref().map_or(0.0, |longest| longest.length);
        second = second.max(before.min(cut.length));
        if cut.length > before {
            longest = Some(cut);
        }
    }
    longest.map(|cut| Cut { several: second >= ALSO * cut.length, ..cut })
}

/// All that may be stalks, as the points of an outline at which they end: those of several leaves are not
/// equally long and wide.
pub(crate) fn several(outline: &[Point]) -> Vec<usize> {
    let size = area(outline).sqrt();
    let mut ends = ends(outline, size);
    ends.retain(|end| followed(outline, *end, size).is_some());
    ends
}

/// Cuts a leaf apart where a person says that its blade begins; None: no stalk leads there. Of
/// several that may be stalks it is the one that leads nearest.
pub(crate) fn cut_at(outline: &[Point], at: Point) -> Option<Cut> {
    let size = area(outline).sqrt();
    let near = |end: usize| {
        let mut steps = walked(outline, end, size);
        let off = |step: &Step| distance(step.middle, at);
        let place =
            (0..steps.len()).min_by(|a, b| off(&steps[*a]).total_cmp(&off(&steps[*b])))?;
        let (off, wide) = (off(&steps[place]), steps[place].wide);
        steps.truncate(place + 1);
        let along = along(&steps);
        let width = usual_width(&steps, &along, steps.len())?;
        // It may be said a little beside the stalk, or where the blade is wider already.
        let leads = off <= wide.max(width) && width <= WIDEST * size && along[place] > width;
        leads.then(|| (off, parted_at(outline, end, &steps, width, 0.0)))
    };
    let cuts = ends(outline, size).into_iter().filter_map(near);
    cuts.min_by(|one, other| one.0.total_cmp(&other.0)).map(|(_, cut)| cut)
}

/// Where a stalk may end: the places from which both sides of the outline stay near each other
/// for longest, of all places around them.
fn ends(outline: &[Point], size: f64) -> Vec<usize> {
    let count = outline.len().min(PLACES);
    let at = |place: usize| outline[place % count * outline.len() / count];
    let near: Vec<usize> = (0..count)
        .map(|place| {
            let apart = |k: usize| distance(at(place + count - k), at(place + k));
            (1..count / 2).take_while(|k| apart(*k) < WIDEST * size).count()
        })
        .collect();
    let step = outline.len() as f64 / count as f64;
    let reach = (WIDEST * size / step).ceil() as usize + 1;
    let best_around = |place: usize| {
        (0..=2 * reach).all(|offset| {
            let other = (place + count + offset - reach) % count;
            (near[other], count - other) <= (near[place], count - place)
        })
    };
    (0..count)
        .filter(|place| near[*place] as f64 * step > 0.5 * WIDEST * size)
        .filter(|place| best_around(*place))
        .map(|place| place * outline.len() / count)
        .collect()
}

/// A step along both sides.
#[derive(Clone, Copy)]
struct Step {
    back: usize,
    on: usize,
    middle: Point,
    wide: f64,
}

/// Goes along both sides of an outline from a place of it, until they are far apart.
fn walked(outline: &[Point], end: usize, size: f64) -> Vec<Step> {
    let count = outline.len();
    let back = |gone: usize| outline[(end + count - gone) % count];
    let on = |gone: usize| outline[(end + gone) % count];
    let mut steps = vec![Step { back: 0, on: 0, middle: outline[end], wide: 0.0 }];
    let (mut a, mut b) = (0, 0);
    // As far as the blade's tip at most: long before, both sides have parted.
    while a + b < count / 2 * 2 - 2 {
        let wide = |(a, b): (usize, usize)| distance(back(a), on(b));
        // Both go on, unless one of them lags behind: then its step alone brings them nearer.
        let (both, now) = (wide((a + 1, b + 1)), wide((a, b)));
        let alone = if wide((a + 1, b)) < wide((a, b + 1)) { (a + 1, b) } else { (a, b + 1) };
        (a, b) = if wide(alone) < now.min(both) { alone } else { (a + 1, b + 1) };
        let (left, right) = (back(a), on(b));
        let wide = distance(left, right);
        steps.push(Step { back: a, on: b, middle: between(left, right, 0.5), wide });
        if wide > FAR * size {
            break;
        }
    }
    steps
}

/// How wide a stalk is in its middle, of what lies before so many steps.
fn usual_width(steps: &[Step], along: &[f64], before: usize) -> Option<f64> {
    let far = *along.get(before.checked_sub(1)?)?;
    let mut widths: Vec<f64> = (0..before)
        .filter(|at| (0.12..=0.62).contains(&(along[*at] / far)))
        .map(|at| steps[at].wide)
        .collect();
    widths.sort_by(f64::total_cmp);
    (widths.len() >= 3).then(|| widths[widths.len() / 2])
}

/// Follows a stalk from its end.
fn followed(outline: &[Point], end: usize, size: f64) -> Option<Cut> {
    let steps = walked(outline, end, size);
    let along = along(&steps);
    let wide = |at: usize| steps[at].wide;
    let narrow = (0..steps.len()).take_while(|at| wide(*at) < WIDEST * size).count();
    let width = usual_width(&steps, &along, narrow)?;
    // From where they have parted for good, seen backwards.
    let parted = |limit: f64| {
        let past = (0..steps.len()).rev().take_while(|at| wide(*at) > limit).last()?;
        (past > 0).then_some(past)
    };
    let (first, second) = (parted(PARTED[0] * width + 1.0)?, parted(PARTED[1] * width + 2.0)?);
    let slope = (wide(second) - wide(first)) / (along[second] - along[first]).max(0.5);
    let before = if slope > 0.0 { (wide(first) - width) / slope } else { 0.0 };
    let seen = |at: usize| [along[at], wide(at) - width];
    let third = parted(PARTED[2] * width + 4.0).map(|third| [first, second, third].map(seen));
    let gentle = third.filter(is_gentle);
    let power = gentle.and_then(gently);
    let from = power.map_or(0.0, |from| along[first] - from);
    let before = before.min(width).max(from.min(FARTHEST * width));
    let at = (along[first] - before).max(0.0);
    let parting = gentle.map_or(0.0, |[first, _, third]| PARTING * (third[0] - first[0]));
    let unsure = (along[first] - at).max(if power.is_some() { parting } else { 0.0 });
    let place = along.partition_point(|gone| *gone < at).min(steps.len() - 1);
    let even = |part: f64| {
        let place = along.partition_point(|gone| *gone < part * at).min(steps.len() - 1);
        wide(place)
    };
    if at < LONGER * width
        || even(0.25) < EVEN * even(0.8)
        || even(0.25) > SWOLLEN * even(0.8)
        || width > WIDEST * size
    {
        return None;
    }
    let cut = parted_at(outline, end, &steps[..=place], width, unsure);
    Some(Cut { parting: unsure.max(parting), ..cut })
}

/// Whether the sides part gently at three places along a blade: how far along each is, and how much
/// farther apart they are there than those of the stalk.
fn is_gentle([[x1, e1], [x2, e2], [x3, e3]]: &[[f64; 2]; 3]) -> bool {
    0.0 < *e1 && e1 < e2 && e2 < e3 && x1 < x2 && x2 < x3 && x3 - x1 > ALONGSIDE * (e3 - e1)
}

/// Where a blade begins whose sides part gently, with a power of the way that is more than the first. None: they
/// part with the first, or less.
fn gently([[x1, e1], [x2, e2], [x3, e3]]: [[f64; 2]; 3]) -> Option<f64> {
    // With a power p, (e2 / e1)^(1/p) is how many times as far from the beginning the second place is.
    let from = |power: f64| {
        let times = (e2 / e1).powf(1.0 / power);
        (times * x1 - x2) / (times - 1.0)
    };
    let off = |power: f64| {
        let from = from(power);
        ((x3 - from) / (x2 - from)).ln() * power - (e3 / e2).ln()
    };
    // The more gently, the farther back it begins: where the third place fits lies between.
    let (mut low, mut high) = (GENTLE, GENTLEST);
    if off(low) > 0.0 {
        return None;
    }
    for _ in 0..40 {
        let middle = f64::midpoint(low, high);
        if off(middle) > 0.0 {
            high = middle;
        } else {
            low = middle;
        }
    }
    Some(from(low))
}

/// Cuts a leaf apart after the last of some steps.
fn parted_at(outline: &[Point], end: usize, steps: &[Step], width: f64, unsure: f64) -> Cut {
    let count = outline.len();
    let step = steps[steps.len() - 1];
    let on = |gone: usize| outline[(end + gone) % count];
    let blade: Vec<Point> =
        (0..=count - step.back - step.on).map(|gone| on(step.on + gone)).collect();
    let mut stalk = thinned(steps, width);
    to_the_end(&mut stalk, outline, end, width);
    let sides = [outline[(end + count - step.back) % count], on(step.on)];
    let (length, parting) = (length(&stalk), unsure);
    Cut { length, width, stalk, unsure, parting, sides, blade, several: false }
}

/// How far along the middle each step is, without the zigzag of the middles.
fn along(steps: &[Step]) -> Vec<f64> {
    const REACH: usize = 6;
    let mean = |at: usize| {
        let reach = REACH.min(at).min(steps.len() - 1 - at);
        let around = &steps[at - reach..=at + reach];
        let sum = around
            .iter()
            .fold([0.0; 2], |sum, step| [sum[0] + step.middle[0], sum[1] + step.middle[1]]);
        [sum[0] / around.len() as f64, sum[1] / around.len() as f64]
    };
    let mut gone = 0.0;
    let mut before = steps[0].middle;
    (0..steps.len())
        .map(|at| {
            let here = mean(at);
            gone += distance(before, here);
            before = here;
            gone
        })
        .collect()
}

/// Carries the middle line on straight to the end of the stalk, which it was begun beside: the place
/// where both sides are near each other longest is anywhere on a blunt end.
fn to_the_end(stalk: &mut Vec<Point>, outline: &[Point], end: usize, width: f64) {
    let gone = |at: usize| distance(stalk[0], stalk[at]);
    let Some(first) = (1..stalk.len()).find(|at| gone(*at) >= 1.2 * width) else { return };
    let Some(second) = (first + 1..stalk.len()).find(|at| gone(*at) >= 3.0 * width) else {
        return;
    };
    let (near, far) = (stalk[first], stalk[second]);
    let way = distance(near, far).max(1e-9);
    let along = [(near[0] - far[0]) / way, (near[1] - far[1]) / way];
    let reach = (3.0 * width).ceil() as usize;
    let count = outline.len();
    let farthest = (0..=2 * reach.min(count / 2))
        .map(|at| outline[(end + count + at - reach.min(count / 2)) % count])
        .map(|point| (point[0] - near[0]) * along[0] + (point[1] - near[1]) * along[1])
        .fold(0.0, f64::max);
    let last = [near[0] + farthest * along[0], near[1] + farthest * along[1]];
    stalk.splice(..first, [last]);
}

/// The middle line with a point about every width of the stalk: nearer ones would zigzag.
fn thinned(steps: &[Step], width: f64) -> Vec<Point> {
    let apart = width.max(3.0);
    let mut line = vec![steps[0].middle];
    for step in &steps[1..] {
        if distance(line[line.len() - 1], step.middle) >= apart {
            line.push(step.middle);
        }
    }
    let last = steps[steps.len() - 1].middle;
    if line.len() > 1 && distance(line[line.len() - 1], last) < 0.5 * apart {
        line.pop();
    }
    line.push(last);
    line
}

#[cfg(test)]
mod tests {
    use super::{gently, is_gentle};

    #[test]
    fn a_blade_that_parts_with_a_power_of_the_way_begins_where_the_power_does() {
        for (power, from) in [(1.3, 40.0), (1.6, 10.0), (2.0, 25.0)] {
            let seen = [30.0, 70.0, 120.0]
                .map(|way: f64| [from + way, 20.0 * (way / 120.0).powf(power)]);
            assert!(is_gentle(&seen), "{power}");
            let found = gently(seen).expect("it parts gently");
            assert!((found - from).abs() < 0.01, "{power}: {found}");
        }
        // A round or straight base is none.
        for power in [0.5, 1.0] {
            let seen = [30.0, 70.0, 120.0].map(|way: f64| [way, 0.3 * way.powf(power)]);
            assert_eq!(gently(seen), None, "{power}");
        }
        assert!(!is_gentle(&[[1.0, 2.0], [2.0, 9.0], [4.0, 20.0]]), "it parts at once");
    }
}
