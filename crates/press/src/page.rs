//! The phone page: one HTML file that asks one question a screen, and needs nothing else.
//!
//! From a booklet to the bytes of a page that works from a memory stick, without a network.
//! Without scripts it *is* the numbered key, with a link for every "go to"; the script
//! (`page/steps.js`) shows one question of the same document at a time, keeps the trail of
//! answers and follows both ways when somebody cannot tell. It judges nothing: a number that
//! leads nowhere is said to lead nowhere. What is on the screen is read aloud (`page/aloud.js`)
//! where the device has a voice of its own for it.
//!
//! Source: Web Content Accessibility Guidelines 2.2 (W3C 2023), level AA, for contrast,
//! target size, focus and headings; Content Security Policy Level 3 for the `<meta>` lock.

mod ending;
mod front;
mod pictures;
mod question;
mod script;
mod shown;
mod tree;
mod typed;
mod words;

use base64::{Engine as _, engine::general_purpose::STANDARD};
use maud::{DOCTYPE, Markup, PreEscaped, html};
use sha2::{Digest as _, Sha256};
use spinney_model::limits::PHONE_PAGE;
use spinney_voice::Tongue;

use crate::second_language::Second;
use crate::{Booklet, Stamp};

use pictures::Pictures;
use shown::Shown;
use tree::Tree;
use typed::Typed;
use words::Words;

const LOOK: &str = include_str!("page/look.css");
/// One question a screen, and reading it aloud.
const SCRIPT: &str = concat!(include_str!("page/steps.js"), include_str!("page/aloud.js"));
const MARKS: &str = include_str!("page/marks.svg");
/// The typeface for pages (WOFF2), its ordinary weight.
pub const REGULAR: &[u8] = include_bytes!("../fonts/andika-latin-400-normal.woff2");
/// The typeface for pages (WOFF2), bold.
pub const BOLD: &[u8] = include_bytes!("../fonts/andika-latin-700-normal.woff2");

/// The page of a booklet, as one HTML file.
///
/// **Guarantees**: every name and sentence of the booklet is escaped; nothing is fetched;
/// only the one script and the one style sheet that are in it may run (the policy in its head
/// names their SHA-256). Pictures are packed anew and share what is left of two million bytes;
/// the page says how many it has no room for. The same booklet gives the same bytes.
pub fn html(booklet: &Booklet) -> String {
    let tree = Tree::of(booklet);
    let words = Words::of(booklet);
    let second = Second::of(booklet);
    let shown = Shown::of(booklet, &tree);
    let parts = Parts { words: &words, shown: &shown, second: second.as_ref() };
    let bare = with_pictures(booklet, &tree, parts, &Pictures::none()).len();
    let room = PHONE_PAGE.saturating_sub(bare + pictures::TOLD);
    with_pictures(booklet, &tree, parts, &Pictures::of(booklet, &tree, room))
}

/// What questions and ends are made with.
#[derive(Clone, Copy)]
struct Parts<'p> {
    words: &'p Words,
    shown: &'p Shown,
    /// None: the page is in one language.
    second: Option<&'p Second>,
}

impl Parts<'_> {
    /// A text in the second language, marked as such; nothing where there is none.
    fn in_second(self, text: Option<&str>) -> Markup {
        let second = self.second.zip(text);
        html! {
            @if let Some((second, text)) = second {
                p.second lang=(second.tag) dir="auto" { (Typed(text)) }
            }
        }
    }
}

fn with_pictures(
    booklet: &Booklet,
    tree: &Tree,
    parts: Parts<'_>,
    pictures: &Pictures,
) -> String {
    let t = booklet.tongue;
    let style = format!("{}{}{LOOK}", typeface(), draft_in_print(t));
    let untitled = t.say("phone-a-key");
    let title = booklet.matrix.scene().title.as_deref().unwrap_or(&untitled);
    let draft = booklet.stamp == Stamp::Draft;
    let page = html! {
        (DOCTYPE)
        html lang=(t.tag()) {
            head {
                meta charset="utf-8";
                meta http-equiv="Content-Security-Policy" content=(policy(&style));
                meta name="viewport" content="width=device-width, initial-scale=1";
                meta name="referrer" content="no-referrer";
                title { (Typed(title)) }
                link rel="icon" href="data:,";
                style { (PreEscaped(style)) }
            }
            body.draft[draft] {
                (PreEscaped(MARKS))
                (parts.words.symbols())
                (parts.shown.symbols())
                (front::header(booklet, parts, title))
                main #work {
                    div #column {
                        (front::start(booklet, tree, parts, pictures.told(t)))
                        (front::while_walking(t))
                        @for ix in 0..tree.questions.len() {
                            (question::section(booklet, tree, parts, ix))
                        }
                        @for ix in 0..tree.endings.len() {
                            (ending::section(booklet, tree, (parts, pictures), ix))
                        }
                        (front::short_list(t))
                        (parts.words.list())
                    }
                    (front::trail(t))
                }
                (front::footer(booklet))
                p.unseen #spoken role="status" {}
                (script::words(t))
                script { (PreEscaped(SCRIPT)) }
            }
        }
    };
    page.into_string()
}

/// One of the drawn marks (`page/marks.svg`).
fn mark(name: &str) -> Markup {
    html! { svg.mark aria-hidden="true" { use href={"#mark-" (name)} {} } }
}

/// What a stamp says, where there is one.
fn stamp_words(t: Tongue, stamp: Stamp) -> Option<String> {
    match stamp {
        Stamp::None => None,
        Stamp::Draft => Some(t.say("phone-draft")),
        Stamp::TryingOut => Some(t.say("sheet-trying-out")),
    }
}

/// The word that the style sheet puts behind every heading of a draft that is printed.
fn draft_in_print(t: Tongue) -> String {
    format!(":root {{ --draft: \" – {}\"; }}\n", t.say("sheet-draft"))
}

/// The lock: nothing may be fetched, and nothing may run but what is in this file.
fn policy(style: &str) -> String {
    let hash = |text: &str| STANDARD.encode(Sha256::digest(text.as_bytes()));
    format!(
        "default-src 'none'; script-src 'sha256-{}'; style-src 'sha256-{}'; font-src data:; \
         img-src data:; base-uri 'none'; form-action 'none'",
        hash(SCRIPT),
        hash(style)
    )
}

/// The typeface, unaltered and in the file itself.
fn typeface() -> String {
    let face = |weight: u32, bytes: &[u8]| {
        format!(
            "@font-face{{font-family:Andika;font-weight:{weight};font-display:swap;\
             src:url(data:font/woff2;base64,{}) format(\"woff2\")}}\n",
            STANDARD.encode(bytes)
        )
    };
    face(400, REGULAR) + &face(700, BOLD)
}
