//! `spinney revise`: last season's key for this season's table, changed as little as possible.

use std::fmt::Write;
use std::path::Path;

use spinney_build::{Budget, Revised, Revising};
use spinney_check::Report;
use spinney_exchange::link::Links;
use spinney_exchange::{json, key_text};
use spinney_model::{AskedBy, Code, Finding, Key, Matrix, SecondLooks, Wording};
use spinney_press::{Booklet, Letters, Sizes};
use spinney_voice::{Tongue, wording};

use crate::args::{Format, Revise};
use crate::command::check::{drop_echoes, no_question, read};
use crate::command::key::{add_new, fine, still_to_mend};
use crate::failure::Failure;
use crate::files::Over;
use crate::folder::{self, Folder};
use crate::report::{self, Ink};
use crate::{command, opened, terminal};

pub(crate) fn run(t: Tongue, args: &Revise) -> Result<bool, Failure> {
    if args.old == Path::new("-") {
        opened::stdin_once(&args.table)?;
    }
    let opened = opened::open_for_a_key(&args.table)?;
    command::enough_room(&opened.matrix, spinney_build::USUAL_MEMORY)?;
    let matrix = &args.sheets.come_along.counted(opened.matrix);
    let mut findings = opened.findings;
    let (old, asked_by, old_findings) = old_key(t, args, matrix)?;
    folder::look_first(&args.sheets, &["changes.txt", "findings.txt"])?;
    let wishes = command::wishes::what_can_be_asked(matrix, &args.seen)?;
    let settings = Revising { loss: args.loss, budget: Budget { heaps: args.budget } };
    let mut revised = spinney_build::revise(matrix, &old, &wishes, settings);
    let key = &mut revised.revision.key;
    lead_like(&old, key);
    wording::put_words(t, key, matrix);
    let settings = command::settings(&args.answer, false);
    command::look_at_table(matrix, &settings, &mut findings);
    let key = &revised.revision.key;
    let opinion = spinney_check::check(matrix, key, Some(&revised.claim), &settings);
    add_new(&mut findings, &opinion.findings);
    let written = match &args.sheets.out {
        Some(path) => {
            let date = folder::date(args.sheets.date.as_deref());
            let drawings = spinney_draw::of_kinds(matrix);
            let booklet = Booklet {
                matrix,
                key,
                walks: &opinion.walks,
                left_together: &opinion.left_together,
                second_looks: &SecondLooks::new(),
                stamp: command::stamp(asked_by, &opinion, args.sheets.tried),
                date: Some(&date),
                pictures: &opened.pictures,
                drawn: command::drawn(&drawings, &opened.chosen),
                letters: Letters::Usual,
                sizes: Sizes::USUAL,
                tongue: t,
            };
            let report = report_of(matrix, key, &opinion, &findings);
            let mut folder = Folder::make(path, Over::forced(args.sheets.force))?;
            let said = folder.fill(&booklet, &report, args.sheets.printing())?;
            let plain = Ink::plain(t);
            let changed = what_changed(&plain, matrix, &old, &revised);
            folder.write("changes.txt", changed.as_bytes())?;
            folder.write("findings.txt", report::findings(&plain, &findings).as_bytes())?;
            let second = report::second_language(&booklet);
            Some((path, folder.finish()?, second + &said))
        }
        None => None,
    };
    if args.answer.format == Format::Json {
        terminal::print_json(&json::revised(
            &json::Revised {
                matrix,
                revision: &revised.revision,
                findings: &findings,
                old_findings: &old_findings,
            },
            report::in_english,
        ))?;
        return Ok(fine(&findings));
    }
    let ink = Ink::terminal(t);
    let mut text = key_text::write_in(t.tag(), key, matrix);
    text.push('\n');
    text.push_str(&report::together(t, matrix, &opinion.left_together));
    text.push_str(&what_changed(&ink, matrix, &old, &revised));
    for (title, found) in [("run-look-at-old", &old_findings), ("run-look-at", &findings)] {
        if !found.is_empty() {
            let _ = write!(
                text,
                "\n{}\n{}",
                ink.bold(&t.say(title)),
                report::findings(&ink, found)
            );
        }
    }
    text.push_str(&still_to_mend(t, &findings));
    if let Some((path, files, said)) = written {
        text.push_str(&report::written(t, path, &files));
        text.push_str(&said);
    }
    terminal::print(&text)?;
    Ok(fine(&findings))
}

/// The old key, linked to the new table as far as it goes.
///
/// With it who asked its questions. That a name is no kind any more is what revising is for,
/// and is said among the changes.
fn old_key(
    t: Tongue,
    args: &Revise,
    matrix: &Matrix,
) -> Result<(Key, AskedBy, Vec<Finding>), Failure> {
    let text = opened::key(&args.old)?;
    let (links, more) = match &args.links {
        Some(path) => Links::read(&opened::links(path)?, matrix),
        None => (Links::default(), Vec::new()),
    };
    let given = read(t, (&args.old, &text), matrix, links)?;
    if given.key.couplets.is_empty() {
        return Err(no_question(&args.old, &text));
    }
    let mut findings = more;
    findings.extend(given.findings);
    findings.retain(|finding| !matches!(finding.code, Code::NameUnknown | Code::NameNotSure));
    drop_echoes(&mut findings);
    let asked_by = AskedBy::of(&given.key, given.claim.as_ref());
    Ok((given.key, asked_by, findings))
}

/// New questions are put in paired leads where the old key has leads.
fn lead_like(old: &Key, key: &mut Key) {
    let leads = old.couplets.iter().filter(|c| matches!(c.wording, Wording::Leads { .. }));
    if 2 * leads.count() <= old.couplets.len() {
        return;
    }
    for couplet in &mut key.couplets {
        if couplet.wording.first().is_empty() {
            couplet.wording = Wording::Leads { yes: String::new(), no: String::new() };
        }
    }
}

fn report_of<'a>(
    matrix: &'a Matrix,
    key: &'a Key,
    opinion: &Report,
    findings: &'a [Finding],
) -> json::Report<'a> {
    json::Report {
        matrix,
        key: Some(key),
        claim: None,
        effort: command::effort(opinion),
        findings,
        questions_checked: Some((opinion.checked, opinion.questions)),
        reasons: &[],
        ..json::Report::of(matrix)
    }
}

/// What stayed, what changed, and what other numbers of changes would cost.
fn what_changed(ink: &Ink, matrix: &Matrix, old: &Key, revised: &Revised) -> String {
    report::revision(ink, matrix, old, &revised.revision)
}
