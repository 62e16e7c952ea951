//! How far measures of drawn leaves are off: `cargo bench -p spinney-measure --bench drawn_leaves`.
//!
//! Some hundred leaves (`fixtures::leaves`), each on a page of its own: every shape and edge, turned,
//! at 150, 300 and 600 dpi, with blur, noise, shade, uneven light, as PNG and as JPEG 60. Shapes by
//! which the ± was set and shapes by which it is judged are listed apart. `-- N` draws N of
//! each shape and edge. `WORST=1` lists what is farthest off, `ALL=1` each angle.

#[path = "packing/packed.rs"]
mod packed;

use std::collections::BTreeMap;

use fastrand::Rng;
use packed::{kept, packed};
use spinney_fixtures::leaves::scan::Page;
use spinney_fixtures::leaves::{Edge, Plan, Shape, Truth};
use spinney_model::{
    BaseForm, Ends, LeafNote, Measurand, MeasuredLeaf, MeasuredPicture, PictureError,
    WithPlusMinus,
};

/// The shapes by which the ± was set.
const SET: [Shape; 7] = [
    Shape::Ellipse,
    Shape::Obovate,
    Shape::Rhombus,
    Shape::Lance,
    Shape::Ovate,
    Shape::Oblong,
    Shape::Heart,
];
/// The shapes by which it is judged.
const JUDGED: [Shape; 3] = [Shape::Deltoid, Shape::Wedge, Shape::Lens];

/// A blade that runs so far down its stalk that nobody could say where it begins: shown apart.
const GRADUAL: [Shape; 1] = [Shape::Spatulate];

/// A drawn leaf and what was measured of it.
struct Pair {
    truth: Truth,
    leaf: Option<MeasuredLeaf>,
    shape: Shape,
    dpi: f64,
    shade: f64,
    jpeg: bool,
    told: String,
}

fn main() {
    let count = std::env::args().filter_map(|word| word.parse().ok()).next().unwrap_or(8);
    let groups =
        [("set", &SET[..], 1), ("judged", &JUDGED[..], 4), ("gradual", &GRADUAL[..], 5)];
    for (name, shapes, seed) in groups {
        let mut rng = Rng::with_seed(seed);
        let mut pairs = Vec::new();
        for shape in shapes {
            for (edge, lobes) in
                [(Edge::Smooth, 0), (Edge::Toothed, 0), (Edge::Wavy, 0), (Edge::Smooth, 3)]
            {
                for _ in 0..count {
                    pairs.push(drawn(&mut rng, *shape, edge, lobes));
                }
            }
        }
        told(name, &pairs);
    }
}

fn drawn(rng: &mut Rng, shape: Shape, edge: Edge, lobes: usize) -> Pair {
    let plan = Plan::seeded(rng, shape, edge, lobes);
    let leaf = plan.leaf();
    let mut page = Page::of_one(&leaf, rng.f64() * 6.3);
    page.by_chance(rng);
    let jpeg = rng.bool();
    let file = packed(&page, rng, jpeg);
    let told = format!(
        "{shape:?} {edge:?} lobes {lobes} {:.0} mm, {} dpi, blur {:.1}, noise {:.1}, shade {}, uneven {}, {}",
        plan.length,
        page.dpi,
        page.blur,
        page.noise,
        page.shade,
        page.uneven,
        if jpeg { "JPEG" } else { "PNG" },
    );
    kept(&told, &file, jpeg);
    let leaf = measured(&file, page.dpi).ok().filter(|it| it.leaves.len() == 1);
    Pair {
        truth: plan.leaf().truth,
        leaf: leaf.and_then(|picture| picture.leaves.into_iter().next()),
        shape,
        dpi: page.dpi,
        shade: page.shade,
        jpeg,
        told,
    }
}

fn measured(file: &[u8], dpi: f64) -> Result<MeasuredPicture, PictureError> {
    spinney_measure::measure(&spinney_measure::read(file, Some(dpi))?)
}

/// What is true of a measurand, and how far a measure may be off in mm whatever its length.
fn truth(of: &Truth, what: Measurand) -> Option<f64> {
    Some(match what {
        Measurand::BladeLength => of.length,
        Measurand::BladeWidth => of.width,
        Measurand::StalkLength => of.stalk?,
        Measurand::BladeArea => of.area,
        Measurand::Perimeter => of.perimeter,
        Measurand::LengthToWidth => of.length / of.width,
        Measurand::StalkToBlade => of.stalk? / of.length,
        Measurand::Roundness => 4.0 * std::f64::consts::PI * of.area / of.perimeter.powi(2),
        Measurand::Solidity => return None,
    })
}

