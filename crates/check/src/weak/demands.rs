//! All demands of a table laid out for going through them fast.
//!
//! From [`Clause`]s to rows of bits in one block, and a tally that counts in how many rows
//! each character stands. It does not search.

use super::clause::Clause;

/// Demands, those with the least choice first.
pub(super) struct Demands {
    words: usize,
    /// Demand after demand, the characters of which each adds a difference.
    rows: Vec<u64>,
    wanted: Vec<u32>,
    /// Demands with differences that need their governors asked about: mostly none.
    pub(super) joined: Vec<Clause>,
}

impl Demands {
    pub(super) fn of(clauses: &[Clause]) -> Self {
        let words = clauses.first().map_or(0, |clause| clause.alone.words().len());
        let mut demands =
            Self { words, rows: Vec::new(), wanted: Vec::new(), joined: Vec::new() };
        for clause in clauses {
            if clause.together.is_empty() {
                demands.rows.extend(clause.alone.words());
                demands.wanted.push(clause.wanted);
            } else {
                demands.joined.push(clause.clone());
            }
        }
        demands
    }

    /// How many there are without the joined ones.
    pub(super) fn plain(&self) -> usize {
        self.wanted.len()
    }

    /// How many differences one asks for.
    pub(super) fn wanted(&self, at: u32) -> u32 {
        self.wanted[at as usize]
    }

    /// The characters of one, as words of 64 bits.
    pub(super) fn row(&self, at: u32) -> &[u64] {
        &self.rows[at as usize * self.words..][..self.words]
    }

    /// Whether a character adds to it.
    pub(super) fn has(&self, at: u32, character: usize) -> bool {
        self.rows[at as usize * self.words + character / 64] >> (character % 64) & 1 == 1
    }
}

/// Counts in how many rows each bit stands, all bits of a word at once: plane p holds the p-th
/// binary digit of every count (as in Harley and Seal's population count, H. S. Warren,
/// *Hacker's Delight*, 2002, chapter 5).
pub(super) struct Tally {
    bits: usize,
    planes: Vec<Vec<u64>>,
}

impl Tally {
    pub(super) fn new(bits: usize) -> Self {
        Self { bits, planes: Vec::new() }
    }

    pub(super) fn add(&mut self, row: &[u64]) {
        for (word, bits) in row.iter().enumerate() {
            let mut carry = *bits;
            for plane in &mut self.planes {
                if carry == 0 {
                    break;
                }
                let digit = &mut plane[word];
                (*digit, carry) = (*digit ^ carry, *digit & carry);
            }
            if carry != 0 {
                let mut plane = vec![0; row.len()];
                plane[word] = carry;
                self.planes.push(plane);
            }
        }
    }

    pub(super) fn counts(&self) -> Vec<u64> {
        let digit = |plane: &Vec<u64>, bit: usize| plane[bit / 64] >> (bit % 64) & 1;
        (0..self.bits)
            .map(|bit| {
                let digits = self.planes.iter().enumerate();
                digits.map(|(place, plane)| digit(plane, bit) << place).sum()
            })
            .collect()
    }
}
