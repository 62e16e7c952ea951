//! Packing keeps the goals apart, and the table of misreadings is what it says.

use spinney_model::Goal;

use super::{Goals, MILLIONTHS, Sum, in_order};

#[test]
fn the_least_effort_settles_what_is_left_open() {
    assert_eq!(in_order(&[]), [Goal::LeastEffort]);
    let wished = [Goal::FewestRulers, Goal::FewestRulers];
    assert_eq!(in_order(&wished), [Goal::FewestRulers, Goal::LeastEffort]);
}

#[test]
fn parts_come_out_as_they_went_in() {
    let wished = [Goal::MostRightEnds, Goal::LeastEffort, Goal::FewestRulers];
    let (goals, too_large) = Goals::pack(&wished, 120, 30);
    assert!(too_large.is_empty());
    let packed = 1_234_567 * goals.unit(Sum::Misread)
        + 345 * goals.unit(Sum::Effort)
        + 17 * goals.unit(Sum::Rulers);
    assert_eq!(goals.part(Sum::Misread, packed), 1_234_567);
    assert_eq!(goals.effort(packed), 345);
    assert_eq!(goals.part(Sum::Rulers, packed), 17);
    assert_eq!(goals.part(Sum::NewWords, packed), 0);
}

#[test]
fn goals_that_do_not_fit_are_given_back_the_last_first() {
    let wished = [Goal::MostRightEnds, Goal::EvenTeaching];
    let (goals, too_large) = Goals::pack(&wished, 1 << 36, 100);
    assert_eq!(too_large, [Goal::EvenTeaching]);
    assert_eq!(goals.order, [Goal::MostRightEnds, Goal::LeastEffort]);
}

#[test]
fn misreadings_are_logarithms() {
    for (per_cent, millionths) in MILLIONTHS.iter().enumerate() {
        let share = per_cent.max(1) as f64 / 100.0;
        assert!((-share.ln() * 1e6 - f64::from(*millionths)).abs() <= 0.500_001);
    }
}
