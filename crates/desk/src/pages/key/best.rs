//! How good the key is: how many questions per find, and whether another could do with fewer; the
//! page of a search that goes on, with a stop; two keys side by side.
//!
//! From the claim of the search and the second opinion to sentences.

use std::sync::Arc;

use maud::{Markup, html};
use spinney_check::Proof;
use spinney_collection::Collection;
use spinney_collection::keys::{Ending, HEAPS_A_PAGE, Made, a_find};
use spinney_model::{Claim, KeyId, Share, Stopped, Wish, Wishes};
use spinney_voice::Tongue;
use spinney_voice::amounts::{in_whole, one_decimal, price};

use crate::asked::{Asked, Shown};
use crate::desk::{Desk, Work};
use crate::forms::hidden;
use crate::pages::frame::{self, Parts, Screen};
use crate::pages::heaps::card::answer_tab;
use crate::pages::heaps::deeds::{FINISH, finish_fields};
use crate::pages::key::keyed::{Keyed, Together, names};
use crate::reply::Page;

/// A key in four numbers.
struct Numbers {
    questions: usize,
    /// Questions per find; None: it cannot be said as long as something must be mended.
    mean: Option<Share>,
    longest: Option<u32>,
    to_mend: usize,
}

impl Numbers {
    fn of(made: &Made) -> Self {
        let effort = made.opinion.effort.as_ref();
        let claim = made.claim.as_ref();
        let mend = spinney_model::Severity::MendThis;
        Self {
            questions: made.key.couplets.len(),
            mean: claim.map(|c| c.mean_questions).or(effort.map(|e| e.mean_questions)),
            longest: claim.map(|c| c.longest).or(effort.map(|e| e.longest)),
            to_mend: made.findings().iter().filter(|found| found.severity == mend).count(),
        }
    }
}

/// The key in a line, whether it is the best, and who finds the rest.
pub(super) fn standing(key: &Keyed<'_>) -> Markup {
    let t = key.t;
    let numbers = Numbers::of(&key.made);
    let kinds = key.made.layer.kinds.len();
    html! {
        div.standing {
            ul.in-numbers {
                li { strong { (t.count_with("key-size", numbers.questions, &[("kinds", &kinds)])) } }
                @if let (Some(mean), true) = (numbers.mean, numbers.questions > 0) {
                    @let mean = in_whole(mean);
                    li {
                        @if mean == 1 { (t.say("key-mean-one")) }
                        @else { (t.with("key-mean", &[("mean", &mean)])) }
                    }
                }
                @if let (Some(longest), true) = (numbers.longest, numbers.questions > 0) {
                    li { (t.count("key-longest", longest as usize)) }
                }
            }
            @if let Some(claim) = &key.made.claim { (verdict(key, claim)) } @else { (as_drawn(key)) }
            @if can_finish(key) {
                form method="post" action=(FINISH.path) {
                    (finish_fields(key.id, key.drawn(), &key.address(None)))
                    button.main[!key.drawn().finished()] #finish {
                        (t.say(if key.drawn().finished() { "key-unfinish" } else { "key-finish" }))
                    }
                }
            }
        }
    }
}

/// A group's own key: first whether it works, and by name what it leaves together.
fn as_drawn(key: &Keyed<'_>) -> Markup {
    let t = key.t;
    let together = key.together();
    let works = together.none() && key.made.opinion.works();
    html! {
        p.verdict.sure[works] {
            (t.say(if works { "key-as-drawn-works" } else { "key-as-drawn" }))
            @if let Some(sentence) = together.sentence() { " " span dir="auto" { (sentence) } }
        }
    }
}

/// Whether there is something to finish, or to leave to the group again: not where its key tells
/// everything apart, nor where nobody drew anything and it would be left empty.
fn can_finish(key: &Keyed<'_>) -> bool {
    match key.drawn().finished() {
        true => !key.drawn().questions.is_empty(),
        false => !key.together().none() || !key.made.layer.stranded().is_empty(),
    }
}

