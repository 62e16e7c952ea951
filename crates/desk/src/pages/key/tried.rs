//! Whether people who did not know the answers have tried the key.

use maud::{Markup, html};
use spinney_collection::Drawn;
use spinney_collection::keys::Made;
use spinney_model::{Edit, Holds, KeyEdit, KeyId, WishField};
use spinney_press::Stamp;
use spinney_voice::Tongue;

use crate::asked::Deed;
use crate::forms::{Fact, Form, hidden};
use crate::pages::heaps::place;

/// Whether the key is a trying-out copy, and the button by which people say that they tried it.
pub(crate) fn trying_out(
    t: Tongue,
    id: KeyId,
    made: &Made,
    drawn: &Drawn,
    back: &str,
) -> Markup {
    let standing = made.standing(drawn);
    let (told, button, wanted) = match (Stamp::of(standing), standing.tried) {
        _ if made.key.couplets.is_empty() => return html! {},
        (Stamp::Draft, _) | (Stamp::None, false) => return html! {},
        (Stamp::TryingOut, _) if standing.holds == Holds::ToMend => {
            return html! { p.quiet.trying-out { (t.say("tried-mend-first")) } };
        }
        (Stamp::TryingOut, _) => ("tried-not-yet", "tried-it", made.token()),
        (Stamp::None, true) => ("tried-already", "tried-not-after-all", String::new()),
    };
    html! {
        form.trying-out method="post" action=(TRIED.path) {
            (hidden(&[("key", &id.0), ("tried", &wanted), ("back", &back)]))
            p.quiet { (t.say(told)) }
            button #tried { (t.say(button)) }
        }
    }
}

/// People who did not know the answers tried the key as the page showed it, by its token, and it
/// worked; or, without one, they have not after all.
pub(crate) static TRIED: Form<(KeyId, String)> = Form {
    path: "/do/key-tried",
    read: |at| Ok((place::key(at)?, at.asked.request.field("tried").to_owned())),
    rests_on: |(key, tried)| {
        let shows = Fact::new(
            |state| state.made(*key).map_or(String::new(), |made| made.token()),
            |at| at.asked.refused("tried-moved"),
        );
        if tried.is_empty() { vec![] } else { vec![shows.carried(Some(tried))] }
    },
    act: |(key, tried), at| {
        let other = at.collection().keys[&key].wish(WishField::Tried) != tried;
        let edit = other.then_some(Edit::Key(key, KeyEdit::Wish(WishField::Tried, tried)));
        Ok(Deed::edits(edit, at.asked.back(&format!("/key?key={}", key.0))))
    },
};
