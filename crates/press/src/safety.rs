//! What is said of safety, in one place for every sheet and page.
//!
//! From a booklet to the sentence that stands on everything we print and on every screen, to
//! what everybody on the visit must know, and to the kinds that may hurt. It decides nothing:
//! who knows the place and the children does.

use spinney_model::{Matrix, TaxonIx};
use spinney_voice::Tongue;

/// Stands on every booklet and page, also where nobody typed a caution.
pub(crate) fn local_rules(t: Tongue) -> String {
    t.say("foot-rules")
}

/// What everybody on the visit must know, if somebody wrote it down.
pub(crate) fn for_everybody(matrix: &Matrix) -> Option<&str> {
    matrix.scene().caution.as_deref().map(str::trim).filter(|text| !text.is_empty())
}

/// The kinds that may hurt, each with what is said of it.
pub(crate) fn of_kinds(matrix: &Matrix) -> impl Iterator<Item = (TaxonIx, &str)> {
    matrix.taxon_indices().filter_map(|taxon| {
        let caution = matrix.taxon(taxon).caution.as_deref()?.trim();
        (!caution.is_empty()).then_some((taxon, caution))
    })
}
