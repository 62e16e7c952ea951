//! Words of small animals: what grows where on a body.
//!
//! From the part that is spoken of to an animal of no kind in particular, seen from above. Legs
//! grow from the middle part of an insect, feelers from its head, tails behind all legs: common
//! knowledge of handbooks for pond dipping, from memory.

use spinney_model::{Stroke, Weight};

use super::skin::hairs_along;
use super::spoken_of;
use super::twig::leafy;
use crate::pen::{Point, circle, closed, mirrored, oval, placed, round, stroke, swept};

/// What an insect shows.
#[derive(Clone, Copy, PartialEq, Eq)]
pub(super) enum Of {
    Abdomen,
    Middle,
    Feelers,
    Legs,
    Pair,
    Leg,
    Head,
    Tails,
    Segment,
    Gills,
    LegsOfGilled,
    Wings,
    Nothing,
    Snout,
    NoSnout,
}

/// A line and its mirror image.
fn both(weight: Weight, points: &[Point]) -> [Stroke; 2] {
    [stroke(weight, points), stroke(weight, &mirrored(points))]
}

/// The three right legs of an insect, from the body to the foot.
const LEGS: [[Point; 4]; 3] = [
    [(5.6, 30.6), (12.0, 35.4), (17.4, 33.0), (20.4, 37.0)],
    [(6.8, 26.0), (14.4, 27.6), (20.0, 22.4), (23.2, 22.8)],
    [(5.8, 22.0), (13.0, 19.0), (17.6, 10.0), (21.4, 7.6)],
];

/// An insect from above, its head up.
pub(super) fn insect(shows: Of) -> Vec<Stroke> {
    let heavy = |of: &[Of]| spoken_of(of.contains(&shows), Weight::Outline);
    let snout = matches!(shows, Of::Snout | Of::NoSnout);
    let mut strokes = Vec::new();
    let abdomen = swept(
        &[(0.0, 19.2), (0.0, 14.0), (0.0, 8.0), (0.0, 3.0), (0.0, 1.0)],
        &[5.4, 6.4, 5.6, 3.4, 1.2],
    );
    strokes.push(stroke(heavy(&[Of::Abdomen]), &abdomen));
    for (n, (y, half)) in
        [(16.4, 6.0), (13.4, 6.3), (10.4, 6.0), (7.4, 5.3), (4.6, 4.1)].into_iter().enumerate()
    {
        let ring = shows == Of::Segment && (n == 1 || n == 2);
        strokes.push(stroke(
            spoken_of(ring, Weight::Midrib),
            &round(&[(-half, y), (0.0, y - 0.8), (half, y)]),
        ));
    }
    if shows == Of::Segment {
        strokes.extend(both(Weight::Heavy, &[(6.3, 13.4), (6.0, 10.4)]));
    }
    for (n, leg) in LEGS.iter().enumerate() {
        let all = matches!(shows, Of::Legs | Of::LegsOfGilled);
        let pair = n == 1 && shows == Of::Pair;
        let one = n == 1 && shows == Of::Leg;
        strokes.push(stroke(spoken_of(all || pair || one, Weight::Outline), leg));
        strokes.push(stroke(spoken_of(all || pair, Weight::Outline), &mirrored(leg)));
    }
    strokes.push(stroke(heavy(&[Of::Middle]), &oval((0.0, 26.4), (6.8, 7.4))));
    strokes.push(stroke(heavy(&[Of::Head]), &oval((0.0, 37.0), (5.0, 3.8))));
    strokes.extend(both(Weight::Outline, &circle((3.9, 38.4), 1.3)));
    if shows == Of::Snout {
        let tube = swept(&[(0.0, 40.6), (0.0, 45.0), (0.0, 49.0)], &[1.5, 1.1, 1.4]);
        strokes.push(stroke(Weight::Heavy, &tube));
    }
    let feeler: &[Point] = if snout {
        &[(3.0, 40.0), (7.0, 44.0), (12.0, 45.0)]
    } else {
        &[(2.2, 40.4), (4.0, 45.0), (9.0, 49.0)]
    };
    strokes.extend(both(heavy(&[Of::Feelers]), &round(feeler)));
    if !snout {
        let tail = round(&[(1.2, 1.6), (3.8, -4.6), (8.4, -11.6)]);
        strokes.extend(both(heavy(&[Of::Tails]), &tail));
        strokes.push(stroke(heavy(&[Of::Tails]), &[(0.0, 1.0), (0.0, -12.6)]));
    }
    if matches!(shows, Of::Gills | Of::LegsOfGilled) {
        let (plate, rib) = leafy(8.4, 3.6);
        for (at, way) in
            [((6.2, 15.6), (1.0, 0.1)), ((6.2, 11.6), (1.0, -0.25)), ((5.4, 7.6), (1.0, -0.6))]
        {
            strokes.extend(both(heavy(&[Of::Gills]), &placed(&plate, at, way)));
            strokes.extend(both(Weight::Fine, &placed(&rib, at, way)));
        }
    }
    if shows == Of::Wings {
        // At rest: one beside the other on the back, longer than the body.
        let wing =
            [(0.6, 31.0), (4.6, 29.0), (8.4, 14.0), (8.2, 0.0), (4.4, -7.6), (0.8, -4.0)];
        strokes.extend(both(Weight::Heavy, &closed(&wing)));
        for to in [(5.4, -3.6), (7.0, 6.0)] {
            let vein = round(&[(2.6, 28.0), (4.2, 14.0), to]);
            strokes.extend(both(Weight::Midrib, &vein));
        }
    }
    strokes
}

