//! Print: the sheets that there are, each with a preview of every page, and as files.
//!
//! From a key to a booklet for the press, and from there to PDF, pages for a phone, text and
//! tables. The preview is drawn from the same boxes as the PDF.

mod booklet;
mod how_many;
mod second;
mod sizes;

use std::sync::Arc;

use booklet::Bound;
use maud::{Markup, html};
use sizes::SizesTyped;
use spinney_exchange::{json, key_text, table};
use spinney_model::{Finding, KeyId};
use spinney_press::sheet::Sheet;
use spinney_press::sheet::ink::Inks;
use spinney_press::sheets::{Printing, SHEETS, SheetKind, Use};
use spinney_press::{Booklet, Letters, Paper, PressError, page, svg};
use spinney_voice::Tongue;

use crate::asked::{Asked, Handler, Route, Shown};
use crate::desk::Desk;
use crate::forms::post;
use crate::pages::frame::{self, Parts, Screen};
use crate::pages::key::deeds::trying_out;
use crate::pages::key::keyed::Together;
use crate::pages::saved::to_keep;
use crate::reply::Page;
use crate::request::Method;

pub(crate) const ROUTES: &[Route] = &[
    (Method::Get, "/print", Handler::ShowLong(show)),
    (Method::Get, "/print/{file}", Handler::ShowLong(file)),
    post(&how_many::COUNT),
    post(&second::TYPED),
];

