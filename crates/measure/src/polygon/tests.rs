//! Closed forms: what is known of rectangle, ellipse and rose without measuring.

use std::f64::consts::{PI, TAU};

use super::*;

fn around(count: usize, at: impl Fn(f64) -> Point) -> Vec<Point> {
    (0..count).map(|step| at(TAU * step as f64 / count as f64)).collect()
}

fn near(found: f64, true_value: f64, share: f64) {
    assert!((found / true_value - 1.0).abs() < share, "{found} instead of {true_value}");
}

#[test]
fn a_rectangle_is_what_its_sides_say() {
    let line = [[1.0, 1.0], [5.0, 1.0], [5.0, 3.0], [1.0, 3.0]];
    assert_eq!((area(&line), perimeter(&line)), (8.0, 12.0));
    assert_eq!(smallest_rectangle(&hull(&line)), 8.0);
    let turned = line.map(|[x, y]| [0.6 * x - 0.8 * y, 0.8 * x + 0.6 * y]);
    near(smallest_rectangle(&hull(&turned)), 8.0, 1e-12);
    let (a, b) = farthest_apart(&hull(&line)).expect("it has corners");
    near(distance(a, b), 20.0_f64.sqrt(), 1e-12);
}

/// Area π a b; the length around by Ramanujan, *Modular equations and approximations to π*, 1914,
/// which for these axes is right to a millionth.
#[test]
fn an_ellipse_has_its_area_and_its_length() {
    let (a, b) = (30.0, 20.0);
    let line = around(4000, |t| [a * t.cos(), b * t.sin()]);
    near(area(&line), PI * a * b, 1e-5);
    let length = PI * (3.0 * (a + b) - ((3.0 * a + b) * (a + 3.0 * b)).sqrt());
    near(perimeter(&line), length, 1e-5);
    near(perimeter(&spaced(&line, 900)), length, 1e-4);
    near(area(&hull(&line)), area(&line), 1e-9);
    near(smallest_rectangle(&hull(&line)), 4.0 * a * b, 1e-5);
}

/// The rose r = cos 2θ has four leaves with π / 2 together; r² + … as in any table of curves
/// (Lawrence, *A catalog of special plane curves*, 1972). Its hull is an octagon's rounding: larger.
#[test]
fn a_rose_of_four_leaves_has_half_of_its_circle() {
    let line = around(8000, |t| {
        let r = (2.0 * t).cos().abs();
        [r * t.cos(), r * t.sin()]
    });
    near(area(&line), PI / 2.0, 1e-5);
    assert!(area(&hull(&line)) > 1.9, "the gaps between its leaves are filled");
}

#[test]
fn smoothing_keeps_a_straight_side_and_takes_noise_away() {
    let line = around(1000, |t| {
        let r = 100.0 + 0.5 * (200.0 * t).sin();
        [r * t.cos(), r * t.sin()]
    });
    near(perimeter(&smoothed(&line, 5.0)), TAU * 100.0, 0.002);
    assert!(perimeter(&line) > TAU * 110.0);
}
