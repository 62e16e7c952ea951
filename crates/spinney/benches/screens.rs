//! Figures of the screens over loopback: `cargo bench -p spinney --bench screens`.
//!
//! From a release build to figures: start to first page, memory, a page with a live key, forty
//! readers at once, a hundred thousand edits, the largest collection that the screens hold. The
//! load comes from this process; the screens is another one. The load average of the machine is
//! said first.

#[path = "../tests/screens/browser.rs"]
mod browser;

use std::io::{Read, Write};
use std::net::TcpStream;
use std::path::Path;
use std::process::Command;
use std::time::{Duration, Instant};

use browser::{Screens, fresh, signal};
use spinney_desk::Desk;
use spinney_exchange::journal;
use spinney_model::{
    CharacterEdit, CharacterId, Done, Edit, Entry, KeyEdit, KeyId, KindEdit, KindId, WishField,
    limits,
};
use spinney_store::{Hash, Store};

/// Screens with something of the key or the table on them.
const SCREENS: [&str; 8] =
    ["/finds", "/heaps", "/table", "/key", "/words", "/try", "/print", "/done"];

fn main() {
    let load = std::fs::read_to_string("/proc/loadavg").unwrap_or_default();
    println!("load average before: {}", load.trim());
    start_and_memory();
    live_key();
    readers();
    long_journal();
    largest();
    let load = std::fs::read_to_string("/proc/loadavg").unwrap_or_default();
    println!("load average after: {}", load.trim());
}

fn start_and_memory() {
    let mut times = Vec::new();
    for _ in 0..21 {
        let begun = Instant::now();
        let screens = Screens::open(None);
        assert_eq!(screens.get("/").status, 200);
        times.push(begun.elapsed());
    }
    say("start to first page, the demo", &mut times);
    let screens = Screens::open(None);
    assert_eq!(screens.get("/").status, 200);
    let first = memory(&screens, "VmRSS");
    for path in SCREENS {
        screens.get(path);
    }
    for number in 0..20 {
        screens.post("/do/add-kinds", &[("names", &format!("find {number}"))]);
        screens.get("/heaps");
    }
    println!(
        "memory with the demo open: {first:.1} MiB after the first page, {:.1} MiB after every \
         screen and 20 edits, {:.1} MiB at most",
        memory(&screens, "VmRSS"),
        memory(&screens, "VmHWM"),
    );
}

/// Resident memory in MiB, as the kernel counts it.
fn memory(screens: &Screens, what: &str) -> f64 {
    let path = format!("/proc/{}/status", screens.process.id());
    let status = std::fs::read_to_string(path).expect("Linux tells");
    let line = status.lines().find(|line| line.starts_with(what)).expect("it is there");
    let kilobytes: f64 =
        line.split_whitespace().nth(1).expect("a number").parse().expect("one");
    kilobytes / 1024.0
}

/// A table of 20 kinds and 20 characters, three kinds met in more than one form, as typed.
fn twenty_by_twenty() -> Vec<spinney_exchange::table::Source> {
    let mut rng = fastrand::Rng::with_seed(20);
    let states = ["smooth", "toothed", "lobed"];
    let headings = (1..=20).map(|number| format!("character {number}"));
    let mut rows = vec![std::iter::once("kind".to_owned()).chain(headings).collect()];
    for kind in 1..=20 {
        let mut row = vec![format!("kind {kind}")];
        for character in 0..20 {
            let known = 2 + usize::from(character % 3 == 0);
            let state = rng.usize(0..known);
            let varies = kind <= 3 && rng.usize(0..4) == 0;
            let other = states[(state + 1) % known];
            row.push(match varies {
                true => format!("{} or {other}", states[state]),
                false => states[state].to_owned(),
            });
        }
        rows.push(row);
    }
    vec![spinney_exchange::table::typed("table", rows)]
}

fn line(edits: Vec<Edit>) -> Vec<u8> {
    journal::write(&Entry { at: 0, done: Done::Edits(edits) })
}

