//! What the clerk does when the file, another program or the desk itself is in the way.

use std::collections::BTreeSet;
use std::path::{Path, PathBuf};
use std::task::Poll;
use std::time::{Duration, Instant};

use spinney_exchange::journal;
use spinney_model::{Edit, Entry, KindEdit, KindId};
use spinney_store::Store;

use super::*;
use crate::web::room::Room;

/// A file in a folder of its own for each test.
fn fresh(name: &str) -> PathBuf {
    let folder =
        std::env::temp_dir().join(format!("spinney-clerk-{}-{name}", std::process::id()));
    let _ = std::fs::remove_dir_all(&folder);
    std::fs::create_dir_all(&folder).expect("a folder for a test");
    let path = folder.join("walk.spinney");
    Store::create(&path).expect("a new file");
    path
}

fn at(path: &Path) -> Sitting {
    let store = Store::open(path).expect("a file");
    let rows = store.rows(0).expect("its lines");
    let lines: Vec<Vec<u8>> = rows.into_iter().map(|row| row.bytes).collect();
    Sitting::open(Kept::InFile(store), &lines).expect("a collection")
}

impl Sitting {
    fn add(&mut self, names: &str) -> (u16, String) {
        self.page(&mut Request::post("/do/add-kinds", &[("names", names), ("head", "0-0")]))
    }

    fn finds(&mut self) -> String {
        self.page(&mut Request::get("/finds")).1
    }

    fn page(&mut self, asked: &mut Request) -> (u16, String) {
        let ending = Ending::not_yet();
        match self.answer(asked, None, &ending) {
            Carried::Out(Done::Page(page) | Done::Forgotten(page)) => {
                (page.status, String::from_utf8(page.body).expect("a page is text"))
            }
            Carried::Out(Done::Picture(_)) | Carried::TooLate => {
                panic!("a page was asked for")
            }
        }
    }
}

#[test]
fn a_bug_ends_one_request_and_nothing_else() {
    let path = fresh("bug");
    let mut sitting = at(&path);
    assert_eq!(sitting.add("yew").0, 303);
    let mut first = true;
    sitting.handle = Box::new(move |desk, asked| {
        let _ = desk.handle(asked);
        assert!(!std::mem::take(&mut first), "a bug for this test");
        desk.handle(asked)
    });
    let (status, page) = sitting.add("holly");
    assert_eq!(status, 500);
    assert!(page.contains("Nothing was changed") && page.contains("holly"), "{page}");
    assert!(!sitting.finds().contains("holly"));
    assert_eq!(sitting.add("oak").0, 303);
    let finds = at(&path).finds();
    assert!(finds.contains("yew") && finds.contains("oak") && !finds.contains("holly"));
}

#[test]
fn a_full_disk_is_said_and_nothing_is_lost() {
    let path = fresh("full");
    let mut sitting = at(&path);
    assert_eq!(sitting.add("yew").0, 303);
    let Kept::InFile(store) = &mut sitting.kept else { panic!("it is kept in a file") };
    store.allow_pages(1).expect("a limit");
    let many: Vec<String> = (0..150).map(|number| format!("leaf number {number}")).collect();
    let (status, page) = sitting.add(&many.join("\n"));
    assert_eq!(status, 507, "{page}");
    assert!(page.contains("The disk is full") && page.contains("leaf number 149"), "{page}");
    assert!(sitting.finds().contains("yew") && !sitting.finds().contains("leaf number"));
    let Kept::InFile(store) = &mut sitting.kept else { panic!("it is kept in a file") };
    store.allow_pages(1 << 20).expect("room again");
    assert_eq!(sitting.add(&many.join("\n")).0, 303);
    assert!(at(&path).finds().contains("leaf number 149"));
}

#[test]
fn two_programs_take_turns_and_see_each_other() {
    let path = fresh("turns");
    let (mut one, mut other) = (at(&path), at(&path));
    assert_eq!(one.add("yew").0, 303);
    assert_eq!(other.add("oak").0, 303);
    assert_eq!(one.add("holly").0, 303);
    for finds in [one.finds(), other.finds(), at(&path).finds()] {
        assert!(["yew", "oak", "holly"].iter().all(|name| finds.contains(name)), "{finds}");
    }
}

