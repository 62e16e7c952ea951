//! The clerk: sits at the desk, answers one request after another, keeps what was done.
//!
//! From requests to pages, with every line kept before the page that follows it is shown. It
//! has a thread of its own with a deep stack, because keys are walked by recursion. A bug in
//! the desk ends one request and not the program; the journal is not touched by it.

use std::panic::{AssertUnwindSafe, catch_unwind};
use std::sync::mpsc::{Receiver, SyncSender, sync_channel};
use std::thread::JoinHandle;

use sha2::{Digest, Sha256};
use spinney_desk::{Desk, Page, Reply, Request};
use tokio::sync::oneshot;

use super::answer::Done;
use super::kept::Collection;
use super::limits;

struct Question {
    asked: Request,
    to: oneshot::Sender<Done>,
}

/// Where requests are left for the clerk.
pub(crate) struct Clerk {
    desk: SyncSender<Question>,
}

/// The clerk at work.
pub(crate) struct AtWork {
    thread: JoinHandle<()>,
}

impl AtWork {
    /// Waits until what was asked is answered and kept.
    pub(crate) fn finish(self) {
        // A panic outside a request was said on stderr already.
        let _ = self.thread.join();
    }
}

impl Clerk {
    /// The clerk opens the collection and waits for requests.
    pub(crate) fn sit_down(collection: Collection) -> std::io::Result<(Self, AtWork)> {
        let (desk, questions) = sync_channel(limits::MOST_WAITING);
        let thread = std::thread::Builder::new()
            .name("clerk".to_owned())
            .stack_size(crate::STACK)
            .spawn(move || work(collection, &questions))?;
        Ok((Self { desk }, AtWork { thread }))
    }

    /// Asks; None: too many wait already.
    pub(crate) async fn ask(&self, asked: Request) -> Option<Done> {
        let (to, answer) = oneshot::channel();
        self.desk.try_send(Question { asked, to }).ok()?;
        answer.await.ok()
    }
}

/// The time, in milliseconds since 1 January 1970 UTC.
pub(crate) fn now() -> i64 {
    jiff::Timestamp::now().as_millisecond()
}

fn work(mut collection: Collection, questions: &Receiver<Question>) {
    let lines = |collection: &Collection| collection.lines.clone();
    let mut desk = Desk::open(lines(&collection).iter().map(Vec::as_slice)).unwrap_or_default();
    while let Ok(Question { mut asked, to }) = questions.recv() {
        let answered =
            catch_unwind(AssertUnwindSafe(|| answer(&mut desk, &mut collection, &mut asked)));
        let done = answered.unwrap_or_else(|_| {
            desk = Desk::open(lines(&collection).iter().map(Vec::as_slice)).unwrap_or_default();
            bug()
        });
        // Whoever asked may have gone away.
        let _ = to.send(done);
    }
}

fn bug() -> Done {
    Done::Page(Page {
        status: 500,
        kind: "text/plain; charset=utf-8",
        body: b"Spinney has a bug here. Nothing was changed.\nGo back, and tell us.\n".to_vec(),
        location: None,
        file: None,
        lasting: false,
    })
}

fn answer(desk: &mut Desk, collection: &mut Collection, asked: &mut Request) -> Done {
    for _ in 0..limits::MOST_TRIES {
        match desk.handle(asked) {
            Reply::Page(page) => return Done::Page(page),
            Reply::Picture(hash) => match collection.pictures.get(&hash) {
                Some(bytes) => return Done::Picture(bytes.clone()),
                None => return bug(),
            },
            Reply::NeedPictures(hashes) => {
                for hash in hashes {
                    if let Some(bytes) = collection.pictures.get(&hash) {
                        asked.pictures.insert(hash, bytes.clone());
                    }
                }
            }
            Reply::Keep { lines, pictures, then, .. } => {
                for picture in pictures {
                    let hash: String =
                        Sha256::digest(&picture).iter().map(|b| format!("{b:02x}")).collect();
                    collection.pictures.insert(hash, picture);
                }
                desk.catch_up(lines.iter().map(Vec::as_slice))
                    .expect("the desk reads what it wrote");
                collection.lines.extend(lines);
                return Done::Page(then);
            }
            Reply::Rewrite { lines, pictures, then, .. } => {
                collection.lines = lines;
                collection.pictures.retain(|hash, _| pictures.contains(hash));
                *desk = Desk::open(collection.lines.iter().map(Vec::as_slice))
                    .expect("the desk reads what it wrote");
                return Done::Forgotten(then);
            }
        }
    }
    bug()
}
