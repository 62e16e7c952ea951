//! How often drawn leaves that touch are cut apart, and whether one leaf ever is cut in two:
//! `cargo bench -p spinney-measure --bench drawn_touching -- 6`.
//!
//! Pairs and threes (`fixtures::leaves`) in any turn, pushed together until one reaches 0.2 to 2 mm into
//! another, at 150, 200 and 300 dpi, with blur, noise, shade, uneven light, as PNG and as JPEG 60.
//! And leaves alone: the families of `drawn_forms` in one piece, lobed and compound, of which none may be cut.
//! `-- N` draws N of each. `WORST=1` lists what went wrong, `KEEP=folder` keeps its scans (`ALL=1`: all scans), and `-- touching` or
//! `-- alone` draws those alone.

#[path = "../drawn_forms/families.rs"]
mod families;
mod laid;
#[path = "../packing/packed.rs"]
mod packed;

use families::{Kind, families};
use fastrand::Rng;
use packed::{kept, packed};
use spinney_fixtures::leaves::form::FormPlan;
use spinney_fixtures::leaves::scan::Page;
use spinney_fixtures::leaves::{Edge, Leaf, Plan, Shape};
use spinney_model::{LeafNote, Measurand, MeasuredPicture, PictureError};

/// The shapes by which the rules were built, and those by which they are judged.
const BUILT: [Shape; 3] = [Shape::Ellipse, Shape::Obovate, Shape::Rhombus];
const JUDGED: [Shape; 4] = [Shape::Ovate, Shape::Oblong, Shape::Heart, Shape::Lance];

fn main() {
    let count = std::env::args().filter_map(|word| word.parse().ok()).next().unwrap_or(4);
    let named = |name: &str| std::env::args().any(|word| word == name);
    let both = !named("touching") && !named("alone");
    for (name, seed) in [("built", 31), ("judged", 32)] {
        let mut rng = Rng::with_seed(seed);
        if both || named("touching") {
            for many in [2, 3] {
                touching(&mut rng, (name, many), count);
            }
        }
        if both || named("alone") {
            alone(&mut rng, name, count);
        }
    }
}

fn measured(
    page: &Page<'_>,
    rng: &mut Rng,
) -> (Vec<u8>, bool, Result<MeasuredPicture, PictureError>) {
    let jpeg = rng.bool();
    let file = packed(page, rng, jpeg);
    let found = spinney_measure::read(&file, Some(page.dpi));
    let found = found.and_then(|picture| spinney_measure::measure(&picture));
    (file, jpeg, found)
}

fn by_chance<T>(page: &mut Page<'_, T>, rng: &mut Rng) {
    page.by_chance(rng);
    page.dpi = [150.0, 200.0, 300.0][rng.usize(..3)];
}

/// What became of leaves that touch.
#[derive(Default)]
struct Came {
    right: usize,
    wrong: usize,
    whole_and_said: usize,
    whole_and_not_said: usize,
    /// How far lengths and areas of those cut right are off, in per cent.
    lengths: Vec<f64>,
    areas: Vec<f64>,
    inside: [usize; 2],
}

fn touching(rng: &mut Rng, (name, many): (&str, usize), count: usize) {
    let shapes: &[Shape] = if name == "built" { &BUILT } else { &JUDGED };
    let mut came = [Came::default(), Came::default()];
    for shape in shapes {
        for edge in [Edge::Smooth, Edge::Toothed, Edge::Wavy] {
            for _ in 0..2 * count {
                let plan = |rng: &mut Rng, shape| {
                    let plan = Plan::seeded(rng, shape, edge, 0);
                    let stalk = (0.2 + 0.3 * rng.f64()) * plan.length;
                    Plan { stalk, ..plan }.leaf()
                };
                let all: Vec<Leaf> = (0..many)
                    .map(|at| {
                        let other = shapes[rng.usize(..shapes.len())];
                        plan(rng, if at == 0 { *shape } else { other })
                    })
                    .collect();
                let over = 0.2 + 1.8 * rng.f64();
                let (mut page, by_a_stalk) = laid::touching(rng, &all, over);
                by_chance(&mut page, rng);
                let (file, jpeg, found) = measured(&page, rng);
                let told = format!(
                    "{many} {shape:?} {edge:?} over {over:.1} mm, stalk {by_a_stalk}, {} dpi",
                    page.dpi
                );
                let Ok(found) = found else { continue };
                let (wrong, whole) = came[usize::from(by_a_stalk)].count(&found, &all);
                let worst = wrong || (whole && !by_a_stalk);
                if worst || std::env::var("ALL").is_ok() {
                    kept(&told, &file, jpeg);
                    if std::env::var("WORST").is_ok() {
                        println!("    {told}");
                    }
                }
            }
        }
    }
    came[0].tell(&format!("{name}, {many} whose blades touch"));
    came[1].tell(&format!("{name}, {many}, one by its stalk"));
}

