//! Where an outline turns in and out: the sinuses along it and what stands out between them.
//!
//! From the line around a blade, from one side of its base to the other, to its sinuses, each with a
//! lid: the line from which it is looked at, which touches the edge on both sides of it. The line is
//! first thinned to what is larger than a step between pixels (Ramer 1972; Douglas and Peucker 1973);
//! where what is left turns the other way, there is a sinus. Small ones are taken away first,
//! and the lid of those beside them then reaches farther (persistence: Edelsbrunner, Letscher and
//! Zomorodian, *Topological persistence and simplification*, 2002, after whom it is done; the
//! measure of each is its depth below its lid).

use crate::polygon::{Point, distance, square};

/// What stands out less than this share of the sinuses beside it is a bend of one sinus.
const FLAT: f64 = 0.3;

/// A sinus: places are counted along the line.
#[derive(Clone, Copy, Debug)]
pub(crate) struct Sinus {
    /// Its innermost place.
    pub(crate) at: usize,
    /// Where its lid touches the edge before and behind it.
    pub(crate) lid: [usize; 2],
    /// How far the innermost place is below the lid.
    pub(crate) depth: f64,
    /// Its lid does not reach beyond these: what is behind them belongs to another one.
    within: [usize; 2],
}

/// The sinuses of a line, in their order.
pub(crate) struct Turns<'l> {
    pub(crate) line: &'l [Point],
    pub(crate) sinuses: Vec<Sinus>,
    /// Places of the line that are left of it.
    corners: Vec<usize>,
}

impl<'l> Turns<'l> {
    /// All sinuses deeper than so much of a line that goes around clockwise, as seen on a screen.
    pub(crate) fn of(line: &'l [Point], least: f64) -> Self {
        let corners = thinned(line, least / 2.0);
        let inwards = |three: &[usize]| {
            let [a, b, c] = [line[three[0]], line[three[1]], line[three[2]]];
            (b[0] - a[0]) * (c[1] - b[1]) - (b[1] - a[1]) * (c[0] - b[0]) < 0.0
        };
        let mut places: Vec<usize> = Vec::new();
        let (mut outwards, mut run) = (false, None);
        for three in corners.windows(3) {
            match inwards(three) {
                // What turns in right behind the base belongs to the base.
                true if outwards => run = run.or(Some(three[1])),
                true => {}
                false => {
                    places.extend(run.take());
                    outwards = true;
                }
            }
        }
        let within = [0, line.len().saturating_sub(1)];
        let blank = |at| Sinus { at, lid: [at, at], depth: 0.0, within };
        let mut found =
            Self { line, sinuses: places.into_iter().map(blank).collect(), corners };
        (0..found.sinuses.len()).for_each(|at| found.look_again(at));
        found.keep(|_, sinus| sinus.depth >= least);
        found
    }

    /// Takes sinuses away that are not kept, the shallowest first, until all that are left are, and
    /// something stands out between any two.
    pub(crate) fn keep(&mut self, kept: impl Fn(&[Point], &Sinus) -> bool) {
        loop {
            let out = self.sinuses.iter().enumerate().filter(|(_, it)| !kept(self.line, it));
            let least = out.min_by(|a, b| a.1.depth.total_cmp(&b.1.depth)).map(|(at, _)| at);
            match least.or_else(|| self.beside_flat()) {
                Some(at) => self.take_away(at, least.is_none()),
                None => return,
            }
        }
    }

    /// Takes one away, and the lids of those beside it reach farther. One that is `part_of` the deeper one
    /// beside it leaves the other one its lid: it would find the same place again and be
    /// taken away in its turn, and so would a whole row of teeth.
    fn take_away(&mut self, at: usize, part_of: bool) {
        let gone = self.sinuses.remove(at);
        let depth =
            |at: Option<usize>| at.and_then(|at| self.sinuses.get(at)).map(|it| it.depth);
        let (before, behind) = (at.checked_sub(1), Some(at));
        let of_before = depth(before) > depth(behind);
        let beside = [(before, 1, of_before), (behind, 0, !of_before)];
        for (at, end, is_whole) in beside {
            let Some((at, it)) = at.and_then(|at| Some((at, self.sinuses.get_mut(at)?))) else {
                continue;
            };
            if part_of && !is_whole {
                it.within[end] = gone.at;
            } else {
                it.within[end] = gone.within[end];
                self.look_again(at);
            }
        }
    }

    /// Takes the shallowest away until there are so many.
    pub(crate) fn keep_deepest(&mut self, count: usize) {
        while self.sinuses.len() > count {
            let mut depths: Vec<f64> = self.sinuses.iter().map(|sinus| sinus.depth).collect();
            depths.sort_by(f64::total_cmp);
            let least = depths[0];
            self.keep(|_, sinus| sinus.depth > least);
        }
    }

