//! The links file: what a person says their questions mean, one line each.
//!
//! ```text
//! # hedge key of the owls
//! question 3: edge = toothed or spiny
//! question 4: stalk length >= 22.5 mm
//! question 5: number of leaflets < 5
//! question 7: nothing in the table
//! name Hasel = hazel
//! ```
//!
//! From such text to [`Links`] with findings about lines that cannot be used, and back. The
//! format is our own; `docs/key-text.md` describes it.

use std::collections::{BTreeMap, BTreeSet};

use spinney_model::{
    Ask, Asked, CharacterIx, Finding, Key, LinksLine, Matrix, OfLinks, Place, Quantity, Scale,
    StateIx, TaxonIx, Unit,
};

use super::names::{Named, Names, fold};
use super::numbers;
use super::quotes::{quote, unquote};

/// What a person confirmed: the meaning of questions and of names.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct Links {
    questions: BTreeMap<u32, Link>,
    /// By folded name: as written, and the kinds meant.
    names: BTreeMap<String, (String, Vec<TaxonIx>)>,
}

/// What a question means.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum Link {
    /// It asks this.
    Asks(Ask),
    /// It asks for nothing that stands in the table; nobody need ask again.
    Nothing,
}

impl Links {
    /// Reads a links file. Lines that cannot be used are findings; the others are kept.
    pub fn read(text: &str, matrix: &Matrix) -> (Self, Vec<Finding>) {
        let mut links = Self::default();
        let mut findings = Vec::new();
        let none = Self::default();
        let names = Names::of(matrix, &none);
        let text = text.trim_start_matches('\u{feff}').replace("\r\n", "\n");
        for (at, line) in text.split(['\n', '\r']).enumerate() {
            let line = line.trim();
            if line.is_empty() || line.starts_with('#') {
                continue;
            }
            if let Err(why) = links.line(line, matrix, &names) {
                let fact = OfLinks::Line { line: at + 1, why };
                findings.push(Finding::of(Place::Line(at + 1), fact));
            }
        }
        (links, findings)
    }

    /// The links that a key carries in itself.
    pub fn of(key: &Key) -> Self {
        let mut links = Self::default();
        for couplet in &key.couplets {
            if let Some(ask) = &couplet.ask {
                links.questions.entry(couplet.number).or_insert(Link::Asks(ask.clone()));
            }
        }
        links
    }

    /// What a question means, if somebody said.
    pub fn question(&self, number: u32) -> Option<&Link> {
        self.questions.get(&number)
    }

    /// Says what a question means.
    pub fn set(&mut self, number: u32, link: Link) {
        self.questions.insert(number, link);
    }

