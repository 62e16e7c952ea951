//! The try-out sheets: because a key that nobody tried is a guess.
//!
//! From a booklet to a PDF with an empty key to fill in, labels for the specimens, a list of what
//! happened, and the adult's list of right ways. It holds no results: those are written on it by
//! hand.

mod answers;
mod blank_key;
mod labels;
mod list;

use crate::pdf::{self, PressError};
use crate::setting::Setting;
use crate::sheet::flow::Flow;
use crate::sheet::{Page, Piece, Sheet};
use crate::{Booklet, Paper};

/// The try-out sheets as a PDF file.
///
/// **Errors**: [`PressError`] if the file would not be valid.
pub fn pdf(booklet: &Booklet, paper: Paper) -> Result<Vec<u8>, PressError> {
    pdf::write(&sheet(booklet, paper))
}

/// The try-out sheets as boxes in mm.
pub fn sheet(booklet: &Booklet, paper: Paper) -> Sheet {
    let setting = Setting::new(booklet);
    let parts = Parts::of(&setting, paper);
    let pages = [parts.labels, parts.blank_key, parts.list, parts.answers];
    let title = setting.t().with("sheet-title-try-out", &[("title", &setting.title())]);
    setting.sheet(title, pages.concat())
}

/// What a group needs that sorts its own set: numbers, an empty key to write and a list to tick,
/// as a PDF.
/// The key of the booklet is not looked at.
///
/// **Errors**: [`PressError`] if the file would not be valid.
pub fn set_pdf(booklet: &Booklet, paper: Paper) -> Result<Vec<u8>, PressError> {
    pdf::write(&set_sheet(booklet, paper))
}

/// The same as boxes in mm.
pub fn set_sheet(booklet: &Booklet, paper: Paper) -> Sheet {
    let setting = Setting::new(booklet);
    let parts = Parts::of(&setting, paper);
    let pages = [parts.labels, parts.blank_key, parts.list];
    let title = setting.t().with("sheet-title-set", &[("title", &setting.title())]);
    setting.sheet(title, pages.concat())
}

/// A numbered question of a key to write, with one line, or its words.
pub(crate) fn question(
    setting: &Setting,
    number: usize,
    words: Option<&str>,
    wide: f64,
) -> Piece {
    blank_key::question(setting, (number, words), 1, wide)
}

/// The adult's answer list beneath what stands on another sheet for the adult.
pub(crate) fn answers_beneath(setting: &Setting, flow: &mut Flow) {
    answers::put_beneath(setting, flow);
}

/// Number labels on a part of a page, as wide and high as this; None: they have no room there.
pub(crate) fn labels_in(setting: &Setting, wide: f64, high: f64) -> Option<Piece> {
    labels::within(setting, wide, high)
}

/// The pages of every try-out sheet.
pub(crate) struct Parts {
    /// An empty key for a group.
    pub(crate) blank_key: Vec<Page>,
    /// Numbers for the specimens.
    pub(crate) labels: Vec<Page>,
    /// What happened with each of them.
    pub(crate) list: Vec<Page>,
    /// The right ways, for adults.
    pub(crate) answers: Vec<Page>,
}

impl Parts {
    /// Sets all of them.
    pub(crate) fn of(setting: &Setting, paper: Paper) -> Self {
        Self {
            blank_key: blank_key::pages(setting, paper),
            labels: labels::pages(setting, paper),
            list: list::pages(setting, paper),
            answers: answers::pages(setting, paper),
        }
    }
}
