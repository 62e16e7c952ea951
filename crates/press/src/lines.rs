//! A drawing as somebody sees it: in a page, and on a sheet.
//!
//! From the lines of a [`Drawing`] to SVG, and to a piece of paper. What is drawn, and whether
//! it is true, `draw` knows. A drawing holds numbers alone, so nothing that was typed can get
//! into a page by it.

use std::fmt::Write;

use maud::{Markup, PreEscaped, html};
use spinney_model::limits::DRAWING_POINTS;
use spinney_model::{Drawing, DrawnWord, Figure, KeptDrawing, KeptStroke, Stroke, Weight};
use spinney_voice::Tongue;

use crate::sheet::ink::{Ink, Pen};
use crate::sheet::{Path, Piece, Role, Segment};

/// The drawing on paper, so high in mm; a listener hears the words.
pub(crate) fn piece(drawing: &Drawing, high: f64, words: String) -> Piece {
    let [left, top, width, height] = drawing.frame;
    let scale = high / height;
    let place = |(x, y): (f64, f64)| ((x - left) * scale, (y - top) * scale);
    let mut whole = Piece::blank(width * scale, high);
    let mut role = Role::Figure(words);
    for same in drawing.strokes.chunk_by(|one, other| one.weight == other.weight) {
        let mut segments = Vec::new();
        for stroke in same {
            let points: Vec<_> = stroke.points.iter().copied().map(place).collect();
            for (at, (x, y)) in thinned(&points).into_iter().enumerate() {
                segments.push(if at == 0 { Segment::Move(x, y) } else { Segment::Line(x, y) });
            }
        }
        let path = Path { segments, fill: None, pen: Some(pen(same[0].weight, scale)) };
        let lines = Piece::path(width * scale, high, path, role);
        // All of it is one figure.
        role = Role::Decoration;
        whole = whole.with(0.0, 0.0, lines);
    }
    whole
}

/// The drawing as a collection keeps it; None: it would be larger than what is kept.
pub fn kept(drawing: &Drawing) -> Option<KeptDrawing> {
    let whole = |mm: f64| i32::try_from(hundredths(mm)).ok();
    let stroke = |stroke: &Stroke| {
        let points = thinned(&stroke.points).into_iter();
        let points = points.map(|(x, y)| Some((whole(x)?, whole(y)?)));
        Some(KeptStroke { weight: stroke.weight, points: points.collect::<Option<_>>()? })
    };
    let strokes = drawing.strokes.iter().map(stroke).collect::<Option<Vec<_>>>()?;
    let [left, top, width, height] = drawing.frame.map(whole);
    let frame = [left?, top?, width?, height?];
    let points: usize = strokes.iter().map(|stroke| stroke.points.len()).sum();
    (points <= DRAWING_POINTS).then_some(KeptDrawing { frame, strokes })
}

/// How far a line on paper may be from the one that was drawn, in mm: less than a dot of a printer
/// of 1,200 to the inch.
const NEAR: f64 = 0.02;

/// The same line with as few points as it needs: none that was left out is further from it than
/// [`NEAR`].
///
/// Source: Ramer 1972; Douglas and Peucker 1973 (from memory).
fn thinned(points: &[(f64, f64)]) -> Vec<(f64, f64)> {
    let mut kept = vec![false; points.len()];
    let mut open = vec![(0, points.len().saturating_sub(1))];
    while let Some((first, last)) = open.pop() {
        let (Some(a), Some(b)) = (points.get(first), points.get(last)) else { continue };
        (kept[first], kept[last]) = (true, true);
        let away = |at: usize| distance(points[at], *a, *b);
        let furthest =
            (first + 1..last).max_by(|one, other| away(*one).total_cmp(&away(*other)));
        if let Some(at) = furthest.filter(|at| away(*at) > NEAR) {
            open.extend([(first, at), (at, last)]);
        }
    }
    points.iter().zip(kept).filter(|(_, kept)| *kept).map(|(point, _)| *point).collect()
}

