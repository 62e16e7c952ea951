//! What is laid on the ground, hung along a path, laid beside names or held against the light.

use std::collections::BTreeSet;

use spinney_model::{CharacterIx, Quantity, Value};
use spinney_press::sheet::ink::Dash;
use spinney_press::sheet::{Page, Placed, Rect, What};
use spinney_press::{
    Booklet, Paper, Stamp, floor, hole_cards, indented, key_pages, strips_of_looks, trail,
};

use crate::measured::{self, ASKED};

/// Where a text stands, word by word.
fn all(page: &Page, words: &str) -> Vec<Rect> {
    let is = |placed: &&Placed| match &placed.what {
        What::Text(block) => block.words().trim() == words,
        _ => false,
    };
    page.placed().into_iter().filter(is).map(|placed| placed.rect).collect()
}

/// The large outlines of a page with the way they are drawn, from left to right, top to bottom.
fn outlines(page: &Page, least: f64) -> Vec<(Rect, Dash)> {
    let outline = |placed: &Placed| match &placed.what {
        What::Path(path) if placed.rect.w > least && placed.rect.h > least => {
            path.pen.map(|pen| (placed.rect, pen.dash))
        }
        _ => None,
    };
    page.placed().into_iter().filter_map(outline).collect()
}

#[test]
fn on_the_ground_yes_points_left_with_a_solid_edge_and_no_right_with_a_dashed_one() {
    let walked = measured::walk();
    for paper in [Paper::A4, Paper::Letter] {
        let sheet = floor::sheet(&walked.booklet(Stamp::None), paper);
        assert_eq!(sheet.pages.len(), walked.key.couplets.len());
        for (page, couplet) in sheet.pages.iter().zip(&walked.key.couplets) {
            let arrows = outlines(page, 60.0);
            let [(left, solid), (right, dashed)] = arrows[..] else { panic!("two arrows") };
            assert!(
                left.x + left.w < right.x && solid == Dash::Solid && dashed == Dash::Dashed
            );
            let (yes, no) = (all(page, "yes"), all(page, "no"));
            assert!(yes[0].x < left.x + left.w && no[0].x > right.x);
            assert!(page.words().contains(couplet.wording.first()), "{}", page.words());
        }
    }
}

#[test]
fn a_post_is_named_by_its_number_and_its_shape_wherever_a_way_leads_to_it() {
    let walked = measured::walk();
    let sheet = trail::sheet(&walked.booklet(Stamp::None), Paper::A4);
    let shapes = ["circle", "triangle", "square", "diamond", "house", "drop"];
    let posts: Vec<_> = sheet.pages.iter().skip(1).collect();
    assert_eq!(posts.len(), 12);
    let mut ways = 0;
    for (page, number) in posts.iter().zip(1..) {
        let words = page.words().replace('\n', " ");
        let name = |number: usize| format!("post {number}, the {}", shapes[(number - 1) % 6]);
        assert!(words.contains(&name(number)), "{words}");
        for to in 1..=12 {
            if words.contains(&format!("go to post {to}, ")) {
                assert!(words.contains(&format!("go to {}", name(to))), "{words}");
                ways += 1;
            }
        }
    }
    assert_eq!(ways, 11, "every question but the first is led to once");
    let plan = sheet.pages[0].words();
    assert!((1..=12).all(|number| plan.contains(&format!("post {number}, "))));
}

#[test]
fn an_indented_key_has_every_question_once_and_every_answer_beneath_it() {
    let walked = measured::walk();
    let sheet = indented::sheet(&walked.booklet(Stamp::None), Paper::A4);
    let words: String = sheet.pages.iter().map(Page::words).collect();
    for couplet in &walked.key.couplets {
        let asked = format!("\n{}\n{}\n", couplet.number, couplet.wording.first());
        assert_eq!(words.matches(&asked).count(), 1, "{asked}");
    }
    let answers = |word: &str| words.matches(&format!("\n{word}\n")).count();
    assert_eq!((answers("yes"), answers("no")), (12, 12));
    assert!(!words.contains("go to"), "nothing leads to a question twice");
    // Deeper questions stand further in.
    let x =
        |number: &str| sheet.pages.iter().find_map(|page| all(page, number).pop()).unwrap().x;
    assert!(x("1") < x("2") && x("2") < x("3") && x("4") < x("5"));
}

