//! The booklet: everything that the sheets and the page of one visit are made from.

use std::collections::BTreeMap;

use spinney_model::{
    AskedBy, CharacterIx, Drawing, DrawnWord, Holds, Key, LeafSize, LeftTogether, Matrix,
    SecondLooks, Standing, StateIx, TaxonIx, Walk,
};
use spinney_voice::Tongue;

use crate::sheet::ink::Letters;
use crate::sizes::Sizes;

/// Everything that the sheets and the page of one visit are made from.
#[derive(Clone, Debug)]
pub struct Booklet<'a> {
    /// The kinds, their names, cautions and sentences, and the scene for the title.
    pub matrix: &'a Matrix,
    /// The key, in words (see `wording::put_words`).
    pub key: &'a Key,
    /// The right ways of every kind, for the adult's answer list.
    pub walks: &'a [Walk],
    /// Kinds that the key does not tell apart, as the second opinion says.
    pub left_together: &'a [LeftTogether],
    /// What else can be looked at, to be sure of an answer; nothing where nobody knows.
    pub second_looks: &'a SecondLooks,
    /// What is printed across or beside the title.
    pub stamp: Stamp,
    /// The date printed at the foot: `25 November 2026`, or any other text.
    pub date: Option<&'a str>,
    /// Pictures by the file name that the kinds give.
    pub pictures: &'a BTreeMap<String, Picture>,
    /// What can be drawn.
    pub drawn: Drawn<'a>,
    /// How large it is printed, where a sheet can be.
    pub letters: Letters,
    /// How large places and the chart for the wall are wished.
    pub sizes: Sizes,
    /// The language of everything but names and of what people worded themselves.
    pub tongue: Tongue,
}

impl Booklet<'_> {
    /// The date as it is read in the language of the booklet.
    pub(crate) fn day(&self) -> Option<String> {
        self.date.map(|typed| self.tongue.day(typed))
    }
}

/// What can be drawn for a booklet; the press has no hand of its own.
#[derive(Clone, Copy, Debug)]
pub struct Drawn<'a> {
    /// The drawing of each kind by what its table says, in the order of the table; empty: of none.
    pub kinds: &'a [Option<Drawing>],
    /// The drawing of a leaf that was measured, where somebody chose it for its kind; empty: of none.
    pub leaves: &'a [Option<Drawing>],
    /// The drawings of a word of the list; the flag: what is read is about leaves.
    pub word: fn(&str, bool) -> Option<DrawnWord>,
    /// The drawings of a state of a column, and the word of the list that it is, if it is one.
    pub state: fn(&Matrix, CharacterIx, StateIx, Option<&str>) -> Vec<Drawing>,
    /// How large the largest leaf of each kind is, in the order of the table; empty: not asked.
    pub sizes: fn(&Matrix) -> Vec<Option<LeafSize>>,
}

impl<'a> Drawn<'a> {
    /// The drawing of a kind, and whether it is that of one of its leaves.
    pub(crate) fn of_kind(&self, at: TaxonIx) -> Option<(&'a Drawing, bool)> {
        let leaf = self.leaves.get(at.0).and_then(Option::as_ref);
        let table = || self.kinds.get(at.0).and_then(Option::as_ref);
        leaf.map(|leaf| (leaf, true)).or_else(|| table().map(|drawing| (drawing, false)))
    }
}

impl Drawn<'_> {
    /// Nothing is drawn.
    pub const NOTHING: Drawn<'static> = Drawn {
        kinds: &[],
        leaves: &[],
        word: |_, _| None,
        state: |_, _, _, _| Vec::new(),
        sizes: |_| Vec::new(),
    };
}

/// The bytes of a picture.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum Picture {
    /// A PNG file.
    Png(Vec<u8>),
    /// A JPEG file.
    Jpeg(Vec<u8>),
}

impl Picture {
    /// The bytes of the file.
    pub fn bytes(&self) -> &[u8] {
        match self {
            Self::Png(bytes) | Self::Jpeg(bytes) => bytes,
        }
    }

    /// The same, to keep.
    pub fn into_bytes(self) -> Vec<u8> {
        match self {
            Self::Png(bytes) | Self::Jpeg(bytes) => bytes,
        }
    }
}

/// What a key says of its own standing.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Stamp {
    /// Nothing: the search asked all of it and it holds, or people tried it and nothing is to be
    /// mended.
    None,
    /// DRAFT on every page of the key: whoever follows it may be left without an answer.
    Draft,
    /// "trying-out copy": people asked some of it or not all of it could be checked, and nobody
    /// has tried it yet; or something is to be mended.
    TryingOut,
}

impl Stamp {
    /// The one rule for every sheet, page and command.
    pub fn of(standing: Standing) -> Self {
        match (standing.holds, standing.tried, standing.asked_by) {
            (Holds::Broken, ..) => Self::Draft,
            (Holds::ToMend, ..) => Self::TryingOut,
            (_, true, _) | (Holds::Whole, false, AskedBy::Search) => Self::None,
            (Holds::Unchecked, false, _) | (Holds::Whole, false, AskedBy::People) => {
                Self::TryingOut
            }
        }
    }
}

/// A paper size, upright unless a sheet needs it turned.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Paper {
    /// 210 × 297 mm.
    A4,
    /// 215.9 × 279.4 mm.
    Letter,
    /// 297 × 420 mm.
    A3,
}

impl Paper {
    /// Width and height in mm, upright.
    pub fn size_mm(self) -> (f64, f64) {
        match self {
            Self::A4 => (210.0, 297.0),
            Self::Letter => (215.9, 279.4),
            Self::A3 => (297.0, 420.0),
        }
    }
}

#[cfg(test)]
mod tests {
    use spinney_model::AskedBy::{People, Search};
    use spinney_model::Holds::{Broken, ToMend, Unchecked, Whole};
    use spinney_model::Standing;

    use super::Stamp::{self, Draft, None, TryingOut};

    #[test]
    fn the_stamp_follows_who_asked_whether_it_holds_and_whether_it_was_tried() {
        let table = [
            // asked by, holds, not tried, tried
            (Search, Whole, None, None),
            (Search, Unchecked, TryingOut, None),
            (Search, ToMend, TryingOut, TryingOut),
            (Search, Broken, Draft, Draft),
            (People, Whole, TryingOut, None),
            (People, Unchecked, TryingOut, None),
            (People, ToMend, TryingOut, TryingOut),
            (People, Broken, Draft, Draft),
        ];
        for (asked_by, holds, untried, tried) in table {
            let stamp = |tried| Stamp::of(Standing { asked_by, holds, tried });
            assert_eq!((stamp(false), stamp(true)), (untried, tried), "{asked_by:?} {holds:?}");
        }
    }
}
