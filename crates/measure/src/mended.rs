//! Leaves after what a person said of them: told to be none, or to be one after all, cut in two,
//! joined, begun and ended elsewhere.
//!
//! From what was found in a picture and mends in their order to leaves that are measured anew, from
//! their outlines alone: the pixels are not needed again. A leaf that nobody mended stays as it
//! was found.

use std::cmp::Ordering;

use spinney_model::{
    Aside, CannotMend, LeafNote, LeftOut, MeasuredLeaf, MeasuredPicture, Mend, PictureScale,
};

use crate::leaf::{Marked, evenly};
use crate::pieces::Piece;
use crate::plus_minus;
use crate::polygon::{Point, area, between, distance, encloses, from};
use crate::seam;

/// So far beside a leaf a place may be said, of the square root of its area.
const BESIDE: f64 = 0.5;
/// A line between two leaves is carried on by so much of its length at both ends: nobody clicks
/// beside a leaf to a pixel.
const CARRIED_ON: f64 = 0.3;
/// So far from where that line crosses the outline the notches between both leaves are looked for, of the
/// way across.
const NEAR: f64 = 0.4;
/// So many points of a line are looked at first.
const FEW: usize = 400;
/// The smaller of two leaves has this share of the larger one, or more.
const SMALLER: f64 = 0.01;

/// What lies in a picture, as far as mends need it. Places are pixels.
#[derive(Clone, Debug)]
pub struct Lying {
    /// Its leaves.
    pub leaves: Vec<LyingLeaf>,
    /// What was left out: why, and the line around it.
    pub aside: Vec<Aside>,
    /// How long a pixel is in mm, where that is known.
    pub mm: Option<f64>,
    /// By what share a length may be off for how the scale is known ([`crate::unsure`]). A ruler in the picture takes
    /// nothing from it: the photograph stays as aslant.
    pub unsure: f64,
}

/// A leaf as it lies there.
#[derive(Clone, Debug)]
pub struct LyingLeaf {
    /// Its number.
    pub number: usize,
    /// Around it, of points about a pixel apart.
    pub outline: Vec<[f64; 2]>,
    /// What is to be said of it.
    pub notes: Vec<LeafNote>,
}

/// What lies there after mends.
#[derive(Clone, Debug)]
pub struct AfterMends {
    /// Its leaves, in the order of their numbers.
    pub leaves: Vec<LeafAfterMends>,
    /// What is still left out.
    pub aside: Vec<Aside>,
    /// What no longer is left out.
    pub taken: Vec<LeftOut>,
    /// How long a pixel is in mm, where a mend says so.
    pub mm: Option<f64>,
}

/// A leaf after mends.
#[derive(Clone, Debug)]
pub struct LeafAfterMends {
    /// Its number.
    pub number: usize,
    /// Of which leaves it is made, as they were found; none: of what was left out.
    pub of: Vec<usize>,
    /// It, measured anew; None: nobody mended it, and it is as it was found.
    pub mended: Option<MeasuredLeaf>,
    /// Whether its outline and its midrib line are as they were found.
    pub lies_as_found: bool,
}

/// The leaves of a picture after mends. Each keeps its number; new ones are counted on. Places are
/// pixels of the file's picture, also where each two by two of them became one.
///
/// **Guarantees**: without mends, what was found.
/// **Errors**: which mend, counted from 0, cannot be done, and why.
pub fn mended(
    found: &MeasuredPicture,
    mends: &[Mend],
) -> Result<MeasuredPicture, (usize, CannotMend)> {
    let lying = |leaf: &MeasuredLeaf| LyingLeaf {
        number: leaf.number,
        outline: leaf.lines.outline.clone(),
        notes: leaf.notes.clone(),
    };
    let leaves = found.leaves.iter().map(lying).collect();
    let (aside, mm) = (found.aside.clone(), found.scale.mm());
    let there: Vec<Mend> =
        mends.iter().map(|mend| if found.halved { mend.halved() } else { *mend }).collect();
    let unsure = plus_minus::unsure(found.scale);
    let after = mend(Lying { leaves, aside, mm, unsure }, &there)?;
    let as_found = |number| found.leaves.iter().find(|leaf| leaf.number == number).cloned();
    let leaf = |leaf: LeafAfterMends| leaf.mended.or_else(|| as_found(leaf.number));
    let leaves: Vec<MeasuredLeaf> = after.leaves.into_iter().filter_map(leaf).collect();
    let its = |number: &usize| leaves.iter().find(|leaf| leaf.number == *number);
    let is_apart = |number: &usize| {
        its(number).is_some_and(|leaf| leaf.notes.contains(&LeafNote::CutApart))
    };
    // Of what a person put right nothing is left to be said; of the others it is.
    let mut cut_apart = found.cut_apart.clone();
    cut_apart.iter_mut().for_each(|group| group.retain(|number| its(number).is_some()));
    cut_apart.retain(|group| group.len() > 1 && group.iter().any(is_apart));
    Ok(MeasuredPicture {
        cut_apart,
        leaves,
        left_out: without(&found.left_out, &after.taken),
        aside: after.aside,
        scale: after.mm.map_or(found.scale, |mm| PictureScale::OfRuler { dpi: 25.4 / mm }),
        mends: [found.mends.as_slice(), mends].concat(),
        size: found.size,
        halved: found.halved,
        like_a_rubbing: found.like_a_rubbing,
    })
}

