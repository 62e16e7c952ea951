//! Two finds with one name, `Ivy` and `ivy (2)`: are they the same?
//!
//! A table that names a kind in two rows gives two finds, so that neither row writes over the
//! other. Only a person knows whether they are one.

use maud::{Markup, html};
use spinney_model::KindId;

use spinney_collection::Collection;
use spinney_collection::laid::folded;
use spinney_voice::Tongue;

/// A question for every find whose name only adds a number to another's.
pub(super) fn list(t: Tongue, collection: &Collection) -> Markup {
    let pairs = pairs(collection);
    html! {
        @for (first, second) in &pairs {
            @let names = as_typed(collection.name(*first), collection.name(*second));
            form.finding.look.one-name id={"one-name-" (second.0)} method="post" action="/do/merge-kinds" {
                p dir="auto" { (t.with("finds-one-name", &[("first", &names[0]), ("second", &names[1])])) }
                input type="hidden" name="kind" value=(second.0);
                input type="hidden" name="with" value=(first.0);
                p.buttons {
                    button id={"same-" (second.0)} { (t.say("finds-one-name-same")) }
                    a.button id={"two-" (second.0)} href={"/finds/" (second.0) "#name"} { (t.say("finds-one-name-two")) }
                }
                p.quiet { (t.say("finds-merge-why")) }
            }
        }
    }
}

/// Both names as they were typed, without the number that only keeps them apart, where that
/// leaves two.
fn as_typed(first: String, second: String) -> [String; 2] {
    match second.rsplit_once(" (") {
        Some((bare, _)) if bare != first => [first, bare.to_owned()],
        _ => [first, second],
    }
}

/// The first find of a name, and each that has it with a number.
fn pairs(collection: &Collection) -> Vec<(KindId, KindId)> {
    let named: Vec<(KindId, String)> =
        collection.kinds.keys().map(|id| (*id, folded(&collection.name(*id)))).collect();
    let first = |of: &str| named.iter().find(|(_, name)| name == of).map(|(id, _)| *id);
    let pair = |(id, name): &(KindId, String)| {
        let (bare, number) = name.strip_suffix(')')?.rsplit_once(" (")?;
        number.parse::<u32>().ok()?;
        Some((first(bare)?, *id))
    };
    named.iter().filter_map(pair).collect()
}
