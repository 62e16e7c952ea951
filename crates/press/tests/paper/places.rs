//! Where things stand on a sheet: the numbers of pages, words beside their arrows, and what stands
//! where a key has no question yet.

use spinney_model::{Destination, Scene, Wording};
use spinney_press::sheet::{Page, Path, Placed, Rect, Role, Segment, What};
use spinney_press::{Paper, Stamp, chart, key_pages, today, try_out};

use crate::boxes::faults;
use crate::endless::walked;
use crate::hedge::{hedge_walk, matrix, scene};

fn words(placed: &Placed) -> Option<String> {
    match &placed.what {
        What::Text(block) => Some(block.words().trim().to_owned()),
        _ => None,
    }
}

/// What stands in the head and the foot of a page.
fn running(page: &Page) -> Vec<String> {
    let placed = page.placed();
    let running = placed.iter().filter(|thing| thing.role == Role::Running);
    running.filter_map(|thing| words(thing)).collect()
}

#[test]
fn every_page_says_which_of_how_many_it_is() {
    let walked = hedge_walk();
    let booklet = walked.booklet(Stamp::None);
    for sheet in [key_pages::sheet(&booklet, Paper::A4), today::sheet(&booklet, Paper::A4)] {
        let mut next = (1, 1);
        for page in &sheet.pages {
            let running = running(page);
            let foot = running.iter().find_map(|words| {
                let (number, of) = words.strip_prefix("page ")?.split_once(" of ")?;
                Some((number.parse().unwrap(), of.parse().unwrap()))
            });
            let (number, of): (usize, usize) = foot.unwrap_or_else(|| panic!("{running:?}"));
            // A sheet of several pages counts them through; then the next sheet begins.
            if number == 1 {
                assert_eq!(next.0, 1, "the sheet before is whole");
                next.1 = of;
            }
            assert_eq!((number, of), next, "{running:?}");
            next = (number % of + 1, of);
        }
        assert_eq!(next.0, 1, "the last sheet is whole");
    }
    assert!(key_pages::sheet(&booklet, Paper::A4).pages.len() > 2);
}

#[test]
fn a_key_without_a_question_has_room_for_the_first_one() {
    let mut walked = hedge_walk();
    walked.key.couplets.clear();
    let sheet = key_pages::sheet(&walked.booklet(Stamp::Draft), Paper::A4);
    let all: String = sheet.pages.iter().map(Page::words).collect();
    let none = "There is no question in this key yet. Write the first one here:";
    assert!(all.contains("Questions") && all.contains(none), "{all}");
    assert!(!all.contains("go to "), "{all}");
}

/// The middle of the words lies at the height of the arrow in front of them.
#[test]
fn where_an_answer_leads_stands_behind_its_arrow() {
    let mut walked = hedge_walk();
    walked.key.couplets[1].yes = Destination::Missing;
    let leads = |said: &String| said.starts_with("go to ") || said == "Where to?";
    let mut seen = 0;
    for page in key_pages::sheet(&walked.booklet(Stamp::None), Paper::A4).pages {
        let placed = page.placed();
        for thing in &placed {
            let Some(said) = words(thing).filter(leads) else {
                continue;
            };
            let middle = |thing: &Placed| thing.rect.y + thing.rect.h / 2.0;
            // An arrow is 10 mm long, and ends less than 3 mm before its words.
            let arrow = placed.iter().find(|other| {
                let ends = other.rect.x + other.rect.w;
                matches!(other.what, What::Path(_))
                    && (other.rect.w - 10.0).abs() < 0.5
                    && (0.0..3.0).contains(&(thing.rect.x - ends))
                    && (middle(other) - middle(thing)).abs() < 4.0
            });
            let arrow = arrow.unwrap_or_else(|| panic!("no arrow before “{said}”"));
            let apart = middle(arrow) - middle(thing);
            assert!(apart.abs() < 0.15, "“{said}” is {apart} mm from its arrow");
            seen += 1;
        }
    }
    assert!(seen >= 8, "{seen} answers lead to a question");
}