/// How often what was left out, without what is taken for a leaf.
pub fn without(left_out: &[(LeftOut, usize)], taken: &[LeftOut]) -> Vec<(LeftOut, usize)> {
    let left = |(why, count): &(LeftOut, usize)| {
        let gone = taken.iter().filter(|taken| *taken == why).count();
        Some((*why, count.saturating_sub(gone))).filter(|(_, count)| *count > 0)
    };
    left_out.iter().filter_map(left).collect()
}

/// The same, for whoever keeps what was found in another way.
///
/// **Errors**: as for [`mended`].
pub fn mend(lying: Lying, mends: &[Mend]) -> Result<AfterMends, (usize, CannotMend)> {
    let last = lying.leaves.iter().map(|leaf| leaf.number).max();
    let cut = lying.leaves.iter().filter(|leaf| leaf.notes.contains(&LeafNote::CutApart));
    let seams = seam::between_all(&cut.map(|leaf| &leaf.outline[..]).collect::<Vec<_>>());
    let one = |leaf: LyingLeaf| {
        let cut = leaf.notes.contains(&LeafNote::CutApart);
        let seams = if cut { seams.clone() } else { Vec::new() };
        let marked =
            Marked { line: leaf.outline, notes: leaf.notes, seams, ..Marked::default() };
        One { number: leaf.number, of: vec![leaf.number], marked, mended: false }
    };
    let mut now = Now {
        leaves: lying.leaves.into_iter().map(one).collect(),
        next: last.unwrap_or(0) + 1,
        aside: lying.aside,
        taken: Vec::new(),
    };
    for (at, mend) in mends.iter().enumerate() {
        now.mend(*mend).map_err(|why| (at, why))?;
    }
    now.leaves.sort_by_key(|one| one.number);
    let said = mends.iter().rev().find_map(|mend| mend.pixel());
    let leaf = |one: One| {
        let One { number, of, marked, mended } = one;
        let anew = mended || said.is_some();
        let mended_leaf = match anew {
            false => None,
            true => {
                let piece = Piece::inside(&marked.line)?;
                let mut leaf = marked.leaf(&piece, said.or(lying.mm));
                plus_minus::widened(&mut leaf, lying.unsure);
                Some(MeasuredLeaf { number, ..leaf })
            }
        };
        Some(LeafAfterMends { number, of, mended: mended_leaf, lies_as_found: !mended })
    };
    let leaves = now.leaves.into_iter().filter_map(leaf).collect();
    Ok(AfterMends { leaves, aside: now.aside, taken: now.taken, mm: said })
}

/// A place inside of a closed line; None: it encloses nothing.
pub fn place_inside(outline: &[[f64; 2]]) -> Option<[f64; 2]> {
    let piece = Piece::inside(outline)?;
    // Of wide places the one in the middle.
    let widest = piece.runs.iter().map(|run| run.last - run.first).max()?;
    let middle = piece.down.0.midpoint(piece.down.1);
    let wide = piece.runs.iter().filter(|run| 4 * (run.last - run.first) >= 3 * widest);
    let run = wide.min_by_key(|run| run.y.abs_diff(middle))?;
    Some([f64::from(run.first.midpoint(run.last)), f64::from(run.y)])
}

/// The leaves while they are mended.
struct Now {
    leaves: Vec<One>,
    /// The next number.
    next: usize,
    aside: Vec<Aside>,
    taken: Vec<LeftOut>,
}

/// A leaf while it is mended.
#[derive(Clone)]
struct One {
    number: usize,
    /// Of which leaves it is made, as they were found.
    of: Vec<usize>,
    marked: Marked,
    mended: bool,
}

impl One {
    /// It, to be marked: what was guessed of it no longer holds.
    fn touched(&mut self) -> &mut Marked {
        if !self.mended {
            self.mended = true;
            let of_guesses = [LeafNote::BaseGuessed, LeafNote::TwoStalks, LeafNote::CutApart];
            self.marked.notes.retain(|note| !of_guesses.contains(note));
            self.marked.notes.push(LeafNote::Mended);
        }
        &mut self.marked
    }

    /// Another line around it: what was marked on the old one no longer holds.
    fn set_line(&mut self, line: Vec<Point>) {
        let Marked { notes, seams, .. } = std::mem::take(self.touched());
        self.marked = Marked { line, notes, seams, ..Marked::default() };
    }
}

