//! What a table says of the leaf of each kind: its columns, read once, and the cells of a kind.
//!
//! From a matrix to the parameters of a leaf, or none. Of several states the commonest is drawn;
//! where two are equally common, the one that stands out from a plain line. A count is one that
//! was counted, never one between two. Where a column says how the leaf looks and the words of
//! a cell are not understood, the leaf is not drawn: it would be another one.

use spinney_model::{
    Character, CharacterIx, LeafSize, Matrix, Scale, Share, StateIx, TaxonIx, Unit, Value,
};

use super::blade::{Blade, Edge, Lobes, Shape};
use super::leaf::{Form, Leaf, MOST_FEATHER, MOST_HAND};
use super::leaf_words::{About, Lobed, Look, Pieces, STALK, is, look, tokens};

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
    /// How many or how long needles, scales or fronds are: a kind that has any is not drawn.
    Other,
}

/// What a row of the table says of a leaf.
#[derive(Default)]
struct Row {
    look: Look,
    leaflets: Option<Vec<u32>>,
    lobes: Option<Vec<u32>>,
    length: Option<(Unit, f64)>,
    width: Option<(Unit, f64)>,
    stalk: Option<(Unit, f64)>,
    /// Something is said that no line of ours shows.
    hidden: bool,
}

/// Lobes where the table says how they are arranged, not how many.
const USUAL_FEATHER: u32 = 9;
const USUAL_HAND: u32 = 5;

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

    /// Whether there are any.
    pub(super) fn any(&self) -> bool {
        !self.0.is_empty()
    }

    /// What a state of a column says of a leaf; None: the column says nothing of one.
    pub(super) fn look(&self, at: CharacterIx, state: StateIx) -> Option<Look> {
        let mut columns = self.0.iter().filter(|(of, _)| *of == at);
        match columns.next() {
            Some((_, Column::Words(looks))) => looks.get(state.0).copied(),
            _ => None,
        }
    }

    /// The largest leaf that a row has measured; None: nobody measured a blade.
    pub(super) fn size(&self, matrix: &Matrix, taxon: TaxonIx) -> Option<LeafSize> {
        let largest = |wanted: fn(&Column) -> bool| {
            let of = self.0.iter().filter(|(_, column)| wanted(column));
            let ends = of.filter_map(|(at, _)| match matrix.cell(taxon, *at).value {
                Value::Range { high, .. } if high.thousandths() > 0 => Some(high.as_f64()),
                _ => None,
            });
            ends.reduce(f64::max)
        };
        Some(LeafSize {
            blade: largest(|column| matches!(column, Column::Length(Unit::Millimetres)))?,
            width: largest(|column| matches!(column, Column::Width(Unit::Millimetres))),
            stalk: largest(|column| matches!(column, Column::Stalk(Unit::Millimetres))),
        })
    }

    /// The leaf that a row describes; None: it does not say enough of one.
    pub(super) fn leaf(&self, matrix: &Matrix, taxon: TaxonIx) -> Option<Leaf> {
        let mut row = Row::default();
        for (at, column) in &self.0 {
            row.read(column, &matrix.cell(taxon, *at).value);
        }
        row.leaf()
    }
}

/// The words of a column's name and question.
pub(super) fn words_of(character: &Character) -> Vec<String> {
    let question = character.question.as_deref().unwrap_or_default();
    tokens(&format!("{} {question}", character.name))
}

/// Whether a column shows that the table is about leaves: it names them, or it has words that
/// are said of nothing else.
fn speaks_of_leaves(character: &Character, about: About) -> bool {
    let Scale::Words { states } = &character.scale else { return about.leaf };
    let says = |state: &String| {
        let look = look(&tokens(state), About { edge: about.edge, ..About::default() });
        look.lobed.is_some() || about.edge && look.edge.is_some_and(|edge| edge != Edge::Smooth)
    };
    about.leaf || !about.elsewhere && states.iter().any(says)
}

