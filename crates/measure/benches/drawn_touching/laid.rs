//! Leaves laid so that they touch: each is pushed towards those that lie there until it overlaps one.

use fastrand::Rng;
use spinney_fixtures::leaves::scan::{Page, placed};
use spinney_fixtures::leaves::{Leaf, Point};

/// Points of an outline by which it is seen whether leaves touch.
const POINTS: usize = 500;
/// Room around all of them, in mm.
const ROOM: f64 = 8.0;

/// A page on which leaves touch, each reaching so many mm into the one that it touches; and whether a stalk does.
pub(crate) fn touching<'l>(rng: &mut Rng, leaves: &'l [Leaf], over: f64) -> (Page<'l>, bool) {
    let mut laid: Vec<(&Leaf, Point, f64)> = Vec::new();
    for leaf in leaves {
        let turn = rng.f64() * std::f64::consts::TAU;
        let Some(_) = laid.first() else {
            laid.push((leaf, [0.0; 2], turn));
            continue;
        };
        let lying: Vec<Vec<Point>> =
            laid.iter().map(|(leaf, at, turn)| outline(leaf, *at, *turn)).collect();
        let way = rng.f64() * std::f64::consts::TAU;
        let aside = 30.0 * (rng.f64() - 0.5);
        let at = |far: f64| {
            let (sin, cos) = way.sin_cos();
            [far * cos - aside * sin, far * sin + aside * cos]
        };
        let meets = |far: f64| {
            let here = outline(leaf, at(far), turn);
            lying.iter().any(|lying| meet(lying, &here))
        };
        // From far off in small steps, so that it stops at the first one it meets.
        let mut far = 400.0;
        while far > 0.0 && !meets(far) {
            far -= 0.25;
        }
        laid.push((leaf, at(far - over), turn));
    }
    let all: Vec<Point> =
        laid.iter().flat_map(|(leaf, at, turn)| outline(leaf, *at, *turn)).collect();
    let span = |side: usize| {
        let places = all.iter().map(|point| point[side]);
        places.fold((f64::MAX, f64::MIN), |(low, high), at| (low.min(at), high.max(at)))
    };
    let ((left, right), (top, bottom)) = (span(0), span(1));
    for (_, at, _) in &mut laid {
        *at = [at[0] - left + ROOM, at[1] - top + ROOM];
    }
    let size = (right - left + 2.0 * ROOM, bottom - top + 2.0 * ROOM);
    let by_a_stalk = by_a_stalk(&laid);
    let page = Page { size, leaves: laid, ..Page::of_one(&leaves[0], 0.0) };
    (page, by_a_stalk)
}

fn outline(leaf: &Leaf, at: Point, turn: f64) -> Vec<Point> {
    let step = leaf.outline.len().div_ceil(POINTS).max(1);
    leaf.outline.iter().step_by(step).map(|point| placed(*point, at, turn, false)).collect()
}

fn encloses(line: &[Point], [x, y]: Point) -> bool {
    let sides = (0..line.len()).map(|at| (line[at], line[(at + 1) % line.len()]));
    let crossed = sides.filter(|(a, b)| {
        (a[1] > y) != (b[1] > y) && x < a[0] + (y - a[1]) / (b[1] - a[1]) * (b[0] - a[0])
    });
    crossed.count() % 2 == 1
}

fn meet(one: &[Point], other: &[Point]) -> bool {
    let inside = |line: &[Point], points: &[Point]| points.iter().any(|at| encloses(line, *at));
    inside(one, other) || inside(other, one)
}

/// Whether a stalk touches another leaf, or another leaf a stalk: then it is not to be seen whose it is.
fn by_a_stalk(laid: &[(&Leaf, Point, f64)]) -> bool {
    let lines: Vec<Vec<Point>> =
        laid.iter().map(|(leaf, at, turn)| outline(leaf, *at, *turn)).collect();
    laid.iter().zip(&lines).enumerate().any(|(own, ((leaf, ..), line))| {
        let step = leaf.outline.len().div_ceil(POINTS).max(1);
        let reach = leaf.truth.stalk.unwrap_or(0.0);
        let own_places = leaf.outline.iter().step_by(step);
        own_places.zip(line).any(|(place, there)| {
            // Below the base only the stalk reaches so far from it.
            let on_stalk = place[1] < -0.25 * reach;
            let others = lines.iter().enumerate().filter(|(at, _)| *at != own);
            on_stalk && others.map(|(_, line)| line).any(|line| near(line, *there))
        })
    })
}

fn near(line: &[Point], at: Point) -> bool {
    let close = |point: &Point| (point[0] - at[0]).hypot(point[1] - at[1]) < 1.5;
    encloses(line, at) || line.iter().any(close)
}
