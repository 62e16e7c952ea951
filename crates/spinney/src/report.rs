//! Findings, costs and claims in words, for a terminal or a text file.

mod forgiving;
mod revision;
mod wishes;

pub(crate) use forgiving::forgiving;
pub(crate) use revision::revision;
pub(crate) use wishes::{left_together, not_asked};

use std::fmt::Write;

use spinney_check::{Proof, Road};
use spinney_model::{
    Claim, Finding, LeftTogether, Matrix, Severity, Share, Stopped, TaxonIx, Wish, Wishes,
};
use spinney_voice::{Tongue, wording};

use crate::terminal::{self, Paint};

/// Text that may be coloured, and the language of the findings in it.
pub(crate) struct Ink {
    colour: bool,
    t: Tongue,
}

impl Ink {
    /// For a file.
    pub(crate) fn plain(t: Tongue) -> Self {
        Self { colour: false, t }
    }

    /// For the terminal.
    pub(crate) fn terminal(t: Tongue) -> Self {
        Self { colour: terminal::colour(), t }
    }

    fn paint(&self, paint: Paint, text: &str) -> String {
        if self.colour { terminal::painted(paint, text) } else { text.to_owned() }
    }

    pub(crate) fn bold(&self, text: &str) -> String {
        self.paint(Paint::Bold, text)
    }

    fn severity(&self, severity: Severity) -> String {
        let paint = match severity {
            Severity::MendThis => Paint::Red,
            Severity::WorthALook => Paint::Yellow,
            Severity::GoodToKnow => Paint::Cyan,
        };
        let words = match (self.t.tag(), severity) {
            ("en", _) => return self.paint(paint, severity.words()),
            (_, Severity::MendThis) => "severity-mend",
            (_, Severity::WorthALook) => "severity-look",
            (_, Severity::GoodToKnow) => "severity-know",
        };
        self.paint(paint, &self.t.say(words))
    }
}

/// A finding as the command line and the files for programs say it.
pub(crate) fn in_english(finding: &Finding) -> (String, String) {
    spinney_voice::finding(finding, Tongue::of_terminal())
}

/// How many questions of a key were checked.
pub(crate) fn coverage(opinion: &spinney_check::Report) -> String {
    spinney_voice::coverage(Tongue::of_terminal(), opinion.checked, opinion.questions)
}

/// The findings under a heading, the worst first.
pub(crate) fn findings(ink: &Ink, findings: &[Finding]) -> String {
    let mut text = String::new();
    let mut sorted: Vec<&Finding> = findings.iter().collect();
    sorted.sort_by_key(|finding| finding.severity);
    for finding in sorted {
        let Finding { severity, place, code, .. } = finding;
        let (sentence, remedy) = spinney_voice::finding(finding, ink.t);
        let place = spinney_voice::place(place, ink.t);
        let severity = ink.severity(*severity);
        text.push_str(&format!("{severity} · {place} [{}]\n", code.text()));
        push_wrapped(&mut text, "  ", &sentence);
        push_wrapped(&mut text, "  ", &remedy);
    }
    text
}

/// Indented, at most 88 columns, whole words.
pub(crate) fn push_wrapped(text: &mut String, indent: &str, sentence: &str) {
    let mut column = 0;
    for word in sentence.split_whitespace() {
        let width = word.chars().count();
        if column > 0 && indent.len() + column + width > 88 {
            text.push('\n');
            column = 0;
        }
        text.push_str(if column == 0 { indent } else { " " });
        text.push_str(word);
        column += 1 + width;
    }
    if column > 0 {
        text.push('\n');
    }
}

/// What must be mended or looked at, under a heading; empty: nothing.
pub(crate) fn to_look_at(ink: &Ink, findings: &[Finding]) -> String {
    let others: Vec<Finding> =
        findings.iter().filter(|f| f.severity != Severity::GoodToKnow).cloned().collect();
    if others.is_empty() {
        return String::new();
    }
    let heading = ink.bold("What to mend and what is worth a look, in the table and the key");
    format!("\n{heading}\n{}", self::findings(ink, &others))
}

/// What is claimed of a key, in a teacher's words. `refused` of the person's questions could
/// not be kept. First which kinds are left together.
pub(crate) fn claim(
    claim: &Claim,
    matrix: &Matrix,
    left: &[LeftTogether],
    refused: usize,
) -> String {
    let mut text = together(matrix, left);
    if claim.longest == 0 {
        push(&mut text, format_args!("Nothing in this table tells any of these kinds apart."));
        return text;
    }
    text.push_str(&wishes::not_asked(matrix, &claim.wishes));
    let mean = counted(claim.mean_questions, 1, "question");
    push(&mut text, format_args!("About {mean} per find, at most {}.", claim.longest));
    push(&mut text, format_args!("{}", proof(claim)));
    if refused > 0 {
        let (were, they) = if refused == 1 { ("One", "it") } else { ("Some", "them") };
        push(
            &mut text,
            format_args!(
                "{were} of your questions could not be kept; below is said why. The key does \
                 without {they}."
            ),
        );
    }
    text.push_str(&wishes::reached(claim, matrix));
    text.push_str(&wishes::prices(claim, matrix, refused));
    text
}

