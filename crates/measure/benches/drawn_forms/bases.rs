//! Bases whose sides are alike or not, and what is told of them.

use fastrand::Rng;
use spinney_fixtures::leaves::Shape;
use spinney_fixtures::leaves::form::{
    BaseTruth, Blade, FormPlan, LobeForm, Lopsided, Margin, VeinPlan,
};
use spinney_fixtures::leaves::scan::Page;
use spinney_model::{BaseSides, OneSide, WhichSide};

use crate::packed::packed;

/// Where the width is compared, as docs/measure.md says.
const LOWEST: [f64; 2] = [0.06, 0.25];
/// From which both sides are unlike, as docs/measure.md says: further down, of the blade; what the wider
/// side has of both.
const UNLIKE: [f64; 2] = [0.03, 1.0 / 1.7];

struct Base {
    truth: BaseTruth,
    sides: Option<BaseSides>,
    told: String,
}

/// Draws bases by which the rules were built, or others, and tells how often they are told right.
pub(crate) fn told(name: &str, count: usize) {
    let (seed, shapes, margins) = match name {
        "built" => (
            31,
            [Shape::Ellipse, Shape::Obovate, Shape::Rhombus],
            [Margin::Smooth, Margin::Serrate],
        ),
        _ => {
            (33, [Shape::Ovate, Shape::Oblong, Shape::Heart], [Margin::Smooth, Margin::Crenate])
        }
    };
    let mut rng = Rng::with_seed(seed);
    let mut bases = Vec::new();
    for shape in shapes {
        for margin in margins {
            // Alike; one wider; one lower; both.
            for unlike in [[false, false], [true, false], [false, true], [true, true]] {
                bases.extend((0..2 * count).map(|_| drawn(&mut rng, shape, margin, unlike)));
            }
        }
    }
    let found = bases.iter().filter(|base| base.sides.is_some()).count();
    println!("\n{name}, sides of the base: {} leaves, {found} found", bases.len());
    println!("asked | n | said | right where said | inside ± | ± to median");
    let lower = |base: &Base| (base.truth.lower, base.sides.and_then(|sides| sides.lower));
    let wider =
        |base: &Base| (base.truth.right - 0.5, base.sides.and_then(|sides| sides.wider));
    asked("one side reaches further down", &bases, lower, (0.0, UNLIKE[0]));
    asked("one side is wider", &bases, wider, (0.5, UNLIKE[1]));
}

fn drawn(rng: &mut Rng, shape: Shape, margin: Margin, [wider, lower]: [bool; 2]) -> Base {
    let parts = (shape, Blade::Plain, LobeForm::Round);
    let mut plan = FormPlan::seeded(rng, parts, margin);
    let mut between = |low: f64, high: f64| low + (high - low) * rng.f64();
    let side = if between(0.0, 1.0) < 0.5 { -1.0 } else { 1.0 };
    plan.lopsided = Lopsided {
        wider: side * if wider { between(0.25, 1.1) } else { between(0.0, 0.12) },
        lower: side * if lower { between(0.02, 0.1) } else { 0.0 },
    };
    let tone = if between(0.0, 1.0) < 0.5 { between(0.2, 0.8) } else { -between(0.15, 0.4) };
    let mut veins = VeinPlan::seeded(rng, plan.length, tone);
    veins.aside = 0.0;
    let leaf = plan.leaf();
    let mut page = Page::of_one(&leaf, rng.f64() * 6.3);
    page.veins = veins.drawn(&plan, rng);
    page.by_chance(rng);
    let jpeg = rng.bool();
    let file = packed(&page, rng, jpeg);
    let found = spinney_measure::read(&file, Some(page.dpi))
        .and_then(|picture| spinney_measure::measure(&picture));
    let found = found.ok().filter(|found| found.leaves.len() == 1);
    let ends = found.and_then(|found| found.leaves[0].form.ends);
    let told = format!(
        "{shape:?} {margin:?} {:?} {:.0} mm, half {:.2}, stalk {:.1} bend {:.2}, {} dpi, blur {:.1}, noise {:.1}",
        plan.lopsided,
        plan.length,
        plan.half_width,
        plan.stalk_width,
        plan.stalk_bend,
        page.dpi,
        page.blur,
        page.noise,
    );
    Base { truth: plan.base(LOWEST), sides: ends.map(|ends| ends.sides), told }
}

/// What is true, more than 0 on the right, and what was told of it.
type Of = fn(&Base) -> (f64, Option<OneSide>);

fn asked(what: &str, bases: &[Base], of: Of, (from, limit): (f64, f64)) {
    let seen: Vec<(&Base, f64, OneSide)> = bases
        .iter()
        .filter_map(|base| {
            let (truth, side) = of(base);
            Some((base, truth, side?))
        })
        .collect();
    let said: Vec<_> = seen.iter().filter(|(.., side)| side.which.is_some()).collect();
    let right = |truth: f64| match truth.abs() + from {
        value if value < limit => WhichSide::Neither,
        _ if truth > 0.0 => WhichSide::Right,
        _ => WhichSide::Left,
    };
    let wrong = said.iter().filter(|(_, truth, side)| side.which != Some(right(*truth)));
    let off = |truth: f64, side: &OneSide| (side.value.value - truth.abs() - from).abs();
    let inside = seen
        .iter()
        .filter(|(_, truth, side)| off(*truth, side) <= side.value.plus_minus)
        .count();
    let mut offs: Vec<f64> = seen.iter().map(|(_, truth, side)| off(*truth, side)).collect();
    let mut wide: Vec<f64> = seen.iter().map(|(.., side)| side.value.plus_minus).collect();
    offs.sort_by(f64::total_cmp);
    wide.sort_by(f64::total_cmp);
    let share = |of: usize, all: usize| 100.0 * of as f64 / all.max(1) as f64;
    println!(
        "{what} | {} | {:.1} % | {:.1} % | {:.1} % | {:.1} (median {:.4}, 95 % {:.4}, ± {:.4})",
        bases.len(),
        share(said.len(), bases.len()),
        share(said.len() - wrong.clone().count(), said.len()),
        share(inside, seen.len()),
        wide[wide.len() / 2] / offs[offs.len() / 2],
        offs[offs.len() / 2],
        offs[offs.len() * 19 / 20],
        wide[wide.len() / 2],
    );
    if std::env::var("ALL").is_ok() {
        for (base, truth, side) in &seen {
            let (off, half) = (off(*truth, side), side.value.plus_minus);
            println!("    {off:.4} ± {half:.4} of {truth:.3}, {:?}: {}", side.which, base.told);
        }
    }
    if std::env::var("WORST").is_ok() {
        for (base, truth, side) in
            seen.iter().filter(|(_, truth, side)| off(*truth, side) > side.value.plus_minus)
        {
            println!("    {}\n        {truth:.3} {side:?}", base.told);
        }
    }
}
