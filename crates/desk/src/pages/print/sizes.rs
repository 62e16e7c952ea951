//! How large the places for leaves and the chart for the wall are wished.
//!
//! From what the address of the print screen says to the wish of whoever prints. Like ink and
//! letters it is kept nowhere. A length that there cannot be is said beside its field, and the
//! sheets are as large as without it.

use maud::{Markup, html};
use spinney_press::{LeafLength, Sizes, Wall};
use spinney_voice::Tongue;

use crate::asked::Asked;

/// The sizes of the chart for the wall, each with the message of what it is.
const WALLS: [(&str, Wall, &str); 3] = [
    ("needed", Wall::AsNeeded, "print-wall-needed"),
    ("a2", Wall::A2, "print-wall-a2"),
    ("a1", Wall::A1, "print-wall-a1"),
];
/// Of what was typed as a length, so much is shown again.
const LONGEST: usize = 12;

/// The sizes, as they were typed and chosen.
pub(super) struct SizesTyped {
    places: String,
    wall: (&'static str, Wall),
}

impl SizesTyped {
    pub(super) fn of(asked: &Asked<'_>) -> Self {
        let typed = asked.request.asked("places").trim();
        let chosen = asked.request.asked("wall");
        let wall = WALLS.into_iter().find(|(name, ..)| *name == chosen).unwrap_or(WALLS[0]);
        Self { places: typed.chars().take(LONGEST).collect(), wall: (wall.0, wall.1) }
    }

    pub(super) fn sizes(&self) -> Sizes {
        Sizes { places: LeafLength::read(&self.places), wall: self.wall.1 }
    }

    /// As an address has them; nothing where nothing is wished.
    pub(super) fn address(&self) -> String {
        let sizes = self.sizes();
        let places = sizes.places.map(|length| format!("&places={}", length.mm()));
        let wall = (sizes.wall != Wall::AsNeeded).then(|| format!("&wall={}", self.wall.0));
        [places, wall].into_iter().flatten().collect()
    }

    /// The fields of the form.
    pub(super) fn fields(&self, t: Tongue) -> Markup {
        let refused = !self.places.is_empty() && self.sizes().places.is_none();
        let limits: [(&str, &dyn std::fmt::Display); 2] =
            [("least", &LeafLength::LEAST), ("most", &LeafLength::MOST)];
        html! {
            label for="places" { (t.say("print-places")) }
            input #places name="places" inputmode="decimal" maxlength=(LONGEST) size="6"
                placeholder=(t.say("print-places-measured")) value=(self.places)
                aria-describedby=(if refused { "places-not places-about" } else { "places-about" })
                aria-invalid=[refused.then_some("true")];
            p.quiet #places-about { (t.say("print-places-about")) }
            @if refused {
                p #places-not {
                    (t.say("print-places-not")) " " (t.with("print-places-not-remedy", &limits))
                }
            }
            label for="wall" { (t.say("print-wall-size")) }
            select #wall name="wall" {
                @for (name, _, words) in WALLS {
                    option value=(name) selected[name == self.wall.0] { (t.say(words)) }
                }
            }
        }
    }
}
