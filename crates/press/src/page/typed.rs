//! What somebody typed, made safe to stand in the page.
//!
//! From any text to HTML that shows just that text, between tags and inside a quoted attribute.
//! No typed text gets into the script or the style sheet.

use maud::{Escaper, Render};
use std::fmt::Write as _;

/// A text that somebody typed. Control characters, which no HTML file may hold, become spaces.
pub(super) struct Typed<'t>(pub(super) &'t str);

impl Render for Typed<'_> {
    fn render_to(&self, buffer: &mut String) {
        let plain = |letter: char| match letter {
            '\n' | '\t' => letter,
            _ if letter.is_control() => ' ',
            _ => letter,
        };
        let text: String = self.0.chars().map(plain).collect();
        Escaper::new(buffer).write_str(&text).expect("a text takes every letter");
    }
}
