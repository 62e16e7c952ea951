//! `spinney ways`: the key when a question may have three or four ways instead of yes and no.

use std::fmt::Write;

use spinney_build::Budget;
use spinney_check::Settings;
use spinney_exchange::json;
use spinney_model::{Finding, ManyWays, Matrix, Place, Severity, Wishes};
use spinney_press::wording;

use crate::args::{Format, Ways};
use crate::command::key::{add_new, fine};
use crate::command::wishes;
use crate::failure::Failure;
use crate::report::{self, Ink};
use crate::{collection, command, terminal};

pub(crate) fn run(args: &Ways) -> Result<bool, Failure> {
    let opened = collection::open_for_a_key(&args.table)?;
    command::enough_room(&opened.matrix, spinney_build::USUAL_MEMORY)?;
    let (matrix, mut findings) = (&opened.matrix, opened.findings);
    let wishes = wishes::what_can_be_asked(matrix, &args.seen)?;
    let budget = Budget { heaps: args.budget };
    let mut found = spinney_build::many_ways(matrix, &wishes, args.most, budget);
    wording::put_words(&mut found.key, matrix);
    add_new(&mut findings, &opinion(matrix, &wishes, &found));
    if args.format == Format::Json {
        terminal::print_json(&json::many_ways(matrix, &found, &findings))?;
        return Ok(fine(&findings));
    }
    let ink = Ink { colour: terminal::colour() };
    let mut text = wording::many_ways(&found.key, &found.same_look, matrix);
    let _ = write!(text, "\n{}", report::many_ways(&ink, matrix, &wishes, &found));
    text.push_str(&report::to_look_at(&ink, &findings));
    terminal::print(&text)?;
    Ok(fine(&findings))
}

/// What `check` says of the key. What it says of the words of a question that belongs to another
/// one's look is left out: they are not printed.
fn opinion(matrix: &Matrix, wishes: &Wishes, found: &ManyWays) -> Vec<Finding> {
    if found.key.couplets.is_empty() {
        return Vec::new();
    }
    let settings = Settings {
        same_look: found.same_look.clone(),
        left_out: spinney_check::left_out(matrix, wishes),
        ..Settings::default()
    };
    let printed = |finding: &Finding| match finding.place {
        Place::Couplet(number) => {
            finding.severity == Severity::MendThis || !found.same_look.contains(&number)
        }
        _ => true,
    };
    let mut findings = spinney_check::check(matrix, &found.key, None, &settings).findings;
    findings.retain(printed);
    findings
}
