//! A question that is open to be changed, in its place: its words, its number, what could be
//! asked instead, the cheapest first.

use maud::{Markup, html};
use spinney_collection::keys::{self, Made, letters};
use spinney_collection::pinned::{Measured, threshold};
use spinney_collection::reworded;
use spinney_model::{Alternative, Asked, Character, Couplet, Quantity, Reasons, Scale, Side};
use spinney_voice::{amounts, wording};

use crate::pages::heaps::ask_here::split;
use crate::pages::heaps::card::answer_tab;
use crate::pages::heaps::deeds::{LONGEST_QUESTION, TAKE_OUT};
use crate::pages::heaps::place::fields;
use crate::pages::key::deeds::{KEEP, REPLACE, REWORD, SWAP, THRESHOLD};
use crate::pages::key::keyed::Keyed;

/// Everything that can be done to a question.
pub(super) fn panel(key: &Keyed<'_>, couplet: &Couplet) -> Markup {
    let t = key.t;
    let at = key.place(couplet);
    let pinned = key.drawn().questions.contains_key(at);
    html! {
        div.panel {
            form method="post" action=(REWORD.path) {
                (key.where_fields(at))
                label for="words" { (t.say("key-words")) }
                input #words name="words" maxlength=(LONGEST_QUESTION) required dir="auto"
                    value=(couplet.wording.first());
                button #reword { (t.say("key-reword")) }
            }
            (own_words(key, couplet))
            (swap(key, couplet))
            (ranges(key, couplet))
            @if key.drawn().finished() { (keep(key, couplet, pinned)) }
            (alternatives(key, couplet))
            p.change {
                @if pinned {
                    a.button href={"/heaps?key=" (key.id.0) "&at=" (letters(at))} { (t.say("key-see-heaps")) } " "
                }
                a.button #close href={(key.address(None)) "#q" (couplet.number)} { (t.say("key-close")) }
            }
        }
    }
}

/// Why a question keeps its words when the column's change, and the way to the column's.
fn own_words(key: &Keyed<'_>, couplet: &Couplet) -> Markup {
    let t = key.t;
    let at = key.place(couplet);
    let own = reworded::own_words(key.t, key.collection, &key.laid, None);
    let own = own.into_iter().find(|own| own.key == key.id && own.at == *at);
    html! {
        @if let Some(own) = own {
            form #own-words method="post" action=(REWORD.path) {
                (key.where_fields(at))
                input type="hidden" name="words" value=(own.of_the_table);
                p.quiet dir="auto" { (t.with("key-own-words", &[("question", &own.of_the_table)])) }
                button #own-words-take { (t.say("key-own-words-take")) }
            }
        }
    }
}

/// The opposite question; a person looks whether the words ask for it.
fn swap(key: &Keyed<'_>, couplet: &Couplet) -> Markup {
    let t = key.t;
    let words = key.from().opposite_words(couplet);
    html! {
        details {
            summary #swap-open { (t.say("key-swap-title")) }
            form method="post" action=(SWAP.path) {
                (key.where_fields(key.place(couplet)))
                label for="opposite" { (t.say("key-swap-words")) }
                input #opposite name="words" maxlength=(LONGEST_QUESTION) required dir="auto" value=(words);
                button #swap { (t.say("key-swap")) }
            }
        }
    }
}

/// Keep the question whatever else changes, or let it go again.
fn keep(key: &Keyed<'_>, couplet: &Couplet, pinned: bool) -> Markup {
    let t = key.t;
    let (action, id, word, why) = match pinned {
        true => (TAKE_OUT.path, "let-go", "key-let-go", "key-let-go-why"),
        false => (KEEP.path, "keep", "key-keep", "key-keep-why"),
    };
    html! {
        form method="post" action=(action) {
            (key.where_fields(key.place(couplet)))
            button id=(id) aria-describedby="keep-why" { (t.say(word)) }
            p.quiet #keep-why { (t.say(why)) }
        }
    }
}

/// So many are listed; the rest costs more than these.
const LISTED: usize = 24;

/// As people drew it, these are the prices that it would have if the machine were to finish it.
pub(super) fn alternatives(key: &Keyed<'_>, couplet: &Couplet) -> Markup {
    let found = key.explained.as_ref().and_then(|made| {
        let number = made.couplet(key.place(couplet))?.number;
        Some((made, made.reasons.iter().find(|reasons| reasons.couplet == number)?))
    });
    match found {
        Some((made, reasons)) => list(key, couplet, made, reasons),
        None => html! {
            @if !keys::can_be_weighed(&key.made.layer.matrix) {
                p.quiet { (key.t.say("heaps-too-many")) }
            }
        },
    }
}

fn list(key: &Keyed<'_>, couplet: &Couplet, made: &Made, reasons: &Reasons) -> Markup {
    let t = key.t;
    let known: Vec<&Alternative> = reasons
        .alternatives
        .iter()
        .filter(|other| key.from().of_the_table(&other.ask).is_some())
        .collect();
    html! {
        details {
            summary #instead { (t.count("key-instead", known.len())) }
            @if known.is_empty() { p.quiet { (t.say("key-instead-none")) } }
            ol.offers {
                @for (at, other) in known.iter().take(LISTED).enumerate() {
                    li { (offer(key, couplet, made, other, at)) }
                }
            }
            @if known.len() > LISTED { p.quiet { (t.count("key-instead-more", known.len() - LISTED)) } }
        }
    }
}