fn key_finished() -> Vec<u8> {
    let key = KeyId(1);
    line(vec![
        Edit::Key(key, KeyEdit::Start("Our key".to_owned())),
        Edit::Key(key, KeyEdit::Wish(WishField::Finish, "yes".to_owned())),
    ])
}

fn live_key() {
    let file = fresh("bench-live").join("walk.spinney");
    let mut lines = Desk::lines_of_table(&twenty_by_twenty(), 0).expect("it holds kinds");
    lines.push(key_finished());
    lines.push(line(vec![Edit::Cell {
        kind: KindId(7),
        character: CharacterId(5),
        source: String::new(),
        text: "smooth or toothed".to_owned(),
    }]));
    let mut store = Store::create(&file).expect("a file");
    store.append(0, &lines, &[]).expect("kept");
    drop(store);
    let mut command = Command::new("taskset");
    command.args(["-c", "0", env!("CARGO_BIN_EXE_spinney"), "open", "--no-browser"]);
    let screens = Screens::start({
        command.arg(&file);
        command
    });
    for path in ["/heaps", "/key", "/key?key=1&open=", "/table"] {
        let (mut edits, mut pages) = (Vec::new(), Vec::new());
        for round in 0..400 {
            // The same cell is changed back and forth: the table and the key are new each time.
            let what = if round % 2 == 0 { "/do/undo" } else { "/do/redo" };
            let seen = screens.seen();
            let begun = Instant::now();
            assert_eq!(screens.post(what, &[("head", &seen)]).status, 303);
            edits.push(begun.elapsed());
            let begun = Instant::now();
            assert_eq!(screens.get(path).status, 200);
            pages.push(begun.elapsed());
        }
        say(&format!("one core, 20 × 20: {path} after an edit"), &mut pages);
        say("  the edit itself, on the disk", &mut edits);
    }
}

fn readers() {
    let screens = Screens::open(None);
    let port = screens.port;
    let mut times: Vec<Duration> = std::thread::scope(|scope| {
        let readers: Vec<_> =
            (0..40).map(|reader| scope.spawn(move || one_reader(port, reader))).collect();
        readers.into_iter().flat_map(|reader| reader.join().expect("no error")).collect()
    });
    say("40 readers without a pause, each its own connection", &mut times);
}

/// Walks from link to link on one connection, as a browser does.
fn one_reader(port: u16, reader: usize) -> Vec<Duration> {
    let mut stream = TcpStream::connect(("127.0.0.1", port)).expect("it answers");
    stream.set_nodelay(true).expect("a socket");
    let mut rng = fastrand::Rng::with_seed(reader as u64);
    let mut path = "/try".to_owned();
    let mut times = Vec::new();
    for _ in 0..100 {
        let begun = Instant::now();
        let (status, page) = ask(&mut stream, port, &path);
        times.push(begun.elapsed());
        assert_eq!(status, 200, "{path}");
        let ways: Vec<&str> = page
            .split("href=\"")
            .skip(1)
            .filter_map(|rest| rest.split('"').next())
            .filter(|to| to.starts_with("/try") || to.starts_with("/heaps"))
            .collect();
        path = match ways.as_slice() {
            [] => SCREENS[rng.usize(0..SCREENS.len())].to_owned(),
            ways => ways[rng.usize(0..ways.len())].replace("&amp;", "&"),
        };
    }
    times
}

fn ask(stream: &mut TcpStream, port: u16, path: &str) -> (u16, String) {
    let asked = format!("GET {path} HTTP/1.1\r\nhost: 127.0.0.1:{port}\r\n\r\n");
    stream.write_all(asked.as_bytes()).expect("sent");
    let mut bytes = Vec::new();
    let mut some = [0; 16_384];
    loop {
        let read = stream.read(&mut some).expect("an answer");
        assert!(read > 0, "the connection was closed");
        bytes.extend_from_slice(&some[..read]);
        let text = String::from_utf8_lossy(&bytes);
        let Some((head, body)) = text.split_once("\r\n\r\n") else { continue };
        let length = head.lines().find_map(|line| line.strip_prefix("content-length: "));
        let length: usize = length.expect("a length").trim().parse().expect("a number");
        if body.len() >= length {
            let status = head.split(' ').nth(1).expect("a status").parse().expect("a number");
            return (status, body.to_owned());
        }
    }
}

