//! One question on the page: its words, the two answers, what to mind before touching.
//!
//! From a couplet to a section of the page that is complete without scripts. The script moves
//! the links' targets; it writes no question.

use spinney_model::Wording;

use crate::Booklet;
use crate::second_look;

use super::ending::ending_name;
use super::escape::escaped;
use super::tree::{Tree, Way};
use super::words::Words;

/// The section of one question.
pub(super) fn section(booklet: &Booklet, tree: &Tree, words: &Words, ix: usize) -> String {
    let question = &tree.questions[ix];
    let number = question.couplet.number;
    let (asks, yes, no) = match &question.couplet.wording {
        Wording::Question(text) => (shown(text), "Yes".to_string(), "No".to_string()),
        Wording::Leads { yes, no } => {
            ("Which of these two fits?".to_string(), shown(yes), shown(no))
        }
    };
    let leads = matches!(question.couplet.wording, Wording::Leads { .. });
    let mut html = format!(
        "<section class=\"screen question\" id=\"{}\" data-number=\"{number}\">\n\
         <h2 tabindex=\"-1\"><span class=\"number\">Question {number}</span> {asks}</h2>\n",
        question.id
    );
    if let Some(line) = second_look::line(booklet, question.couplet, 2) {
        html += &format!("<p class=\"also\">{}</p>\n", escaped(&line));
    }
    html += &before_touching(booklet, tree, ix);
    html += &format!("<div class=\"answers{}\">\n", if leads { " leads" } else { "" });
    html += &answer(booklet, tree, "yes", &yes, question.yes);
    html += &answer(booklet, tree, "no", &no, question.no);
    html += "</div>\n";
    html += "<p class=\"cannot-row\"><a class=\"cannot\" href=\"#cannot-tell\">\
             <svg class=\"mark\" aria-hidden=\"true\"><use href=\"#mark-fork\"/></svg>\
             <span>I can't tell</span></a></p>\n";
    let texts = match &question.couplet.wording {
        Wording::Question(text) => vec![text.as_str()],
        Wording::Leads { yes, no } => vec![yes.as_str(), no.as_str()],
    };
    html += &words.explained(texts);
    html += &back(tree, &question.from);
    html += "</section>\n";
    html
}

/// A wording, or the note that there is none.
fn shown(text: &str) -> String {
    match text.trim() {
        "" => "Nobody has written this question yet.".to_string(),
        text => escaped(text),
    }
}

/// One answer: a tab with its shape, its word and, on paper and without scripts, its target.
fn answer(booklet: &Booklet, tree: &Tree, side: &str, word: &str, to: Way) -> String {
    let goes = match to {
        Way::Question(ix) => format!("go to question {}", tree.questions[ix].couplet.number),
        Way::Ending(ix) => ending_name(booklet, &tree.endings[ix]),
    };
    format!(
        "<a class=\"answer {side}\" href=\"{}\">\
         <svg class=\"mark\" aria-hidden=\"true\"><use href=\"#mark-{side}\"/></svg>\
         <strong>{word}</strong> <span class=\"goes\">{goes}</span></a>\n",
        tree.anchor(to)
    )
}

/// What may hurt among the kinds that may still be in the hand, where the question makes
/// people touch: one line that opens, so that the answers stay in sight. All such kinds are in the page: who could not tell further up may hold one
/// that does not come out below this question.
fn before_touching(booklet: &Booklet, tree: &Tree, ix: usize) -> String {
    let asked = tree.questions[ix].couplet.ask.as_ref();
    if !asked.is_some_and(|ask| booklet.matrix.character(ask.character).by_touch) {
        return String::new();
    }
    let below = tree.kinds_below(ix);
    let (mut kinds, mut any) = (String::new(), false);
    for taxon in booklet.matrix.taxon_indices() {
        let kind = booklet.matrix.taxon(taxon);
        let Some(caution) = &kind.caution else { continue };
        let away = if below.contains(&taxon) { "" } else { " hidden" };
        any |= away.is_empty();
        kinds += &format!(
            "<li data-kind=\"{}\"{away}><strong>{}</strong>: {}</li>\n",
            taxon.0,
            escaped(&kind.name),
            escaped(caution)
        );
    }
    if kinds.is_empty() {
        return String::new();
    }
    format!(
        "<details class=\"caution touch\"{}>\n\
         <summary><svg class=\"mark\" aria-hidden=\"true\"><use href=\"#mark-caution\"/></svg>\
         <strong>Read before you touch</strong></summary>\n\
         <p>It may still be:</p>\n<ul>\n{kinds}</ul>\n</details>\n",
        if any { "" } else { " hidden" }
    )
}

/// The ways back, for readers without scripts.
pub(super) fn back(tree: &Tree, from: &[usize]) -> String {
    if from.is_empty() {
        return String::new();
    }
    let links: Vec<_> = from
        .iter()
        .map(|&ix| {
            let question = &tree.questions[ix];
            format!("<a href=\"#{}\">question {}</a>", question.id, question.couplet.number)
        })
        .collect();
    format!("<p class=\"back\">Back to {}</p>\n", links.join(" or "))
}
