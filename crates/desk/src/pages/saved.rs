//! A copy of the collection: saved as one file, and opened again in the place of nothing.
//!
//! Saving: from the journal and its pictures to a bundle, which the host sends as a download.
//! Opening: from a bundle that somebody gives to a collection that the host keeps from then on.
//! Nothing that is kept in a file is written over: there, opening is refused with a way out.
//! What is in memory only may be replaced, once somebody has said so.

use std::collections::{BTreeMap, BTreeSet};

use maud::{Markup, html};
use spinney_exchange::bundle::{Bundle, BundleError};
use spinney_exchange::{self as exchange, journal};
use spinney_model::AboutField;
use spinney_model::limits::COPY_BYTES;
use spinney_press::picture::is_bare;

use super::frame::{self, Parts, Screen};
use super::to_keep::{file_name, to_keep};
use super::{Route, Shown};
use crate::routes::{Asked, Handler, Refused};
use spinney_collection::forget;

use crate::{Desk, Method, Page, Reply, TooLarge};

pub(super) const ROUTES: &[Route] = &[
    (Method::Get, "/saved", Handler::Show(show)),
    (Method::Get, "/saved/copy.zip", Handler::ShowLong(save)),
    (Method::Get, "/saved/table.csv", Handler::ShowLong(table)),
    (Method::Post, "/do/open-copy", Handler::Answer(open)),
];

/// Whether a copy can be opened here.
#[derive(Clone, Copy, PartialEq, Eq)]
enum Room {
    /// Nothing is here.
    Empty,
    /// What is here is in memory only and would be gone.
    InMemory,
    /// A file with a collection in it, which must not be written over.
    InFile,
}

impl Room {
    fn of(desk: &Desk, asked: &Asked<'_>) -> Self {
        match (desk.head(), asked.request.in_memory) {
            (0, _) => Self::Empty,
            (_, true) => Self::InMemory,
            (_, false) => Self::InFile,
        }
    }
}

fn show(desk: &mut Desk, asked: &Asked<'_>) -> Shown {
    let t = asked.tongue;
    let room = Room::of(desk, asked);
    let lost: usize = asked.request.asked("lost").parse().unwrap_or(0);
    let opened = asked.request.asked("opened") == "yes";
    let work = html! {
        h1 { (t.say("saved-title")) }
        @if opened { p role="status" { (t.say("saved-opened")) } }
        @if lost > 0 { div.finding.look { p { (t.count("saved-lost", lost)) } } }
        h2 { (t.say("saved-save")) }
        @if room == Room::Empty { p { (t.say("saved-nothing")) } } @else {
            p { (t.say("saved-save-help")) }
            p { a.main #save-copy href="/saved/copy.zip" download { (t.say("saved-save")) } }
        }
        h2 { (t.say("saved-open")) }
        @match room {
            Room::InFile => {
                p { (t.say("saved-in-the-way")) " " (t.say("saved-in-the-way-remedy")) }
            }
            Room::Empty | Room::InMemory => (open_form(desk, asked, room)),
        }
    };
    let parts = Parts::new(Screen::Done, t.say("saved-title"), work);
    frame::shown(desk, asked, &parts)
}

fn open_form(desk: &Desk, asked: &Asked<'_>, room: Room) -> Markup {
    let t = asked.tongue;
    html! {
        p { (t.say("saved-open-help")) }
        form #open-copy-form method="post" action="/do/open-copy" enctype="multipart/form-data" {
            input type="hidden" name="head" value=(desk.head());
            input type="hidden" name="back" value="/saved";
            label for="copy-file" { (t.say("saved-file")) }
            input #copy-file type="file" name="copy" accept=".zip,application/zip" required;
            @if room == Room::InMemory {
                p.being-sure {
                    input #sure type="checkbox" name="sure" value="yes" required;
                    label for="sure" { (t.say("saved-sure")) }
                }
            }
            button #open-copy { (t.say("saved-open")) }
        }
    }
}

/// The collection as one file. The same collection gives the same bytes.
fn save(desk: &mut Desk, asked: &Asked<'_>) -> Shown {
    let entries = &desk.history.entries;
    let named = forget::pictures(entries);
    let given = &asked.request.pictures;
    let missing = named.keys().filter(|hash| !given.contains_key(*hash));
    let missing: BTreeSet<String> = missing.cloned().collect();
    if !missing.is_empty() {
        return Shown::NeedPictures(missing);
    }
    if asked.request.pictures_cut {
        // Half a collection must not look like a whole one.
        let refused = told(asked, BundleError::TooLarge);
        return Shown::Page(frame::refused(desk, asked, &refused));
    }
    let pictures =
        named.keys().filter_map(|hash| Some((hash.as_str(), given.get(hash)?.as_deref()?)));
    let lines: Vec<Vec<u8>> = entries.iter().map(journal::write).collect();
    let refused = match packed(lines, pictures.collect()) {
        Ok((bytes, 0)) => {
            return Shown::Page(to_keep("application/zip", bytes, name_of(desk, asked)));
        }
        // They would be missing, and nobody would know.
        Ok((_, lost)) => Refused {
            sentence: asked.tongue.count("saved-unreadable", lost),
            remedy: asked.tongue.say("saved-unreadable-remedy"),
        },
        Err(error) => told(asked, error),
    };
    Shown::Page(frame::refused(desk, asked, &refused))
}

