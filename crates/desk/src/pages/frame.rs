//! What every screen has: the head with the ways to other screens, the work, the quiet margin.
//!
//! From the parts of a screen to a page. It also says what could not be done, and that a page
//! does not exist.

use maud::{DOCTYPE, Markup, PreEscaped, html};
use spinney_collection::Collection;
use spinney_model::{AboutField, Finding, KeyId, Severity};
use spinney_voice::{LANGUAGES, Tongue};

use crate::asked::{Asked, Shown};
use crate::desk::Desk;
use crate::forms::{hidden, marked};
use crate::reply::{Page, Refused};
use crate::request::{KeptIn, Method, Request};
use crate::said;

/// The screens, in the order of the work.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(crate) enum Screen {
    Finds,
    Table,
    Heaps,
    Key,
    Words,
    Try,
    Print,
    Done,
}

const SCREENS: [(Screen, &str, &str); 8] = [
    (Screen::Finds, "/finds", "nav-finds"),
    (Screen::Heaps, "/heaps", "nav-heaps"),
    (Screen::Table, "/table", "nav-table"),
    (Screen::Key, "/key", "nav-key"),
    (Screen::Words, "/words", "nav-words"),
    (Screen::Try, "/try", "nav-try"),
    (Screen::Print, "/print", "nav-print"),
    (Screen::Done, "/done", "nav-done"),
];

/// The parts of a screen.
pub(crate) struct Parts {
    pub(crate) screen: Option<Screen>,
    pub(crate) title: String,
    pub(crate) work: Markup,
    /// The quiet margin; None: nothing belongs there.
    pub(crate) margin: Option<Markup>,
    /// What a hand wants here besides what it wants everywhere: `table`.
    pub(crate) hand: Option<&'static str>,
    /// Only the work, for a pupil: no ways to other screens.
    pub(crate) bare: bool,
    /// Without scripts the page asks for itself again after so many seconds.
    pub(crate) again_after: Option<u32>,
}

impl Parts {
    pub(crate) fn new(screen: Screen, title: impl Into<String>, work: Markup) -> Self {
        Self {
            screen: Some(screen),
            title: title.into(),
            work,
            margin: None,
            hand: None,
            bare: false,
            again_after: None,
        }
    }
}

/// A screen as something to show.
pub(crate) fn shown(desk: &Desk, asked: &Asked<'_>, parts: &Parts) -> Shown {
    Shown::Page(page(desk, asked, parts))
}

/// A screen as a page.
pub(crate) fn page(desk: &Desk, asked: &Asked<'_>, parts: &Parts) -> Page {
    let t = asked.tongue;
    let collection = collection_title(desk, t);
    let main = html! {
        main #work tabindex="-1" {
            (parts.work)
        }
    };
    let page = html! {
        (DOCTYPE)
        html lang=(t.tag()) {
            head {
                meta charset="utf-8";
                meta name="viewport" content="width=device-width, initial-scale=1";
                meta name="referrer" content="same-origin";
                @if let Some(seconds) = parts.again_after {
                    noscript { meta http-equiv="refresh" content=(seconds); }
                }
                title { (parts.title) " · " (collection) }
                link rel="icon" href="/assets/icon.svg" type="image/svg+xml";
                link rel="stylesheet" href="/assets/look.css";
                script type="module" src="/assets/hand.js" {}
            }
            body.bare[parts.bare] data-head=(desk.mark()) data-hand=[parts.hand] {
                a.skip href="#work" { (t.say("skip")) }
                @if !parts.bare { (head(desk, asked, parts, &collection)) }
                div.desk.alone[parts.margin.is_none()] {
                    (main)
                    @if let Some(margin) = &parts.margin {
                        aside #margin aria-label=(t.say("margin")) { (margin) }
                    }
                }
                footer {
                    p { (t.say("foot-rules")) }
                    @if !parts.bare {
                        p { (t.say("foot")) }
                        p.copies {
                            @if desk.head() > 0 {
                                a #foot-save href="/saved/copy.zip" download { (t.say("saved-save")) }
                                " "
                            }
                            a #foot-open href="/saved" { (t.say("saved-open")) }
                            @if asked.request.kept.is_in_browser() {
                                " "
                                a #foot-collections href="/collections" { (t.say("pocket-others")) }
                            }
                        }
                        // A page that answers a form holds what a person typed, which a link would lose.
                        @if asked.request.method == Method::Get { (languages(asked)) }
                    }
                }
                div #told.unseen role="status" aria-live="polite" {}
            }
        }
    };
    Page::html(marked(&page.into_string(), desk))
}

/// The languages that the screens speak, each by its own name; the host remembers the choice.
fn languages(asked: &Asked<'_>) -> Markup {
    let here = here(asked);
    let mark = if here.contains('?') { '&' } else { '?' };
    html! {
        ul.languages {
            @for (tag, name) in LANGUAGES {
                li {
                    a href={(here) (mark) "language=" (tag)} lang=(tag) hreflang=(tag)
                        aria-current=[(tag == asked.tongue.tag()).then_some("true")] { (name) }
                }
            }
        }
    }
}

