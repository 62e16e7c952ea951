//! What a table says of the leaf of each kind: its columns, read once, and the cells of a kind.
//!
//! From a matrix to the parameters of a leaf. Of several states the commonest is drawn; where
//! two are equally common, the one that stands out from a plain line, since the plain line also
//! stands for nothing known. Of a range its middle is drawn, of a few numbers the commonest.

use spinney_model::{
    Character, CharacterIx, Matrix, Scale, Share, StateIx, TaxonIx, Unit, Value,
};

use super::blade::{Blade, Edge, Lobes, Shape};
use super::leaf::{Form, Leaf, USUAL_FEATHER, USUAL_HAND};
use super::leaf_words::{About, Look, Pieces, STALK, is, look, tokens};

/// What the columns of a table say of leaves, in their order; empty: it is not about leaves.
#[derive(Clone, Debug, Default)]
pub(super) struct Columns(Vec<(CharacterIx, Column)>);

/// A column that says something of a leaf.
#[derive(Clone, Debug)]
enum Column {
    /// What each of its states says.
    Words(Vec<Look>),
    Leaflets,
    LobeCount,
    Length(Unit),
    Width(Unit),
    Stalk(Unit),
}

/// What a row of the table says of a leaf.
#[derive(Default)]
struct Row {
    look: Look,
    leaflets: Option<u32>,
    length: Option<(Unit, f64)>,
    width: Option<(Unit, f64)>,
    stalk: Option<(Unit, f64)>,
}

impl Columns {
    /// Reads the columns of a table.
    pub(super) fn of(matrix: &Matrix) -> Self {
        let characters = matrix.characters();
        let about = |c: &Character| About::of(&words_of(c));
        let animal = characters.iter().any(|c| about(c).animal);
        if animal || !characters.iter().any(|c| speaks_of_leaves(c, about(c))) {
            return Self::default();
        }
        let columns = matrix.character_indices().filter_map(|at| {
            let character = matrix.character(at);
            Some((at, Column::of(character, about(character))?))
        });
        Self(columns.collect())
    }

    /// The leaf that a row describes; None: it says nothing of one.
    pub(super) fn leaf(&self, matrix: &Matrix, taxon: TaxonIx) -> Option<Leaf> {
        let mut row = Row::default();
        for (at, column) in &self.0 {
            row.read(column, &matrix.cell(taxon, *at).value);
        }
        row.leaf()
    }
}

/// The words of a column's name and question.
fn words_of(character: &Character) -> Vec<String> {
    let question = character.question.as_deref().unwrap_or_default();
    tokens(&format!("{} {question}", character.name))
}

/// Whether a column shows that the table is about leaves: it names them, or it has words that
/// are said of nothing else.
fn speaks_of_leaves(character: &Character, about: About) -> bool {
    let Scale::Words { states } = &character.scale else { return about.leaf };
    let says = |state: &String| {
        let look = look(&tokens(state), About { edge: about.edge, ..About::default() });
        look.lobes.is_some() || about.edge && look.edge.is_some_and(|edge| edge != Edge::Plain)
    };
    about.leaf || !about.elsewhere && states.iter().any(says)
}

impl Column {
    fn of(character: &Character, about: About) -> Option<Self> {
        // Made by the table from two others, which are read themselves.
        if character.ratio_of.is_some() || about.elsewhere {
            return None;
        }
        let words = words_of(character);
        let any = |known: &[&str]| words.iter().any(|word| known.iter().any(|k| is(word, k)));
        match &character.scale {
            Scale::Words { states } => {
                let looks = looks_of(character, about, states);
                looks.iter().any(|l| *l != Look::default()).then_some(Self::Words(looks))
            }
            Scale::Counts if any(&["leaflet*", "blättchen", "fieder*"]) => {
                Some(Self::Leaflets)
            }
            Scale::Counts if any(&["lobe*", "lappen"]) => Some(Self::LobeCount),
            Scale::Counts => None,
            Scale::Measure { unit, .. } => {
                let wide = any(&["width", "wide", "breadth", "breit*"]);
                if any(STALK) {
                    return (!wide).then_some(Self::Stalk(*unit));
                }
                let long = any(&["length", "long", "länge", "lang", "blattlänge"]);
                match (about.leaf, wide, long) {
                    (true, true, false) => Some(Self::Width(*unit)),
                    (true, false, true) => Some(Self::Length(*unit)),
                    _ => None,
                }
            }
        }
    }
}

