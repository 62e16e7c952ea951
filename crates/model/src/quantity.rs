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

/// A unit in which people write numbers, the finer of a sort first.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash, PartialOrd, Ord)]
pub enum WrittenIn {
    /// The unit in which lengths are kept.
    Millimetres,
    /// 10 mm.
    Centimetres,
    /// 25.4 mm.
    Inches,
    /// 12 inches.
    Feet,
    /// 1000 mm.
    Metres,
    /// The unit in which angles are kept.
    Degrees,
    /// The unit in which weights are kept.
    Grams,
    /// 1000 g.
    Kilograms,
    /// One length over another; has no spelling, only a table's sheet says so.
    Ratio,
}

/// All there is to say of a unit: this table, and no other, says how units are spelt.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct UnitRow {
    /// The unit.
    pub unit: WrittenIn,
    /// The unit in which its numbers are kept.
    pub kept_as: Unit,
    /// How many thousandths of the kept unit one is.
    pub thousandths: i64,
    /// How it is written in a heading and behind a number in a list.
    pub sign: &'static str,
    /// How it is said behind the number one, and behind every other, in a sentence.
    pub said: [&'static str; 2],
    /// Every spelling, in small letters and without a full stop behind it.
    pub spelt: &'static [&'static str],
}

/// Every unit. The inch is 25.4 mm by the international yard and pound agreement of 1959.
pub const UNITS: [UnitRow; 9] = [
    UnitRow {
        unit: WrittenIn::Millimetres,
        kept_as: Unit::Millimetres,
        thousandths: 1_000,
        sign: "mm",
        said: ["mm", "mm"],
        spelt: &["mm", "mms", "millimetre", "millimetres", "millimeter", "millimeters"],
    },
    UnitRow {
        unit: WrittenIn::Centimetres,
        kept_as: Unit::Millimetres,
        thousandths: 10_000,
        sign: "cm",
        said: ["cm", "cm"],
        spelt: &["cm", "cms", "centimetre", "centimetres", "centimeter", "centimeters"],
    },
    UnitRow {
        unit: WrittenIn::Inches,
        kept_as: Unit::Millimetres,
        thousandths: 25_400,
        sign: "in",
        said: ["inch", "inches"],
        spelt: &["in", "ins", "inch", "inches", "\"", "″", "”", "''", "′′"],
    },
    UnitRow {
        unit: WrittenIn::Feet,
        kept_as: Unit::Millimetres,
        thousandths: 304_800,
        sign: "ft",
        said: ["foot", "feet"],
        spelt: &["ft", "foot", "feet"],
    },
    UnitRow {
        unit: WrittenIn::Metres,
        kept_as: Unit::Millimetres,
        thousandths: 1_000_000,
        sign: "m",
        said: ["m", "m"],
        spelt: &["m", "metre", "metres", "meter", "meters"],
    },
    UnitRow {
        unit: WrittenIn::Degrees,
        kept_as: Unit::Degrees,
        thousandths: 1_000,
        sign: "°",
        said: ["°", "°"],
        spelt: &["°", "º", "deg", "degree", "degrees"],
    },
    UnitRow {
        unit: WrittenIn::Grams,
        kept_as: Unit::Grams,
        thousandths: 1_000,
        sign: "g",
        said: ["g", "g"],
        spelt: &["g", "gram", "grams", "gramme", "grammes"],
    },
    UnitRow {
        unit: WrittenIn::Kilograms,
        kept_as: Unit::Grams,
        thousandths: 1_000_000,
        sign: "kg",
        said: ["kg", "kg"],
        spelt: &["kg", "kgs", "kilogram", "kilograms", "kilo", "kilos"],
    },
    UnitRow {
        unit: WrittenIn::Ratio,
        kept_as: Unit::Ratio,
        thousandths: 1_000,
        sign: "",
        said: ["", ""],
        spelt: &[],
    },
];

