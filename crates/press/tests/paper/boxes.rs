//! Every page as boxes in mm: margins, overlaps, letter sizes, use of the paper.

use spinney_press::sheet::ink::{Dash, Pen};
use spinney_press::sheet::{Page, Placed, Rect, Role, Segment, Sheet, What};
use spinney_press::sheets::SHEETS;
use spinney_press::{Booklet, Paper, Stamp, chart, key_pages, today};
use spinney_voice::Tongue;

use crate::hedge::hedge_walk;
use crate::measured;

/// Every sheet in every paper size it is made for.
pub(crate) fn all(booklet: &Booklet) -> Vec<(String, Sheet)> {
    let mut sheets = Vec::new();
    for kind in SHEETS.iter().filter(|kind| (kind.has_something)(booklet)) {
        let papers = [Paper::A4, Paper::Letter].into_iter();
        for paper in papers.chain(kind.large_too.then_some(Paper::A3)) {
            sheets.push((format!("{} on {paper:?}", kind.name), (kind.set)(booklet, paper)));
        }
    }
    sheets
}

/// The paper that a thing really covers, its pen included.
pub(crate) fn covered(placed: &Placed) -> Rect {
    let What::Path(path) = &placed.what else { return placed.rect };
    let points = path.segments.iter().flat_map(|segment| match *segment {
        Segment::Move(x, y) | Segment::Line(x, y) => vec![(x, y)],
        Segment::Curve(a, b, c, d, e, f) => vec![(a, b), (c, d), (e, f)],
        Segment::Close => vec![],
    });
    let (mut least, mut most) = ((f64::MAX, f64::MAX), (f64::MIN, f64::MIN));
    for (x, y) in points {
        least = (least.0.min(x), least.1.min(y));
        most = (most.0.max(x), most.1.max(y));
    }
    let Rect { x, y, .. } = placed.rect;
    Rect::new(x + least.0, y + least.1, most.0 - least.0, most.1 - least.1)
}

/// Whether a page is the adults' own.
fn for_adults(page: &Page) -> bool {
    let words = page.words();
    let named = words
        .lines()
        .any(|line| ["The visit", "Der Ausflug"].iter().any(|it| line.starts_with(it)));
    named && !words.contains("How many copies of what")
}

/// The least size of letters on a page, in points.
fn least(page: &Page) -> f64 {
    let words = page.words();
    let pocket = ["Key for the pocket", "Schlüssel für die Hosentasche"];
    let pocket = pocket.iter().any(|name| words.starts_with(name));
    // Adults read the visit sheet: what is said there is set in 10 pt, its sources in 9.
    if for_adults(page) || pocket { 9.0 } else { 12.0 }
}

/// What is wrong with a page, in words.
pub(crate) fn faults(page: &Page) -> Vec<String> {
    let (mut faults, least) = (Vec::new(), least(page));
    for (thing, window) in &page.seen() {
        let covered = covered(thing);
        let beside = |window: &Rect| {
            covered.x > window.x + window.w
                || covered.y > window.y + window.h
                || covered.x + covered.w < window.x
                || covered.y + covered.h < window.y
        };
        if window.as_ref().is_some_and(beside) {
            continue;
        }
        let Rect { x, y, w, h } = window.map_or(covered, |window| covered.within(&window));
        let inside = x >= 11.9 && y >= 11.9;
        let inside = inside && x + w <= page.width - 11.9 && y + h <= page.height - 11.9;
        if !inside {
            faults.push(format!("in the margin: {thing:.60?} at {x:.1} {y:.1} {w:.1} {h:.1}"));
        }
        match &thing.what {
            What::Text(block) if block.smallest() < least => {
                faults.push(format!("under {least} pt: {}", block.words()));
            }
            What::Path(path) if path.pen.is_some_and(|pen| pen.width < Pen::THINNEST) => {
                faults.push("a rule under 0.5 pt".to_owned());
            }
            _ => {}
        }
    }
    let words: Vec<(&Placed, Rect)> = page
        .seen()
        .into_iter()
        .filter(|(thing, _)| thing.role != Role::Stamp && matches!(thing.what, What::Text(_)))
        .map(|(thing, window)| (thing, window.map_or(thing.rect, |it| thing.rect.within(&it))))
        .collect();
    for (at, (one, rect)) in words.iter().enumerate() {
        for (other, under) in &words[at + 1..] {
            if rect.overlaps(under) {
                let text = |placed: &Placed| match &placed.what {
                    What::Text(block) => format!("{:?} {}", placed.rect, block.words()),
                    _ => String::new(),
                };
                faults.push(format!("overlap: {} / {}", text(one), text(other)));
            }
        }
    }
    faults
}

/// The lowest place of the page that anything but its foot covers, as a share of its height.
fn used(page: &Page) -> f64 {
    let things = page.placed();
    let things = things.iter().filter(|placed| {
        !matches!(placed.role, Role::Running | Role::Stamp)
            && covered(placed).y < page.height - 22.5
    });
    let lowest = things.map(|placed| covered(placed).y + covered(placed).h).fold(0.0, f64::max);
    (lowest - 12.0) / (page.height - 24.0 - 10.0)
}

#[test]
fn the_sheets_with_lengths_keep_to_their_boxes_and_use_their_paper() {
    let walked = measured::walk();
    let drawings = measured::drawings();
    let sheets = all(&measured::booklet(&walked, &drawings));
    assert!(sheets.len() > 16);
    for (name, sheet) in sheets {
        for (page, number) in sheet.pages.iter().zip(1..) {
            let faults = faults(page);
            assert!(faults.is_empty(), "{name}, page {number}: {faults:#?}");
            let used = used(page);
            assert!(used > 2.0 / 3.0, "{name}, page {number}: only {used:.2} used");
        }
    }
}

