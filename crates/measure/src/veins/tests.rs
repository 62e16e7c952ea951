//! Side veins by where they begin: none is guessed.

use super::sides::SideVein;
use super::{counted, ridges};
use spinney_model::VeinPairs;

fn side(rows: &[f64]) -> Vec<SideVein> {
    rows.iter().map(|row| SideVein::at(*row)).collect()
}

#[test]
fn side_veins_stand_in_pairs_in_turn_or_neither() {
    let left = side(&[10.0, 20.0, 30.0, 40.0, 50.0]);
    let beside = |off: f64| {
        let right: Vec<f64> = (1..=5).map(|at| 10.0 * f64::from(at) + off).collect();
        counted::pairs(&[left.clone(), side(&right)])
    };
    assert_eq!(beside(0.0), Some(VeinPairs::Opposite));
    assert_eq!(beside(-1.0), Some(VeinPairs::Opposite));
    assert_eq!(beside(5.0), Some(VeinPairs::Alternate));
    assert_eq!(beside(-4.2), Some(VeinPairs::Alternate));
    assert_eq!(beside(2.5), None);
    // Ten on the left and eight on the right are in pairs at one end only.
    let [ten, eight] = [7.5, 9.5].map(|way| {
        let rows: Vec<f64> = (0..10).map(|at| f64::from(at) * way).collect();
        side(&rows)
    });
    assert_eq!(counted::pairs(&[ten, eight]), None);
}

/// A ridge of light along x, a Gaussian of this scale, bends most across itself at the same scale.
#[test]
fn a_ridge_bends_down_across_and_not_along() {
    let [across, both, along] = ridges::weights([0.0, 1.0]).map(f64::from);
    assert_eq!([across, both, along].map(f64::abs), [1.0, 0.0, 0.0]);
    let slanted = ridges::weights([0.6, 0.8]).map(f64::from);
    // Light that bends down by 1 at right angles to that direction: its second derivatives are those
    // of the outer product of (0.8, -0.6), and the answer is 1.
    let bent = [-0.64, 0.48, -0.36];
    let found: f64 = slanted.iter().zip(bent).map(|(weight, bent)| weight * bent).sum();
    assert!((found - 1.0).abs() < 1e-6, "{found}");
}
