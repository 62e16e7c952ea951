//! How many of what: as many pieces as there are kinds, and not one more.

use spinney_model::{Matrix, Taxon};
use spinney_press::copies::{Class, For};
use spinney_press::sheet::What;
use spinney_press::{Paper, Stamp, today, try_out};

use crate::hedge::{Walked, hedge_walk, matrix, scene};

/// The first so many kinds of the walk.
fn walk_of(kinds: usize) -> Walked {
    let walked = hedge_walk();
    let taxa: Vec<Taxon> = walked.matrix.taxa().iter().take(kinds).cloned().collect();
    let matrix: Matrix = matrix(taxa, scene());
    Walked { matrix, ..walked }
}

/// The numbers of the labels, by their size.
fn labels(walked: &Walked, paper: Paper) -> Vec<String> {
    let sheet = try_out::sheet(&walked.booklet(Stamp::None), paper);
    let placed = sheet.pages.iter().flat_map(|page| page.placed());
    let numbers = placed.filter_map(|thing| match &thing.what {
        What::Text(block) if block.smallest() > 40.0 => Some(block.words().trim().to_owned()),
        _ => None,
    });
    numbers.collect()
}

#[test]
fn nine_finds_have_nine_labels() {
    for paper in [Paper::A4, Paper::Letter] {
        for kinds in [1, 2, 3, 5, 9, 11, 12] {
            let wanted: Vec<String> = (1..=kinds).map(|number| number.to_string()).collect();
            assert_eq!(labels(&walk_of(kinds), paper), wanted, "{kinds} on {paper:?}");
        }
    }
}

#[test]
fn six_kinds_have_five_blank_questions() {
    for (kinds, questions) in [(2, 1), (6, 5), (12, 11)] {
        let walked = walk_of(kinds);
        let sheet = try_out::sheet(&walked.booklet(Stamp::None), Paper::A4);
        let from = sheet.pages.iter().map(|page| page.words().matches("(from ____)").count());
        assert_eq!(from.sum::<usize>(), questions, "{kinds} kinds");
    }
}

#[test]
fn a_list_to_try_a_key_has_a_row_for_every_find_and_a_box_for_every_kind() {
    let walked = hedge_walk();
    let sheet = try_out::set_sheet(&walked.booklet(Stamp::None), Paper::A4);
    let list: Vec<_> =
        sheet.pages.iter().filter(|page| page.words().contains("Trying out the key")).collect();
    assert_eq!(list.len(), 1, "one page holds twelve finds");
    let words = list[0].words();
    let lines: Vec<&str> = words.lines().collect();
    for number in 1..=12 {
        assert!(lines.contains(&number.to_string().as_str()), "{number}");
    }
    for taxon in walked.matrix.taxa() {
        assert!(lines.contains(&taxon.name.as_str()), "{}", taxon.name);
    }
}

/// The first page reckons with what the file holds: pages times copies, and itself.
#[test]
fn the_first_page_adds_up_its_own_rows() {
    let walked = hedge_walk();
    let sheet = today::sheet(&walked.booklet(Stamp::None), Paper::A4);
    let words = sheet.pages[0].words();
    let lines: Vec<&str> = words.lines().collect();
    let head = lines.iter().position(|line| *line == "Paper").unwrap();
    let (mut at, mut pages, mut paper) = (head + 1, 1, 1);
    while let [_, _, row @ ..] = &lines[at..]
        && let [Ok(of), Ok(copies), Ok(sheets)] =
            [row[0], row[1], row[2]].map(str::parse::<usize>)
    {
        assert_eq!(of * copies, sheets, "{}", lines[at]);
        let groups = For::EachGroup.count(Class::USUAL);
        assert!([1, groups].contains(&copies), "{}", lines[at]);
        (at, pages, paper) = (at + 5, pages + of, paper + sheets);
    }
    assert_eq!(pages, sheet.pages.len());
    assert!(words.contains(&format!("{paper} sheets of paper in all")), "{paper}: {words}");
    assert!(words.contains("Nobody said how many children come."));
}
