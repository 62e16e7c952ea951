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
    let much = if args.before { HowMuch::Before } else { HowMuch::All };
    let (steps, pictures) = rescue.save(&args.file, much)?;
    let look = match much {
        HowMuch::All if rescue.goes_on() => {
            " Look over what came after the damage: it may rest on what is lost."
        }
        _ => "",
    };
    terminal::print(&format!(
        "{words}\n{} saved into {}.\n{damaged} was not changed.{look}\n",
        counted(steps, pictures),
        args.file.display()
    ))?;
    Ok(true)
}

/// `2 steps and 1 picture are`.
fn counted(steps: usize, pictures: usize) -> String {
    let of = |count: usize, one: &str| match count {
        1 => format!("1 {one}"),
        _ => format!("{count} {one}s"),
    };
    match (steps, pictures) {
        (1, 0) => "1 step is".to_owned(),
        (_, 0) => format!("{} are", of(steps, "step")),
        _ => format!("{} and {} are", of(steps, "step"), of(pictures, "picture")),
    }
}
