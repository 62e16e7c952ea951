//! A taxon (for pupils: a kind): what comes out of a key.

use crate::Share;

/// The place of a taxon in its matrix, counted from 0.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash, PartialOrd, Ord)]
pub struct TaxonIx(pub usize);

/// One kind of thing that somebody may bring to the key.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Taxon {
    /// The name pupils use, as typed: `hazel`.
    pub name: String,
    /// The scientific name, if somebody gave one.
    pub scientific_name: Option<String>,
    /// Other names, for reading a person's key and for other languages.
    pub other_names: Vec<OtherName>,
    /// Its name in the second language of the sheets, as typed: `leszczyna`.
    pub second_name: Option<String>,
    /// How often it is met, against the others; 1 where nobody said. Never zero or negative.
    pub weight: Share,
    /// What may hurt, in a sentence for pupils.
    pub caution: Option<String>,
    /// The file name of a picture, as typed.
    pub picture: Option<String>,
    /// A sentence by which a pupil confirms the name at the end.
    pub confirming: Option<String>,
}

impl Taxon {
    /// A kind of which only the name is known.
    pub fn named(name: impl Into<String>) -> Self {
        Self {
            name: name.into(),
            scientific_name: None,
            other_names: Vec::new(),
            second_name: None,
            weight: Share::from_integer(1),
            caution: None,
            picture: None,
            confirming: None,
        }
    }
}

/// A further name of a kind.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct OtherName {
    /// A BCP 47 language tag, where somebody said: `cy`, `de`.
    pub language: Option<String>,
    /// The name itself.
    pub name: String,
}
