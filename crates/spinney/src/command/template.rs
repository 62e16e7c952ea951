//! `spinney template`: an empty table with questions to start from.

use std::path::Path;

use crate::args::Template;
use crate::failure::Failure;
use crate::files::{self, Over};
use crate::terminal;

pub(crate) fn run(args: &Template) -> Result<bool, Failure> {
    let today = jiff::Zoned::now().strftime("%Y-%m-%d").to_string();
    let workbook = spinney_exchange::template::xlsx(&today)
        .map_err(|error| Failure::saying(move |t| spinney_voice::template_error(t, &error)))?;
    if args.file == Path::new("-") {
        return terminal::print_bytes(&workbook).map(|()| true);
    }
    if args.file.extension().is_none_or(|ending| !ending.eq_ignore_ascii_case("xlsx")) {
        return Err(Failure::usage(
            format!("{} does not end in .xlsx.", args.file.display()),
            "Name a spreadsheet, such as finds.xlsx.",
        ));
    }
    files::write_whole(&args.file, &workbook, Over::forced(args.force))?;
    terminal::print(&format!(
        "Written: {0}. Fill in one row a kind, then: spinney key {0}\n",
        args.file.display()
    ))?;
    Ok(true)
}
