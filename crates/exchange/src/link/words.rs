//! Words and what they are short for: stems, and the trade's synonyms for a child's words.
//!
//! From a sentence to its words, each with the keys under which a table's words may know it
//! (`jagged` goes under `jag` and `tooth`). Only plain English inflections; no grammar. The
//! synonyms are those of field work with schools: `docs/key-text.md` lists them.

use std::collections::{BTreeMap, BTreeSet};

use spinney_model::Quantity;
use spinney_model::limits::KEY_LINE_BYTES;

use super::german;
use super::numbers;
use super::trade_words::{
    AMBIGUOUS, BODY, DENIALS, DESCRIBING, ELSEWHERE, FILLERS, NOT_UN, OPPOSITES, PARTS,
    SYNONYMS,
};

/// One word (or phrase) of a sentence.
#[derive(Clone, Debug, PartialEq, Eq)]
pub(super) struct Word {
    pub(super) text: String,
    /// What it may be known under, its own stem first; whether that is denied by `un-` or
    /// `-less` or by a `not` before it.
    pub(super) keys: Vec<(String, bool)>,
    pub(super) role: Role,
}

/// What a word does in a sentence.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) enum Role {
    /// It says something.
    Content,
    /// It holds the sentence together.
    Filler,
    /// A number.
    Number(Quantity),
    /// A sign or a mark between clauses.
    Mark(char),
}

impl Word {
    /// Whether both words are known under one key: whether by their own stems, and whether
    /// one is denied where the other is not.
    pub(super) fn meets(&self, other: &Self) -> Option<Meeting> {
        for (own_at, (own, own_denied)) in self.keys.iter().enumerate() {
            for (at, (key, denied)) in other.keys.iter().enumerate() {
                if own == key {
                    let by_itself = own_at == 0 && at == 0;
                    return Some(Meeting { by_itself, denied: own_denied != denied });
                }
            }
        }
        None
    }
}

/// How two words meet.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) struct Meeting {
    pub(super) by_itself: bool,
    pub(super) denied: bool,
}

/// The stems of a phrase, and the keys it goes under.
type Phrase = (Vec<String>, Vec<String>);

/// The synonyms, stemmed once.
pub(super) struct Lexicon {
    /// With each key whether the word means the opposite of it.
    single: BTreeMap<String, Vec<(String, bool)>>,
    /// Phrases by their first stem, the longest first.
    phrases: BTreeMap<String, Vec<Phrase>>,
    fillers: BTreeSet<&'static str>,
    /// Stems of [`OPPOSITES`], [`AMBIGUOUS`] and [`PARTS`].
    pub(super) opposites: Vec<(String, String)>,
    pub(super) ambiguous: BTreeSet<String>,
    pub(super) parts: BTreeSet<String>,
    describing: BTreeSet<String>,
}

impl Lexicon {
    pub(super) fn new() -> Self {
        let mut single: BTreeMap<String, Vec<(String, bool)>> = BTreeMap::new();
        let mut phrases: BTreeMap<Vec<String>, Vec<String>> = BTreeMap::new();
        for (key, words) in SYNONYMS {
            let denied = key.starts_with('!');
            let key = stem(key.trim_start_matches('!'));
            for entry in words.split(',') {
                let stems: Vec<String> = entry.split_whitespace().map(stem).collect();
                if stems.len() == 1 {
                    single.entry(stems[0].clone()).or_default().push((key.clone(), denied));
                } else {
                    phrases.entry(stems).or_default().push(key.clone());
                }
            }
        }
        let mut by_first: BTreeMap<String, Vec<Phrase>> = BTreeMap::new();
        for (stems, keys) in phrases {
            by_first.entry(stems[0].clone()).or_default().push((stems, keys));
        }
        for entries in by_first.values_mut() {
            entries.sort_by_key(|(stems, _)| usize::MAX - stems.len());
        }
        Self {
            single,
            phrases: by_first,
            fillers: FILLERS.split_whitespace().collect(),
            opposites: OPPOSITES
                .iter()
                .map(|(word, other)| (stem(word), stem(other)))
                .collect(),
            ambiguous: AMBIGUOUS.iter().map(|word| stem(word)).collect(),
            parts: PARTS.split_whitespace().map(stem).collect(),
            describing: DESCRIBING.iter().map(|word| stem(word)).collect(),
        }
    }

