//! The words of the screens, in the language that the person reads best.
//!
//! From the names of messages to sentences, by the message files of this crate (Project Fluent
//! syntax 1.0). English is complete; a message that another language lacks is shown in
//! English, and a test insists that none is lacking.

use std::fmt::Display;
use std::sync::OnceLock;

use fluent_bundle::concurrent::FluentBundle;
use fluent_bundle::{FluentArgs, FluentResource, FluentValue};
use spinney_model::within_marks;
use unic_langid::LanguageIdentifier;

/// Languages with a message file, each by its tag and its own name.
pub const LANGUAGES: [(&str, &str); 2] = [("en", "English"), ("de", "Deutsch")];

/// The message files of each language, screen by screen.
const FILES: [&[&str]; 2] = [EN, DE];

const EN: &[&str] = &[
    include_str!("../messages/en/frame.ftl"),
    include_str!("../messages/en/host.ftl"),
    include_str!("../messages/en/pocket.ftl"),
    include_str!("../messages/en/finds.ftl"),
    include_str!("../messages/en/heaps.ftl"),
    include_str!("../messages/en/copy.ftl"),
    include_str!("../messages/en/newcomer.ftl"),
    include_str!("../messages/en/table.ftl"),
    include_str!("../messages/en/starters.ftl"),
    include_str!("../messages/en/key.ftl"),
    include_str!("../messages/en/amounts.ftl"),
    include_str!("../messages/en/words.ftl"),
    include_str!("../messages/en/glossary.ftl"),
    include_str!("../messages/en/try_it.ftl"),
    include_str!("../messages/en/print.ftl"),
    include_str!("../messages/en/sheets.ftl"),
    include_str!("../messages/en/sheets_to_cut.ftl"),
    include_str!("../messages/en/visit.ftl"),
    include_str!("../messages/en/leaves.ftl"),
    include_str!("../messages/en/lessons.ftl"),
    include_str!("../messages/en/phone.ftl"),
    include_str!("../messages/en/done.ftl"),
    include_str!("../messages/en/said.ftl"),
    include_str!("../messages/en/saved.ftl"),
    include_str!("../messages/en/damaged.ftl"),
    include_str!("../messages/en/errors.ftl"),
    include_str!("../messages/en/failures.ftl"),
    include_str!("../messages/en/usage.ftl"),
    include_str!("../messages/en/report.ftl"),
    include_str!("../messages/en/template.ftl"),
    include_str!("../messages/en/explain.ftl"),
    include_str!("../messages/en/weak.ftl"),
    include_str!("../messages/en/spread.ftl"),
    include_str!("../messages/en/measure.ftl"),
    include_str!("../messages/en/scan.ftl"),
    include_str!("../messages/en/forgive.ftl"),
    include_str!("../messages/en/revise.ftl"),
    include_str!("../messages/en/findings.ftl"),
    include_str!("../messages/en/findings_key.ftl"),
    include_str!("../messages/en/findings_link.ftl"),
    include_str!("../messages/en/findings_claim.ftl"),
    include_str!("../messages/en/findings_table.ftl"),
];

