//! Every sheet of a few collections, piece by piece: what stands where, to a hundredth of a
//! millimetre, so that a change of any is seen.
//!
//! A line a page with counts and a checksum of all that is on it; the first page of each sheet of
//! the walk along the hedge also in full, so that a change can be read. Written anew by
//! `WRITE_APPROVED=1 cargo test --workspace --test paper approved`. Where only a checksum is
//! another, writing with `ALL_PAGES=1` before and after the change says which piece moved.

use std::fmt::Write as _;

use spinney_model::SecondLooks;
use spinney_press::sheet::ink::{Inks, Letters, Pen};
use spinney_press::sheet::{Page, Path, Placed, Rect, Segment, What};
use spinney_press::sheets::{Printing, SHEETS};
use spinney_press::{Booklet, Drawn, Paper, Stamp};
use spinney_voice::Tongue;

use crate::hedge::{self, Walked};
use crate::words_to_look_at::word;
use crate::{endless, measured, second_language, second_look};

/// A length in mm; nothing below nothing.
fn mm(length: f64) -> f64 {
    (length * 100.0).round() / 100.0 + 0.0
}

fn place(Rect { x, y, w, h }: Rect) -> String {
    format!("{} {} {}x{}", mm(x), mm(y), mm(w), mm(h))
}

fn pen(pen: &Pen) -> String {
    format!("{:?} {} {:?}", pen.ink, mm(pen.width), pen.dash)
}

fn path(path: &Path) -> String {
    let mut said = String::new();
    for segment in &path.segments {
        let _ = match *segment {
            Segment::Move(x, y) => write!(said, " M{},{}", mm(x), mm(y)),
            Segment::Line(x, y) => write!(said, " L{},{}", mm(x), mm(y)),
            Segment::Curve(a, b, c, d, x, y) => {
                let guides = [a, b, c, d].map(mm);
                write!(said, " C{guides:?},{},{}", mm(x), mm(y))
            }
            Segment::Close => write!(said, " Z"),
        };
    }
    let fill = path.fill.map_or(String::new(), |ink| format!(" fill {ink:?}"));
    let pen = path.pen.as_ref().map_or(String::new(), |it| format!(" pen {}", pen(it)));
    format!("path{fill}{pen}{said}")
}

/// A piece in a line: where, what for, and what.
fn piece(placed: &Placed, window: Option<Rect>) -> String {
    let what = match &placed.what {
        What::Text(block) => {
            let mut said = String::from("text");
            for line in &block.lines {
                let _ = write!(said, " | {} {}", mm(line.top), mm(line.baseline));
                for part in &line.parts {
                    let style = format!("{:?}", part.style).replace("Style ", "");
                    let _ = write!(said, " {} {style} {:?}", mm(part.x), part.text);
                }
            }
            said
        }
        What::Path(it) => path(it),
        What::Picture(pixels) => format!("picture {}x{}", pixels.width, pixels.height),
    };
    let turned = if placed.turned { " turned" } else { "" };
    let window = window.map_or(String::new(), |it| format!(" through {}", place(it)));
    format!("{}{turned}{window} {:?} {what}", place(placed.rect), placed.role)
}

/// All pieces of a page in reading order.
fn pieces(page: &Page) -> Vec<String> {
    page.seen().into_iter().map(|(placed, window)| piece(placed, window)).collect()
}

/// So that a page of a thousand strokes is one line.
fn checksum(lines: &[String]) -> u64 {
    let text: String = lines.iter().map(|line| format!("{line}\n")).collect();
    spinney_fixtures::approved::checksum(&text)
}

/// How groups are nested on a page, which a listener hears.
fn groups(page: &Page) -> String {
    format!("{:?}", page.nodes.iter().map(group).collect::<String>())
}

fn group(node: &spinney_press::sheet::Node) -> String {
    use spinney_press::sheet::Node;
    match node {
        Node::Placed(_) => ".".to_owned(),
        Node::Group(group, inner) => {
            format!("{group:?}({})", inner.iter().map(self::group).collect::<String>())
        }
        Node::Window(_, inner) => {
            format!("Window({})", inner.iter().map(self::group).collect::<String>())
        }
    }
}

