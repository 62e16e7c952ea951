//! Names that somebody typed cannot end a header, and pictures are what they are.

use super::*;

#[test]
fn a_hostile_name_of_a_file_stays_one_header() {
    let name = "Heckenweg \"Süd\"\r\nSet-Cookie: a=b; ../../x.pdf";
    let header = to_keep(name);
    let text = header.to_str().expect("plain text");
    let (start, rest) = text.split_once("''").expect("an encoded name");
    assert_eq!(start, "attachment; filename*=UTF-8");
    assert!(rest.bytes().all(|b| b.is_ascii_alphanumeric() || b"%.-_".contains(&b)), "{text}");
    assert!(rest.starts_with("Heckenweg%20%22S%C3%BCd%22%0D%0A"), "{text}");
}

#[test]
fn an_address_keeps_its_shape_and_nothing_else() {
    assert_eq!(plain("/finds/3?a=b%20c#kind-3", b"/?&=#%"), "/finds/3?a=b%20c#kind-3");
    assert_eq!(plain("/x\r\ny é", b"/?&=#%"), "/x%0D%0Ay%20%C3%A9");
}

#[test]
fn a_picture_is_known_by_its_first_bytes() {
    assert_eq!(picture_kind(b"\x89PNG\r\n\x1a\n..."), "image/png");
    assert_eq!(picture_kind(b"\xff\xd8\xff\xe0"), "image/jpeg");
    assert_eq!(picture_kind(b"<svg onload=alert(1)>"), "application/octet-stream");
}
