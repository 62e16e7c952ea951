//! Keys as people drew them or the machine finished them, each with its second opinion.
//!
//! From a collection, its table and a key that was begun to the key with its words, what is claimed
//! of it, what a second opinion says, and how it stands. Nothing here is a fact: all of it can be
//! thrown away and worked out again.

use std::collections::{BTreeMap, BTreeSet};

use sha2::{Digest, Sha256};
use spinney_build::{Budget, Search};
use spinney_check::{Report, Settings};
use spinney_model::{
    Ask, AskedBy, Claim, Code, Couplet, Destination, End, Finding, Fork, Key, KeyId, KindId,
    Matrix, Place, Reasons, Refusal, Scale, SecondLooks, Share, Standing, TaxonIx, Value,
    WishField, Wording, limits,
};
use spinney_voice::{Tongue, wording};

use crate::guesses::Guesses;
use crate::laid::{Laid, folded};
use crate::layer::Layer;
use crate::{Collection, Drawn};

/// Heaps that a page may take apart while a person waits: 5 to 20 ms of work. What is not
/// proved by then is shown as the best so far.
pub const HEAPS_A_PAGE: u64 = 600;

/// Nodes that a page looks at for a second opinion on a proof: 5 to 10 ms of work. A larger table
/// gets one where somebody waits for it.
pub const NODES_A_PAGE: usize = 300;

/// A key that was made, with what can be said of it.
#[derive(Clone)]
pub struct Made {
    /// The table as its group sees it.
    pub layer: Layer,
    /// The key, in words.
    pub key: Key,
    /// The words of each question by which pages are compared, whatever language they are in.
    pub compared: BTreeMap<u32, String>,
    /// Questions that people worded or kept, whose words stay as they are.
    pub own: BTreeSet<u32>,
    /// None: drawn by people and not finished by the machine.
    pub claim: Option<Claim>,
    /// What a second opinion says of it.
    pub opinion: Report,
    /// Wishes that could not be kept.
    pub refused: Vec<Refusal>,
    /// What every other question would cost; empty unless somebody wants to know.
    pub reasons: Vec<Reasons>,
    /// Questions that must come to the same answer as a couplet, or to the other one.
    pub looks: SecondLooks,
    /// Whether somebody waited for it: nothing more is to be had by looking on.
    pub looked_long: bool,
    /// The place of every couplet, by its number.
    pub places: BTreeMap<u32, Fork>,
    /// Who comes out where only because nobody knows better.
    pub guesses: Guesses,
}

/// A key with what it was made from.
#[derive(Clone, Copy)]
pub struct KeyFrom<'a> {
    /// The language in which its questions are worded.
    pub t: Tongue,
    /// The collection.
    pub collection: &'a Collection,
    /// Its table.
    pub laid: &'a Laid,
    /// The key as it was made.
    pub made: &'a Made,
    /// Which key of the collection it is.
    pub id: KeyId,
}

impl<'a> KeyFrom<'a> {
    /// The key as people fixed it.
    pub fn drawn(&self) -> &'a Drawn {
        &self.collection.keys[&self.id]
    }
}

/// Where an answer leads.
pub enum Ending<'m> {
    /// On to the question with this number.
    On(u32),
    /// Kinds come out, and names that are none of the collection's.
    Out(Vec<KindId>, &'m [String]),
    /// Nothing comes out.
    Nothing,
}

/// Makes a key from what people fixed, as they drew it or finished by the machine, with what
/// every other question would cost.
pub fn make(collection: &Collection, laid: &Laid, drawn: &Drawn) -> Option<Made> {
    let (made, search) = begin(collection, laid, drawn)?;
    let search = search.filter(|_| can_be_weighed(&made.layer.matrix));
    let reasons = search.map_or(Vec::new(), |mut search| {
        search.explain(&made.key, Budget { heaps: HEAPS_A_PAGE })
    });
    Some(Made { reasons, ..made })
}

/// Each question of a table is weighed at each heap, and held against each other one: so many
/// times in half a second (60 kinds with four columns of lengths: 14 million, 0.9 s).
const MOST_WEIGHED: usize = 8_000_000;

