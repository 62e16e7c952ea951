//! How leaves spread, for a terminal: headings, and under each the sentences of `voice`.

use std::fmt::Write;

use spinney_model::{Matrix, Specimens, Spread};
use spinney_voice::{Tongue, spread as say};

use crate::report::{self, Ink};

/// So many pairs are named, those with the worst cuts first; the others are counted.
pub(crate) const PAIRS_NAMED: usize = 12;

/// The whole answer; at most so many pairs by name.
pub(crate) fn spread(
    ink: &Ink,
    (matrix, specimens): (&Matrix, &Specimens),
    spread: &Spread,
    most: usize,
) -> String {
    let t = ink.t();
    let mut text = Text { t, matrix, specimens, text: String::new() };
    text.say(0, &say::rows(t, matrix, specimens));
    if spread.of_kinds.is_empty() {
        text.say(0, &t.say("spread-nothing"));
        return text.text;
    }
    text.heading(ink, "spread-how-far");
    text.how_far(ink, spread);
    text.heading(ink, "spread-cuts");
    text.cuts(spread, most);
    text.text
}

struct Text<'m> {
    t: Tongue,
    matrix: &'m Matrix,
    specimens: &'m Specimens,
    text: String,
}

impl Text<'_> {
    fn heading(&mut self, ink: &Ink, heading: &str) {
        let _ = writeln!(self.text, "\n{}", ink.bold(&self.t.say(heading)));
    }

    fn say(&mut self, deep: usize, sentence: &str) {
        report::push_wrapped(&mut self.text, &"  ".repeat(deep), sentence);
    }

    fn how_far(&mut self, ink: &Ink, spread: &Spread) {
        let (t, matrix, specimens) = (self.t, self.matrix, self.specimens);
        for at in matrix.character_indices() {
            let mut of = spread.of_kinds.iter().filter(|one| one.character == at).peekable();
            if of.peek().is_some() {
                let _ = writeln!(self.text, "  {}", ink.bold(&matrix.character(at).name));
            }
            for one in of {
                let deep = if one.part.is_some() { 3 } else { 2 };
                self.say(deep, &say::of_kind(t, matrix, one));
                if let Some(outliers) = say::outliers(t, matrix, specimens, one) {
                    self.say(3, &outliers);
                }
            }
        }
    }

    fn cuts(&mut self, spread: &Spread, most: usize) {
        let t = self.t;
        let Some(cuts) = &spread.cuts else {
            self.say(1, &t.say("spread-too-many-kinds"));
            return;
        };
        let pairs = spinney_check::best_of_pairs(cuts);
        if pairs.is_empty() {
            let none = match self.matrix.taxa().len() {
                1 => "spread-one-kind",
                _ => "spread-not-both",
            };
            self.say(1, &t.say(none));
        }
        for cut in pairs.iter().take(most) {
            for (at, sentence) in say::cut(t, self.matrix, cut).iter().enumerate() {
                self.say(if at == 0 { 1 } else { 2 }, sentence);
            }
        }
        match pairs.len().saturating_sub(most) {
            0 => {}
            more => self.say(1, &t.count("spread-more-pairs", more)),
        }
    }
}
