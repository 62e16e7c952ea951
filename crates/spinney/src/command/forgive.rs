//! `spinney forgive`: which kinds to give a second place, and how many finds that saves.

use spinney_build::Budget;
use spinney_check::Settings;
use spinney_exchange::{json, key_text};
use spinney_model::{Finding, Forgiving, Matrix, Wishes, limits};
use spinney_voice::{Tongue, wording};

use crate::args::{Forgive, Format};
use crate::command::key::fine;
use crate::command::wishes;
use crate::failure::Failure;
use crate::report::{self, Ink};
use crate::{command, opened, terminal};

pub(crate) fn run(t: Tongue, args: &Forgive) -> Result<bool, Failure> {
    let opened = opened::open_for_a_key(&args.table)?;
    few_enough(&opened.matrix)?;
    command::enough_room(&opened.matrix, spinney_build::USUAL_MEMORY)?;
    let (matrix, mut findings) = (&opened.matrix, opened.findings);
    let wishes = wishes::what_can_be_asked(matrix, &args.seen)?;
    let budget = Budget { heaps: args.budget };
    let mut forgiving = spinney_build::forgive(matrix, &wishes, args.places, budget);
    for one in &mut forgiving.keys {
        wording::put_words(t, &mut one.key, matrix);
    }
    if let Some(last) = forgiving.keys.last() {
        findings.extend(opinion(matrix, &wishes, last));
    }
    if args.format == Format::Json {
        terminal::print_json(&json::forgiving(
            matrix,
            &forgiving,
            &findings,
            report::in_english,
        ))?;
        return Ok(fine(&findings));
    }
    let ink = Ink::terminal(t);
    let mut text = String::new();
    if let Some(last) = forgiving.keys.last() {
        text = key_text::write_in(t.tag(), &last.key, matrix);
        text.push('\n');
    }
    text.push_str(&report::forgiving(&ink, matrix, &wishes, &forgiving));
    text.push_str(&report::to_look_at(&ink, &findings));
    terminal::print(&text)?;
    Ok(fine(&findings))
}

/// Refuses a table that would keep the search busy for longer than anybody waits.
fn few_enough(matrix: &Matrix) -> Result<(), Failure> {
    let (kinds, most) = (matrix.taxa().len(), limits::FORGIVING_KINDS);
    if kinds <= most {
        return Ok(());
    }
    let texts = [("kinds", kinds.into()), ("most", most.into())];
    Err(Failure::new("failure-forgive-kinds", texts))
}

/// What `check` says of a key whose second places are meant.
fn opinion(matrix: &Matrix, wishes: &Wishes, one: &Forgiving) -> Vec<Finding> {
    let meant = one.both_ways.iter().map(|place| (place.couplet, place.after, place.taxon));
    let settings = Settings {
        second_places: meant.collect(),
        left_out: spinney_check::left_out(matrix, wishes),
        ..Settings::default()
    };
    if one.key.couplets.is_empty() {
        return Vec::new();
    }
    spinney_check::check(matrix, &one.key, None, &settings).findings
}
