//! The key for the pocket: folded as a hand folds it, read back, and never with anything cut off.

use std::collections::BTreeMap;

use spinney_model::{Couplet, Destination, End, Key, Taxon, TaxonIx, Wording};
use spinney_press::sheet::ink::Dash;
use spinney_press::sheet::{Page, Placed, Rect, Role, What};
use spinney_press::{Booklet, Paper, Stamp, pdf, pocket};

use crate::hedge::{self, Walked, hedge_walk};
use crate::shown;
use crate::words::poppler;

/// A place on the sheet: its column from the left, its row from above.
type Panel = (usize, usize);

fn only_page(booklet: &Booklet, paper: Paper) -> Page {
    let sheet = pocket::sheet(booklet, paper);
    assert_eq!(sheet.pages.len(), 1, "one sheet of paper, printed on one side");
    sheet.pages.into_iter().next().unwrap()
}

fn panel_of(page: &Page, rect: &Rect) -> Panel {
    let (w, h) = (page.width / 4.0, page.height / 2.0);
    let (x, y) = (rect.x + rect.w / 2.0, rect.y + rect.h / 2.0);
    ((x / w) as usize, (y / h) as usize)
}

fn words_of(placed: &Placed) -> Option<String> {
    match &placed.what {
        What::Text(block) => Some(block.words().trim().to_owned()),
        _ => None,
    }
}

/// The panels in the order in which they are read aloud, each with whether its words are upside
/// down: all of them, or none.
fn in_reading_order(page: &Page) -> Vec<(Panel, bool)> {
    let mut order: Vec<(Panel, bool)> = Vec::new();
    for placed in page.placed().into_iter().filter(|placed| words_of(placed).is_some()) {
        let read = (panel_of(page, &placed.rect), placed.turned);
        if order.last() != Some(&read) {
            order.push(read);
        }
    }
    order
}

/// The straight lines of a dash, as boxes.
fn lines(page: &Page, dash: Dash) -> Vec<Rect> {
    let of_sheet = |placed: &&Placed| match &placed.what {
        What::Path(path) => {
            path.pen.is_some_and(|pen| pen.dash == dash)
                && path.segments.len() == 2
                && placed.rect.w.max(placed.rect.h) > page.width / 8.0
        }
        _ => false,
    };
    page.placed().into_iter().filter(of_sheet).map(|placed| placed.rect).collect()
}

/// Whether two panels one above the other still hang together.
fn uncut(page: &Page, column: usize) -> bool {
    let w = page.width / 4.0;
    let middle = (column as f64 + 0.5) * w;
    let along = |line: &Rect| (line.y - page.height / 2.0).abs() < 0.5;
    let cuts = |line: &Rect| along(line) && line.x < middle && middle < line.x + line.w;
    !lines(page, Dash::Dashed).iter().any(cuts)
}

/// Where a crease between two columns is when the sheet stands as a star, by its direction from
/// the middle in degrees, seen from above with the reader at 270; None: it is the spine.
///
/// The upper row is folded back behind the lower one first; then both ends are pushed to the
/// middle, and the cut opens towards the reader and away from him.
fn direction(crease: usize, row: usize) -> Option<f64> {
    match (crease, row) {
        (0, _) => Some(180.0),
        (2, 1) => Some(270.0),
        (2, _) => Some(90.0),
        (4, _) => Some(360.0),
        _ => None,
    }
}

/// The spreads of the folded booklet, left panel and right panel, beginning with the one that has
/// this panel on its right.
fn spreads(page: &Page, cover: Panel) -> Vec<[Panel; 2]> {
    let mut spreads: Vec<(f64, [Panel; 2])> = Vec::new();
    for row in 0..2 {
        for spine in [1, 3] {
            // The panels on both sides of a spine face each other.
            let sides = [((spine - 1, row), spine - 1), ((spine, row), spine + 1)];
            let mut sides =
                sides.map(|(panel, crease)| (direction(crease, row).unwrap(), panel));
            // The one at the end of the circle is at its beginning as well.
            if sides.iter().any(|(at, _)| *at == 90.0) {
                sides.iter_mut().filter(|(at, _)| *at == 360.0).for_each(|(at, _)| *at = 0.0);
            }
            sides.sort_by(|one, other| one.0.total_cmp(&other.0));
            // Who stands outside and looks at the spine has the smaller direction on the left.
            let [left, right] = sides;
            spreads.push(((left.0 + right.0) / 2.0, [left.1, right.1]));
        }
    }
    for column in 0..4 {
        // A leaf is two panels back to back: at the ends they hang together above.
        assert_eq!(uncut(page, column), matches!(column, 0 | 3), "the cut beside {column}");
    }
    spreads.sort_by(|one, other| one.0.total_cmp(&other.0));
    let first = spreads.iter().position(|(_, [_, right])| *right == cover).unwrap();
    spreads.rotate_left(first);
    spreads.into_iter().map(|(_, panels)| panels).collect()
}

