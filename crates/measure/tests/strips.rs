//! A scale strip beside a leaf in a photograph: found at any turn, and the leaf measured by it.
//!
//! The photograph is drawn here: for each of its pixels the place of the tray that a pinhole sees there,
//! asked at three by three points. In the white tray lie the strip and an ellipse of known size.

use image::{ImageFormat, RgbImage};
use spinney_model::scale_card::{LARGE_DOT, RING, SMALL_DOT, STRIP, STRIP_FIRST, STRIP_SIZE};
use spinney_model::{LeftOut, Measurand, MeasuredPicture, Mend, PictureScale};

/// Pixels of the photograph, across and down.
const SIZE: (u32, u32) = (1500, 1100);
/// Half of the ellipse's length and width, in mm, and its middle from that of the first ring.
const HALF: (f64, f64) = (32.0, 15.0);
const LEAF: [f64; 2] = [100.0, 70.0];
/// The middle of what is seen, in mm from the first ring.
const MIDDLE: [f64; 2] = [90.0, 45.0];

#[derive(Clone, Copy)]
struct Shot {
    turned: f64,
    tilted: f64,
    /// The camera is tilted along the strip, and not across it.
    along: bool,
    covered: Option<usize>,
    /// The middle and half the length and width of another dark thing.
    thing: Option<[f64; 4]>,
}

impl Shot {
    fn packed(self) -> Vec<u8> {
        let mut rng = fastrand::Rng::with_seed(7);
        let third = [-1.0 / 3.0, 0.0, 1.0 / 3.0];
        let pixels = RgbImage::from_fn(SIZE.0, SIZE.1, |x, y| {
            let mut sum = 0.0;
            for (right, down) in third.iter().flat_map(|r| third.map(|d| (*r, d))) {
                sum += self.seen(f64::from(x) + right, f64::from(y) + down) / 9.0;
            }
            let noise = 4.0 * (rng.f64() - 0.5);
            image::Rgb([(255.0 * f64::powf(sum, 1.0 / 2.2) + noise) as u8; 3])
        });
        let mut file = std::io::Cursor::new(Vec::new());
        pixels.write_to(&mut file, ImageFormat::Png).expect("it can be written");
        file.into_inner()
    }

    fn seen(self, x: f64, y: f64) -> f64 {
        let focal = f64::from(SIZE.0);
        let (u, v) =
            ((x - f64::from(SIZE.0) / 2.0) / focal, (y - f64::from(SIZE.1) / 2.0) / focal);
        let (sin, cos) = self.turned.sin_cos();
        let (u, v) = (cos * u + sin * v, cos * v - sin * u);
        let (u, v) = if self.along { (v, u) } else { (u, v) };
        // The middle is 450 mm away, and the tray tilted around a line through it.
        let (sin, cos) = self.tilted.sin_cos();
        let down = 450.0 * v / (cos - v * sin);
        let across = u * (450.0 + sin * down);
        let [right, below] = if self.along { [down, across] } else { [across, down] };
        tray([right + MIDDLE[0], below + MIDDLE[1]], self)
    }
}

/// How much light comes from a place, in mm from the first ring.
fn tray([x, y]: [f64; 2], shot: Shot) -> f64 {
    let Shot { covered, thing, .. } = shot;
    let on = |[right, down, long, wide]: [f64; 4]| {
        ((x - right) / long).hypot((y - down) / wide) < 1.0
    };
    if thing.is_some_and(on) {
        return 0.1;
    }
    let (a, b) = ((x - LEAF[0]) / HALF.0, (y - LEAF[1]) / HALF.1);
    if a * a + b * b < 1.0 {
        return 0.1;
    }
    for (at, mark) in STRIP.into_iter().enumerate() {
        let far = (x - mark.at[0]).hypot(y - mark.at[1]);
        let dot = if mark.small { SMALL_DOT } else { LARGE_DOT };
        if covered != Some(at) && (far < dot || (RING.1..RING.0).contains(&far)) {
            return 0.02;
        }
    }
    let [left, top] = STRIP_FIRST.map(|side| -side);
    let on =
        (left..left + STRIP_SIZE[0]).contains(&x) && (top..top + STRIP_SIZE[1]).contains(&y);
    if on { 0.86 } else { 0.78 }
}