/// What is to be printed.
struct Wanted {
    t: Tongue,
    key: KeyId,
    sheet: &'static SheetKind,
    paper: &'static str,
    inks: (&'static str, Inks),
    letters: (&'static str, Letters),
    sizes: SizesTyped,
    page: usize,
}

impl Wanted {
    fn of(desk: &Desk, asked: &Asked<'_>) -> Option<Self> {
        let key = frame::key_asked(desk, asked)?;
        let sheet = sheet_asked(asked.request.asked("sheet"));
        let (paper, _) = paper_asked(asked.request.asked("paper"));
        let page = asked.request.asked("page").parse().unwrap_or(1);
        let inks = inks_asked(asked.request.asked("ink"));
        let letters = letters_asked(asked.request.asked("letters"));
        let sizes = SizesTyped::of(asked);
        Some(Self { t: asked.tongue, key, sheet, paper, inks, letters, sizes, page })
    }

    fn address(&self, sheet: &SheetKind, paper: &str, page: usize) -> String {
        let (key, sheet, wishes) = (self.key.0, sheet.name, self.wishes());
        format!("/print?key={key}&sheet={sheet}&paper={paper}&{wishes}&page={page}")
    }

    fn file(&self, name: &str) -> String {
        let (key, paper, wishes) = (self.key.0, self.paper, self.wishes());
        format!("/print/{name}?key={key}&paper={paper}&{wishes}")
    }

    /// The inks, the letters and the sizes, as an address has them.
    fn wishes(&self) -> String {
        format!("ink={}&letters={}{}", self.inks.0, self.letters.0, self.sizes.address())
    }

    fn printing(&self) -> Printing {
        Printing {
            paper: paper_asked(self.paper).1,
            inks: self.inks.1,
            letters: self.letters.1,
            sizes: self.sizes.sizes(),
        }
    }

    /// Why the sheet is not in the letters that were wished; None: it is.
    fn not_large(&self) -> Option<&'static str> {
        self.sheet.not_large.filter(|_| self.letters.1 == Letters::Large)
    }
}

fn show(desk: &Desk, asked: &Asked<'_>) -> Shown {
    let t = asked.tongue;
    let Some(wanted) = Wanted::of(desk, asked) else { return nothing(desk, asked) };
    let bound = match Bound::of(desk, asked, wanted.key) {
        Ok(Some(bound)) => bound,
        Ok(None) => return nothing(desk, asked),
        Err(pictures) => return Shown::NeedPictures(pictures),
    };
    if bound.nothing_asked() {
        return Shown::Page(nothing_asked(desk, asked, wanted.key));
    }
    let refused = wanted.sheet.not_printed(&bound.booklet(), wanted.printing());
    let of = match refused {
        None => pressed(desk, asked, &wanted, &bound).pages.len(),
        Some(_) => 0,
    };
    let page = wanted.page.clamp(1, of.max(1));
    let work = html! {
        h1 { (t.say("print-title")) " · " span dir="auto" { (desk.history.now.keys[&wanted.key].name) } }
        @if bound.draft() { div.finding.mend { p.severity { (t.say("severity-mend")) } p { (t.say("print-draft")) } } }
        (Together {
            t,
            collection: &desk.history.now,
            key: wanted.key,
            made: &bound.made,
        }.slip())
        (trying_out(
            t,
            wanted.key,
            &bound.made,
            &desk.history.now.keys[&wanted.key],
            &wanted.address(wanted.sheet, wanted.paper, page),
        ))
        (how_many::form(
            t,
            &desk.history.now,
            &wanted.address(wanted.sheet, wanted.paper, page),
        ))
        (second::form(t, &bound, &wanted.address(wanted.sheet, wanted.paper, page)))
        div.printing {
            (choices(desk, &wanted, &bound.booklet()))
            @match refused {
                None => (preview(&wanted, page, of)),
                Some(why) => (not_printed(&wanted, why)),
            }
        }
    };
    frame::shown(desk, asked, &Parts::new(Screen::Print, t.say("nav-print"), work))
}

fn nothing(desk: &Desk, asked: &Asked<'_>) -> Shown {
    let t = asked.tongue;
    let work = html! {
        h1 { (t.say("nav-print")) }
        p.empty { (t.say("print-no-key")) }
        p { a.main href="/key" { (t.say("nav-key")) } }
    };
    frame::shown(desk, asked, &Parts::new(Screen::Print, t.say("nav-print"), work))
}

/// A key without a question would be a bad sheet: what is missing is said instead.
fn nothing_asked(desk: &Desk, asked: &Asked<'_>, key: KeyId) -> Page {
    let t = asked.tongue;
    let work = html! {
        h1 { (t.say("print-title")) " · " span dir="auto" { (desk.history.now.keys[&key].name) } }
        p.empty { (t.say("print-nothing-asked")) }
        p.buttons {
            a.main #to-heaps href={"/heaps?key=" (key.0)} { (t.say("key-to-heaps")) }
            a.button #set-sheets href={"/share-out/sheets/" (key.0)} { (t.say("share-sheets")) }
        }
        p.quiet { (t.say("print-set-sheets")) }
        (frame::key_picker(t, &desk.history.now, Some(key), "/print"))
    };
    frame::page(desk, asked, &Parts::new(Screen::Print, t.say("nav-print"), work))
}

/// Which key, which sheet, on what paper; and the files.
fn choices(desk: &Desk, wanted: &Wanted, booklet: &Booklet<'_>) -> Markup {
    let t = wanted.t;
    let keys = &desk.history.now.keys;
    html! {
        div.choices {
            @let offered: Vec<_> =
                SHEETS.iter().filter(|sheet| (sheet.has_something)(booklet)).collect();
            @for alike in offered.chunk_by(|one, next| one.used == next.used) {
                @if let Some(heading) = heading(alike[0].used) { h2.of-sheets { (t.say(heading)) } }
                ul.sheets {
                    @for sheet in alike {
                        @let (title, about) = messages(sheet);
                        li {
                            a href=(wanted.address(sheet, wanted.paper, 1)) id={"sheet-" (sheet.name)}
                                aria-current=[(sheet.name == wanted.sheet.name).then_some("true")] {
                                strong { (t.say(&title)) }
                                span.quiet { (t.say(&about)) }
                            }
                        }
                    }
                }
            }
            form.paper method="get" action="/print" {
                input type="hidden" name="sheet" value=(wanted.sheet.name);
                @if keys.len() > 1 { (frame::key_choice(t, &desk.history.now, Some(wanted.key))) }
                @else { input type="hidden" name="key" value=(wanted.key.0); }
                label for="paper" { (t.say("print-paper")) }
                select #paper name="paper" {
                    @for (name, _) in PAPERS { option value=(name) selected[name == wanted.paper] { (name.to_uppercase()) } }
                }
                label for="ink" { (t.say("print-ink")) }
                select #ink name="ink" {
                    @for (name, _, words) in INKS {
                        option value=(name) selected[name == wanted.inks.0] { (t.say(words)) }
                    }
                }
                label for="letters" { (t.say("print-letters")) }
                select #letters name="letters" {
                    @for (name, _, words) in LETTERS {
                        option value=(name) selected[name == wanted.letters.0] { (t.say(words)) }
                    }
                }
                (wanted.sizes.fields(t))
                button #show { (t.say("print-show")) }
            }
            h2 { (t.say("print-files")) }
            ul.files {
                @for (name, about) in FILES {
                    li { a href=(wanted.file(name)) download { (t.say(about)) } }
                }
            }
            h2 #tablets { (t.say("print-tablets")) }
            p { a.button #for-tablets href=(wanted.file("phone.html")) download { (t.say("print-tablets-get")) } }
            ol.tablets {
                @for line in ["print-tablets-cable", "print-tablets-stick", "print-tablets-web", "print-tablets-open"] {
                    li { (t.say(line)) }
                }
            }
        }
    }
}

