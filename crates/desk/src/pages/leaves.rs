//! Leaves: those that were kept one by one, how far those of each kind reach, which are far from
//! the others, and where to cut between two kinds.
//!
//! From the specimens of a collection and their spread (worked out by `check`) to a page; what is
//! far from the others stands with its picture beside it, and waits for a person. One leaf has a
//! page of its own (`one`), how it looks on both stands in `leaf`, what can be done to it in `deeds`, the
//! dots in `strip`.

mod deeds;
mod leaf;
mod one;
mod strip;

use deeds::PATH;
use leaf::{again, called, judging, picture};
use maud::{Markup, html};
use spinney_collection::Collection;
use spinney_collection::rows::Rows;
use spinney_model::{CharacterId, CharacterIx, Judged, Outlier, SpecimenId, Spread, SpreadOf};
use spinney_voice::{Tongue, spread as say};

use crate::asked::{Asked, Handler, Route, Shown, get};
use crate::desk::Desk;
use crate::forms::post;
use crate::pages::frame::{self, Parts, Screen};
use crate::request::Method;

pub(crate) const ROUTES: &[Route] = &[
    // Leaving out each leaf of many once takes a while.
    (Method::Get, PATH, Handler::ShowLong(show)),
    get("/leaves/{leaf}", one::show),
    post(&deeds::JUDGE),
    post(&deeds::OF_KIND),
    post(&deeds::DESCRIBE),
    post(&deeds::PUT_RIGHT),
    post(&deeds::TAKE_OUT),
];

/// So many pairs of kinds are shown, those with the worst cuts first.
const PAIRS_SHOWN: usize = 12;
/// So many leaves that are far from the others, and that do not count.
const FAR_SHOWN: usize = 40;

fn show(desk: &Desk, asked: &Asked<'_>) -> Shown {
    let t = asked.tongue;
    let collection = &desk.history.now;
    let rows = Rows::of(collection);
    let work = html! {
        p { a href="/finds" { (t.say("finds-all")) } }
        h1 { (t.say("leaves-title")) }
        @if collection.specimens.is_empty() {
            p.empty { (t.say("leaves-none")) }
            p { a.main href="/measure" { (t.say("scan-link")) } }
        } @else {
            (unread(t, collection, rows.as_ref()))
            @if let Some(rows) = &rows { (spread(t, collection, rows)) }
            (not_counted(t, collection))
            (each(t, collection))
        }
    };
    frame::shown(desk, asked, &Parts::new(Screen::Finds, t.say("leaves-title"), work))
}

fn spread(t: Tongue, collection: &Collection, rows: &Rows) -> Markup {
    let spread = rows.spread();
    html! {
        p { (say::leaves(t, &rows.kinds, &rows.specimens)) }
        (far(t, collection, rows, &spread))
        section {
            h2 { (t.say("leaves-strips")) }
            p.quiet { (t.say("leaves-dots")) }
            @for at in rows.kinds.character_indices() { (strips(t, rows, &spread, at)) }
        }
        section {
            h2 { (t.say("spread-cuts")) }
            (cuts(t, rows, &spread))
        }
    }
}

/// Leaves far from the others of their kind that nobody has looked at yet.
fn far(t: Tongue, collection: &Collection, rows: &Rows, spread: &Spread) -> Markup {
    let open: Vec<(&SpreadOf, &Outlier, SpecimenId)> = spread
        .of_kinds
        .iter()
        .flat_map(|one| one.outliers.iter().map(move |outlier| (one, outlier)))
        .filter_map(|(one, outlier)| {
            let (id, looked_at) = rows.outlier(collection, one.character, outlier);
            (!looked_at).then_some((one, outlier, id))
        })
        .collect();
    html! {
        @if !open.is_empty() {
            section.finding.look #far {
                h2 { (t.say("leaves-far")) }
                p { (t.say("leaves-far-why")) }
                (listed(t, collection, &open, |(.., id)| *id, |(one, outlier, id)| html! {
                    p dir="auto" {
                        (say::far_one(t, &rows.kinds, one, outlier, rows.others(one)))
                        " " (called(t, collection, *id))
                    }
                    (judging(t, collection, *id, rows.characters[one.character.0]))
                }))
            }
        }
    }
}

/// The leaves of all kinds in one character, a strip of dots a kind and part.
fn strips(t: Tongue, rows: &Rows, spread: &Spread, at: CharacterIx) -> Markup {
    let of: Vec<&SpreadOf> = spread.of_kinds.iter().filter(|one| one.character == at).collect();
    let Some(scale) = strip::Scale::of(&of) else { return html! {} };
    let character = rows.kinds.character(at);
    html! {
        h3 dir="auto" { (character.name) }
        table.strips {
            thead.heard {
                tr { th scope="col" { (t.say("leaves-kind")) } th scope="col" { (t.say("leaves-reach")) } }
            }
            tbody {
                @for one in &of {
                    tr.part[one.part.is_some()] {
                        th scope="row" dir="auto" {
                            (one.part.as_deref().unwrap_or(&rows.kinds.taxon(one.taxon).name))
                        }
                        td {
                            (scale.strip(rows, one))
                            span { (say::reach(t, &rows.kinds, one)) }
                        }
                    }
                }
            }
        }
        details {
            summary { (t.say("leaves-mean")) }
            ul { @for one in &of { li dir="auto" { (say::of_kind(t, &rows.kinds, one)) } } }
        }
    }
}

