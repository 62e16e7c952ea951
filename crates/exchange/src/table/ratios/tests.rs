//! Ratios by hand: which ends go over which, and what a part that is missing makes of them.

use spinney_model::{Governor, Share, StateIx};

use super::*;

fn length(name: &str) -> Character {
    let gap = Quantity::from_whole(5);
    Character::named(name, Scale::Measure { unit: Unit::Millimetres, gap })
}

fn ratio() -> Character {
    let gap = USUAL_GAP;
    let mut ratio = Character::named("r", Scale::Measure { unit: Unit::Ratio, gap });
    ratio.ratio_of = Some((CharacterIx(0), CharacterIx(1)));
    ratio
}

fn range(low: i64, high: i64) -> Value {
    let [low, high] = [low, high].map(Quantity::from_thousandths);
    Value::Range { low, high }
}

fn of(one: Value, other: Value) -> Value {
    let characters = [length("stalk"), length("blade"), ratio()];
    let row = [one, other, Value::Unknown];
    worked_out(&characters, CharacterIx(2), |at| &row[at.0])
}

#[test]
fn the_shortest_goes_over_the_longest_and_the_range_is_never_cut() {
    assert_eq!(of(range(10_000, 20_000), range(40_000, 50_000)), range(200, 500));
    // 10 over 30 is .3333…, 20 over 30 is .6666…
    assert_eq!(of(range(10_000, 20_000), range(30_000, 30_000)), range(333, 667));
    assert_eq!(of(range(30_000, 30_000), range(10_000, 10_000)), range(3_000, 3_000));
    assert_eq!(of(range(0, 1), range(7_000, 9_000)), range(0, 1));
    let (most, least) = (i64::MAX, 1);
    assert_eq!(of(range(most, most), range(least, least)), range(most, most));
}

#[test]
fn what_is_unknown_or_missing_stays_so() {
    assert_eq!(of(Value::Unknown, range(1, 2)), Value::Unknown);
    assert_eq!(of(range(1, 2), Value::Unknown), Value::Unknown);
    assert_eq!(of(Value::DoesNotApply, Value::Unknown), Value::DoesNotApply);
    assert_eq!(of(range(1, 2), Value::DoesNotApply), Value::DoesNotApply);
    assert_eq!(of(range(1, 2), range(0, 5)), Value::Unknown, "nothing goes over nothing");
    assert_eq!(of(range(-1, 2), range(4, 5)), Value::Unknown);
}

#[test]
fn a_part_that_may_be_missing_is_in_the_way_unless_the_ratio_waits_for_it() {
    let states = ["one piece", "feather"].map(str::to_owned).to_vec();
    let mut characters = vec![
        length("stalk"),
        length("blade"),
        ratio(),
        Character::named("form", Scale::Words { states }),
    ];
    let form = CharacterIx(3);
    let right = BTreeSet::from([StateIx(0)]);
    characters[1].governor = Some(Governor { character: form, states: right });
    let half = Share::new(1, 2);
    let varies = Value::States(vec![(StateIx(0), half), (StateIx(1), half)]);
    let mut row = [range(1_000, 1_000), range(4_000, 4_000), Value::Unknown, varies];
    let ratio = |characters: &[Character], row: &[Value; 4]| {
        worked_out(characters, CharacterIx(2), |at| &row[at.0])
    };
    assert_eq!(ratio(&characters, &row), Value::DoesNotApply);
    take_governors(&mut characters);
    assert_eq!(characters[2].governor, characters[1].governor);
    assert_eq!(ratio(&characters, &row), range(250, 250));
    characters[2].governor = None;
    row[3] = Value::States(vec![(StateIx(0), Share::from_integer(1))]);
    assert_eq!(ratio(&characters, &row), range(250, 250));
}
