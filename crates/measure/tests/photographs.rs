//! A scale card in a photograph: found, laid flat, and what lies on it measured.
//!
//! The photograph is drawn here: for each of its pixels the place of the paper that a pinhole sees there,
//! asked at three by three points. On the paper are the rings of the card, an ellipse of known size, and
//! nothing else; around it is a table.

use image::{ImageFormat, RgbImage};
use spinney_model::scale_card::{LARGE_DOT, RING, SMALL_DOT, ScaleCard};
use spinney_model::{Measurand, NoScale, PictureScale};

/// Pixels of the photograph, across and down.
const SIZE: (u32, u32) = (1400, 1100);
/// Half of the ellipse's length and width, in mm.
const HALF: (f64, f64) = (30.0, 14.0);

struct Shot {
    card: ScaleCard,
    turned: f64,
    tilted: f64,
    /// Whether a hand lies on the ring at this place.
    covered: Option<usize>,
}

impl Shot {
    fn packed(&self) -> Vec<u8> {
        let mut rng = fastrand::Rng::with_seed(7);
        let third = [-1.0 / 3.0, 0.0, 1.0 / 3.0];
        let pixels = RgbImage::from_fn(SIZE.0, SIZE.1, |x, y| {
            let mut sum = [0.0; 3];
            for (right, down) in third.iter().flat_map(|r| third.map(|d| (*r, d))) {
                let light = self.seen(f64::from(x) + right, f64::from(y) + down);
                sum = std::array::from_fn(|colour| sum[colour] + light[colour] / 9.0);
            }
            let noise = 4.0 * (rng.f64() - 0.5);
            image::Rgb(sum.map(|light| (255.0 * light.powf(1.0 / 2.2) + noise) as u8))
        });
        let mut file = std::io::Cursor::new(Vec::new());
        pixels.write_to(&mut file, ImageFormat::Png).expect("it can be written");
        file.into_inner()
    }

    /// The light at a place of the photograph.
    fn seen(&self, x: f64, y: f64) -> [f64; 3] {
        let focal = f64::from(SIZE.0);
        let (u, v) =
            ((x - f64::from(SIZE.0) / 2.0) / focal, (y - f64::from(SIZE.1) / 2.0) / focal);
        // The paper's middle is 330 mm away; it is tilted around a line across: a place so far down on
        // it is cos times as far down, and sin times as much farther away.
        let (sin, cos) = self.tilted.sin_cos();
        let down = 330.0 * v / (cos - v * sin);
        let across = u * (330.0 + sin * down);
        let (sin, cos) = self.turned.sin_cos();
        let [w, h] = self.card.size();
        self.paper([cos * across + sin * down + w / 2.0, cos * down - sin * across + h / 2.0])
    }

    fn paper(&self, [x, y]: [f64; 2]) -> [f64; 3] {
        let [w, h] = self.card.size();
        let (ink, white, leaf, table) =
            ([0.01; 3], [0.85, 0.85, 0.83], [0.09, 0.22, 0.05], [0.2, 0.1, 0.04]);
        if !(-18.0..w + 18.0).contains(&x) || !(-50.0..h + 25.0).contains(&y) {
            return table;
        }
        let (a, b) = ((x - 80.0) / HALF.0, (y - 90.0) / HALF.1);
        if a * a + b * b < 1.0 {
            return leaf;
        }
        for (at, mark) in self.card.marks().into_iter().enumerate() {
            let far = (x - mark.at[0]).hypot(y - mark.at[1]);
            if self.covered == Some(at) && far < 12.0 {
                return table;
            }
            let dot = if mark.small { SMALL_DOT } else { LARGE_DOT };
            if far < dot || (RING.1..RING.0).contains(&far) {
                return ink;
            }
        }
        white
    }
}

#[test]
fn a_leaf_on_a_card_is_as_long_as_it_is_however_the_camera_was_held() {
    for card in ScaleCard::ALL {
        for (turned, tilted) in [(0.1, 0.0), (1.6, 0.3), (3.3, -0.35)] {
            let shot = Shot { card, turned, tilted, covered: Some(5) };
            let picture = spinney_measure::read(&shot.packed(), None).expect("a picture");
            let PictureScale::OfCard { off, .. } = picture.scale else {
                panic!("{card:?} turned {turned}, tilted {tilted}: {:?}", picture.scale)
            };
            assert!(off < 0.1, "{off} mm");
            let found = spinney_measure::measure(&picture).expect("a leaf");
            assert_eq!(found.leaves.len(), 1, "{:?}", found.left_out);
            for (what, truth) in [
                (Measurand::BladeLength, 2.0 * HALF.0),
                (Measurand::BladeWidth, 2.0 * HALF.1),
                (Measurand::BladeArea, std::f64::consts::PI * HALF.0 * HALF.1),
            ] {
                let value = found.leaves[0].measure(what).expect("it is measured").value;
                assert!((value / truth - 1.0).abs() < 0.015, "{what:?} {value} for {truth}");
            }
        }
    }
}

/// What is shown afterwards is the paper laid flat.
#[test]
fn what_was_laid_flat_is_what_is_shown() {
    let shot = Shot { card: ScaleCard::A4, turned: 0.2, tilted: 0.2, covered: None };
    let file = shot.packed();
    let picture = spinney_measure::read(&file, None).expect("a picture");
    assert!(*picture.shown() == picture.pixels, "what was measured");
    assert!(picture.shown().dimensions() != SIZE);
    // Whoever says how large a dot is gets the photograph as it is.
    let said = spinney_measure::read(&file, Some(100.0)).expect("a picture");
    assert_eq!(said.pixels.dimensions(), SIZE);
}

#[test]
fn where_its_upper_side_is_covered_there_are_no_lengths() {
    for covered in [0, 2] {
        let covered = Some(covered);
        let shot = Shot { card: ScaleCard::A4, turned: 0.2, tilted: 0.2, covered };
        let picture = spinney_measure::read(&shot.packed(), None).expect("a picture");
        assert_eq!(picture.scale, PictureScale::Unknown(NoScale::Rings));
    }
    // Between its corners a leaf may lie.
    let shot = Shot { card: ScaleCard::A4, turned: 0.2, tilted: 0.2, covered: Some(1) };
    let picture = spinney_measure::read(&shot.packed(), None).expect("a picture");
    assert!(matches!(picture.scale, PictureScale::OfCard { .. }));
}
