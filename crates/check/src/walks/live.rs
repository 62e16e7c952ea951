//! Which characters still matter from each couplet on: forms that differ in no other are one.

use crate::question::Question;
use crate::tree::{To, Tree};
use crate::values::{Taken, Values};

/// Which characters are still asked, or govern what is asked, from each couplet on.
pub(super) struct Live {
    width: usize,
    bits: Vec<u64>,
}

impl Live {
    /// Works it out from the ends upwards.
    pub(super) fn of(
        values: &Values<'_>,
        tree: &Tree<'_>,
        questions: &[Option<Question>],
    ) -> Self {
        let width = values.matrix.characters().len().div_ceil(64).max(1);
        let mut live = Self { width, bits: vec![0; width * tree.to.len()] };
        for &couplet in tree.order.iter().rev() {
            let mut asked = questions[couplet].map(|question| question.character);
            while let Some(character) = asked {
                live.bits[couplet * width + character.0 / 64] |= 1 << (character.0 % 64);
                let governor = &values.matrix.character(character).governor;
                asked = governor.as_ref().map(|governor| governor.character);
            }
            for to in tree.to[couplet] {
                let To::Couplet(next) = to else { continue };
                for word in 0..width {
                    live.bits[couplet * width + word] |= live.bits[next * width + word];
                }
            }
        }
        live
    }

    /// What of the things taken still matters from a couplet on.
    pub(super) fn of_couplet(&self, couplet: usize, taken: &Taken) -> Taken {
        let bits = &self.bits[couplet * self.width..][..self.width];
        taken.iter().filter(|(c, _)| bits[c.0 / 64] >> (c.0 % 64) & 1 == 1).copied().collect()
    }
}
