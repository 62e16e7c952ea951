//! How often lobes, edges and leaflets of drawn leaves are told right:
//! `cargo bench -p spinney-measure --bench drawn_forms -- 4`.
//!
//! Some hundred leaves (`fixtures::leaves::form`), each on a page of its own: shapes × edges × lobes ×
//! leaflets, turned, at 150, 300 and 600 dpi, with blur, noise, shade, uneven light, as PNG and as
//! JPEG 60. Families by which the rules were built and families by which they are judged have no
//! shape and no seed in common, and are listed apart. `-- N` draws N of each. `WORST=1` lists what
//! was told wrong, `KEEP=folder` keeps its scans, and `-- built` or `-- judged` draws those alone,
//! `-- bases` only whether both sides of a base are alike.

mod bases;
mod families;
#[path = "../packing/packed.rs"]
mod packed;
mod questions;

use families::{Family, families};
use fastrand::Rng;
use packed::{kept, packed};
use spinney_fixtures::leaves::form::{FormPlan, FormTruth};
use spinney_fixtures::leaves::scan::Page;
use spinney_model::{LeafForm, MeasuredLeaf};

use crate::questions::QUESTIONS;

/// A drawn leaf and what was measured of it.
struct Pair {
    plan: FormPlan,
    truth: FormTruth,
    leaf: Option<MeasuredLeaf>,
    told: String,
}

impl Pair {
    fn form(&self) -> Option<&LeafForm> {
        self.leaf.as_ref().map(|leaf| &leaf.form)
    }
}

fn main() {
    let count = std::env::args().filter_map(|word| word.parse().ok()).next().unwrap_or(4);
    let named = |name: &str| std::env::args().any(|word| word == name);
    for (name, seed) in [("built", 11), ("judged", 13)] {
        // One of the two alone, where it is named.
        if (named("built") || named("judged")) && !named(name) {
            continue;
        }
        bases::told(name, count);
        if named("bases") {
            continue;
        }
        let mut rng = Rng::with_seed(seed);
        let mut pairs = Vec::new();
        for family in families(name == "judged") {
            for _ in 0..count {
                pairs.push(drawn(&mut rng, family));
            }
        }
        told(name, &pairs);
    }
}

fn drawn(rng: &mut Rng, family: Family) -> Pair {
    let blade = family.blade(rng);
    let plan = FormPlan::seeded(rng, (family.shape, blade, family.lobe_form), family.margin);
    let leaf = plan.leaf();
    let mut page = Page::of_one(&leaf, rng.f64() * 6.3);
    page.by_chance(rng);
    let jpeg = rng.bool();
    let told = format!(
        "{:?} {:?} {:?} {:?} depth {:.2} {:.0} mm pitch {:.1} tooth {:.1}, {} dpi, blur {:.1}, noise {:.1}, shade {}, uneven {}, {}",
        family.shape,
        blade,
        plan.lobe_form,
        plan.margin,
        plan.depth,
        plan.length,
        plan.pitch,
        plan.tooth,
        page.dpi,
        page.blur,
        page.noise,
        page.shade,
        page.uneven,
        if jpeg { "JPEG" } else { "PNG" },
    );
    let file = packed(&page, rng, jpeg);
    let found = spinney_measure::read(&file, Some(page.dpi))
        .and_then(|picture| spinney_measure::measure(&picture));
    let found = found.ok().filter(|found| found.leaves.len() == 1);
    let leaf = found.and_then(|found| found.leaves.into_iter().next());
    let pair = Pair { truth: plan.leaf().truth, plan, leaf, told };
    if QUESTIONS.iter().any(|(_, right)| right(&pair) == Some(false)) {
        kept(&pair.told, &file, jpeg);
    }
    pair
}

fn told(name: &str, pairs: &[Pair]) {
    let found = pairs.iter().filter(|pair| pair.leaf.is_some()).count();
    println!("\n{name}: {} leaves, {found} found", pairs.len());
    println!("asked | n | right");
    for (asked, right) in QUESTIONS {
        let all: Vec<(bool, &Pair)> =
            pairs.iter().filter_map(|pair| right(pair).map(|right| (right, pair))).collect();
        let right = all.iter().filter(|(right, _)| *right).count();
        let share = 100.0 * right as f64 / all.len().max(1) as f64;
        println!("{asked} | {} | {share:.1} %", all.len());
        if std::env::var("WORST").is_ok() {
            for (_, pair) in all.iter().filter(|(right, _)| !right) {
                let form = pair.leaf.as_ref().map(|leaf| said(&leaf.form));
                let truth = pair.truth;
                println!("    {}\n        {truth:?}\n        {form:?}", pair.told);
            }
        }
    }
}

/// What was said of a leaf, in a line.
fn said(form: &LeafForm) -> String {
    let lobes = form.lobes.as_ref().map(|lobes| lobes.count());
    let sinuses = form.lobes.as_ref().and_then(|lobes| lobes.sinuses.as_ref());
    let sinuses = sinuses.map(|it| (it.arrangement, it.depth));
    let leaflets = form.leaflets.as_ref();
    let leaflets = leaflets.map(|it| (it.middles.len(), it.arrangement, it.at_end));
    let edge = form.edge.as_ref().map(|edge| {
        (edge.kind, edge.teeth.each_ref().map(Vec::len), edge.per_cm.map(|it| it.value))
    });
    format!("lobes {lobes:?} {sinuses:?}, leaflets {leaflets:?}, edge {edge:?}")
}
