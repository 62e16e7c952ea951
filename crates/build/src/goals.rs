//! What "best" means: goals in order, packed into one whole number.
//!
//! A goal that adds up over finds (effort, misreadings, new words, rulers) is a part of one
//! number: each part's unit is larger than all that later parts can add up to, so that
//! comparing the numbers compares the goals in order, exactly. The longest path, the most new
//! words on a question and the count of different words do not add up: they are limits, which
//! `goals_in_order` tightens. From goals to costs of questions; nothing is searched here.

use std::collections::BTreeSet;

use spinney_model::{Asked, Character, Difficulty, Goal, Instrument, Scale, TaxonIx};

use crate::cost::{self, Effort};

/// What adds up over finds.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(crate) enum Sum {
    Effort,
    Misread,
    NewWords,
    Rulers,
}

/// One goal of the number.
#[derive(Clone, Copy, Debug)]
pub(crate) struct Part {
    pub(crate) sum: Sum,
    /// What one step, millionth, word or ruler counts in the packed number.
    pub(crate) unit: Effort,
}

/// The goals in order, and the parts of the packed number.
#[derive(Clone, Debug)]
pub(crate) struct Goals {
    pub(crate) order: Vec<Goal>,
    pub(crate) parts: Vec<Part>,
}

/// The goals as wished, none twice; the least effort settles what they leave open.
pub(crate) fn in_order(wished: &[Goal]) -> Vec<Goal> {
    let mut order: Vec<Goal> = Vec::new();
    for goal in wished.iter().chain([&Goal::LeastEffort]) {
        if !order.contains(goal) {
            order.push(*goal);
        }
    }
    order
}

impl Goals {
    /// Packs the goals. `all` is the whole flow and `longest` an upper limit of the questions
    /// on a path. Goals that do not fit into exact numbers any more are given back.
    pub(crate) fn pack(wished: &[Goal], all: Effort, longest: Effort) -> (Self, Vec<Goal>) {
        let mut order = in_order(wished);
        let mut too_large = Vec::new();
        loop {
            if let Some(parts) = packed(&order, all, longest) {
                return (Self { order, parts }, too_large);
            }
            // Effort alone always fits: shares that are too large were put aside before.
            let last = order.iter().rposition(|goal| *goal != Goal::LeastEffort);
            let Some(last) = last else {
                let parts = vec![Part { sum: Sum::Effort, unit: 1 }];
                return (Self { order, parts }, too_large);
            };
            too_large.push(order.remove(last));
        }
    }

    /// The part of this sum in a packed number.
    pub(crate) fn part(&self, sum: Sum, packed: Effort) -> Effort {
        let mut rest = packed;
        for part in &self.parts {
            if part.sum == sum {
                return rest / part.unit;
            }
            rest %= part.unit;
        }
        0
    }

    /// The effort in a packed number.
    pub(crate) fn effort(&self, packed: Effort) -> Effort {
        self.part(Sum::Effort, packed)
    }

    /// Whether the least effort comes before everything that adds up.
    pub(crate) fn effort_first(&self) -> bool {
        self.order.first() == Some(&Goal::LeastEffort)
    }

    pub(crate) fn unit(&self, sum: Sum) -> Effort {
        self.parts.iter().find(|part| part.sum == sum).map_or(0, |part| part.unit)
    }

    /// The unit of the last part that stands before a goal; None where nothing adds up before.
    pub(crate) fn unit_before(&self, goal: Goal) -> Option<Effort> {
        let before = self.order.iter().take_while(|other| **other != goal);
        let sums = before.filter_map(|goal| sum_of(*goal)).count();
        sums.checked_sub(1).map(|last| self.parts[last].unit)
    }

    /// What a question about this character costs one find of any kind, new words apart; and
    /// what it costs more, or less, for single kinds.
    pub(crate) fn cost(&self, character: &Character) -> (Effort, Vec<(TaxonIx, Effort)>) {
        let mut cost = self.unit(Sum::Effort) * cost::steps(character);
        if character.instrument == Instrument::Ruler {
            cost += self.unit(Sum::Rulers);
        }
        let misread = self.unit(Sum::Misread);
        if misread == 0 {
            return (cost, Vec::new());
        }
        let usual = misread * misreading(read_right(character));
        let single = character
            .read_right_of
            .iter()
            .map(|(taxon, right)| (*taxon, misread * misreading(*right) - usual))
            .collect();
        (cost + usual, single)
    }
}

