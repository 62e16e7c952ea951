//! Where a lead leads: the dots or arrow at its end, and the number or names behind them.
//!
//! From a line to its wording and its destination, and from the written destination to a
//! couplet's number or an end. It does not put leads together.

use std::collections::BTreeSet;

use spinney_model::{Destination, End, Finding, Matrix, OfKeyRead, Place, TaxonIx};

use super::line;
use crate::link::names::{Named, Names};
use crate::link::quotes;

/// Arrows people type, the longest first.
const ARROWS: [&str; 16] =
    ["-->", "==>", "->", "=>", "→", "⇒", "➔", "➜", "➝", "➙", "►", "▶", "⟶", "⟹", "↦", "▸"];
/// Words that stand between an answer and where it leads.
const GO: [&str; 17] = [
    "go on to",
    "go to",
    "goto",
    "continue with",
    "continue to",
    "continue at",
    "turn to",
    "then",
    "see",
    "it is",
    "it's",
    "this is",
    "that is",
    "number",
    "question",
    "couplet",
    "to",
];
/// Words before a number at the end of a line that make it a count, not a destination.
const COUNTED: [&str; 24] = [
    "than", "least", "most", "about", "exactly", "only", "or", "and", "over", "under", "below",
    "above", "to", "up", "by", "of", "with", "has", "have", "are", "is", "=", "<", ">",
];

/// The arrow at the start of a text, if there is one.
pub(super) fn arrow(text: &str) -> Option<&'static str> {
    ARROWS.into_iter().find(|arrow| text.starts_with(arrow))
}

/// Splits a lead into its wording and the text of its destination.
///
/// The last arrow or dot leader counts. Wide gaps, `go to`, a number or a name at the end of
/// the line serve only where what follows can be a destination.
pub(super) fn split<'t>(text: &'t str, names: &Names) -> Option<(&'t str, &'t str)> {
    let (strong, gap) = leaders(text);
    if let Some((start, end)) = strong {
        let (wording, behind) = (&text[..start], text[end..].trim());
        let asks = behind.ends_with('?') && behind.len() > 1;
        if !asks || names.exactly(behind.trim_end_matches('?')).is_some() {
            return Some((trim_wording(wording), behind));
        }
    }
    if let Some((start, end)) = gap
        && leads_somewhere(&text[end..], names)
    {
        return Some((trim_wording(&text[..start]), text[end..].trim()));
    }
    go_to(text, names).or_else(|| at_the_end(text, names))
}

/// Where the last dot leader or arrow, and the last wide gap, begin and end.
#[allow(clippy::type_complexity)]
fn leaders(text: &str) -> (Option<(usize, usize)>, Option<(usize, usize)>) {
    let (mut strong, mut gap) = (None, None);
    let mut at = 0;
    while let Some(c) = text[at..].chars().next() {
        if let Some(arrow) = arrow(&text[at..]) {
            strong = Some((at, at + arrow.len()));
            at += arrow.len();
        } else if is_leader(c) {
            let rest = &text[at..];
            let length = run_length(rest);
            match weigh(&rest[..length]) {
                Weight::Strong => strong = Some((at, at + length)),
                Weight::Gap => gap = Some((at, at + length)),
                Weight::Nothing => {}
            }
            at += length;
        } else {
            at += c.len_utf8();
        }
    }
    (strong, gap)
}

/// Characters of which leaders are made.
fn is_leader(c: char) -> bool {
    c.is_whitespace() || matches!(c, '.' | '…' | '‥' | '·' | '•' | '_' | '-' | '–' | '—' | '─')
}

/// How many bytes of leader characters a text begins with, up to an arrow.
fn run_length(text: &str) -> usize {
    text.char_indices()
        .find(|(at, c)| !is_leader(*c) || (*c == '-' && arrow(&text[*at..]).is_some()))
        .map_or(text.len(), |(at, _)| at)
}

enum Weight {
    Strong,
    Gap,
    Nothing,
}

/// What a run of leader characters amounts to.
fn weigh(run: &str) -> Weight {
    let count = |set: &[char]| run.chars().filter(|c| set.contains(c)).count();
    let leads = count(&['…', '‥']) > 0
        || count(&['.', '·', '•']) >= 2
        || count(&['_']) >= 2
        || count(&['-', '–', '—', '─']) >= 3;
    if leads {
        Weight::Strong
    } else if run.contains('\t') || run.chars().filter(|c| c.is_whitespace()).count() >= 3 {
        Weight::Gap
    } else {
        Weight::Nothing
    }
}