/// Whether a person can wait until every question was weighed at every heap. Where each kind has
/// another measurement in each column, there are thousands of questions.
pub fn can_be_weighed(matrix: &Matrix) -> bool {
    let questions: usize = ends(matrix).into_iter().sum();
    questions.saturating_mul(questions).saturating_mul(matrix.taxa().len()) <= MOST_WEIGHED
}

/// So many questions a heap is looked at with in the time that a page has for it.
const USUAL_QUESTIONS: u64 = 20_000;

/// Heaps that a page may take apart: the fewer, the more questions each is looked at with.
fn heaps_a_page(matrix: &Matrix) -> u64 {
    let pairs = |ends: usize| (ends * ends / 4) as u64;
    let questions: u64 = ends(matrix).into_iter().map(pairs).sum();
    (HEAPS_A_PAGE * USUAL_QUESTIONS / questions.max(USUAL_QUESTIONS)).max(20)
}

/// For each column how many different ends of ranges it has, or states.
fn ends(matrix: &Matrix) -> Vec<usize> {
    let of_column = |at| match &matrix.character(at).scale {
        Scale::Words { states } => states.len(),
        Scale::Counts | Scale::Measure { .. } => {
            let ends =
                matrix.taxon_indices().flat_map(|taxon| match &matrix.cell(taxon, at).value {
                    Value::Range { low, high } => vec![low.thousandths(), high.thousandths()],
                    Value::Counts(counts) => {
                        counts.iter().map(|(count, _)| i64::from(*count) * 1000).collect()
                    }
                    _ => Vec::new(),
                });
            ends.collect::<BTreeSet<i64>>().len()
        }
    };
    matrix.character_indices().map(of_column).collect()
}

/// The same without what other questions would cost.
pub fn begin(
    collection: &Collection,
    laid: &Laid,
    drawn: &Drawn,
) -> Option<(Made, Option<Search>)> {
    let layer = Layer::of(collection, laid, drawn)?;
    if !drawn.finished() {
        let key = as_drawn(&layer);
        return Some((made(layer, drawn, key, None, NODES_A_PAGE), None));
    }
    let room = limits::SCREENS_SEARCH >> 20;
    let mut search = Search::within(&layer.matrix, &layer.wishes, room);
    search.step(heaps_a_page(&layer.matrix));
    Some((found(layer, drawn, &mut search, NODES_A_PAGE), Some(search)))
}

/// The key that a search has found so far; so many nodes are looked at for a second opinion on
/// its proof.
pub fn found(layer: Layer, drawn: &Drawn, search: &mut Search, nodes: usize) -> Made {
    let built = search.finish();
    let looks = search.second_looks(&built.key);
    let made = made(layer, drawn, built.key, Some(built.claim), nodes);
    Made { refused: built.refused, looks, ..made }
}

fn made(
    layer: Layer,
    drawn: &Drawn,
    mut key: Key,
    claim: Option<Claim>,
    replay_nodes: usize,
) -> Made {
    wording::put_words(Tongue::of_tokens(), &mut key, &layer.matrix);
    let (places, mut own, mut compared) = (places(&key), BTreeSet::new(), BTreeMap::new());
    for couplet in &mut key.couplets {
        let Some(question) = places.get(&couplet.number).and_then(|p| drawn.questions.get(p))
        else {
            continue;
        };
        let asked = layer.forks.get(&places[&couplet.number]).and_then(|f| f.ask.as_ref());
        if question.words.is_empty() || asked != couplet.ask.as_ref() {
            continue;
        }
        // Words that the table gave in another language are compared as those that it gives here.
        let given = asked.and_then(|ask| given_in(&layer.matrix, ask, &question.words));
        if given.is_some_and(|t| t.tag() != Tongue::of_tokens().tag()) {
            compared.insert(couplet.number, couplet.wording.first().to_owned());
        }
        own.insert(couplet.number);
        couplet.wording = Wording::Question(question.words.clone());
    }
    for couplet in &key.couplets {
        let words = couplet.wording.first();
        compared.entry(couplet.number).or_insert_with(|| words.to_owned());
    }
    let characters = layer.matrix.character_indices();
    let settings = Settings {
        pupils_wrote_it: !drawn.finished(),
        replay_nodes,
        by_hand: characters.filter(|at| at.0 >= layer.sorted_from).collect(),
        ..Settings::default()
    };
    let opinion = spinney_check::check(&layer.matrix, &key, claim.as_ref(), &settings);
    let guesses = Guesses::of(&layer.matrix, &key, &opinion.walks);
    let (refused, reasons, looks) = (Vec::new(), Vec::new(), BTreeMap::new());
    let looked_long = false;
    Made {
        layer,
        key,
        compared,
        own,
        claim,
        opinion,
        refused,
        reasons,
        looks,
        looked_long,
        places,
        guesses,
    }
}