/// What each state of a column in words says. Yes and no say what the column asks.
fn looks_of(character: &Character, about: About, states: &[String]) -> Vec<Look> {
    let asked = look(&words_of(character), About { leaf: true, edge: true, ..about });
    let name = tokens(&character.name);
    let stalk = name.iter().any(|word| STALK.iter().any(|known| is(word, known)));
    // "Is the stalk longer than a thumb?" is no question whether there is one.
    let bare = stalk && name.len() <= 2;
    let says = |state: &String| {
        let look = match state.to_lowercase().as_str() {
            "yes" | "ja" => asked,
            "no" | "nein" if bare => asked.denied(),
            "no" | "nein" => Look { stalk: None, ..asked.denied() },
            state => look(&tokens(state), about),
        };
        // A round or hairy stalk says nothing of the blade.
        if stalk { Look { stalk: look.stalk, ..Look::default() } } else { look }
    };
    states.iter().map(says).collect()
}

impl Row {
    fn read(&mut self, column: &Column, value: &Value) {
        match (column, value) {
            (Column::Words(looks), Value::States(shares)) => {
                self.look = self.look.or(commonest_look(looks, shares));
            }
            (Column::Leaflets, Value::Counts(shares)) => {
                self.leaflets = self.leaflets.or(Some(commonest(shares)));
            }
            (Column::LobeCount, Value::Counts(shares)) => {
                let lobes = if commonest(shares) > 0 { Lobes::Some } else { Lobes::None };
                self.look.lobes = self.look.lobes.or(Some(lobes));
            }
            (
                Column::Length(unit) | Column::Width(unit) | Column::Stalk(unit),
                Value::Range { low, high },
            ) => {
                let middle = (*unit, (low.as_f64() + high.as_f64()) / 2.0);
                let place = match column {
                    Column::Length(_) => &mut self.length,
                    Column::Width(_) => &mut self.width,
                    _ => &mut self.stalk,
                };
                *place = place.or(Some(middle));
            }
            _ => {}
        }
    }

    /// None: nothing is known that gives a leaf its looks; a stalk or hairs alone do not.
    fn leaf(&self) -> Option<Leaf> {
        let Look { form, lobes, edge, shape, hairy, stalk } = self.look;
        let known = form.is_some() || lobes.is_some() || edge.is_some() || shape.is_some();
        if !known && self.leaflets.is_none() {
            return None;
        }
        let many = self.leaflets.filter(|many| *many > 1);
        let form = match (form, many) {
            (Some(Pieces::One), _) | (None, None) => Form::OnePiece,
            (Some(Pieces::Hand), many) => Form::Hand(many.unwrap_or(USUAL_HAND)),
            // As the word "compound" is drawn, where nobody said how the leaflets stand.
            (_, many) => Form::Feather(many.unwrap_or(USUAL_FEATHER)),
        };
        let blade = Blade {
            shape: shape.unwrap_or(Shape::Egg),
            lobes: lobes.unwrap_or(Lobes::None),
            edge: edge.unwrap_or(Edge::Plain),
        };
        let sitting = (stalk == Some(false)).then_some(0.0);
        Some(Leaf {
            form,
            blade,
            width: self.part_of_length(self.width),
            stalk: self.part_of_length(self.stalk).or(sitting),
            hairy: hairy == Some(true),
        })
    }

    /// A length in parts of that of the blade, where both were measured alike.
    fn part_of_length(&self, of: Option<(Unit, f64)>) -> Option<f64> {
        let ((one, part), (other, whole)) = of.zip(self.length)?;
        (one == other && whole > 0.0 && part >= 0.0).then(|| part / whole)
    }
}

fn commonest_look(looks: &[Look], shares: &[(StateIx, Share)]) -> Look {
    let most = shares.iter().map(|(_, share)| *share).max();
    let most = shares.iter().filter(|(_, share)| Some(*share) == most);
    let most: Vec<Look> = most.filter_map(|(at, _)| looks.get(at.0).copied()).collect();
    let out = most.iter().find(|look| look.stands_out()).or(most.first());
    out.copied().unwrap_or_default()
}

/// Of equally common numbers the one in the middle.
fn commonest(shares: &[(u32, Share)]) -> u32 {
    let most = shares.iter().map(|(_, share)| *share).max();
    let most: Vec<u32> =
        shares.iter().filter(|(_, share)| Some(*share) == most).map(|(n, _)| *n).collect();
    most.get((most.len().max(1) - 1) / 2).copied().unwrap_or(0)
}
