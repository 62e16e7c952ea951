//! The clerk: sits at the desk, answers one request after another, keeps what was done.
//!
//! From requests to pages, with every line kept before the page that follows it is shown.
//! Another program may write to the same file; before each answer the clerk looks whether it
//! did. It has a thread of its own with a deep stack, because keys are walked by recursion. What
//! takes long and only shows something is answered [`beside`](super::beside) it. A bug in the
//! desk ends one request and not the program; the journal is not touched by it.

use std::panic::{AssertUnwindSafe, catch_unwind};
use std::sync::mpsc::{Receiver, SyncSender, TrySendError, sync_channel};

use spinney_desk::{
    Desk, Method, Page, Reply, Request, SAVE_WHAT_CAN_BE_READ, TooLarge, Trouble,
};
use spinney_exchange::journal::LineError;
use spinney_store::Store;
use spinney_voice::Tongue;
use tokio::sync::mpsc::error::TryRecvError;
use tokio::sync::{mpsc, oneshot};

use super::answer::Done;
use super::beside::{Beside, Needs};
use super::ending::Ending;
use super::guard::Refusal;
use super::kept::{Kept, NotKept};
use super::limits;
use super::room::Place;
use crate::failure::Failure;
use crate::rescue::{HowMuch, Rescue};

pub(super) struct Question {
    pub(super) asked: Request,
    trouble: Option<Trouble>,
    /// What the form holds until it is answered.
    pub(super) place: Place,
    pub(super) to: oneshot::Sender<Done>,
}

/// What is said to the clerk.
pub(super) enum Message {
    /// Somebody asks for something.
    Question(Question),
    /// Whoever answers beside it needs something.
    Needs(Needs),
}

/// Where requests are left for the clerk.
pub(crate) struct Clerk {
    desk: mpsc::Sender<Message>,
    ending: Ending,
}

/// The clerk at work.
pub(crate) struct AtWork {
    /// Hears nothing, until the clerk has gone.
    gone: Receiver<()>,
}

impl AtWork {
    /// Waits until the clerk has put everything away. Work that only shows something is not
    /// waited for: nothing of it is kept.
    pub(crate) fn finish(self) {
        let _ = self.gone.recv_timeout(limits::LAST_WORK);
    }
}

impl Clerk {
    /// Sits down at an open collection and waits for requests.
    pub(crate) fn sit_down(
        mut sitting: Sitting,
        ending: Ending,
    ) -> std::io::Result<(Self, AtWork)> {
        let (desk, mut messages) = mpsc::channel(limits::MOST_WAITING);
        let handle = std::mem::replace(&mut sitting.beside, Box::new(Desk::handle));
        let beside = Beside::sit_down(desk.downgrade(), handle, ending.clone())?;
        let (going, gone) = sync_channel(0);
        let seen = ending.clone();
        std::thread::Builder::new().name("clerk".to_owned()).stack_size(crate::STACK).spawn(
            move || {
                // A panic outside a request is said on stderr, and nobody waits for it.
                let _going: SyncSender<()> = going;
                sitting.answer_all(&mut messages, &beside, &seen);
            },
        )?;
        Ok((Self { desk, ending }, AtWork { gone }))
    }

    /// Asks.
    ///
    /// **Errors**: too many wait already; Spinney ends, and this was not kept.
    pub(crate) async fn ask(
        &self,
        asked: Request,
        trouble: Option<Trouble>,
        place: Place,
    ) -> Result<Done, Refusal> {
        if self.ending.has_ended() {
            return Err(Refusal::Ended);
        }
        let (to, answer) = oneshot::channel();
        let question = Question { asked, trouble, place, to };
        self.desk.try_send(Message::Question(question)).map_err(|_| Refusal::Busy)?;
        tokio::select! {
            // What was kept last is answered before it ends.
            biased;
            done = answer => done.map_err(|_| self.why_not()),
            () = self.ending.ended() => Err(Refusal::Ended),
        }
    }

    /// Why the clerk gives no answer.
    fn why_not(&self) -> Refusal {
        if self.ending.has_ended() { Refusal::Ended } else { Refusal::Busy }
    }
}

/// The time, in milliseconds since 1 January 1970 UTC.
pub(crate) fn now() -> i64 {
    jiff::Timestamp::now().as_millisecond()
}

/// How the desk is asked; tests ask a broken one.
pub(super) type Handle = Box<dyn FnMut(&mut Desk, &Request) -> Reply + Send>;