fn verdict(key: &Keyed<'_>, claim: &Claim) -> Markup {
    let t = key.t;
    let together = key.together();
    let by_choice = claim.wishes != Wishes::default();
    let touch = claim.prices.iter().find(|price| price.wish == Wish::Touch);
    let spared = touch.filter(|price| price.extra != Share::from_integer(0));
    let wished = by_choice || spared.is_some();
    let sentence = match (claim.stopped, &key.made.opinion.proof, wished) {
        (Some(Stopped::Overflow), ..) => t.say("key-too-fine"),
        (Some(Stopped::Budget | Stopped::Memory), ..) => {
            let least = t.decimal(&one_decimal(key.made.a_find(claim.lower_bound)));
            t.with("key-not-sure", &[("least", &least)])
        }
        (None, Proof::Confirmed(_), false) => t.say("key-best"),
        (None, Proof::Confirmed(_), true) if !by_choice => {
            let all = claim.touching.is_empty();
            t.say(if all { "key-best-spared" } else { "key-best-touch-waits" })
        }
        (None, Proof::Confirmed(_), true) => t.say("key-best-wished"),
        (None, Proof::Contradicted(_), _) => t.say("key-contradicted"),
        (None, _, _) if key.made.looked_long => t.say("key-best-alone"),
        (None, _, _) => t.say("key-best-so-far-alone"),
    };
    let unasked = claim.optimal() && matches!(key.made.opinion.proof, Proof::NotCarried { .. });
    let looking = !key.made.looked_long && (unasked || claim.stopped == Some(Stopped::Budget));
    html! {
        @if let Some(left) = together.sentence() {
            p.verdict { span dir="auto" { (left) } " " (t.say("key-finish-needs")) }
            (together.needs())
        }
        p.verdict.sure[claim.optimal() && together.none()] { (sentence) }
        @if looking {
            form method="post" action="/do/key-look-on" {
                (hidden(&[("key", &key.id.0)]))
                button #look-on { (t.say(if unasked { "key-ask-second" } else { "key-look-on" })) }
            }
        }
        @if touch.is_some() && !claim.wishes.allow_touch && !claim.touching.is_empty() {
            p #touching { (touching(t, claim)) }
        }
        @if let Some(spared) = spared {
            @let message = if claim.wishes.allow_touch { "key-touch-saves" } else { "key-touch-costs" };
            p #touch-price { (t.say(message)) " " (price(t, key.made.a_find(spared.extra), spared.exact)) "." }
        }
        @if let (Some(kept), true) = (&claim.kept, by_choice) {
            @let extra = key.made.a_find(claim.total - kept.without_wishes);
            p { (t.say("key-wishes-cost")) " " (price(t, extra, kept.without_wishes_optimal && claim.optimal())) "." }
        }
        details {
            summary { (t.say("key-more")) }
            p.quiet { (t.say("key-more-effort")) }
            p.quiet { (t.count("key-more-heaps", usize::try_from(claim.heaps).unwrap_or(usize::MAX))) }
        }
    }
}

/// Which questions are answered by touch although a kind with a caution is possible.
fn touching(t: Tongue, claim: &Claim) -> String {
    let numbers: Vec<String> = claim.touching.iter().map(u32::to_string).collect();
    let count = [("questions", &numbers.join(", ") as &dyn std::fmt::Display)];
    let message =
        if !claim.wishes.kept.is_empty() { "key-touching-or-kept" } else { "key-touching" };
    t.count_with(message, numbers.len(), &count)
}

/// Starts to look on: nothing that is kept, so no edit.
pub(super) fn look_on(desk: &mut Desk, asked: &Asked<'_>) -> Page {
    let key = KeyId(asked.id("key"));
    desk.begin_work(key);
    Page::see(format!("/key/looking?key={}", key.0))
}

/// Stops looking; what was found so far is shown.
pub(super) fn stop(desk: &mut Desk, asked: &Asked<'_>) -> Page {
    desk.stop_work();
    Page::see(format!("/key?key={}", asked.id("key")))
}

/// How far the search has come; without scripts the page asks for itself again.
pub(super) fn looking(desk: &mut Desk, asked: &Asked<'_>) -> Page {
    let t = asked.tongue;
    let id = frame::key_asked(desk, asked);
    let away = Page::see(id.map_or("/key".to_owned(), |id| format!("/key?key={}", id.0)));
    let over = desk.work_on(HEAPS_A_PAGE).is_none_or(|progress| progress.over);
    let Some(work) = desk.work.as_ref().filter(|work| !over && Some(work.key) == id) else {
        return away;
    };
    let name = &desk.history.now.keys[&work.key].name;
    let weight = desk.laid();
    let page = html! {
        h1 { (t.say("key-looking")) " · " span dir="auto" { (name) } }
        div #progress role="status" {
            (so_far(t, Some(work), weight.as_ref().map(|laid| &laid.matrix)))
        }
        form method="post" action="/do/key-stop" {
            (hidden(&[("key", &id.map_or(0, |id| id.0))]))
            button.main #stop { (t.say("key-stop")) }
        }
        p.quiet { (t.say("key-looking-more")) }
    };
    let parts = Parts {
        hand: Some("key"),
        again_after: Some(1),
        ..Parts::new(Screen::Key, t.say("key-looking"), page)
    };
    frame::page(desk, asked, &parts)
}

fn so_far(t: Tongue, work: Option<&Work>, matrix: Option<&spinney_model::Matrix>) -> Markup {
    let known = work.and_then(|work| work.known).zip(matrix);
    html! {
        @if let Some(((best, least), matrix)) = known {
            @let (best, least) = (a_find(matrix, best), a_find(matrix, least));
            @let [best, least] = [best, least].map(|share| t.decimal(&one_decimal(share)));
            p { (t.with("key-looking-best", &[("best", &best), ("least", &least)])) }
        }
        @if let Some(work) = work {
            p { (t.count("key-looked", usize::try_from(work.heaps).unwrap_or(usize::MAX))) }
        }
    }
}

struct Compared {
    id: KeyId,
    name: String,
    made: Option<Arc<Made>>,
}

