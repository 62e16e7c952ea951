//! `spinney demo`: the three invented outings, end to end, into a folder.

use std::collections::BTreeMap;
use std::fmt::{Display, Write};
use std::path::Path;

use spinney_build::Budget;
use spinney_check::Settings;
use spinney_exchange::link::Links;
use spinney_exchange::{json, key_text, table};
use spinney_model::{AskedBy, Finding, Matrix, SecondLooks};
use spinney_press::sheets::Printing;
use spinney_press::{Booklet, Letters, Sizes};
use spinney_voice::Tongue;

use crate::args::{ComeAlong, Demo};
use crate::command::key::{add_new, fine};
use crate::command::{self, check, explain};
use crate::failure::Failure;
use crate::files::Over;
use crate::folder::{self, Folder};
use crate::report::{self, Ink};
use crate::scenarios::{OUTINGS, Outing};
use crate::terminal;

pub(crate) fn run(t: Tongue, args: &Demo) -> Result<bool, Failure> {
    let date = folder::date(args.date.as_deref());
    let over = Over::forced(args.force);
    let ink = Ink::terminal(t);
    for outing in OUTINGS {
        terminal::print(&format!("{}\n", ink.bold(&t.say(outing.title))))?;
        let place = args.out.join(outing.name);
        write_given(outing, &place, over)?;
        let tables = outing.files.iter().map(|file| file.name);
        for name in tables.filter(|name| name.starts_with("table")) {
            terminal::print(&best_key(
                t,
                outing,
                name,
                (&place, over),
                (args.come_along, &date),
            )?)?;
        }
        for (key, table) in outing.keys {
            terminal::print(&second_opinion(
                t,
                outing,
                key,
                table,
                (&place, over),
                (args.come_along, &date),
            )?)?;
        }
        terminal::print("\n")?;
    }
    let done = t.with("run-demo-done", &[("folder", &args.out.display())]);
    let mut text = String::new();
    report::push_wrapped(&mut text, "", &done);
    terminal::print(&text)?;
    Ok(true)
}

/// The files of the outing as a person would have made them.
fn write_given(outing: &Outing, place: &Path, over: Over) -> Result<(), Failure> {
    let mut folder = Folder::make(place, over)?;
    for file in outing.files {
        folder.write(file.name, file.text.as_bytes())?;
    }
    folder.finish().map(drop)
}

/// Reads one of the outing's tables.
pub(crate) fn read(outing: &Outing, name: &str) -> Result<(Matrix, Vec<Finding>), Failure> {
    let source = |name: &str| table::Source {
        name: name.to_owned(),
        bytes: outing.text(name).as_bytes().to_vec(),
    };
    let characters = name.replace("table", "characters");
    let sources = table::Sources {
        table: source(name),
        characters: Some(source(&characters)),
        kinds: Some(source("kinds.csv")),
        about: Some(source("about.csv")),
    };
    let read = table::read(&sources, &table::Settings::default()).map_err(Failure::of_table)?;
    Ok((read.matrix, read.findings))
}

/// The name of the folder for what is made of a table: `best`, `best_with_spine`.
fn best_folder(table: &str) -> String {
    table.trim_end_matches(".csv").replace("table", "best")
}