    /// Whether a word names a part of a plant or animal.
    pub(super) fn is_part(&self, word: &Word) -> bool {
        word.role == Role::Content && word.keys.iter().any(|(key, _)| self.parts.contains(key))
    }

    /// Whether a word of the trade says how something is.
    pub(super) fn describes(&self, word: &Word) -> bool {
        word.keys.iter().any(|(key, _)| self.describing.contains(key))
    }

    /// The words of a sentence, with what is denied marked.
    pub(super) fn words(&self, sentence: &str) -> Vec<Word> {
        let tokens = halves(german::in_english(tokens(sentence)));
        let stems: Vec<String> = tokens.iter().map(|token| stem(token)).collect();
        let elsewhere = elsewhere(&tokens);
        let mut words = Vec::new();
        let mut at = 0;
        while at < tokens.len() {
            if let Some((length, keys)) = self.phrase(&stems[at..]) {
                let text = tokens[at..at + length].join(" ");
                let keys = keys.iter().map(|key| (key.clone(), false)).collect();
                words.push(Word { text, keys, role: Role::Content });
                at += length;
            } else {
                let mut word = self.word(&tokens[at], &stems[at], Around::of(&tokens, at));
                if word.role == Role::Content && elsewhere.contains(&tokens[at].as_str()) {
                    word.role = Role::Filler;
                }
                words.push(word);
                at += 1;
            }
        }
        deny(&mut words);
        words
    }

    fn phrase(&self, stems: &[String]) -> Option<(usize, &Vec<String>)> {
        let entries = self.phrases.get(stems.first()?)?;
        entries.iter().find(|(phrase, _)| stems.starts_with(phrase)).map(|(p, k)| (p.len(), k))
    }

    fn word(&self, text: &str, stemmed: &str, around: Around) -> Word {
        let text = text.to_owned();
        if let Some(mark) = text.chars().next().filter(|c| !c.is_alphanumeric()) {
            return Word { text, keys: Vec::new(), role: Role::Mark(mark) };
        }
        if !around.one_is_no_number(&text)
            && let Some(number) = numbers::number(&text)
        {
            return Word {
                keys: vec![(text.clone(), false)],
                text,
                role: Role::Number(number),
            };
        }
        let filler = self.fillers.contains(text.as_str()) || around.only_stresses(&text);
        if around.measures_with(&text) {
            return Word { text, keys: Vec::new(), role: Role::Content };
        }
        let mut keys = Vec::new();
        let add = |keys: &mut Vec<(String, bool)>, stem: &str, denied: bool| {
            keys.push((stem.to_owned(), denied));
            let more = self.single.get(stem).into_iter().flatten();
            keys.extend(more.map(|(key, opposite)| (key.clone(), denied != *opposite)));
        };
        if let Some(base) = denied_base(&text) {
            add(&mut keys, &stem(&base), true);
        } else {
            add(&mut keys, stemmed, false);
        }
        let role = if filler { Role::Filler } else { Role::Content };
        Word { text, keys, role }
    }
}

/// The small words of the language in which a sentence begins, where that is not English.
fn elsewhere(tokens: &[String]) -> Vec<&'static str> {
    let begins = |openers: &str| {
        let first = tokens.first().map_or("", String::as_str);
        tokens.len() > 2 && openers.split(' ').any(|opener| opener == first)
    };
    let language = ELSEWHERE.iter().find(|(openers, _)| begins(openers));
    language.map(|(_, small)| small.split(' ').collect()).unwrap_or_default()
}

/// The words beside a word.
#[derive(Clone, Copy)]
struct Around<'t> {
    tokens: &'t [String],
    at: usize,
}

