//! `spinney rescue`: what can be read of a damaged collection, saved into a new file.

use crate::args::Rescue as Args;
use crate::failure::Failure;
use crate::files::{self, Over};
use crate::rescue::{HowMuch, Rescue};
use crate::terminal;

pub(crate) fn run(args: &Args) -> Result<bool, Failure> {
    files::note_collection(&args.damaged);
    files::may_be_written(&args.file, Over::Nothing)?;
    let mut rescue = Rescue::of(&args.damaged)?;
    let damaged = args.damaged.display();
    if rescue.is_whole() {
        terminal::print(&format!("Nothing in {damaged} is damaged. No file was made.\n"))?;
        return Ok(true);
    }
    let words = rescue.in_words();
    if rescue.is_empty() {
        return Err(Failure::new(
            words,
            "Nothing of it can be saved. Open an older copy of it.",
        ));
    }
    let much = if args.before { HowMuch::Before } else { HowMuch::All };
    let (lines, pictures) = rescue.save(&args.file, much)?;
    terminal::print(&format!(
        "{words}\nSaved into {}: lines of the journal: {lines}; pictures: {pictures}.\n{damaged} was \
         not changed. Look over what came after the damage: it may rest on what is lost.\n",
        args.file.display()
    ))?;
    Ok(true)
}