/// All sheets as a line a page; those of `full` with the pieces of their first page below.
fn lines(booklet: &Booklet<'_>, printing: Printing, full: bool) -> Vec<String> {
    let all_pages = std::env::var_os("ALL_PAGES").is_some();
    let mut lines = Vec::new();
    for kind in &SHEETS {
        if !(kind.has_something)(booklet) {
            lines.push(format!("{}: nothing to print", kind.name));
            continue;
        }
        if let Some(why) = kind.not_printed(booklet, printing) {
            lines.push(format!("{}: {why}", kind.name));
            continue;
        }
        let sheet = kind.printed(booklet, printing);
        lines.push(format!("{}: {:?}, {}", kind.name, sheet.title, sheet.language));
        for (page, number) in sheet.pages.iter().zip(1..) {
            let pieces = pieces(page);
            let count = |of: fn(&What) -> bool| {
                page.placed().iter().filter(|placed| of(&placed.what)).count()
            };
            lines.push(format!(
                "  page {number}, {}x{}: {} texts, {} paths, {} pictures, {:016x} {:016x}",
                mm(page.width),
                mm(page.height),
                count(|what| matches!(what, What::Text(_))),
                count(|what| matches!(what, What::Path(_))),
                count(|what| matches!(what, What::Picture(_))),
                checksum(&pieces),
                checksum(&[groups(page)]),
            ));
            if (full && number == 1) || all_pages {
                lines.extend(pieces.iter().map(|piece| format!("    {}", shortened(piece))));
            }
        }
    }
    lines
}

/// A drawing of many strokes is cut here; the checksum has it whole.
fn shortened(piece: &str) -> String {
    match piece.char_indices().nth(170) {
        Some((at, _)) => format!("{}…", &piece[..at]),
        None => piece.to_owned(),
    }
}

fn holds(name: &str, lines: &[String]) {
    spinney_fixtures::approved::holds(env!("CARGO_MANIFEST_DIR"), name, lines);
}

/// The walk with lengths, drawn leaves, drawn words and things to look at twice.
fn drawn<'b>(
    walked: &'b Walked,
    drawings: &'b [Option<spinney_model::Drawing>],
) -> Booklet<'b> {
    let booklet = measured::booklet(walked, drawings);
    Booklet { drawn: Drawn { word, ..booklet.drawn }, ..booklet }
}

#[test]
fn approved_sheets_of_the_walk_on_a4_and_letter() {
    let (walked, drawings) = (measured::walk(), measured::drawings());
    let booklet = drawn(&walked, &drawings);
    holds("walk_on_a4.txt", &lines(&booklet, Printing::USUAL, true));
    let letter = Printing { paper: Paper::Letter, ..Printing::USUAL };
    holds("walk_on_letter.txt", &lines(&booklet, letter, false));
}

#[test]
fn approved_sheets_of_the_walk_in_large_letters_and_black() {
    let (walked, drawings) = (measured::walk(), measured::drawings());
    let booklet = Booklet { stamp: Stamp::Draft, ..drawn(&walked, &drawings) };
    let printing = Printing { letters: Letters::Large, inks: Inks::Black, ..Printing::USUAL };
    holds("walk_large_and_black.txt", &lines(&booklet, printing, false));
}

#[test]
fn approved_sheets_in_german() {
    let walked = second_look::walk_with_hairs();
    let booklet = Booklet {
        tongue: Tongue::for_person(&["de".to_owned()]),
        ..walked.booklet(Stamp::None)
    };
    holds("walk_in_german.txt", &lines(&booklet, Printing::USUAL, false));
}

#[test]
fn approved_sheets_in_two_languages() {
    let walked = second_language::in_two(&second_language::NAMES, "pl");
    let booklet = walked.booklet(Stamp::None);
    let letter = Printing { paper: Paper::Letter, ..Printing::USUAL };
    let mut all = lines(&booklet, Printing::USUAL, false);
    all.extend(lines(&booklet, letter, false));
    holds("walk_in_two_languages.txt", &all);
}

#[test]
fn approved_sheets_of_a_deep_key_with_long_names() {
    let walked = endless::walked(14, 9, 2, 60);
    holds("deep_key.txt", &lines(&walked.booklet(Stamp::None), Printing::USUAL, false));
}

#[test]
fn approved_sheets_of_one_question_and_of_none() {
    let taxa = ["hazel", "lime"].map(spinney_model::Taxon::named).to_vec();
    let matrix = hedge::matrix(taxa, hedge::scene());
    let mut all = Vec::new();
    for questions in [&[("Is the edge toothed?", "hazel", "lime")][..], &[]] {
        let key = hedge::key(&matrix, questions);
        let walks = hedge::walks(&key);
        let (matrix, pictures) = (matrix.clone(), std::collections::BTreeMap::new());
        let walked = Walked { matrix, key, walks, pictures };
        let looks = SecondLooks::new();
        let booklet = Booklet { second_looks: &looks, ..walked.booklet(Stamp::None) };
        all.extend(lines(&booklet, Printing::USUAL, false));
    }
    holds("one_question_and_none.txt", &all);
}
