//! What stands around the questions: title, how to use the key, cautions, words, the trail.
//!
//! From a booklet to the parts of the page that are not a question or an end. The places that
//! only the script fills are hidden until it does.

use std::collections::BTreeMap;

use crate::{Booklet, fitting, safety};

use super::escape::escaped;
use super::stamp_words;
use super::tree::{Tree, Way};

/// The head of every screen: the stamp and the title.
pub(super) fn header(booklet: &Booklet, title: &str) -> String {
    let stamp = stamp_words(booklet.stamp)
        .map(|words| format!("<p class=\"stamp\"><strong>{words}</strong></p>\n"))
        .unwrap_or_default();
    let scene = booklet.matrix.scene();
    let said: Vec<_> =
        [&scene.place, &scene.season].into_iter().flatten().map(|s| escaped(s)).collect();
    let mut html = format!("<header>\n{stamp}<h1>{title}</h1>\n");
    if !said.is_empty() {
        html += &format!("<p class=\"scene\">{}</p>\n", said.join(", "));
    }
    html += "</header>\n";
    html
}

/// The first screen: what is needed, how it goes, what to mind, which pictures are elsewhere.
pub(super) fn start(booklet: &Booklet, tree: &Tree, of_pictures: &str) -> String {
    let mut html = String::from(
        "<section class=\"screen\" id=\"start\">\n\
         <svg class=\"sprig\" aria-hidden=\"true\"><use href=\"#sprig\"/></svg>\n\
         <h2 tabindex=\"-1\">What did you find?</h2>\n",
    );
    if let Some(part) = &booklet.matrix.scene().part {
        html += &format!("<p>You need <strong>{}</strong>.</p>\n", escaped(part));
    }
    html += "<ol class=\"how\">\n\
             <li>Look at several of them, not only one.</li>\n\
             <li>Read the question. Measure, do not guess.</li>\n\
             <li id=\"cannot-tell\">Can't tell? Follow both ways, and compare where they \
             come out.</li>\n";
    if fitting::anywhere(booklet.matrix) {
        html += "<li>At the end, read the sentence. It must fit.</li>\n";
    }
    html += "</ol>\n";
    html += &cautions(booklet);
    html += of_pictures;
    if tree.questions.is_empty() {
        html += "<p>This key has no question yet.</p>\n";
    } else {
        html += &format!(
            "<p class=\"begin\"><a href=\"{}\">Begin</a></p>\n",
            tree.anchor(Way::Question(0))
        );
    }
    html += "</section>\n";
    html
}

/// What everybody must know and what may hurt, before the first question; kinds with the same
/// caution together.
fn cautions(booklet: &Booklet) -> String {
    let mut said: BTreeMap<&str, (usize, Vec<String>)> = BTreeMap::new();
    for (ix, caution) in safety::of_kinds(booklet.matrix) {
        let first = said.entry(caution).or_insert((ix.0, Vec::new()));
        first.1.push(escaped(&booklet.matrix.taxon(ix).name));
    }
    let everybody = safety::for_everybody(booklet.matrix)
        .map(|text| format!("<p><strong>{}</strong></p>\n", escaped(text)))
        .unwrap_or_default();
    if said.is_empty() && everybody.is_empty() {
        return String::new();
    }
    let mut lines: Vec<_> = said.into_iter().collect();
    lines.sort_by_key(|(_, (first, _))| *first);
    let lines: String = lines
        .into_iter()
        .map(|(caution, (_, names))| {
            format!("<li><strong>{}</strong>: {}</li>\n", names.join(", "), escaped(caution))
        })
        .collect();
    let list = if lines.is_empty() { lines } else { format!("<ul>\n{lines}</ul>\n") };
    format!(
        "<div class=\"caution\">\n<h3><svg class=\"mark\" aria-hidden=\"true\">\
         <use href=\"#mark-caution\"/></svg>Take care</h3>\n{everybody}{list}</div>\n"
    )
}

/// What the script shows above a question after somebody could not tell.
pub(super) fn while_walking() -> String {
    "<nav id=\"steps\" aria-label=\"Steps\" hidden><a id=\"one-back\" href=\"#start\">\
     <svg class=\"mark\" aria-hidden=\"true\"><use href=\"#mark-back\"/></svg>\
     <span>Back</span></a></nav>\n\
     <div id=\"supposing\" hidden></div>\n"
        .to_string()
}

/// The list of kinds that may be it, which the script fills.
pub(super) fn short_list() -> String {
    "<section class=\"screen\" id=\"list\" hidden>\n<h2 tabindex=\"-1\"></h2>\n\
     <p class=\"told\"></p>\n<div class=\"kinds\"></div>\n\
     <p class=\"newcomer\"></p>\n\
     <p class=\"again\"><a href=\"#start\">Back to the start</a></p>\n</section>\n\
     <section id=\"left\" aria-labelledby=\"left-head\" hidden>\n\
     <h2 id=\"left-head\">It may still be</h2>\n<ul></ul>\n</section>\n"
        .to_string()
}

/// The trail of answers, which the script fills.
pub(super) fn trail() -> String {
    "<nav id=\"trail\" aria-labelledby=\"trail-head\" hidden>\n\
     <h2 id=\"trail-head\">How you got here</h2>\n<ol></ol>\n\
     <p class=\"again\"><a href=\"#start\">Back to the start</a></p>\n</nav>\n"
        .to_string()
}

/// The foot: who decides; version and date, so that old copies are recognised.
pub(super) fn footer(booklet: &Booklet) -> String {
    let rules = safety::LOCAL_RULES;
    let version =
        booklet.matrix.scene().version.as_deref().map(|v| format!("Version {}", escaped(v)));
    let said: Vec<_> = version.into_iter().chain(booklet.date.map(escaped)).collect();
    let said = match said.is_empty() {
        true => String::new(),
        false => format!("<p>{}</p>", said.join(", ")),
    };
    format!("<footer><p>{rules}</p>{said}</footer>\n")
}
