//! The verbs, a file each; what several of them do stands here.

pub(crate) mod check;
pub(crate) mod demo;
pub(crate) mod explain;
pub(crate) mod key;
pub(crate) mod table;
pub(crate) mod template;

use spinney_build::{Built, Progress as Found, Search};
use spinney_check::{Report, Settings};
use spinney_exchange::{json, key_text, link};
use spinney_model::{
    Code, Destination, Finding, Kept, Key, Matrix, Place, Refusal, Wanted, WhyNot, Wishes,
    Wording,
};
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
    let mut room = MOST_KEPT;
    let kept = kept_from(&read.key, 0, &mut room);
    if room == 0 {
        return Err(Failure::usage(
            format!("More than {MOST_KEPT} questions are to be kept, or ways meet in them."),
            "Keep the first few questions, each once; the rest is found for you.",
        ));
    }
    let Some(kept) = kept else {
        let why = findings.first().map_or("It has no numbered question.", |f| &f.sentence);
        let columns: Vec<&str> = matrix.characters().iter().map(|c| c.name.as_str()).collect();
        let columns = columns.join(", ");
        return Err(Failure::usage(
            format!("The question to keep could not be linked to the table. {why}"),
            format!("Ask with the table's own words. Its columns are: {columns}."),
        ));
    };
    Ok((Wishes { kept: Some(Box::new(kept)), ..Wishes::default() }, findings))
}

/// So many questions may be kept. A key in which ways meet would be written out way by way.
const MOST_KEPT: usize = 500;

/// The linked questions of a beginning of a key, from one of them on, while there is room.
fn kept_from(key: &Key, at: usize, room: &mut usize) -> Option<Kept> {
    let couplet = key.couplets.get(at)?;
    let ask = couplet.ask.clone()?;
    *room = room.checked_sub(1)?;
    let mut next = |destination: &Destination| -> Option<Box<Kept>> {
        let Destination::Couplet(number) = destination else { return None };
        let at = key.couplets.iter().position(|couplet| couplet.number == *number)?;
        kept_from(key, at, room).map(Box::new)
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
    while left > 0 {
        let step = left.min(HEAPS_A_STEP);
        left -= step;
        match search.step(step) {
            Found::Working { best: Some(best), lower_bound } => {
                let sure = crate::report::decimal(lower_bound / best * 100, 1);
                progress.say(&format!("looking for the best key: {sure} % proved"));
            }
            Found::Working { .. } => progress.say("looking for the best key"),
            Found::MemoryFull | Found::Done => break,
        }
    }
    progress.say("writing the key down");
    let mut built = search.finish();
    wording::put_words(&mut built.key, matrix);
    findings.extend(built.refused.iter().map(|refusal| refused(matrix, refusal)));
    (search, built)
}

/// A wish that could not be fulfilled, and whom it would fail.
fn refused(matrix: &Matrix, refusal: &Refusal) -> Finding {
    let Wanted::Ask(ask) = &refusal.wanted else { todo!() };
    let character = &matrix.character(ask.character).name;
    let question = wording::question(matrix, ask);
    let (why, remedy) = match refusal.why {
        WhyNot::Blocked(taxon) => {
            let kind = &matrix.taxon(taxon).name;
            (
                format!("{kind} is still there and has no clear answer to it"),
                format!(
                    "Ask it further down, where {kind} is gone, or fill in the {character} of \
                     {kind}."
                ),
            )
        }
        WhyNot::AllAlike => (
            "all kinds that are left answer it alike".to_owned(),
            "Leave it out: it parts nothing there.".to_owned(),
        ),
        WhyNot::NoSuchState => (
            format!("{character} cannot be asked for that"),
            "Use one of the states that stand in the table.".to_owned(),
        ),
        WhyNot::LeftOut | WhyNot::NeverParted | WhyNot::TooLarge => todo!(),
        WhyNot::AfterRefused => (
            "the question before it could not be kept".to_owned(),
            "Mend the question before it first.".to_owned(),
        ),
    };
    Finding::new(
        Code::KeptRefused,
        Place::Character(character.clone()),
        format!("\"{question}\" could not be kept where you wanted it: {why}."),
        remedy,
    )
}

/// Adds what can be said of a table; unknown cells only if the reader has not named them.
pub(crate) fn look_at_table(matrix: &Matrix, settings: &Settings, findings: &mut Vec<Finding>) {
    let named = findings.iter().any(|finding| finding.code == Code::Unknown);
    let more = spinney_check::table(matrix, settings);
    findings.extend(more.into_iter().filter(|finding| !named || finding.code != Code::Unknown));
}

/// The effort that the second opinion added up, for a key of which nothing is claimed.
pub(crate) fn effort(opinion: &Report) -> Option<json::Effort> {
    let effort = opinion.effort.as_ref()?;
    Some(json::Effort {
        total: effort.total,
        mean_steps: effort.mean_steps,
        longest: effort.longest,
    })
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
