//! `spinney table`: what was understood of a table, and what it cannot tell apart.

use std::fmt::Write;

use spinney_exchange::{json, table};
use spinney_model::{CharacterIx, Matrix, Quantity, Scale, Value};
use spinney_voice::{Tongue, wording};

use crate::args::{Format, LookAtTable};
use crate::command::key::fine;
use crate::failure::Failure;
use crate::files::Over;
use crate::folder::Folder;
use crate::report::{self, Ink};
use crate::{command, opened, terminal};

pub(crate) fn run(t: Tongue, args: &LookAtTable) -> Result<bool, Failure> {
    let opened = opened::open(&args.table)?;
    let matrix = &opened.matrix;
    let mut findings = opened.findings;
    let settings = command::settings(&args.answer, false);
    command::look_at_table(matrix, &settings, &mut findings);
    let mut written = None;
    if let Some(path) = &args.out {
        let sheets = table::write(matrix);
        let mut folder = Folder::make(path, Over::forced(args.force))?;
        folder.write("table.csv", sheets.table.as_bytes())?;
        folder.write("characters.csv", sheets.characters.as_bytes())?;
        folder.write("kinds.csv", sheets.kinds.as_bytes())?;
        folder.write("about.csv", sheets.about.as_bytes())?;
        written = Some((path, folder.finish()?));
    }
    if args.answer.format == Format::Json {
        terminal::print_json(&json::report(
            &json::Report { findings: &findings, ..json::Report::of(matrix) },
            report::in_english,
        ))?;
        return Ok(fine(&findings));
    }
    let ink = Ink::terminal(t);
    let kinds = t.count("weak-kinds", matrix.taxa().len());
    let columns = t.count("weak-columns", matrix.characters().len());
    let mut text = t.with("run-understood", &[("kinds", &kinds), ("columns", &columns)]);
    text.push('\n');
    for at in matrix.character_indices() {
        report::push_wrapped(&mut text, "  ", &understood(t, matrix, at));
    }
    if !findings.is_empty() {
        let _ = write!(text, "\n{}", report::findings(&ink, &findings));
    }
    if let Some((path, files)) = written {
        text.push_str(&report::written(t, path, &files));
    }
    terminal::print(&text)?;
    Ok(fine(&findings))
}

/// What a column was taken for: `edge: toothed, smooth`, `stalk length: 6 to 50 mm`.
fn understood(t: Tongue, matrix: &Matrix, at: CharacterIx) -> String {
    let character = matrix.character(at);
    let numbers: Vec<Quantity> = matrix
        .taxon_indices()
        .flat_map(|taxon| match &matrix.cell(taxon, at).value {
            Value::Range { low, high } => vec![*low, *high],
            Value::Counts(shares) => {
                shares.iter().map(|(count, _)| Quantity::from_whole((*count).into())).collect()
            }
            _ => Vec::new(),
        })
        .collect();
    let number = |number: Quantity| t.decimal(&character.number(number));
    let span = match (numbers.iter().min(), numbers.iter().max()) {
        (Some(low), Some(high)) if low == high => number(*low),
        (Some(low), Some(high)) => {
            t.with("run-span", &[("low", &number(*low)), ("high", &number(*high))])
        }
        _ => t.say("run-nothing-yet"),
    };
    let what = match &character.scale {
        Scale::Words { states } if states.is_empty() => t.say("run-nothing-yet"),
        Scale::Words { .. } => wording::states(t, character).join(", "),
        Scale::Counts => t.with("run-counted", &[("span", &span)]),
        Scale::Measure { .. } => {
            let span = format!("{span} {}", character.sign());
            t.with("run-measured", &[("span", &span)])
        }
    };
    format!("{}: {}", character.name, what.trim_end())
}