/// The language in which a table gives a question these words; None: a person worded it.
pub(crate) fn given_in(matrix: &Matrix, ask: &Ask, words: &str) -> Option<Tongue> {
    let gives = |t: &Tongue| folded(&wording::question(*t, matrix, ask)) == folded(words);
    Tongue::all().find(gives)
}

impl Made {
    /// The same key with its questions in the language of whoever reads it; what people worded or
    /// kept stays as it is.
    pub fn spoken(&self, t: Tongue) -> Self {
        let mut made = self.clone();
        for couplet in &mut made.key.couplets {
            if couplet.ask.is_some() && !self.own.contains(&couplet.number) {
                couplet.wording = Wording::Question(String::new());
            }
        }
        wording::put_words(t, &mut made.key, &made.layer.matrix);
        made
    }

    /// The words of a question by which pages are compared; empty: there is none.
    pub fn compared(&self, number: u32) -> &str {
        self.compared.get(&number).map_or("", String::as_str)
    }

    /// The couplet at a place of the key.
    pub fn couplet(&self, at: &Fork) -> Option<&Couplet> {
        let number = self.places.iter().find(|(_, place)| *place == at)?.0;
        self.key.couplets.iter().find(|couplet| couplet.number == *number)
    }

    /// The token of the key as people read it: its questions, each with its place, and its ends.
    pub fn token(&self) -> String {
        let side = |to: &Destination| match to {
            Destination::Couplet(number) => letters(&self.places[number]),
            Destination::End(end) => {
                let kinds =
                    end.taxa.iter().map(|taxon| self.layer.kinds[taxon.0].0.to_string());
                kinds.collect::<Vec<_>>().join(" ")
            }
            Destination::Missing => String::new(),
        };
        token(self.key.couplets.iter().flat_map(|couplet| {
            let place = letters(&self.places[&couplet.number]);
            let words = self.compared(couplet.number).to_owned();
            [place, words, side(&couplet.yes), side(&couplet.no)]
        }))
    }

    /// The token of what the key asks on the way to a place. A key that a long search found is in
    /// no journal: the tokens travel with forms.
    pub fn asks_above(&self, at: &Fork) -> String {
        token((0..at.0.len()).map(|length| self.words_at(&at.0[..length])))
    }

    /// The token of what it asks there.
    pub fn asks_at(&self, at: &Fork) -> String {
        token([self.words_at(&at.0)])
    }

    fn words_at(&self, way: &[bool]) -> &str {
        self.couplet(&Fork(way.to_vec())).map_or("", |couplet| self.compared(couplet.number))
    }

    /// The token of all its questions, each with its place.
    pub fn asks_all(&self) -> String {
        token(self.key.couplets.iter().flat_map(|couplet| {
            [letters(&self.places[&couplet.number]), self.compared(couplet.number).to_owned()]
        }))
    }

    /// Where an answer leads.
    pub fn ending<'m>(&'m self, to: &'m Destination) -> Ending<'m> {
        match to {
            Destination::Couplet(number) => Ending::On(*number),
            Destination::End(End { taxa, unrecognised })
                if !(taxa.is_empty() && unrecognised.is_empty()) =>
            {
                let kinds = taxa.iter().filter_map(|taxon| self.layer.kinds.get(taxon.0));
                Ending::Out(kinds.copied().collect(), unrecognised)
            }
            Destination::End(_) | Destination::Missing => Ending::Nothing,
        }
    }

    /// Effort over all kinds as effort for one find.
    pub fn a_find(&self, effort: Share) -> Share {
        a_find(&self.layer.matrix, effort)
    }

    /// What was found at one question; what nobody has said is gathered kind by kind.
    pub fn findings_at(&self, number: u32) -> Vec<Finding> {
        let here = Place::Couplet(number);
        let found = self.findings().iter();
        found.filter(|found| found.place == here && !self.of_a_kind(found)).cloned().collect()
    }

