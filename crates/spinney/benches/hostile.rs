//! The most memory that hostile inputs make the program take:
//! `cargo bench -p spinney --bench hostile`, or a part of it: `-- bundles`.
//!
//! From inputs that each fill one limit to the peak of the process (`VmHWM` of Linux, looked at
//! every two milliseconds), how it ended and how long it took. It ends with a panic where a peak
//! is above the budget.

#[path = "../tests/screens/browser.rs"]
mod browser;

use std::fmt::Write as _;
use std::io::{Cursor, Write as _};
use std::net::TcpStream;
use std::path::{Path, PathBuf};
use std::process::{Child, Command, Stdio};
use std::time::{Duration, Instant};

use browser::{Screens, fresh};
use spinney_exchange::bundle::Bundle;
use spinney_model::limits;

/// Runs the inputs of a sort in a folder; the most memory in MiB.
type Measure = fn(&Path) -> f64;

fn main() {
    let wanted = std::env::args().skip(1).find(|arg| !arg.starts_with("--"));
    let load = std::fs::read_to_string("/proc/loadavg").unwrap_or_default();
    println!("load average before: {}", load.trim());
    let folder = fresh("hostile");
    let mut worst = 0.0_f64;
    let parts: [(&str, Measure); 5] = [
        ("bundles", bundles),
        ("keys", keys),
        ("pictures", pictures),
        ("tables", tables),
        ("screens", screens),
    ];
    for (name, part) in parts {
        if wanted.as_deref().is_none_or(|wanted| wanted == name) {
            worst = worst.max(part(&folder));
        }
    }
    let most = limits::MEMORY >> 20;
    println!("the most of all: {worst:.0} MiB of {most}");
    assert!(worst <= most as f64, "a peak is above the budget");
}

/// What a process holds at most so far, in MiB; None: it has ended.
fn peak(process: u32) -> Option<f64> {
    let status = std::fs::read_to_string(format!("/proc/{process}/status")).ok()?;
    let line = status.lines().find(|line| line.starts_with("VmHWM"))?;
    let kilobytes: f64 = line.split_whitespace().nth(1)?.parse().ok()?;
    Some(kilobytes / 1024.0)
}

fn watched(mut child: Child) -> (f64, Option<i32>) {
    let mut most = 0.0;
    loop {
        most = peak(child.id()).unwrap_or(most);
        if let Some(ended) = child.try_wait().expect("it is ours") {
            return (most, ended.code());
        }
        std::thread::sleep(Duration::from_millis(2));
    }
}

/// Runs the program once and says what it took.
fn run(folder: &Path, what: &str, args: &[&str]) -> f64 {
    let begun = Instant::now();
    let child = Command::new(env!("CARGO_BIN_EXE_spinney"))
        .args(args)
        .current_dir(folder)
        .stdout(Stdio::null())
        .stderr(Stdio::null())
        .spawn()
        .expect("it starts");
    let (most, code) = watched(child);
    let code = code.map_or("killed".to_owned(), |code| code.to_string());
    let took = begun.elapsed().as_secs_f64();
    println!(
        "| {what} | `spinney {}` | {most:.0} MiB | {code} | {took:.1} s |",
        args.join(" ")
    );
    most
}

fn write(folder: &Path, name: &str, bytes: impl AsRef<[u8]>) -> PathBuf {
    let path = folder.join(name);
    std::fs::write(&path, bytes).expect("written");
    path
}

/// A zip with one journal in it, packed as `spinney pack` does.
fn journal(folder: &Path, name: &str, lines: &[u8]) {
    // An empty bundle, with more in its journal: what is too large for a bundle is written by
    // the same library that reads it.
    let mut zip = zip::ZipWriter::new(Cursor::new(Vec::new()));
    zip.start_file("journal.jsonl", zip::write::SimpleFileOptions::default()).expect("a file");
    zip.write_all(lines).expect("memory");
    write(folder, name, zip.finish().expect("a zip").into_inner());
}

/// The same zip, with a sum in its table of contents changed.
fn damaged(folder: &Path, name: &str, new: &str) {
    let mut bytes = std::fs::read(folder.join(name)).expect("read");
    let table = bytes.windows(4).rposition(|mark| mark == b"PK\x01\x02").expect("a table");
    bytes[table + 16] ^= 1;
    write(folder, new, bytes);
}

