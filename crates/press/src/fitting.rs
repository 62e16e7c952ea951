//! How somebody makes sure at an end: by the sentence of the kind, where somebody wrote one.
//!
//! From the kinds of an end, or of a whole key, to the line that says when to stop. A sentence
//! that nobody wrote is not spoken of.

use spinney_model::{End, Matrix, TaxonIx};
use spinney_voice::Tongue;

/// The sentence to confirm a kind by.
pub(crate) fn sentence(matrix: &Matrix, taxon: TaxonIx) -> Option<&str> {
    let written = matrix.taxa().get(taxon.0)?.confirming.as_deref()?.trim();
    (!written.is_empty()).then_some(written)
}

/// Whether somebody wrote a sentence for one of the kinds of an end.
pub(crate) fn at_end(matrix: &Matrix, end: &End) -> bool {
    end.taxa.iter().any(|taxon| sentence(matrix, *taxon).is_some())
}

/// Whether somebody wrote a sentence for any kind.
pub(crate) fn anywhere(matrix: &Matrix) -> bool {
    matrix.taxon_indices().any(|taxon| sentence(matrix, taxon).is_some())
}

/// When to stop: a key knows only its own kinds.
pub(crate) fn newcomer(t: Tongue, written: bool) -> String {
    match written {
        true => t.say("sheet-newcomer-sentence"),
        false => t.say("sheet-newcomer-look"),
    }
}
