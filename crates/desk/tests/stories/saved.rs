//! A copy of the collection is saved from the screens, and opened again.

use std::collections::BTreeMap;

use crate::at_the_desk::AtTheDesk;
use spinney_desk::{Desk, KeptIn, Page, Reply, Request, Upload};
use spinney_exchange::bundle::Bundle;

/// A class with a title, three finds, a picture and a key.
fn class() -> AtTheDesk {
    let mut class = AtTheDesk::empty();
    class.post("/do/add-kinds", &[("names", "holly\nyew\nivy")]);
    class.post("/do/describe-scene", &[("title", "Hedge & street walk")]);
    let mut picture = std::io::Cursor::new(Vec::new());
    let drawn = image::RgbImage::from_fn(40, 30, |x, y| image::Rgb([x as u8, y as u8, 90]));
    drawn.write_to(&mut picture, image::ImageFormat::Png).expect("into memory");
    let file = Upload {
        field: "pictures".to_owned(),
        name: "holly.png".to_owned(),
        bytes: picture.into_inner(),
    };
    assert_eq!(class.upload("/do/add-pictures", &[("kind", "1")], file).status, 303);
    class.post("/do/start-heaps", &[("name", "Group Blue")]);
    class
}

/// Asks as the host does: with the pictures that are asked for.
fn saved(class: &mut AtTheDesk, today: &str) -> Page {
    let asked = Request { today: today.to_owned(), ..Request::get("/saved/copy.zip") };
    let Reply::NeedPictures(wanted) = class.desk.handle(&asked) else {
        panic!("the picture is needed")
    };
    assert_eq!((wanted.len(), class.pictures.len()), (1, 1));
    let hash = wanted.into_iter().next().expect("one");
    let pictures = BTreeMap::from([(hash, Some(class.pictures[0].clone()))]);
    match class.desk.handle(&Request { pictures, ..asked }) {
        Reply::Page(page) => page,
        other => panic!("no page: {other:?}"),
    }
}

fn opening(desk: &Desk, copy: &[u8], sure: bool, in_memory: bool) -> Request {
    let head = desk.mark();
    let sure = if sure { "yes" } else { "" };
    let file =
        Upload { field: "copy".to_owned(), name: "copy.zip".to_owned(), bytes: copy.to_vec() };
    Request {
        files: vec![file],
        kept: if in_memory { KeptIn::Memory } else { KeptIn::File },
        ..Request::post("/do/open-copy", &[("head", &head), ("sure", sure)])
    }
}

fn refusal(reply: Reply) -> String {
    match reply {
        Reply::Page(page) => {
            assert_eq!(page.status, 422);
            String::from_utf8(page.body).expect("a page is text")
        }
        other => panic!("not refused: {other:?}"),
    }
}

#[test]
fn a_copy_holds_everything_and_is_named_by_title_and_date() {
    let mut class = class();
    let page = saved(&mut class, "25 November 2026");
    assert_eq!(page.file.as_deref(), Some("hedge-street-walk-25-november-2026.zip"));
    assert_eq!(page.kind, "application/zip");
    let bundle = Bundle::unpack(&page.body).expect("our own copy");
    assert_eq!(bundle.lines, class.lines);
    assert_eq!(bundle.pictures.into_values().collect::<Vec<_>>(), class.pictures);
    let again = saved(&mut class, "25 November 2026");
    assert_eq!(again.body, page.body, "the same collection gives the same bytes");
}

/// What was typed of the second language goes along: kinds, columns, title, yes and no.
#[test]
fn a_copy_takes_the_second_language_along() {
    let mut theirs = class();
    theirs.post("/do/describe-scene", &[("second-language", "Polski")]);
    let typed = [
        ("kind", "1"),
        ("name", "ostrokrzew"),
        ("question", "Hedge & street walk"),
        ("second", "Spacer wzdłuż żywopłotu"),
        ("question", "yes"),
        ("second", "tak"),
        ("back", "/finds"),
    ];
    theirs.post("/do/second-language", &typed);
    let copy = saved(&mut theirs, "").body;
    let mut empty = Desk::default();
    let asked = opening(&empty, &copy, false, false);
    let Reply::Replace { lines, .. } = empty.handle(&asked) else { panic!("it is taken") };
    let mut opened = Desk::open(lines.iter().map(Vec::as_slice)).expect("our own lines");
    let mut page = |path: &str| {
        let Reply::Page(page) = opened.handle(&Request::get(path)) else { panic!("no page") };
        String::from_utf8(page.body).expect("a page is text")
    };
    assert!(page("/finds/1").contains("value=\"ostrokrzew\""));
    let finds = page("/finds");
    assert!(finds.contains("value=\"Polski\""), "{finds}");
    for pair in ["Hedge &amp; street walk = Spacer wzdłuż żywopłotu", "yes = tak"] {
        assert!(finds.contains(pair), "{finds}");
    }
}

