//! The chart for a wall: places as large as leaves, and sheets that go together.

use std::collections::BTreeMap;

use spinney_press::sheet::ink::Dash;
use spinney_press::sheet::{Page, Rect, Role, Segment, What};
use spinney_press::{Booklet, LeafLength, Paper, Sizes, Wall, album, chart};

use crate::measured;

/// What neighbours both show, in mm.
const OVERLAP: f64 = 10.0;

/// The sheets of the chart, each by its row and column.
fn sheets(paper: Paper) -> (Page, BTreeMap<(usize, usize), Page>) {
    sheets_of(paper, Sizes::USUAL)
}

/// The same of the sizes that somebody wishes.
fn sheets_of(paper: Paper, sizes: Sizes) -> (Page, BTreeMap<(usize, usize), Page>) {
    let walked = measured::walk();
    let booklet = Booklet { sizes, ..measured::booklet(&walked, &[]) };
    assert_eq!(chart::wall::refused(&booklet, paper), None);
    let sheet = chart::wall::sheet(&booklet, paper);
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
        meet(&sheets);
    }
}

/// Neighbours among sheets show the same in their strip, and two marks of each joint meet.
fn meet(sheets: &BTreeMap<(usize, usize), Page>) {
    let (mut shared, mut joints) = (0, 0);
    for ((row, column), page) in sheets {
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
                theirs
                    .iter()
                    .any(|(a, b, ..)| (a + dx - x).abs() < 1e-6 && (b + dy - y).abs() < 1e-6)
            });
            assert!(meet.count() >= 2, "two marks a joint");
            joints += 1;
        }
    }
    assert!(shared > 5 && joints >= sheets.len() / 2, "{shared} {joints}");
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

/// Glued together and cut along its line, the chart is as large as a paper of ISO 216, to the
/// hundredth of a millimetre; nothing of it lies outside, and the sheets overlap as always.
#[test]
fn a_chart_is_exactly_a2_or_a1_when_somebody_wishes_it() {
    for (wall, sides) in [(Wall::A2, [420.0, 594.0]), (Wall::A1, [594.0, 841.0])] {
        for paper in [Paper::A4, Paper::Letter] {
            let (how, sheets) = sheets_of(paper, Sizes { wall, ..Sizes::USUAL });
            meet(&sheets);
            let first = &sheets[&(1, 1)];
            let seen = window(first);
            let (step, down) = (seen.w - OVERLAP, seen.h - OVERLAP);
            let (mut edges, mut texts_at) = (Vec::new(), Vec::new());
            for ((row, column), page) in &sheets {
                assert_eq!(window(page), seen, "all show as much");
                let (x, y) = ((column - 1) as f64 * step, (row - 1) as f64 * down);
                for (placed, within) in page.seen() {
                    let Some(within) = within else { continue };
                    let rect = placed.rect;
                    let (x, y) = (rect.x - within.x + x, rect.y - within.y + y);
                    match &placed.what {
                        What::Path(path) => {
                            let solid = path.pen.is_some_and(|pen| pen.dash == Dash::Solid);
                            let [
                                Segment::Move(a, b),
                                _,
                                Segment::Line(c, d),
                                _,
                                Segment::Close,
                            ] = path.segments[..]
                            else {
                                continue;
                            };
                            if solid && path.fill.is_none() && (c - a).max(d - b) > 400.0 {
                                edges.push((x + a, y + b, x + c, y + d));
                            }
                        }
                        What::Text(_) => texts_at.push((x, y, x + rect.w, y + rect.h)),
                        What::Picture(_) => {}
                    }
                }
            }
            let around = |all: &[(f64, f64, f64, f64)]| {
                all.iter().fold((f64::MAX, f64::MAX, f64::MIN, f64::MIN), |a, b| {
                    (a.0.min(b.0), a.1.min(b.1), a.2.max(b.2), a.3.max(b.3))
                })
            };
            let (left, top, right, foot) = around(&edges);
            let mut found = [right - left, foot - top];
            let words = how.words();
            let cm = |mm: f64| format!("{:.1} cm", mm / 10.0);
            let said = format!("{} wide and {} high", cm(found[0]), cm(found[1]));
            assert!(words.contains(&said), "{said}: {words}");
            found.sort_by(f64::total_cmp);
            for (found, wanted) in found.into_iter().zip(sides) {
                assert!((found - wanted).abs() < 0.01, "{wall:?} on {paper:?}: {found}");
            }
            // The line lies on the sheets: none is cut off by a printer's margin.
            let last = sheets.keys().next_back().unwrap();
            let whole = (last.1 as f64 * step + OVERLAP, last.0 as f64 * down + OVERLAP);
            assert!(left >= -0.01 && right <= whole.0 + 0.01, "{left} {right} {whole:?}");
            assert!(top >= -0.01 && foot <= whole.1 + 0.01, "{top} {foot} {whole:?}");
            assert_eq!(sheets.len(), last.0 * last.1, "no sheet is missing");
            let inner = around(&texts_at);
            assert!(inner.0 >= left && inner.1 >= top, "{inner:?}");
            assert!(inner.2 <= right && inner.3 <= foot, "{inner:?}");
        }
    }
}