impl Came {
    /// Whether it was cut wrong, and whether it was left whole.
    fn count(&mut self, found: &MeasuredPicture, truth: &[Leaf]) -> (bool, bool) {
        let apart = found.cut_apart.iter().map(Vec::len).sum::<usize>() > 0;
        if !apart && found.leaves.len() < truth.len() {
            let said =
                found.leaves.iter().any(|leaf| leaf.notes.contains(&LeafNote::TwoStalks));
            match said {
                true => self.whole_and_said += 1,
                false => self.whole_and_not_said += 1,
            }
            return (false, true);
        }
        let off = |leaf: &Leaf| {
            let off = |of: &spinney_model::MeasuredLeaf, what, truth: f64| {
                let found = of.measure(what).expect("there is a scale");
                let inside = (found.value - truth).abs() <= found.plus_minus;
                ((100.0 * (found.value / truth - 1.0)).abs(), inside)
            };
            let each = found.leaves.iter().map(|it| {
                let length = off(it, Measurand::BladeLength, leaf.truth.length);
                (length, off(it, Measurand::BladeArea, leaf.truth.area))
            });
            each.min_by(|a, b| (a.0.0 + a.1.0).total_cmp(&(b.0.0 + b.1.0)))
        };
        let offs: Vec<_> = truth.iter().filter_map(off).collect();
        // Of three that hang together two may still be one, where that is said.
        let missing = truth.len() - found.leaves.len().min(truth.len());
        let near =
            offs.iter().filter(|(length, area)| length.0 <= 5.0 && area.0 <= 8.0).count();
        let right = near == truth.len() && missing == 0;
        if right {
            self.right += 1;
            for (length, area) in offs {
                self.lengths.push(length.0);
                self.areas.push(area.0);
                self.inside[0] += usize::from(length.1);
                self.inside[1] += usize::from(area.1);
            }
            return (false, false);
        }
        self.wrong += 1;
        (true, false)
    }

    fn tell(&mut self, name: &str) {
        let Self { right, wrong, whole_and_said, whole_and_not_said, .. } = self;
        let all = *right + *wrong + *whole_and_said + *whole_and_not_said;
        println!(
            "{name}: {all} | cut right {right} | cut wrong {wrong} | left whole, said {whole_and_said}, not said {whole_and_not_said}"
        );
        let inside =
            self.inside.map(|inside| 100.0 * inside as f64 / self.lengths.len().max(1) as f64);
        for (what, offs, inside) in
            [("length", &mut self.lengths, inside[0]), ("area", &mut self.areas, inside[1])]
        {
            offs.sort_by(f64::total_cmp);
            let part = |part: f64| {
                offs.get((part * offs.len() as f64) as usize).copied().unwrap_or(0.0)
            };
            println!(
                "    {what}: {:.2} % off, 95 %: {:.2} %, truth inside ± {inside:.0} %",
                part(0.5),
                part(0.95)
            );
        }
    }
}

/// Leaves that lie alone: how many are cut.
fn alone(rng: &mut Rng, name: &str, count: usize) {
    let (mut plain, mut lobed, mut compound) = ([0; 2], [0; 2], [0; 2]);
    let mut stalks = 0;
    for family in families(name == "judged") {
        for _ in 0..count {
            let blade = family.blade(rng);
            let parts = (family.shape, blade, family.lobe_form);
            let plan = FormPlan::seeded(rng, parts, family.margin);
            let leaf = plan.leaf();
            let mut page = Page::of_one(&leaf, rng.f64() * 6.3);
            by_chance(&mut page, rng);
            let jpeg = rng.bool();
            let file = packed(&page, rng, jpeg);
            let found = spinney_measure::read(&file, Some(page.dpi));
            let Ok(found) = found.and_then(|picture| spinney_measure::measure(&picture)) else {
                continue;
            };
            let of = match family.kind {
                Kind::Plain => &mut plain,
                Kind::Feather | Kind::Hand => &mut lobed,
                Kind::CompoundFeather | Kind::CompoundHand => &mut compound,
            };
            of[0] += 1;
            stalks += found
                .leaves
                .iter()
                .filter(|leaf| leaf.notes.contains(&LeafNote::TwoStalks))
                .count();
            if !found.cut_apart.is_empty() {
                of[1] += 1;
                let told = format!(
                    "{:?} {blade:?} {:?} {} dpi",
                    family.shape, family.margin, page.dpi
                );
                kept(&told, &file, jpeg);
                println!("    cut: {told}");
            }
        }
    }
    println!(
        "{name}, alone: in one piece {} of {} cut, lobed {} of {}, compound {} of {}; said to have two stalks {stalks}",
        plain[1], plain[0], lobed[1], lobed[0], compound[1], compound[0]
    );
}