#[test]
fn folded_the_pages_follow_each_other_and_stand_upright() {
    let walked = hedge_walk();
    for paper in [Paper::A4, Paper::Letter, Paper::A3] {
        let page = only_page(&walked.booklet(Stamp::None), paper);
        assert!(page.width > page.height, "it lies on its side");
        let order = in_reading_order(&page);
        assert_eq!(order.len(), 8, "{paper:?}: {order:?}");
        for ((_, row), upside_down) in &order {
            // The upper row is folded back: what was its top is at the foot.
            assert_eq!(*upside_down, *row == 0, "{paper:?}: upright once it is folded");
        }
        let read: BTreeMap<Panel, usize> =
            order.iter().map(|(panel, _)| *panel).zip(1..).collect();
        let numbers: Vec<[usize; 2]> = spreads(&page, order[0].0)
            .into_iter()
            .map(|spread| spread.map(|panel| read[&panel]))
            .collect();
        assert_eq!(numbers, [[8, 1], [2, 3], [4, 5], [6, 7]], "{paper:?}");
    }
}

#[test]
fn it_is_folded_and_cut_where_its_pages_meet() {
    let walked = hedge_walk();
    for paper in [Paper::A4, Paper::Letter] {
        let page = only_page(&walked.booklet(Stamp::None), paper);
        let (w, h) = (page.width / 4.0, page.height / 2.0);
        let cut = lines(&page, Dash::Dashed);
        let along = |line: &Rect| (line.x, line.y, line.w);
        assert_eq!(cut.iter().map(along).collect::<Vec<_>>(), [(w, h, 2.0 * w)]);
        let folds = lines(&page, Dash::Dotted);
        let (upright, across): (Vec<Rect>, Vec<Rect>) =
            folds.into_iter().partition(|it| it.h > it.w);
        assert_eq!(
            upright.iter().map(|it: &Rect| it.x).collect::<Vec<_>>(),
            [w, 2.0 * w, 3.0 * w]
        );
        assert!(upright.iter().all(|it| it.y == 12.0 && it.h == page.height - 24.0));
        let ends = [(12.0, h, w - 12.0), (3.0 * w, h, w - 12.0)];
        assert_eq!(across.iter().map(along).collect::<Vec<_>>(), ends);
        for placed in page.placed() {
            let Some(words) = words_of(placed) else { continue };
            let (column, row) = panel_of(&page, &placed.rect);
            let cell = Rect::new(column as f64 * w, row as f64 * h, w, h);
            assert!(placed.rect.lies_in(&cell), "it lies across a fold: {words}");
        }
    }
}

/// Every question and every way of it, in the order of the key.
fn expected(walked: &Walked) -> Vec<String> {
    let mut expected = Vec::new();
    for couplet in &walked.key.couplets {
        expected.push(couplet.wording.first().to_owned());
        for (answer, to) in [("yes", &couplet.yes), ("no", &couplet.no)] {
            expected.push(answer.to_owned());
            match to {
                Destination::Couplet(number) => expected.push(format!("go to {number}")),
                Destination::End(end) => {
                    let names =
                        end.taxa.iter().map(|ix| walked.matrix.taxon(*ix).name.as_str());
                    expected.push(names.collect::<Vec<_>>().join(" or "));
                }
                Destination::Missing => {}
            }
        }
    }
    expected
}

fn assert_follows(words: &str, texts: &[String]) {
    let words = words.split_whitespace().collect::<Vec<_>>().join(" ");
    let mut rest = words.as_str();
    for text in texts {
        let at = rest.find(text.as_str());
        let at = at.unwrap_or_else(|| panic!("“{text}” does not follow in: {rest}"));
        rest = &rest[at + text.len()..];
    }
}

#[test]
fn every_kind_comes_out_of_it_as_another_reader_finds_it() {
    let walked = hedge_walk();
    for paper in [Paper::A4, Paper::Letter] {
        let booklet = walked.booklet(Stamp::None);
        let bytes = pdf::write(&pocket::sheet(&booklet, paper)).unwrap();
        let words = poppler("pdftotext", &["-raw"], "pocket.pdf", &bytes);
        let words = words.split_whitespace().collect::<Vec<_>>().join(" ");
        assert_follows(&words, &expected(&walked));
        for taxon in walked.matrix.taxa() {
            assert!(words.contains(&taxon.name), "{} does not come out", taxon.name);
        }
        let page = only_page(&booklet, paper);
        assert!(!page.words().contains('…'), "something is cut off");
        for taxon in walked.matrix.taxa() {
            let words = page.words();
            let caution = taxon.caution.iter().all(|text| words.contains(text.as_str()));
            assert!(caution, "{} may hurt", taxon.name);
        }
        let tags = poppler("pdfinfo", &["-struct-text"], "pocket-tags.pdf", &bytes);
        let heard = ["H1", "Hedge and street walk", "Before you touch", "Question"];
        assert_follows(&tags, &heard.map(str::to_owned));
    }
}

