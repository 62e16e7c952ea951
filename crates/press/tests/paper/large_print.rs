//! Large print: what is read is 18 pt and more, no caption is under 14, and nothing is cut off,
//! lies over something else or breaks within a word.
//!
//! Sizes are read off the PDF by Poppler: it says how high a word is, and that grows with its
//! letters. How high letters of 100 pt are it is asked first.

use spinney_model::Taxon;
use spinney_press::sheet::face::{Faces, Weight};
use spinney_press::sheet::ink::Style;
use spinney_press::sheet::text::{Block, Run};
use spinney_press::sheet::{Page, Piece, Role, Sheet, What};
use spinney_press::sheets::{Printing, SHEETS};
use spinney_press::{Booklet, Drawn, Letters, Paper, Stamp, pdf, visit};
use spinney_voice::Tongue;

use crate::boxes::faults;
use crate::hedge::{Walked, hedge_walk, matrix, scene};
use crate::words::poppler;
use crate::{measured, words_to_look_at};

/// The least of what is read, and of captions, in points.
const READ: f64 = 18.0;
const CAPTION: f64 = 14.0;
/// Poppler rounds, and so do we.
const HAIR: f64 = 0.05;

/// Every sheet of which there is large print, in large print.
pub(crate) fn large(booklet: &Booklet) -> Vec<(String, Sheet)> {
    let mut sheets = Vec::new();
    let there = SHEETS.iter().filter(|kind| (kind.has_something)(booklet));
    for kind in there.filter(|kind| kind.not_large.is_none()) {
        let papers = [Paper::A4, Paper::Letter].into_iter();
        for paper in papers.chain(kind.large_too.then_some(Paper::A3)) {
            let wished = Printing { paper, letters: Letters::Large, ..Printing::USUAL };
            sheets.push((format!("{}-{paper:?}", kind.name), kind.printed(booklet, wished)));
        }
    }
    sheets
}

/// The pages of a sheet, without those that stay as they are: the adults' own.
fn pages<'s>(sheet: &'s Sheet, booklet: &Booklet) -> Vec<&'s Page> {
    let adults: Vec<String> = [Paper::A4, Paper::Letter]
        .into_iter()
        .flat_map(|paper| visit::sheet(booklet, paper).pages)
        .map(|page| page.words())
        .collect();
    let cover = booklet.tongue.say("sheet-today");
    let own = |words: String| adults.contains(&words) || words.starts_with(&cover);
    sheet.pages.iter().filter(|page| !own(page.words())).collect()
}

/// The words of each page of a PDF with their heights in points.
fn heights(name: &str, sheet: &Sheet) -> Vec<Vec<(String, f64)>> {
    let bytes = pdf::write(sheet).unwrap();
    let said = poppler("pdftotext", &["-bbox"], name, &bytes);
    let number = |line: &str, name: &str| -> f64 {
        let (_, rest) = line.split_once(&format!("{name}=\"")).unwrap();
        rest.split_once('"').unwrap().0.parse().unwrap()
    };
    let page = |page: &str| {
        let words = page.lines().filter(|line| line.trim_start().starts_with("<word "));
        let word = |line: &str| {
            let text = line.split_once('>').unwrap().1.split_once("</word>").unwrap().0;
            (text.to_owned(), number(line, "yMax") - number(line, "yMin"))
        };
        words.map(word).collect()
    };
    said.split("<page ").skip(1).map(page).collect()
}

/// How high a word is, as a part of the size of its letters.
fn high() -> f64 {
    let weights = [Weight::Regular, Weight::Bold].map(|weight| {
        let style = Style::new(weight, 100.0, 1.2);
        let block = Block::set(&Faces::new(), &[Run::new("word", style)], 190.0);
        let nodes = Piece::text(block, Role::Heading(1)).moved(10.0, 10.0).nodes;
        let page = Page { width: 210.0, height: 297.0, nodes };
        let sheet = Sheet { title: "Word".to_owned(), language: "en", pages: vec![page] };
        heights("large-high.pdf", &sheet)[0][0].1 / 100.0
    });
    assert!((weights[0] - weights[1]).abs() < 1.0e-3, "{weights:?}");
    weights[0]
}

/// Names and sentences as long as German ones are.
fn with_long_names() -> Walked {
    let names = [
        "Europäisches Pfaffenhütchen",
        "Zweigriffliger Weißdorn",
        "Gewöhnliche Rosskastanie",
        "Gewöhnliche Traubenkirsche",
        "Gemeiner Schneeball",
        "Schwarzer Holunder",
        "Ahornblättrige Platane",
        "Wolliger Schneeball",
        "Gewöhnliche Heckenkirsche",
        "Blutroter Hartriegel",
        "Gewöhnliche Waldrebe",
        "Brombeere",
    ];
    let walked = hedge_walk();
    let taxa = walked.matrix.taxa().iter().zip(names);
    let taxa: Vec<Taxon> =
        taxa.map(|(taxon, name)| Taxon { name: name.to_owned(), ..taxon.clone() }).collect();
    Walked { matrix: matrix(taxa, scene()), ..walked }
}