    /// The numbers of all questions somebody said something of.
    pub fn numbers(&self) -> impl Iterator<Item = u32> + '_ {
        self.questions.keys().copied()
    }

    /// The kinds meant by a folded name.
    pub(crate) fn named(&self, folded: &str) -> Option<&[TaxonIx]> {
        self.names.get(folded).map(|(_, taxa)| taxa.as_slice())
    }

    /// Writes the file that [`Links::read`] reads.
    pub fn write(&self, matrix: &Matrix) -> String {
        let mut text = String::new();
        for (number, link) in &self.questions {
            let line = match link {
                Link::Asks(ask) => question_line(*number, ask, matrix),
                Link::Nothing => format!("question {number}: nothing in the table"),
            };
            text.push_str(&line);
            text.push('\n');
        }
        for (written, taxa) in self.names.values() {
            let kinds: Vec<String> =
                taxa.iter().map(|ix| word(&matrix.taxon(*ix).name)).collect();
            text.push_str(&format!("name {} = {}\n", word(written), kinds.join(" or ")));
        }
        text
    }

    fn line(&mut self, line: &str, matrix: &Matrix, names: &Names) -> Result<(), LinksLine> {
        let lower = line.to_ascii_lowercase();
        if lower.starts_with("name ") {
            return self.name(line["name ".len()..].trim(), matrix, names);
        }
        let usual = || LinksLine::Unread { text: shortened(line) };
        let rest = lower.strip_prefix("question").ok_or_else(usual)?.trim_start();
        let digits = rest.bytes().take_while(u8::is_ascii_digit).count();
        let number = rest[..digits].parse::<u32>().map_err(|_| usual())?;
        let at = line.len() - rest.len() + digits;
        let meaning =
            line[at..].trim_start().strip_prefix([':', '.']).ok_or_else(usual)?.trim();
        let nothing = fold(meaning);
        let link = if matches!(nothing.as_str(), "nothing" | "nothing in the table" | "none") {
            Link::Nothing
        } else {
            Link::Asks(meaning_of(number, meaning, matrix)?)
        };
        if self.questions.contains_key(&number) {
            return Err(LinksLine::Again { question: number });
        }
        self.questions.insert(number, link);
        Ok(())
    }

    fn name(&mut self, line: &str, matrix: &Matrix, names: &Names) -> Result<(), LinksLine> {
        let example = || matrix.taxa().first().map(|taxon| taxon.name.clone());
        let (written, rest) = taken(line, &["="])
            .ok_or_else(|| LinksLine::NoEquals { text: shortened(line), example: example() })?;
        let mut taxa = BTreeSet::new();
        for kind in listed(rest.1, |whole| names.exactly(whole).is_some()) {
            match names.look_up(&kind) {
                Named::Exactly(found) => taxa.extend(found),
                Named::Perhaps(_) | Named::Unknown => {
                    let (text, example) = (shortened(&kind), example());
                    return Err(LinksLine::NoSuchKind { text, example });
                }
            }
        }
        if taxa.is_empty() || fold(&written).is_empty() {
            return Err(LinksLine::NoKind { example: example() });
        }
        self.names.insert(fold(&written), (written, taxa.into_iter().collect()));
        Ok(())
    }
}

/// Signs and words between a character and what is asked of it.
const SIGNS: [&str; 11] =
    [">=", "≥", ">", "<=", "≤", "<", "=", " at least ", " below ", " under ", " is "];

/// Words that do the same where no sign stands: `stalk length over 2 mm`. A name may hold one of
/// them.
const WORDED: [&str; 7] =
    [" more than ", " less than ", " fewer than ", " at most ", " up to ", " over ", " above "];

/// Reads `edge = toothed or spiny`, `stalk length >= 22.5 mm`, `leaflets < 5`.
fn meaning_of(question: u32, meaning: &str, matrix: &Matrix) -> Result<Ask, LinksLine> {
    let found = taken(meaning, &SIGNS).or_else(|| taken(meaning, &WORDED));
    let (name, (sign, asked)) =
        found.ok_or_else(|| LinksLine::NothingAsked { text: shortened(meaning) })?;
    let character = character(&name, matrix)?;
    let column = matrix.character(character);
    let yes = match &column.scale {
        Scale::Words { states } => {
            if !matches!(sign, "=" | " is ") {
                let first = states.first().cloned().unwrap_or_default();
                let instead = format!("{} = {}", word(&column.name), word(&first));
                return Err(LinksLine::NumberOfWords { about: column.name.clone(), instead });
            }
            Asked::States(states_of(asked, &column.name, states)?)
        }
        Scale::Counts | Scale::Measure { .. } => {
            threshold(sign, asked, (question, character), matrix)?
        }
    };
    Ok(Ask { character, yes })
}

fn character(name: &str, matrix: &Matrix) -> Result<CharacterIx, LinksLine> {
    let all = || matrix.character_indices();
    let exact = all().find(|ix| matrix.character(*ix).name.trim() == name.trim());
    let folded = fold(name);
    let found = exact.or_else(|| all().find(|ix| fold(&matrix.character(*ix).name) == folded));
    found.ok_or_else(|| {
        let known = matrix.characters().iter().take(30).map(|c| word(&c.name)).collect();
        LinksLine::NoSuchColumn { text: shortened(name), known }
    })
}

