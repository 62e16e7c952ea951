//! Pictures from elsewhere are pixels alone, and every line that named one names it still.

use std::collections::BTreeMap;

use spinney_exchange::journal;
use spinney_fixtures::photographs::{PHOTOGRAPH, tales_in, telling_jpeg};
use spinney_model::{Done, Edit, Entry, KindEdit, KindId};

use super::unpacked;
use crate::desk::Desk;
use crate::pictures::{self, name};

fn line(done: Done) -> Vec<u8> {
    journal::write(&Entry { at: 7, done })
}

#[test]
fn lines_name_the_pictures_as_they_are_then() {
    let taken = telling_jpeg(PHOTOGRAPH, 6);
    assert!(!tales_in(&taken).is_empty());
    let drawn = pictures::written_anew(&taken).expect("it is a picture");
    let hash = name(&taken);
    let given = BTreeMap::from([(hash.clone(), taken), ("ab".repeat(32), b"none".to_vec())]);
    let kind = KindId(1);
    // Written by hand, with a blank that no program of ours writes: it must stay.
    let by_hand = br#"{"v":1, "at":0,"undo":true}"#.to_vec();
    let lines = vec![
        line(Done::Edits(vec![
            Edit::Kind(kind, KindEdit::Add("yew".to_owned())),
            Edit::Kind(kind, KindEdit::AddPicture(hash.clone())),
            Edit::Kind(kind, KindEdit::AddPicture("ab".repeat(32))),
            Edit::Kind(kind, KindEdit::AddPicture("cd".repeat(32))),
        ])),
        line(Done::Edits(vec![Edit::Kind(kind, KindEdit::RemovePicture(hash.clone()))])),
        by_hand.clone(),
    ];
    let kept = unpacked(lines, given).expect("our own lines");
    assert_eq!((kept.pictures.as_slice(), kept.lost), (&[drawn.clone()][..], 1));
    assert_eq!(tales_in(&kept.pictures[0]), Vec::<&str>::new());
    assert_eq!(kept.lines[2], by_hand);
    for line in &kept.lines {
        let line = String::from_utf8_lossy(line);
        assert!(!line.contains(&hash), "the old name is gone");
    }
    let desk = Desk::open(kept.lines.iter().map(Vec::as_slice)).expect("they can be read");
    let expected = [name(&drawn), "ab".repeat(32), "cd".repeat(32)];
    assert_eq!(desk.history.now.kinds[&kind].pictures, expected);
    let desk = Desk::open(kept.lines[..2].iter().map(Vec::as_slice)).expect("they can be read");
    assert_eq!(
        desk.history.now.kinds[&kind].pictures,
        expected[1..],
        "taken away under its name"
    );
}

#[test]
fn a_line_that_cannot_be_read_is_said() {
    let newer = vec![br#"{"v":99,"at":0,"sketch":1}"#.to_vec()];
    assert_eq!(unpacked(newer, BTreeMap::new()), Err(journal::LineError::Newer(99)));
}
