//! What could be asked of a heap: a person's own question, or one of the table's, with what each
//! costs, the cheapest first; and what a typed question may mean in the table, asked back, since
//! "spiky" may not mean "spiny".

use maud::{Markup, html};
use spinney_collection::keys::{self, KeyFrom};
use spinney_collection::laid::Laid;
use spinney_collection::offers::{Offer, readings};
use spinney_model::{Fork, KeyId, Share};
use spinney_voice::amounts::one_decimal;
use spinney_voice::{Tongue, wording};

use crate::desk::Desk;
use crate::pages::heaps::deeds::ASK_HERE;
use crate::pages::heaps::place::{Top, fields};

/// So many questions are offered at once; the rest is folded away.
const OFFERED: usize = 5;

/// What could be asked at a fork that asks nothing yet, the cheapest first.
pub(super) fn could_ask(
    t: Tongue,
    desk: &Desk,
    laid: &Laid,
    id: KeyId,
    at: &Fork,
) -> Vec<Offer> {
    let collection = &desk.history.now;
    if collection.keys.get(&id).is_none_or(|drawn| drawn.questions.contains_key(at)) {
        return Vec::new();
    }
    let made = desk.explained(id);
    made.map_or(Vec::new(), |made| KeyFrom { t, collection, laid, made: &made, id }.offers(at))
}

/// The form: type a question, or take one of the table's.
pub(super) fn form(top: &Top<'_>, laid: &Laid, offers: &[Offer]) -> Markup {
    let t = top.t;
    let leaves = wording::about_leaves(&top.layer.matrix, []);
    let example = if leaves { "heaps-leaf-example" } else { "heaps-own-example" };
    let (first, rest) = offers.split_at(offers.len().min(OFFERED));
    html! {
        section.ask {
            h2 { (t.say("heaps-difference")) }
            form method="post" action=(ASK_HERE.path) {
                (top.place_fields())
                label for="words" { (t.say("heaps-own-question")) }
                input #words name="words" maxlength="300" required placeholder=(t.say(example));
                button.main #ask { (t.say("heaps-ask")) }
            }
            @if !offers.is_empty() {
                h2 { (t.say("heaps-could-ask")) }
                ul.offers { @for offer in first { (offered(top, offer)) } }
                @if !rest.is_empty() {
                    details {
                        summary { (t.count("heaps-more-offers", rest.len())) }
                        ul.offers { @for offer in rest { (offered(top, offer)) } }
                    }
                }
            } @else if !keys::can_be_weighed(&top.layer.matrix) {
                p.quiet { (t.say("heaps-too-many")) }
            } @else if laid.characters.is_empty() {
                p.quiet { (t.say("heaps-no-table")) }
            }
        }
    }
}

fn offered(top: &Top<'_>, offer: &Offer) -> Markup {
    let t = top.t;
    let (yes, no, both) = offer.heaps;
    let price = t.decimal(&one_decimal(offer.extra));
    let price = match (offer.extra == Share::from_integer(0), offer.exact) {
        (true, _) => t.say("heaps-cheapest"),
        (false, true) if price == "0" => t.say("heaps-hardly"),
        (false, true) => t.with("heaps-price", &[("price", &price)]),
        (false, false) => t.with("heaps-price-least", &[("price", &price)]),
    };
    html! {
        li {
            form method="post" action=(ASK_HERE.path) {
                (top.place_fields())
                (fields(&offer.ask))
                input type="hidden" name="words" value=(offer.words);
                button.offer {
                    span.words dir="auto" { (offer.words) }
                    span.split {
                        (split(t, yes, no))
                        @if both > 0 { " · " (t.count("heaps-split-both", both)) }
                        " · " (price)
                    }
                }
            }
        }
    }
}

/// How many say only yes, and how many only no.
pub(crate) fn split(t: Tongue, yes: usize, no: usize) -> String {
    format!("{}, {}", t.count("heaps-say-yes", yes), t.count("heaps-say-no", no))
}

/// The readings of a question that nobody has linked, as buttons.
pub(super) fn proposals(top: &Top<'_>, laid: &Laid) -> Markup {
    let t = top.t;
    let Some(question) = top.drawn.questions.get(&top.at) else { return html! {} };
    if question.ask.is_some() {
        return html! {};
    }
    let readings = readings(t, laid, &question.words);
    html! {
        @if !readings.is_empty() {
            section.read-as {
                h2 { (t.say("heaps-does-it-mean")) }
                p.quiet { (t.say("heaps-does-it-mean-more")) }
                @for (at, (ask, words)) in readings.iter().enumerate() {
                    form method="post" action=(ASK_HERE.path) {
                        (top.place_fields())
                        (fields(ask))
                        input type="hidden" name="words" value=(question.words);
                        button id={"reads-" (at)} { span dir="auto" { (words) } }
                    }
                }
            }
        }
    }
}