#[test]
fn how_the_key_stands_is_on_its_cover_and_on_every_page_with_questions() {
    let walked = hedge_walk();
    for (stamp, says) in [(Stamp::Draft, "DRAFT"), (Stamp::TryingOut, "trying-out copy")] {
        let page = only_page(&walked.booklet(stamp), Paper::A4);
        let (mut said, mut asked) = (Vec::new(), Vec::new());
        for placed in page.placed() {
            let panel = panel_of(&page, &placed.rect);
            match words_of(placed) {
                Some(words) if words == says => said.push(panel),
                Some(words) if words.starts_with("Question") => asked.push(panel),
                _ => {}
            }
        }
        assert!(said.contains(&(1, 1)), "it is on the cover");
        assert!(asked.len() > 2 && asked.iter().all(|panel| said.contains(panel)), "{said:?}");
    }
}

#[test]
fn answers_are_drawn_where_there_is_room() {
    let mut walked = shown::linked(&[(0, 0, 0), (1, 0, 1), (2, 0, 2)]);
    // Five questions leave room.
    walked.key.couplets.truncate(5);
    let figures = |page: &Page| {
        let drawn = |placed: &&Placed| {
            matches!(&placed.role, Role::Figure(words) if words.starts_with("yes: ")
                || words.starts_with("no: "))
        };
        page.placed().into_iter().filter(drawn).count()
    };
    let page = only_page(&shown::drawn(&walked), Paper::A4);
    assert!(figures(&page) > 0, "{}", page.words());
    assert_eq!(figures(&only_page(&walked.booklet(Stamp::None), Paper::A4)), 0);
    // The same with so many kinds that there is no room: all questions, and nothing is drawn.
    let mut long = shown::linked(&[(0, 0, 0), (1, 0, 1), (2, 0, 2)]);
    let last = long.key.couplets.len() as u32;
    for more in 1..=30 {
        let question = format!("Is this the question number {more} that takes much room here?");
        let to = |to: u32| Destination::Couplet(to);
        let end = Destination::End(End::of([TaxonIx(0)]));
        let no = if more == 30 { end.clone() } else { to(last + more + 1) };
        long.key.couplets.push(couplet(last + more, question, end, no));
        if pocket::refused(&shown::drawn(&long), Paper::A4).is_some() {
            long.key.couplets.pop();
            break;
        }
    }
    let asked = long.key.couplets.len();
    assert!(asked > last as usize, "there was room for more");
    let page = only_page(&shown::drawn(&long), Paper::A4);
    assert_eq!(figures(&page), 0, "drawings go before questions do");
    let words = page.words();
    let whole = long.key.couplets.iter().all(|it| words.contains(it.wording.first()));
    assert!(whole && !words.contains('…'));
}

fn couplet(number: u32, question: String, yes: Destination, no: Destination) -> Couplet {
    let wording = Wording::Question(question);
    Couplet { number, back: None, wording, ask: None, yes, no, kept: false, line: None }
}

#[test]
fn a_key_too_long_for_eight_pages_is_refused_with_a_remedy() {
    let taxa: Vec<_> = (1..=60).map(|n| Taxon::named(format!("kind {n}"))).collect();
    let couplets = (1..60u32).map(|number| {
        let at = number as usize;
        let end = |kind: usize| Destination::End(End::of([TaxonIx(kind)]));
        let no = if number == 59 { end(59) } else { Destination::Couplet(number + 1) };
        couplet(number, format!("Is it of the kind number {number}?"), end(at - 1), no)
    });
    let key = Key { couplets: couplets.collect() };
    let walks = hedge::walks(&key);
    let matrix = hedge::matrix(taxa, hedge::scene());
    let walked = Walked { matrix, key, walks, pictures: BTreeMap::new() };
    let booklet = walked.booklet(Stamp::None);
    let why = pocket::refused(&booklet, Paper::A4).expect("59 questions are too many");
    for language in ["en", "de"] {
        let t = spinney_voice::Tongue::for_person(&[language.to_owned()]);
        let booklet = Booklet { tongue: t, ..walked.booklet(Stamp::None) };
        let words = only_page(&booklet, Paper::A4).words();
        let words = words.split_whitespace().collect::<Vec<_>>().join(" ");
        for said in [why.to_owned(), format!("{why}-remedy")] {
            assert!(words.contains(&t.say(&said)), "{words}");
        }
        assert!(!words.contains("1?"), "half a key is worse than none");
    }
    assert_eq!(pocket::refused(&hedge_walk().booklet(Stamp::None), Paper::A4), None);
}
