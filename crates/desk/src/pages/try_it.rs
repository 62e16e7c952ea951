//! The key as a pupil walks it: one question a screen, two large answers, no edits.
//!
//! Everything is in the address: the answers so far, a letter each. Whoever cannot tell goes
//! both ways, first on by yes, then on by no, and compares where they come out.

mod ending;
mod screens;
mod walk;

use std::sync::Arc;

use spinney_model::KeyId;

use super::frame::{self, Parts, Screen};
use super::{Route, Shown};
use crate::routes::{Asked, Handler};
use crate::{Desk, Method};
use spinney_collection::Collection;
use spinney_collection::keys::Made;
use spinney_collection::laid::Laid;
use spinney_voice::Tongue;

use walk::{Walk, letters};

pub(super) const ROUTES: &[Route] = &[(Method::Get, "/try", Handler::Show(show))];

/// A walk through a key, with everything that its screens look at.
struct Trying<'a> {
    t: Tongue,
    id: KeyId,
    collection: &'a Collection,
    made: Arc<Made>,
    laid: Option<Arc<Laid>>,
    answers: String,
}

impl Trying<'_> {
    /// The address after some answers.
    fn address(&self, answers: &str) -> String {
        format!("/try?key={}&at={answers}", self.id.0)
    }
}

fn show(desk: &mut Desk, asked: &Asked<'_>) -> Shown {
    let t = asked.tongue;
    let id = frame::key_asked(desk, asked);
    let made = id.and_then(|id| desk.worked.made(&desk.history.now, id));
    let (Some(id), Some(made)) = (id, made) else {
        let work = screens::no_key(t);
        return frame::shown(desk, asked, &Parts::new(Screen::Try, t.say("nav-try"), work));
    };
    let begun = asked.request.query.iter().any(|(name, _)| name == "at");
    let answers = letters(asked.request.asked("at"), made.key.couplets.len());
    let laid = desk.worked.laid(&desk.history.now);
    let trying = Trying { t, id, collection: &desk.history.now, made, laid, answers };
    let walk = Walk::of(&trying.made.key, &trying.answers);
    let work = match (begun, walk.here()) {
        (false, _) => screens::start(&trying),
        (true, Some(couplet)) => screens::question(&trying, &walk, couplet),
        (true, None) => ending::ending(&trying, &walk),
    };
    let parts = Parts { bare: true, ..Parts::new(Screen::Try, t.say("nav-try"), work) };
    frame::shown(desk, asked, &parts)
}
