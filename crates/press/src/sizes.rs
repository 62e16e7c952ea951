//! How large somebody wishes what is stuck in, and what hangs on the wall.
//!
//! From what a person types or chooses to a length or a size of paper. Where nobody wishes
//! anything, the lengths in the table say how large places are, and the chart is as large as they
//! make it.

/// What somebody wishes of the sizes.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Sizes {
    /// How long a leaf has room in every place; None: as long as the table has measured it.
    pub places: Option<LeafLength>,
    /// How large the chart for the wall is.
    pub wall: Wall,
}

impl Sizes {
    /// As large as the lengths in the table say.
    pub const USUAL: Self = Self { places: None, wall: Wall::AsNeeded };
}

/// The length of a leaf that is to have room, in whole mm.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct LeafLength(u16);

impl LeafLength {
    /// A shorter one is not found again in its place.
    pub const LEAST: u16 = 20;
    /// A longer one has no room on a page of A4 or Letter beneath its head.
    pub const MOST: u16 = 200;

    /// What a person typed: `120`, `120 mm` or `12 cm`. None: it is no length, or none that
    /// there can be.
    pub fn read(text: &str) -> Option<Self> {
        let text = text.trim().to_lowercase().replace(',', ".");
        let (number, times) = match (text.strip_suffix("cm"), text.strip_suffix("mm")) {
            (Some(number), _) => (number, 10.0),
            (None, Some(number)) => (number, 1.0),
            (None, None) => (text.as_str(), 1.0),
        };
        let mm = number.trim().parse::<f64>().ok()? * times;
        let allowed = f64::from(Self::LEAST)..=f64::from(Self::MOST);
        allowed.contains(&mm).then(|| Self(mm.round() as u16))
    }

    /// In mm.
    pub fn mm(self) -> u16 {
        self.0
    }
}

/// How large the chart for the wall is.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Wall {
    /// As large as its places make it.
    AsNeeded,
    /// Exactly A2.
    A2,
    /// Exactly A1.
    A1,
}

impl Wall {
    /// Shorter and longer side in mm (ISO 216); None: as large as needed.
    pub fn sides(self) -> Option<(f64, f64)> {
        match self {
            Self::AsNeeded => None,
            Self::A2 => Some((420.0, 594.0)),
            Self::A1 => Some((594.0, 841.0)),
        }
    }

    /// What such a paper is called everywhere.
    pub(crate) fn name(self) -> &'static str {
        match self {
            Self::AsNeeded => "",
            Self::A2 => "A2",
            Self::A1 => "A1",
        }
    }
}

#[cfg(test)]
mod tests {
    use super::LeafLength;

    #[test]
    fn a_length_is_read_as_people_type_it() {
        let read = |text: &str| LeafLength::read(text).map(LeafLength::mm);
        for (text, mm) in [("120", 120), (" 120 mm", 120), ("12cm", 120), ("12,5 CM", 125)] {
            assert_eq!(read(text), Some(mm), "{text}");
        }
        for text in ["", "long", "19", "201", "-40", "20,1 cm", "NaN", "1e9", "cm"] {
            assert_eq!(read(text), None, "{text}");
        }
        assert_eq!([read("20"), read("20 cm")], [Some(20), Some(200)]);
    }
}
