//! What was measured of leaves, in words: measures with their ±, where the scale comes from, what
//! is to be said of a leaf, and why nothing could be measured.
//!
//! From the data of `measure` to phrases and sentences in the language of a person.

mod form;
mod mend;

use std::fmt::Display;

use spinney_model::{
    Doubt, LeafNote, LeftOut, Measurand, Measure, MeasuredPicture, NoScale, PictureError,
    PictureScale,
};

use crate::Tongue;

pub(crate) use form::is_clear;
pub use form::{base_form, edge_kind, form, tip_form};
pub use mend::{cannot_mend, mend, no_mend};

/// What is measured: `blade length`.
pub fn measurand(t: Tongue, what: Measurand) -> String {
    t.say(match what {
        Measurand::BladeLength => "measure-blade-length",
        Measurand::BladeWidth => "measure-blade-width",
        Measurand::StalkLength => "measure-stalk-length",
        Measurand::BladeArea => "measure-blade-area",
        Measurand::Perimeter => "measure-perimeter",
        Measurand::LengthToWidth => "measure-length-to-width",
        Measurand::StalkToBlade => "measure-stalk-to-blade",
        Measurand::Solidity => "measure-solidity",
        Measurand::Roundness => "measure-roundness",
    })
}

/// A measure with its ±: `blade length 62.3 ± 0.4 mm`.
pub fn measure(t: Tongue, measure: &Measure) -> String {
    let what = measurand(t, measure.what);
    t.with("measure-one", &[("what", &what), ("amount", &amount(t, measure))])
}

/// How much, with its ±: `62.3 ± 0.4 mm`, rounded to what it is sure of.
pub fn amount(t: Tongue, measure: &Measure) -> String {
    let [value, half] = [measure.value, measure.plus_minus]
        .map(|number| t.decimal(&rounded(number, measure.plus_minus)));
    let unit = match measure.what.unit().sign() {
        "" => String::new(),
        sign => format!(" {sign}"),
    };
    t.with("measure-amount", &[("value", &value), ("half", &half), ("unit", &unit)])
}

/// A number with as many digits as its ± is sure of: one of the ±, two where that begins with a
/// one (JCGM 100:2008, 7.2.6, asks for at most two).
fn rounded(number: f64, plus_minus: f64) -> String {
    if plus_minus <= 0.0 || !plus_minus.is_finite() {
        return number.to_string();
    }
    let place = plus_minus.log10().floor();
    let first = plus_minus / 10.0_f64.powf(place);
    let place = if first < 1.95 { place - 1.0 } else { place };
    let step = 10.0_f64.powf(place);
    let decimals = (-place).clamp(0.0, 6.0) as usize;
    format!("{:.decimals$}", (number / step).round() * step)
}

/// How many leaves a picture has, and how large its dots are: two sentences.
pub fn picture(t: Tongue, file: &str, picture: &MeasuredPicture) -> String {
    let leaves = t.count("measure-leaves", picture.leaves.len());
    let found = t.with("measure-picture", &[("file", &file), ("leaves", &leaves)]);
    match picture.halved {
        false => format!("{found} {}", scale(t, picture.scale)),
        true => {
            let before = scale(t, picture.scale.doubled());
            format!("{found} {before} {}", t.say("measure-halved"))
        }
    }
}

fn scale(t: Tongue, scale: PictureScale) -> String {
    let number = |number: f64| t.decimal(&((number * 10.0).round() / 10.0).to_string());
    let with = |message, dpi: f64| t.with(message, &[("dpi", &number(dpi))]);
    match scale {
        PictureScale::Said { dpi } => with("measure-scale-said", dpi),
        PictureScale::OfRuler { dpi } => with("measure-scale-of-ruler", dpi),
        PictureScale::OfFile { dpi, doubt: None } => with("measure-scale-of-file", dpi),
        PictureScale::OfFile { dpi, doubt: Some(Doubt::Usual) } => {
            with("measure-scale-doubtful", dpi)
        }
        PictureScale::OfCard { dpi, off } => {
            let off = t.decimal(&format!("{off:.2}"));
            t.with("measure-scale-of-card", &[("dpi", &dpi.round()), ("off", &off)])
        }
        PictureScale::OfStrip { dpi, off, unsure } => {
            let off = t.decimal(&format!("{off:.2}"));
            let unsure = t.decimal(&format!("{:.1}", 100.0 * unsure));
            let said =
                [("dpi", &dpi.round() as &dyn Display), ("off", &off), ("unsure", &unsure)];
            t.with("measure-scale-of-strip", &said)
        }
        PictureScale::Unknown(NoScale::NotSaid) => t.say("measure-no-scale"),
        PictureScale::Unknown(NoScale::Camera) => t.say("measure-no-scale-camera"),
        PictureScale::Unknown(NoScale::NotSquare) => t.say("measure-no-scale-not-square"),
        PictureScale::Unknown(NoScale::Rings) => t.say("measure-no-scale-rings"),
        PictureScale::Unknown(NoScale::TooLarge { dpi, longer }) => t.with(
            "measure-no-scale-too-large",
            &[("dpi", &number(dpi)), ("longer", &(longer / 10.0).round())],
        ),
    }
}

