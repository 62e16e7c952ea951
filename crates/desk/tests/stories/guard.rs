//! The guard at the door: nothing is written on what a page no longer shows, and what a page
//! does not rest on may have changed.

use std::collections::BTreeSet;

use crate::at_the_desk::{AtTheDesk, hidden};
use spinney_desk::{Desk, Request};
use spinney_model::KindEdit;
use spinney_model::{Edit, KindField, KindId};

/// The hedge walk, a key of a group that has asked something, and one that the machine finished.
fn class() -> AtTheDesk {
    let mut class = AtTheDesk::with_hedge_walk();
    class.post("/do/start-heaps", &[("name", "Foxes")]);
    class.post("/do/ask", &[("key", "1"), ("at", ""), ("words", "Does it prick?")]);
    class.post("/do/key-start", &[("name", "All"), ("how", "finish")]);
    class.post("/do/version", &[("name", "before lunch")]);
    class
}

const PAGES: [&str; 14] = [
    "/finds",
    "/finds/1",
    "/table",
    "/table/1",
    "/heaps?key=1",
    "/heaps?key=1&at=y",
    "/heaps/answers?key=2",
    "/key?key=2&open=",
    "/copy/new",
    "/share-out",
    "/done",
    "/done/version/0",
    "/forget/kind/1",
    "/forget/all",
];

#[test]
fn every_form_says_how_far_its_page_saw_and_is_refused_without() {
    let mut class = class();
    let mut met = BTreeSet::new();
    for path in PAGES {
        let page = class.get(path);
        for form in page.split("<form").skip(1).filter(|form| form.contains("method=\"post\""))
        {
            let form = form.split("</form>").next().expect("it ends");
            let action = form.split("action=\"").nth(1).expect("it goes somewhere");
            let action = action.split('"').next().expect("it ends").to_owned();
            let seen = format!("name=\"head\" value=\"{}\"", class.desk.mark());
            assert!(form.contains(&seen), "{path}: {form}");
            met.insert(action);
        }
    }
    assert!(met.len() > 30, "only these were met: {met:?}");
    for path in met.iter().filter(|path| !path.contains("key-look-on")) {
        let lines = class.lines.len();
        let page = class.send_as_it_is(Request::post(path, &[("kind", "1"), ("key", "1")]));
        assert_eq!((page.status, class.lines.len()), (422, lines), "{path}");
        let page = String::from_utf8(page.body).expect("a page is text");
        assert!(page.contains("cannot tell which page this form came from"), "{path}: {page}");
    }
}

#[test]
fn a_form_below_a_question_that_was_changed_says_where() {
    let mut class = class();
    let page = class.get("/key?key=2&open=y");
    let below = hidden(&page, "action=\"/do/key-keep\"");
    let below: Vec<_> =
        below.iter().map(|(name, text)| (name.as_str(), text.as_str())).collect();
    let first = [("key", "2"), ("at", ""), ("words", "Are there any spines at all?")];
    class.post("/do/key-reword", &first);
    let page = class.refused("/do/key-keep", &below);
    assert!(page.contains("Someone changed a question above this one"), "{page}");
    // The question itself is named as it is now.
    let page = class.get("/key?key=2&open=");
    let here = hidden(&page, "action=\"/do/key-reword\"");
    let mut here: Vec<_> =
        here.iter().map(|(name, text)| (name.as_str(), text.as_str())).collect();
    here.push(("words", "Is it prickly?"));
    class.post("/do/key-reword", &[("key", "2"), ("at", ""), ("words", "Any spines?")]);
    let page = class.refused("/do/key-reword", &here);
    assert!(page.contains("It is now: Any spines?"), "{page}");
}

#[test]
fn going_back_to_a_version_takes_nothing_back_unseen() {
    let mut class = class();
    let seen = class.desk.mark();
    class.post("/do/add-kinds", &[("names", "wych elm")]);
    let form = [("version", "0"), ("head", seen.as_str())];
    let page = class.refused("/do/back-to-version", &form);
    assert!(page.contains("Something else was done just now"), "{page}");
    class.post("/do/back-to-version", &[("version", "0")]);
    assert!(!class.get("/finds").contains("wych elm"));
}

