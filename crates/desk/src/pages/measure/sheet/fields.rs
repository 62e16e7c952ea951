//! A measured sheet as fields of a form, and back.
//!
//! From numbers, words and files to texts, and from texts that anybody may have sent to a sheet or to
//! nothing: numbers are numbers, words are of a list, files are base64.

use spinney_exchange::{drawn, mends};
use spinney_model::limits::{PICTURE_PIXELS, SCREENS_LEAVES};
use spinney_model::{Aside, Doubt, LeafNote, LeftOut, Measurand, Mend, NoScale, PictureScale};
use spinney_voice::Tongue;
use spinney_voice::starters::{Look, SEEN, Starter};

use super::{LONGEST_FORM, LONGEST_NAME, Leaf, Sheet, There};
use crate::request::Request;

/// Points of an outline are about a pixel apart, and never so far.
const APART: f64 = 4.0;
/// The most points of an outline: a leaf of a page with a thousand teeth has some ten thousand.
const OUTLINE: usize = 60_000;

impl Sheet {
    /// It as fields of a form.
    pub(crate) fn fields(&self) -> Vec<(String, String)> {
        let (width, height) = self.size;
        let left_out = self.found.left_out.iter();
        let left_out: Vec<String> = left_out
            .map(|(what, count)| format!("{}:{count}", word_of(&LEFT_OUT, what)))
            .collect();
        let mut fields = vec![
            ("found-file".to_owned(), self.file.clone()),
            ("found-size".to_owned(), format!("{width} {height}")),
            ("found-halved".to_owned(), u8::from(self.halved).to_string()),
            ("found-like-a-rubbing".to_owned(), u8::from(self.like_a_rubbing).to_string()),
            (
                "found-scale".to_owned(),
                format!("{} {}", scale_in_words(self.found.scale), self.dpi),
            ),
            ("found-left-out".to_owned(), left_out.join(" ")),
            ("found-picture".to_owned(), self.picture.clone()),
            ("found-mends".to_owned(), mends::write(&self.mends)),
        ];
        for (at, aside) in self.found.aside.iter().enumerate() {
            let text = format!("{}|{}", word_of(&LEFT_OUT, &aside.why), steps(&aside.outline));
            fields.push((format!("aside-{}", at + 1), text));
        }
        for leaf in &self.found.leaves {
            fields.push((format!("leaf-{}", leaf.number), leaf.in_words()));
            fields.push((format!("form-{}", leaf.number), leaf.form.clone()));
            fields.push((format!("looks-{}", leaf.number), looks_in_words(&leaf.looks)));
            fields.push((format!("cut-{}", leaf.number), leaf.picture.clone()));
            let drawn = leaf.drawn.as_ref().map(drawn::write);
            fields.extend(drawn.map(|text| (format!("drawn-{}", leaf.number), text)));
        }
        fields
    }

    /// It from the fields of a form, as it was found, and what was mended of it so far; None: they do
    /// not say it.
    pub(crate) fn read(request: &Request) -> Option<(Self, Vec<Mend>)> {
        let numbers = numbers(request.field("found-size"))?;
        let &[width, height] = numbers.as_slice() else { return None };
        let size = (side(width)?, side(height)?);
        if u64::from(size.0) * u64::from(size.1) > PICTURE_PIXELS {
            return None;
        }
        let (scale, dpi) = request.field("found-scale").rsplit_once(' ')?;
        let dpi: f64 = dpi.parse().ok()?;
        let left_out = request.field("found-left-out").split_whitespace().map(|part| {
            let (what, count) = part.split_once(':')?;
            Some((of_word(&LEFT_OUT, what)?, count.parse().ok()?))
        });
        let found = |number: usize| {
            let said = request.field(&format!("leaf-{number}"));
            let leaf = || {
                let picture = request.field(&format!("cut-{number}"));
                let leaf = Leaf::of_words(number, said, (size, picture))?;
                let form = request.field(&format!("form-{number}"));
                let looks = looks_of_words(request.field(&format!("looks-{number}")))?;
                let drawn = drawn::read(request.field(&format!("drawn-{number}")));
                let form = form.chars().take(LONGEST_FORM).collect();
                Some(Leaf { form, looks, drawn, ..leaf })
            };
            (!said.is_empty()).then(leaf)
        };
        let aside = |number: usize| {
            let said = request.field(&format!("aside-{number}"));
            let (why, outline) = said.split_once('|')?;
            let aside = || {
                let (why, outline) = (of_word(&LEFT_OUT, why)?, line(outline)?);
                is_outline(&outline, size).then_some(Aside { why, outline })
            };
            Some(aside())
        };
        let found = There {
            scale: scale_of_words(scale)?,
            leaves: (1..=SCREENS_LEAVES).map_while(found).collect::<Option<_>>()?,
            left_out: left_out.collect::<Option<_>>()?,
            aside: (1..=SCREENS_LEAVES).map_while(aside).collect::<Option<_>>()?,
        };
        let mends = mends::read(request.field("found-mends")).ok()?;
        let sheet = Self {
            file: request.field("found-file").chars().take(LONGEST_NAME).collect(),
            size,
            picture: base64(request.field("found-picture"))?,
            dpi: above_nothing(dpi)?,
            halved: request.field("found-halved") == "1",
            like_a_rubbing: request.field("found-like-a-rubbing") == "1",
            now: found.clone(),
            found,
            mends: Vec::new(),
        };
        Some((sheet, mends.into_iter().map(|(_, mend)| mend).collect()))
    }
}