#[test]
fn a_copy_is_opened_where_nothing_is_lost() {
    let mut theirs = class();
    let copy = saved(&mut theirs, "").body;
    let mut empty = Desk::default();
    let asked = opening(&empty, &copy, false, false);
    let Reply::Replace { head: 0, lines, pictures, then } = empty.handle(&asked) else {
        panic!("an empty file takes it")
    };
    assert_eq!((then.status, then.location.as_deref()), (303, Some("/saved?opened=yes")));
    assert_eq!((&lines, pictures.len()), (&theirs.lines, 1));
    let mut opened = Desk::open(lines.iter().map(Vec::as_slice)).expect("our own lines");
    let Reply::Page(page) = opened.handle(&Request::get("/finds")) else { panic!("no page") };
    let page = String::from_utf8(page.body).expect("a page is text");
    assert!(page.contains("Hedge &amp; street walk") && page.contains("holly"));

    // In memory: only when somebody says so.
    let mut demo = AtTheDesk::with_hedge_walk();
    let asked = opening(&demo.desk, &copy, false, true);
    assert!(refusal(demo.desk.handle(&asked)).contains("is in memory only and would be gone"));
    let asked = opening(&demo.desk, &copy, true, true);
    assert!(matches!(demo.desk.handle(&asked), Reply::Replace { head: 1, .. }));
}

#[test]
fn a_collection_in_a_file_is_never_written_over() {
    let mut theirs = class();
    let copy = saved(&mut theirs, "").body;
    let mut ours = AtTheDesk::with_hedge_walk();
    let asked = opening(&ours.desk, &copy, true, false);
    let page = refusal(ours.desk.handle(&asked));
    assert!(page.contains("kept in a file, and a copy would write over it"), "{page}");
    assert!(page.contains("start it again by a double-click"), "{page}");
    let page = ours.get("/saved");
    assert!(!page.contains("/do/open-copy"), "nothing is offered that is refused");
    assert!(page.contains("/saved/copy.zip"));
}

#[test]
fn what_is_no_copy_or_damaged_is_told() {
    let mut empty = Desk::default();
    let asked = opening(&empty, b"kind,edge\nholly,spiny\n", false, false);
    assert!(refusal(empty.handle(&asked)).contains("This file is not a copy of a collection."));
    let odd = Bundle { lines: vec![b"{\"v\":999}".to_vec()], ..Bundle::default() };
    let asked = opening(&empty, &odd.pack().expect("small"), false, false);
    let page = refusal(empty.handle(&asked));
    assert!(page.contains("damaged") || page.contains("A newer Spinney"), "{page}");
    let asked =
        Request { kept: KeptIn::Memory, ..Request::post("/do/open-copy", &[("head", "0-0")]) };
    assert!(refusal(empty.handle(&asked)).contains("No file was chosen."));
}

#[test]
fn the_screens_say_where_it_is_kept_and_save_a_copy() {
    let mut class = class();
    let page = class.get("/heaps?key=1");
    assert!(page.contains("href=\"/saved/copy.zip\"") && page.contains("href=\"/saved\""));
    assert!(!page.contains("Kept in memory only"));
    let asked = Request { kept: KeptIn::Memory, ..Request::get("/heaps?key=1") };
    let Reply::Page(page) = class.desk.handle(&asked) else { panic!("no page") };
    let page = String::from_utf8(page.body).expect("a page is text");
    assert!(
        page.contains("Kept in memory only:") && page.contains("save a copy before you close")
    );
    assert!(AtTheDesk::empty().get("/finds").contains("Open a copy you saved before"));
}

/// Another program may have kept what cannot be read here: a copy would lack it, and nobody would
/// know.
#[test]
fn a_copy_that_would_lack_a_picture_is_not_made() {
    let mut class = class();
    class.pictures[0] = b"no picture".to_vec();
    let page = saved(&mut class, "");
    let text = String::from_utf8(page.body).expect("a page, no zip");
    assert_eq!(page.status, 422, "{text}");
    assert!(text.contains("One picture cannot be read."), "{text}");
}
