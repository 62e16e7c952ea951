//! The words of the trade, as data: what a botanist or a teacher would say out loud.
//!
//! Kinds and their characters form a [`Matrix`]; couplets form a [`Key`]; what is wrong with
//! either is a list of [`Finding`]s. The rooms hand each other [`Wishes`], a [`Claim`] and
//! [`Walk`]s. Nothing here reads, writes, counts time, draws or answers a question: `build`
//! and `check` each answer for themselves, so that one can contradict the other.

mod ask;
mod best_keys;
mod cell;
mod cell_at;
mod certificate;
mod character;
mod claim;
mod drawing;
mod edit;
mod fact;
mod finding;
mod forgiving;
mod key;
pub mod limits;
mod marks;
mod matrix;
mod measured;
mod quantity;
mod revision;
pub mod scale_card;
mod specimens;
mod spread;
mod standing;
mod taxon;
mod unread;
mod walk;
mod weak;
mod wishes;

pub use ask::{Ask, Asked};
pub use best_keys::{AsGood, BestKeys};
pub use cell::{Cell, Seen, Value};
pub use cell_at::{Called, CellAt, NamedCell};
pub use certificate::{Certificate, Line, Remaining, Remains};
pub use character::{
    Character, CharacterIx, Difficulty, Governor, InSecond, Instrument, Scale, Season, SeenOn,
    StateIx, USUAL_GAP,
};
pub use claim::{
    Alternative, Claim, KeptPrice, NotByTouch, Price, Reached, Reasons, Refusal, Stopped,
    Wanted, WhyNot,
};
pub use drawing::{
    Drawing, DrawnWord, Figure, KeptDrawing, KeptStroke, LeafSize, Stroke, Weight,
};
pub use edit::{
    AboutField, AskOf, AskedOf, CharacterEdit, CharacterField, CharacterId, Done, Edit, Entry,
    Fork, Judged, KeyEdit, KeyId, KindEdit, KindField, KindId, Side, SpecimenEdit,
    SpecimenField, SpecimenId, WishField,
};
pub use fact::{
    Astray, CanAsk, CellOf, CellTrouble, CellTyped, CellsOf, Differs, EarlyOf, Fact, FieldIs,
    FileTrouble, Form, FormAstray, GoalWrong, InTheWay, KindAt, LastAt, LinksLine, MoreLike,
    NameAtEnd, NotCounts, NotInTable, OfAnswers, OfCell, OfClaim, OfColumn, OfEnds, OfKeyFile,
    OfKeyRead, OfLink, OfLinks, OfPicture, OfShape, OfSheet, OfTable, OfTree, OfUnmet,
    OfWishes, OfWords, OneTooMany, ProofFault, RangeOf, Reaches, ReadAs, RowOf, SheetError,
    StrangeWish, TextOf, WhatIsAsked, WhichText, WhyLeftOut, WhyNoCondition, WhyNoPicture,
    WhyNoRatio, WhyUnmet, WishedFor,
};
pub use finding::{Code, Finding, Place, Severity};
pub use forgiving::{BothWays, Forgiving, ForgivingKeys};
pub use key::{Couplet, Destination, End, Key, SecondLooks, Wording};
pub use marks::within_marks;
pub use matrix::{Matrix, MatrixError, Scene};
pub use measured::{
    Arrangement, Aside, BaseForm, BaseSides, CannotMend, Doubt, Edge, EdgeKind, EdgeUnseen,
    Ends, How, LeafForm, LeafLines, LeafNote, Leaflets, LeftOut, Lobes, Measurand, Measure,
    MeasuredIn, MeasuredLeaf, MeasuredPicture, Mend, NoMend, NoScale, NotMeasured, OneSide,
    PictureError, PictureScale, Sinuses, TeethPerCm, TipForm, VeinPairs, Veins, VeinsUnseen,
    WhichSide, WithPlusMinus,
};
pub use quantity::{Quantity, Share, UNITS, Unit, UnitRow, Written, WrittenIn};
pub use revision::{Parts, Revision, Tradeoff};
pub use specimens::{Specimen, Specimens};
pub use spread::{Cut, Outlier, Spread, SpreadOf, Trust};
pub use standing::{AskedBy, Holds, Standing};
pub use taxon::{OtherName, Taxon, TaxonIx};
pub use unread::{
    BundleError, Instead, KeyFileError, LineError, OldFormat, TableError, TemplateError,
};
pub use walk::{Answer, LeftTogether, Step, Walk};
pub use weak::{Alike, Fewest, Fragile, Hope, Look, Weak};
pub use wishes::{Early, Goal, Kept, Wish, Wishes};
