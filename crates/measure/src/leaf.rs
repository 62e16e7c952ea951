//! The leaves of a picture: which pieces are leaves, each cut apart and measured.
//!
//! From a plane of contrasts to leaves with their measures and lines, and to what is left out:
//! specks, labels, and what goes over the edge of the picture.

use std::cmp::Reverse;
use std::collections::BTreeMap;
use std::f64::consts::PI;

use spinney_model::{
    Aside, LeafLines, LeafNote, LeftOut, Measurand, Measure, MeasuredLeaf, NotMeasured,
};

use crate::ground::{self, Contrast, WHOLE};
use crate::pieces::{Piece, pieces};
use crate::polygon::{
    Point, area, farthest_apart, hull, perimeter, smallest_rectangle, smoothed, spaced,
};
use crate::{axis, form, fourier, outline, plus_minus, polygon, seam, stalk, touching};

/// Smaller pieces are dust and writing, in mm².
const SPECK: f64 = 12.0;
/// The same as a share of the largest piece, and of the picture where there is no scale.
const SPECK_OF_LARGEST: f64 = 1.0 / 200.0;
const SPECK_OF_PICTURE: f64 = 1.0 / 8000.0;
/// The fewest pixels in which a leaf has a form.
const FEWEST: usize = 400;
/// A piece that fills so much of the smallest rectangle around it is a label.
const LABEL: f64 = 0.955;
/// Pixels around a piece in which its edge may lie, and how many times as many where it does not.
const AROUND: u32 = 6;
const FARTHER: u32 = 8;
/// How much of a leaf may be holes before it is said.
const HOLES: f64 = 0.004;
/// Below this contrast a leaf is said to be faint.
const FAINT: f64 = 0.22;

/// So many pixels behind its base a blade makes a notch there.
const NOTCH: f64 = 3.0;

/// A faint thing fills so much of the hull around it, or is none.
const FILLED: f64 = 0.3;

/// So many of what was left out are kept with their outlines, the largest: a person may take them for
/// leaves.
const ASIDE: usize = 26;

/// What was found in a picture.
pub(crate) struct Found {
    pub(crate) leaves: Vec<MeasuredLeaf>,
    pub(crate) left_out: Vec<LeftOut>,
    pub(crate) aside: Vec<Aside>,
}

/// Finds and measures; `mm` is the length of a pixel, `strip` the corners of a scale strip that was painted over.
pub(crate) fn found(
    contrast: &Contrast,
    level: u16,
    mm: Option<f64>,
    strip: Option<&[Point; 4]>,
) -> Found {
    let whole = ((0, contrast.width as u32 - 1), (0, contrast.height as u32 - 1));
    let all = pieces(contrast, whole.0, whole.1, level);
    let largest = all.iter().map(|piece| piece.pixels).max().unwrap_or(0) as f64;
    let picture = (contrast.width * contrast.height) as f64;
    let least = mm.map_or(SPECK_OF_PICTURE * picture, |mm| SPECK / (mm * mm));
    let least = least.max(SPECK_OF_LARGEST * largest).max(FEWEST as f64);
    let (large, mut specks): (Vec<&Piece>, Vec<&Piece>) =
        all.iter().partition(|piece| piece.pixels as f64 >= least);
    let mut found = Found {
        leaves: Vec::new(),
        left_out: vec![LeftOut::Speck; specks.len()],
        aside: Vec::new(),
    };
    // At a level of its own a piece may have grown into one that was found apart.
    let mut seen: Vec<Piece> = Vec::new();
    let is_seen = |seen: &[Piece], piece: &Piece| {
        piece
            .runs
            .first()
            .is_some_and(|run| seen.iter().any(|whole| whole.has(run.first, run.y)))
    };
    for piece in large {
        if is_seen(&seen, piece) {
            continue;
        }
        let outlined = Outlined::of(contrast, piece, level);
        seen.push(outlined.piece.clone());
        match outlined.left_out(contrast, strip) {
            None => found.take(outlined, mm),
            Some(why) => {
                found.left_out.push(why);
                found.aside.push(Aside { why, outline: outlined.line });
            }
        }
    }
    found.look_for_faint(contrast, level, least, &seen);
    let size = |aside: &Aside| area(&aside.outline);
    found.aside.sort_by(|one, other| size(other).total_cmp(&size(one)));
    found.aside.truncate(ASIDE);
    specks.retain(|piece| piece.pixels >= FEWEST && !is_seen(&seen, piece));
    specks.sort_by_key(|piece| Reverse(piece.pixels));
    for piece in specks.into_iter().take(ASIDE - found.aside.len()) {
        let outline = Outlined::of(contrast, piece, level).line;
        found.aside.push(Aside { why: LeftOut::Speck, outline });
    }
    found
}