/// How far a point is from the line between two others.
fn distance((x, y): (f64, f64), (ax, ay): (f64, f64), (bx, by): (f64, f64)) -> f64 {
    let (dx, dy) = (bx - ax, by - ay);
    let length = dx * dx + dy * dy;
    let along = match length > 0.0 {
        true => (((x - ax) * dx + (y - ay) * dy) / length).clamp(0.0, 1.0),
        false => 0.0,
    };
    (x - ax - along * dx).hypot(y - ay - along * dy)
}

/// Lines keep their weights beside each other however small the drawing is, and none gets lost
/// on a copier; what is spoken of is green besides.
fn pen(weight: Weight, scale: f64) -> Pen {
    let ink = match weight {
        Weight::Hatch | Weight::Heavy => Ink::Hedge,
        Weight::Fine | Weight::Midrib | Weight::Outline | Weight::Twig => Ink::Ink,
    };
    let wide = match weight {
        Weight::Fine => 0.25,
        Weight::Hatch | Weight::Midrib => 0.4,
        Weight::Outline => 0.6,
        Weight::Twig => 1.1,
        Weight::Heavy => 1.3,
    };
    Pen::solid((wide * scale).max(Pen::THINNEST), ink)
}

/// The drawings of a word in a page, its own first, beside what it is taken for.
pub fn figures(t: Tongue, word: &DrawnWord) -> Markup {
    let figure = |shown: &Figure, other: bool| {
        html! {
            figure.other[other] {
                (PreEscaped(svg(&shown.drawing, "leaf")))
                figcaption { (t.say(&format!("words-draw-{}", shown.caption))) }
            }
        }
    };
    html! {
        div.two-states.three[word.own.len() + word.other.len() > 2] {
            @for own in &word.own { (figure(own, false)) }
            @for other in &word.other { (figure(other, true)) }
        }
    }
}

/// The part of a page that places a drawing: as SVG, one path after the other. It says nothing
/// to a screen reader, since the name beside it does. Its lines get their weight by classes:
/// `fine`, `hatch`, `midrib`, `outline`, `wood`, `heavy`.
pub fn svg(drawing: &Drawing, class: &str) -> String {
    let lines = paths(&drawing.strokes);
    let frame = frame(drawing);
    format!(
        "<svg class=\"{class}\" viewBox=\"{frame}\" aria-hidden=\"true\" focusable=\"false\">{lines}</svg>"
    )
}

/// The drawing as a file of its own, in its true size, for whoever prints it, hangs it up or colours
/// it in; its title is what a listener hears.
pub fn file(drawing: &Drawing, title: &str) -> String {
    let [_, _, width, height] = drawing.frame;
    let (red, green, blue) = Ink::Ink.rgb();
    let mut text = format!(
        "<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"{width:.2}mm\" height=\"{height:.2}mm\" \
         viewBox=\"{}\" role=\"img\" fill=\"none\" stroke=\"#{red:02x}{green:02x}{blue:02x}\" \
         stroke-linecap=\"round\" stroke-linejoin=\"round\">\n<title>{}</title>\n",
        drawing.frame.map(|side| format!("{side:.2}")).join(" "),
        html! { (title) }.into_string()
    );
    for same in drawing.strokes.chunk_by(|one, other| one.weight == other.weight) {
        let wide = pen(same[0].weight, 1.0).width;
        let lines =
            same.iter().map(|stroke| path(&thinned(&stroke.points))).collect::<String>();
        let _ = writeln!(text, "<path stroke-width=\"{wide}\" d=\"{lines}\"/>");
    }
    text.push_str("</svg>\n");
    text
}

/// The same under a name, to be placed more than once.
pub(crate) fn symbol(drawing: &Drawing, id: &str) -> String {
    format!(
        "<symbol id=\"{id}\" viewBox=\"{}\">{}</symbol>",
        frame(drawing),
        paths(&drawing.strokes)
    )
}

fn frame(drawing: &Drawing) -> String {
    let [left, top, width, height] = drawing.frame;
    format!("{left} {top} {width} {height}")
}

