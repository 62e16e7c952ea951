//! What a finding says, as data: numbers of questions, names, answers and lengths, no sentences.
//!
//! From what a room found to what `voice` says in the language a person reads best. One enum
//! for each family of findings; a name is as the person wrote it, a number is exact.

use crate::{CharacterIx, Code, Matrix, NamedCell, TaxonIx, Written};

mod answers;
mod cell;
mod claim;
mod column;
mod ends;
mod key_file;
mod key_read;
mod link;
mod links_file;
mod picture;
mod shape;
mod sheet;
mod table;
mod tree;
mod unmet;
mod wishes;
mod words;

pub use answers::OfAnswers;
pub use cell::{CellTrouble, CellTyped, KindAt, OfCell, ReadAs, SheetError};
pub use claim::{Differs, GoalWrong, OfClaim, ProofFault, Reaches};
pub use column::{NotCounts, OfColumn, WhyNoCondition, WhyNoRatio};
pub use ends::{Astray, FormAstray, NameAtEnd, OfEnds};
pub use key_file::{OfKeyFile, StrangeWish};
pub use key_read::{OfKeyRead, OneTooMany};
pub use link::{CanAsk, NotInTable, OfLink};
pub use links_file::{LinksLine, OfLinks};
pub use picture::{FileTrouble, OfPicture, WhyNoPicture};
pub use shape::OfShape;
pub use sheet::{FieldIs, OfSheet, RowOf};
pub use table::{InTheWay, OfTable};
pub use tree::OfTree;
pub use unmet::{OfUnmet, WhyUnmet, WishedFor};
pub use wishes::{EarlyOf, OfWishes, WhatIsAsked, WhyLeftOut};
pub use words::{OfWords, TextOf, WhichText};

/// What is so, as data.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum Fact {
    /// Of the key as a tree of numbers.
    Tree(OfTree),
    /// Of where kinds come out.
    Ends(OfEnds),
    /// Of kinds that cannot answer a question, or not surely.
    Answers(OfAnswers),
    /// Of a table without a key.
    Table(OfTable),
    /// Of what is claimed of a key.
    Claim(OfClaim),
    /// Of a wish that a key does not keep.
    Wishes(OfWishes),
    /// Of the wording of a question.
    Words(TextOf, OfWords),
    /// Of what tires or may hurt, and of what is good.
    Shape(OfShape),
    /// Of a key that was read.
    KeyRead(OfKeyRead),
    /// Of a cell of a table that was read.
    Cell(OfCell),
    /// Of a column of a table that was read.
    Column(OfColumn),
    /// Of a sheet that was read.
    Sheet(OfSheet),
    /// Of a question that is not linked to the table, or not surely.
    Link(OfLink),
    /// Of a file that says what questions mean.
    Links(OfLinks),
    /// Of a key that was read from a file of ours.
    KeyFile(OfKeyFile),
    /// Of a wish that could not be fulfilled.
    Unmet(OfUnmet),
    /// Of a picture that was left out.
    Picture(OfPicture),
    /// Of so many more like one that was told.
    More(MoreLike),
}

impl Fact {
    /// Which kind of finding it is.
    pub fn code(&self) -> Code {
        match self {
            Self::Tree(fact) => fact.code(),
            Self::Ends(fact) => fact.code(),
            Self::Answers(fact) => fact.code(),
            Self::Table(fact) => fact.code(),
            Self::Claim(fact) => fact.code(),
            Self::Wishes(_) => Code::WishBroken,
            Self::Words(_, fact) => fact.code(),
            Self::Shape(fact) => fact.code(),
            Self::KeyRead(fact) => fact.code(),
            Self::Cell(fact) => fact.code(),
            Self::Column(fact) => fact.code(),
            Self::Sheet(fact) => fact.code(),
            Self::More(more) => more.like.code(),
            Self::Link(fact) => fact.code(),
            Self::Links(_) => Code::LinksNotUnderstood,
            Self::KeyFile(fact) => fact.code(),
            Self::Unmet(fact) => fact.code(),
            Self::Picture(_) => Code::LeftOut,
        }
    }

    /// The cells of a table that was read which are named in it.
    pub fn cells_mut(&mut self) -> Vec<&mut NamedCell> {
        match self {
            Self::Cell(fact) => fact.cells_mut(),
            Self::Column(fact) => fact.cells_mut(),
            Self::Sheet(fact) => fact.cells_mut(),
            Self::More(MoreLike { last: LastAt::Cell(cell), .. }) => vec![cell],
            _ => Vec::new(),
        }
    }
}

/// So many more like one that was told.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct MoreLike {
    /// How many.
    pub more: usize,
    /// Where the last of them is.
    pub last: LastAt,
    /// One that was told.
    pub like: Box<Fact>,
}

/// Where the last of several is.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum LastAt {
    /// A cell.
    Cell(NamedCell),
    /// A column or a kind, by its name.
    Named(String),
}

/// Each family is a fact.
macro_rules! facts {
    ($($family:ident($of:ident)),*) => {$(
        impl From<$of> for Fact {
            fn from(fact: $of) -> Self {
                Self::$family(fact)
            }
        }
    )*};
}

facts!(
    Tree(OfTree),
    Ends(OfEnds),
    Answers(OfAnswers),
    Table(OfTable),
    Claim(OfClaim),
    Wishes(OfWishes),
    Shape(OfShape),
    KeyRead(OfKeyRead),
    Cell(OfCell),
    Column(OfColumn),
    Sheet(OfSheet),
    Link(OfLink),
    Links(OfLinks),
    KeyFile(OfKeyFile),
    Unmet(OfUnmet),
    Picture(OfPicture)
);

/// A cell by the name of its column and of its kind.
#[derive(Clone, Debug, PartialEq, Eq, Hash, PartialOrd, Ord)]
pub struct CellOf {
    /// The column's heading.
    pub about: String,
    /// The name of the kind.
    pub kind: String,
}

impl CellOf {
    /// The cell of a kind in a column.
    pub fn of(matrix: &Matrix, character: CharacterIx, taxon: TaxonIx) -> Self {
        Self {
            about: matrix.character(character).name.clone(),
            kind: matrix.taxon(taxon).name.clone(),
        }
    }
}

/// Several cells of one column.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct CellsOf {
    /// The column's heading.
    pub about: String,
    /// The names of the kinds.
    pub kinds: Vec<String>,
}

/// What was measured on a kind.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct RangeOf {
    /// The name of the kind.
    pub kind: String,
    /// The least.
    pub low: Written,
    /// The most.
    pub high: Written,
}

/// What a question asks for of a column, or what a kind has left of it.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum Form {
    /// One of these states.
    States(Vec<String>),
    /// Less than this.
    Below(Written),
    /// This or more.
    AtLeast(Written),
    /// Just this number.
    Exactly(Written),
    /// The first or more, and less than the second.
    Between(Written, Written),
    /// Nothing that the column can have.
    Nothing,
}