/// A collection on the desk, and where it is kept.
pub(crate) struct Sitting {
    desk: Desk,
    kept: Kept,
    handle: Handle,
    /// How a snapshot of it is asked, beside it.
    beside: Handle,
    /// The file is damaged: until somebody has chosen what is saved of it, nothing is open.
    damaged: Option<Rescue>,
    /// What is kept was replaced: the desk begins again with it.
    replaced: bool,
}

/// What the clerk did.
enum Carried {
    /// It is answered.
    Out(Done),
    /// It would have to be kept, and Spinney ends.
    TooLate,
}

impl Sitting {
    /// Puts a collection on the desk: where it is kept, and all its lines.
    pub(crate) fn open(kept: Kept, lines: &[Vec<u8>]) -> Result<Self, LineError> {
        let desk = Desk::open(lines.iter().map(Vec::as_slice))?;
        Ok(Self { desk, kept, ..Self::empty() })
    }

    /// Puts nothing on the desk yet: the collection is damaged.
    pub(crate) fn damaged(rescue: Rescue) -> Self {
        Self { damaged: Some(rescue), ..Self::empty() }
    }

    /// What of it is too large for the screens.
    pub(crate) fn too_large(&self) -> Option<TooLarge> {
        self.desk.too_large()
    }

    fn empty() -> Self {
        Self {
            desk: Desk::default(),
            kept: Kept::in_memory(Vec::new()),
            handle: Box::new(Desk::handle),
            beside: Box::new(Desk::handle),
            damaged: None,
            replaced: false,
        }
    }

    fn answer_all(
        mut self,
        messages: &mut mpsc::Receiver<Message>,
        beside: &SyncSender<Question>,
        ending: &Ending,
    ) {
        while let Some(message) = self.next(messages) {
            if ending.has_ended() {
                break;
            }
            let mut question = match message {
                Message::Question(question) => question,
                Message::Needs(needs) => {
                    self.give(needs, ending);
                    continue;
                }
            };
            if self.takes_long(&question) {
                question.asked.kept = self.kept.place();
                match beside.try_send(question) {
                    Ok(()) => continue,
                    // Whoever hears nothing is told that too many wait.
                    Err(TrySendError::Full(_)) => continue,
                    // It is not there any more: the clerk does it.
                    Err(TrySendError::Disconnected(back)) => question = back,
                }
            }
            self.answer_one(question, ending);
            self.after_replacing();
        }
    }

    fn after_replacing(&mut self) {
        if self.replaced {
            // What stands in its way is said to whoever asks next.
            let _ = self.begin_again();
        }
    }

    fn answer_one(&mut self, question: Question, ending: &Ending) {
        let Question { mut asked, trouble, place, to } = question;
        let carried = self.answer(&mut asked, trouble, ending);
        drop((asked, place));
        self.tell(carried, to, ending);
    }

    /// Whoever asked may have gone away; whoever hears nothing looks whether it has ended.
    fn tell(&self, carried: Carried, to: oneshot::Sender<Done>, ending: &Ending) {
        match carried {
            Carried::Out(done) => {
                let _ = to.send(done);
                ending.kept();
            }
            Carried::TooLate => {
                ending.kept();
                drop(to);
            }
        }
    }

    /// Whether it is answered beside the clerk.
    fn takes_long(&self, question: &Question) -> bool {
        question.trouble.is_none()
            && self.damaged.is_none()
            && Desk::takes_long(&question.asked)
    }

    /// Gives what is needed beside it.
    fn give(&mut self, needs: Needs, ending: &Ending) {
        match needs {
            Needs::Snapshot(to) => {
                let looked = catch_unwind(AssertUnwindSafe(|| self.look_up()));
                let looked = looked.unwrap_or(Err(Trouble::Bug));
                let _ = to.send((self.desk.snapshot(), looked));
            }
            Needs::Pictures(mut wanted, to) => {
                let hashes = std::mem::take(&mut wanted.hashes);
                let room = Some(&mut wanted.place);
                match self.with_pictures(&mut wanted.asked, hashes, room) {
                    Ok(true) => drop(to.send((wanted, Ok(())))),
                    Err(trouble) => drop(to.send((wanted, Err(trouble)))),
                    // Whoever hears nothing is told that too many ask.
                    Ok(false) => {}
                }
            }
            Needs::TakeBack(desk) => self.desk.take_back(*desk),
            Needs::Keep(question, reply, back) => {
                let kept = catch_unwind(AssertUnwindSafe(|| self.keep(*reply, ending)));
                let kept = kept.unwrap_or_else(|_| self.begin_again().and(Err(Trouble::Bug)));
                let carried = match kept {
                    Ok(Some(carried)) => carried,
                    Ok(None) => {
                        ending.kept();
                        // It is asked again, of the collection as it is then.
                        let _ = back.send(question);
                        return;
                    }
                    Err(trouble) => {
                        Carried::Out(Done::Page(self.desk.trouble(&question.asked, &trouble)))
                    }
                };
                let Question { asked, place, to, .. } = question;
                drop((asked, place));
                self.tell(carried, to, ending);
                self.after_replacing();
            }
            Needs::Clerk(question, _done) => {
                self.answer_one(question, ending);
                self.after_replacing();
            }
        }
    }

