//! What is packed comes out again; what is no bundle, or a trap, is refused.

use std::io::{Cursor, Write};

use zip::ZipWriter;
use zip::write::SimpleFileOptions;

use super::{Bundle, BundleError, hash_of};

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
