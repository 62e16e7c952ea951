//! Share out: a set of kinds for each group, look-alikes in, every pair parted by the table.
//!
//! A proposal that changes with two numbers, then a key of its own for every group. The sets
//! are found by `spinney_collection::share_out`.

use std::collections::{BTreeMap, BTreeSet};

use maud::{Markup, html};
use spinney_check::Apart;
use spinney_collection::laid::Laid;
use spinney_collection::layer::{Layer, numbers};
use spinney_collection::share_out::{self, Set, Short};
use spinney_model::{Edit, Key, KeyEdit, KeyId, KindId, SecondLooks, TaxonIx, WishField};
use spinney_press::{Booklet, Drawn, Letters, Paper, Sizes, Stamp, try_out};
use spinney_voice::Tongue;

use crate::asked::{Asked, Deed, Handler, Route, Shown, get};
use crate::desk::Desk;
use crate::forms::{Form, hidden, nothing, post};
use crate::pages::finds::deeds::LONGEST_NAME;
use crate::pages::finds::kind::face;
use crate::pages::frame::{self, Parts, Screen};
use crate::reply::Page;
use crate::request::Method;

pub(crate) const ROUTES: &[Route] = &[
    get("/share-out", show),
    (Method::Get, "/share-out/sheets/{key}", Handler::ShowLong(sheets)),
    post(&SHARE_OUT),
];

/// Groups in a class: 4 of 6 to 8 children, unless somebody says otherwise.
const USUAL_GROUPS: usize = 4;
const USUAL_SIZE: usize = 6;
/// Proposals are counted up to here; there are never so many.
const MOST_TIMES: usize = 1_000;
/// Pairs that are named in a sentence; the others are counted.
const PAIRS_NAMED: usize = 6;

/// What the parts of this page look at.
struct View<'a> {
    t: Tongue,
    desk: &'a Desk,
    laid: &'a Laid,
    apart: &'a Apart,
    groups: usize,
    size: usize,
    /// How often it was shared out anew.
    time: usize,
}

impl View<'_> {
    fn kind(&self, taxon: TaxonIx) -> KindId {
        self.laid.kinds[taxon.0]
    }

    fn name(&self, taxon: TaxonIx) -> String {
        self.desk.history.now.name(self.kind(taxon))
    }

    fn pair(&self, one: TaxonIx, other: TaxonIx) -> String {
        let names: [(&str, &dyn std::fmt::Display); 2] =
            [("one", &self.name(one)), ("other", &self.name(other))];
        self.t.with("share-pair", &names)
    }
}

fn show(desk: &Desk, asked: &Asked<'_>) -> Shown {
    let t = asked.tongue;
    let laid = desk.laid();
    let apart = laid.as_ref().and_then(|laid| spinney_check::apart(&laid.matrix));
    let number =
        |name, otherwise| asked.request.asked(name).trim().parse().unwrap_or(otherwise);
    let groups = number("groups", USUAL_GROUPS).clamp(1, MOST_GROUPS);
    let size = number("size", USUAL_SIZE).clamp(*SIZES.start(), *SIZES.end());
    let time = number("time", 0).min(MOST_TIMES);
    let begun = begun(t, desk);
    // Who has sets goes on with them; another proposal waits until it is asked for.
    let folded = begun.is_some() && asked.request.asked("groups").is_empty();
    let enough = desk.history.now.kinds.len() >= *SIZES.start();
    let work = html! {
        h1 { (t.say("share-title")) }
        @if let Some(begun) = &begun { (begun) }
        @match (&laid, &apart) {
            (Some(laid), Some(apart)) if enough => {
                @let view = View { t, desk, laid, apart, groups, size, time };
                @if folded {
                    p { a.button #share-more href={"/share-out?groups=" (groups) "&size=" (size)} { (t.say("share-more")) } }
                } @else {
                    @if begun.is_some() { h2 { (t.say("share-more")) } }
                    p.empty { (t.say("share-why")) }
                    (wanted(&view))
                    (proposal(&view))
                }
            }
            (Some(_), None) => p.empty { (t.say("share-too-many")) },
            _ => {
                p.empty { (t.count("share-too-few", *SIZES.start())) }
                p { a.main href="/finds" { (t.say("nav-finds")) } }
            }
        }
    };
    frame::shown(desk, asked, &Parts::new(Screen::Finds, t.say("share-title"), work))
}

/// Sets that groups have already, and what each does next; None: nobody has one.
fn begun(t: Tongue, desk: &Desk) -> Option<Markup> {
    let collection = &desk.history.now;
    let keys: Vec<_> = collection.keys.iter().filter(|(_, key)| key.kinds.is_some()).collect();
    let section = html! {
        section #begun {
            h2 { (t.say("share-begun")) }
            p { (t.say("share-next")) }
            ul.sets {
                @for (id, key) in &keys {
                    li.set {
                        h3 dir="auto" { (key.name) }
                        p dir="auto" { (names_of(desk, key.kinds.as_deref().unwrap_or_default())) }
                        (ways_on(t, **id, key.questions.is_empty() && !key.finished()))
                    }
                }
            }
        }
    };
    (!keys.is_empty()).then_some(section)
}

