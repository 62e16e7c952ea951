//! A question in the fields of a form, and places of a key in addresses.
//!
//! From what a question means, or a way through a key, to hidden fields and addresses and
//! back. What does not fit is nobody's question.

use maud::{Markup, html};
use spinney_model::{AskOf, AskedOf, CharacterId, Fork, Quantity, limits};

use crate::request::Request;

/// The fields that say what a question means.
pub(crate) fn fields(ask: &AskOf) -> Markup {
    html! {
        input type="hidden" name="character" value=(ask.character.0);
        @match &ask.yes {
            AskedOf::States(states) => @for state in states {
                input type="hidden" name="state" value=(state);
            },
            AskedOf::AtLeast(least) => input type="hidden" name="at-least" value=(least.thousandths());,
            AskedOf::Below(least) => input type="hidden" name="below" value=(least.thousandths());,
        }
    }
}

/// What the fields of a form say that a question means; None: nothing.
pub(crate) fn of_form(request: &Request) -> Option<AskOf> {
    let character = CharacterId(request.field("character").parse().ok()?);
    let number = |name| request.field(name).parse().ok().map(Quantity::from_thousandths);
    let states: Vec<String> = request.fields("state").map(str::to_owned).collect();
    let yes = match (number("at-least"), number("below")) {
        (Some(least), _) => AskedOf::AtLeast(least),
        (None, Some(least)) => AskedOf::Below(least),
        (None, None) if !states.is_empty() => AskedOf::States(states),
        (None, None) => return None,
    };
    Some(AskOf { character, yes })
}

/// A way from letters; what is no way leads to the beginning. At most so many questions deep
/// as a collection has kinds.
pub(crate) fn way(letters: &str) -> Fork {
    let answer = |letter| match letter {
        'y' => Some(true),
        'n' => Some(false),
        _ => None,
    };
    let way = letters.chars().take(limits::SCREENS_KINDS).map(answer);
    Fork(way.collect::<Option<_>>().unwrap_or_default())
}