impl Found {
    /// Leaves out, to be taken by a person, what stands out less than leaves do: it has no pixel of what
    /// was seen, as a leaf's shadow has, is as large as a leaf and does not go over the edge.
    fn look_for_faint(&mut self, contrast: &Contrast, level: u16, least: f64, seen: &[Piece]) {
        let Some(faint) = ground::faint_level(contrast, level) else { return };
        let (right, bottom) = (contrast.width as u32 - 1, contrast.height as u32 - 1);
        for piece in pieces(contrast, (0, right), (0, bottom), faint) {
            let (across, down) = (piece.across, piece.down);
            let inside = across.0 > 0 && down.0 > 0 && across.1 < right && down.1 < bottom;
            if !inside || (piece.pixels as f64) < least {
                continue;
            }
            let has_first = |one: &Piece, other: &Piece| {
                other.runs.first().is_some_and(|run| one.has(run.first, run.y))
            };
            let is_seen = |whole: &Piece| has_first(&piece, whole) || has_first(whole, &piece);
            if seen.iter().any(is_seen) {
                continue;
            }
            let outline = Outlined::of(contrast, &piece, faint).line;
            // Grain that hangs together here and there fills little of what it lies in.
            if area(&outline) < FILLED * area(&hull(&outline)) {
                continue;
            }
            self.left_out.push(LeftOut::Faint);
            self.aside.push(Aside { why: LeftOut::Faint, outline });
        }
    }

    /// Takes a piece for a leaf, or for several that touch. Until they are numbered such leaves have the
    /// number of their group, and the others 0.
    fn take(&mut self, outlined: Outlined, mm: Option<f64>) {
        let notes = outlined.notes.clone();
        let lines = touching::apart(&outlined.piece, &outlined.line);
        let leaf = outlined.leaf(mm);
        let parts = lines.and_then(|lines| parts(lines, &notes, &leaf, mm));
        let Some(mut parts) = parts else { return self.leaves.push(leaf) };
        let group = 1 + self.leaves.iter().map(|leaf| leaf.number).max().unwrap_or(0);
        parts.iter_mut().for_each(|leaf| leaf.number = group);
        self.leaves.append(&mut parts);
    }
}

/// The leaves within these lines, into which a piece would be cut; None: one of them is no clear leaf.
fn parts(
    lines: Vec<Vec<Point>>,
    notes: &[LeafNote],
    whole: &MeasuredLeaf,
    mm: Option<f64>,
) -> Option<Vec<MeasuredLeaf>> {
    // A compound leaf has more leaflets than leaves that touch have stalks.
    let thick = whole.form.leaflets.as_ref().map_or(0, |leaflets| leaflets.middles.len());
    if thick > lines.len() {
        return None;
    }
    let around: Vec<&[Point]> = lines.iter().map(Vec::as_slice).collect();
    let seams = seam::between_all(&around);
    let leaf = |line: Vec<Point>| {
        let piece = Piece::inside(&line)?;
        let notes = [notes, &[LeafNote::CutApart]].concat();
        let leaf = Marked { line, notes, seams: seams.clone(), ..Marked::default() };
        let leaf = leaf.leaf(&piece, mm);
        let doubtful = [LeafNote::BaseGuessed, LeafNote::TwoStalks];
        let clear = !leaf.notes.iter().any(|note| doubtful.contains(note));
        let unlobed = leaf.form.lobes.as_ref().is_some_and(|lobes| lobes.sinuses.is_none());
        (clear && unlobed).then_some(leaf)
    };
    lines.into_iter().map(leaf).collect()
}

