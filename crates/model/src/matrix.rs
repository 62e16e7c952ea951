//! The matrix: kinds × characters, one cell each, and the scene it was made for.

use num_traits::{One, Zero};

use crate::{Cell, Character, CharacterIx, InSecond, Scale, Share, Taxon, TaxonIx, Value};

/// What stands in the title of a key: for whom, where, when, on what.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct Scene {
    /// `Hedge and street walk`
    pub title: Option<String>,
    /// `Mill Lane`
    pub place: Option<String>,
    /// `early October`
    pub season: Option<String>,
    /// The part needed in the hand: `a twig with leaves`
    pub part: Option<String>,
    /// What everybody on the visit must know, whatever they find: `Wash your hands before lunch.`
    pub caution: Option<String>,
    /// What the adults see to before they set out, a line each.
    pub before_you_go: Vec<String>,
    /// How many children come along.
    pub children: Option<u16>,
    /// In how many groups they go.
    pub groups: Option<u16>,
    /// The second language of the sheets, as people call it: `Polski`.
    pub second_language: Option<String>,
    /// Questions that were worded by hand, each with its text in that language.
    pub second_questions: Vec<InSecond>,
    /// The version that distinguishes this print from older ones.
    pub version: Option<String>,
}

/// Kinds × characters. Every cell fits its character; see [`MatrixError`].
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Matrix {
    scene: Scene,
    taxa: Vec<Taxon>,
    characters: Vec<Character>,
    /// Row after row.
    cells: Vec<Cell>,
}

impl Matrix {
    /// Puts a matrix together. `rows[t][c]` is the cell of kind t in character c.
    ///
    /// **Errors**: the first rule of [`MatrixError`] that is broken.
    pub fn new(
        scene: Scene,
        taxa: Vec<Taxon>,
        characters: Vec<Character>,
        rows: Vec<Vec<Cell>>,
    ) -> Result<Self, MatrixError> {
        if rows.len() != taxa.len() {
            return Err(MatrixError::Rows { taxa: taxa.len(), rows: rows.len() });
        }
        all_weigh(&taxa)?;
        governors_hold(&characters)?;
        let mut cells = Vec::with_capacity(taxa.len() * characters.len());
        for (taxon, row) in taxa.iter().zip(rows) {
            if row.len() != characters.len() {
                return Err(MatrixError::Columns { taxon: taxon.name.clone() });
            }
            for (character, cell) in characters.iter().zip(&row) {
                if !fits(&cell.value, &character.scale) {
                    return Err(MatrixError::Cell {
                        taxon: taxon.name.clone(),
                        character: character.name.clone(),
                    });
                }
            }
            cells.extend(row);
        }
        let matrix = Self { scene, taxa, characters, cells };
        for at in matrix.character_indices() {
            if matrix.distinct_counts(at) > Scale::MOST_STATES {
                let character = matrix.character(at).name.clone();
                return Err(MatrixError::Counts { character });
            }
        }
        Ok(matrix)
    }

    /// How many different whole numbers stand in a column.
    fn distinct_counts(&self, at: CharacterIx) -> usize {
        let mut counts = std::collections::BTreeSet::new();
        for taxon in self.taxon_indices() {
            if let Value::Counts(shares) = &self.cell(taxon, at).value {
                counts.extend(shares.iter().map(|(count, _)| *count));
            }
        }
        counts.len()
    }

    /// What the title says.
    pub fn scene(&self) -> &Scene {
        &self.scene
    }

    /// The same matrix under another title.
    pub fn with_scene(self, scene: Scene) -> Self {
        Self { scene, ..self }
    }

    /// The same cells for kinds that are described otherwise.
    ///
    /// **Errors**: there are not as many as before, or one of them weighs nothing.
    pub fn with_taxa(self, taxa: Vec<Taxon>) -> Result<Self, MatrixError> {
        if taxa.len() != self.taxa.len() {
            return Err(MatrixError::Rows { taxa: taxa.len(), rows: self.taxa.len() });
        }
        all_weigh(&taxa)?;
        Ok(Self { taxa, ..self })
    }

    /// The kinds, in the order of the rows.
    pub fn taxa(&self) -> &[Taxon] {
        &self.taxa
    }

    /// The characters, in the order of the columns.
    pub fn characters(&self) -> &[Character] {
        &self.characters
    }

