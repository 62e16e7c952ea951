//! Words as cards: eight to a page, each word once, nothing across a line to cut along.

use spinney_press::sheet::{Placed, Role, What};
use spinney_press::{Booklet, Drawn, Paper, Stamp, word_cards};
use spinney_voice::glossary;

use crate::hedge;
use crate::words_to_look_at::word;

fn heading(placed: &Placed) -> Option<String> {
    match (&placed.role, &placed.what) {
        (Role::Heading(2), What::Text(block)) => Some(block.words().trim().to_owned()),
        _ => None,
    }
}

#[test]
fn each_word_of_the_key_has_a_card_with_its_drawing_and_its_plain_words() {
    let walked = hedge::hedge_walk();
    let booklet =
        Booklet { drawn: Drawn { word, ..Drawn::NOTHING }, ..walked.booklet(Stamp::None) };
    assert!(word_cards::has_something(&booklet));
    for paper in [Paper::A4, Paper::Letter] {
        let sheet = word_cards::sheet(&booklet, paper);
        let words: Vec<String> =
            sheet.pages.iter().flat_map(|page| page.placed()).filter_map(heading).collect();
        assert_eq!(sheet.pages.len(), words.len().div_ceil(8), "{paper:?}");
        let mut once = words.clone();
        once.dedup();
        assert_eq!(once, words, "no word twice");
        assert!(words.contains(&"toothed".to_owned()), "{words:?}");
        for entry in glossary::all(booklet.tongue) {
            let here = words.contains(&entry.word);
            let page = sheet.pages.iter().any(|page| page.words().contains(&entry.plain));
            assert!(!here || page, "{}: its plain words", entry.word);
        }
        let figures: Vec<(&str, f64)> = sheet
            .pages
            .iter()
            .flat_map(|page| page.placed())
            .filter_map(|placed| match &placed.role {
                Role::Figure(words) => Some((words.as_str(), placed.rect.h)),
                _ => None,
            })
            .collect();
        let heard: Vec<&str> = figures.iter().map(|(words, _)| *words).collect();
        assert_eq!(heard, ["toothed", "not toothed: lobed like a feather"]);
        assert!(figures.iter().all(|(_, high)| *high >= 18.0), "{figures:?}");
        assert!(sheet.pages.iter().any(|page| page.words().contains("a word of our own")));
    }
}

/// The lines to cut along are the only ones that stand on a boundary of two cards.
#[test]
fn nothing_on_a_card_reaches_over_its_edge() {
    let walked = hedge::hedge_walk();
    let booklet =
        Booklet { drawn: Drawn { word, ..Drawn::NOTHING }, ..walked.booklet(Stamp::None) };
    for paper in [Paper::A4, Paper::Letter] {
        let (wide, _) = paper.size_mm();
        for page in &word_cards::sheet(&booklet, paper).pages {
            let placed = page.placed();
            let long = |placed: &&&Placed| {
                placed.role == Role::Decoration && placed.rect.w > wide - 30.0
            };
            let mut rows: Vec<f64> = placed.iter().filter(long).map(|one| one.rect.y).collect();
            rows.sort_by(f64::total_cmp);
            // The lowest is the rule above the foot of the page.
            let lines: Vec<f64> = rows.into_iter().rev().skip(1).take(5).collect();
            let (foot, head) = (lines[0], lines[4]);
            let step = (foot - head) / 4.0;
            assert!(step > 54.0, "{paper:?}: cards are {step} mm high");
            for one in &placed {
                let reads =
                    matches!(one.role, Role::Paragraph | Role::Heading(2) | Role::Figure(_));
                let (top, bottom) = (one.rect.y - head, one.rect.y + one.rect.h - head);
                if !reads || top < 0.0 || top > 4.0 * step {
                    continue;
                }
                let row = (top / step).floor();
                assert!(bottom <= (row + 1.0) * step, "{:?} over a row", one.rect);
                let (left, right) = (one.rect.x, one.rect.x + one.rect.w);
                let over = left < wide / 2.0 && right > wide / 2.0;
                assert!(!over, "{:?} over the middle", one.rect);
            }
        }
    }
}
