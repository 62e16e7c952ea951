//! A leaf blade as an outline: from its edge and shape to points in millimetres.
//!
//! The parameters are those by which people tell leaves apart; two drawings that differ in one
//! of them differ in nothing else. Only sums, products and roots, so that every machine draws
//! the same line to the last digit.

/// How a blade's edge and shape are.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) enum Form {
    Smooth,
    Toothed,
    DoubleToothed,
    Spiny,
    Lobed,
    Heart,
    Needle,
}

/// A point in millimetres: to the right, and up.
pub(super) type Point = (f64, f64);

/// Points to each side; at the size of the drawings a curve of so many looks round.
const STEPS: u32 = 48;

/// Half the width at a part of the length from the base, of a blade one wide in all: egg-shaped,
/// broadest a little below the middle.
fn half_width(along: f64) -> f64 {
    let rest = 1.0 - along;
    1.93 * along * rest * (1.3 - 0.55 * along)
}

/// 0 at both ends of a wave, 1 in its middle, round at both.
fn wave(along: f64) -> f64 {
    let part = along - along.floor();
    let slope = 1.0 - (2.0 * part - 1.0).abs();
    slope * slope * (3.0 - 2.0 * slope)
}

/// The right-hand edge of a blade, from the base at (0, 0) up to the tip.
fn right_edge(form: Form, length: f64, width: f64) -> Vec<Point> {
    let mut points = vec![(0.0, 0.0)];
    let plain = |along: f64| (half_width(along) * width, along * length);
    for step in 1..STEPS {
        let along = f64::from(step) / f64::from(STEPS);
        let (x, y) = plain(along);
        points.push(match form {
            Form::Smooth | Form::Toothed | Form::DoubleToothed => (x, y),
            Form::Needle => (x.min(width * 0.06), y),
            Form::Lobed => (x * (0.5 + 0.62 * wave(along * 4.0 - 0.1)), y),
            Form::Spiny => {
                // Hollows between spines: a parabola with its ends out.
                let part = (along * 5.0).fract() * 2.0 - 1.0;
                (x * (0.74 + 0.42 * part * part), y)
            }
            Form::Heart => {
                let low = if along < 0.3 { along * (0.3 - along) / 0.0225 } else { 0.0 };
                (x * (1.15 + 0.9 * (1.0 - along) * (1.0 - along)), y - low * length * 0.12)
            }
        });
    }
    points.push((0.0, length));
    match form {
        Form::Toothed => teeth(length, width, 12, false),
        Form::DoubleToothed => teeth(length, width, 7, true),
        _ => points,
    }
}

/// Teeth like those of a saw, their points towards the tip; small ones on the big ones if wished.
fn teeth(length: f64, width: f64, many: u32, double: bool) -> Vec<Point> {
    let at = |along: f64, out: f64| (half_width(along) * width + out, along * length);
    let mut points = vec![(0.0, 0.0)];
    let high = if double { width * 0.1 } else { width * 0.06 };
    for tooth in 1..many {
        let from = f64::from(tooth) / f64::from(many);
        let step = 1.0 / f64::from(many);
        points.push(at(from, 0.0));
        if double {
            points.push(at(from + step * 0.3, high * 0.75));
            points.push(at(from + step * 0.36, high * 0.35));
        }
        points.push(at(from + step * 0.8, high));
    }
    points.push((0.0, length));
    points
}

/// The whole outline, from the base round the tip and back.
pub(super) fn outline(form: Form, length: f64, width: f64) -> Vec<Point> {
    let right = right_edge(form, length, width);
    let left = right.iter().rev().skip(1).map(|(x, y)| (-x, *y));
    right.iter().copied().chain(left).collect()
}

/// Side veins: where each leaves the midrib, and where it ends near the edge, right-hand side.
pub(super) fn side_veins(form: Form, length: f64, width: f64) -> Vec<[Point; 2]> {
    let many = if form == Form::Lobed { 4 } else { 5 };
    let vein = |n: u32| {
        let from = f64::from(n) / f64::from(many + 1) * 0.86;
        let to = from + 0.14;
        let reach = if form == Form::Needle { 0.0 } else { 0.82 };
        [(0.0, from * length), (half_width(to) * width * reach, to * length)]
    };
    (1..=many).map(vein).collect()
}

/// Points turned so that "up" is this direction, and put at a place.
pub(super) fn placed(points: &[Point], at: Point, up: Point) -> Vec<Point> {
    let size = (up.0 * up.0 + up.1 * up.1).sqrt();
    let (ux, uy) = (up.0 / size, up.1 / size);
    points.iter().map(|(x, y)| (at.0 + x * uy + y * ux, at.1 - x * ux + y * uy)).collect()
}

/// A path of a drawing in which y grows downwards; to a hundredth of a millimetre.
pub(super) fn path(points: &[Point]) -> String {
    let mut text = String::new();
    for (n, (x, y)) in points.iter().enumerate() {
        let sign = if n == 0 { 'M' } else { 'L' };
        text.push_str(&format!("{sign}{} {}", hundredths(*x), hundredths(-y)));
    }
    text
}

fn hundredths(number: f64) -> f64 {
    // Adding zero takes the sign off a negative nought.
    (number * 100.0).round() / 100.0 + 0.0
}