    /// One kind. **Panics** if the index is of another matrix.
    pub fn taxon(&self, taxon: TaxonIx) -> &Taxon {
        &self.taxa[taxon.0]
    }

    /// One character. **Panics** if the index is of another matrix.
    pub fn character(&self, character: CharacterIx) -> &Character {
        &self.characters[character.0]
    }

    /// One cell. **Panics** if an index is of another matrix.
    pub fn cell(&self, taxon: TaxonIx, character: CharacterIx) -> &Cell {
        assert!(character.0 < self.characters.len(), "a character of another matrix");
        &self.cells[taxon.0 * self.characters.len() + character.0]
    }

    /// The indices of all kinds.
    pub fn taxon_indices(&self) -> impl Iterator<Item = TaxonIx> + use<> {
        (0..self.taxa.len()).map(TaxonIx)
    }

    /// The indices of all characters.
    pub fn character_indices(&self) -> impl Iterator<Item = CharacterIx> + use<> {
        (0..self.characters.len()).map(CharacterIx)
    }
}

fn all_weigh(taxa: &[Taxon]) -> Result<(), MatrixError> {
    match taxa.iter().find(|taxon| taxon.weight <= Share::zero()) {
        Some(taxon) => Err(MatrixError::Weight { taxon: taxon.name.clone() }),
        None => Ok(()),
    }
}

/// Governors are characters in words, with declared states, and never govern themselves.
fn governors_hold(characters: &[Character]) -> Result<(), MatrixError> {
    for character in characters {
        let Scale::Words { states } = &character.scale else {
            continue;
        };
        let distinct: std::collections::BTreeSet<_> = states.iter().collect();
        if states.len() > Scale::MOST_STATES || distinct.len() != states.len() {
            return Err(MatrixError::States { character: character.name.clone() });
        }
    }
    for character in characters {
        let mut above = character.governor.as_ref();
        let mut climbed = 0;
        while let Some(governor) = above {
            let fault = || MatrixError::Governor { character: character.name.clone() };
            let governing = characters.get(governor.character.0).ok_or_else(fault)?;
            let Scale::Words { states } = &governing.scale else {
                return Err(fault());
            };
            let known = governor.states.iter().all(|state| state.0 < states.len());
            if governor.states.is_empty() || !known || climbed > characters.len() {
                return Err(fault());
            }
            climbed += 1;
            above = governing.governor.as_ref();
        }
    }
    Ok(())
}

/// Whether a value can stand in a column of this scale.
fn fits(value: &Value, scale: &Scale) -> bool {
    match (value, scale) {
        (Value::Unknown | Value::DoesNotApply, _) => true,
        (Value::States(shares), Scale::Words { states }) => {
            whole(shares) && shares.iter().all(|(state, _)| state.0 < states.len())
        }
        (Value::Counts(shares), Scale::Counts) => whole(shares),
        (Value::Range { low, high }, Scale::Measure { .. }) => low <= high,
        _ => false,
    }
}

/// Rising, every share above zero, together one.
fn whole<T: Ord>(shares: &[(T, Share)]) -> bool {
    shares.windows(2).all(|pair| pair[0].0 < pair[1].0)
        && shares.iter().all(|(_, share)| *share > Share::zero())
        && shares.iter().map(|(_, share)| *share).sum::<Share>() == Share::one()
}

impl Scale {
    /// The most states that a character in words may have: more is a column of notes.
    pub const MOST_STATES: usize = 64;
}

/// Why something is not a matrix. Readers mend or report all of these first.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum MatrixError {
    /// As many rows as kinds.
    Rows {
        /// Kinds given.
        taxa: usize,
        /// Rows given.
        rows: usize,
    },
    /// As many cells in a row as characters.
    Columns {
        /// The kind whose row it is.
        taxon: String,
    },
    /// How often a kind is met is above zero.
    Weight {
        /// The kind.
        taxon: String,
    },
    /// The states of a character are all different and at most [`Scale::MOST_STATES`].
    States {
        /// The character.
        character: String,
    },
    /// A column holds at most [`Scale::MOST_STATES`] different whole numbers.
    Counts {
        /// The character.
        character: String,
    },
    /// A governor is a character in words, with states of its own, and not in a circle.
    Governor {
        /// The governed character.
        character: String,
    },
    /// A cell fits its character's scale; shares are positive and add up to one.
    Cell {
        /// The kind.
        taxon: String,
        /// The character.
        character: String,
    },
}

#[cfg(test)]
mod tests;
