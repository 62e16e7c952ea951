//! What the host could not do: keep a line, read a form, find an answer in time; and what the
//! screens do not hold.
//!
//! From a trouble of the host to a page that says that nothing was changed, with what was typed
//! still on it; from a collection that is too large to a page with three ways on: save the table,
//! save a copy of everything, or undo the last step. It repairs nothing.

use maud::html;
use spinney_model::FileTrouble;
use spinney_voice::Tongue;

use crate::asked::Asked;
use crate::desk::Desk;
use crate::forms::hidden;
use crate::pages::frame::{self, Parts, Screen};
use crate::reply::{Page, Refused};
use crate::request::Request;
use crate::size::TooLarge;

/// What the host could not do. A file is named as the person named it.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum Trouble {
    /// This file or its folder may not be written to.
    ReadOnly(String),
    /// The disk is full; this file cannot grow.
    Full(String),
    /// The browser's storage has no room for more.
    StorageFull,
    /// A copy of what is kept in a browser holds so many MiB of pictures, and there is no other
    /// way out of it.
    CopyFull(usize),
    /// The browser's storage could not be read or written: what the browser says.
    StorageNotReached(String),
    /// What is kept in memory only has so many MiB of pictures, and no room for more.
    MemoryFull(usize),
    /// This file has grown beyond what the screens hold.
    TooLarge(String, TooLarge),
    /// Another program holds this file.
    Locked(String),
    /// This file is damaged, or no collection any more.
    Damaged(String),
    /// Lines in this file were written by a newer program.
    Newer(String),
    /// This file could not be read or written, and why.
    NotReached(String, FileTrouble),
    /// The form is larger than so many MiB.
    Large(usize),
    /// The form has too many fields or files.
    Many,
    /// The form took too long to arrive.
    Slow,
    /// The form cannot be read.
    NotAForm,
    /// The address is too long.
    LongAddress,
    /// Somebody else kept something, again and again.
    Overtaken,
    /// A picture is not where it was kept.
    PictureLost,
    /// The program itself is at fault.
    Bug,
}

impl Trouble {
    fn status(&self) -> u16 {
        match self {
            Self::Full(_) | Self::MemoryFull(_) | Self::CopyFull(_) | Self::StorageFull => 507,
            Self::ReadOnly(_)
            | Self::Locked(_)
            | Self::Damaged(_)
            | Self::Newer(_)
            | Self::NotReached(..)
            | Self::TooLarge(..)
            | Self::StorageNotReached(_)
            | Self::Overtaken => 503,
            Self::Large(_) | Self::Many => 413,
            Self::Slow => 408,
            Self::NotAForm => 400,
            Self::LongAddress => 414,
            Self::PictureLost => 404,
            Self::Bug => 500,
        }
    }

    fn words(&self, t: Tongue) -> Refused {
        let (sentence, remedy) = match self {
            Self::ReadOnly(file) => {
                (t.with("host-read-only", &[("file", file)]), t.say("host-read-only-remedy"))
            }
            Self::Full(file) => {
                (t.with("host-full", &[("file", file)]), t.say("host-full-remedy"))
            }
            Self::StorageFull => {
                (t.say("host-storage-full"), t.say("host-storage-full-remedy"))
            }
            Self::CopyFull(most) => {
                (t.count("host-copy-full", *most), t.say("host-copy-full-remedy"))
            }
            Self::StorageNotReached(why) => {
                let sentence = t.with("host-storage-not-reached", &[("why", why)]);
                (sentence, t.say("host-storage-not-reached-remedy"))
            }
            Self::MemoryFull(most) => {
                (t.count("host-memory-full", *most), t.say("host-memory-full-remedy"))
            }
            Self::Locked(file) => {
                (t.with("host-locked", &[("file", file)]), t.say("host-locked-remedy"))
            }
            Self::Damaged(file) => {
                (t.with("host-damaged", &[("file", file)]), t.say("host-damaged-remedy"))
            }
            Self::Newer(file) => {
                (t.with("host-newer", &[("file", file)]), t.say("host-newer-remedy"))
            }
            Self::NotReached(file, why) => {
                let why = spinney_voice::trouble(t, *why);
                let sentence = t.with("host-not-reached", &[("file", file), ("why", &why)]);
                (sentence, t.say("host-not-reached-remedy"))
            }
            Self::TooLarge(file, why) => {
                let Refused { sentence, remedy } = why.said(t);
                (t.with("host-too-large", &[("file", file), ("why", &sentence)]), remedy)
            }
            Self::Large(most) => (t.count("host-large", *most), t.say("host-large-remedy")),
            Self::Many => (t.say("host-many"), t.say("host-many-remedy")),
            Self::Slow => (t.say("host-slow"), t.say("host-again")),
            Self::NotAForm => (t.say("host-no-form"), t.say("host-no-form-remedy")),
            Self::LongAddress => (t.say("host-long"), t.say("host-long-remedy")),
            Self::Overtaken => (t.say("host-overtaken"), t.say("host-again")),
            Self::PictureLost => (t.say("host-picture"), t.say("host-picture-remedy")),
            Self::Bug => (t.say("host-bug"), t.say("host-bug-remedy")),
        };
        Refused { sentence, remedy }
    }
}

/// The page that says so.
pub(crate) fn page(desk: &Desk, request: &Request, trouble: &Trouble) -> Page {
    let tongue = Tongue::for_person(&request.languages);
    let asked = Asked { request, tongue, parts: Vec::new() };
    let page = frame::refused(desk, &asked, &trouble.words(tongue));
    Page { status: trouble.status(), ..page }
}

/// The page of a collection that is too large for the screens: how it got here, it can leave.
pub(crate) fn too_large(desk: &Desk, asked: &Asked<'_>, too_large: TooLarge) -> Page {
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

#[cfg(test)]
mod tests;
