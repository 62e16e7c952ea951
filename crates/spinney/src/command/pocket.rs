//! `spinney pocket`: the page that holds everything, as a file.

use std::path::Path;

use spinney_voice::Tongue;

use crate::args::Pocket;
use crate::failure::Failure;
use crate::files::{self, Over};
use crate::terminal;

/// The page, where the program was built with it.
#[cfg(feature = "pocket")]
const PAGE: Option<&[u8]> = Some(include_bytes!(concat!(
    env!("CARGO_MANIFEST_DIR"),
    "/../../target/pocket/spinney.html"
)));
#[cfg(not(feature = "pocket"))]
const PAGE: Option<&[u8]> = None;

pub(crate) fn run(t: Tongue, args: &Pocket) -> Result<bool, Failure> {
    let ending = args.file.extension();
    let html = ending.is_some_and(|ending| {
        ["html", "htm"].iter().any(|known| ending.eq_ignore_ascii_case(known))
    });
    if args.file != Path::new("-") && !html {
        return Err(Failure::usage("failure-not-html", [("file", (&*args.file).into())]));
    }
    let Some(page) = PAGE else { return Err(Failure::new("failure-no-page", [])) };
    if args.file == Path::new("-") {
        return terminal::print_bytes(page).map(|()| true);
    }
    files::write_whole(&args.file, page, Over::forced(args.force))?;
    let written = t.with("run-pocket", &[("file", &args.file.display())]);
    terminal::print(&format!("{written}\n"))?;
    Ok(true)
}
