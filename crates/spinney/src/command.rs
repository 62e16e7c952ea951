//! The verbs, a file each; what several of them do stands here.

pub(crate) mod check;
pub(crate) mod demo;
pub(crate) mod explain;
pub(crate) mod forgive;
pub(crate) mod key;
pub(crate) mod measure;
pub(crate) mod open;
pub(crate) mod pack;
pub(crate) mod pocket;
pub(crate) mod rescue;
pub(crate) mod revise;
pub(crate) mod spread;
pub(crate) mod table;
pub(crate) mod template;
pub(crate) mod weak;
pub(crate) mod wishes;

use spinney_build::{Built, Progress as Found, Search};
use spinney_check::{Report, Settings};
use spinney_exchange::json;
use spinney_model::{AskedBy, Code, Drawing, Finding, Matrix, Standing, Wishes, Wording};
use spinney_press::{Drawn, Stamp};
use spinney_voice::{Tongue, wording};

use crate::args;
use crate::failure::Failure;
use crate::report;
use crate::terminal::Progress;

/// Heaps between two looks at the clock of the person who watches.
const HEAPS_A_STEP: u64 = 1_000;

/// What is drawn for sheets and phone pages: these kinds, these leaves of them, and the words.
pub(crate) fn drawn<'a>(
    kinds: &'a [Option<Drawing>],
    leaves: &'a [Option<Drawing>],
) -> Drawn<'a> {
    Drawn {
        kinds,
        leaves,
        word: spinney_draw::of_word,
        state: spinney_draw::of_state,
        sizes: spinney_draw::sizes,
    }
}

/// Refuses a table whose questions alone would fill more than a search may take, in MiB.
pub(crate) fn enough_room(matrix: &Matrix, memory: u64) -> Result<(), Failure> {
    let wanted = spinney_build::memory_wanted(matrix);
    if wanted <= memory {
        return Ok(());
    }
    Err(Failure::new("failure-memory", [("wanted", wanted.into()), ("memory", memory.into())]))
}

/// Finds the key, words it in a language, and says what could not be kept.
pub(crate) fn find(
    t: Tongue,
    matrix: &Matrix,
    wanted: &Wishes,
    (budget, memory): (u64, u64),
    findings: &mut Vec<Finding>,
) -> (Search, Built) {
    let mut progress = Progress::new();
    let mut search = Search::within(matrix, wanted, memory);
    let mut left = budget;
    while left > 0 {
        let step = left.min(HEAPS_A_STEP);
        left -= step;
        match search.step(step) {
            Found::Working { best: Some(best), lower_bound } => {
                let part = report::shown(report::part(lower_bound, best) * 100.0, 1);
                let part = t.decimal(&part);
                progress.say(&t.with("run-looking-proved", &[("part", &part)]));
            }
            Found::Working { .. } => progress.say(&t.say("run-looking")),
            Found::MemoryFull | Found::Done => break,
        }
    }
    progress.say(&t.say("run-writing"));
    let mut built = search.finish();
    wording::put_words(t, &mut built.key, matrix);
    findings.extend(built.refused.iter().map(|refusal| wishes::refused(t, matrix, refusal)));
    findings.extend(report::left_together(&built.claim, matrix));
    (search, built)
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
        mean_questions: effort.mean_questions,
        longest: effort.longest,
    })
}

/// The settings of the second opinion.
pub(crate) fn settings(answer: &args::Answer, pupils: bool) -> Settings {
    let usual = Settings::default();
    Settings {
        pairs_named: if answer.all_pairs { usize::MAX } else { usual.pairs_named },
        pupils_wrote_it: pupils,
        ..usual
    }
}

/// What the sheets say of a key's standing: who asked its questions, what a second opinion says
/// of it, and whether people tried it.
pub(crate) fn stamp(asked_by: AskedBy, opinion: &Report, tried: bool) -> Stamp {
    Stamp::of(Standing { asked_by, holds: opinion.holds(), tried })
}

/// The words of a couplet, for a sentence.
pub(crate) fn words(wording: &Wording) -> &str {
    wording.first()
}