pub(super) fn compare(desk: &Desk, asked: &Asked<'_>) -> Shown {
    let t = asked.tongue;
    let known: Vec<KeyId> = desk.history.now.keys.keys().copied().collect();
    let wanted = |name: &str, otherwise: usize| {
        let id = asked.request.asked(name).parse().ok().map(KeyId);
        id.filter(|id| known.contains(id)).or_else(|| known.get(otherwise).copied())
    };
    let (Some(one), Some(other)) = (wanted("one", 0), wanted("other", 1)) else {
        let work = html! {
            h1 { (t.say("key-compare")) }
            p.empty { (t.say("key-compare-too-few")) }
            p { a.main href="/key" { (t.say("nav-key")) } }
        };
        return frame::shown(desk, asked, &Parts::new(Screen::Key, t.say("key-compare"), work));
    };
    let sides = [one, other].map(|id| Compared {
        id,
        name: desk.history.now.keys[&id].name.clone(),
        made: desk.made(t, id),
    });
    let collection = &desk.history.now;
    let work = html! {
        h1 { (t.say("key-compare")) }
        (which(t, collection, one, other))
        (table(t, collection, &sides))
        div.side-by-side {
            @for side in &sides {
                section {
                    h2 dir="auto" { (side.name) }
                    p { a href={"/key?key=" (side.id.0)} { (t.say("key-open")) span.unseen { ": " (side.name) } } }
                    @if let Some(made) = &side.made { (in_short(t, collection, side.id, made)) }
                }
            }
        }
    };
    frame::shown(desk, asked, &Parts::new(Screen::Key, t.say("key-compare"), work))
}

fn which(t: Tongue, collection: &Collection, one: KeyId, other: KeyId) -> Markup {
    html! {
        form.which method="get" action="/key/compare" {
            @for (name, chosen, label) in [("one", one, "key-one"), ("other", other, "key-other")] {
                div {
                    label for={"compare-" (name)} { (t.say(label)) }
                    select name=(name) id={"compare-" (name)} {
                        @for (id, key) in &collection.keys {
                            option value=(id.0) selected[*id == chosen] { (key.name) }
                        }
                    }
                }
            }
            button #compare { (t.say("key-compare-button")) }
        }
    }
}

/// What a row of the comparison says of a key.
type Told = fn(&Together<'_>, &Numbers) -> Option<String>;

/// First whether a key works, whoever made it, then what it takes: a key with few questions that
/// leaves kinds together is not the shorter one.
fn table(t: Tongue, collection: &Collection, sides: &[Compared; 2]) -> Markup {
    let told = sides.each_ref().map(|side| {
        let made = side.made.as_deref()?;
        Some((Together { t, collection, key: side.id, made }, Numbers::of(made)))
    });
    let rows: [(&str, Told); 6] = [
        ("key-row-works", |of, _| Some(works(of))),
        ("key-row-together", |of, _| {
            Some(if of.none() { of.t.say("key-none-together") } else { of.names() })
        }),
        ("key-row-mend", |_, n| Some(n.to_mend.to_string())),
        ("key-row-mean", |of, n| Some(of.t.decimal(&one_decimal(n.mean?)))),
        ("key-row-longest", |_, n| n.longest.map(|longest| longest.to_string())),
        ("key-row-questions", |_, n| Some(n.questions.to_string())),
    ];
    html! {
        table.compared {
            thead {
                tr {
                    td {}
                    @for side in sides { th scope="col" dir="auto" { (side.name) } }
                }
            }
            tbody {
                @for (label, value) in rows {
                    tr {
                        th scope="row" { (t.say(label)) }
                        @for told in &told {
                            td dir="auto" {
                                (told.as_ref().and_then(|(of, n)| value(of, n)).unwrap_or_else(|| t.say("key-cannot-say")))
                            }
                        }
                    }
                }
            }
        }
    }
}

/// Whether every kind comes out at its name.
fn works(of: &Together<'_>) -> String {
    let opinion = &of.made.opinion;
    of.t.say(match (opinion.works(), opinion.says_mend_this()) {
        _ if of.made.key.couplets.is_empty() => "key-works-not-begun",
        (true, _) if of.none() => "key-works",
        (true, _) => "key-works-together",
        (false, true) => "key-works-not-yet",
        (false, false) => "key-works-in-part",
    })
}

fn in_short(t: Tongue, collection: &Collection, id: KeyId, made: &Made) -> Markup {
    html! {
        @if made.key.couplets.is_empty() { p.quiet { (t.say("key-no-question")) } }
        ol.short {
            @for couplet in &made.key.couplets {
                li value=(couplet.number) {
                    span dir="auto" { (couplet.wording.first()) }
                    ul {
                        @for (yes, to) in [(true, &couplet.yes), (false, &couplet.no)] {
                            li {
                                (answer_tab(t, yes)) " "
                                @match made.ending(to) {
                                    Ending::On(number) => (t.with("key-go-to", &[("number", &number)])),
                                    Ending::Out(kinds, strange) => strong dir="auto" {
                                        (names(collection, id, &kinds, strange).join(", "))
                                    },
                                    Ending::Nothing => (t.say("key-nobody")),
                                }
                            }
                        }
                    }
                }
            }
        }
    }
}
