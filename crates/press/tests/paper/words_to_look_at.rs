//! The words of a key beside their drawings.

use spinney_model::{
    Cell, Character, Drawing, DrawnWord, Figure, Matrix, Scale, Share, StateIx, Stroke, Taxon,
    Value, Weight,
};
use spinney_press::sheet::{Role, What};
use spinney_press::{Booklet, Drawn, Paper, Stamp, page, today, words_to_look_at};

use crate::hedge;

/// A line for what "toothed" means, and one for what it is taken for.
pub(crate) fn word(word: &str, _: bool) -> Option<DrawnWord> {
    let figure = |caption| Figure {
        caption,
        drawing: Drawing {
            frame: [0.0, 0.0, 48.0, 64.0],
            strokes: vec![Stroke {
                weight: Weight::Outline,
                points: vec![(0.0, 0.0), (48.0, 64.0)],
            }],
        },
    };
    (word == "toothed")
        .then(|| DrawnWord { own: vec![figure("toothed")], other: vec![figure("lobed")] })
}

#[test]
fn a_word_stands_beside_what_it_means_and_what_it_is_taken_for() {
    let walked = hedge::hedge_walk();
    let drawn = Drawn { word, ..Drawn::NOTHING };
    let booklet = Booklet { drawn, ..walked.booklet(Stamp::None) };
    assert!(words_to_look_at::has_something(&booklet));
    let sheet = words_to_look_at::sheet(&booklet, Paper::A4);
    let placed: Vec<_> = sheet.pages.iter().flat_map(|page| page.placed()).collect();
    let heard: Vec<_> = placed
        .iter()
        .filter_map(|placed| match &placed.role {
            Role::Figure(words) => Some((words.as_str(), placed.rect.h)),
            _ => None,
        })
        .collect();
    assert_eq!(heard, [("toothed", 18.0), ("not toothed: lobed like a feather", 18.0)]);
    let words = sheet.pages.iter().map(|page| page.words()).collect::<String>();
    assert!(words.contains("not: lobed like a feather"), "{words}");
    assert!(today::sheet(&booklet, Paper::A4).pages.iter().any(|page| {
        page.words().contains("With small points along the edge, like a saw.")
            && page.words().starts_with("Words to look at")
    }));
    let html = page::html(&booklet);
    assert_eq!(html.matches("<symbol id=\"draw-toothed\"").count(), 1, "each drawing once");
    assert!(html.contains("<use href=\"#draw-toothed\"></use>"));
    assert!(html.contains("<figcaption>not: lobed like a feather</figcaption>"));
}

