//! The chart for a wall: its ends are as large as real leaves, and it is glued together from
//! sheets of ordinary paper.
//!
//! From a booklet to a page that says how the sheets go together, and the sheets. Each kind's
//! place is as large as its largest leaf, with its stalk if all of it comes out of
//! `MOST_SHEETS`, else without; only beyond that are places smaller than leaves, and then the
//! page says whose. Whoever wishes a chart of exactly A2 or A1 gets it with the largest places and
//! letters that have room, and lines to cut along around all of it. Neighbours show the same strip
//! of the chart, so that a millimetre does not matter.

mod tiles;

use spinney_model::TaxonIx;

use super::layout::{LEVELS, Plan};
use super::tree::{Forest, Stock};
use super::{below, cards, page_of_letters};
use crate::places::{self, Whole};
use crate::setting::{OUR_GROUP, Setting};
use crate::sheet::frame::MARGIN;
use crate::sheet::ink::{Dash, Ink, Pen, Style};
use crate::sheet::{Group, Page, Path, Piece, Role, Segment, Sheet};
use crate::{Booklet, Paper, Wall};
use spinney_model::Key;
use tiles::Tiles;

/// More questions than this hang on no wall.
const MOST: usize = 60;
/// More sheets than this nobody glues together: eight are about A1, twelve half as much again.
const MOST_SHEETS: usize = 12;
/// How much larger than the smallest letters everything is set: 19 pt are read from two metres.
const LETTERS: f64 = 1.6;
/// What is tried besides where the size is given: 16 pt, and 12 where nothing else has room.
const SMALLER: f64 = 1.3;
const SMALLEST: f64 = 1.0;
/// Places smaller than all that are tried else: for a leaflet, or the tip of a leaf.
const TIP: Whole = Whole::AtMost(32.0);
/// Air between what stands on a chart of a given size and its edge, in mm.
const EDGE: f64 = 6.0;
/// Width of a question's card, and the least of an end's, in mm, with the smallest letters.
const QUESTION: f64 = 40.0;
const END: f64 = 32.0;
/// The least width of a chart, and of what stands beside its first question, in mm.
const LEAST: f64 = 150.0;
/// The places that are tried, the largest first.
const TRIED: [Whole; 7] = [
    Whole::Leaf,
    Whole::Blade,
    Whole::AtMost(150.0),
    Whole::AtMost(120.0),
    Whole::AtMost(90.0),
    Whole::AtMost(70.0),
    Whole::AtMost(50.0),
];

/// Whether the key is one for a wall: some questions, not too many, and no branch too deep to be
/// drawn in one tree.
pub fn has_something(booklet: &Booklet) -> bool {
    (1..=MOST).contains(&booklet.key.couplets.len())
        && forest(booklet.key).iter().all(|tree| tree.goes_on().next().is_none())
}

/// The message of why there is no chart of the size that was wished; None: there is.
pub fn refused(booklet: &Booklet, _paper: Paper) -> Option<&'static str> {
    let sides = booklet.sizes.wall.sides()?;
    let setting = Setting::new(booklet);
    let forest = forest(booklet.key);
    // Where A2 has no room, A1 may have some; where that has none, only what it needs.
    let why = match booklet.sizes.wall {
        Wall::A1 => "print-wall-no-room-a1",
        Wall::A2 | Wall::AsNeeded => "print-wall-no-room",
    };
    exactly(&setting, &forest, sides).is_none().then_some(why)
}

/// The chart as boxes in mm: the page for whoever glues, then the sheets, row by row.
pub fn sheet(booklet: &Booklet, paper: Paper) -> Sheet {
    let setting = Setting::new(booklet);
    let title = setting.t().with("sheet-title-wall", &[("title", &setting.title())]);
    setting.sheet(title, pages(&setting, paper))
}

/// Every tree of the key, beside each other.
fn forest(key: &Key) -> Forest {
    let mut stock = Stock::new(key);
    let mut forest = Vec::new();
    while let Some(root) = stock.next_root() {
        let tree = stock.grow(root, &[]);
        stock.take(&tree);
        forest.push(tree);
    }
    forest
}

/// The chart with everything above and below it.
struct Poster {
    plan: Plan,
    piece: Piece,
    /// Where the cards begin.
    cards: (f64, f64),
    /// Kinds whose largest leaf is larger than its place.
    too_large: Vec<TaxonIx>,
    /// How much larger than the smallest its letters are.
    letters: f64,
    /// Whether it is cut out to the size of its piece.
    exact: bool,
}