impl WrittenIn {
    /// What the table of units says of it.
    pub fn row(self) -> &'static UnitRow {
        let row = UNITS.iter().find(|row| row.unit == self);
        row.expect("every unit stands in the table of units")
    }

    /// The unit of a spelling; capitals and a full stop behind it do not matter.
    pub fn spelt(text: &str) -> Option<Self> {
        let text = text.trim().trim_end_matches('.').to_lowercase();
        let row = UNITS.iter().find(|row| row.spelt.contains(&text.as_str()));
        row.map(|row| row.unit)
    }

    /// The sign behind a number in a list, and in a heading.
    pub fn sign(self) -> &'static str {
        self.row().sign
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

    /// The shortest decimal form in a unit of which one is so many thousandths: 40 mm in
    /// centimetres, `4`. Read back, it is the same quantity to the thousandth.
    pub fn written(self, one: i64) -> String {
        let (own, one) = (i128::from(self.0), i128::from(one.max(1)));
        let mut ten = 1_i128;
        for places in 0_usize.. {
            let number = rounded(own * ten, one);
            if rounded(number * one, ten) == own {
                let (sign, size) = (if number < 0 { "-" } else { "" }, number.unsigned_abs());
                let (whole, rest) = (size / ten.unsigned_abs(), size % ten.unsigned_abs());
                return match places {
                    0 => format!("{sign}{whole}"),
                    _ => format!("{sign}{whole}.{rest:0places$}"),
                };
            }
            ten *= 10;
        }
        unreachable!("finer than a thousandth nothing is lost")
    }

    /// The value as a float, for drawing and for JSON; never for comparing.
    pub fn as_f64(self) -> f64 {
        self.0 as f64 / 1000.0
    }
}

/// One whole number over another, to the nearest; halves go away from nothing.
fn rounded(over: i128, under: i128) -> i128 {
    let (size, under) = (over.unsigned_abs(), under.unsigned_abs());
    let nearest = i128::try_from((size + under / 2) / under).unwrap_or(i128::MAX);
    if over < 0 { -nearest } else { nearest }
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

/// A number as its column writes it: in centimetres where the column is, without a unit where it
/// has none.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash, PartialOrd, Ord)]
pub struct Written {
    /// How much, in the unit in which it is kept.
    pub quantity: Quantity,
    /// The unit in which it is written; None: a count or a ratio, or nobody said.
    pub written_in: Option<WrittenIn>,
}

impl Written {
    /// The number without its unit.
    pub fn number(self) -> String {
        self.quantity.written(self.written_in.map_or(1_000, |unit| unit.row().thousandths))
    }
}

impl fmt::Display for Written {
    /// With its unit, as it stands in an English sentence: `4 cm`, `40°`, `1 inch`, `2 inches`.
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        let number = self.number();
        let said = self.written_in.map_or(["", ""], |written| written.row().said);
        match said[usize::from(number != "1")] {
            "" => f.write_str(&number),
            sign @ "°" => write!(f, "{number}{sign}"),
            unit => write!(f, "{number} {unit}"),
        }
    }
}

#[cfg(test)]
mod tests {
    use super::{Quantity, UNITS, WrittenIn};

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
        for (thousandths, cm, m, inches) in [
            (40_000, "4", "0.04", "1.5748"),
            (22_500, "2.25", "0.0225", "0.88583"),
            (1_000_000, "100", "1", "39.37008"),
            (63_500, "6.35", "0.0635", "2.5"),
            (57_150, "5.715", "0.05715", "2.25"),
            (-5, "-0.0005", "-0.000005", "-0.0002"),
            (0, "0", "0", "0"),
        ] {
            let length = Quantity::from_thousandths(thousandths);
            let written = |unit: WrittenIn| length.written(unit.row().thousandths);
            assert_eq!(written(WrittenIn::Centimetres), cm);
            assert_eq!(written(WrittenIn::Metres), m);
            assert_eq!(written(WrittenIn::Inches), inches);
            assert_eq!(written(WrittenIn::Millimetres), length.to_string());
        }
    }

    #[test]
    fn no_spelling_means_two_units_and_every_unit_has_its_row() {
        let mut spelt = std::collections::BTreeSet::new();
        for row in UNITS {
            assert_eq!(row.unit.row(), &row);
            for word in row.spelt {
                assert!(spelt.insert(*word), "{word}");
                assert_eq!(WrittenIn::spelt(word), Some(row.unit));
                assert_eq!(WrittenIn::spelt(&word.to_uppercase()), Some(row.unit));
            }
            assert!(row.sign.is_empty() || row.spelt.contains(&row.sign));
            assert!(row.said[0].is_empty() || row.said.iter().all(|it| row.spelt.contains(it)));
        }
        assert_eq!(WrittenIn::spelt(" In. "), Some(WrittenIn::Inches));
        assert_eq!(WrittenIn::spelt("parsecs"), None);
    }
}
