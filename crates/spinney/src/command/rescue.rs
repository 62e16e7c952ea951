//! `spinney rescue`: what can be read of a damaged collection, saved into a new file.

use spinney_voice::Tongue;

use crate::args::Rescue as Args;
use crate::failure::Failure;
use crate::files::{self, Over};
use crate::rescue::{HowMuch, Rescue};
use crate::{report, terminal};

pub(crate) fn run(t: Tongue, args: &Args) -> Result<bool, Failure> {
    files::note_collection(&args.damaged);
    files::may_be_written(&args.file, Over::Nothing)?;
    let mut rescue = Rescue::of(&args.damaged)?;
    let damaged = args.damaged.display();
    if rescue.is_whole() {
        let whole = t.with("run-not-damaged", &[("file", &damaged)]);
        terminal::print(&format!("{whole}\n"))?;
        return Ok(true);
    }
    let described = rescue.described();
    let much = if args.before { HowMuch::Before } else { HowMuch::All };
    let (steps, pictures) = rescue.save(&args.file, much)?;
    let saved = report::steps_and_pictures(t, "run-saved", (steps, pictures), &args.file);
    let mut last = vec![t.with("run-not-changed", &[("file", &damaged)])];
    if much == HowMuch::All && rescue.goes_on() {
        last.push(t.say("run-look-over"));
    }
    terminal::print(&format!("{}\n{saved}\n{}\n", described.said(t), last.join(" ")))?;
    Ok(true)
}