#[test]
fn who_is_overtaken_between_thinking_and_keeping_thinks_again() {
    let path = fresh("overtaken");
    let mut one = at(&path);
    let mut other = at(&path);
    let mut left = 3;
    one.handle = Box::new(move |desk, asked| {
        let reply = desk.handle(asked);
        if left > 0 && matches!(reply, Reply::Keep { .. }) {
            left -= 1;
            assert_eq!(other.add(&format!("other {left}")).0, 303);
        }
        reply
    });
    assert_eq!(one.add("mine").0, 303);
    let finds = at(&path).finds();
    let all = ["mine", "other 0", "other 1", "other 2"];
    assert!(all.iter().all(|name| finds.contains(name)), "{finds}");
}

#[test]
fn who_is_overtaken_for_ever_says_so() {
    let path = fresh("for-ever");
    let (mut one, mut other) = (at(&path), at(&path));
    let mut number = 0;
    one.handle = Box::new(move |desk, asked| {
        let reply = desk.handle(asked);
        number += 1;
        assert_eq!(other.add(&format!("other {number}")).0, 303);
        reply
    });
    let (status, page) = one.add("mine and only mine");
    assert_eq!(status, 503);
    assert!(page.contains("mine and only mine"), "{page}");
    assert!(!at(&path).finds().contains("mine and only mine"));
}

#[test]
fn what_another_program_removed_for_good_is_gone_here_too() {
    let path = fresh("rewritten");
    let mut sitting = at(&path);
    assert_eq!(sitting.add("yew").0, 303);
    assert_eq!(sitting.add("a name to forget").0, 303);
    let mut other = Store::open(&path).expect("a file");
    let first = other.rows(0).expect("lines")[0].bytes.clone();
    other.rewrite(2, &[first], &BTreeSet::new()).expect("rewritten");
    let finds = sitting.finds();
    assert!(finds.contains("yew") && !finds.contains("a name to forget"), "{finds}");
    assert_eq!(sitting.add("oak").0, 303);
    assert!(at(&path).finds().contains("oak"));
}

#[test]
fn a_line_of_a_newer_program_is_not_guessed_at() {
    let path = fresh("newer");
    let mut sitting = at(&path);
    assert_eq!(sitting.add("yew").0, 303);
    let mut newer = Store::open(&path).expect("a file");
    let line = br#"{"v":999,"at":0,"edits":[]}"#.to_vec();
    newer.append(1, &[line], &[]).expect("kept");
    let (status, page) = sitting.add("oak");
    assert_eq!(status, 503);
    assert!(page.contains("newer Spinney") && page.contains("oak"), "{page}");
}

#[test]
fn a_picture_that_is_lost_is_said_to_be_lost() {
    let mut sitting = at(&fresh("picture"));
    let hash = "ab".repeat(32);
    let (status, page) = sitting.page(&mut Request::get(&format!("/picture/{hash}")));
    assert_eq!(status, 404);
    assert!(page.contains("picture"), "{page}");
}

/// Lines as another collection has them.
fn another(of: &str) -> Vec<Vec<u8>> {
    let path = fresh(of);
    let mut sitting = at(&path);
    assert_eq!(sitting.add("wych elm").0, 303);
    sitting.kept.lines(0).expect("its lines")
}

/// A desk that opens a copy whatever is asked, as if nothing stood in the way.
fn opening(lines: Vec<Vec<u8>>) -> Handle {
    Box::new(move |desk, asked| match asked.path.as_str() {
        "/do/open-copy" if !desk.at_work() => Reply::Replace {
            head: desk.head(),
            lines: lines.clone(),
            pictures: Vec::new(),
            then: match desk.handle(&Request::get("/finds")) {
                Reply::Page(page) => page,
                other => panic!("no page: {other:?}"),
            },
        },
        _ => desk.handle(asked),
    })
}