impl<'t> Around<'t> {
    fn of(tokens: &'t [String], at: usize) -> Self {
        Self { tokens, at }
    }

    fn back(&self, steps: usize) -> &'t str {
        self.at.checked_sub(steps).map_or("", |at| self.tokens[at].as_str())
    }

    /// "The one with lobes" and "on one stalk" count nothing.
    fn one_is_no_number(&self, text: &str) -> bool {
        let points = ["this", "that", "the", "which", "each", "every"];
        let places = ["on", "in", "at", "of", "from", "along"];
        let next = self.tokens.get(self.at + 1).map_or("", String::as_str);
        let whole =
            ["whole", "single", "another", "leaf", "side", "point", "place", "same", "on"];
        let behind = points.contains(&self.back(1)) || places.contains(&self.back(1));
        text == "one" && (behind || whole.contains(&next))
    }

    /// "Right through" and "straight across" say no more than "through" and "across"; "all
    /// round the edge" and "the whole way round" say where and not how.
    fn only_stresses(&self, text: &str) -> bool {
        let next = self.tokens.get(self.at + 1).map_or("", String::as_str);
        if text == "round" {
            return matches!(self.back(1), "way" | "all")
                || matches!(next, "the" | "its" | "it");
        }
        if text == "very" {
            return matches!(next, "tip" | "end" | "top" | "bottom" | "edge" | "middle");
        }
        matches!(text, "right" | "straight" | "clean")
            && matches!(next, "through" | "across" | "along" | "round" | "around" | "down")
    }

    /// "In your hand" and "a finger wide" speak of the person's own hand, "like your hand"
    /// of a shape.
    fn measures_with(&self, text: &str) -> bool {
        let next = self.tokens.get(self.at + 1).map_or("", String::as_str);
        let own = matches!(self.back(1), "your" | "my" | "our" | "his" | "her" | "their")
            && !matches!(self.back(2), "like" | "shaped" | "resemble" | "resembles");
        BODY.contains(&text) && (own || matches!(next, "wide" | "long" | "thick" | "high"))
    }
}

/// The plain stems of a sentence with its small words, each with whether it is denied.
pub(super) fn plain(words: &[Word]) -> Vec<(String, bool)> {
    let mut denied = false;
    let mut found = Vec::new();
    for word in words {
        denied = denied_behind(word, denied);
        if !matches!(word.role, Role::Mark(_)) {
            found.extend(word.text.split(' ').map(|text| (stem(text), denied)));
        }
    }
    found
}

/// What `un-`, `non` or `-less` denies.
fn denied_base(text: &str) -> Option<String> {
    if let Some(base) = text.strip_suffix("less") {
        return (base.len() >= 3 && base != "reg").then(|| base.to_owned());
    }
    let base = text.strip_prefix("un").or_else(|| text.strip_prefix("non"))?;
    (base.len() >= 4 && !NOT_UN.contains(&text)).then(|| base.to_owned())
}

/// Whether a word denies what follows it.
pub(super) fn denies(word: &Word) -> bool {
    DENIALS.contains(&word.text.as_str())
}

/// Marks what stands behind a denial, up to the end of its clause.
fn deny(words: &mut [Word]) {
    let mut denied = false;
    for word in words {
        denied = denied_behind(word, denied);
        if denied && !denies(word) {
            for (_, key_denied) in &mut word.keys {
                *key_denied = !*key_denied;
            }
        }
    }
}

/// Whether what follows a word is denied, given whether it was before it.
fn denied_behind(word: &Word, denied: bool) -> bool {
    let clause_ends = matches!(word.role, Role::Mark(',' | ';' | '.' | '?' | '!' | ':'))
        || matches!(word.text.as_str(), "but" | "and" | "with");
    denies(word) || (denied && !clause_ends)
}

/// A sentence longer than this is no question; the rest is not looked at.
const MOST_TOKENS: usize = 120;

