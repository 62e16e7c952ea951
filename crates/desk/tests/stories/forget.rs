//! A name that should not be there leaves the file, and the page says first what goes.

use crate::at_the_desk::AtTheDesk;
use spinney_desk::{Reply, Request, Upload};

fn picture(shade: u8) -> Upload {
    let pixels = image::RgbImage::from_pixel(6, 4, image::Rgb([shade, 120, 60]));
    let mut out = std::io::Cursor::new(Vec::new());
    pixels.write_to(&mut out, image::ImageFormat::Png).expect("it can be written");
    Upload { field: "pictures".into(), name: "leaf.png".into(), bytes: out.into_inner() }
}

fn hash(page: &str) -> String {
    let after = page.split("/picture/").nth(1).expect("a picture is shown");
    after[..64].to_owned()
}

fn journal(desk: &AtTheDesk) -> String {
    let lines = desk.lines.iter().map(|line| String::from_utf8_lossy(line).to_lowercase());
    lines.collect::<Vec<_>>().join("\n")
}

/// A find with a child's name, a picture, a place in a key, renamed and undone again.
fn with_quentin() -> AtTheDesk {
    let mut teacher = AtTheDesk::empty();
    teacher.post("/do/add-kinds", &[("names", "oak\nQuentin's leaf")]);
    teacher.upload("/do/add-pictures", &[("kind", "2")], picture(1));
    teacher.upload("/do/add-pictures", &[("kind", "1")], picture(2));
    teacher.post("/do/start-heaps", &[("name", "Blue")]);
    let ask = [("key", "1"), ("at", ""), ("words", "Like quentin's leaf?"), ("back", "/heaps")];
    teacher.post("/do/ask", &ask);
    let sort = [("key", "1"), ("at", ""), ("kind", "2"), ("side", "yes"), ("back", "/heaps")];
    teacher.post("/do/sort", &sort);
    teacher.post("/do/describe-kind", &[("kind", "2"), ("name", "alder")]);
    teacher
}

#[test]
fn a_find_leaves_the_journal_with_its_names_and_pictures() {
    let mut teacher = with_quentin();
    let gone = hash(&teacher.get("/finds/2"));
    let stays = hash(&teacher.get("/finds/1"));
    let page = teacher.get("/forget/kind/2");
    assert!(page.contains("This cannot be undone.") && page.contains("alder"));
    assert!(page.contains("The name was typed in one other place"));
    let head = teacher.desk.mark();
    let unsure = [("kind", "2"), ("head", head.as_str())];
    assert!(teacher.refused("/do/forget-kind", &unsure).contains("Nothing was removed"));
    let form = [("kind", "2"), ("head", head.as_str()), ("sure", "yes"), ("words", "yes")];
    match teacher.desk.handle(&Request::post("/do/forget-kind", &form)) {
        Reply::Rewrite { pictures, .. } => {
            assert!(pictures.contains(&stays) && !pictures.contains(&gone));
        }
        other => panic!("nothing is rewritten: {other:?}"),
    }
    assert_eq!(teacher.send(Request::post("/do/forget-kind", &form)).status, 303);
    for word in ["quentin", "alder", gone.as_str()] {
        assert!(!journal(&teacher).contains(word), "{word} is still in the journal");
    }
    assert!(teacher.get("/finds").contains("oak"));
    assert!(teacher.get("/heaps?key=1").contains("Like …?"));
}

#[test]
fn what_was_taken_out_before_can_be_removed_for_good() {
    let mut teacher = with_quentin();
    let gone = hash(&teacher.get("/finds/2"));
    teacher.post("/do/picture-away", &[("kind", "2"), ("picture", &gone)]);
    teacher.post("/do/remove-kind", &[("kind", "2")]);
    let page = teacher.get("/forget");
    assert!(page.contains("taken out before") && page.contains(&gone));
    assert!(teacher.get("/forget/kind/2").contains("alder"));
    let head = teacher.desk.mark();
    let form = [("picture", gone.as_str()), ("head", head.as_str()), ("sure", "yes")];
    teacher.send(Request::post("/do/forget-picture", &form));
    assert!(!journal(&teacher).contains(&gone) && journal(&teacher).contains("quentin"));
    let head = teacher.desk.mark();
    let form = [("head", head.as_str()), ("sure", "yes")];
    assert!(teacher.get("/forget/all").contains("Remove the whole collection for good?"));
    teacher.send(Request::post("/do/forget-all", &form));
    assert!(teacher.lines.is_empty() && teacher.get("/finds").contains("What did you find?"));
}

#[test]
fn what_changed_meanwhile_is_shown_again() {
    let mut teacher = with_quentin();
    let head = teacher.desk.mark();
    teacher.post("/do/add-kinds", &[("names", "elm")]);
    let form = [("kind", "2"), ("head", head.as_str()), ("sure", "yes")];
    let page = teacher.refused("/do/forget-kind", &form);
    assert!(page.contains("Someone changed the collection in another window."));
    assert_eq!(teacher.send(Request::get("/forget/kind/77")).status, 404);
    assert_eq!(teacher.send(Request::get("/forget/picture/1/none")).status, 404);
}