fn bundles(folder: &Path) -> f64 {
    let mut most = 0.0_f64;
    let mut unpacked = |what: &str, name: &str| {
        let out = format!("{name}.spinney");
        most = most.max(run(folder, what, &["unpack", name, &out]));
    };
    journal(folder, "bomb.zip", &b"x\n".repeat(256 << 20));
    unpacked("512 MiB of lines of one letter", "bomb.zip");
    damaged(folder, "bomb.zip", "damaged.zip");
    unpacked("the same, damaged", "damaged.zip");
    journal(folder, "short.zip", &b"x\n".repeat(12 << 20));
    unpacked("24 MiB of such lines", "short.zip");
    let line = |n: usize| {
        format!(
            "{{\"v\":1,\"at\":0,\"edits\":[{{\"add_kind\":{{\"kind\":{n},\"name\":\"k{n}\"}}}}]}}\n"
        )
    };
    let many: String = (1..=200_000).map(line).collect();
    journal(folder, "many.zip", many.as_bytes());
    unpacked("200,000 lines, a kind each", "many.zip");
    let mut long = "{\"v\":1,\"at\":0,\"edits\":[".to_owned();
    for n in 0..420_000 {
        let comma = if n == 0 { "" } else { "," };
        let _ = write!(long, "{comma}{{\"add_kind\":{{\"kind\":{n},\"name\":\"k{n}\"}}}}");
    }
    long.push_str("]}\n");
    journal(folder, "long.zip", long.as_bytes());
    unpacked("one line of 420,000 kinds", "long.zip");
    let undone: String =
        std::iter::repeat_n("{\"v\":1,\"at\":0,\"undo\":true}\n", 199_999).collect();
    journal(folder, "undone.zip", format!("{}{undone}", line(1)).as_bytes());
    unpacked("200,000 lines, all but one undone", "undone.zip");
    let packed = photographs(limits::BUNDLE_UNPACKED as usize - (1 << 20)).pack();
    if let Ok(packed) = packed {
        let size = packed.len() >> 20;
        write(folder, "pictures.zip", packed);
        unpacked(&format!("{size} MiB of photographs"), "pictures.zip");
        most = most.max(run(
            folder,
            "the same, packed again",
            &["pack", "pictures.zip.spinney", "again.zip", "--force"],
        ));
    }
    most
}

/// A collection with so many bytes of photographs, one of each kind.
fn photographs(most: usize) -> Bundle {
    let mut bundle = Bundle { lines: Vec::new(), pictures: Default::default() };
    let taken = photograph(1, 1000, 700);
    // One byte of the packed pixels makes each another picture.
    for seed in 0..most / taken.len() {
        let mut picture = taken.clone();
        let at = picture.len() / 2 + 11 * seed;
        picture[at] = if picture[at] == 0x55 { 0x2A } else { 0x55 };
        let hash = spinney_store::Hash::of(&picture).to_string();
        bundle.lines.push(format!("{{\"v\":1,\"at\":0,\"edits\":[{{\"add_kind\":{{\"kind\":{seed},\"name\":\"k{seed}\"}}}},{{\"add_picture\":{{\"kind\":{seed},\"picture\":\"{hash}\"}}}}]}}").into_bytes());
        bundle.pictures.insert(hash, picture);
    }
    bundle
}

fn small_table(folder: &Path) {
    write(folder, "small.csv", "kind,edge\nhazel,toothed\nlime,smooth\n");
}

fn keys(folder: &Path) -> f64 {
    small_table(folder);
    let mut most = 0.0_f64;
    let mut checked = |what: &str, name: &str| {
        let args = ["check", "small.csv", "--key", name];
        most = most.max(run(folder, what, &args));
    };
    let questions = |most: usize| -> String {
        (1..most).map(|n| format!("{n}. Is it {n}? Yes -> hazel, No -> {}\n", n + 1)).collect()
    };
    write(folder, "text.txt", questions(1_200_000));
    checked("1,200,000 questions", "text.txt");
    write(folder, "text8.txt", questions(180_000));
    checked("180,000 questions, 8 MB", "text8.txt");
    write(folder, "deep.txt", questions(20_000));
    checked("20,000 questions, one after another", "deep.txt");
    let couplet = |n: usize| {
        format!(
            "{{\"number\":{n},\"question\":\"a\",\"yes\":{{\"taxa\":[\"hazel\"]}},\
             \"no\":{{\"couplet\":{}}}}}",
            n + 1
        )
    };
    let all: Vec<String> = (1..=100_000).map(couplet).collect();
    write(folder, "key.json", format!("{{\"couplets\":[{}]}}", all.join(",")));
    checked("100,000 questions as JSON", "key.json");
    write(folder, "nested.json", format!("{{\"key\":{}", "[".repeat(7_000_000)));
    checked("JSON 7,000,000 lists deep", "nested.json");
    for (name, word) in
        [("a", "a"), ("words", "edge of the leaf "), ("no", "1. "), ("dots", ". ")]
    {
        let file = format!("sentence-{name}.txt");
        write(
            folder,
            &file,
            format!("1. {}? Yes -> hazel, No -> lime\n", word.repeat(1_000_000 / word.len())),
        );
        checked(&format!("a sentence of a megabyte: {word}…"), &file);
    }
    most
}