fn collection_title(desk: &Desk, t: Tongue) -> String {
    match desk.history.now.about_field(AboutField::Title) {
        "" => t.say("untitled"),
        title => title.to_owned(),
    }
}

fn head(desk: &Desk, asked: &Asked<'_>, parts: &Parts, collection: &str) -> Markup {
    let t = asked.tongue;
    let history = &desk.history;
    let here = to_come_back(asked);
    let key = match asked.request.asked("key") {
        number if number.parse::<u32>().is_ok() => format!("?key={number}"),
        _ => String::new(),
    };
    html! {
        header {
            div.title {
                (TWIG)
                div.whose-collection {
                    p.collection dir="auto" { (collection) }
                    @if let Some(reminder) = reminder(desk, asked) {
                        p.memory-only { (reminder) }
                    }
                }
                div.back-and-forth {
                    (history_button(t, "undo", history.holding.is_empty(), &here))
                    (history_button(t, "redo", history.undone.is_empty(), &here))
                }
                @if let Some(said) = said::just_taken_back(desk, asked) {
                    p.taken-back role="status" dir="auto" { (said) }
                }
            }
            nav aria-label=(t.say("nav")) {
                ul {
                    @for (screen, path, name) in SCREENS {
                        li {
                            @let of_key = !matches!(screen, Screen::Finds | Screen::Table | Screen::Done);
                            a href={(path) (if of_key { key.as_str() } else { "" })} aria-current=[(parts.screen == Some(screen)).then_some("page")] {
                                (t.say(name))
                            }
                        }
                    }
                }
            }
        }
    }
}

/// Lines of the journal after which a browser's collection wants a copy (again): an evening's
/// sorting, more than somebody would like to do once more. Common practice, no source.
const LINES_WITHOUT_A_COPY: u64 = 30;

/// That a copy is to be saved, where the collection can go without anybody's doing.
fn reminder(desk: &Desk, asked: &Asked<'_>) -> Option<Markup> {
    let t = asked.tongue;
    let save = |text: &str| html! { a href="/saved" { (t.say(text)) } };
    match &asked.request.kept {
        KeptIn::Memory if desk.head() > 0 => {
            Some(html! { (t.say("memory-only")) " " (save("memory-only-save")) })
        }
        KeptIn::Browser { copy: None, .. } if desk.head() >= LINES_WITHOUT_A_COPY => {
            Some(html! { (t.say("pocket-no-copy")) " " (save("pocket-save")) })
        }
        KeptIn::Browser { copy: Some(copy), .. }
            if desk.head().abs_diff(copy.head) >= LINES_WITHOUT_A_COPY =>
        {
            let day = t.with("pocket-old-copy", &[("day", &t.day(&copy.day))]);
            Some(html! { (day) " " (save("pocket-save")) })
        }
        KeptIn::Memory | KeptIn::Browser { .. } | KeptIn::File => None,
    }
}

/// A page of the host's own, dressed as the screens are: one that is about no collection.
pub(crate) fn page_of_host(request: &Request, title: &str, work: Markup) -> Page {
    let tongue = Tongue::for_person(&request.languages);
    let asked = Asked { request, tongue, parts: Vec::new() };
    let work = html! {
        div.title { (TWIG) div.whose-collection { p.collection { "Spinney" } } }
        (work)
        (languages(&asked))
    };
    let parts = Parts { screen: None, bare: true, ..Parts::new(Screen::Finds, title, work) };
    page(&Desk::default(), &asked, &parts)
}

fn history_button(t: Tongue, what: &str, idle: bool, here: &str) -> Markup {
    html! {
        form method="post" action={"/do/" (what)} {
            (hidden(&[("back", &here)]))
            button.quiet id=(what) disabled[idle] { (t.say(what)) }
        }
    }
}

/// Where to come back to. A page that answers a form has no address of its own.
fn to_come_back(asked: &Asked<'_>) -> String {
    match asked.request.method {
        Method::Get => here(asked),
        Method::Post => asked.back("/finds"),
    }
}

/// The address of the page that was asked for, to come back to.
pub(crate) fn here(asked: &Asked<'_>) -> String {
    let request = asked.request;
    if request.query.is_empty() {
        return request.path.clone();
    }
    let mut query = form_urlencoded::Serializer::new(String::new());
    query.extend_pairs(&request.query);
    format!("{}?{}", request.path, query.finish())
}

/// Our mark: a twig with three leaves.
const TWIG: PreEscaped<&str> = PreEscaped(include_str!("../../assets/drawn/twig.svg"));