/// What a long body shows.
#[derive(Clone, Copy, PartialEq, Eq)]
pub(super) enum Long {
    Larva,
    Worm,
    Suckers,
    NoSuckers,
    Bristles,
}

/// A long body of rings, from above, its head up.
pub(super) fn long_body(shows: Long) -> Vec<Stroke> {
    let leech = matches!(shows, Long::Suckers | Long::NoSuckers);
    let head = match shows {
        Long::Larva => ((2.8, 43.6), 3.2),
        _ => ((3.4, 45.4), 0.8),
    };
    let (second, end) = match leech {
        true => (((2.2, 42.0), 2.2), ((2.6, -7.4), 2.6)),
        false => (((2.2, 42.4), 3.2), ((2.2, -12.0), 0.8)),
    };
    let last = if leech { 5.2 } else { 3.6 };
    let points = [
        head,
        second,
        ((0.6, 36.0), if leech { 3.2 } else { 4.3 }),
        ((-2.4, 26.0), if leech { 4.4 } else { 4.9 }),
        ((-2.8, 16.0), 5.2),
        ((0.4, 5.0), if leech { 6.0 } else { 4.9 }),
        ((2.8, -4.0), last),
        end,
    ];
    let (axis, halves): (Vec<Point>, Vec<f64>) = points.into_iter().unzip();
    let outline = swept(&axis, &halves);
    let mut strokes = vec![stroke(Weight::Outline, &outline)];
    // Both sides of the outline, from the head on: rings go across from one to the other.
    let side = outline.len() / 2;
    for n in (2..side - 1).step_by(2) {
        let (one, other) = (outline[n], outline[outline.len() - 2 - n]);
        strokes.push(stroke(Weight::Midrib, &[one, other]));
    }
    match shows {
        Long::Larva => {
            strokes.push(stroke(Weight::Heavy, &oval((3.4, 45.2), (4.6, 4.2))));
            for (at, way) in [((1.6, 39.6), -0.3), ((0.6, 36.0), -0.3), ((-0.6, 32.4), -0.3)] {
                for out in [-1.0, 1.0] {
                    let leg = [(out * 4.2, 0.4), (out * 7.6, 2.0), (out * 8.8, -1.4)];
                    let leg = leg.map(|(x, y): Point| {
                        (at.0 + x, at.1 + y + way * x * out.signum() * 0.2)
                    });
                    strokes.push(stroke(Weight::Heavy, &leg));
                }
            }
        }
        Long::Suckers => {
            strokes.push(stroke(Weight::Heavy, &oval((2.6, -8.4), (5.8, 4.4))));
            strokes.push(stroke(Weight::Heavy, &oval((3.4, 45.2), (3.2, 2.4))));
        }
        Long::Bristles => {
            for line in [&outline[2..side - 2], &outline[side + 2..outline.len() - 3]] {
                for hair in hairs_along(line, 4.6, 5.0) {
                    strokes.push(stroke(Weight::Hatch, &hair));
                }
            }
        }
        Long::Worm | Long::NoSuckers => {}
    }
    strokes
}

/// What a single leg shows.
#[derive(Clone, Copy, PartialEq, Eq)]
pub(super) enum Leg {
    Plain,
    Claws,
    Joints,
    Soft,
    Fringe,
}

/// Where a leg bends, from the body to its end.
const BENDS: [Point; 5] = [(-20.0, 30.0), (-11.0, 42.0), (8.0, 33.0), (14.0, 8.0), (8.0, -4.0)];