/// A piece with the line around it.
struct Outlined {
    piece: Piece,
    line: Vec<Point>,
    /// Whether it fills a rectangle.
    straight: bool,
    notes: Vec<LeafNote>,
}

impl Outlined {
    fn of(contrast: &Contrast, piece: &Piece, level: u16) -> Self {
        let middle = middle(contrast, piece);
        let own = (middle / 2).max(level / 2);
        // The level goes with the piece: only at that one does the line around it close.
        let (piece, level) = match again(contrast, piece, own) {
            Some(piece) => (piece, own),
            None => (piece.clone(), level),
        };
        let rough = outline::outline(contrast, &piece, level);
        let around = outline::between(contrast, &evenly(&rough), middle);
        let mut notes = Vec::new();
        if area(&rough) - piece.pixels as f64 > HOLES * area(&rough) {
            notes.push(LeafNote::Holes);
        }
        if f64::from(middle) < FAINT * WHOLE {
            notes.push(LeafNote::FaintEdge);
        }
        let straight = area(&around) > LABEL * smallest_rectangle(&hull(&around));
        Self { piece, line: smoothed(&around, 1.0), straight, notes }
    }

    /// Why it is no leaf to be measured, if it is none.
    fn left_out(&self, contrast: &Contrast, strip: Option<&[Point; 4]>) -> Option<LeftOut> {
        let (right, bottom) = (contrast.width as u32 - 1, contrast.height as u32 - 1);
        let (across, down) = (self.piece.across, self.piece.down);
        if across.0 == 0 || down.0 == 0 || across.1 == right || down.1 == bottom {
            return Some(LeftOut::CutOff);
        }
        let on = |strip: &&[Point; 4]| {
            self.line.iter().any(|point| polygon::encloses(*strip, *point))
        };
        if strip.filter(on).is_some() {
            return Some(LeftOut::OnStrip);
        }
        self.straight.then_some(LeftOut::Label)
    }

    fn leaf(self, mm: Option<f64>) -> MeasuredLeaf {
        let marked = Marked { line: self.line, notes: self.notes, ..Marked::default() };
        marked.leaf(&self.piece, mm)
    }
}

/// Points about a pixel apart.
pub(crate) fn evenly(line: &[Point]) -> Vec<Point> {
    spaced(line, perimeter(line).round().max(16.0) as usize)
}

/// The line around a leaf, with what a person said of it.
#[derive(Clone, Default)]
pub(crate) struct Marked {
    /// Of points about a pixel apart.
    pub(crate) line: Vec<Point>,
    pub(crate) notes: Vec<LeafNote>,
    /// Where leaves were cut apart, it among them.
    pub(crate) seams: Vec<[Point; 2]>,
    /// Where the blade begins.
    pub(crate) base: Option<Point>,
    /// Where it ends.
    pub(crate) tip: Option<Point>,
}

