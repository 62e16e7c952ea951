//! Leaves after what a person said of them: told to be none, or to be one after all, cut in two,
//! joined, begun and ended elsewhere.
//!
//! From what was found in a picture and mends in their order to leaves that are measured anew, from
//! their outlines alone: the pixels are not needed again. A leaf that nobody mended stays as it
//! was found.

use std::cmp::Ordering;

use spinney_model::{CannotMend, LeafNote, MeasuredLeaf, MeasuredPicture, Mend};

use crate::leaf::{Marked, evenly};
use crate::pieces::Piece;
use crate::polygon::{Point, area, between, distance, encloses, from};

/// So far beside a leaf a place may be said, of the square root of its area.
const BESIDE: f64 = 0.5;
/// A line between two leaves is carried on by so much of its length at both ends: nobody clicks
/// beside a leaf to a pixel.
const CARRIED_ON: f64 = 0.3;
/// So far from where that line crosses the outline the notches between both leaves are looked for, of the
/// way across.
const NEAR: f64 = 0.4;
/// The smaller of two leaves has this share of the larger one, or more.
const SMALLER: f64 = 0.01;

/// The leaves of a picture after mends. Each keeps its number; new ones are counted on.
///
/// **Guarantees**: without mends, what was found.
/// **Errors**: which mend, counted from 0, cannot be done, and why.
pub fn mended(
    found: &MeasuredPicture,
    mends: &[Mend],
) -> Result<MeasuredPicture, (usize, CannotMend)> {
    let mut now = Now::of(found);
    for (at, mend) in mends.iter().enumerate() {
        now.mend(*mend).map_err(|why| (at, why))?;
    }
    let mm = found.scale.mm();
    let leaf = |one: One| {
        let marked = match one.is {
            Is::Found(leaf) => return Some(leaf),
            Is::Mended(marked) => marked,
        };
        let piece = Piece::inside(&marked.line)?;
        Some(MeasuredLeaf { number: one.number, ..marked.leaf(&piece, mm) })
    };
    let leaves = now.leaves.into_iter().filter_map(leaf).collect();
    let mends = [found.mends.as_slice(), mends].concat();
    Ok(MeasuredPicture { leaves, mends, ..now.rest })
}

/// The leaves while they are mended.
struct Now {
    leaves: Vec<One>,
    /// The next number.
    next: usize,
    /// All that is no leaf.
    rest: MeasuredPicture,
}

/// A leaf while it is mended.
struct One {
    number: usize,
    is: Is,
}

enum Is {
    Found(MeasuredLeaf),
    Mended(Marked),
}

impl One {
    fn line(&self) -> &[Point] {
        match &self.is {
            Is::Found(leaf) => &leaf.lines.outline,
            Is::Mended(marked) => &marked.line,
        }
    }

    /// It, to be marked: what was guessed of it no longer holds.
    fn marked(&mut self) -> &mut Marked {
        if let Is::Found(leaf) = &self.is {
            let kept = |note: &LeafNote| *note != LeafNote::BaseGuessed;
            let mut notes: Vec<_> = leaf.notes.iter().copied().filter(kept).collect();
            notes.push(LeafNote::Mended);
            let line = leaf.lines.outline.clone();
            self.is = Is::Mended(Marked { line, notes, ..Marked::default() });
        }
        match &mut self.is {
            Is::Mended(marked) => marked,
            Is::Found(_) => unreachable!("it was made so above"),
        }
    }
}

impl Now {
    fn of(found: &MeasuredPicture) -> Self {
        let one =
            |leaf: &MeasuredLeaf| One { number: leaf.number, is: Is::Found(leaf.clone()) };
        let last = found.leaves.iter().map(|leaf| leaf.number).max();
        Self {
            leaves: found.leaves.iter().map(one).collect(),
            next: last.unwrap_or(0) + 1,
            rest: MeasuredPicture { leaves: Vec::new(), ..found.clone() },
        }
    }

    fn at(&self, leaf: usize) -> Result<usize, CannotMend> {
        let at = self.leaves.iter().position(|one| one.number == leaf);
        at.ok_or(CannotMend::NoSuchLeaf { leaf })
    }

    fn mend(&mut self, mend: Mend) -> Result<(), CannotMend> {
        match mend {
            Mend::NoLeaf { leaf } => {
                let at = self.at(leaf)?;
                self.leaves.remove(at);
            }
            Mend::ALeaf { at } => self.take(at)?,
            Mend::Two { leaf, between } => {
                let at = self.at(leaf)?;
                let halves = parted(self.leaves[at].line(), between);
                let [larger, smaller] = halves.ok_or(CannotMend::NotAcross { leaf })?;
                *self.leaves[at].marked() = Marked { line: larger, ..self.leaves[at].bare() };
                let is = Is::Mended(Marked { line: smaller, ..self.leaves[at].bare() });
                self.add(is);
            }
            Mend::PartOf { part, leaf } => {
                if part == leaf {
                    return Err(CannotMend::PartOfItself { leaf });
                }
                let (from, at) = (self.at(part)?, self.at(leaf)?);
                let line = joined(self.leaves[at].line(), self.leaves[from].line());
                *self.leaves[at].marked() = Marked { line, ..self.leaves[at].bare() };
                self.leaves.remove(from);
            }
            Mend::Base { leaf, at } => self.near(leaf, at)?.base = Some(at),
            Mend::Tip { leaf, at } => self.near(leaf, at)?.tip = Some(at),
        }
        Ok(())
    }