/// One page as it will be printed, and the ways to the others.
fn preview(wanted: &Wanted, page: usize, of: usize) -> Markup {
    let t = wanted.t;
    let title = t.say(&messages(wanted.sheet).0);
    let place = t.with("print-page", &[("page", &page), ("of", &of)]);
    let turn = |to: usize| wanted.address(wanted.sheet, wanted.paper, to);
    let picture = format!("{}&page={page}", wanted.file(&format!("{}.svg", wanted.sheet.name)));
    html! {
        section.preview aria-labelledby="preview-title" {
            div.preview-head {
                h2 #preview-title { (title) }
                a.main #download href=(wanted.file(&format!("{}.pdf", wanted.sheet.name))) download {
                    (t.say("print-download"))
                }
            }
            nav.pages aria-label=(t.say("print-pages")) {
                @if page > 1 { a.button #page-before href=(turn(page - 1)) { (t.say("print-before")) } }
                span { (place) }
                @if page < of { a.button #page-after href=(turn(page + 1)) { (t.say("print-after")) } }
            }
            @if let Some(why) = wanted.not_large() { p #not-large { (t.say(why)) } }
            img.page src=(picture) alt=(format!("{title}, {place}"));
        }
    }
}

/// Why there is no such sheet of this key, where its preview would be.
fn not_printed(wanted: &Wanted, why: &str) -> Markup {
    let t = wanted.t;
    html! {
        section.preview aria-labelledby="preview-title" {
            div.preview-head { h2 #preview-title { (t.say(&messages(wanted.sheet).0)) } }
            p #not-printed { (t.say(why)) }
            p.remedy { (t.say(&format!("{why}-remedy"))) }
        }
    }
}

/// The sheet that is looked at, set once and kept until something changes.
fn pressed(desk: &Desk, asked: &Asked<'_>, wanted: &Wanted, bound: &Bound) -> Arc<Sheet> {
    let pictures: Vec<&str> = bound.pictures.keys().map(String::as_str).collect();
    let from = format!(
        "{} {} {} {} {} {} {}",
        wanted.t.tag(),
        wanted.key.0,
        wanted.sheet.name,
        wanted.paper,
        wanted.wishes(),
        asked.request.today,
        pictures.join(" ")
    );
    desk.worked.pressed(from, || wanted.sheet.printed(&bound.booklet(), wanted.printing()))
}

/// A file to keep, or the picture of a page.
fn file(desk: &Desk, asked: &Asked<'_>) -> Shown {
    let Some(key) = frame::key_asked(desk, asked) else { return Shown::Nothing };
    let bound = match Bound::of(desk, asked, key) {
        Ok(Some(bound)) => bound,
        Ok(None) => return Shown::Nothing,
        Err(pictures) => return Shown::NeedPictures(pictures),
    };
    if bound.nothing_asked() {
        return Shown::Page(nothing_asked(desk, asked, key));
    }
    let name = asked.parts[0];
    let Some((stem, ending)) = name.rsplit_once('.') else { return Shown::Nothing };
    let sheet = SHEETS.iter().find(|sheet| sheet.name == stem);
    let wanted = |sheet| Some(Wanted { sheet, ..Wanted::of(desk, asked)? });
    match (sheet.and_then(wanted), ending) {
        (Some(wanted), "svg") => {
            let pages = &pressed(desk, asked, &wanted, &bound).pages;
            let page = wanted.page.checked_sub(1).and_then(|page| pages.get(page));
            page.map_or(Shown::Nothing, |page| {
                Shown::Page(Page::of("image/svg+xml", svg::write(page).into_bytes()))
            })
        }
        (Some(wanted), "pdf") => {
            let (sheet, paper) = (wanted.sheet, wanted.paper);
            if let Some(why) = sheet.not_printed(&bound.booklet(), wanted.printing()) {
                return Shown::Page(frame::refused(desk, asked, &asked.refused(why)));
            }
            let set = pressed(desk, asked, &wanted, &bound);
            match spinney_press::pdf::write(&set) {
                Ok(bytes) => {
                    let name = format!("{}-{}-{paper}.pdf", bound.file_name(), sheet.name);
                    Shown::Page(to_keep("application/pdf", bytes, name))
                }
                Err(error) => failed(desk, asked, &error),
            }
        }
        _ => match as_file(&bound, name) {
            Some((kind, bytes)) => {
                Shown::Page(to_keep(kind, bytes, format!("{}-{name}", bound.file_name())))
            }
            None => Shown::Nothing,
        },
    }
}

fn failed(desk: &Desk, asked: &Asked<'_>, error: &PressError) -> Shown {
    let (sentence, remedy) = error.told(asked.tongue);
    let refused = crate::reply::Refused { sentence, remedy };
    Shown::Page(frame::refused(desk, asked, &refused))
}

/// Files that are not for a printer, each with the message of what it is.
const FILES: [(&str, &str); 4] = [
    ("phone.html", "print-phone"),
    ("key.txt", "print-text"),
    ("key.json", "print-json"),
    ("table.csv", "print-csv"),
];

/// The papers.
const PAPERS: [(&str, Paper); 3] =
    [("a4", Paper::A4), ("letter", Paper::Letter), ("a3", Paper::A3)];

/// The inks, each with the message of what it is.
const INKS: [(&str, Inks, &str); 2] =
    [("colour", Inks::Colour, "print-ink-colour"), ("black", Inks::Black, "print-ink-black")];

/// The letters, each with the message of what they are.
const LETTERS: [(&str, Letters, &str); 2] = [
    ("usual", Letters::Usual, "print-letters-usual"),
    ("large", Letters::Large, "print-letters-large"),
];

/// The letters of a name; the usual ones where there are no such letters.
fn letters_asked(name: &str) -> (&'static str, Letters) {
    let (name, letters, _) =
        LETTERS.into_iter().find(|(known, ..)| *known == name).unwrap_or(LETTERS[0]);
    (name, letters)
}

/// The inks of a name; colour where there are no such inks.
fn inks_asked(name: &str) -> (&'static str, Inks) {
    let (name, inks, _) =
        INKS.into_iter().find(|(known, ..)| *known == name).unwrap_or(INKS[0]);
    (name, inks)
}

/// What stands over the sheets of one use; None: they come first, and say it themselves.
fn heading(used: Use) -> Option<&'static str> {
    match used {
        Use::Today => None,
        Use::Key => Some("print-of-key"),
        Use::Words => Some("print-of-words"),
        Use::Sorting => Some("print-of-sorting"),
        Use::Measuring => Some("print-of-measuring"),
        Use::Large => Some("print-of-large"),
        Use::OtherForms => Some("print-of-forms"),
        Use::Around => Some("print-of-around"),
    }
}

/// The messages of a sheet's name, and of what it is for.
fn messages(sheet: &SheetKind) -> (String, String) {
    (format!("print-{}", sheet.name), format!("print-{}-about", sheet.name))
}

/// The sheet of a name; the first where there is no such sheet.
fn sheet_asked(name: &str) -> &'static SheetKind {
    SHEETS.iter().find(|sheet| sheet.name == name).unwrap_or(&SHEETS[0])
}

/// The paper of a name; A4 where there is no such paper.
pub(super) fn paper_asked(name: &str) -> (&'static str, Paper) {
    PAPERS.into_iter().find(|(known, _)| *known == name).unwrap_or(PAPERS[0])
}

/// A file by its name, with its media type.
fn as_file(bound: &Bound, name: &str) -> Option<(&'static str, Vec<u8>)> {
    let (made, matrix) = (&bound.made, &bound.matrix);
    let (kind, text) = match name {
        "phone.html" => ("text/html; charset=utf-8", page::html(&bound.booklet())),
        "key.txt" => {
            let language = bound.booklet().tongue.tag();
            ("text/plain; charset=utf-8", key_text::write_in(language, &made.key, matrix))
        }
        "key.json" => ("application/json", as_json(bound)),
        "table.csv" => ("text/csv; charset=utf-8", table::write(matrix).table),
        _ => return None,
    };
    Some((kind, text.into_bytes()))
}

fn as_json(bound: &Bound) -> String {
    let (made, matrix) = (&bound.made, &bound.matrix);
    let effort = made.opinion.effort.map(|effort| json::Effort {
        total: effort.total,
        mean_questions: effort.mean_questions,
        longest: effort.longest,
    });
    json::report(
        &json::Report {
            key: Some(&made.key),
            claim: made.claim.as_ref(),
            effort: if made.claim.is_some() { None } else { effort },
            findings: made.findings(),
            questions_checked: Some((made.opinion.checked, made.opinion.questions)),
            refused: &made.refused,
            ..json::Report::of(matrix)
        },
        in_english,
    )
}

/// Files that programs read are in English, whatever the screens speak.
fn in_english(finding: &Finding) -> (String, String) {
    spinney_voice::finding(finding, Tongue::of_terminal())
}
