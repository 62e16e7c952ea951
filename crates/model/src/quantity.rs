//! Exact numbers: shares of a kind's leaves, and measured values in thousandths of a unit.
//!
//! A threshold that lies *exactly* the safety gap from a range must do so on every machine,
//! so a measured value in a table is a whole number of thousandths, not a float. (What a scan
//! yields later carries a float and an uncertainty until it becomes a cell.)

use std::fmt;

use num_rational::Ratio;

/// A share, weight, cost or effort: an exact rational.
pub type Share = Ratio<i128>;

/// What a measured character is measured in.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash, PartialOrd, Ord)]
pub enum Unit {
    /// Every length, whatever was typed: 4 cm is kept as 40 mm.
    Millimetres,
    /// Angles.
    Degrees,
    /// Weights.
    Grams,
    /// One length over another.
    Ratio,
    /// Nobody said; the reader has told the person so.
    Unstated,
}

impl Unit {
    /// The sign printed after a number; empty where nobody said.
    pub fn sign(self) -> &'static str {
        match self {
            Self::Millimetres => "mm",
            Self::Degrees => "°",
            Self::Grams => "g",
            Self::Ratio | Self::Unstated => "",
        }
    }
}

/// A unit of length in which people write what is kept in millimetres. Inches are not among them:
/// a threshold between two of them would not be a decimal number.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash, PartialOrd, Ord)]
pub enum WrittenIn {
    /// 10 mm.
    Centimetres,
    /// 1000 mm.
    Metres,
}

impl WrittenIn {
    /// The sign printed after a number.
    pub fn sign(self) -> &'static str {
        match self {
            Self::Centimetres => "cm",
            Self::Metres => "m",
        }
    }

    /// How many millimetres one is.
    pub fn millimetres(self) -> i64 {
        match self {
            Self::Centimetres => 10,
            Self::Metres => 1000,
        }
    }
}

/// A measured value in its character's unit, exact to a thousandth (for lengths: to 1 µm).
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Hash, PartialOrd, Ord)]
pub struct Quantity(i64);

impl Quantity {
    /// Zero of any unit.
    pub const ZERO: Self = Self(0);

    /// A value from whole thousandths of the unit.
    pub const fn from_thousandths(thousandths: i64) -> Self {
        Self(thousandths)
    }

    /// A value from whole units; saturates far beyond any leaf.
    pub const fn from_whole(units: i64) -> Self {
        Self(units.saturating_mul(1000))
    }

    /// Whole thousandths of the unit.
    pub const fn thousandths(self) -> i64 {
        self.0
    }

    /// The shortest decimal form of so many times less: 40 mm in centimetres, `4`. The other must
    /// be a power of ten.
    pub fn over(self, ten: i64) -> String {
        let (sign, size) = (if self.0 < 0 { "-" } else { "" }, self.0.unsigned_abs());
        let one = 1000 * ten.unsigned_abs();
        let (whole, rest) = (size / one, size % one);
        if rest == 0 {
            return format!("{sign}{whole}");
        }
        let places = one.ilog10() as usize;
        format!("{sign}{whole}.{}", format!("{rest:0places$}").trim_end_matches('0'))
    }

    /// The value as a float, for drawing and for JSON; never for comparing.
    pub fn as_f64(self) -> f64 {
        self.0 as f64 / 1000.0
    }
}

impl fmt::Display for Quantity {
    /// The shortest decimal form: `22.5`, `40`.
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        let (sign, size) = (if self.0 < 0 { "-" } else { "" }, self.0.unsigned_abs());
        let (whole, rest) = (size / 1000, size % 1000);
        if rest == 0 {
            return write!(f, "{sign}{whole}");
        }
        let decimals = format!("{rest:03}");
        write!(f, "{sign}{whole}.{}", decimals.trim_end_matches('0'))
    }
}

#[cfg(test)]
mod tests {
    use super::{Quantity, WrittenIn};

    #[test]
    fn a_quantity_prints_as_a_person_would_write_it() {
        for (thousandths, text) in
            [(22_500, "22.5"), (40_000, "40"), (-3_250, "-3.25"), (7, "0.007"), (0, "0")]
        {
            assert_eq!(Quantity::from_thousandths(thousandths).to_string(), text);
        }
    }

    #[test]
    fn a_length_is_written_in_the_unit_of_its_column() {
        for (thousandths, cm, m) in [
            (40_000, "4", "0.04"),
            (22_500, "2.25", "0.0225"),
            (1_000_000, "100", "1"),
            (-5, "-0.0005", "-0.000005"),
            (0, "0", "0"),
        ] {
            let length = Quantity::from_thousandths(thousandths);
            assert_eq!(length.over(WrittenIn::Centimetres.millimetres()), cm);
            assert_eq!(length.over(WrittenIn::Metres.millimetres()), m);
            assert_eq!(length.over(1), length.to_string());
        }
    }
}
