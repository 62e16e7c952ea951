//! The visit sheet and the lessons: what stands on them, and how many there are.

use spinney_model::{Couplet, Destination, Scene, Wording};
use spinney_press::copies::Class;
use spinney_press::sheet::{Page, Sheet, What};
use spinney_press::{Booklet, Paper, Stamp, lessons, today, visit};

use crate::hedge::{Walked, hedge_walk, matrix, scene};

fn class_of(children: u16, groups: u16) -> Walked {
    let walked = hedge_walk();
    let scene = Scene { children: Some(children), groups: Some(groups), ..scene() };
    Walked { matrix: matrix(walked.matrix.taxa().to_vec(), scene), ..walked }
}

/// The pages whose first line begins so.
fn pages<'s>(sheet: &'s Sheet, name: &str) -> Vec<&'s Page> {
    sheet.pages.iter().filter(|page| page.words().starts_with(name)).collect()
}

#[test]
fn the_visit_is_one_page_with_every_caution_and_each_advice_has_its_source() {
    for paper in [Paper::A4, Paper::Letter] {
        let walked = hedge_walk();
        let sheet = visit::sheet(&walked.booklet(Stamp::None), paper);
        let page = pages(&sheet, "The visit");
        // Letter is 18 mm shorter.
        assert!(page.len() <= if paper == Paper::A4 { 1 } else { 2 }, "{paper:?}");
        let words: String = page.iter().map(|page| page.words()).collect();
        for taxon in walked.matrix.taxa() {
            if let Some(caution) = &taxon.caution {
                assert!(words.contains(&format!("{}: {caution}", taxon.name)), "{words}");
            }
        }
        for said in
            ["Wash your hands before lunch.", "Ask the land's owner.", "Look for ticks."]
        {
            assert!(words.contains(said), "{said}");
        }
        // Nine pieces of advice: beside each stands the number of a document, or that none is.
        let marks = ["[1]", "[2]", "[3]", "[4]", "[5]", "[6]", "[–]"];
        let beside: Vec<&str> = words.lines().filter(|line| marks.contains(line)).collect();
        assert_eq!(beside.len(), 9, "{beside:?}");
        let documents = words.lines().find(|line| line.starts_with("[1] ")).expect("documents");
        for mark in marks {
            assert!(beside.contains(&mark), "{mark} is used");
            assert!(documents.contains(mark), "{mark} is explained");
        }
        assert!(!documents.contains('…'), "{documents}");
    }
}

#[test]
fn a_ruler_is_taken_along_only_where_the_key_asks_for_one() {
    let walked = hedge_walk();
    let words = |booklet: &Booklet<'_>| visit::sheet(booklet, Paper::A4).pages[0].words();
    assert!(!words(&walked.booklet(Stamp::None)).contains("a ruler"));
    let mut characters = walked.matrix.characters().to_vec();
    characters[0].instrument = spinney_model::Instrument::Ruler;
    let taxa = walked.matrix.taxa().to_vec();
    let rows = taxa.iter().map(|_| vec![spinney_model::Value::Unknown.into()]).collect();
    let matrix = spinney_model::Matrix::new(scene(), taxa, characters, rows).unwrap();
    let booklet = Booklet { matrix: &matrix, ..walked.booklet(Stamp::None) };
    assert!(words(&booklet).contains("a ruler. The key asks for lengths."));
}

#[test]
fn seven_groups_have_seven_cards_for_adults_and_seven_slips() {
    let walked = class_of(28, 7);
    let booklet = walked.booklet(Stamp::None);
    let count = |sheet: &Sheet, words: &str| -> usize {
        sheet.pages.iter().map(|page| page.words().matches(words).count()).sum()
    };
    let visit = visit::sheet(&booklet, Paper::A4);
    assert_eq!(count(&visit, "For the adult with a group"), 7);
    assert_eq!(pages(&visit, "For the adult with a group").len(), 4);
    let lessons = lessons::sheet(&booklet, Paper::A4);
    assert_eq!(count(&lessons, "We may have found a newcomer"), 7);
    let first = today::sheet(&booklet, Paper::A4).pages[0].words();
    assert!(first.contains("To cut out: Cards and numbers."), "{first}");
    let usual = hedge_walk();
    let usual = visit::sheet(&usual.booklet(Stamp::None), Paper::A4);
    assert_eq!(count(&usual, "For the adult with a group"), Class::USUAL.groups);
}

