//! `spinney pocket`: the page that holds everything, as a file.

use std::path::Path;

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

pub(crate) fn run(args: &Pocket) -> Result<bool, Failure> {
    let ending = args.file.extension();
    let html = ending.is_some_and(|ending| {
        ["html", "htm"].iter().any(|known| ending.eq_ignore_ascii_case(known))
    });
    if args.file != Path::new("-") && !html {
        return Err(Failure::usage(
            format!("{} does not end in .html.", args.file.display()),
            "Name a page, such as spinney.html.",
        ));
    }
    let Some(page) = PAGE else {
        return Err(Failure::new(
            "This Spinney was built without the page.",
            "Type ./pocket in the folder of Spinney's sources: it builds the page. To have it in the \
             program too, type then: cargo build --release --features pocket",
        ));
    };
    if args.file == Path::new("-") {
        return terminal::print_bytes(page).map(|()| true);
    }
    files::write_whole(&args.file, page, Over::forced(args.force))?;
    terminal::print(&format!(
        "Written: {}. Copy it onto a memory stick or a tablet, and open it in a browser.\n",
        args.file.display()
    ))?;
    Ok(true)
}