/// Words, numbers and marks, in small letters.
pub(super) fn tokens(sentence: &str) -> Vec<String> {
    // Nobody reads out more, and what follows is compared again and again.
    let sentence = &sentence[..sentence.floor_char_boundary(KEY_LINE_BYTES)];
    let lower = sentence.to_lowercase().replace('’', "'");
    let mut found: Vec<String> = Vec::new();
    let mut chars = lower.chars().peekable();
    let mut before = ' ';
    while let Some(c) = chars.next() {
        if found.len() >= MOST_TOKENS {
            break;
        }
        let mut token = String::from(c);
        // ".5 cm" is half a centimetre; in "2.. 5" and "edge.5" the point ends something.
        let bare = c == '.'
            && !before.is_alphanumeric()
            && before != '.'
            && chars.peek().is_some_and(char::is_ascii_digit);
        before = c;
        if c.is_ascii_digit() || bare {
            let mut pointed = bare;
            if bare {
                token.insert(0, '0');
            }
            while let Some(next) = chars.peek().copied() {
                let mut ahead = chars.clone();
                ahead.next();
                let digit = ahead.peek().is_some_and(char::is_ascii_digit);
                let point = matches!(next, '.' | ',') && digit && !pointed;
                if !next.is_ascii_digit() && !point {
                    break;
                }
                pointed |= point;
                before = next;
                token.push(next);
                chars.next();
            }
        } else if c.is_alphabetic() {
            while let Some(next) = chars.next_if(|c| c.is_alphabetic() || *c == '\'') {
                before = next;
                token.push(next);
            }
        } else if c.is_whitespace() || c.is_control() {
            continue;
        }
        found.push(token);
    }
    found
}

/// "Half a centimetre" and "two and a half centimetres" as one number before its unit.
fn halves(tokens: Vec<String>) -> Vec<String> {
    let mut found: Vec<String> = Vec::with_capacity(tokens.len());
    let mut at = 0;
    while at < tokens.len() {
        let text = |ahead: usize| tokens.get(at + ahead).map_or("", String::as_str);
        let whole = numbers::number(text(0)).filter(|number| number.thousandths() % 1_000 == 0);
        if text(0) == "half"
            && matches!(text(1), "a" | "an")
            && numbers::unit(text(2)).is_some()
        {
            found.push("0.5".to_owned());
            at += 2;
        } else if let Some(whole) = whole
            && (text(1), text(2), text(3)) == ("and", "a", "half")
            && numbers::unit(text(4)).is_some()
        {
            found.push(format!("{}.5", whole.thousandths() / 1_000));
            at += 4;
        } else {
            found.push(tokens[at].clone());
            at += 1;
        }
    }
    found
}

/// The plain stem of an English word: `teeth` and `toothed` are `tooth`.
pub(super) fn stem(word: &str) -> String {
    let word = match word {
        "teeth" => "tooth",
        "leaves" | "leafs" => "leaf",
        "halves" => "half",
        "feet" => "foot",
        "edged" => "edge",
        _ => word,
    };
    let mut stem = word.trim_end_matches("'s").to_owned();
    if stem.len() < 4 || !stem.is_ascii() {
        return stem;
    }
    for (ending, instead) in [("ies", "y"), ("sses", "ss"), ("xes", "x"), ("ches", "ch")] {
        if let Some(base) = stem.strip_suffix(ending) {
            stem = format!("{base}{instead}");
            break;
        }
    }
    if stem.ends_with('s') && !stem.ends_with("ss") && !stem.ends_with("us") {
        stem.pop();
    }
    for ending in ["ing", "ed"] {
        if let Some(base) = stem.strip_suffix(ending)
            && base.len() >= 3
        {
            stem = base.to_owned();
            // "swimming" is to swim, but "rolling" is to roll.
            let last = stem.as_bytes()[stem.len() - 1];
            let doubled = stem.len() > 3 && stem.as_bytes()[stem.len() - 2] == last;
            if doubled && !b"aeiouls".contains(&last) {
                stem.pop();
            }
            break;
        }
    }
    while stem.len() > 3 && stem.ends_with(['e', 'y']) {
        stem.pop();
    }
    stem
}