    /// Whether a finding is said kind by kind, and not by itself: what nobody has said of a kind,
    /// and that a kind never comes out which nobody has placed.
    pub fn of_a_kind(&self, found: &Finding) -> bool {
        let unplaced = |name: &String| {
            let mut open = self.guesses.of_kinds.iter().filter(|(_, open)| open.lost);
            open.any(|(taxon, _)| self.layer.matrix.taxon(*taxon).name == *name)
        };
        match (found.code, &found.place) {
            (Code::NobodyRecorded, _) => true,
            (Code::NeverComesOut, Place::Taxon(name)) => unplaced(name),
            _ => false,
        }
    }

    /// How the key stands: who asked, whether it holds, whether people tried it as it is now.
    pub fn standing(&self, drawn: &Drawn) -> Standing {
        Standing {
            asked_by: AskedBy::of(&self.key, self.claim.as_ref()),
            holds: self.opinion.holds(),
            tried: drawn.wish(WishField::Tried) == self.token(),
        }
    }

    /// What must be mended or looked at in the key.
    pub fn findings(&self) -> &[Finding] {
        &self.opinion.findings
    }
}

/// Effort over all kinds of a table as effort for one find.
pub fn a_find(matrix: &Matrix, effort: Share) -> Share {
    let weight: Share = matrix.taxa().iter().map(|taxon| taxon.weight).sum();
    effort / weight
}

/// The place of every couplet of a key that is a tree.
fn places(key: &Key) -> BTreeMap<u32, Fork> {
    let mut places = BTreeMap::new();
    let mut open = Vec::new();
    open.extend(key.couplets.first().map(|first| (first.number, Fork::default())));
    while let Some((number, at)) = open.pop() {
        let Some(couplet) = key.couplets.iter().find(|couplet| couplet.number == number) else {
            continue;
        };
        if places.insert(number, at.clone()).is_some() {
            continue;
        }
        for (yes, to) in [(true, &couplet.yes), (false, &couplet.no)] {
            if let Destination::Couplet(next) = to {
                open.push((*next, at.after(yes)));
            }
        }
    }
    places
}

/// The questions that people fixed, as a key; heaps that nobody went on with are its ends.
fn as_drawn(layer: &Layer) -> Key {
    let mut key = Key::default();
    let mut numbers = BTreeMap::new();
    let mut open = vec![Fork::default()];
    while let Some(at) = open.pop() {
        if layer.forks.get(&at).is_some_and(|heap| heap.ask.is_some()) {
            numbers.insert(at.clone(), numbers.len() as u32 + 1);
            open.push(at.after(false));
            open.push(at.after(true));
        }
    }
    for (at, number) in &numbers {
        let heap = &layer.forks[at];
        let to = |yes: bool| {
            let next = at.after(yes);
            match numbers.get(&next) {
                Some(number) => Destination::Couplet(*number),
                None => Destination::End(end(layer, &next)),
            }
        };
        key.couplets.push(Couplet {
            number: *number,
            back: None,
            wording: Wording::Question(String::new()),
            ask: heap.ask.clone(),
            yes: to(true),
            no: to(false),
            kept: true,
            line: None,
        });
    }
    key.couplets.sort_by_key(|couplet| couplet.number);
    key
}

fn end(layer: &Layer, at: &Fork) -> End {
    let kinds = layer.forks.get(at).map_or(&[][..], |heap| &heap.kinds);
    let place = |kind: &_| layer.kinds.iter().position(|known| known == kind).map(TaxonIx);
    End::of(kinds.iter().filter_map(place))
}

/// A way as letters, for an address: `yn` is yes, then no.
pub fn letters(at: &Fork) -> String {
    at.0.iter().map(|yes| if *yes { 'y' } else { 'n' }).collect()
}

/// So many bytes of the hash are enough to tell what a few windows saw apart.
const BYTES: usize = 8;

/// The token of these words, in this order.
pub fn token<S: AsRef<str>>(words: impl IntoIterator<Item = S>) -> String {
    let mut hash = Sha256::new();
    for part in words {
        // With its length, so that no two lists of words run together into the same; in as many
        // bytes on every machine.
        hash.update((part.as_ref().len() as u64).to_le_bytes());
        hash.update(part.as_ref());
    }
    hash.finalize().iter().take(BYTES).map(|byte| format!("{byte:02x}")).collect()
}
