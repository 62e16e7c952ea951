//! Closed forms of which it is known how often they turn in.

use std::f64::consts::TAU;

use super::*;

/// A line around, clockwise as seen on a screen, from straight below the middle.
fn around(radius: impl Fn(f64) -> f64) -> Vec<Point> {
    let count = 2000;
    let at = |step: usize| {
        let angle = TAU * step as f64 / f64::from(count) + TAU / 4.0;
        [500.0 + radius(angle) * angle.cos(), 500.0 + radius(angle) * angle.sin()]
    };
    (0..=count as usize).map(at).collect()
}

#[test]
fn a_circle_and_an_ellipse_turn_in_nowhere() {
    let ellipse = |angle: f64| 1.0 / (angle.cos() / 400.0).hypot(angle.sin() / 150.0);
    assert!(Turns::of(&around(|_| 300.0), 2.0).sinuses.is_empty());
    assert!(Turns::of(&around(ellipse), 2.0).sinuses.is_empty());
}

#[test]
fn a_rose_turns_in_between_its_lobes_as_deep_as_its_formula_says() {
    for lobes in [3, 5, 8, 13_i32] {
        // It begins in a sinus.
        let rose = |angle: f64| 300.0 - 40.0 * (f64::from(lobes) * (angle - TAU / 4.0)).cos();
        let line = around(rose);
        let turns = Turns::of(&line, 2.0);
        assert_eq!(turns.sinuses.len(), lobes as usize - 1);
        assert_eq!(turns.tips().len(), lobes as usize);
        // Both lobes beside it touch the lid, so it lies no deeper than their tips' chord.
        let chord = 340.0 * (TAU / f64::from(lobes) / 2.0).cos();
        for sinus in turns.sinuses {
            assert!(sinus.depth > chord - 260.0 - 0.5, "{} {chord}", sinus.depth);
            assert!(sinus.depth < 80.0);
        }
    }
}

#[test]
fn small_sinuses_are_taken_away_and_large_ones_stay() {
    let both = |angle: f64| {
        let from = angle - TAU / 4.0;
        300.0 - 60.0 * (5.0 * from).cos() - 5.0 * (60.0 * from).cos()
    };
    let line = around(both);
    let mut turns = Turns::of(&line, 2.0);
    assert!(turns.sinuses.len() > 40, "{}", turns.sinuses.len());
    turns.keep(|_, sinus| sinus.depth > 20.0);
    assert_eq!(turns.sinuses.len(), 4);
}