impl Marked {
    /// The leaf, measured; `piece`: its pixels.
    pub(crate) fn leaf(self, piece: &Piece, mm: Option<f64>) -> MeasuredLeaf {
        let Self { line, mut notes, seams, base: said, tip } = self;
        // What is guessed is guessed anew.
        notes.retain(|note| !matches!(note, LeafNote::BaseGuessed | LeafNote::TwoStalks));
        let cut = match said {
            Some(base) => stalk::cut_at(&line, base),
            None => stalk::cut(&line),
        };
        let (blade, base) = match (&cut, said) {
            (Some(cut), _) => (cut.blade.clone(), cut.base()),
            (None, Some(base)) => {
                let blade = polygon::from(&line, base);
                (blade.clone(), blade[0])
            }
            (None, None) => {
                notes.push(LeafNote::BaseGuessed);
                let base = lower_end(&hull(&line));
                (polygon::from(&line, base), base)
            }
        };
        if cut.as_ref().is_some_and(|cut| cut.several) {
            notes.push(LeafNote::TwoStalks);
        }
        let tip = tip.map(|tip| polygon::from(&blade, tip)[0]);
        let axis = axis::axis(&blade, base, tip);
        let rubbed = notes.contains(&LeafNote::Rubbed);
        let seen = form::Seen { outline: &line, blade: &blade, base, axis: &axis, mm, rubbed };
        let form = seen.form(piece, cut.as_ref());
        let ends = [base, axis.midrib[axis.midrib.len() - 1]];
        let hidden = seam::hidden(&line, &seams, ends, axis.across);
        let sizes = Sizes {
            length: axis.length + axis.unseen,
            width: axis.width,
            stalk: cut.as_ref().map(|cut| cut.length),
            area: area(&blade),
            perimeter: perimeter(&blade),
            hull: area(&hull(&blade)),
            seen: plus_minus::Seen {
                unsure: cut.as_ref().map_or(0.0, |cut| match form.is_even() {
                    true => cut.unsure,
                    false => cut.parting,
                }),
                unseen: axis.unseen,
                teeth: form.teeth(),
                uneven: form.is_uneven(),
                notch: axis.straight.iter().any(|point| point[0] < -NOTCH),
                based: form.leaflets.is_none() && (cut.is_some() || said.is_some()),
                around: perimeter(&blade),
                size: area(&blade),
                hidden,
                crayon: rubbed.then(|| plus_minus::of_crayon(mm)),
            },
        };
        MeasuredLeaf {
            number: 0,
            measures: sizes.measures(mm),
            form,
            notes,
            harmonics: fourier::harmonics(&blade),
            lines: LeafLines {
                outline: line,
                blade,
                midrib: axis.midrib,
                width: axis.across,
                cut: cut.as_ref().map(|cut| cut.sides),
                stalk: cut.map(|cut| cut.stalk).unwrap_or_default(),
            },
        }
    }
}

/// The contrast that half of a piece's pixels are above.
fn middle(contrast: &Contrast, piece: &Piece) -> u16 {
    let mut values: Vec<u16> = Vec::with_capacity(piece.pixels);
    for run in &piece.runs {
        let row = run.y as usize * contrast.width;
        values.extend(&contrast.values[row + run.first as usize..=row + run.last as usize]);
    }
    let half = values.len() / 2;
    *values.select_nth_unstable(half).1
}

/// The same piece at a level of its own: the largest of those that share pixels with it, if any does. It is
/// looked for around the piece, and farther off while it goes on beyond what was looked at.
fn again(contrast: &Contrast, piece: &Piece, level: u16) -> Option<Piece> {
    let (right, bottom) = (contrast.width as u32 - 1, contrast.height as u32 - 1);
    let shares = |other: &Piece| {
        other.runs.iter().any(|run| {
            piece.has(run.first, run.y) || piece.has(run.first.midpoint(run.last), run.y)
        })
    };
    let mut around = AROUND;
    loop {
        let wider = |(first, last): (u32, u32), most: u32| {
            (first.saturating_sub(around), last.saturating_add(around).min(most))
        };
        let (across, down) = (wider(piece.across, right), wider(piece.down, bottom));
        let near = pieces(contrast, across, down, level);
        let same = near.into_iter().filter(shares).max_by_key(|other| other.pixels)?;
        let goes_on = |of: (u32, u32), seen: (u32, u32), most: u32| {
            (of.0 == seen.0 && seen.0 > 0) || (of.1 == seen.1 && seen.1 < most)
        };
        if !goes_on(same.across, across, right) && !goes_on(same.down, down, bottom) {
            return Some(same);
        }
        around = around.saturating_mul(FARTHER);
    }
}

/// Of the two points that are farthest apart the one that lies lower in the picture.
fn lower_end(hull: &[Point]) -> Point {
    match farthest_apart(hull) {
        Some((a, b)) if a[1] > b[1] => a,
        Some((_, b)) => b,
        None => [0.0; 2],
    }
}

