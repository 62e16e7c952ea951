//! `spinney check`: a second opinion on a key, ours or a person's.

use std::fmt::{Display, Write};
use std::path::Path;

use spinney_check::Report;
use spinney_exchange::link::{self, Link, Links};
use spinney_exchange::{json, key_text};
use spinney_model::{AskedBy, Claim, Code, Finding, Key, Matrix, Place, SecondLooks};
use spinney_press::{Booklet, Letters, Sizes};
use spinney_voice::{Tongue, wording};

use crate::args::{Check, Format};
use crate::command::key::{add_new, fine};
use crate::failure::Failure;
use crate::files::{self, Over};
use crate::folder::{self, Folder};
use crate::report::{self, Ink};
use crate::{command, opened, terminal};

pub(crate) fn run(t: Tongue, args: &Check) -> Result<bool, Failure> {
    if args.key == Path::new("-") {
        opened::stdin_once(&args.table)?;
    }
    let opened = opened::open(&args.table)?;
    let matrix = &args.sheets.come_along.counted(opened.matrix);
    let mut findings = opened.findings;
    let text = opened::key(&args.key)?;
    let links = links(args.links.as_deref(), matrix, &mut findings)?;
    let given = read(t, (&args.key, &text), matrix, links)?;
    // A table in which nothing can be asked has a key without questions, which only JSON can say.
    if given.key.couplets.is_empty() && !is_json(&text) {
        return Err(no_question(&args.key, &text));
    }
    findings.extend(given.findings);
    // Both are looked at before either is written.
    let over = Over::forced(args.sheets.force);
    folder::look_first(&args.sheets, &["opinion.txt"])?;
    if let Some(path) = &args.write_links {
        files::claim(path)?;
        files::may_be_written(path, over)?;
    }
    let settings = command::settings(&args.answer, args.pupils);
    let opinion = spinney_check::check(matrix, &given.key, given.claim.as_ref(), &settings);
    add_new(&mut findings, &opinion.findings);
    drop_echoes(&mut findings);
    let json = json::Report {
        matrix,
        key: Some(&given.key),
        claim: given.claim.as_ref(),
        effort: command::effort(&opinion),
        findings: &findings,
        questions_checked: Some((opinion.checked, opinion.questions)),
        reasons: &[],
        ..json::Report::of(matrix)
    };
    let mut second = String::new();
    let mut said = String::new();
    if let Some(path) = &args.sheets.out {
        let date = folder::date(args.sheets.date.as_deref());
        let asked_by = match args.pupils {
            true => AskedBy::People,
            false => AskedBy::of(&given.key, given.claim.as_ref()),
        };
        let drawings = spinney_draw::of_kinds(matrix);
        let booklet = Booklet {
            matrix,
            key: &given.key,
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
        let mut folder = Folder::make(path, over)?;
        said = folder.fill(&booklet, &json, args.sheets.printing())?;
        let mut text = opinion_in_words(&Ink::plain(t), matrix, &opinion, &findings);
        text.push_str(&of_the_claim(t, given.claim.as_ref(), &opinion));
        folder.write("opinion.txt", text.as_bytes())?;
        folder.finish()?;
        second = report::second_language(&booklet);
    }
    if let Some(path) = &args.write_links {
        let links = Links::of(&given.key).write(matrix);
        files::write_whole(path, links.as_bytes(), over)?;
    }
    if args.answer.format == Format::Json {
        terminal::print_json(&json::report(&json, report::in_english))?;
    } else {
        let ink = Ink::terminal(t);
        let mut text = opinion_in_words(&ink, matrix, &opinion, &findings);
        text.push_str(&of_the_claim(t, given.claim.as_ref(), &opinion));
        text.push_str(&second);
        text.push_str(&said);
        terminal::print(&text)?;
    }
    Ok(fine(&findings))
}

/// A text in which there is no key: what it is instead, or how one is written.
pub(crate) fn no_question(path: &Path, text: &str) -> Failure {
    let message = match opened::is_a_table(text) {
        true => "failure-table-no-key",
        false => "failure-no-question",
    };
    Failure::new(message, [("file", path.into())])
}

/// What a links file says, if there is one.
pub(crate) fn links(
    path: Option<&Path>,
    matrix: &Matrix,
    findings: &mut Vec<Finding>,
) -> Result<Links, Failure> {
    let Some(path) = path else { return Ok(Links::default()) };
    let (links, found) = Links::read(&opened::links(path)?, matrix);
    findings.extend(found);
    Ok(links)
}

/// Drops "not linked" where a finding on the question's words says why it cannot be.
pub(crate) fn drop_echoes(findings: &mut Vec<Finding>) {
    let said = [Code::BareComparative, Code::NotYesNo, Code::NameInQuestion];
    let explained: Vec<Place> = findings
        .iter()
        .filter(|finding| said.contains(&finding.code))
        .map(|finding| finding.place.clone())
        .collect();
    findings.retain(|finding| {
        finding.code != Code::NotLinked || !explained.contains(&finding.place)
    });
}

/// A key as it was given.
pub(crate) struct Given {
    pub(crate) key: Key,
    pub(crate) claim: Option<Claim>,
    pub(crate) findings: Vec<Finding>,
}

/// Reads a key in words or in JSON, and links it to the table.
pub(crate) fn read(
    t: Tongue,
    (path, text): (&Path, &str),
    matrix: &Matrix,
    links: Links,
) -> Result<Given, Failure> {
    if is_json(text) {
        let file = path.display().to_string();
        let (mut key, claim, findings) = json::read(text, matrix).map_err(|error| {
            Failure::saying(move |t| spinney_voice::key_file_error(t, &file, &error))
        })?;
        wording::put_words(t, &mut key, matrix);
        return Ok(Given { key, claim, findings });
    }
    Ok(in_words(t, text, matrix, links))
}

fn is_json(text: &str) -> bool {
    text.trim_start_matches('\u{feff}').trim_start().starts_with('{')
}

/// Reads a key in words and links it to the table; where a question is not linked for sure and
/// somebody sits at the terminal, asks back.
pub(crate) fn in_words(t: Tongue, text: &str, matrix: &Matrix, mut links: Links) -> Given {
    let mut read = key_text::read(text, matrix, &links);
    let first = link::link(&mut read.key.clone(), matrix, &links);
    for proposal in first.proposals.iter().filter(|proposal| !proposal.sure) {
        let number = proposal.couplet;
        if links.question(number).is_some() {
            continue;
        }
        let couplet = read.key.couplets.iter().find(|couplet| couplet.number == number);
        let words = couplet.map_or("", |couplet| command::words(&couplet.wording));
        let meant = wording::question(t, matrix, &proposal.ask);
        let texts: [(&str, &dyn Display); 3] =
            [("question", &number), ("words", &words), ("meant", &meant)];
        if terminal::ask(t, &t.with("run-is-that", &texts)) == Some(true) {
            links.set(number, Link::Asks(proposal.ask.clone()));
        }
    }
    let linked = link::link(&mut read.key, matrix, &links);
    read.findings.extend(linked.findings);
    Given { key: read.key, claim: None, findings: read.findings }
}

/// What is claimed of the key in its own file, and what becomes of it here.
fn of_the_claim(t: Tongue, claim: Option<&Claim>, opinion: &Report) -> String {
    let Some(claim) = claim.filter(|claim| claim.optimal()) else {
        return String::new();
    };
    let second = report::second_opinion(t, claim, opinion.proof);
    if second.is_empty() { second } else { format!("\n{}{second}", report::proved(t, claim)) }
}

/// The opinion as a page of text.
pub(crate) fn opinion_in_words(
    ink: &Ink,
    matrix: &Matrix,
    opinion: &Report,
    findings: &[Finding],
) -> String {
    let together = report::together(ink.t(), matrix, &opinion.left_together);
    let together = together.trim_start();
    let verdict = if opinion.works() && fine(findings) {
        match together.is_empty() {
            true => "opinion-works",
            false => "opinion-works-apart-from-that",
        }
    } else if fine(findings) {
        "opinion-not-all-checked"
    } else {
        "opinion-not-yet"
    };
    let (verdict, checked) = (ink.t().say(verdict), report::coverage(ink.t(), opinion));
    let mut text = format!("{together}{}\n{checked}.\n", ink.bold(&verdict));
    if !findings.is_empty() {
        let _ = write!(text, "\n{}", report::findings(ink, findings));
    }
    text
}
