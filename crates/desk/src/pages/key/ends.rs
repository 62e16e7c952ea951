//! Where an answer leads: on to a question, or to kinds that come out.

use spinney_model::{Destination, End, KeyId, KindId};

use spinney_collection::Collection;
use spinney_collection::keys::Made;

/// Where an answer leads.
pub(crate) enum Ending<'m> {
    /// On to the question with this number.
    On(u32),
    /// Kinds come out, and names that are none of the collection's.
    Out(Vec<KindId>, &'m [String]),
    /// Nothing comes out.
    Nothing,
}

impl<'m> Ending<'m> {
    pub(crate) fn of(made: &'m Made, to: &'m Destination) -> Self {
        match to {
            Destination::Couplet(number) => Self::On(*number),
            Destination::End(End { taxa, unrecognised })
                if !(taxa.is_empty() && unrecognised.is_empty()) =>
            {
                let kinds = taxa.iter().filter_map(|taxon| made.layer.kinds.get(taxon.0));
                Self::Out(kinds.copied().collect(), unrecognised)
            }
            Destination::End(_) | Destination::Missing => Self::Nothing,
        }
    }
}

/// The names of kinds in a key, one after another.
pub(crate) fn names(
    collection: &Collection,
    key: KeyId,
    kinds: &[KindId],
    strange: &[String],
) -> Vec<String> {
    let known = kinds.iter().map(|kind| collection.name_in(key, *kind));
    known.chain(strange.iter().cloned()).collect()
}
