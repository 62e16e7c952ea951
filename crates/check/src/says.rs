//! What the table says of a question, kind by kind, before anything else was asked: for a card
//! that lies between two heaps.

use spinney_model::{Ask, Matrix, TaxonIx};

use crate::question::Question;
use crate::values::{Has, Taken, Values};

/// What the table says of one kind.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash, PartialOrd, Ord)]
pub enum Says {
    /// Always yes.
    Yes,
    /// Always no.
    No,
    /// It varies: sometimes yes, sometimes no.
    Both,
    /// Nobody has recorded it, or a threshold lies inside the measured range.
    NobodyKnows,
    /// The kind does not have what is asked about, or not always.
    DoesNotHave,
}

/// What the table says of a question, kind by kind in the order of the matrix. A question that
/// the matrix has nothing to answer with: nobody knows.
pub fn says(matrix: &Matrix, ask: &Ask) -> Vec<Says> {
    let Some(question) = Question::asks(matrix, ask) else {
        return vec![Says::NobodyKnows; matrix.taxa().len()];
    };
    let values = Values::new(matrix, None);
    matrix.taxon_indices().map(|taxon| one(&values, taxon, &question)).collect()
}

fn one(values: &Values<'_>, taxon: TaxonIx, question: &Question) -> Says {
    let nothing = Taken::new();
    if values.has(taxon, question.character, &nothing) != Has::Yes {
        return Says::DoesNotHave;
    }
    if values.unknown(taxon, question.character) {
        return Says::NobodyKnows;
    }
    let [yes, no] = values.sides(taxon, question, &nothing);
    match (yes.is_some(), no.is_some()) {
        (true, false) => Says::Yes,
        (false, true) => Says::No,
        (true, true) if values.is_range(taxon, question.character) => Says::NobodyKnows,
        (true, true) => Says::Both,
        (false, false) => Says::NobodyKnows,
    }
}

#[cfg(test)]
mod tests {
    //! One kind of each answer, from the hedge table's own words.

    use std::collections::BTreeSet;

    use spinney_fixtures::drawn;
    use spinney_model::{Ask, Asked, CharacterIx, StateIx};

    use super::{Says, says};

    #[test]
    fn a_card_is_told_what_the_table_says() {
        let matrix = drawn::yes_no(
            "        lobed
             hazel   0
             oak     1
             ivy     v
             rowan   -
             privet  ?",
        );
        let yes = Asked::States(BTreeSet::from([StateIx(1)]));
        let ask = Ask { character: CharacterIx(0), yes };
        let expected = [Says::No, Says::Yes, Says::Both, Says::DoesNotHave, Says::NobodyKnows];
        assert_eq!(says(&matrix, &ask), expected);
        let stranger = Ask { character: CharacterIx(7), ..ask };
        assert_eq!(says(&matrix, &stranger), [Says::NobodyKnows; 5]);
    }
}
