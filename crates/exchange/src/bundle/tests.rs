//! What is packed comes out again; what is no bundle, or a trap, is refused.

use std::io::{Cursor, Write};

use zip::ZipWriter;
use zip::write::SimpleFileOptions;

use super::{Bundle, BundleError, JOURNAL_BYTES, JOURNAL_LINES, Saved, hash_of, sum_of_line};

fn bundle() -> Bundle {
    let pictures = [b"one".to_vec(), vec![7; 100_000]];
    Bundle {
        lines: vec![br#"{"v":1,"at":0,"undo":true}"#.to_vec(), b"{}".to_vec()],
        pictures: pictures.into_iter().map(|bytes| (hash_of(&bytes), bytes)).collect(),
    }
}

fn zip(files: &[(&str, &[u8])]) -> Vec<u8> {
    let mut zip = ZipWriter::new(Cursor::new(Vec::new()));
    for (name, bytes) in files {
        zip.start_file(*name, SimpleFileOptions::default()).expect("started");
        zip.write_all(bytes).expect("written");
    }
    zip.finish().expect("finished").into_inner()
}

#[test]
fn what_is_packed_comes_out_again() {
    let packed = bundle().pack().expect("it is small");
    assert_eq!(Ok(&packed), bundle().pack().as_ref(), "the same bytes every time");
    assert_eq!(Bundle::unpack(&packed), Ok(bundle()));
}

/// What a person gets who reads it with other programs.
#[test]
fn everything_in_it_has_a_sum() {
    let packed = bundle().pack().expect("it is small");
    let mut zip = zip::ZipArchive::new(Cursor::new(packed)).expect("a zip");
    let mut text = |name: &str| {
        let mut text = String::new();
        let mut file = zip.by_name(name).expect("it is there");
        std::io::Read::read_to_string(&mut file, &mut text).expect("text");
        text
    };
    let sums = text("journal.sums");
    let first = hash_of(br#"{"v":1,"at":0,"undo":true}"#);
    assert_eq!(sums.lines().next(), Some(&first[..16]));
    let files = text("checksums.txt");
    let journal = format!("{}  journal.jsonl\n", hash_of(text("journal.jsonl").as_bytes()));
    assert!(files.contains(&journal), "{files}");
    assert_eq!(files.lines().count(), 5, "two pictures and three texts");
}

/// A bundle of before, as it was packed then; its journal is deflated, and it has no sums.
#[test]
fn a_bundle_of_before_is_unpacked() {
    let old = include_bytes!("form_1.zip");
    let unpacked = Bundle::unpack(old).expect("it is whole");
    let one = [(hash_of(b"one"), b"one".to_vec())].into();
    assert_eq!(unpacked, Bundle { pictures: one, ..bundle() });
}

/// Changes of one byte: `CHANGES=20000 cargo test -p spinney-exchange --lib one_changed -- \
/// --nocapture` for more.
#[test]
fn one_changed_byte_is_found_and_the_rest_is_saved() {
    let changes = std::env::var("CHANGES").ok().and_then(|n| n.parse().ok()).unwrap_or(1_000);
    let mut random = fastrand::Rng::with_seed(5);
    let line = |number: usize| {
        let text = "abcdefghij".repeat(number * 7 % 30);
        format!(r#"{{"v":1,"at":{number},"version":"{number} {text}"}}"#).into_bytes()
    };
    let picture =
        |length: usize| -> Vec<u8> { (0..length).map(|at| (at * at % 251) as u8).collect() };
    let pictures = [3_000, 9_000, 12_000].map(picture);
    let whole = Bundle {
        lines: (0..150).map(line).collect(),
        pictures: pictures.into_iter().map(|bytes| (hash_of(&bytes), bytes)).collect(),
    };
    let packed = whole.pack().expect("it is small");
    let (mut noticed, mut without_effect, mut silent) = (0, 0, 0);
    let (mut nothing, mut one, mut before) = (0, 0, 0);
    for _ in 0..changes {
        let mut bytes = packed.clone();
        let at = random.usize(..bytes.len());
        bytes[at] ^= random.u8(1..);
        match Bundle::unpack(&bytes) {
            Ok(found) if found == whole => without_effect += 1,
            Ok(_) => silent += 1,
            Err(_) => {
                noticed += 1;
                let Some(saved) = Saved::of(&bytes) else { continue };
                let sound = saved.lines.iter().zip(&whole.lines).filter(|(found, line)| {
                    assert!(found.as_ref().is_none_or(|found| found == *line), "passed off");
                    found.is_some()
                });
                let lost = whole.lines.len() - sound.count();
                assert!(
                    saved
                        .pictures
                        .iter()
                        .all(|(hash, it)| whole.pictures.get(hash) == Some(it))
                );
                let pictures = whole.pictures.len() - saved.pictures.len();
                nothing += usize::from(lost + pictures == 0);
                // A changed end of a line spoils two.
                one += usize::from((1..=2).contains(&(lost + pictures)));
                before += usize::from(lost <= 2);
            }
        }
    }
    println!(
        "{changes} changed bytes: {noticed} noticed, {without_effect} in bytes that hold nothing, \
         {silent} silent; of those noticed, nothing was lost after {nothing}, one line or picture \
         (or two lines that became one) after {one}; everything before was saved after {before}"
    );
    assert_eq!(silent, 0);
    assert!(before * 100 >= noticed * 95);
    assert!((nothing + one) * 100 >= noticed * 99);
}

/// A changed byte in the mark before a file hides nothing: its name follows.
#[test]
fn a_changed_mark_costs_no_line_and_no_picture() {
    let whole = bundle();
    let packed = whole.pack().expect("it is small");
    let marks: Vec<usize> =
        (0..packed.len()).filter(|at| packed[*at..].starts_with(b"PK\x03\x04")).collect();
    assert_eq!(marks.len(), 6, "two pictures and four texts");
    let wanted = Saved {
        lines: whole.lines.into_iter().map(Some).collect(),
        pictures: whole.pictures,
        pictures_lost: Some(0),
        end_known: true,
    };
    for at in marks.into_iter().flat_map(|mark| mark..mark + 4) {
        let mut bytes = packed.clone();
        bytes[at] ^= 0xFF;
        assert_eq!(Saved::of(&bytes).as_ref(), Some(&wanted), "byte {at}");
    }
}

#[test]
fn of_a_damaged_bundle_of_before_what_comes_first_is_saved() {
    let lines: Vec<Vec<u8>> = (0..3_000).map(|at| format!("line {at}").into_bytes()).collect();
    let text = lines.join(&b'\n');
    let mut packed = zip(&[("journal.jsonl", &text)]);
    let whole = Saved::of(&packed).expect("it can be read");
    assert_eq!((whole.lines.len(), whole.end_known), (3_000, true));
    let middle = packed.len() / 2;
    packed[middle..middle + 4].fill(0xFF);
    assert!(Bundle::unpack(&packed).is_err());
    let saved = Saved::of(&packed).expect("some of it can be read");
    assert!(!saved.end_known && saved.lines.len() > 500, "{}", saved.lines.len());
    assert!(
        saved.lines[..500].iter().zip(&lines).all(|(found, line)| found.as_ref() == Some(line))
    );
    assert_eq!(Saved::of(b"kind,edge"), None);
}

/// What a bundle may not hold does not come out of a damaged one either.
#[test]
fn a_damaged_trap_keeps_to_the_same_limits() {
    let held = |saved: &Saved| saved.lines.iter().flatten().map(Vec::len).sum::<usize>();
    // More lines than a journal has, and then damage: a bundle of before.
    let mut packed = zip(&[("journal.jsonl", &b"x\n".repeat(1 << 20))]);
    let sum = packed.windows(4).position(|mark| mark == b"PK\x01\x02").expect("a table") + 16;
    packed[sum] ^= 1;
    assert_eq!(Bundle::unpack(&packed), Err(BundleError::Damaged));
    let saved = Saved::of(&packed).expect("some of it can be read");
    assert_eq!((saved.lines.len(), saved.end_known), (JOURNAL_LINES, false));
    // More text than a journal has.
    let packed =
        zip(&[("journal.jsonl", &[&b"y".repeat(999)[..], b"\n"].concat().repeat(30_000))]);
    let saved = Saved::of(&packed).expect("some of it can be read");
    assert!(held(&saved) as u64 <= JOURNAL_BYTES && !saved.end_known);
    // Many sums of one long line.
    let line = format!("{{\"{}\"}}", "z".repeat(1 << 20));
    let sums = format!("{}\n", sum_of_line(line.as_bytes())).repeat(1000);
    let packed = stored(&[
        ("journal.jsonl", format!("{line}\n").as_bytes()),
        ("journal.sums", sums.as_bytes()),
        ("checksums.txt", format!("{}  journal.jsonl\n", "0".repeat(64)).as_bytes()),
    ]);
    let saved = Saved::of(&packed).expect("some of it can be read");
    assert!(held(&saved) as u64 <= JOURNAL_BYTES && !saved.end_known);
    assert!(saved.lines.len() > 20 && saved.lines[0].as_deref() == Some(line.as_bytes()));
}

fn stored(files: &[(&str, &[u8])]) -> Vec<u8> {
    let mut zip = ZipWriter::new(Cursor::new(Vec::new()));
    let plain = SimpleFileOptions::default().compression_method(zip::CompressionMethod::Stored);
    for (name, bytes) in files {
        zip.start_file(*name, plain).expect("started");
        zip.write_all(bytes).expect("written");
    }
    zip.finish().expect("finished").into_inner()
}

/// Heads of files one after another, each of which says that all the rest is its picture.
#[test]
fn heads_that_all_hold_the_rest_are_not_all_read() {
    let heads = 30_000;
    let length = heads * 34;
    let head = |at: usize| {
        let mut head = [0; 34];
        head[..4].copy_from_slice(b"PK\x03\x04");
        head[18..22].copy_from_slice(&((length - (at + 1) * 34) as u32).to_le_bytes());
        head[26] = 4;
        head
    };
    let mut packed: Vec<u8> = (0..heads).flat_map(head).collect();
    let picture = b"a leaf";
    let name = format!("pictures/{}", hash_of(picture));
    packed.splice(0..0, stored(&[(&name, picture)]));
    let begun = std::time::Instant::now();
    let saved = Saved::of(&packed).expect("the picture can be read");
    assert_eq!(saved.pictures.len(), 1);
    let took = begun.elapsed();
    assert!(took.as_secs() < 10, "{took:?} for {} bytes", packed.len());
}

#[test]
fn what_is_no_bundle_is_refused() {
    assert_eq!(Bundle::unpack(b"kind,edge"), Err(BundleError::NotABundle));
    assert_eq!(Bundle::unpack(&zip(&[("notes.txt", b"x")])), Err(BundleError::NotABundle));
    let packed = bundle().pack().expect("it is small");
    assert!(Bundle::unpack(&packed[..packed.len() / 2]).is_err());
    let wrong = format!("pictures/{}", hash_of(b"another"));
    let changed = zip(&[("journal.jsonl", b"{}"), (&wrong, b"picture")]);
    assert_eq!(Bundle::unpack(&changed), Err(BundleError::Damaged));
}

#[test]
fn a_trap_does_not_unpack() {
    let picture = vec![0; 33 << 20];
    let name = format!("pictures/{}", hash_of(&picture));
    let bomb = zip(&[("journal.jsonl", b"{}"), (&name, &picture)]);
    assert!(bomb.len() < 1 << 20, "it is small until it is unpacked");
    assert_eq!(Bundle::unpack(&bomb), Err(BundleError::TooLarge));
    let outside = zip(&[("journal.jsonl", b"{}"), ("pictures/../../etc/passwd", b"x")]);
    let bundle = Bundle::unpack(&outside).expect("the journal is there");
    assert!(bundle.pictures.is_empty(), "what is no picture is passed over");
}

#[test]
fn what_would_not_come_out_again_is_not_packed() {
    let picture = vec![0; 33 << 20];
    let pictures = [(hash_of(&picture), picture)].into();
    let large = Bundle { pictures, ..bundle() };
    assert_eq!(large.pack(), Err(BundleError::TooLarge));
}