fn states_of(
    asked: &str,
    column: &str,
    states: &[String],
) -> Result<BTreeSet<StateIx>, LinksLine> {
    let find = |text: &str| {
        let exact = states.iter().position(|state| state == text.trim());
        exact.or_else(|| states.iter().position(|state| fold(state) == fold(text)))
    };
    let (about, known) =
        (|| column.to_owned(), || states.iter().map(|state| word(state)).collect());
    let mut found = BTreeSet::new();
    for state in listed(asked, |whole| find(whole).is_some()) {
        let ix = find(&state).ok_or_else(|| {
            let text = shortened(&state);
            LinksLine::NoSuchState { about: about(), text, known: known() }
        })?;
        found.insert(StateIx(ix));
    }
    if found.is_empty() || found.len() == states.len() {
        return Err(LinksLine::NotSomeStates { about: about(), known: known() });
    }
    Ok(found)
}

/// Which side of a number is asked for.
#[derive(Clone, Copy)]
enum Side {
    AtLeast,
    Above,
    Below,
    AtMost,
}

/// The side that a sign or a word before a number says; None: exactly the number.
fn side(sign: &str) -> Option<Side> {
    match sign.trim() {
        ">=" | "≥" | "at least" => Some(Side::AtLeast),
        ">" | "over" | "above" | "more than" => Some(Side::Above),
        "<" | "below" | "under" | "less than" | "fewer than" => Some(Side::Below),
        "<=" | "≤" | "at most" | "up to" => Some(Side::AtMost),
        _ => None,
    }
}

/// The side and the number behind an equals sign: `= over 2 mm`, `= 2 mm or more`.
fn sided(asked: &str) -> Option<(Side, &str)> {
    let worded = SIGNS.iter().chain(&WORDED).filter(|sign| side(sign).is_some());
    let before = worded.filter_map(|sign| {
        let rest = asked.get(..sign.trim().len())?.eq_ignore_ascii_case(sign.trim());
        Some((side(sign)?, asked[sign.trim().len()..].trim())).filter(|_| rest)
    });
    let behind = [
        (" or more", Side::AtLeast),
        (" or longer", Side::AtLeast),
        (" or less", Side::AtMost),
        (" or fewer", Side::AtMost),
    ];
    let behind = behind.into_iter().filter_map(|(words, side)| {
        let at = asked.len().checked_sub(words.len())?;
        let ends = asked.get(at..)?.eq_ignore_ascii_case(words);
        ends.then(|| (side, asked[..at].trim()))
    });
    before.max_by_key(|(_, rest)| usize::MAX - rest.len()).or_else(|| behind.into_iter().next())
}

fn threshold(
    sign: &str,
    asked: &str,
    (question, character): (u32, CharacterIx),
    matrix: &Matrix,
) -> Result<Asked, LinksLine> {
    let column = matrix.character(character);
    let (name, unit) = match column.scale {
        Scale::Measure { unit, .. } => (&column.name, Some(unit)),
        Scale::Words { .. } | Scale::Counts => (&column.name, None),
    };
    let sign_of = |unit: Option<Unit>| unit.map(Unit::sign).filter(|sign| !sign.is_empty());
    let said = side(sign).map(|side| (side, asked)).or_else(|| sided(asked));
    let asked = said.map_or(asked, |(_, asked)| asked);
    let Some((number, of)) = numbers::quantity(asked) else {
        let (text, column, unit) = (shortened(asked), word(name), sign_of(unit));
        return Err(LinksLine::NumberUnread { text, column, unit });
    };
    let fits = match unit {
        None => of.is_none() && number.thousandths() % 1000 == 0,
        Some(unit) => of.is_none_or(|of| of == unit),
    };
    if !fits {
        let (column, unit) = (word(name), sign_of(unit));
        return Err(LinksLine::NumberUnfit { about: name.clone(), column, unit });
    }
    let whole = if unit.is_none() { 1_000 } else { 0 };
    let next = Quantity::from_thousandths(number.thousandths().saturating_add(whole));
    match said {
        Some((Side::AtLeast, _)) => Ok(Asked::AtLeast(number)),
        Some((Side::Above, _)) => Ok(Asked::AtLeast(next)),
        Some((Side::Below, _)) => Ok(Asked::Below(number)),
        Some((Side::AtMost, _)) => Ok(Asked::Below(next)),
        None => {
            let line = |yes| question_line(question, &Ask { character, yes }, matrix);
            Err(LinksLine::Exactly {
                about: name.clone(),
                number: asked.trim().to_owned(),
                at_least: line(Asked::AtLeast(number)),
                below: line(Asked::Below(number)),
            })
        }
    }
}