#[test]
fn a_copy_takes_the_place_of_what_is_in_memory_and_of_an_empty_file() {
    let lines = another("another-file-1");
    let empty = fresh("empty");
    let sittings = [
        Sitting::open(Kept::in_memory(lines.clone()), &lines).expect("a collection"),
        at(&empty),
    ];
    for mut sitting in sittings {
        sitting.handle = opening(another("another-file-2"));
        if sitting.kept.place() == spinney_desk::KeptIn::Memory {
            assert_eq!(sitting.add("holly").0, 303);
            assert!(sitting.finds().contains("Kept in memory only"));
        }
        assert_eq!(sitting.page(&mut Request::post("/do/open-copy", &[])).0, 200);
        let finds = sitting.finds();
        assert!(finds.contains("wych elm") && !finds.contains("holly"), "{finds}");
    }
    assert!(at(&empty).finds().contains("wych elm"), "it is in the file");
}

#[test]
fn a_file_that_holds_a_collection_is_never_replaced() {
    let path = fresh("held");
    let mut sitting = at(&path);
    assert_eq!(sitting.add("holly").0, 303);
    sitting.handle = opening(another("another-file-3"));
    let (status, _) = sitting.page(&mut Request::post("/do/open-copy", &[]));
    assert_eq!(status, 503, "it gives up instead of writing over it");
    assert!(at(&path).finds().contains("holly"));
}

/// Asks the clerk in this order; when the last one waits as well, `then` happens.
fn asked<const N: usize>(
    clerk: &Clerk,
    requests: [Request; N],
    then: impl Future<Output = ()>,
) -> [Result<u16, Refusal>; N] {
    let runtime = tokio::runtime::Builder::new_current_thread().build().expect("a runtime");
    let room = Room::of(1 << 20);
    let status = |done: Done| match done {
        Done::Page(page) | Done::Forgotten(page) => page.status,
        Done::Picture(_) => panic!("a page was asked for"),
    };
    runtime.block_on(async {
        let mut asking: Vec<_> = requests
            .into_iter()
            .map(|request| Box::pin(clerk.ask(request, None, room.place(0))))
            .collect();
        let mut then = std::pin::pin!(then);
        let (mut heard, mut done) = ([const { None }; N], false);
        std::future::poll_fn(|context| {
            for (one, heard) in asking.iter_mut().zip(&mut heard) {
                if heard.is_none()
                    && let Poll::Ready(answer) = one.as_mut().poll(context)
                {
                    *heard = Some(answer.map(status));
                }
            }
            done = done || then.as_mut().poll(context).is_ready();
            match done && heard.iter().all(Option::is_some) {
                true => Poll::Ready(()),
                false => Poll::Pending,
            }
        })
        .await;
        heard.map(|heard| heard.expect("everybody heard something"))
    })
}

/// Longer than anybody waits who was told that it ends.
const LONG: Duration = Duration::from_secs(20);

#[test]
fn the_end_gives_up_what_only_shows_something_and_tells_whoever_waits() {
    let path = fresh("end");
    let mut sitting = at(&path);
    let (begins, begun) = tokio::sync::oneshot::channel();
    let (goes_on, held) = std::sync::mpsc::channel::<()>();
    let mut begins = Some(begins);
    sitting.handle = Box::new(move |desk, asked| {
        if let Some(begins) = begins.take() {
            begins.send(()).expect("somebody waits for it");
            // A page that takes for ever.
            let _ = held.recv_timeout(LONG);
        }
        desk.handle(asked)
    });
    let ending = Ending::not_yet();
    let (clerk, at_work) = Clerk::sit_down(sitting, ending.clone()).expect("a thread");
    let since = Instant::now();
    let elm = || Request::post("/do/add-kinds", &[("names", "wych elm"), ("head", "0-0")]);
    let heard = asked(&clerk, [Request::get("/finds"), elm(), elm()], async {
        begun.await.expect("it begins");
        ending.begin();
    });
    assert_eq!(heard, [Err(Refusal::Ended); 3]);
    assert_eq!(asked(&clerk, [elm()], async {}), [Err(Refusal::Ended)], "nor afterwards");
    at_work.finish();
    assert!(since.elapsed() < LONG, "the page was waited for");
    goes_on.send(()).expect("it still waits");
    assert!(!at(&path).finds().contains("wych elm"), "who was told so finds nothing kept");
}