/// How many pages of everything for today begin so.
fn of_today(walked: &Walked, name: &str) -> usize {
    pages(&today::sheet(&walked.booklet(Stamp::None), Paper::A4), name).len()
}

/// Half a page is left behind the seventh card, and none behind the eighth.
#[test]
fn number_labels_are_cut_from_what_the_adults_cards_leave() {
    for (groups, own) in [(7, 0), (8, 1)] {
        let walked = class_of(28, groups);
        assert_eq!(of_today(&walked, "Number labels"), own, "{groups} groups");
        let sheet = today::sheet(&walked.booklet(Stamp::None), Paper::A4);
        let placed = sheet.pages.iter().flat_map(Page::placed);
        let numbers: Vec<_> = placed
            .filter_map(|thing| match &thing.what {
                What::Text(block) if block.smallest() > 40.0 => {
                    Some((block.words().trim().to_owned(), thing.rect))
                }
                _ => None,
            })
            .collect();
        let said: Vec<String> = numbers.iter().map(|(number, _)| number.clone()).collect();
        let wanted: Vec<String> = (1..=12).map(|number| number.to_string()).collect();
        assert_eq!(said, wanted);
        let rows = [numbers[0].1.y, numbers[4].1.y];
        assert!(rows[1] - rows[0] >= 34.0, "low labels: {rows:?}");
    }
}

/// Cautions for a second page leave room on it: there the answers stand, with the key's standing,
/// and no page is printed for them alone. Where the visit is one page they have their own.
#[test]
fn answers_stand_on_the_visits_second_page_where_there_is_one() {
    let mut walked = class_of(28, 7);
    assert_eq!([of_today(&walked, "The visit"), of_today(&walked, "Answers, for")], [1, 1]);
    let before_you_go = vec!["Ask the land's owner, and walk the path once.".to_owned(); 12];
    let scene = Scene { before_you_go, ..walked.matrix.scene().clone() };
    walked.matrix = matrix(walked.matrix.taxa().to_vec(), scene);
    assert_eq!([of_today(&walked, "The visit"), of_today(&walked, "Answers, for")], [2, 0]);
    for (stamp, standing) in [
        (Stamp::None, None),
        (Stamp::TryingOut, Some("trying-out copy")),
        (Stamp::Draft, Some("DRAFT")),
    ] {
        let sheet = today::sheet(&walked.booklet(stamp), Paper::A4);
        let words: Vec<String> = sheet.pages[1..].iter().map(Page::words).collect();
        let visit: Vec<_> = words.iter().filter(|words| words.contains("The visit")).collect();
        assert_eq!(visit.len(), 2, "{stamp:?}");
        // Whatever shows the key's ways says how it stands, on every page.
        let all = ["trying-out copy", "DRAFT"];
        for words in &visit {
            for one in all {
                let said = words.to_lowercase().contains(&one.to_lowercase());
                assert_eq!(said, standing == Some(one), "{stamp:?}: {words}");
            }
        }
        let (_, answers) = visit[1].split_once("Answers, for the adult").expect("the answers");
        for taxon in walked.matrix.taxa() {
            assert!(answers.lines().any(|line| line == taxon.name), "{}", taxon.name);
        }
    }
}

#[test]
fn each_child_has_a_row_and_no_name() {
    let walked = class_of(26, 7);
    let sheet = lessons::sheet(&walked.booklet(Stamp::None), Paper::A4);
    let page = pages(&sheet, "What a child can do now");
    assert_eq!(page.len(), 1);
    let words = page[0].words();
    let numbers: Vec<u32> = words.lines().filter_map(|line| line.parse().ok()).collect();
    assert_eq!(numbers, (1..=26).collect::<Vec<_>>());
    assert!(words.contains("write no name"));
}

