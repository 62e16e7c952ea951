//! A small file as the library lays it out, packed, and its objects found again.

use std::io::Read;

use flate2::read::ZlibDecoder;

use super::packed;

/// A file as the library lays it out: a page without anything, and a stream.
fn file(trailer: &str) -> Vec<u8> {
    let mut file = b"%PDF-1.7\n%\x80\x80\x80\x80\n\n".to_vec();
    let bodies = [
        "<</Type/Catalog/Pages 2 0 R>>",
        "<</Type/Pages/Kids[]/Count 0>>",
        "<</Length 3>>\nstream\nq Q\nendstream",
        "(endobj)",
    ];
    let mut table = format!("xref\n0 {}\n0000000000 65535 f\r\n", bodies.len() + 1);
    for (body, number) in bodies.iter().zip(1..) {
        table += &format!("{:010} 00000 n\r\n", file.len());
        file.extend(format!("{number} 0 obj\n{body}\nendobj\n\n").bytes());
    }
    let start = file.len();
    file.extend(format!("{table}{trailer}startxref\n{start}\n%%EOF").bytes());
    file
}

#[test]
fn what_is_told_about_the_pages_is_packed_and_every_object_is_found() {
    let given = file("trailer\n<</Size 5/Root 1 0 R/ID[(a)(b)]>>\n");
    let made = packed(given);
    assert!(made.starts_with(b"%PDF-1.7\n%\x80\x80\x80\x80\n"));
    let text = String::from_utf8_lossy(&made).into_owned();
    assert!(
        text.contains("3 0 obj\n<</Length 3>>\nstream\nq Q\nendstream\nendobj\n"),
        "{text}"
    );
    assert!(!text.contains("/Catalog"), "{text}");
    assert!(text.contains("/Type/XRef/W[1 4 2]/Size 7/Root 1 0 R/ID[(a)(b)]"), "{text}");
    let unpacked = |after: &str| {
        let at = made.windows(after.len()).position(|it| it == after.as_bytes()).unwrap();
        let start = made[at..].windows(7).position(|it| it == b"stream\n").unwrap() + at + 7;
        let mut bytes = Vec::new();
        ZlibDecoder::new(&made[start..]).read_to_end(&mut bytes).unwrap();
        bytes
    };
    let objects = unpacked("/Type/ObjStm/N 3/First 14");
    assert_eq!(
        String::from_utf8(objects).unwrap(),
        "1 0 2 30 4 61 <</Type/Catalog/Pages 2 0 R>>\n<</Type/Pages/Kids[]/Count 0>>\n(endobj)\n"
    );
    let lines = unpacked("/Type/XRef");
    let lines: Vec<(u8, u32, u16)> = lines
        .chunks(7)
        .map(|line| {
            let place = u32::from_be_bytes(line[1..5].try_into().unwrap());
            (line[0], place, u16::from_be_bytes(line[5..].try_into().unwrap()))
        })
        .collect();
    assert_eq!(lines[0], (0, 0, u16::MAX));
    assert_eq!([lines[1], lines[2], lines[4]], [(2, 5, 0), (2, 5, 1), (2, 5, 2)]);
    for number in [3, 5, 6] {
        let (kind, place, _) = lines[number];
        assert_eq!(kind, 1);
        let begins = format!("{number} 0 obj\n");
        assert!(made[place as usize..].starts_with(begins.as_bytes()), "{number}");
    }
    assert!(text.ends_with(&format!("startxref\n{}\n%%EOF", lines[6].1)), "{text}");
}

#[test]
fn a_file_of_another_shape_stays_as_it_is() {
    for given in [b"".to_vec(), b"%PDF-1.7".to_vec(), file("trailer\n<</Root 1 0 R>>\n")] {
        assert_eq!(packed(given.clone()), given);
    }
}