fn pages(setting: &Setting, paper: Paper) -> Vec<Page> {
    let forest = forest(setting.booklet.key);
    let sides = setting.booklet.sizes.wall.sides();
    let exact = sides.and_then(|sides| exactly(setting, &forest, sides));
    let (poster, tiles) = match exact {
        Some(poster) => {
            let tiles = Tiles::all(setting, paper, &poster.piece);
            (poster, tiles)
        }
        None => as_needed(setting, paper, &forest),
    };
    let of = tiles.many() + 1;
    let mut pages = vec![how(setting, paper, &forest, &poster, &tiles, of)];
    pages.extend(tiles.pages(setting, &poster.piece, of));
    pages
}

/// As large as its places make it, out of as many sheets as somebody glues together.
fn as_needed(setting: &Setting, paper: Paper, forest: &Forest) -> (Poster, Tiles) {
    TRIED
        .into_iter()
        .find_map(|whole| {
            let poster = poster(setting, forest, whole, LETTERS);
            let tiles = Tiles::of(setting, paper, &poster.piece);
            let last = whole == TRIED[TRIED.len() - 1];
            (last || tiles.many() <= MOST_SHEETS).then_some((poster, tiles))
        })
        .expect("the last that is tried is taken")
}

/// A chart of exactly this shorter and longer side, upright or on its side: with places as large
/// as have room in readable letters, and of those the largest; only where no place at all has
/// room so, in the smallest letters. None: it has no room in those either.
fn exactly(setting: &Setting, forest: &Forest, (short, long): (f64, f64)) -> Option<Poster> {
    let large = TRIED.into_iter().flat_map(|whole| [(LETTERS, whole), (SMALLER, whole)]);
    let small = TRIED.into_iter().chain([TIP]).map(|whole| (SMALLEST, whole));
    large.chain(small).find_map(|(letters, whole)| {
        let poster = poster(setting, forest, whole, letters);
        let fits = |wide: f64, high: f64| {
            poster.piece.w + 2.0 * EDGE <= wide && poster.piece.h + 2.0 * EDGE <= high
        };
        let (wide, high) =
            [(long, short), (short, long)].into_iter().find(|(w, h)| fits(*w, *h))?;
        Some(poster.cut_out(wide, high))
    })
}

impl Poster {
    /// The same in the middle of a chart of this size, with a line around it to cut along.
    fn cut_out(self, wide: f64, high: f64) -> Self {
        let (x, y) = ((wide - self.piece.w) / 2.0, (high - self.piece.h) / 2.0);
        let pen = Pen::solid(0.3, Ink::Ink);
        let around = Piece::rectangle(wide, high, None, Some(pen));
        let whole = Piece::blank(wide, high).with(x, y, self.piece).with(0.0, 0.0, around);
        let piece = Piece { w: wide, h: high, ..whole };
        let cards = (self.cards.0 + x, self.cards.1 + y);
        Self { piece, cards, exact: true, ..self }
    }
}

fn poster(setting: &Setting, forest: &Forest, whole: Whole, letters: f64) -> Poster {
    let sizes = places::of_kinds(setting, whole);
    let too_large =
        places::too_large(setting, sizes.iter().map(|(kind, place)| (*kind, place)));
    let plan = Plan {
        scale: letters,
        question: QUESTION * letters,
        end: END * letters,
        picture: END * letters,
        sizes,
        ..Plan::default()
    };
    let (plan, (w, h)) = plan.life_size(setting, forest);
    let body = cards::draw(setting, forest, &plan, &page_of_letters(&[]));
    let wide = w.max(LEAST);
    let left = (wide - w) / 2.0;
    // The first question stands in the middle: beside it there is room for the title and for what
    // stands below other charts.
    let first =
        left + plan.middles.first().and_then(|tree| tree.first()).copied().unwrap_or(0.0);
    let half = plan.question / 2.0 + 10.0;
    let rooms = (first - half, wide - first - half);
    let (piece, top) = if rooms.0 >= LEAST && rooms.1 >= LEAST {
        let (title, notes) = (title(setting, rooms.0), below(setting, rooms.1));
        let row = plan.tops.get(1).map_or(h, |top| top - 2.0 * LEVELS);
        let down = (title.h.max(notes.h) + 4.0 - row).max(0.0);
        let piece = title.with(wide - rooms.1, 0.0, notes).with(left, down, body);
        (Piece { h: down + h, ..piece }, down)
    } else {
        let title = title(setting, wide);
        let top = title.h + 6.0;
        let piece = title.with(left, top, body);
        (piece.with(0.0, top + h + 6.0, below(setting, wide)), top)
    };
    Poster {
        plan,
        piece: Piece { w: wide, ..piece },
        cards: (left, top),
        too_large,
        letters,
        exact: false,
    }
}