impl Leaf {
    fn in_words(&self) -> String {
        let measures: Vec<String> = self
            .measures
            .iter()
            .map(|one| {
                one.map_or("-".to_owned(), |(value, half)| format!("{value:.4} {half:.4}"))
            })
            .collect();
        let notes: Vec<&str> = self.notes.iter().map(|note| word_of(&NOTES, note)).collect();
        let lines: Vec<String> = self.lines.iter().map(|line| steps(line)).collect();
        format!("{}|{}|{}", measures.join(";"), notes.join(" "), lines.join("|"))
    }

    fn of_words(
        number: usize,
        said: &str,
        (size, picture): ((u32, u32), &str),
    ) -> Option<Self> {
        let parts: Vec<&str> = said.split('|').collect();
        let [measures, notes, lines @ ..] = parts.as_slice() else { return None };
        let measures = measures.split(';').map(|one| match one {
            "-" => Some(None),
            one => match numbers(one)?.as_slice() {
                &[value, half] if value >= 0.0 && half >= 0.0 => Some(Some((value, half))),
                _ => None,
            },
        });
        let measures: Vec<_> = measures.collect::<Option<_>>()?;
        let notes = notes.split_whitespace().map(|note| of_word(&NOTES, note));
        let lines: Vec<Vec<[f64; 2]>> =
            lines.iter().map(|text| line(text)).collect::<Option<_>>()?;
        // What is mended is measured from its outline.
        let outlined = lines.first().is_some_and(|outline| is_outline(outline, size));
        Some(Self {
            number,
            measures: (measures.len() == Measurand::ALL.len()).then_some(measures)?,
            notes: notes.collect::<Option<_>>()?,
            form: String::new(),
            looks: [None; SEEN.len()],
            drawn: None,
            lines: lines.try_into().ok().filter(|_| outlined)?,
            picture: base64(picture)?,
        })
    }
}

/// What a leaf answers, question by question: the place of a state, `x` and how many, `n/a` or `-`.
fn looks_in_words(looks: &[Option<Look>; SEEN.len()]) -> String {
    let word = |look: &Option<Look>| match look {
        None => "-".to_owned(),
        Some(Look::State(at)) => at.to_string(),
        Some(Look::Count(count)) => format!("x{count}"),
        Some(Look::NotThere) => "n/a".to_owned(),
    };
    looks.iter().map(word).collect::<Vec<_>>().join(" ")
}

/// None: these are no such words. A page that says nothing was made before there were such words.
fn looks_of_words(words: &str) -> Option<[Option<Look>; SEEN.len()]> {
    if words.is_empty() {
        return Some([None; SEEN.len()]);
    }
    let look = |(word, question): (&str, &str)| {
        let look = match word {
            "-" => return Some(None),
            "n/a" => Look::NotThere,
            _ => match word.strip_prefix('x') {
                Some(count) => Look::Count(count.parse().ok()?),
                None => Look::State(word.parse().ok()?),
            },
        };
        let of = Starter::named(question)?;
        look.text(of, Tongue::of_tokens()).map(|_| Some(look))
    };
    let words: Vec<&str> = words.split(' ').collect();
    if words.len() != SEEN.len() {
        return None;
    }
    let looks: Vec<_> = words.into_iter().zip(SEEN).map(look).collect::<Option<_>>()?;
    looks.try_into().ok()
}

/// A line as tenths of a pixel: its first point, then from each to the next. Outlines have thousands.
fn steps(line: &[[f64; 2]]) -> String {
    let mut before = [0_i64; 2];
    let mut words: Vec<String> = Vec::with_capacity(2 * line.len());
    for place in line {
        let here = place.map(|at| (at * 10.0).round() as i64);
        words.extend([here[0] - before[0], here[1] - before[1]].map(|step| step.to_string()));
        before = here;
    }
    words.join(" ")
}

/// The line of such steps; None: it leads out of any picture.
fn line(steps: &str) -> Option<Vec<[f64; 2]>> {
    let steps = numbers(steps)?;
    let most = 10.0 * 2.0 * f64::from(spinney_model::limits::SCAN_SIDE);
    let mut here = [0.0; 2];
    let mut line = Vec::with_capacity(steps.len() / 2);
    for step in steps.chunks_exact(2) {
        here = [here[0] + step[0], here[1] + step[1]];
        if here.iter().any(|at: &f64| at.abs() > most) {
            return None;
        }
        line.push(here.map(|at| at / 10.0));
    }
    Some(line)
}

