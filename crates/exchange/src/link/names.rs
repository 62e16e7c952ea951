//! The kinds' names as people write them: which kind, if any, a word in a key means.
//!
//! From the names of a matrix (and those of a links file) to: exactly these kinds, perhaps
//! these, or none. Capitals, spaces, hyphens and articles do not matter; a slip of the pen is
//! asked back and never guessed. It does not read keys.

use std::cell::Cell;
use std::collections::{BTreeMap, BTreeSet};

use spinney_model::{Matrix, TaxonIx};

use super::Links;

/// What a written name may mean.
#[derive(Clone, Debug, PartialEq, Eq)]
pub(crate) enum Named {
    /// These kinds, without doubt.
    Exactly(Vec<TaxonIx>),
    /// Perhaps one of these: to be asked back.
    Perhaps(Vec<TaxonIx>),
    /// Nothing like it is in the table.
    Unknown,
}

/// Names longer than this are not compared letter by letter.
const LONGEST_COMPARED: usize = 80;
/// So many unknown names are compared letter by letter; a text with more is no key, and
/// comparing them all would take as long as names times kinds.
const MOST_COMPARED: u32 = 500;
/// What people add to a plant's name without changing the kind. It is asked back all the
/// same, since a strawberry tree is no strawberry.
const ADDED: [&str; 6] = [" tree", " bush", " shrub", " plant", " leaf", "s"];

/// All names of a matrix, folded.
pub(crate) struct Names<'l> {
    links: &'l Links,
    folded: BTreeMap<String, BTreeSet<TaxonIx>>,
    compared: Cell<u32>,
}

impl<'l> Names<'l> {
    /// The pupils', scientific, second and other names of every kind, and those of the links file.
    pub(crate) fn of(matrix: &Matrix, links: &'l Links) -> Self {
        let mut folded: BTreeMap<String, BTreeSet<TaxonIx>> = BTreeMap::new();
        // The pupils' name counts first: another kind's other name must not make it unsure.
        for (ix, taxon) in matrix.taxa().iter().enumerate() {
            folded.entry(fold(&taxon.name)).or_default().insert(TaxonIx(ix));
        }
        let pupils: BTreeSet<String> = folded.keys().cloned().collect();
        for (ix, taxon) in matrix.taxa().iter().enumerate() {
            let others = taxon.other_names.iter().map(|other| &other.name);
            let others = taxon.second_name.iter().chain(others);
            for name in taxon.scientific_name.iter().chain(others) {
                let name = fold(name);
                if !pupils.contains(&name) {
                    folded.entry(name).or_default().insert(TaxonIx(ix));
                }
            }
        }
        folded.remove("");
        Self { links, folded, compared: Cell::new(0) }
    }

    /// Whether the name is a kind's without doubt.
    pub(crate) fn exactly(&self, written: &str) -> Option<Vec<TaxonIx>> {
        let name = fold(written);
        if let Some(taxa) = self.links.named(&name) {
            return Some(taxa.to_vec());
        }
        let taxa = self.folded.get(&name)?;
        (taxa.len() == 1).then(|| taxa.iter().copied().collect())
    }

    /// What the written name may mean.
    pub(crate) fn look_up(&self, written: &str) -> Named {
        if let Some(taxa) = self.exactly(written) {
            return Named::Exactly(taxa);
        }
        let name = fold(written);
        if let Some(taxa) = self.folded.get(&name) {
            return Named::Perhaps(taxa.iter().copied().collect());
        }
        // "hazel (Corylus avellana)": both names, or the one before the bracket.
        if let Some((before, _)) = written.split_once('(')
            && let Some(taxa) = self.exactly(before)
        {
            return Named::Exactly(taxa);
        }
        let near = self.near(&name);
        if near.is_empty() { Named::Unknown } else { Named::Perhaps(near) }
    }

    /// The kinds whose names are nearest in spelling, if any is near enough.
    fn near(&self, name: &str) -> Vec<TaxonIx> {
        let length = name.chars().count();
        let short_enough = (3..=LONGEST_COMPARED).contains(&length);
        if !short_enough || self.compared.get() >= MOST_COMPARED {
            return Vec::new();
        }
        self.compared.set(self.compared.get() + 1);
        for added in ADDED {
            if let Some(taxa) =
                name.strip_suffix(added).and_then(|short| self.folded.get(short))
            {
                return taxa.iter().copied().collect();
            }
        }
        let allowed = (length / 4).max(1);
        let mut best = allowed + 1;
        let mut found = BTreeSet::new();
        for (known, taxa) in &self.folded {
            if known.chars().count().abs_diff(length) > allowed {
                continue;
            }
            let distance = strsim::osa_distance(known, name);
            if distance < best {
                best = distance;
                found.clear();
            }
            if distance == best && best <= allowed {
                found.extend(taxa.iter().copied());
            }
        }
        found.into_iter().collect()
    }

    /// The kinds whose one- or two-word names stand in a sentence as whole words.
    pub(crate) fn inside(&self, sentence: &str) -> Vec<(String, TaxonIx)> {
        let text = fold(&sentence.replace(|c: char| !c.is_alphanumeric() && c != '\'', " "));
        let words: Vec<&str> = text.split(' ').collect();
        let mut found = Vec::new();
        let mut at = 0;
        while at < words.len() {
            let longest = (1..=3.min(words.len() - at)).rev().find_map(|length| {
                let name = words[at..at + length].join(" ");
                let taxa = self.folded.get(&name)?;
                // A kind that is called "1" is named by no number, nor "fly" by "does it fly?".
                let before = at.checked_sub(1).map_or("", |at| words[at]);
                let does = matches!(words[0], "does" | "do" | "can" | "did") && before == "it";
                if length == 1 && (does || name.parse::<f64>().is_ok()) {
                    return None;
                }
                taxa.first().map(|taxon| (length, name, *taxon))
            });
            match longest {
                Some((length, name, taxon)) => {
                    found.push((name, taxon));
                    at += length;
                }
                None => at += 1,
            }
        }
        found
    }
}

/// A name without what does not distinguish: capitals, articles, hyphens, quotes, spaces.
pub(crate) fn fold(name: &str) -> String {
    let lower = name.to_lowercase();
    let plain: String = lower
        .chars()
        .filter(|c| !matches!(c, '\'' | '’' | '"' | '“' | '”' | '\u{ad}'))
        .map(|c| if matches!(c, '-' | '‐' | '‑' | '_') { ' ' } else { c })
        .collect();
    let mut words: Vec<&str> = plain.split_whitespace().collect();
    while words.len() > 1 && matches!(words[0], "a" | "an" | "the") {
        words.remove(0);
    }
    words.join(" ")
}