fn names_of(desk: &Desk, kinds: &[KindId]) -> String {
    let collection = &desk.history.now;
    let kinds: BTreeSet<KindId> = kinds.iter().copied().collect();
    let there = kinds.into_iter().filter(|kind| collection.kinds.contains_key(kind));
    there.map(|kind| collection.name(kind)).collect::<Vec<_>>().join(", ")
}

/// A group that has asked nothing yet has nothing to print but the sheets for its set.
fn ways_on(t: Tongue, id: KeyId, nothing_asked: bool) -> Markup {
    html! {
        p.ways-on {
            a.button href={"/share-out/sheets/" (id.0)} { (t.say("share-sheets")) } " "
            a.button href={"/heaps?key=" (id.0)} { (t.say("share-to-heaps")) } " "
            @if !nothing_asked { a.button href={"/print?key=" (id.0)} { (t.say("nav-print")) } }
        }
    }
}

/// How many groups, how many kinds each.
fn wanted(view: &View<'_>) -> Markup {
    let t = view.t;
    let (groups, size) = (view.groups, view.size);
    html! {
        form.numbers method="get" action="/share-out" {
            div {
                label for="groups" { (t.say("share-groups")) }
                input #groups type="number" name="groups" min="1" max=(MOST_GROUPS) value=(groups);
            }
            div {
                label for="size" { (t.say("share-size")) }
                input #size type="number" name="size" min=(SIZES.start()) max=(SIZES.end()) value=(size);
            }
            button #share-again name="time" value=(view.time + 1) { (t.say("share-again")) }
        }
    }
}

fn proposal(view: &View<'_>) -> Markup {
    let t = view.t;
    let sets = share_out::share_anew(view.apart, view.groups, view.size, view.time);
    html! {
        (why_short(view, &sets))
        form method="post" action=(SHARE_OUT.path) {
            (hidden(&[]))
            ul.sets {
                @for (at, set) in sets.iter().enumerate() { (one(view, at + 1, set)) }
            }
            (left_over(view, &sets))
            p.quiet { (t.say("share-names-why")) }
            button.main #share-start { (t.say("share-start")) }
        }
    }
}

/// One group's set, with the name of the group to type.
fn one(view: &View<'_>, number: usize, set: &Set) -> Markup {
    let t = view.t;
    let kinds: Vec<String> =
        set.taxa.iter().map(|taxon| view.kind(*taxon).0.to_string()).collect();
    let alike = share_out::look_alikes(view.apart, set);
    html! {
        li.set {
            label for={"name-" (number)} { (t.say("share-name")) }
            input id={"name-" (number)} name={"name-" (number)} maxlength="120" dir="auto"
                value=(t.with("share-group", &[("number", &number)]));
            input type="hidden" name={"set-" (number)} value=(kinds.join(" "));
            ul.slips {
                @for taxon in &set.taxa {
                    @let kind = view.kind(*taxon);
                    li.slip {
                        @if let Some(found) = view.desk.history.now.kinds.get(&kind) { (face(kind, found, Some(view.laid))) }
                        span.name dir="auto" { (view.name(*taxon)) }
                    }
                }
            }
            @if let Some((by, one, other)) = alike.first() {
                p dir="auto" { (t.count_with("share-alike", *by, &[("pair", &view.pair(*one, *other))])) }
            }
        }
    }
}

