//! The looks that a heap allows: a character and the heaps that its values make.
//!
//! A look is a chain of questions of yes and no about one character. Words without an order are
//! parted into all the states that are left; counts and words in order are cut at chosen places.

use std::cmp::Ordering;

use smallvec::SmallVec;
use spinney_model::{Asked, Character, CharacterIx, Scale};

use crate::cost::Effort;
use crate::ground::Ground;
use crate::heap::{Asking, Heap};
use crate::set::Set;

/// Where a column offers more cuts than this at a heap it is only cut in two: every choice of
/// two or three of 16 are 680 looks.
const MOST_CUTS: usize = 16;

/// The most ways that any question about this table can have: at least two.
pub(super) fn most_ways(ground: &Ground) -> usize {
    let questions = &ground.questions[..ground.candidates];
    let of = |at: CharacterIx| {
        let about = ground.matrix.character(at);
        let cuts = questions.iter().filter(|question| question.ask.character == at).count();
        match &about.scale {
            Scale::Words { states } if !about.ordered => states.len(),
            Scale::Words { .. } | Scale::Counts => cuts + 1,
            Scale::Measure { .. } => 2,
        }
    };
    ground.matrix.character_indices().map(of).max().unwrap_or(2).max(2)
}

/// One look at a heap.
#[derive(Clone)]
pub(super) struct Look {
    pub(super) chain: Chain,
    pub(super) ways: SmallVec<[Heap; 4]>,
    /// What the look itself adds up to here.
    pub(super) own: Effort,
}

/// Questions one after another, down to the ways.
#[derive(Clone)]
pub(super) enum Chain {
    Way(usize),
    Cut { question: usize, yes: Box<Chain>, no: Box<Chain> },
}

/// Every look that parts a pair of a heap, questions of yes and no first for each character; and
/// for each such question the kinds that it sends only to yes and only to no.
pub(super) fn all(ground: &Ground, heap: &Heap, most: usize) -> (Vec<Look>, Vec<(Set, Set)>) {
    let (mut looks, mut parted) = (Vec::new(), Vec::new());
    let questions = &ground.questions[..ground.candidates];
    let mut from = 0;
    while let Some(first) = questions.get(from) {
        let character = first.ask.character;
        let same = questions[from..].iter().take_while(|q| q.ask.character == character);
        let range = from..from + same.count();
        from = range.end;
        let mut cuts: Vec<(usize, Look)> = Vec::new();
        for question in range.clone() {
            let Some((look, only)) = cut(ground, heap, question) else { continue };
            if cuts.iter().any(|(_, other)| other.ways == look.ways) {
                continue;
            }
            if let Some(only) = only {
                parted.push(only);
                looks.push(look.clone());
            }
            cuts.push((question, look));
        }
        if most > 2 && !cuts.is_empty() {
            let about = ground.matrix.character(character);
            looks.extend(several(ground, heap, about, (range, &cuts), most));
        }
    }
    ground.leave_touch(heap, &mut looks, |look| look.chain.first());
    (looks, parted)
}

/// A question of yes and no, if it can be put and both answers occur; with whom it parts.
fn cut(ground: &Ground, heap: &Heap, question: usize) -> Option<(Look, Option<(Set, Set)>)> {
    let asked = &ground.questions[question];
    let Asking::Parts(sides) = ground.layout.ask(heap, asked) else { return None };
    let only = sides.parts_a_pair.then(|| sides.only());
    let (yes, no) = ground.layout.take_sides(heap, asked, &sides);
    let [first, second] = [0, 1].map(|way| Box::new(Chain::Way(way)));
    let chain = Chain::Cut { question, yes: first, no: second };
    let own = ground.layout.own(heap, asked);
    Some((Look { chain, ways: SmallVec::from_iter([yes, no]), own }, only))
}

