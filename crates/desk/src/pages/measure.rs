//! Measure: leaves in a scan are measured, named in one pass, and taken into finds and table.
//!
//! A picture is chosen (`show`), its leaves are shown with their measures and get names
//! (`leaves`), what was found wrongly is put right (`mend`), and what they give the table is shown before it is taken (`taken`). Until then
//! all of it travels with the forms of the page (`sheet`).

mod leaves;
mod lengths;
mod mend;
mod sheet;
mod taken;

use maud::{Markup, html};
use sheet::{NoSheet, Said, Sheet};
use spinney_model::limits::SCREENS_LEAVES;
use spinney_press::{pdf, scale_card};
use spinney_voice::measured as say;

use crate::asked::{Asked, Handler, Route, Shown, get};
use crate::desk::Desk;
use crate::forms::{hidden, post};
use crate::pages::finds::kind::HAND_LAYING_LEAVES;
use crate::pages::frame::{self, Parts, Screen};
use crate::pages::print::paper_asked;
use crate::pages::saved::to_keep;
use crate::reply::{Page, Refused};
use crate::request::{Method, Upload};

pub(crate) const ROUTES: &[Route] = &[
    get("/measure", show),
    get(CARD, card),
    // What was found in a picture is gone with its page: whoever comes back to it begins with a picture.
    get(leaves::PATH, show),
    get(leaves::LOOK, show),
    get(leaves::ONE, show),
    get(leaves::BACK, show),
    // A picture, or what was found in one with what was typed: too much for an address.
    (Method::Post, leaves::PATH, Handler::ShowLong(sent)),
    (Method::Post, leaves::LOOK, Handler::ShowLong(look)),
    (Method::Post, leaves::ONE, Handler::ShowLong(mend_one)),
    (Method::Post, leaves::BACK, Handler::ShowLong(back)),
    post(&taken::TAKE),
];

/// The field that says that a picture is a rubbing.
const RUBBING: &str = "rubbing";

/// The scale card, on A4 or on the paper that `paper` names.
const CARD: &str = "/measure/scale-card.pdf";

fn card(desk: &Desk, asked: &Asked<'_>) -> Shown {
    let (name, paper) = paper_asked(asked.request.asked("paper"));
    match pdf::write(&scale_card::alone(asked.tongue, paper)) {
        Ok(bytes) => {
            Shown::Page(to_keep("application/pdf", bytes, format!("scale-card-{name}.pdf")))
        }
        Err(error) => {
            let (sentence, remedy) = error.told(asked.tongue);
            Shown::Page(frame::refused(desk, asked, &Refused { sentence, remedy }))
        }
    }
}

fn show(desk: &Desk, asked: &Asked<'_>) -> Shown {
    Shown::Page(choose(desk, asked, None))
}

/// The page that asks for a picture; with what went wrong with the one before.
fn choose(desk: &Desk, asked: &Asked<'_>, trouble: Option<&Refused>) -> Page {
    let t = asked.tongue;
    let work = html! {
        h1 { (t.say("scan-title")) }
        @if let Some(trouble) = trouble { (leaves::told(trouble)) }
        div.first {
            (HAND_LAYING_LEAVES)
            p.empty { (t.say("scan-why")) }
        }
        p { (t.say("scan-no-scanner")) }
        p {
            a href=(CARD) download { (t.say("scan-card-a4")) } " · "
            a href={(CARD) "?paper=letter"} download { (t.say("scan-card-letter")) }
        }
        (form(asked, trouble.is_none()))
        p.quiet { (t.say("scan-not-kept")) }
    };
    let parts =
        Parts { hand: Some("finds"), ..Parts::new(Screen::Finds, t.say("scan-title"), work) };
    leaves::finished(desk, asked, &parts, trouble)
}

/// The form for a picture.
fn form(asked: &Asked<'_>, main: bool) -> Markup {
    let t = asked.tongue;
    let (names, types): (Vec<_>, Vec<_>) = spinney_measure::formats().unzip();
    html! {
        form.add #measure-form method="post" action=(leaves::PATH) enctype="multipart/form-data" {
            (hidden(&[("back", &"/measure")]))
            div.drop {
                label for="scan" { (t.with("scan-scan", &[("formats", &names.join(", "))])) }
                input #scan type="file" name="scan" accept=(types.join(",")) required
                    data-dropped=(t.say("finds-dropped"));
                p.quiet.drop-here hidden { (t.say("scan-drop-here")) }
            }
            label for="dpi" { (t.say("scan-dpi")) }
            input #dpi name="dpi" maxlength="20" inputmode="decimal" value=(asked.cut("dpi", 20))
                aria-describedby="dpi-why";
            p.quiet #dpi-why { (t.say("scan-dpi-why")) }
            label.tick {
                input #rubbing type="checkbox" name=(RUBBING) value="yes"
                    checked[!asked.request.field(RUBBING).is_empty()];
                " " (t.say("scan-rubbing"))
            }
            button.main[main] #measure-do { (t.say("scan-do")) }
        }
    }
}

