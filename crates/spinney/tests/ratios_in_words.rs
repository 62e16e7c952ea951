//! What Spinney asks about two lengths it also understands: worded by one room, read back by
//! another, and answered alike by every kind.

use spinney_exchange::link;
use spinney_model::{
    Ask, Asked, Cell, Character, CharacterIx, Matrix, Quantity, Scale, Scene, Taxon, Unit,
    Value,
};
use spinney_voice::{Tongue, wording};

/// Two lengths and their ratio; a kind on each side of a threshold, in thousandths.
fn two_lengths(one: &str, other: &str, at: i64, touched: bool) -> Matrix {
    let measure = |name: &str, unit| {
        let gap = Quantity::from_thousandths(0);
        Character::named(name, Scale::Measure { unit, gap })
    };
    let mut ratio = measure("slimness", Unit::Ratio);
    ratio.ratio_of = Some((CharacterIx(0), CharacterIx(1)));
    let mm = Unit::Millimetres;
    let characters = vec![measure(one, mm), measure(other, mm), ratio];
    let from = if touched { at } else { at + 1 };
    let rows = [(at - 90, at - 1), (from, at + 90)].map(|(low, high)| {
        let [low, high] = [low, high].map(Quantity::from_thousandths);
        let unknown = || Cell::from(Value::Unknown);
        vec![unknown(), unknown(), Cell::from(Value::Range { low, high })]
    });
    let taxa = vec![Taxon::named("alpha"), Taxon::named("beta")];
    Matrix::new(Scene::default(), taxa, characters, rows.to_vec()).expect("a small table")
}

#[test]
fn a_worded_ratio_is_read_back_as_the_same_question() {
    let pairs = [
        ("stalk length", "blade length"),
        ("blade width", "blade length"),
        ("blade length", "blade width"),
        ("stalk length", "blade width"),
        ("leaf stalk length", "blade length"),
        ("lobes width", "lobes length"),
    ];
    let plain = [250, 333, 400, 500, 667, 750, 1_000, 1_500, 2_000, 2_345, 3_000];
    for (one, other) in pairs {
        for at in plain {
            for (touched, below) in [(false, false), (true, false), (false, true)] {
                let matrix = two_lengths(one, other, at, touched);
                let threshold = Quantity::from_thousandths(at);
                let yes = match below {
                    true => Asked::Below(threshold),
                    false => Asked::AtLeast(threshold),
                };
                let ask = Ask { character: CharacterIx(2), yes };
                let words = wording::question(Tongue::of_terminal(), &matrix, &ask);
                let read = link::proposals(&words, &matrix);
                let sure = read.iter().find(|proposal| proposal.sure);
                let sure = sure.unwrap_or_else(|| panic!("{words}: {read:?}"));
                assert_eq!(sure.ask.character, ask.character, "{words}");
                assert_eq!(
                    spinney_check::says(&matrix, &sure.ask),
                    spinney_check::says(&matrix, &ask),
                    "{words}: {:?}",
                    sure.ask
                );
            }
        }
    }
}