/// Takes a name (in quotation marks or not) up to the first of some signs.
fn taken<'t>(
    text: &'t str,
    signs: &[&'static str],
) -> Option<(String, (&'static str, &'t str))> {
    if text.starts_with('"') {
        let (name, rest) = unquote(text);
        let sign = signs.iter().find(|sign| rest.trim_start().starts_with(sign.trim()))?;
        return Some((name, (sign, rest.trim_start()[sign.trim().len()..].trim())));
    }
    let lower = text.to_ascii_lowercase();
    let (at, sign) = signs
        .iter()
        .filter_map(|sign| lower.find(sign).map(|at| (at, *sign)))
        .min_by_key(|(at, sign)| (*at, usize::MAX - sign.len()))?;
    Some((text[..at].trim().to_owned(), (sign, text[at + sign.len()..].trim())))
}

/// A list of names: the whole of it, or parts between `or`, commas and strokes.
fn listed(text: &str, known: impl Fn(&str) -> bool) -> Vec<String> {
    let text = text.trim();
    if text.starts_with('"') {
        let mut found = Vec::new();
        let mut rest = text;
        while let Some(at) = rest.find('"') {
            let (name, behind) = unquote(&rest[at..]);
            found.push(name);
            rest = behind;
        }
        return found;
    }
    if known(text) {
        return vec![text.to_owned()];
    }
    let commas = text.replace(" or ", ",").replace(" OR ", ",");
    let parts = commas.split([',', '/']).map(str::trim);
    parts.filter(|part| !part.is_empty()).map(str::to_owned).collect()
}

/// A name as it may stand in the file: in quotation marks if it holds a sign of the file's.
fn word(name: &str) -> String {
    let flat = name.split_whitespace().collect::<Vec<_>>().join(" ");
    let padded = format!(" {} ", flat.to_lowercase());
    let signs = SIGNS.iter().chain(&[" or ", ",", "/", "\"", "#", ":"]);
    if flat.is_empty() || signs.into_iter().any(|sign| padded.contains(sign)) {
        quote(&flat)
    } else {
        flat
    }
}

/// The line of a links file that says what a question asks.
pub(crate) fn question_line(number: u32, ask: &Ask, matrix: &Matrix) -> String {
    format!("question {number}: {}", meaning(ask, matrix))
}

/// What a question asks, as the file has it: `edge = toothed`.
pub(crate) fn meaning(ask: &Ask, matrix: &Matrix) -> String {
    let column = matrix.character(ask.character);
    let name = word(&column.name);
    let measured = |number: &Quantity| {
        let sign = match column.scale {
            Scale::Measure { unit, .. } => unit.sign(),
            Scale::Words { .. } | Scale::Counts => "",
        };
        format!("{number} {sign}").trim_end().to_owned()
    };
    match (&ask.yes, &column.scale) {
        (Asked::States(asked), Scale::Words { states }) => {
            let words: Vec<String> =
                asked.iter().filter_map(|ix| states.get(ix.0)).map(|s| word(s)).collect();
            // One name in quotation marks puts the whole list in them.
            let any = words.iter().any(|word| word.starts_with('"'));
            let all: Vec<String> = words
                .into_iter()
                .map(|w| if any && !w.starts_with('"') { format!("\"{w}\"") } else { w })
                .collect();
            format!("{name} = {}", all.join(" or "))
        }
        (Asked::States(_), _) => format!("{name} ="),
        (Asked::AtLeast(number), _) => format!("{name} >= {}", measured(number)),
        (Asked::Below(number), _) => format!("{name} < {}", measured(number)),
    }
}

/// A piece of the file as it is shown in a sentence.
fn shortened(text: &str) -> String {
    let short: String = text.chars().take(60).collect();
    if short.len() < text.len() { format!("{short}…") } else { short }
}
