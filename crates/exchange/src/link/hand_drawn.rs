//! For tests: a key as a group draws it, with planted faults, read and linked as one.

use spinney_model::{Code, Fact, OfLink, Place};

use super::hedge::table;
use super::links_file::meaning;
use super::{Links, link};
use crate::key_text;

/// Invented, with faults on purpose: see the names of the questions below.
const DRAWN: &str = "
Our hedge key (the Owls, October)

1. Is the leaf made of leaflets? Yes → 2, No → 3
2. Are there more than 4 leaflets? Yes → dog rose, No → bramble
3. Are the leaves in pairs on the twig? Yes → 4, No → 5
4. Has the leaf got lobes? Yes → field maple, No → dogwood
5. Is the edge prickly? Yes → holly, No → 6
6. Is the stalk 4 or 5 cm? Yes → lime, No → 7
7. Is it big? Yes → 8, No → go to 9
8. Is it hawthorn? Yes → hawthorn, No → ivy
10. Is the edge of the leaf jagged like a saw? Yes → Hasel, No → ivy
";

#[test]
fn a_hand_drawn_key_links_where_it_can_and_says_why_not_elsewhere() {
    let matrix = table();
    let mut read = key_text::read(DRAWN, &matrix, &Links::default());
    let places: Vec<_> = read.findings.iter().map(|f| (f.code, f.place.clone())).collect();
    assert_eq!(places, [(Code::NameNotSure, Place::Couplet(10))]);
    let report = link(&mut read.key, &matrix, &Links::default());
    let found: Vec<Option<String>> = read
        .key
        .couplets
        .iter()
        .map(|couplet| couplet.ask.as_ref().map(|ask| meaning(ask, &matrix)))
        .collect();
    let wanted = [
        Some("form = feather or hand"),
        Some("number of leaflets >= 5"),
        Some("place on the twig = opposite"),
        Some("lobes = lobed"),
        Some("edge = spiny"),
        None,
        None,
        None,
        Some("edge = toothed"),
    ];
    assert_eq!(found, wanted.map(|line| line.map(str::to_owned)));
    assert_eq!((report.linked, report.of), (6, 9));
    let why = |question| {
        let mut found = report.findings.iter();
        found.find(|found| found.place == Place::Couplet(question)).map(|found| &found.fact)
    };
    assert!(matches!(why(6), Some(Fact::Link(OfLink::OneOfTwoNumbers { .. }))), "{:?}", why(6));
    let big = |word: &str| word == "big";
    assert!(
        matches!(why(7), Some(Fact::Link(OfLink::NoMeasure { word, .. })) if big(word)),
        "{:?}",
        why(7)
    );
    assert!(matches!(why(8), Some(Fact::Link(OfLink::NamesAKind { .. }))), "{:?}", why(8));
}

#[test]
fn a_links_file_settles_what_was_open_and_wrong_numbers_are_named() {
    let matrix = table();
    let text = "question 6: stalk length >= 25 mm\nquestion 7: nothing in the table\n\
        question 12: edge = smooth\nname Hasel = hazel\n";
    let (links, findings) = Links::read(text, &matrix);
    assert_eq!(findings, []);
    let mut read = key_text::read(DRAWN, &matrix, &links);
    assert_eq!(read.findings, []);
    let report = link(&mut read.key, &matrix, &links);
    assert_eq!((report.linked, report.of), (7, 9));
    let places: Vec<_> = report.findings.iter().map(|f| (f.code, f.place.clone())).collect();
    let wanted =
        [(Code::NotLinked, Place::Couplet(8)), (Code::LinksNotUnderstood, Place::Couplet(12))];
    assert_eq!(places, wanted);
    let own = Links::of(&read.key);
    assert_eq!(own.numbers().collect::<Vec<_>>(), [1, 2, 3, 4, 5, 6, 10]);
}
