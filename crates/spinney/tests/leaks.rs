//! No picture that goes out tells where it was taken: every output is opened and searched.
//!
//! The pictures that go in carry everything a file can hide (`fixtures::photographs`), and each
//! test makes sure first that it is there to be found.

use std::collections::BTreeSet;
use std::fs;
use std::io::Cursor;
use std::path::Path;

use base64::{Engine as _, engine::general_purpose::STANDARD};
use spinney_exchange::journal;
use spinney_fixtures::photographs::{
    PHOTOGRAPH, TALES, more_than_pixels, tales_in, telling_jpeg, telling_png,
};
use spinney_model::{Done, Edit, Entry, KindEdit, KindId};
use spinney_store::{Hash, Store};

#[path = "program/run.rs"]
mod run;
#[path = "screens/browser.rs"]
mod screens;

use run::spinney;
use screens::{Screens, fresh};

/// A photograph and a drawing that tell everything.
fn telling() -> [(&'static str, Vec<u8>); 2] {
    let mut drawn = Cursor::new(Vec::new());
    let leaf = image::RgbImage::from_fn(30, 20, |x, y| image::Rgb([x as u8, y as u8, 90]));
    leaf.write_to(&mut drawn, image::ImageFormat::Png).expect("it can be written");
    let both = [
        ("hazel.jpg", telling_jpeg(PHOTOGRAPH, 6)),
        ("lime.png", telling_png(drawn.get_ref(), 1)),
    ];
    let told: BTreeSet<&str> = both.iter().flat_map(|(_, file)| tales_in(file)).collect();
    assert_eq!(told, TALES.into(), "everything that is searched for is there before");
    assert!(both.iter().all(|(_, file)| more_than_pixels(file).len() >= 6));
    both
}

/// How many pictures were found in an output; none of it tells anything.
fn pictures_without_tales(name: &str, output: &[u8]) -> usize {
    assert_eq!(tales_in(output), Vec::<&str>::new(), "{name}");
    let mut pictures = 0;
    for hidden in in_addresses(output).into_iter().chain(in_streams(output)) {
        assert_eq!(tales_in(&hidden), Vec::<&str>::new(), "{name}");
        if hidden.starts_with(b"\x89PNG") || hidden.starts_with(&[0xFF, 0xD8]) {
            assert_eq!(more_than_pixels(&hidden), Vec::<String>::new(), "{name}");
            pictures += 1;
        }
    }
    pictures
}

/// What addresses hold that carry their own bytes (`data:`).
fn in_addresses(output: &[u8]) -> Vec<Vec<u8>> {
    let text = String::from_utf8_lossy(output);
    let held = text.split(";base64,").skip(1).map(|rest| {
        let end = rest.find(['"', ')']).expect("an address ends");
        STANDARD.decode(&rest[..end]).expect("base64")
    });
    held.collect()
}

/// The streams of a PDF, unpacked, and as they stand where they are a picture.
fn in_streams(output: &[u8]) -> Vec<Vec<u8>> {
    if !output.starts_with(b"%PDF") {
        return Vec::new();
    }
    let mut streams = Vec::new();
    let mut rest = output;
    while let Some(at) = find(rest, b"stream\n") {
        rest = &rest[at + 7..];
        let end = find(rest, b"\nendstream").expect("a stream ends");
        let stream = &rest[..end];
        rest = &rest[end + 10..];
        let unpacked = miniz_oxide::inflate::decompress_to_vec_zlib(stream);
        streams.push(unpacked.unwrap_or_else(|_| stream.to_vec()));
    }
    assert!(!streams.is_empty(), "a PDF has streams");
    streams
}

fn find(all: &[u8], part: &[u8]) -> Option<usize> {
    all.windows(part.len()).position(|window| window == part)
}

#[test]
fn the_command_line_writes_no_picture_that_tells_where_it_was_taken() {
    let folder = fresh("leaks-of-the-command-line");
    let finds =
        "kind,edge,lobes\nhazel,toothed,unlobed\nlime,toothed,lobed\nyew,smooth,unlobed\n";
    fs::write(folder.join("table.csv"), finds).expect("written");
    let kinds = "kind,picture\nhazel,hazel.jpg\nlime,lime.png\n";
    fs::write(folder.join("kinds.csv"), kinds).expect("written");
    for (name, file) in telling() {
        fs::write(folder.join(name), file).expect("written");
    }
    let made = spinney(&folder, &["key", ".", "--out", "visit"], "");
    assert_eq!(made.status.code(), Some(0), "{}", String::from_utf8_lossy(&made.stderr));
    let check = ["check", ".", "--key", "visit/key.txt", "--out", "opinion"];
    assert_eq!(spinney(&folder, &check, "").status.code(), Some(0));
    let revise = ["revise", ".", "--old", "visit/key.txt", "--out", "again"];
    assert_eq!(spinney(&folder, &revise, "").status.code(), Some(0));
    for made in ["visit", "opinion", "again"] {
        let (mut files, mut with_pictures) = (0, BTreeSet::new());
        for file in fs::read_dir(folder.join(made)).expect("a folder") {
            let path = file.expect("a file").path();
            files += 1;
            let name = path.file_name().expect("a name").to_string_lossy().into_owned();
            if pictures_without_tales(&name, &fs::read(&path).expect("its bytes")) > 0 {
                with_pictures.insert(name);
            }
        }
        assert!(files >= 7, "{files}");
        let shown = ["chart-a3.pdf", "chart.pdf", "key-pages.pdf", "phone.html", "today.pdf"];
        for name in shown {
            assert!(
                with_pictures.contains(name),
                "{name} shows a photograph: {with_pictures:?}"
            );
        }
    }
}

#[test]
fn the_screens_show_no_picture_that_tells_where_it_was_taken() {
    let folder = fresh("leaks-of-the-screens");
    let file = folder.join("walk.spinney");
    let screens = Screens::open(Some(&file));
    let [(_, photograph), (_, drawing)] = telling();
    let parts: [(&str, Option<&str>, &[u8]); 3] = [
        ("names", None, b"yew"),
        ("pictures", Some("hazel.jpg"), &photograph),
        ("pictures", Some("lime.png"), &drawing),
    ];
    assert_eq!(screens.post_files("/do/add-kinds", &parts).status, 303);
    let sent = |path: &str, form: &[(&str, &str)]| {
        let seen = screens.seen();
        let form = [form, &[("head", seen.as_str())]].concat();
        assert_eq!(screens.post(path, &form).status, 303);
    };
    sent("/do/start-heaps", &[("name", "Our key")]);
    sent("/do/ask", &[("key", "1"), ("words", "Is it green?"), ("back", "/heaps?key=1")]);
    for (kind, side) in [("1", "yes"), ("2", "no"), ("3", "no")] {
        sent("/do/sort", &[("key", "1"), ("kind", kind), ("side", side)]);
    }
    let seen = seen_from(&screens, "/finds");
    let shown = |part: &str| seen.iter().filter(|path| path.contains(part)).count();
    let pictures = seen.iter().filter(|path| path.starts_with("/picture/"));
    assert_eq!(pictures.count(), 2, "{seen:?}");
    assert!(shown(".svg?") >= 4 && shown(".pdf?") >= 4 && shown("phone.html") == 1, "{seen:?}");
    assert!(shown("copy.zip") == 1, "{seen:?}");
    drop(screens);
    // The file itself, and what is packed of it.
    let packed = folder.join("walk.zip");
    let names = [&file, &packed].map(|path| path.to_string_lossy().into_owned());
    let made = spinney(Path::new("."), &["pack", &names[0], &names[1]], "");
    assert_eq!(made.status.code(), Some(0), "{}", String::from_utf8_lossy(&made.stderr));
    for path in [&file, &packed] {
        assert_eq!(tales_in(&fs::read(path).expect("its bytes")), Vec::<&str>::new());
    }
}

/// A file that another program wrote, or that was changed by hand: its pictures are as they came
/// from the camera. What goes out of it is not.
#[test]
fn pictures_that_another_program_kept_tell_nothing_when_they_go_out() {
    let folder = fresh("leaks-of-another-program");
    let file = folder.join("walk.spinney");
    let pictures = telling().map(|(_, bytes)| bytes);
    let edits = |number: usize, bytes: &[u8]| {
        let kind = KindId(u32::try_from(number).expect("small"));
        let hash = Hash::of(bytes).to_string();
        vec![
            Edit::Kind(kind, KindEdit::Add(format!("kind {number}"))),
            Edit::Kind(kind, KindEdit::AddPicture(hash)),
        ]
    };
    let edits = pictures.iter().enumerate().flat_map(|(n, bytes)| edits(n + 1, bytes));
    let line = journal::write(&Entry { at: 0, done: Done::Edits(edits.collect()) });
    let mut store = Store::create(&file).expect("a file");
    store.append(0, &[line], &pictures).expect("kept");
    drop(store);
    assert!(!tales_in(&fs::read(&file).expect("its bytes")).is_empty(), "the file tells");
    let screens = Screens::open(Some(&file));
    let seen = seen_from(&screens, "/finds");
    let shown = seen.iter().filter(|path| path.starts_with("/picture/"));
    assert_eq!(shown.count(), 2, "{seen:?}");
    let copy = folder.join("copy.zip");
    fs::write(&copy, screens.get("/saved/copy.zip").body).expect("written");
    drop(screens);
    let packed = folder.join("walk.zip");
    let name = |path: &Path| path.to_string_lossy().into_owned();
    let made = spinney(Path::new("."), &["pack", &name(&file), &name(&packed)], "");
    assert_eq!(made.status.code(), Some(0), "{}", String::from_utf8_lossy(&made.stderr));
    for (zip, again) in [(&copy, "copied.spinney"), (&packed, "packed.spinney")] {
        assert_eq!(tales_in(&fs::read(zip).expect("its bytes")), Vec::<&str>::new());
        let again = folder.join(again);
        let made = spinney(Path::new("."), &["unpack", &name(zip), &name(&again)], "");
        let said = String::from_utf8_lossy(&made.stdout).into_owned();
        assert!(said.contains("1 step and 2 pictures"), "{said}");
    }
}

/// Every address that can be reached by links and pictures, each looked at.
fn seen_from(screens: &Screens, from: &str) -> BTreeSet<String> {
    let mut seen = BTreeSet::from([from.to_owned()]);
    let mut open = vec![from.to_owned()];
    while let Some(path) = open.pop() {
        let answer = screens.get(&path);
        assert!(answer.status < 500, "{path}: {}", answer.status);
        let pictures = pictures_without_tales(&path, &answer.body);
        let kind = answer.header("content-type");
        if kind.starts_with("image/") && kind != "image/svg+xml" {
            assert_eq!(more_than_pixels(&answer.body), Vec::<String>::new(), "{path}");
        }
        if path.contains("phone.html") {
            assert_eq!(pictures, 2, "{path}");
        }
        if !kind.starts_with("text/html") || path.contains("phone.html") {
            continue;
        }
        let page = answer.text();
        for attribute in [" href=\"/", " src=\"/"] {
            for rest in page.split(attribute).skip(1) {
                let end = rest.find('"').expect("an address ends");
                let to = format!("/{}", rest[..end].replace("&amp;", "&"));
                let to = to.split('#').next().expect("a part").to_owned();
                // A walk through the key shows the same few pages again and again.
                if !to.starts_with("/try") && seen.len() < 400 && seen.insert(to.clone()) {
                    open.push(to);
                }
            }
        }
    }
    seen
}