fn long_journal() {
    let file = fresh("bench-long").join("walk.spinney");
    let edits = write_long(&file);
    let size = std::fs::metadata(&file).expect("a file").len() >> 20;
    let mut times = Vec::new();
    for _ in 0..7 {
        let begun = Instant::now();
        let screens = Screens::open(Some(&file));
        assert_eq!(screens.get("/finds").status, 200);
        times.push(begun.elapsed());
    }
    say(
        &format!("{edits} edits, 40 kinds, 200 pictures ({size} MiB): open to /finds"),
        &mut times,
    );
    let screens = Screens::open(Some(&file));
    screens.get("/finds");
    println!("  memory then: {:.1} MiB", memory(&screens, "VmRSS"));
}

fn write_long(file: &Path) -> usize {
    let mut rng = fastrand::Rng::with_seed(100);
    let mut lines = Vec::new();
    let mut pictures = Vec::new();
    for kind in 1..=40 {
        lines.push(line(vec![Edit::Kind(KindId(kind), KindEdit::Add(format!("kind {kind}")))]));
        for _ in 0..5 {
            let mut picture = vec![0; 300_000];
            rng.fill(&mut picture);
            picture[..3].copy_from_slice(b"\xff\xd8\xff");
            let hash = Hash::of(&picture).to_string();
            lines.push(line(vec![Edit::Kind(KindId(kind), KindEdit::AddPicture(hash))]));
            pictures.push(picture);
        }
    }
    for character in 1..=20 {
        let name = format!("character {character}");
        lines.push(line(vec![Edit::Character(
            CharacterId(character),
            CharacterEdit::Add(name),
        )]));
    }
    lines.push(key_finished());
    while lines.len() < 100_000 {
        let text = ["smooth", "toothed", "lobed", "smooth or toothed"][rng.usize(0..4)];
        lines.push(line(vec![Edit::Cell {
            kind: KindId(rng.u32(1..=40)),
            character: CharacterId(rng.u32(1..=20)),
            source: String::new(),
            text: text.to_owned(),
        }]));
    }
    let mut store = Store::create(file).expect("a file");
    store.append(0, &lines, &pictures).expect("kept");
    lines.len()
}

/// Pages that are answered one after another.
const PAGES: [&str; 18] = [
    "/finds",
    "/finds/3",
    "/heaps?key=1",
    "/heaps/answers?key=1",
    "/table",
    "/table/2",
    "/key?key=1",
    "/key?key=1&open=",
    "/key/compare",
    "/words",
    "/try?key=1",
    "/newcomer?key=1",
    "/share-out",
    "/forget",
    "/done",
    "/copy",
    "/copy/new",
    "/saved",
];
/// What is answered beside them.
const SHEETS: [&str; 11] = [
    "/saved/copy.zip",
    "/saved/table.csv",
    "/print?key=1&sheet=today",
    "/print/today.pdf?key=1",
    "/print/key-pages.pdf?key=1",
    "/print/chart.pdf?key=1",
    "/print/try-out.pdf?key=1",
    "/print/phone.html?key=1",
    "/print/key.txt?key=1",
    "/print/key.json?key=1",
    "/share-out/sheets/1",
];

/// The largest collection that the screens hold, as a machine draws it: words, some cells that
/// vary, each fifth column measured.
fn write_largest(file: &Path) {
    let mut rng = fastrand::Rng::with_seed(400);
    let states = ["smooth", "toothed", "lobed"];
    let mut edits = Vec::new();
    for kind in 1..=limits::SCREENS_KINDS as u32 {
        edits.push(Edit::Kind(KindId(kind), KindEdit::Add(format!("kind {kind}"))));
    }
    for character in 1..=limits::SCREENS_COLUMNS as u32 {
        edits.push(Edit::Character(
            CharacterId(character),
            CharacterEdit::Add(format!("column {character}")),
        ));
    }
    for kind in 1..=limits::SCREENS_KINDS as u32 {
        for character in 1..=limits::SCREENS_COLUMNS as u32 {
            let state = rng.usize(0..3);
            let text = match (character % 5, rng.usize(0..20)) {
                (0, _) => {
                    let low = rng.usize(5..80);
                    format!("{low}-{} mm", low + rng.usize(1..15))
                }
                (_, 0) => format!("{} or {}", states[state], states[(state + 1) % 3]),
                _ => states[state].to_owned(),
            };
            let (kind, character) = (KindId(kind), CharacterId(character));
            edits.push(Edit::Cell { kind, character, source: String::new(), text });
        }
    }
    let caution = Edit::Scene(spinney_model::AboutField::Caution, "Wash hands".to_owned());
    let mut store = Store::create(file).expect("a file");
    store.append(0, &[line(edits), key_finished(), line(vec![caution])], &[]).expect("kept");
}