/// What a second opinion says of the proof, in a line of its own; nothing where a finding says
/// it.
pub(crate) fn second_opinion(claim: &Claim, proof: Proof) -> String {
    let says = match proof {
        _ if !claim.optimal() => return String::new(),
        Proof::Confirmed(Road::Certificate { .. }) => {
            "A second opinion, which knows nothing of the search, went through the proof and \
             agrees."
        }
        Proof::Confirmed(Road::EveryKey { .. }) => {
            "A second opinion, which knows nothing of the search, tried every key and finds the \
             same."
        }
        Proof::NotCarried { .. } => {
            "No second opinion on that: no proof comes with the key, and there are too many keys \
             to try them all."
        }
        Proof::NothingClaimed | Proof::Contradicted(_) => return String::new(),
    };
    let mut text = String::new();
    push(&mut text, format_args!("{says}"));
    text
}

/// What is claimed of a key that is proved, alone.
pub(crate) fn proved(claim: &Claim) -> String {
    let mut text = String::new();
    push(&mut text, format_args!("{}", proof(claim)));
    text
}

/// Which kinds a key leaves together, before anything good is said of it; empty: none.
pub(crate) fn together(matrix: &Matrix, left: &[LeftTogether]) -> String {
    let name = |taxon: TaxonIx| matrix.taxon(taxon).name.clone();
    let mut text = String::new();
    if let Some(sentence) = wording::left_together(Tongue::of_terminal(), name, left) {
        push(&mut text, format_args!("{sentence}"));
    }
    text
}

/// Whether a key is proved best, and if not, how far from it it can be.
fn proof(claim: &Claim) -> String {
    match claim.stopped {
        None if claim.wishes == Wishes::default() && touch_costs(claim) => {
            let spared = match claim.touching.is_empty() {
                true => "nobody touches what may hurt",
                false => "touch waits until nothing else separates",
            };
            format!("Proved: {spared}. No such key needs fewer questions.")
        }
        None if claim.wishes == Wishes::default() => {
            "Proved: no key from this table takes less.".to_owned()
        }
        None => "Proved: no key from this table does better by your wishes.".to_owned(),
        Some(Stopped::Budget) => format!(
            "Not proved best: the search stopped after {} heaps.{} A larger --budget goes on.",
            claim.heaps,
            could_be_saved(claim),
        ),
        Some(Stopped::Memory) => format!(
            "Not proved best: after {} heaps the search had all the memory that it may take.{} \
             A larger --memory goes on.",
            claim.heaps,
            could_be_saved(claim),
        ),
        Some(Stopped::Overflow) => format!(
            "Not proved best: this table has so many unknown cells and odd counts that the \
             search rounds.{} A larger --budget may come closer. Rounder counts (7 and 3 instead \
             of 713 and 311) and fewer unknown cells let it prove more.",
            could_be_saved(claim),
        ),
    }
}

/// Whether a key that sends people to touch what may hurt would take less.
fn touch_costs(claim: &Claim) -> bool {
    let nothing = Share::from_integer(0);
    claim.prices.iter().any(|price| price.wish == Wish::Touch && price.extra > nothing)
}

/// How far from the best a key can be, where anything is known of that.
fn could_be_saved(claim: &Claim) -> String {
    if claim.lower_bound == Share::from_integer(0) {
        return String::new();
    }
    let saved = (1.0 - part(claim.lower_bound, claim.total)) * 100.0;
    format!(" At most {} % of the questions could be saved by any other key.", shown(saved, 1))
}

/// One amount over another, for a person to read: long fractions have no exact quotient here.
pub(crate) fn part(one: Share, whole: Share) -> f64 {
    number(one) / number(whole)
}

/// What falls to each of so many; of a long fraction the nearest millionth.
pub(crate) fn each(amount: Share, all: Share) -> Share {
    if short(amount) && short(all) { amount / all } else { near(part(amount, all)) }
}

/// One amount less another; of long fractions the nearest millionth.
pub(crate) fn less(one: Share, other: Share) -> Share {
    if short(one) && short(other) { one - other } else { near(number(one) - number(other)) }
}

/// Whether products of two such numbers fit.
fn short(share: Share) -> bool {
    share.numer().unsigned_abs().max(share.denom().unsigned_abs()) < 1 << 62
}

fn near(number: f64) -> Share {
    Share::new((number * 1e6).round() as i128, 1_000_000)
}

fn number(share: Share) -> f64 {
    *share.numer() as f64 / *share.denom() as f64
}

/// A number with its word, in the singular where it is one: `1 question`, `0.25 questions`.
pub(crate) fn counted(number: Share, decimals: usize, word: &str) -> String {
    let number = decimal(number, decimals);
    let plural = if number == "1" { "" } else { "s" };
    format!("{number} {word}{plural}")
}

fn push(text: &mut String, line: std::fmt::Arguments<'_>) {
    let mut whole = String::new();
    write!(whole, "{line}").expect("writing to a string cannot fail");
    let mut wrapped = String::new();
    push_wrapped(&mut wrapped, "  ", &whole);
    text.push_str(&wrapped);
}

/// A share with so many decimals, no more than it has: `3.4`, `0.25`, `3`.
pub(crate) fn decimal(share: Share, decimals: usize) -> String {
    shown(number(share), decimals)
}

/// The same for a number that is measured rather than counted.
pub(crate) fn shown(number: f64, decimals: usize) -> String {
    let text = format!("{number:.decimals$}");
    if text.contains('.') {
        text.trim_end_matches('0').trim_end_matches('.').to_owned()
    } else {
        text
    }
}