/// Whether a line can be one around a leaf of a picture: its points are near each other and on it,
/// as they were found.
fn is_outline(line: &[[f64; 2]], (width, height): (u32, u32)) -> bool {
    let near = |two: &[[f64; 2]]| (two[1][0] - two[0][0]).hypot(two[1][1] - two[0][1]) <= APART;
    let on = |at: f64, side: u32| (-APART..=f64::from(side) + APART).contains(&at);
    let inside = |[x, y]: &[f64; 2]| on(*x, width) && on(*y, height);
    (3..=OUTLINE).contains(&line.len()) && line.windows(2).all(near) && line.iter().all(inside)
}

fn above_nothing(dpi: f64) -> Option<f64> {
    (dpi.is_finite() && dpi > 0.0).then_some(dpi)
}

pub(super) fn numbers(text: &str) -> Option<Vec<f64>> {
    let number = |text: &str| text.parse().ok().filter(|number: &f64| number.is_finite());
    text.split_whitespace().map(number).collect()
}

fn side(pixels: f64) -> Option<u32> {
    let most = f64::from(spinney_model::limits::SCAN_SIDE);
    (1.0..=most).contains(&pixels).then_some(pixels as u32)
}

/// A file in base64, as it can stand in a page.
fn base64(text: &str) -> Option<String> {
    let fits = |sign: u8| sign.is_ascii_alphanumeric() || matches!(sign, b'+' | b'/' | b'=');
    text.bytes().all(fits).then(|| text.to_owned())
}

const NOTES: [(&str, LeafNote); 7] = [
    ("base", LeafNote::BaseGuessed),
    ("holes", LeafNote::Holes),
    ("faint", LeafNote::FaintEdge),
    ("stalks", LeafNote::TwoStalks),
    ("apart", LeafNote::CutApart),
    ("mended", LeafNote::Mended),
    ("rubbed", LeafNote::Rubbed),
];
const LEFT_OUT: [(&str, LeftOut); LeftOut::ALL.len()] = [
    ("cut", LeftOut::CutOff),
    ("strip", LeftOut::OnStrip),
    ("label", LeftOut::Label),
    ("speck", LeftOut::Speck),
    ("faint", LeftOut::Faint),
];

fn word_of<T: PartialEq>(words: &[(&'static str, T)], of: &T) -> &'static str {
    words.iter().find(|(_, known)| known == of).map_or("", |(word, _)| word)
}

fn of_word<T: Copy>(words: &[(&str, T)], word: &str) -> Option<T> {
    words.iter().find(|(known, _)| *known == word).map(|(_, of)| *of)
}

pub(super) fn scale_in_words(scale: PictureScale) -> String {
    match scale {
        PictureScale::Said { dpi } => format!("said {dpi}"),
        PictureScale::OfRuler { dpi } => format!("ruler {dpi}"),
        PictureScale::OfFile { dpi, doubt: None } => format!("file {dpi}"),
        PictureScale::OfFile { dpi, doubt: Some(Doubt::Usual) } => format!("usual {dpi}"),
        PictureScale::OfCard { dpi, off } => format!("card {dpi} {off}"),
        PictureScale::OfStrip { dpi, off, unsure } => format!("strip {dpi} {off} {unsure}"),
        PictureScale::Unknown(NoScale::NotSaid) => "not-said".to_owned(),
        PictureScale::Unknown(NoScale::Camera) => "camera".to_owned(),
        PictureScale::Unknown(NoScale::NotSquare) => "not-square".to_owned(),
        PictureScale::Unknown(NoScale::Rings) => "rings".to_owned(),
        PictureScale::Unknown(NoScale::TooLarge { dpi, longer }) => {
            format!("large {dpi} {longer}")
        }
    }
}

pub(super) fn scale_of_words(words: &str) -> Option<PictureScale> {
    let (word, rest) = words.split_once(' ').unwrap_or((words, ""));
    let numbers = numbers(rest)?;
    Some(match (word, numbers.as_slice()) {
        ("said", &[dpi]) => PictureScale::Said { dpi: above_nothing(dpi)? },
        ("ruler", &[dpi]) => PictureScale::OfRuler { dpi: above_nothing(dpi)? },
        ("file", &[dpi]) => PictureScale::OfFile { dpi: above_nothing(dpi)?, doubt: None },
        ("usual", &[dpi]) => {
            PictureScale::OfFile { dpi: above_nothing(dpi)?, doubt: Some(Doubt::Usual) }
        }
        ("card", &[dpi, off]) if off >= 0.0 => {
            PictureScale::OfCard { dpi: above_nothing(dpi)?, off }
        }
        ("strip", &[dpi, off, unsure]) if off >= 0.0 && unsure >= 0.0 => {
            PictureScale::OfStrip { dpi: above_nothing(dpi)?, off, unsure }
        }
        ("not-said", []) => PictureScale::Unknown(NoScale::NotSaid),
        ("camera", []) => PictureScale::Unknown(NoScale::Camera),
        ("not-square", []) => PictureScale::Unknown(NoScale::NotSquare),
        ("rings", []) => PictureScale::Unknown(NoScale::Rings),
        ("large", &[dpi, longer]) => PictureScale::Unknown(NoScale::TooLarge { dpi, longer }),
        _ => return None,
    })
}
