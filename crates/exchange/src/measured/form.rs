//! What the outline of a leaf says besides lengths, as cells.

use spinney_model::LeafForm;

use super::{decimals, number, words};

/// Their names.
pub(super) const HEADING: [&str; 4] =
    ["lobes", "lobes arranged", "deepest sinus", "± deepest sinus"];

/// A leaf's cells; what it has none of is `-`, what cannot be seen `?`.
pub(super) fn cells(form: &LeafForm) -> Vec<String> {
    let mut cells = vec![form.lobes.count().to_string()];
    match &form.lobes.sinuses {
        None => cells.extend(["-", "-", "-"].map(String::from)),
        Some(sinuses) => {
            cells.push(sinuses.arrangement.map_or("?", words::arrangement).to_owned());
            let decimals = decimals(sinuses.plus_minus);
            let both = [sinuses.depth, sinuses.plus_minus];
            cells.extend(both.map(|value| number(value, decimals)));
        }
    }
    cells
}