/// A photograph of undergrowth: it packs badly.
fn photograph(seed: u64, width: u32, height: u32) -> Vec<u8> {
    let mut random = fastrand::Rng::with_seed(seed);
    let mut grain = || image::Rgb([random.u8(..), random.u8(..), random.u8(..)]);
    let pixels = image::RgbImage::from_fn(width, height, |_, _| grain());
    let mut file = Cursor::new(Vec::new());
    pixels.write_to(&mut file, image::ImageFormat::Jpeg).expect("it can be written");
    file.into_inner()
}

/// A photograph of 40 million pixels that packs well enough to be taken; `stepwise` as browsers
/// show a picture coarse first (progressive), which is unpacked in more memory.
fn large(stepwise: bool) -> Vec<u8> {
    let (width, height) = (7_600u16, 5_200u16);
    let grain = |at: usize| ((at / 3_000) as u8).wrapping_add((at * at % 7) as u8);
    let size = usize::from(width) * usize::from(height) * 3;
    let pixels: Vec<u8> = (0..size).map(grain).collect();
    let mut file = Vec::new();
    let mut encoder = jpeg_encoder::Encoder::new(&mut file, 60);
    encoder.set_progressive(stepwise);
    encoder.encode(&pixels, width, height, jpeg_encoder::ColorType::Rgb).expect("pixels");
    assert!(file.len() < limits::PICTURE_BYTES, "{} bytes", file.len());
    file
}

/// A table of kinds with a picture each.
fn pictured(folder: &Path, kinds: usize, file: impl Fn(usize) -> String) {
    let mut table = "kind,a,b,c,d,e,f\n".to_owned();
    let mut sheet = "kind,picture\n".to_owned();
    for kind in 0..kinds {
        let bits = (0..6).map(|bit| if kind >> bit & 1 == 1 { "yes" } else { "no" });
        let _ = writeln!(table, "kind {kind},{}", bits.collect::<Vec<_>>().join(","));
        let _ = writeln!(sheet, "kind {kind},{}", file(kind));
    }
    write(folder, "pictured.csv", table);
    write(folder, "pictured-kinds.csv", sheet);
}

fn pictures(folder: &Path) -> f64 {
    let args = ["key", "pictured.csv", "--kinds", "pictured-kinds.csv", "--out", "visit"];
    let taken = photograph(1, 3000, 2000);
    for at in 0..40 {
        write(folder, &format!("{at}.jpg"), &taken);
    }
    pictured(folder, 40, |kind| format!("{kind}.jpg"));
    let mut most = run(folder, "40 photographs of 6 million pixels", &args);
    let page = std::fs::metadata(folder.join("visit/phone.html")).map_or(0, |file| file.len());
    println!("their phone page: {page} bytes");
    pictured(folder, 2, |_| "large.jpg".to_owned());
    for (what, stepwise) in [("a photograph", false), ("one that is packed stepwise", true)] {
        write(folder, "large.jpg", large(stepwise));
        most = most.max(run(folder, &format!("{what} of 40 million pixels"), &args));
    }
    let mut sharp = Cursor::new(Vec::new());
    let pixels = image::RgbaImage::new(6_300, 6_300);
    pixels.write_to(&mut sharp, image::ImageFormat::Png).expect("it can be written");
    write(folder, "large.png", sharp.get_ref());
    pictured(folder, 64, |_| "large.png".to_owned());
    most = most.max(run(folder, "a drawing of 40 million pixels, 64 times", &args));
    let mut drawn = Cursor::new(Vec::new());
    let mut random = fastrand::Rng::with_seed(5);
    let mut grain = || image::Rgb([random.u8(..), random.u8(..), random.u8(..)]);
    let pixels = image::RgbImage::from_fn(880, 880, |_, _| grain());
    pixels.write_to(&mut drawn, image::ImageFormat::Png).expect("it can be written");
    for at in 0..64 {
        write(folder, &format!("{at}.png"), drawn.get_ref());
    }
    pictured(folder, 64, |kind| format!("{kind}.png"));
    most.max(run(folder, "64 drawings that do not pack", &args))
}