#[test]
fn a_leaf_beside_a_strip_is_as_long_as_it_is_within_what_is_said() {
    for (turned, tilted, along) in [
        (0.0, 0.0, false),
        (0.8, 0.0, false),
        (2.9, 0.06, false),
        (4.4, -0.12, false),
        (5.6, 0.1, true),
    ] {
        for covered in [None, Some(2)] {
            let shot = Shot { turned, tilted, along, covered, thing: None };
            let picture = spinney_measure::read(&shot.packed(), None).expect("a picture");
            let told = format!("turned {turned}, tilted {tilted} {along}, without {covered:?}");
            let PictureScale::OfStrip { off, unsure, .. } = picture.scale else {
                panic!("{told}: {:?}", picture.scale)
            };
            assert!(off < 0.5, "{told}: {off} mm");
            let found = spinney_measure::measure(&picture).expect("a leaf");
            assert_eq!(found.leaves.len(), 1, "{told}: the strip is none");
            for (what, truth) in
                [(Measurand::BladeLength, 2.0 * HALF.0), (Measurand::BladeWidth, 2.0 * HALF.1)]
            {
                let found = found.leaves[0].measure(what).expect("it is measured");
                let way = (found.value - truth).abs();
                assert!(way <= found.plus_minus, "{told}: {what:?} {found:?} for {truth}");
            }
            // Put right by hand it is as unsure as before.
            let tip = found.leaves[0].lines.midrib.last().copied().expect("a line");
            let mends = [Mend::Tip { leaf: 1, at: tip }];
            let mended = spinney_measure::mended(&found, &mends).expect("it lies there");
            let half = |picture: &MeasuredPicture| {
                let length = picture.leaves[0].measure(Measurand::BladeLength);
                length.expect("it is measured").plus_minus
            };
            assert!((half(&mended) / half(&found) - 1.0).abs() < 0.1, "{told}");
            // From straight above it is sure to one in a hundred, and the more aslant the less.
            let straight = tilted == 0.0;
            assert_eq!(unsure < 0.012, straight, "{told}: {unsure}");
        }
    }
}

#[test]
fn four_rings_are_no_strip_and_nobody_guesses() {
    let shot = Shot { turned: 0.3, tilted: 0.0, along: false, covered: None, thing: None };
    let picture = spinney_measure::read(&shot.packed(), Some(100.0)).expect("a picture");
    assert_eq!(
        picture.scale,
        PictureScale::Said { dpi: 100.0 },
        "what a person says goes before"
    );
    let bytes = {
        // Half of the strip lies outside of the picture.
        let whole = image::load_from_memory(&shot.packed()).expect("a picture");
        let mut file = std::io::Cursor::new(Vec::new());
        let cut = whole.crop_imm(0, 0, SIZE.0 / 2, SIZE.1);
        cut.write_to(&mut file, ImageFormat::Png).expect("it can be written");
        file.into_inner()
    };
    let picture = spinney_measure::read(&bytes, None).expect("a picture");
    assert!(matches!(picture.scale, PictureScale::Unknown(_)), "{:?}", picture.scale);
}

#[test]
fn what_lies_over_the_strip_is_not_measured_too_short_but_left_out() {
    // One over a ring and beyond the edge; one on the paper alone.
    for thing in [[144.0, 21.0, 8.0, 21.0], [126.0, 2.0, 6.0, 4.0]] {
        for tilted in [0.0, 0.08] {
            let thing = Some(thing);
            let shot = Shot { turned: 0.3, tilted, along: false, covered: None, thing };
            let picture = spinney_measure::read(&shot.packed(), None).expect("a picture");
            assert!(matches!(picture.scale, PictureScale::OfStrip { .. }), "{thing:?}");
            let found = spinney_measure::measure(&picture).expect("a leaf");
            assert_eq!(found.leaves.len(), 1, "{thing:?}: the leaf beside the strip alone");
            let over = |out: &&(LeftOut, usize)| out.0 == LeftOut::OnStrip;
            assert!(found.left_out.iter().any(|out| over(&out)), "{thing:?}: it is said");
        }
    }
}
