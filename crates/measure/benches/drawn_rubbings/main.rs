//! How far measures of drawn rubbings are off:
//! `cargo bench -p spinney-measure --bench drawn_rubbings`.
//!
//! Some hundred rubbings (`fixtures::leaves::rubbed`), each on a page of its own: shapes, edges and lobes, in
//! seven crayons, with strokes beyond the leaf from none to half of the blade's tone, gaps in the edge, at 150,
//! 300 and 600 dpi, as PNG and as JPEG 60. Shapes and seeds by which the rules and the ± were set and
//! those by which they are judged are listed apart. `-- N` draws N of each shape and edge,
//! `-- set` or `-- judged` those alone; `WORST=1` lists what was farthest off, `KEEP=folder` keeps the
//! pictures.

#[path = "../packing/pixels.rs"]
mod pixels;

use fastrand::Rng;
use pixels::{kept, packed};
use spinney_fixtures::leaves::rubbed::{Pixels, Rubbing};
use spinney_fixtures::leaves::{Edge, Plan, Shape, Truth};
use spinney_model::{LeafNote, Measurand, MeasuredLeaf, MeasuredPicture};

/// The shapes by which rules and ± were set.
const SET: [Shape; 4] = [Shape::Ellipse, Shape::Obovate, Shape::Rhombus, Shape::Lance];
/// The shapes by which they are judged.
const JUDGED: [Shape; 3] = [Shape::Ovate, Shape::Oblong, Shape::Heart];

/// A drawn rubbing and what was measured of it.
struct Pair {
    truth: Truth,
    leaf: Option<MeasuredLeaf>,
    /// How many were found.
    count: usize,
    /// Whether it is noticed where nobody says that it is a rubbing.
    noticed: bool,
    told: String,
}

impl Pair {
    /// Whether one leaf was found, and that one about as large as it is.
    fn found(&self) -> bool {
        let area = self.measured(Measurand::BladeArea).unwrap_or(0.0);
        self.count == 1 && (0.8..=1.25).contains(&(area / self.truth.area))
    }

    fn measured(&self, what: Measurand) -> Option<f64> {
        self.leaf.as_ref()?.measure(what).ok().map(|measure| measure.value)
    }
}

fn main() {
    let count = std::env::args().filter_map(|word| word.parse().ok()).next().unwrap_or(6);
    let named = |name: &str| std::env::args().any(|word| word == name);
    for (name, shapes, seed) in [("set", &SET[..], 21), ("judged", &JUDGED[..], 22)] {
        if (named("set") || named("judged")) && !named(name) {
            continue;
        }
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
    let truth = plan.leaf().truth;
    let rubbing = Rubbing::seeded(rng, plan);
    let Pixels { bytes, size } = rubbing.scanned();
    let jpeg = rng.bool();
    let file = packed(&bytes, size, jpeg);
    let told = format!(
        "{shape:?} {edge:?} lobes {lobes} {:.0} mm, {} dpi, blade {:.2}, background {:.2}, gaps {:.2}, strokes {:.2}, grain {:.2}, {}",
        rubbing.plan.length,
        rubbing.dpi,
        rubbing.blade,
        rubbing.background,
        rubbing.gaps,
        rubbing.strokes.1,
        rubbing.grain,
        if jpeg { "JPEG" } else { "PNG" },
    );
    let picture = spinney_measure::read(&file, Some(rubbing.dpi)).expect("a picture");
    let found = spinney_measure::measure_rubbing(&picture);
    let noticed = spinney_measure::measure(&picture).is_ok_and(|found| found.like_a_rubbing);
    if let (Some(name), Ok(found)) = (kept(&told, &file, jpeg), &found) {
        kept_with_lines(&format!("{name}-lines.png"), &file, found);
    }
    let mut leaves = found.map(|found| found.leaves).unwrap_or_default();
    let count = leaves.len();
    Pair { truth, leaf: (count == 1).then(|| leaves.remove(0)), count, noticed, told }
}

/// The picture, smaller, with the outlines that were found.
fn kept_with_lines(path: &str, file: &[u8], found: &MeasuredPicture) {
    let picture = image::load_from_memory(file).expect("it was read before").into_rgb8();
    let part = 1000.0 / f64::from(picture.width().max(picture.height()));
    let [width, height] =
        [picture.width(), picture.height()].map(|side| (f64::from(side) * part) as u32);
    let mut small = image::imageops::thumbnail(&picture, width, height);
    for leaf in &found.leaves {
        for (line, colour) in [
            (&leaf.lines.outline, [230, 0, 160]),
            (&leaf.lines.stalk, [0, 90, 230]),
            (&leaf.lines.midrib, [0, 90, 230]),
        ] {
            for point in line {
                let [x, y] = point.map(|at| (at * part).max(0.0) as u32);
                small.put_pixel(x.min(width - 1), y.min(height - 1), image::Rgb(colour));
            }
        }
    }
    small.save(path).expect("a folder to keep in");
}

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

/// How far one measure is off.
struct Off<'p> {
    /// As a share of what is true.
    share: f64,
    /// In its unit, and which way.
    by: f64,
    plus_minus: f64,
    pair: &'p Pair,
}

