//! One table of all routes: which path shows or does what.
//!
//! From a request to the handler that answers it, and from what the handler did to a reply.
//! A word in braces stands for one part of the path.

use spinney_exchange::journal;
use spinney_model::{Done, Edit, Entry};

use crate::pages::{self, Shown};
use crate::{Desk, Page, Reply, Request, TooLarge};
use spinney_voice::Tongue;

/// What was done, to be kept as one line of the journal.
pub(crate) struct Deed {
    pub(crate) done: Option<Done>,
    pub(crate) pictures: Vec<Vec<u8>>,
    /// Where to go then.
    pub(crate) to: String,
}

impl Deed {
    pub(crate) fn edits(edits: Vec<Edit>, to: impl Into<String>) -> Self {
        let done = (!edits.is_empty()).then_some(Done::Edits(edits));
        Self { done, pictures: Vec::new(), to: to.into() }
    }
}

/// Why something was not done: a sentence and a remedy, each a message already filled in.
pub(crate) struct Refused {
    pub(crate) sentence: String,
    pub(crate) remedy: String,
}

/// What a handler is given besides the desk.
pub(crate) struct Asked<'r> {
    pub(crate) request: &'r Request,
    pub(crate) tongue: Tongue,
    /// The parts of the path that stand for braces, in order.
    pub(crate) parts: Vec<&'r str>,
}

impl Asked<'_> {
    /// A part of the path as a number; 0 is nobody's number.
    pub(crate) fn number(&self, part: usize) -> u32 {
        self.parts.get(part).and_then(|part| part.parse().ok()).unwrap_or(0)
    }

    /// Whether this window changed a field: the form carries what the page showed in `o-` and the
    /// name, so that an old page does not take back what another window has written since.
    pub(crate) fn touched(&self, field: &str, text: &str) -> bool {
        let shown = self
            .request
            .form
            .iter()
            .find(|(name, _)| name.strip_prefix("o-").is_some_and(|name| name == field));
        shown.is_none_or(|(_, shown)| !shown.split_whitespace().eq(text.split_whitespace()))
    }

    /// The address to go back to: one of ours, or the given one.
    pub(crate) fn back(&self, otherwise: &str) -> String {
        let back = self.request.field("back");
        let ours = back.starts_with('/') && !back.starts_with("//") && !back.contains('\\');
        let plain = !back.chars().any(|sign| sign.is_control() || sign.is_whitespace());
        if ours && plain { back.to_owned() } else { otherwise.to_owned() }
    }
}

#[derive(Clone, Copy)]
pub(crate) enum Handler {
    /// Shows something.
    Show(fn(&mut Desk, &Asked<'_>) -> Shown),
    /// Shows something that may take long: a host with threads asks a snapshot for it, so that
    /// nobody else waits.
    ShowLong(fn(&mut Desk, &Asked<'_>) -> Shown),
    /// Does something.
    Do(fn(&mut Desk, &Asked<'_>) -> Result<Deed, Refused>),
    /// Removes something for good, or does whatever else no edit can.
    Answer(fn(&mut Desk, &Asked<'_>) -> Reply),
}

pub(crate) fn handle(desk: &mut Desk, request: &Request) -> Reply {
    let tongue = Tongue::for_person(&request.languages);
    let Some((handler, parts)) = found(request) else {
        let asked = Asked { request, tongue, parts: Vec::new() };
        return Reply::Page(pages::frame::not_found(desk, &asked));
    };
    let asked = Asked { request, tongue, parts };
    if let Some(too_large) = desk.too_large
        && !of_any_size(&request.path)
    {
        return Reply::Page(pages::too_large::page(desk, &asked, too_large));
    }
    match handler {
        Handler::Show(show) | Handler::ShowLong(show) => match show(desk, &asked) {
            Shown::Page(page) => Reply::Page(page),
            Shown::Nothing => Reply::Page(pages::frame::not_found(desk, &asked)),
            Shown::Picture(hash) => Reply::Picture(hash),
            Shown::NeedPictures(hashes) => Reply::NeedPictures(hashes),
        },
        Handler::Answer(answer) => answer(desk, &asked),
        Handler::Do(act) => match act(desk, &asked) {
            Ok(deed) => keep(desk, &asked, deed),
            Err(refused) => Reply::Page(pages::frame::refused(desk, &asked, &refused)),
        },
    }
}

/// Whether a request shows something that may take long, or brings files to be unpacked.
pub(crate) fn takes_long(request: &Request) -> bool {
    match found(request) {
        Some((Handler::ShowLong(_), _)) => true,
        Some((Handler::Do(_) | Handler::Answer(_), _)) => !request.files.is_empty(),
        Some((Handler::Show(_), _)) | None => false,
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

/// What would make the collection larger than the screens hold is refused.
fn keep(desk: &Desk, asked: &Asked<'_>, deed: Deed) -> Reply {
    let then = Page::see(deed.to);
    let Some(done) = deed.done else { return Reply::Page(then) };
    let state = desk.history.then(&done);
    let line = journal::write(&Entry { at: asked.request.at, done });
    let lines = usize::try_from(desk.head()).unwrap_or(usize::MAX).saturating_add(1);
    let too_large = state
        .filter(|_| desk.too_large.is_none())
        .and_then(|state| TooLarge::of(&state))
        .or_else(|| TooLarge::of_journal(lines, desk.bytes + line.len()));
    if let Some(too_large) = too_large {
        let refused = too_large.said(asked.tongue);
        return Reply::Page(pages::frame::refused(desk, asked, &refused));
    }
    Reply::Keep { head: desk.head(), lines: vec![line], pictures: deed.pictures, then }
}

/// The handler of a path, and the parts that stand for braces.
fn found(request: &Request) -> Option<(Handler, Vec<&str>)> {
    let path: Vec<&str> = request.path.split('/').skip(1).collect();
    pages::routes().find_map(|(method, pattern, handler)| {
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
