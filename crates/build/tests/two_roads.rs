//! Two roads to the least effort: the search, and trying every key on expanded forms.

use spinney_build::{Budget, build};
use spinney_fixtures::{forms::Forms, seeded};
use spinney_model::{Difficulty, Instrument, Matrix, Scale, Share, Value, Wishes};

fn least(matrix: &Matrix) -> Share {
    let built = build(matrix, &Wishes::default(), Budget::default());
    assert!(built.claim.optimal(), "small tables are proved");
    assert_eq!(built.claim.lower_bound, built.claim.total);
    built.claim.total
}

#[test]
fn the_search_finds_what_trying_every_key_finds() {
    for seed in 0..4000 {
        let matrix = seeded::awkward(seed);
        let tried = Forms::of(&matrix).try_every_key();
        assert_eq!(least(&matrix), tried.least, "seed {seed}");
    }
}

/// The tables of the test above hold everything that is awkward.
#[test]
fn the_tables_are_awkward_in_every_way() {
    let mut met = std::collections::BTreeMap::<&str, usize>::new();
    let mut note =
        |what: &'static str, is: bool| *met.entry(what).or_default() += usize::from(is);
    for seed in 0..4000 {
        let matrix = seeded::awkward(seed);
        for at in matrix.character_indices() {
            let character = matrix.character(at);
            note("hard", character.difficulty == Difficulty::Hard);
            note("lens", character.instrument == Instrument::Lens);
            let three = matches!(&character.scale, Scale::Words { states } if states.len() > 2);
            note("three states in order", three && character.ordered);
            note("counts", character.scale == Scale::Counts);
            note("measure", matches!(character.scale, Scale::Measure { .. }));
            for taxon in matrix.taxon_indices() {
                note("weighted", matrix.taxon(taxon).weight != Share::from_integer(1));
                let cell = &matrix.cell(taxon, at).value;
                note("unknown", *cell == Value::Unknown);
                let measured = matches!(character.scale, Scale::Measure { .. });
                note("unknown measure", measured && *cell == Value::Unknown);
                note("does not apply", *cell == Value::DoesNotApply);
                if let Value::States(shares) = cell {
                    note("three states", shares.len() == 3);
                    note("counted", shares.windows(2).any(|pair| pair[0].1 != pair[1].1));
                }
                if let Value::Counts(shares) = cell {
                    note("several counts", shares.len() > 1);
                }
                if let Some(governor) = &character.governor {
                    let above = &matrix.cell(taxon, governor.character).value;
                    note("unknown governor", *above == Value::Unknown);
                    let varies = matches!(above, Value::States(shares) if shares.len() > 1);
                    note("varying governor", varies);
                }
            }
        }
        let ends = build(&matrix, &Wishes::default(), Budget::default()).key;
        let together = ends.couplets.iter().flat_map(|c| [&c.yes, &c.no]).any(|destination| {
            matches!(destination, spinney_model::Destination::End(end) if end.taxa.len() > 1)
        });
        note("inseparable", together);
    }
    assert_eq!(met.len(), 15);
    for (what, times) in met {
        assert!(times >= 100, "{what}: only {times}");
    }
}
