//! The scale card: a sheet to lay leaves on and photograph them.
//!
//! From the places of its rings (`spinney_model::scale_card`) to one page: what to do, a line that shows
//! whether the printer shrank it, and eight rings around the paper that the leaves lie on. `measure` finds
//! the rings again in the photograph.

use std::collections::BTreeMap;

use spinney_model::scale_card::{LARGE_DOT, RING, SMALL_DOT, ScaleCard};
use spinney_model::{Key, Matrix, Scene, SecondLooks};
use spinney_voice::Tongue;

use crate::setting::{OUR_GROUP, Setting};
use crate::sheet::frame::MARGIN;
use crate::sheet::ink::{Ink, Pen, Style};
use crate::sheet::{Page, Path, Piece, Role, Sheet};
use crate::{Booklet, Drawn, Letters, Paper, Sizes, Stamp, drawing};

/// What is done, in order.
const STEPS: [&str; 3] = ["sheet-scale-lay", "sheet-scale-photograph", "sheet-scale-measure"];

/// Whether the table names leaves: nothing else is measured.
pub fn has_something(booklet: &Booklet) -> bool {
    spinney_voice::wording::speaks_of_leaves(booklet.matrix)
}

/// The sheet as boxes in mm. It is the same whatever is looked at: a long title would reach into the
/// rings.
pub fn sheet(booklet: &Booklet, paper: Paper) -> Sheet {
    set(booklet.tongue, booklet.date, paper)
}

/// The same before there is any table: for whoever begins with leaves.
pub fn alone(tongue: Tongue, paper: Paper) -> Sheet {
    set(tongue, None, paper)
}

fn set(tongue: Tongue, date: Option<&str>, paper: Paper) -> Sheet {
    without_table(tongue, |booklet| {
        let booklet = Booklet { date, ..booklet.clone() };
        let setting = Setting::new(&booklet);
        let title = tongue.with("sheet-title-scale", &[("title", &setting.title())]);
        setting.sheet(title, vec![page(&setting, paper)])
    })
}

/// A sheet about leaves of which no table says anything.
pub(crate) fn without_table(tongue: Tongue, set: impl Fn(&Booklet) -> Sheet) -> Sheet {
    let scene = Scene { title: Some(tongue.say("sheet-scale-alone")), ..Scene::default() };
    let matrix = Matrix::new(scene, Vec::new(), Vec::new(), Vec::new())
        .expect("a table of nothing breaks no rule");
    let booklet = Booklet {
        matrix: &matrix,
        key: &Key { couplets: Vec::new() },
        walks: &[],
        left_together: &[],
        second_looks: &SecondLooks::new(),
        stamp: Stamp::None,
        date: None,
        pictures: &BTreeMap::new(),
        drawn: Drawn::NOTHING,
        letters: Letters::Usual,
        sizes: Sizes::USUAL,
        tongue,
    };
    set(&booklet)
}

fn page(setting: &Setting, paper: Paper) -> Page {
    let card = match paper {
        Paper::Letter => ScaleCard::Letter,
        _ => ScaleCard::A4,
    };
    let frame = setting.frame(paper, false, "sheet-scale", OUR_GROUP);
    let wide = frame.wide();
    let head = setting.masthead(&frame, &setting.say("sheet-scale"), true);
    let check = setting.text(&setting.say("sheet-ruler-check"), Style::SMALL_STRONG, wide);
    let top = head.then(2.0, setting.steps(&STEPS, wide));
    let top = top.then(1.5, check).then(1.5, setting.check_line());
    let [w, h] = card.size();
    let mut nodes = top.moved(MARGIN, MARGIN).nodes;
    let (x, y) = ((frame.width - w) / 2.0, frame.bottom() - RING.0 - h);
    nodes.extend(rings(setting, card).moved(x - RING.0, y - RING.0).nodes);
    frame.page(&setting.faces, nodes, 0, 1)
}

/// The rings, from the left and upper edge of the first.
fn rings(setting: &Setting, card: ScaleCard) -> Piece {
    let [w, h] = card.size().map(|side| side + 2.0 * RING.0);
    let (mut bands, mut dots) = (Vec::new(), Vec::new());
    for mark in card.marks() {
        let [x, y] = mark.at.map(|at| at + RING.0);
        let around = |r: f64| drawing::ring(x - r, y - r, r);
        bands.extend(around(f64::midpoint(RING.0, RING.1)));
        dots.extend(around(if mark.small { SMALL_DOT } else { LARGE_DOT }));
    }
    let pen = Some(Pen::solid(RING.0 - RING.1, Ink::Ink));
    let bands = Path { segments: bands, fill: None, pen };
    let dots = Path { segments: dots, fill: Some(Ink::Ink), pen: None };
    let words = Role::Figure(setting.say("sheet-scale-rings"));
    Piece::path(w, h, bands, words).with(0.0, 0.0, Piece::path(w, h, dots, Role::Decoration))
}
