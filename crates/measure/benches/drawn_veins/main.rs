//! How often side veins of drawn leaves are told, and told right:
//! `cargo bench -p spinney-measure --bench drawn_veins -- 6`.
//!
//! Some hundred blades in one piece (`fixtures::leaves::form`), each on a page of its own: shapes ×
//! edges × veins that are clear, faint or not there, lighter or darker than the blade, with a finer net
//! between them, turned, at 150, 300 and 600 dpi, with blur, noise, shade, uneven light, as PNG and
//! as JPEG 60. Shapes and seeds by which the rules were built and those by which they are judged
//! have nothing in common, and are listed apart. `-- N` draws N of each. `WORST=1` lists what was
//! told wrong, `KEEP=folder` keeps its scans (`ALL=1`: all scans), and `-- built` or `-- judged` draws those alone.

#[path = "../packing/packed.rs"]
mod packed;
mod questions;

use fastrand::Rng;
use packed::{kept, packed};
use spinney_fixtures::leaves::Shape;
use spinney_fixtures::leaves::form::{Blade, FormPlan, LobeForm, Margin, VeinPlan};
use spinney_fixtures::leaves::scan::Page;
use spinney_model::{VeinPairs, Veins, VeinsUnseen};

use crate::questions::QUESTIONS;

/// How veins are drawn.
#[derive(Clone, Copy, Debug, PartialEq)]
enum Drawn {
    /// So that anybody sees them.
    Clear,
    /// So that one has to look closely, or sees none.
    Faint,
    /// The finer net and the main vein, without side veins.
    Net,
    /// The main vein alone.
    Main,
    /// Veins that run beside each other from base to tip.
    Beside,
    /// None.
    None,
}

/// A drawn leaf and what was told of its veins.
struct Pair {
    drawn: Drawn,
    dpi: f64,
    counts: [usize; 2],
    pairs: Option<VeinPairs>,
    veins: Option<Result<Veins, VeinsUnseen>>,
    told: String,
}

impl Pair {
    fn seen(&self) -> Option<&Veins> {
        self.veins.as_ref()?.as_ref().ok()
    }

    fn side_veins(&self) -> bool {
        matches!(self.drawn, Drawn::Clear | Drawn::Faint)
    }
}

fn main() {
    let count = std::env::args().filter_map(|word| word.parse().ok()).next().unwrap_or(6);
    let named = |name: &str| std::env::args().any(|word| word == name);
    for (name, seed, shapes) in [
        ("built", 21, [Shape::Ellipse, Shape::Obovate, Shape::Rhombus]),
        ("judged", 22, [Shape::Ovate, Shape::Oblong, Shape::Heart]),
    ] {
        // One of the two alone, where it is named.
        if (named("built") || named("judged")) && !named(name) {
            continue;
        }
        let mut rng = Rng::with_seed(seed);
        let mut pairs = Vec::new();
        for shape in shapes {
            for margin in [Margin::Smooth, Margin::Serrate] {
                // Half of all have veins that are clear.
                for drawn in [
                    Drawn::Clear,
                    Drawn::Clear,
                    Drawn::Clear,
                    Drawn::Clear,
                    Drawn::Faint,
                    Drawn::Faint,
                    Drawn::Net,
                    Drawn::Main,
                    Drawn::Beside,
                    Drawn::None,
                ] {
                    pairs.extend((0..count).map(|_| one(&mut rng, shape, margin, drawn)));
                }
            }
        }
        told(name, &pairs);
    }
}

fn one(rng: &mut Rng, shape: Shape, margin: Margin, drawn: Drawn) -> Pair {
    let blade = FormPlan::seeded(rng, (shape, Blade::Plain, LobeForm::Round), margin);
    let lighter = rng.bool();
    let tone = match (drawn, lighter) {
        (Drawn::Clear, true) => 0.3 + 0.6 * rng.f64(),
        (Drawn::Clear, false) => -0.22 - 0.25 * rng.f64(),
        (Drawn::Beside, true) => 0.2 + 0.5 * rng.f64(),
        (_, true) => 0.03 + 0.15 * rng.f64(),
        (_, false) => -0.03 - 0.12 * rng.f64(),
    };
    let plan = VeinPlan::seeded(rng, blade.length, tone);
    let leaf = blade.leaf();
    let mut page = Page::of_one(&leaf, rng.f64() * 6.3);
    page.veins = match drawn {
        Drawn::Clear | Drawn::Faint => plan.drawn(&blade, rng),
        Drawn::Net => plan.without_side_veins(&blade, rng),
        Drawn::Main => plan.main_alone(&blade, rng),
        Drawn::Beside => plan.beside(&blade, rng),
        Drawn::None => Vec::new(),
    };
    page.by_chance(rng);
    let jpeg = rng.bool();
    let alternate = plan.stagger > 0.25;
    let told = format!(
        "{shape:?} {margin:?} {drawn:?} tone {tone:.2} {:?} stagger {:.2} lean {:.2} curve {:.2} width {:.2} main {:.2} net {:.2}, {:.0} mm, {} dpi, blur {:.1}, noise {:.1}, {}",
        plan.counts,
        plan.stagger,
        plan.lean,
        plan.curve,
        plan.width,
        plan.main,
        plan.net,
        blade.length,
        page.dpi,
        page.blur,
        page.noise,
        if jpeg { "JPEG" } else { "PNG" },
    );
    let file = packed(&page, rng, jpeg);
    let found = spinney_measure::read(&file, Some(page.dpi))
        .and_then(|picture| spinney_measure::measure(&picture));
    let found = found.ok().filter(|found| found.leaves.len() == 1);
    let leaf = found.and_then(|found| found.leaves.into_iter().next());
    let pairs = if alternate { VeinPairs::Alternate } else { VeinPairs::Opposite };
    let pair = Pair {
        drawn,
        dpi: page.dpi,
        counts: plan.counts,
        pairs: Some(pairs),
        veins: leaf.map(|leaf| leaf.form.veins),
        told,
    };
    let wrong = QUESTIONS.iter().any(|(_, right)| right(&pair) == Some(false));
    if wrong || std::env::var("ALL").is_ok() {
        kept(&pair.told, &file, jpeg);
    }
    pair
}

fn told(name: &str, pairs: &[Pair]) {
    let found = pairs.iter().filter(|pair| pair.veins.is_some()).count();
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
                let said = pair
                    .seen()
                    .map(|veins| (veins.sides.each_ref().map(Vec::len), veins.pairs));
                println!("    {}\n        {said:?}", pair.told);
            }
        }
    }
}
