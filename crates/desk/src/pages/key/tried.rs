//! Whether people who did not know the answers have tried the key.

use maud::{Markup, html};
use spinney_collection::Drawn;
use spinney_collection::keys::Made;
use spinney_model::{Edit, Holds, KeyEdit, KeyId, WishField};
use spinney_press::Stamp;
use spinney_voice::Tongue;

use crate::asked::Deed;
use crate::forms::{At, Fact, Form, hidden};
use crate::pages::heaps::place;
use crate::reply::Refused;

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
        form.trying-out method="post" action=(Tried::PATH) {
            (Tried::fields(id, &wanted, back))
            p.quiet { (t.say(told)) }
            button #tried { (t.say(button)) }
        }
    }
}

/// People who did not know the answers tried the key as the page showed it, and it worked; or
/// they have not after all.
pub(crate) struct Tried {
    key: KeyId,
    /// The token of the key that was tried; empty: none.
    tried: String,
}

impl Tried {
    pub(crate) fn fields(key: KeyId, tried: &str, back: &str) -> Markup {
        hidden(&[("key", &key.0), ("tried", &tried), ("back", &back)])
    }
}

impl Form for Tried {
    const PATH: &'static str = "/do/key-tried";

    fn read(at: &At<'_>) -> Result<Self, Refused> {
        let key = place::key(at)?;
        Ok(Self { key, tried: at.asked.request.field("tried").to_owned() })
    }

    fn reads(&self) -> Vec<Fact<'_>> {
        let shows = Fact::new(
            |state| state.made(self.key).map_or(String::new(), |made| made.token()),
            |at| at.asked.refused("tried-moved", "tried-moved-remedy"),
        );
        if self.tried.is_empty() { vec![] } else { vec![shows.carried(Some(&self.tried))] }
    }

    fn act(self, at: &At<'_>) -> Result<Deed, Refused> {
        let Self { key, tried } = self;
        let now = at.collection().keys[&key].wish(WishField::Tried);
        let edits =
            (now != tried).then_some(Edit::Key(key, KeyEdit::Wish(WishField::Tried, tried)));
        let back = at.asked.back(&format!("/key?key={}", key.0));
        Ok(Deed::edits(edits.into_iter().collect(), back))
    }
}
