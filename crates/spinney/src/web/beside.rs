//! Beside the clerk: whoever sets sheets, packs copies and unpacks pictures, so that nobody else
//! waits for it.
//!
//! From requests that take long to their answers, one after another, on a thread of its own. Each
//! is asked of a snapshot of the desk, taken when its turn comes, so that no more than one is held.
//! The clerk gives the snapshot and the pictures, keeps what is to be kept and takes back what was
//! worked out; nothing is kept here. A bug ends one request, and so does the end of Spinney.

use std::panic::{AssertUnwindSafe, catch_unwind};
use std::sync::mpsc::{Receiver, SyncSender, sync_channel};

use spinney_desk::{Desk, Reply, Request, Trouble};
use tokio::sync::mpsc::WeakSender;
use tokio::sync::oneshot;

use super::answer::Done;
use super::clerk::{Handle, Message, Question};
use super::ending::Ending;
use super::limits;
use super::room::Place;

/// What somebody beside the clerk needs of it.
pub(super) enum Needs {
    /// The collection as it is now, and what stood in the way of looking.
    Snapshot(oneshot::Sender<(Desk, Result<(), Trouble>)>),
    /// The request with the pictures that its page shows.
    Pictures(Pictures, oneshot::Sender<(Pictures, Result<(), Trouble>)>),
    /// What was worked out is worth keeping.
    TakeBack(Box<Desk>),
    /// To keep this and answer; the question comes back where somebody else kept something since.
    Keep(Question, Box<Reply>, oneshot::Sender<Question>),
    /// To do it itself; whoever asks for that waits until it is done.
    Clerk(Question, oneshot::Sender<()>),
}

/// A request, the pictures that it needs, and what it holds of the room.
pub(super) struct Pictures {
    pub(super) asked: Request,
    pub(super) hashes: Vec<String>,
    pub(super) place: Place,
}

/// A thread beside the clerk.
pub(super) struct Beside {
    questions: Receiver<Question>,
    /// The clerk goes home when nobody else can ask any more.
    clerk: WeakSender<Message>,
    handle: Handle,
    ending: Ending,
}

impl Beside {
    /// Sits down and waits; at most so many wait for it as the table of limits says.
    pub(super) fn sit_down(
        clerk: WeakSender<Message>,
        handle: Handle,
        ending: Ending,
    ) -> std::io::Result<SyncSender<Question>> {
        let (to, questions) = sync_channel(limits::MOST_LONG_WAITING);
        let mut beside = Self { questions, clerk, handle, ending };
        std::thread::Builder::new()
            .name("beside".to_owned())
            .stack_size(crate::STACK)
            .spawn(move || beside.answer_all())?;
        Ok(to)
    }

    fn answer_all(&mut self) {
        while let Ok(question) = self.questions.recv() {
            // Whoever hears nothing looks whether it has ended, or has gone away already.
            if !self.ending.has_ended() && !question.to.is_closed() {
                self.answer(question);
            }
        }
    }

    /// None: the clerk has answered or gone, or there is no room for the pictures.
    fn answer(&mut self, mut question: Question) -> Option<()> {
        for _ in 0..limits::MOST_TRIES_BESIDE {
            let (mut desk, looked) = self.needs(Needs::Snapshot)?;
            let told = match looked {
                Ok(()) => self.ask(&mut desk, &mut question)?,
                Err(trouble) => Err(trouble),
            };
            let done = match told {
                Ok(Reply::Page(page)) => {
                    self.tell(Needs::TakeBack(Box::new(desk)))?;
                    Done::Page(page)
                }
                Ok(keeps) => {
                    drop(desk);
                    let keeps = Box::new(keeps);
                    question = self.needs(|back| Needs::Keep(question, keeps, back))?;
                    continue;
                }
                Err(trouble) => Done::Page(desk.trouble(&question.asked, &trouble)),
            };
            // The pictures go before the answer takes their room.
            let Question { asked, place, to, .. } = question;
            drop((asked, place));
            let _ = to.send(done);
            return Some(());
        }
        // Others are faster each time: nobody else keeps anything while the clerk does it.
        self.needs(|done| Needs::Clerk(question, done))
    }

    fn ask(
        &mut self,
        desk: &mut Desk,
        question: &mut Question,
    ) -> Option<Result<Reply, Trouble>> {
        for _ in 0..limits::MOST_TRIES {
            let asked = &question.asked;
            let reply = catch_unwind(AssertUnwindSafe(|| (self.handle)(desk, asked)));
            match reply {
                Ok(Reply::NeedPictures(hashes)) => {
                    let wanted = Pictures {
                        asked: std::mem::replace(&mut question.asked, Request::get("/")),
                        hashes: hashes.into_iter().collect(),
                        place: question.place.taken(),
                    };
                    let (given, found) = self.needs(|to| Needs::Pictures(wanted, to))?;
                    (question.asked, question.place) = (given.asked, given.place);
                    if let Err(trouble) = found {
                        return Some(Err(trouble));
                    }
                }
                Ok(Reply::Picture(_)) | Err(_) => {
                    // Half-finished thoughts are thrown away.
                    *desk = Desk::default();
                    return Some(Err(Trouble::Bug));
                }
                Ok(reply) => return Some(Ok(reply)),
            }
        }
        Some(Err(Trouble::Overtaken))
    }

    fn needs<T>(&self, what: impl FnOnce(oneshot::Sender<T>) -> Needs) -> Option<T> {
        let (to, answer) = oneshot::channel();
        self.tell(what(to))?;
        answer.blocking_recv().ok()
    }

    fn tell(&self, needs: Needs) -> Option<()> {
        let clerk = self.clerk.upgrade()?;
        clerk.blocking_send(Message::Needs(needs)).ok()
    }
}
