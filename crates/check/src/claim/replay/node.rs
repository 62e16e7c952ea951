//! A node of a key: kinds with what answers have taken from them, and their flows.
//!
//! Section 2 of `docs/KEY.md`. Flows are whole multiples of one common denominator of the
//! whole table. What may be asked, and what it costs, is decided elsewhere.

use spinney_model::{CharacterIx, Share, TaxonIx, Value};

use crate::amount::common_multiple;
use crate::question::{Question, Yes};
use crate::values::{Has, Left, Taken, Values};

/// One kind at a node.
#[derive(Clone, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub(super) struct Kind {
    pub(super) taxon: TaxonIx,
    pub(super) taken: Taken,
    pub(super) flow: i128,
}

/// A node.
#[derive(Clone, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub(super) struct Node(Vec<Kind>);

/// What a question makes of a node.
pub(super) struct Split {
    pub(super) yes: Node,
    pub(super) no: Node,
    /// Whether one kind goes only to yes and another only to no (section 5).
    pub(super) parts: bool,
}

impl Node {
    /// All kinds with everything left, and the denominator of all flows; None: it is too large
    /// for exact numbers.
    pub(super) fn root(values: &Values<'_>) -> Option<(Self, i128)> {
        let mut whole: i128 = 1;
        let mut all: i128 = 0;
        for taxon in values.matrix.taxon_indices() {
            let weight = values.matrix.taxon(taxon).weight;
            let mut of_kind = *weight.denom();
            for character in values.matrix.character_indices() {
                of_kind = of_kind.checked_mul(denominator(values, taxon, character)?)?;
            }
            whole = common_multiple(whole, of_kind)?;
            all = all.checked_add(weight.ceil().to_integer())?;
        }
        // No question counts more than this for one find (a misreading, in millionths), and
        // no path has more than 64 of them.
        all.checked_mul(whole)?.checked_mul(64 * 5_000_000)?;
        let kinds = values.matrix.taxon_indices().map(|taxon| {
            let flow = values.matrix.taxon(taxon).weight * Share::from_integer(whole);
            Kind { taxon, taken: Taken::new(), flow: flow.to_integer() }
        });
        Some((Self(kinds.collect()), whole))
    }

    /// The kinds, in the order of the matrix.
    pub(super) fn kinds(&self) -> &[Kind] {
        &self.0
    }

    /// Whether a kind is here.
    pub(super) fn has(&self, taxon: TaxonIx) -> bool {
        self.0.iter().any(|kind| kind.taxon == taxon)
    }

    /// The flow of all kinds together.
    pub(super) fn flow(&self) -> i128 {
        self.0.iter().map(|kind| kind.flow).sum()
    }

    /// Puts a question to all kinds; None: it is blocked (section 4). Without a gap a threshold
    /// may lie as near to a range as it likes, as a person's own may.
    pub(super) fn ask(
        &self,
        values: &Values<'_>,
        asked: &Question,
        gap: Option<i64>,
    ) -> Option<Split> {
        let (mut yes, mut no) = (Vec::new(), Vec::new());
        let (mut only_yes, mut only_no) = (false, false);
        for kind in &self.0 {
            if values.has(kind.taxon, asked.character, &kind.taken) != Has::Yes
                || in_the_way(values, kind, asked, gap)
            {
                return None;
            }
            match values.sides(kind.taxon, asked, &kind.taken) {
                [Some(_), None] => {
                    only_yes = true;
                    yes.push(kind.clone());
                }
                [None, Some(_)] => {
                    only_no = true;
                    no.push(kind.clone());
                }
                [Some(kept), Some(rest)] => {
                    yes.push(kind.left_with(values, asked.character, kept)?);
                    no.push(kind.left_with(values, asked.character, rest)?);
                }
                [None, None] => return None,
            }
        }
        Some(Split { yes: Self(yes), no: Self(no), parts: only_yes && only_no })
    }
}

/// Whether a threshold lies inside a kind's range, or nearer to it than the gap.
fn in_the_way(values: &Values<'_>, kind: &Kind, asked: &Question, gap: Option<i64>) -> bool {
    let (Yes::AtLeast(at) | Yes::Below(at)) = asked.yes else { return false };
    let Value::Range { low, high } = values.value(kind.taxon, asked.character) else {
        return false;
    };
    let [at, low, high] = [at, low.thousandths(), high.thousandths()].map(i128::from);
    let gap = i128::from(gap.unwrap_or(0));
    let clear = if low >= at { low - at >= gap } else { high < at && at - high >= gap };
    !clear
}

impl Kind {
    /// The kind with less left in one character.
    fn left_with(&self, values: &Values<'_>, at: CharacterIx, kept: Left) -> Option<Self> {
        let before = self.taken.iter().find(|(c, _)| *c == at).map(|(_, left)| *left);
        let before = match before {
            None => Share::from_integer(1),
            Some(left) => values.share(self.taxon, at, left)?,
        };
        let after = values.share(self.taxon, at, kept)?;
        let mut taken: Taken = self.taken.iter().filter(|(c, _)| *c != at).copied().collect();
        taken.push((at, kept));
        if let Left::Span(..) = kept {
            // As narrow as the numbers that are left, so that equal nodes are seen to be equal.
            if let Some((least, most)) = values.reach(self.taxon, at, &taken) {
                taken.pop();
                taken.push((at, Left::Span(least, most.saturating_add(1))));
            }
        }
        taken.sort_unstable();
        // The flow is a multiple of every share of every cell, one after the other.
        let flow = self.flow / before.numer() * before.denom() / after.denom() * after.numer();
        Some(Self { taxon: self.taxon, taken, flow })
    }
}

/// A number of which the denominator of every share of what is left of a cell is a part.
fn denominator(values: &Values<'_>, taxon: TaxonIx, character: CharacterIx) -> Option<i128> {
    let of = |denominators: Vec<i128>| denominators.into_iter().try_fold(1, common_multiple);
    match values.value(taxon, character) {
        Value::States(shares) => of(shares.iter().map(|(_, share)| *share.denom()).collect()),
        Value::Counts(shares) => of(shares.iter().map(|(_, share)| *share.denom()).collect()),
        Value::Unknown => i128::try_from(values.unknown_has(character)).ok(),
        Value::DoesNotApply | Value::Range { .. } => Some(1),
    }
}
