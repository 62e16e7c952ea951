//! What is said of a key that was read from a file of ours and speaks of what the table lacks.

use spinney_model::{OfKeyFile, StrangeWish};

use super::Told;
use super::link::not_in_table;
use crate::Tongue;

pub(super) fn told(t: Tongue, fact: &OfKeyFile) -> Told {
    let again = |says| (says, t.say("finding-file-remedy"));
    match fact {
        OfKeyFile::Wishes { name } => {
            again(t.with("finding-file-wishes", &[("name", &strange(t, name))]))
        }
        OfKeyFile::TooManyKept { most } => {
            t.told("finding-file-too-many-kept", &[("most", most)])
        }
        OfKeyFile::Proof { name } => again(t.with("finding-file-proof", &[("name", name)])),
    }
}

fn strange(t: Tongue, wish: &StrangeWish) -> String {
    match wish {
        StrangeWish::Named(name) | StrangeWish::Priced(name) => {
            t.with("finding-link-named", &[("name", name)])
        }
        StrangeWish::Asked(what) => not_in_table(t, what),
        StrangeWish::Goal(name) => t.with("finding-file-aim", &[("name", name)]),
        StrangeWish::Early => t.say("finding-file-early"),
        StrangeWish::Hand(name) => t.with("finding-file-hand", &[("name", name)]),
        StrangeWish::Season(name) => t.with("finding-file-season", &[("name", name)]),
    }
}
