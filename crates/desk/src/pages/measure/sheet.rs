//! What was found in a picture, as it travels with the forms of its page.
//!
//! From the bytes of a scan to its leaves with their measures, lines and cut-outs; and from there
//! to fields of a form and back (`fields`), with what a person mended of it (`mended`). Nothing of it is kept before a person takes it in: the
//! journal has no scans, and a page that is left is forgotten.

mod fields;
mod mended;

use std::collections::BTreeSet;

use base64::{Engine as _, engine::general_purpose::STANDARD};
use spinney_exchange::drawn;
use spinney_measure::{Small, Upright};
use spinney_model::limits::{SCREENS_LEAVES, SCREENS_SCAN_PIXELS};
use spinney_model::{
    Aside, CannotMend, KeptDrawing, LeafForm, LeafNote, LeftOut, Measurand, Measure,
    MeasuredIn, MeasuredLeaf, Mend, PictureError, PictureScale,
};
use spinney_press::picture;
use spinney_voice::Tongue;
use spinney_voice::starters::{Look, SEEN};

use crate::asked::Asked;
use crate::request::Upload;

/// The longest side of the picture on the page, in pixels: as wide as half of a screen, sharp.
const LONGEST: u32 = 1400;
/// The longest side of a cut-out, in pixels: sharp on a card, 50 to 100 kB.
const LONGEST_LEAF: u32 = 900;
/// Points of a line are so many pixels of the page's picture apart, or more.
const FINE: f64 = 1.0;
/// Where nobody knows how large a dot is, lengths are taken at this many dots per inch, and not
/// shown before somebody has said how many there are.
const ASSUMED: f64 = 300.0;
/// So many letters of the name of a file are said.
pub(super) const LONGEST_NAME: usize = 80;
/// The longest that is said of how a leaf is made, in characters.
pub(super) const LONGEST_FORM: usize = 600;
/// The fewest and the most dots per inch that a person can mean.
const DPI: [f64; 2] = [10.0, 10_000.0];

/// What was found in a picture.
#[derive(Clone)]
pub(super) struct Sheet {
    /// The name of its file.
    pub(super) file: String,
    /// Width and height in pixels.
    pub(super) size: (u32, u32),
    /// The picture as the page shows it: a JPEG file in base64.
    pub(super) picture: String,
    /// At how many dots per inch the lengths were taken.
    dpi: f64,
    /// Whether a pixel that was measured is two by two dots.
    halved: bool,
    /// Whether it looks like a rubbing, and nobody said that it is one.
    pub(super) like_a_rubbing: bool,
    /// What was found.
    found: There,
    /// What a person says of it.
    pub(super) mends: Vec<Mend>,
    /// What follows from both.
    pub(super) now: There,
}

/// What a person says of a picture.
#[derive(Clone, Copy, Default)]
pub(super) struct Said {
    /// How many dots an inch has.
    pub(super) dpi: Option<f64>,
    /// Whether it is a rubbing.
    pub(super) rubbing: bool,
}

/// What there is in a picture.
#[derive(Clone)]
pub(super) struct There {
    /// Where the size of a dot comes from.
    pub(super) scale: PictureScale,
    pub(super) leaves: Vec<Leaf>,
    /// What is no leaf, and how often.
    pub(super) left_out: Vec<(LeftOut, usize)>,
    /// The largest things among that.
    pub(super) aside: Vec<Aside>,
}

/// A leaf of it.
#[derive(Clone)]
pub(super) struct Leaf {
    pub(super) number: usize,
    /// How much and ±, in the order of [`Measurand::ALL`]; None: it has no such thing.
    measures: Vec<Option<(f64, f64)>>,
    pub(super) notes: Vec<LeafNote>,
    /// How it is made, in the language of whoever measured it: `7 lobes · edge toothed`.
    pub(super) form: String,
    /// What its outline answers of the questions of [`SEEN`].
    pub(super) looks: [Option<Look>; SEEN.len()],
    /// Outline, midrib, width, stalk, and where stalk and blade are cut apart; in pixels. Points of the
    /// outline are about one apart.
    pub(super) lines: [Vec<[f64; 2]>; 5],
    /// Alone and upright: a JPEG file in base64.
    pub(super) picture: String,
    /// In lines, in hundredths of a mm; None: it cannot be drawn.
    drawn: Option<KeptDrawing>,
}

/// Why there is nothing to show.
pub(super) enum NoSheet {
    Picture(PictureError),
    /// More leaves than the screen takes.
    Many(usize),
}

/// Why a sheet cannot be mended so.
pub(super) enum NotMended {
    Cannot(CannotMend),
    /// More leaves than the screen takes.
    Many(usize),
    /// A picture that travels with it is damaged.
    Damaged,
}