/// Of the kinds that are toothed the first that has a leaf in lines, between what the word means and
/// what it is taken for; a kind that is toothed or smooth shows nothing.
#[test]
fn a_leaf_of_ours_stands_beside_the_word_that_its_table_says_of_it() {
    let mut walked = hedge::hedge_walk();
    let taxa: Vec<Taxon> = ["holly", "ivy", "hazel", "lime"].map(Taxon::named).to_vec();
    let states = ["toothed", "smooth"].map(str::to_owned).to_vec();
    let edge = |name: &str| Character::named(name, Scale::Words { states: states.clone() });
    let half = Share::new(1, 2);
    let (toothed, smooth) = (StateIx(0), StateIx(1));
    let rows = [
        vec![(toothed, half), (smooth, half)],
        vec![(smooth, Share::ONE)],
        vec![(toothed, Share::ONE)],
        vec![(toothed, Share::ONE)],
    ]
    .map(|seen| vec![Cell::from(Value::States(seen))]);
    let matrix = |of: &str| {
        let rows = rows.to_vec();
        Matrix::new(hedge::scene(), taxa.clone(), vec![edge(of)], rows).expect("four rows")
    };
    walked.matrix = matrix("edge");
    walked.key = hedge::key(
        &walked.matrix,
        &[
            ("Is the edge toothed?", "2", "ivy"),
            ("Is the blade soft and hairy?", "hazel", "3"),
            ("Does it prick?", "holly", "lime"),
        ],
    );
    let line = word("toothed", true).map(|it| it.own[0].drawing.clone());
    let figures_in = |matrix: &Matrix, drawn: [bool; 4]| {
        let leaves = drawn.map(|drawn| line.clone().filter(|_| drawn));
        let drawn = Drawn { word, leaves: &leaves, ..Drawn::NOTHING };
        let booklet = Booklet { drawn, matrix, ..walked.booklet(Stamp::None) };
        let sheet = words_to_look_at::sheet(&booklet, Paper::A4);
        let placed = sheet.pages.iter().flat_map(|page| page.placed());
        let figures = placed.filter_map(|placed| match &placed.role {
            Role::Figure(words) => Some(words.clone()),
            _ => None,
        });
        figures.collect::<Vec<_>>()
    };
    let figures = |drawn| figures_in(&walked.matrix, drawn);
    let (own, other) = ("toothed", "not toothed: lobed like a feather");
    let leaf = |kind: &str| format!("Drawing of a leaf of {kind}");
    assert_eq!(figures([false; 4]), [own, other]);
    assert_eq!(figures([true, true, false, false]), [own, other]);
    assert_eq!(figures([true; 4]), [own, &leaf("hazel"), other]);
    assert_eq!(figures([true, true, false, true]), [own, &leaf("lime"), other]);
    let of_shells = matrix("mouth of the shell");
    assert_eq!(figures_in(&of_shells, [true; 4]), [own, other], "not what an outline shows");
}

#[test]
fn where_nothing_is_drawn_there_is_no_sheet_of_drawings() {
    let walked = hedge::hedge_walk();
    let booklet = walked.booklet(Stamp::None);
    assert!(!words_to_look_at::has_something(&booklet));
    assert!(words_to_look_at::sheet(&booklet, Paper::A4).pages.is_empty());
    assert!(!page::html(&booklet).contains("<symbol id=\"draw-"));
}

/// Drawings are as far apart as the longest word beneath them takes: no word is broken.
#[test]
fn no_word_beneath_a_drawing_is_broken() {
    fn long(_: &str, _: bool) -> Option<DrawnWord> {
        let figures = |captions: [&'static str; 2]| {
            let drawing = word("toothed", true).unwrap().own[0].drawing.clone();
            captions.map(|caption| Figure { caption, drawing: drawing.clone() }).to_vec()
        };
        Some(DrawnWord {
            own: figures(["alternate", "side-buds"]),
            other: figures(["notched-tip", "petals"]),
        })
    }
    let walked = hedge::hedge_walk();
    for language in ["en", "de"] {
        let tongue = spinney_voice::Tongue::for_person(&[language.to_owned()]);
        let drawn = Drawn { word: long, ..Drawn::NOTHING };
        let booklet = Booklet { drawn, tongue, ..walked.booklet(Stamp::None) };
        let said = ["alternate", "side-buds", "notched-tip", "petals"];
        let said: String =
            said.map(|caption| tongue.say(&format!("words-draw-{caption}"))).join(" ");
        let sheet = words_to_look_at::sheet(&booklet, Paper::A4);
        let mut seen = 0;
        for placed in sheet.pages.iter().flat_map(|page| page.placed()) {
            let What::Text(block) = &placed.what else { continue };
            if placed.role != Role::Caption {
                continue;
            }
            for line in &block.lines {
                let text: String = line.parts.iter().map(|part| part.text.as_str()).collect();
                for word in text.split_whitespace().filter(|word| !word.ends_with(':')) {
                    let word = word.trim_end_matches(',');
                    let whole = said.split([' ', ',']).any(|known| {
                        known == word || known.split_inclusive('-').any(|part| part == word)
                    });
                    assert!(whole, "{word} in {language}: {said}");
                    seen += 1;
                }
            }
        }
        assert!(seen > 20, "{seen}");
    }
}
