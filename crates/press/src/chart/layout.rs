//! Where the cards of a chart stand: level by level, as close as they may.
//!
//! From trees and the room on a page to the middle of every card and the top of every level.
//! Two branches are pushed together until their outlines are a gap apart on some level
//! (after Reingold and Tilford 1981, *Tidier Drawings of Trees*); sizes are tried from large
//! to small, upright and turned, and the one with the largest ends wins.

use std::collections::BTreeMap;

use spinney_model::TaxonIx;

use super::cards;
use super::tree::{Forest, Item, Node, Tree};
use crate::setting::Setting;

/// The least distance of two cards beside each other, in mm.
const APART: f64 = 2.4;
/// The least distance of two levels, for the lines between them, in mm.
pub(super) const LEVELS: f64 = 4.2;
/// The least height of an end's picture, in mm.
const PICTURE: f64 = 15.0;
/// The same where letters are larger than they must be.
const ROOMY: f64 = 18.0;
/// Letters are set as large as fits, in steps of a tenth, up to about three times 12 pt.
const STEPS: i32 = 12;

/// Where everything stands on one page of a chart; all in mm.
#[derive(Clone, Debug, Default)]
pub(super) struct Plan {
    /// Whether the page lies on its side.
    pub(super) turned: bool,
    /// Whether nothing of it fits: then the smallest cards stand side by side.
    pub(super) forced: bool,
    /// How much larger than the smallest letters everything is set.
    pub(super) scale: f64,
    /// Width of a question's card.
    pub(super) question: f64,
    /// Width of an end's card.
    pub(super) end: f64,
    /// Height of an end's picture.
    pub(super) picture: f64,
    /// The middle of every card, tree by tree.
    pub(super) middles: Vec<Vec<f64>>,
    /// The top of every level.
    pub(super) tops: Vec<f64>,
    /// Places as large as what is stuck into them, width and height; empty: all are alike.
    pub(super) sizes: BTreeMap<TaxonIx, (f64, f64)>,
}

impl Plan {
    /// A plan for a tree that no size makes fit: the smallest cards, side by side.
    pub(super) fn forced(
        setting: &Setting,
        forest: &Forest,
        (turned, wide, high): (bool, f64, f64),
    ) -> Self {
        let plan = Self {
            turned,
            scale: 1.0,
            forced: true,
            question: 28.0,
            end: 28.0,
            picture: PICTURE,
            ..Self::default()
        };
        let packed = pack(forest, &|item| plan.width(item), &|_| 1);
        plan.placed(setting, forest, &packed, (wide, high))
    }

    /// The width of a card.
    pub(super) fn width(&self, item: &Item) -> f64 {
        match item {
            Item::Question(_) => self.question,
            _ => self.size(item).map_or(self.end, |(w, _)| w.max(self.end)),
        }
    }

    /// The height of the picture on a card.
    pub(super) fn picture_on(&self, item: &Item) -> f64 {
        self.size(item).map_or(self.picture, |(_, h)| h)
    }

    /// The size of what is stuck into a place, where it is one kind's own.
    fn size(&self, item: &Item) -> Option<(f64, f64)> {
        match item {
            Item::End(end) if end.taxa.len() == 1 => self.sizes.get(&end.taxa[0]).copied(),
            _ => None,
        }
    }

    /// A plan without a page: every place as large as what is stuck into it, and the room that
    /// all of it takes, width and height in mm.
    pub(super) fn life_size(self, setting: &Setting, forest: &Forest) -> (Self, (f64, f64)) {
        // A level is as high as its questions: an end hangs down beside the levels below it.
        let levels = Levels::of(setting, forest, &self, true);
        let levels = levels.joined(&Levels::of(setting, forest, &self, false));
        let (mut tops, mut y) = (Vec::new(), 0.0);
        for level in &levels.bare {
            tops.push(y);
            y += level + if *level > 0.0 { 2.0 * LEVELS } else { 0.0 };
        }
        let foot = |node: &Node| tops[node.depth] + cards::height(setting, node, &self);
        let down = |node: &Node| {
            let foot = foot(node) + 2.0 * LEVELS;
            tops[node.depth..].iter().take_while(|top| **top < foot).count().max(1)
        };
        let packed = pack(forest, &|item| self.width(item), &down);
        let nodes = || forest.iter().flat_map(|tree| &tree.nodes);
        let high = nodes().map(foot).fold(0.0, f64::max);
        let middles = packed.middles.iter();
        let middles = middles.map(|tree| tree.iter().map(|x| x - packed.left).collect());
        let room = (packed.right - packed.left, high);
        let middles = middles.collect();
        (Self { middles, tops, ..self }, room)
    }

