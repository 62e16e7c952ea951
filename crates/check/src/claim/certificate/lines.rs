//! The lines of a proof, to be found by the heaps they speak of.
//!
//! From lines as a claim carries them, with the table they are about, to kinds as bits and what
//! is left of cells as numbers. Which of them hold is not looked at here.

use spinney_model::Certificate;

use super::board::{Board, Word};
use super::sum::Sum;

/// Cells of which something was taken, each with what is left of it, by their place among
/// [`Lefts`]: rising, a cell once.
pub(super) type Taken = u32;

/// What is left of cells somewhere, numbered.
pub(super) struct Lefts {
    /// By number: the cell and what is left of it.
    pub(super) all: Vec<(u32, Word)>,
    /// By cell: what is left of it, with its number.
    of_cell: Vec<Vec<(Word, Taken)>>,
}

impl Lefts {
    fn none(cells: usize) -> Self {
        Self { all: Vec::new(), of_cell: vec![Vec::new(); cells] }
    }

    /// The number of what is left of a cell; None: no line speaks of it.
    pub(super) fn find(&self, cell: u32, word: Word) -> Option<Taken> {
        let known = self.of_cell[cell as usize].iter().find(|(left, _)| *left == word);
        known.map(|(_, number)| *number)
    }

    pub(super) fn add(&mut self, cell: u32, word: Word) -> Taken {
        self.find(cell, word).unwrap_or_else(|| {
            let number = self.all.len() as Taken;
            self.all.push((cell, word));
            self.of_cell[cell as usize].push((word, number));
            number
        })
    }
}

/// All lines.
pub(super) struct Lines<const N: usize> {
    pub(super) lefts: Lefts,
    /// So many words hold the kinds of a heap.
    words: usize,
    /// Line for line how many cells something was taken from, the kinds (in halves of words), and
    /// these cells; then what it says, four quarters a number.
    written: Vec<u32>,
    /// Where each line begins.
    begins: Vec<u32>,
    /// Places for lines, more than there are: where the line begins, plus one, and a part of a
    /// number made from its heap. Each stands at the first free place from its number on.
    places: Vec<(u32, u32)>,
}

/// A line.
pub(super) struct Read<const N: usize> {
    pub(super) kinds: Vec<u64>,
    pub(super) taken: Vec<Taken>,
    pub(super) says: Sum<N>,
}

impl<const N: usize> Lines<N> {
    /// None: they speak of kinds or values that the table does not have, or of no such number.
    pub(super) fn read(board: &Board<'_>, certificate: &Certificate) -> Option<Self> {
        let many = certificate.lines.len();
        let mut lines = Self {
            lefts: Lefts::none(board.cells.len()),
            words: board.flows.len().div_ceil(64),
            written: Vec::with_capacity(16 * many),
            begins: Vec::with_capacity(many),
            places: vec![(0, 0); (many + many / 2 + 1).next_power_of_two()],
        };
        let mut remains = Vec::with_capacity(certificate.remains.len());
        for one in &certificate.remains {
            let (cell, word) = board.named(one.taxon, one.character, &one.values)?;
            // A cell of which everything is left need not be named.
            let whole = board.cells[cell as usize].full == word;
            remains.push((one.taxon.0, cell, lines.lefts.add(cell, word), whole));
        }
        let in_parts = InParts::of(board.whole, certificate.whole)?;
        let (mut query, mut cells) = (Query::default(), Vec::new());
        for line in &certificate.lines {
            let said: &[i128; N] = line.at_least.as_slice().try_into().ok()?;
            query.kinds.clear();
            query.kinds.resize(lines.words, 0);
            for taxon in &line.kinds {
                if taxon.0 >= board.flows.len() {
                    return None;
                }
                query.kinds[taxon.0 / 64] |= 1 << (taxon.0 % 64);
            }
            query.taken.clear();
            for place in &line.remains {
                let (taxon, _, number, whole) = *remains.get(*place)?;
                if query.kinds[taxon / 64] >> (taxon % 64) & 1 == 0 {
                    return None;
                }
                if !whole {
                    query.taken.push(number);
                }
            }
            query.taken.sort_unstable();
            cells.clear();
            cells.extend(line.remains.iter().map(|at| remains[*at].1));
            cells.sort_unstable();
            if cells.windows(2).any(|pair| pair[0] == pair[1]) {
                return None;
            }
            lines.begins.push(u32::try_from(lines.written.len()).ok()?);
            query.write();
            lines.written.extend_from_slice(&query.written);
            for said in said {
                let parts = in_parts.number(*said)?;
                lines.written.extend((0..4).map(|quarter| (parts >> (32 * quarter)) as u32));
            }
            lines.put(&query);
        }
        Some(lines)
    }

