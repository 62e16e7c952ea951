//! What a handler is given, and what it answers: the request with its context, and a page to
//! show or something to keep.

use std::collections::BTreeSet;

use spinney_model::{Done, Edit};
use spinney_voice::Tongue;

use crate::desk::Desk;
use crate::reply::{Page, Refused};
use crate::request::{Method, Request};

/// A request with its context.
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

    /// A field of the form as a number; 0 is nobody's number.
    pub(crate) fn id(&self, field: &str) -> u32 {
        self.request.field(field).parse().unwrap_or(0)
    }

    /// Whether the form has a field.
    pub(crate) fn sent(&self, field: &str) -> bool {
        self.request.form.iter().any(|(name, _)| name == field)
    }

    /// A text of a form on one line.
    pub(crate) fn line(&self, field: &str) -> String {
        self.request.field(field).split_whitespace().collect::<Vec<_>>().join(" ")
    }

    /// A text of a form on one line, cut to so many letters.
    pub(crate) fn cut(&self, field: &str, longest: usize) -> String {
        self.line(field).chars().take(longest).collect()
    }

    /// A text of a form on one line.
    ///
    /// **Errors**: it is longer than it may be.
    pub(crate) fn typed(&self, field: &str, longest: usize) -> Result<String, Refused> {
        let text = self.line(field);
        if text.chars().count() > longest {
            Err(self.too_long(&text, longest))
        } else {
            Ok(text)
        }
    }

    /// A text is longer than it may be.
    pub(crate) fn too_long(&self, text: &str, longest: usize) -> Refused {
        let start: String = text.chars().take(40).collect();
        Refused::count_with(self.tongue, "finds-long-text", longest, &[("start", &start)])
    }

    /// A refusal by the name of its message.
    pub(crate) fn refused(&self, message: &str) -> Refused {
        Refused::say(self.tongue, message)
    }

    /// The address to go back to: one of ours, or the given one.
    pub(crate) fn back(&self, otherwise: &str) -> String {
        let back = self.request.field("back");
        let ours = back.starts_with('/') && !back.starts_with("//") && !back.contains('\\');
        let plain = !back.chars().any(|sign| sign.is_control() || sign.is_whitespace());
        if ours && plain { back.to_owned() } else { otherwise.to_owned() }
    }
}

/// What a handler shows.
pub(crate) enum Shown {
    /// A page.
    Page(Page),
    /// There is no such thing.
    Nothing,
    /// A picture, by its hash.
    Picture(String),
    /// Needs these pictures first.
    NeedPictures(BTreeSet<String>),
}

/// What was done, and where to go then.
pub(crate) struct Deed {
    pub(crate) what: What,
    pub(crate) pictures: Vec<Vec<u8>>,
    pub(crate) to: String,
}

/// What becomes of the journal.
pub(crate) enum What {
    /// One line more; None: nothing is to be kept.
    Line(Option<Done>),
    /// These are its lines from now on, and of the pictures only these stay.
    Rewritten(Vec<Vec<u8>>, BTreeSet<String>),
    /// These are its lines from now on, with the pictures of the deed and no others.
    Replaced(Vec<Vec<u8>>),
    /// It stays as it is, and this page is shown: with all that was typed, and what stands in
    /// the way.
    Shown(Box<Page>),
}

impl Deed {
    pub(crate) fn of(done: Option<Done>, to: impl Into<String>) -> Self {
        Self { what: What::Line(done), pictures: Vec::new(), to: to.into() }
    }

    /// Edits, one line of the journal together; none: nothing is to be kept.
    pub(crate) fn edits(edits: impl IntoIterator<Item = Edit>, to: impl Into<String>) -> Self {
        let edits: Vec<Edit> = edits.into_iter().collect();
        Self::of((!edits.is_empty()).then_some(Done::Edits(edits)), to)
    }
}

/// A form as the table of routes has it (`forms`).
pub(crate) trait Doing {
    /// Reads it, holds what its page showed against what is so now, and does it.
    fn answer(&self, desk: &Desk, asked: &Asked<'_>) -> Result<Deed, Refused>;
}

/// What answers a request.
#[derive(Clone, Copy)]
pub(crate) enum Handler {
    /// Shows something.
    Show(fn(&Desk, &Asked<'_>) -> Shown),
    /// Shows something that may take long: a host with threads asks a snapshot for it, so that
    /// nobody else waits.
    ShowLong(fn(&Desk, &Asked<'_>) -> Shown),
    /// Does what a form says.
    Do(&'static dyn Doing),
    /// Goes on with long work, or ends it; nothing is kept.
    Work(fn(&mut Desk, &Asked<'_>) -> Page),
}

/// A path, in which a word in braces stands for any one part, and what answers it.
pub(crate) type Route = (Method, &'static str, Handler);

/// The route of something that is only shown.
pub(crate) const fn get(path: &'static str, show: fn(&Desk, &Asked<'_>) -> Shown) -> Route {
    (Method::Get, path, Handler::Show(show))
}