    fn placed(
        self,
        setting: &Setting,
        forest: &Forest,
        packed: &Packed,
        room: (f64, f64),
    ) -> Self {
        let bare = Plan { picture: 0.0, ..self.clone() };
        let asked = Levels::of(setting, forest, &bare, true);
        let levels = asked.joined(&Levels::of(setting, forest, &bare, false));
        let levels: Vec<_> = levels.heights(self.picture).collect();
        let used: f64 = levels.iter().sum();
        let gaps = levels.len().saturating_sub(1).max(1) as f64;
        let gap = ((room.1 - used) / gaps).clamp(LEVELS, 20.0);
        let mut tops = Vec::new();
        let mut y = 0.0;
        for level in &levels {
            tops.push(y);
            y += level + gap;
        }
        let widest = self.question.max(self.end);
        let all = || packed.middles.iter().flatten().copied();
        let (least, most) =
            (all().fold(f64::INFINITY, f64::min), all().fold(f64::NEG_INFINITY, f64::max));
        let stretch = (room.0 - widest) / (most - least);
        let spread = |x: f64| {
            if most > least && stretch > 1.0 {
                let stretch = stretch.min(1.8);
                room.0 / 2.0 + (x - (least + most) / 2.0) * stretch
            } else {
                x - packed.left + (room.0 - (packed.right - packed.left)).max(0.0) / 2.0
            }
        };
        let middles = packed.middles.iter();
        let middles = middles.map(|tree| tree.iter().map(|x| spread(*x)).collect()).collect();
        Self { middles, tops, ..self }
    }
}

/// Widths of a question's card that are tried, in mm.
const QUESTIONS: [f64; 8] = [64.0, 56.0, 48.0, 40.0, 34.0, 30.0, 28.0, 25.0];
/// Widths of an end's card that are tried, in mm.
const ENDS: [f64; 10] = [60.0, 52.0, 46.0, 40.0, 36.0, 32.0, 30.0, 28.0, 26.0, 24.0];

/// The largest plan that fits one of the rooms (turned or not, width, height), with letters no
/// larger than `most` times 12 pt.
pub(super) fn plan(
    setting: &Setting,
    forest: &Forest,
    rooms: &[(bool, f64, f64)],
    most: f64,
) -> Option<Plan> {
    let words = cards::longest_words(setting);
    // What has no room in the smallest letters has none in larger ones.
    let smallest = plan_at(setting, forest, rooms, (1.0, words))?;
    let scales = (1..=STEPS).rev().map(|step| 1.1_f64.powi(step));
    let mut scales = scales.filter(|scale| *scale <= most + 1.0e-9);
    let larger = scales.find_map(|scale| plan_at(setting, forest, rooms, (scale, words)));
    Some(larger.unwrap_or(smallest))
}

fn plan_at(
    setting: &Setting,
    forest: &Forest,
    rooms: &[(bool, f64, f64)],
    (scale, words): (f64, (f64, f64)),
) -> Option<Plan> {
    let bare = |question: f64, end: f64| Plan {
        scale,
        question: question * scale,
        end: end * scale,
        ..Plan::default()
    };
    let questions =
        QUESTIONS.map(|width| Levels::of(setting, forest, &bare(width, 28.0), true));
    let ends = ENDS.map(|width| Levels::of(setting, forest, &bare(28.0, width), false));
    let least = if scale > 1.0 { ROOMY } else { PICTURE };
    // No word is broken, unless it is longer than any card should be wide.
    let narrow = |width: f64, word: f64| width < word.min(QUESTIONS[3]);
    let mut best: Option<(f64, Plan, Packed, (f64, f64))> = None;
    for (question, asked) in QUESTIONS.into_iter().zip(&questions) {
        for (end, ended) in ENDS.into_iter().zip(&ends) {
            let sized = bare(question, end);
            let packed = pack(forest, &|item| sized.width(item), &|_| 1);
            let levels = asked.joined(ended);
            for &(turned, wide, high) in rooms {
                if packed.right - packed.left > wide
                    || narrow(question, words.0)
                    || narrow(end, words.1)
                {
                    continue;
                }
                let Some(picture) = tallest(&levels, end * scale, least, high) else {
                    continue;
                };
                let score = picture.min(end) * 10.0 + end + question / 10.0;
                if best.as_ref().is_none_or(|(most, ..)| score > *most) {
                    let plan = Plan { turned, picture, ..bare(question, end) };
                    best = Some((score, plan, packed.clone(), (wide, high)));
                }
            }
        }
    }
    best.map(|(_, plan, packed, room)| plan.placed(setting, forest, &packed, room))
}

/// The tallest pictures with which all levels fit.
fn tallest(levels: &Levels, end: f64, least: f64, high: f64) -> Option<f64> {
    let most = (end * 0.95).min(60.0).max(least);
    let steps = (0..=24).map(|step| most - (most - least) * f64::from(step) / 24.0);
    let gaps = LEVELS * levels.bare.len().saturating_sub(1) as f64;
    steps.into_iter().find(|picture| levels.heights(*picture).sum::<f64>() + gaps <= high)
}

