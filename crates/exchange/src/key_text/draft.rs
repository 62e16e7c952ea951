//! A couplet while its lines come in.
//!
//! From pieces of wording and destinations to a couplet of the model.

use spinney_model::{Couplet, Destination, Wording};

use super::destination::tidy;

/// A couplet while its lines come in.
#[derive(Debug, Default)]
pub(super) struct Draft {
    pub(super) number: u32,
    pub(super) back: Option<u32>,
    pub(super) line: usize,
    pub(super) first: Vec<String>,
    pub(super) second: Option<Vec<String>>,
    /// A question over two dash leads, put before both.
    pub(super) heading: Option<String>,
    /// Whether it was answered with yes or no.
    pub(super) question: bool,
    pub(super) yes: Option<Destination>,
    pub(super) no: Option<Destination>,
}

impl Draft {
    pub(super) fn asks(&self) -> bool {
        self.question || self.first.last().is_some_and(|text| text.ends_with('?'))
    }

    pub(super) fn complete(&self) -> bool {
        self.yes.is_some() && self.no.is_some()
    }

    pub(super) fn couplet(self) -> Couplet {
        let first = tidy(&self.first.join(" "));
        let leads = !self.question && (self.second.is_some() || self.yes.is_some());
        let wording = if leads {
            Wording::Leads { yes: first, no: tidy(&self.second.unwrap_or_default().join(" ")) }
        } else {
            Wording::Question(first)
        };
        Couplet {
            number: self.number,
            back: self.back,
            wording,
            ask: None,
            yes: self.yes.unwrap_or(Destination::Missing),
            no: self.no.unwrap_or(Destination::Missing),
            kept: false,
            line: Some(self.line),
        }
    }
}
