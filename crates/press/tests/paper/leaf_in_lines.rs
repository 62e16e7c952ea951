//! The drawing of a leaf that was measured stands for its kind, and is said to be that.

use spinney_model::{Drawing, Stroke, Weight};
use spinney_press::sheet::{Role, Sheet};
use spinney_press::{
    Booklet, Drawn, Paper, Stamp, cards_to_sort, chart, key_pages, page, short_key,
};
use spinney_voice::Tongue;

use crate::hedge;

/// A line in a frame, so long.
fn drawing(long: f64) -> Drawing {
    let points = vec![(0.0, 0.0), (0.0, long), (5.0, long)];
    let strokes = vec![Stroke { weight: Weight::Outline, points }];
    Drawing { frame: [-1.0, -1.0, 7.0, long + 2.0], strokes }
}

/// What those who listen hear of drawings of this kind.
fn heard(sheet: &Sheet, kind: &str) -> Vec<String> {
    let placed = sheet.pages.iter().flat_map(|page| page.placed());
    let words = placed.filter_map(|placed| match &placed.role {
        Role::Figure(words) => Some(words.clone()),
        _ => None,
    });
    words.filter(|words| words.contains(kind)).collect()
}

#[test]
fn a_leaf_in_lines_goes_before_what_the_table_says_and_behind_a_photograph() {
    let walked = hedge::hedge_walk();
    let none: Vec<Option<Drawing>> = walked.matrix.taxa().iter().map(|_| None).collect();
    let bare = walked.matrix.taxa().iter().position(|taxon| taxon.picture.is_none());
    let bare = bare.expect("a kind without a photograph");
    let name = walked.matrix.taxa()[bare].name.clone();
    let only = |at: usize, long: f64| {
        let mut all = none.clone();
        all[at] = Some(drawing(long));
        all
    };
    let (table, leaf) = (only(bare, 30.0), only(bare, 40.0));
    for t in Tongue::all() {
        let (of_table, of_leaf) = (t.say("finds-drawn"), t.say("finds-drawn-leaf"));
        for (leaves, said, not_said, drawing) in [
            (&none, &of_table, &of_leaf, "sheet-drawing-of"),
            (&leaf, &of_leaf, &of_table, "sheet-drawing-of-leaf"),
        ] {
            let drawn = Drawn { kinds: &table, leaves, ..Drawn::NOTHING };
            let booklet = Booklet { drawn, tongue: t, ..walked.booklet(Stamp::None) };
            let html = page::html(&booklet);
            assert_eq!(html.matches(said.as_str()).count(), 1, "{said}");
            assert!(!html.contains(not_said.as_str()), "{not_said}");
            let heard = heard(&cards_to_sort::sheet(&booklet, Paper::A4), &name);
            assert_eq!(heard, [t.with(drawing, &[("kind", &name)])]);
        }
    }
    let mut taxa = walked.matrix.taxa().to_vec();
    taxa[bare].picture = Some("photograph.png".to_owned());
    let matrix = walked.matrix.clone().with_taxa(taxa).expect("the same kinds");
    let drawn = Drawn { kinds: &table, leaves: &leaf, ..Drawn::NOTHING };
    let booklet = Booklet { matrix: &matrix, drawn, ..walked.booklet(Stamp::None) };
    assert!(heard(&cards_to_sort::sheet(&booklet, Paper::A4), &name).is_empty());
}

#[test]
fn a_leaf_in_lines_stands_at_the_ends_of_the_key_where_a_photograph_would() {
    let walked = hedge::hedge_walk();
    let drawn: Vec<Option<Drawing>> =
        walked.matrix.taxa().iter().map(|_| Some(drawing(40.0))).collect();
    for paper in [Paper::A4, Paper::Letter] {
        let key = |drawn| {
            let booklet = Booklet { drawn, ..walked.booklet(Stamp::None) };
            [short_key::sheet, key_pages::sheet, chart::sheet].map(|of| of(&booklet, paper))
        };
        let said = |sheets: &[Sheet; 3], kind: &str| {
            sheets.each_ref().map(|sheet| heard(sheet, kind).len())
        };
        let by_table = key(Drawn { kinds: &drawn, ..Drawn::NOTHING });
        let by_leaf = key(Drawn { leaves: &drawn, ..Drawn::NOTHING });
        for kind in walked.matrix.taxa().iter().filter(|kind| kind.picture.is_none()) {
            assert_eq!(said(&by_table, &kind.name), [0; 3], "{}", kind.name);
            let often = said(&by_leaf, &kind.name);
            assert!(often.iter().all(|often| *often > 0), "{}: {often:?}", kind.name);
        }
    }
}