fn cuts(t: Tongue, rows: &Rows, spread: &Spread) -> Markup {
    let Some(cuts) = &spread.cuts else {
        return html! { p { (t.say("spread-too-many-kinds")) } };
    };
    let best = spinney_check::best_of_pairs(cuts);
    let more = best.len().saturating_sub(PAIRS_SHOWN);
    html! {
        @if best.is_empty() { p { (t.say("spread-not-both")) } }
        @for cut in best.iter().take(PAIRS_SHOWN) {
            @let said = say::cut(t, &rows.kinds, cut);
            div.cut {
                @for (at, sentence) in said.iter().enumerate() {
                    @if at == 0 { h3 dir="auto" { (sentence) } } @else { p dir="auto" { (sentence) } }
                }
            }
        }
        @if more > 0 { p.quiet { (t.count("leaves-more-pairs", more)) } }
    }
}

/// What was measured and cannot be read any more, so that it does not count unseen.
fn unread(t: Tongue, collection: &Collection, rows: Option<&Rows>) -> Markup {
    let unread = spinney_collection::rows::unread(collection, rows);
    let text = |id: &SpecimenId, at: &CharacterId| {
        collection.specimens.get(id).and_then(|one| one.measured.get(at)).map(|one| &*one.text)
    };
    html! {
        @if !unread.is_empty() {
            section.finding.mend #unread {
                h2 { (t.say("leaves-unread")) }
                p { (t.say("leaves-unread-why")) }
                (listed(t, collection, &unread, |(id, _)| *id, |(id, at)| html! {
                    p dir="auto" {
                        (kind_of(collection, *id)) ", " (collection.character_name(*at)) ": "
                        (text(id, at).unwrap_or_default()) ". " (called(t, collection, *id))
                    }
                }))
            }
        }
    }
}

/// What somebody said was measured wrongly: it is kept, and can be counted again.
fn not_counted(t: Tongue, collection: &Collection) -> Markup {
    let wrong: Vec<(SpecimenId, CharacterId, &str)> = collection
        .specimens
        .iter()
        .flat_map(|(id, one)| one.measured.iter().map(move |(at, what)| (*id, *at, what)))
        .filter(|(.., what)| what.judged == Some(Judged::Wrong))
        .map(|(id, at, what)| (id, at, what.text.as_str()))
        .collect();
    html! {
        @if !wrong.is_empty() {
            section #not-counted {
                h2 { (t.say("leaves-not-counted")) }
                (listed(t, collection, &wrong, |(id, ..)| *id, |(id, at, text)| html! {
                    p dir="auto" {
                        (kind_of(collection, *id)) ", " (collection.character_name(*at)) ": " (t.decimal(text))
                        ". " (called(t, collection, *id))
                    }
                    (again(t, *id, *at, PATH))
                }))
            }
        }
    }
}

/// The first of these, each beside the picture of its leaf, and how many more there are.
fn listed<T>(
    t: Tongue,
    collection: &Collection,
    all: &[T],
    leaf: impl Fn(&T) -> SpecimenId,
    said: impl Fn(&T) -> Markup,
) -> Markup {
    html! {
        ul.leaf-list {
            @for one in all.iter().take(FAR_SHOWN) {
                li { (picture(t, collection, leaf(one))) div { (said(one)) } }
            }
        }
        @if all.len() > FAR_SHOWN { p { (t.count("finds-left-more", all.len() - FAR_SHOWN)) } }
    }
}

fn kind_of(collection: &Collection, id: SpecimenId) -> String {
    collection.specimens.get(&id).map_or(String::new(), |one| collection.name(one.kind))
}

/// All leaves, kind by kind, each with a way to its page.
fn each(t: Tongue, collection: &Collection) -> Markup {
    html! {
        section {
            h2 { (t.say("leaves-each")) }
            @for kind in collection.kinds.keys() {
                @let of: Vec<SpecimenId> = collection.specimens.iter()
                    .filter(|(_, one)| one.kind == *kind).map(|(id, _)| *id).collect();
                @if !of.is_empty() {
                    details id={"of-" (kind.0)} {
                        summary dir="auto" { (collection.name(*kind)) " (" (t.count("leaves-count", of.len())) ")" }
                        ul.leaf-numbers { @for id in of { li { (called(t, collection, id)) } } }
                    }
                }
            }
        }
    }
}
