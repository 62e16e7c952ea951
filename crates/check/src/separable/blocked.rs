//! Why a group of kinds ends together: nothing parts them, or what parts two of them cannot
//! be asked of a third.
//!
//! From a group to its finding. Section 4 of `docs/KEY.md` says what is in the way: a kind
//! that does not or may not have the character, or a range across or near every threshold.

use spinney_model::{
    CellsOf, CharacterIx, Finding, InTheWay, OfTable, Place, Quantity, Scale, TaxonIx, Value,
};

use crate::names;
use crate::pairs::{Facts, Pairs};
use crate::settled;
use crate::values::{Has, Values};

/// So many characters that part some of a group are named with what is in their way.
const MOST_REASONS: usize = 2;

/// A character that would part two kinds of a group, and who stands in the way.
struct Reason {
    character: CharacterIx,
    parts: [TaxonIx; 2],
    /// Who does not have it.
    without: Vec<TaxonIx>,
    /// Who may not have it.
    perhaps: Vec<TaxonIx>,
    /// Whose range lies across the thresholds or near them.
    across: Vec<TaxonIx>,
}

/// The finding for one group.
pub(super) fn finding(values: &Values<'_>, pairs: &Pairs, group: &[usize]) -> Finding {
    let kinds = names::kinds(values.matrix, group.iter().map(|taxon| TaxonIx(*taxon)));
    let place = Place::Taxa(kinds.clone());
    let reasons = reasons(values, pairs, group);
    if reasons.is_empty() {
        return Finding::of(place, OfTable::NotSeparable { kinds });
    }
    let because = reasons.iter().map(|reason| reason.fact(values, group)).collect();
    let fill_in = fill_in(values, &reasons);
    Finding::of(place, OfTable::Blocked { kinds, because, fill_in })
}

/// The first characters that part two of the group.
fn reasons(values: &Values<'_>, pairs: &Pairs, group: &[usize]) -> Vec<Reason> {
    let mut reasons: Vec<Reason> = Vec::new();
    if pairs.capped {
        return reasons;
    }
    let facts: Vec<(usize, Facts)> =
        group.iter().map(|taxon| (*taxon, Facts::at_best(values, TaxonIx(*taxon)))).collect();
    for (place, (one, of_one)) in facts.iter().enumerate() {
        for (other, of_other) in &facts[place + 1..] {
            for character in of_one.parting(values, of_other) {
                if reasons.len() == MOST_REASONS {
                    return reasons;
                }
                if !reasons.iter().any(|reason| reason.character == character) {
                    let parts = [*one, *other].map(TaxonIx);
                    reasons.push(Reason::of(values, pairs, character, parts, group));
                }
            }
        }
    }
    reasons
}

impl Reason {
    fn of(
        values: &Values<'_>,
        pairs: &Pairs,
        character: CharacterIx,
        parts: [TaxonIx; 2],
        group: &[usize],
    ) -> Self {
        let all = || group.iter().map(|taxon| TaxonIx(*taxon));
        let has = |taxon: &TaxonIx| {
            let before = pairs.settled.before(values, *taxon, character);
            values.has(*taxon, character, &before)
        };
        let both = settled::lack_together(values, parts[0], parts[1], character);
        let perhaps =
            |taxon: &TaxonIx| has(taxon) == Has::Maybe || (both && parts.contains(taxon));
        let in_the_way = |taxon: &TaxonIx| {
            has(taxon) == Has::Yes
                && !parts.contains(taxon)
                && lies_between(values, character, parts, *taxon)
        };
        Self {
            character,
            parts,
            without: all().filter(|taxon| has(taxon) == Has::No).collect(),
            perhaps: all().filter(perhaps).collect(),
            across: all().filter(in_the_way).collect(),
        }
    }

    /// Of stalk, which tells elm and lime apart: holly, which has none.
    fn fact(&self, values: &Values<'_>, group: &[usize]) -> InTheWay {
        let named = |taxa: &[TaxonIx]| names::kinds(values.matrix, taxa.iter().copied());
        let name = |taxon: TaxonIx| values.matrix.taxon(taxon).name.clone();
        InTheWay {
            about: names::about(values.matrix, self.character),
            separates: (group.len() != 2).then(|| self.parts.map(name)),
            without: named(&self.without),
            perhaps: named(&self.perhaps),
            between: named(&self.across),
        }
    }
}

/// What to fill in, where something unknown is in the way.
fn fill_in(values: &Values<'_>, reasons: &[Reason]) -> Option<CellsOf> {
    let matrix = values.matrix;
    reasons.iter().find_map(|reason| {
        let mut above = matrix.character(reason.character).governor.as_ref();
        while let Some(governor) = above {
            let asked = governor.character;
            let open = reason.perhaps.iter().filter(|taxon| values.unknown(**taxon, asked));
            let kinds = names::kinds(matrix, open.copied());
            if !kinds.is_empty() {
                return Some(CellsOf { about: names::about(matrix, asked), kinds });
            }
            above = matrix.character(asked).governor.as_ref();
        }
        None
    })
}

/// Whether a kind's range lies across, or too near to, some threshold between two others.
fn lies_between(
    values: &Values<'_>,
    character: CharacterIx,
    parts: [TaxonIx; 2],
    taxon: TaxonIx,
) -> bool {
    let Scale::Measure { gap, .. } = values.matrix.character(character).scale else {
        return false;
    };
    let range = |taxon| match values.value(taxon, character) {
        Value::Range { low, high } => Some((low.thousandths(), high.thousandths())),
        _ => None,
    };
    let (Some(one), Some(other), Some((low, high))) =
        (range(parts[0]), range(parts[1]), range(taxon))
    else {
        return false;
    };
    let (from, to) = (one.1.min(other.1), one.0.max(other.0));
    // Thresholds stand a gap above `from` and a gap below `to`. With a gap of 0 nothing cuts
    // through one number.
    low < to && high > from && (low < high || gap > Quantity::ZERO)
}
