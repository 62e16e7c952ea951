//! `spinney spread`: how single leaves of each kind spread, where to cut between two kinds, and
//! how many more to measure before that is trusted.

mod words;

use std::fmt::Write;

use spinney_exchange::json;
use spinney_model::{Finding, Severity};
use spinney_voice::Tongue;

use crate::args::{Format, Rows, Spread};
use crate::command::key::fine;
use crate::failure::Failure;
use crate::report::{self, Ink};
use crate::{args, opened, terminal};

pub(crate) fn run(t: Tongue, args: &Spread) -> Result<bool, Failure> {
    if args.table.rows == Some(Rows::Kinds) {
        return Err(Failure::usage("failure-spread-of-kinds", []));
    }
    let table = args::Table { rows: Some(Rows::Leaves), ..args.table.clone() };
    let opened = opened::open(&table)?;
    let (matrix, findings) = (&opened.matrix, opened.findings);
    let specimens = opened.specimens.expect("it was read a row a leaf");
    let spread = spinney_check::spread(matrix, &specimens);
    if args.format == Format::Json {
        let text = json::spread(matrix, &specimens, &spread, &findings, report::in_english);
        terminal::print_json(&text)?;
        return Ok(fine(&findings));
    }
    let ink = Ink::terminal(t);
    let most = if args.all_pairs { usize::MAX } else { words::PAIRS_NAMED };
    let mut text = words::spread(&ink, (matrix, &specimens), &spread, most);
    let matters = |finding: &&Finding| finding.severity != Severity::GoodToKnow;
    let others: Vec<Finding> = findings.iter().filter(matters).cloned().collect();
    if !others.is_empty() {
        let heading = ink.bold(&t.say("weak-noticed"));
        let _ = write!(text, "\n{heading}\n{}", report::findings(&ink, &others));
    }
    terminal::print(&text)?;
    Ok(fine(&findings))
}
