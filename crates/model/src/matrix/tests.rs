//! What a matrix refuses.

use std::collections::BTreeSet;

use super::*;
use crate::{Governor, StateIx};

fn words(name: &str, states: &[&str]) -> Character {
    let states = states.iter().map(ToString::to_string).collect();
    Character::named(name, Scale::Words { states })
}

fn state(ix: usize) -> Cell {
    Value::States(vec![(StateIx(ix), Share::one())]).into()
}

#[test]
fn a_cell_must_fit_its_character() {
    let build = |cell| {
        Matrix::new(
            Scene::default(),
            vec![Taxon::named("hazel")],
            vec![words("edge", &["toothed", "smooth"])],
            vec![vec![cell]],
        )
    };
    assert!(build(state(1)).is_ok());
    assert!(matches!(build(state(2)), Err(MatrixError::Cell { .. })));
    let half = Value::States(vec![(StateIx(0), Share::new(1, 2))]);
    assert!(matches!(build(half.into()), Err(MatrixError::Cell { .. })));
    let count = Value::Counts(vec![(3, Share::one())]);
    assert!(matches!(build(count.into()), Err(MatrixError::Cell { .. })));
}

#[test]
fn governors_in_a_circle_are_refused() {
    let mut form = words("form", &["one piece", "feather"]);
    let mut lobes = words("lobes", &["lobed", "unlobed"]);
    let under = |ix| {
        Some(Governor { character: CharacterIx(ix), states: BTreeSet::from([StateIx(0)]) })
    };
    lobes.governor = under(0);
    let taxa = vec![Taxon::named("hazel")];
    let rows = vec![vec![state(0), state(1)]];
    let good = vec![form.clone(), lobes.clone()];
    assert!(Matrix::new(Scene::default(), taxa.clone(), good, rows.clone()).is_ok());
    form.governor = under(1);
    let circle = Matrix::new(Scene::default(), taxa, vec![form, lobes], rows);
    assert!(matches!(circle, Err(MatrixError::Governor { .. })));
}

#[test]
fn other_names_stand_over_the_same_cells() {
    let matrix = Matrix::new(
        Scene::default(),
        vec![Taxon::named("hazel"), Taxon::named("oak")],
        vec![words("edge", &["toothed", "smooth"])],
        vec![vec![state(0)], vec![state(1)]],
    );
    let matrix = matrix.expect("every cell fits");
    let other = vec![Taxon::named("nut"), Taxon::named("acorn")];
    let named = matrix.clone().with_taxa(other).expect("as many as before");
    assert_eq!(named.taxon(TaxonIx(1)).name, "acorn");
    for taxon in matrix.taxon_indices() {
        assert_eq!(named.cell(taxon, CharacterIx(0)), matrix.cell(taxon, CharacterIx(0)));
    }
    let few = matrix.clone().with_taxa(vec![Taxon::named("nut")]);
    assert!(matches!(few, Err(MatrixError::Rows { taxa: 1, rows: 2 })));
    let weightless = Taxon { weight: Share::zero(), ..Taxon::named("nut") };
    let none = matrix.with_taxa(vec![weightless.clone(), weightless]);
    assert!(matches!(none, Err(MatrixError::Weight { .. })));
}
