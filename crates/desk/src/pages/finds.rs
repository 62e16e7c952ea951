//! Our finds: the kinds, with pictures, names, cautions, where and when they were found.
//!
//! What every sheet says of the visit, all kinds as paper slips, ways to add some; beside them
//! what next, and where people disagree. One main thing makes sense now, then what else does:
//! nothing is offered that would lead to a page which only says that something is missing. Each
//! kind has a page of its own (`kind`).

pub(crate) mod add;
pub(crate) mod deeds;
mod disagree;
pub(crate) mod kind;
pub(crate) mod left;

use deeds::{LONGEST_LIST, LONGEST_TEXT, SCENE_FIELDS};
use maud::{Markup, html};
use spinney_collection::laid::Laid;
use spinney_collection::layer::Layer;
use spinney_collection::{Collection, Kind};
use spinney_model::{AboutField, Edit, KeyId, KindField, KindId, OtherName};
use spinney_voice::Tongue;

use crate::asked::{Asked, Deed, Route, Shown, get};
use crate::desk::Desk;
use crate::forms::{Fact, Form, hidden, post};
use crate::pages::frame::{self, Parts, Screen};
use crate::pages::share_out::SIZES;

pub(crate) const ROUTES: &[Route] = &[
    get("/", show),
    get("/finds", show),
    get("/finds/{kind}", kind::show),
    post(&add::ADD_KINDS),
    post(&add::TAKE_TABLE),
    post(&DESCRIBE),
    post(&disagree::DECIDE),
    post(&deeds::DESCRIBE),
    post(&deeds::ADD_PICTURES),
    post(&deeds::PICTURE_FIRST),
    post(&deeds::PICTURE_AWAY),
    post(&deeds::MERGE),
    post(&deeds::SPLIT),
    post(&deeds::TAKE_OUT),
    post(&deeds::DRAWING_AWAY),
];

