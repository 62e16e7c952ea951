//! The page of a collection whose file is damaged: what is lost, and what can be saved.
//!
//! From what the host found in the file to a page with two ways on: save all that can be read
//! into a new file, or only what came before the damage. The file itself is never changed, and
//! nothing is read or written here.

use std::fmt::Display;

use maud::html;

use super::frame::{self, Parts, Screen};
use crate::asked::Asked;
use crate::desk::Desk;
use crate::reply::Page;
use crate::request::Request;
use spinney_voice::Tongue;

/// A file that is damaged, and what can be read of it.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct Damage {
    /// The file, as the person called it.
    pub file: String,
    /// The file into which what can be read would be saved.
    pub new: String,
    /// How many steps there were.
    pub steps: usize,
    /// The first step that is damaged, counted from 1; None: no step is.
    pub first: Option<usize>,
    /// When it was done, a day as in `3 October 2026` and a time of the day as in `10:12`; None:
    /// that is not known.
    pub when: Option<(String, String)>,
    /// How many steps are damaged.
    pub lost: usize,
    /// How many pictures are lost; None: that is not known.
    pub pictures_lost: Option<usize>,
    /// Whether it is known how many steps there were.
    pub end_known: bool,
}

/// The address to which the choice is sent; its field `what` is `all` or `before`.
pub const SAVE: &str = "/do/rescue";

/// The page. What went wrong the last time, if anything did, comes first.
pub(crate) fn page(desk: &Desk, request: &Request, damage: &Damage, trouble: &str) -> Page {
    let t = Tongue::for_person(&request.languages);
    let asked = Asked { request, tongue: t, parts: Vec::new() };
    let files: [(&str, &dyn Display); 2] = [("file", &damage.file), ("new", &damage.new)];
    let read = damage.steps - damage.lost;
    let work = html! {
        h1 { (t.say("damaged-title")) }
        @if !trouble.is_empty() { div.finding.mend role="alert" { p { (trouble) } } }
        p { (t.with("damaged-file", &files)) }
        ul #what-is-damaged {
            li { (damage.step(t)) }
            @if damage.lost > 1 { li { (t.count("damaged-more", damage.lost - 1)) } }
            @match damage.pictures_lost {
                Some(0) => {}
                Some(lost) => li { (t.count("damaged-pictures", lost)) }
                None => li { (t.say("damaged-pictures-unknown")) }
            }
            @if !damage.end_known { li { (t.say("damaged-end")) } }
        }
        @if read == 0 {
            p { (t.say("damaged-nothing")) }
        } @else {
            h2 { (t.say("damaged-save")) }
            p { (t.with("damaged-save-help", &files)) }
            (choice("all", &t.count("damaged-all", read), &t.say("damaged-all-help")))
        }
        @if let Some(first) = damage.first.filter(|first| *first > 1) {
            (choice("before", &t.count("damaged-before", first - 1), &t.say("damaged-before-help")))
        }
    };
    let title = t.say("damaged-title");
    let parts = Parts { screen: None, bare: true, ..Parts::new(Screen::Done, title, work) };
    frame::page(desk, &asked, &parts)
}

impl Damage {
    /// Which step is the first that is damaged, in a sentence.
    pub fn step(&self, t: Tongue) -> String {
        let Some(first) = self.first else { return t.say("damaged-no-step") };
        let when = self.when.as_ref().map(|at| when(t, at)).unwrap_or_default();
        let gaps: [(&str, &dyn Display); 3] =
            [("step", &first), ("steps", &self.steps), ("when", &when)];
        match when.is_empty() {
            true => t.with("damaged-step", &gaps[..2]),
            false => t.with("damaged-step-when", &gaps),
        }
    }
}

/// A day and a time of the day, as a person reads them.
pub fn when(t: Tongue, (day, time): &(String, String)) -> String {
    t.with("damaged-when", &[("day", &t.day(day)), ("time", time)])
}

fn choice(what: &str, button: &str, help: &str) -> maud::Markup {
    html! {
        form method="post" action=(SAVE) {
            input type="hidden" name="what" value=(what);
            p { (help) }
            button id={"save-" (what)} { (button) }
        }
    }
}

#[cfg(test)]
mod tests {
    use super::{Damage, page};
    use crate::{Desk, Request};

    fn shown(damage: &Damage, language: &str) -> String {
        let request = Request { languages: vec![language.to_owned()], ..Request::get("/") };
        let page = page(&Desk::default(), &request, damage, "");
        String::from_utf8(page.body).expect("a page is text")
    }

    #[test]
    fn it_says_what_is_lost_and_offers_what_is_not() {
        let damage = Damage {
            file: "walk.spinney".to_owned(),
            new: "walk-saved.spinney".to_owned(),
            steps: 42,
            first: Some(17),
            when: Some(("3 October 2026".to_owned(), "10:12".to_owned())),
            lost: 2,
            pictures_lost: Some(1),
            end_known: true,
        };
        let text = shown(&damage, "en").replace(['\u{2068}', '\u{2069}'], "");
        for said in [
            "Step 17 of 42 cannot be read. It was made on 3 October 2026 at 10:12.",
            "One more step cannot be read.",
            "One picture is lost.",
            "walk-saved.spinney",
            "Save 40 steps",
            "Save 16 steps",
        ] {
            assert!(text.contains(said), "{said} is not in {text}");
        }
        let none = Damage { first: None, lost: 0, pictures_lost: None, ..damage.clone() };
        let text = shown(&none, "de");
        assert!(text.contains("42 Schritte") && !text.contains("save-before"), "{text}");
        assert!(text.contains("Auch Bilder können fehlen."), "{text}");
        let text = shown(&damage, "de");
        assert!(text.contains("Er stammt vom 3. Oktober 2026 um 10:12 Uhr."), "{text}");
        let all = Damage { first: Some(1), lost: 42, ..damage };
        let text = shown(&all, "en");
        assert!(text.contains("Nothing of it can be saved."), "{text}");
        assert!(!text.contains("save-all") && !text.contains("0 steps"), "{text}");
    }
}