/// A picture is measured; or what was found in one is shown again, by other dots per inch where
/// somebody typed some.
fn sent(desk: &Desk, asked: &Asked<'_>) -> Shown {
    let file = asked.request.files.iter().find(|file| !file.bytes.is_empty());
    match file {
        Some(file) => measured(desk, asked, file),
        None => again(desk, asked, |sheet| leaves::page(desk, asked, sheet, None)),
    }
}

/// What would be taken. Whoever typed other dots per inch, or a ruler, wants to see the leaves by them
/// first.
fn look(desk: &Desk, asked: &Asked<'_>) -> Shown {
    let typed = |field: &str| !asked.request.field(field).is_empty();
    match asked.request.field("dpi") {
        _ if leaves::RULER.into_iter().any(typed) => sent(desk, asked),
        "" => again(desk, asked, |sheet| taken::page(desk, asked, sheet, None)),
        _ => sent(desk, asked),
    }
}

/// All leaves again, as they were.
fn back(desk: &Desk, asked: &Asked<'_>) -> Shown {
    match mend::sheet_of(asked) {
        Ok(sheet) => Shown::Page(leaves::page(desk, asked, &sheet, None)),
        Err(trouble) => refused(desk, asked, &trouble),
    }
}

/// The page for one leaf that was found wrongly.
fn mend_one(desk: &Desk, asked: &Asked<'_>) -> Shown {
    again(desk, asked, |sheet| mend::page(desk, asked, sheet, None))
}

/// What was found in a picture, with what is said of it now, on a page.
fn again(desk: &Desk, asked: &Asked<'_>, page: impl FnOnce(&Sheet) -> Page) -> Shown {
    let sheet = match mend::sheet_of(asked) {
        Ok(sheet) => sheet,
        Err(trouble) => return refused(desk, asked, &trouble),
    };
    // Whoever takes something back says nothing new.
    let undone = !asked.request.field(leaves::UNDO).is_empty();
    let sheet = match sheet::dpi_of(asked) {
        _ if undone => sheet,
        Ok(None) => sheet,
        Ok(Some(dpi)) => sheet.at(asked.tongue, dpi),
        Err(typed) => {
            let trouble = odd(asked, &typed);
            return Shown::Page(leaves::page(desk, asked, &sheet, Some(&trouble)));
        }
    };
    Shown::Page(match mend::said(asked, &sheet) {
        Ok(None) => page(&sheet),
        Ok(Some(sheet)) => leaves::page(desk, asked, &sheet, None),
        Err(trouble) => mend::page(desk, asked, &sheet, Some(&trouble)),
    })
}

fn measured(desk: &Desk, asked: &Asked<'_>, file: &Upload) -> Shown {
    let t = asked.tongue;
    let dpi = match sheet::dpi_of(asked) {
        Ok(dpi) => dpi,
        Err(typed) => return refused(desk, asked, &odd(asked, &typed)),
    };
    let said = Said { dpi, rubbing: !asked.request.field(RUBBING).is_empty() };
    let trouble = match Sheet::measured(t, file, said) {
        Ok(sheet) => return Shown::Page(leaves::page(desk, asked, &sheet, None)),
        Err(NoSheet::Many(count)) => {
            Refused::count_with(t, "scan-many", SCREENS_LEAVES, &[("found", &count)])
        }
        Err(NoSheet::Picture(error)) => {
            let name: String = file.name.chars().take(sheet::LONGEST_NAME).collect();
            let (sentence, remedy) = say::picture_error(t, &name, error);
            Refused { sentence, remedy }
        }
    };
    refused(desk, asked, &trouble)
}

fn refused(desk: &Desk, asked: &Asked<'_>, why: &Refused) -> Shown {
    Shown::Page(choose(desk, asked, Some(why)))
}

/// What was typed is no number of dots per inch.
fn odd(asked: &Asked<'_>, typed: &str) -> Refused {
    Refused::with(asked.tongue, "scan-odd-dpi", &[("typed", &typed)])
}