/// The zip, and how many pictures could not be read; one that another program has put there is packed
/// anew first.
fn packed(
    lines: Vec<Vec<u8>>,
    pictures: BTreeMap<&str, &[u8]>,
) -> Result<(Vec<u8>, usize), BundleError> {
    let most = COPY_BYTES as u64;
    if pictures.values().all(|picture| is_bare(picture)) {
        return Bundle::packed(&lines, &pictures, most).map(|zip| (zip, 0));
    }
    let owned = pictures.into_iter().map(|(hash, bytes)| (hash.to_owned(), bytes.to_vec()));
    let bundle = Bundle { lines, pictures: owned.collect() };
    // The lines were written just now: none is newer or damaged.
    let (bundle, lost) = Desk::handed_on(bundle).map_err(|_| BundleError::Damaged)?;
    let pictures = bundle.pictures.iter().map(|(hash, bytes)| (hash.as_str(), &**bytes));
    Bundle::packed(&bundle.lines, &pictures.collect(), most).map(|zip| (zip, lost))
}

/// The table alone, for other programs and for the command line.
fn table(desk: &mut Desk, asked: &Asked<'_>) -> Shown {
    let Some(laid) = desk.worked.laid(&desk.history.now) else { return Shown::Nothing };
    let table = exchange::table::write(&laid.matrix).table.into_bytes();
    let name = name_of(desk, asked).replace(".zip", ".csv");
    Shown::Page(to_keep("text/csv; charset=utf-8", table, name))
}

/// Its title, and the day on which it was saved.
fn name_of(desk: &Desk, asked: &Asked<'_>) -> String {
    let title = file_name(desk.history.now.about_field(AboutField::Title), "spinney");
    match file_name(&asked.request.today, "") {
        today if today.is_empty() => format!("{title}.zip"),
        today => format!("{title}-{today}.zip"),
    }
}

fn open(desk: &mut Desk, asked: &Asked<'_>) -> Reply {
    match opened(desk, asked) {
        Ok(reply) => reply,
        Err(refused) => Reply::Page(frame::refused_from(desk, asked, &refused, "/saved")),
    }
}

fn opened(desk: &Desk, asked: &Asked<'_>) -> Result<Reply, Refused> {
    let t = asked.tongue;
    let refused = |sentence: &str, remedy: &str| {
        Err(Refused { sentence: t.say(sentence), remedy: t.say(remedy) })
    };
    match Room::of(desk, asked) {
        Room::InFile => return refused("saved-in-the-way", "saved-in-the-way-remedy"),
        _ if asked.request.field("head") != desk.head().to_string() => {
            return refused("saved-moved", "saved-moved-remedy");
        }
        Room::InMemory if asked.request.field("sure") != "yes" => {
            return refused("saved-unsure", "saved-unsure-remedy");
        }
        Room::Empty | Room::InMemory => {}
    }
    let Some(file) = asked.request.files.iter().find(|file| file.field == "copy") else {
        return refused("saved-no-file", "saved-no-file-remedy");
    };
    let bundle = Bundle::unpack(&file.bytes).map_err(|error| told(asked, error))?;
    let kept = of_bundle(asked, bundle)?;
    let to = match kept.lost {
        0 => "/saved?opened=yes".to_owned(),
        lost => format!("/saved?opened=yes&lost={lost}"),
    };
    let (lines, pictures) = (kept.lines, kept.pictures);
    if let Some(too_large) = too_large(&lines) {
        return Err(too_large.said(t));
    }
    Ok(Reply::Replace { head: desk.head(), lines, pictures, then: Page::see(to) })
}

/// A collection that the screens do not hold is not put on them.
fn too_large(lines: &[Vec<u8>]) -> Option<TooLarge> {
    Desk::open(lines.iter().map(Vec::as_slice)).ok()?.too_large
}

/// A line that cannot be read must not become a collection that cannot be opened.
fn of_bundle(asked: &Asked<'_>, bundle: Bundle) -> Result<crate::Unpacked, Refused> {
    let t = asked.tongue;
    Desk::unpacked(bundle.lines, bundle.pictures).map_err(|error| match error {
        journal::LineError::Newer(_) => {
            Refused { sentence: t.say("saved-newer"), remedy: t.say("saved-newer-remedy") }
        }
        journal::LineError::NotALine => told(asked, BundleError::Damaged),
    })
}

fn told(asked: &Asked<'_>, error: BundleError) -> Refused {
    let (sentence, remedy) = match error {
        BundleError::NotABundle => ("saved-no-copy", "saved-no-copy-remedy"),
        BundleError::TooLarge => ("saved-too-large", "saved-too-large-remedy"),
        BundleError::CutOff | BundleError::Damaged => ("saved-damaged", "saved-damaged-remedy"),
    };
    Refused { sentence: asked.tongue.say(sentence), remedy: asked.tongue.say(remedy) }
}
