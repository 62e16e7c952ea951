//! What is asked of each drawn leaf, and what counts as right.

use spinney_fixtures::leaves::form::{Blade, Margin};
use spinney_model::{EdgeKind, LeafForm};

use crate::Pair;

/// None: it is not asked of this leaf.
type Right = fn(&Pair) -> Option<bool>;

pub(crate) const QUESTIONS: [(&str, Right); 14] = [
    ("number of lobes", |pair| {
        let lobes = |form: &LeafForm| form.lobes.as_ref().map(|lobes| lobes.count());
        simple(pair).then(|| pair.form().and_then(lobes) == Some(pair.truth.lobes))
    }),
    ("lobes like a feather or a hand, where it is said", |pair| {
        let said = pair.form()?.lobes.as_ref()?.sinuses.as_ref()?.arrangement?;
        Some(Some(said) == pair.truth.arrangement)
    }),
    ("that is said of five lobes and more", |pair| {
        let sinuses = pair.form()?.lobes.as_ref()?.sinuses.as_ref()?;
        (pair.truth.lobes >= 5).then_some(sinuses.arrangement.is_some())
    }),
    ("depth within 0.1", |pair| {
        let depth = pair.form()?.lobes.as_ref()?.sinuses.as_ref()?.depth;
        (pair.truth.lobes > 1).then_some((depth - pair.plan.depth).abs() <= 0.1)
    }),
    ("leaflets", |pair| {
        let count = pair.form().map(leaflets);
        (!simple(pair)).then_some(count == Some(pair.truth.leaflets))
    }),
    ("no leaflets", |pair| {
        simple(pair).then_some(pair.form().is_some_and(|form| form.leaflets.is_none()))
    }),
    ("leaflets like a feather or a hand", |pair| {
        let said = pair.form()?.leaflets.as_ref()?.arrangement;
        Some(Some(said) == pair.truth.arrangement)
    }),
    ("leaflet at the end", |pair| {
        let said = pair.form()?.leaflets.as_ref()?.at_end?;
        Some(said == pair.truth.end_leaflet)
    }),
    ("edge, where it is said", |pair| {
        let kind = pair.form()?.edge.as_ref().ok()?.kind;
        // On small blades there was room for one tooth or two, of which nobody's words are clear.
        if (1..3).contains(&teeth(pair)) {
            return None;
        }
        Some(match pair.truth.margin {
            Margin::Smooth => kind == EdgeKind::Entire,
            Margin::Wavy => kind == EdgeKind::Wavy,
            Margin::Serrate | Margin::Dentate | Margin::Crenate => match kind {
                EdgeKind::ToothedOrDouble => return None,
                _ => kind == EdgeKind::Toothed,
            },
            Margin::Double => match kind {
                EdgeKind::ToothedOrDouble => return None,
                _ => kind == EdgeKind::DoubleToothed,
            },
            Margin::Spiny | Margin::SpinyArc => match kind {
                // Spines that are too small to be told from teeth are teeth.
                EdgeKind::ToothedOrDouble => return None,
                _ => kind == EdgeKind::Spiny,
            },
        })
    }),
    ("spines are called so", |pair| {
        let edge = pair.form().and_then(|form| form.edge.as_ref().ok());
        let spiny = pair.truth.margin.is_spiny() && teeth(pair) >= 6;
        spiny.then_some(edge.is_some_and(|edge| edge.kind == EdgeKind::Spiny))
    }),
    ("nothing else is called so", |pair| {
        let edge = pair.form()?.edge.as_ref().ok()?;
        (!pair.truth.margin.is_spiny()).then_some(edge.kind != EdgeKind::Spiny)
    }),
    ("edge is said in full", |pair| {
        let edge = pair.form().and_then(|form| form.edge.as_ref().ok());
        Some(edge.is_some_and(|edge| edge.kind != EdgeKind::ToothedOrDouble))
    }),
    ("teeth within 10 %", |pair| {
        let truth = teeth(pair);
        let found = pair.form().and_then(|form| form.edge.as_ref().ok());
        let found = found.map_or(0, |edge| edge.teeth.iter().map(Vec::len).sum());
        (truth >= 6).then_some(10 * found.abs_diff(truth) <= truth)
    }),
    ("teeth in a cm within 10 %", |pair| {
        let found = pair.form()?.edge.as_ref().ok()?.per_cm?.value;
        let truth = 10.0 / pair.truth.pitch;
        (pair.truth.pitch > 0.0).then_some((found - truth).abs() <= 0.1 * truth)
    }),
];

fn teeth(pair: &Pair) -> usize {
    pair.truth.teeth.iter().sum()
}

fn simple(pair: &Pair) -> bool {
    !matches!(pair.plan.blade, Blade::Compound(_))
}

fn leaflets(form: &LeafForm) -> usize {
    form.leaflets.as_ref().map_or(0, |leaflets| leaflets.middles.len())
}