const DE: &[&str] = &[
    include_str!("../messages/de/frame.ftl"),
    include_str!("../messages/de/host.ftl"),
    include_str!("../messages/de/pocket.ftl"),
    include_str!("../messages/de/finds.ftl"),
    include_str!("../messages/de/heaps.ftl"),
    include_str!("../messages/de/copy.ftl"),
    include_str!("../messages/de/newcomer.ftl"),
    include_str!("../messages/de/table.ftl"),
    include_str!("../messages/de/starters.ftl"),
    include_str!("../messages/de/key.ftl"),
    include_str!("../messages/de/amounts.ftl"),
    include_str!("../messages/de/words.ftl"),
    include_str!("../messages/de/glossary.ftl"),
    include_str!("../messages/de/try_it.ftl"),
    include_str!("../messages/de/print.ftl"),
    include_str!("../messages/de/sheets.ftl"),
    include_str!("../messages/de/sheets_to_cut.ftl"),
    include_str!("../messages/de/visit.ftl"),
    include_str!("../messages/de/leaves.ftl"),
    include_str!("../messages/de/lessons.ftl"),
    include_str!("../messages/de/phone.ftl"),
    include_str!("../messages/de/done.ftl"),
    include_str!("../messages/de/said.ftl"),
    include_str!("../messages/de/saved.ftl"),
    include_str!("../messages/de/damaged.ftl"),
    include_str!("../messages/de/errors.ftl"),
    include_str!("../messages/de/failures.ftl"),
    include_str!("../messages/de/usage.ftl"),
    include_str!("../messages/de/report.ftl"),
    include_str!("../messages/de/template.ftl"),
    include_str!("../messages/de/explain.ftl"),
    include_str!("../messages/de/weak.ftl"),
    include_str!("../messages/de/spread.ftl"),
    include_str!("../messages/de/measure.ftl"),
    include_str!("../messages/de/scan.ftl"),
    include_str!("../messages/de/forgive.ftl"),
    include_str!("../messages/de/revise.ftl"),
    include_str!("../messages/de/findings.ftl"),
    include_str!("../messages/de/findings_key.ftl"),
    include_str!("../messages/de/findings_link.ftl"),
    include_str!("../messages/de/findings_claim.ftl"),
    include_str!("../messages/de/findings_table.ftl"),
];

/// The messages of the months, each behind its English name, in which hosts say which day
/// it is.
const MONTHS: [(&str, &str); 12] = [
    ("January", "sheet-january"),
    ("February", "sheet-february"),
    ("March", "sheet-march"),
    ("April", "sheet-april"),
    ("May", "sheet-may"),
    ("June", "sheet-june"),
    ("July", "sheet-july"),
    ("August", "sheet-august"),
    ("September", "sheet-september"),
    ("October", "sheet-october"),
    ("November", "sheet-november"),
    ("December", "sheet-december"),
];

type Bundle = FluentBundle<FluentResource>;

/// A language to speak to a person in.
#[derive(Clone, Copy, Debug)]
pub struct Tongue {
    language: usize,
}

impl Tongue {
    /// The language in which pages are compared with each other, whatever a person speaks: who
    /// goes on in another language has still seen the same.
    pub fn of_tokens() -> Self {
        Self::for_person(&[])
    }

    /// The language of what programs read, and of the command line where no other is asked for:
    /// English.
    pub const fn of_terminal() -> Self {
        Self { language: 0 }
    }

    /// Every language that there is.
    pub fn all() -> impl Iterator<Item = Self> {
        (0..LANGUAGES.len()).map(|language| Self { language })
    }

    /// The first of the person's languages that there is; else English.
    pub fn for_person(languages: &[String]) -> Self {
        let known = |wanted: &String| {
            let wanted = wanted.split(['-', '_', ';']).next().unwrap_or("").trim();
            LANGUAGES.iter().position(|(tag, _)| *tag == wanted)
        };
        Self { language: languages.iter().find_map(known).unwrap_or(0) }
    }

