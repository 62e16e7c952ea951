//! Findings, costs and claims in words, for a terminal or a text file.

use std::fmt::Write;

use spinney_model::{Claim, Finding, Matrix, Severity, Share, Stopped};

/// Text that may be coloured.
pub(crate) struct Ink {
    pub(crate) colour: bool,
}

impl Ink {
    fn paint(&self, code: &str, text: &str) -> String {
        if self.colour { format!("\u{1b}[{code}m{text}\u{1b}[0m") } else { text.to_owned() }
    }

    pub(crate) fn bold(&self, text: &str) -> String {
        self.paint("1", text)
    }

    fn severity(&self, severity: Severity) -> String {
        let code = match severity {
            Severity::MustBeMended => "31",
            Severity::ShouldBeLookedAt => "33",
            Severity::ForInformation => "36",
        };
        self.paint(code, severity.words())
    }
}

/// The findings under a heading, the worst first.
pub(crate) fn findings(ink: &Ink, findings: &[Finding]) -> String {
    let mut text = String::new();
    let mut sorted: Vec<&Finding> = findings.iter().collect();
    sorted.sort_by_key(|finding| finding.severity);
    for finding in sorted {
        let Finding { severity, place, sentence, remedy, code } = finding;
        let severity = ink.severity(*severity);
        text.push_str(&format!("{severity} · {place} [{}]\n", code.text()));
        push_wrapped(&mut text, sentence);
        push_wrapped(&mut text, remedy);
    }
    text
}

/// Indented by two, at most 88 columns, whole words.
fn push_wrapped(text: &mut String, sentence: &str) {
    let mut column = 0;
    for word in sentence.split_whitespace() {
        let width = word.chars().count();
        if column > 0 && column + 1 + width > 86 {
            text.push('\n');
            column = 0;
        }
        text.push_str(if column == 0 { "  " } else { " " });
        text.push_str(word);
        column += 1 + width;
    }
    if column > 0 {
        text.push('\n');
    }
}

/// What is claimed of a key, in a teacher's words.
pub(crate) fn claim(claim: &Claim, matrix: &Matrix) -> String {
    let mut text = String::new();
    let all: Share = matrix.taxa().iter().map(|taxon| taxon.weight).sum();
    let mean = decimal(claim.mean_steps, 1);
    push(&mut text, format_args!("About {mean} questions a find, at most {}.", claim.longest));
    match claim.stopped {
        None => push(&mut text, format_args!("Proved: no key from this table takes less.")),
        Some(Stopped::Budget) => {
            let percent = beyond(claim.total, claim.lower_bound);
            push(
                &mut text,
                format_args!(
                    "Not proved best: the search stopped after {} heaps. No key takes less \
                     than {} of its effort, so at most {percent} could be saved. A larger \
                     --budget goes on.",
                    claim.heaps,
                    share_of(claim.lower_bound, claim.total),
                ),
            );
        }
        Some(Stopped::Overflow) => push(
            &mut text,
            format_args!(
                "Not proved best: the counts in this table need larger numbers than exact \
                 arithmetic has here. Write rounder counts (7 and 3 instead of 713 and 311)."
            ),
        ),
    }
    if let Some(kept) = &claim.kept {
        let price = (claim.total - kept.free_total) / all;
        let about = if kept.free_optimal && claim.optimal() { "" } else { "about " };
        let steps = decimal(price, 2);
        if price <= Share::from_integer(0) {
            push(&mut text, format_args!("Keeping your questions costs nothing."));
        } else {
            push(
                &mut text,
                format_args!("Keeping your questions costs {about}{steps} steps a find."),
            );
        }
    }
    text
}

fn push(text: &mut String, line: std::fmt::Arguments<'_>) {
    let mut whole = String::new();
    write!(whole, "{line}").expect("writing to a string cannot fail");
    let mut wrapped = String::new();
    push_wrapped(&mut wrapped, &whole);
    text.push_str(&wrapped);
}

/// A share with so many decimals, no more than it has: `3.4`, `0.25`, `3`.
pub(crate) fn decimal(share: Share, decimals: usize) -> String {
    let number = *share.numer() as f64 / *share.denom() as f64;
    let text = format!("{number:.decimals$}");
    if text.contains('.') {
        text.trim_end_matches('0').trim_end_matches('.').to_owned()
    } else {
        text
    }
}

fn beyond(total: Share, bound: Share) -> String {
    if total == Share::from_integer(0) {
        return "nothing".to_owned();
    }
    format!("{} %", decimal((total - bound) / total * 100, 1))
}

fn share_of(bound: Share, total: Share) -> String {
    if total == Share::from_integer(0) {
        return "all".to_owned();
    }
    format!("{} %", decimal(bound / total * 100, 1))
}
