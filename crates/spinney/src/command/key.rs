//! `spinney key`: the key of least effort, proved, on paper and on a phone.

use std::fmt::Write;

use spinney_exchange::{json, key_text};
use spinney_model::{AskedBy, Finding, SecondLooks, Severity};
use spinney_press::{Booklet, Letters, Sizes};
use spinney_voice::Tongue;

use crate::args::{Format, Key};
use crate::failure::Failure;
use crate::files::Over;
use crate::folder::{self, Folder};
use crate::report::{self, Ink};
use crate::{command, opened, terminal};

pub(crate) fn run(t: Tongue, args: &Key) -> Result<bool, Failure> {
    let opened = opened::open_for_a_key(&args.table)?;
    command::enough_room(&opened.matrix, args.wishes.limits().1)?;
    let matrix = &args.sheets.come_along.counted(opened.matrix);
    let mut findings = opened.findings;
    let (wishes, more) = command::wishes::read(t, &args.wishes, matrix)?;
    findings.extend(more);
    let over = Over::forced(args.sheets.force);
    folder::look_first(&args.sheets, &["findings.txt"])?;
    let (search, built) =
        command::find(t, matrix, &wishes, args.wishes.limits(), &mut findings);
    let looks = match args.sheets.out {
        Some(_) => search.second_looks(&built.key),
        None => SecondLooks::new(),
    };
    // What a search of a large table remembers would be in the way from here on.
    drop(search);
    let settings = command::settings(&args.answer, false);
    command::look_at_table(matrix, &settings, &mut findings);
    let opinion = spinney_check::check(matrix, &built.key, Some(&built.claim), &settings);
    let asked_by = AskedBy::of(&built.key, Some(&built.claim));
    let stamp = command::stamp(asked_by, &opinion, args.sheets.tried);
    add_new(&mut findings, &opinion.findings);
    let json = json::Report {
        matrix,
        key: Some(&built.key),
        claim: Some(&built.claim),
        effort: None,
        findings: &findings,
        questions_checked: Some((opinion.checked, opinion.questions)),
        reasons: &[],
        refused: &built.refused,
        ..json::Report::of(matrix)
    };
    let mut written = None;
    if let Some(path) = &args.sheets.out {
        let date = folder::date(args.sheets.date.as_deref());
        let drawings = spinney_draw::of_kinds(matrix);
        let booklet = Booklet {
            matrix,
            key: &built.key,
            walks: &opinion.walks,
            left_together: &opinion.left_together,
            second_looks: &looks,
            stamp,
            date: Some(&date),
            pictures: &opened.pictures,
            drawn: command::drawn(&drawings, &opened.chosen),
            letters: Letters::Usual,
            sizes: Sizes::USUAL,
            tongue: t,
        };
        let mut folder = Folder::make(path, over)?;
        let said = folder.fill(&booklet, &json, args.sheets.printing())?;
        let text = report::findings(&Ink::plain(t), &findings);
        folder.write("findings.txt", text.as_bytes())?;
        let second = report::second_language(&booklet);
        written = Some((path, folder.finish()?, second + &said));
    }
    if args.answer.format == Format::Json {
        terminal::print_json(&json::report(&json, report::in_english))?;
    } else {
        let ink = Ink::terminal(t);
        let mut text = key_text::write_in(t.tag(), &built.key, matrix);
        if !text.is_empty() {
            text.push('\n');
        }
        let left = &opinion.left_together;
        text.push_str(&report::claim(t, &built.claim, matrix, left, built.refused.len()));
        text.push_str(&report::second_opinion(t, &built.claim, opinion.proof));
        if !findings.is_empty() {
            let _ = write!(
                text,
                "\n{}\n{}",
                ink.bold(&t.say("run-look-at")),
                report::findings(&ink, &findings)
            );
        }
        text.push_str(&still_to_mend(t, &findings));
        if let Some((path, files, said)) = written {
            text.push_str(&report::written(t, path, &files));
            text.push_str(&said);
        }
        terminal::print(&text)?;
    }
    Ok(fine(&findings))
}

/// The last line before a person prints: how much must be mended first.
pub(crate) fn still_to_mend(t: Tongue, findings: &[Finding]) -> String {
    let worst = |finding: &&Finding| finding.severity == Severity::MendThis;
    match findings.iter().filter(worst).count() {
        0 => String::new(),
        some => format!("\n{}\n", t.count("run-mend-first", some)),
    }
}

/// Nothing must be mended.
pub(crate) fn fine(findings: &[Finding]) -> bool {
    findings.iter().all(|finding| finding.severity != Severity::MendThis)
}

/// Adds findings that are not there yet.
pub(crate) fn add_new(findings: &mut Vec<Finding>, more: &[Finding]) {
    for finding in more {
        if !findings.contains(finding) {
            findings.push(finding.clone());
        }
    }
}
