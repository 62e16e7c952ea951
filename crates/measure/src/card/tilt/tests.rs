//! A card seen by cameras whose turn, tilt and lens are known.

use super::*;

/// A camera above the paper: turned, tilted, so far away (mm), and with a lens that bends.
struct Camera {
    turned: f64,
    tilted: f64,
    away: f64,
    bent: f64,
}

const SIZE: [f64; 2] = [2000.0, 1500.0];

impl Camera {
    /// Where it sees a place of the paper, by a road of its own: through space.
    fn sees(&self, card: ScaleCard, at: Point) -> Point {
        let [w, h] = card.size();
        let (x, y) = (at[0] - w / 2.0, at[1] - h / 2.0);
        let (sin, cos) = self.turned.sin_cos();
        let (x, y) = (cos * x - sin * y, sin * x + cos * y);
        let (sin, cos) = self.tilted.sin_cos();
        let (y, z) = (cos * y, self.away + sin * y);
        let focal = 1.1;
        let (u, v) = (focal * x / z, focal * y / z);
        let out = 1.0 + self.bent * (u * u + v * v);
        let half = SIZE[0].hypot(SIZE[1]) / 2.0;
        [(SIZE[0] - 1.0) / 2.0 + half * u * out, (SIZE[1] - 1.0) / 2.0 + half * v * out]
    }

    fn rings(&self, card: ScaleCard) -> Vec<Ring> {
        let ring = |mark: RingMark| Ring {
            at: self.sees(card, mark.at),
            across: 60.0,
            small: mark.small,
            spread: [0.0; 3],
        };
        card.marks().map(ring).to_vec()
    }
}

fn cameras() -> impl Iterator<Item = Camera> {
    [0.0, 0.5, 1.9, 3.1, 4.4].into_iter().flat_map(|turned| {
        [0.0, 0.25, 0.44].into_iter().flat_map(move |tilted| {
            [-0.1, 0.0, 0.06].map(|bent| Camera { turned, tilted, away: 380.0, bent })
        })
    })
}

/// Every place between the rings is found where the camera sees it, also with two rings covered and with
/// something round beside them.
#[test]
fn every_place_of_a_card_is_found_again() {
    for card in ScaleCard::ALL {
        for camera in cameras() {
            let mut rings = camera.rings(card);
            let seen = [rings.clone(), {
                rings.remove(5);
                rings.remove(3);
                rings.push(Ring {
                    at: [30.0, 40.0],
                    across: 61.0,
                    small: false,
                    spread: [0.0; 3],
                });
                rings
            }];
            for rings in seen {
                let (found, tilt) = of(&rings, SIZE).expect("the card is seen");
                assert_eq!(found, card);
                assert!(tilt.off < 1e-6, "{}", tilt.off);
                for at in [[20.0, 20.0], [90.0, 110.0], [160.0, 40.0], [50.0, 160.0]] {
                    let apart = distance(tilt.seen(at), camera.sees(card, at));
                    assert!(apart < 0.01, "{apart} pixels at {at:?}");
                }
            }
        }
    }
}

/// A ring that is not where it should be is told by what is left over.
#[test]
fn what_does_not_fit_is_said() {
    let camera = Camera { turned: 0.3, tilted: 0.2, away: 400.0, bent: 0.0 };
    let mut rings = camera.rings(ScaleCard::A4);
    rings[3].at[0] += 4.0;
    let (_, tilt) = of(&rings, SIZE).expect("the card is seen");
    assert!((0.05..0.6).contains(&tilt.off), "{}", tilt.off);
    rings[3].at[0] += 60.0;
    let still = of(&rings, SIZE);
    assert!(still.is_none_or(|(_, tilt)| tilt.off < FARTHEST));
}

/// Any rectangle can be seen as any other: seen in a mirror, or where it is covered what tells its corners
/// apart, it is no card of ours.
#[test]
fn a_card_whose_corners_cannot_be_told_apart_is_none() {
    let camera = Camera { turned: 0.3, tilted: 0.2, away: 400.0, bent: 0.0 };
    let rings = camera.rings(ScaleCard::A4);
    let mirrored = |ring: &Ring| Ring { at: [SIZE[0] - ring.at[0], ring.at[1]], ..*ring };
    assert!(of(&rings.iter().map(mirrored).collect::<Vec<_>>(), SIZE).is_none());
    for card in ScaleCard::ALL {
        for covered in 0..TELLING {
            let mut rings = camera.rings(card);
            rings.remove(covered);
            let found = of(&rings, SIZE).map(|(found, _)| found);
            // Between both corners nothing else can have been.
            let wanted = (covered == 1).then_some(card);
            assert_eq!(found, wanted, "{card:?} without ring {covered}");
            rings.remove(5);
            assert!(of(&rings, SIZE).is_none(), "{card:?} without ring {covered} and another");
        }
        let mut rings = camera.rings(card);
        rings.truncate(FEWEST - 1);
        assert!(of(&rings, SIZE).is_none());
    }
}
