//! Cards to sort: which picture, where the name is, and that a back is behind its front.

use spinney_press::sheet::{Page, Placed, Role, What};
use spinney_press::{Booklet, Paper, Stamp, cards_to_sort};

use crate::hedge::hedge_walk;
use crate::measured;

/// The middle of a text on a page, in mm.
fn middle(page: &Page, words: &str) -> Option<(f64, f64)> {
    let is = |placed: &&Placed| match &placed.what {
        What::Text(block) => block.words().trim() == words,
        _ => false,
    };
    let placed = page.placed();
    let found = placed.into_iter().find(is)?.rect;
    Some((found.x + found.w / 2.0, found.y + found.h / 2.0))
}

/// The card of a page in which a place is: column, row.
fn card(page: &Page, (x, y): (f64, f64)) -> (usize, usize) {
    let (w, h) = ((page.width - 24.0) / 2.0, (page.height - 24.0 - 25.0) / 4.0);
    (((x - 12.0) / w) as usize, ((y - 25.0) / h) as usize)
}

#[test]
fn twelve_kinds_are_two_pages_of_eight_cards_and_each_name_is_on_one_of_them() {
    let walked = hedge_walk();
    for paper in [Paper::A4, Paper::Letter] {
        let sheet = cards_to_sort::sheet(&walked.booklet(Stamp::None), paper);
        assert_eq!(sheet.pages.len(), 2);
        let mut cards = Vec::new();
        for (at, page) in sheet.pages.iter().enumerate() {
            for taxon in walked.matrix.taxa() {
                cards.extend(middle(page, &taxon.name).map(|place| (at, card(page, place))));
            }
        }
        assert_eq!(cards.len(), 12);
        let expected = (0..12).map(|at| (at / 8, (at % 2, at % 8 / 2)));
        assert_eq!(cards, expected.collect::<Vec<_>>(), "in the order of the table");
    }
}

/// Turned along its long edge, what is so far from the left on one side of the paper is as far
/// from the right on the other.
#[test]
fn printed_on_both_sides_each_name_is_behind_its_picture() {
    let walked = measured::walk();
    let drawings = measured::drawings();
    let booklet = measured::booklet(&walked, &drawings);
    let named = cards_to_sort::sheet(&booklet, Paper::A4);
    for paper in [Paper::A4, Paper::Letter] {
        let sheet = cards_to_sort::with_backs(&booklet, paper);
        assert_eq!(sheet.pages.len(), 2 * named.pages.len());
        let mut behind = 0;
        for sides in sheet.pages.chunks(2) {
            for taxon in walked.matrix.taxa() {
                assert_eq!(middle(&sides[0], &taxon.name), None, "no name in front");
                let Some((x, y)) = middle(&sides[1], &taxon.name) else { continue };
                let shows = format!("of {}", taxon.name);
                let shown = sides[0].placed().into_iter().find(|placed| match &placed.role {
                    Role::Figure(words) => words.contains(&shows),
                    _ => false,
                });
                let Some(shown) = shown else { continue };
                let front = (shown.rect.x + shown.rect.w / 2.0, shown.rect.y);
                assert!((front.0 + x - sides[0].width).abs() < 0.01, "{}", taxon.name);
                assert_eq!(card(&sides[0], front).1, card(&sides[1], (x, y)).1);
                behind += 1;
            }
        }
        // Hazel and rowan have pictures, nine kinds a drawing, one of them both.
        assert_eq!(behind, 9, "{paper:?}");
    }
}

#[test]
fn a_card_with_a_number_gives_nothing_away_and_the_adult_has_the_list() {
    let walked = measured::walk();
    let drawings = measured::drawings();
    let booklet = measured::booklet(&walked, &drawings);
    let sheet = cards_to_sort::with_numbers(&booklet, Paper::A4);
    let (cards, answers) = sheet.pages.split_at(2);
    let mut drawn = 0;
    for page in cards {
        for taxon in walked.matrix.taxa() {
            assert!(!page.words().contains(&taxon.name), "{}", taxon.name);
            for placed in page.placed() {
                let Role::Figure(words) = &placed.role else { continue };
                assert!(!words.contains(&taxon.name), "{words}");
            }
        }
        let figure = |placed: &&Placed| matches!(placed.role, Role::Figure(_));
        drawn += page.placed().iter().filter(|placed| figure(placed)).count();
    }
    // Of nine drawings one has a picture instead, two are alike, and one picture is damaged.
    assert_eq!(drawn, 7, "two that are drawn alike are not drawn");
    let words = answers.iter().map(Page::words).collect::<String>();
    for (taxon, number) in walked.matrix.taxa().iter().zip(1..) {
        let row = format!("\n{number}\n{}\n", taxon.name);
        assert!(words.contains(&row), "{row} in {words}");
    }
}

#[test]
fn without_kinds_there_are_no_cards() {
    let walked = crate::endless::walked(0, 1, 1, 0);
    let booklet: Booklet = walked.booklet(Stamp::None);
    assert!(!cards_to_sort::has_something(&booklet));
}
