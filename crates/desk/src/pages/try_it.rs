//! The key as a pupil walks it: one question a screen, two large answers, no edits.
//!
//! Everything is in the address: the answers so far, a letter each. Whoever cannot tell goes
//! both ways, first on by yes, then on by no, and compares where they come out.

mod screens;

use screens::Trying;
use spinney_collection::walking::{Walking, given};

use super::frame::{self, Parts, Screen};
use crate::asked::{Asked, Route, Shown, get};
use crate::desk::Desk;

pub(crate) const ROUTES: &[Route] = &[get("/try", show)];

fn show(desk: &Desk, asked: &Asked<'_>) -> Shown {
    let t = asked.tongue;
    let id = frame::key_asked(desk, asked);
    let made = id.and_then(|id| desk.made(t, id));
    let (Some(id), Some(made)) = (id, made) else {
        let work = screens::no_key(t);
        return frame::shown(desk, asked, &Parts::new(Screen::Try, t.say("nav-try"), work));
    };
    let begun = asked.request.query.iter().any(|(name, _)| name == "at");
    // At most one answer for every question.
    let letters = asked.request.asked("at").chars();
    let letters = letters.filter(|letter| given(*letter).is_some());
    let answers: String = letters.take(made.key.couplets.len()).collect();
    let laid = desk.laid();
    let trying = Trying { t, id, collection: &desk.history.now, made, laid, answers };
    let walk = Walking::of(&trying.made.key, trying.answers.chars().filter_map(given));
    let work = match (begun, walk.here()) {
        (false, _) => screens::start(&trying),
        (true, Some(couplet)) => screens::question(&trying, &walk, couplet),
        (true, None) => screens::ending(&trying, &walk),
    };
    let parts = Parts { bare: true, ..Parts::new(Screen::Try, t.say("nav-try"), work) };
    frame::shown(desk, asked, &parts)
}
