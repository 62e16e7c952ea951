//! The best cut between two kinds: the question "that much or more" with the fewest finds on the
//! wrong side, every kind counting alike.
//!
//! From the measurements of two kinds to one cut: midway between two neighbouring measurements,
//! as thresholds of a key are (`docs/KEY.md` 3). Of cuts that are equally good the one in the
//! widest gap, then the lowest. The kind with the smaller mean is below. How many would be on the
//! wrong side among finds that nobody has measured yet is estimated twice: as normal theory has it
//! with the mean and deviation of each, and by leaving out each find once, making the cut without
//! it and looking where it comes out (Lachenbruch and Mickey, *Technometrics* 10, 1968).

use spinney_model::{CharacterIx, Cut, Quantity, TaxonIx, Trust};

use super::{Measured, normal, values};

/// Of more finds of two kinds together nobody waits for leaving out each.
const MOST_LEFT_OUT: usize = 600;

/// A kind of which fewer were measured has no spread to speak of: with five there are a middle,
/// two hinges and two ends (Tukey 1977).
const FEWEST: usize = 5;

type OfKind<'m> = (TaxonIx, &'m Vec<Measured>);

/// The best cut; None: all measurements of both are the same.
pub(super) fn between(character: CharacterIx, kinds: [OfKind<'_>; 2]) -> Option<Cut> {
    let [low, high] = in_order(kinds, |(_, finds)| Sum::of(finds));
    let counts = Counts::of(low.1, high.1);
    let at = counts.best()?;
    let finds = [low.1.len(), high.1.len()];
    let wrong = counts.wrong(at);
    let few = finds[0] + finds[1] <= MOST_LEFT_OUT;
    let can_be_left_out = few && !finds.contains(&1);
    let nearest = |kept: i64| (kept - at).abs();
    let margin = low.1.iter().chain(high.1).map(|one| nearest(one.value)).min();
    let apart = wrong == [0, 0];
    let sides = [Side::of(low.1, at, 1.0), Side::of(high.1, at, -1.0)];
    Some(Cut {
        character,
        taxa: [low.0, high.0],
        at: Quantity::from_thousandths(at),
        finds,
        wrong,
        left_out: can_be_left_out.then(|| left_out(&counts)),
        normal: sides.each_ref().map(Side::share_beyond),
        margin: margin.filter(|_| apart).map(Quantity::from_thousandths),
        trust: sides.each_ref().map(Side::trust),
    })
}

/// Two things, that of the smaller mean first; of equal means they stay as they are.
fn in_order<T>(two: [T; 2], sum: impl Fn(&T) -> Sum) -> [T; 2] {
    let [one, other] = two;
    let swapped = sum(&other).is_below(sum(&one));
    if swapped { [other, one] } else { [one, other] }
}

/// The sum of so many values, whose means are compared without rounding.
#[derive(Clone, Copy)]
struct Sum {
    of: i128,
    count: i128,
}

impl Sum {
    fn of(finds: &[Measured]) -> Self {
        let of = finds.iter().map(|one| i128::from(one.value)).sum();
        Self { of, count: finds.len() as i128 }
    }

    fn is_below(self, other: Self) -> bool {
        self.of * other.count < other.of * self.count
    }
}

/// One kind and the cut, from its own side.
struct Side {
    finds: usize,
    /// So many standard deviations the cut is from the mean; None: one find has none, or all are
    /// alike.
    deviations: Option<f64>,
    /// Whether every find is on its own side, where all are alike.
    alike: Option<bool>,
}

impl Side {
    /// `sign`: 1 for the kind below, -1 for the one above.
    fn of(finds: &[Measured], at: i64, sign: f64) -> Self {
        let values = values(finds);
        let apart = sign * (at as f64 / 1000.0 - normal::mean(&values));
        let deviation = normal::deviation(&values);
        let spread = deviation.filter(|deviation| *deviation > 0.0);
        Self {
            finds: finds.len(),
            deviations: spread.map(|deviation| apart / deviation),
            alike: deviation.filter(|deviation| *deviation <= 0.0).map(|_| apart >= 0.0),
        }
    }

    fn share_beyond(&self) -> Option<f64> {
        let alike = |own: bool| if own { 0.0 } else { 1.0 };
        self.deviations.map(normal::share_above).or(self.alike.map(alike))
    }

    /// How many it would take, as far as that can be said.
    fn wanted(&self) -> usize {
        match (self.deviations, self.alike) {
            (Some(at), _) if normal::can_be_enough(at) => {
                normal::enough(self.finds, at).unwrap_or(FEWEST)
            }
            (None, Some(true)) => normal::enough_alike(),
            _ => FEWEST,
        }
    }

    fn trust(&self) -> Trust {
        let more = |all: usize| match all.max(FEWEST).saturating_sub(self.finds) {
            0 => Trust::Enough,
            more => Trust::More(more),
        };
        match (self.deviations, self.alike) {
            // Of so few nobody knows how they spread.
            _ if self.finds < FEWEST => more(FEWEST.max(self.wanted())),
            (Some(at), _) if !normal::can_be_enough(at) => Trust::Never,
            (Some(at), _) => match normal::enough(self.finds, at) {
                Some(all) => more(all),
                None => Trust::TooMany,
            },
            (None, Some(false)) => Trust::Never,
            (None, Some(true)) => more(normal::enough_alike()),
            (None, None) => more(FEWEST),
        }
    }
}

/// How many finds of each kind have each value, the smallest first.
#[derive(Clone)]
struct Counts {
    values: Vec<(i64, [usize; 2])>,
}

impl Counts {
    fn of(low: &[Measured], high: &[Measured]) -> Self {
        let mut all: Vec<(i64, usize)> = low.iter().map(|one| (one.value, 0)).collect();
        all.extend(high.iter().map(|one| (one.value, 1)));
        all.sort_unstable();
        let mut values: Vec<(i64, [usize; 2])> = Vec::new();
        for (value, kind) in all {
            if values.last().is_none_or(|(last, _)| *last != value) {
                values.push((value, [0, 0]));
            }
            values.last_mut().expect("one was just put there").1[kind] += 1;
        }
        Self { values }
    }

    fn finds(&self) -> [usize; 2] {
        let of = |kind: usize| self.values.iter().map(|(_, counts)| counts[kind]).sum();
        [of(0), of(1)]
    }

    /// The cut with the least sum of both shares on the wrong side.
    fn best(&self) -> Option<i64> {
        let all = self.finds();
        if all.contains(&0) {
            return None;
        }
        let mut below = [0, 0];
        let mut best: Option<(usize, i64, i64)> = None;
        for pair in self.values.windows(2) {
            let ((value, counts), (next, _)) = (pair[0], pair[1]);
            below = [below[0] + counts[0], below[1] + counts[1]];
            // Shares over one denominator, so that equally good is exact.
            let score = (all[0] - below[0]) * all[1] + below[1] * all[0];
            let gap = next - value;
            if best.is_none_or(|(least, widest, _)| {
                score < least || score == least && gap > widest
            }) {
                best = Some((score, gap, value));
            }
        }
        // Half a thousandth is rounded up (`docs/KEY.md` 3).
        best.map(|(_, gap, value)| value + gap.div_euclid(2) + gap.rem_euclid(2))
    }

    /// How many of each are on the wrong side of a cut.
    fn wrong(&self, at: i64) -> [usize; 2] {
        let mut wrong = [0, 0];
        for (value, counts) in &self.values {
            let kind = if *value >= at { 0 } else { 1 };
            wrong[kind] += counts[kind];
        }
        wrong
    }

    fn sum(&self, kind: usize) -> Sum {
        let of =
            self.values.iter().map(|(value, counts)| i128::from(*value) * counts[kind] as i128);
        Sum { of: of.sum(), count: self.finds()[kind] as i128 }
    }

    fn without(&self, at: usize, kind: usize) -> Self {
        let mut values = self.values.clone();
        values[at].1[kind] -= 1;
        values.retain(|(_, counts)| *counts != [0, 0]);
        Self { values }
    }

    fn turned(self) -> Self {
        let turned = |(value, [one, other]): (i64, [usize; 2])| (value, [other, one]);
        Self { values: self.values.into_iter().map(turned).collect() }
    }
}

/// How many of each come out on the wrong side of the cut that all others make. Where the others
/// are all the same there is none, and it counts as wrong.
fn left_out(counts: &Counts) -> [usize; 2] {
    let mut wrong = [0, 0];
    for (at, (value, of)) in counts.values.iter().enumerate() {
        for kind in (0..2).filter(|kind| of[*kind] > 0) {
            let others = counts.without(at, kind);
            let [low, high] = [others.sum(0), others.sum(1)];
            // Its kind may be the other way round without it.
            let swapped = high.is_below(low);
            let (others, is_low) =
                if swapped { (others.turned(), kind == 1) } else { (others, kind == 0) };
            let right = others.best().is_some_and(|cut| (*value < cut) == is_low);
            if !right {
                wrong[kind] += of[kind];
            }
        }
    }
    wrong
}