/// How large the dots of a picture are, where the number is typed below and not on a command
/// line.
pub fn scale_on_screen(t: Tongue, of: PictureScale) -> String {
    let number = |number: f64| t.decimal(&((number * 10.0).round() / 10.0).to_string());
    match of {
        PictureScale::OfFile { dpi, doubt: Some(Doubt::Usual) } => {
            t.with("scan-doubtful", &[("dpi", &number(dpi))])
        }
        PictureScale::Unknown(NoScale::NotSaid) => t.say("scan-no-scale"),
        PictureScale::Unknown(NoScale::TooLarge { dpi, longer }) => t.with(
            "scan-too-large",
            &[("dpi", &number(dpi)), ("longer", &(longer / 10.0).round())],
        ),
        PictureScale::Said { .. }
        | PictureScale::OfRuler { .. }
        | PictureScale::OfFile { doubt: None, .. }
        | PictureScale::OfCard { .. }
        | PictureScale::OfStrip { .. }
        | PictureScale::Unknown(NoScale::Camera | NoScale::NotSquare | NoScale::Rings) => {
            scale(t, of)
        }
    }
}

/// That the dots of a picture are too large; empty: they are not.
pub fn coarse(t: Tongue, of: PictureScale) -> String {
    if of.is_coarse() { t.say("measure-coarse") } else { String::new() }
}

/// That a picture is a rubbing, and what of that is to be known; empty: it is none.
pub fn rubbed(t: Tongue, leaves_notes: &[&[LeafNote]]) -> String {
    match leaves_notes.iter().any(|notes| notes.contains(&LeafNote::Rubbed)) {
        true => t.say("measure-rubbed"),
        false => String::new(),
    }
}

/// What is to be said of a leaf.
pub fn leaf_note(t: Tongue, note: LeafNote) -> String {
    t.say(match note {
        LeafNote::BaseGuessed => "measure-base-guessed",
        LeafNote::Holes => "measure-holes",
        LeafNote::FaintEdge => "measure-faint",
        LeafNote::TwoStalks => "measure-two-stalks",
        LeafNote::CutApart => "measure-was-cut-apart",
        LeafNote::Mended => "measure-mended",
        LeafNote::Rubbed => "measure-rubbed",
    })
}

/// Which leaves touched and were cut apart, and how a person puts them together again: each into the
/// first, in the order in which they hang together.
pub fn cut_apart(t: Tongue, leaves: &[usize]) -> String {
    let Some((one, others)) = leaves.split_first().filter(|(_, others)| !others.is_empty())
    else {
        return String::new();
    };
    let mut numbers = leaves.to_vec();
    numbers.sort_unstable();
    let name = |number: &usize| t.with("measure-leaf", &[("number", number)]);
    let names: Vec<String> = numbers.iter().map(name).collect();
    let line = |other: &usize| t.with("measure-part-of", &[("other", other), ("one", one)]);
    let lines: Vec<String> = others.iter().map(line).collect();
    let (names, lines) = (crate::all(t, &names), crate::all(t, &lines));
    let said: [(&str, &dyn Display); 2] = [("leaves", &names), ("lines", &lines)];
    t.count_with("measure-cut-apart", others.len(), &said)
}

/// What in a picture is no leaf; empty: nothing.
pub fn left_out(t: Tongue, left_out: &[(LeftOut, usize)]) -> String {
    let each = |(what, count): &(LeftOut, usize)| {
        let message = match what {
            LeftOut::CutOff => "measure-cut-off",
            LeftOut::OnStrip => "measure-on-strip",
            LeftOut::Label => "measure-label",
            LeftOut::Speck => "measure-speck",
            LeftOut::Faint => "measure-faint-things",
        };
        t.count(message, *count)
    };
    let all: Vec<String> = left_out.iter().map(each).collect();
    match all.is_empty() {
        true => String::new(),
        false => t.with("measure-left-out", &[("what", &crate::all(t, &all))]),
    }
}

/// Why nothing could be measured in a picture: a sentence, and a remedy.
pub fn picture_error(t: Tongue, file: &str, error: PictureError) -> (String, String) {
    let (message, most) = match error {
        PictureError::NotRead => ("measure-not-read", 0),
        PictureError::TooLarge { most } => ("measure-too-large", most / 1_000_000),
        PictureError::NothingThere => ("measure-nothing-there", 0),
    };
    t.told(message, &[("file", &file), ("most", &most)])
}

#[cfg(test)]
mod tests;
