//! `spinney weak`: where a table is weak, and what to go and look at next.

mod words;

use std::fmt::Write;

use spinney_check::WeakSettings;
use spinney_exchange::json;
use spinney_model::{Code, Finding, Severity};
use spinney_voice::Tongue;

use crate::args::{Format, Weak};
use crate::command::key::fine;
use crate::failure::Failure;
use crate::report::{self, Ink};
use crate::{opened, terminal};

pub(crate) fn run(t: Tongue, args: &Weak) -> Result<bool, Failure> {
    let opened = opened::open(&args.table)?;
    let (matrix, findings) = (&opened.matrix, opened.findings);
    let usual = WeakSettings::default();
    let settings = WeakSettings { steps: args.budget, cells_named: args.next, ..usual };
    let weak = spinney_check::weak(matrix, &settings);
    if args.format == Format::Json {
        terminal::print_json(&json::weak(matrix, &weak, &findings, report::in_english))?;
        return Ok(fine(&findings));
    }
    let ink = Ink::terminal(t);
    let most = if args.all_pairs { usize::MAX } else { words::PAIRS_NAMED };
    let mut text = words::weak(&ink, matrix, &weak, most);
    let others: Vec<Finding> = findings.iter().filter(|f| matters(f)).cloned().collect();
    if !others.is_empty() {
        let heading = ink.bold(&t.say("weak-noticed"));
        let _ = write!(text, "\n{heading}\n{}", report::findings(&ink, &others));
    }
    terminal::print(&text)?;
    Ok(fine(&findings))
}

/// Blank cells are what all of this is about; what is only for information stands in `table`.
fn matters(finding: &Finding) -> bool {
    finding.severity != Severity::GoodToKnow && finding.code != Code::Unknown
}