/// What a drawing takes to the right and down, from the corner of its box.
fn farthest(path: &Path) -> (f64, f64) {
    let mut far = (0.0_f64, 0.0_f64);
    let mut met = |x: f64, y: f64| far = (far.0.max(x), far.1.max(y));
    for segment in &path.segments {
        match *segment {
            Segment::Move(x, y) | Segment::Line(x, y) => met(x, y),
            // The guides of a curve lie outside it.
            Segment::Curve(.., x, y) => met(x, y),
            Segment::Close => {}
        }
    }
    far
}

#[test]
fn every_drawing_keeps_to_its_box_and_no_line_is_thicker_than_a_pen() {
    let walked = hedge_walk();
    let booklet = walked.booklet(Stamp::None);
    let sheets = [key_pages::sheet, chart::sheet, try_out::sheet, today::sheet];
    let mut seen = 0;
    for page in sheets.iter().flat_map(|make| make(&booklet, Paper::A4).pages) {
        for thing in page.placed() {
            let What::Path(path) = &thing.what else { continue };
            let (x, y) = farthest(path);
            let Rect { w, h, .. } = thing.rect;
            // The lines between the cards of a chart have the page for their box.
            if w == 0.0 {
                continue;
            }
            assert!(x < w + 0.1 && y < h + 0.1, "{x} × {y} in {w} × {h}: {path:?}");
            if let Some(pen) = path.pen {
                assert!((0.17..1.2).contains(&pen.width), "{pen:?}");
            }
            seen += 1;
        }
    }
    assert!(seen > 100, "{seen}");
}

/// The name of a kind stands in the middle of its line, as the box to tick does.
#[test]
fn a_name_stands_at_the_height_of_its_box() {
    let walked = hedge_walk();
    let mut seen = 0;
    for page in try_out::sheet(&walked.booklet(Stamp::None), Paper::A4).pages {
        let placed = page.placed();
        let kinds: Vec<&str> =
            walked.matrix.taxa().iter().map(|taxon| taxon.name.as_str()).collect();
        let is_kind = |thing: &&&Placed| words(thing).is_some_and(|it| kinds.contains(&&*it));
        for name in placed.iter().filter(is_kind) {
            let middle = |thing: &Placed| thing.rect.y + thing.rect.h / 2.0;
            // A box of 6 mm, 3 mm before the name.
            let tick = placed.iter().find(|other| {
                let before = name.rect.x - other.rect.x;
                matches!(other.what, What::Path(_))
                    && (other.rect.w - 6.0).abs() < 0.1
                    && (before - 9.0).abs() < 0.1
                    && (middle(other) - middle(name)).abs() < 4.0
            });
            let Some(tick) = tick else { continue };
            let apart = middle(tick) - middle(name);
            assert!(apart.abs() < 0.1, "{apart} mm");
            seen += 1;
        }
    }
    assert_eq!(seen, 12, "names with a box");
}

/// Who listens goes down by headings: after one of a sheet comes one of a part, never of less.
#[test]
fn no_heading_skips_a_level() {
    let walked = hedge_walk();
    let booklet = walked.booklet(Stamp::None);
    for make in [key_pages::sheet, chart::sheet, try_out::sheet, today::sheet] {
        let mut above = 0;
        for page in make(&booklet, Paper::A4).pages {
            for thing in page.placed() {
                let Role::Heading(level) = thing.role else { continue };
                assert!(level <= above + 1, "{:?} of level {level}", words(thing));
                above = level;
            }
        }
        assert!(above > 0);
    }
}

/// A table goes on on the next page before it comes into the foot of this one.
#[test]
fn a_long_list_breaks_above_the_foot_of_the_page() {
    let walked = walked(90, 6, 1, 6);
    let sheet = try_out::sheet(&walked.booklet(Stamp::None), Paper::A4);
    let answers = |page: &&Page| page.words().contains("Answers, for the adult");
    let list: Vec<&Page> = sheet.pages.iter().filter(answers).collect();
    assert!(list.len() > 2, "{} pages", list.len());
    for page in list {
        assert_eq!(faults(page), [""; 0]);
        for thing in page.placed() {
            let low = thing.rect.y + thing.rect.h;
            // The foot is 8 mm high, above a margin of 12 mm.
            let above = thing.role == Role::Running || low <= page.height - 20.0;
            assert!(words(thing).is_none() || above, "{:?} at {low}", words(thing));
        }
    }
}

