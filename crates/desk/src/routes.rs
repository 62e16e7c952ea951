//! One table of all routes: which path shows or does what.
//!
//! From a request to the handler that answers it, and from what the handler did to a reply.

use spinney_exchange::journal;
use spinney_model::{Done, Entry};
use spinney_voice::Tongue;

use crate::asked::{Asked, Deed, Handler, Route, Shown, What};
use crate::desk::Desk;
use crate::pages::{self, frame};
use crate::reply::{Page, Refused, Reply};
use crate::request::Request;
use crate::size::TooLarge;

/// All routes, screen by screen.
const ROUTES: [&[Route]; 16] = [
    pages::assets::ROUTES,
    pages::finds::ROUTES,
    pages::forget::ROUTES,
    pages::share_out::ROUTES,
    pages::measure::ROUTES,
    pages::leaves::ROUTES,
    pages::heaps::ROUTES,
    pages::copy::ROUTES,
    pages::newcomer::ROUTES,
    pages::table::ROUTES,
    pages::key::ROUTES,
    pages::words::ROUTES,
    pages::try_it::ROUTES,
    pages::print::ROUTES,
    pages::done::ROUTES,
    pages::saved::ROUTES,
];

pub(crate) fn handle(desk: &mut Desk, request: &Request) -> Reply {
    let tongue = Tongue::for_person(&request.languages);
    let Some((handler, parts)) = found(request) else {
        let asked = Asked { request, tongue, parts: Vec::new() };
        return Reply::Page(frame::not_found(desk, &asked));
    };
    let asked = Asked { request, tongue, parts };
    if let Some(too_large) = desk.too_large
        && !of_any_size(&request.path)
    {
        return Reply::Page(pages::host::too_large(desk, &asked, too_large));
    }
    match handler {
        Handler::Show(show) | Handler::ShowLong(show) => match show(desk, &asked) {
            Shown::Page(page) => Reply::Page(page),
            Shown::Nothing => Reply::Page(frame::not_found(desk, &asked)),
            Shown::Picture(hash) => Reply::Picture(hash),
            Shown::NeedPictures(hashes) => Reply::NeedPictures(hashes),
        },
        Handler::Work(work) => Reply::Page(work(desk, &asked)),
        Handler::Do(form) => form
            .answer(desk, &asked)
            .and_then(|deed| done(desk, &asked, deed))
            .unwrap_or_else(|refused| Reply::Page(frame::refused(desk, &asked, &refused))),
    }
}

/// Whether a request shows something that may take long, or brings files to be unpacked.
pub(crate) fn takes_long(request: &Request) -> bool {
    match found(request) {
        Some((Handler::ShowLong(_), _)) => true,
        Some((Handler::Do(_), _)) => !request.files.is_empty(),
        Some((Handler::Show(_) | Handler::Work(_), _)) | None => false,
    }
}

/// What is there for a collection of any size: it can be saved elsewhere, made smaller again by
/// undoing, and removed.
fn of_any_size(path: &str) -> bool {
    let some = [
        "/saved",
        "/saved/copy.zip",
        "/saved/table.csv",
        "/do/undo",
        "/do/forget-all",
        "/forget/all",
    ];
    path.starts_with("/assets/") || path.starts_with("/picture/") || some.contains(&path)
}

fn done(desk: &Desk, asked: &Asked<'_>, deed: Deed) -> Result<Reply, Refused> {
    let Deed { what, pictures, to } = deed;
    let (head, then) = (desk.head(), Page::see(to));
    Ok(match what {
        What::Line(None) => Reply::Page(then),
        What::Shown(page) => Reply::Page(*page),
        What::Line(Some(done)) => {
            let lines = vec![line(desk, asked, done)?];
            Reply::Keep { head, lines, pictures, then }
        }
        What::Rewritten(lines, pictures) => Reply::Rewrite { head, lines, pictures, then },
        What::Replaced(lines) => Reply::Replace { head, lines, pictures, then },
    })
}

/// A line of the journal. What would make the collection larger than the screens hold is refused.
fn line(desk: &Desk, asked: &Asked<'_>, done: Done) -> Result<Vec<u8>, Refused> {
    let state = desk.history.then(&done);
    let line = journal::write(&Entry { at: asked.request.at, done });
    let lines = usize::try_from(desk.head()).unwrap_or(usize::MAX).saturating_add(1);
    let too_large = state
        .filter(|_| desk.too_large.is_none())
        .and_then(|state| TooLarge::of(&state))
        .or_else(|| TooLarge::of_journal(lines, desk.bytes + line.len()));
    too_large.map_or(Ok(line), |too_large| Err(too_large.said(asked.tongue)))
}

/// The handler of a path, and the parts that stand for braces.
fn found(request: &Request) -> Option<(Handler, Vec<&str>)> {
    let path: Vec<&str> = request.path.split('/').skip(1).collect();
    ROUTES.iter().copied().flatten().find_map(|(method, pattern, handler)| {
        let pattern: Vec<&str> = pattern.split('/').skip(1).collect();
        if *method != request.method || pattern.len() != path.len() {
            return None;
        }
        let mut parts = Vec::new();
        for (wanted, given) in pattern.iter().zip(&path) {
            match wanted.starts_with('{') {
                true => parts.push(*given),
                false if wanted == given => {}
                false => return None,
            }
        }
        Some((*handler, parts))
    })
}
