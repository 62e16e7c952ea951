//! The walk along the hedge with lengths in its table: some questions ask for them, and some
//! kinds are drawn. Every length is invented.

use spinney_model::{
    Ask, Asked, Cell, Character, CharacterIx, Drawing, LeafSize, Matrix, Quantity, Scale,
    Stroke, Unit, Value, Weight,
};
use spinney_press::{Booklet, Drawn, Stamp};

use crate::hedge::{Walked, hedge_walk};

/// Least and most of the blade and of the stalk, in mm; 0: nobody measured.
const LENGTHS: [([i64; 2], [i64; 2]); 12] = [
    ([60, 110], [6, 14]),
    ([60, 95], [30, 50]),
    ([20, 40], [4, 9]),
    ([40, 80], [5, 14]),
    ([30, 60], [10, 24]),
    ([40, 70], [30, 70]),
    ([110, 200], [30, 90]),
    ([40, 90], [16, 60]),
    ([50, 90], [6, 12]),
    ([0, 0], [0, 0]),
    ([0, 0], [40, 40]),
    ([0, 0], [20, 60]),
];

/// The questions that ask for a length: by number, which column, how many mm.
pub(crate) const ASKED: [(u32, usize, i64); 3] = [(6, 1, 100), (9, 2, 25), (10, 1, 50)];

pub(crate) fn walk() -> Walked {
    let mut walked = hedge_walk();
    let length = |name: &str| {
        let gap = Quantity::from_whole(5);
        Character::named(name, Scale::Measure { unit: Unit::Millimetres, gap })
    };
    let mut characters = walked.matrix.characters().to_vec();
    characters.extend([length("blade length"), length("stalk length")]);
    let rows = LENGTHS.iter().map(|(blade, stalk)| {
        [Value::Unknown, range(*blade), range(*stalk)].map(Cell::from).to_vec()
    });
    let taxa = walked.matrix.taxa().to_vec();
    let scene = walked.matrix.scene().clone();
    walked.matrix = Matrix::new(scene, taxa, characters, rows.collect()).unwrap();
    for (number, column, mm) in ASKED {
        let couplet = walked.key.couplets.iter_mut().find(|it| it.number == number).unwrap();
        couplet.kept = true;
        couplet.ask = Some(Ask {
            character: CharacterIx(column),
            yes: Asked::AtLeast(Quantity::from_whole(mm)),
        });
    }
    walked
}

/// The same; two questions ask for lengths that no sheet of paper holds, and one leaf is larger
/// than any place.
pub(crate) fn walk_far() -> Walked {
    let mut walked = walk();
    for (number, mm) in [(6, 610), (9, 2500)] {
        let couplet = walked.key.couplets.iter_mut().find(|it| it.number == number).unwrap();
        couplet.ask.as_mut().unwrap().yes = Asked::AtLeast(Quantity::from_whole(mm));
    }
    let mut rows: Vec<Vec<Cell>> = walked
        .matrix
        .taxon_indices()
        .map(|kind| {
            let cell = |at| walked.matrix.cell(kind, CharacterIx(at)).clone();
            (0..3).map(cell).collect()
        })
        .collect();
    rows[6][1] = Cell::from(range([300, 700]));
    walked.matrix = Matrix::new(
        walked.matrix.scene().clone(),
        walked.matrix.taxa().to_vec(),
        walked.matrix.characters().to_vec(),
        rows,
    )
    .unwrap();
    walked
}

fn range([low, high]: [i64; 2]) -> Value {
    match high {
        0 => Value::Unknown,
        _ => Value::Range { low: Quantity::from_whole(low), high: Quantity::from_whole(high) },
    }
}

pub(crate) fn sizes(matrix: &Matrix) -> Vec<Option<LeafSize>> {
    let high = |kind, column| match matrix.cell(kind, CharacterIx(column)).value {
        Value::Range { high, .. } => Some(high.as_f64()),
        _ => None,
    };
    let size =
        |kind| Some(LeafSize { blade: high(kind, 1)?, width: None, stalk: high(kind, 2) });
    matrix.taxon_indices().map(size).collect()
}

/// A leaf in a few lines, broader for each next kind; the fourth and the fifth are alike.
pub(crate) fn drawings() -> Vec<Option<Drawing>> {
    let drawing = |broad: f64| Drawing {
        frame: [-24.0, -41.0, 48.0, 57.0],
        strokes: vec![
            Stroke { weight: Weight::Midrib, points: vec![(0.0, -36.0), (0.0, 12.0)] },
            Stroke {
                weight: Weight::Outline,
                points: vec![
                    (0.0, -38.0),
                    (broad, -18.0),
                    (0.0, 0.0),
                    (-broad, -18.0),
                    (0.0, -38.0),
                ],
            },
        ],
    };
    (0..12)
        .map(|kind: u8| (kind < 9).then(|| drawing(8.0 + f64::from(kind))))
        .enumerate()
        .map(|(kind, drawn)| if kind == 4 { Some(drawing(11.0)) } else { drawn })
        .collect()
}

/// The booklet with its sizes and drawings.
pub(crate) fn booklet<'a>(walked: &'a Walked, drawings: &'a [Option<Drawing>]) -> Booklet<'a> {
    Booklet {
        drawn: Drawn { kinds: drawings, sizes, ..Drawn::NOTHING },
        ..walked.booklet(Stamp::None)
    }
}
