//! What a key looks like on paper and on a phone: sheets (PDF) and a page (HTML).
//!
//! A [`Booklet`] holds everything that may be printed for one visit; every form of it is a
//! pure function from the booklet to bytes. No network, no system fonts, no clock.

mod booklet;

pub use booklet::{Booklet, Paper, Picture, Stamp};