impl Column {
    fn of(character: &Character, about: About) -> Option<Self> {
        // Made by the table from two others, which are read themselves.
        if character.ratio_of.is_some() || about.elsewhere {
            return None;
        }
        if about.other && !matches!(character.scale, Scale::Words { .. }) {
            return Some(Self::Other);
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

/// Whether a column is called "leaf", "leaves" or "kind of leaf", and nothing else.
fn bare_leaf(name: &[String]) -> bool {
    let known = ["leaf", "leaves", "blade", "the", "kind", "type", "of", "blatt", "blätter"];
    name.iter().all(|word| known.contains(&word.as_str()))
}

/// What each state of a column in words says. Yes and no say what the column's own name asks of
/// a part that it names: "is it spiky?" may be asked of a twig.
fn looks_of(character: &Character, about: About, states: &[String]) -> Vec<Look> {
    let name = tokens(&character.name);
    let asked = look(&words_of(character), About::of(&name));
    let stalk = name.iter().any(|word| STALK.iter().any(|known| is(word, known)));
    // "Is the stalk longer than a thumb?" is no question whether there is one.
    let bare = stalk && name.len() <= 2;
    let says = |state: &String| {
        let state = state.to_lowercase();
        let no = matches!(state.as_str(), "no" | "nein" | "none" | "keine");
        let look = match state.as_str() {
            "yes" | "ja" if about.named() => asked,
            _ if no && bare => asked.denied(),
            _ if no && about.named() => Look { stalk: None, ..asked.denied() },
            state => look(&tokens(state), about),
        };
        let look = match look {
            // A round or hairy stalk says nothing of the blade.
            look if stalk => Look { stalk: look.stalk, ..Look::default() },
            // A heart is seen at the base; whatever else a base is, the blade hides it.
            look if about.base && !about.form => {
                Look { shape: look.shape.filter(|s| *s == Shape::Heart), ..Look::default() }
            }
            look => look,
        };
        (look, no)
    };
    let looks: Vec<_> = states.iter().map(says).collect();
    let understood = looks.iter().any(|(look, _)| *look != Look::default());
    let binding = !stalk && (about.looks() || bare_leaf(&name) && understood);
    let looks = looks.into_iter().map(|(look, no)| {
        let nothing = binding && look == Look::default() || about.other;
        Look { other: look.other || nothing && !no, ..look }
    });
    looks.collect()
}

impl Row {
    fn read(&mut self, column: &Column, value: &Value) {
        match (column, value) {
            (Column::Words(looks), Value::States(shares)) => {
                self.look = self.look.or(commonest_look(looks, shares));
            }
            (Column::Other, Value::States(_) | Value::Counts(_) | Value::Range { .. }) => {
                self.hidden = true;
            }
            (Column::Leaflets, Value::Counts(shares)) => {
                self.leaflets = self.leaflets.take().or(Some(commonest(shares)));
            }
            (Column::LobeCount, Value::Counts(shares)) => {
                self.lobes = self.lobes.take().or(Some(commonest(shares)));
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

    /// None: one of form, lobes and edge is not known, or what is known cannot be drawn.
    fn leaf(&self) -> Option<Leaf> {
        let Look { form, edge, shape, tip, hairy, stalk, other, .. } = self.look;
        if self.hidden || other {
            return None;
        }
        let lobed = match (self.look.lobed, &self.lobes) {
            (None | Some(Lobed::Somehow), Some(many)) if many.contains(&0) => Some(Lobed::No),
            (None, Some(_)) => Some(Lobed::Somehow),
            (lobed, _) => lobed,
        };
        let form = match form {
            // What has lobes is still in one piece.
            None if matches!(lobed, Some(Lobed::Feather | Lobed::Hand)) => Pieces::One,
            form => form?,
        };
        let leaflets = |most: u32| {
            let many = one_of(self.leaflets.as_deref()?, |_| true)?;
            (2..=most).contains(&many).then_some(many)
        };
        let (form, lobes) = match form {
            Pieces::One => (Form::OnePiece, self.lobes_of(lobed?)?),
            Pieces::Several => return None,
            // How the leaflets themselves are lobed, no column of ours says.
            _ if lobed.is_some_and(|lobed| lobed != Lobed::No) => return None,
            Pieces::Feather => (Form::Feather(leaflets(MOST_FEATHER)?), Lobes::None),
            Pieces::Hand => (Form::Hand(leaflets(MOST_HAND)?), Lobes::None),
        };
        let compound = form != Form::OnePiece;
        let blade = Blade {
            shape: shape.unwrap_or(Shape::Egg),
            lobes,
            edge: edge?,
            tip: tip.unwrap_or_default(),
            coarse: false,
        };
        // The shape of a leaf in several pieces is that of the whole, or of its leaflets.
        if compound && shape.is_some() {
            return None;
        }
        let fits = if compound { Blade { shape: Shape::Leaflet, ..blade } } else { blade };
        if !fits.can_be_drawn() || lobes != Lobes::None && shape.is_some() {
            return None;
        }
        let sitting = (stalk == Some(false)).then_some(0.0);
        Some(Leaf {
            form,
            blade,
            width: self.part_of_length(self.width),
            stalk: self.part_of_length(self.stalk).or(sitting),
            hairy: hairy == Some(true),
        })
    }

    /// The lobes of a blade in one piece; None: it is not said how they are arranged, or there
    /// are so many as were never drawn.
    fn lobes_of(&self, lobed: Lobed) -> Option<Lobes> {
        let counted = self.lobes.as_deref();
        let many = |usual: u32, of: fn(u32) -> Lobes| match counted {
            None => Some(of(usual)),
            Some(counted) => one_of(counted, |many| of(many).can_be_drawn()).map(of),
        };
        match lobed {
            Lobed::No => Some(Lobes::None),
            Lobed::Somehow => None,
            Lobed::Feather => many(USUAL_FEATHER, Lobes::Feather),
            Lobed::Hand => many(USUAL_HAND, Lobes::Hand),
        }
        .filter(|lobes| lobes.can_be_drawn())
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

/// The commonest numbers, rising; several that are equally common.
fn commonest(shares: &[(u32, Share)]) -> Vec<u32> {
    let most = shares.iter().map(|(_, share)| *share).max();
    shares.iter().filter(|(_, share)| Some(*share) == most).map(|(n, _)| *n).collect()
}

/// One of some numbers: an odd one where there is one, since pairs with one at the end are the
/// rule; of several the one in the middle.
fn one_of(counted: &[u32], fits: impl Fn(u32) -> bool) -> Option<u32> {
    let of = |odd: bool| -> Vec<u32> {
        let counted = counted.iter().copied();
        counted.filter(|many| fits(*many) && (many % 2 == 1) == odd).collect()
    };
    let odd = of(true);
    let counted = if odd.is_empty() { of(false) } else { odd };
    counted.get((counted.len().max(1) - 1) / 2).copied()
}