    /// The shallower of two sinuses between which next to nothing stands out: they are one.
    fn beside_flat(&self) -> Option<usize> {
        let tips = self.tips();
        (1..self.sinuses.len()).find_map(|at| {
            let (before, behind) = (self.sinuses[at - 1], self.sinuses[at]);
            let foot = [self.line[before.at], self.line[behind.at]];
            let stands_out = beside(self.line[tips[at]], foot);
            let shallower = if before.depth < behind.depth { at - 1 } else { at };
            (stands_out < FLAT * self.sinuses[shallower].depth).then_some(shallower)
        })
    }

    /// Finds the lid of a sinus between the two beside it, and its innermost place below that.
    fn look_again(&mut self, at: usize) {
        let Sinus { at: middle, within, .. } = self.sinuses[at];
        let before = at.checked_sub(1).map_or(0, |at| self.sinuses[at].at).max(within[0]);
        let behind = self.sinuses.get(at + 1).map_or(within[1], |it| it.at.min(within[1]));
        let from = self.corners.partition_point(|corner| *corner < before);
        let to = self.corners.partition_point(|corner| *corner <= behind);
        let Some([first, second]) = self.lid(&self.corners[from..to], middle) else { return };
        let below = |place: usize| below(self.line, [first, second], place);
        let deepest = (first..=second).max_by(|a, b| below(*a).total_cmp(&below(*b)));
        if let Some(deepest) = deepest {
            self.sinuses[at] =
                Sinus { at: deepest, lid: [first, second], depth: below(deepest), within };
        }
    }

    /// The side of the convex hull of some corners that goes over a place.
    fn lid(&self, corners: &[usize], over: usize) -> Option<[usize; 2]> {
        let mut chain: Vec<usize> = Vec::new();
        for corner in corners {
            while let [.., a, b] = chain[..] {
                // b lies below the line from a on.
                if below(self.line, [a, *corner], b) < 0.0 {
                    break;
                }
                chain.pop();
            }
            chain.push(*corner);
        }
        let behind = chain.iter().position(|corner| *corner > over)?;
        Some([chain[behind.checked_sub(1)?], chain[behind]])
    }

    /// The places where what stands out between sinuses reaches farthest from its foot, one more
    /// than there are sinuses.
    pub(crate) fn tips(&self) -> Vec<usize> {
        let last = self.line.len() - 1;
        let mut ends = vec![0];
        ends.extend(self.sinuses.iter().map(|sinus| sinus.at));
        ends.push(last);
        let tip = |ends: &[usize]| {
            let foot = [self.line[ends[0]], self.line[ends[1]]];
            let far = |at: &usize| beside(self.line[*at], foot);
            (ends[0]..=ends[1]).max_by(|a, b| far(a).total_cmp(&far(b))).unwrap_or(ends[0])
        };
        ends.windows(2).map(tip).collect()
    }
}

/// How far a place is below the line between two others, inside of the leaf.
fn below(line: &[Point], [from, to]: [usize; 2], at: usize) -> f64 {
    let (a, b, point) = (line[from], line[to], line[at]);
    let way = distance(a, b).max(1e-9);
    ((b[0] - a[0]) * (point[1] - a[1]) - (b[1] - a[1]) * (point[0] - a[0])) / way
}

/// How far a point is from the nearest one between two others.
pub(crate) fn beside(point: Point, two: [Point; 2]) -> f64 {
    beside_squared(point, two).sqrt()
}

/// The same squared.
pub(crate) fn beside_squared(point: Point, [a, b]: [Point; 2]) -> f64 {
    let along = [b[0] - a[0], b[1] - a[1]];
    let whole = along[0] * along[0] + along[1] * along[1];
    let part = (point[0] - a[0]) * along[0] + (point[1] - a[1]) * along[1];
    let part = if whole > 0.0 { (part / whole).clamp(0.0, 1.0) } else { 0.0 };
    square(point, [a[0] + part * along[0], a[1] + part * along[1]])
}

/// The corners of a line that is nowhere farther than so much from it.
fn thinned(line: &[Point], off: f64) -> Vec<usize> {
    let Some(last) = line.len().checked_sub(1) else { return Vec::new() };
    let mut kept = vec![0];
    let mut open = vec![(0, last)];
    while let Some((from, to)) = open.pop() {
        let ends = [line[from], line[to]];
        let far = |at: &usize| beside(line[*at], ends);
        let farthest = (from + 1..to).max_by(|a, b| far(a).total_cmp(&far(b)));
        match farthest {
            Some(at) if far(&at) > off => open.extend([(at, to), (from, at)]),
            _ => kept.push(to),
        }
    }
    kept
}

#[cfg(test)]
mod tests;