/// Where a set is smaller than wanted: that it is so, and why.
fn why_short(view: &View<'_>, sets: &[Set]) -> Markup {
    let t = view.t;
    let Some(short) = sets.iter().find(|set| set.short.is_some()) else { return html! {} };
    let sentence = match short.short {
        _ if view.apart.kinds() == short.taxa.len() => "share-short-few",
        Some(Short::NotParted) => "share-short",
        _ => "share-not-found",
    };
    let pairs = share_out::never_together(view.apart);
    let named = pairs.iter().take(PAIRS_NAMED).map(|(one, other)| view.pair(*one, *other));
    let named: Vec<String> = named.collect();
    html! {
        div.finding.look {
            p { (t.count(sentence, short.taxa.len())) }
            @if !named.is_empty() {
                p dir="auto" { (t.with("share-never", &[("pairs", &named.join("; "))])) }
                @if pairs.len() > PAIRS_NAMED { p { (t.count("share-never-more", pairs.len() - PAIRS_NAMED)) } }
                p.remedy { (t.say("share-never-remedy")) }
            }
        }
    }
}

/// Who lies in no set.
fn left_over(view: &View<'_>, sets: &[Set]) -> Markup {
    let taken = |taxon: &TaxonIx| sets.iter().any(|set| set.taxa.contains(taxon));
    let left = (0..view.apart.kinds()).map(TaxonIx).filter(|taxon| !taken(taxon));
    let left: Vec<String> = left.map(|taxon| view.name(taxon)).collect();
    html! {
        @if !left.is_empty() {
            p dir="auto" { (view.t.with("share-left", &[("kinds", &left.join(", "))])) }
        }
    }
}

/// Each set begins a key of its own: the name of each group, and the kinds of its set.
static SHARE_OUT: Form<Vec<(String, Vec<KindId>)>> = Form {
    path: "/do/share-out",
    read: |at| {
        let mut sets = Vec::new();
        for number in 1..=MOST_GROUPS {
            let kinds = numbers(at.asked.request.field(&format!("set-{number}"))).into_iter();
            let there =
                kinds.map(KindId).filter(|kind| at.collection().kinds.contains_key(kind));
            let there: Vec<KindId> = there.take(*SIZES.end()).collect();
            if there.len() < 2 {
                continue;
            }
            let name = match at.asked.typed(&format!("name-{number}"), LONGEST_NAME)? {
                name if name.is_empty() => {
                    at.asked.tongue.with("share-group", &[("number", &number)])
                }
                name => name,
            };
            sets.push((name, there));
        }
        if sets.is_empty() { Err(at.asked.refused("share-nothing")) } else { Ok(sets) }
    },
    rests_on: nothing,
    act: |sets, at| {
        let keys = (at.collection().next_key().0..).map(KeyId);
        let edits = keys.zip(sets).flat_map(|(key, (name, kinds))| {
            let start = KeyEdit::Start(name.clone());
            let edits =
                [start, KeyEdit::Wish(WishField::Group, name), KeyEdit::ForKinds(Some(kinds))];
            edits.map(|edit| Edit::Key(key, edit))
        });
        Ok(Deed::edits(edits, "/share-out#begun"))
    },
};

/// The sheets for a set: numbers to lay beside the finds, and an empty key to write.
fn sheets(desk: &Desk, asked: &Asked<'_>) -> Shown {
    let t = asked.tongue;
    let collection = &desk.history.now;
    let laid = desk.worked.laid(collection);
    let drawn = collection.keys.get(&KeyId(asked.number(0)));
    let Some((drawn, layer)) = drawn
        .zip(laid)
        .and_then(|(drawn, laid)| Some((drawn, Layer::of(collection, &laid, drawn)?)))
    else {
        return Shown::Nothing;
    };
    let mut scene = layer.matrix.scene().clone();
    scene.title = Some(drawn.name.clone());
    let matrix = layer.matrix.with_scene(scene);
    let today = asked.request.today.as_str();
    let booklet = Booklet {
        matrix: &matrix,
        key: &Key::default(),
        walks: &[],
        left_together: &[],
        second_looks: &SecondLooks::default(),
        stamp: Stamp::None,
        date: (!today.is_empty()).then_some(today),
        pictures: &BTreeMap::new(),
        drawn: Drawn::NOTHING,
        letters: Letters::Usual,
        sizes: Sizes::USUAL,
        tongue: t,
    };
    match try_out::set_pdf(&booklet, Paper::A4) {
        Ok(bytes) => {
            let name = t.with("share-file", &[("number", &asked.number(0))]);
            let page = Page { file: Some(name), ..Page::of("application/pdf", bytes) };
            Shown::Page(page)
        }
        Err(_) => Shown::Nothing,
    }
}

/// The most groups at once.
pub(crate) const MOST_GROUPS: usize = 12;
/// Kinds a group: so few make no key, so many fill no lesson.
pub(crate) const SIZES: std::ops::RangeInclusive<usize> = 4..=10;