fn paths(strokes: &[Stroke]) -> String {
    let mut text = String::new();
    for same in strokes.chunk_by(|one, other| one.weight == other.weight) {
        let class = match same[0].weight {
            Weight::Fine => "fine",
            Weight::Hatch => "hatch",
            Weight::Midrib => "midrib",
            Weight::Outline => "outline",
            Weight::Twig => "wood",
            Weight::Heavy => "heavy",
        };
        let lines = same.iter().map(|stroke| path(&stroke.points)).collect::<String>();
        let _ = write!(text, "<path class=\"{class}\" d=\"{lines}\"></path>");
    }
    text
}

/// A path of SVG, to a hundredth of a millimetre; every point is told from the one before, in
/// whole hundredths, so that no error adds up.
fn path(points: &[(f64, f64)]) -> String {
    let mut text = String::new();
    let mut before = (0, 0);
    for (n, (x, y)) in points.iter().enumerate() {
        let here = (hundredths(*x), hundredths(*y));
        text.push_str(["M", "l", ""][n.min(2)]);
        number(&mut text, here.0 - before.0, n > 1);
        number(&mut text, here.1 - before.1, true);
        before = here;
    }
    text
}

fn hundredths(number: f64) -> i64 {
    (number * 100.0).round() as i64
}

/// A number as short as it can be written: `-.5`, `12.25`; a space before it where it would run
/// into the one before.
fn number(text: &mut String, hundredths: i64, apart: bool) {
    let (whole, rest) = (hundredths.unsigned_abs() / 100, hundredths.unsigned_abs() % 100);
    if hundredths < 0 {
        text.push('-');
    } else if apart {
        text.push(' ');
    }
    if whole > 0 || rest == 0 {
        text.push_str(&whole.to_string());
    }
    if rest > 0 {
        let decimals = format!(".{rest:02}");
        text.push_str(decimals.trim_end_matches('0'));
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn drawing() -> Drawing {
        let stroke = |weight, points: &[(f64, f64)]| Stroke { weight, points: points.to_vec() };
        Drawing {
            frame: [-10.0, -30.0, 20.0, 40.0],
            strokes: vec![
                stroke(Weight::Fine, &[(0.0, 0.0), (1.5, -0.25), (1.5, -3.0)]),
                stroke(Weight::Fine, &[(2.004, 0.0), (2.0, 1.0)]),
                stroke(Weight::Heavy, &[(-10.0, -30.0), (10.0, 10.0)]),
            ],
        }
    }

    #[test]
    fn a_drawing_in_a_page_is_made_of_numbers() {
        assert_eq!(
            svg(&drawing(), "leaf"),
            "<svg class=\"leaf\" viewBox=\"-10 -30 20 40\" aria-hidden=\"true\" \
             focusable=\"false\"><path class=\"fine\" d=\"M0 0l1.5-.25 0-2.75M2 0l0 1\"></path>\
             <path class=\"heavy\" d=\"M-10-30l20 40\"></path></svg>"
        );
    }

    #[test]
    fn as_a_file_it_has_its_size_and_its_pens() {
        let text = file(&drawing(), "leaf 1 < leaf 2");
        assert!(text.contains("width=\"20.00mm\" height=\"40.00mm\""), "{text}");
        assert!(text.contains("viewBox=\"-10.00 -30.00 20.00 40.00\""), "{text}");
        assert!(text.contains("<title>leaf 1 &lt; leaf 2</title>"), "{text}");
        assert!(text.contains("stroke-width=\"0.25\" d=\"M0 0l1.5-.25"), "{text}");
        assert_eq!(text.matches("<path").count(), 2);
    }

    /// What was measured has thousands of points; what is written of it does not.
    #[test]
    fn as_a_file_a_line_has_few_points() {
        let turn = |at: usize| std::f64::consts::TAU * at as f64 / 4000.0;
        let points: Vec<_> =
            (0..4000).map(|at| (30.0 * turn(at).cos(), 15.0 * turn(at).sin())).collect();
        let around = vec![Stroke { weight: Weight::Outline, points }];
        let text = file(&Drawing { strokes: around, ..drawing() }, "an ellipse");
        assert!((300..2_000).contains(&text.len()), "{}", text.len());
    }

    /// A half circle of 20 mm, drawn with a thousand points.
    #[test]
    fn a_line_on_paper_has_few_points_and_stays_where_it_was() {
        let turn = |at: usize| std::f64::consts::PI * at as f64 / 1000.0;
        let points: Vec<_> =
            (0..=1000).map(|at| (10.0 * turn(at).cos(), 10.0 * turn(at).sin())).collect();
        let thin = thinned(&points);
        assert!((20..80).contains(&thin.len()), "{}", thin.len());
        assert_eq!([thin.first(), thin.last()], [points.first(), points.last()]);
        for point in &points {
            let away = thin.windows(2).map(|two| distance(*point, two[0], two[1]));
            assert!(away.fold(f64::MAX, f64::min) <= NEAR, "{point:?}");
        }
        assert_eq!(thinned(&[]), []);
        assert_eq!(thinned(&[(1.0, 2.0)]), [(1.0, 2.0)]);
        // A line that comes back to where it began is not a point.
        let there = [(0.0, 0.0), (5.0, 0.0), (0.0, 0.0)];
        assert_eq!(thinned(&there), there);
    }

    /// Three thousand points around a leaf of 60 mm.
    #[test]
    fn as_it_is_kept_it_has_few_points_and_is_the_same_drawing() {
        let turn = |at: usize| std::f64::consts::TAU * at as f64 / 3000.0;
        let points: Vec<_> =
            (0..3000).map(|at| (30.0 * turn(at).cos(), 15.0 * turn(at).sin())).collect();
        let stroke = Stroke { weight: Weight::Outline, points: points.clone() };
        let around = Drawing { frame: [-31.5, -16.5, 63.0, 33.0], strokes: vec![stroke] };
        let found = kept(&around).expect("it is small").drawing();
        assert_eq!(found.frame, around.frame);
        let thin = &found.strokes[0].points;
        assert!((30..200).contains(&thin.len()), "{}", thin.len());
        for point in &points {
            let away = thin.windows(2).map(|two| distance(*point, two[0], two[1]));
            assert!(away.fold(f64::MAX, f64::min) <= NEAR + 0.01, "{point:?}");
        }
        let far = |x| Stroke { weight: Weight::Fine, points: vec![(x, 0.0); 2] };
        assert_eq!(kept(&Drawing { strokes: vec![far(1e9)], ..around.clone() }), None);
        // Nothing that can be left out.
        let zigzag = (0..=DRAWING_POINTS).map(|at| (at as f64 * 0.1, f64::from(at as u8 % 2)));
        let stroke = Stroke { weight: Weight::Fine, points: zigzag.collect() };
        assert_eq!(kept(&Drawing { strokes: vec![stroke], ..around }), None);
    }

    #[test]
    fn on_paper_it_fills_its_height_and_is_heard_once() {
        let piece = piece(&drawing(), 20.0, "one lobe".to_owned());
        assert_eq!((piece.w, piece.h), (10.0, 20.0));
        let roles: Vec<_> = piece
            .nodes
            .iter()
            .map(|node| match node {
                crate::sheet::Node::Placed(placed) => placed.role.clone(),
                crate::sheet::Node::Group(..) | crate::sheet::Node::Window(..) => {
                    panic!("no group")
                }
            })
            .collect();
        assert_eq!(roles, [Role::Figure("one lobe".to_owned()), Role::Decoration]);
        let crate::sheet::Node::Placed(heavy) = &piece.nodes[1] else { panic!("it is placed") };
        let crate::sheet::What::Path(path) = &heavy.what else { panic!("it is drawn") };
        assert_eq!(path.segments, [Segment::Move(0.0, 0.0), Segment::Line(10.0, 20.0)]);
        assert_eq!(path.pen, Some(Pen::solid(0.65, Ink::Hedge)));
    }
}
