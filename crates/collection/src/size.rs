//! How large a collection is, in what its pages take time for.
//!
//! From a collection to counts. How much is too much, and why, is in `spinney_model::limits`.

use std::collections::{BTreeMap, BTreeSet};

use spinney_model::{CharacterId, KindId};

use crate::{Collection, Drawn, Kind, Measurement, Question, Specimen};

/// How much there is of a collection.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub struct Size {
    /// Kinds.
    pub kinds: usize,
    /// Columns of the table.
    pub columns: usize,
    /// Texts in cells, whoever says them, and what hands say by sorting.
    pub texts: usize,
    /// Pairs of different numbers in one column, all columns together.
    pub pairs: usize,
    /// The bytes of the longest text.
    pub longest: usize,
    /// The bytes of all texts.
    pub bytes: usize,
    /// Keys.
    pub keys: usize,
    /// Questions of all keys.
    pub questions: usize,
    /// Pictures of all kinds.
    pub pictures: usize,
    /// Single specimens.
    pub specimens: usize,
}

impl Size {
    /// Counts it.
    pub fn of(collection: &Collection) -> Self {
        let mut size = Self { pairs: pairs(collection), ..Self::default() };
        // What a collection holds is taken apart, so that nothing new goes uncounted.
        let Collection { kinds, characters, cells, specimens, about, keys, .. } = collection;
        (size.kinds, size.columns, size.keys) = (kinds.len(), characters.len(), keys.len());
        for (source, text) in cells.texts() {
            size.texts += 1;
            size.add(source);
            size.add(text);
        }
        for Specimen { kind: _, fields, picture, measured } in specimens.values() {
            size.specimens += 1;
            size.pictures += usize::from(!picture.is_empty());
            fields.values().chain([picture]).for_each(|text| size.add(text));
            for Measurement { text, plus_minus, judged: _ } in measured.values() {
                size.add(text);
                size.add(plus_minus);
            }
        }
        for Kind { fields, pictures, drawing } in kinds.values() {
            size.pictures += pictures.len();
            let strokes = drawing.iter().flat_map(|drawing| &drawing.strokes);
            size.bytes += strokes.map(|one| size_of_val(one.points.as_slice())).sum::<usize>();
            fields.values().chain(pictures).for_each(|text| size.add(text));
        }
        for fields in characters.values() {
            fields.values().for_each(|text| size.add(text));
        }
        about.values().for_each(|text| size.add(text));
        for Drawn { name, wishes, kinds, never, questions, called } in keys.values() {
            size.questions += questions.len();
            size.add(name);
            wishes.values().chain(called.values()).for_each(|text| size.add(text));
            size.bytes += size_of::<KindId>() * kinds.as_ref().map_or(0, Vec::len);
            size.bytes += size_of::<CharacterId>() * never.len();
            for (at, Question { words, ask: _, sorted }) in questions {
                size.add(words);
                size.bytes += at.0.len();
                size.texts += A_PLACE * sorted.len();
            }
        }
        size
    }

    fn add(&mut self, text: &str) {
        self.longest = self.longest.max(text.len());
        self.bytes += text.len();
    }
}

/// A kind that a hand has put into a heap says as much, and is looked at as often, as so many
/// texts in cells.
const A_PLACE: usize = 4;

/// Between the end of one range and the beginning of another there may be a question of its
/// own: of so many different numbers in a column, half are ends.
fn pairs(collection: &Collection) -> usize {
    let mut numbers: BTreeMap<CharacterId, BTreeSet<&str>> = BTreeMap::new();
    let measured = crate::rows::ends(collection);
    let measured =
        measured.iter().flat_map(|((_, at), [least, most])| [(*at, *least), (*at, *most)]);
    for (column, text) in collection.cells.of_columns().chain(measured) {
        let written = text.split(|sign: char| !sign.is_ascii_digit() && sign != '.');
        let written = written.filter(|number| !number.is_empty());
        numbers.entry(column).or_default().extend(written);
    }
    numbers.values().map(|numbers| numbers.len() * numbers.len() / 4).sum()
}
