//! The screens, a file each: handler, form and page together.

pub(crate) mod assets;
pub(crate) mod copy;
pub(crate) mod damaged;
pub(crate) mod done;
pub(crate) mod finds;
pub(crate) mod forget;
pub(crate) mod frame;
pub(crate) mod heaps;
pub(crate) mod host;
pub(crate) mod key;
pub(crate) mod newcomer;
pub(crate) mod print;
pub(crate) mod saved;
mod saying;
pub(crate) mod share_out;
pub(crate) mod stood;
pub(crate) mod table;
mod to_keep;
pub(crate) mod too_large;
pub(crate) mod try_it;
pub(crate) mod words;

use std::collections::BTreeSet;

use crate::routes::Handler;
use crate::{Method, Page};

/// What a handler shows.
pub(crate) enum Shown {
    /// A page.
    Page(Page),
    /// There is no such thing.
    Nothing,
    /// A picture, by its hash.
    Picture(String),
    /// Needs these pictures first.
    NeedPictures(BTreeSet<String>),
}

pub(crate) type Route = (Method, &'static str, Handler);

/// All routes, screen by screen.
pub(crate) fn routes() -> impl Iterator<Item = &'static Route> {
    [
        assets::ROUTES,
        finds::ROUTES,
        forget::ROUTES,
        share_out::ROUTES,
        heaps::ROUTES,
        copy::ROUTES,
        newcomer::ROUTES,
        table::ROUTES,
        key::ROUTES,
        words::ROUTES,
        try_it::ROUTES,
        print::ROUTES,
        done::ROUTES,
        saved::ROUTES,
    ]
    .into_iter()
    .flatten()
}