#[test]
fn what_is_being_kept_at_the_end_is_kept_and_answered() {
    let path = fresh("end-keeping");
    let sitting = at(&path);
    let ending = Ending::not_yet();
    let (clerk, at_work) = Clerk::sit_down(sitting, ending.clone()).expect("a thread");
    // Another program is just writing: what is to be kept has to wait for it.
    let other = rusqlite::Connection::open(&path).expect("the file");
    other.execute_batch("BEGIN IMMEDIATE").expect("held");
    let add = |name| Request::post("/do/add-kinds", &[("names", name), ("head", "0-0")]);
    let heard = asked(&clerk, [add("oak"), add("holly")], async {
        ending.keeping().await;
        ending.begin();
        assert!(!ending.has_ended(), "it is being kept");
        other.execute_batch("ROLLBACK").expect("let go");
    });
    assert_eq!(heard, [Ok(303), Err(Refusal::Ended)]);
    at_work.finish();
    let finds = at(&path).finds();
    assert!(finds.contains("oak") && !finds.contains("holly"), "{finds}");
}

/// A sheet that is not ready before somebody says so: whether it was begun, and how to say so.
/// Where nobody does, it is a bug, and is answered so.
fn held_up(
    sitting: &mut Sitting,
) -> (tokio::sync::oneshot::Receiver<()>, std::sync::mpsc::Sender<()>) {
    let (begins, begun) = tokio::sync::oneshot::channel();
    let (goes_on, held) = std::sync::mpsc::channel();
    let mut begins = Some(begins);
    sitting.beside = Box::new(move |desk, asked| {
        if let Some(begins) = begins.take() {
            begins.send(()).expect("somebody waits for it");
            held.recv_timeout(LONG).expect("others were answered first");
        }
        desk.handle(asked)
    });
    (begun, goes_on)
}

fn sheet() -> Request {
    Request::get("/print?sheet=today")
}

#[test]
fn readers_and_writers_are_answered_while_a_sheet_is_being_set() {
    let path = fresh("beside");
    let mut sitting = at(&path);
    let (begun, goes_on) = held_up(&mut sitting);
    let (clerk, at_work) = Clerk::sit_down(sitting, Ending::not_yet()).expect("a thread");
    let elm = Request::post("/do/add-kinds", &[("names", "wych elm"), ("head", "0-0")]);
    let mut elm = Some(elm);
    let heard = asked(&clerk, [sheet(), Request::get("/print/today.pdf")], async {
        begun.await.expect("it begins");
        let room = Room::of(1 << 20);
        let elm = elm.take().expect("asked once");
        for (request, status) in [(Request::get("/finds"), 200), (elm, 303)] {
            let done = clerk.ask(request, None, room.place(0)).await;
            let Ok(Done::Page(page)) = done else { panic!("a page was asked for") };
            assert_eq!(page.status, status);
        }
        goes_on.send(()).expect("it still waits");
    });
    assert_eq!(heard, [Ok(200), Ok(404)], "there is no key yet to be printed");
    drop(clerk);
    at_work.finish();
    assert!(at(&path).finds().contains("wych elm"));
}

#[test]
fn so_many_wait_for_a_sheet_and_no_more() {
    let mut sitting = at(&fresh("queue"));
    let (begun, goes_on) = held_up(&mut sitting);
    let (clerk, _at_work) = Clerk::sit_down(sitting, Ending::not_yet()).expect("a thread");
    const ALL: usize = limits::MOST_LONG_WAITING + 3;
    let heard = asked(&clerk, std::array::from_fn::<_, ALL, _>(|_| sheet()), async {
        begun.await.expect("it begins");
        // The clerk has heard all of them before it answers this.
        let room = Room::of(1 << 20);
        assert!(clerk.ask(Request::get("/finds"), None, room.place(0)).await.is_ok());
        goes_on.send(()).expect("it still waits");
    });
    let busy = heard.iter().filter(|heard| **heard == Err(Refusal::Busy)).count();
    // The first may have been begun before the last was asked for, or not.
    assert!((2..=3).contains(&busy), "{heard:?}");
    assert!(heard.iter().all(|heard| matches!(heard, Ok(200) | Err(Refusal::Busy))));
}

