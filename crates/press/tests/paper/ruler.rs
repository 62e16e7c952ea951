//! The ruler of today: each length as long as its question says, and nothing hidden.

use spinney_model::{Asked, Quantity, Wording};
use spinney_press::sheet::{Page, Placed, Rect, Role, Segment, Sheet, What};
use spinney_press::{Paper, Stamp, measuring, ruler};

use crate::hedge::{Walked, hedge_walk};
use crate::measured;

/// The x of every upright line of a width in mm, with its y.
fn uprights(page: &Page, width: f64) -> Vec<(f64, f64)> {
    let upright = |placed: &Placed| match &placed.what {
        What::Path(path) => match &path.segments[..] {
            [Segment::Move(x, _), Segment::Line(to, foot)]
                if x == to
                    && *foot > 12.0
                    && path.pen.is_some_and(|pen| pen.width == width) =>
            {
                Some((placed.rect.x + x, placed.rect.y))
            }
            _ => None,
        },
        _ => None,
    };
    page.placed().into_iter().filter_map(upright).collect()
}

/// How far each marked length is from the 0 of its own strip, in mm.
fn lengths(page: &Page) -> Vec<f64> {
    let mut zero = None;
    let mut lengths = Vec::new();
    for (x, y) in uprights(page, 0.6) {
        match zero {
            Some((from, top)) if top == y => lengths.push(x - from),
            _ => zero = Some((x, y)),
        }
    }
    lengths
}

#[test]
fn a_strip_has_exactly_the_lengths_that_the_key_asks_for() {
    let walked = measured::walk();
    let booklet = measured::booklet(&walked, &[]);
    for paper in [Paper::A4, Paper::Letter] {
        let sheet = ruler::sheet(&booklet, paper);
        let found: Vec<f64> = sheet.pages.iter().flat_map(lengths).collect();
        assert_eq!(found.len(), 8 * 3, "a strip for each of eight groups");
        for strip in found.chunks(3) {
            for (length, mm) in strip.iter().zip([100.0, 50.0, 25.0]) {
                assert!((length - mm).abs() < 1e-6, "{strip:?}");
            }
        }
        let words = sheet.pages[0].words();
        for label in
            ["10\n50 mm blade length", "6\n100 mm blade length", "9\n25 mm stalk length"]
        {
            assert!(words.contains(label), "{label} in {words}");
        }
    }
}

/// 20 mm would separate the same kinds; the children read 24.
#[test]
fn a_strip_goes_by_the_number_that_the_question_says() {
    let mut walked = measured::walk();
    let couplet = walked.key.couplets.iter_mut().find(|it| it.number == 9).unwrap();
    couplet.kept = false;
    couplet.ask.as_mut().unwrap().yes = Asked::AtLeast(Quantity::from_whole(24));
    let label = |walked: &Walked| {
        let sheet = ruler::sheet(&measured::booklet(walked, &[]), Paper::A4);
        let words = sheet.pages[0].words();
        let line = words.lines().find(|line| line.ends_with("stalk length"));
        line.unwrap().to_owned()
    };
    let question = |words: &str| Wording::Question(words.to_owned());
    let at = 8;
    walked.key.couplets[at].wording = question("Is the leaf stalk 24 mm long or more?");
    assert_eq!(label(&walked), "24 mm stalk length");
    walked.key.couplets[at].wording = question("Is the leaf stalk 20 mm long or more?");
    assert_eq!(label(&walked), "20 mm stalk length");
}

#[test]
fn a_real_ruler_is_held_against_a_line_of_ten_centimetres() {
    let walked = measured::walk();
    let page = &ruler::sheet(&measured::booklet(&walked, &[]), Paper::A4).pages[0];
    let placed = page.placed();
    let line = placed.into_iter().find(
        |placed| matches!(&placed.role, Role::Figure(words) if words == "This line is 10 cm."),
    );
    assert_eq!(line.unwrap().rect.w, 100.0);
}

/// The end of a strip's piece is laid on the line of the next: there the scale goes on.
#[test]
fn a_length_beyond_the_paper_goes_over_several_pieces_and_one_beyond_a_metre_is_said() {
    let walked = measured::walk_far();
    for paper in [Paper::A4, Paper::Letter] {
        let sheet = ruler::sheet(&measured::booklet(&walked, &[]), paper);
        let words = sheet.pages.iter().map(Page::words).collect::<String>();
        assert!(words.contains("Question 9 asks for 2500 mm: take a tape measure."), "{words}");
        assert!(!words.contains("2500 mm stalk"), "it is on no strip");
        assert!(words.contains("6\n610 mm blade length"));
        // In the third piece, which begins at 460 mm: 150 mm behind the line to glue at.
        let page =
            sheet.pages.iter().find(|page| page.words().contains("610 mm blade")).unwrap();
        let glue = uprights(page, 0.3);
        let marks = uprights(page, 0.6);
        let (x, y) = marks
            .iter()
            .copied()
            .find(|(_, y)| glue.iter().any(|(_, other)| other == y))
            .expect("a mark on a piece that is glued");
        let (from, _) = glue.iter().copied().find(|(_, other)| *other == y).unwrap();
        assert!((x - from - 150.0).abs() < 1e-6, "{x} {from}");
    }
}

#[test]
fn a_key_that_asks_for_no_length_has_no_ruler() {
    let walked = hedge_walk();
    let booklet = walked.booklet(Stamp::None);
    assert!(!ruler::has_something(&booklet) && !measuring::has_something(&booklet));
}

#[test]
fn a_kind_is_measured_six_times_and_the_range_is_what_the_table_wants() {
    let walked = measured::walk();
    let sheet: Sheet = measuring::sheet(&measured::booklet(&walked, &[]), Paper::A4);
    let words = sheet.pages[0].words();
    let heads = |word: &str| words.matches(word).count();
    assert_eq!(heads("Kind or number:"), 4, "{words}");
    assert_eq!(heads("blade length (mm)"), 4);
    assert_eq!(heads("\n6\nleast\nmost\ntype in\n"), 4);
    // Every row is as high as a hand writes.
    let placed = sheet.pages[0].placed();
    let tops = placed.iter().filter(|placed| match &placed.what {
        What::Text(block) => ["1", "2"].contains(&block.words().trim()),
        _ => false,
    });
    let ys: Vec<Rect> = tops.map(|placed| placed.rect).collect();
    assert!(ys[1].y - ys[0].y >= 8.0, "{ys:?}");
}