    /// The next message; while none waits, long work goes on. None: nobody can ask any more.
    fn next(&mut self, messages: &mut mpsc::Receiver<Message>) -> Option<Message> {
        while self.desk.at_work() {
            match messages.try_recv() {
                Ok(message) => return Some(message),
                Err(TryRecvError::Disconnected) => return None,
                Err(TryRecvError::Empty) => {
                    let step = || self.desk.work_on(limits::HEAPS_A_STEP).is_some();
                    let worked = catch_unwind(AssertUnwindSafe(step));
                    if !matches!(worked, Ok(true)) && self.begin_again().is_err() {
                        break;
                    }
                }
            }
        }
        messages.blocking_recv()
    }

    /// Answers one request, whatever happens.
    fn answer(
        &mut self,
        asked: &mut Request,
        trouble: Option<Trouble>,
        ending: &Ending,
    ) -> Carried {
        let told = match trouble {
            Some(trouble) => Err(trouble),
            None => catch_unwind(AssertUnwindSafe(|| self.carry_out(asked, ending)))
                .unwrap_or_else(|_| {
                    // Half-finished thoughts are thrown away; the journal has none.
                    self.begin_again().and(Err(Trouble::Bug))
                }),
        };
        told.unwrap_or_else(|trouble| {
            Carried::Out(Done::Page(self.desk.trouble(asked, &trouble)))
        })
    }

    fn carry_out(&mut self, asked: &mut Request, ending: &Ending) -> Result<Carried, Trouble> {
        // The looks of a page are there without a collection.
        if self.damaged.is_some() && !asked.path.starts_with("/assets/") {
            return self.choose(asked, ending);
        }
        asked.kept = self.kept.place();
        for _ in 0..limits::MOST_TRIES {
            self.look_up()?;
            let reply = (self.handle)(&mut self.desk, asked);
            match reply {
                Reply::Page(page) => return Ok(Carried::Out(Done::Page(page))),
                Reply::Picture(hash) => {
                    let kept = self.picture(&hash)?;
                    let bytes = kept.and_then(Desk::picture_to_show);
                    let bytes = bytes.ok_or(Trouble::PictureLost)?;
                    return Ok(Carried::Out(Done::Picture(bytes)));
                }
                Reply::NeedPictures(hashes) => {
                    self.with_pictures(asked, hashes.into_iter().collect(), None)?;
                }
                keeps => {
                    if let Some(carried) = self.keep(keeps, ending)? {
                        return Ok(carried);
                    }
                }
            }
        }
        Err(Trouble::Overtaken)
    }

    /// Keeps what the desk wants kept. None: somebody else kept something since it was asked.
    fn keep(&mut self, keeps: Reply, ending: &Ending) -> Result<Option<Carried>, Trouble> {
        if !ending.may_keep() {
            return Ok(Some(Carried::TooLate));
        }
        let (kept, done) = match keeps {
            Reply::Keep { head, lines, pictures, then } => {
                let kept = self.kept.append(head, &lines, &pictures);
                if kept.is_ok() {
                    self.catch_up(&lines)?;
                }
                (kept, Done::Page(then))
            }
            Reply::Replace { head, lines, pictures, then } => {
                let kept = self.kept.replace(head, &lines, &pictures);
                self.replaced |= kept.is_ok();
                (kept, Done::Page(then))
            }
            Reply::Rewrite { head, lines, pictures, then } => {
                let kept = self.kept.rewrite(head, &lines, &pictures);
                self.replaced |= kept.is_ok();
                (kept, Done::Forgotten(then))
            }
            Reply::Page(_) | Reply::Picture(_) | Reply::NeedPictures(_) => {
                return Err(Trouble::Bug);
            }
        };
        match kept {
            Ok(()) => Ok(Some(Carried::Out(done))),
            Err(NotKept::Trouble(trouble)) => Err(trouble),
            Err(NotKept::Moved | NotKept::Rewritten) => Ok(None),
        }
    }