fn tables(folder: &Path) -> f64 {
    let mut most = 0.0_f64;
    let mut random = fastrand::Rng::with_seed(3);
    let table = |kinds: usize, columns: usize, cell: &mut dyn FnMut(usize, usize) -> String| {
        let mut text = "kind".to_owned();
        (0..columns).for_each(|column| _ = write!(text, ",column {column}"));
        text.push('\n');
        for kind in 0..kinds {
            let _ = write!(text, "kind {kind}");
            (0..columns).for_each(|column| _ = write!(text, ",{}", cell(kind, column)));
            text.push('\n');
        }
        write(folder, "large.csv", text);
    };
    let states = ["red", "blue", "green"];
    table(4_000, 99, &mut |_, _| states[random.usize(..3)].to_owned());
    for args in [
        &["key", "large.csv", "--memory", "256", "--budget", "2000"][..],
        &["weak", "large.csv", "--budget", "2000"][..],
        &["forgive", "large.csv", "--budget", "200"][..],
    ] {
        most = most.max(run(folder, "4,000 kinds × 99 columns of words", args));
    }
    table(4_000, 99, &mut |kind, column| format!("0-{}", (kind + column) % 12));
    most = most.max(run(folder, "4,000 × 99, ranges of counts", &["table", "large.csv"]));
    table(4_000, 99, &mut |kind, column| format!("{} mm", (kind * 7_919 + column) % 99_991));
    let args = ["key", "large.csv", "--memory", "256", "--budget", "200"];
    most = most.max(run(folder, "4,000 × 99, all measured", &args));
    table(1_000, 30, &mut |_, _| states[random.usize(..3)].to_owned());
    let args = ["key", "large.csv", "--budget", "200", "--out", "printed"];
    most = most.max(run(folder, "1,000 × 30, all sheets", &args));
    most
}

fn screens(folder: &Path) -> f64 {
    let screens = Screens::open(Some(&folder.join("walk.spinney")));
    let body = vec![b'x'; 31 << 20];
    let answers: Vec<u16> = std::thread::scope(|scope| {
        let send = || {
            let mut stream = TcpStream::connect(("127.0.0.1", screens.port)).expect("taken");
            let head = format!(
                "POST /do/add-kinds HTTP/1.1\r\nhost: 127.0.0.1:{0}\r\norigin: http://127.0.0.1:{0}\r\n\
                 content-type: application/x-www-form-urlencoded\r\nconnection: close\r\n\
                 content-length: {1}\r\n\r\nnames=",
                screens.port,
                body.len() + 6
            );
            let _ = stream.write_all(head.as_bytes()).and_then(|()| stream.write_all(&body));
            let mut answer = Vec::new();
            let _ = std::io::Read::read_to_end(&mut stream, &mut answer);
            let status = String::from_utf8_lossy(&answer);
            status.split(' ').nth(1).and_then(|code| code.parse().ok()).unwrap_or(0)
        };
        let all: Vec<_> = (0..40).map(|_| scope.spawn(send)).collect();
        all.into_iter().map(|one| one.join().expect("it ends")).collect()
    });
    let count = |status: u16| answers.iter().filter(|code| **code == status).count();
    let forms = peak(screens.process.id()).unwrap_or(0.0);
    println!(
        "| 40 forms of 31 MiB at once | the screens | {forms:.0} MiB | {} answered, {} told to \
         wait, {} cut off | |",
        answers.len() - count(503) - count(0),
        count(503),
        count(0)
    );
    drop(screens);
    let screens = Screens::open(None);
    let zip = photographs(limits::COPY_BYTES - (1 << 20)).pack().expect("a copy");
    let head = screens.get("/saved").text();
    let head = head.split("data-head=\"").nth(1).and_then(|rest| rest.split('"').next());
    let head = head.unwrap_or("0").to_owned();
    let parts: [(&str, Option<&str>, &[u8]); 3] = [
        ("head", None, head.as_bytes()),
        ("sure", None, b"yes"),
        ("copy", Some("walk.zip"), &zip),
    ];
    let status = screens.post_files("/do/open-copy", &parts).status;
    let saved = screens.get("/saved/copy.zip");
    let copy = peak(screens.process.id()).unwrap_or(0.0);
    println!(
        "| a copy of {} MiB opened, and saved again ({} MiB) | the screens | {copy:.0} MiB | \
         {status}, {} | |",
        zip.len() >> 20,
        saved.body.len() >> 20,
        saved.status
    );
    forms.max(copy)
}