/// A way to tell leaves apart.
type Stratum = (&'static str, fn(&Pair) -> String);

/// What leaves are told apart by: each by itself.
const STRATA: [Stratum; 5] = [
    ("shape", |pair| format!("{:?}", pair.shape)),
    ("edge", |pair| format!("{:?} {}", pair.truth.edge, pair.truth.lobes)),
    ("dpi", |pair| format!("{}", pair.dpi)),
    ("file", |pair| if pair.jpeg { "JPEG" } else { "PNG" }.to_owned()),
    ("shade", |pair| format!("{}", pair.shade)),
];

/// How many lie inside of their ± in each stratum, and the ± to the median there.
fn told_strata(all: &[Off<'_>]) {
    for (name, of) in STRATA {
        let mut strata: BTreeMap<String, Vec<&Off<'_>>> = BTreeMap::new();
        for off in all {
            strata.entry(of(off.pair)).or_default().push(off);
        }
        let told: Vec<String> = strata
            .iter()
            .map(|(stratum, all)| {
                let inside = all.iter().filter(|off| off.by <= off.plus_minus).count();
                let median =
                    |of: fn(&Off<'_>) -> f64| quantile(all.iter().map(|off| of(off)), 0.5);
                format!(
                    "{stratum} {:.0} % ({:.1})",
                    100.0 * inside as f64 / all.len() as f64,
                    median(|off| off.plus_minus) / median(|off| off.by)
                )
            })
            .collect();
        println!("    {name}: {}", told.join(", "));
    }
}

/// How far one measure is off.
struct Off<'p> {
    /// As a share of what is true.
    share: f64,
    /// In its unit.
    by: f64,
    plus_minus: f64,
    pair: &'p Pair,
}

fn told(name: &str, pairs: &[Pair]) {
    let found = pairs.iter().filter(|pair| pair.leaf.is_some()).count();
    println!("\n{name}: {} leaves, {found} found", pairs.len());
    let twice = |pair: &&Pair| {
        pair.leaf.as_ref().is_some_and(|leaf| leaf.notes.contains(&LeafNote::TwoStalks))
    };
    println!("said to have two stalks: {}", pairs.iter().filter(twice).count());
    println!("measure | n | median off | 95 % | median mm | 95 % mm | inside ± | ± to median");
    for what in Measurand::ALL {
        let mut all = Vec::new();
        for pair in pairs {
            let Some(leaf) = &pair.leaf else { continue };
            let (Some(truth), Ok(measure)) = (truth(&pair.truth, what), leaf.measure(what))
            else {
                continue;
            };
            let by = (measure.value - truth).abs();
            all.push(Off { share: by / truth, by, plus_minus: measure.plus_minus, pair });
        }
        if all.is_empty() {
            continue;
        }
        let inside = all.iter().filter(|off| off.by <= off.plus_minus).count();
        let share = |part| quantile(all.iter().map(|off| off.share), part);
        let by = |part| quantile(all.iter().map(|off| off.by), part);
        println!(
            "{what:?} | {} | {:.2} % | {:.2} % | {:.3} | {:.3} | {:.1} % | {:.1}",
            all.len(),
            100.0 * share(0.5),
            100.0 * share(0.95),
            by(0.5),
            by(0.95),
            100.0 * inside as f64 / all.len() as f64,
            quantile(all.iter().map(|off| off.plus_minus), 0.5) / by(0.5),
        );
        told_strata(&all);
        if std::env::var("WORST").is_ok() {
            all.sort_by(|a, b| b.share.total_cmp(&a.share));
            for off in all.iter().take(6) {
                println!("    {:.1} % ({:.2}): {}", 100.0 * off.share, off.by, off.pair.told);
            }
        }
    }
    told_ends(pairs);
    if std::env::var("WORST").is_ok() {
        for pair in pairs.iter().filter(|pair| pair.leaf.is_none()) {
            println!("    not found: {}", pair.told);
        }
    }
}

/// How far angles are off; of leaves without lobes alone.
fn told_ends(pairs: &[Pair]) {
    type Of = (&'static str, fn(&Truth) -> Option<f64>, fn(&Ends) -> Option<WithPlusMinus>);
    let all: [Of; 2] = [
        ("base angle", |truth| truth.base_angle, |ends| ends.base_angle),
        ("tip angle", |truth| Some(truth.tip_angle), |ends| ends.tip_angle),
    ];
    println!("ends | n | median off | 95 % | inside ± | ± to median");
    for (name, truth, found) in all {
        let off = |pair: &Pair| {
            let ends = pair.leaf.as_ref()?.form.ends?;
            let (truth, found) = (truth(&pair.truth)?, found(&ends)?);
            Some(((found.value - truth).abs(), found.plus_minus, pair.told.clone()))
        };
        let mut off: Vec<_> = pairs.iter().filter_map(off).collect();
        if std::env::var("ALL").is_ok() {
            for (by, plus_minus, told) in &off {
                println!("    {name} {by:.3} ± {plus_minus:.3}: {told}");
            }
        }
        let inside = off.iter().filter(|(by, plus_minus, _)| by <= plus_minus).count();
        let by = |part| quantile(off.iter().map(|(by, ..)| *by), part);
        println!(
            "{name} | {} | {:.3} | {:.3} | {:.1} % | {:.1}",
            off.len(),
            by(0.5),
            by(0.95),
            100.0 * inside as f64 / off.len() as f64,
            quantile(off.iter().map(|(_, plus_minus, _)| *plus_minus), 0.5) / by(0.5),
        );
        if std::env::var("WORST").is_ok() {
            off.sort_by(|a, b| b.0.total_cmp(&a.0));
            for (by, plus_minus, told) in off.iter().take(6) {
                println!("    {by:.2} ± {plus_minus:.2}: {told}");
            }
        }
    }
    let heart = pairs.iter().filter(|pair| pair.truth.base_angle.is_none());
    let (mut said, mut right) = ((0, 0), (0, 0));
    for (pair, count) in heart.map(|pair| (pair, 0)).chain(pairs.iter().map(|pair| (pair, 1))) {
        let Some(ends) = pair.leaf.as_ref().and_then(|leaf| leaf.form.ends) else { continue };
        let heart = ends.base == BaseForm::HeartShaped;
        match count {
            0 => said = (said.0 + usize::from(heart), said.1 + 1),
            _ if pair.truth.base_angle.is_some() => {
                right = (right.0 + usize::from(!heart), right.1 + 1);
            }
            _ => {}
        }
    }
    println!("heart-shaped told: {said:?}; others not called so: {right:?}");
}

fn quantile(all: impl Iterator<Item = f64>, part: f64) -> f64 {
    let mut all: Vec<f64> = all.collect();
    all.sort_by(f64::total_cmp);
    all[((all.len() - 1) as f64 * part).round() as usize]
}
