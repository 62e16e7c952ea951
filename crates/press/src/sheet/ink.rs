//! Inks, pens and letter sizes: our look on white paper.
//!
//! Every ink is dark enough to be read after a grey copier (see the tests); none carries a
//! meaning that a word, a side, a line or a shape does not say too.

use super::face::Weight;

/// Whether a sheet is printed in colour.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Inks {
    /// As it is drawn.
    Colour,
    /// Black and grey, without grounds: it saves ink.
    Black,
}

/// How large the letters are.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Letters {
    /// As they are drawn: 14 pt, and 12 where room is short.
    Usual,
    /// Large print: 18 pt and more, and no caption under 14.
    Large,
}

impl Letters {
    /// How much larger than it is set a sheet is printed: 14 pt come out as 18.
    pub fn times(self) -> f64 {
        match self {
            Self::Usual => 1.0,
            Self::Large => 18.0 / Style::BODY.size,
        }
    }

    /// The same style, so large that it can be read; captions are not asked.
    pub fn of(self, style: Style) -> Style {
        match self {
            Self::Usual => style,
            Self::Large => Style { size: style.size.max(Style::BODY.size), ..style },
        }
    }
}

/// What colours print with.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Ink {
    /// Words and outlines.
    Ink,
    /// Secondary words.
    Soft,
    /// The one green: tabs, rules, numbers.
    Hedge,
    /// Cautions, always with a word and a shape.
    Berry,
    /// A quiet ground under what belongs together.
    Tint,
    /// The ground of a caution; on a grey copy as light as the tint.
    Blush,
    /// The large letters behind the words of a draft.
    Ghost,
    /// The paper.
    Paper,
    /// Words and lines where ink is saved.
    Black,
    /// Secondary words there.
    Grey,
    /// The large letters of a draft there.
    Pale,
}

impl Ink {
    /// Red, green, blue.
    pub fn rgb(self) -> (u8, u8, u8) {
        match self {
            Self::Ink => (0x1F, 0x2A, 0x24),
            Self::Soft => (0x55, 0x61, 0x5A),
            Self::Hedge => (0x2A, 0x61, 0x48),
            Self::Berry => (0x96, 0x31, 0x2A),
            Self::Tint => (0xEA, 0xF1, 0xE6),
            Self::Blush => (0xFA, 0xEE, 0xEA),
            Self::Ghost => (0xE2, 0xE2, 0xDE),
            Self::Paper => (0xFF, 0xFF, 0xFF),
            Self::Black => (0x00, 0x00, 0x00),
            Self::Grey => (0x55, 0x55, 0x55),
            Self::Pale => (0xE2, 0xE2, 0xE2),
        }
    }
}

/// How a line is drawn.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Pen {
    /// Width in mm; never under [`Pen::THINNEST`].
    pub width: f64,
    /// Colour.
    pub ink: Ink,
    /// Solid, dashed or dotted.
    pub dash: Dash,
}

impl Pen {
    /// 0.5 pt: thinner rules are lost on a copier.
    pub const THINNEST: f64 = 0.18;

    /// A solid line.
    pub const fn solid(width: f64, ink: Ink) -> Self {
        Self { width, ink, dash: Dash::Solid }
    }

    /// A dashed line: the way of "no", or where to cut.
    pub const fn dashed(width: f64, ink: Ink) -> Self {
        Self { width, ink, dash: Dash::Dashed }
    }
}

/// The three ways of drawing a line.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Dash {
    /// The way of "yes".
    Solid,
    /// The way of "no", and where to cut.
    Dashed,
    /// Where to write, and where to fold.
    Dotted,
}

/// How letters are set.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Style {
    /// Regular or bold: the only two.
    pub weight: Weight,
    /// Size in points; never under 12 where a child reads.
    pub size: f64,
    /// Distance of the lines, as a multiple of the size.
    pub leading: f64,
    /// Colour.
    pub ink: Ink,
}

impl Style {
    /// What pupils read: 14 pt.
    pub const BODY: Self = Self::new(Weight::Regular, 14.0, 1.35);
    /// The same, with weight.
    pub const STRONG: Self = Self::new(Weight::Bold, 14.0, 1.35);
    /// The smallest on any sheet: 12 pt.
    pub const SMALL: Self = Self::new(Weight::Regular, 12.0, 1.3);
    /// The smallest, with weight.
    pub const SMALL_STRONG: Self = Self::new(Weight::Bold, 12.0, 1.3);
    /// Questions, names: a step of 1.2 up.
    pub const LARGE: Self = Self::new(Weight::Bold, 16.8, 1.3);
    /// Headings: a second step up.
    pub const HEADING: Self = Self::new(Weight::Bold, 20.2, 1.25);
    /// The title: a third step up.
    pub const TITLE: Self = Self::new(Weight::Bold, 24.2, 1.2);

    /// A style in the plain ink.
    pub const fn new(weight: Weight, size: f64, leading: f64) -> Self {
        Self { weight, size, leading, ink: Ink::Ink }
    }

    /// The same letters in another ink.
    pub const fn inked(self, ink: Ink) -> Self {
        Self { ink, ..self }
    }
}

/// Millimetres in a typographer's point.
pub const MM_IN_PT: f64 = 25.4 / 72.0;

#[cfg(test)]
mod tests {
    use super::Ink;

    /// Relative luminance and contrast as WCAG 2.2 defines them.
    fn contrast(ink: Ink, ground: Ink) -> f64 {
        let light = |ink: Ink| {
            let (r, g, b) = ink.rgb();
            let line = |c: u8| {
                let c = f64::from(c) / 255.0;
                if c <= 0.04045 { c / 12.92 } else { ((c + 0.055) / 1.055).powf(2.4) }
            };
            0.2126 * line(r) + 0.7152 * line(g) + 0.0722 * line(b)
        };
        let (a, b) = (light(ink), light(ground));
        (a.max(b) + 0.05) / (a.min(b) + 0.05)
    }

    #[test]
    fn every_ink_for_words_is_dark_enough_on_every_ground() {
        for ink in [Ink::Ink, Ink::Soft, Ink::Hedge, Ink::Berry, Ink::Black, Ink::Grey] {
            for ground in [Ink::Paper, Ink::Tint, Ink::Blush, Ink::Ghost, Ink::Pale] {
                let found = contrast(ink, ground);
                assert!(found >= 4.5, "{ink:?} on {ground:?}: {found:.2}");
            }
        }
    }
}