#[test]
fn a_chart_that_has_no_room_is_refused() {
    let refused = |kinds: usize, wall| {
        let walked = crate::endless::walked(kinds, 60, 1, 0);
        let sizes = Sizes { wall, ..Sizes::USUAL };
        let booklet = Booklet { sizes, ..walked.booklet(spinney_press::Stamp::None) };
        chart::wall::refused(&booklet, Paper::A4)
    };
    assert_eq!(refused(40, Wall::A2), Some("print-wall-no-room"));
    // Whoever wished the larger one is not told to choose it.
    assert_eq!(refused(61, Wall::A1), Some("print-wall-no-room-a1"));
    assert_eq!([40, 61].map(|kinds| refused(kinds, Wall::AsNeeded)), [None, None]);
}

/// A place that somebody wished smaller than leaves that were measured says whose; and letters
/// that are small on the wall are told.
#[test]
fn what_has_no_room_whole_and_small_letters_are_told() {
    let walked = measured::walk();
    let sizes = measured::sizes(&walked.matrix);
    let named = |wished: Option<&str>,
                 sheet: fn(&Booklet, Paper) -> spinney_press::sheet::Sheet| {
        let places = wished.and_then(LeafLength::read);
        let sizes = Sizes { places, ..Sizes::USUAL };
        let booklet = Booklet { sizes, ..measured::booklet(&walked, &[]) };
        let words = sheet(&booklet, Paper::A4).pages[0].words();
        let words = words.split_whitespace().collect::<Vec<_>>().join(" ");
        let told = words.split_once("Not every leaf fits whole into its place: ");
        told.and_then(|(_, told)| Some(told.split_once(". Stick a smaller")?.0.to_owned()))
    };
    let longer = walked.matrix.taxa().iter().zip(&sizes);
    let longer = longer.filter(|(_, size)| size.is_some_and(|size| size.blade > 45.0));
    let mut longer: Vec<_> = longer.map(|(taxon, _)| taxon.name.clone()).collect();
    assert!(longer.len() > 2 && longer.len() < sizes.iter().flatten().count(), "{longer:?}");
    longer.sort();
    for sheet in [album::sheet, chart::wall::sheet] {
        let told = named(Some("45 mm"), sheet).expect("some are told");
        let mut told: Vec<_> = told.split(", ").map(str::to_owned).collect();
        told.sort();
        assert_eq!(told, longer);
        assert_eq!(named(None, sheet), None, "as large as was measured");
    }
    assert_eq!(named(Some("200 mm"), album::sheet), None);
    // So large places have no room on any wall, and it says whose are smaller than their leaves.
    assert!(named(Some("200 mm"), chart::wall::sheet).is_some());
    // Forty questions on A1 need small letters, and twelve do not.
    let small = |booklet: &Booklet| {
        let wished = Sizes { wall: Wall::A1, ..Sizes::USUAL };
        let booklet = Booklet { sizes: wished, ..booklet.clone() };
        assert_eq!(chart::wall::refused(&booklet, Paper::A4), None);
        let words = chart::wall::sheet(&booklet, Paper::A4).pages[0].words();
        words.contains("The letters are small")
    };
    assert!(!small(&measured::booklet(&walked, &[])));
    let deep = crate::endless::walked(41, 40, 1, 0);
    assert!(small(&deep.booklet(spinney_press::Stamp::None)));
}

/// A person's wish holds for every kind, measured or not, in place of what the table says.
#[test]
fn every_place_has_room_for_a_leaf_as_long_as_somebody_wishes() {
    let walked = measured::walk();
    for (typed, mm) in [("45 mm", 45.0), ("9 cm", 90.0), ("200", 200.0)] {
        let places = LeafLength::read(typed);
        assert!(places.is_some());
        let sizes = Sizes { places, ..Sizes::USUAL };
        let booklet = Booklet { sizes, ..measured::booklet(&walked, &[]) };
        for paper in [Paper::A4, Paper::Letter] {
            let sheet = album::sheet(&booklet, paper);
            let words: String = sheet.pages.iter().map(Page::words).collect();
            let cm = format!("{}", mm / 10.0);
            assert!(words.contains(&format!("room for a leaf {cm} cm long")), "{words}");
            for taxon in walked.matrix.taxa() {
                let place = sheet.pages.iter().find_map(|page| {
                    let placed = page.placed();
                    let named = placed.iter().find(|placed| match &placed.what {
                        What::Text(block) => block.words().trim() == taxon.name,
                        _ => false,
                    })?;
                    let (left, foot) = (named.rect.x, named.rect.y - 0.6);
                    let boxes = placed.iter().map(|placed| placed.rect);
                    let mut boxes = boxes.filter(|rect| {
                        (rect.x - left).abs() < 0.5 && (rect.y + rect.h - foot).abs() < 0.5
                    });
                    boxes.find(|rect| rect.h > 30.0)
                });
                let place = place.unwrap_or_else(|| panic!("no place for {}", taxon.name));
                let (long, across) = (place.w.max(place.h), place.w.min(place.h));
                assert!(long >= mm && across >= 0.8 * mm, "{typed} {paper:?}: {place:?}");
            }
        }
    }
}