/// However long and wide a name is, it takes three lines of the list.
#[test]
fn a_long_name_takes_three_lines_of_the_list() {
    let mut walked = hedge_walk();
    let mut taxa = walked.matrix.taxa().to_vec();
    taxa[0].name = "WWWWWW MMMMMM ".repeat(20);
    walked.matrix = matrix(taxa, scene());
    let sheet = try_out::sheet(&walked.booklet(Stamp::None), Paper::A4);
    let mut seen = 0;
    for page in
        sheet.pages.iter().filter(|page| page.words().contains("Answers, for the adult"))
    {
        for thing in page.placed() {
            let What::Text(block) = &thing.what else { continue };
            if block.words().starts_with("WWWWWW MMMMMM") {
                assert_eq!(block.lines.len(), 3, "{}", block.words());
                seen += 1;
            }
        }
    }
    assert_eq!(seen, 1);
}

/// A question of many words stays beside the place it comes from.
#[test]
fn a_long_question_leaves_room_for_where_it_comes_from() {
    let mut walked = hedge_walk();
    let long = "is it so on a leaf or two of it, or ".repeat(9);
    walked.key.couplets[1].wording = Wording::Question(format!("{long}not?"));
    let sheet = key_pages::sheet(&walked.booklet(Stamp::None), Paper::A4);
    assert!(sheet.pages.iter().any(|page| page.words().contains("is it so on a leaf")));
    for page in &sheet.pages {
        assert_eq!(faults(page), [""; 0]);
    }
}

/// What the adults see to goes over several lines within its page.
#[test]
fn long_lines_to_tick_stay_on_the_page() {
    let mut walked = hedge_walk();
    let before_you_go = vec!["see to it all ".repeat(25); 2];
    let scene = Scene { before_you_go, ..scene() };
    walked.matrix = matrix(walked.matrix.taxa().to_vec(), scene);
    let sheet = today::sheet(&walked.booklet(Stamp::None), Paper::A4);
    assert!(sheet.pages[1].words().contains("see to it all"));
    assert_eq!(faults(&sheet.pages[1]), [""; 0]);
}

/// The heads of a table stand on one line.
#[test]
fn the_heads_of_the_list_of_sheets_stand_on_one_line() {
    let walked = hedge_walk();
    let sheet = today::sheet(&walked.booklet(Stamp::None), Paper::A4);
    let placed = sheet.pages[0].placed();
    let height = |head: &str| {
        let is_head = |thing: &&&Placed| words(thing).as_deref() == Some(head);
        placed.iter().find(is_head).unwrap_or_else(|| panic!("no {head}")).rect.y
    };
    let heights = ["Sheet", "What for", "Pages", "Copies"].map(height);
    assert!(heights.iter().all(|y| (y - heights[0]).abs() < 0.01), "{heights:?}");
}

/// White letters on a tab can be read only where the tab is behind them.
#[test]
fn a_tab_on_a_chart_is_wider_than_its_words() {
    let walked = hedge_walk();
    let mut seen = 0;
    for page in chart::sheet(&walked.booklet(Stamp::None), Paper::A4).pages {
        let placed = page.placed();
        for thing in &placed {
            let starts = |said: &String| said == "start here" || said.ends_with("from page 1");
            let Some(said) = words(thing).filter(starts) else { continue };
            let Rect { x, y, w, h } = thing.rect;
            let tab = placed.iter().any(|other| {
                let Rect { x: left, y: top, w: wide, h: high } = other.rect;
                matches!(other.what, What::Path(_))
                    && high < 3.0 * h
                    && left + 1.0 < x
                    && x + w + 1.0 < left + wide
                    && top < y + h / 2.0
                    && y + h / 2.0 < top + high
            });
            assert!(tab, "no tab behind “{said}”");
            seen += 1;
        }
    }
    assert_eq!(seen, 2);
}

/// Labels are cut from sheets that lie in the printer as the other lists do.
#[test]
fn number_labels_stand_on_an_upright_page() {
    let walked = hedge_walk();
    let sheet = try_out::sheet(&walked.booklet(Stamp::None), Paper::A4);
    let labels = |page: &&Page| page.words().contains("Lay one number beside each find");
    let labels: Vec<&Page> = sheet.pages.iter().filter(labels).collect();
    assert_eq!(labels.len(), 1);
    assert!(labels[0].height > labels[0].width);
}
