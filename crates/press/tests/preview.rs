//! The preview is the sheet: every letter and line of a page stands in the picture where the
//! box says.

#[path = "page_replay/hedge.rs"]
mod hedge;

use spinney_press::sheet::ink::MM_IN_PT;
use spinney_press::sheet::{Page, Sheet, What};
use spinney_press::{Paper, Stamp, chart, key_pages, svg, today};

fn sheets(walk: &hedge::Hedge, stamp: Stamp) -> Vec<Sheet> {
    let booklet = walk.booklet(stamp);
    vec![
        key_pages::sheet(&booklet, Paper::A4),
        chart::sheet(&booklet, Paper::A3),
        today::sheet(&booklet, Paper::Letter),
    ]
}

/// The numbers behind a mark, up to the next bracket.
fn numbers(text: &str, mark: &str) -> Vec<f64> {
    let inside = text.split(mark).nth(1).and_then(|rest| rest.split(')').next());
    let inside = inside.unwrap_or_else(|| panic!("no {mark} in {text}"));
    inside.split(' ').map(|number| number.parse().expect("a number")).collect()
}

/// The places of the letters of a stretch, in its own units.
fn uses(line: &str) -> Vec<f64> {
    let places = line.split("<use href=\"#").skip(1);
    places
        .map(|place| {
            let x = place.split("x=\"").nth(1).and_then(|rest| rest.split('"').next());
            x.and_then(|x| x.parse().ok()).expect("a letter has a place")
        })
        .collect()
}

/// How many stretches, shapes and pictures a page shows.
fn compare(page: &Page) -> (usize, usize, usize) {
    let drawn = svg::write(page);
    let mut stretches = drawn.lines().filter(|line| line.starts_with("<g "));
    let (mut parts, mut shapes, mut pictures) = (0, 0, 0);
    for placed in page.placed() {
        let rect = placed.rect;
        let block = match &placed.what {
            What::Text(block) => block,
            What::Path(_) => {
                shapes += 1;
                continue;
            }
            What::Picture(_) => {
                pictures += 1;
                continue;
            }
        };
        for (line, part) in block.lines.iter().flat_map(|l| l.parts.iter().map(move |p| (l, p)))
        {
            parts += 1;
            let stretch = stretches.next().expect("every stretch is drawn");
            let start = numbers(stretch, "translate(");
            assert!((start[0] - rect.x - part.x).abs() < 0.001, "{}", part.text);
            assert!((start[1] - rect.y - line.baseline).abs() < 0.001, "{}", part.text);
            let letters = part.text.chars().filter(|letter| !letter.is_whitespace()).count();
            let places = uses(stretch);
            assert!(places.len() <= letters, "{}", part.text);
            let scale = numbers(stretch, "scale(")[0];
            let width: f64 = part.glyphs.iter().map(|glyph| glyph.advance).sum();
            let width = width * part.style.size * MM_IN_PT;
            for place in places {
                let along = place * scale;
                assert!(along > -1.0 && along < width + 0.01, "{}: {along}", part.text);
            }
        }
    }
    assert!(stretches.next().is_none(), "no letter is drawn that is in no box");
    let body = drawn.split("</defs>").nth(1).expect("a page has a body");
    assert_eq!(body.matches("<path ").count(), shapes);
    assert_eq!(body.matches("<image ").count(), pictures);
    (parts, shapes, pictures)
}

#[test]
fn every_letter_and_line_stands_where_its_box_says() {
    for walk in [hedge::hedge(), hedge::hostile(), hedge::broken()] {
        for sheet in sheets(&walk, Stamp::Draft) {
            for page in &sheet.pages {
                let (parts, shapes, _) = compare(page);
                assert!(parts > 3 && shapes > 0, "{}", sheet.title);
            }
        }
    }
}

#[test]
fn nothing_that_was_typed_stands_in_a_preview() {
    for sheet in sheets(&hedge::hostile(), Stamp::None) {
        for page in &sheet.pages {
            let drawn = svg::write(page);
            assert!(!drawn.contains("script") && !drawn.contains("onerror"));
            assert!(drawn.matches("http").count() == 1, "only the name of the format");
            assert_eq!(drawn, svg::write(page));
        }
    }
}

#[test]
fn a_page_is_as_large_as_its_paper() {
    let walk = hedge::hedge();
    let sheet = key_pages::sheet(&walk.booklet(Stamp::None), Paper::Letter);
    let drawn = svg::write(&sheet.pages[0]);
    assert!(drawn.contains("width=\"215.9mm\" height=\"279.4mm\" viewBox=\"0 0 215.9 279.4\""));
}
