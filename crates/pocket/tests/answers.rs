//! What the worker hears: every message answered, and what is kept counts once it is handed back.

use spinney_desk::{Desk, Method, Reply, Request};
use spinney_pocket::{Message, Pocket};

fn asked(method: &str, address: &str) -> Message {
    Message::new("handle")
        .saying("method", method)
        .saying("address", address)
        .saying("at", "1000")
        .saying("today", "3 October 2026")
        .saying("language", "en")
        .saying("kept", "browser")
}

fn handle(address: &str) -> Message {
    asked("get", address)
}

fn post(address: &str, form: &str) -> Message {
    asked("post", address).saying("form", form)
}

fn body(answer: &Message) -> String {
    String::from_utf8(answer.parts.last().expect("a page has a body").clone()).expect("text")
}

/// A pocket with the invented hedge walk on the desk.
fn walk() -> Pocket {
    let mut pocket = Pocket::default();
    let lines =
        pocket.answer(Message::new("walk").saying("at", "1000").saying("language", "en"));
    let open = pocket.answer(Message::new("open").with_parts(lines.parts));
    assert_eq!((open.text("what"), open.text("kinds")), ("stands", "12"));
    assert!(open.text("title").contains("invented"), "{}", open.text("title"));
    pocket
}

#[test]
fn the_list_names_every_collection_and_says_what_was_done_last() {
    let mut pocket = Pocket::default();
    let list = |answer: &Message| {
        assert_eq!((answer.text("what"), answer.text("status")), ("page", "200"));
        body(answer)
    };
    let mut message =
        Message::new("collections").saying("method", "get").saying("address", "/collections");
    let page = list(&pocket.answer(message.clone()));
    assert!(
        page.contains("There is no collection here yet.") && !page.contains("id=\"remove\"")
    );
    for (id, title, kinds) in [("a", "Mill Lane", "12"), ("b", "", "0")] {
        message = message
            .saying("id", id)
            .saying("title", title)
            .saying("kinds", kinds)
            .saying("day", "3 October 2026");
    }
    let page =
        list(&pocket.answer(message.clone().saying("notice", "removed").saying("of", "Pond")));
    assert!(page.contains("Mill Lane") && page.contains("12 kinds"), "{page}");
    assert!(page.contains("last open on 3 October 2026") && page.contains("nothing in it yet"));
    assert!(page.contains("“Pond” is no longer in this browser."));
    let german = list(&pocket.answer(message.saying("language", "de")));
    assert!(german.contains("zuletzt offen am 3. Oktober 2026"), "{german}");
}

#[test]
fn a_page_is_the_desks_own_byte_for_byte() {
    let mut pocket = walk();
    let lines =
        pocket.answer(Message::new("walk").saying("at", "1000").saying("language", "en"));
    let mut desk = Desk::open(lines.parts.iter().map(Vec::as_slice)).expect("our own lines");
    for address in ["/finds", "/heaps?key=1", "/table", "/key?key=1", "/words", "/done"] {
        let answer = pocket.answer(handle(address));
        let mut request = Request::get(address);
        (request.at, request.today) = (1000, "3 October 2026".to_owned());
        request.languages = vec!["en".to_owned()];
        request.kept = spinney_desk::KeptIn::Browser { copy: None, promised: None };
        assert_eq!(request.method, Method::Get);
        let Reply::Page(page) = desk.handle(&request) else { panic!("{address} shows a page") };
        assert_eq!(answer.text("status"), page.status.to_string(), "{address}");
        assert_eq!(answer.parts, [page.body], "{address}");
    }
}

#[test]
fn an_edit_counts_once_its_line_is_handed_back() {
    let mut pocket = Pocket::default();
    let answer = pocket.answer(post("/do/add-kinds", "head=0-0&names=holly"));
    assert_eq!((answer.text("what"), answer.text("after")), ("keep", "0"), "{}", body(&answer));
    assert_eq!((answer.text("lines"), answer.text("status")), ("1", "303"));
    assert_eq!(answer.text("head"), "0", "nothing has changed yet");
    assert!(!body(&pocket.answer(handle("/finds"))).contains("holly"));
    let line = answer.parts[0].clone();
    let stands = pocket.answer(Message::new("catch-up").with_parts(vec![line]));
    assert_eq!((stands.text("head"), stands.text("kinds")), ("1", "1"));
    assert!(body(&pocket.answer(handle("/finds"))).contains("holly"));
}

#[test]
fn what_cannot_be_read_is_said() {
    let mut pocket = Pocket::default();
    let open = |pocket: &mut Pocket, line: &[u8]| {
        let open = Message::new("open").with_parts(vec![line.to_vec()]);
        pocket.answer(open).text("what").to_owned()
    };
    assert_eq!(open(&mut pocket, b"{\"v\":999}"), "newer");
    assert_eq!(open(&mut pocket, b"leaf"), "damaged");
    let trouble = |pocket: &mut Pocket, name: &str| {
        let asked = Message::new("trouble").saying("address", "/finds").saying("method", "get");
        let answer = pocket.answer(asked.saying("trouble", name).saying("why", "UnknownError"));
        (answer.text("status").to_owned(), body(&answer))
    };
    let (status, page) = trouble(&mut pocket, "full");
    assert!(status == "507" && page.contains("This browser has no room left"), "{page}");
    let (status, page) = trouble(&mut pocket, "copy-full");
    assert!(status == "507" && page.contains("room for 56 MiB of pictures"), "{page}");
    let (status, page) = trouble(&mut pocket, "not-reached");
    assert!(status == "503" && page.contains("could not keep it (UnknownError)"), "{page}");
    assert_eq!(trouble(&mut pocket, "picture-lost").0, "404");
    assert_eq!(trouble(&mut pocket, "whatever").0, "500");
}

#[test]
fn a_copy_is_asked_for_after_a_while_and_the_last_one_named() {
    let mut pocket = Pocket::default();
    let mut mark = "0-0".to_owned();
    for number in 0..30 {
        let form = format!("head={mark}&names=kind {number}");
        let answer = pocket.answer(post("/do/add-kinds", &form));
        let line = answer.parts[0].clone();
        let stands = pocket.answer(Message::new("catch-up").with_parts(vec![line]));
        mark = stands.text("mark").to_owned();
    }
    let page = body(&pocket.answer(handle("/finds")));
    assert!(page.contains("No copy of this collection was saved yet:"), "{page}");
    let copied =
        handle("/finds").saying("copy-name", "walk.zip").saying("copy-day", "3 October 2026");
    let page = body(&pocket.answer(copied.clone().saying("copy-head", "0")));
    assert!(page.contains("The last copy is from 3 October 2026:"));
    let page = body(&pocket.answer(copied.clone().saying("copy-head", "29")));
    assert!(!page.contains("The last copy is from"), "one step is not worth a word");
    let saved = handle("/saved").saying("copy-name", "walk.zip");
    let page = body(&pocket.answer(saved.saying("copy-day", "3 October 2026")));
    assert!(page.contains("saved on 3 October 2026 as walk.zip"), "{page}");
}
