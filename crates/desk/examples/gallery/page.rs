//! The gallery: every drawing and every word on sheets, to be looked at by eye.
//!
//! From some tables to one page of HTML that prints on A4: the leaves that these tables draw,
//! each with the cells that it is drawn from, and every word of the list as the screens show it,
//! with its source.

use maud::{DOCTYPE, Markup, PreEscaped, html};
use spinney_draw::Leaves;
use spinney_model::{CharacterIx, Matrix, Scale, Share, TaxonIx, Value};
use spinney_press::lines;
use spinney_voice::{Tongue, glossary};

/// Paper for the drawings of the screens, with their lines.
const LOOK: &str = "@page { size: A4; margin: 12mm; } \
 body { font: 11pt/1.35 Andika, sans-serif; color: #1F2A24; background: #FBF8F1; margin: 0; } \
 h2 { break-before: page; } h3 { margin: 0; } p { margin: .2em 0; } \
 .sheet { columns: 4; column-gap: 4mm; } .words { columns: 3; } \
 .slip { border: .3mm solid #55615A; padding: 2.5mm; margin-bottom: 4mm; break-inside: avoid; } \
 .soft, .source { color: #55615A; font-size: 9pt; } .bare { font-size: 20pt; line-height: 1.1; } \
 .two-states { display: grid; grid-auto-flow: column; grid-auto-columns: 1fr; gap: 1mm; } \
 figure { margin: 0; text-align: center; } \
 figcaption { font-size: 9pt; } .other { border-left: .3mm dashed #55615A; } \
 svg { width: 100%; max-height: 52mm; } \
 path { fill: none; stroke: #1F2A24; stroke-linecap: round; stroke-linejoin: round; } \
 .fine { stroke-width: .25; } .midrib { stroke-width: .4; } .outline { stroke-width: .6; } \
 .wood { stroke-width: 1.1; } .hatch { stroke-width: .4; stroke: #2A6148; } \
 .heavy { stroke-width: 1.3; stroke: #2A6148; }";

/// The gallery of some tables, each under its title, and of all words.
pub(crate) fn gallery(tables: &[(String, Matrix)]) -> String {
    let t = Tongue::for_person(&[]);
    let page = html! {
        (DOCTYPE)
        html lang="en" {
            head { meta charset="utf-8"; title { "Every drawing and every word" } style { (PreEscaped(LOOK)) } }
            body {
                h1 { "Every drawing and every word" }
                @for (title, matrix) in tables { (leaves(title, matrix)) }
                h2 { "Words" }
                div.sheet.words {
                    @for word in glossary::all(t) {
                        section.slip {
                            h3 { (word.word) }
                            @if let Some(drawn) = spinney_draw::of_word(word.id, true) { (lines::figures(t, &drawn)) }
                            p { (word.plain) }
                            @if let Some(other) = &word.not_to_be_confused {
                                p.soft { (t.say("words-look-alike")) " " (other) }
                            }
                            p.source { (word.source) }
                        }
                    }
                }
            }
        }
    };
    page.into_string()
}

fn leaves(title: &str, matrix: &Matrix) -> Markup {
    let leaves = Leaves::of(matrix);
    html! {
        h2 { (title) }
        div.sheet {
            @for taxon in matrix.taxon_indices() {
                @let drawing = leaves.drawing(matrix, taxon);
                section.slip {
                    @match &drawing {
                        Some(drawing) => { (PreEscaped(lines::svg(drawing, "leaf"))) h3 { (matrix.taxon(taxon).name) } }
                        None => h3.bare { (matrix.taxon(taxon).name) }
                    }
                    @for character in matrix.character_indices() {
                        @if let Some(cell) = said(matrix, taxon, character) {
                            p.soft { (matrix.character(character).name) ": " (cell) }
                        }
                    }
                }
            }
        }
    }
}

/// What a cell says; None: it does not apply.
fn said(matrix: &Matrix, taxon: TaxonIx, at: CharacterIx) -> Option<String> {
    let scale = &matrix.character(at).scale;
    let several = |of: Vec<(String, Share)>| {
        of.into_iter().map(|(name, _)| name).collect::<Vec<_>>().join(" or ")
    };
    Some(match (&matrix.cell(taxon, at).value, scale) {
        (Value::DoesNotApply, _) => return None,
        (Value::States(shares), Scale::Words { states }) => {
            several(shares.iter().map(|(at, s)| (states[at.0].clone(), *s)).collect())
        }
        (Value::Counts(shares), _) => {
            several(shares.iter().map(|(n, s)| (n.to_string(), *s)).collect())
        }
        (Value::Range { low, high }, _) => format!("{} to {} mm", low.as_f64(), high.as_f64()),
        (Value::States(_) | Value::Unknown, _) => "nobody has looked".to_owned(),
    })
}
