//! What each word shows is counted off its lines, by other means than it was drawn by.

use spinney_model::{Drawing, Stroke, Weight};

use super::Shows;

fn drawing(shows: Shows) -> Drawing {
    shows.drawing()
}

/// The lines that are spoken of.
fn heavy(shows: Shows) -> Vec<Stroke> {
    let mut strokes = drawing(shows).strokes;
    strokes.retain(|stroke| stroke.weight == Weight::Heavy);
    strokes
}

fn middle(stroke: &Stroke) -> (f64, f64) {
    let many = stroke.points.len() as f64;
    let sum = stroke.points.iter().fold((0.0, 0.0), |sum, at| (sum.0 + at.0, sum.1 + at.1));
    (sum.0 / many, sum.1 / many)
}

/// Two drawings of the same thing: every line of one is there in the other, however heavy.
#[test]
fn where_a_part_is_spoken_of_all_lines_are_the_same() {
    use Shows::*;
    for (one, other) in [
        (Abdomen, MiddlePart),
        (Feelers, Legs),
        (PairOfLegs, OneLeg),
        (Head, Tails),
        (Gills, GillLegs),
        (Petals, Sepals),
        (Fruit, Seeds),
        (Stem, OneStalk),
        (Trunk, Twigs),
        (Frond, FrondPiece),
        (EndBud, SideBuds),
        (LeafScar, SideBuds),
        (Shoot, OlderTwig),
        (Stipules, NoStipule),
        (Glands, NoGland),
        (LeafletPair, LeafletOfPair),
        (Tendril, NoTendril),
        (ShellMouth, ShellWhorl),
        (Fins, TadpoleLegs),
    ] {
        let [lines, same] = [one, other].map(|shows| -> Vec<_> {
            drawing(shows).strokes.into_iter().map(|stroke| stroke.points).collect()
        });
        assert_eq!(lines, same, "{one:?} {other:?}");
        assert_ne!(drawing(one), drawing(other), "{one:?} {other:?}");
    }
}

/// What one of two has, the other has as well, and nothing but that is more.
#[test]
fn what_is_more_in_one_of_two_is_what_the_word_says() {
    use Shows::*;
    for (with, without, least) in [
        (Hairy, Bald, 40),
        (Hairy, Fringe, 20),
        (Fringe, Bald, 20),
        (InsectWings, Wingless, 2),
        (Snout, NoSnout, 1),
        (Suckers, NoSuckers, 2),
        (BristlyWorm, Worm, 10),
        (Claws, NoClaws, 2),
        (FringedLeg, PlainLeg, 10),
    ] {
        let lines = drawing(with).strokes;
        let mut more = lines.clone();
        for stroke in drawing(without).strokes {
            let at = more.iter().position(|other| *other == stroke);
            more.remove(at.unwrap_or_else(|| panic!("{without:?} has a line of its own")));
        }
        let spoken = |stroke: &&Stroke| matches!(stroke.weight, Weight::Heavy | Weight::Hatch);
        assert!(more.iter().filter(spoken).count() >= least, "{with:?}: {}", more.len());
    }
}

#[test]
fn parts_are_as_many_as_nature_has_them() {
    use Shows::*;
    for (shows, many) in [
        (Legs, 6),
        (PairOfLegs, 2),
        (OneLeg, 1),
        (Tails, 3),
        (Feelers, 2),
        (Seeds, 5),
        (Petals, 5),
        (Sepals, 4),
        (Stipules, 2),
        (Suckers, 2),
        (Thorn, 2),
        (LeafScar, 3),
        (SideBuds, 3),
        (EndBud, 1),
        (EndLeaflet, 1),
        (LeafletPair, 2),
        (Glands, 2),
    ] {
        assert_eq!(heavy(shows).len(), many, "{shows:?}");
    }
    // A larva of an insect has three pairs of legs, and a head before them.
    let larva = heavy(Larva);
    let top = larva.iter().map(middle).map(|at| at.1).fold(f64::MAX, f64::min);
    assert_eq!(larva.len(), 7);
    assert_eq!(middle(&larva[0]).1, top, "the head is the front end");
}

#[test]
fn parts_stand_where_they_belong() {
    use Shows::*;
    // On paper down is more. Feelers, head, legs, tails: from the front to the hind end.
    let heights = [Feelers, Head, MiddlePart, Abdomen, Tails].map(|shows| {
        let strokes = heavy(shows);
        strokes.iter().map(middle).map(|at| at.1).sum::<f64>() / strokes.len() as f64
    });
    assert!(heights.windows(2).all(|two| two[0] < two[1]), "{heights:?}");
    // The mouth of a shell that winds to the right.
    assert!(middle(&heavy(ShellMouth)[0]).0 > 4.0);
    // Sepals under petals.
    let lowest =
        |shows| heavy(shows).iter().map(middle).map(|at| at.1).fold(f64::MIN, f64::max);
    let highest =
        |shows| heavy(shows).iter().map(middle).map(|at| at.1).fold(f64::MAX, f64::min);
    assert!(lowest(Petals) < highest(Sepals));
    // The wing of a fruit beyond its seed, and this year's shoot beyond the older twig.
    assert!(lowest(Shoot) < highest(OlderTwig));
    // The base of a wedge is narrower than a round one, and nothing else is otherwise.
    let outline = |shows| {
        let edge = drawing(shows).strokes.into_iter().find(|s| s.weight == Weight::Outline);
        edge.expect("an edge").points
    };
    let (wedge, round) = (outline(WedgeBase), outline(RoundBase));
    let foot = round.iter().map(|at| at.1).fold(f64::MIN, f64::max);
    for (one, other) in wedge.iter().zip(&round) {
        let low = (foot - other.1) / 36.0;
        if low > 0.51 {
            assert_eq!(one, other, "above the middle they are the same");
        } else if low > 0.02 && low < 0.3 {
            assert!(one.0.abs() < other.0.abs() * 0.95, "{one:?} {other:?}");
        }
    }
}

/// Rings close; a spiral never comes back to where it was.
#[test]
fn a_spiral_winds_outwards_and_rings_close() {
    let far = |(x, y): (f64, f64)| (x * x + (y + 18.0) * (y + 18.0)).sqrt();
    for ring in heavy(Shows::Rings) {
        let (first, last) = (ring.points[0], ring.points[ring.points.len() - 1]);
        assert!((first.0 - last.0).abs() < 1e-6 && (first.1 - last.1).abs() < 1e-6);
    }
    let spiral = &heavy(Shows::Spiral)[0].points;
    assert!(spiral.windows(2).all(|two| far(two[1]) > far(two[0]) - 1e-6));
    assert!(far(spiral[spiral.len() - 1]) > far(spiral[0]) + 15.0);
}

/// At 18 mm of height the smallest thing that a word speaks of is still a millimetre.
#[test]
fn what_is_spoken_of_can_be_seen_on_a_small_card() {
    let scale = 18.0 / 64.0;
    for shows in Shows::ALL {
        for stroke in heavy(*shows) {
            let span = |of: fn(&(f64, f64)) -> f64| {
                let all = stroke.points.iter().map(of);
                all.clone().fold(f64::MIN, f64::max) - all.fold(f64::MAX, f64::min)
            };
            let long = span(|at| at.0).max(span(|at| at.1)) * scale;
            assert!(long >= 0.8, "{shows:?}: {long} mm");
        }
    }
}
