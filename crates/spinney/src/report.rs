//! Findings, costs and claims in words, for a terminal or a text file.

mod forgiving;
mod revision;
mod wishes;

pub(crate) use forgiving::forgiving;
pub(crate) use revision::revision;
pub(crate) use wishes::{left_together, not_asked};

use std::fmt::Display;
use std::path::Path;

use spinney_check::{Proof, Road};
use spinney_model::{
    Claim, Finding, LeftTogether, Matrix, Severity, Share, Stopped, TaxonIx, Wish, Wishes,
};
use spinney_press::{Booklet, second_language};
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

    /// The language.
    pub(crate) fn t(&self) -> Tongue {
        self.t
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
        let words = match severity {
            Severity::MendThis => "severity-mend",
            Severity::WorthALook => "severity-look",
            Severity::GoodToKnow => "severity-know",
        };
        self.paint(paint, &self.t.say(words))
    }
}

/// A finding as the command line and the files for programs say it.
pub(crate) fn in_english(finding: &Finding) -> (String, String) {
    spinney_voice::finding(finding, Tongue::of_terminal())
}

/// How many questions of a key were checked.
pub(crate) fn coverage(t: Tongue, opinion: &spinney_check::Report) -> String {
    spinney_voice::coverage(t, opinion.checked, opinion.questions)
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

/// Which files were written into a folder.
pub(crate) fn written(t: Tongue, folder: &Path, files: &[String]) -> String {
    let texts: [(&str, &dyn Display); 2] =
        [("folder", &folder.display()), ("files", &files.join(", "))];
    format!("\n{}\n", t.with("run-written", &texts))
}

/// What of the second language is missing on the sheets; empty: they are in one language.
pub(crate) fn second_language(booklet: &Booklet<'_>) -> String {
    let Some(missing) = second_language::missing(booklet) else { return String::new() };
    let mut text = String::from("\n");
    for sentence in missing.told(booklet.tongue) {
        push_wrapped(&mut text, "", &sentence);
    }
    text
}

/// Why a sheet is not among them, by the message that says it.
pub(crate) fn not_written(t: Tongue, file: &str, why: &str) -> String {
    let (sentence, remedy) = (t.say(why), t.say(&format!("{why}-remedy")));
    let texts: [(&str, &dyn Display); 3] =
        [("file", &file), ("sentence", &sentence), ("remedy", &remedy)];
    format!("\n{}\n", t.with("run-not-written", &texts))
}

/// Which sheets have no large print.
pub(crate) fn not_large(t: Tongue, files: &[String]) -> String {
    format!("\n{}\n", t.with("run-not-large", &[("files", &files.join(", "))]))
}

/// So many steps and pictures of a collection are in a file now.
pub(crate) fn steps_and_pictures(
    t: Tongue,
    message: &str,
    (steps, pictures): (usize, usize),
    file: &Path,
) -> String {
    let mut what = vec![t.count("run-steps", steps)];
    if pictures > 0 {
        what.push(t.count("run-pictures", pictures));
    }
    let what = spinney_voice::all(t, &what);
    let texts: [(&str, &dyn Display); 2] = [("what", &what), ("file", &file.display())];
    t.count_with(message, steps + pictures, &texts)
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
    let heading = ink.bold(&ink.t.say("report-to-look-at"));
    format!("\n{heading}\n{}", self::findings(ink, &others))
}

/// What is claimed of a key, in a teacher's words. `refused` of the person's questions could
/// not be kept. First which kinds are left together.
pub(crate) fn claim(
    t: Tongue,
    claim: &Claim,
    matrix: &Matrix,
    left: &[LeftTogether],
    refused: usize,
) -> String {
    let mut text = together(t, matrix, left);
    if claim.longest == 0 {
        push(&mut text, &t.say("report-nothing-tells-apart"));
        return text;
    }
    text.push_str(&wishes::not_asked(t, matrix, &claim.wishes));
    let mean = questions(t, claim.mean_questions, 1);
    push(
        &mut text,
        &t.with("report-mean", &[("questions", &mean), ("longest", &claim.longest)]),
    );
    push(&mut text, &proof(t, claim));
    if refused > 0 {
        push(&mut text, &t.count("report-not-kept", refused));
    }
    text.push_str(&wishes::reached(t, claim, matrix));
    text.push_str(&wishes::prices(t, claim, matrix, refused));
    text
}

/// What a second opinion says of the proof, in a line of its own; nothing where a finding says
/// it.
pub(crate) fn second_opinion(t: Tongue, claim: &Claim, proof: Proof) -> String {
    let says = match proof {
        _ if !claim.optimal() => return String::new(),
        Proof::Confirmed(Road::Certificate { .. }) => "report-second-proof",
        Proof::Confirmed(Road::EveryKey { .. }) => "report-second-every-key",
        Proof::NotCarried { .. } => "report-second-none",
        Proof::NothingClaimed | Proof::Contradicted(_) => return String::new(),
    };
    let mut text = String::new();
    push(&mut text, &t.say(says));
    text
}

/// What is claimed of a key that is proved, alone.
pub(crate) fn proved(t: Tongue, claim: &Claim) -> String {
    let mut text = String::new();
    push(&mut text, &proof(t, claim));
    text
}

/// Which kinds a key leaves together, before anything good is said of it; empty: none.
pub(crate) fn together(t: Tongue, matrix: &Matrix, left: &[LeftTogether]) -> String {
    let name = |taxon: TaxonIx| matrix.taxon(taxon).name.clone();
    let mut text = String::new();
    if let Some(sentence) = wording::left_together(t, name, left) {
        push(&mut text, &sentence);
    }
    text
}

/// Whether a key is proved best, and if not, how far from it it can be.
fn proof(t: Tongue, claim: &Claim) -> String {
    let heaps = usize::try_from(claim.heaps).unwrap_or(usize::MAX);
    let (why, further) = match claim.stopped {
        None if claim.wishes == Wishes::default() && touch_costs(claim) => {
            return t.say(match claim.touching.is_empty() {
                true => "report-proved-spared",
                false => "report-proved-touch-waits",
            });
        }
        None if claim.wishes == Wishes::default() => return t.say("report-proved"),
        None => return t.say("report-proved-wishes"),
        Some(Stopped::Budget) => {
            (t.count("report-stopped-budget", heaps), "report-larger-budget")
        }
        Some(Stopped::Memory) => {
            (t.count("report-stopped-memory", heaps), "report-larger-memory")
        }
        Some(Stopped::Overflow) => (t.say("report-stopped-overflow"), "report-rounder-counts"),
    };
    let sentences = [Some(why), could_be_saved(t, claim), Some(t.say(further))];
    sentences.into_iter().flatten().collect::<Vec<_>>().join(" ")
}

/// Whether a key that sends people to touch what may hurt would take less.
fn touch_costs(claim: &Claim) -> bool {
    let nothing = Share::from_integer(0);
    claim.prices.iter().any(|price| price.wish == Wish::Touch && price.extra > nothing)
}

/// How far from the best a key can be, where anything is known of that.
fn could_be_saved(t: Tongue, claim: &Claim) -> Option<String> {
    if claim.lower_bound == Share::from_integer(0) {
        return None;
    }
    let saved = (1.0 - part(claim.lower_bound, claim.total)) * 100.0;
    let saved = t.decimal(&shown(saved, 1));
    Some(t.with("report-could-be-saved", &[("part", &saved)]))
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

/// A number of questions: `1 question`, `0.25 questions`.
pub(crate) fn questions(t: Tongue, number: Share, decimals: usize) -> String {
    counted(t, "report-questions", number, decimals, &[])
}

/// A message about a number that need not be whole, in the singular where one is shown.
pub(crate) fn counted(
    t: Tongue,
    message: &str,
    number: Share,
    decimals: usize,
    texts: &[(&str, &dyn Display)],
) -> String {
    let number = decimal(number, decimals);
    // Nothing is counted where the singular stands for 1 alone.
    let count = if number == "1" { 1 } else { 2 };
    let number = t.decimal(&number);
    let texts = [&[("number", &number as &dyn Display)], texts].concat();
    t.count_with(message, count, &texts)
}

/// A sentence in lines of its own.
fn push(text: &mut String, sentence: &str) {
    push_wrapped(text, "  ", sentence);
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