#[test]
fn a_key_half_done_names_the_kinds_that_have_no_place_and_shows_none_of_them() {
    let walked = hedge_walk();
    let sheet = lessons::sheet(&walked.booklet(Stamp::None), Paper::A4);
    let half = pages(&sheet, "A key half done");
    let words: String = half.iter().map(|page| page.words()).collect();
    let (_, named) = words.split_once("missing questions: ").expect("what is to be done");
    let (named, _) = named.split_once('.').unwrap();
    let named: Vec<&str> = named.split(", ").collect();
    assert!(named.len() >= 4, "{named:?}");
    let lines: Vec<&str> = words.lines().collect();
    let again: Vec<_> = named.iter().filter(|name| lines.contains(name)).collect();
    // Ivy comes out twice: one of its two ends stays.
    assert!(again.iter().all(|name| **name == "ivy"), "{again:?}");
    assert!(words.contains("Write the question here:") && words.contains("Where to?"));
    assert!(words.find("Before you touch anything") < words.find("Questions"));
}

#[test]
fn the_key_with_three_faults_says_what_it_is_and_its_answers_are_apart() {
    let walked = hedge_walk();
    let sheet = lessons::sheet(&walked.booklet(Stamp::Draft), Paper::A4);
    let key = pages(&sheet, "A key with three faults");
    assert!(!key.is_empty());
    assert!(key[0].words().contains("Do not use this key outdoors."));
    let words: String = key.iter().map(|page| page.words()).collect();
    assert!(words.contains("go to 14"), "{words}");
    assert!(!words.contains("there is no"), "the key tells its own fault");
    let answers = pages(&sheet, "Three faults: the answers");
    assert_eq!(answers.len(), 1);
    let words = answers[0].words();
    for fault in ["yes and no are changed over", "comes out nowhere else", "there is no "] {
        assert!(words.contains(fault), "{fault}: {words}");
    }
    // A key of three questions has no room for faults.
    let mut small = hedge_walk();
    small.key.couplets.truncate(3);
    let sheet = lessons::sheet(&small.booklet(Stamp::None), Paper::A4);
    assert!(pages(&sheet, "A key with three faults").is_empty());
    assert!(pages(&sheet, "Three faults").is_empty());
}

/// Nothing of the booklet is changed by a lesson.
#[test]
fn the_lessons_leave_the_key_as_it_is() {
    let walked = hedge_walk();
    let before = walked.key.clone();
    lessons::sheet(&walked.booklet(Stamp::None), Paper::A4);
    assert_eq!(walked.key, before);
    let whole = |couplet: &Couplet| {
        couplet.yes != Destination::Missing
            && matches!(&couplet.wording, Wording::Question(text) if !text.is_empty())
    };
    assert!(walked.key.couplets.iter().all(whole));
}

/// Cards that are cut from a page do not reach over the line.
#[test]
fn a_card_stays_between_its_lines() {
    let walked = class_of(28, 7);
    for sheet in [
        visit::sheet(&walked.booklet(Stamp::None), Paper::Letter),
        lessons::sheet(&walked.booklet(Stamp::None), Paper::Letter),
    ] {
        let down = 2.0;
        let cards = sheet.pages.iter().filter(|page| {
            let words = page.words();
            words.starts_with("For the adult with") || words.starts_with("We may have")
        });
        for page in cards {
            let high = (page.height - 12.0 - 8.0 - 2.0 - 15.0) / down;
            for thing in page.placed() {
                let What::Text(_) = &thing.what else { continue };
                let (top, foot) = (thing.rect.y - 15.0, thing.rect.y + thing.rect.h - 15.0);
                if foot > high * down {
                    continue;
                }
                assert_eq!((top / high).floor(), (foot / high).floor(), "{top} to {foot}");
            }
        }
    }
}
