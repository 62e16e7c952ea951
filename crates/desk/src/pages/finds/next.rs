//! What next? One main thing that makes sense now, then what else does.
//!
//! From what a collection holds to ways on. Nothing is offered that would lead to a page which
//! only says that something is missing: no sets before there are finds for them, no newcomer
//! before a key asks something, no heaps once everything is sorted.

use maud::{Markup, html};
use spinney_collection::laid::Laid;
use spinney_collection::layer::Layer;
use spinney_model::KeyId;
use spinney_voice::Tongue;

use crate::asked::Asked;
use crate::desk::Desk;
use crate::pages::frame;
use crate::pages::heaps::beside::{stranded, together};
use crate::pages::share_out::deeds::SIZES;

/// A way on: where it leads, and what it is called.
type Way = (String, &'static str);

/// How far the collection has come.
enum Stage {
    /// One find: nothing can be told apart.
    OneFind,
    /// Finds and no key.
    NoKey,
    /// A key whose finds are not all told apart yet; whether it asks something.
    Sorting(KeyId, bool),
    /// A key that tells its finds apart, or that the program finishes.
    Sorted(KeyId),
}

impl Stage {
    fn of(desk: &Desk, asked: &Asked<'_>, laid: Option<&Laid>) -> Self {
        let collection = &desk.history.now;
        if collection.kinds.len() < 2 {
            return Self::OneFind;
        }
        let Some(id) = frame::key_asked(desk, asked) else { return Self::NoKey };
        let key = &collection.keys[&id];
        if key.finished() {
            return Self::Sorted(id);
        }
        let layer = laid.and_then(|laid| Layer::of(collection, laid, key));
        let sorted = layer.is_some_and(|l| stranded(&l).is_empty() && together(&l).is_empty());
        match sorted && !key.questions.is_empty() {
            true => Self::Sorted(id),
            false => Self::Sorting(id, !key.questions.is_empty()),
        }
    }
}

/// The ways on.
pub(super) fn next(t: Tongue, desk: &Desk, asked: &Asked<'_>, laid: Option<&Laid>) -> Markup {
    let stage = Stage::of(desk, asked, laid);
    let to = |path: &str, id: KeyId| format!("{path}?key={}", id.0);
    let (main, newcomer): (Way, _) = match stage {
        Stage::OneFind => (("#names".to_owned(), "finds-next-second"), None),
        Stage::NoKey => (("/heaps".to_owned(), "finds-to-heaps"), None),
        Stage::Sorting(id, false) => ((to("/heaps", id), "finds-to-heaps"), None),
        Stage::Sorting(id, true) => {
            ((to("/heaps", id), "finds-go-on-sorting"), Some(to("/newcomer", id)))
        }
        Stage::Sorted(id) => ((to("/try", id), "finds-next-try"), Some(to("/newcomer", id))),
    };
    let mut others: Vec<Way> = Vec::new();
    if let Stage::Sorted(id) = stage {
        others.push((to("/print", id), "finds-next-print"));
    }
    others.extend(newcomer.map(|path| (path, "finds-newcomer")));
    if desk.history.now.kinds.len() >= *SIZES.start() {
        others.push(("/share-out".to_owned(), "finds-share-out"));
    }
    if matches!(stage, Stage::NoKey | Stage::Sorting(..)) {
        others.push(("/copy/new".to_owned(), "heaps-copy"));
    }
    html! {
        h2 { (t.say("finds-next")) }
        p { a.main #next href=(main.0) { (t.say(main.1)) } }
        ul.ways-on {
            @for (path, words) in &others { li { a href=(path) { (t.say(words)) } } }
        }
    }
}