/// Every page and sheet of the largest collection, each after an edit; readers while a sheet is
/// set; and how soon it ends while one is.
fn largest() {
    let file = fresh("bench-largest").join("walk.spinney");
    write_largest(&file);
    let screens = Screens::open(Some(&file));
    println!(
        "{} kinds × {} columns, a finished key; each page after an edit, and again:",
        limits::SCREENS_KINDS,
        limits::SCREENS_COLUMNS
    );
    let mut undone = false;
    let mut edit = || {
        let what = if undone { "/do/redo" } else { "/do/undo" };
        assert_eq!(screens.post(what, &[("head", &screens.seen())]).status, 303);
        undone = !undone;
    };
    for path in PAGES.iter().chain(&SHEETS) {
        edit();
        let mut times = [Duration::ZERO; 2];
        for time in &mut times {
            let begun = Instant::now();
            assert_eq!(screens.get(path).status, 200, "{path}");
            *time = begun.elapsed();
        }
        println!(
            "| `{path}` | {:.2} s | {:.2} s |",
            times[0].as_secs_f64(),
            times[1].as_secs_f64()
        );
    }
    edit();
    screens.get("/finds");
    let (mut times, ask) = (Vec::new(), |path: &str| screens.get(path).status);
    std::thread::scope(|scope| {
        let sheet = scope.spawn(|| ask("/print/today.pdf?key=1"));
        while !sheet.is_finished() {
            let begun = Instant::now();
            assert_eq!(ask("/finds"), 200);
            times.push(begun.elapsed());
        }
    });
    say("/finds while everything for today is set", &mut times);
    println!("memory then: {:.1} MiB at most", memory(&screens, "VmHWM"));
    drop(screens);
    for name in ["INT", "TERM"] {
        for path in ["/key?key=1", "/print/today.pdf?key=1"] {
            end_during(&file, name, path);
        }
    }
}

/// From the signal to the end of the process, while a page is worked on.
fn end_during(file: &Path, name: &str, path: &str) {
    let mut times = Vec::new();
    for _ in 0..5 {
        let mut screens = Screens::open(Some(file));
        screens.get("/finds");
        let mut stream = TcpStream::connect(("127.0.0.1", screens.port)).expect("it answers");
        let asked = format!("GET {path} HTTP/1.1\r\nhost: 127.0.0.1:{}\r\n\r\n", screens.port);
        stream.write_all(asked.as_bytes()).expect("sent");
        // It is at work on the page by then.
        std::thread::sleep(Duration::from_millis(50));
        let begun = Instant::now();
        signal(name, screens.process.id());
        assert!(screens.process.wait().expect("it ends").success());
        times.push(begun.elapsed());
    }
    say(&format!("SIG{name} while {path} is worked on, to the end"), &mut times);
}

/// Median, 99th of a hundred, worst.
fn say(what: &str, times: &mut [Duration]) {
    times.sort();
    let at = |share: f64| times[((times.len() - 1) as f64 * share).round() as usize];
    println!(
        "{what}: median {:.1} ms, p99 {:.1} ms, worst {:.1} ms ({} times)",
        at(0.5).as_secs_f64() * 1e3,
        at(0.99).as_secs_f64() * 1e3,
        at(1.0).as_secs_f64() * 1e3,
        times.len()
    );
}
