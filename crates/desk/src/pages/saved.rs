//! A copy of the collection: saved as one file, and opened again in the place of nothing; and how
//! any file is named that a person keeps.
//!
//! Saving: from the journal and its pictures to a bundle, which the host sends as a download.
//! Opening: from a bundle that somebody gives to a collection that the host keeps from then on.
//! Nothing that is kept in a file is written over: there, opening is refused with a way out.
//! What is in memory only may be replaced, once somebody has said so.

use std::collections::{BTreeMap, BTreeSet};

use maud::{Markup, html};
use spinney_collection::forget;
use spinney_exchange::bundle::{Bundle, BundleError};
use spinney_exchange::{self as exchange, journal};
use spinney_model::AboutField;
use spinney_model::limits::COPY_BYTES;
use spinney_press::picture::is_bare;
use spinney_voice::Tongue;

use crate::asked::{Asked, Deed, Handler, Route, Shown, What, get};
use crate::desk::Desk;
use crate::forms::{Fact, Form, hidden, post};
use crate::pages::frame::{self, Parts, Screen};
use crate::reply::{Page, Refused};
use crate::request::{KeptIn, Method, SavedCopy};
use crate::size::TooLarge;
use crate::unpacked;

pub(crate) const ROUTES: &[Route] = &[
    get("/saved", show),
    (Method::Get, "/saved/copy.zip", Handler::ShowLong(save)),
    (Method::Get, "/saved/table.csv", Handler::ShowLong(table)),
    post(&OPEN),
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
    /// A browser's storage, where there is room for another one beside it.
    Beside,
}

impl Room {
    fn of(desk: &Desk, asked: &Asked<'_>) -> Self {
        match (desk.head(), &asked.request.kept) {
            (0, _) => Self::Empty,
            (_, KeptIn::Memory) => Self::InMemory,
            (_, KeptIn::File) => Self::InFile,
            (_, KeptIn::Browser { .. }) => Self::Beside,
        }
    }
}

fn show(desk: &Desk, asked: &Asked<'_>) -> Shown {
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
            @if let KeptIn::Browser { copy, promised } = &asked.request.kept {
                p #kept-how { (kept_how(t, *promised)) }
                // Shown where the browser can hand a file to another program.
                p { button #share-copy.quiet type="button" hidden { (t.say("pocket-share")) } }
                p #last-copy { (last_copy(t, copy.as_ref())) }
            }
        }
        h2 { (t.say("saved-open")) }
        @match room {
            Room::InFile => {
                p { (t.say("saved-in-the-way")) " " (t.say("saved-in-the-way-remedy")) }
            }
            Room::Beside => {
                p { (t.say("pocket-not-over-remedy")) }
                p { a.button #to-collections href="/collections" { (t.say("pocket-others")) } }
            }
            Room::Empty | Room::InMemory => (open_form(asked, room)),
        }
    };
    let parts = Parts::new(Screen::Done, t.say("saved-title"), work);
    frame::shown(desk, asked, &parts)
}

/// How far a browser can be relied on.
fn kept_how(t: Tongue, promised: Option<bool>) -> String {
    match promised {
        Some(true) => t.say("pocket-promised"),
        Some(false) => {
            format!("{} {}", t.say("pocket-may-be-cleared"), t.say("pocket-not-promised"))
        }
        None => t.say("pocket-may-be-cleared"),
    }
}

/// When a copy was saved last, and under what name.
fn last_copy(t: Tongue, copy: Option<&SavedCopy>) -> String {
    match copy {
        Some(copy) => {
            t.with("pocket-last-copy", &[("day", &t.day(&copy.day)), ("file", &copy.name)])
        }
        None => t.say("pocket-never-copied"),
    }
}

fn open_form(asked: &Asked<'_>, room: Room) -> Markup {
    let t = asked.tongue;
    html! {
        p { (t.say("saved-open-help")) }
        form #open-copy-form method="post" action=(OPEN.path) enctype="multipart/form-data" {
            (hidden(&[("back", &"/saved")]))
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
fn save(desk: &Desk, asked: &Asked<'_>) -> Shown {
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
        Ok((_, lost)) => Refused::count(asked.tongue, "saved-unreadable", lost),
        Err(error) => told(asked, error),
    };
    Shown::Page(frame::refused(desk, asked, &refused))
}

/// The zip, and how many pictures could not be read; one that another program has put there is
/// packed anew first.
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
    let (bundle, lost) = unpacked::handed_on(bundle).map_err(|_| BundleError::Damaged)?;
    let pictures = bundle.pictures.iter().map(|(hash, bytes)| (hash.as_str(), &**bytes));
    Bundle::packed(&bundle.lines, &pictures.collect(), most).map(|zip| (zip, lost))
}