    /// The leaf, if a place is near it.
    fn near(&mut self, leaf: usize, place: Point) -> Result<&mut Marked, CannotMend> {
        let at = self.at(leaf)?;
        let line = self.leaves[at].line();
        let way = line.iter().map(|point| distance(*point, place)).fold(f64::MAX, f64::min);
        match encloses(line, place) || way <= BESIDE * area(line).sqrt() {
            true => Ok(self.leaves[at].marked()),
            false => Err(CannotMend::FarOff { leaf }),
        }
    }

    /// Takes what was left out at a place for a leaf.
    fn take(&mut self, place: Point) -> Result<(), CannotMend> {
        let there = self.rest.aside.iter().position(|out| encloses(&out.outline, place));
        let out = self.rest.aside.remove(there.ok_or(CannotMend::NothingThere)?);
        if let Some((_, count)) = self.rest.left_out.iter_mut().find(|(why, _)| *why == out.why)
        {
            *count -= 1;
        }
        self.rest.left_out.retain(|(_, count)| *count > 0);
        let notes = vec![LeafNote::Mended];
        self.add(Is::Mended(Marked { line: out.outline, notes, ..Marked::default() }));
        Ok(())
    }

    fn add(&mut self, is: Is) {
        self.leaves.push(One { number: self.next, is });
        self.next += 1;
    }
}

impl One {
    /// What is to be said of a mended leaf, without its line and its marks.
    fn bare(&mut self) -> Marked {
        let notes = self.marked().notes.clone();
        Marked { notes, ..Marked::default() }
    }
}

/// The two parts of a closed line, the larger one first; None: the other line does not go right
/// across, with its middle inside.
fn parted(line: &[Point], [one, other]: [Point; 2]) -> Option<[Vec<Point>; 2]> {
    let (first, last) =
        (between(one, other, -CARRIED_ON), between(one, other, 1.0 + CARRIED_ON));
    let along = [last[0] - first[0], last[1] - first[1]];
    let mut crossings: Vec<(f64, usize)> = Vec::new();
    for (at, a) in line.iter().enumerate() {
        let b = line[(at + 1) % line.len()];
        let side = [b[0] - a[0], b[1] - a[1]];
        let whole = along[0] * side[1] - along[1] * side[0];
        let off = [a[0] - first[0], a[1] - first[1]];
        let share = (off[0] * side[1] - off[1] * side[0]) / whole;
        let part = (off[0] * along[1] - off[1] * along[0]) / whole;
        if (0.0..=1.0).contains(&share) && (0.0..1.0).contains(&part) {
            crossings.push((share, at));
        }
    }
    crossings.sort_by(|a, b| a.0.total_cmp(&b.0));
    let before = crossings.partition_point(|(share, _)| *share < 0.5);
    if before % 2 == 0 {
        return None;
    }
    let (one, other) = neck(line, crossings.get(before - 1)?.1, crossings.get(before)?.1);
    let (from, to) = (one.min(other), one.max(other));
    let inner = line[from..=to].to_vec();
    let outer = [&line[to..], &line[..=from]].concat();
    let (larger, smaller) = match area(&inner).total_cmp(&area(&outer)) {
        Ordering::Less => (outer, inner),
        Ordering::Equal | Ordering::Greater => (inner, outer),
    };
    let large_enough = area(&smaller) >= SMALLER * area(&larger);
    large_enough.then(|| [evenly(&larger), evenly(&smaller)])
}

/// Where two leaves hang together by least, near two places of the line around both: between the
/// notches on their two sides. A line beside them would leave one leaf a splinter of the other.
fn neck(line: &[Point], one: usize, other: usize) -> (usize, usize) {
    let reach = ((NEAR * distance(line[one], line[other])) as usize).min(line.len() / 8).max(1);
    let around = |place: usize| {
        (0..=2 * reach).map(move |at| (place + line.len() + at - reach) % line.len())
    };
    let pairs = around(one).flat_map(|a| around(other).map(move |b| (a, b)));
    let apart = |(a, b): &(usize, usize)| distance(line[*a], line[*b]);
    let pairs = pairs.filter(|(a, b)| a != b);
    pairs.min_by(|x, y| apart(x).total_cmp(&apart(y))).unwrap_or((one, other))
}

/// Two closed lines as one, that goes from one to the other and back where they are nearest.
fn joined(one: &[Point], other: &[Point]) -> Vec<Point> {
    let pairs = one.iter().flat_map(|a| other.iter().map(move |b| (*a, *b)));
    let nearest = pairs.min_by(|x, y| distance(x.0, x.1).total_cmp(&distance(y.0, y.1)));
    let Some((a, b)) = nearest else { return one.to_vec() };
    let mut line = from(one, a);
    line.extend(from(other, b));
    evenly(&line)
}
