//! What a key looks like on paper and on a phone: sheets (PDF) and a page (HTML).
//!
//! A [`Booklet`] holds everything that may be printed for one visit; every form of it is a
//! pure function from the booklet to bytes. No network, no system fonts, no clock.

pub mod album;
mod booklet;
mod card_grid;
pub mod cards_to_sort;
pub mod chart;
pub mod copies;
mod cut;
mod drawing;
mod fitting;
pub mod floor;
mod glossary;
pub mod hole_cards;
pub mod indented;
pub mod key_pages;
pub mod lessons;
pub mod lines;
mod looks;
pub mod measured_picture;
pub mod measuring;
pub mod page;
pub mod pdf;
pub mod picture;
mod places;
pub mod pocket;
pub mod rubbing;
pub mod ruler;
mod safety;
mod said;
pub mod scale_card;
pub mod scale_strip;
pub mod second_language;
mod second_look;
mod setting;
pub mod sheet;
pub mod sheets;
pub mod short_key;
mod shown;
mod signs;
mod sizes;
pub mod strips_of_looks;
pub mod svg;
pub mod today;
pub mod trail;
pub mod try_out;
pub mod visit;
pub mod word_cards;
pub mod words_to_look_at;

pub use booklet::{Booklet, Drawn, Paper, Picture, Stamp};
pub use pdf::PressError;
pub use sheet::ink::Letters;
pub use sizes::{LeafLength, Sizes, Wall};