/// `Leaf in one piece, go to 2`.
fn go_to<'t>(text: &'t str, names: &Names) -> Option<(&'t str, &'t str)> {
    let lower = text.to_ascii_lowercase();
    let (at, go) = ["go to ", "goto ", "go on to "]
        .iter()
        .filter_map(|go| lower.rfind(go).map(|at| (at, *go)))
        .max()?;
    let before = text[..at].chars().next_back();
    let apart = before.is_none_or(|c| !c.is_alphanumeric());
    let behind = &text[at + go.len()..];
    (apart && leads_somewhere(behind, names))
        .then(|| (trim_wording(&text[..at]), behind.trim()))
}

/// `Leaf in one piece 2`, `Leaf prickly - holly`, `Leaf prickly: holly`.
fn at_the_end<'t>(text: &'t str, names: &Names) -> Option<(&'t str, &'t str)> {
    let trimmed = text.trim_end().trim_end_matches('.');
    if let Some((before, last)) = trimmed.rsplit_once(' ')
        && number(last).is_some()
    {
        let word = before.rsplit([' ', ',']).find(|word| !word.is_empty()).unwrap_or("");
        let counted = COUNTED.iter().any(|c| word.eq_ignore_ascii_case(c));
        let leads = !counted && !word.chars().all(|c| c.is_ascii_digit());
        return leads.then(|| (trim_wording(before), last));
    }
    let mut found = None;
    let mut before = trimmed;
    // `Edge smooth: box, ivy`: from the last mark on back, as long as only names stand behind it.
    while let Some(at) = last_mark(before) {
        let mark = trimmed[at..].chars().next()?;
        let behind = &trimmed[at + mark.len_utf8()..];
        if behind.len() > 200 || !names_only(behind, names) {
            break;
        }
        before = &trimmed[..at];
        found = Some((trim_wording(before), behind.trim()));
    }
    found
}

/// Where the last mark of a text is behind which a name may stand.
fn last_mark(text: &str) -> Option<usize> {
    let mark = text.rfind([':', '–', '—', ';', ',', '.']);
    mark.max(text.rfind(" - ").map(|dash| dash + 1))
}

/// The wording before a leader, without what hangs over.
pub(super) fn trim_wording(text: &str) -> &str {
    text.trim_end_matches(|c: char| {
        is_leader(c) || matches!(c, ':' | ',' | ';' | '=' | '(' | '[' | '|' | '/')
    })
    .trim_start()
}

/// Whether a text can be a destination without a leader before it.
pub(super) fn leads_somewhere(text: &str, names: &Names) -> bool {
    let text = strip_go(text);
    number(text).is_some() || (text.len() <= 200 && names_only(text, names))
}

/// Whether every name in the text is some kind's, or nearly.
fn names_only(text: &str, names: &Names) -> bool {
    let pieces = pieces(strip_go(text), names);
    !pieces.is_empty() && pieces.iter().all(|piece| names.look_up(piece) != Named::Unknown)
}

/// The number of a couplet, with what may stand around it.
fn number(text: &str) -> Option<u32> {
    let bare = text.trim().trim_end_matches(['.', ',', ';', ')', '!', ']']);
    let bare = bare.trim_start_matches(['(', '[']);
    (!bare.is_empty() && bare.bytes().all(|b| b.is_ascii_digit()))
        .then(|| bare.parse().ok())
        .flatten()
}

/// A text without leaders, arrows and `go to` at its start.
pub(super) fn strip_go(text: &str) -> &str {
    let mut rest = text;
    loop {
        let before = rest;
        if let Some(arrow) = arrow(rest) {
            rest = &rest[arrow.len()..];
        } else if let Some(c) = rest.chars().next()
            && (is_leader(c) || matches!(c, ':' | ',' | ';' | '=' | '|'))
        {
            rest = &rest[c.len_utf8()..];
        }
        for go in GO {
            if let Some(head) = rest.get(..go.len())
                && head.eq_ignore_ascii_case(go)
                && rest[go.len()..].chars().next().is_none_or(|c| !c.is_alphabetic())
            {
                rest = &rest[go.len()..];
                break;
            }
        }
        if rest.len() == before.len() {
            return rest.trim_end();
        }
    }
}