#[test]
fn a_page_of_another_collection_changes_nothing_here() {
    let mut class = class();
    let many = "9999-0";
    let time = class.desk.mark().replace('-', "-7");
    for head in [many, time.as_str(), "1-"] {
        let form = [("head", head), ("kind", "1"), ("where", "by the gate")];
        let page = class.refused("/do/describe-kind", &form);
        assert!(page.contains("Nothing was changed."), "{head}: {page}");
        assert!(page.contains("by the gate"), "what was typed is not lost: {page}");
    }
    // Where a line went for good, the next one has its number and another time.
    class.post("/do/describe-kind", &[("kind", "2"), ("where", "by the hedge")]);
    let old = class.desk.mark();
    class.post("/do/forget-kind", &[("kind", "2"), ("sure", "yes")]);
    class.post("/do/add-kinds", &[("names", "wych elm")]);
    let form = [("head", old.as_str()), ("kind", "1"), ("where", "by the gate")];
    class.refused("/do/describe-kind", &form);
}

#[test]
fn two_windows_write_into_one_field_and_neither_text_is_lost() {
    let mut class = class();
    let seen = class.desk.mark();
    let sends = |place: &'static str, when: &'static str| {
        [("head", seen.as_str()), ("kind", "1"), ("where", place), ("when", when)]
    };
    class.post("/do/describe-kind", &sends("by the gate", ""));
    // The second leaves that field as its page showed it, and goes through.
    class.post("/do/describe-kind", &sends("", "in May"));
    let page = class.get("/finds/1");
    assert!(page.contains("by the gate") && page.contains("in May"), "{page}");
    // The third wants another text there.
    let page = class.refused("/do/describe-kind", &sends("by the pond", ""));
    assert!(page.contains("Someone wrote “by the gate” there while you typed “by the pond”."));
}

#[test]
fn a_find_is_not_merged_or_taken_out_under_another_name() {
    let mut class = class();
    let seen = class.desk.mark();
    class.does(vec![Edit::Kind(
        KindId(2),
        KindEdit::Describe(KindField::Name, "wych elm".to_owned()),
    )]);
    for (path, field) in [("/do/remove-kind", "kind"), ("/do/merge-kinds", "with")] {
        let other = if field == "kind" { "with" } else { "kind" };
        let form = [("head", seen.as_str()), (field, "2"), (other, "1")];
        let page = class.refused(path, &form);
        assert!(page.contains("The name is now: wych elm"), "{path}: {page}");
    }
    // What was not renamed goes.
    class.post("/do/remove-kind", &[("head", seen.as_str()), ("kind", "3")]);
}

#[test]
fn a_question_of_the_finished_key_is_worded_anew_only_as_it_was_seen() {
    let mut class = class();
    let page = class.get("/key?key=2&open=");
    let seen = hidden(&page, "id=\"reword\"");
    let form = |words: &'static str| {
        let seen = seen.iter().map(|(name, text)| (name.clone(), text.clone()));
        seen.chain([("words".to_owned(), words.to_owned())]).collect::<Vec<_>>()
    };
    let sent = |class: &mut AtTheDesk, words| {
        let form = form(words);
        let form: Vec<(&str, &str)> = form.iter().map(|(n, t)| (&**n, &**t)).collect();
        class.send(Request::post("/do/key-reword", &form))
    };
    // Another group's card is no matter of this key.
    class.post("/do/sort", &[("key", "1"), ("at", ""), ("kind", "1"), ("side", "yes")]);
    assert_eq!(sent(&mut class, "Is it one piece, all of it?").status, 303);
    let page = sent(&mut class, "Is it whole?");
    assert_eq!(page.status, 422, "it was worded anew meanwhile");
    let page = String::from_utf8(page.body).expect("a page is text");
    assert!(page.contains("It is now: ") && page.contains("Is it one piece, all of it?"));
}

#[test]
fn what_was_done_and_undone_since_is_no_reason_to_refuse() {
    let mut class = class();
    let seen = class.desk.mark();
    let remove = [("head", seen.as_str()), ("kind", "2")];
    class.post("/do/describe-kind", &[("kind", "2"), ("name", "wych elm")]);
    class.refused("/do/remove-kind", &remove);
    class.undo("/finds");
    class.post("/do/remove-kind", &remove);
    // Nor is the page of a desk that was closed and opened again.
    let mut again = AtTheDesk::empty();
    again.desk = Desk::open(class.lines.iter().map(Vec::as_slice)).expect("our own lines");
    again.lines = class.lines.clone();
    again.post("/do/remove-kind", &[("head", seen.as_str()), ("kind", "3")]);
}
