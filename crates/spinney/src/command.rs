//! The verbs, a file each; what several of them do stands here.

pub(crate) mod check;
pub(crate) mod demo;
pub(crate) mod explain;
pub(crate) mod key;
pub(crate) mod table;
pub(crate) mod template;

use spinney_build::{Built, Progress as Found, Search};
use spinney_check::Settings;
use spinney_exchange::{key_text, link};
use spinney_model::{Code, Destination, Finding, Kept, Key, Matrix, Place, Wishes, Wording};
use spinney_press::wording;

use crate::args;
use crate::collection;
use crate::failure::Failure;
use crate::terminal::Progress;

/// Heaps between two looks at the clock of the person who watches.
const HEAPS_A_STEP: u64 = 1_000;

/// The wishes of the command line, and what could not be understood of them.
pub(crate) fn wishes(
    args: &args::Wishes,
    matrix: &Matrix,
) -> Result<(Wishes, Vec<Finding>), Failure> {
    let text = match (&args.first, &args.keep) {
        (Some(question), _) => format!("1. {question} Yes -> ?, No -> ?\n"),
        (None, Some(path)) => collection::text(path)?,
        (None, None) => return Ok((Wishes::default(), Vec::new())),
    };
    let mut read = key_text::read(&text, matrix, &link::Links::default());
    let linked = link::link(&mut read.key, matrix, &link::Links::default());
    let open_ends = [Code::NothingWritten, Code::NameUnknown, Code::NameNotSure];
    let mut findings = read.findings;
    findings.retain(|finding| !open_ends.contains(&finding.code));
    findings.extend(linked.findings);
    let Some(kept) = kept_from(&read.key, 0, 0) else {
        let why = findings.first().map_or_else(
            || "It has no numbered question.".to_owned(),
            |finding| format!("{} {}", finding.sentence, finding.remedy),
        );
        return Err(Failure::usage(
            format!("The question to keep could not be linked to the table. {why}"),
            "Use the table's own words: a character's heading and one of its states.",
        ));
    };
    Ok((Wishes { kept: Some(Box::new(kept)) }, findings))
}

/// The linked questions of a beginning of a key, from its first one.
fn kept_from(key: &Key, at: usize, depth: usize) -> Option<Kept> {
    let couplet = key.couplets.get(at)?;
    let ask = couplet.ask.clone()?;
    let next = |destination: &Destination| -> Option<Box<Kept>> {
        let Destination::Couplet(number) = destination else { return None };
        let at = key.couplets.iter().position(|couplet| couplet.number == *number)?;
        // A loop in what a person wants kept ends where it has gone round once.
        (depth < key.couplets.len()).then(|| kept_from(key, at, depth + 1))?.map(Box::new)
    };
    Some(Kept { ask, yes: next(&couplet.yes), no: next(&couplet.no) })
}

/// Finds the key, words it, and says what could not be kept.
pub(crate) fn find(
    matrix: &Matrix,
    wishes: &Wishes,
    budget: u64,
    findings: &mut Vec<Finding>,
) -> (Search, Built) {
    let mut progress = Progress::new();
    let mut search = Search::new(matrix, wishes);
    let mut left = budget;
    loop {
        let step = left.min(HEAPS_A_STEP);
        left -= step;
        match search.step(step) {
            Found::Working { best: Some(best), lower_bound } if left > 0 => {
                let sure = crate::report::decimal(lower_bound / best * 100, 1);
                progress.say(&format!("looking for the best key: {sure} % proved"));
            }
            Found::Working { .. } if left > 0 => progress.say("looking for the best key"),
            _ => break,
        }
    }
    progress.say("writing the key down");
    let mut built = search.finish();
    wording::put_words(&mut built.key, matrix);
    for ask in built.claim.kept.iter().flat_map(|kept| &kept.refused) {
        findings.push(Finding::new(
            Code::KeptRefused,
            Place::Character(matrix.character(ask.character).name.clone()),
            format!(
                "\"{}\" could not be asked where you wanted it: a kind there does not have \
                 it, or lies across the threshold, or all kinds answer it alike.",
                wording::question(matrix, ask)
            ),
            "Keep another question, or ask it further down, where those kinds are gone.",
        ));
    }
    (search, built)
}

/// The settings of the second opinion.
pub(crate) fn settings(answer: &args::Answer, pupils: bool) -> Settings {
    let usual = Settings::default();
    Settings {
        pairs_named: if answer.all_pairs { usize::MAX } else { usual.pairs_named },
        pupils_wrote_it: pupils,
    }
}

/// The words of a couplet, for a sentence.
pub(crate) fn words(wording: &Wording) -> &str {
    wording.first()
}