    /// Gives the line that was written last its place.
    fn put(&mut self, query: &Query) {
        let number = number(&query.written);
        let mut at = self.first_place(number);
        while self.places[at].0 != 0 {
            at = (at + 1) & (self.places.len() - 1);
        }
        let begins = self.begins.last().copied().unwrap_or(0);
        self.places[at] = (begins + 1, number as u32);
    }

    fn first_place(&self, number: u64) -> usize {
        (number >> 32) as usize & (self.places.len() - 1)
    }

    pub(super) fn len(&self) -> usize {
        self.begins.len()
    }

    /// A line, into room that is there.
    pub(super) fn line(&self, at: usize, read: &mut Read<N>) {
        let line = &self.written[self.begins[at] as usize..];
        let kinds = 1 + 2 * self.words;
        let taken = kinds + line[0] as usize;
        let halves = line[1..kinds].chunks_exact(2);
        read.kinds.clear();
        read.kinds.extend(halves.map(|half| u64::from(half[0]) | u64::from(half[1]) << 32));
        read.taken.clear();
        read.taken.extend_from_slice(&line[kinds..taken]);
        read.says = says(&line[taken..]);
    }

    /// What is said of a heap at most; nothing where no line is about it.
    pub(super) fn about(&self, query: &mut Query) -> Sum<N> {
        let mut said = Sum::default();
        query.write();
        let number = number(&query.written);
        let mut at = self.first_place(number);
        while let (Some(begins), part) = (self.places[at].0.checked_sub(1), self.places[at].1) {
            if part == number as u32 {
                let line = &self.written[begins as usize..];
                let many = query.written.len();
                if line[..many] == query.written {
                    said = said.max(says(&line[many..]));
                }
            }
            at = (at + 1) & (self.places.len() - 1);
        }
        said
    }
}

fn says<const N: usize>(quarters: &[u32]) -> Sum<N> {
    let mut said = Sum::default();
    for (part, quarters) in said.0.iter_mut().zip(quarters.chunks_exact(4)) {
        let quarters = quarters.iter().rev();
        *part = quarters.fold(0, |all, quarter| all << 32 | i128::from(*quarter));
    }
    said
}

/// A heap that lines may be about.
#[derive(Default)]
pub(super) struct Query {
    pub(super) kinds: Vec<u64>,
    /// Rising.
    pub(super) taken: Vec<Taken>,
    written: Vec<u32>,
}

impl Query {
    fn write(&mut self) {
        self.written.clear();
        self.written.push(self.taken.len() as u32);
        for word in &self.kinds {
            self.written.extend_from_slice(&[*word as u32, (word >> 32) as u32]);
        }
        self.written.extend_from_slice(&self.taken);
    }
}

/// A number that equal heaps share, and others hardly ever.
fn number(written: &[u32]) -> u64 {
    // Two to the 64 over the golden ratio (Knuth 1973): near numbers come to lie far apart.
    const SPREAD: u64 = 0x9e37_79b9_7f4a_7c15;
    let mix = |number: u64, word: &u32| {
        (number.rotate_left(23) ^ u64::from(*word)).wrapping_mul(SPREAD)
    };
    let all = written.iter().fold(0, mix);
    all ^ all >> 29
}

/// From numbers of a proof to parts of the common denominator.
struct InParts {
    whole: i128,
    denominator: i128,
    /// How many parts one of the proof's makes, where these are whole.
    each: Option<i128>,
}

impl InParts {
    fn of(whole: i128, denominator: i128) -> Option<Self> {
        let each = |denominator| (whole % denominator == 0).then(|| whole / denominator);
        (denominator > 0).then(|| Self { whole, denominator, each: each(denominator) })
    }

    /// None: it is no sum of flows, or more than any key takes.
    fn number(&self, said: i128) -> Option<i128> {
        let parts = match self.each {
            Some(each) => said.checked_mul(each)?,
            None => {
                let parts = said.checked_mul(self.whole)?;
                (parts % self.denominator == 0).then(|| parts / self.denominator)?
            }
        };
        (0..i128::MAX / 8).contains(&parts).then_some(parts)
    }
}
