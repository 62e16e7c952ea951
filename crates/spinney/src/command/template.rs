//! `spinney template`: an empty table with questions to start from.

use std::path::Path;

use spinney_voice::Tongue;

use crate::args::Template;
use crate::failure::Failure;
use crate::files::{self, Over};
use crate::terminal;

pub(crate) fn run(t: Tongue, args: &Template) -> Result<bool, Failure> {
    let today = jiff::Zoned::now().strftime("%Y-%m-%d").to_string();
    let workbook = spinney_exchange::template::xlsx(&today)
        .map_err(|error| Failure::saying(move |t| spinney_voice::template_error(t, &error)))?;
    if args.file == Path::new("-") {
        return terminal::print_bytes(&workbook).map(|()| true);
    }
    if args.file.extension().is_none_or(|ending| !ending.eq_ignore_ascii_case("xlsx")) {
        return Err(Failure::usage("failure-not-xlsx", [("file", (&*args.file).into())]));
    }
    files::write_whole(&args.file, &workbook, Over::forced(args.force))?;
    let written = t.with("run-template", &[("file", &args.file.display())]);
    terminal::print(&format!("{written}\n"))?;
    Ok(true)
}