/// The sizes of a leaf in pixels.
struct Sizes {
    length: f64,
    width: f64,
    stalk: Option<f64>,
    area: f64,
    perimeter: f64,
    hull: f64,
    seen: plus_minus::Seen,
}

impl Sizes {
    fn measures(&self, mm: Option<f64>) -> Vec<Result<Measure, (Measurand, NotMeasured)>> {
        Measurand::ALL.map(|what| self.measure(what, mm).map_err(|why| (what, why))).into()
    }

    fn measure(&self, what: Measurand, mm: Option<f64>) -> Result<Measure, NotMeasured> {
        let stalk = self.stalk.ok_or(NotMeasured::NoStalk);
        let scale = mm.ok_or(NotMeasured::NoScale);
        let (value, unit) = match what {
            Measurand::BladeLength => (self.length, scale?),
            Measurand::BladeWidth => (self.width, scale?),
            Measurand::StalkLength => (stalk?, scale?),
            Measurand::BladeArea => (self.area, scale?.powi(2)),
            Measurand::Perimeter => (self.perimeter, scale?),
            Measurand::LengthToWidth => (self.length / self.width, 1.0),
            Measurand::StalkToBlade => (stalk? / self.length, 1.0),
            Measurand::Solidity => (self.area / self.hull, 1.0),
            Measurand::Roundness => (4.0 * PI * self.area / self.perimeter.powi(2), 1.0),
        };
        let with = |what, value| (value, self.seen.of(what, value));
        let length = with(Measurand::BladeLength, self.length);
        let plus_minus = match what {
            Measurand::LengthToWidth => {
                plus_minus::of_ratio(value, length, with(Measurand::BladeWidth, self.width))
                    * plus_minus::TOGETHER
            }
            Measurand::StalkToBlade => self.seen.of_stalk_to_blade(stalk?, self.length),
            Measurand::Roundness => {
                // The perimeter counts twice.
                let (around, off) = with(Measurand::Perimeter, self.perimeter);
                let area = with(Measurand::BladeArea, self.area);
                plus_minus::of_ratio(value, area, (around, 2.0 * off))
            }
            _ => self.seen.of(what, value) * unit,
        };
        Ok(Measure { what, value: value * unit, plus_minus })
    }
}

/// Numbers leaves as a person reads: row by row from above, each from the left. In a row are
/// leaves whose middles lie beside the first one of it. The numbers of those that had one group come back
/// together.
pub(crate) fn number(leaves: &mut [MeasuredLeaf]) -> Vec<Vec<usize>> {
    let span = |leaf: &MeasuredLeaf, side: usize| {
        let places = leaf.lines.outline.iter().map(|point| point[side]);
        places.fold((f64::MAX, f64::MIN), |(low, high), at| (low.min(at), high.max(at)))
    };
    let middle = |leaf: &MeasuredLeaf, side: usize| {
        let (low, high) = span(leaf, side);
        f64::midpoint(low, high)
    };
    leaves.sort_by(|a, b| middle(a, 1).total_cmp(&middle(b, 1)));
    let mut from = 0;
    while from < leaves.len() {
        let (_, bottom) = span(&leaves[from], 1);
        let row = leaves[from..].iter().take_while(|leaf| middle(leaf, 1) < bottom).count();
        let row = row.max(1);
        leaves[from..from + row].sort_by(|a, b| middle(a, 0).total_cmp(&middle(b, 0)));
        from += row;
    }
    let mut groups: BTreeMap<usize, Vec<usize>> = BTreeMap::new();
    for (at, leaf) in leaves.iter_mut().enumerate() {
        let group = std::mem::replace(&mut leaf.number, at + 1);
        if group > 0 {
            groups.entry(group).or_default().push(at + 1);
        }
    }
    let mut groups: Vec<Vec<usize>> = groups.into_values().collect();
    groups.sort();
    groups.iter().map(|group| seam::in_order(leaves, group)).collect()
}