impl Now {
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
                let halves = parted(&self.leaves[at].marked.line, between);
                let [larger, smaller] = halves.ok_or(CannotMend::NotAcross { leaf })?;
                let seam = seam::between_all(&[&larger, &smaller]);
                self.leaves[at].set_line(larger);
                self.leaves[at].marked.seams.extend(seam);
                let mut other = One { number: self.next, ..self.leaves[at].clone() };
                other.set_line(smaller);
                self.add(other);
            }
            Mend::PartOf { part, leaf } => {
                if part == leaf {
                    return Err(CannotMend::PartOfItself { leaf });
                }
                let (from, at) = (self.at(part)?, self.at(leaf)?);
                let lines = [at, from].map(|at| &self.leaves[at].marked.line);
                let line = joined(lines[0], lines[1]);
                self.leaves[at].set_line(line);
                let of = self.leaves[from].of.clone();
                self.leaves[at].of.extend(of);
                let seams = self.leaves[from].marked.seams.clone();
                self.leaves[at].marked.seams.extend(seams);
                self.leaves.remove(from);
            }
            Mend::Base { leaf, at } => self.near(leaf, at)?.base = Some(at),
            Mend::Tip { leaf, at } => self.near(leaf, at)?.tip = Some(at),
            Mend::Length { .. } if mend.pixel().is_none() => return Err(CannotMend::NoLength),
            Mend::Length { .. } => {}
        }
        Ok(())
    }

    /// The leaf, if a place is near it.
    fn near(&mut self, leaf: usize, place: Point) -> Result<&mut Marked, CannotMend> {
        let at = self.at(leaf)?;
        let line = &self.leaves[at].marked.line;
        let way = line.iter().map(|point| distance(*point, place)).fold(f64::MAX, f64::min);
        match encloses(line, place) || way <= BESIDE * area(line).sqrt() {
            true => Ok(self.leaves[at].touched()),
            false => Err(CannotMend::FarOff { leaf }),
        }
    }

    /// Takes what was left out at a place for a leaf.
    fn take(&mut self, place: Point) -> Result<(), CannotMend> {
        // A dark rim encloses all that lies on the page.
        let there =
            (0..self.aside.len()).filter(|at| encloses(&self.aside[*at].outline, place));
        let size = |at: &usize| area(&self.aside[*at].outline);
        let smallest = there.min_by(|one, other| size(one).total_cmp(&size(other)));
        let smallest = smallest.ok_or(CannotMend::NothingThere)?;
        if !self.aside[smallest].why.is_whole() {
            return Err(CannotMend::NotWhole);
        }
        let out = self.aside.remove(smallest);
        self.taken.push(out.why);
        let notes = match out.why {
            LeftOut::Faint => vec![LeafNote::FaintEdge],
            LeftOut::CutOff | LeftOut::OnStrip | LeftOut::Label | LeftOut::Speck => Vec::new(),
        };
        let marked = Marked { line: evenly(&out.outline), notes, ..Marked::default() };
        let mut one = One { number: self.next, of: Vec::new(), marked, mended: false };
        one.touched();
        self.add(one);
        Ok(())
    }

    fn add(&mut self, one: One) {
        self.leaves.push(one);
        self.next += 1;
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
    if !encloses(line, between(one, other, 0.5)) {
        return None;
    }
    let before = crossings.partition_point(|(share, _)| *share < 0.5);
    let (from, to) = (crossings.get(before.checked_sub(1)?)?.1, crossings.get(before)?.1);
    let (one, other) = neck(line, from, to);
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

/// Two closed lines as one. Where they share a stretch, because they were cut apart there, it is the line around both; or
/// else one that goes from one to the other and back where they are nearest.
fn joined(one: &[Point], other: &[Point]) -> Vec<Point> {
    let around = seam::shared(one, other).map(|shared| shared.around(one, other));
    if let Some(line) = around.filter(|line| seam::holds(line, one, other)) {
        return evenly(&line);
    }
    let apart = |(a, b): &(usize, usize)| distance(one[*a], other[*b]);
    let nearest = |pairs: &mut dyn Iterator<Item = (usize, usize)>| {
        pairs.min_by(|x, y| apart(x).total_cmp(&apart(y)))
    };
    // First with few points of each, then with all that are near those.
    let steps = [one, other].map(|line| line.len().div_ceil(FEW).max(1));
    let few = |line: &[Point], step: usize| (0..line.len()).step_by(step);
    let mut pairs = few(one, steps[0]).flat_map(|a| few(other, steps[1]).map(move |b| (a, b)));
    let Some((a, b)) = nearest(&mut pairs) else { return one.to_vec() };
    let near = |line: &[Point], at: usize, step: usize| {
        let count = line.len();
        (0..=2 * step.min(count / 2))
            .map(move |off| (at + count + off - step.min(count / 2)) % count)
    };
    let mut pairs =
        near(one, a, steps[0]).flat_map(|a| near(other, b, steps[1]).map(move |b| (a, b)));
    let (a, b) = nearest(&mut pairs).unwrap_or((a, b));
    let mut line = from(one, one[a]);
    line.extend(from(other, other[b]));
    evenly(&line)
}
