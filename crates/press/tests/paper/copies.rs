//! How many of what: as many pieces as there are kinds, and not one more.

use spinney_model::{Matrix, Scene, Taxon};
use spinney_press::copies::{Class, For};
use spinney_press::sheet::What;
use spinney_press::sheet::ink::{Ink, Inks};
use spinney_press::sheet::picture::Packed;
use spinney_press::sheets::{Printing, SHEETS};
use spinney_press::{Booklet, Drawn, Paper, Stamp, key_pages, short_key, today, try_out};

use crate::boxes::covered;
use crate::hedge::{Walked, hedge_walk, matrix, scene};
use crate::words_to_look_at::word;

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

/// Everybody has what they need, and nobody prints more than half of what was printed before
/// copies were counted: 83 sheets (docs/measurements.md).
#[test]
fn a_class_of_28_with_twelve_kinds_takes_half_the_paper() {
    let mut walked = hedge_walk();
    let scene = Scene { children: Some(28), groups: Some(7), ..scene() };
    walked.matrix = matrix(walked.matrix.taxa().to_vec(), scene);
    // The words hang on the wall.
    let drawn = Drawn { word, ..Drawn::NOTHING };
    let booklet = Booklet { drawn, ..walked.booklet(Stamp::None) };
    let words = today::sheet(&booklet, Paper::A4).pages[0].words();
    assert!(words.contains("Counted for 28 children in 7 groups"), "{words}");
    let sheets = words.lines().find(|line| line.contains("sheets of paper in all")).unwrap();
    let sheets: usize = sheets.split(' ').next().unwrap().parse().unwrap();
    assert!((20..=41).contains(&sheets), "{sheets} sheets");
}

#[test]
fn the_short_key_asks_every_question_and_names_every_kind_on_fewer_pages() {
    let walked = hedge_walk();
    for paper in [Paper::A4, Paper::Letter] {
        let long = key_pages::sheet(&walked.booklet(Stamp::None), paper);
        let short = short_key::sheet(&walked.booklet(Stamp::None), paper);
        assert!(short.pages.len() + 2 <= long.pages.len(), "{}", short.pages.len());
        let words: String = short.pages.iter().map(|page| page.words()).collect();
        for couplet in &walked.key.couplets {
            let question = couplet.wording.first();
            assert!(words.contains(question), "{question}");
        }
        for taxon in walked.matrix.taxa() {
            let sentence = taxon.confirming.as_ref().unwrap();
            assert!(words.contains(sentence.as_str()), "{}", taxon.name);
            let caution = taxon.caution.iter().all(|text| words.contains(text.as_str()));
            assert!(caution, "{} may hurt", taxon.name);
        }
        let first = short.pages[0].words();
        let [before, asked] = ["Before you touch anything", "Questions"]
            .map(|heading| first.find(heading).unwrap_or_else(|| panic!("no {heading}")));
        assert!(before < asked, "cautions come before the first question");
    }
}

/// Where the words hang on the wall a group carries two pages, and is told where to look.
#[test]
fn the_key_of_a_group_leaves_its_words_to_the_wall() {
    let walked = hedge_walk();
    let drawn = Drawn { word, ..Drawn::NOTHING };
    let booklet = Booklet { drawn, ..walked.booklet(Stamp::None) };
    let sheet = today::sheet(&booklet, Paper::A4);
    let key = sheet.pages.iter().filter(|page| page.words().starts_with("Key"));
    let words: Vec<String> = key.map(|page| page.words()).collect();
    assert_eq!(words.len(), 2);
    assert!(words[0].contains("Look at “Words to look at” on the wall, or ask."));
    assert!(!words.concat().contains("Words in this key"));
    assert_eq!(short_key::sheet(&booklet, Paper::A4).pages.len(), 3, "alone it has them");
}

/// In black no ground is printed, nothing has a colour, and every box stays where it is.
#[test]
fn a_sheet_that_saves_ink_is_grey_and_has_no_ground() {
    let walked = hedge_walk();
    let booklet = walked.booklet(Stamp::Draft);
    let grey = |ink: Ink| {
        let (red, green, blue) = ink.rgb();
        red == green && green == blue
    };
    let mut dark = 0.0;
    for kind in &SHEETS {
        // The key for the pocket is really there, and not the sentence that it is too long.
        assert_eq!(kind.not_printed(&booklet, Printing::USUAL), None, "{}", kind.name);
        let coloured = kind.printed(&booklet, Printing::USUAL);
        let black = kind.printed(&booklet, Printing { inks: Inks::Black, ..Printing::USUAL });
        for (page, was) in black.pages.iter().zip(&coloured.pages) {
            assert_eq!(page.words(), was.words());
            for (thing, was) in page.placed().into_iter().zip(was.placed()) {
                assert_eq!(thing.rect, was.rect);
                match &thing.what {
                    What::Text(block) => {
                        let parts = block.lines.iter().flat_map(|line| &line.parts);
                        for part in parts {
                            assert!(grey(part.style.ink), "{part:?}");
                            assert_ne!(part.style.ink, Ink::Paper, "white on white");
                        }
                    }
                    What::Path(path) => {
                        assert!(path.pen.is_none_or(|pen| grey(pen.ink)), "{path:?}");
                        let fill = path.fill.filter(|fill| *fill != Ink::Paper);
                        assert!(fill.is_none_or(grey), "{path:?}");
                        // The dots of the scale card and strip are found in a photograph by their ink.
                        let rings = ["scale-card", "scale-strip"].contains(&kind.name);
                        if fill.is_some() && !rings {
                            let covered = covered(thing);
                            dark = f64::max(dark, covered.w * covered.h);
                        }
                    }
                    What::Picture(pixels) => {
                        if let Packed::Rgb(rgb) = &pixels.packed {
                            assert!(rgb.chunks(3).all(|it| it[0] == it[1] && it[1] == it[2]));
                        }
                    }
                }
            }
        }
    }
    // The tips of arrows are what is still filled.
    assert!(dark < 20.0, "{dark} mm² are filled");
}
