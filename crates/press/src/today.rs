//! Everything for one visit in one file, in the order of use.
//!
//! From a booklet to a PDF that begins with a page for the adult: what is in the file, and how
//! many copies of what. Whom each part is for stands in its list; `crate::copies` works out the
//! numbers. Where nobody said how many children there are, the page says what it assumes.

mod cover;

use crate::copies::{Class, Copies, Cutting, For};
use crate::pdf::{self, PressError};
use crate::setting::Setting;
use crate::sheet::{Page, Sheet};
use crate::try_out::Parts;
use crate::{Booklet, Paper, chart, short_key, visit, words_to_look_at};

/// Everything for one visit as a PDF file.
///
/// **Errors**: [`PressError`] if the file would not be valid.
pub fn pdf(booklet: &Booklet, paper: Paper) -> Result<Vec<u8>, PressError> {
    pdf::write(&sheet(booklet, paper))
}

/// Everything for one visit as boxes in mm.
pub fn sheet(booklet: &Booklet, paper: Paper) -> Sheet {
    let setting = Setting::new(booklet);
    let parts = parts(&setting, paper);
    // The adults' own pages stay as they are: one page is what is read in the doorway.
    let mut pages = cover::pages(&setting.in_usual_letters(), paper, &parts);
    pages.extend(parts.into_iter().flat_map(|part| part.pages));
    let title = setting.t().with("sheet-title-today", &[("title", &setting.title())]);
    setting.sheet(title, pages)
}

/// What is in the file behind its first page, in the order of use; what has no page is left out.
fn parts(setting: &Setting, paper: Paper) -> Vec<Part> {
    let try_out = Parts::of(setting, paper);
    let adults = setting.in_usual_letters();
    let words_to_look_at = words_to_look_at::pages(setting, paper);
    let part = |name, what_for, copies, pages| Part { name, what_for, copies, pages };
    // In large print the answers and the labels are large too, and what the adults read is not: then
    // none stand on one page.
    let usual = !setting.is_large();
    let for_once = Copies::whole(For::Once);
    let both = usual.then(|| visit::with_answers(&adults, paper)).flatten();
    let (visit, answers) = match both {
        Some(both) => {
            (part("sheet-visit-and-answers", "sheet-for-who-leads", for_once, both), Vec::new())
        }
        None => {
            let visit = visit::pages(&adults, paper);
            (part("sheet-visit", "sheet-for-the-adults", for_once, visit), try_out.answers)
        }
    };
    let for_adults = Copies::shared(For::EachAdult);
    let both = usual.then(|| visit::cards_with_labels(&adults, paper)).flatten();
    let (cards, labels) = match both {
        Some(both) => {
            (part("sheet-helper-and-labels", "sheet-cut-before", for_adults, both), Vec::new())
        }
        None => {
            let cards = visit::cards(&adults, paper);
            (part("sheet-helper", "sheet-helper-for", for_adults, cards), try_out.labels)
        }
    };
    let mut parts = vec![
        visit,
        cards,
        part("sheet-answers", "sheet-to-check-by", for_once, answers),
        part("sheet-labels", "sheet-cut-before", Copies::apart(For::Once), labels),
        part(
            "sheet-key",
            "sheet-one-a-group",
            Copies::whole(For::EachGroup),
            match words_to_look_at.is_empty() {
                true => short_key::pages(setting, paper),
                false => short_key::beside_words(setting, paper),
            },
        ),
        part(
            "sheet-chart",
            "sheet-for-the-wall",
            Copies::whole(For::Wall),
            chart::pages(setting, paper),
        ),
        part(
            "sheet-words-to-look-at",
            "sheet-wall-or-table",
            Copies::whole(For::Wall),
            words_to_look_at,
        ),
        part("sheet-tried", "sheet-one-a-group", Copies::whole(For::EachGroup), try_out.list),
        part(
            "sheet-own-key",
            "sheet-to-write-on",
            Copies::whole(For::EachGroup),
            try_out.blank_key,
        ),
    ];
    parts.retain(|part| !part.pages.is_empty());
    parts
}

/// One sheet of the file; its name and what it is for are messages.
struct Part {
    name: &'static str,
    what_for: &'static str,
    copies: Copies,
    pages: Vec<Page>,
}

impl Part {
    /// Sheets of paper, printed on one side.
    fn paper(&self, class: Class) -> usize {
        self.pages.len() * self.copies.of(class)
    }

    /// The same where the printer prints both sides. What is cut and what hangs on the wall has
    /// nothing on its back.
    fn paper_both_sides(&self, class: Class) -> usize {
        let one_side = self.copies.cutting != Cutting::Whole || self.copies.whom == For::Wall;
        let each = if one_side { self.pages.len() } else { self.pages.len().div_ceil(2) };
        each * self.copies.of(class)
    }
}