fn best_key(
    t: Tongue,
    outing: &Outing,
    name: &str,
    (place, over): (&Path, Over),
    (come_along, date): (ComeAlong, &str),
) -> Result<String, Failure> {
    let (matrix, mut findings) = read(outing, name)?;
    let matrix = come_along.counted(matrix);
    let wishes = spinney_model::Wishes::default();
    let budget = Budget::default();
    let (mut search, built) = command::find(
        t,
        &matrix,
        &wishes,
        (budget.heaps, spinney_build::USUAL_MEMORY),
        &mut findings,
    );
    let settings = Settings::default();
    command::look_at_table(&matrix, &settings, &mut findings);
    let opinion = spinney_check::check(&matrix, &built.key, Some(&built.claim), &settings);
    add_new(&mut findings, &opinion.findings);
    let looks = search.second_looks(&built.key);
    let drawings = spinney_draw::of_kinds(&matrix);
    let booklet = Booklet {
        matrix: &matrix,
        key: &built.key,
        walks: &opinion.walks,
        left_together: &opinion.left_together,
        second_looks: &looks,
        stamp: command::stamp(AskedBy::Search, &opinion, false),
        date: Some(date),
        pictures: &BTreeMap::new(),
        drawn: command::drawn(&drawings, &[]),
        letters: Letters::Usual,
        sizes: Sizes::USUAL,
        tongue: t,
    };
    let json = json::Report {
        matrix: &matrix,
        key: Some(&built.key),
        claim: Some(&built.claim),
        effort: None,
        findings: &findings,
        questions_checked: Some((opinion.checked, opinion.questions)),
        reasons: &[],
        refused: &built.refused,
        ..json::Report::of(&matrix)
    };
    let into = best_folder(name);
    let mut folder = Folder::make(&place.join(&into), over)?;
    let said = folder.fill(&booklet, &json, Printing::USUAL)?;
    let plain = Ink::plain(t);
    folder.write("findings.txt", report::findings(&plain, &findings).as_bytes())?;
    let claim = report::claim(t, &built.claim, &matrix, &opinion.left_together, 0);
    let mut why = claim.clone();
    for reason in search.explain(&built.key, budget) {
        let _ = write!(
            why,
            "\n{}",
            explain::reason_in_words(&plain, &matrix, &built.key, &reason, 3)
        );
    }
    folder.write("why.txt", why.as_bytes())?;
    folder.finish()?;
    let text = key_text::write_in(t.tag(), &built.key, &matrix);
    let title = t.with("run-demo-best", &[("table", &name), ("folder", &into)]);
    Ok(format!("\n  {title}\n{}{claim}{said}", indented(&text)))
}

fn second_opinion(
    t: Tongue,
    outing: &Outing,
    key: &str,
    table: &str,
    (place, over): (&Path, Over),
    (come_along, date): (ComeAlong, &str),
) -> Result<String, Failure> {
    let (matrix, mut findings) = read(outing, table)?;
    let matrix = come_along.counted(matrix);
    let given = check::read(t, (Path::new(key), outing.text(key)), &matrix, Links::default())?;
    let settings = Settings { pupils_wrote_it: true, ..Settings::default() };
    let opinion = spinney_check::check(&matrix, &given.key, None, &settings);
    let mut of_key = given.findings;
    add_new(&mut of_key, &opinion.findings);
    check::drop_echoes(&mut of_key);
    add_new(&mut findings, &of_key);
    let drawings = spinney_draw::of_kinds(&matrix);
    let booklet = Booklet {
        matrix: &matrix,
        key: &given.key,
        walks: &opinion.walks,
        left_together: &opinion.left_together,
        second_looks: &SecondLooks::new(),
        stamp: command::stamp(AskedBy::People, &opinion, false),
        date: Some(date),
        pictures: &BTreeMap::new(),
        drawn: command::drawn(&drawings, &[]),
        letters: Letters::Usual,
        sizes: Sizes::USUAL,
        tongue: t,
    };
    let json = json::Report {
        matrix: &matrix,
        key: Some(&given.key),
        claim: None,
        effort: command::effort(&opinion),
        findings: &findings,
        questions_checked: Some((opinion.checked, opinion.questions)),
        reasons: &[],
        ..json::Report::of(&matrix)
    };
    let into = key.trim_end_matches(".txt");
    let mut folder = Folder::make(&place.join(into), over)?;
    let said = folder.fill(&booklet, &json, Printing::USUAL)?;
    let plain = Ink::plain(t);
    let opinion_text = check::opinion_in_words(&plain, &matrix, &opinion, &of_key);
    folder.write("opinion.txt", opinion_text.as_bytes())?;
    folder.finish()?;
    let mended = of_key.iter().filter(|f| !fine(std::slice::from_ref(f))).count();
    let verdict = match mended {
        0 if opinion.works() => t.say("run-demo-works"),
        0 => t.say("run-demo-not-all"),
        some => t.count("run-demo-not-yet", some),
    };
    let checked = report::coverage(t, &opinion);
    let texts: [(&str, &dyn Display); 4] =
        [("key", &key), ("folder", &into), ("verdict", &verdict), ("checked", &checked)];
    let together = report::together(t, &matrix, &opinion.left_together);
    Ok(format!("\n  {}\n{together}{said}", t.with("run-demo-key", &texts)))
}

fn indented(text: &str) -> String {
    text.lines().map(|line| format!("  {line}\n")).collect()
}