fn told(name: &str, pairs: &[Pair]) {
    let found: Vec<&Pair> = pairs.iter().filter(|pair| pair.found()).collect();
    let share = |count: usize, of: usize| 100.0 * count as f64 / of.max(1) as f64;
    println!(
        "\n{name}: {} rubbings, {} found ({:.1} %)",
        pairs.len(),
        found.len(),
        share(found.len(), pairs.len())
    );
    let stalks = found.iter().filter(|pair| pair.measured(Measurand::StalkLength).is_some());
    println!("with a stalk: {:.1} %", share(stalks.count(), found.len()));
    let notes = |note: LeafNote| {
        found
            .iter()
            .filter(|pair| pair.leaf.as_ref().is_some_and(|it| it.notes.contains(&note)))
            .count()
    };
    println!("said to have two stalks: {}", notes(LeafNote::TwoStalks));
    let noticed = pairs.iter().filter(|pair| pair.noticed).count();
    println!("noticed where nobody said so: {:.1} %", share(noticed, pairs.len()));
    println!(
        "measure | n | median off | 95 % | median mm | 95 % mm | bias mm | inside ± | ± to median"
    );
    for what in Measurand::ALL {
        let mut all = Vec::new();
        for pair in &found {
            let Some(leaf) = &pair.leaf else { continue };
            let (Some(truth), Ok(measure)) = (truth(&pair.truth, what), leaf.measure(what))
            else {
                continue;
            };
            let by = measure.value - truth;
            all.push(Off { share: by.abs() / truth, by, plus_minus: measure.plus_minus, pair });
        }
        if all.is_empty() {
            continue;
        }
        let inside = all.iter().filter(|off| off.by.abs() <= off.plus_minus).count();
        let part = |part| quantile(all.iter().map(|off| off.share), part);
        let by = |part| quantile(all.iter().map(|off| off.by.abs()), part);
        println!(
            "{what:?} | {} | {:.2} % | {:.2} % | {:.3} | {:.3} | {:.3} | {:.1} % | {:.1}",
            all.len(),
            100.0 * part(0.5),
            100.0 * part(0.95),
            by(0.5),
            by(0.95),
            quantile(all.iter().map(|off| off.by), 0.5),
            share(inside, all.len()),
            quantile(all.iter().map(|off| off.plus_minus), 0.5) / by(0.5),
        );
        if std::env::var("WORST").is_ok() {
            all.sort_by(|a, b| b.share.total_cmp(&a.share));
            for off in all.iter().take(6) {
                println!(
                    "    {:.1} % ({:.2} ± {:.2}): {}",
                    100.0 * off.share,
                    off.by,
                    off.plus_minus,
                    off.pair.told
                );
            }
        }
    }
    if std::env::var("WORST").is_ok() {
        for pair in pairs.iter().filter(|pair| !pair.found()) {
            let area = pair.measured(Measurand::BladeArea).unwrap_or(0.0) / pair.truth.area;
            println!("    not found ({}, area {area:.2}): {}", pair.count, pair.told);
        }
    }
}

fn quantile(all: impl Iterator<Item = f64>, part: f64) -> f64 {
    let mut all: Vec<f64> = all.collect();
    all.sort_by(f64::total_cmp);
    all[((all.len() - 1) as f64 * part).round() as usize]
}
