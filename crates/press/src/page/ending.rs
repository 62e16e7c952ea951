//! One end on the page: the name, its picture or drawing, the sentence to confirm it by, the
//! caution.
//!
//! From an end to a section of the page. Every end says what to do if the sentence does not
//! fit. It names no kind that the key does not name there.

use maud::{Markup, PreEscaped, html};
use spinney_model::{End, TaxonIx};
use spinney_voice::Tongue;

use crate::{Booklet, fitting, lines};

use super::pictures::Pictures;
use super::question::back;
use super::tree::{Ending, Tree};
use super::typed::Typed;
use super::{Parts, front, mark};

/// The section of one end.
pub(super) fn section(
    booklet: &Booklet,
    tree: &Tree,
    (parts, pictures): (Parts<'_>, &Pictures),
    ix: usize,
) -> Markup {
    let (t, ending) = (booklet.tongue, &tree.endings[ix]);
    let name = ending_name(booklet, ending);
    let stops = !matches!(ending, Ending::Kinds(_));
    html! {
        section.screen.end id={"end-" (ix + 1)} data-name=(Typed(&name)) data-kinds=(kinds(ending))
            data-stops[stops] {
            @match ending {
                Ending::Kinds(end) => {
                    h2 tabindex="-1" { span.number { (t.say("phone-should-be")) } " " (Typed(&name)) }
                    (kinds_of(booklet, end, parts, pictures))
                }
                Ending::NoSuchNumber(_) | Ending::Nothing => {
                    h2 tabindex="-1" { (t.say("phone-stops")) }
                    div.kinds.one {
                        article.kind {
                            h3 { (name) }
                            p.sentence { (why_it_stops(t, ending)) }
                        }
                    }
                }
            }
            (back(t, tree, &tree.leading_to(ix)))
            (front::again(t))
        }
    }
}

fn kinds_of(booklet: &Booklet, end: &End, parts: Parts<'_>, pictures: &Pictures) -> Markup {
    let t = booklet.tongue;
    let several = end.taxa.len() + end.unrecognised.len() > 1;
    let written = fitting::at_end(booklet.matrix, end);
    let confirming =
        end.taxa.iter().filter_map(|&taxon| booklet.matrix.taxon(taxon).confirming.as_deref());
    html! {
        @if several {
            p {
                (t.say("phone-not-apart"))
                @if written { " " (t.say("phone-read-each")) }
            }
        }
        div.kinds.one[!several] {
            @for &taxon in &end.taxa { (kind(booklet, parts, pictures, taxon)) }
            @for written in &end.unrecognised {
                article.kind {
                    h3 { (Typed(written)) }
                    p.sentence.missing { (t.say("phone-strange-name")) }
                }
            }
        }
        p.newcomer { (fitting::newcomer(t, written)) }
        (parts.words.explained(confirming))
    }
}

/// The name of an end in a sentence: `hazel or wych elm`.
pub(super) fn ending_name(booklet: &Booklet, ending: &Ending) -> String {
    let t = booklet.tongue;
    match ending {
        Ending::Kinds(end) => {
            let known = end.taxa.iter().map(|&taxon| booklet.matrix.taxon(taxon).name.as_str());
            let names = known.chain(end.unrecognised.iter().map(String::as_str));
            let either = |before: String, last: String| {
                t.with("list-or", &[("before", &before), ("last", &last)])
            };
            names.map(str::to_owned).reduce(either).unwrap_or_default()
        }
        Ending::NoSuchNumber(number) => t.with("phone-missing-question", &[("number", number)]),
        Ending::Nothing => t.say("phone-nothing-here"),
    }
}

fn why_it_stops(t: Tongue, ending: &Ending) -> String {
    match ending {
        Ending::NoSuchNumber(number) => t.with("phone-no-such-question", &[("number", number)]),
        _ => t.say("phone-nobody-wrote"),
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
fn kind(booklet: &Booklet, parts: Parts<'_>, pictures: &Pictures, at: TaxonIx) -> Markup {
    let (t, taxon) = (booklet.tongue, booklet.matrix.taxon(at));
    let picture = taxon.picture.as_ref().and_then(|file| pictures.address(file));
    let drawing = booklet.drawn.of_kind(at);
    let sentence = taxon.confirming.as_deref().filter(|text| !text.trim().is_empty());
    html! {
        article.kind {
            h3 { (Typed(&taxon.name)) }
            (parts.in_second(parts.second.and_then(|second| second.name(at))))
            @if let Some(address) = picture {
                img alt=(Typed(&taxon.name)) src=(address);
            } @else if let Some((drawing, of_leaf)) = drawing {
                figure.drawn-kind {
                    (PreEscaped(lines::svg(drawing, "leaf")))
                    figcaption { (t.say(if of_leaf { "finds-drawn-leaf" } else { "finds-drawn" })) }
                }
            }
            @if let Some(sentence) = sentence { p.sentence { (Typed(sentence)) } }
            @else { p.sentence.missing { (t.say("phone-no-sentence")) } }
            @if let Some(caution) = &taxon.caution {
                p.caution { (mark("caution")) strong { (t.say("phone-take-care")) } " " (Typed(caution)) }
                (parts.in_second(parts.second.and_then(|second| second.text(caution))))
            }
        }
    }
}
