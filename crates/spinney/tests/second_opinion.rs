//! What the search claims, the second opinion confirms: two crates that share no code, on
//! thousands of small awkward tables and on larger ones.

use spinney_build::{Budget, build};
use spinney_check::{Settings, check};
use spinney_fixtures::seeded;
use spinney_model::{Ask, Asked, Code, Kept, Matrix, Quantity, Wishes};

/// What would contradict the search. (A person's kept question may part nothing, and then both
/// its answers lead to the same place: that is the person's.)
const BLAME: [Code; 7] = [
    Code::CostWrong,
    Code::BoundWrong,
    Code::NeverComesOut,
    Code::WrongPlace,
    Code::DoesNotHave,
    Code::MayNotHave,
    Code::ThresholdInside,
];

fn confirmed(matrix: &Matrix, wishes: &Wishes, name: &str) {
    let built = build(matrix, wishes, Budget::default());
    let opinion = check(matrix, &built.key, Some(&built.claim), &Settings::default());
    let blame: Vec<_> =
        opinion.findings.iter().filter(|finding| BLAME.contains(&finding.code)).collect();
    assert!(blame.is_empty(), "{name}: {blame:#?}");
    if let Some(effort) = &opinion.effort {
        assert_eq!(effort.total, built.claim.total, "{name}");
        assert_eq!(effort.mean_steps, built.claim.mean_steps, "{name}");
        assert_eq!(effort.longest, built.claim.longest, "{name}");
    } else {
        panic!("{name}: the effort could not be added up again");
    }
}

#[test]
fn the_cost_of_awkward_tables_is_confirmed() {
    for seed in 0..3000 {
        let matrix = seeded::awkward(seed);
        confirmed(&matrix, &Wishes::default(), &format!("seed {seed}"));
    }
}

#[test]
fn the_cost_of_larger_tables_is_confirmed() {
    for seed in 0..5 {
        confirmed(&seeded::skewed(seed, 24, 20, 10, 5), &Wishes::default(), "skewed");
        confirmed(&seeded::plain(seed, 40, 30, 10, 5), &Wishes::default(), "plain");
    }
}

/// Also where a person's own first question stays.
#[test]
fn the_cost_with_a_kept_question_is_confirmed() {
    let mut kept = 0;
    for seed in 0..1500 {
        let matrix = seeded::awkward(seed);
        for at in matrix.character_indices() {
            let yes = match &matrix.character(at).scale {
                spinney_model::Scale::Words { .. } => {
                    Asked::States([spinney_model::StateIx(0)].into())
                }
                _ => Asked::AtLeast(Quantity::from_thousandths(4_321)),
            };
            let ask = Ask { character: at, yes };
            let wish = Kept { ask, yes: None, no: None };
            let wishes = Wishes { kept: Some(Box::new(wish)), ..Wishes::default() };
            confirmed(&matrix, &wishes, &format!("seed {seed}, character {}", at.0));
            kept += usize::from(build(&matrix, &wishes, Budget::default()).refused.is_empty());
        }
    }
    assert!(kept > 500, "only {kept} wishes were kept");
}