impl From<PictureError> for NotMended {
    fn from(_: PictureError) -> Self {
        Self::Damaged
    }
}

impl From<PictureError> for NoSheet {
    fn from(error: PictureError) -> Self {
        Self::Picture(error)
    }
}

impl Sheet {
    /// Measures the leaves of a picture.
    pub(super) fn measured(t: Tongue, file: &Upload, said: Said) -> Result<Self, NoSheet> {
        Self::measured_at_most(t, file, said, SCREENS_SCAN_PIXELS)
    }

    /// The same, with so many pixels measured at once.
    fn measured_at_most(
        t: Tongue,
        file: &Upload,
        said: Said,
        most: u64,
    ) -> Result<Self, NoSheet> {
        let Small { mut picture, scale } =
            spinney_measure::read_small(&file.bytes, said.dpi, most)?;
        let assumed = match (said.rubbing, picture.halved) {
            (false, _) => ASSUMED,
            (true, halved) => {
                spinney_measure::dpi_of_page(&picture) * if halved { 2.0 } else { 1.0 }
            }
        };
        let dpi = scale.mm().map_or(assumed, |mm| 25.4 / mm);
        if !matches!(scale, PictureScale::OfCard { .. } | PictureScale::OfStrip { .. }) {
            picture.scale =
                PictureScale::Said { dpi: if picture.halved { dpi / 2.0 } else { dpi } };
        }
        let measured = match said.rubbing {
            false => spinney_measure::measure(&picture)?,
            true => {
                let measured = spinney_measure::measure_rubbing(&picture)?;
                picture = spinney_measure::on_white(picture);
                measured
            }
        };
        if measured.leaves.len() > SCREENS_LEAVES {
            return Err(NoSheet::Many(measured.leaves.len()));
        }
        let mm = picture.scale.mm();
        let leaf = |leaf: &MeasuredLeaf| {
            Leaf::of(t, leaf, mm, spinney_measure::upright(&picture, &leaf.lines)?)
        };
        let leaves = measured.leaves.iter().map(leaf).collect::<Result<_, _>>()?;
        let shown = picture::photograph(measured.size, picture.pixels.into_raw(), LONGEST);
        let shown = shown.map_err(|_| PictureError::NotRead)?;
        let found = There { scale, leaves, left_out: measured.left_out, aside: measured.aside };
        Ok(Self {
            file: file.name.chars().take(LONGEST_NAME).collect(),
            size: measured.size,
            picture: STANDARD.encode(shown),
            dpi,
            halved: measured.halved,
            like_a_rubbing: measured.like_a_rubbing,
            now: found.clone(),
            found,
            mends: Vec::new(),
        })
    }

    /// How many measured pixels an inch has, where it has so many dots; and the other way.
    fn pixels(&self, dots: f64) -> f64 {
        if self.halved { dots / 2.0 } else { dots }
    }

    /// The same by other dots per inch, which are said after all that was said of a ruler before.
    pub(super) fn at(&self, t: Tongue, dpi: f64) -> Self {
        let share = self.dpi / dpi;
        let leaves = self.found.leaves.iter().map(|leaf| leaf.clone().larger(share)).collect();
        let scale = PictureScale::Said { dpi };
        let found = There { scale, leaves, ..self.found.clone() };
        let mends = self.mends.iter().copied().filter(|mend| mend.pixel().is_none()).collect();
        let at = Self { dpi, now: found.clone(), found, mends: Vec::new(), ..self.clone() };
        at.mended(t, mends).unwrap_or(at)
    }

    /// The numbers of all leaves that there are, or were before somebody mended them.
    pub(super) fn numbers(&self) -> BTreeSet<usize> {
        let all = self.found.leaves.iter().chain(&self.now.leaves);
        all.map(|leaf| leaf.number).collect()
    }

    /// Whether lengths are known.
    pub(super) fn has_lengths(&self) -> bool {
        self.now.scale.mm().is_some()
    }

    /// The drawing of a leaf, where its size is known.
    pub(super) fn drawing<'l>(&self, leaf: &'l Leaf) -> Option<&'l KeptDrawing> {
        leaf.drawn.as_ref().filter(|_| self.has_lengths())
    }

    /// A measure of a leaf, as far as it is known.
    pub(super) fn measure(&self, leaf: &Leaf, what: Measurand) -> Option<Measure> {
        let known = self.has_lengths() || what.unit() == MeasuredIn::Ratio;
        let at = Measurand::ALL.iter().position(|known| *known == what)?;
        let (value, plus_minus) = leaf.measures.get(at).copied().flatten().filter(|_| known)?;
        Some(Measure { what, value, plus_minus })
    }
}