/// The title, to be read from the other side of a room.
fn title(setting: &Setting, wide: f64) -> Piece {
    let style = Style { size: 48.0, ..Style::TITLE };
    let block = setting.block(&setting.title(), style, wide).at_most(&setting.faces, 3);
    let title = Piece::text(block, Role::Heading(1));
    let scene = setting.scene();
    if scene.is_empty() {
        return title;
    }
    let block = setting.block(&scene, Style::HEADING, wide).at_most(&setting.faces, 2);
    title.then(1.5, Piece::text(block, Role::Paragraph))
}

/// The page for whoever glues: what to do, and a small picture of it.
fn how(
    setting: &Setting,
    paper: Paper,
    forest: &Forest,
    poster: &Poster,
    tiles: &Tiles,
    of: usize,
) -> Page {
    let frame = setting.frame_of_key(paper, false, "sheet-wall", OUR_GROUP);
    let wide = frame.wide();
    let mut top = setting.masthead(&frame, &setting.say("sheet-wall"), true);
    let t = setting.t();
    let cm = |mm: f64| (mm / 10.0).round();
    let sheets = if poster.exact {
        let cm = |mm: f64| t.decimal(&format!("{:.1}", mm / 10.0));
        let (name, piece) = (setting.booklet.sizes.wall.name(), &poster.piece);
        let texts: [(&str, &dyn std::fmt::Display); 4] = [
            ("sheets", &tiles.many()),
            ("paper", &name),
            ("wide", &cm(piece.w)),
            ("high", &cm(piece.h)),
        ];
        t.with("sheet-wall-exact", &texts)
    } else {
        let (w, h) = tiles.size();
        let size: [(&str, &dyn std::fmt::Display); 3] =
            [("sheets", &tiles.many()), ("wide", &cm(w)), ("high", &cm(h))];
        t.with("sheet-wall-size", &size)
    };
    top = top.then(3.0, setting.text(&sheets, Style::STRONG, wide));
    let check = setting.text(&setting.say("sheet-ruler-check"), Style::SMALL, wide);
    top = top.then(2.0, check).then(1.0, setting.check_line());
    let mut steps = vec!["sheet-wall-cut", "sheet-wall-glue", "sheet-wall-order"];
    steps.extend(poster.exact.then_some("sheet-wall-cut-out"));
    let list = steps.iter().zip(1..).fold(Piece::blank(wide, 0.0), |list, (step, number)| {
        let number = setting.block(&i32::to_string(&number), Style::STRONG, 6.0);
        let words = setting.text(&setting.say(step), Style::SMALL, wide - 8.0);
        let item = Piece::text(number, Role::Label).with(8.0, 0.4, words.grouped(Group::Body));
        list.then(0.8, item.grouped(Group::Item))
    });
    top = top.then(3.0, list.grouped(Group::List));
    if let Some(words) = places::told_too_large(setting, &poster.too_large) {
        top = top.then(1.5, setting.text(&words, Style::SMALL, wide));
    }
    if poster.letters < SMALLER {
        let points = (Style::STRONG.size * poster.letters).round();
        let words = t.with("sheet-wall-small", &[("points", &points)]);
        top = top.then(1.5, setting.text(&words, Style::SMALL, wide));
    }
    top = top.then(2.5, setting.to_mind(wide));
    let y = MARGIN + top.h + 5.0;
    let small = together(setting, forest, poster, tiles, (wide, frame.bottom() - y));
    let x = MARGIN + (wide - small.w) / 2.0;
    let below = y + small.h + 6.0;
    let mut nodes = top.moved(MARGIN, MARGIN).nodes;
    nodes.extend(small.moved(x, y).nodes);
    if let Some(places) = places_of(setting, poster, (wide, frame.bottom() - below)) {
        nodes.extend(places.moved(MARGIN, below).nodes);
    }
    frame.page(&setting.faces, nodes, 0, of)
}

