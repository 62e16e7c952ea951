//! Words of herbs, flowers and ferns.
//!
//! From the part that is spoken of to a plant of no kind in particular. That sepals stand under
//! petals and a rosette at the ground is common practice, without a source.

use spinney_model::{Stroke, Weight};

use super::spoken_of;
use super::twig::{leafy, small_leaf};
use crate::blade::{Blade, Shape, Tip};
use crate::pen::{Point, arc, one_long, placed, round, stroke};

/// A herb: its stem or the stalk of one leaf heavy.
pub(super) fn stem(stem: bool) -> Vec<Stroke> {
    let mut strokes = vec![
        stroke(Weight::Fine, &[(-18.0, -11.0), (18.0, -11.0)]),
        stroke(spoken_of(stem, Weight::Twig), &[(0.0, -11.0), (0.0, 33.0)]),
    ];
    for (n, (height, side)) in
        [(-3.0, 1.0), (5.0, -1.0), (13.0, 1.0), (21.0, -1.0)].into_iter().enumerate()
    {
        let stalk = spoken_of(!stem && n == 2, Weight::Outline);
        let foot = placed(&[(0.0, 6.5)], (0.0, height), (side, 0.5))[0];
        strokes.push(stroke(stalk, &[(0.0, height), foot]));
        let (outline, rib) = leafy(13.0, 6.8);
        strokes.push(stroke(Weight::Outline, &placed(&outline, foot, (side, 0.5))));
        strokes.push(stroke(Weight::Fine, &placed(&rib, foot, (side, 0.5))));
    }
    for (x, y) in [(-0.55, 1.0), (0.55, 1.0), (0.0, 1.0)] {
        strokes.extend(small_leaf((0.0, 32.0), (x, y), 10.0, Weight::Outline));
    }
    strokes
}

/// A ring of leaves, seen a little from above: flat on the ground, or up on the stem.
pub(super) fn rosette(at_the_ground: bool) -> Vec<Stroke> {
    let height = if at_the_ground { -6.0 } else { 16.0 };
    let mut strokes = vec![stroke(Weight::Fine, &arc((0.0, -6.0), (23.0, 7.6), 0, 24))];
    let stem =
        if at_the_ground { [(0.0, height), (0.0, 34.0)] } else { [(0.0, -6.0), (0.0, 34.0)] };
    strokes.push(stroke(Weight::Twig, &stem));
    let (outline, rib) = leafy(19.0, 9.6);
    // Ways over the ground; seen from the side, they are a third as deep.
    for (x, y) in [(1.0, 0.0), (0.6, 0.8), (-0.6, 0.8), (-1.0, 0.0), (-0.6, -0.8), (0.6, -0.8)]
    {
        let lain = |points: &[Point]| -> Vec<Point> {
            let flat = placed(points, (x * 2.0, y * 2.0), (x, y));
            flat.iter().map(|(x, y)| (*x, height + y * 0.36)).collect()
        };
        strokes.push(stroke(Weight::Outline, &lain(&outline)));
        strokes.push(stroke(Weight::Fine, &lain(&rib)));
    }
    strokes.extend(head((0.0, 34.0)));
    strokes
}

/// The head of a herb: a closed flower.
fn head(at: Point) -> [Stroke; 2] {
    let bud = [(0.0, 0.0), (4.0, 2.4), (4.4, 6.0), (2.4, 9.4), (0.0, 11.0)];
    let right = round(&bud).into_iter().map(|(x, y)| (x + at.0, y + at.1));
    let right: Vec<Point> = right.collect();
    let left: Vec<Point> = right.iter().map(|(x, y)| (2.0 * at.0 - x, *y)).collect();
    [stroke(Weight::Outline, &right), stroke(Weight::Outline, &left)]
}

/// A flower from the side: its petals or its sepals heavy.
pub(super) fn flower(petals: bool) -> Vec<Stroke> {
    let at = (0.0, 15.0);
    let mut strokes = vec![stroke(Weight::Twig, &[(0.0, -12.0), (0.0, 12.0)])];
    let petal = Blade { shape: Shape::Upper, tip: Tip::Rounded, ..Blade::default() };
    let petal = petal.outline(20.0, 11.0);
    for (x, y) in [(0.0, 1.0), (0.66, 0.75), (-0.66, 0.75), (0.99, 0.12), (-0.99, 0.12)] {
        let foot = placed(&[(0.0, 3.0)], at, (x, y))[0];
        let line = placed(&petal, foot, (x, y));
        strokes.push(stroke(spoken_of(petals, Weight::Outline), &line));
    }
    let (sepal, rib) = leafy(12.0, 4.6);
    for (x, y) in [(0.9, -0.44), (-0.9, -0.44), (0.48, -0.88), (-0.48, -0.88)] {
        let foot = placed(&[(0.0, 2.6)], at, (x, y))[0];
        strokes
            .push(stroke(spoken_of(!petals, Weight::Outline), &placed(&sepal, foot, (x, y))));
        strokes.push(stroke(Weight::Fine, &placed(&rib, foot, (x, y))));
    }
    strokes.push(stroke(Weight::Outline, &crate::pen::circle(at, 2.8)));
    strokes
}

/// How many pieces a frond has on each side.
const PIECES: u32 = 8;

/// The leaf of a fern: all of it heavy, or one piece.
pub(super) fn frond(whole: bool) -> Vec<Stroke> {
    let mut strokes =
        vec![stroke(spoken_of(whole, Weight::Outline), &[(0.0, -12.0), (0.0, 45.0)])];
    for piece in 0..PIECES {
        let height = -1.0 + 5.4 * f64::from(piece);
        let long = 21.6 - 2.4 * f64::from(piece);
        for side in [-1.0, 1.0] {
            let heavy = whole || piece == 2 && side > 0.0;
            let way = one_long((side, 0.36));
            let line = placed(&cut_piece(long), (0.0, height), way);
            strokes.push(stroke(Weight::Midrib, &line));
            let axis = placed(&[(0.0, 0.0), (0.0, long)], (0.0, height), way);
            strokes.push(stroke(spoken_of(heavy, Weight::Fine), &axis));
        }
    }
    strokes
}

/// The outline of a piece: cut into round parts on both sides of its axis.
fn cut_piece(long: f64) -> Vec<Point> {
    let many = (long / 2.6).round().max(2.0);
    let step = long / many;
    let mut right = vec![(0.3, 0.0)];
    for part in 0..many as u32 {
        let from = f64::from(part) * step;
        let out = 2.1 * (1.0 - from / long * 0.8);
        let at = |x: f64, y: f64| (0.3 + out * x, from + step * y);
        right.extend([at(0.75, 0.1), at(1.0, 0.5), at(0.75, 0.85), at(0.1, 1.0)]);
    }
    let left = right.iter().rev().map(|(x, y)| (-x, *y));
    right.iter().copied().chain(left).collect()
}
