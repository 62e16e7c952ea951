//! What pages are dressed in: type, look, what a hand wants, pictures.

use spinney_press::page::{BOLD, REGULAR};

use crate::asked::{Asked, Route, Shown, get};
use crate::desk::Desk;
use crate::reply::Page;

pub(crate) const ROUTES: &[Route] =
    &[get("/assets/{name}", asset), get("/picture/{hash}", picture)];

/// The look, screen by screen; one file for the browser.
const LOOK: [&str; 15] = [
    include_str!("../../assets/look/base.css"),
    include_str!("../../assets/look/cards.css"),
    include_str!("../../assets/look/finds.css"),
    include_str!("../../assets/look/heaps.css"),
    include_str!("../../assets/look/copy.css"),
    include_str!("../../assets/look/newcomer.css"),
    include_str!("../../assets/look/measure.css"),
    include_str!("../../assets/look/leaves.css"),
    include_str!("../../assets/look/table.css"),
    include_str!("../../assets/look/key.css"),
    include_str!("../../assets/look/words.css"),
    include_str!("../../assets/look/try_it.css"),
    include_str!("../../assets/look/print.css"),
    include_str!("../../assets/look/done.css"),
    // Last: on paper it goes over all others.
    include_str!("../../assets/look/print_out.css"),
];

/// The leaf in the tab of the browser.
const ICON: &[u8] = include_bytes!("../../assets/icon.svg");

/// The scripts, one function a screen; every page works without them. What they ask of the page that
/// they are on is a parameter, since a host may show all screens in one document.
pub const HANDS: [&str; 6] = [
    include_str!("../../assets/hand/hand.js"),
    include_str!("../../assets/hand/heaps.js"),
    include_str!("../../assets/hand/table.js"),
    include_str!("../../assets/hand/key.js"),
    include_str!("../../assets/hand/finds.js"),
    include_str!("../../assets/hand/measure.js"),
];

/// The same, begun by the page itself: one file for the browser.
fn hand() -> String {
    let host = include_str!("../../assets/hand/host.js");
    let start = include_str!("../../assets/hand/start.js");
    [host, &HANDS.concat(), start].concat()
}

fn asset(_: &Desk, asked: &Asked<'_>) -> Shown {
    let page = match asked.parts[0] {
        "look.css" => Page::of("text/css; charset=utf-8", LOOK.concat().into_bytes()),
        "icon.svg" => Page::of("image/svg+xml", ICON.to_vec()),
        "regular.woff2" => Page::of("font/woff2", REGULAR.to_vec()),
        "bold.woff2" => Page::of("font/woff2", BOLD.to_vec()),
        "hand.js" => Page::of("text/javascript; charset=utf-8", hand().into_bytes()),
        _ => return Shown::Nothing,
    };
    Shown::Page(Page { lasting: true, ..page })
}

fn picture(_: &Desk, asked: &Asked<'_>) -> Shown {
    let hash = asked.parts[0];
    let fits = hash.len() == 64 && hash.bytes().all(|b| b.is_ascii_hexdigit());
    if fits { Shown::Picture(hash.to_lowercase()) } else { Shown::Nothing }
}