/// How large the places are, in two columns, as many as there is room for.
fn places_of(setting: &Setting, poster: &Poster, (wide, high): (f64, f64)) -> Option<Piece> {
    let title = setting.heading(2, &setting.say("sheet-wall-places"), Style::STRONG, wide);
    let column = (wide - 8.0) / 2.0;
    let line = |(kind, (w, h)): (&TaxonIx, &(f64, f64))| {
        let cm = |mm: f64| {
            let tenths = format!("{:.1}", mm / 10.0);
            setting.t().decimal(tenths.trim_end_matches(".0"))
        };
        let w = w.max(poster.plan.end);
        let words = setting.t().with(
            "sheet-wall-place",
            &[("kind", &setting.name(*kind)), ("high", &cm(*h)), ("wide", &cm(w))],
        );
        let block = setting.block(&words, Style::SMALL, column).at_most(&setting.faces, 1);
        Piece::text(block, Role::Paragraph)
    };
    let lines: Vec<_> = poster.plan.sizes.iter().map(line).collect();
    let mut list = title;
    for two in lines.chunks(2) {
        let mut row = two[0].clone();
        if let Some(second) = two.get(1) {
            row = row.with(column + 8.0, 0.0, second.clone());
        }
        list = list.then(1.2, row);
    }
    (!lines.is_empty() && list.h <= high).then_some(list)
}

/// The chart in small, with the sheets by their numbers.
fn together(
    setting: &Setting,
    forest: &Forest,
    poster: &Poster,
    tiles: &Tiles,
    (wide, high): (f64, f64),
) -> Piece {
    let (w, h) = tiles.size();
    let scale = (wide / w).min(high / h);
    let (left, top) = tiles.offset();
    let (left, top) = (left + poster.cards.0, top + poster.cards.1);
    let words = setting
        .t()
        .with("sheet-wall-together", &[("across", &tiles.across), ("down", &tiles.down)]);
    let ground = Piece::rectangle(w * scale, h * scale, Some(Ink::Paper), None);
    let mut lines = Vec::new();
    let mut boxes = Vec::new();
    for (tree, middles) in forest.iter().zip(&poster.plan.middles) {
        for (at, node) in tree.nodes.iter().enumerate() {
            let width = poster.plan.width(&node.item);
            let y = top + poster.plan.tops[node.depth];
            let deep = cards::height(setting, node, &poster.plan);
            let (a, b) = ((left + middles[at] - width / 2.0) * scale, y * scale);
            let (c, d) = (a + width * scale, (y + deep) * scale);
            use Segment::{Close, Line, Move};
            boxes.extend([Move(a, b), Line(c, b), Line(c, d), Line(a, d), Close]);
            for child in node.children.into_iter().flatten() {
                let to = (left + middles[child]) * scale;
                let below = (top + poster.plan.tops[node.depth + 1]) * scale;
                lines.extend([Move((a + c) / 2.0, d), Line(to, below)]);
            }
        }
    }
    let drawn = |segments, fill, pen| Path { segments, fill, pen: Some(pen) };
    let soft = Pen::solid(0.25, Ink::Soft);
    let lines =
        Piece::path(w * scale, h * scale, drawn(lines, None, soft), Role::Figure(words));
    let boxes = drawn(boxes, Some(Ink::Tint), soft);
    let boxes = Piece::path(w * scale, h * scale, boxes, Role::Decoration);
    let mut small = ground.with(0.0, 0.0, lines).with(0.0, 0.0, boxes);
    if poster.exact {
        let (x, y) = tiles.offset();
        let (wide, high) = (poster.piece.w * scale, poster.piece.h * scale);
        let edge = Piece::rectangle(wide, high, None, Some(Pen::solid(0.4, Ink::Ink)));
        small = small.with(x * scale, y * scale, edge);
    }
    for (at, seen) in tiles.windows().into_iter().enumerate() {
        let pen = Some(Pen { width: 0.4, ink: Ink::Ink, dash: Dash::Dashed });
        let (x, y) = (seen.x * scale, seen.y * scale);
        let edge = Piece::rectangle(seen.w * scale, seen.h * scale, None, pen);
        let number = setting.disc(&(at + 1).to_string(), Role::Paragraph);
        let (mx, my) = ((seen.w * scale - number.w) / 2.0, (seen.h * scale - number.h) / 2.0);
        small = small.with(x, y, edge).with(x + mx, y + my, number);
    }
    Piece { w: w * scale, h: h * scale, ..small }.grouped(Group::Section)
}
