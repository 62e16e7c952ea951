//! The words of a key on the page, each explained where it is read, with its drawings.
//!
//! From a booklet to the parts of the page that explain words. Every drawing stands in the page
//! once, under a name, however often it is shown.

use std::collections::BTreeMap;

use spinney_model::{DrawnWord, Figure};
use spinney_voice::Tongue;

use crate::glossary::{self, Entry};
use crate::{Booklet, lines};

use super::escape::escaped;

/// The words of a key, and what can be drawn of them.
pub(super) struct Words {
    about_leaves: bool,
    used: Vec<Entry>,
    drawn: BTreeMap<&'static str, DrawnWord>,
}

impl Words {
    pub(super) fn of(booklet: &Booklet) -> Self {
        let about_leaves = glossary::about_leaves(booklet);
        let used = glossary::words_used(booklet);
        let drawn = used.iter().filter_map(|entry| {
            Some((entry.word, (booklet.drawn.word)(entry.word, about_leaves)?))
        });
        Self { about_leaves, drawn: drawn.collect(), used }
    }

    /// The drawings, to be shown by their names.
    pub(super) fn symbols(&self) -> String {
        let figures = self.drawn.values().flat_map(|word| word.own.iter().chain(&word.other));
        let once: BTreeMap<&str, &Figure> =
            figures.map(|figure| (figure.caption, figure)).collect();
        if once.is_empty() {
            return String::new();
        }
        let symbols = once
            .values()
            .map(|figure| lines::symbol(&figure.drawing, &format!("draw-{}", figure.caption)));
        let symbols: String = symbols.collect();
        format!(
            "<svg width=\"0\" height=\"0\" aria-hidden=\"true\" class=\"unseen\">{symbols}</svg>\n"
        )
    }

    /// Every word of the key, for paper and for readers without scripts.
    pub(super) fn list(&self) -> String {
        if self.used.is_empty() {
            return String::new();
        }
        let entries = self.entries(&self.used);
        format!("<section id=\"words\">\n<h2>The words</h2>\n{entries}</section>\n")
    }

    /// The words of some texts, to be opened where they are read.
    pub(super) fn explained<'t>(&self, texts: impl IntoIterator<Item = &'t str>) -> String {
        let words = glossary::words_in(self.about_leaves, texts);
        if words.is_empty() {
            return String::new();
        }
        let heads: Vec<_> = words.iter().map(|entry| entry.word).collect();
        format!(
            "<details class=\"words\"><summary><span>What is: {}?</span></summary>\n{}</details>\n",
            heads.join(", "),
            self.entries(&words)
        )
    }

    fn entries(&self, words: &[Entry]) -> String {
        let mut html = String::from("<dl>\n");
        for entry in words {
            html += &format!("<dt>{}</dt>\n<dd>{}", escaped(entry.word), escaped(entry.plain));
            if let Some(other) = entry.not_to_be_confused {
                let other = escaped(other);
                html += &format!("<span class=\"not\">Not to be mixed up with {other}</span>");
            }
            html += &self.drawn.get(entry.word).map(figures).unwrap_or_default();
            html += "</dd>\n";
        }
        html += "</dl>\n";
        html
    }
}

/// The drawings of a word, its own first, beside what it is taken for.
fn figures(word: &DrawnWord) -> String {
    let figure = |figure: &Figure, other: bool| {
        let caption = figure.caption;
        let said = Tongue::for_person(&[]).say(&format!("words-draw-{caption}"));
        let (class, said) = match other {
            true => (" class=\"other\"", format!("not: {said}")),
            false => ("", said),
        };
        format!(
            "<figure{class}><svg class=\"leaf\" aria-hidden=\"true\"><use href=\"#draw-{caption}\"/>\
             </svg><figcaption>{}</figcaption></figure>",
            escaped(&said)
        )
    };
    let own = word.own.iter().map(|own| figure(own, false));
    let figures: String =
        own.chain(word.other.iter().map(|other| figure(other, true))).collect();
    format!("<div class=\"drawn\">{figures}</div>")
}
