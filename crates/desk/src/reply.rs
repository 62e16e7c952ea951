//! What the desk answers, for its host to carry out.

use std::collections::BTreeSet;
use std::fmt::Display;

use spinney_voice::Tongue;

/// What the desk answers.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum Reply {
    /// Something to show.
    Page(Page),
    /// Something was done: keep the lines and the pictures after line `head`, hand the lines
    /// back with `catch_up`, then show the page. Where the journal has gone on meanwhile, catch
    /// up and ask again.
    Keep {
        /// The line that the desk had seen last.
        head: u64,
        /// Lines to keep.
        lines: Vec<Vec<u8>>,
        /// Pictures to keep, each by the SHA-256 of its bytes.
        pictures: Vec<Vec<u8>>,
        /// What to show then.
        then: Page,
    },
    /// Remove for good: these lines are the whole journal from now on, and of the pictures
    /// only these stay. Open the collection again, then show the page.
    Rewrite {
        /// The line that the desk had seen last.
        head: u64,
        /// The whole journal.
        lines: Vec<Vec<u8>>,
        /// The pictures that stay.
        pictures: BTreeSet<String>,
        /// What to show then.
        then: Page,
    },
    /// Put a collection in the place of what is kept, all or nothing: these lines are the whole
    /// journal from now on, with these pictures. Only where nothing is lost that a file holds: a
    /// host with a file writes into an empty one and no other. Open the collection again, then
    /// show the page.
    Replace {
        /// The line that the desk had seen last.
        head: u64,
        /// The whole journal.
        lines: Vec<Vec<u8>>,
        /// Its pictures, each by the SHA-256 of its bytes.
        pictures: Vec<Vec<u8>>,
        /// What to show then.
        then: Page,
    },
    /// Show the picture with this hash.
    Picture(String),
    /// Ask again with these pictures in the request, those that are lost as None.
    NeedPictures(BTreeSet<String>),
}

/// Why something was not done: a sentence and a remedy, each a message already filled in.
pub(crate) struct Refused {
    pub(crate) sentence: String,
    pub(crate) remedy: String,
}

/// By the name of the sentence's message; the remedy's is the same with `-remedy` behind it, and
/// has the same texts to fill in.
impl Refused {
    pub(crate) fn say(t: Tongue, message: &str) -> Self {
        Self::with(t, message, &[])
    }

    pub(crate) fn with(t: Tongue, message: &str, texts: &[(&str, &dyn Display)]) -> Self {
        let remedy = t.with(&format!("{message}-remedy"), texts);
        Self { sentence: t.with(message, texts), remedy }
    }

    pub(crate) fn count(t: Tongue, message: &str, count: usize) -> Self {
        Self::count_with(t, message, count, &[])
    }

    pub(crate) fn count_with(
        t: Tongue,
        message: &str,
        count: usize,
        texts: &[(&str, &dyn Display)],
    ) -> Self {
        let remedy = t.count_with(&format!("{message}-remedy"), count, texts);
        Self { sentence: t.count_with(message, count, texts), remedy }
    }
}

/// Something to show.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Page {
    /// The status of HTTP: 200, 303, 404, 422.
    pub status: u16,
    /// The media type.
    pub kind: &'static str,
    /// The bytes.
    pub body: Vec<u8>,
    /// Where to go instead, with 303.
    pub location: Option<String>,
    /// The name of a file to keep, where it is no page.
    pub file: Option<String>,
    /// Whether it never changes while the program runs.
    pub lasting: bool,
}

impl Page {
    pub(crate) fn html(body: String) -> Self {
        Self::of("text/html; charset=utf-8", body.into_bytes())
    }

    pub(crate) fn of(kind: &'static str, body: Vec<u8>) -> Self {
        Self { status: 200, kind, body, location: None, file: None, lasting: false }
    }

    /// On to another page, which is then asked for.
    pub(crate) fn see(location: impl Into<String>) -> Self {
        let page = Self::of("text/plain; charset=utf-8", Vec::new());
        Self { status: 303, location: Some(location.into()), ..page }
    }
}
