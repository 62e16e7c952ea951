//! The chart for a wall: places as large as leaves, and sheets that go together.

use std::collections::BTreeMap;

use spinney_press::sheet::ink::Dash;
use spinney_press::sheet::{Page, Rect, Role, Segment, What};
use spinney_press::{Paper, chart};

use crate::measured;

/// What neighbours both show, in mm.
const OVERLAP: f64 = 10.0;

/// The sheets of the chart, each by its row and column.
fn sheets(paper: Paper) -> (Page, BTreeMap<(usize, usize), Page>) {
    let walked = measured::walk();
    let sheet = chart::wall::sheet(&measured::booklet(&walked, &[]), paper);
    let mut pages = sheet.pages.into_iter();
    let how = pages.next().unwrap();
    let placed = pages.map(|page| {
        let words = page.words();
        let place = words.lines().find_map(|line| {
            let (_, place) = line.split_once(": row ")?;
            let (row, column) = place.split_once(", column ")?;
            Some((row.parse().unwrap(), column.parse().unwrap()))
        });
        (place.expect("a sheet says its place"), page)
    });
    (how, placed.collect())
}

/// The window of a sheet.
fn window(page: &Page) -> Rect {
    page.seen().into_iter().find_map(|(_, window)| window).unwrap()
}

/// Every text in the window of a sheet with its corner.
fn texts(page: &Page) -> Vec<(String, f64, f64)> {
    let text = |(placed, window): (&spinney_press::sheet::Placed, Option<Rect>)| {
        let What::Text(block) = &placed.what else { return None };
        window.map(|_| (block.words(), placed.rect.x, placed.rect.y))
    };
    page.seen().into_iter().filter_map(text).collect()
}

/// The short marks across a joint: lines 4 mm long.
fn marks(page: &Page) -> Vec<(f64, f64, f64, f64)> {
    let mut marks = Vec::new();
    for placed in page.placed() {
        let What::Path(path) = &placed.what else { continue };
        let pen = path.pen.is_some_and(|pen| pen.width == 0.6 && pen.dash == Dash::Solid);
        for two in path.segments.chunks(2).filter(|_| pen) {
            let [Segment::Move(a, b), Segment::Line(c, d)] = two else { continue };
            if ((c - a).abs() + (d - b).abs() - 4.0).abs() < 1e-9 {
                let (x, y) = (placed.rect.x, placed.rect.y);
                marks.push((x + a, y + b, x + c, y + d));
            }
        }
    }
    marks
}

#[test]
fn every_place_is_as_large_as_the_largest_leaf_of_its_kind() {
    let (_, sheets) = sheets(Paper::A4);
    let walked = measured::walk();
    let sizes = measured::sizes(&walked.matrix);
    let mut found = 0;
    for (taxon, size) in walked.matrix.taxa().iter().zip(sizes) {
        let Some(size) = size else { continue };
        // The place begins beneath the name, 1 mm lower, and is as wide as its card.
        let place = sheets.values().find_map(|page| {
            let named = page.placed().into_iter().find(|placed| match &placed.what {
                What::Text(block) => block.words().trim() == taxon.name,
                _ => false,
            })?;
            let (top, left) = (named.rect.y + named.rect.h + 1.0, named.rect.x);
            page.placed().into_iter().map(|placed| placed.rect).find(|rect| {
                (rect.y - top).abs() < 0.5 && (rect.x - left).abs() < 0.5 && rect.h > 30.0
            })
        });
        let place = place.unwrap_or_else(|| panic!("no place for {}", taxon.name));
        assert!(place.h >= size.blade && place.w >= size.blade * 0.8, "{}", taxon.name);
        found += 1;
    }
    assert_eq!(found, 9);
}

/// Laid edge on dotted line, both show the same.
#[test]
fn neighbours_show_the_same_strip_and_their_marks_meet() {
    for paper in [Paper::A4, Paper::Letter] {
        let (_, sheets) = sheets(paper);
        assert!((4..=12).contains(&sheets.len()), "{} sheets", sheets.len());
        let (mut shared, mut joints) = (0, 0);
        for ((row, column), page) in &sheets {
            let seen = window(page);
            for (next, (dx, dy)) in [
                ((*row, column + 1), (seen.w - OVERLAP, 0.0)),
                ((row + 1, *column), (0.0, seen.h - OVERLAP)),
            ] {
                let Some(next) = sheets.get(&next) else { continue };
                let theirs = texts(next);
                for (words, x, y) in texts(page) {
                    let same = theirs
                        .iter()
                        .find(|(other, at, _)| *other == words && (at + dx - x).abs() < 1e-6);
                    let Some((_, _, at)) = same else { continue };
                    assert!((at + dy - y).abs() < 1e-6, "{words}");
                    shared += 1;
                }
                let (ours, theirs) = (marks(page), marks(next));
                let meet = ours.iter().filter(|(_, _, x, y)| {
                    theirs.iter().any(|(a, b, ..)| {
                        (a + dx - x).abs() < 1e-6 && (b + dy - y).abs() < 1e-6
                    })
                });
                assert!(meet.count() >= 2, "two marks a joint");
                joints += 1;
            }
        }
        assert!(shared > 5 && joints >= sheets.len() / 2, "{shared} {joints}");
    }
}

#[test]
fn what_is_on_two_sheets_is_heard_once() {
    let (_, sheets) = sheets(Paper::A4);
    let walked = measured::walk();
    for taxon in walked.matrix.taxa() {
        let heard = sheets.values().flat_map(|page| {
            page.placed().into_iter().filter(|placed| match &placed.what {
                What::Text(block) => {
                    block.words().trim() == taxon.name && placed.role != Role::Decoration
                }
                _ => false,
            })
        });
        assert_eq!(heard.count(), 1, "{}", taxon.name);
    }
}

#[test]
fn the_first_page_says_how_many_sheets_there_are_and_numbers_each() {
    let (how, sheets) = sheets(Paper::A4);
    let words = how.words();
    assert!(words.contains(&format!("{} sheets become a chart", sheets.len())), "{words}");
    for number in 1..=sheets.len() {
        assert!(words.contains(&format!("\n{number}\n")), "{number}: {words}");
    }
    assert!(words.contains("hazel: 11.8 cm high"), "{words}");
}