/// The table alone, for other programs and for the command line.
fn table(desk: &Desk, asked: &Asked<'_>) -> Shown {
    let Some(laid) = desk.laid() else { return Shown::Nothing };
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

/// A copy is opened here.
static OPEN: Form<()> = Form {
    path: "/do/open-copy",
    read: |at| match Room::of(at.desk, at.asked) {
        Room::InFile => Err(at.asked.refused("saved-in-the-way")),
        Room::Beside => Err(at.asked.refused("pocket-not-over")),
        Room::Empty | Room::InMemory => Ok(()),
    },
    rests_on: |()| vec![Fact::all(|at| at.asked.refused("saved-moved"))],
    act: |(), at| {
        let asked = at.asked;
        let in_memory = Room::of(at.desk, asked) == Room::InMemory;
        if in_memory && asked.request.field("sure") != "yes" {
            return Err(asked.refused("saved-unsure"));
        }
        let file = asked.request.files.iter().find(|file| file.field == "copy");
        let file = file.ok_or_else(|| asked.refused("saved-no-file"))?;
        let bundle = Bundle::unpack(&file.bytes).map_err(|error| told(asked, error))?;
        let kept = of_bundle(asked, bundle)?;
        let to = match kept.lost {
            0 => "/saved?opened=yes".to_owned(),
            lost => format!("/saved?opened=yes&lost={lost}"),
        };
        match too_large(&kept.lines) {
            Some(too_large) => Err(too_large.said(asked.tongue)),
            None => Ok(Deed { what: What::Replaced(kept.lines), pictures: kept.pictures, to }),
        }
    },
};

/// A collection that the screens do not hold is not put on them.
fn too_large(lines: &[Vec<u8>]) -> Option<TooLarge> {
    let mut desk = Desk::default();
    desk.catch_up(lines.iter().map(Vec::as_slice)).ok()?;
    desk.too_large
}

/// A line that cannot be read must not become a collection that cannot be opened.
fn of_bundle(asked: &Asked<'_>, bundle: Bundle) -> Result<unpacked::Unpacked, Refused> {
    unpacked::unpacked(bundle.lines, bundle.pictures).map_err(|error| match error {
        journal::LineError::Newer(_) => asked.refused("saved-newer"),
        journal::LineError::NotALine => told(asked, BundleError::Damaged),
    })
}

fn told(asked: &Asked<'_>, error: BundleError) -> Refused {
    asked.refused(match error {
        BundleError::NotABundle => "saved-no-copy",
        BundleError::TooLarge => "saved-too-large",
        BundleError::CutOff | BundleError::Damaged => "saved-damaged",
    })
}

/// The longest name of a file, in letters.
const LONGEST_NAME: usize = 60;

/// A file under a name.
pub(super) fn to_keep(kind: &'static str, bytes: Vec<u8>, name: String) -> Page {
    Page { file: Some(name), ..Page::of(kind, bytes) }
}

/// Letters and digits of any language, everything else a hyphen; `otherwise` where nothing is
/// left.
pub(super) fn file_name(name: &str, otherwise: &str) -> String {
    let mut file = String::new();
    for letter in name.to_lowercase().chars().take(LONGEST_NAME) {
        match letter.is_alphanumeric() {
            true => file.push(letter),
            false if !file.is_empty() && !file.ends_with('-') => file.push('-'),
            false => {}
        }
    }
    match file.trim_end_matches('-') {
        "" => otherwise.to_owned(),
        file => file.to_owned(),
    }
}

#[cfg(test)]
mod tests {
    use super::file_name;

    #[test]
    fn a_file_has_a_name_that_every_machine_takes() {
        assert_eq!(file_name("Group Blue, class 4", "key"), "group-blue-class-4");
        assert_eq!(file_name("../../<script>", "key"), "script");
        assert_eq!(file_name("Ulmen-Schlüssel", "key"), "ulmen-schlüssel");
        assert_eq!(file_name("🍂🍂", "key"), "key");
    }
}