#[test]
fn a_bug_in_a_sheet_ends_it_and_nothing_else() {
    let mut sitting = at(&fresh("beside-bug"));
    let mut first = true;
    sitting.beside = Box::new(move |desk, asked| {
        assert!(!std::mem::take(&mut first), "a bug for this test");
        desk.handle(asked)
    });
    let (clerk, _at_work) = Clerk::sit_down(sitting, Ending::not_yet()).expect("a thread");
    let heard = asked(&clerk, [sheet(), sheet(), Request::get("/finds")], async {});
    assert_eq!(heard, [Ok(500), Ok(200), Ok(200)]);
}

#[test]
fn the_end_does_not_wait_for_a_sheet() {
    let mut sitting = at(&fresh("beside-end"));
    let (begun, goes_on) = held_up(&mut sitting);
    let ending = Ending::not_yet();
    let (clerk, at_work) = Clerk::sit_down(sitting, ending.clone()).expect("a thread");
    let since = Instant::now();
    let heard = asked(&clerk, [sheet(), sheet()], async {
        begun.await.expect("it begins");
        ending.begin();
    });
    assert_eq!(heard, [Err(Refusal::Ended); 2]);
    drop(clerk);
    at_work.finish();
    assert!(since.elapsed() < LONG, "the sheet was waited for");
    goes_on.send(()).expect("it still waits");
}

#[test]
fn a_copy_with_pictures_is_saved_beside_the_clerk() {
    let path = fresh("beside-copy");
    let (picture, hash) = {
        let picture = spinney_fixtures::photographs::parts_of_a_png(1 << 20);
        let hash = spinney_store::Hash::of(&picture).to_string();
        (picture, hash)
    };
    let edits = vec![
        Edit::Kind(KindId(1), KindEdit::Add("yew".to_owned())),
        Edit::Kind(KindId(1), KindEdit::AddPicture(hash.clone())),
    ];
    let line = journal::write(&Entry { at: 0, done: spinney_model::Done::Edits(edits) });
    let mut store = Store::open(&path).expect("a file");
    store.append(0, &[line], &[picture]).expect("kept");
    drop(store);
    let mut sitting = at(&path);
    sitting.handle = Box::new(|_, _| panic!("the clerk has other things to do"));
    let (clerk, _at_work) = Clerk::sit_down(sitting, Ending::not_yet()).expect("a thread");
    let runtime = tokio::runtime::Builder::new_current_thread().build().expect("a runtime");
    let room = Room::of(16 << 20);
    let copy = Request::get("/saved/copy.zip");
    let done = runtime.block_on(clerk.ask(copy, None, room.place(0)));
    let Ok(Done::Page(page)) = done else { panic!("a copy was asked for") };
    assert_eq!((page.status, page.kind), (200, "application/zip"));
    assert!(page.body.len() > 1 << 20, "the picture is in it");
    assert!(page.body.windows(64).any(|name| name == hash.as_bytes()));
}

#[test]
fn a_form_with_a_file_is_read_beside_the_clerk_and_nobody_is_overtaken_for_ever() {
    let path = fresh("beside-file");
    let (mut sitting, mut other) = (at(&path), at(&path));
    let (said, heard_here) = std::sync::mpsc::channel();
    let mut number = 0;
    sitting.beside = Box::new(move |desk, asked| {
        let reply = desk.handle(asked);
        number += 1;
        assert_eq!(other.add(&format!("other {number}")).0, 303);
        said.send(()).expect("somebody counts");
        reply
    });
    let (clerk, at_work) = Clerk::sit_down(sitting, Ending::not_yet()).expect("a thread");
    let table = spinney_desk::Upload {
        field: "file".to_owned(),
        name: "finds.csv".to_owned(),
        bytes: b"kind,edge\nholly,spiny\nyew,smooth\n".to_vec(),
    };
    let take =
        Request { files: vec![table], ..Request::post("/do/take-table", &[("head", "0-0")]) };
    assert_eq!(asked(&clerk, [take], async {}), [Ok(303)]);
    drop(clerk);
    at_work.finish();
    assert_eq!(heard_here.try_iter().count(), limits::MOST_TRIES_BESIDE);
    let finds = at(&path).finds();
    assert!(["holly", "yew", "other 3"].iter().all(|name| finds.contains(name)), "{finds}");
}
