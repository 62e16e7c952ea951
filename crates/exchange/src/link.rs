//! What a person's question means in the table: which character, which states, what threshold.
//!
//! From a key and its matrix to links, each proposed by the words of the question and taken by
//! itself only where one reading is clearly best; otherwise the candidates are named with the
//! line that settles it in a links file. It never alters the words or ways of a key.
//! How the score works is told in `docs/key-text.md`.

mod german;
mod leads;
mod left;
mod links_file;
pub(crate) mod names;
mod numbers;
mod numbers_asked;
mod parts;
pub(crate) mod quotes;
mod readings;
mod said;
mod trade_words;
mod vocabulary;
mod words;

use std::collections::BTreeSet;

use spinney_model::{Ask, Couplet, Destination, Finding, Key, Matrix, OfLinks, Place, Wording};

use names::Names;
use readings::Readings;
use vocabulary::Vocabulary;

pub use links_file::{Link, Links};

/// A reading of a question.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Proposal {
    /// The number of the couplet.
    pub couplet: u32,
    /// What it seems to ask.
    pub ask: Ask,
    /// How well the words fit, in points; see `docs/key-text.md`.
    pub points: i32,
    /// Whether it was taken by itself.
    pub sure: bool,
}

/// What became of the questions of a key.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct LinkReport {
    /// The best readings of every question that nobody had linked, in the order of the key.
    pub proposals: Vec<Proposal>,
    /// Questions that are not linked, or not surely.
    pub findings: Vec<Finding>,
    /// How many questions are linked now.
    pub linked: usize,
    /// How many questions the key has.
    pub of: usize,
}

/// From so many points on a reading may be taken by itself: one state in the table's own word
/// or a synonym of the trade, with every word explained.
const SURE: i32 = 10;
/// So many points the best reading must be ahead of the next: more than one unexplained word.
const AHEAD: i32 = 5;

/// Two leads may become opposites once the couplets above them are linked, and so link the
/// couplets below them. So many rounds of that: a character with more states than this, parted
/// off one pair of leads after another in the reverse order of the key, is left open.
const ROUNDS: usize = 4;

/// Links every couplet that has no ask yet.
///
/// What the links file says comes first. **Guarantees**: only `ask` is changed, never words,
/// numbers or destinations. **Cost**: linear in the couplets for a key that goes on to higher
/// numbers.
pub fn link(key: &mut Key, matrix: &Matrix, links: &Links) -> LinkReport {
    let vocabulary = Vocabulary::of(matrix);
    let mut read: Vec<Option<Readings>> = Vec::new();
    for couplet in &mut key.couplets {
        let given = links.question(couplet.number).filter(|_| couplet.ask.is_none());
        if let Some(Link::Asks(ask)) = given {
            couplet.ask = Some(ask.clone());
        }
        let open = couplet.ask.is_none() && given.is_none();
        read.push(open.then(|| propose(couplet, matrix, &vocabulary, &left::Left::new())));
    }
    for _ in 0..ROUNDS {
        if !again(key, matrix, &vocabulary, &mut read) {
            break;
        }
    }
    let mut report = LinkReport { of: key.couplets.len(), ..LinkReport::default() };
    let names = Names::of(matrix, links);
    for (couplet, found) in key.couplets.iter().zip(&read) {
        report.linked += usize::from(couplet.ask.is_some());
        if let Some(found) = found {
            tell(couplet, found, matrix, &names, &mut report);
        }
    }
    let printed: BTreeSet<u32> = key.couplets.iter().map(|couplet| couplet.number).collect();
    for number in links.numbers().filter(|number| !printed.contains(number)) {
        let fact = OfLinks::NoSuchQuestion { question: number };
        report.findings.push(Finding::of(Place::Couplet(number), fact));
    }
    report
}

/// What a question in a person's own words may mean, the best reading first.
///
/// As [`link`] reads the questions of a key; none of it is to be taken without asking the
/// person, unless it is `sure`.
pub fn proposals(question: &str, matrix: &Matrix) -> Vec<Proposal> {
    let mut key = alone(Wording::Question(question.to_owned()));
    link(&mut key, matrix, &Links::default()).proposals
}

/// A couplet that leads nowhere yet, as a key of its own.
fn alone(wording: Wording) -> Key {
    let couplet = Couplet {
        number: 1,
        back: None,
        wording,
        ask: None,
        yes: Destination::Missing,
        no: Destination::Missing,
        kept: false,
        line: None,
    };
    Key { couplets: vec![couplet] }
}

/// Reads a couplet and links it where that is sure.
fn propose(
    couplet: &mut Couplet,
    matrix: &Matrix,
    vocabulary: &Vocabulary,
    left: &left::Left,
) -> Readings {
    let found = match &couplet.wording {
        Wording::Question(text) => readings::read(text, matrix, vocabulary),
        Wording::Leads { yes, no } => leads::read(yes, no, matrix, vocabulary, left),
    };
    if sure(&found) {
        couplet.ask = found.readings.first().map(|best| best.ask.clone());
    }
    found
}

/// Reads once more the leads that are open, with what the links above them have left; whether
/// that linked any.
fn again(
    key: &mut Key,
    matrix: &Matrix,
    vocabulary: &Vocabulary,
    read: &mut [Option<Readings>],
) -> bool {
    let open = |couplet: &Couplet| {
        couplet.ask.is_none() && matches!(couplet.wording, Wording::Leads { .. })
    };
    if !key.couplets.iter().any(open) {
        return false;
    }
    let left = left::at_each(key, matrix);
    let mut linked = false;
    for ((couplet, found), left) in key.couplets.iter_mut().zip(read).zip(left) {
        if let (true, Some(found), Some(left)) = (open(couplet), found, left) {
            *found = propose(couplet, matrix, vocabulary, &left);
            linked |= couplet.ask.is_some();
        }
    }
    linked
}

/// Reports what became of a couplet that was open.
fn tell(
    couplet: &Couplet,
    found: &Readings,
    matrix: &Matrix,
    names: &Names,
    report: &mut LinkReport,
) {
    let sure = couplet.ask.is_some();
    let worth = found.readings.iter().filter(|reading| reading.points >= said::WORTH_ASKING);
    for (at, reading) in worth.take(if sure { 1 } else { 3 }).enumerate() {
        report.proposals.push(Proposal {
            couplet: couplet.number,
            ask: reading.ask.clone(),
            points: reading.points,
            sure: sure && at == 0,
        });
    }
    if !sure {
        report.findings.push(said::finding(couplet, found, matrix, names));
    }
}

/// Whether the best reading is good, far enough ahead, and nothing speaks against it.
fn sure(found: &Readings) -> bool {
    let best = found.readings.first().map_or(0, |reading| reading.points);
    let next = found.readings.get(1).map_or(0, |reading| reading.points);
    let understood = found.readings.first().is_some_and(|reading| reading.understood);
    found.doubts.is_empty() && understood && best >= SURE && best - next >= AHEAD
}

#[cfg(test)]
mod fresh;
#[cfg(test)]
mod hand_drawn;
#[cfg(test)]
pub(crate) mod hedge;
#[cfg(test)]
mod tests;