#[test]
fn nothing_stands_in_the_margin_on_other_words_or_too_small() {
    let walked = hedge_walk();
    let german = Tongue::for_person(&["de".to_owned()]);
    let booklets = [Stamp::None, Stamp::Draft, Stamp::TryingOut].map(|it| walked.booklet(it));
    let in_german = Booklet { tongue: german, ..walked.booklet(Stamp::None) };
    for booklet in booklets.into_iter().chain([in_german]) {
        for (name, sheet) in all(&booklet) {
            for (page, number) in sheet.pages.iter().zip(1..) {
                let faults = faults(page);
                assert!(faults.is_empty(), "{name}, page {number}: {faults:#?}");
            }
        }
    }
}

#[test]
fn no_sheet_wastes_more_than_a_third_of_its_paper() {
    let walked = hedge_walk();
    for (name, sheet) in all(&walked.booklet(Stamp::None)) {
        for (page, number) in sheet.pages.iter().zip(1..) {
            let used = used(page);
            assert!(used > 2.0 / 3.0, "{name}, page {number}: only {used:.2} used");
        }
    }
}

#[test]
fn twelve_kinds_hang_on_one_a3_page_and_on_two_a4_pages_that_name_each_other() {
    let walked = hedge_walk();
    let booklet = walked.booklet(Stamp::None);
    let a3 = chart::sheet(&booklet, Paper::A3);
    assert_eq!(a3.pages.len(), 1);
    let a4 = chart::sheet(&booklet, Paper::A4);
    assert_eq!(a4.pages.len(), 2);
    assert!(a4.pages[0].words().contains("goes on at page 2, A"));
    assert!(a4.pages[1].words().contains("A, from page 1"));
    for taxon in walked.matrix.taxa() {
        let found = a4.pages.iter().any(|page| page.words().contains(&taxon.name));
        assert!(found, "{} is on no page", taxon.name);
    }
}

#[test]
fn on_a_chart_yes_goes_left_by_a_solid_line_and_no_right_by_a_dashed_one() {
    let walked = hedge_walk();
    let (mut solid, mut dashed) = (0, 0);
    for page in chart::sheet(&walked.booklet(Stamp::None), Paper::A3).pages {
        for placed in page.placed() {
            let What::Path(path) = &placed.what else { continue };
            let (Some(pen), [Segment::Move(from, _), _, Segment::Line(to, _), _]) =
                (path.pen, &path.segments[..])
            else {
                continue;
            };
            match pen.dash {
                Dash::Solid if path.fill.is_none() => {
                    assert!(to < from, "a solid line goes from {from} right to {to}");
                    solid += 1;
                }
                Dash::Dashed => {
                    assert!(to > from, "a dashed line goes from {from} left to {to}");
                    dashed += 1;
                }
                _ => {}
            }
        }
    }
    assert_eq!((solid, dashed), (12, 12));
}

#[test]
fn a_chart_has_one_size_of_letters_on_all_its_pages() {
    let walked = hedge_walk();
    let booklet = walked.booklet(Stamp::None);
    let named = |size: &str| walked.matrix.taxa().iter().any(|taxon| taxon.name == size);
    for paper in [Paper::A4, Paper::Letter, Paper::A3] {
        let mut sizes = Vec::new();
        for page in &chart::sheet(&booklet, paper).pages {
            for placed in page.placed() {
                let What::Text(block) = &placed.what else { continue };
                let words = block.words();
                if named(words.trim()) || words.contains("Is the") || words.contains("Do the") {
                    sizes.push(block.smallest());
                }
            }
        }
        assert!(sizes.len() > 12, "{paper:?}: {sizes:?}");
        sizes.dedup();
        assert_eq!(sizes.len(), 1, "{paper:?}: {sizes:?}");
        let least = if paper == Paper::A3 { 14.0 } else { 12.0 };
        assert!(sizes[0] >= least, "{paper:?}: {sizes:?}");
    }
}

#[test]
fn no_sheet_asks_for_a_childs_name() {
    let walked = hedge_walk();
    for (name, sheet) in all(&walked.booklet(Stamp::None)) {
        for page in &sheet.pages {
            let words = page.words();
            for asking in ["found by", "Found by", "Name:", "Your name", "Our group:"] {
                assert!(!words.contains(asking), "{name} asks: {asking}");
            }
        }
    }
}

#[test]
fn the_key_of_twelve_kinds_takes_five_pages_at_most_and_the_cover_one() {
    let walked = hedge_walk();
    let booklet = walked.booklet(Stamp::None);
    assert!(key_pages::sheet(&booklet, Paper::A4).pages.len() <= 5);
    for (stamp, stands) in
        [(Stamp::Draft, "This key is a draft."), (Stamp::TryingOut, "is a trying-out copy.")]
    {
        let today = today::sheet(&walked.booklet(stamp), Paper::A4);
        assert!(today.pages[0].words().contains(stands));
        assert!(
            today.pages[1].words().contains("The visit: for the adult who leads"),
            "{stands}"
        );
    }
    let today = today::sheet(&booklet, Paper::A4);
    assert!(today.pages[0].words().contains("How many copies of what"));
    assert!(today.pages[0].words().contains("Cautions"));
    assert!(today.pages[1].words().contains("The visit: for the adult who leads"));
    let answers = |page: &Page| page.words().contains("Answers, for the adult");
    assert!(today.pages.iter().any(answers));
}
