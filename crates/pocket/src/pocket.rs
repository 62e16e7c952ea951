//! One collection on the desk, asked by messages.
//!
//! From a message that says what is wanted to one that says what came of it. What the worker is to
//! keep goes out as the desk's reply has it, line by line; nothing counts before the worker
//! has kept it and handed it back.

use spinney_desk::{Desk, KeptIn, Method, Page, Reply, Request, SavedCopy, Trouble, Upload};
use spinney_exchange::journal::LineError;
use spinney_exchange::table::Source;
use spinney_model::limits::{COPY_BYTES, FORM_BYTES};
use spinney_voice::Tongue;

use crate::collections;
use crate::message::Message;

/// The desk of one page, empty at first.
#[derive(Default)]
pub struct Pocket {
    desk: Desk,
}

/// Bytes of pictures that a collection may have here: a copy is the only way out of a browser, and
/// lines go into it too.
const MOST_PICTURES: usize = COPY_BYTES - (8 << 20);

/// The invented hedge walk, sheet by sheet.
const WALK: [(&str, &[u8]); 4] = [
    ("table.csv", include_bytes!("../../spinney/scenarios/hedge_walk/table.csv")),
    ("characters.csv", include_bytes!("../../spinney/scenarios/hedge_walk/characters.csv")),
    ("kinds.csv", include_bytes!("../../spinney/scenarios/hedge_walk/kinds.csv")),
    ("about.csv", include_bytes!("../../spinney/scenarios/hedge_walk/about.csv")),
];

impl Pocket {
    /// Answers a message; see [`Message::text`] `what` for what can be asked:
    ///
    /// | what | parts | answer |
    /// | --- | --- | --- |
    /// | `open` | all lines of a journal | `stands`, `newer` or `damaged` |
    /// | `catch-up` | the lines after those | the same |
    /// | `handle` | files of a form, pictures | `page`, `keep`, `rewrite`, `replace`, `picture`, `need` |
    /// | `trouble` | – | `page` |
    /// | `work`, `stands` | – | `stands` |
    /// | `collections` | – | `page` |
    /// | `walk` | – | `lines` of the invented walk |
    pub fn answer(&mut self, message: Message) -> Message {
        match message.text("what") {
            "open" => {
                self.desk = Desk::default();
                self.caught_up(&message)
            }
            "catch-up" => self.caught_up(&message),
            "handle" => {
                let request = request(message);
                let reply = self.desk.handle(&request);
                self.carried(reply)
            }
            "trouble" => {
                let trouble = trouble(message.text("trouble"), message.text("why"));
                let page = self.desk.trouble(&request(message), &trouble);
                self.shown("page", page, Vec::new())
            }
            "work" => {
                // Nobody waits for what it found: the next page shows it.
                let _ = self.desk.work_on(message.number("heaps"));
                self.stands()
            }
            "stands" => self.stands(),
            "collections" => {
                let page = collections::page(&request(message.clone()), &message);
                self.shown("page", page, Vec::new())
            }
            "walk" => walk(&message),
            _ => Message::new("unknown"),
        }
    }

    fn caught_up(&mut self, message: &Message) -> Message {
        match self.desk.catch_up(message.parts.iter().map(Vec::as_slice)) {
            Ok(()) => self.stands(),
            Err(LineError::Newer(_)) => Message::new("newer"),
            Err(LineError::NotALine) => Message::new("damaged"),
        }
    }

    /// Where the desk stands.
    fn stands(&self) -> Message {
        self.standing(Message::new("stands"))
    }

    fn standing(&self, message: Message) -> Message {
        message
            .saying("head", self.desk.head().to_string())
            .saying("mark", self.desk.mark())
            .saying("title", self.desk.title())
            .saying("kinds", self.desk.kinds().to_string())
            .saying("at-work", if self.desk.at_work() { "yes" } else { "" })
    }

    fn carried(&self, reply: Reply) -> Message {
        match reply {
            Reply::Page(page) => self.shown("page", page, Vec::new()),
            Reply::Picture(hash) => Message::new("picture").saying("hash", hash),
            Reply::NeedPictures(hashes) => hashes
                .into_iter()
                .fold(Message::new("need"), |all, hash| all.saying("hash", hash))
                .saying("most", COPY_BYTES.to_string()),
            Reply::Keep { head, lines, pictures, then } => {
                self.kept("keep", head, (lines, pictures), then)
            }
            Reply::Replace { head, lines, pictures, then } => {
                self.kept("replace", head, (lines, pictures), then)
            }
            Reply::Rewrite { head, lines, pictures, then } => {
                let kept = self.kept("rewrite", head, (lines, Vec::new()), then);
                pictures.into_iter().fold(kept, |all, hash| all.saying("stays", hash))
            }
        }
    }

