//! The words of a key on the page, each explained where it is read, with its drawings.
//!
//! From a booklet to the parts of the page that explain words. Every drawing stands in the page
//! once, under a name, however often it is shown.

use std::collections::BTreeMap;

use maud::{Markup, PreEscaped, html};
use spinney_model::{DrawnWord, Figure};
use spinney_voice::Tongue;
use spinney_voice::glossary::words_in;

use crate::glossary::{self, Entry};
use crate::{Booklet, lines};

/// The words of a key, and what can be drawn of them.
pub(super) struct Words {
    about_leaves: bool,
    used: Vec<Entry>,
    drawn: BTreeMap<&'static str, DrawnWord>,
    t: Tongue,
}

impl Words {
    pub(super) fn of(booklet: &Booklet) -> Self {
        let about_leaves = glossary::about_leaves(booklet);
        let used = glossary::words_used(booklet);
        let drawn = used.iter().filter_map(|entry| {
            Some((entry.id, (booklet.drawn.word)(entry.id, about_leaves)?))
        });
        Self { about_leaves, drawn: drawn.collect(), used, t: booklet.tongue }
    }

    /// The drawings, to be shown by their names.
    pub(super) fn symbols(&self) -> Markup {
        let figures = self.drawn.values().flat_map(|word| word.own.iter().chain(&word.other));
        let once: BTreeMap<&str, &Figure> =
            figures.map(|figure| (figure.caption, figure)).collect();
        html! {
            @if !once.is_empty() {
                svg.unseen width="0" height="0" aria-hidden="true" focusable="false" {
                    @for (caption, figure) in once {
                        (PreEscaped(lines::symbol(&figure.drawing, &format!("draw-{caption}"))))
                    }
                }
            }
        }
    }

    /// Every word of the key, for paper and for readers without scripts.
    pub(super) fn list(&self) -> Markup {
        html! {
            @if !self.used.is_empty() {
                section #words { h2 { (self.t.say("try-words")) } (self.entries(&self.used)) }
            }
        }
    }

    /// The words of some texts, to be opened where they are read.
    pub(super) fn explained<'t>(&self, texts: impl IntoIterator<Item = &'t str>) -> Markup {
        let words = words_in(self.t, self.about_leaves, texts);
        let heads: Vec<_> = words.iter().map(|entry| entry.word.as_str()).collect();
        let heads = heads.join(", ");
        html! {
            @if !words.is_empty() {
                details.words {
                    summary { span { (self.t.with("phone-what-is", &[("words", &heads)])) } }
                    (self.entries(&words))
                }
            }
        }
    }

    fn entries(&self, words: &[Entry]) -> Markup {
        html! {
            dl {
                @for entry in words {
                    dt { (entry.word) }
                    dd {
                        (entry.plain)
                        @if let Some(other) = &entry.not_to_be_confused {
                            span.not {
                                (self.t.with("try-not-confused", &[("other", &other)]))
                            }
                        }
                        @if let Some(word) = self.drawn.get(entry.id) { (figures(self.t, word)) }
                    }
                }
            }
        }
    }
}

/// The drawings of a word, its own first, beside what it is taken for.
fn figures(t: Tongue, word: &DrawnWord) -> Markup {
    let figure = |figure: &Figure, other: bool| {
        let said = t.say(&format!("words-draw-{}", figure.caption));
        let said = if other { t.with("sheet-not", &[("caption", &said)]) } else { said };
        html! {
            figure.other[other] {
                svg.leaf aria-hidden="true" { use href={"#draw-" (figure.caption)} {} }
                figcaption { (said) }
            }
        }
    };
    html! {
        div.drawn {
            @for own in &word.own { (figure(own, false)) }
            @for other in &word.other { (figure(other, true)) }
        }
    }
}
