//! Lessons: sheets to learn with, before, during and after the visit.
//!
//! From a booklet to a warm-up with pasta, a key half done, a key with three faults and their
//! answers, a kind to add, slips for newcomers, what another group's key was like, what a child can
//! do now, and a page for home. Each says at its top whom it is for and how many copies that
//! makes. None asks for a child's name.
//!
//! Source: the exercises are common practice of lessons, without a source.

mod pages;
pub mod planted;

use crate::copies::{Copies, For};
use crate::setting::Setting;
use crate::sheet::{Page, Sheet};
use crate::{Booklet, Paper};

/// One lesson: its name and whom it is for are messages.
pub(crate) struct Lesson {
    pub(crate) name: &'static str,
    pub(crate) what_for: &'static str,
    pub(crate) copies: Copies,
    set: fn(&Setting, Paper, &Lesson) -> Vec<Page>,
}

/// In the order in which a class needs them.
const LESSONS: [Lesson; 9] = [
    Lesson {
        name: "sheet-lesson-pasta",
        what_for: "sheet-one-a-group",
        copies: Copies::whole(For::EachGroup),
        set: pages::pasta,
    },
    Lesson {
        name: "sheet-lesson-half",
        what_for: "sheet-one-a-group",
        copies: Copies::whole(For::EachGroup),
        set: pages::half_done,
    },
    Lesson {
        name: "sheet-lesson-faults",
        what_for: "sheet-one-a-group",
        copies: Copies::whole(For::EachGroup),
        set: pages::with_faults,
    },
    Lesson {
        name: "sheet-lesson-faults-answers",
        what_for: "sheet-lesson-for-adult",
        copies: Copies::whole(For::Once),
        set: pages::answers,
    },
    Lesson {
        name: "sheet-lesson-add",
        what_for: "sheet-one-a-group",
        copies: Copies::whole(For::EachGroup),
        set: pages::add_one,
    },
    Lesson {
        name: "sheet-newcomer-title",
        what_for: "sheet-one-a-group",
        copies: Copies::shared(For::EachGroup),
        set: pages::newcomers,
    },
    Lesson {
        name: "sheet-lesson-other",
        what_for: "sheet-one-a-group",
        copies: Copies::whole(For::EachGroup),
        set: pages::other_key,
    },
    Lesson {
        name: "sheet-lesson-can",
        what_for: "sheet-lesson-for-adult",
        copies: Copies::whole(For::Once),
        set: pages::can_do,
    },
    Lesson {
        name: "sheet-lesson-home",
        what_for: "sheet-lesson-one-a-child",
        copies: Copies::whole(For::EachChild),
        set: pages::home,
    },
];

/// All of them as boxes in mm.
pub fn sheet(booklet: &Booklet, paper: Paper) -> Sheet {
    let setting = Setting::new(booklet);
    let pages = LESSONS.iter().flat_map(|lesson| (lesson.set)(&setting, paper, lesson));
    let title = setting.t().with("sheet-title-lessons", &[("title", &setting.title())]);
    setting.sheet(title, pages.collect())
}

impl Lesson {
    /// What stands above the title: `Add one kind · one for each group · 7 copies`.
    fn head(&self, setting: &Setting) -> String {
        let copies = self.copies.of(setting.class());
        let (name, what_for) = (setting.say(self.name), setting.say(self.what_for));
        let copies = setting.t().count("sheet-lesson-copies", copies);
        format!("{name} · {what_for} · {copies}")
    }
}