    /// What is to be kept: first the lines, then the pictures, each with its hash.
    fn kept(
        &self,
        what: &str,
        head: u64,
        (lines, pictures): (Vec<Vec<u8>>, Vec<Vec<u8>>),
        then: Page,
    ) -> Message {
        let count = lines.len();
        let hashes: Vec<String> =
            pictures.iter().map(|bytes| Desk::name_of_picture(bytes)).collect();
        let parts = lines.into_iter().chain(pictures).collect();
        let message = self.shown(what, then, parts);
        let message = message
            .saying("after", head.to_string())
            .saying("lines", count.to_string())
            .saying("most", MOST_PICTURES.to_string());
        hashes.into_iter().fold(message, |all, hash| all.saying("hash", hash))
    }

    /// A page, behind what is to be kept before it is shown.
    fn shown(&self, what: &str, page: Page, mut parts: Vec<Vec<u8>>) -> Message {
        let Page { status, kind, body, location, file, lasting: _ } = page;
        parts.push(body);
        let message = self
            .standing(Message::new(what).with_parts(parts))
            .saying("status", status.to_string())
            .saying("kind", kind)
            .saying("location", location.unwrap_or_default());
        message.saying("file", file.unwrap_or_default())
    }
}

/// The request in a message.
fn request(mut message: Message) -> Request {
    let mut request = Request::get(message.text("address"));
    request.path = decoded(&request.path);
    if message.text("method") == "post" {
        request.method = Method::Post;
        request.form = Request::get(&format!("/?{}", message.text("form"))).query;
    }
    let mut parts = std::mem::take(&mut message.parts).into_iter();
    let names = message.texts("file-field").zip(message.texts("file-name"));
    for (field, name) in names {
        let bytes = parts.next().unwrap_or_default();
        request.files.push(Upload { field: field.to_owned(), name: name.to_owned(), bytes });
    }
    for hash in message.texts("picture") {
        request.pictures.insert(hash.to_owned(), parts.next());
    }
    for hash in message.texts("lost") {
        request.pictures.insert(hash.to_owned(), None);
    }
    request.pictures_cut = message.text("pictures-cut") == "yes";
    request.at = message.number("at");
    request.today = message.text("today").to_owned();
    request.languages = message.texts("language").map(str::to_owned).collect();
    request.kept = match message.text("kept") {
        "memory" => KeptIn::Memory,
        "browser" => KeptIn::Browser { copy: copy(&message), promised: promised(&message) },
        _ => KeptIn::File,
    };
    request
}

/// A path without `%20` and the like, as hosts give it.
fn decoded(path: &str) -> String {
    // A path has no `&` and no `=` that a browser has not encoded, and a `+` is a `+`.
    let whole = path.replace('+', "%2B").replace('&', "%26").replace('=', "%3D");
    form_urlencoded::parse(whole.as_bytes()).map(|(path, _)| path.into_owned()).collect()
}

fn promised(message: &Message) -> Option<bool> {
    match message.text("lasting") {
        "promised" => Some(true),
        "not-promised" => Some(false),
        _ => None,
    }
}

fn copy(message: &Message) -> Option<SavedCopy> {
    let name = message.text("copy-name");
    (!name.is_empty()).then(|| SavedCopy {
        name: name.to_owned(),
        day: message.text("copy-day").to_owned(),
        head: message.number("copy-head"),
    })
}

fn trouble(name: &str, why: &str) -> Trouble {
    match name {
        "full" => Trouble::StorageFull,
        "not-reached" => Trouble::StorageNotReached(why.to_owned()),
        "copy-full" => Trouble::CopyFull(MOST_PICTURES >> 20),
        "overtaken" => Trouble::Overtaken,
        "picture-lost" => Trouble::PictureLost,
        "large" => Trouble::Large(FORM_BYTES >> 20),
        _ => Trouble::Bug,
    }
}

/// The lines of the invented hedge walk, with a key that the machine finishes.
fn walk(message: &Message) -> Message {
    let languages: Vec<String> = message.texts("language").map(str::to_owned).collect();
    let t = Tongue::for_person(&languages);
    let sheets =
        WALK.map(|(name, bytes)| Source { name: name.to_owned(), bytes: bytes.to_vec() });
    let lines = Desk::lines_of_trial(&sheets, &t.say("pocket-trial-key"), message.number("at"));
    Message::new("lines").with_parts(lines.unwrap_or_default())
}
