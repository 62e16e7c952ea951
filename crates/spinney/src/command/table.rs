//! `spinney table`: what was understood of a table, and what it cannot tell apart.

use std::fmt::Write;

use spinney_exchange::{json, table};

use crate::args::{Format, LookAtTable};
use crate::command::key::fine;
use crate::failure::Failure;
use crate::folder::Folder;
use crate::report::{self, Ink};
use crate::{collection, command, terminal};

pub(crate) fn run(args: &LookAtTable) -> Result<bool, Failure> {
    let opened = collection::open(&args.table)?;
    let matrix = &opened.matrix;
    let mut findings = opened.findings;
    let settings = command::settings(&args.answer, false);
    command::look_at_table(matrix, &settings, &mut findings);
    if let Some(path) = &args.out {
        let sheets = table::write(matrix);
        let mut folder = Folder::make(path)?;
        folder.write("table.csv", sheets.table.as_bytes())?;
        folder.write("characters.csv", sheets.characters.as_bytes())?;
        folder.write("kinds.csv", sheets.kinds.as_bytes())?;
        folder.write("about.csv", sheets.about.as_bytes())?;
    }
    if args.answer.format == Format::Json {
        terminal::print(&json::report(&json::Report {
            matrix,
            key: None,
            claim: None,
            effort: None,
            findings: &findings,
            questions_checked: None,
            reasons: &[],
        }))?;
        return Ok(fine(&findings));
    }
    let ink = Ink { colour: terminal::colour() };
    let (kinds, characters) = (matrix.taxa().len(), matrix.characters().len());
    let mut text = format!("{kinds} kinds and {characters} characters were read.\n");
    if !findings.is_empty() {
        let _ = write!(text, "\n{}", report::findings(&ink, &findings));
    }
    terminal::print(&text)?;
    Ok(fine(&findings))
}
