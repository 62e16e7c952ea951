//! The ranges of the kinds under a threshold: one bar a kind, the gap shaded, the number in
//! between, and a field to move it.

use maud::{Markup, html};
use spinney_model::{Asked, Character, Couplet, Quantity, Scale, Side, TaxonIx, Value};

use super::{Keyed, pinned};
use crate::pages::heaps::answer_tab;

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

/// A kind with what was measured of it.
struct Bar {
    taxon: TaxonIx,
    side: Side,
    range: Option<(Quantity, Quantity)>,
}

pub(super) fn ranges(key: &Keyed, couplet: &Couplet) -> Markup {
    let Some(ask) = &pinned::said(key, couplet) else { return html! {} };
    let Some(at) = pinned::threshold(ask) else { return html! {} };
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
    let bars = bars(key, couplet);
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
            form method="post" action="/do/key-threshold" {
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

/// The kinds that come here, the smallest first; those that nobody measured last.
fn bars(key: &Keyed, couplet: &Couplet) -> Vec<Bar> {
    let Some(ask) = &couplet.ask else { return Vec::new() };
    let matrix = &key.made.layer.matrix;
    let mut bars: Vec<Bar> = pinned::sides(key, couplet.number)
        .into_iter()
        .map(|(taxon, side)| {
            let range = match &matrix.cell(taxon, ask.character).value {
                Value::Range { low, high } => Some((*low, *high)),
                Value::Counts(counts) => {
                    counts.first().zip(counts.last()).map(|(low, high)| {
                        let whole = |count: u32| Quantity::from_whole(count.into());
                        (whole(low.0), whole(high.0))
                    })
                }
                Value::Unknown | Value::DoesNotApply | Value::States(_) => None,
            };
            Bar { taxon, side, range }
        })
        .collect();
    bars.sort_by_key(|bar| (bar.range.is_none(), bar.range, bar.taxon));
    bars
}

fn drawn(
    key: &Keyed,
    ruler: &Ruler,
    bar: &Bar,
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
