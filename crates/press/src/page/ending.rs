//! One end on the page: the name, its picture, the sentence to confirm it by, the caution.
//!
//! From an end to a section of the page. Every end says what to do if the sentence does not
//! fit. It names no kind that the key does not name there.

use spinney_model::TaxonIx;
use spinney_voice::Tongue;

use crate::{Booklet, fitting, lines};

use super::escape::escaped;
use super::pictures::Pictures;
use super::question::back;
use super::tree::{Ending, Tree};
use super::words::Words;

/// The section of one end.
pub(super) fn section(
    booklet: &Booklet,
    tree: &Tree,
    (words, pictures): (&Words, &Pictures),
    ix: usize,
) -> String {
    let ending = &tree.endings[ix];
    let name = ending_name(booklet, ending);
    let mut html = format!(
        "<section class=\"screen end\" id=\"end-{}\" data-name=\"{name}\" data-kinds=\"{}\"{}>\n",
        ix + 1,
        kinds(ending),
        if matches!(ending, Ending::Kinds(_)) { "" } else { " data-stops" }
    );
    match ending {
        Ending::Kinds(end) => {
            html += &format!(
                "<h2 tabindex=\"-1\"><span class=\"number\">This should be</span> {name}</h2>\n"
            );
            let several = end.taxa.len() + end.unrecognised.len() > 1;
            if several {
                let read = match fitting::at_end(booklet.matrix, end) {
                    true => " Read what it says of each.",
                    false => "",
                };
                html += &format!("<p>This key cannot tell them apart.{read}</p>\n");
            }
            html += &format!("<div class=\"kinds{}\">\n", if several { "" } else { " one" });
            for &taxon in &end.taxa {
                html += &kind(booklet, pictures, taxon);
            }
            for written in &end.unrecognised {
                html += &format!(
                    "<article class=\"kind\"><h3>{}</h3>\n<p class=\"sentence missing\">\
                     This name is not in the table: ask whoever made the key.</p></article>\n",
                    escaped(written)
                );
            }
            let newcomer = fitting::newcomer(fitting::at_end(booklet.matrix, end));
            html += &format!("</div>\n<p class=\"newcomer\">{newcomer}</p>\n");
            let kinds = end.taxa.iter().map(|&taxon| booklet.matrix.taxon(taxon));
            html += &words.explained(kinds.filter_map(|kind| kind.confirming.as_deref()));
        }
        Ending::NoSuchNumber(_) | Ending::Nothing => {
            html += &format!(
                "<h2 tabindex=\"-1\">The key stops here</h2>\n<div class=\"kinds one\">\
                 <article class=\"kind\"><h3>{name}</h3>\n<p class=\"sentence\">{}</p>\
                 </article></div>\n",
                why_it_stops(ending)
            );
        }
    }
    html += &back(tree, &tree.leading_to(ix));
    html += "<p class=\"again\"><a href=\"#start\">Back to the start</a></p>\n</section>\n";
    html
}

/// The name of an end in a sentence, escaped: `hazel or wych elm`.
pub(super) fn ending_name(booklet: &Booklet, ending: &Ending) -> String {
    match ending {
        Ending::Kinds(end) => {
            let known = end.taxa.iter().map(|&taxon| booklet.matrix.taxon(taxon).name.as_str());
            let names: Vec<_> =
                known.chain(end.unrecognised.iter().map(String::as_str)).collect();
            escaped(&names.join(" or "))
        }
        Ending::NoSuchNumber(number) => format!("question {number}, which is missing"),
        Ending::Nothing => "nothing is written here".to_string(),
    }
}

fn why_it_stops(ending: &Ending) -> String {
    match ending {
        Ending::NoSuchNumber(number) => format!(
            "The key says to go to question {number}, but it has no question {number}. \
             Tell whoever made it."
        ),
        _ => "Nobody has written what comes after this answer. Tell whoever made the key."
            .to_string(),
    }
}

/// The kinds of an end, for the script's list of what may still be in the hand.
fn kinds(ending: &Ending) -> String {
    let Ending::Kinds(end) = ending else {
        return String::new();
    };
    end.taxa.iter().map(|taxon| taxon.0.to_string()).collect::<Vec<_>>().join(" ")
}

/// One kind at its end.
fn kind(booklet: &Booklet, pictures: &Pictures, at: TaxonIx) -> String {
    let taxon = booklet.matrix.taxon(at);
    let name = escaped(&taxon.name);
    let mut html = format!("<article class=\"kind\"><h3>{name}</h3>\n");
    if let Some(address) = taxon.picture.as_ref().and_then(|file| pictures.address(file)) {
        html += &format!("<img alt=\"{name}\" src=\"{address}\">\n");
    } else if let Some(Some(drawing)) = booklet.drawn.kinds.get(at.0) {
        let said = Tongue::for_person(&[]).say("finds-drawn");
        let drawn = lines::svg(drawing, "leaf");
        html += &format!(
            "<figure class=\"drawn-kind\">{drawn}<figcaption>{said}</figcaption></figure>\n"
        );
    }
    html += &match taxon.confirming.as_deref().filter(|text| !text.trim().is_empty()) {
        Some(sentence) => format!("<p class=\"sentence\">{}</p>\n", escaped(sentence)),
        None => {
            "<p class=\"sentence missing\">Nobody has written a sentence for this kind yet. \
                 Ask somebody who knows it.</p>\n"
                .to_string()
        }
    };
    if let Some(caution) = &taxon.caution {
        html += &format!(
            "<p class=\"caution\"><svg class=\"mark\" aria-hidden=\"true\">\
             <use href=\"#mark-caution\"/></svg><strong>Take care.</strong> {}</p>\n",
            escaped(caution)
        );
    }
    html += "</article>\n";
    html
}
