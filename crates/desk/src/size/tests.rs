//! What is asked of a snapshot changes nothing, and what it worked out is kept only where nothing
//! was edited since.

use std::sync::Arc;

use spinney_exchange::journal;
use spinney_model::{Done, Edit, Entry, KeyEdit, KeyId, KindEdit, KindId, WishField};

use crate::desk::Desk;
use crate::reply::{Page, Reply};
use crate::request::Request;

fn line(edits: Vec<Edit>) -> Vec<u8> {
    journal::write(&Entry { at: 0, done: Done::Edits(edits) })
}

/// A table of three kinds, and a finished key of it.
fn desk() -> Desk {
    let mut desk = Desk::default();
    let table = b"kind,edge\nholly,spiny\nyew,smooth\nivy,lobed\n".to_vec();
    let source = spinney_exchange::table::Source { name: "table".to_owned(), bytes: table };
    let mut lines = Desk::lines_of_table(&[source], 0).expect("it has kinds");
    lines.push(line(vec![
        Edit::Key(KeyId(1), KeyEdit::Start("Our key".to_owned())),
        Edit::Key(KeyId(1), KeyEdit::Wish(WishField::Finish, "yes".to_owned())),
    ]));
    desk.catch_up(lines.iter().map(Vec::as_slice)).expect("our own lines");
    desk
}

fn page(desk: &mut Desk, path: &str) -> Page {
    match desk.handle(&Request::get(path)) {
        Reply::Page(page) => page,
        other => panic!("no page: {other:?}"),
    }
}

#[test]
fn a_sheet_that_was_set_beside_the_desk_is_there_for_the_next_who_asks() {
    let mut desk = desk();
    let before = page(&mut desk, "/finds");
    let mut snapshot = desk.snapshot();
    let sheet = page(&mut snapshot, "/print/key-pages.svg?key=1&page=1");
    let set = snapshot.worked.last_pressed().expect("it was set");
    desk.take_back(snapshot);
    assert!(Arc::ptr_eq(&set, &desk.worked.last_pressed().expect("it is kept")));
    assert_eq!(page(&mut desk, "/print/key-pages.svg?key=1&page=1"), sheet);
    assert_eq!(page(&mut desk, "/finds"), before);
}

#[test]
fn what_was_worked_out_before_an_edit_is_not_shown_after_it() {
    let mut desk = desk();
    let mut snapshot = desk.snapshot();
    let old = page(&mut snapshot, "/print/key.txt?key=1");
    let rename = Edit::Kind(KindId(9), KindEdit::Add("wych elm".to_owned()));
    desk.catch_up([line(vec![rename]).as_slice()]).expect("our own line");
    assert_eq!(page(&mut snapshot, "/print/key.txt?key=1"), old, "it is as it was");
    desk.take_back(snapshot);
    let new = page(&mut desk, "/print/key.txt?key=1");
    assert!(String::from_utf8_lossy(&new.body).contains("wych elm"));
}

#[test]
fn a_sheet_and_a_copy_take_long_and_a_deed_does_not() {
    for path in ["/print", "/print/today.pdf", "/saved/copy.zip", "/share-out/sheets/1"] {
        assert!(Desk::takes_long(&Request::get(path)), "{path}");
        assert!(!Desk::takes_long(&Request::post(path, &[])), "{path}");
    }
    let file = crate::Upload { field: String::new(), name: String::new(), bytes: vec![1] };
    for path in ["/do/add-pictures", "/do/open-copy", "/do/take-table"] {
        let mut form = Request::post(path, &[]);
        assert!(!Desk::takes_long(&form), "{path}");
        form.files.push(file.clone());
        assert!(Desk::takes_long(&form), "{path}");
    }
    for path in ["/finds", "/table", "/picture/ab", "/no-such-page"] {
        assert!(!Desk::takes_long(&Request::get(path)), "{path}");
    }
}