/// One leg, large: from the body on the left down to its end.
pub(super) fn leg(shows: Leg) -> Vec<Stroke> {
    let body = round(&[(-23.0, 46.0), (-18.0, 36.0), (-20.0, 24.0), (-23.4, 16.0)]);
    let mut strokes = vec![stroke(Weight::Outline, &body)];
    if shows == Leg::Soft {
        let axis = round(&BENDS);
        let many = (axis.len() - 1) as f64;
        let halves: Vec<f64> = (0..axis.len()).map(|n| 3.6 - 2.6 * n as f64 / many).collect();
        strokes.push(stroke(Weight::Heavy, &swept(&axis, &halves)));
        return strokes;
    }
    for (n, two) in BENDS.windows(2).enumerate() {
        let (from, to) = (two[0], two[1]);
        let part =
            |part: f64| (from.0 + (to.0 - from.0) * part, from.1 + (to.1 - from.1) * part);
        let half = [3.4, 3.8, 2.8, 1.9][n];
        let piece = swept(
            &[part(0.03), part(0.2), part(0.8), part(0.97)],
            &[half * 0.5, half, half * 0.85, half * 0.5],
        );
        strokes.push(stroke(Weight::Outline, &piece));
        if shows == Leg::Joints && n > 0 {
            strokes.push(stroke(Weight::Heavy, &circle(from, 2.6)));
        }
    }
    let end = BENDS[4];
    match shows {
        Leg::Claws => {
            for hook in [
                [(-0.4, 0.0), (-5.0, -0.6), (-8.4, -4.0), (-8.0, -8.8)],
                [(0.8, 0.0), (4.4, -1.6), (5.6, -5.4), (3.2, -9.4)],
            ] {
                let hook = hook.map(|(x, y)| (end.0 + x, end.1 + y));
                strokes.push(stroke(Weight::Heavy, &round(&hook)));
            }
        }
        Leg::Fringe => {
            let outer = [(11.6, 31.0), (17.0, 8.0), (10.6, -4.8)];
            for hair in hairs_along(&outer, 7.0, 2.6) {
                // The way goes down: out of it is to the left of the page.
                let [foot, tip] = hair;
                let tip = (2.0 * foot.0 - tip.0, 2.0 * foot.1 - tip.1 - 1.6);
                strokes.push(stroke(Weight::Hatch, &[foot, tip]));
            }
        }
        Leg::Plain | Leg::Joints | Leg::Soft => {}
    }
    strokes
}

/// A young frog from the side, with legs and a tail: the flaps of its tail or its legs heavy.
pub(super) fn tadpole(fins: bool) -> Vec<Stroke> {
    let body = closed(&[
        (-22.0, 20.0),
        (-18.0, 27.0),
        (-10.0, 29.0),
        (-2.0, 25.0),
        (-1.0, 17.0),
        (-8.0, 11.6),
        (-17.0, 13.0),
    ]);
    let mut strokes = vec![
        stroke(Weight::Outline, &body),
        stroke(Weight::Outline, &circle((-17.0, 22.4), 1.7)),
        stroke(
            Weight::Outline,
            &round(&[(-1.0, 23.4), (8.0, 22.0), (23.4, 20.0), (8.0, 18.6), (-1.0, 17.6)]),
        ),
    ];
    for flap in [
        [(-3.0, 26.0), (4.0, 30.6), (13.0, 30.0), (23.4, 20.0)],
        [(-3.0, 14.6), (4.0, 10.6), (13.0, 11.0), (23.4, 20.0)],
    ] {
        strokes.push(stroke(spoken_of(fins, Weight::Outline), &round(&flap)));
    }
    for (at, far) in [((-8.0, 11.8), 0.0), ((-4.0, 13.8), 6.0)] {
        let (x, y) = at;
        let leg = [
            (x, y),
            (x + 5.0 + far * 0.4, y - 5.0),
            (x - 1.0 + far, y - 11.0),
            (x + 5.0 + far, y - 15.0),
        ];
        strokes.push(stroke(spoken_of(!fins, Weight::Outline), &leg));
        let foot = leg[3];
        for toe in [(3.4, 0.6), (3.2, -1.6), (1.6, -3.0)] {
            strokes.push(stroke(
                spoken_of(!fins, Weight::Outline),
                &[foot, (foot.0 + toe.0, foot.1 + toe.1)],
            ));
        }
    }
    strokes
}
