//! Lobes, counted on scans of closed forms and of drawn leaves.

use std::f64::consts::TAU;

use fastrand::Rng;
use image::{ExtendedColorType, ImageEncoder};
use spinney_fixtures::leaves::Leaf;
use spinney_fixtures::leaves::scan::Page;
use spinney_measure::{measure, read};
use spinney_model::{Arrangement, LeafForm};

/// A line in mm.
type Line = Vec<[f64; 2]>;

fn form(leaf: &Leaf<()>, dpi: f64, turn: f64) -> LeafForm {
    let page = Page { dpi, ..Page::of_one(leaf, turn) };
    let (width, height) = page.pixels();
    let mut file = Vec::new();
    image::codecs::png::PngEncoder::new(&mut file)
        .write_image(
            &page.scanned(&mut Rng::with_seed(5)),
            width as u32,
            height as u32,
            ExtendedColorType::Rgb8,
        )
        .expect("it can be packed");
    let found = measure(&read(&file, Some(dpi)).expect("a picture")).expect("a leaf");
    assert_eq!(found.leaves.len(), 1, "{:?}", found.left_out);
    found.leaves[0].form.clone()
}

/// A closed form around the end of a stalk that comes from below: its radius by the angle from
/// above.
fn with_stalk(radius: impl Fn(f64) -> f64) -> Leaf<()> {
    let half = 0.6;
    let at = |angle: f64| [radius(angle) * angle.sin(), radius(angle) * angle.cos()];
    // Down the right side, so from the tip on, as far as the stalk lets it.
    let steps = 4000;
    let mut line: Line = (0..steps)
        .map(|step| at(TAU * (f64::from(step) / f64::from(steps) - 0.5)))
        .filter(|[x, y]| x.abs() > half || *y > 0.0)
        .collect();
    let foot = -radius(TAU / 2.0) - 25.0;
    line.extend([[half, foot], [-half, foot]]);
    Leaf { outline: line, truth: () }
}

#[test]
fn a_rose_has_as_many_lobes_as_its_formula_says_and_is_like_a_hand() {
    for lobes in [3, 5, 7] {
        let rose = |angle: f64| 25.0 + 10.0 * (f64::from(lobes) * angle).cos();
        for (dpi, turn) in [(150.0, 0.4), (300.0, 3.0)] {
            let found = form(&with_stalk(rose), dpi, turn).lobes;
            assert_eq!(found.count(), lobes as usize, "{dpi}");
            let sinuses = found.sinuses.expect("it is lobed");
            assert!(sinuses.arrangement != Some(Arrangement::Feather));
        }
    }
}

#[test]
fn a_circle_an_ellipse_and_a_faint_rose_are_not_lobed() {
    let ellipse = |angle: f64| 1.0 / (angle.sin() / 14.0).hypot(angle.cos() / 30.0);
    // Its sinuses take an eighth of the way in.
    let faint = |angle: f64| 25.0 + 1.6 * (5.0 * angle).cos();
    for outline in [with_stalk(|_| 22.0), with_stalk(ellipse), with_stalk(faint)] {
        let found = form(&outline, 300.0, 1.0).lobes;
        assert_eq!((found.count(), found.sinuses), (1, None));
    }
}