    /// The page of a damaged file; once somebody has chosen, what can be read is saved into a
    /// new file, and that one is opened.
    fn choose(&mut self, asked: &Request, ending: &Ending) -> Result<Carried, Trouble> {
        let Some(rescue) = &mut self.damaged else { return Err(Trouble::Bug) };
        let new = rescue.new_name();
        let mut trouble = String::new();
        if asked.method == Method::Post && asked.path == SAVE_WHAT_CAN_BE_READ {
            if !ending.may_keep() {
                return Ok(Carried::TooLate);
            }
            let before =
                asked.form.iter().any(|field| *field == ("what".into(), "before".into()));
            let much = if before { HowMuch::Before } else { HowMuch::All };
            let saved = rescue.save(&new, much);
            let opened = saved.and_then(|_| Store::open(&new).map_err(Failure::kept));
            match opened {
                Ok(store) => {
                    self.kept = Kept::InFile(store);
                    self.damaged = None;
                    self.replaced = true;
                    return Ok(Carried::Out(Done::Page(to_finds())));
                }
                Err(failure) => {
                    let (sentence, remedy) = failure.said(Tongue::for_person(&asked.languages));
                    trouble = format!("{sentence} {remedy}");
                }
            }
        }
        let damage = rescue.damage(&new);
        let page = self.desk.damaged(asked, &damage, &trouble);
        Ok(Carried::Out(Done::Page(page)))
    }

    /// Takes in what another program has kept meanwhile.
    fn look_up(&mut self) -> Result<(), Trouble> {
        if self.replaced {
            return self.begin_again();
        }
        let seen = self.desk.head();
        match self.kept.head() {
            Ok(head) if head == seen => Ok(()),
            Ok(head) if head > seen => match self.kept.lines(seen) {
                Ok(lines) => self.catch_up(&lines),
                Err(NotKept::Trouble(trouble)) => Err(trouble),
                Err(NotKept::Moved | NotKept::Rewritten) => self.begin_again(),
            },
            Err(NotKept::Trouble(trouble)) => Err(trouble),
            Ok(_) | Err(NotKept::Moved | NotKept::Rewritten) => self.begin_again(),
        }
    }

    fn catch_up(&mut self, lines: &[Vec<u8>]) -> Result<(), Trouble> {
        let taken = self.desk.catch_up(lines.iter().map(Vec::as_slice));
        taken.map_err(|error| self.not_taken(error))
    }

    /// Opens the collection anew from its journal.
    fn begin_again(&mut self) -> Result<(), Trouble> {
        let lines = self.kept.open_again().and_then(|()| self.kept.lines(0));
        let lines = lines.map_err(|why| self.in_the_way(why))?;
        let desk = Desk::open(lines.iter().map(Vec::as_slice));
        self.desk = desk.map_err(|error| self.not_taken(error))?;
        self.replaced = false;
        Ok(())
    }

    /// Puts pictures into a request, as many as may be held at once; what is made of them takes
    /// as much again. False: there is no room for them now.
    fn with_pictures(
        &self,
        asked: &mut Request,
        hashes: Vec<String>,
        mut room: Option<&mut Place>,
    ) -> Result<bool, Trouble> {
        let given = asked.pictures.values().flatten();
        let mut held: u64 = given.map(|bytes| bytes.len() as u64).sum();
        for hash in hashes {
            let bytes = match held < limits::MOST_PICTURES {
                true => self.picture(&hash)?,
                false => None,
            };
            asked.pictures_cut |= held >= limits::MOST_PICTURES;
            let length = bytes.as_ref().map_or(0, Vec::len);
            if !room.as_mut().is_none_or(|room| room.grow(2 * length)) {
                return Ok(false);
            }
            held += length as u64;
            asked.pictures.insert(hash, bytes);
        }
        Ok(true)
    }

    fn picture(&self, hash: &str) -> Result<Option<Vec<u8>>, Trouble> {
        self.kept.picture(hash).map_err(|why| self.in_the_way(why))
    }

    fn in_the_way(&self, why: NotKept) -> Trouble {
        match why {
            NotKept::Trouble(trouble) => trouble,
            NotKept::Moved | NotKept::Rewritten => Trouble::Overtaken,
        }
    }

    fn not_taken(&self, error: LineError) -> Trouble {
        match error {
            LineError::Newer(_) => Trouble::Newer(self.kept.name()),
            LineError::NotALine => Trouble::Damaged(self.kept.name()),
        }
    }
}

fn to_finds() -> Page {
    Page {
        status: 303,
        kind: "text/plain; charset=utf-8",
        body: Vec::new(),
        location: Some("/finds".to_owned()),
        file: None,
        lasting: false,
    }
}

#[cfg(test)]
mod tests;
