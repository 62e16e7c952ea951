//! What a leaf says besides lengths, as cells.

use spinney_model::{
    Edge, EdgeKind, EdgeUnseen, Ends, LeafForm, Leaflets, Lobes, OneSide, Veins, WithPlusMinus,
};

use super::{decimals, number, words};

/// Their names.
pub(super) const HEADING: [&str; 28] = [
    "leaflets",
    "leaflets arranged",
    "leaflet at end",
    "lobes",
    "lobes arranged",
    "deepest sinus",
    "± deepest sinus",
    "edge",
    "teeth left",
    "teeth right",
    "teeth in a cm",
    "± teeth in a cm",
    "widest at",
    "± widest at",
    "base",
    "base angle (°)",
    "± base angle",
    "base sides",
    "one side further down by",
    "± one side further down by",
    "wider side of base",
    "± wider side of base",
    "tip",
    "tip angle (°)",
    "± tip angle",
    "side veins left",
    "side veins right",
    "side veins arranged",
];
/// What a leaf has none of, and what cannot be seen.
const NONE: &str = "-";
const UNSEEN: &str = "?";

/// A leaf's cells.
pub(super) fn cells(form: &LeafForm) -> Vec<String> {
    let edge = match &form.edge {
        Ok(edge) => edge_cells(edge),
        // Of a rubbing no form is told.
        Err(EdgeUnseen::Rubbed) => return vec![UNSEEN.to_owned(); HEADING.len()],
        Err(EdgeUnseen::TooCoarse) => [UNSEEN; 5].map(String::from),
    };
    let leaflets = leaflets(form.leaflets.as_ref());
    let lobes = lobes(form.lobes.as_ref());
    let ends = ends(form.ends.as_ref());
    let veins = veins(form.veins.as_ref().ok());
    leaflets.into_iter().chain(lobes).chain(edge).chain(ends).chain(veins).collect()
}

fn veins(veins: Option<&Veins>) -> [String; 3] {
    let Some(veins) = veins else { return [UNSEEN; 3].map(String::from) };
    let [left, right] = veins.sides.each_ref().map(|side| side.len().to_string());
    [left, right, veins.pairs.map_or(UNSEEN, words::vein_pairs).to_owned()]
}

fn ends(ends: Option<&Ends>) -> Vec<String> {
    let Some(ends) = ends else { return vec![NONE.to_owned(); 13] };
    let both = |of: WithPlusMinus| {
        let decimals = decimals(of.plus_minus);
        [of.value, of.plus_minus].map(|value| number(value, decimals))
    };
    let angle = |of: Option<WithPlusMinus>| of.map_or([NONE; 2].map(String::from), both);
    let [widest, off] = both(ends.widest);
    let [base, base_off] = angle(ends.base_angle);
    let [tip, tip_off] = angle(ends.tip_angle);
    let (at_base, at_tip) = (words::base_form(ends.base), words::tip_form(ends.tip));
    let side =
        |of: Option<OneSide>| of.map_or([UNSEEN; 2].map(String::from), |it| both(it.value));
    let ([lower, lower_off], [wider, wider_off]) =
        (side(ends.sides.lower), side(ends.sides.wider));
    let sides = words::base_sides(ends.sides).unwrap_or(UNSEEN).to_owned();
    let base = [at_base.to_owned(), base, base_off, sides, lower, lower_off, wider, wider_off];
    let tip = [at_tip.to_owned(), tip, tip_off];
    [widest, off].into_iter().chain(base).chain(tip).collect()
}

fn leaflets(leaflets: Option<&Leaflets>) -> [String; 3] {
    let Some(leaflets) = leaflets else { return [NONE; 3].map(String::from) };
    let at_end = leaflets.at_end.map_or(NONE, |at_end| if at_end { "yes" } else { "no" });
    let count = leaflets.middles.len().to_string();
    [count, words::arrangement(leaflets.arrangement).to_owned(), at_end.to_owned()]
}

fn lobes(lobes: Option<&Lobes>) -> [String; 4] {
    let count = lobes.map_or(NONE.to_owned(), |lobes| lobes.count().to_string());
    let Some(sinuses) = lobes.and_then(|lobes| lobes.sinuses.as_ref()) else {
        return [count, NONE.to_owned(), NONE.to_owned(), NONE.to_owned()];
    };
    let arrangement = sinuses.arrangement.map_or(UNSEEN, words::arrangement).to_owned();
    let decimals = decimals(sinuses.plus_minus);
    let [depth, half] =
        [sinuses.depth, sinuses.plus_minus].map(|value| number(value, decimals));
    [count, arrangement, depth, half]
}

fn edge_cells(edge: &Edge) -> [String; 5] {
    let kind = words::edge_kind(edge.kind).to_owned();
    if edge.kind == EdgeKind::Entire {
        return [kind, "0".to_owned(), "0".to_owned(), "0".to_owned(), NONE.to_owned()];
    }
    let [left, right] = edge.teeth.each_ref().map(|side| side.len().to_string());
    let [value, half] = match edge.per_cm {
        None => [UNSEEN; 2].map(String::from),
        Some(per_cm) => {
            let decimals = decimals(per_cm.plus_minus);
            [per_cm.value, per_cm.plus_minus].map(|value| number(value, decimals))
        }
    };
    [kind, left, right, value, half]
}
