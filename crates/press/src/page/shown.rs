//! The drawings of the answers on the page, each beside the answer that it shows.
//!
//! From a booklet to drawings that stand in the page once, however often they are shown, and to
//! what is put into an answer. Which answer looks how, `crate::shown` knows.

use maud::{Markup, PreEscaped, html};
use spinney_model::Drawing;

use crate::shown::{self, Answers};
use crate::{Booklet, lines};

use super::tree::Tree;

/// What the answers to each question look like.
pub(super) struct Shown {
    /// In the order of the questions of the tree.
    answers: Vec<Answers>,
    /// Every drawing once.
    drawings: Vec<Drawing>,
}

impl Shown {
    pub(super) fn of(booklet: &Booklet, tree: &Tree) -> Self {
        let questions = tree.questions.iter();
        let answers: Vec<Answers> =
            questions.map(|question| shown::answers(booklet, question.couplet)).collect();
        let mut drawings: Vec<Drawing> = Vec::new();
        for one in answers.iter().flat_map(|answers| answers.yes.iter().chain(&answers.no)) {
            if !drawings.contains(&one.drawing) {
                drawings.push(one.drawing.clone());
            }
        }
        Self { answers, drawings }
    }

    /// The drawings, to be shown by their numbers.
    pub(super) fn symbols(&self) -> Markup {
        html! {
            @if !self.drawings.is_empty() {
                svg.unseen width="0" height="0" aria-hidden="true" focusable="false" {
                    @for (at, drawing) in self.drawings.iter().enumerate() {
                        (PreEscaped(lines::symbol(drawing, &format!("shows-{at}"))))
                    }
                }
            }
        }
    }

    /// What one answer to the question at this place looks like.
    pub(super) fn answer(&self, ix: usize, yes: bool) -> Markup {
        let answers = &self.answers[ix];
        let side = if yes { &answers.yes } else { &answers.no };
        let at = |drawing: &Drawing| self.drawings.iter().position(|one| one == drawing);
        html! {
            @if !side.is_empty() {
                span.shows {
                    @for one in side {
                        @if let Some(at) = at(&one.drawing) {
                            svg.leaf role="img" aria-label=(one.state) {
                                use href={"#shows-" (at)} {}
                            }
                        }
                    }
                }
            }
        }
    }
}
