//! The page of a collection that is too large for the screens: how it got here, it can leave.
//!
//! From what is too large to a page with three ways on: save the table, save a copy of
//! everything, or undo the last step. Nothing else is worked out of it.

use maud::html;

use super::frame::{self, Parts, Screen};
use crate::asked::Asked;
use crate::desk::Desk;
use crate::forms::hidden;
use crate::reply::Page;
use crate::size::TooLarge;

pub(crate) fn page(desk: &Desk, asked: &Asked<'_>, too_large: TooLarge) -> Page {
    let t = asked.tongue;
    let said = too_large.said(t);
    let work = html! {
        h1 { (t.say("too-large-title")) }
        div.finding.mend role="alert" {
            p { (said.sentence) }
            p.remedy { (said.remedy) }
        }
        p.buttons {
            a.main #save-table href="/saved/table.csv" download { (t.say("too-large-table")) }
            a.button #save-copy href="/saved/copy.zip" download { (t.say("saved-save")) }
        }
        form method="post" action="/do/undo" {
            (hidden(&[]))
            button #undo { (t.say("too-large-undo")) }
        }
    };
    let title = t.say("too-large-title");
    let parts = Parts { screen: None, bare: true, ..Parts::new(Screen::Finds, title, work) };
    Page { status: 422, ..frame::page(desk, asked, &parts) }
}
