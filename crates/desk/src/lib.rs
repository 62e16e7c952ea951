//! What a person sees and does at the screen: requests in, pages and edits out.
//!
//! The desk holds one collection, opened by replaying its journal. It has no sockets, files,
//! clock or randomness: its host gives it a [`Request`] with the time and carries out the
//! [`Reply`]. An edit counts only once the host has kept its lines and handed them back with
//! [`Desk::catch_up`], so that two windows, or two programs on one file, see the same journal.
//!
//! ```text
//! request ── routes ── pages/<noun> ──┬─ page ───────────────────────────► shown
//!                         ▲           └─ lines, pictures ─► kept by the host ─┐
//!     collection ── laid ─┴─ worked (key, second opinion)                      │
//!          ▲                                                                   │
//!          └────────── history ◄──────────── catch_up ◄────────────────────────┘
//! ```
//!
//! **Long work** (is this key the best there is?) is a value that the host steps: whenever no
//! request waits it calls [`Desk::work_on`] with a few hundred heaps, which takes some
//! milliseconds, until that returns None or says that it is over. A request between two steps
//! sees how far it has come, and may stop it; an edit of what it looks at ends it, since the
//! question is another then. A host that never calls it loses nothing but time: the page that
//! shows the progress takes a step itself.
//!
//! **Long pages** (a sheet, a copy) are values too: where [`Desk::takes_long`] says so, a host
//! with threads may ask a [`Desk::snapshot`] beside the desk, so that nobody else waits for them.
//!
//! It decides no rule of botany or of keys: `exchange` reads cells, `build` finds keys, `check`
//! says what is wrong with them, `press` puts them into words and on paper.

mod asked;
mod desk;
mod forms;
mod pages;
mod pictures;
mod reply;
mod request;
mod routes;
mod said;
mod size;
mod unpacked;
mod worked;

use std::collections::BTreeMap;
use std::sync::Arc;

use maud::Markup;
use spinney_exchange::bundle::Bundle;
use spinney_exchange::journal::{self, LineError};
use spinney_exchange::table::{self, Source};
use spinney_model::{AboutField, Done, Edit, Entry, KeyEdit, KeyId, WishField};

use spinney_collection::{Collection, intake};

pub use desk::{Desk, Progress};
pub use pages::assets::HANDS;
pub use pages::damaged::{Damage, SAVE as SAVE_WHAT_CAN_BE_READ, when};
pub use pages::host::Trouble;
pub use reply::{Page, Reply};
pub use request::{KeptIn, Method, Request, SavedCopy, Upload};
pub use size::TooLarge;
pub use spinney_voice::LANGUAGES;
pub use unpacked::Unpacked;

