//! What a typed question may mean in the table: asked back, since "spiky" may not mean "spiny".

use maud::{Markup, html};
use spinney_exchange::link;
use spinney_model::AskOf;
use spinney_voice::wording;

use super::Top;
use crate::asking::fields;
use spinney_collection::laid::Laid;

/// The readings of a question that nobody has linked, as buttons.
pub(super) fn proposals(top: &Top<'_>, laid: &Laid) -> Markup {
    let t = top.t;
    let Some(question) = top.drawn.questions.get(&top.at) else { return html! {} };
    if question.ask.is_some() {
        return html! {};
    }
    let readings = readings(laid, &question.words);
    html! {
        @if !readings.is_empty() {
            section.read-as {
                h2 { (t.say("heaps-does-it-mean")) }
                p.quiet { (t.say("heaps-does-it-mean-more")) }
                @for (at, (ask, words)) in readings.iter().enumerate() {
                    form method="post" action="/do/ask" {
                        (top.where_fields())
                        (fields(ask))
                        input type="hidden" name="words" value=(question.words);
                        button id={"reads-" (at)} { span dir="auto" { (words) } }
                    }
                }
            }
        }
    }
}

/// What a question may mean, the likeliest first, each in the table's own words.
pub(crate) fn readings(laid: &Laid, words: &str) -> Vec<(AskOf, String)> {
    let proposals = link::proposals(words, &laid.matrix);
    let readings = proposals.iter().filter_map(|proposal| {
        let words = wording::question(&laid.matrix, &proposal.ask);
        Some((laid.ask_of(&proposal.ask)?, words))
    });
    readings.collect()
}
