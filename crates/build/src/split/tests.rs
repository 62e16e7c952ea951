//! The questions that a column of words offers, listed by hand.

use spinney_model::{Cell, Character, Scale, Scene, Taxon, Unit};

use super::{
    BTreeSet, CharacterIx, Matrix, Quantity, Side, StateIx, Value, groups, midway, side,
    thresholds,
};

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

/// Ends of one sort alone are enough to make a column long, whichever they are: then 17, between
/// 14 and 20 and over another range, is no threshold any more.
#[test]
fn a_column_is_long_by_its_lower_or_by_its_upper_ends() {
    let asks_17 = |more: &dyn Fn(i64) -> (i64, i64), many: i64| {
        let mut ranges = vec![(10, 14), (15, 19), (20, 24)];
        ranges.extend((0..many).map(more));
        let kinds = 1..=ranges.len();
        let taxa = kinds.map(|number| Taxon::named(format!("kind {number}"))).collect();
        let range = |(low, high)| {
            let [low, high] = [low, high].map(Quantity::from_whole);
            vec![Cell::from(Value::Range { low, high })]
        };
        let rows = ranges.into_iter().map(range).collect();
        let gap = Quantity::from_whole(3);
        let width = Character::named("width", Scale::Measure { unit: Unit::Millimetres, gap });
        let matrix = Matrix::new(Scene::default(), taxa, vec![width], rows).expect("it fits");
        thresholds(&matrix, CharacterIx(0), gap).contains(&Quantity::from_whole(17))
    };
    let lower = |n: i64| (1_000 + n, 100_000_i64);
    let upper = |n: i64| (1_000_i64, 2_000 + n);
    // Three ends are there already.
    for (ends, more) in [("lower", &lower as &dyn Fn(i64) -> (i64, i64)), ("upper", &upper)] {
        assert!(asks_17(more, 997), "{ends}: 1,000 of them are not too many");
        assert!(!asks_17(more, 998), "{ends}: 1,001 are");
    }
}