/// Blackthorn's largest leaf fits into a box of the key, those of six kinds do not; three ends were
/// measured by nobody or are of several kinds.
#[test]
fn nobody_is_asked_to_stick_a_leaf_into_a_box_that_is_too_small_for_it() {
    let walked = measured::walk();
    let asks = |booklet: &Booklet| {
        let sheet = key_pages::sheet(booklet, Paper::A4);
        ["stick the leaf or the rubbing here", "draw it here"]
            .map(|words| sheet.pages.iter().map(|page| all(page, words).len()).sum::<usize>())
    };
    assert_eq!(asks(&measured::booklet(&walked, &[])), [4, 6]);
    assert_eq!(asks(&walked.booklet(Stamp::None)), [10, 0], "without sizes");
}

/// The kinds with a mark on a strip, by the rows of its marks.
fn marked(page: &Page, head: Rect, rows: &[f64]) -> BTreeSet<usize> {
    let middle = head.x + head.w / 2.0;
    let mut marked = BTreeSet::new();
    for placed in page.placed() {
        let What::Path(path) = &placed.what else { continue };
        let Rect { x, y, w, h } = placed.rect;
        let dot = path.fill.is_some() && (w - 5.4).abs() < 1e-6 && (h - 5.4).abs() < 1e-6;
        if dot && (x + w / 2.0 - middle).abs() < 2.0 {
            let row = rows.iter().position(|row| (y + h / 2.0 - row).abs() < 1.0);
            marked.insert(row.expect("a dot stands in a row"));
        }
    }
    marked
}

#[test]
fn a_strip_has_a_dot_in_the_row_of_every_kind_that_can_have_it() {
    let walked = measured::walk();
    let page = &strips_of_looks::sheet(&walked.booklet(Stamp::None), Paper::A4).pages[0];
    let rows: Vec<f64> = walked
        .matrix
        .taxa()
        .iter()
        .map(|taxon| {
            let row = all(page, &taxon.name)[0];
            row.y + row.h / 2.0
        })
        .collect();
    for (_, column, mm) in ASKED {
        let column = CharacterIx(column);
        let name = &walked.matrix.character(column).name;
        let asked = Quantity::from_whole(mm);
        let head = all(page, &format!("{name}: {mm} mm or more"))[0];
        let expected: BTreeSet<usize> = walked
            .matrix
            .taxon_indices()
            .filter(|kind| match walked.matrix.cell(*kind, column).value {
                Value::Range { high, .. } => high >= asked,
                _ => false,
            })
            .map(|kind| kind.0)
            .collect();
        assert_eq!(marked(page, head, &rows), expected, "{name} {mm}");
    }
}

/// The holes of a card, from the card's own corner, rounded to a hundredth of a millimetre.
fn holes(page: &Page, (left, top): (f64, f64), (w, h): (f64, f64)) -> BTreeSet<(i64, i64)> {
    let hundredths = |mm: f64| (mm * 100.0).round() as i64;
    let hole = |placed: &Placed| match &placed.what {
        What::Path(path) if (placed.rect.w - 6.0).abs() < 1e-6 && path.fill.is_none() => {
            let (x, y) = (placed.rect.x + 3.0 - left, placed.rect.y + 3.0 - top);
            let here = (0.0..w).contains(&x) && (0.0..h).contains(&y);
            here.then(|| (hundredths(x), hundredths(y)))
        }
        _ => None,
    };
    page.placed().into_iter().filter_map(hole).collect()
}

#[test]
fn the_holes_of_one_kind_lie_on_each_other_and_a_punch_reaches_them() {
    let walked = measured::walk();
    let sheet = hole_cards::sheet(&walked.booklet(Stamp::None), Paper::A4);
    let page = &sheet.pages[1];
    let size = (92.0, 57.0);
    let corner = |at: usize| {
        let left = (page.width - 2.0 * size.0) / 2.0;
        (left + (at % 2) as f64 * size.0, 25.0 + (at / 2) as f64 * size.1)
    };
    // The last card is empty: every kind has its place there.
    let places = holes(page, corner(7), size);
    assert_eq!(places.len(), 12);
    for (x, y) in &places {
        let near = x.min(y).min(&(9200 - x)).min(&(5700 - y)).to_owned();
        assert!((600..=1000).contains(&near), "{near} from the edge");
    }
    for at in 0..6 {
        let card = holes(page, corner(at), size);
        assert!(!card.is_empty() && card.is_subset(&places), "card {at}");
        assert_ne!(card, places, "a card that says nothing is not printed");
    }
    // What is less than a length and what is at least as long are not the same kinds.
    let (less, more) = (holes(page, corner(2), size), holes(page, corner(3), size));
    assert_eq!(less.union(&more).count(), 12);
}