    /// The tag of the language: `en`.
    pub fn tag(self) -> &'static str {
        LANGUAGES[self.language].0
    }

    /// Its place among [`LANGUAGES`].
    pub(crate) fn index(self) -> usize {
        self.language
    }

    /// Whether there is a message of this name.
    pub(crate) fn has(self, message: &str) -> bool {
        bundles()[self.language].has_message(message)
    }

    /// A number with a point in it, as it is written in this language.
    pub fn decimal(self, number: &str) -> String {
        match self.tag() {
            "de" => number.replace('.', ","),
            _ => number.to_owned(),
        }
    }

    /// A day as it is read in this language; a text that is no date of the form `3 October 2026` is
    /// left as it was typed.
    pub fn day(self, typed: &str) -> String {
        let parts: Vec<&str> = typed.split(' ').collect();
        let [day, month, year] = parts[..] else { return typed.to_owned() };
        let known = MONTHS.iter().find(|(name, _)| *name == month);
        let number = |text: &str| !text.is_empty() && text.bytes().all(|b| b.is_ascii_digit());
        let Some((_, month)) = known.filter(|_| number(day) && number(year)) else {
            return typed.to_owned();
        };
        let month = self.say(month);
        self.with("sheet-day", &[("day", &day), ("month", &month), ("year", &year)])
    }

    /// A message without anything to fill in.
    pub fn say(self, message: &str) -> String {
        self.fill(message, None)
    }

    /// A message with texts to fill in.
    pub fn with(self, message: &str, texts: &[(&str, &dyn Display)]) -> String {
        let mut args = FluentArgs::new();
        for (name, text) in texts {
            args.set(*name, held(text.to_string()));
        }
        self.fill(message, Some(&args))
    }

    /// A message about so many things.
    pub fn count(self, message: &str, count: usize) -> String {
        let mut args = FluentArgs::new();
        args.set("count", FluentValue::from(count));
        self.fill(message, Some(&args))
    }

    /// A message about so many things, with texts to fill in.
    pub fn count_with(
        self,
        message: &str,
        count: usize,
        texts: &[(&str, &dyn Display)],
    ) -> String {
        let mut args = FluentArgs::new();
        args.set("count", FluentValue::from(count));
        for (name, text) in texts {
            args.set(*name, held(text.to_string()));
        }
        self.fill(message, Some(&args))
    }

    /// What opens a quotation; the mark that does so in English closes one in German.
    fn opening_mark(self) -> char {
        match self.tag() {
            "de" => '„',
            _ => '“',
        }
    }

    fn fill(self, message: &str, args: Option<&FluentArgs<'_>>) -> String {
        #[cfg(test)]
        tests::note(message);
        for bundle in [&bundles()[self.language], &bundles()[0]] {
            if let Some(pattern) = bundle.get_message(message).and_then(|found| found.value()) {
                let mut errors = Vec::new();
                let text = bundle.format_pattern(pattern, args, &mut errors).into_owned();
                debug_assert!(errors.is_empty(), "the message {message} lacks a text");
                return let_go(text, self.opening_mark());
            }
        }
        debug_assert!(false, "there is no message {message}");
        message.to_owned()
    }
}

/// Around a text with quotation marks of its own, while it is filled in.
const HELD: (char, char) = ('\u{2}', '\u{3}');

/// A text to fill in. Where it has quotation marks, it is held until it is known whether the
/// message puts it between quotation marks, too.
fn held(text: String) -> String {
    match text.contains(['“', '”', '„', '"']) {
        true => format!("{}{text}{}", HELD.0, HELD.1),
        false => text,
    }
}

/// The message with what was held: within its quotation marks there are single ones only.
fn let_go(text: String, opening: char) -> String {
    let mut out = String::new();
    let mut rest = text.as_str();
    while let Some((before, held)) = rest.split_once(HELD.0) {
        let (held, after) = held.split_once(HELD.1).unwrap_or((held, ""));
        out.push_str(before);
        match before.ends_with(opening) {
            true => out.push_str(&within_marks(held)),
            false => out.push_str(held),
        }
        rest = after;
    }
    out.push_str(rest);
    out
}

fn bundles() -> &'static [Bundle] {
    static BUNDLES: OnceLock<Vec<Bundle>> = OnceLock::new();
    BUNDLES.get_or_init(|| {
        LANGUAGES.iter().zip(FILES).map(|((tag, _), files)| bundle(tag, files)).collect()
    })
}

fn bundle(tag: &str, files: &[&str]) -> Bundle {
    let tag: LanguageIdentifier = tag.parse().expect("the tags above are language tags");
    let mut bundle = Bundle::new_concurrent(vec![tag]);
    // Marks around every filled-in text are for mixed directions; they would be copied along
    // and spoil searching. Names are isolated by the page (`dir="auto"`) where that matters.
    bundle.set_use_isolating(false);
    for file in files {
        let messages = FluentResource::try_new((*file).to_owned())
            .unwrap_or_else(|(_, errors)| panic!("messages are not well-formed: {errors:?}"));
        bundle.add_resource(messages).expect("no message stands twice");
    }
    bundle
}

#[cfg(test)]
pub(crate) mod tests;