fn offer(
    key: &Keyed<'_>,
    couplet: &Couplet,
    made: &Made,
    other: &Alternative,
    at: usize,
) -> Markup {
    let t = key.t;
    let ask = wording::said_at(&made.layer.matrix, &key.made.key, couplet.number, &other.ask);
    let words = wording::question(key.t, &made.layer.matrix, &ask);
    let extra = made.a_find(other.extra);
    let (yes, no, both) = other.heaps;
    html! {
        form method="post" action=(REPLACE.path) {
            (key.where_fields(key.place(couplet)))
            @if let Some(ask) = key.from().of_the_table(&ask) { (fields(&ask)) }
            input type="hidden" name="words" value=(words);
            button.offer id={"instead-" (at)} {
                span.words dir="auto" { (words) }
                span.split {
                    (split(t, yes, no))
                    @if both > 0 { " · " (t.count("heaps-split-both", both)) }
                    " · " (amounts::price(t, extra, other.exact))
                }
            }
        }
    }
}

/// The width of the drawing, in its own units.
const WIDE: f64 = 1000.0;
/// A margin on both sides, as a share of what is drawn.
const AROUND: f64 = 0.06;

/// Where numbers stand in the drawing.
struct Ruler {
    low: f64,
    high: f64,
}

impl Ruler {
    fn over(numbers: impl Iterator<Item = f64>) -> Self {
        let (mut low, mut high) = (f64::INFINITY, f64::NEG_INFINITY);
        for number in numbers {
            (low, high) = (low.min(number), high.max(number));
        }
        let around = ((high - low) * AROUND).max(0.5);
        Self { low: low - around, high: high + around }
    }

    fn at(&self, number: f64) -> String {
        let x = (number - self.low) / (self.high - self.low) * WIDE;
        format!("{:.1}", x.clamp(0.0, WIDE))
    }
}

pub(super) fn ranges(key: &Keyed<'_>, couplet: &Couplet) -> Markup {
    let Some(ask) = &key.from().said(couplet) else { return html! {} };
    let Some(at) = threshold(ask) else { return html! {} };
    let t = key.t;
    let character = key.made.layer.matrix.character(ask.character);
    let (gap, unit, step) = match &character.scale {
        Scale::Measure { gap, .. } => (*gap, character.sign(), "any"),
        Scale::Counts | Scale::Words { .. } => (Quantity::ZERO, "", "1"),
    };
    let means = match ask.yes {
        Asked::Below(_) => "key-number-below",
        Asked::AtLeast(_) | Asked::States(_) => "key-number",
    };
    let bars = key.from().measured(couplet);
    let ends = bars.iter().filter_map(|bar| bar.range);
    let ends = ends.flat_map(|(low, high)| [low.as_f64(), high.as_f64()]);
    let line = [at.as_f64() - gap.as_f64(), at.as_f64() + gap.as_f64()];
    let ruler = Ruler::over(ends.chain(line));
    // Numbers are typed and shown as the column is written; the drawing has no unit.
    let one = character.one().as_f64();
    html! {
        section.threshold aria-labelledby="ranges-title" {
            h3 #ranges-title dir="auto" { (t.with("key-ranges", &[("character", &character.name)])) }
            ul.ranges data-low=(ruler.low / one) data-high=(ruler.high / one) data-gap=(gap.as_f64() / one) {
                @for bar in &bars { (drawn(key, &ruler, bar, at, gap, character)) }
            }
            form method="post" action=(THRESHOLD.path) {
                (key.where_fields(key.place(couplet)))
                label for="number" {
                    (t.say(means)) @if !unit.is_empty() { " (" (unit) ")" }
                }
                input #number name="number" type="number" step=(step) inputmode="decimal" required value=(character.number(at));
                button #move { (t.say("key-move")) }
            }
            @if gap > Quantity::ZERO {
                p.quiet { (t.with("key-gap", &[("gap", &format!("{} {unit}", character.number(gap)).trim())])) }
            }
        }
    }
}

fn drawn(
    key: &Keyed<'_>,
    ruler: &Ruler,
    bar: &Measured,
    at: Quantity,
    gap: Quantity,
    character: &Character,
) -> Markup {
    let t = key.t;
    let unit = character.sign();
    let name = key.collection.name_in(key.id, key.made.layer.kinds[bar.taxon.0]);
    let (line, near) = (at.as_f64(), gap.as_f64());
    html! {
        li {
            span.name dir="auto" { (name) }
            svg.range viewBox="0 0 1000 40" preserveAspectRatio="none" aria-hidden="true" focusable="false" {
                @let left = ruler.at(line - near);
                @let wide = ruler.at(line + near).parse::<f64>().unwrap_or(0.0) - left.parse::<f64>().unwrap_or(0.0);
                rect.gap x=(left) y="0" width=(format!("{wide:.1}")) height="40" {}
                @if let Some((low, high)) = bar.range {
                    @let (from, to) = (ruler.at(low.as_f64()), ruler.at(high.as_f64()));
                    @let long = to.parse::<f64>().unwrap_or(0.0) - from.parse::<f64>().unwrap_or(0.0);
                    rect.bar x=(from) y="12" width=(format!("{:.1}", long.max(6.0))) height="16" {}
                }
                line.at x1=(ruler.at(line)) x2=(ruler.at(line)) y1="0" y2="40" {}
            }
            span.measured {
                @match bar.range {
                    Some((low, high)) if low == high => { (format!("{} {unit}", character.number(low)).trim()) },
                    Some((low, high)) => {
                        (format!("{}–{} {unit}", character.number(low), character.number(high)).trim())
                    },
                    None => { (t.say("key-not-measured")) },
                }
                " "
                @match bar.side {
                    Side::Yes => (answer_tab(t, true)),
                    Side::No => (answer_tab(t, false)),
                    Side::Both => span.quiet { (t.say("answer-varies")) },
                }
            }
        }
    }
}