fn show(desk: &Desk, asked: &Asked<'_>) -> Shown {
    let t = asked.tongue;
    let laid = desk.laid();
    let collection = &desk.history.now;
    let empty = collection.kinds.is_empty();
    let work = html! {
        h1 { (t.say("nav-finds")) }
        (scene(t, collection))
        (left::list(asked, collection))
        (disagree::one_name(t, collection))
        @if empty {
            div.first {
                (kind::HAND_LAYING_LEAVES)
                p.empty { (t.say("finds-empty")) }
                p { a href="/saved" { (t.say("finds-open-copy")) } }
            }
        }
        ul.slips {
            @for (id, kind) in &collection.kinds {
                (slip(t, &collection.name(*id), *id, kind, laid.as_deref()))
            }
        }
        (kind::drawn_line(t, collection, collection.kinds.keys(), laid.as_deref()))
        @if !collection.specimens.is_empty() {
            p { a #to-leaves href="/leaves" { (t.say("leaves-link")) } " (" (t.count("leaves-count", collection.specimens.len())) ")" }
        }
        (add::forms(t))
    };
    let parts = Parts {
        margin: (!empty).then(|| margin(t, desk, asked, laid.as_deref())),
        hand: Some("finds"),
        ..Parts::new(Screen::Finds, t.say("nav-finds"), work)
    };
    frame::shown(desk, asked, &parts)
}

fn margin(t: Tongue, desk: &Desk, asked: &Asked<'_>, laid: Option<&Laid>) -> Markup {
    html! {
        (next(t, desk, asked, laid))
        (disagree::list(t, &desk.history.now, laid))
        p.for-good { a href="/forget" { (t.say("finds-forget")) } }
    }
}

/// A kind as a paper slip: the picture on top, the name under it.
fn slip(t: Tongue, name: &str, id: KindId, kind: &Kind, laid: Option<&Laid>) -> Markup {
    let field = |field| kind.field(field);
    let found = [KindField::Where, KindField::When, KindField::WhichPlant];
    let found: Vec<&str> =
        found.into_iter().map(field).filter(|text| !text.is_empty()).collect();
    html! {
        li.slip {
            a id={"kind-" (id.0)} href={"/finds/" (id.0)} {
                (kind::face(id, kind, laid))
                span.name dir="auto" { (name) }
            }
            @if field(KindField::Name).is_empty() { p.quiet { (t.say("finds-not-named")) } }
            @let sure = field(KindField::HowSure);
            @if !sure.is_empty() { p.quiet dir="auto" { (sure) } }
            @let scientific = field(KindField::ScientificName);
            @if !scientific.is_empty() { p.scientific lang="la" { (scientific) } }
            (other_names(names_of(laid, id)))
            @let often = field(KindField::HowOften);
            @if !often.is_empty() { p.quiet dir="auto" { (t.with("finds-met", &[("often", &often)])) } }
            @if !found.is_empty() { p.quiet dir="auto" { (found.join(" · ")) } }
            @let caution = field(KindField::Caution);
            @if !caution.is_empty() { p.caution dir="auto" { strong { (t.say("caution")) " " } (caution) } }
        }
    }
}

/// Further names of a kind, as the table reads them.
fn names_of(laid: Option<&Laid>, id: KindId) -> &[OtherName] {
    let taxon = laid.and_then(|laid| Some(laid.matrix.taxon(laid.taxon(id)?)));
    taxon.map_or(&[], |taxon| &taxon.other_names)
}

fn other_names(names: &[OtherName]) -> Markup {
    html! {
        @if !names.is_empty() {
            p.other-names {
                @for name in names {
                    span lang=[name.language.as_deref()] dir="auto" {
                        (name.name)
                        @if let Some(language) = &name.language { " " small { "(" (language) ")" } }
                    }
                    " "
                }
            }
        }
    }
}

/// A way on: where it leads, and what it is called.
type Way = (String, &'static str);

/// How far the collection has come.
enum Stage {
    /// One find: nothing can be told apart.
    OneFind,
    /// Finds and no key.
    NoKey,
    /// A key whose finds are not all told apart yet; whether it asks something.
    Sorting(KeyId, bool),
    /// A key that tells its finds apart, or that the program finishes.
    Sorted(KeyId),
}

impl Stage {
    fn of(desk: &Desk, asked: &Asked<'_>, laid: Option<&Laid>) -> Self {
        let collection = &desk.history.now;
        if collection.kinds.len() < 2 {
            return Self::OneFind;
        }
        let Some(id) = frame::key_asked(desk, asked) else { return Self::NoKey };
        let key = &collection.keys[&id];
        if key.finished() {
            return Self::Sorted(id);
        }
        let layer = laid.and_then(|laid| Layer::of(collection, laid, key));
        let sorted = layer.is_some_and(|l| l.stranded().is_empty() && l.together().is_empty());
        match sorted && !key.questions.is_empty() {
            true => Self::Sorted(id),
            false => Self::Sorting(id, !key.questions.is_empty()),
        }
    }
}

/// The ways on.
fn next(t: Tongue, desk: &Desk, asked: &Asked<'_>, laid: Option<&Laid>) -> Markup {
    let stage = Stage::of(desk, asked, laid);
    let to = |path: &str, id: KeyId| format!("{path}?key={}", id.0);
    let (main, newcomer): (Way, _) = match stage {
        Stage::OneFind => (("#names".to_owned(), "finds-next-second"), None),
        Stage::NoKey => (("/heaps".to_owned(), "finds-to-heaps"), None),
        Stage::Sorting(id, false) => ((to("/heaps", id), "finds-to-heaps"), None),
        Stage::Sorting(id, true) => {
            ((to("/heaps", id), "finds-go-on-sorting"), Some(to("/newcomer", id)))
        }
        Stage::Sorted(id) => ((to("/try", id), "finds-next-try"), Some(to("/newcomer", id))),
    };
    let mut others: Vec<Way> = Vec::new();
    if let Stage::Sorted(id) = stage {
        others.push((to("/print", id), "finds-next-print"));
    }
    others.extend(newcomer.map(|path| (path, "finds-newcomer")));
    if desk.history.now.kinds.len() >= *SIZES.start() {
        others.push(("/share-out".to_owned(), "finds-share-out"));
    }
    if matches!(stage, Stage::NoKey | Stage::Sorting(..)) {
        others.push(("/copy/new".to_owned(), "heaps-copy"));
    }
    html! {
        h2 { (t.say("finds-next")) }
        p { a.main #next href=(main.0) { (t.say(main.1)) } }
        ul.ways-on {
            @for (path, words) in &others { li { a href=(path) { (t.say(words)) } } }
        }
    }
}

/// What is said in lines: what the adults see to before they go, questions in two languages.
const LISTS: [(AboutField, &str); 2] =
    [(AboutField::BeforeYouGo, "before"), (AboutField::SecondQuestions, "second-questions")];
/// Where and when, the caution, and the form to change them.
fn scene(t: Tongue, collection: &Collection) -> Markup {
    let said = [AboutField::Place, AboutField::Season, AboutField::Part];
    let said: Vec<&str> = said
        .into_iter()
        .map(|field| collection.about_field(field))
        .filter(|text| !text.is_empty())
        .collect();
    let caution = collection.about_field(AboutField::Caution);
    html! {
        div.scene {
            @if !said.is_empty() { p dir="auto" { (said.join(" · ")) } }
            @if !caution.is_empty() { p.caution dir="auto" { strong { (t.say("caution")) " " } (caution) } }
            details #scene {
                summary #scene-open { (t.say("finds-scene")) }
                form method="post" action=(DESCRIBE.path) {
                    (hidden(&[]))
                    @for (field, name, label, example) in SCENE_FIELDS {
                        label for={"scene-" (name)} { (t.say(label)) }
                        input id={"scene-" (name)} name=(name) maxlength=(LONGEST_TEXT) dir="auto"
                            placeholder=(t.say(example)) value=(collection.about_field(field));
                    }
                    @let before = collection.about_field(AboutField::BeforeYouGo);
                    label for="scene-before" { (t.say("finds-before")) }
                    textarea id="scene-before" name="before" rows="5" maxlength=(LONGEST_LIST) dir="auto"
                        placeholder=(t.say("finds-before-example")) { "\n" (before) }
                    @if collection.second_language().is_some() {
                        @let second = collection.about_field(AboutField::SecondQuestions);
                        label for="scene-second" { (t.say("finds-second-questions")) }
                        textarea id="scene-second" name="second-questions" rows="3"
                            maxlength=(LONGEST_LIST) dir="auto"
                            placeholder=(t.say("finds-second-questions-example")) { "\n" (second) }
                    }
                    button #scene-keep { (t.say("finds-keep")) }
                }
            }
        }
    }
}

/// Something about the visit is written down.
static DESCRIBE: Form<Vec<(AboutField, String)>> = Form {
    path: "/do/describe-scene",
    read: |at| {
        let sent = SCENE_FIELDS.into_iter().filter(|(_, name, ..)| at.asked.sent(name));
        let texts =
            sent.map(|(field, name, ..)| Ok((field, at.asked.typed(name, LONGEST_TEXT)?)));
        let mut texts = texts.collect::<Result<Vec<_>, _>>()?;
        for (field, name) in LISTS.into_iter().filter(|(_, name)| at.asked.sent(name)) {
            let list = lines(at.asked.request.field(name));
            if list.chars().count() > LONGEST_LIST {
                return Err(at.asked.too_long(&list, LONGEST_LIST));
            }
            texts.push((field, list));
        }
        Ok(texts)
    },
    rests_on: |texts| texts.iter().map(text).collect(),
    act: |texts, at| {
        let changed = texts.into_iter().filter(|typed| at.changes(&text(typed)));
        let edits = changed.map(|(field, text)| Edit::Scene(field, text));
        Ok(Deed::edits(edits, at.asked.back("/finds")))
    },
};

fn text((field, text): &(AboutField, String)) -> Fact<'static> {
    let field = *field;
    Fact::typed(move |of: &Collection| of.about_field(field).to_owned(), text)
}

/// The lines that say something.
fn lines(text: &str) -> String {
    let lines = text.lines().map(|line| line.split_whitespace().collect::<Vec<_>>().join(" "));
    lines.filter(|line| !line.is_empty()).collect::<Vec<_>>().join("\n")
}