/// The heights of every level's cards, without pictures.
struct Levels {
    /// The tallest card that has no picture.
    bare: Vec<f64>,
    /// The tallest card that has one, without it.
    pictured: Vec<Option<f64>>,
}

impl Levels {
    /// Measures the questions, or everything else.
    fn of(setting: &Setting, forest: &Forest, plan: &Plan, questions: bool) -> Self {
        let mut levels = Self { bare: Vec::new(), pictured: Vec::new() };
        for node in forest.iter().flat_map(|tree| &tree.nodes) {
            if levels.bare.len() <= node.depth {
                levels.bare.resize(node.depth + 1, 0.0);
                levels.pictured.resize(node.depth + 1, None);
            }
            if matches!(node.item, Item::Question(_)) != questions {
                continue;
            }
            let height = cards::height(setting, node, plan);
            if matches!(node.item, Item::End(_) | Item::Blank) {
                let have = &mut levels.pictured[node.depth];
                *have = Some(have.unwrap_or(0.0).max(height));
            } else {
                levels.bare[node.depth] = levels.bare[node.depth].max(height);
            }
        }
        levels
    }

    fn joined(&self, other: &Self) -> Self {
        let pairs = self.bare.iter().zip(&other.bare);
        let bare = pairs.map(|(mine, theirs)| mine.max(*theirs)).collect();
        Self { bare, pictured: other.pictured.clone() }
    }

    fn heights(&self, picture: f64) -> impl Iterator<Item = f64> + '_ {
        let pairs = self.bare.iter().zip(&self.pictured);
        pairs.map(move |(bare, pictured)| pictured.map_or(*bare, |h| bare.max(h + picture)))
    }
}

/// Cards pushed together; mm from the middle of the first root.
#[derive(Clone)]
struct Packed {
    middles: Vec<Vec<f64>>,
    left: f64,
    right: f64,
}

/// The left and right edge of a branch on every level from its root down.
type Outline = Vec<(f64, f64)>;

/// `down`: over how many levels a card goes, its own among them.
fn pack(
    forest: &Forest,
    width: &dyn Fn(&Item) -> f64,
    down: &dyn Fn(&Node) -> usize,
) -> Packed {
    let mut middles = Vec::new();
    let mut whole: Outline = Vec::new();
    for tree in forest {
        let (offsets, outline) = pack_tree(tree, width, down);
        let shift = if whole.is_empty() { 0.0 } else { distance(&whole, &outline) };
        merge(&mut whole, &outline, shift);
        let mut places = vec![shift; tree.nodes.len()];
        for (at, node) in tree.nodes.iter().enumerate() {
            for child in node.children.into_iter().flatten() {
                places[child] = places[at] + offsets[child];
            }
        }
        middles.push(places);
    }
    let left = whole.iter().map(|edge| edge.0).fold(f64::INFINITY, f64::min);
    let right = whole.iter().map(|edge| edge.1).fold(f64::NEG_INFINITY, f64::max);
    if whole.is_empty() {
        return Packed { middles, left: 0.0, right: 0.0 };
    }
    Packed { middles, left, right }
}

/// Every node's offset from its parent, and the outline of the tree.
fn pack_tree(
    tree: &Tree,
    width: &dyn Fn(&Item) -> f64,
    down: &dyn Fn(&Node) -> usize,
) -> (Vec<f64>, Outline) {
    let mut offsets = vec![0.0; tree.nodes.len()];
    let mut outlines: Vec<Outline> = vec![Vec::new(); tree.nodes.len()];
    for (at, node) in tree.nodes.iter().enumerate().rev() {
        let width = width(&node.item);
        let levels = if node.children.is_some() { 1 } else { down(node) };
        let mut outline = vec![(-width / 2.0, width / 2.0); levels];
        if let Some([yes, no]) = node.children {
            let (left, right) =
                (std::mem::take(&mut outlines[yes]), std::mem::take(&mut outlines[no]));
            let apart = distance(&left, &right);
            offsets[yes] = -apart / 2.0;
            offsets[no] = apart / 2.0;
            let mut below = Vec::new();
            merge(&mut below, &left, -apart / 2.0);
            merge(&mut below, &right, apart / 2.0);
            outline.extend(below);
        }
        outlines[at] = outline;
    }
    (offsets, outlines.into_iter().next().unwrap_or_default())
}

/// How far the middle of `right` must stand from the middle of `left`.
fn distance(left: &Outline, right: &Outline) -> f64 {
    let pairs = left.iter().zip(right);
    pairs.map(|(l, r)| l.1 - r.0 + APART).fold(0.0, f64::max)
}

fn merge(whole: &mut Outline, part: &Outline, shift: f64) {
    for (level, (left, right)) in part.iter().enumerate() {
        let edge = (left + shift, right + shift);
        match whole.get_mut(level) {
            Some(have) => *have = (have.0.min(edge.0), have.1.max(edge.1)),
            None => whole.push(edge),
        }
    }
}
