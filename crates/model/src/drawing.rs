//! A drawing in lines: what a screen, a sheet or a phone page places as it is.
//!
//! It says how long and how heavy its lines are, not what they show; `draw` makes it, `press`
//! places it.

/// Lines in millimetres; to the right, and down as on paper.
#[derive(Clone, Debug, PartialEq)]
pub struct Drawing {
    /// The paper that it takes: left, top, width, height.
    pub frame: [f64; 4],
    /// Its lines, the ones below first.
    pub strokes: Vec<Stroke>,
}

/// One line of a drawing.
#[derive(Clone, Debug, PartialEq)]
pub struct Stroke {
    /// How heavy it is.
    pub weight: Weight,
    /// The points that it goes through.
    pub points: Vec<(f64, f64)>,
}

/// A drawing as a collection keeps it, in hundredths of a millimetre: at most
/// [`DRAWING_POINTS`](crate::limits::DRAWING_POINTS) points.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct KeptDrawing {
    /// The paper that it takes: left, top, width, height.
    pub frame: [i32; 4],
    /// Its lines, the ones below first.
    pub strokes: Vec<KeptStroke>,
}

/// One line of a kept drawing.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct KeptStroke {
    /// How heavy it is.
    pub weight: Weight,
    /// The points that it goes through.
    pub points: Vec<(i32, i32)>,
}

impl KeptDrawing {
    /// It in millimetres, as it is placed.
    pub fn drawing(&self) -> Drawing {
        let mm = |hundredths: i32| f64::from(hundredths) / 100.0;
        let stroke = |stroke: &KeptStroke| Stroke {
            weight: stroke.weight,
            points: stroke.points.iter().map(|(x, y)| (mm(*x), mm(*y))).collect(),
        };
        Drawing {
            frame: self.frame.map(mm),
            strokes: self.strokes.iter().map(stroke).collect(),
        }
    }
}

/// How heavy a line is.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum Weight {
    /// 0.25 mm: side veins, hairs.
    Fine,
    /// 0.4 mm: hatching for what is spoken of.
    Hatch,
    /// 0.4 mm: midribs.
    Midrib,
    /// 0.6 mm: outlines and stalks.
    Outline,
    /// 1.1 mm: a twig.
    Twig,
    /// 1.3 mm: the part that is spoken of.
    Heavy,
}

/// The drawings of a word.
#[derive(Clone, Debug, PartialEq)]
pub struct DrawnWord {
    /// What it means; several where the word is said of several things.
    pub own: Vec<Figure>,
    /// What it is taken for.
    pub other: Vec<Figure>,
}

/// A drawing with its caption.
#[derive(Clone, Debug, PartialEq)]
pub struct Figure {
    /// What it shows: the name of the message `words-draw-…`.
    pub caption: &'static str,
    /// Its lines.
    pub drawing: Drawing,
}

/// How large the largest leaf of a kind is, in mm, as far as its table says.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct LeafSize {
    /// From the base of the blade to its tip.
    pub blade: f64,
    /// Across the blade.
    pub width: Option<f64>,
    /// From the twig to the blade.
    pub stalk: Option<f64>,
}
