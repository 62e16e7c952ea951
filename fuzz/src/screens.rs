//! Readers that need the screens or the press: pictures, forms, and lines that a desk replays.
//!
//! As in `readers`: one function each, from bytes that anybody may have written to nothing.

use std::sync::OnceLock;

use spinney_desk::{Desk, Reply, Request};
use spinney_exchange::journal;
use spinney_press::picture;

use crate::{readers, scenery};

/// The readers of what the screens and the press take.
pub(crate) const READERS: &[readers::Reader] =
    &[("picture", 2_000, picture), ("replay", 4_000, replay), ("form", 2_000, form)];

/// What is kept of a picture is a picture, as upright and as large as it was.
fn picture(bytes: &[u8]) {
    let Ok(kept) = picture::packed_anew(bytes, 1600) else { return };
    let kept = kept.into_bytes();
    let again = picture::packed_anew(&kept, 1600);
    assert!(again.is_ok(), "what we pack is a picture");
    picture::for_a_phone(&kept, 60_000).expect("what we pack is a picture");
}

/// A collection with these lines, those that are no lines left out, and its pages.
fn replay(bytes: &[u8]) {
    let lines = bytes.split(|byte| *byte == b'\n').filter(|line| journal::read(line).is_ok());
    let lines: Vec<&[u8]> = lines.collect();
    if lines.is_empty() {
        return;
    }
    let mut desk = Desk::open(lines).expect("each line was read before");
    for path in ["/finds", "/table", "/heaps", "/key"] {
        desk.handle(&Request::get(path));
    }
}

fn form(bytes: &[u8]) {
    kept(bytes);
}

/// How many forms of an input changed a collection with the hedge walk in it.
///
/// The first line is the address, the rest the fields of a form; without a second line a page is
/// asked for. Each further part is one more form at the same desk, four at most.
pub(crate) fn kept(bytes: &[u8]) -> usize {
    let mut kept = 0;
    static LINES: OnceLock<Vec<Vec<u8>>> = OnceLock::new();
    let lines = LINES.get_or_init(|| {
        Desk::lines_of_table(&scenery::sheets(), 1).expect("the demo's table is taken in")
    });
    let lines = lines.iter().map(Vec::as_slice);
    let mut desk = Desk::open(lines).expect("lines that a desk gave are read again");
    for part in readers::parts(bytes).into_iter().take(4) {
        let mut rows = part.splitn(2, |byte| *byte == b'\n');
        let address = String::from_utf8_lossy(rows.next().unwrap_or_default()).into_owned();
        let mut request = Request::get(&address);
        if let Some(fields) = rows.next() {
            let shown = Request::get(&format!("?{}", String::from_utf8_lossy(fields)));
            request = Request { form: shown.query, ..Request::post(&address, &[]) };
            // Else every form would be refused at the door: it was filled in on a page of now.
            request.form.push(("head".to_owned(), desk.mark()));
        }
        if let Reply::Keep { lines, then, .. } = desk.handle(&request) {
            desk.catch_up(lines.iter().map(Vec::as_slice)).expect("a desk reads its own lines");
            kept += 1;
            if let Some(location) = then.location {
                desk.handle(&Request::get(&location));
            }
        }
    }
    kept
}