/// What must be mended or looked at, the worst first; what is only information stays folded.
pub(crate) fn findings(t: Tongue, findings: &[Finding]) -> Markup {
    let of = |severity| findings.iter().filter(move |f: &&Finding| f.severity == severity);
    let quiet: Vec<_> = of(Severity::GoodToKnow).collect();
    html! {
        @for severity in [Severity::MendThis, Severity::WorthALook] {
            @for finding in of(severity) { (finding_slip(t, finding)) }
        }
        @if !quiet.is_empty() {
            details {
                summary { (t.count("good-to-know", quiet.len())) }
                @for finding in quiet { (finding_slip(t, finding)) }
            }
        }
    }
}

/// One thing that was found.
pub(crate) fn finding_slip(t: Tongue, finding: &Finding) -> Markup {
    let (class, word) = match finding.severity {
        Severity::MendThis => ("finding mend", "severity-mend"),
        Severity::WorthALook => ("finding look", "severity-look"),
        Severity::GoodToKnow => ("finding know", "severity-know"),
    };
    let (sentence, remedy) = spinney_voice::finding(finding, t);
    html! {
        div class=(class) {
            p.severity { (t.say(word)) }
            p dir="auto" lang=(t.tag()) { (sentence) }
            p.remedy dir="auto" lang=(t.tag()) { (remedy) }
        }
    }
}

/// Which key a screen is about: `?key=3`; else of the finished ones, else of all, the one that
/// was begun last. Keys that groups have only begun do not stand before the finished one.
pub(crate) fn key_asked(desk: &Desk, asked: &Asked<'_>) -> Option<KeyId> {
    let keys = &desk.history.now.keys;
    let wanted = asked.request.asked("key").parse().ok().map(KeyId);
    let finished = || keys.iter().rev().find(|(_, key)| key.finished()).map(|(id, _)| *id);
    let last = || keys.keys().next_back().copied();
    wanted.filter(|id| keys.contains_key(id)).or_else(finished).or_else(last)
}

/// Chooses the key that a screen is about; nothing where there is no other. `path` is the screen.
pub(crate) fn key_picker(
    t: Tongue,
    collection: &Collection,
    chosen: Option<KeyId>,
    path: &str,
) -> Markup {
    html! {
        @if collection.keys.len() > 1 {
            form.which-key method="get" action=(path) {
                (key_choice(t, collection, chosen))
                button #show-key { (t.say("which-key-show")) }
            }
        }
    }
}

/// The same as a field of a form that asks for more.
pub(crate) fn key_choice(t: Tongue, collection: &Collection, chosen: Option<KeyId>) -> Markup {
    html! {
        label for="which-key" { (t.say("which-key")) }
        select #which-key name="key" {
            @for (id, key) in &collection.keys {
                option value=(id.0) selected[chosen == Some(*id)] {
                    @if key.name.is_empty() { (t.with("heaps-unnamed", &[("number", &id.0)])) }
                    @else { (key.name) }
                    @if key.finished() { " · " (t.say("which-key-finished")) }
                }
            }
        }
    }
}

/// Whether a field of a form is our own, or was chosen or moved and not typed.
fn ours(name: &str) -> bool {
    const OURS: &str = "as asks at at-least back below boxes change character decide finish \
        from head instead key kind number picture place sheet side state sure then tried version walk \
        walked way with";
    OURS.split_whitespace().any(|ours| ours == name)
        || ["b-", "cut-", "found-", "head-", "kind-", "leaf-", "over-", "set-"]
            .iter()
            .any(|ours| name.starts_with(ours))
}

/// Says that there is no such page.
pub(crate) fn not_found(desk: &Desk, asked: &Asked<'_>) -> Page {
    let t = asked.tongue;
    let work = html! {
        h1 { (t.say("not-found")) }
        p { (t.say("not-found-remedy")) }
        p { a.main href="/finds" { (t.say("nav-finds")) } }
    };
    let parts = Parts { screen: None, ..Parts::new(Screen::Finds, t.say("not-found"), work) };
    Page { status: 404, ..page(desk, asked, &parts) }
}

/// Says why something was not done; what was typed can be copied from there.
pub(crate) fn refused(desk: &Desk, asked: &Asked<'_>, why: &Refused) -> Page {
    refused_from(desk, asked, why, &asked.back("/finds"))
}

/// As [`refused`], where it goes back to.
pub(crate) fn refused_from(
    desk: &Desk,
    asked: &Asked<'_>,
    refused: &Refused,
    back: &str,
) -> Page {
    let t = asked.tongue;
    let typed = asked.request.form.iter();
    let typed = typed.filter(|(name, text)| !ours(name) && text.trim().len() > 1);
    let work = html! {
        h1 { (t.say("refused")) }
        div.finding.mend role="alert" {
            p { (refused.sentence) }
            p.remedy { (refused.remedy) }
        }
        p { a.main href=(back) { (t.say("go-back")) } }
        @let typed: Vec<_> = typed.collect();
        @if !typed.is_empty() {
            h2 { (t.say("what-you-typed")) }
            @for (_, text) in typed { pre.typed dir="auto" { (text) } }
        }
    };
    let parts = Parts { screen: None, ..Parts::new(Screen::Finds, t.say("refused"), work) };
    Page { status: 422, ..page(desk, asked, &parts) }
}