/// The looks of a character with more than two ways.
fn several(
    ground: &Ground,
    heap: &Heap,
    about: &Character,
    (questions, cuts): (std::ops::Range<usize>, &[(usize, Look)]),
    most: usize,
) -> Vec<Look> {
    let looks = match &about.scale {
        Scale::Words { states } if !about.ordered => {
            if states.len() < 3 {
                return Vec::new();
            }
            state_by_state(ground, heap, questions, most).into_iter().collect()
        }
        Scale::Words { .. } | Scale::Counts if cuts.len() > MOST_CUTS => Vec::new(),
        Scale::Words { .. } | Scale::Counts => {
            let mut looks = Vec::new();
            for (at, (_, first)) in cuts.iter().enumerate() {
                cut_further(ground, first, &cuts[at + 1..], most, &mut looks);
            }
            looks
        }
        Scale::Measure { .. } => Vec::new(),
    };
    looks.into_iter().filter(|look| parts_a_pair(ground, heap, look)).collect()
}

/// One way for each state that is left.
fn state_by_state(
    ground: &Ground,
    heap: &Heap,
    questions: std::ops::Range<usize>,
    most: usize,
) -> Option<Look> {
    let single = |at: &usize| match &ground.questions[*at].ask.yes {
        Asked::States(states) => states.len() == 1,
        Asked::AtLeast(_) | Asked::Below(_) => false,
    };
    let mut look: Option<Look> = None;
    for question in questions.filter(single) {
        let before = look.clone();
        look = match before {
            None => cut(ground, heap, question).map(|(look, _)| look),
            Some(known) => Some(refined(ground, &known, question).unwrap_or(known)),
        };
    }
    look.filter(|look| (3..=most).contains(&look.ways.len()))
}

/// Every choice of further cuts, each of which leaves something in every way.
fn cut_further(
    ground: &Ground,
    look: &Look,
    cuts: &[(usize, Look)],
    most: usize,
    looks: &mut Vec<Look>,
) {
    for (at, (question, _)) in cuts.iter().enumerate() {
        let Some(finer) = refined(ground, look, *question) else { continue };
        if finer.ways.len() < most {
            cut_further(ground, &finer, &cuts[at + 1..], most, looks);
        }
        looks.push(finer);
    }
}

/// The look with the one way that a question cuts in two.
fn refined(ground: &Ground, look: &Look, question: usize) -> Option<Look> {
    let torn = look.ways.iter().enumerate().find_map(|(way, heap)| {
        let (finer, _) = cut(ground, heap, question)?;
        Some((way, finer.ways))
    });
    let (way, halves) = torn?;
    let mut finer = look.clone();
    let new = finer.ways.len();
    let mut halves = halves.into_iter();
    finer.ways[way] = halves.next()?;
    finer.ways.push(halves.next()?);
    finer.chain.tear(way, new, question);
    Some(finer)
}

impl Chain {
    /// The first question: all are about one character.
    fn first(&self) -> usize {
        match self {
            Self::Cut { question, .. } => *question,
            Self::Way(_) => unreachable!("a look asks something"),
        }
    }

    fn tear(&mut self, torn: usize, new: usize, question: usize) {
        match self {
            Self::Way(way) if *way == torn => {
                let [yes, no] = [torn, new].map(|way| Box::new(Self::Way(way)));
                *self = Self::Cut { question, yes, no };
            }
            Self::Way(_) => {}
            Self::Cut { yes, no, .. } => {
                yes.tear(torn, new, question);
                no.tear(torn, new, question);
            }
        }
    }
}

/// Whether two kinds share no way.
fn parts_a_pair(ground: &Ground, heap: &Heap, look: &Look) -> bool {
    let ways = |kind: usize| {
        let has = look.ways.iter().map(|way| ground.layout.has(way, kind));
        has.enumerate().fold(0_u8, |mask, (way, here)| mask | u8::from(here) << way)
    };
    let masks: Vec<u8> = ground.layout.kinds(heap).map(ways).collect();
    masks.iter().enumerate().any(|(at, one)| masks[at + 1..].iter().any(|two| one & two == 0))
}

/// Fewer ways, then the order of the table: a lasting order for looks that promise alike.
pub(super) fn plainer(one: &Look, other: &Look) -> Ordering {
    one.ways.len().cmp(&other.ways.len())
}
