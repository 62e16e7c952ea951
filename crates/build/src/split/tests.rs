//! The questions that a column of words offers, listed by hand.

use super::{BTreeSet, Quantity, Side, StateIx, groups, midway, side};

fn asked(states: &[&str], ordered: bool) -> Vec<String> {
    let states: Vec<String> = states.iter().map(ToString::to_string).collect();
    let phrase = |group: &BTreeSet<StateIx>| {
        group.iter().map(|state| states[state.0].as_str()).collect::<Vec<_>>().join(" or ")
    };
    groups(&states, ordered).iter().map(phrase).collect()
}

#[test]
fn states_without_an_order_are_split_in_every_way() {
    assert_eq!(asked(&["red"], false), [""; 0]);
    assert_eq!(asked(&["red", "blue", "green"], false), ["red", "blue", "green"]);
    assert_eq!(
        asked(&["red", "blue", "green", "white"], false),
        ["red", "blue", "green", "white", "red or blue", "red or green", "red or white"]
    );
}

#[test]
fn an_order_is_cut_once() {
    assert_eq!(asked(&["small"], true), [""; 0]);
    assert_eq!(asked(&["small", "large"], true), ["small"]);
    assert_eq!(asked(&["small", "middling", "large"], true), ["small", "large"]);
    assert_eq!(
        asked(&["tiny", "small", "large", "huge"], true),
        ["tiny", "huge", "tiny or small"]
    );
    assert_eq!(
        asked(&["none", "few", "some", "many", "full"], true),
        ["none", "full", "none or few", "many or full"]
    );
}

#[test]
fn a_long_order_is_cut_everywhere_too() {
    let states: Vec<String> = (1..=9).map(|step| format!("step {step}")).collect();
    let states: Vec<&str> = states.iter().map(String::as_str).collect();
    let cuts = asked(&states, true);
    assert_eq!(cuts.len(), 8);
    assert_eq!(cuts[6], "step 1 or step 2 or step 3 or step 4");
    assert_eq!(cuts[7], "step 6 or step 7 or step 8 or step 9");
    assert_eq!(asked(&states, false), states, "without an order one against the rest");
}

#[test]
fn yes_and_no_ask_for_yes_whatever_their_order() {
    for ordered in [false, true] {
        assert_eq!(asked(&["No", "yes"], ordered), ["yes"]);
    }
}

#[test]
fn no_number_is_too_far_away_to_be_asked_for() {
    let [least, low, high, most] =
        [i64::MIN, 60_000, 110_000, i64::MAX].map(Quantity::from_thousandths);
    let gap = Quantity::from_thousandths(5_000);
    assert!(matches!(side(low, high, least, gap), Side::Yes));
    assert!(matches!(side(low, high, most, gap), Side::No));
    assert!(matches!(side(least, least, most, gap), Side::No));
    assert!(matches!(side(least, most, low, gap), Side::Blocked));
    assert_eq!(midway(least, most), Quantity::ZERO);
}