/// Something is done with the large sheets of several walks, in both languages.
fn each(mut look_at: impl FnMut(&str, &Booklet<'_>)) {
    let (hedge, long, measured) = (hedge_walk(), with_long_names(), measured::walk());
    let drawings = measured::drawings();
    for language in ["en", "de"] {
        let tongue = Tongue::for_person(&[language.to_owned()]);
        let drawn = Drawn { word: words_to_look_at::word, ..Drawn::NOTHING };
        let plain = Booklet { tongue, drawn, ..hedge.booklet(Stamp::TryingOut) };
        look_at(&format!("hedge-{language}"), &plain);
        let names = Booklet { tongue, drawn, ..long.booklet(Stamp::Draft) };
        look_at(&format!("long-{language}"), &names);
        let lengths = Booklet { tongue, ..measured::booklet(&measured, &drawings) };
        look_at(&format!("measured-{language}"), &lengths);
    }
}

#[test]
fn what_is_read_is_18_points_high_in_the_pdf_and_no_caption_is_under_14() {
    let (high, mut wrong) = (high(), Vec::new());
    each(|walk, booklet| {
        for (name, sheet) in large(booklet) {
            let kept = pages(&sheet, booklet);
            let whole = Sheet { pages: kept.into_iter().cloned().collect(), ..sheet };
            let file = format!("large-{walk}-{name}.pdf");
            let pages = heights(&file, &whole);
            assert_eq!(pages.len(), whole.pages.len());
            for (words, page) in pages.iter().zip(&whole.pages) {
                let small = page.placed().into_iter().filter_map(|placed| {
                    let What::Text(block) = &placed.what else { return None };
                    let small = matches!(placed.role, Role::Running | Role::Caption);
                    small.then(|| block.words())
                });
                let small: String = small.collect();
                assert!(!words.is_empty(), "{file} has an empty page");
                for (word, height) in words {
                    let size = height / high;
                    if size < CAPTION - HAIR {
                        wrong.push(format!("{file}: “{word}” is {size:.1} pt"));
                    }
                    let caption = small.split_whitespace().any(|it| it == word);
                    if size < READ - HAIR && !caption && !word.contains('&') {
                        wrong.push(format!("{file}: “{word}” is read, and is {size:.1} pt"));
                    }
                }
            }
        }
    });
    assert!(wrong.is_empty(), "{wrong:#?}");
}

#[test]
fn nothing_is_cut_off_and_nothing_lies_over_anything() {
    let mut wrong = Vec::new();
    each(|walk, booklet| {
        for (name, sheet) in large(booklet) {
            for (page, number) in pages(&sheet, booklet).into_iter().zip(1..) {
                let faults = faults(page);
                wrong.extend(
                    faults.iter().map(|it| format!("{walk}: {name}, page {number}: {it}")),
                );
            }
            for (page, number) in pages(&sheet, booklet).into_iter().zip(1..) {
                for placed in page.placed() {
                    let What::Text(block) = &placed.what else { continue };
                    let words = block.words();
                    if placed.role == Role::Running {
                        continue;
                    }
                    if words.contains('…') {
                        wrong
                            .push(format!("{walk}: {name}, page {number} is cut off: {words}"));
                    }
                    let Some((_, lines)) = block.lines.split_last() else { continue };
                    for line in lines {
                        let end = &line.parts.last().unwrap().text;
                        if !end.ends_with([' ', '-', '–', '/']) {
                            wrong.push(format!(
                                "{walk}: {name}, page {number} breaks within a word: {words}"
                            ));
                        }
                    }
                }
            }
        }
    });
    assert!(wrong.is_empty(), "{wrong:#?}");
}

#[test]
fn large_print_says_what_the_sheet_says_in_usual_letters() {
    let walked = hedge_walk();
    let drawn = Drawn { word: words_to_look_at::word, ..Drawn::NOTHING };
    let booklet = Booklet { drawn, ..walked.booklet(Stamp::None) };
    for name in ["key-pages", "words", "cards", "cards-backs"] {
        let kind = SHEETS.iter().find(|kind| kind.name == name).unwrap();
        let said = |letters| {
            let sheet = kind.printed(&booklet, Printing { letters, ..Printing::USUAL });
            let placed = sheet.pages.iter().flat_map(|page| page.placed());
            let read = placed.filter(|placed| {
                !matches!(placed.role, Role::Running | Role::Caption | Role::Decoration)
            });
            let words = read.filter_map(|placed| match &placed.what {
                What::Text(block) => Some(block.words()),
                _ => None,
            });
            let mut words: Vec<String> = words
                .flat_map(|text| text.split_whitespace().map(str::to_owned).collect::<Vec<_>>())
                .filter(|word| word.chars().count() > 3)
                .collect();
            words.sort();
            words.dedup();
            words
        };
        let (usual, large) = (said(Letters::Usual), said(Letters::Large));
        let lost: Vec<_> = usual.iter().filter(|word| !large.contains(word)).collect();
        assert!(lost.is_empty(), "{name} in large print drops {lost:?}");
    }
}

#[test]
fn a_sheet_without_large_print_stays_as_it_is_and_says_why() {
    let walked = measured::walk();
    let drawings = measured::drawings();
    let booklet = measured::booklet(&walked, &drawings);
    let mut kept = 0;
    for kind in SHEETS.iter().filter(|kind| (kind.has_something)(&booklet)) {
        let Some(why) = kind.not_large else { continue };
        for language in ["en", "de"] {
            let said = Tongue::for_person(&[language.to_owned()]).say(why);
            assert!(said.ends_with('.') && said.contains(' '), "{}: {said}", kind.name);
        }
        let usual = kind.printed(&booklet, Printing::USUAL);
        let wished = Printing { letters: Letters::Large, ..Printing::USUAL };
        let wished = kind.printed(&booklet, wished);
        assert_eq!(pdf::write(&usual).unwrap(), pdf::write(&wished).unwrap(), "{}", kind.name);
        kept += 1;
    }
    assert!(kept > 5, "{kept}");
}