/// What a host asks of a desk.
impl Desk {
    /// Opens a collection by replaying its journal, line by line from the first.
    ///
    /// **Errors**: a line that is newer than this program, or damaged.
    pub fn open<'l>(lines: impl IntoIterator<Item = &'l [u8]>) -> Result<Self, LineError> {
        let mut desk = Self::default();
        desk.catch_up(lines)?;
        Ok(desk)
    }

    /// What of the collection is too large for the screens; None: they show it. What makes it
    /// too large is refused; one that comes so can be saved as a copy, and its steps undone.
    pub fn too_large(&self) -> Option<TooLarge> {
        self.too_large
    }

    /// Answers a request. Nothing has changed until the host keeps the lines of the reply.
    ///
    /// **Guarantees**: the same journal and request give the same reply, byte for byte; only a
    /// key that somebody waits for (long work) shows how far it has come and what was found.
    pub fn handle(&mut self, request: &Request) -> Reply {
        routes::handle(self, request)
    }

    /// Whether a request may take long to answer: a sheet that is set, a copy with all its
    /// pictures, a form with files.
    pub fn takes_long(request: &Request) -> bool {
        routes::takes_long(request)
    }

    /// The collection as it stands, to be asked beside the desk for what takes long: a reply
    /// that wants something kept counts from its `head`, as any does. Long work stays where it
    /// is.
    ///
    /// **Cost**: nothing is copied; the first edit after it copies the history once.
    pub fn snapshot(&self) -> Self {
        Self {
            history: Arc::clone(&self.history),
            worked: self.worked.clone(),
            work: None,
            bytes: self.bytes,
            too_large: self.too_large,
        }
    }

    /// Keeps what was worked out in a snapshot, if nothing was edited since it was taken.
    pub fn take_back(&mut self, snapshot: Self) {
        if Arc::ptr_eq(&self.history, &snapshot.history) {
            self.worked.take_over(snapshot.worked);
        }
    }

    /// The page that says what the host could not do, with what was typed still on it.
    pub fn trouble(&self, request: &Request, trouble: &Trouble) -> Page {
        pages::host::page(self, request, trouble)
    }

    /// A page of the host's own, dressed as the screens are: one that is about no collection.
    pub fn page_of_host(request: &Request, title: &str, work: Markup) -> Page {
        pages::frame::page_of_host(request, title, work)
    }

    /// What the collection is called; empty: it has no name.
    pub fn title(&self) -> &str {
        self.history.now.about_field(AboutField::Title)
    }

    /// How many kinds were found.
    pub fn kinds(&self) -> usize {
        self.history.now.kinds.len()
    }

    /// The page of a collection whose file is damaged, with what went wrong the last time.
    pub fn damaged(&self, request: &Request, damage: &Damage, trouble: &str) -> Page {
        pages::damaged::page(self, request, damage, trouble)
    }

    /// A collection that comes from elsewhere, as it is kept: its pictures (by their hash) are
    /// written anew, so that they tell no place, time or camera, and its lines name the new ones.
    ///
    /// **Errors**: a line that is newer than this program, or damaged.
    /// **Cost**: a tenth of a second for a large picture.
    pub fn unpacked(
        lines: Vec<Vec<u8>>,
        pictures: BTreeMap<String, Vec<u8>>,
    ) -> Result<Unpacked, LineError> {
        unpacked::unpacked(lines, pictures)
    }

    /// A collection as it is handed on: whatever program has put its pictures there, they are
    /// pixels and nothing else; and how many could not be read and were left out.
    ///
    /// **Errors**: a line that is newer than this program, or damaged.
    pub fn handed_on(bundle: Bundle) -> Result<(Bundle, usize), LineError> {
        unpacked::handed_on(bundle)
    }

    /// A picture that is kept, as a page may show it; None: it cannot be read.
    pub fn picture_to_show(kept: Vec<u8>) -> Option<Vec<u8>> {
        pictures::bare(kept).ok()
    }

    /// The name by which a picture is kept: the SHA-256 of its bytes in hexadecimal digits.
    pub fn name_of_picture(picture: &[u8]) -> String {
        pictures::name(picture)
    }

    /// The lines of a collection to try the screens with: a table, and a key that the machine is
    /// to finish, called by the person's language. None: as for [`Desk::lines_of_table`].
    pub fn lines_of_trial(sources: &[Source], name: &str, at: i64) -> Option<Vec<Vec<u8>>> {
        let mut lines = Self::lines_of_table(sources, at)?;
        let key = KeyId(1);
        let edits = vec![
            Edit::Key(key, KeyEdit::Start(name.to_owned())),
            Edit::Key(key, KeyEdit::Wish(WishField::Finish, "yes".to_owned())),
        ];
        lines.push(journal::write(&Entry { at, done: Done::Edits(edits) }));
        Some(lines)
    }

    /// The lines that put a first collection on an empty desk: a table as it came from a
    /// spreadsheet, each file called as the sheet that it is. None: it cannot be read, holds
    /// nothing, or says two things of one column.
    pub fn lines_of_table(sources: &[Source], at: i64) -> Option<Vec<Vec<u8>>> {
        let sheets = table::typed_sheets(sources).ok()?;
        let taken = intake::take_in(&Collection::default(), &sheets, "");
        let edits = taken.ok()?.edits;
        (!edits.is_empty())
            .then(|| vec![journal::write(&Entry { at, done: Done::Edits(edits) })])
    }
}