/// Reads what stands behind a leader. Findings stand at the couplet.
pub(super) fn read(
    text: &str,
    couplet: u32,
    matrix: &Matrix,
    names: &Names,
) -> (Destination, Vec<Finding>) {
    let text = strip_go(text);
    if let Some(number) = number(text) {
        return (Destination::Couplet(number), Vec::new());
    }
    if is_muddled(text, names) {
        return (Destination::Missing, vec![muddled(text, couplet)]);
    }
    let mut taxa = BTreeSet::new();
    let mut end = End::default();
    let mut findings = Vec::new();
    for piece in pieces(text, names) {
        let doubt = match names.look_up(&piece) {
            Named::Exactly(found) => {
                taxa.extend(found);
                continue;
            }
            Named::Perhaps(near) => not_sure(&piece, &near, couplet, matrix),
            Named::Unknown => unknown(&piece, couplet),
        };
        findings.push(doubt);
        end.unrecognised.push(piece);
    }
    end.taxa = taxa.into_iter().collect();
    if end == End::default() {
        return (Destination::Missing, findings);
    }
    (Destination::End(end), findings)
}

/// Whether more than one destination stands here: `5 N ivy`, `5 ivy`. None of it is a name.
fn is_muddled(text: &str, names: &Names) -> bool {
    if text.contains('"') || names.exactly(bare(text)).is_some() {
        return false;
    }
    let (first, rest) = text.split_once(char::is_whitespace).unwrap_or((text, ""));
    let numbered = number(first).is_some() && leads_somewhere(rest, names);
    let unnamed = |piece: &String| names.exactly(piece).is_none();
    let answered = || {
        pieces(text, names).iter().any(|piece| unnamed(piece) && line::holds_an_answer(piece))
    };
    numbered || answered()
}

fn muddled(text: &str, question: u32) -> Finding {
    let written = text.to_owned();
    let fact = OfKeyRead::LeadsNobodyKnowsWhere { question, written };
    Finding::of(Place::Couplet(question), fact)
}

/// The names in the text of an end: the whole of it if that is a name, else its parts.
fn pieces(text: &str, names: &Names) -> Vec<String> {
    if text.starts_with('"') {
        return quoted(text);
    }
    let text = bare(text);
    if names.exactly(text).is_some() {
        return vec![tidy(text)];
    }
    let mut found = Vec::new();
    for part in text.split(['/', ',', ';', '&', '|']) {
        let mut words: Vec<&str> = Vec::new();
        for word in part.split_whitespace().chain(["or"]) {
            if matches!(word.to_ascii_lowercase().as_str(), "or" | "and") {
                let piece = words.join(" ");
                let piece = bare(&piece);
                if !piece.is_empty() {
                    found.push(piece.to_owned());
                }
                words.clear();
            } else {
                words.push(word);
            }
        }
    }
    found
}

/// Names in quotation marks, which are taken as they stand: `"2" or "this or that"`.
fn quoted(text: &str) -> Vec<String> {
    let mut found = Vec::new();
    let mut rest = text;
    while let Some(start) = rest.find('"') {
        let (name, behind) = unquote(&rest[start..]);
        if !name.is_empty() {
            found.push(name);
        }
        rest = behind;
    }
    found
}

/// Takes a text in quotation marks off the start.
pub(super) fn unquote(text: &str) -> (String, &str) {
    let (name, behind) = quotes::unquote(text);
    (tidy(&name), behind)
}

/// One space between words and none around them.
pub(super) fn tidy(text: &str) -> String {
    text.split_whitespace().collect::<Vec<_>>().join(" ")
}

/// A name without the full stop behind it.
fn bare(text: &str) -> &str {
    let text = text.trim().trim_end_matches(['.', '!', ',', ';', '?', ' ', ']']);
    if text.contains('(') { text } else { text.trim_end_matches([')', '.', ' ']) }
}

fn not_sure(written: &str, near: &[TaxonIx], question: u32, matrix: &Matrix) -> Finding {
    let near = near.iter().map(|ix| matrix.taxon(*ix).name.clone()).collect();
    let fact = OfKeyRead::NameNotSure { question, written: written.to_owned(), near };
    Finding::of(Place::Couplet(question), fact)
}

fn unknown(written: &str, question: u32) -> Finding {
    let fact = OfKeyRead::NameUnknown { question, written: written.to_owned() };
    Finding::of(Place::Couplet(question), fact)
}