fn packed(order: &[Goal], all: Effort, longest: Effort) -> Option<Vec<Part>> {
    let mut parts = Vec::new();
    let mut unit: Effort = 1;
    for sum in order.iter().rev().filter_map(|goal| sum_of(*goal)) {
        parts.push(Part { sum, unit });
        let most = all.checked_mul(longest)?.checked_mul(dearest(sum))?;
        unit = unit.checked_mul(most.checked_add(1)?)?;
    }
    parts.reverse();
    unit.checked_mul(cost::SPARE).map(|_| parts)
}

pub(crate) fn sum_of(goal: Goal) -> Option<Sum> {
    match goal {
        Goal::LeastEffort => Some(Sum::Effort),
        Goal::MostRightEnds => Some(Sum::Misread),
        Goal::EvenTeaching => Some(Sum::NewWords),
        Goal::FewestRulers => Some(Sum::Rulers),
        Goal::ShortestLongestPath | Goal::FewestWords => None,
    }
}

fn dearest(sum: Sum) -> Effort {
    match sum {
        Sum::Effort => cost::DEAREST,
        Sum::Misread => misreading(0),
        Sum::NewWords => 1 << 16,
        Sum::Rulers => 1,
    }
}

/// How often a character is read right, in per cent. Where nobody counted or guessed: 95, 90
/// and 80 for easy, fair and hard ones (common practice, no source; a setting of the table).
pub(crate) fn read_right(character: &Character) -> u8 {
    character.read_right.unwrap_or(match character.difficulty {
        Difficulty::Easy => 95,
        Difficulty::Fair => 90,
        Difficulty::Hard => 80,
    })
}

/// −ln of a share of right readings, in millionths, rounded: a table, so that every machine
/// has the same. The least of a sum of these is the greatest product of shares. What is never
/// read right counts as right once in a hundred.
pub(crate) fn misreading(per_cent: u8) -> Effort {
    Effort::from(MILLIONTHS[usize::from(per_cent.min(100))])
}

/// `round(-ln(p / 100) * 1e6)` for p from 0 (as 1) to 100.
#[rustfmt::skip]
const MILLIONTHS: [u32; 101] = [
    4_605_170, 4_605_170, 3_912_023, 3_506_558, 3_218_876, 2_995_732, 2_813_411, 2_659_260,
    2_525_729, 2_407_946, 2_302_585, 2_207_275, 2_120_264, 2_040_221, 1_966_113, 1_897_120,
    1_832_581, 1_771_957, 1_714_798, 1_660_731, 1_609_438, 1_560_648, 1_514_128, 1_469_676,
    1_427_116, 1_386_294, 1_347_074, 1_309_333, 1_272_966, 1_237_874, 1_203_973, 1_171_183,
    1_139_434, 1_108_663, 1_078_810, 1_049_822, 1_021_651, 994_252, 967_584, 941_609,
    916_291, 891_598, 867_501, 843_970, 820_981, 798_508, 776_529, 755_023,
    733_969, 713_350, 693_147, 673_345, 653_926, 634_878, 616_186, 597_837,
    579_818, 562_119, 544_727, 527_633, 510_826, 494_296, 478_036, 462_035,
    446_287, 430_783, 415_515, 400_478, 385_662, 371_064, 356_675, 342_490,
    328_504, 314_711, 301_105, 287_682, 274_437, 261_365, 248_461, 235_722,
    223_144, 210_721, 198_451, 186_330, 174_353, 162_519, 150_823, 139_262,
    127_833, 116_534, 105_361, 94_311, 83_382, 72_571, 61_875, 51_293,
    40_822, 30_459, 20_203, 10_050, 0,
];

/// The words that must be known to answer a question: those that the table names for its
/// character, else the character's name and the states that are asked for. A word that two
/// columns ask for is one word.
pub(crate) fn words(character: &Character, yes: &Asked) -> BTreeSet<String> {
    if !character.terms.is_empty() {
        return character.terms.clone();
    }
    let mut words = BTreeSet::from([character.name.clone()]);
    if let (Scale::Words { states }, Asked::States(asked)) = (&character.scale, yes) {
        let named = asked.iter().map(|state| states[state.0].as_str());
        let plain = |state: &&str| !matches!(*state, "yes" | "no");
        words.extend(named.filter(plain).map(str::to_owned));
    }
    words
}

#[cfg(test)]
mod tests;