impl Leaf {
    fn of(
        t: Tongue,
        leaf: &MeasuredLeaf,
        mm: Option<f64>,
        alone: Upright,
    ) -> Result<Self, PictureError> {
        let alone = picture::photograph(alone.size, alone.rgba, LONGEST_LEAF);
        let alone = alone.map_err(|_| PictureError::NotRead)?;
        Ok(Self::with_picture(t, leaf, mm, STANDARD.encode(alone)))
    }

    /// A leaf of which there is a picture; `mm`: how long a pixel is.
    fn with_picture(t: Tongue, leaf: &MeasuredLeaf, mm: Option<f64>, picture: String) -> Self {
        let lines = &leaf.lines;
        let all = [
            lines.outline.clone(),
            lines.midrib.clone(),
            lines.width.to_vec(),
            lines.stalk.clone(),
            lines.cut.map(Vec::from).unwrap_or_default(),
        ];
        let measures = leaf.measures.iter();
        let measures =
            measures.map(|one| one.as_ref().ok().map(|one| (one.value, one.plus_minus)));
        Self {
            number: leaf.number,
            measures: measures.collect(),
            notes: leaf.notes.clone(),
            form: form_in_words(t, &leaf.form),
            looks: SEEN.map(|question| Look::of(&leaf.form, question)),
            drawn: spinney_draw::of_measured(lines, &leaf.form, mm)
                .and_then(|drawing| spinney_press::lines::kept(&drawing)),
            lines: all,
            picture,
        }
    }

    /// The cut-out as a file; None: it is damaged.
    pub(super) fn file(&self) -> Option<Vec<u8>> {
        STANDARD.decode(&self.picture).ok()
    }

    fn larger(self, share: f64) -> Self {
        let measures = Measurand::ALL.iter().zip(self.measures).map(|(what, measure)| {
            let by = match what.unit() {
                MeasuredIn::Millimetres => share,
                MeasuredIn::SquareMillimetres => share * share,
                MeasuredIn::Ratio => 1.0,
            };
            measure.map(|(value, half)| (value * by, half * by))
        });
        let measures = measures.collect();
        let drawn = self.drawn.and_then(|drawing| scaled(drawing, share));
        Self { measures, drawn, ..self }
    }
}

/// A drawing so many times as large; None: no drawing is.
fn scaled(drawing: KeptDrawing, share: f64) -> Option<KeptDrawing> {
    let by = |number: i32| (f64::from(number) * share).round() as i32;
    let mut drawing = KeptDrawing { frame: drawing.frame.map(by), ..drawing };
    for (x, y) in drawing.strokes.iter_mut().flat_map(|stroke| &mut stroke.points) {
        (*x, *y) = (by(*x), by(*y));
    }
    drawn::read(&drawn::write(&drawing))
}

/// How a leaf is made, as far as that does not hang on how large its dots are: that may be said later.
fn form_in_words(t: Tongue, form: &LeafForm) -> String {
    let mut form = form.clone();
    if let Ok(edge) = &mut form.edge {
        edge.per_cm = None;
    }
    let words = spinney_voice::measured::form(t, &form).join(" · ");
    words.chars().take(LONGEST_FORM).collect()
}

/// The dots per inch that a person typed; None: nothing. An error is what was typed.
pub(super) fn dpi_of(asked: &Asked<'_>) -> Result<Option<f64>, String> {
    let typed = asked.cut("dpi", 20);
    if typed.is_empty() {
        return Ok(None);
    }
    let bare = typed.to_lowercase().trim_end_matches("dpi").trim().replace(',', ".");
    bare.parse().ok().and_then(dpi_within).map(Some).ok_or(typed)
}

fn dpi_within(dpi: f64) -> Option<f64> {
    (DPI[0]..=DPI[1]).contains(&dpi).then_some(dpi)
}

/// A line with points as fine as the page shows them.
pub(super) fn shown(line: &[[f64; 2]], (width, height): (u32, u32)) -> Vec<[f64; 2]> {
    thinned(line, FINE * f64::from(width.max(height)) / f64::from(LONGEST))
}

/// Points that are so far apart, with the last one.
fn thinned(line: &[[f64; 2]], apart: f64) -> Vec<[f64; 2]> {
    let mut kept: Vec<[f64; 2]> = Vec::new();
    for (at, point) in line.iter().enumerate() {
        let near = kept.last().is_some_and(|[x, y]| (point[0] - x).hypot(point[1] - y) < apart);
        if !near || at + 1 == line.len() {
            kept.push(*point);
        }
    }
    kept
}

#[cfg(test)]
mod tests;
